#ifndef FITWRIGHT_STACK_BACKLASH_HPP
#define FITWRIGHT_STACK_BACKLASH_HPP

#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/source.hpp>
#include <fitwright/stack/lash.hpp>
#include <fitwright/stack/units.hpp>
#include <fitwright/written.hpp>

#include <cmath>

// What the distance between two axes makes of the lash of gears, or of a worm and its wheel.

namespace fitwright {

/// A pair of spur or helical gears on their axes.
struct gear_pair {
    length centre_distance;                   ///< at which teeth of full thickness just touch on both flanks
    deviations spread;                        ///< how far the distance may be off
    plane_angle pressure_angle = degrees(20); ///< normal to the tooth
    plane_angle helix_angle{};                ///< on the reference cylinder, either hand
    range<length> thinned{}; ///< lash along the pitch circle from teeth cut thinner, both gears
};

/// A worm and its wheel.
struct worm_pair {
    length wheel_pitch_diameter;              ///< of the worm wheel
    deviations spread;                        ///< how far the distance of the axes may be off
    plane_angle pressure_angle = degrees(20); ///< normal to the thread
    plane_angle lead_angle{};                 ///< of the worm's thread
    range<length> thinned{};                  ///< axial play of the worm from a thinner thread or teeth
};

/// The lash of a pair of gears, from least to most; below zero it jams. Rounded outwards.
struct gear_lash {
    range<length> circumferential; ///< along the pitch circle: what turning one gear shows
    range<length> normal;          ///< across the flanks: what a feeler gauge shows
    range<length> by_the_rule;     ///< circumferential, by 2 da tan(alpha), 0.728 da at 20 degrees
    flags<lash_doubt> doubts;
    cautions take_care = caution::rotating;
    source from;
};

/// The lash of a worm and its wheel, from least to most; below zero it jams. Rounded outwards.
struct worm_lash {
    range<length> axial;                 ///< play of the worm along its axis
    range<figure<plane_angle>> of_wheel; ///< how far the wheel turns in it
    flags<lash_doubt> doubts;
    cautions take_care = caution::rotating;
    source from;
};

namespace sources {
inline constexpr source involute_lash{"involute geometry", "j = 2 a' (inv alpha' - inv alpha)",
                                      confidence::published};
inline constexpr source worm_lash_rule{"geometry of the rack in the worm's axial section",
                                       "2 da tan(alpha axial)", confidence::published};
} // namespace sources

namespace detail {

[[nodiscard]] constexpr bool is_angle_within(plane_angle a, double lowest, double highest) noexcept {
    return a.value() >= degrees(lowest).value() && a.value() <= degrees(highest).value();
}
/// By no more than a twentieth of the length they lie along.
[[nodiscard]] constexpr bool is_spread(deviations d, length along) noexcept {
    const std::int64_t most = along.nanometres() / 20; // nothing multiplied: any length may come in
    return d.lower <= d.upper && d.lower.nanometres() >= -most && d.upper.nanometres() <= most;
}
[[nodiscard]] constexpr bool is_lash_length(length l) noexcept {
    return l > length() && l <= length::from_nanometres(10'000'000'000);
}
[[nodiscard]] constexpr bool is_thinned(range<length> t, length along) noexcept {
    return t.least >= length() && t.least <= t.most && t.most <= along;
}

[[nodiscard]] constexpr bool is_gear_pair(const gear_pair& g) noexcept {
    return is_lash_length(g.centre_distance) && is_spread(g.spread, g.centre_distance) &&
           is_thinned(g.thinned, g.centre_distance) && is_angle_within(g.pressure_angle, 10, 35) &&
           is_angle_within(g.helix_angle, -60, 60);
}
[[nodiscard]] constexpr bool is_worm_pair(const worm_pair& w) noexcept {
    return is_lash_length(w.wheel_pitch_diameter) && is_spread(w.spread, w.wheel_pitch_diameter) &&
           is_thinned(w.thinned, w.wheel_pitch_diameter) && is_angle_within(w.pressure_angle, 10, 35) &&
           is_angle_within(w.lead_angle, 0, 45);
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_gear_pair(length along,
                                                                        deviations spread) noexcept {
    error::composer say(error_code::not_a_gear_pair);
    if (!is_lash_length(along))
        return say << "a centre distance or wheel of " << written(along).view()
                   << " mm: allowed are those above 0, up to 10 m";
    if (!is_spread(spread, along))
        return say
               << "axes off by " << written(spread.lower).view() << " to " << written(spread.upper).view()
               << " mm: allowed is the lower first, and up to a twentieth of the centre distance or wheel";
    return say
           << "angles or thinner teeth that no gear has: allowed are pressure angles of 10 to 35 degrees, "
              "helices up to 60, leads up to 45, and thinning from 0, the least first";
}

[[nodiscard]] inline double involute(double angle) noexcept { return std::tan(angle) - angle; }

/// Circumferential, in nanometres: 2 a' (inv alpha' - inv alpha) with cos alpha' = a cos alpha / a'.
[[nodiscard]] inline double exact_lash(length distance, length off, double transverse_angle) noexcept {
    const double a = distance.in<nanometre>();
    const double apart = (distance + off).in<nanometre>();
    // Not acos(a cos alpha / a'): it loses the small differences that this is about.
    const double ratio = a * std::cos(transverse_angle) / apart;
    if (ratio >= 1) return 2 * apart * -involute(transverse_angle); // down to the base circles
    const double working = std::atan2(std::sqrt((1 - ratio) * (1 + ratio)), ratio);
    return 2 * apart * (involute(working) - involute(transverse_angle));
}

} // namespace detail

/// What the tolerance of a centre distance makes of backlash, exact by the involute and by the rule of thumb
/// beside it. The gears' temperatures and their runout are not in it: put both into the spread.
/// Error: a centre distance not above zero; a spread crossed or beyond a twentieth of it; angles outside
/// 10 to 35 (pressure) and +/-60 degrees (helix).
[[nodiscard]] inline result<gear_lash> backlash(const gear_pair& g) noexcept {
    if (!detail::is_gear_pair(g)) return detail::not_a_gear_pair(g.centre_distance, g.spread);
    const double normal_angle = g.pressure_angle.value();
    const double helix = g.helix_angle.value();
    const double transverse = std::atan(std::tan(normal_angle) / std::cos(helix));
    const double sine_of_base_helix = std::sin(helix) * std::cos(normal_angle);
    const double to_normal =
        std::cos(normal_angle) * std::sqrt((1 - sine_of_base_helix) * (1 + sine_of_base_helix));
    const double rule = 2 * std::tan(transverse);

    const double opened[] = {detail::exact_lash(g.centre_distance, g.spread.lower, transverse),
                             detail::exact_lash(g.centre_distance, g.spread.upper, transverse)};
    const double by_rule[] = {g.spread.lower.in<nanometre>() * rule, g.spread.upper.in<nanometre>() * rule};
    const double least = g.thinned.least.in<nanometre>() + opened[0];
    const double most = g.thinned.most.in<nanometre>() + opened[1];
    using detail::lash_down, detail::lash_up;
    gear_lash made{.circumferential = {lash_down(least), lash_up(most)},
                   .normal = {lash_down(least * to_normal), lash_up(most * to_normal)},
                   .by_the_rule = {lash_down(g.thinned.least.in<nanometre>() + by_rule[0]),
                                   lash_up(g.thinned.most.in<nanometre>() + by_rule[1])},
                   .doubts = {},
                   .from = sources::involute_lash};
    if (made.circumferential.least < length()) made.doubts |= lash_doubt::jams;
    for (int end = 0; end < 2; ++end)
        if (std::abs(opened[end] - by_rule[end]) > 0.05 * std::abs(opened[end]))
            made.doubts |= lash_doubt::rule_of_thumb_off;
    return made;
}

/// What the tolerance of the axes' distance makes of a worm's axial play and of the wheel's turn:
/// 2 da tan(alpha axial), tan(alpha normal) = tan(alpha axial) cos(lead).
/// Error: a wheel not above zero; a spread crossed or beyond a twentieth of it; angles outside 10 to 35
/// (pressure) and 0 to 45 degrees (lead).
[[nodiscard]] inline result<worm_lash> backlash(const worm_pair& w) noexcept {
    if (!detail::is_worm_pair(w)) return detail::not_a_gear_pair(w.wheel_pitch_diameter, w.spread);
    const double rule = 2 * std::tan(w.pressure_angle.value()) / std::cos(w.lead_angle.value());
    const double least = w.thinned.least.in<nanometre>() + w.spread.lower.in<nanometre>() * rule;
    const double most = w.thinned.most.in<nanometre>() + w.spread.upper.in<nanometre>() * rule;
    const double radius = w.wheel_pitch_diameter.in<nanometre>() / 2;
    worm_lash made{.axial = {detail::lash_down(least), detail::lash_up(most)},
                   .of_wheel = {figure<plane_angle>::from_value(least / radius),
                                figure<plane_angle>::from_value(most / radius)},
                   .doubts = {},
                   .from = sources::worm_lash_rule};
    if (made.axial.least < length()) made.doubts |= lash_doubt::jams;
    return made;
}

} // namespace fitwright

#endif
