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

} // namespace job_sheet

#endif
