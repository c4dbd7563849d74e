#ifndef FITWRIGHT_RUNNING_FLOW_HPP
#define FITWRIGHT_RUNNING_FLOW_HPP

#include <fitwright/running/units.hpp>

#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace fitwright {

using cubic_metre = boost::units::si::volume;
using volume = quantity<cubic_metre>;
using duration = quantity<boost::units::si::time>;

[[nodiscard]] constexpr volume_flow litres_per_minute(double number) noexcept {
    return volume_flow::from_value(number / 60e3);
}
[[nodiscard]] constexpr volume_flow millilitres_per_minute(double number) noexcept {
    return volume_flow::from_value(number / 60e6);
}
[[nodiscard]] constexpr volume_flow cubic_millimetres_per_second(double number) noexcept {
    return volume_flow::from_value(number / 1e9);
}
[[nodiscard]] constexpr volume millilitres(double number) noexcept {
    return volume::from_value(number / 1e6);
}
[[nodiscard]] constexpr duration seconds(double number) noexcept { return duration::from_value(number); }

} // namespace fitwright

#endif
