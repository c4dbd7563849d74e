#ifndef FITWRIGHT_CLEARANCE_WINDOW_HPP
#define FITWRIGHT_CLEARANCE_WINDOW_HPP

#include <fitwright/length.hpp>

namespace fitwright {

template <class Value> struct range; // figure.hpp

/// The clearance a pair may have, on diameter; negative where it must interfere.
///
/// Not any range of lengths: a float along an axis or a chain's gap, which are on no diameter, are a
/// `range<length>`. A window turns into one by itself, so that a float may be wanted from a window; never the
/// other way, since what is no clearance on diameter is not to become one unnoticed.
struct clearance_window {
    length least;
    length most;

    constexpr operator range<length>() const noexcept; // figure.hpp

    friend constexpr bool operator==(clearance_window, clearance_window) noexcept = default;
};

} // namespace fitwright

#endif
