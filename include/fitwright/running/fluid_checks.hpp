#ifndef FITWRIGHT_RUNNING_FLUID_CHECKS_HPP
#define FITWRIGHT_RUNNING_FLUID_CHECKS_HPP

#include <fitwright/error.hpp>
#include <fitwright/running/fluid.hpp>

// Which numbers a fluid can have. What is not given is not looked at.

namespace fitwright::detail {

inline constexpr double thickest_mm2_s = 1e9; // 1e6 Pa s at the density of water: pitch and beyond

[[nodiscard]] constexpr bool is_density(const fluid& f) noexcept {
    if (!f.density_at_15_degC) return true;
    const double density = f.density_at_15_degC.value().value();
    return density > 0 && density <= 30e3;
}
[[nodiscard]] constexpr bool is_volume_expansion(const fluid& f) noexcept {
    if (!f.volume_expansion) return true;
    const double expansion = f.volume_expansion.value().value();
    return expansion >= 0 && expansion <= 0.01;
}
[[nodiscard]] constexpr bool is_heat_capacity(const fluid& f) noexcept {
    if (!f.heat_capacity) return true;
    const double capacity = f.heat_capacity.value().value();
    return capacity > 0 && capacity <= 1e8;
}
[[nodiscard]] constexpr bool is_thin_enough(const viscosity_point& p) noexcept {
    return !p.viscosity || p.viscosity.value().value() * 1e6 <= thickest_mm2_s;
}

[[nodiscard]] constexpr bool is_fluid(const fluid& f) noexcept {
    return is_density(f) && is_volume_expansion(f) && is_heat_capacity(f) && is_thin_enough(f.known) &&
           is_thin_enough(f.also_known);
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_fluid(const fluid& f) noexcept {
    error::composer say(error_code::bearing_value_not_possible);
    if (!is_density(f))
        return say << "the density of the lubricant is not one: allowed are above 0, up to 30000 kg/m3";
    if (!is_volume_expansion(f))
        return say
               << "the volume expansion of the lubricant is not one: allowed are 0 to 0.01 for each kelvin";
    if (!is_heat_capacity(f))
        return say
               << "the heat capacity of the lubricant is not one: allowed are above 0, up to 1e8 J/(m3 K); "
                  "oil has 1.7e6";
    return error::composer(error_code::viscosity_points_unusable)
           << "a viscosity of " << f.name << " is not one: allowed are above 0, up to 1e9 mm2/s";
}

} // namespace fitwright::detail

#endif
