#ifndef FITWRIGHT_CALLOUT_NUMBER_HPP
#define FITWRIGHT_CALLOUT_NUMBER_HPP

#include <fitwright/callout/fault.hpp>
#include <fitwright/callout/scan.hpp>
#include <fitwright/written.hpp>

// Numbers as a drawing has them: `12`, `12.018`, `.500`, `1/4`, `1 1/4`, `1-1/4`, a built-up fraction.
// A number becomes a length only when its unit is known; until then its digits are kept as they are.

namespace fitwright::detail {

/// digits / 10^decimals, plus numerator/denominator where there is a fraction.
struct number {
    std::int64_t digits = 0;
    int decimals = 0;
    int numerator = 0;
    int denominator = 0; ///< 0: no fraction
    text piece;          ///< as written
    const char* decimals_from = nullptr;

    [[nodiscard]] constexpr bool is_fraction() const noexcept { return denominator != 0; }
    [[nodiscard]] constexpr bool is_zero() const noexcept { return digits == 0 && numerator == 0; }
};

/// The fractions that stand as one character, U+00BC to U+00BE and U+2150 to U+215E.
struct built_up_fraction {
    char32_t character;
    std::int8_t numerator;
    std::int8_t denominator;
};

inline constexpr built_up_fraction built_up_fractions[] = {
    {0x00BC, 1, 4}, {0x00BD, 1, 2}, {0x00BE, 3, 4}, {0x2150, 1, 7}, {0x2151, 1, 9}, {0x2152, 1, 10},
    {0x2153, 1, 3}, {0x2154, 2, 3}, {0x2155, 1, 5}, {0x2156, 2, 5}, {0x2157, 3, 5}, {0x2158, 4, 5},
    {0x2159, 1, 6}, {0x215A, 5, 6}, {0x215B, 1, 8}, {0x215C, 3, 8}, {0x215D, 5, 8}, {0x215E, 7, 8},
};

/// Past a built-up fraction, if one stands here.
constexpr bool skip_built_up_fraction(scanner& s, number& n) noexcept {
    const char32_t c = s.peek();
    if (c < 0x80) return false;
    for (const auto& f : built_up_fractions) {
        if (f.character != c) continue;
        n.numerator = f.numerator;
        n.denominator = f.denominator;
        s.next();
        return true;
    }
    return false;
}

[[nodiscard]] constexpr int small_number(text digits) noexcept {
    int value = 0;
    for (const char c : digits) value = value * 10 + (c - '0');
    return value;
}

/// Past `1/4` (or with the fraction slash), if it stands here and is not `1/4.5`.
constexpr bool skip_fraction(scanner& s, number& n) noexcept {
    scanner ahead = s;
    const text numerator = ahead.take_digits();
    if (numerator.empty() || numerator.size() > 4) return false;
    if (!ahead.skip(U'/') && !ahead.skip(0x2044)) return false;
    const text denominator = ahead.take_digits();
    if (denominator.empty() || denominator.size() > 4) return false;
    if (ahead.peek() == U'.' || ahead.peek() == U',') return false;
    n.numerator = small_number(numerator);
    n.denominator = small_number(denominator);
    s = ahead;
    return true;
}

/// How many digits a number may have: enough for 3150 mm in nanometres, few enough for 64 bits.
inline constexpr std::size_t most_digits = 11;

/// Reads a number without sign. `fractions` says whether 1/4 may be one: a deviation has none.
/// Leaves the scanner behind the number; the fault says what is wrong.
[[nodiscard]] constexpr fault read_number(scanner& s, number& n, bool decimal_comma,
                                          bool fractions) noexcept {
    const char* const from = s.place();
    const auto malformed = [&](error_code code = error_code::number_malformed) {
        while (is_digit(s.peek()) || s.peek() == U'.' || s.peek() == U',' || is_letter(s.peek())) s.next();
        return fault{code, s.since(from), {}};
    };

    if (fractions && (skip_fraction(s, n) || skip_built_up_fraction(s, n))) {
        n.piece = s.since(from);
    } else {
        const text whole = s.take_digits();
        text decimals;
        if (whole.size() > 1 && whole[0] == '0') return malformed();
        const bool comma = s.peek() == U',';
        if (comma && !decimal_comma) return malformed(error_code::decimal_comma_not_allowed);
        if (comma || s.peek() == U'.') {
            s.next();
            n.decimals_from = s.place();
            decimals = s.take_digits();
            if (decimals.empty() || s.peek() == U'.' || s.peek() == U',') return malformed();
        }
        if (whole.empty() && decimals.empty()) return {error_code::size_missing, s.since(from), {}};
        if (whole.size() + decimals.size() > most_digits) return malformed();
        for (const char c : whole) n.digits = n.digits * 10 + (c - '0');
        for (const char c : decimals) n.digits = n.digits * 10 + (c - '0');
        n.decimals = static_cast<int>(decimals.size());
        n.piece = s.since(from);

        if (fractions && decimals.empty() && whole.size() <= 6) { // 1 1/4, 1-1/4
            scanner ahead = s;
            if (!ahead.skip(U'-')) ahead.skip_blanks();
            if (skip_fraction(ahead, n) || skip_built_up_fraction(ahead, n)) {
                if (n.numerator == 0) { // `14 0/0`: two deviations
                    n.denominator = 0;
                    return {};
                }
                s = ahead;
                if (n.numerator >= n.denominator) return malformed();
                n.piece = s.since(from);
            }
        }
    }
    if (n.denominator == 0 && n.numerator != 0) return malformed(); // 1/0
    return {};
}

/// The number in a unit, as a length: exact for metric units, to the nearest nanometre for inches.
[[nodiscard]] constexpr fault to_length(const number& n, written_unit u, length& made) noexcept {
    const bool inches = u == written_unit::in;
    if (n.is_fraction()) {
        if (!inches) return {error_code::fraction_without_inches, n.piece, {}};
        made = one(u) * (n.digits * n.denominator + n.numerator) / n.denominator;
        return {};
    }
    constexpr int decimals_of_a_nanometre[] = {6, 3, 0, 8, 5}; // mm, um, nm, in, thou
    const int most = decimals_of_a_nanometre[static_cast<int>(u)];
    if (n.decimals > most) {
        const char* const beyond = n.decimals_from + most;
        return {error_code::more_decimals_than_a_nanometre,
                {beyond, static_cast<std::size_t>(n.piece.end() - beyond)},
                n.piece};
    }
    std::int64_t scale = 1;
    for (int i = 0; i < n.decimals; ++i) scale *= 10;
    made = one(u) * n.digits / scale;
    return {};
}

} // namespace fitwright::detail

#endif
