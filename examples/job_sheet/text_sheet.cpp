#include "facts.hpp"
#include "figures.hpp"
#include "shop_words.hpp"
#include "writers.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

const std::string thick_line = std::string(text_lines::widest, '=') + '\n';
const std::string thin_line = std::string(text_lines::widest, '-') + '\n';

class sheet_in_lines : public text_lines {
public:
    sheet_in_lines(lettering l, units_shown units) : text_lines(l), units_(units) {}

    [[nodiscard]] std::string all_of(const sheet& s) const {
        std::string lines = head(s);
        for (const pair_answer& a : s.pairs) lines += pair_lines(a);
        return lines + foot(s);
    }

private:
    [[nodiscard]] std::string heading(std::string_view text) const { return wrapped("", text) + thin_line; }

    // ---- the job's own data

    /// A line a state, a column a group; what finds no room in columns goes before the note.
    [[nodiscard]] std::string states_table(const job& j) const {
        if (j.states.empty()) return {};
        constexpr std::size_t widest_name = 18;
        constexpr std::size_t most_columns = 3;
        const std::size_t columns = (std::min)(j.groups.size(), most_columns);
        std::string lines = heading("States");
        std::string names = cell("", 14);
        std::vector<std::size_t> widths;
        for (std::size_t g = 0; g < columns; ++g) {
            widths.push_back(
                (std::min)((std::max)(columns_of(written(j.groups[g].name)), std::size_t{8}), widest_name));
            names += "  " + cell(j.groups[g].name, widths[g]);
        }
        lines += wrapped(names, "");
        for (const state& s : j.states) {
            std::string line = cell(s.id, 14);
            std::string further;
            for (std::size_t g = 0; g < j.groups.size(); ++g) {
                const std::string reading = s.temperatures[g] ? s.temperatures[g]->written : "?";
                if (g < columns) line += "  " + cell(reading, widths[g]);
                else further += fmt::format("{}: {}. ", j.groups[g].name, reading);
            }
            lines += wrapped(line + "  ", further + s.note);
        }
        return lines + '\n';
    }

    [[nodiscard]] static std::string capitalised(std::string word) {
        if (!word.empty() && word[0] >= 'a' && word[0] <= 'z')
            word[0] = static_cast<char>(word[0] - 'a' + 'A');
        return word;
    }

    [[nodiscard]] std::string labelled(std::string_view label, std::string_view text,
                                       std::size_t width = 11) const {
        return wrapped(fmt::format("{:<{}}", capitalised(std::string(label)) + ": ", width), text);
    }

    [[nodiscard]] std::string facts_lines(const facts& all) const {
        if (all.lines.empty()) return {};
        std::string lines = heading(all.title);
        for (const fact& one : all.lines) lines += labelled(one.label, one.text, 17);
        return lines + '\n';
    }

    /// The pairs with their verdicts, and what is to be made.
    [[nodiscard]] std::string contents(const sheet& s) const {
        std::string lines = heading("Pairs");
        for (const pair_answer& a : s.pairs)
            lines += wrapped(fmt::format("{} {} ", cell(a.asked.id, 6), cell(a.asked.name, 26)),
                             fmt::format("{:<10}  {}", in_words(a.verdict()), to_make(a, units_)));
        return lines + '\n';
    }

    [[nodiscard]] std::string head(const sheet& s) const {
        const job& j = s.asked;
        std::string lines = thick_line + wrapped("JOB SHEET  ", j.title) + thick_line;
        if (!j.about.empty()) lines += wrapped("", j.about) + '\n';
        if (j.sizes_at)
            lines +=
                wrapped(
                    "",
                    fmt::format(
                        "All sizes at {}. Limits in inches are rounded inwards: what they let pass, the limits in mm let pass.",
                        j.sizes_at->written)) +
                '\n';
        if (!j.faults_outside_pairs.empty()) lines += heading("WRONG IN THE JOB FILE");
        for (const fault& f : j.faults_outside_pairs) lines += wrapped("- ", in_words(f));
        if (!j.faults_outside_pairs.empty()) lines += '\n';
        lines += contents(s);
        if (!j.cautions.empty()) lines += heading("CAUTIONS") + bullets("", j.cautions) + '\n';
        lines += states_table(j);
        for (const facts& all : facts_of(j)) lines += facts_lines(all);
        const std::vector<std::string> plans = about_plans(s);
        if (!plans.empty()) lines += heading("About the plans for holes") + bullets("", plans) + '\n';
        return lines;
    }

    // ---- a pair

    [[nodiscard]] std::string size_lines(const size_answer& s) const {
        std::vector<std::string> columns;
        const bool without_inches = !s.inches && units_ != units_shown::mm;
        if (units_ != units_shown::inch || !s.inches) {
            columns.push_back(
                fmt::format("{} / {} um", signed_um(s.upper_deviation), signed_um(s.lower_deviation)));
            columns.push_back(fmt::format("{} to {} mm", mm(s.lower_limit), mm(s.upper_limit)));
        }
        if (without_inches) columns.push_back("no inch limits: less than 0.00001 in apart");
        if (s.inches && units_ != units_shown::mm)
            columns.push_back(fmt::format("{} to {} in", inches(s.inches->lower, s.inches->decimals),
                                          inches(s.inches->upper, s.inches->decimals)));
        std::string line;
        for (std::size_t i = 0; i < columns.size(); ++i)
            line += fmt::format("{}{:<{}}", i == 0 ? "           " : "  ", columns[i], i == 0 ? 18 : 22);
        line.erase(line.find_last_not_of(' ') + 1);
        if (line.size() > widest) {
            line.clear();
            for (const std::string& one : columns)
                line += (line.empty() ? "           " : "\n           ") + one;
        }
        line += '\n';
        if (s.inches && s.inches->decimals == 5 && !s.measured && units_ != units_shown::mm)
            line += wrapped("           ",
                            "5 decimals of an inch: with 4 too little would be left between the limits");
        if (s.measured)
            line +=
                wrapped("           ", units_ == units_shown::mm
                                           ? "measured: the range it may have"
                                           : "measured: the range it may have, in inches rounded outwards");
        if (s.target) line += wrapped("           ", aim_in_words(s));
        return line;
    }

    [[nodiscard]] std::string part_lines(const part_answer& p) const {
        std::string what = p.as_read.empty() ? "no size of its own" : p.as_read;
        if (!p.name.empty()) what += ": " + p.name;
        if (!p.material.empty()) what += ", " + p.material;
        return labelled(p.role, what) + (p.size ? size_lines(*p.size) : "");
    }

    [[nodiscard]] std::string clearance_lines(const clearance_answer& c) const {
        const tenths t = in_tenths(c);
        std::string lines = wrapped("Fit:       ", kind_in_words(c.kind));
        lines += wrapped("           ", "clearance on diameter; below 0: interference");
        lines += fmt::format("           {:<9} {:>12} {:>12} {:>12}\n", "", "least", "mean", "greatest");
        if (units_ != units_shown::inch)
            lines += fmt::format("           {:<9} {:>12} {:>12} {:>12}\n", "um", um(c.least), um(c.mean),
                                 um(c.greatest));
        if (units_ != units_shown::mm)
            lines +=
                fmt::format("           {:<9} {:>12} {:>12} {:>12}   (least rounded down, greatest up)\n",
                            "0.0001 in", t.least, t.mean, t.greatest);
        return lines;
    }

    /// Facts under each other; a label that repeats is written once.
    [[nodiscard]] std::string fact_lines(const std::vector<fact>& all, bool in_capitals = false) const {
        std::string lines;
        std::string before;
        for (const fact& one : all) {
            std::string label = capitalised(one.label) + ":";
            if (in_capitals)
                for (char& c : label)
                    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
            lines += wrapped(fmt::format("{:<11}", one.label == before ? "" : label), one.text);
            before = one.label;
        }
        return lines;
    }

    [[nodiscard]] std::string heat_lines(const heat_answer& h) const {
        if (h.rows.empty()) return fact_lines(facts_of(h));
        std::string lines =
            wrapped("In heat:   ", "clearance on diameter in each state, um, at the worst of the spread");
        for (std::size_t i = 0; i < h.rows.size(); ++i) {
            const hot_row& r = h.rows[i];
            std::string mark;
            if (h.tightest == i) mark = "  tightest";
            if (h.loosest == i) mark += mark.empty() ? "  loosest" : " and loosest";
            const std::string moment = fmt::format("           {} hole {} shaft {}", cell(r.state, 14),
                                                   cell(r.hole_at, 9), cell(r.shaft_at, 9));
            if (r.clearance) lines += fmt::format("{} {:>16}{}\n", moment, about_um(*r.clearance), mark);
            else lines += moment + '\n' + wrapped("           ", r.no_answer);
        }
        return lines + fact_lines(facts_of(h));
    }

    [[nodiscard]] std::string plan_lines(const making_answer& m) const {
        if (!m.plan) return {};
        const auto line = [this](const step_row& r) {
            std::string columns =
                fmt::format("           {:<34} {:<18} {:<17} {}", written(r.step), r.after, r.leaves, r.rule);
            if (columns.size() > 100) // sizes of many digits
                columns = fmt::format("           {}\n           {:>34} {} {} {}", written(r.step), "",
                                      r.after, r.leaves, r.rule);
            return columns.erase(columns.find_last_not_of(' ') + 1) + '\n';
        };
        std::string lines = wrapped("Plan:      ", "for " + m.material);
        lines += line({"step", "after it, mm", "leaves, mm", "rule, mm"});
        for (const step_row& r : rows_of(*m.plan)) lines += line(r);
        return lines + fact_lines(remarks_on(*m.plan));
    }

    [[nodiscard]] std::string sources(const pair_answer& a) const {
        std::vector<std::string> all;
        for (const part_answer& p : a.parts) {
            if (!p.size) continue;
            std::string one = p.role + ": " + p.size->source;
            if (!all.empty() && all.back().ends_with(p.size->source)) all.back() = "both: " + p.size->source;
            else all.push_back(std::move(one));
        }
        std::string list;
        for (const std::string& one : all) list += (list.empty() ? "" : "; ") + one;
        return list.empty() ? list : wrapped("Source:    ", list);
    }

    /// The remarks under the verdict that each brings.
    [[nodiscard]] std::string remark_lines(const pair_answer& a) const {
        std::string lines;
        verdict before = verdict::good;
        for (const remark& r : a.look_at) {
            const std::string_view heading = r.brings == verdict::wont_do       ? "WON'T DO:"
                                             : r.brings == verdict::cannot_tell ? "CAN'T TELL:"
                                                                                : "LOOK AT:";
            lines += wrapped(fmt::format("{:<11} - ", r.brings == before ? "" : heading), r.text);
            before = r.brings;
        }
        return lines;
    }

    [[nodiscard]] std::string pair_lines(const pair_answer& a) const {
        const pair& p = a.asked;
        std::string lines = thick_line +
                            wrapped(p.id + "  ", fmt::format("{}  [{}]", p.name, in_words(a.verdict()))) +
                            thick_line;
        for (const fault& f : p.faults) lines += wrapped("REFUSED:   ", in_words(f));
        if (!p.behaviour.empty()) lines += wrapped("Must:      ", p.behaviour);
        if (!p.callout.empty()) lines += wrapped("Drawing:   ", p.callout);
        lines += fact_lines(brief(a, units_), true);
        lines += remark_lines(a);
        if (!given(p).empty()) lines += wrapped("Given:     ", given(p));
        if (a.judging) lines += fact_lines(facts_of(*a.judging));
        if (a.choosing) lines += fact_lines(facts_of(*a.choosing));
        for (const part_answer& part : a.parts) lines += part_lines(part);
        if (p.stack)
            for (const fact& one : facts_of(*p.stack)) lines += labelled(one.label, one.text);
        if (a.clearance) lines += clearance_lines(*a.clearance);
        for (const alternative_answer& other : a.instead) {
            const clearance_answer& c = other.clearance;
            lines += wrapped("Instead:   ",
                             fmt::format("{}: {} to {} um, {}{}", other.callout, um(c.least), um(c.greatest),
                                         kind_in_words(c.kind), decisive_state(other)));
        }
        if (a.heat) lines += heat_lines(*a.heat);
        if (a.pressing) lines += fact_lines(facts_of(*a.pressing, p));
        if (a.leak) lines += fact_lines(facts_of(*a.leak));
        if (a.end_float) lines += fact_lines(facts_of(*a.end_float));
        if (a.film) lines += fact_lines(facts_of(*a.film));
        lines += fact_lines(details(a));
        if (a.making) lines += plan_lines(*a.making);
        lines += sources(a);
        if (!a.cautions.empty()) lines += "CAUTIONS\n" + bullets("  ", a.cautions);
        return lines + '\n';
    }

    [[nodiscard]] std::string foot(const sheet& s) const { return thick_line + count_in_words(s) + '\n'; }

    units_shown units_;
};

} // namespace

std::string text_sheet(const sheet& s, lettering l, units_shown units) {
    return sheet_in_lines(l, units).all_of(s);
}

} // namespace job_sheet
