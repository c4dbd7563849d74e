#ifndef FITWRIGHT_RUNNING_LEAK_HPP
#define FITWRIGHT_RUNNING_LEAK_HPP

#include <fitwright/figure.hpp>
#include <fitwright/running/gap_checks.hpp>
#include <fitwright/square_root.hpp>

// What leaks through a gap, and how wide a gap may be for what may leak. The clearance enters with its
// cube: between the ends of an ordinary fit lies a factor of ten or more, so there is never one number.

namespace fitwright {

/// The leak through one gap of known clearance and eccentricity.
struct leak {
    length clearance;              ///< on the diameter
    double eccentricity = 0;       ///< 0 concentric, 1 touching
    figure<volume_flow> flow;      ///< below zero: the wall drags more back than the pressure drives
    figure<volume_flow> dragged;   ///< the part of the flow that the moving wall drags along
    figure<speed> mean_speed;      ///< of what the pressure drives
    double reynolds = 0;           ///< on twice the radial gap; 0 if the density is unknown
    double reynolds_at_widest = 0; ///< the same where an eccentric gap is widest
    length inlet_length;           ///< until the flow is laminar all across; 0 if the density is unknown
    double lost_at_the_ends = 0;   ///< the share of the pressure that goes into inlet and outlet

    friend constexpr bool operator==(const leak&, const leak&) noexcept = default;
};

/// What leaks through a gap, at both ends of its clearance.
struct leak_result {
    leak least;        ///< tightest, lying as stated at its best
    leak most;         ///< widest, lying as stated at its worst
    range<leak> tight; ///< at the least clearance: concentric, and fully to one side
    range<leak> loose; ///< at the greatest clearance: concentric, and fully to one side
    flags<leak_doubt> doubts;
    cautions take_care = caution::under_pressure;
    source from = sources::annular_gap;

    /// At the greatest clearance and the worst position.
    [[nodiscard]] constexpr range<figure<volume_flow>> flow() const noexcept {
        return {least.flow, most.flow};
    }
};

/// The greatest clearance that keeps within a leak budget.
struct allowed_clearance {
    length greatest;  ///< on the diameter, rounded down to the nanometre
    leak at_greatest; ///< the leak at that clearance
    flags<leak_doubt> doubts;
    cautions take_care = caution::under_pressure;
    source from = sources::annular_gap;
};

namespace detail {

/// In velocity heads; the least leak is reckoned with the greatest loss.
inline constexpr double most_end_loss = 2;
inline constexpr double least_end_loss = 1.5;

[[nodiscard]] constexpr leak leak_at(const gap& g, length clearance, double eccentricity,
                                     double end_loss) noexcept {
    const double radial = clearance.in<nanometre>() * 0.5e-9; // m, as all that follows is SI
    leak made;
    made.clearance = clearance;
    made.eccentricity = eccentricity;
    if (!(radial > 0)) return made;
    constexpr double pi = 3.141592653589793;
    const double area = pi * g.diameter.in<metre>() * radial;
    const double drop = g.pressure_drop.value();
    const double viscosity = g.viscosity.value();
    const double density = g.density ? (*g.density).value() : 0;
    const double wall = g.wall_speed.value();

    // The pressure drives the liquid through the land and in and out of it:
    // drop = drag * v + end_loss * density / 2 * v^2.
    const double eased = 1 + 1.5 * eccentricity * eccentricity;
    const double drag = 12 * viscosity * g.land.in<metre>() / (radial * radial * eased);
    const double v = 2 * drop / (drag + square_root(drag * drag + 2 * end_loss * density * drop));
    const double wall_v = wall / 2;
    const double size_of_wall_v = wall_v < 0 ? -wall_v : wall_v;
    const double wide = 1 + eccentricity;

    made.flow = figure<volume_flow>::from_value(area * (v + wall_v));
    made.dragged = figure<volume_flow>::from_value(area * wall_v);
    made.mean_speed = figure<speed>::from_value(v);
    const double per_speed = density * 2 * radial / viscosity;
    made.reynolds = per_speed * (v + size_of_wall_v);
    made.reynolds_at_widest = per_speed * wide * (v / eased * wide * wide + size_of_wall_v);
    made.inlet_length = quantity<metre>::from_value(0.04 * made.reynolds * 2 * radial);
    made.lost_at_the_ends = drop > 0 ? end_loss * density / 2 * v * v / drop : 0;
    return made;
}

/// A wall that drags against the pressure makes the leak least at a clearance of its own, which may lie
/// between the ends: there the cube outruns the straight line.
[[nodiscard]] constexpr length least_leaking(const gap& g) noexcept {
    const clearance_window c = g.clearance.on_diameter();
    if (!(g.wall_speed.value() < 0)) return c.least;
    const auto flow = [&](std::int64_t n) {
        return leak_at(g, length::from_nanometres(n), g.lies.least, most_end_loss).flow.value();
    };
    std::int64_t from = c.least.nanometres();
    std::int64_t to = c.most.nanometres();
    while (from < to) { // flow falls, then rises
        const std::int64_t between = from + (to - from) / 2;
        if (flow(between) <= flow(between + 1)) to = between;
        else from = between + 1;
    }
    return length::from_nanometres(from);
}

[[nodiscard]] constexpr flags<leak_doubt> doubts_about(const gap& g, const leak& widest) noexcept {
    flags<leak_doubt> doubts;
    if (!g.density) doubts |= leak_doubt::density_unknown;
    if (widest.reynolds > 2000) doubts |= leak_doubt::turbulent;
    else if (widest.reynolds_at_widest > 2000) doubts |= leak_doubt::turbulent_at_the_widest;
    if (widest.inlet_length * 10 > g.land) doubts |= leak_doubt::short_land;
    if (g.pressure_drop.value() > 10e6) doubts |= leak_doubt::gap_gives;
    return doubts;
}

} // namespace detail

/// What leaks through a gap, at both ends of its clearance range, centred and lying to one side:
/// pi D c^3 dp / (12 eta L) (1 + 1.5 e^2), plus pi D c U / 2 that a moving wall drags along (c: radial gap).
/// Where the density is known, the loss at inlet and outlet takes its share of the pressure.
///
/// For liquids. Hot: give the clearance and the viscosity of the hot state. The Reynolds number (laminar
/// below about 2000) and the inlet length, 0.04 Re 2c, are in the answer, and the doubts where they tell.
/// Error: a clearance below zero or crossed, or of a fit of another size; a radial gap above 0.05 of the
/// diameter; an eccentricity
/// outside 0 to 1; a size, pressure, viscosity, density or speed that is not one.
[[nodiscard]] constexpr result<leak_result> leakage(const gap& g) noexcept {
    if (!detail::is_gap(g)) return detail::not_a_gap(g);
    if (!detail::is_clearance(g)) return detail::not_a_clearance(g);
    const clearance_window c = g.clearance.on_diameter();
    using detail::leak_at;
    leak_result made{
        .least = leak_at(g, detail::least_leaking(g), g.lies.least, detail::most_end_loss),
        .most = leak_at(g, c.most, g.lies.most, detail::least_end_loss),
        .tight = {leak_at(g, c.least, 0, detail::most_end_loss),
                  leak_at(g, c.least, 1, detail::least_end_loss)},
        .loose = {leak_at(g, c.most, 0, detail::most_end_loss),
                  leak_at(g, c.most, 1, detail::least_end_loss)},
        .doubts = {},
    };
    const leak at_tight_end = leak_at(g, c.least, g.lies.most, detail::least_end_loss);
    if (at_tight_end.flow > made.most.flow) made.most = at_tight_end; // a wall that drags against it
    made.doubts = detail::doubts_about(g, leak_at(g, c.most, g.lies.most, detail::least_end_loss));
    if (made.least.flow.value() < 0) made.doubts |= leak_doubt::against_the_pressure;
    return made;
}

/// The greatest clearance for which no more than the budget leaks, however the part lies of what is stated.
/// The gap's own clearance is not looked at and may be left out.
/// Error: a budget not above zero, or so small that no clearance keeps it; otherwise as of `leakage`.
[[nodiscard]] constexpr result<allowed_clearance> greatest_clearance(const gap& g,
                                                                     volume_flow budget) noexcept {
    if (!detail::is_gap(g)) return detail::not_a_gap(g);
    if (!(budget.value() > 0)) return detail::no_leak_budget();
    const auto at = [&](std::int64_t n) {
        return detail::leak_at(g, length::from_nanometres(n), g.lies.most, detail::least_end_loss);
    };
    std::int64_t within = 0;
    std::int64_t beyond = detail::widest_gap(g.diameter).nanometres() + 1;
    const std::int64_t end_of_law = beyond - 1;
    while (beyond - within > 1) {
        const std::int64_t between = within + (beyond - within) / 2;
        if (at(between).flow.value() <= budget.value()) within = between;
        else beyond = between;
    }
    if (within == 0) return detail::no_leak_budget();
    allowed_clearance made{
        .greatest = length::from_nanometres(within), .at_greatest = at(within), .doubts = {}};
    made.doubts = detail::doubts_about(g, made.at_greatest);
    if (within == end_of_law) made.doubts |= leak_doubt::law_ends;
    return made;
}

} // namespace fitwright

#endif
