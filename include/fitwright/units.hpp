#ifndef FITWRIGHT_UNITS_HPP
#define FITWRIGHT_UNITS_HPP

#include <fitwright/error.hpp>
#include <fitwright/length.hpp>

#include <boost/units/absolute.hpp>
#include <boost/units/base_units/imperial/inch.hpp>
#include <boost/units/base_units/imperial/thou.hpp>
#include <boost/units/conversion.hpp>
#include <boost/units/make_scaled_unit.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/dimensionless.hpp>
#include <boost/units/systems/si/dynamic_viscosity.hpp>
#include <boost/units/systems/si/force.hpp>
#include <boost/units/systems/si/kinematic_viscosity.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/power.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/torque.hpp>
#include <boost/units/systems/si/velocity.hpp>
#include <boost/units/systems/temperature/celsius.hpp>

namespace fitwright {

namespace detail {

template <class Unit, long Power>
using power_of_ten = typename boost::units::make_scaled_unit<
    Unit, boost::units::scale<10, boost::units::static_rational<Power>>>::type;

}

/// A physical quantity: a number and its unit, checked while compiling (Boost.Units).
template <class Unit, class Number = double> using quantity = boost::units::quantity<Unit, Number>;

/// m.
using metre = boost::units::si::length;
/// mm.
using millimetre = detail::power_of_ten<metre, -3>;
/// um.
using micrometre = detail::power_of_ten<metre, -6>;
/// nm.
using nanometre = detail::power_of_ten<metre, -9>;
/// 25.4 mm.
using inch = boost::units::imperial::inch_base_unit::unit_type;
/// A thousandth of an inch.
using thou = boost::units::imperial::thou_base_unit::unit_type;

/// N.
using newton = boost::units::si::force;
/// MPa.
using megapascal = detail::power_of_ten<boost::units::si::pressure, 6>;
/// K.
using kelvin = boost::units::si::temperature;

/// A reading on a thermometer, in degrees Celsius.
using temperature = quantity<boost::units::absolute<boost::units::celsius::temperature>>;
/// How much hotter, in kelvin.
using temperature_difference = quantity<kelvin>;
/// In Pa.
using pressure = quantity<boost::units::si::pressure>;
/// In N.
using force = quantity<newton>;
/// In N m.
using torque = quantity<boost::units::si::torque>;
/// In m/s.
using speed = quantity<boost::units::si::velocity>;
/// In W.
using power = quantity<boost::units::si::power>;
/// In Pa s.
using dynamic_viscosity = quantity<boost::units::si::dynamic_viscosity>;
/// In m2/s.
using kinematic_viscosity = quantity<boost::units::si::kinematic_viscosity>;

namespace detail {

template <class System>
inline constexpr bool is_length_unit<boost::units::unit<boost::units::length_dimension, System>> = true;

/// Boost's factor between two units is a `double` that has been through a multiplication or two;
/// where it means a whole number of nanometres, that number is what to divide by.
constexpr double whole_where_meant(double nanometres) noexcept {
    if (nanometres < 0.5 || nanometres > 9e15) return nanometres;
    const auto whole = static_cast<double>(static_cast<std::int64_t>(nanometres + 0.5));
    const double off = nanometres - whole;
    return off < whole * 1e-12 && -off < whole * 1e-12 ? whole : nanometres;
}

template <class Unit> struct nanometres_in {
    static_assert(is_length_unit<Unit>, "this is not a unit of length");
    static constexpr double value = whole_where_meant(boost::units::conversion_factor(Unit(), metre()) * 1e9);
};
template <> struct nanometres_in<metre> { static constexpr double value = 1'000'000'000; };
template <> struct nanometres_in<millimetre> { static constexpr double value = 1'000'000; };
template <> struct nanometres_in<micrometre> { static constexpr double value = 1'000; };
template <> struct nanometres_in<nanometre> { static constexpr double value = 1; };
template <> struct nanometres_in<inch> { static constexpr double value = 25'400'000; };
template <> struct nanometres_in<thou> { static constexpr double value = 25'400; };

} // namespace detail

/// From a Boost.Units length to the nearest nanometre.
/// Error: what is not a number, or is beyond +/- 9.2 million km.
template <class Unit, class Number>
    requires detail::is_length_unit<Unit>
[[nodiscard]] constexpr result<length> to_length(const quantity<Unit, Number>& q) noexcept {
    const auto number = static_cast<double>(q.value());
    constexpr double most = 9.2e18 / detail::nanometres_in<Unit>::value;
    if (number > -most && number < most) return length(q);
    return error::composer(error_code::not_a_length)
           << "this quantity is not a number or too long: allowed are lengths within 9.2 million km";
}

/// A reading of a thermometer in degrees Celsius; below zero too, where a literal has no minus.
[[nodiscard]] constexpr temperature celsius(double reading) { return temperature::from_value(reading); }

/// A reading in degrees Fahrenheit, kept in degrees Celsius.
[[nodiscard]] constexpr temperature fahrenheit(double reading) {
    return temperature::from_value((reading - 32) / 1.8);
}

/// How much hotter one reading is than another.
[[nodiscard]] constexpr temperature_difference difference(temperature hot, temperature cold) {
    return temperature_difference::from_value(hot.value() - cold.value());
}

/// `95_degC`, `203_degF` (readings of a thermometer) and `40_K` (a difference).
namespace literals {

[[nodiscard]] constexpr temperature operator""_degC(long double reading) {
    return celsius(static_cast<double>(reading));
}
[[nodiscard]] constexpr temperature operator""_degC(unsigned long long reading) {
    return celsius(static_cast<double>(reading));
}
/// A reading in degrees Fahrenheit, kept in degrees Celsius.
[[nodiscard]] constexpr temperature operator""_degF(long double reading) {
    return fahrenheit(static_cast<double>(reading));
}
[[nodiscard]] constexpr temperature operator""_degF(unsigned long long reading) {
    return fahrenheit(static_cast<double>(reading));
}
[[nodiscard]] constexpr temperature_difference operator""_K(long double kelvins) {
    return temperature_difference::from_value(static_cast<double>(kelvins));
}
[[nodiscard]] constexpr temperature_difference operator""_K(unsigned long long kelvins) {
    return temperature_difference::from_value(static_cast<double>(kelvins));
}

} // namespace literals

} // namespace fitwright

#endif
