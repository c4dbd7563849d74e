#ifndef FITWRIGHT_CALLOUT_TOLERANCE_CLASS_HPP
#define FITWRIGHT_CALLOUT_TOLERANCE_CLASS_HPP

#include <fitwright/callout/fault.hpp>
#include <fitwright/callout/scan.hpp>
#include <fitwright/iso286/tolerance_class.hpp>

#include <initializer_list>

// `H7`, `js6`, `ZC11`: letters and grade. Which part is meant is told by the case, and never guessed.

namespace fitwright::detail {

/// A class as written, of either side.
struct class_token {
    fitwright::side side = side::hole;
    fitwright::position position = position::h;
    fitwright::grade grade = grade::it7;
    text piece;
};

/// By the letter: the position that one letter stands for, or -1.
// clang-format off
inline constexpr std::int8_t position_of_letter[] = {
    // A  B  C  D  E  F  G   H   I   J   K   L   M   N   O   P   Q   R   S   T   U   V   W   X   Y   Z
       0, 1, 2, 4, 5, 7, 9, 10, -1, 12, 13, -1, 14, 15, -1, 16, -1, 17, 18, 19, 20, 21, -1, 22, 23, 24,
};
// clang-format on
static_assert(sizeof position_of_letter == 26);

/// The position that the letters stand for, or `position_count`.
[[nodiscard]] constexpr int position_of(text written, side s) noexcept {
    if (written.size() == 1) {
        const int letter = (written[0] | 0x20) - 'a';
        const bool same_case = is_capital(static_cast<unsigned char>(written[0])) == (s == side::hole);
        const int p = letter >= 0 && letter < 26 && same_case ? position_of_letter[letter] : -1;
        return p >= 0 ? p : position_count;
    }
    if (written.size() != 2) return position_count;
    for (const position p :
         {position::js, position::cd, position::ef, position::fg, position::za, position::zb, position::zc})
        if (letters(p, s) == written) return static_cast<int>(p);
    return position_count;
}

[[nodiscard]] constexpr fault read_letters(text written, class_token& c) noexcept {
    c.side = is_capital(static_cast<unsigned char>(written[0])) ? side::hole : side::shaft;
    int found = position_of(written, c.side);
    if (found == position_count && written.size() == 2) {
        const char same_case[] = {
            written[0], static_cast<char>(c.side == side::hole ? written[1] & ~0x20 : written[1] | 0x20)};
        if (position_of(text(same_case, 2), c.side) != position_count)
            return {error_code::letter_case_mixed, written, {}};
    }
    if (found == position_count) return {error_code::letter_not_used, written, {}};
    c.position = static_cast<position>(found);
    return {};
}

/// The grade as it is written, without a sign or a zero in front but for 01; one that doesn't exist for
/// anything else.
[[nodiscard]] constexpr grade grade_of(text written) noexcept {
    if (written.size() == 1) return grade(written[0] - '0');
    const bool from_ten = written.size() == 2 && written[0] == '1' && written[1] <= '8';
    if (from_ten) return grade(10 + written[1] - '0');
    return written == "01" ? grade::it01 : grade(-1);
}

[[nodiscard]] constexpr fault read_grade(text written, class_token& c) noexcept {
    c.grade = grade_of(written);
    if (!c.grade.exists()) return {error_code::grade_not_known, written, {}};
    return {};
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
