#include "html.hpp"

#include "escape_html.hpp"
#include "figures.hpp"

#include <fmt/format.h>

namespace job_sheet::html {

std::string paragraph(std::string_view kind, std::string_view text) {
    return text.empty() ? "" : fmt::format("<p class=\"{}\">{}</p>\n", kind, shown(text));
}

std::string list(const std::vector<std::string>& texts) {
    std::string items;
    for (const std::string& one : texts) items += fmt::format("<li>{}</li>\n", shown(one));
    return "<ul>\n" + items + "</ul>\n";
}

std::string titled_list(std::string_view title, const std::vector<std::string>& texts) {
    return texts.empty() ? "" : fmt::format("<h4>{}</h4>\n{}", title, list(texts));
}

std::string facts_list(const std::vector<fact>& all) {
    std::string html;
    std::string before;
    for (const fact& one : all) {
        if (one.label != before) html += fmt::format("<dt>{}</dt>", escaped(one.label));
        html += fmt::format("<dd>{}</dd>\n", shown(one.text));
        before = one.label;
    }
    return html.empty() ? html : "<dl>\n" + html + "</dl>\n";
}

table::table(std::string_view caption, const std::vector<std::string>& heads) : caption_(escaped(caption)) {
    for (const std::string& head : heads) {
        const bool is_number = head.starts_with('#');
        is_number_.push_back(is_number);
        head_ += fmt::format("<th scope=\"col\"{}>{}</th>", is_number ? " class=\"n\"" : "",
                             escaped(std::string_view(head).substr(is_number ? 1 : 0)));
    }
}

void table::row(const std::vector<std::string>& cells) {
    body_ += "<tr>";
    for (std::size_t i = 0; i < cells.size(); ++i)
        body_ += i == 0 ? fmt::format("<th scope=\"row\">{}</th>", cells[i])
                        : fmt::format("<td{}>{}</td>", is_number_[i] ? " class=\"n\"" : "", cells[i]);
    body_ += "</tr>\n";
}

std::string table::markup() const {
    return fmt::format(
        "<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"{0}\"><table>\n"
        "<caption>{0}</caption>\n<thead><tr>{1}</tr></thead>\n<tbody>\n{2}</tbody></table></div>\n",
        caption_, head_, body_);
}

// ---- verdicts

namespace {

std::string_view name_of(verdict v) {
    switch (v) {
    case verdict::good: return "good";
    case verdict::look_at: return "look";
    case verdict::cannot_tell: return "cant";
    case verdict::wont_do: return "wont";
    }
    return "";
}

} // namespace

std::string sign(verdict v) {
    return fmt::format("<svg class=\"sign {0}\" aria-hidden=\"true\"><use href=\"#{0}\"/></svg>", name_of(v));
}

std::string badge(verdict v) {
    return fmt::format("<span class=\"verdict {}\">{}{}</span>", name_of(v), sign(v), escaped(in_words(v)));
}

/// A tick in a ring, a triangle with a stroke, a square with a question, a cross on a filled octagon: four outlines
/// that a copier and any eye keep apart.
std::string_view signs() {
    return R"svg(<svg width="0" height="0" class="signs" aria-hidden="true"><defs>
<symbol id="good" viewBox="0 0 20 20"><circle cx="10" cy="10" r="8.5" fill="none" stroke="currentColor" stroke-width="2"/><path d="M5.5 10.5L9 14L14.5 6.5" fill="none" stroke="currentColor" stroke-width="2.4"/></symbol>
<symbol id="look" viewBox="0 0 20 20"><path d="M10 1.8L19 18H1Z" fill="none" stroke="currentColor" stroke-width="2" stroke-linejoin="round"/><path d="M10 7V12.5M10 14.2V16.4" stroke="currentColor" stroke-width="2.2"/></symbol>
<symbol id="cant" viewBox="0 0 20 20"><path d="M2 2H18V18H2Z" fill="none" stroke="currentColor" stroke-width="2"/><path d="M6.8 7.4A3.2 3.2 0 1 1 10 10.6V12.4M10 14V16" fill="none" stroke="currentColor" stroke-width="2.2"/></symbol>
<symbol id="wont" viewBox="0 0 20 20"><path d="M6 1H14L19 6V14L14 19H6L1 14V6Z" fill="currentColor"/><path d="M6 6L14 14M14 6L6 14" stroke="#fff" stroke-width="2.6"/></symbol>
</defs></svg>
)svg";
}

} // namespace job_sheet::html
