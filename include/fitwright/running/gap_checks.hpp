#ifndef FITWRIGHT_RUNNING_GAP_CHECKS_HPP
#define FITWRIGHT_RUNNING_GAP_CHECKS_HPP

#include <fitwright/error.hpp>
#include <fitwright/running/gap.hpp>
#include <fitwright/written.hpp>

// Which gaps the law of leakage covers, and what is said of the others.

namespace fitwright::detail {

inline constexpr length longest_gap = length::from_nanometres(10'000'000'000); // 10 m

[[nodiscard]] constexpr bool is_gap_length(length l) noexcept { return l > length() && l <= longest_gap; }
[[nodiscard]] constexpr bool is_above_zero(double number, double most) noexcept {
    return number > 0 && number <= most;
}
[[nodiscard]] constexpr bool is_share(double number) noexcept { return number >= 0 && number <= 1; }

[[nodiscard]] constexpr bool is_eccentricity(eccentricity e) noexcept {
    return is_share(e.least) && is_share(e.most) && e.least <= e.most;
}
[[nodiscard]] constexpr bool is_wall_speed(speed s) noexcept {
    return s.value() >= -1000 && s.value() <= 1000;
}

/// The greatest clearance on the diameter: a radial gap of 0.05 of the diameter.
[[nodiscard]] constexpr length widest_gap(length diameter) noexcept {
    return length::from_nanometres(diameter.nanometres() / 10);
}

/// All but the clearance.
[[nodiscard]] constexpr bool is_gap(const gap& g) noexcept {
    return is_gap_length(g.diameter) && is_gap_length(g.land) &&
           (g.pressure_drop.value() == 0 || is_above_zero(g.pressure_drop.value(), 1e9)) &&
           is_above_zero(g.viscosity.value(), 1e6) &&
           (!g.density || is_above_zero((*g.density).value(), 30e3)) && is_wall_speed(g.wall_speed) &&
           is_eccentricity(g.lies);
}

[[nodiscard]] constexpr bool is_clearance(const gap& g) noexcept {
    const clearance_window c = g.clearance.on_diameter();
    return c.least >= length() && c.most > length() && c.least <= c.most &&
           c.most <= widest_gap(g.diameter) && is_fit_for(g.clearance.nominal(), g.diameter);
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_gap(const gap& g) noexcept {
    if (!is_gap_length(g.diameter) || !is_gap_length(g.land))
        return error::composer(error_code::not_a_gap)
               << "a gap of " << written(g.diameter).view() << " mm diameter and " << written(g.land).view()
               << " mm land: allowed are diameters and lands above 0, up to 10 m";
    error::composer say(error_code::not_a_gap);
    if (!is_above_zero(g.viscosity.value(), 1e6))
        return say
               << "no viscosity: allowed are dynamic viscosities above 0, up to 1e6 Pa s; water has 0.001";
    if (g.density && !is_above_zero((*g.density).value(), 30e3))
        return say << "not the density of a liquid: allowed are densities above 0, up to 30000 kg/m3";
    if (!is_wall_speed(g.wall_speed)) return say << "a wall speed beyond 1000 m/s: allowed is up to that";
    if (!is_eccentricity(g.lies))
        return error::composer(error_code::eccentricity_out_of_range)
               << "an eccentricity is a share of the radial gap: allowed is 0 (concentric) to 1 (touching), "
                  "the least first";
    return say
           << "a pressure drop below zero or beyond 1 GPa: allowed is from 0, the wall's speed having the "
              "sign of the leak";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_clearance(const gap& g) noexcept {
    const clearance_window c = g.clearance.on_diameter();
    if (!is_fit_for(g.clearance.nominal(), g.diameter))
        return fit_for_another_size(g.clearance.nominal(), g.diameter);
    if (c.least <= c.most && c.most > widest_gap(g.diameter))
        return error::composer(error_code::gap_too_wide)
               << "a clearance of " << written(c.most).view() << " mm on " << written(g.diameter).view()
               << " mm: allowed is up to " << written(widest_gap(g.diameter)).view()
               << " mm, a radial gap of 0.05 of the diameter, where the law of narrow gaps ends";
    return error::composer(error_code::not_a_gap)
           << "a clearance of " << written(c.least).view() << " to " << written(c.most).view()
           << " mm on diameter: allowed are a least from 0 and a most above 0 and not below it; parts that "
              "interfere don't leak, they seize";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_leak_budget() noexcept {
    return error::composer(error_code::leak_budget_too_small)
           << "no clearance keeps this leak budget: allowed are budgets above 0, and more than what leaks "
              "through a nanometre";
}

} // namespace fitwright::detail

#endif
