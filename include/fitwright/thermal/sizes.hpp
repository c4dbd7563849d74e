#ifndef FITWRIGHT_THERMAL_SIZES_HPP
#define FITWRIGHT_THERMAL_SIZES_HPP

#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>

// Limits that a part may have: what comes of others at temperature would look like an answer.

namespace fitwright::detail {

/// Sizes above zero, the upper limit not below the lower one.
template <side Side> [[nodiscard]] constexpr bool allow_a_size(const size_limits<Side>& l) noexcept {
    return l.lower_limit() > length() && l.lower_deviation() <= l.upper_deviation();
}
[[nodiscard]] constexpr bool allow_a_size(const fit& f) noexcept {
    return allow_a_size(f.hole()) && allow_a_size(f.shaft());
}

/// Why limits allow no size.
template <side Side>
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_size_in(const size_limits<Side>& l) noexcept {
    const text part = Side == side::hole ? "hole" : "shaft";
    if (l.upper_deviation() < l.lower_deviation())
        return error::composer(error_code::limits_crossed)
               << "the upper limit of the " << part
               << " is below the lower one; allowed: an upper limit at or above "
                  "the lower";
    return error::composer(error_code::size_not_above_zero)
           << "the lower limit of the " << part << " is not above zero; allowed: sizes above zero";
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_size_in(const fit& f) noexcept {
    return allow_a_size(f.hole()) ? no_size_in(f.shaft()) : no_size_in(f.hole());
}

} // namespace fitwright::detail

#endif
