#include "escape_html.hpp"
#include "figures.hpp"
#include "html.hpp"
#include "shop_words.hpp"

#include <fmt/format.h>

namespace job_sheet::html {

namespace {

std::string in_inches(const size_answer& s) {
    if (!s.inches) return "no inch limits: less than 0.00001 in apart";
    const inch_limits& i = *s.inches;
    std::string words = fmt::format("{} to {} in", inches(i.lower, i.decimals), inches(i.upper, i.decimals));
    if (s.measured) words += " (outwards)";
    return words;
}

/// The size to be seen from a step away, the other unit below it.
std::string sizes(const size_answer& s, units_shown units) {
    const std::string metric = fmt::format("{} to {} mm", mm(s.lower_limit), mm(s.upper_limit));
    const bool inches_lead = units == units_shown::inch && s.inches;
    std::string html = fmt::format("<p class=\"size\">{}</p>\n", inches_lead ? in_inches(s) : metric);
    if (units == units_shown::both) html += paragraph("other", in_inches(s));
    if (s.target) html += paragraph("aim", aim_in_words(s));
    return html;
}

/// Lines to write on.
std::string blanks() {
    return "<p class=\"blank\">measured <span></span> by <span class=\"who\"></span></p>\n";
}

std::string part(const pair_answer& a, const part_answer& p, units_shown units) {
    std::string html =
        fmt::format("<div class=\"part\">\n<h4>{} <strong>{}</strong> <span>{}{}</span></h4>\n",
                    p.is_made_here ? "make the " + p.role : p.role, escaped(p.as_read), escaped(p.name),
                    p.material.empty() ? "" : ", " + escaped(p.material));
    if (!p.size) return html + "<p>no size of its own</p></div>\n";
    html += sizes(*p.size, units);
    if (p.role == "hole" && p.is_made_here) {
        html += paragraph("way", way_to_make(a));
        html += paragraph("way", a.seated_first);
    }
    for (const gauge_answer& g : a.gauges)
        if (g.role == p.role) html += paragraph("check", "check: " + check_in_words(g, units));
    for (const reading_answer& r : a.readings)
        if (r.role == p.role) html += paragraph("check", "reading: " + reading_in_words(r));
    if (p.is_made_here || a.asked.stack) html += blanks();
    return html + "</div>\n";
}

} // namespace

std::string answer(const pair_answer& a, units_shown units) {
    std::string html;
    for (const part_answer& p : a.parts) html += part(a, p, units);
    if (html.empty()) return html;
    html = "<div class=\"parts\">\n" + html + "</div>\n";
    if (a.leading && !a.leading->no_bore.empty()) html += paragraph("way", "no bore: " + a.leading->no_bore);
    return html;
}

std::string contents(const sheet& s, units_shown units) {
    table t("Pairs, what is to be made, and how it stands", {"pair", "make", "verdict"});
    for (std::size_t i = 0; i < s.pairs.size(); ++i) {
        const pair_answer& a = s.pairs[i];
        t.row(
            {fmt::format("<a href=\"#pair-{}\">{} {}</a>", i + 1, escaped(a.asked.id), escaped(a.asked.name)),
             shown(to_make(a, units)), badge(a.verdict())});
    }
    return t.markup() + paragraph("count", count_in_words(s));
}

} // namespace job_sheet::html
