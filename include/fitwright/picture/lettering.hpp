#ifndef FITWRIGHT_PICTURE_LETTERING_HPP
#define FITWRIGHT_PICTURE_LETTERING_HPP

#include <fitwright/picture/characters.hpp>
#include <fitwright/picture/pixels.hpp>

namespace fitwright::detail::svg {

/// How wide the characters from 32 to 126 are, in hundredths of the size of the letters. A viewer takes the
/// sans-serif it has; these are the widths of one of the widest, rounded up, so that others only leave room.
inline constexpr std::uint8_t letter_widths[] = {
    // clang-format off
     32,  41,  46,  84,  64,  96,  78,  28,  40,  40,  50,  84,  32,  37,  32,  34, // blank to /
     64,  64,  64,  64,  64,  64,  64,  64,  64,  64,  34,  34,  84,  84,  84,  54, // 0 to ?
    100,  69,  69,  70,  78,  64,  58,  78,  76,  30,  30,  66,  56,  87,  75,  79, // @ to O
     61,  79,  70,  64,  62,  74,  69,  99,  69,  62,  69,  40,  34,  40,  84,  50, // P to _
     50,  62,  64,  55,  64,  62,  36,  64,  64,  28,  28,  58,  28,  98,  64,  62, // ` to o
     64,  64,  42,  53,  40,  64,  60,  82,  60,  60,  53,  64,  34,  64,  84,      // p to ~
    // clang-format on
};
static_assert(sizeof letter_widths == 95);

/// Letters of a size, thin or bold.
struct letters {
    px size = px::of(13);
    bool is_bold = false;
};

[[nodiscard]] constexpr px width_of(character c, letters l) noexcept {
    const bool is_latin_one = c.code >= 0xA0 && c.code < 0x180;
    int hundredths = is_latin_one ? 84 : 105;
    if (c.code >= 32 && c.code < 127) hundredths = letter_widths[c.code - 32];
    if (l.is_bold) hundredths = (hundredths * 6 + 4) / 5; // of the thin ones at most
    return l.size * hundredths / 100;
}

[[nodiscard]] constexpr px width_of(text t, letters l = {}) noexcept {
    px all;
    for (std::size_t i = 0; i < t.size();) {
        const character c = character_at(t, i);
        all += width_of(c, l);
        i += c.bytes;
    }
    return all;
}

/// Takes a line's worth off the front of `rest`: broken at a blank, or inside a word that is longer.
[[nodiscard]] constexpr text next_line(text& rest, px width, letters l = {}) noexcept {
    std::size_t first = 0;
    while (first < rest.size() && rest[first] == ' ') ++first;
    rest = text(rest.data() + first, rest.size() - first);

    px used;
    std::size_t i = 0;
    std::size_t at_blank = 0;
    while (i < rest.size()) {
        const character c = character_at(rest, i);
        if (c.code == ' ') at_blank = i;
        used += width_of(c, l);
        if (used > width && i > 0) break;
        i += c.bytes;
    }
    const std::size_t end = i == rest.size() ? i : at_blank > 0 ? at_blank : i;
    const text line(rest.data(), end);
    rest = text(rest.data() + end, rest.size() - end);
    return line;
}

} // namespace fitwright::detail::svg

#endif
