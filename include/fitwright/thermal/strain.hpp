#ifndef FITWRIGHT_THERMAL_STRAIN_HPP
#define FITWRIGHT_THERMAL_STRAIN_HPP

#include <fitwright/material/expansion.hpp>
#include <fitwright/source.hpp>
#include <fitwright/thermal/doubt.hpp>

// How much a part grows for each of its lengths, and how to put that on nanometres: plain doubles,
// rounded once.

namespace fitwright {

namespace detail {

inline constexpr double reference_celsius = 20;

/// Growth from 20 °C as a part of the size at 20 °C: by the mean coefficient, and by either end of its
/// spread.
struct strain {
    double by_lowest = 0;
    double by_mean = 0;
    double by_highest = 0;
    flags<thermal_doubt> doubts = {};
    cautions take_care = {};
    confidence how_sure = confidence::published;

    /// A cooled part is smallest by the highest coefficient.
    [[nodiscard]] constexpr double least() const noexcept {
        return by_lowest < by_highest ? by_lowest : by_highest;
    }
    [[nodiscard]] constexpr double most() const noexcept {
        return by_lowest < by_highest ? by_highest : by_lowest;
    }
    /// Where the coefficient of the material that is strained comes from.
    [[nodiscard]] constexpr source from(const material& m) const noexcept {
        return {m.documents, m.name, how_sure};
    }
};

/// Bare metal burns a hand that holds it from about here on (common practice).
inline constexpr double hot_to_touch_celsius = 50;
/// And a wet hand freezes to it from about here down (common practice).
inline constexpr double cold_to_touch_celsius = -20;

[[nodiscard]] constexpr cautions cautions_at(double celsius) noexcept {
    if (celsius >= hot_to_touch_celsius) return caution::hot;
    if (celsius <= cold_to_touch_celsius) return caution::cold;
    return {};
}

[[nodiscard]] constexpr flags<thermal_doubt> doubts_at(const material& m, double celsius) noexcept {
    flags<thermal_doubt> doubts = {};
    const auto& limit = m.highest_heating;
    if (limit && celsius > (*limit).value()) doubts |= thermal_doubt::above_heating_limit;
    if (m.family == material_family::plastic) doubts |= thermal_doubt::plastic_moves;
    const bool is_chilled_on_purpose = celsius < -70;
    if (is_chilled_on_purpose && m.condition.find("hardened") != text::npos)
        doubts |= thermal_doubt::hard_steel_grows_cold;
    return doubts;
}

[[nodiscard]] constexpr strain strained(const material& m, double celsius,
                                        const mean_coefficient& a) noexcept {
    const double heated = celsius - reference_celsius;
    strain made{a.lowest().value() * heated, a.value().value() * heated, a.highest().value() * heated,
                doubts_at(m, celsius),       cautions_at(celsius),       a.from().how_sure};
    if (a.how() == table_reading::extrapolated) made.doubts |= thermal_doubt::extrapolated;
    if (made.how_sure == confidence::uncertain) made.doubts |= thermal_doubt::uncertain_expansion;
    return made;
}

/// What a part does at a temperature. At 20 °C nothing has grown, whatever is known of the material.
/// Error: the coefficient is not known there.
[[nodiscard]] constexpr result<strain> strain_at(const material& m, const temperature& at) noexcept {
    const double celsius = at.value();
    if (celsius == reference_celsius) return strain{0, 0, 0, doubts_at(m, celsius)};
    // Machines are nearly always between -190 and 100 °C: what `mean_expansion` says there, without the
    // rest of its table, which takes three times as long.
    const auto& first = m.expansion.to_100_degC;
    const auto& cold = m.expansion.cooled_to_minus_190_degC;
    if (first && celsius > reference_celsius && celsius <= 100)
        return strained(m, celsius,
                        with_spread(m, (*first).value(), table_reading::tabulated, first.how_sure()));
    if (first && cold && celsius < reference_celsius && celsius > -190)
        return strained(m, celsius,
                        on_the_line(m, {-190, (*cold).value(), cold.how_sure()},
                                    {reference_celsius, (*first).value(), first.how_sure()}, celsius));
    const auto a = mean_expansion(m, at);
    if (!a) return a.error();
    return strained(m, celsius, *a);
}

/// Whether two parts are of one material, so that they share one coefficient, whichever that is.
[[nodiscard]] constexpr bool is_same_material(const material& a, const material& b) noexcept {
    return a.name == b.name && a.expansion.to_100_degC == b.expansion.to_100_degC &&
           a.expansion.lowest == b.expansion.lowest && a.expansion.highest == b.expansion.highest;
}

/// What the arithmetic may be off by, in nanometres: it moves no size from one nanometre to the next.
inline constexpr double arithmetic_noise = 1e-6;

[[nodiscard]] constexpr length rounded_down(double nanometres) noexcept {
    const double up = nanometres + arithmetic_noise;
    if (!(up > -9.2e18)) return length::from_nanometres(-INT64_MAX);
    if (up > 9.2e18) return length::from_nanometres(INT64_MAX);
    const auto whole = static_cast<std::int64_t>(up);
    return length::from_nanometres(static_cast<double>(whole) > up ? whole - 1 : whole);
}
[[nodiscard]] constexpr length rounded_up(double nanometres) noexcept { return -rounded_down(-nanometres); }
[[nodiscard]] constexpr length rounded_to_nearest(double nanometres) noexcept {
    return rounded_down(nanometres + 0.5 - arithmetic_noise);
}

[[nodiscard]] constexpr double nanometres(length l) noexcept { return static_cast<double>(l.nanometres()); }

} // namespace detail

} // namespace fitwright

#endif
