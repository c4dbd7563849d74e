#ifndef FITWRIGHT_RUNNING_FLOW_HPP
#define FITWRIGHT_RUNNING_FLOW_HPP

#include <fitwright/running/units.hpp>

#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace fitwright {

/// m3.
using cubic_metre = boost::units::si::volume;
/// A volume, in m3.
using volume = quantity<cubic_metre>;
/// A time, in s.
using duration = quantity<boost::units::si::time>;

/// So many l/min.
[[nodiscard]] constexpr volume_flow litres_per_minute(double number) noexcept {
    return volume_flow::from_value(number / 60e3);
}
/// So many ml/min.
[[nodiscard]] constexpr volume_flow millilitres_per_minute(double number) noexcept {
    return volume_flow::from_value(number / 60e6);
}
/// So many mm3/s.
[[nodiscard]] constexpr volume_flow cubic_millimetres_per_second(double number) noexcept {
    return volume_flow::from_value(number / 1e9);
}
/// So many ml.
[[nodiscard]] constexpr volume millilitres(double number) noexcept {
    return volume::from_value(number / 1e6);
}
/// So many s.
[[nodiscard]] constexpr duration seconds(double number) noexcept { return duration::from_value(number); }

} // namespace fitwright

#endif
