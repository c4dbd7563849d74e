#ifndef FITWRIGHT_STACK_UNITS_HPP
#define FITWRIGHT_STACK_UNITS_HPP

#include <fitwright/units.hpp>

#include <boost/units/systems/si/plane_angle.hpp>

namespace fitwright {

/// An angle, in radian; see `degrees`.
using plane_angle = quantity<boost::units::si::plane_angle>;

/// So many degrees of arc.
[[nodiscard]] constexpr plane_angle degrees(double number) noexcept {
    return plane_angle::from_value(number * (3.14159265358979323846 / 180));
}

} // namespace fitwright

#endif
