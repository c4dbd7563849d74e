#include "ascii.hpp"

namespace job_sheet {

namespace {

struct stand_in {
    std::string_view sign;
    std::string_view ascii;
};
constexpr stand_in stand_ins[] = {
    {"\u2300", "dia "}, {"\u00D8", "dia "}, {"\u00B0", "deg "}, {"\u00B5", "u"},  {"\u03BC", "u"},
    {"\u00B1", "+/-"},  {"\u00D7", "x"},    {"\u2212", "-"},    {"\u2013", "-"},  {"\u2014", "-"},
    {"\u2018", "'"},    {"\u2019", "'"},    {"\u201C", "\""},   {"\u201D", "\""}, {"\u2033", "\""},
    {"\u2026", "..."},  {"\u00A0", " "},
};

} // namespace

std::string ascii(std::string_view utf8) {
    std::string plain;
    while (!utf8.empty()) {
        const char c = utf8[0];
        std::size_t size = 1;
        if (c >= ' ' && c <= '~') {
            plain += c;
        } else if (c == '\n' || c == '\t') {
            plain += ' ';
        } else {
            std::string_view by = "?";
            for (const stand_in& s : stand_ins) {
                if (!utf8.starts_with(s.sign)) continue;
                by = s.ascii;
                size = s.sign.size();
                break;
            }
            while (size < utf8.size() && (static_cast<unsigned char>(utf8[size]) & 0xC0) == 0x80) ++size;
            plain += by;
        }
        utf8.remove_prefix(size);
    }
    return plain;
}

} // namespace job_sheet
