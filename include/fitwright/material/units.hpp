#ifndef FITWRIGHT_MATERIAL_UNITS_HPP
#define FITWRIGHT_MATERIAL_UNITS_HPP

#include <fitwright/units.hpp>

#include <boost/units/systems/si/mass_density.hpp>

namespace fitwright {

/// 1/K.
using per_kelvin =
    boost::units::unit<boost::units::list<boost::units::dim<boost::units::temperature_base_dimension,
                                                            boost::units::static_rational<-1>>,
                                          boost::units::dimensionless_type>,
                       boost::units::si::system>;
/// kg/m3.
using kilogram_per_cubic_metre = boost::units::si::mass_density;

/// How much of its length a material grows for each kelvin.
using expansion_coefficient = quantity<per_kelvin>;
/// Mass by volume, in kg/m3.
using mass_density = quantity<kilogram_per_cubic_metre>;

/// Millionths per kelvin, as handbooks print expansion: micrometres a metre grows for each kelvin.
[[nodiscard]] constexpr expansion_coefficient ppm_per_kelvin(double millionths) noexcept {
    return expansion_coefficient::from_value(millionths / 1e6);
}
/// So many GPa.
[[nodiscard]] constexpr pressure gigapascals(double number) noexcept {
    return pressure::from_value(number * 1e9);
}
/// So many MPa.
[[nodiscard]] constexpr pressure megapascals(double number) noexcept {
    return pressure::from_value(number * 1e6);
}
/// So many kg/m3.
[[nodiscard]] constexpr mass_density kilograms_per_cubic_metre(double number) noexcept {
    return mass_density::from_value(number);
}

} // namespace fitwright

#endif
