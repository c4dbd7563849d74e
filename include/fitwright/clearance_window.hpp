#ifndef FITWRIGHT_CLEARANCE_WINDOW_HPP
#define FITWRIGHT_CLEARANCE_WINDOW_HPP

#include <fitwright/length.hpp>

namespace fitwright {

/// The clearance a pair may have, on diameter; negative where it must interfere.
struct clearance_window {
    length least;
    length most;

    friend constexpr bool operator==(clearance_window, clearance_window) noexcept = default;
};

} // namespace fitwright

#endif
