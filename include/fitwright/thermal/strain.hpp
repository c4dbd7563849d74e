#ifndef FITWRIGHT_THERMAL_STRAIN_HPP
#define FITWRIGHT_THERMAL_STRAIN_HPP

#include <fitwright/material/expansion.hpp>
#include <fitwright/source.hpp>
#include <fitwright/thermal/cold_figures.hpp>
#include <fitwright/thermal/doubt.hpp>

// How much a part grows for each of its lengths, and how to put that on nanometres: plain doubles,
// rounded once.

namespace fitwright {

namespace detail {

inline constexpr double reference_celsius = 20;

/// Whose figures a strain was worked out of.
enum class figures_of : std::uint8_t { material, nist, ekin };

/// Growth from 20 °C as a part of the size at 20 °C: by the mean coefficient, and by either end of its
/// spread.
struct strain {
    double by_lowest = 0;
    double by_mean = 0;
    double by_highest = 0;
    flags<thermal_doubt> doubts = {};
    cautions take_care = {};
    confidence how_sure = confidence::published;
    figures_of found_in = figures_of::material;
    bool is_known = true;

    /// A cooled part is smallest by the highest coefficient.
    [[nodiscard]] constexpr double least() const noexcept {
        return by_lowest < by_highest ? by_lowest : by_highest;
    }
    [[nodiscard]] constexpr double most() const noexcept {
        return by_lowest < by_highest ? by_highest : by_lowest;
    }
    /// Where the coefficient of the material that is strained comes from.
    [[nodiscard]] constexpr source from(const material& m) const noexcept {
        switch (found_in) {
        case figures_of::nist: return {sources::nist_cryogenic.document, m.name, how_sure};
        case figures_of::ekin: return {sources::ekin_low_temperature.document, m.name, how_sure};
        case figures_of::material: break;
        }
        return {m.documents, m.name, how_sure};
    }
};

inline constexpr strain nothing_known{.is_known = false};

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

/// What comes of a coefficient that is used beyond its table. The mean of 20 to 100 °C serves in a cold shed
/// as well, a little too high but within the spread; in frost that is worth a word.
[[nodiscard]] constexpr flags<thermal_doubt> doubts_beyond(const material& m, double celsius) noexcept {
    if (celsius > reference_celsius || m.expansion.cooled_to_minus_190_degC)
        return thermal_doubt::extrapolated;
    if (celsius < 0) return thermal_doubt::cold_figures_not_known;
    return {};
}

[[nodiscard]] constexpr strain strained(const material& m, double celsius, const spread_mean& a,
                                        figures_of found_in = figures_of::material) noexcept {
    const double heated = celsius - reference_celsius;
    flags<thermal_doubt> doubts = doubts_at(m, celsius);
    if (a.how == table_reading::extrapolated) doubts |= doubts_beyond(m, celsius);
    if (a.how_sure == confidence::uncertain) doubts |= thermal_doubt::uncertain_expansion;
    return {a.lowest * heated, a.mean * heated, a.highest * heated, doubts, cautions_at(celsius),
            a.how_sure,        found_in};
}

/// Of the figures that serve up to 100 °C; `mean_at` looks at all of them, and says what is wrong.
[[nodiscard]] constexpr bool are_possible(const expansion_means& e) noexcept {
    return is_possible_expansion(e.to_100_degC) && is_possible_expansion(e.lowest) &&
           is_possible_expansion(e.highest) && is_possible_expansion(e.cooled_to_minus_190_degC);
}

[[nodiscard]] constexpr double dl_over_l(const cryogenic_polynomial& p, double celsius) noexcept {
    const double kelvins = celsius - absolute_zero_celsius;
    double sum = 0;
    for (int i = 4; i >= 0; --i) sum = sum * kelvins + p.coefficient[i];
    return sum * 1e-5;
}

/// The polynomials hold from 23 K on.
inline constexpr double coldest_of_polynomials = -250;

[[nodiscard]] constexpr spread_mean mean_by(const cryogenic_polynomial& p, const material& m,
                                            double celsius) noexcept {
    const double shrunk = dl_over_l(p, celsius) - dl_over_l(p, reference_celsius);
    const bool is_cold = true;
    return with_spread(m, shrunk / (celsius - reference_celsius), table_reading::tabulated,
                       sources::nist_cryogenic.how_sure, is_cold);
}

/// A total from -200 °C on. A few kelvins below 20 °C it weighs next to nothing, however uncertain it is.
[[nodiscard]] constexpr spread_mean mean_by(const total_shrinkage& t, const material& m,
                                            double celsius) noexcept {
    const auto& first = m.expansion.to_100_degC;
    const confidence how_sure = celsius < 0 ? sources::ekin_low_temperature.how_sure : first.how_sure();
    return mean_below_20(m, {100, (*first).value(), first.how_sure()},
                         property<expansion_coefficient>::printed(mean_of(t), how_sure), celsius);
}

/// A material, and the mean that holds from 20 to 100 °C if it is known: looked up once, for any number of
/// temperatures.
struct near_room {
    const material& made_of;
    bool is_known;
    spread_mean mean;
};

[[nodiscard]] constexpr near_room near_room_of(const material& m) noexcept {
    const auto& first = m.expansion.to_100_degC;
    if (!first || !are_possible(m.expansion)) return {m, false, {}};
    return {m, true, with_spread(m, (*first).value(), table_reading::tabulated, first.how_sure())};
}

/// What a part does below 20 °C, by the curve or by the total of the material, or else by its own means; or
/// nothing that is known.
[[nodiscard]] constexpr strain cold_strain(const near_room& n, double celsius) noexcept {
    const material& m = n.made_of;
    const cryogenic_polynomial* const curve = polynomial_of(m);
    if (curve != nullptr && celsius >= coldest_of_polynomials)
        return strained(m, celsius, mean_by(*curve, m, celsius), figures_of::nist);
    const total_shrinkage* const total = total_of(m);
    if (total != nullptr && celsius >= coldest_with_cold_mean)
        return strained(m, celsius, mean_by(*total, m, celsius),
                        celsius < 0 ? figures_of::ekin : figures_of::material);
    const auto& cold = m.expansion.cooled_to_minus_190_degC;
    if (!n.is_known || celsius < coldest_with(cold)) return nothing_known;
    return strained(m, celsius, mean_below_20(m, {100, n.mean.mean, n.mean.how_sure}, cold, celsius));
}

/// Machines are nearly always between -190 and 100 °C: what `strain_at` says there, without the rest of the
/// table and without an error to carry, which takes three times as long; elsewhere it may say nothing.
[[nodiscard]] constexpr strain quick_strain_at(const near_room& n, double celsius) noexcept {
    if (celsius < reference_celsius) return cold_strain(n, celsius);
    if (celsius == reference_celsius) return strain{0, 0, 0, doubts_at(n.made_of, celsius)};
    if (!n.is_known || !(celsius <= 100)) return nothing_known;
    return strained(n.made_of, celsius, n.mean);
}

/// What a part does at a temperature. At 20 °C nothing has grown, whatever is known of the material.
/// Error: the coefficient is not known there, or is not possible.
[[nodiscard]] constexpr result<strain> strain_at(const material& m, const temperature& at) noexcept {
    const double celsius = at.value();
    if (const strain quick = quick_strain_at(near_room_of(m), celsius); quick.is_known) return quick;
    if (celsius < coldest_with_cold_mean && total_of(m) != nullptr)
        return no_mean_at(m, celsius, coldest_with_cold_mean, hot_means(m.expansion).hottest());
    const auto a = mean_at(m, celsius);
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
