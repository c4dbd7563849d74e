#ifndef FITWRIGHT_THERMAL_GROWTH_HPP
#define FITWRIGHT_THERMAL_GROWTH_HPP

#include <fitwright/limits.hpp>
#include <fitwright/thermal/part.hpp>
#include <fitwright/thermal/sizes.hpp>
#include <fitwright/thermal/strain.hpp>

// What a size becomes when the part is warm: L(T) = L20 * (1 + a(T) * (T - 20 °C)), a(T) the mean
// coefficient from 20 °C to T. A hole grows like the solid that would fill it.

namespace fitwright {

/// A length as the coefficient's spread leaves it.
struct spread_length {
    length least;   ///< rounded down
    length by_mean; ///< by the mean coefficient, to the nearest nanometre
    length most;    ///< rounded up
    flags<thermal_doubt> doubts;
    cautions take_care;
    source from; ///< where the coefficient comes from
};

/// A part's limits when it is warm. They still say how far they lie from the nominal size at 20 °C.
template <side Side> struct hot_limits {
    size_limits<Side> limits; ///< outwards, by the spread of the coefficient
    flags<thermal_doubt> doubts;
    cautions take_care;
    source from; ///< where the coefficient comes from
};

namespace sources {
inline constexpr source size_at_temperature{"mean coefficients of expansion from 20 C (ISO 1)", "",
                                            confidence::published};
} // namespace sources

namespace detail {

/// A length times a strain; the ends of the spread in their order.
[[nodiscard]] constexpr spread_length spread_over(double nanometres, const strain& s,
                                                  const source& from) noexcept {
    const double one_end = nanometres * s.by_lowest;
    const double other_end = nanometres * s.by_highest;
    return {rounded_down(one_end < other_end ? one_end : other_end),
            rounded_to_nearest(nanometres * s.by_mean),
            rounded_up(one_end < other_end ? other_end : one_end),
            s.doubts,
            s.take_care,
            from};
}

/// The limits of a part that has grown, outwards.
template <side Side>
[[nodiscard]] constexpr size_limits<Side> grown(const size_limits<Side>& l, const strain& s) noexcept {
    const double lower = nanometres(l.lower_limit());
    const double upper = nanometres(l.upper_limit());
    return {l.nominal(),
            {.upper = l.upper_deviation() + rounded_up(upper * s.most()),
             .lower = l.lower_deviation() + rounded_down(lower * s.least())},
            sources::size_at_temperature};
}

} // namespace detail

/// How much a length grows from 20 °C to `at`; below zero where it shrinks. `at_20` is the length at
/// 20 °C.
/// Error: the material's expansion is not known at this temperature.
[[nodiscard]] constexpr result<spread_length> growth(length at_20, const material& m,
                                                     const temperature& at) noexcept {
    const auto s = detail::strain_at(m, at);
    if (!s) return s.error();
    return detail::spread_over(detail::nanometres(at_20), *s, s->from(m));
}

/// What a length becomes at a temperature. `at_20` is the length at 20 °C.
/// Error: the material's expansion is not known there.
[[nodiscard]] constexpr result<spread_length> size_at_temperature(length at_20, const material& m,
                                                                  const temperature& at) noexcept {
    const auto grown = growth(at_20, m, at);
    if (!grown) return grown.error();
    return spread_length{at_20 + grown->least, at_20 + grown->by_mean, at_20 + grown->most,
                         grown->doubts,        grown->take_care,       grown->from};
}

/// A part's limits at its temperature, outwards by the spread of the coefficient.
/// Error: limits that are crossed or not above zero; the material's expansion is not known there.
template <side Side>
[[nodiscard]] constexpr result<hot_limits<Side>> at_temperature(const size_limits<Side>& cold,
                                                                const warm_part& part) noexcept {
    if (!detail::allow_a_size(cold)) return detail::no_size_in(cold);
    const auto s = detail::strain_at(part.made_of, part.at);
    if (!s) return s.error();
    return hot_limits<Side>{detail::grown(cold, *s), s->doubts, s->take_care, s->from(part.made_of)};
}

} // namespace fitwright

#endif
