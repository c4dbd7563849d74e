#ifndef FITWRIGHT_CALLOUT_BARE_LIMITS_HPP
#define FITWRIGHT_CALLOUT_BARE_LIMITS_HPP

#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/quantity.hpp>

// Limits without a class: a second limit behind the first, or deviations behind the size.

namespace fitwright::detail {

[[nodiscard]] constexpr fault take_limits(callout& made, const hole_limits& hole,
                                          const shaft_limits& shaft) noexcept {
    made.part = callout_part::either;
    made.hole = hole;
    made.shaft = shaft;
    return {};
}

/// `14.000-14.018`, `7.978/7.986`, `7.986/7.978`.
[[nodiscard]] constexpr fault read_second_limit(scanner& s, const written_number& size, callout& made,
                                                reading_options options) noexcept {
    const bool dash = s.peek() != U'/';
    s.next();
    s.skip_blanks();
    if (!is_digit(s.peek()) && s.peek() != U'.') return unexpected(s);
    written_number second;
    if (const fault f = read_number(s, second.value, options.decimal_comma, true)) return f;
    if (const fault f = read_unit(s, second)) return f;
    if (size.has_unit && second.has_unit && size.unit != second.unit)
        return {error_code::unit_given_twice, second.unit_piece, {}};
    const written_unit u = size.has_unit ? size.unit : second.unit;
    length a;
    length b;
    if (const fault f = to_length(size.value, u, a)) return f;
    if (const fault f = to_length(second.value, u, b)) return f;
    if (b == a || (dash && b < a)) return {error_code::limits_crossed, second.value.piece, {}};
    if (b > a * 2 || a > b * 2)
        return {error_code::limits_too_far_apart, b > a ? second.value.piece : size.value.piece, {}};
    made.unit = u;
    const stated_limits both = a < b ? between(a, b) : between(b, a);
    return take_limits(made, both, both);
}

constexpr bool skip_plus_or_minus(scanner& s) noexcept {
    if (s.skip(0x00B1)) return true;
    scanner ahead = s;
    if (!ahead.skip(U'+') || !ahead.skip(U'/') || !is_minus(ahead.peek())) return false;
    ahead.next();
    s = ahead;
    return true;
}

/// A deviation with its sign, or 0. Its piece takes in the sign.
[[nodiscard]] constexpr fault read_deviation(scanner& s, written_number& d,
                                             reading_options options) noexcept {
    const char* const from = s.place();
    const bool minus = is_minus(s.peek());
    const bool has_sign = minus || s.peek() == U'+';
    if (has_sign) s.next();
    if (has_sign && (is_minus(s.peek()) || s.peek() == U'+')) {
        s.next();
        return {error_code::two_signs, s.since(from), {}};
    }
    if (!is_digit(s.peek()) && s.peek() != U'.') return unexpected(s);
    if (const fault f = read_number(s, d.value, options.decimal_comma, false)) return f;
    d.value.piece = s.since(from);
    d.below_zero = minus;
    if (!has_sign && !d.value.is_zero()) return {error_code::deviation_without_sign, d.value.piece, {}};
    return read_unit(s, d);
}

/// Each number's unit: its own; for the first deviation else that of the second; for both else
/// that of the size. A size without one takes mm or in from the deviations, but is never taken to
/// be 14 um or 14 thou for their sake.
[[nodiscard]] constexpr fault take_deviations(const written_number& size, const written_number& upper,
                                              const written_number& lower, callout& made) noexcept {
    if (upper.has_unit && !lower.has_unit && !lower.value.is_zero())
        return {error_code::unit_ambiguous, upper.unit_piece, {}};
    const bool have_unit = upper.has_unit || lower.has_unit;
    const written_number& last = lower.has_unit ? lower : upper;
    written_unit of_size = size.unit;
    if (!size.has_unit && have_unit) {
        if (last.unit != written_unit::mm && last.unit != written_unit::in)
            return {error_code::unit_ambiguous, last.unit_piece, {}};
        if (upper.has_unit && upper.unit != last.unit)
            return {error_code::unit_ambiguous, last.unit_piece, {}};
        of_size = last.unit;
    }
    const written_unit of_lower = have_unit ? last.unit : of_size;
    const written_unit of_upper = upper.has_unit ? upper.unit : of_lower;

    length nominal;
    deviations d;
    if (const fault f = to_length(size.value, of_size, nominal)) return f;
    if (const fault f = to_length(upper.value, of_upper, d.upper)) return f;
    if (const fault f = to_length(lower.value, of_lower, d.lower)) return f;
    if (upper.below_zero) d.upper = -d.upper;
    if (lower.below_zero) d.lower = -d.lower;
    if (d.upper < d.lower) return {error_code::deviations_swapped, upper.value.piece, lower.value.piece};
    if (d.upper == d.lower) return {error_code::limits_crossed, lower.value.piece, {}};
    if (nominal + d.lower <= length()) return {error_code::size_not_above_zero, lower.value.piece, {}};
    made.unit = of_size;
    return take_limits(made, hole_limits(nominal, d), shaft_limits(nominal, d));
}

/// `+0.018 0`, `+0.018/0`, `(+0.018 / 0)`, a single one behind a plus-or-minus.
[[nodiscard]] constexpr fault read_deviations(scanner& s, const written_number& size, callout& made,
                                              reading_options options) noexcept {
    const bool bracket = s.skip(U'(');
    if (bracket) s.skip_blanks();
    written_number upper;
    written_number lower;
    if (skip_plus_or_minus(s)) {
        s.skip_blanks();
        if (!is_digit(s.peek()) && s.peek() != U'.') return unexpected(s);
        if (const fault f = read_number(s, upper.value, options.decimal_comma, false)) return f;
        if (const fault f = read_unit(s, upper)) return f;
        lower = upper;
        lower.below_zero = true;
    } else {
        if (const fault f = read_deviation(s, upper, options)) return f;
        s.skip_blanks();
        s.skip(U'/');
        s.skip_blanks();
        const char32_t c = s.peek();
        const bool second = is_digit(c) || c == U'.' || c == U'+' || is_minus(c);
        if (!second) return {error_code::deviation_missing, upper.value.piece, {}};
        if (const fault f = read_deviation(s, lower, options)) return f;
    }
    if (bracket) {
        s.skip_blanks();
        if (!s.skip(U')')) return unexpected(s);
    }
    return take_deviations(size, upper, lower, made);
}

} // namespace fitwright::detail

#endif
