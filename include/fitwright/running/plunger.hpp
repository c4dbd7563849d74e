#ifndef FITWRIGHT_RUNNING_PLUNGER_HPP
#define FITWRIGHT_RUNNING_PLUNGER_HPP

#include <fitwright/running/leak.hpp>

// A plunger that delivers liquid against a pressure, and loses some of it past itself.

namespace fitwright {

/// How often a plunger strokes, and for what share of each cycle the pressure is on.
struct stroke_rate {
    double per_minute;                 ///< how many strokes
    double share_under_pressure = 0.5; ///< of the time, from 0 to 1

    /// How long the pressure is on in each stroke. None, which `leakage` refuses, where the rate is not above
    /// 0, or the share not above 0 and up to 1.
    [[nodiscard]] constexpr duration under_pressure() const noexcept {
        const bool is_possible = per_minute > 0 && share_under_pressure > 0 && share_under_pressure <= 1;
        return seconds(is_possible ? 60 / per_minute * share_under_pressure : 0);
    }
};

/// A plunger and the gap around it. The gap's wall speed stays out: what the plunger drags along is in the
/// volume it sweeps, which is that of the middle of the gap.
struct plunger {
    gap around;                ///< with the clearance and the liquid; its diameter is the plunger's
    length stroke;             ///< how far it moves
    duration under_pressure{}; ///< in each stroke: `seconds(0.4)`, or `stroke_rate{…}.under_pressure()`
};

/// A share of what a stroke sweeps, in per cent.
struct percent {
    double value;
};

/// What a plunger loses past itself in each stroke.
struct plunger_leak {
    leak_result past;                ///< while the pressure is on
    figure<volume> swept;            ///< what a stroke displaces
    range<figure<volume>> leaked;    ///< if the pressure were held; above what is swept nothing is delivered
    range<figure<volume>> delivered; ///< swept less leaked; valves and dead volume are not in it
    range<double> percent_lost;      ///< of what is swept
    flags<leak_doubt> doubts;
    cautions take_care = caution::under_pressure;
    source from = sources::annular_gap;
};

namespace detail {

[[nodiscard]] constexpr double swept_cubic_metres(const plunger& p) noexcept {
    const double d = p.around.diameter.in<metre>();
    constexpr double pi = 3.141592653589793;
    return pi / 4 * d * d * p.stroke.in<metre>();
}

[[nodiscard]] constexpr bool is_plunger(const plunger& p) noexcept {
    return is_gap_length(p.stroke) && is_above_zero(p.under_pressure.value(), 1e9) &&
           p.around.wall_speed.value() == 0;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_plunger(const plunger& p) noexcept {
    error::composer say(error_code::not_a_plunger);
    if (!is_gap_length(p.stroke))
        return say << "a stroke of " << written(p.stroke).view()
                   << " mm: allowed are strokes above 0, up to 10 m";
    if (p.around.wall_speed.value() != 0)
        return say
               << "a plunger's own speed is in the volume it sweeps: allowed is a gap without a wall speed";
    return say << "no time under pressure: allowed are times above 0 in each stroke, rates above 0, and "
                  "shares of the cycle above 0, up to 1";
}

} // namespace detail

/// What a plunger loses in each stroke, least to most, and in per cent of what it sweeps.
/// Error: a stroke or a time not above zero; a wall speed; otherwise as of `leakage(gap)`.
[[nodiscard]] constexpr result<plunger_leak> leakage(const plunger& p) noexcept {
    if (!detail::is_plunger(p)) return detail::not_a_plunger(p);
    const auto past = leakage(p.around);
    if (!past) return past.error();
    const double swept = detail::swept_cubic_metres(p);
    const double least = past->least.flow.value() * p.under_pressure.value();
    const double most = past->most.flow.value() * p.under_pressure.value();
    const auto figure_of = [](double cubic_metres) {
        return figure<volume>::from_value(cubic_metres > 0 ? cubic_metres : 0);
    };
    plunger_leak made{.past = *past,
                      .swept = figure_of(swept),
                      .leaked = {figure_of(least), figure_of(most)},
                      .delivered = {figure_of(swept - most), figure_of(swept - least)},
                      .percent_lost = {100 * least / swept, 100 * most / swept},
                      .doubts = past->doubts};
    if (most >= swept) made.doubts |= leak_doubt::delivers_nothing;
    return made;
}

/// The greatest clearance with which a plunger loses no more than so many per cent of its stroke.
/// Error: as of `leakage(plunger)`; a budget outside 0 to 100 %, or so small that no clearance keeps it.
[[nodiscard]] constexpr result<allowed_clearance> greatest_clearance(const plunger& p,
                                                                     percent budget) noexcept {
    if (!detail::is_plunger(p)) return detail::not_a_plunger(p);
    if (!detail::is_above_zero(budget.value, 100))
        return error::composer(error_code::leak_budget_too_small)
               << "a leak budget outside 0 to 100 %: allowed are shares above 0, up to 100 % of the stroke";
    const double flow = detail::swept_cubic_metres(p) * budget.value / 100 / p.under_pressure.value();
    return greatest_clearance(p.around, volume_flow::from_value(flow));
}

} // namespace fitwright

#endif
