#include "read_hole.hpp"

#include "job_sheet/nearest.hpp"
#include "read_family.hpp"
#include <fitwright/callout.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace post_bores {

namespace {

using fitwright::length;

/// Reads the cells of one row and gathers what is wrong with them.
class row_reader {
public:
    row_reader(const hole_list& list, hole_row& row) : list_(list), row_(row) {}

    std::string_view tag() {
        const csv_cell& c = list_.cell(row_, "tag");
        if (c.text.empty()) report(c.where, "a hole has a tag");
        return c.text;
    }

    /// Millimetres, or inches where `in` follows; exact to the nanometre.
    length number(std::string_view column) {
        const csv_cell& c = list_.cell(row_, column);
        std::string_view rest = c.text;
        while (rest.ends_with(' ')) rest.remove_suffix(1);
        std::int64_t unit = 1'000'000;
        if (rest.ends_with("in")) unit = 25'400'000;
        if (rest.ends_with("in") || rest.ends_with("mm")) rest.remove_suffix(2);
        while (rest.ends_with(' ')) rest.remove_suffix(1);
        while (rest.starts_with(' ')) rest.remove_prefix(1);
        const bool below_zero = rest.starts_with('-');
        if (below_zero || rest.starts_with('+')) rest.remove_prefix(1);

        const auto wrong = [&](std::string_view what) {
            report(c.where, fmt::format("{} '{}' {}", column, c.text, what));
            return length();
        };
        if (rest.find(',') != std::string_view::npos) return wrong("has a comma: decimals follow a point");
        std::int64_t digits = 0;
        std::int64_t parts = 1;
        bool behind_point = false;
        for (const char d : rest) {
            if (d == '.' && !behind_point) {
                behind_point = true;
                continue;
            }
            if (d < '0' || d > '9')
                return wrong("is no number: write millimetres such as 12.5, or inches "
                             "such as 0.5 in");
            if (digits > 99'999'999) return wrong("has too many digits: nine will do");
            digits = digits * 10 + (d - '0');
            if (behind_point) parts *= 10;
        }
        if (rest.empty() || rest == ".") return wrong("is no number: write millimetres such as 12.5");
        constexpr std::int64_t furthest = 100'000; // mm, or inches
        if (digits / parts > furthest) return wrong("is further than any machine goes");
        const length size = length::from_nanometres(digits * unit) / parts;
        return below_zero ? -size : size;
    }

    length depth() {
        const std::size_t faults = row_.faults.size();
        const length read = number("depth");
        if (read <= length() && row_.faults.size() == faults)
            report(list_.cell(row_, "depth").where, "a depth is above 0");
        return read;
    }

    bool through() {
        const csv_cell& c = list_.cell(row_, "through");
        if (c.text == "yes") return true;
        if (c.text != "no") report(c.where, fmt::format("through '{}': write yes or no", c.text));
        return false;
    }

    fitwright::hole_limits limits(length depth, bool through) {
        const csv_cell& c = list_.cell(row_, "callout");
        const auto size = fitwright::read_hole(c.text);
        if (!size) {
            const std::size_t column = size.error().column();
            report(column > 0 ? c.inside(column) : c.where, std::string(size.error().message()));
            return {};
        }
        if (size->lower_limit() <= length()) report(c.where, "a hole's sizes are above 0");
        if (const auto whole = fitwright::read_callout(c.text)) {
            const fitwright::callout_notes& said = whole->notes;
            if (said.count > 1)
                report(c.where,
                       fmt::format("'{}' speaks of {} holes: a row is one hole", c.text, said.count));
            if (said.through && !through)
                report(c.where, fmt::format("'{}' goes through, its column 'through' says no", c.text));
            if (said.has_depth && said.depth != depth)
                report(c.where, fmt::format("'{}' has another depth than its column", c.text));
        }
        return *size;
    }

    /// "ream", "bore + probe", "probe"; none, or `auto`, leaves it to the plan.
    void process(hole& h) {
        const csv_cell& c = list_.cell(row_, "process");
        const std::vector<std::string> words = {"auto", "drill", "bore", "ream", "probe"};
        bool is_chosen = false;
        for (std::size_t at = 0; at < c.text.size();) {
            at = c.text.find_first_not_of(" +", at);
            if (at == std::string::npos) break;
            const std::size_t end = (std::min)(c.text.find_first_of(" +", at), c.text.size());
            const std::string word = c.text.substr(at, end - at);
            at = end;
            const auto found = std::find(words.begin(), words.end(), word);
            if (found == words.end())
                return report(c.where,
                              fmt::format("'{}' is no process{}", word, job_sheet::hint(word, words)));
            if (word == "probe") {
                h.probe = true;
                continue;
            }
            if (is_chosen)
                return report(c.where, fmt::format("'{}': one of auto, drill, bore, "
                                                   "ream; and probe if it is to be "
                                                   "probed",
                                                   c.text));
            is_chosen = true;
            h.process = static_cast<post_bores::process>(found - words.begin());
        }
    }

    fitwright::material_family material() {
        const csv_cell& c = list_.cell(row_, "material");
        const auto family = read_family(c.text);
        if (family) return *family;
        report(c.where, std::string(family.error().message()));
        return {};
    }

private:
    void report(place where, std::string message) { row_.faults.push_back({where, std::move(message)}); }

    const hole_list& list_;
    hole_row& row_;
};

} // namespace

std::optional<hole> read_hole(const hole_list& list, hole_row& row) {
    row_reader r(list, row);
    hole h;
    (void)r.tag();
    h.x = r.number("x");
    h.y = r.number("y");
    h.z_top = r.number("z_top");
    h.depth = r.depth();
    h.through = r.through();
    h.limits = r.limits(h.depth, h.through);
    r.process(h);
    h.material = r.material();
    if (!row.faults.empty()) return std::nullopt;
    return h;
}

} // namespace post_bores
