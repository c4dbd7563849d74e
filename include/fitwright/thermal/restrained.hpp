#ifndef FITWRIGHT_THERMAL_RESTRAINED_HPP
#define FITWRIGHT_THERMAL_RESTRAINED_HPP

#include <fitwright/figure.hpp>
#include <fitwright/thermal/growth.hpp>

namespace fitwright {

/// A bar between two walls that do not give: a shaft between fixed bearings, a pin between two plates.
struct restrained_bar {
    material made_of;
    length size;     ///< at 20 °C
    length gap = {}; ///< what it may grow before it touches, at 20 °C
    temperature at;
};

/// The pressure in a restrained bar; none as long as the gap is open. A cooled bar comes off the walls.
struct restrained_stress {
    range<figure<pressure>> stress; ///< compression, by the spread of the coefficient
    figure<pressure> by_mean;       ///< by the mean coefficient
    flags<thermal_doubt> doubts;
    cautions take_care;
    source expansion; ///< where the coefficient comes from
    source modulus;   ///< and where Young's modulus comes from
};

namespace detail {

/// In pascal; E as at 20 °C.
[[nodiscard]] constexpr double stress_of(const restrained_bar& bar, double grown) noexcept {
    const double free = grown - nanometres(bar.gap) / nanometres(bar.size);
    return free > 0 ? (*bar.made_of.youngs_modulus).value() * free : 0;
}

} // namespace detail

/// The stress in a bar that gets warm and may not grow: E * (a * (T - 20 °C) - gap / L), elastic. A slender
/// bar bends out before that.
/// Error: a size not above zero, a gap below zero; Young's modulus or the expansion is not known or not possible.
[[nodiscard]] constexpr result<restrained_stress> stress_when_restrained(const restrained_bar& bar) noexcept {
    const material& m = bar.made_of;
    if (bar.size <= length())
        return error::composer(error_code::size_not_above_zero)
               << "a bar has a length; allowed: a size above zero";
    if (bar.gap < length())
        return error::composer(error_code::clearance_below_zero)
               << "the gap is below zero; allowed: zero or more, a bar that is pressed in is a press fit";
    if (!m.youngs_modulus)
        return error::composer(error_code::property_not_known)
               << "the elasticity of " << detail::short_name(m).view()
               << " is not known; allowed: a material that states Young's modulus";
    const double modulus = (*m.youngs_modulus).value();
    const bool is_modulus_possible = modulus > 0 && modulus < 1e13;
    if (!is_modulus_possible)
        return error::composer(error_code::figure_not_possible)
               << "the elasticity of " << detail::short_name(m).view()
               << " is not possible: youngs_modulus; allowed: above zero, below 10000 GPa";
    const auto grown = detail::strain_at(m, bar.at);
    if (!grown) return grown.error();

    const double most = detail::stress_of(bar, grown->most());
    flags<thermal_doubt> doubts = grown->doubts;
    if (m.yield_strength && most > (*m.yield_strength).value()) doubts |= thermal_doubt::above_yield;
    const auto pascals = [](double number) { return figure<pressure>::from_value(number); };
    return restrained_stress{{pascals(detail::stress_of(bar, grown->least())), pascals(most)},
                             pascals(detail::stress_of(bar, grown->by_mean)),
                             doubts,
                             grown->take_care,
                             grown->from(m),
                             m.source_of(m.youngs_modulus)};
}

} // namespace fitwright

#endif
