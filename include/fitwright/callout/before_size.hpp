#ifndef FITWRIGHT_CALLOUT_BEFORE_SIZE_HPP
#define FITWRIGHT_CALLOUT_BEFORE_SIZE_HPP

#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/fault.hpp>
#include <fitwright/callout/number.hpp>
#include <fitwright/callout/scan.hpp>

// What stands before the size of a call-out: how many there are of it, and the sign of a diameter.

namespace fitwright::detail {

/// `12x6` may be the shaft x6, or twelve of 6: only the blank in `12 x6` tells. `12x6/…` and whatever
/// else is no count is left to be read as a class.
[[nodiscard]] constexpr fault count_or_class(const scanner& s) noexcept {
    scanner ahead = s;
    ahead.take_digits();
    ahead.next(); // a blank, or the x itself
    if (!is_digit(ahead.peek())) return {};
    ahead.take_digits();
    const text piece = ahead.since(s.place());
    ahead.skip_blanks();
    const bool second_class = ahead.peek() == U'/' || is_minus(ahead.peek());
    if (second_class) return {};
    return {error_code::count_or_class, piece, {}};
}

/// Behind `12x`: is it a size, `12x 6 H7`, or a grade, `12 x6`? A grade is the last thing but for
/// a second class and notes.
[[nodiscard]] constexpr bool a_size_to_be_counted_follows(scanner ahead) noexcept {
    if (!is_digit(ahead.peek())) return !ahead.at_end();
    ahead.take_digits();
    if (ahead.peek() == U'.') return true;
    ahead.skip_blanks();
    const char32_t next = ahead.peek();
    if (next == no_more || next == 0x24BA || next == 0x21A7) return false;
    scanner word = ahead;
    if (word.skip_word("THRU") || word.skip_word("DEPTH")) return false;
    if (next != U'/' && next != U'(' && !is_minus(next)) return true;
    ahead.next();
    ahead.skip_blanks();
    return !is_letter(ahead.peek());
}

/// `2x`, `4X`, `2 x`; not `12 x6`, whose x6 is a class.
[[nodiscard]] constexpr fault read_count(scanner& s, callout_notes& notes) noexcept {
    scanner ahead = s;
    const text digits = ahead.take_digits();
    if (digits.empty()) return {};
    ahead.skip_blanks();
    const char32_t times = ahead.peek();
    if (times != U'x' && times != U'X' && times != 0x00D7) return {};
    ahead.next();
    ahead.skip_blanks();
    if (times != 0x00D7 && !a_size_to_be_counted_follows(ahead)) return count_or_class(s);
    if (digits[0] == '0' || digits.size() > 4) return {error_code::number_malformed, digits, {}};
    notes.count = small_number(digits);
    s = ahead;
    return {};
}

/// A diameter sign, or DIA, in front of the size.
constexpr void skip_diameter_sign(scanner& s, callout_notes& notes) noexcept {
    bool found = false;
    if (is_diameter_sign(s.peek())) {
        s.next();
        found = true;
    } else {
        found = s.skip_word("DIA") || s.skip_word("Dia") || s.skip_word("dia");
        if (!found && s.peek() == U'D') { // but D10 alone is a class that lacks its size
            scanner ahead = s;
            ahead.next();
            const bool blank = ahead.skip_blanks();
            ahead.take_digits();
            const bool class_alone = !blank && (ahead.skip_blanks(), ahead.at_end());
            found = !class_alone && s.skip_word("D");
        }
    }
    notes.diameter_sign = found;
    if (found) s.skip_blanks();
}

} // namespace fitwright::detail

#endif
