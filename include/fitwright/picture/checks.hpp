#ifndef FITWRIGHT_PICTURE_CHECKS_HPP
#define FITWRIGHT_PICTURE_CHECKS_HPP

#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>

#include <initializer_list>

namespace fitwright::detail::svg {

/// More than 10 m away: no scale is worked out for that.
[[nodiscard]] constexpr bool is_beyond(length size, length zero) noexcept {
    constexpr length half_of_farthest = length::from_nanometres(5'000'000'000);
    const length half = size / 2 - zero / 2; // so that the ends of the range don't overflow
    return half > half_of_farthest || half < -half_of_farthest;
}

[[nodiscard]] inline error too_far_to_draw() noexcept {
    return error::composer(error_code::limits_too_far_apart)
           << "what is to be drawn lies more than 10 m apart; allowed is a pair of about one size";
}

template <side Side> [[nodiscard]] constexpr bool is_crossed(const size_limits<Side>& l) noexcept {
    return l.lower_limit() > l.upper_limit();
}

/// The fit, if both its parts have limits that can be drawn.
[[nodiscard]] inline result<fit> drawable_fit(const fit& f) noexcept {
    for (const side part : {side::hole, side::shaft})
        if (part == side::hole ? is_crossed(f.hole()) : is_crossed(f.shaft()))
            return error::composer(error_code::limits_crossed)
                   << "the limits of the " << text(part == side::hole ? "hole" : "shaft")
                   << " are the wrong way round; allowed: the lower not above the upper";
    const length zero = f.hole().nominal();
    for (const length size :
         {f.hole().lower_limit(), f.hole().upper_limit(), f.shaft().lower_limit(), f.shaft().upper_limit()})
        if (is_beyond(size, zero)) return too_far_to_draw();
    return f;
}

} // namespace fitwright::detail::svg

#endif
