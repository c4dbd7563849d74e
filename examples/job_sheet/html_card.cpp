#include "cautions.hpp"
#include "escape_html.hpp"
#include "figures.hpp"
#include "html.hpp"
#include "pictures.hpp"
#include "read_pair.hpp"
#include "shop_words.hpp"

#include <fmt/format.h>

#include <utility>

namespace job_sheet::html {

namespace {

using fitwright::caution;

std::string figures(const std::vector<drawn>& all, shared_looks& looks) {
    std::string html;
    for (const drawn& one : all)
        html += fmt::format("<figure>\n{}<figcaption>{}</figcaption></figure>\n", looks.shorten(one.svg),
                            escaped(one.caption));
    return html;
}

/// The cautions of a card, each said at the step where it bites, and the others at the end.
class card_cautions {
public:
    explicit card_cautions(fitwright::cautions biting) : left_(biting) {}

    /// Those of this step that have not been said yet.
    std::string at(std::initializer_list<caution> step) {
        std::string html;
        for (const caution c : step) {
            if (!left_.contains(c) || said_.contains(c)) continue;
            html += paragraph("caution", std::string(in_words(c)));
            said_ |= c;
        }
        return html;
    }

    std::string others(const std::vector<std::string>& of_the_job) {
        std::string html;
        for (const caution c : all_cautions) html += at({c});
        for (const std::string& one : of_the_job) html += paragraph("caution", one);
        return html;
    }

private:
    fitwright::cautions left_;
    fitwright::cautions said_;
};

std::string remarks(const pair_answer& a) {
    std::string items;
    for (const fault& f : a.asked.faults)
        items += fmt::format("<li>{}<span>refused: {}</span></li>\n", sign(verdict::cannot_tell),
                             escaped(in_words(f)));
    for (const remark& r : a.look_at)
        items += fmt::format("<li>{}<span>{}</span></li>\n", sign(r.brings), shown(r.text));
    return items.empty() ? items : "<ul class=\"remarks\">\n" + items + "</ul>\n";
}

std::string wants(const pair_answer& a) {
    if (!a.judging) return {};
    const judging_answer& judged = *a.judging;
    std::string html;
    if (!judged.rows.empty()) {
        table t("What it must do, and whether it does within the limits",
                {"wants", "the tightest pair", "the loosest pair", "allows, at 20 \u00B0C"});
        for (const want_row& r : judged.rows) {
            const verdict v = r.holds == fitwright::holding::yes  ? verdict::good
                              : r.holds == fitwright::holding::no ? verdict::wont_do
                                                                  : verdict::cannot_tell;
            t.row({sign(v) + escaped(in_words(r.wanted)), shown(r.tightest.words), shown(r.loosest.words),
                   shown(allowed_in_words(r.allows))});
        }
        html += t.markup();
    }
    std::vector<std::string> open;
    for (const open_want& w : judged.unjudged)
        open.push_back(fmt::format("{}: not judged, it takes {}", in_words(w.mine), w.missing));
    if (!judged.cannot_tell.empty()) open.push_back("can't tell: " + judged.cannot_tell);
    return html + (open.empty() ? "" : list(open));
}

std::string choices(const pair_answer& a) {
    if (!a.choosing) return {};
    std::vector<std::string> lines;
    for (const fact& f : facts_of(*a.choosing)) lines.push_back(f.text);
    return titled_list(a.choosing->decides ? "Chosen" : "Would do", lines);
}

std::string clearance(const pair_answer& a, units_shown units) {
    const clearance_answer& c = *a.clearance;
    const tenths in = in_tenths(c);
    std::string words;
    if (units != units_shown::inch)
        words = fmt::format("{} to {} \u00B5m, mean {}", um(c.least), um(c.greatest), um(c.mean));
    if (units != units_shown::mm)
        words += fmt::format("{}{} to {} ten-thousandths of an inch", words.empty() ? "" : "; ", in.least,
                             in.greatest);
    const bool crosses_zero = c.least < fitwright::length();
    return fmt::format(
        "<p class=\"kind\"><strong>{}</strong>{}. Clearance on diameter at 20 \u00B0C: <strong>{}</strong>{}</p>\n",
        escaped(a.asked.callout), (a.asked.callout.empty() ? "" : ": ") + std::string(kind_in_words(c.kind)),
        words, crosses_zero ? " (below 0: interference)" : "");
}

std::string alternatives(const std::vector<alternative_answer>& all) {
    std::vector<std::string> lines;
    for (const alternative_answer& other : all) {
        const clearance_answer& c = other.clearance;
        lines.push_back(fmt::format("{}: {} to {} um, {}{}", other.callout, um(c.least), um(c.greatest),
                                    kind_in_words(c.kind), decisive_state(other)));
    }
    return titled_list("Instead, to compare", lines);
}

std::string heat(const heat_answer& h) {
    if (h.rows.empty()) return facts_list(facts_of(h));
    table t("Clearance in each state, \u00B5m, at the worst of the coefficients' spread",
            {"state", "hole", "shaft", "#least to greatest", "note"});
    for (std::size_t i = 0; i < h.rows.size(); ++i) {
        const hot_row& r = h.rows[i];
        std::string mark = h.tightest == i ? "tightest" : "";
        if (h.loosest == i) mark += mark.empty() ? "loosest" : ", loosest";
        t.row({escaped(r.state), shown(r.hole_at), shown(r.shaft_at),
               r.clearance ? escaped(about_um(*r.clearance)) : "?",
               r.clearance ? mark : escaped(r.no_answer)});
    }
    return t.markup() + facts_list(facts_of(h));
}

std::string plan(const making_answer& m) {
    if (!m.plan) return {};
    table t("Plan for the hole, for " + m.material + ": on diameter, mm",
            {"step", "after it", "leaves", "rule"});
    for (const step_row& r : rows_of(*m.plan)) t.row({escaped(r.step), r.after, r.leaves, r.rule});
    return t.markup() + facts_list(remarks_on(*m.plan));
}

std::string sources(const pair_answer& a) {
    std::string all;
    for (const part_answer& p : a.parts)
        if (p.size) all += fmt::format("{}{}: {}", all.empty() ? "" : "; ", p.role, p.size->source);
    return paragraph("source", all.empty() ? "" : "Source: " + all);
}

/// A step with its heading, its cautions first; nothing for a step that has nothing to say.
std::string step(std::string_view title, const std::string& cautions, const std::string& markup) {
    return markup.empty() ? ""
                          : fmt::format("<section>\n<h4>{}</h4>\n{}{}</section>\n", title, cautions, markup);
}

} // namespace

std::string card(const pair_answer& a, const job& j, std::size_t number, const card_style& style) {
    const pair& p = a.asked;
    card_cautions cautions(a.biting);
    std::string html =
        fmt::format("<article class=\"card\" id=\"pair-{0}\" aria-labelledby=\"name-{0}\">\n<header>"
                    "<h3 id=\"name-{0}\">{1} {2}</h3>{3}</header>\n",
                    number, escaped(p.id), escaped(p.name), badge(a.verdict()));
    html += paragraph("must", p.behaviour);
    html += answer(a, style.units);
    html += remarks(a);
    html += figures(picture_of_sizes(a, j, style.units), style.looks);
    html += "<div class=\"side\">\n";
    html += wants(a);
    html += choices(a);
    if (a.clearance) html += clearance(a, style.units);
    html += paragraph("note", given(p));
    if (p.stack) html += facts_list(facts_of(*p.stack));
    html += "</div>\n";
    html += alternatives(a.instead);
    if (a.making)
        html += step("Making the hole", cautions.at({caution::rotating}),
                     figures(picture_of_plan(a, style.units), style.looks) + plan(*a.making));
    if (a.pressing)
        html +=
            step("Pressing it together", cautions.at({caution::press_force, caution::brittle, caution::cold}),
                 figures(picture_of_pressing(a, j), style.looks) + facts_list(facts_of(*a.pressing, p)));
    if (a.heat)
        html += step("In heat and cold", cautions.at({caution::hot}),
                     figures(picture_of_heat(a, j, style.units), style.looks) + heat(*a.heat));
    if (a.leak)
        html += step("What leaks", cautions.at({caution::under_pressure}), facts_list(facts_of(*a.leak)));
    if (a.film) html += step("On oil", cautions.at({caution::rotating}), facts_list(facts_of(*a.film)));
    if (a.end_float) html += step("End float", "", facts_list(facts_of(*a.end_float)));
    html += step("Why", "", figures(picture_of_chance(a, style.units), style.looks) + facts_list(details(a)));
    html += cautions.others(p.cautions);
    return html + sources(a) + "</article>\n";
}

} // namespace job_sheet::html
