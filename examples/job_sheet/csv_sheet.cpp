#include "figures.hpp"
#include "writers.hpp"

#include <fmt/format.h>

namespace job_sheet {

namespace {

/// A row of CSV (RFC 4180, but lines end with LF).
class csv_row {
public:
    csv_row& operator<<(std::string_view cell) {
        if (!line_.empty()) line_ += ',';
        if (cell.find_first_of(",\"\r\n") == std::string_view::npos) {
            line_ += cell;
            return *this;
        }
        line_ += '"';
        for (const char c : cell) line_ += c == '"' ? std::string("\"\"") : std::string(1, c);
        line_ += '"';
        return *this;
    }

    [[nodiscard]] std::string line() const { return line_ + '\n'; }

private:
    std::string line_;
};

std::string joined(const std::vector<std::string>& all) {
    std::string list;
    for (const std::string& one : all) list += (list.empty() ? "" : "; ") + one;
    return list;
}

std::string errors(const pair& p) {
    std::vector<std::string> all;
    for (const fault& f : p.faults)
        all.push_back(fmt::format("{}:{}: {}", f.where.line, f.where.column, f.message));
    return joined(all);
}

constexpr std::string_view header =
    "pair,name,status,part,part_name,material,callout,nominal_mm,lower_deviation_um,upper_deviation_um,"
    "lower_limit_mm,upper_limit_mm,lower_limit_in,upper_limit_in,target_mm,source,kind,least_clearance_um,"
    "mean_clearance_um,greatest_clearance_um,look_at,not_yet_computed,cautions,errors\n";

std::string part_row(const pair_answer& a, const part_answer& p) {
    csv_row row;
    row << a.asked.id << a.asked.name << in_words(a.status) << p.role << p.name << p.material << p.as_read;
    if (const auto& s = p.size) {
        row << std::string(written(s->nominal)) << um(s->lower_deviation) << um(s->upper_deviation)
            << mm(s->lower_limit) << mm(s->upper_limit);
        if (s->inches)
            row << inches(s->inches->lower, s->inches->decimals)
                << inches(s->inches->upper, s->inches->decimals);
        else
            row << ""
                << "";
        row << (s->target ? mm(*s->target) : "") << s->source;
    } else {
        for (int i = 0; i < 9; ++i) row << "";
    }
    if (const auto& c = a.clearance)
        row << std::string_view(in_words(c->kind)) << um(c->least) << um(c->mean) << um(c->greatest);
    else
        row << ""
            << ""
            << ""
            << "";
    row << joined(a.look_at) << joined(a.not_yet) << joined(a.cautions) << errors(a.asked);
    return row.line();
}

} // namespace

std::string csv_sheet(const sheet& s) {
    std::string lines(header);
    for (const pair_answer& a : s.pairs) {
        for (const part_answer& p : a.parts) lines += part_row(a, p);
        if (a.parts.empty()) lines += part_row(a, {});
    }
    return lines;
}

} // namespace job_sheet
