#ifndef JOB_SHEET_ESCAPE_HTML_HPP
#define JOB_SHEET_ESCAPE_HTML_HPP

#include <string>
#include <string_view>

namespace job_sheet {

/// Text that HTML and SVG take for text and nothing else, in elements and in attributes.
[[nodiscard]] inline std::string escaped(std::string_view text) {
    std::string safe;
    for (const char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '&') safe += "&amp;";
        else if (c == '<') safe += "&lt;";
        else if (c == '>') safe += "&gt;";
        else if (c == '"') safe += "&quot;";
        else if (c == '\'') safe += "&#39;";
        else if ((code < 0x20 && c != '\n' && c != '\t') || code == 0x7F) safe += "\xEF\xBF\xBD";
        else safe += c;
    }
    return safe;
}

/// The same with the signs of the units, for which a page has the letters: "8 \u00B5m", "95 \u00B0C".
[[nodiscard]] inline std::string shown(std::string_view text) {
    struct sign {
        std::string_view plain;
        std::string_view real;
    };
    constexpr sign signs[] = {{" um", " \u00B5m"}, {" degC", " \u00B0C"}};
    const auto is_in_a_word = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    };
    std::string made = escaped(text);
    for (const sign& s : signs)
        for (std::size_t at = made.find(s.plain); at != std::string::npos; at = made.find(s.plain, at + 1)) {
            const std::size_t end = at + s.plain.size();
            if (end < made.size() && is_in_a_word(made[end])) continue;
            made.replace(at, s.plain.size(), s.real);
        }
    return made;
}

} // namespace job_sheet

#endif
