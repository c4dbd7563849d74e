#ifndef FITWRIGHT_THERMAL_SHRINK_HPP
#define FITWRIGHT_THERMAL_SHRINK_HPP

#include <fitwright/thermal/first_crossing.hpp>
#include <fitwright/thermal/hot_fit.hpp>
#include <fitwright/thermal/low_temperature.hpp>

// How hot the hub, how cold the shaft, so that it drops in: the largest shaft into the smallest hole, with
// room to spare, at the worst of the spread of the coefficients (DIN 7190-1:2017).

namespace fitwright {

/// What is to be left when the parts go together, and where the shaft lies before.
struct shrink_wishes {
    /// Clearance on the diameter while assembling; where none is stated, a thousandth of the nominal size
    /// (`sources::assembly_clearance`).
    property<length> assembly_clearance = {};
    temperature room = celsius(20); ///< how warm the shop is
};

/// What a way to assemble asks of the hub.
enum class shrink_outcome : std::uint8_t {
    hub_stays_at_room,   ///< no heat needed
    within_limit,        ///< heat the hub, its material bears it
    limit_not_known,     ///< heat the hub; whether its material bears it is not known
    above_limit,         ///< it would take more than the hub's material bears
    expansion_not_known, ///< of the hub so hot, or of the shaft so cold
};

/// In words.
[[nodiscard]] constexpr text in_words(shrink_outcome o) noexcept {
    switch (o) {
    case shrink_outcome::hub_stays_at_room: return "the hub stays at room temperature";
    case shrink_outcome::within_limit: return "hot enough within the hub's limit";
    case shrink_outcome::limit_not_known: return "how hot the hub may be is not known";
    case shrink_outcome::above_limit: return "not possible: hotter than the hub may be";
    case shrink_outcome::expansion_not_known: return "can't tell: the expansion is not known so far";
    }
    return "";
}

/// One way to assemble: the shaft so cold, the hub so hot.
struct shrink_way {
    shrink_outcome outcome = shrink_outcome::expansion_not_known; ///< whether the way is open
    property<temperature> shaft;                                  ///< where the shaft lies
    property<temperature> hub;         ///< the hub at least this hot, at the worst of the spread
    property<temperature> hub_by_mean; ///< by the mean coefficients

    /// True where it can be done, as far as is known.
    [[nodiscard]] constexpr bool is_possible() const noexcept {
        return outcome == shrink_outcome::hub_stays_at_room || outcome == shrink_outcome::within_limit ||
               outcome == shrink_outcome::limit_not_known;
    }
};

/// Which way to take: the first that can be done, in the order of trouble it makes.
enum class shrink_advice : std::uint8_t {
    goes_in_at_room_temperature,
    heat_the_hub,
    shaft_in_dry_ice,
    shaft_in_dry_ice_and_heat_the_hub,
    shaft_in_liquid_nitrogen,
    shaft_in_liquid_nitrogen_and_heat_the_hub,
    not_possible,
    cannot_tell, ///< for want of a figure: see `shrink_plan::missing_figure`
};

/// In words.
[[nodiscard]] constexpr text in_words(shrink_advice a) noexcept {
    switch (a) {
    case shrink_advice::goes_in_at_room_temperature: return "goes in at room temperature";
    case shrink_advice::heat_the_hub: return "heat the hub";
    case shrink_advice::shaft_in_dry_ice: return "chill the shaft in dry ice";
    case shrink_advice::shaft_in_dry_ice_and_heat_the_hub: return "chill the shaft in dry ice, heat the hub";
    case shrink_advice::shaft_in_liquid_nitrogen: return "chill the shaft in liquid nitrogen";
    case shrink_advice::shaft_in_liquid_nitrogen_and_heat_the_hub:
        return "chill the shaft in liquid nitrogen, heat the hub";
    case shrink_advice::not_possible: return "neither heat nor cold is known to do it: press it";
    case shrink_advice::cannot_tell: return "can't tell";
    }
    return "";
}

namespace sources {
inline constexpr source assembly_clearance{"DIN 7190-1:2017; WHZ formula sheet (2013)",
                                           "at least a thousandth of the diameter", confidence::published};
} // namespace sources

/// The ways to put a shrink fit together.
struct shrink_plan {
    length interference;       ///< the greatest of the fit; below zero where there is none
    length assembly_clearance; ///< what is left while assembling, on the diameter
    source clearance_from;     ///< the caller, or the usual thousandth

    shrink_way shaft_at_room;    ///< the hub heated alone
    shrink_way shaft_in_dry_ice; ///< the shaft cooled in dry ice, the hub heated if that is not enough
    shrink_way shaft_in_liquid_nitrogen; ///< the same with liquid nitrogen
    /// With the hub at room temperature, the shaft at least this cold; not known where no cold is enough, or
    /// where the coefficient ends.
    property<temperature> shaft_alone;
    property<temperature> shaft_alone_by_mean; ///< by the mean coefficients

    property<temperature> hub_limit; ///< the hub no hotter than this
    text hub_limit_reason;           ///< a look at the hub's material
    shrink_advice advice;            ///< which of the ways to take
    /// The figure that would tell, and where it goes; empty unless the advice is `cannot_tell`.
    text missing_figure;
    flags<thermal_doubt> doubts; ///< of the way advised
    cautions take_care;          ///< the same
    source hub_expansion;        ///< where the coefficients come from
    source shaft_expansion;      ///< the same

    /// What is not worked out here, and decides whether it goes well.
    static constexpr text not_covered =
        "how long a part stays hot or cold enough: work fast, have a stop to push against, heat it through";

    /// The way advised; where none is, the one by heat alone.
    [[nodiscard]] constexpr shrink_way best() const noexcept {
        switch (advice) {
        case shrink_advice::shaft_in_dry_ice:
        case shrink_advice::shaft_in_dry_ice_and_heat_the_hub: return shaft_in_dry_ice;
        case shrink_advice::shaft_in_liquid_nitrogen:
        case shrink_advice::shaft_in_liquid_nitrogen_and_heat_the_hub: return shaft_in_liquid_nitrogen;
        default: return shaft_at_room;
        }
    }
};

namespace detail {

/// The tightest pair of a fit, and the clearance that it is to have while it goes together.
struct shrink_pair {
    const material& hub;
    const material& shaft;
    length hole;
    length pin;
    double room;      ///< in °C
    double clearance; ///< in nanometres
    bool is_one_material;

    /// What is still missing of the clearance, in nanometres, at the worst of the spread.
    [[nodiscard]] constexpr double missing(const strain& of_hub, const strain& of_shaft) const noexcept {
        return clearance - clearances_of(hole, pin, {of_hub, of_shaft, is_one_material}).least;
    }
    /// The same by the mean coefficients.
    [[nodiscard]] constexpr double missing_by_mean(const strain& of_hub,
                                                   const strain& of_shaft) const noexcept {
        return clearance - clearance_of(hole, pin, of_hub.by_mean, of_shaft.by_mean);
    }
};

/// From `room` on towards `end`, where nothing is missing any more.
template <class Missing>
[[nodiscard]] constexpr crossing enough_at(double room, double end, const Missing& missing) noexcept {
    const bool is_enough_already = !(missing(room) > arithmetic_noise);
    return is_enough_already ? crossing{true, room} : first_crossing(room, end, missing);
}

[[nodiscard]] constexpr shrink_outcome outcome_of(double needed, double room,
                                                  const property<temperature>& limit) noexcept {
    if (needed == room) return shrink_outcome::hub_stays_at_room;
    if (!limit) return shrink_outcome::limit_not_known;
    return needed <= (*limit).value() ? shrink_outcome::within_limit : shrink_outcome::above_limit;
}

/// How hot the hub has to be for a shaft that lies at `shaft_at`.
[[nodiscard]] constexpr shrink_way way_with(const shrink_pair& pair, const range<double>& hub_known,
                                            const temperature& shaft_at) noexcept {
    shrink_way way;
    way.shaft = shaft_at;
    const auto of_shaft = strain_at(pair.shaft, shaft_at);
    if (!of_shaft) return way;
    const auto of_hub = [&](double hub_at) { return *strain_at(pair.hub, celsius(hub_at)); };
    const auto hub_at = [&](const crossing& c) -> property<temperature> {
        if (!c.is_there) return {};
        return {celsius(c.celsius), less_sure(of_hub(c.celsius).how_sure, of_shaft->how_sure)};
    };
    way.hub_by_mean = hub_at(enough_at(pair.room, hub_known.most,
                                       [&](double t) { return pair.missing_by_mean(of_hub(t), *of_shaft); }));
    way.hub = hub_at(
        enough_at(pair.room, hub_known.most, [&](double t) { return pair.missing(of_hub(t), *of_shaft); }));
    const property<temperature>& limit = pair.hub.highest_heating;
    const bool is_limit_known_of = limit && (*limit).value() <= hub_known.most;
    if (way.hub) way.outcome = outcome_of((*way.hub).value(), pair.room, limit);
    else if (is_limit_known_of) way.outcome = shrink_outcome::above_limit; // as hot as that it is not enough
    return way;
}

/// How cold the shaft has to be if the hub stays at room temperature: at the worst of the spread, and by the
/// mean coefficients.
struct cold_enough {
    property<temperature> at_worst;
    property<temperature> by_mean;
};

[[nodiscard]] constexpr cold_enough shaft_alone(const shrink_pair& pair,
                                                const range<double>& shaft_known) noexcept {
    const strain of_hub = *strain_at(pair.hub, celsius(pair.room));
    const auto of_shaft = [&](double shaft_at) { return *strain_at(pair.shaft, celsius(shaft_at)); };
    const auto shaft_at = [&](const crossing& c) -> property<temperature> {
        if (!c.is_there) return {};
        return {celsius(c.celsius), less_sure(of_hub.how_sure, of_shaft(c.celsius).how_sure)};
    };
    return {shaft_at(enough_at(pair.room, shaft_known.least,
                               [&](double t) { return pair.missing(of_hub, of_shaft(t)); })),
            shaft_at(enough_at(pair.room, shaft_known.least,
                               [&](double t) { return pair.missing_by_mean(of_hub, of_shaft(t)); }))};
}

/// The figure without which nobody can tell, first of the hub when hot, then of the shaft when cold.
[[nodiscard]] constexpr text missing_figure(const shrink_pair& pair, double hottest_known,
                                            const shrink_plan& plan) noexcept {
    if (plan.shaft_at_room.outcome == shrink_outcome::expansion_not_known) {
        if (hottest_known < 200) return "the hub's expansion above 100 C is not known; state to_200_degC";
        if (hottest_known < 300) return "the hub's expansion above 200 C is not known; state to_300_degC";
        if (hottest_known < 500) return "the hub's expansion above 300 C is not known; state to_500_degC";
        return {};
    }
    if (!strain_at(pair.shaft, temperature_of(coolant::liquid_nitrogen)))
        return "the shaft's expansion below -40 C is not known; state cooled_to_minus_190_degC, or press it";
    return {};
}

[[nodiscard]] constexpr shrink_advice advice_for(const shrink_way& at_room, const shrink_way& dry_ice,
                                                 const shrink_way& nitrogen) noexcept {
    const auto needs_heat = [](const shrink_way& w) {
        return w.outcome != shrink_outcome::hub_stays_at_room;
    };
    if (at_room.is_possible())
        return needs_heat(at_room) ? shrink_advice::heat_the_hub : shrink_advice::goes_in_at_room_temperature;
    if (dry_ice.is_possible())
        return needs_heat(dry_ice) ? shrink_advice::shaft_in_dry_ice_and_heat_the_hub
                                   : shrink_advice::shaft_in_dry_ice;
    if (nitrogen.is_possible())
        return needs_heat(nitrogen) ? shrink_advice::shaft_in_liquid_nitrogen_and_heat_the_hub
                                    : shrink_advice::shaft_in_liquid_nitrogen;
    return shrink_advice::not_possible; // unless a figure is missing
}

/// Smaller than this a part has taken the temperature of the room before it is in place (common practice).
inline constexpr length least_to_stay_hot = length::from_nanometres(15'000'000);

/// Doubts, cautions and sources of the way advised.
[[nodiscard]] constexpr shrink_plan annotated(shrink_plan plan, const shrink_pair& pair) noexcept {
    const shrink_way way = plan.best();
    const strain of_shaft = strain_at(pair.shaft, *way.shaft).value_or(strain{});
    const strain of_hub = *strain_at(pair.hub, way.hub.value_or(celsius(pair.room)));
    plan.doubts = of_hub.doubts | of_shaft.doubts;
    if (way.outcome == shrink_outcome::limit_not_known) plan.doubts |= thermal_doubt::heating_limit_not_known;
    const bool is_hot_or_cold =
        way.is_possible() && plan.advice != shrink_advice::goes_in_at_room_temperature;
    if (is_hot_or_cold && pair.hole < least_to_stay_hot) plan.doubts |= thermal_doubt::soon_at_room_again;
    plan.take_care = of_hub.take_care | of_shaft.take_care;
    if (of_shaft.doubts.contains(thermal_doubt::hard_steel_grows_cold)) plan.take_care |= caution::brittle;
    plan.hub_expansion = of_hub.from(pair.hub);
    plan.shaft_expansion = of_shaft.from(pair.shaft);
    return plan;
}

} // namespace detail

/// How to get a shrink fit together: by heat alone, with the shaft in dry ice, with the shaft in liquid
/// nitrogen; how hot each time, and whether the hub bears it. The hole of `f` is in the hub.
///
/// Counts on the greatest interference of the fit and on the worst of the spread of the coefficients; in the
/// cold on the smaller coefficients that hold there, and on the warmer end of what a bath of dry ice reaches.
/// Error: limits that are crossed or not above zero; an assembly clearance below zero; the expansion of the hub,
/// or that of the shaft, is not known at room temperature.
[[nodiscard]] constexpr result<shrink_plan> shrink_temperatures(const fit& f, const material& hub,
                                                                const material& shaft,
                                                                const shrink_wishes& wishes = {}) noexcept {
    if (!detail::allow_a_size(f)) return detail::no_size_in(f);
    const length usual = detail::rounded_up(detail::nanometres(f.hole().nominal()) / 1000);
    const length clearance = wishes.assembly_clearance.value_or(usual);
    if (clearance < length())
        return error::composer(error_code::clearance_below_zero)
               << "the clearance to assemble with is below zero; allowed: zero or more, or none stated for a "
                  "thousandth of the diameter (DIN 7190-1)";
    for (const material* m : {&hub, &shaft})
        if (const auto s = detail::strain_at(*m, wishes.room); !s) return s.error();
    const auto hub_known = detail::expansion_known(hub);
    if (!hub_known) return hub_known.error();
    const auto shaft_known = detail::expansion_known(shaft);
    if (!shaft_known) return shaft_known.error();

    const detail::shrink_pair pair{.hub = hub,
                                   .shaft = shaft,
                                   .hole = f.hole().lower_limit(),
                                   .pin = f.shaft().upper_limit(),
                                   .room = wishes.room.value(),
                                   .clearance = detail::nanometres(clearance),
                                   .is_one_material = detail::is_same_material(hub, shaft)};
    const auto way_at = [&](const temperature& t) { return detail::way_with(pair, *hub_known, t); };
    const detail::cold_enough alone = detail::shaft_alone(pair, *shaft_known);
    shrink_plan plan{.interference = -f.min_clearance(),
                     .assembly_clearance = clearance,
                     .clearance_from =
                         wishes.assembly_clearance ? stated_by_user : sources::assembly_clearance,
                     .shaft_at_room = way_at(wishes.room),
                     .shaft_in_dry_ice = way_at(part_temperature_in(coolant::dry_ice)),
                     .shaft_in_liquid_nitrogen = way_at(part_temperature_in(coolant::liquid_nitrogen)),
                     .shaft_alone = alone.at_worst,
                     .shaft_alone_by_mean = alone.by_mean,
                     .hub_limit = hub.highest_heating,
                     .hub_limit_reason = hub.heating_limit_reason,
                     .advice = {},
                     .missing_figure = {},
                     .doubts = {},
                     .take_care = {},
                     .hub_expansion = {},
                     .shaft_expansion = {}};
    plan.advice =
        detail::advice_for(plan.shaft_at_room, plan.shaft_in_dry_ice, plan.shaft_in_liquid_nitrogen);
    if (plan.advice == shrink_advice::not_possible) {
        plan.missing_figure = detail::missing_figure(pair, hub_known->most, plan);
        if (!plan.missing_figure.empty()) plan.advice = shrink_advice::cannot_tell;
    }
    return detail::annotated(plan, pair);
}

} // namespace fitwright

#endif
