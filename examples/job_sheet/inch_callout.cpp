#include "inch_callout.hpp"

#include "measures.hpp"

#include <charconv>

namespace job_sheet {

namespace {

struct family {
    std::string_view letters;
    int classes;
};
constexpr family families[] = {{"RC", 9}, {"LC", 11}, {"LT", 6}, {"LN", 3}, {"FN", 5}};

bool is_inch_class(std::string_view word) {
    for (const family& f : families) {
        if (!word.starts_with(f.letters)) continue;
        const std::string_view digits = word.substr(f.letters.size());
        const char* const end = digits.data() + digits.size();
        int number = 0;
        const auto read = std::from_chars(digits.data(), end, number);
        return read.ec == std::errc() && read.ptr == end && digits[0] != '0' && number >= 1 && number <= f.classes;
    }
    return false;
}

} // namespace

std::optional<inch_fit> read_inch_fit(std::string_view text) {
    while (text.ends_with(' ')) text.remove_suffix(1);
    const std::size_t blank = text.find_last_of(' ');
    if (blank == std::string_view::npos) return std::nullopt;
    const std::string_view fit_class = text.substr(blank + 1);
    std::string_view size = text.substr(0, blank);
    while (size.ends_with(' ')) size.remove_suffix(1);
    const auto nominal = read_length(size);
    const bool inches = size.ends_with("in") || size.ends_with("inch") || size.ends_with('"');
    if (!is_inch_class(fit_class) || !nominal || !inches || *nominal <= fitwright::length()) return std::nullopt;
    return inch_fit{std::string(fit_class), *nominal};
}

} // namespace job_sheet
