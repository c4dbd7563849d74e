#include "cautions.hpp"
#include "escape_html.hpp"
#include "figures.hpp"
#include "html.hpp"
#include "html_style.hpp"
#include "shop_words.hpp"
#include "writers.hpp"

#include <fmt/format.h>

namespace job_sheet {

namespace html {

namespace {

/// Whichever there is less of goes across.
std::string states(const job& j) {
    if (j.states.empty()) return {};
    const auto reading = [&](const state& s, std::size_t g) {
        return s.temperatures[g] ? shown(s.temperatures[g]->written) : std::string("?");
    };
    constexpr std::size_t most_across = 6;
    std::vector<std::string> heads = {j.groups.size() <= most_across ? "state" : "group"};
    std::vector<std::vector<std::string>> rows;
    if (j.groups.size() <= most_across) {
        for (const group& g : j.groups) heads.push_back(g.name);
        heads.emplace_back("note");
        for (const state& s : j.states) {
            rows.push_back({escaped(s.id)});
            for (std::size_t g = 0; g < j.groups.size(); ++g) rows.back().push_back(reading(s, g));
            rows.back().push_back(escaped(s.note));
        }
    } else {
        for (const state& s : j.states) heads.push_back(s.id);
        for (std::size_t g = 0; g < j.groups.size(); ++g) {
            rows.push_back({escaped(j.groups[g].name)});
            for (const state& s : j.states) rows.back().push_back(reading(s, g));
        }
    }
    table t("Temperatures of the groups of parts", heads);
    for (const auto& row : rows) t.row(row);
    return "<h3>States</h3>\n" + t.markup();
}

} // namespace

std::string about_the_job(const sheet& s) {
    std::string html = states(s.asked);
    for (const facts& all : facts_of(s.asked))
        html += fmt::format("<h3>{}</h3>\n{}", all.title, facts_list(all.lines));
    if (const auto plans = about_plans(s); !plans.empty())
        html += "<h3>About the plans for holes</h3>\n" + list(plans);
    return html.empty() ? html : "<section class=\"job\">\n<h2>The job</h2>\n" + html + "</section>\n";
}

} // namespace html

namespace {

std::string all_sizes_at(const job& j, units_shown units) {
    if (!j.sizes_at) return {};
    std::string words = fmt::format("All sizes at {}.", j.sizes_at->written);
    if (units != units_shown::mm)
        words += " Limits in inches are rounded inwards: what they let pass, the limits in mm let pass.";
    return html::paragraph("note", words);
}

std::string title_of(const job& j) { return j.title.empty() ? "A job without a title" : escaped(j.title); }

std::string head(const job& j, units_shown units) {
    std::string page = fmt::format("<header>\n<h1>{}</h1>\n{}{}</header>\n", title_of(j),
                                   html::paragraph("about", j.about), all_sizes_at(j, units));
    page += "<main>\n";
    std::vector<std::string> wrong;
    for (const fault& f : j.faults_outside_pairs) wrong.push_back(in_words(f));
    if (!wrong.empty()) page += "<h2>Wrong in the job file</h2>\n" + html::list(wrong);
    std::vector<std::string> cautions = j.cautions;
    cautions.emplace_back(whom_to_ask);
    page += "<section class=\"cautions\" aria-labelledby=\"cautions\">\n<h2 id=\"cautions\">Cautions</h2>\n" +
            html::list(cautions) + "</section>\n";
    return page;
}

} // namespace

std::string html_sheet(const sheet& s, units_shown units) {
    shared_looks looks;
    std::string body =
        head(s.asked, units) + "<h2>How it stands</h2>\n" + html::contents(s, units) + "<h2>Pairs</h2>\n";
    for (std::size_t i = 0; i < s.pairs.size(); ++i)
        body += html::card(s.pairs[i], s.asked, i + 1, {.units = units, .looks = looks});
    body += html::about_the_job(s) + "</main>\n";
    return fmt::format(
        "<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        "<title>Job sheet: {}</title>\n<style>{}{}</style>\n</head>\n<body>\n{}{}</body>\n</html>\n",
        title_of(s.asked), html_style, looks.style_sheet(), html::signs(), body);
}

} // namespace job_sheet
