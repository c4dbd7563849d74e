#ifndef JOB_SHEET_TEXT_LINES_HPP
#define JOB_SHEET_TEXT_LINES_HPP

#include <string>
#include <string_view>
#include <vector>

// Text for a terminal, in lines of at most 100 columns.

namespace job_sheet {

/// How the names and the words of the job are written.
enum class lettering {
    as_written, ///< in UTF-8, but for what would steer the terminal
    plain,      ///< in ASCII, for old printers and terminals
};

class text_lines {
public:
    explicit text_lines(lettering l) : lettering_(l) {}

    static constexpr std::size_t widest = 100;

    /// On one line: line breaks become blanks; what is no character, or would steer the terminal, "?".
    [[nodiscard]] std::string written(std::string_view utf8) const;
    /// As wide as a column, to be cut off with ".." if it is wider.
    [[nodiscard]] std::string cell(std::string_view text, std::size_t width) const;
    /// The words of `text`, the first line behind `label`, the others below it.
    [[nodiscard]] std::string wrapped(std::string_view label, std::string_view text) const;
    /// Each of them behind a dash.
    [[nodiscard]] std::string bullets(std::string_view label, const std::vector<std::string>& all) const;

private:
    lettering lettering_;
};

/// How many columns a terminal gives to text without control characters.
[[nodiscard]] std::size_t columns_of(std::string_view utf8);

} // namespace job_sheet

#endif
