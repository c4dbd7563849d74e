#ifndef FITWRIGHT_CALLOUT_PLAIN_HPP
#define FITWRIGHT_CALLOUT_PLAIN_HPP

#include <fitwright/callout/callout.hpp>
#include <fitwright/callout/tolerance_class.hpp>
#include <fitwright/iso286/limits.hpp>

// What drawings are full of: `12 H7`, `12.5 g6`, `12 H7/g6`, a size in millimetres, a blank and classes.
// Read here at one go, in a third of the time. Whatever else a call-out may have, and all that is wrong
// with one, is left to callout_reader, which knows the whole rule and reads these the same.

namespace fitwright::detail {

/// A size from 1 to 9999 mm with up to six decimals; 0 if there is something else.
[[nodiscard]] constexpr length plain_size(scanner& s) noexcept {
    const text whole = s.take_digits();
    if (whole.empty() || whole.size() > 4 || whole[0] == '0') return {};
    std::int64_t number = 0;
    for (const char c : whole) number = number * 10 + (c - '0');
    std::int64_t one = 1'000'000;
    if (s.skip(U'.')) {
        const text decimals = s.take_digits();
        if (decimals.empty() || decimals.size() > 6) return {};
        for (const char c : decimals) {
            number = number * 10 + (c - '0');
            one /= 10;
        }
    }
    return length::from_nanometres(number * one);
}

/// A class of a hole or of a shaft, if one stands here.
template <side Side>
[[nodiscard]] constexpr bool read_plain_class(scanner& s, tolerance_class<Side>& c) noexcept {
    const int position = position_of(s.take_letters(), Side);
    if (position == position_count) return false;
    c = {static_cast<fitwright::position>(position), grade_of(s.take_digits())};
    return c.grade.exists();
}

/// Reads a plain call-out; false if it is none, or if ISO 286 has no value for it.
[[nodiscard]] constexpr bool read_plain(text whole, callout& made) noexcept {
    for (const char c : whole)
        if (static_cast<unsigned char>(c) >= 0x80) return false; // may not even be UTF-8
    scanner s(whole.begin(), whole.end());
    const length nominal = plain_size(s);
    if (nominal == length() || !s.skip(U' ')) return false;
    const bool has_hole = is_capital(s.peek());
    if (has_hole && !read_plain_class(s, made.hole_class)) return false;
    const bool has_shaft = !has_hole || s.skip(U'/');
    if (has_shaft && !read_plain_class(s, made.shaft_class)) return false;
    if (!s.at_end()) return false;

    made.part = !has_shaft ? callout_part::hole : has_hole ? callout_part::fit : callout_part::shaft;
    made.has_classes = true;
    if (has_hole) {
        const auto hole = limits(nominal, made.hole_class);
        if (!hole) return false;
        made.hole = *hole;
    }
    if (has_shaft) {
        const auto shaft = limits(nominal, made.shaft_class);
        if (!shaft) return false;
        made.shaft = *shaft;
    }
    return true;
}

} // namespace fitwright::detail

#endif
