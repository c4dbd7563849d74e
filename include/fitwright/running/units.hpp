#ifndef FITWRIGHT_RUNNING_UNITS_HPP
#define FITWRIGHT_RUNNING_UNITS_HPP

#include <fitwright/material/units.hpp>

#include <boost/units/derived_dimension.hpp>
#include <boost/units/systems/si/angular_velocity.hpp>

namespace fitwright {

/// m3/s.
using cubic_metre_per_second =
    boost::units::unit<boost::units::derived_dimension<boost::units::length_base_dimension, 3,
                                                       boost::units::time_base_dimension, -1>::type,
                       boost::units::si::system>;
/// J/(m3 K).
using joule_per_cubic_metre_kelvin = boost::units::unit<
    boost::units::derived_dimension<boost::units::mass_base_dimension, 1, boost::units::length_base_dimension,
                                    -1, boost::units::time_base_dimension, -2,
                                    boost::units::temperature_base_dimension, -1>::type,
    boost::units::si::system>;

/// How fast something turns, in radian per second; see `revolutions_per_minute`.
using rotational_speed = quantity<boost::units::si::angular_velocity>;
/// Volume by time, in m3/s.
using volume_flow = quantity<cubic_metre_per_second>;
/// What it takes to warm a volume of a liquid: density times specific heat.
using volumetric_heat_capacity = quantity<joule_per_cubic_metre_kelvin>;

/// So many turns a minute.
[[nodiscard]] constexpr rotational_speed revolutions_per_minute(double number) noexcept {
    return rotational_speed::from_value(number * (2 * 3.14159265358979323846 / 60));
}
/// So many N.
[[nodiscard]] constexpr force newtons(double number) noexcept { return force::from_value(number); }
/// So many N m.
[[nodiscard]] constexpr torque newton_metres(double number) noexcept { return torque::from_value(number); }
/// Square millimetres per second, which are centistokes.
[[nodiscard]] constexpr kinematic_viscosity centistokes(double number) noexcept {
    return kinematic_viscosity::from_value(number / 1e6);
}
/// Millipascal seconds, which are centipoise.
[[nodiscard]] constexpr dynamic_viscosity millipascal_seconds(double number) noexcept {
    return dynamic_viscosity::from_value(number / 1e3);
}

} // namespace fitwright

#endif
