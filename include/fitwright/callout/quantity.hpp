#ifndef FITWRIGHT_CALLOUT_QUANTITY_HPP
#define FITWRIGHT_CALLOUT_QUANTITY_HPP

#include <fitwright/callout/number.hpp>
#include <fitwright/callout/tolerance_class.hpp>

// A number with its unit, as it stands in a call-out; and what has no place in one.

namespace fitwright {

/// What the caller allows beyond the strict rule.
struct reading_options {
    bool decimal_comma = false; ///< `12,5` is 12.5; the point stays allowed, separators never are
};

namespace detail {

struct written_number {
    number value;
    bool has_unit = false;
    written_unit unit = written_unit::mm;
    text unit_piece;
    bool below_zero = false;
};

/// RC, LC, LT, LN, FN: no letters of ISO 286. In small letters too, to be refused by name.
[[nodiscard]] constexpr bool is_inch_family(text word) noexcept {
    if (word.size() != 2) return false;
    const char first = static_cast<char>(word[0] & ~0x20);
    const char second = static_cast<char>(word[1] & ~0x20);
    if (first == 'L') return second == 'C' || second == 'T' || second == 'N';
    return (first == 'R' && second == 'C') || (first == 'F' && second == 'N');
}

/// Something that has no place here: a character no call-out has, or a rest that is left over.
[[nodiscard]] constexpr fault unexpected(const scanner& s) noexcept {
    const text rest = s.rest();
    const char32_t c = s.peek();
    const bool known = is_letter(c) || is_digit(c) || c == U'/' || c == U'(' || c == U')' || c == U'.' ||
                       c == U'+' || is_minus(c);
    if (c == no_more) return {error_code::ends_too_soon, rest, {}};
    if (known) return {error_code::something_left_over, rest, {}};
    return {error_code::character_not_allowed, rest, {}};
}

/// A unit behind a number, if there is one. A word that is no unit is left for a class to be read,
/// unless it can't be one.
[[nodiscard]] constexpr fault read_unit(scanner& s, written_number& n) noexcept {
    scanner ahead = s;
    ahead.skip_blanks();
    const char* const from = ahead.place();
    if (ahead.skip(U'"') || ahead.skip(0x2033)) {
        n.unit = written_unit::in;
    } else {
        const text word = ahead.take_letters();
        if (word.empty()) return {};
        if (is_digit(ahead.peek())) { // a class, unless a unit has grown onto it: `12mmH7`
            const bool grown =
                word.size() > 2 && (text(word.data(), 2) == "mm" || text(word.data(), 2) == "in");
            return grown ? fault{error_code::unit_not_known, word, {}} : fault{};
        }
        if (word == "UNC" || word == "UNF" || word == "UNEF" || word == "UN")
            return {error_code::thread_is_not_a_fit, word, {}};
        if (word == "mm") n.unit = written_unit::mm;
        else if (word == "in" || word == "inch") n.unit = written_unit::in;
        else if (word == "thou") n.unit = written_unit::thousandth;
        else if (word == "nm") n.unit = written_unit::nm;
        else if (word == "um" || word == "\u00B5m" || word == "\u03BCm") n.unit = written_unit::um;
        else {
            const bool note = word == "THRU" || word == "THROUGH" || word == "DEPTH" || word == "E";
            if (is_inch_family(word)) return {};
            class_token letters;
            if (note || word.size() == 1 || !read_letters(word, letters)) return {};
            return {error_code::unit_not_known, word, {}};
        }
    }
    if (n.has_unit) return {error_code::unit_given_twice, ahead.since(from), {}};
    n.has_unit = true;
    n.unit_piece = ahead.since(from);
    s = ahead;
    return read_unit(s, n); // a second one is a fault
}

} // namespace detail

} // namespace fitwright

#endif
