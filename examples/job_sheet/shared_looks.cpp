#include "shared_looks.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

/// Attributes that CSS has properties of the same name for (SVG 1.1, Presentation Attributes). A size of letters
/// alone needs a unit there.
bool is_a_look(std::string_view name) {
    constexpr std::string_view looks[] = {"fill",      "stroke",      "stroke-width", "stroke-dasharray",
                                          "font-size", "font-weight", "font-family",  "text-anchor"};
    return std::find(std::begin(looks), std::end(looks), name) != std::end(looks);
}

struct attribute {
    std::string_view name;
    std::string_view value;
};

/// Takes the next ` name="value"` off the front of a tag's rest; false at its end.
bool take_attribute(std::string_view& rest, attribute& a) {
    const std::size_t begin = rest.find_first_not_of(' ');
    if (begin == std::string_view::npos || rest[begin] == '/' || rest[begin] == '>') return false;
    const std::size_t equals = rest.find("=\"", begin);
    if (equals == std::string_view::npos) return false;
    const std::size_t end = rest.find('"', equals + 2);
    if (end == std::string_view::npos) return false;
    a = {rest.substr(begin, equals - begin), rest.substr(equals + 2, end - equals - 2)};
    rest.remove_prefix(end + 1);
    return true;
}

} // namespace

std::string shared_looks::class_of(const std::string& looks) {
    auto at = std::find(looks_.begin(), looks_.end(), looks);
    if (at == looks_.end()) at = looks_.insert(looks_.end(), looks);
    return fmt::format("p{}", at - looks_.begin());
}

std::string shared_looks::shorten(std::string_view svg) {
    std::string made;
    while (!svg.empty()) {
        const std::size_t open = svg.find('<');
        made += svg.substr(0, open);
        if (open == std::string_view::npos) break;
        svg.remove_prefix(open);
        if (constexpr std::string_view end = "</desc>\n"; svg.starts_with("<desc>")) {
            svg.remove_prefix(svg.find(end) + end.size());
            continue;
        }
        const std::size_t close = svg.find('>'); // what is text has &gt; for it
        std::string_view rest = svg.substr(0, close + 1);
        const std::size_t name_ends = rest.find_first_of(" />", 1);
        std::string tag(rest.substr(0, name_ends));
        std::string looks;
        rest.remove_prefix(name_ends);
        for (attribute a; take_attribute(rest, a);) {
            const bool is_size = a.name == "font-size";
            if (is_a_look(a.name))
                looks +=
                    fmt::format("{}{}:{}{}", looks.empty() ? "" : ";", a.name, a.value, is_size ? "px" : "");
            else if (a.name != "class" && a.name != "xmlns") // a page in HTML needs neither
                tag += fmt::format(" {}=\"{}\"", a.name, a.value);
        }
        if (!looks.empty()) tag += fmt::format(" class=\"{}\"", class_of(looks));
        made += tag + std::string(rest);
        svg.remove_prefix(close + 1);
    }
    return made;
}

std::string shared_looks::style_sheet() const {
    std::string css;
    for (std::size_t i = 0; i < looks_.size(); ++i) css += fmt::format(".p{}{{{}}}\n", i, looks_[i]);
    return css;
}

} // namespace job_sheet
