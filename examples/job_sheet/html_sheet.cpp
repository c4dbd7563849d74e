#include "escape_html.hpp"
#include "facts.hpp"
#include "figures.hpp"
#include "html_style.hpp"
#include "picture.hpp"
#include "shop_words.hpp"
#include "writers.hpp"

#include <fmt/format.h>

namespace job_sheet {

namespace {

std::string paragraph(std::string_view kind, std::string_view text) {
    return text.empty() ? "" : fmt::format("<p class=\"{}\">{}</p>\n", kind, escaped(text));
}

std::string list(const std::vector<std::string>& all) {
    std::string items;
    for (const std::string& one : all) items += fmt::format("<li>{}</li>\n", escaped(one));
    return "<ul>\n" + items + "</ul>\n";
}

std::string titled_list(std::string_view title, const std::vector<std::string>& all) {
    return all.empty() ? "" : fmt::format("<div><h4>{}</h4>\n{}</div>\n", title, list(all));
}

// ---- the job's own data

std::string states_table(const job& j) {
    if (j.states.empty()) return {};
    std::string html =
        "<h2>States</h2>\n<div class=\"wide\"><table>\n<caption>Temperatures of the groups of parts</caption>\n"
        "<thead><tr><th scope=\"col\">state</th>";
    for (const group& g : j.groups) html += fmt::format("<th scope=\"col\">{}</th>", escaped(g.name));
    html += "<th scope=\"col\">note</th></tr></thead>\n<tbody>\n";
    for (const state& s : j.states) {
        html += fmt::format("<tr><th scope=\"row\">{}</th>", escaped(s.id));
        for (const auto& reading : s.temperatures)
            html += fmt::format("<td class=\"nowrap\">{}</td>", reading ? escaped(reading->written) : "?");
        html += fmt::format("<td>{}</td></tr>\n", escaped(s.note));
    }
    return html + "</tbody></table></div>\n";
}

/// A label that repeats is written once.
std::string facts_list(const std::vector<fact>& all, std::string_view kind = "facts") {
    std::string html;
    std::string before;
    for (const fact& one : all) {
        if (one.label != before) html += fmt::format("<dt>{}</dt>", escaped(one.label));
        html += fmt::format("<dd>{}</dd>\n", escaped(one.text));
        before = one.label;
    }
    return html.empty() ? html : fmt::format("<dl class=\"{}\">\n{}</dl>\n", kind, html);
}

std::string contents(const sheet& s) {
    std::string html = "<nav aria-label=\"Pairs\"><ul>\n";
    for (std::size_t i = 0; i < s.pairs.size(); ++i)
        html += fmt::format("<li><a href=\"#pair-{}\">{} {}</a></li>\n", i + 1, escaped(s.pairs[i].asked.id),
                            escaped(s.pairs[i].asked.name));
    return html + "</ul></nav>\n";
}

// ---- a pair

std::string limits_in_inches(const size_answer& s) {
    if (!s.inches) return "less than 0.00001 apart";
    const inch_limits& i = *s.inches;
    std::string cell = fmt::format("<span class=\"nowrap\">{} to {}</span>", inches(i.lower, i.decimals),
                                   inches(i.upper, i.decimals));
    if (s.measured) cell += "<br><span class=\"note\">measured: rounded outwards</span>";
    else if (i.decimals == 5) cell += "<br><span class=\"note\">5 decimals: 4 leave too little</span>";
    return cell;
}

std::string part_row(const part_answer& p) {
    const std::string material = p.material.empty() ? "" : ", " + escaped(p.material);
    std::string html = fmt::format(
        "<tr><th scope=\"row\">{} <span class=\"callout\">{}</span><br><span class=\"note\">{}{}</span></th>",
        p.role, escaped(p.as_read), escaped(p.name), material);
    if (!p.size) return html + "<td colspan=\"3\">no size of its own</td></tr>\n";
    const size_answer& s = *p.size;
    const std::string aim = s.target ? "<br><span class=\"aim\">" + escaped(aim_in_words(s)) + "</span>" : "";
    return html +
           fmt::format(
               "<td class=\"number\">{}<br>{}</td><td><span class=\"limits\">{} to {}</span>{}</td><td>{}</td></tr>\n",
               signed_um(s.upper_deviation), signed_um(s.lower_deviation), mm(s.lower_limit),
               mm(s.upper_limit), aim, limits_in_inches(s));
}

std::string parts_table(const pair_answer& a) {
    if (a.parts.empty()) return {};
    std::string html =
        "<div class=\"wide\"><table>\n<caption>Limits of size</caption>\n<thead><tr><th scope=\"col\">part</th>"
        "<th scope=\"col\" class=\"number\">um</th><th scope=\"col\">mm</th><th scope=\"col\">in</th></tr></thead>\n<tbody>\n";
    for (const part_answer& p : a.parts) html += part_row(p);
    return html + "</tbody></table></div>\n";
}

std::string clearance_table(const clearance_answer& c) {
    const tenths t = in_tenths(c);
    const auto row = [](std::string_view unit, auto least, auto mean, auto greatest) {
        return fmt::format(
            "<tr><th scope=\"row\">{}</th><td class=\"number\">{}</td><td class=\"number\">{}</td><td class=\"number\">{}</td></tr>\n",
            unit, least, mean, greatest);
    };
    return "<div class=\"wide\"><table>\n<caption>Clearance on diameter (below 0: interference)</caption>\n"
           "<thead><tr><td></td><th scope=\"col\" class=\"number\">least</th><th scope=\"col\" class=\"number\">mean</th>"
           "<th scope=\"col\" class=\"number\">greatest</th></tr></thead>\n<tbody>\n" +
           row("um", um(c.least), um(c.mean), um(c.greatest)) +
           row("0.0001 in", t.least, t.mean, t.greatest) + "</tbody></table></div>\n" +
           paragraph("note", "In 0.0001 in the least is rounded down, the greatest up.");
}

std::vector<std::string> in_words(const std::vector<fault>& faults) {
    std::vector<std::string> all;
    for (const fault& f : faults) all.push_back(in_words(f));
    return all;
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

std::string sources(const pair_answer& a) {
    std::string all;
    for (const part_answer& p : a.parts)
        if (p.size) all += fmt::format("{}{}: {}", all.empty() ? "" : "; ", p.role, p.size->source);
    return paragraph("source", all.empty() ? "" : "Source: " + all);
}

std::string heat_table(const heat_answer& h) {
    if (h.rows.empty()) return facts_list(facts_of(h));
    std::string html =
        "<h4>In heat and cold</h4>\n<div class=\"wide\"><table>\n<caption>Clearance on diameter, um, at the worst of the "
        "coefficients' spread (below 0: interference)</caption>\n<thead><tr><th scope=\"col\">state</th>"
        "<th scope=\"col\">hole</th><th scope=\"col\">shaft</th><th scope=\"col\" class=\"number\">least to greatest</th>"
        "<th scope=\"col\"></th></tr></thead>\n<tbody>\n";
    for (std::size_t i = 0; i < h.rows.size(); ++i) {
        const hot_row& r = h.rows[i];
        std::string mark = h.tightest == i ? "tightest" : "";
        if (h.loosest == i) mark += mark.empty() ? "loosest" : ", loosest";
        html += fmt::format(
            "<tr><th scope=\"row\">{}</th><td class=\"nowrap\">{}</td><td class=\"nowrap\">{}</td>"
            "<td class=\"number nowrap\">{}</td><td>{}</td></tr>\n",
            escaped(r.state), escaped(r.hole_at), escaped(r.shaft_at),
            r.clearance ? about_um(*r.clearance) : "?", r.clearance ? mark : escaped(r.no_answer));
    }
    return html + "</tbody></table></div>\n" + facts_list(facts_of(h));
}

std::string plan_table(const making_answer& m) {
    if (!m.plan) return {};
    std::string html = fmt::format(
        "<h4>Plan for the hole, for {}</h4>\n<div class=\"wide\"><table>\n<caption>On diameter, mm</caption>\n"
        "<thead><tr><th scope=\"col\">step</th><th scope=\"col\">after it</th><th scope=\"col\">leaves</th>"
        "<th scope=\"col\">rule</th></tr></thead>\n<tbody>\n",
        escaped(m.material));
    for (const step_row& r : rows_of(*m.plan))
        html += fmt::format("<tr><th scope=\"row\">{}</th><td>{}</td><td>{}</td><td>{}</td></tr>\n",
                            escaped(r.step), r.after, r.leaves, r.rule);
    return html + "</tbody></table></div>\n" + facts_list(remarks_on(*m.plan));
}

std::string card(const pair_answer& a, std::size_t number) {
    const pair& p = a.asked;
    const std::string_view status_class = a.status == status::look_at ? "look-at" : in_words(a.status);
    std::string html = fmt::format(
        "<article class=\"card\" id=\"pair-{0}\" aria-labelledby=\"name-{0}\">\n<header><h3 id=\"name-{0}\">{1} {2}</h3>"
        "<span class=\"status {3}\">{4}</span></header>\n",
        number, escaped(p.id), escaped(p.name), status_class, in_words(a.verdict()));
    html += titled_list("Refused", in_words(p.faults));
    html += paragraph("must", p.behaviour);
    html += paragraph("callout", p.callout);
    html += facts_list(brief(a), "brief");
    html += titled_list("Look at", texts(a.look_at));
    html += paragraph("note", given(p));
    const std::string drawn = picture(a);
    html += "<div class=\"sides\"><div>\n" + parts_table(a);
    if (p.stack) html += facts_list(facts_of(*p.stack));
    if (a.clearance)
        html += paragraph("kind", kind_in_words(a.clearance->kind)) + clearance_table(*a.clearance);
    html += "</div>\n" + (drawn.empty() ? "" : "<figure>\n" + drawn + "</figure>\n") + "</div>\n";
    html += alternatives(a.instead);
    if (a.heat) html += heat_table(*a.heat);
    if (a.leak) html += "<h4>Leak</h4>\n" + facts_list(facts_of(*a.leak));
    if (a.end_float) html += "<h4>End float</h4>\n" + facts_list(facts_of(*a.end_float));
    if (a.film) html += "<h4>Oil film</h4>\n" + facts_list(facts_of(*a.film));
    if (a.pressing) html += "<h4>Pressed together</h4>\n" + facts_list(facts_of(*a.pressing, p));
    html += facts_list(details(a));
    if (a.making) html += plan_table(*a.making);
    html += titled_list("Cautions", a.cautions);
    return html + sources(a) + "</article>\n";
}

} // namespace

std::string html_sheet(const sheet& s) {
    const job& j = s.asked;
    std::string html = fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>Job sheet: {}</title>\n<style>{}</style>\n</head>\n<body>\n",
        escaped(j.title), html_style);
    html += fmt::format("<header>\n<h1>{}</h1>\n</header>\n<main>\n", escaped(j.title)) +
            paragraph("about", j.about);
    if (j.sizes_at)
        html += paragraph(
            "note",
            fmt::format(
                "All sizes at {}. Limits in inches are rounded inwards: what they let pass, the limits in mm let pass.",
                j.sizes_at->written));
    if (!j.faults_outside_pairs.empty())
        html += "<h2>Wrong in the job file</h2>\n" + list(in_words(j.faults_outside_pairs));
    if (!j.cautions.empty())
        html +=
            "<section class=\"cautions\" aria-labelledby=\"cautions\">\n<h2 id=\"cautions\">Cautions</h2>\n" +
            list(j.cautions) + "</section>\n";
    html += contents(s) + states_table(j);
    for (const facts& all : facts_of(j))
        html += fmt::format("<h2>{}</h2>\n{}", all.title, facts_list(all.lines));
    if (const auto plans = about_plans(s); !plans.empty())
        html += "<h2>About the plans for holes</h2>\n" + list(plans);
    html += "<h2>Pairs</h2>\n";
    for (std::size_t i = 0; i < s.pairs.size(); ++i) html += card(s.pairs[i], i + 1);
    return html + fmt::format("</main>\n<footer>{}</footer>\n</body>\n</html>\n", count_in_words(s));
}

} // namespace job_sheet
