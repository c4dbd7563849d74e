#include "figures.hpp"
#include "shop_words.hpp"
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

    void skip(int cells) {
        for (int i = 0; i < cells; ++i) *this << "";
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
    "mean_clearance_um,greatest_clearance_um,look_at,cautions,errors,"
    "reamer_lower_mm,reamer_upper_mm,plan,go_lower_mm,go_upper_mm,not_go_lower_mm,not_go_upper_mm,go_worn_mm,"
    "readings,tight_percent,tightest_state,tightest_um,loosest_state,loosest_um,details,verdict\n";

/// "centre drill; 13 mm drill: 13.076 to 13.204, leaves ...; ..."; or why there is no plan.
std::string plan(const making_answer& m) {
    if (!m.plan) return m.no_plan;
    std::vector<std::string> steps;
    for (const step_row& r : rows_of(*m.plan)) {
        std::string step = r.step;
        if (!r.after.empty()) step += ": " + r.after;
        if (!r.rule.empty()) step += " leaves " + r.leaves;
        steps.push_back(std::move(step));
    }
    return joined(steps);
}

void add_gauge(const pair_answer& a, const std::string& role, csv_row& row) {
    for (const gauge_answer& g : a.gauges) {
        if (g.role != role || !g.sizes) continue;
        row << mm(g.sizes->go_lower) << mm(g.sizes->go_upper) << mm(g.sizes->not_go_lower)
            << mm(g.sizes->not_go_upper) << mm(g.sizes->worn);
        return;
    }
    row.skip(5);
}

std::string readings(const pair_answer& a, const std::string& role) {
    std::vector<std::string> all;
    for (const reading_answer& r : a.readings)
        if (r.role == role)
            all.push_back(fmt::format("{} +/-{} um: {}", r.written, um(r.uncertainty),
                                      std::string_view(in_words(r.verdict))));
    return joined(all);
}

/// How to make and to check this part, and in the last column what concerns the pair.
void add_shop_answers(const pair_answer& a, const part_answer& p, csv_row& row) {
    if (p.role == "hole" && a.making && a.making->reamer.exist())
        row << mm(a.making->reamer.lower_limit()) << mm(a.making->reamer.upper_limit());
    else row.skip(2);
    row << (p.role == "hole" && a.making ? plan(*a.making) : "");
    add_gauge(a, p.role, row);
    row << readings(a, p.role) << (a.chance ? percent(*a.chance) : "");
    if (a.heat && a.heat->tightest) {
        const hot_row& tightest = a.heat->rows[*a.heat->tightest];
        const hot_row& loosest = a.heat->rows[*a.heat->loosest];
        row << tightest.state << um(tightest.clearance->least) << loosest.state
            << um(loosest.clearance->most);
    } else {
        row.skip(4);
    }
    std::vector<std::string> all;
    if (a.judging)
        for (const fact& f : facts_of(*a.judging)) all.push_back(f.label + ": " + f.text);
    if (a.choosing)
        for (const fact& f : facts_of(*a.choosing)) all.push_back(f.label + ": " + f.text);
    if (a.heat)
        for (const fact& f : facts_of(*a.heat)) all.push_back(f.label + ": " + f.text);
    if (a.pressing)
        for (const fact& f : facts_of(*a.pressing, a.asked)) all.push_back(f.label + ": " + f.text);
    if (a.leak)
        for (const fact& f : facts_of(*a.leak)) all.push_back(f.label + ": " + f.text);
    if (a.end_float)
        for (const fact& f : facts_of(*a.end_float)) all.push_back(f.label + ": " + f.text);
    if (a.film)
        for (const fact& f : facts_of(*a.film)) all.push_back(f.label + ": " + f.text);
    for (const fact& f : details(a)) all.push_back(f.label + ": " + f.text);
    row << joined(all) << in_words(a.verdict());
}

std::string part_row(const pair_answer& a, const part_answer& p) {
    csv_row row;
    row << a.asked.id << a.asked.name << in_words(a.status) << p.role << p.name << p.material << p.as_read;
    if (const auto& s = p.size) {
        row << std::string(written(s->nominal)) << um(s->lower_deviation) << um(s->upper_deviation)
            << mm(s->lower_limit) << mm(s->upper_limit);
        if (s->inches)
            row << inches(s->inches->lower, s->inches->decimals)
                << inches(s->inches->upper, s->inches->decimals);
        else row.skip(2);
        row << (s->target ? mm(*s->target) : "") << s->source;
    } else {
        row.skip(9);
    }
    if (const auto& c = a.clearance)
        row << std::string_view(in_words(c->kind)) << um(c->least) << um(c->mean) << um(c->greatest);
    else row.skip(4);
    row << joined(texts(a.look_at)) << joined(a.cautions) << errors(a.asked);
    add_shop_answers(a, p, row);
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
