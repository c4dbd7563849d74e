#include "text_lines.hpp"

#include "ascii.hpp"
#include "shared/utf8.hpp"

#include <algorithm>

namespace job_sheet {

namespace {

struct span {
    char32_t first;
    char32_t last;
};

/// Left out of the page: they steer the terminal, or turn the line about. C0 is looked after apart.
constexpr span steering[] = {{0x7F, 0x9F}, {0x2028, 0x202E}, {0x2066, 0x2069}, {0xFEFF, 0xFEFF}};
/// Written over the character before.
constexpr span of_no_width[] = {{0x300, 0x36F}, {0x200B, 0x200F}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}};
/// Two columns wide: the blocks that Unicode's East Asian Width calls wide, and the emoji (Annex 11).
constexpr span of_double_width[] = {{0x1100, 0x115F},   {0x2E80, 0xA4CF},  {0xAC00, 0xD7A3},
                                    {0xF900, 0xFAFF},   {0xFE30, 0xFE6F},  {0xFF00, 0xFF60},
                                    {0x1F300, 0x1FAFF}, {0x20000, 0x3FFFD}};

template <std::size_t Size> bool is_in(const span (&spans)[Size], char32_t c) {
    return std::any_of(std::begin(spans), std::end(spans),
                       [c](const span& s) { return c >= s.first && c <= s.last; });
}

/// The character of `size` bytes at the front.
char32_t code_point(std::string_view text, std::size_t size) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    if (size == 1) return byte(0);
    char32_t c = byte(0) & (0x7Fu >> size);
    for (std::size_t i = 1; i < size; ++i) c = (c << 6) | (byte(i) & 0x3Fu);
    return c;
}

std::size_t columns_of(char32_t c) { return is_in(of_no_width, c) ? 0 : is_in(of_double_width, c) ? 2 : 1; }

/// How many bytes from the front fill at most so many columns.
std::size_t bytes_of(std::string_view utf8, std::size_t columns) {
    std::size_t bytes = 0;
    while (bytes < utf8.size()) {
        const std::size_t size = (std::max)(std::size_t{1}, shared::utf8_size(utf8.substr(bytes)));
        const std::size_t wide = columns_of(code_point(utf8.substr(bytes), size));
        if (wide > columns) break;
        columns -= wide;
        bytes += size;
    }
    return bytes;
}

} // namespace

std::size_t columns_of(std::string_view utf8) {
    std::size_t columns = 0;
    while (!utf8.empty()) {
        const std::size_t size = (std::max)(std::size_t{1}, shared::utf8_size(utf8));
        columns += columns_of(code_point(utf8, size));
        utf8.remove_prefix(size);
    }
    return columns;
}

std::string text_lines::written(std::string_view utf8) const {
    if (lettering_ == lettering::plain) return ascii(utf8);
    std::string line;
    while (!utf8.empty()) {
        const std::size_t size = shared::utf8_size(utf8);
        const char32_t c = size == 0 ? 0 : code_point(utf8, size);
        if (c == U'\n' || c == U'\t') line += ' ';
        else if (c < U' ' || is_in(steering, c)) line += '?';
        else line += utf8.substr(0, size);
        utf8.remove_prefix((std::max)(std::size_t{1}, size));
    }
    return line;
}

std::string text_lines::cell(std::string_view text, std::size_t width) const {
    std::string line = written(text);
    if (columns_of(line) > width) line = line.substr(0, bytes_of(line, width - 2)) + "..";
    return line + std::string(width - columns_of(line), ' ');
}

std::string text_lines::wrapped(std::string_view label, std::string_view text) const {
    const std::string words = written(text);
    const std::string first = written(label);
    if (columns_of(first) > widest / 2) return wrapped("", first + words);
    std::string_view rest = words;
    const std::size_t room = widest - columns_of(first);
    const std::string indent(columns_of(first), ' ');
    std::string lines;
    do {
        while (rest.starts_with(' ')) rest.remove_prefix(1);
        std::size_t size = bytes_of(rest, room);
        if (size < rest.size() && rest[size] != ' ') {
            const std::size_t blank = rest.substr(0, size).find_last_of(' ');
            if (blank != std::string_view::npos && blank != 0) size = blank; // else one word fills the line
        }
        std::string line = lines.empty() ? first : indent;
        line += rest.substr(0, size);
        line.erase(line.find_last_not_of(' ') + 1);
        lines += line + '\n';
        rest.remove_prefix(size);
    } while (rest.find_first_not_of(' ') != std::string_view::npos);
    return lines;
}

std::string text_lines::bullets(std::string_view label, const std::vector<std::string>& all) const {
    const std::string indent(label.size(), ' ');
    std::string lines;
    for (const std::string& one : all)
        lines += wrapped(std::string(lines.empty() ? label : indent) + "- ", one);
    return lines;
}

} // namespace job_sheet
