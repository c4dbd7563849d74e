#ifndef FITWRIGHT_CALLOUT_AFTER_LIMITS_HPP
#define FITWRIGHT_CALLOUT_AFTER_LIMITS_HPP

#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/quantity.hpp>

// What stands behind the limits of a call-out: the envelope requirement, THRU, a depth.

namespace fitwright::detail {

/// The envelope requirement, ISO 14405-1: a circled E or (E).
constexpr bool skip_envelope(scanner& s) noexcept {
    scanner ahead = s;
    ahead.skip_blanks();
    const bool found = ahead.skip(0x24BA) || (ahead.skip(U'(') && ahead.skip(U'E') && ahead.skip(U')'));
    if (found) s = ahead;
    return found;
}

[[nodiscard]] constexpr fault read_depth(scanner& s, callout& made, reading_options options) noexcept {
    s.skip_blanks();
    written_number depth;
    if (!is_digit(s.peek()) && s.peek() != U'.') return {error_code::size_missing, text(s.place(), 0), {}};
    if (const fault f = read_number(s, depth.value, options.decimal_comma, true)) return f;
    if (depth.value.is_zero()) return {error_code::size_not_above_zero, depth.value.piece, {}};
    if (const fault f = read_unit(s, depth)) return f;
    made.notes.has_depth = true;
    return to_length(depth.value, depth.has_unit ? depth.unit : made.unit, made.notes.depth);
}

[[nodiscard]] constexpr fault read_notes(scanner& s, callout& made, reading_options options) noexcept {
    for (;;) {
        s.skip_blanks();
        if (s.at_end()) return {};
        callout_notes& notes = made.notes;
        const bool envelope_known = notes.hole_envelope || notes.shaft_envelope;
        if (!envelope_known && made.part == callout_part::either && skip_envelope(s)) {
            notes.hole_envelope = notes.shaft_envelope = true;
            continue;
        }
        if (!notes.through && (s.skip_word("THRU") || s.skip_word("THROUGH"))) {
            notes.through = true;
            continue;
        }
        if (!notes.has_depth && (s.skip(0x21A7) || s.skip_word("DEPTH"))) {
            if (const fault f = read_depth(s, made, options)) return f;
            continue;
        }
        return unexpected(s);
    }
}

} // namespace fitwright::detail

#endif
