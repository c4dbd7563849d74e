#include "answer.hpp"
#include <fitwright/gauge/judge.hpp>
#include <fitwright/grid.hpp>

#include <fmt/format.h>

namespace post_bores {

namespace {

std::string mm(length l) { return std::string(fitwright::written(l).view()); }

/// The instrument with the least uncertainty that reaches all sizes of the
/// hole.
const gauging* instrument_for(const fitwright::hole_limits& limits, const machine& m) {
    const gauging* best = nullptr;
    for (const gauging& g : m.instruments) {
        if (g.from > limits.lower_limit() || g.to < limits.upper_limit()) continue;
        if (best == nullptr || g.uncertainty < best->uncertainty) best = &g;
    }
    return best;
}

/// ISO 14253-1: the limits moved inwards by the uncertainty, and on to what the
/// instrument can show.
fitwright::result<fitwright::hole_limits> readings_to_accept(const fitwright::hole_limits& limits,
                                                             const gauging& by) {
    return fitwright::acceptance_band(limits, by.uncertainty)
        .and_then(
            [&](const fitwright::hole_limits& band) { return fitwright::rounded_inwards(band, by.reads); });
}

/// Expected sizes are no limits: in whole micrometres, the least down and the
/// most up.
std::string about(length least, length most) {
    constexpr std::int64_t um = 1'000;
    const auto at_least = length::from_nanometres(least.nanometres() / um * um);
    const auto at_most = length::from_nanometres((most.nanometres() + um - 1) / um * um);
    return fmt::format("{} to {}", mm(at_least), mm(at_most));
}

/// "centre drill; 13 mm drill 13.025 to 13.204; ..."
std::string way(const planned_hole& h) {
    std::string all;
    const auto steps = h.plan->steps();
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (i > 0) all += "; ";
        all += h.operations[i].tool_name();
        if (i > 0) all += " " + about(steps[i].least, steps[i].most);
    }
    return all;
}

class row_writer {
public:
    row_writer(const answer& a, const hole_row& row) : a_(a), row_(row) {}

    std::string write() {
        const planned_hole* made = nullptr;
        for (const planned_hole& h : a_.holes)
            if (h.row == &row_) made = &h;
        cells_ = {text("tag"),     made != nullptr ? "made" : "left out",
                  text("callout"), text("material"),
                  text("x"),       text("y"),
                  text("z_top"),   text("depth"),
                  text("through"), text("process")};
        if (made != nullptr) answer_of(*made);
        else left_out();
        cells_.push_back(text("note"));
        for (const std::size_t i : a_.list->unknown_columns())
            cells_.push_back(i < row_.cells.size() ? row_.cells[i].text : "");
        return csv_line(cells_);
    }

private:
    void answer_of(const planned_hole& h) {
        const fitwright::hole_limits& limits = h.asked.limits;
        cells_.insert(cells_.end(), {mm(limits.lower_limit()), mm(limits.upper_limit())});
        const auto target = h.target();
        cells_.push_back(target ? mm(*target) : "");
        length lowest = h.asked.z_top;
        for (const operation& o : h.operations) lowest = o.bottom < lowest ? o.bottom : lowest;
        cells_.insert(cells_.end(), {way(h), mm(lowest)});

        std::string remark;
        const gauging* const by = instrument_for(limits, *a_.on);
        if (by == nullptr) {
            cells_.insert(cells_.end(), {"", "", "", ""});
            remark = "the machine file has no instrument for this size";
        } else {
            cells_.insert(cells_.end(), {by->name, mm(by->uncertainty)});
            const auto band = readings_to_accept(limits, *by);
            if (band) cells_.insert(cells_.end(), {mm(band->lower_limit()), mm(band->upper_limit())});
            else {
                cells_.insert(cells_.end(), {"", ""});
                remark = band.error().message();
            }
        }
        if (h.plan->needs_trial_hole())
            remark += (remark.empty() ? "" : "; ") + std::string("prove the tool by a trial hole first");
        cells_.insert(cells_.end(), {"", "", remark}); // the reading and the verdict are the inspector's
    }

    void left_out() {
        cells_.resize(cells_.size() + 11);
        const fault& f = row_.faults[0];
        cells_.push_back(fmt::format("line {}, column {}: {}", f.where.line, f.where.column, f.message));
    }

    [[nodiscard]] std::string text(std::string_view column) const { return a_.list->text(row_, column); }

    const answer& a_;
    const hole_row& row_;
    std::vector<std::string> cells_;
};

} // namespace

std::string sheet(const answer& a) {
    std::vector<std::string> header = {"tag",
                                       "status",
                                       "callout",
                                       "material",
                                       "x",
                                       "y",
                                       "z_top",
                                       "depth",
                                       "through",
                                       "process",
                                       "lower_limit_mm",
                                       "upper_limit_mm",
                                       "target_mm",
                                       "way",
                                       "lowest_z_mm",
                                       "instrument",
                                       "uncertainty_mm",
                                       "accept_from_mm",
                                       "accept_to_mm",
                                       "reading_mm",
                                       "verdict",
                                       "remarks",
                                       "note"};
    for (const std::size_t i : a.list->unknown_columns()) header.push_back(a.list->header[i]);
    std::string lines = csv_line(header);
    for (const hole_row& row : a.list->rows) lines += row_writer(a, row).write();
    return lines;
}

} // namespace post_bores
