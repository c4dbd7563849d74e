#ifndef FITWRIGHT_CALLOUT_SCAN_HPP
#define FITWRIGHT_CALLOUT_SCAN_HPP

#include <fitwright/text.hpp>

#include <cstdint>

// The characters of a call-out: UTF-8, blanks, signs and their look-alikes. Places are pointers;
// columns are counted only when something has to be said.

namespace fitwright::detail {

/// What `scanner::peek` answers at the end.
inline constexpr char32_t no_more = 0xFFFF'FFFF;

/// The first byte that is not UTF-8 (RFC 3629: no overlong forms, no surrogates), or `last`.
[[nodiscard]] constexpr const char* first_not_utf8(const char* first, const char* last) noexcept {
    while (first != last) {
        const auto lead = static_cast<unsigned char>(*first);
        if (lead < 0x80) {
            ++first;
            continue;
        }
        const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : 1;
        if (lead < 0xC2 || lead > 0xF4 || last - first <= more) return first;
        for (int i = 1; i <= more; ++i)
            if ((static_cast<unsigned char>(first[i]) & 0xC0) != 0x80) return first;
        const auto second = static_cast<unsigned char>(first[1]);
        if ((lead == 0xE0 && second < 0xA0) || (lead == 0xED && second > 0x9F) ||
            (lead == 0xF0 && second < 0x90) || (lead == 0xF4 && second > 0x8F))
            return first;
        first += more + 1;
    }
    return last;
}

[[nodiscard]] constexpr bool is_digit(char32_t c) noexcept { return c >= U'0' && c <= U'9'; }
[[nodiscard]] constexpr bool is_capital(char32_t c) noexcept { return c >= U'A' && c <= U'Z'; }
[[nodiscard]] constexpr bool is_letter(char32_t c) noexcept {
    return is_capital(c) || (c >= U'a' && c <= U'z');
}

/// Blanks of every width, the tabulator and those of no width; not the line breaks.
[[nodiscard]] constexpr bool is_blank(char32_t c) noexcept {
    if (c < 0x80) return c == U' ' || c == U'\t';
    return c == 0x00A0 || c == 0x1680 || (c >= 0x2000 && c <= 0x200B) || c == 0x202F || c == 0x205F ||
           c == 0x2060 || c == 0x3000 || c == 0xFEFF;
}

[[nodiscard]] constexpr bool is_minus(char32_t c) noexcept { return c == U'-' || c == 0x2212; }

/// The diameter sign and what is typed in its place: empty set, Scandinavian o, Greek phi.
[[nodiscard]] constexpr bool is_diameter_sign(char32_t c) noexcept {
    return c == 0x2300 || c == 0x00D8 || c == 0x00F8 || c == 0x03A6 || c == 0x03C6 || c == 0x03D5 ||
           c == 0x2205;
}

/// Digits of other scripts, which look like digits and are not read as such.
[[nodiscard]] constexpr bool is_full_width_digit(char32_t c) noexcept { return c >= 0xFF10 && c <= 0xFF19; }

/// Walks through text that is UTF-8. A value: keep a copy to come back.
class scanner {
public:
    constexpr scanner(const char* first, const char* last) noexcept : at_(first), last_(last) {}

    [[nodiscard]] constexpr const char* place() const noexcept { return at_; }
    [[nodiscard]] constexpr bool at_end() const noexcept { return at_ == last_; }

    /// The character here.
    [[nodiscard]] constexpr char32_t peek() const noexcept {
        if (at_ == last_) return no_more;
        const auto lead = static_cast<unsigned char>(*at_);
        return lead < 0x80 ? lead : decoded();
    }

    /// Past the character here; not at the end.
    constexpr void next() noexcept {
        const auto lead = static_cast<unsigned char>(*at_);
        at_ += lead < 0x80 ? 1 : lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    }

    /// Past the character here if it is `c`.
    constexpr bool skip(char32_t c) noexcept {
        if (peek() != c) return false;
        next();
        return true;
    }

    /// Past blanks; true if there were any.
    constexpr bool skip_blanks() noexcept {
        const char* const before = at_;
        while (is_blank(peek())) next();
        return at_ != before;
    }

    /// Past `word`, which is of ASCII, if it stands here and no letter follows it.
    constexpr bool skip_word(text word) noexcept {
        const char* after = at_;
        for (const char c : word) {
            if (after == last_ || *after != c) return false;
            ++after;
        }
        if (after != last_ && is_letter(static_cast<unsigned char>(*after))) return false;
        at_ = after;
        return true;
    }

    /// The letters from here on: A to Z, a to z, and the two micro signs.
    constexpr text take_letters() noexcept {
        const char* const from = at_;
        for (char32_t c = peek(); is_letter(c) || c == 0x00B5 || c == 0x03BC; c = peek()) next();
        return since(from);
    }

    constexpr text take_digits() noexcept {
        const char* const from = at_;
        while (at_ != last_ && is_digit(static_cast<unsigned char>(*at_))) ++at_;
        return since(from);
    }

    [[nodiscard]] constexpr text since(const char* from) const noexcept {
        return {from, static_cast<std::size_t>(at_ - from)};
    }

    /// All from here on.
    [[nodiscard]] constexpr text rest() const noexcept {
        return {at_, static_cast<std::size_t>(last_ - at_)};
    }

private:
    /// The character here, of more than one byte.
    [[nodiscard, gnu::noinline]] constexpr char32_t decoded() const noexcept {
        const auto lead = static_cast<unsigned char>(*at_);
        const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : 1;
        char32_t c = lead & (0x3Fu >> more);
        for (int i = 1; i <= more; ++i) c = (c << 6) | (static_cast<unsigned char>(at_[i]) & 0x3Fu);
        return c;
    }

    const char* at_;
    const char* last_;
};

} // namespace fitwright::detail

#endif
