#ifndef FITWRIGHT_RUNNING_FLUID_HPP
#define FITWRIGHT_RUNNING_FLUID_HPP

#include <fitwright/material/property.hpp>
#include <fitwright/running/units.hpp>
#include <fitwright/source.hpp>
#include <fitwright/text.hpp>

namespace fitwright {

/// A viscosity as read at one temperature.
struct viscosity_point {
    property<kinematic_viscosity> viscosity = {};
    property<temperature> at = {};
};

/// By which rule a viscosity follows from the temperature.
enum class viscosity_law : std::uint8_t {
    astm_d341, ///< a straight line between two points on the chart for mineral oils
    water,     ///< IAPWS SR6-08
};

/// What fills the gap. A fluid of your own is written with designated initialisers; what you leave out is
/// not known:
///
///     constexpr fluid our_oil{.name = "our spindle oil",
///                             .known = {centistokes(22), 40_degC},
///                             .also_known = {centistokes(4.3), 100_degC},
///                             .density_at_15_degC = kilograms_per_cubic_metre(865),
///                             .heat_capacity = heat_capacity_of_oils};
///
/// With one point only, the viscosity is known at that temperature and nowhere else.
struct fluid {
    text name;
    viscosity_point known = {};                     ///< one point of its viscosity
    viscosity_point also_known = {};                ///< another, if there is one
    property<mass_density> density_at_15_degC = {}; ///< not known: no dynamic viscosity from a kinematic one
    /// How much of its volume it grows for each kelvin.
    property<expansion_coefficient> volume_expansion = {};
    /// What it takes to warm it, by volume.
    property<volumetric_heat_capacity> heat_capacity = {};
    /// How far a charge may lie from these viscosities, per cent either way: what the grade allows.
    double spread_per_cent = 0;
    property<temperature> spread_at = {}; ///< where the grade is measured
    /// Multigrade engine oils lose 10 to 40 % of their viscosity in the shear of a bearing.
    bool is_multigrade = false;
    viscosity_law law = viscosity_law::astm_d341; ///< how its viscosity goes with temperature
    source from = stated_by_user;
};

/// Density times specific heat of oils: the low end of the usual 1.7 to 1.8 MJ/(m3 K), from memory of
/// handbooks; with it a bearing comes out warmer rather than cooler.
inline constexpr property<volumetric_heat_capacity>
    heat_capacity_of_oils(volumetric_heat_capacity::from_value(1.7e6), confidence::memory);

namespace fluids {

/// Water: liquid, 0 to 110 degC, above 100 degC under pressure.
inline constexpr fluid water{.name = "water",
                             .heat_capacity =
                                 property<volumetric_heat_capacity>::printed(4.15e6, confidence::memory),
                             .law = viscosity_law::water,
                             .from = {"IAPWS SR6-08(2011)", "liquid water at 0.1 MPa", confidence::memory}};

} // namespace fluids

} // namespace fitwright

#endif
