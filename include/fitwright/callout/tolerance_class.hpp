#ifndef FITWRIGHT_CALLOUT_TOLERANCE_CLASS_HPP
#define FITWRIGHT_CALLOUT_TOLERANCE_CLASS_HPP

#include <fitwright/callout/fault.hpp>
#include <fitwright/callout/scan.hpp>
#include <fitwright/iso286/tolerance_class.hpp>

// `H7`, `js6`, `ZC11`: letters and grade. Which part is meant is told by the case, and never guessed.

namespace fitwright::detail {

/// A class as written, of either side.
struct class_token {
    fitwright::side side = side::hole;
    fitwright::position position = position::h;
    fitwright::grade grade = grade::it7;
    text piece;
};

/// The position that the letters stand for, or `position_count`.
[[nodiscard]] constexpr int position_of(text written, side s) noexcept {
    for (int p = 0; p < position_count; ++p)
        if (letters(static_cast<position>(p), s) == written) return p;
    return position_count;
}

[[nodiscard]] constexpr fault read_letters(text written, class_token& c) noexcept {
    c.side = is_capital(static_cast<unsigned char>(written[0])) ? side::hole : side::shaft;
    int found = position_of(written, c.side);
    if (found == position_count && written.size() == 2) {
        const char same_case[] = {written[0], static_cast<char>(c.side == side::hole ? written[1] & ~0x20 : written[1] | 0x20)};
        if (position_of(text(same_case, 2), c.side) != position_count)
            return {error_code::letter_case_mixed, written, {}};
    }
    if (found == position_count) return {error_code::letter_not_used, written, {}};
    c.position = static_cast<position>(found);
    return {};
}

[[nodiscard]] constexpr fault read_grade(text written, class_token& c) noexcept {
    for (int step = 0; step < grade::count; ++step) {
        if (grade::from_step(step).name() != written) continue;
        c.grade = grade::from_step(step);
        return {};
    }
    return {error_code::grade_not_known, written, {}};
}

/// Reads a class; a letter stands here. Leaves the scanner behind it.
[[nodiscard]] constexpr fault read_class(scanner& s, class_token& c) noexcept {
    const char* const from = s.place();
    const text written = s.take_letters();
    const text digits = s.take_digits();
    if (const fault f = read_letters(written, c)) return f;
    if (digits.empty()) {
        scanner ahead = s;
        if (ahead.skip_blanks() && is_digit(ahead.peek())) {
            ahead.take_digits();
            return {error_code::blank_inside_a_class, ahead.since(from), {}};
        }
        if (is_full_width_digit(s.peek())) return {error_code::character_not_allowed, {s.place(), 3}, {}};
        return {error_code::grade_missing, written, {}};
    }
    if (const fault f = read_grade(digits, c)) return f;
    c.piece = s.since(from);
    return {};
}

} // namespace fitwright::detail

#endif
