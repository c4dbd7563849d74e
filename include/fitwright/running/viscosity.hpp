#ifndef FITWRIGHT_RUNNING_VISCOSITY_HPP
#define FITWRIGHT_RUNNING_VISCOSITY_HPP

#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/running/fluid_checks.hpp>

#include <cmath>

namespace fitwright {

/// What makes a viscosity less sure.
enum class viscosity_doubt : std::uint8_t {
    thinner_than_the_rule = 1, ///< below 2 mm2/s
    colder_than_the_rule = 2,  ///< below -40 degC
    hotter_than_the_rule = 4,  ///< above 150 degC
    points_close_together = 8, ///< less than 20 K apart
    multigrade = 16,
    boils_without_pressure = 32,
    density_taken_at_15_degC = 64,
};

[[nodiscard]] constexpr flags<viscosity_doubt> operator|(viscosity_doubt a, viscosity_doubt b) noexcept {
    return flags<viscosity_doubt>(a) | b;
}

/// What is doubtful, and why.
[[nodiscard]] constexpr text in_words(viscosity_doubt d) noexcept {
    switch (d) {
    case viscosity_doubt::thinner_than_the_rule:
        return "Below 2 mm2/s ASTM D341 needs further terms: extrapolated.";
    case viscosity_doubt::colder_than_the_rule:
        return "Below -40 degC, where oils cloud and set: extrapolated.";
    case viscosity_doubt::hotter_than_the_rule: return "Above 150 degC: extrapolated.";
    case viscosity_doubt::points_close_together:
        return "The two known points are less than 20 K apart: errors grow away from them.";
    case viscosity_doubt::multigrade:
        return "Multigrade oils lose 10 to 40 % of this in a bearing: go by the high-shear value at 150 degC.";
    case viscosity_doubt::boils_without_pressure: return "Water above 100 degC: only under pressure.";
    case viscosity_doubt::density_taken_at_15_degC:
        return "The density is that at 15 degC, as how the fluid expands is not known.";
    }
    return "";
}

/// How thick a fluid is at a temperature.
struct viscosity_result {
    figure<temperature> at;
    figure<kinematic_viscosity> kinematic; ///< at the temperature asked for
    /// Not known where the density isn't.
    property<dynamic_viscosity> dynamic;
    property<mass_density> density;
    /// What the grade allows either way at the temperature where it is measured.
    double spread_per_cent;
    property<temperature> spread_at; ///< where that is
    flags<viscosity_doubt> doubts;
    cautions take_care = caution::chemical;
    source from; ///< of the fluid's own numbers
    source by;   ///< of the rule that leads from them to this temperature
};

namespace sources {
inline constexpr source astm_d341{"ASTM D341", "viscosity-temperature line of two points, 0.7 mm2/s added",
                                  confidence::published};
} // namespace sources

namespace detail {

inline constexpr double kelvin_at_0_degC = 273.15;

/// The line of ASTM D341 through two points: log10(log10(v + 0.7)) = a - b log10(T), T in kelvin.
struct viscosity_line {
    double a, b;

    /// mm2/s
    [[nodiscard]] double at(double celsius) const noexcept {
        return std::pow(10, std::pow(10, a - b * std::log10(celsius + kelvin_at_0_degC))) - 0.7;
    }
};

struct viscosity_reading {
    double mm2_s, celsius;
};

[[nodiscard]] inline viscosity_line line_through(viscosity_reading one, viscosity_reading other) noexcept {
    const double w_one = std::log10(std::log10(one.mm2_s + 0.7));
    const double w_other = std::log10(std::log10(other.mm2_s + 0.7));
    const double t_one = std::log10(one.celsius + kelvin_at_0_degC);
    const double t_other = std::log10(other.celsius + kelvin_at_0_degC);
    const double b = (w_one - w_other) / (t_other - t_one);
    return {.a = w_one + b * t_one, .b = b};
}

/// mPa.s at atmospheric pressure; the temperature as a share of 300 K to four powers.
[[nodiscard]] inline double water_viscosity(double celsius) noexcept {
    const double t = (celsius + kelvin_at_0_degC) / 300;
    return (280.68 * std::pow(t, -1.9) + 511.45 * std::pow(t, -7.7) + 61.131 * std::pow(t, -19.6) +
            0.45903 * std::pow(t, -40)) /
           1000;
}

/// kg/m3, at atmospheric pressure up to 100 degC.
[[nodiscard]] constexpr double water_density(double celsius) noexcept {
    const double d = celsius - 3.9863;
    return 1000 * (1 - (celsius + 288.9414) / (508929.2 * (celsius + 68.12963)) * d * d);
}

[[nodiscard]] constexpr viscosity_reading reading_of(const viscosity_point& p) noexcept {
    return {.mm2_s = p.viscosity.value().value() * 1e6, .celsius = p.at.value().value()};
}
[[nodiscard]] constexpr bool is_known(const viscosity_point& p) noexcept { return p.viscosity && p.at; }

/// Thick enough for the double logarithm, and warmer than absolute zero.
[[nodiscard]] constexpr bool is_usable(viscosity_reading r) noexcept {
    return r.mm2_s > 0.31 && r.celsius > -kelvin_at_0_degC;
}

[[nodiscard, gnu::cold, gnu::noinline]] inline error no_viscosity(const fluid& f) noexcept {
    if (!is_known(f.known))
        return error::composer(error_code::viscosity_not_known)
               << "no viscosity of " << f.name
               << " is known: allowed are one or two, each at its temperature";
    if (!is_known(f.also_known))
        return error::composer(error_code::viscosity_not_known)
               << "the viscosity of " << f.name
               << " is known at one temperature only: allowed is that temperature, or give the viscosity at "
                  "a second one";
    return error::composer(error_code::viscosity_points_unusable)
           << "the two viscosities of " << f.name
           << " don't fit: allowed are two temperatures, the viscosity above 0.31 mm2/s and lower at the higher one";
}

[[nodiscard, gnu::cold, gnu::noinline]] inline error too_hot_or_cold(const fluid& f) noexcept {
    error::composer say(error_code::temperature_out_of_range);
    if (f.law == viscosity_law::water)
        return say << "water flows from 0 degC; allowed are 0 to 110 degC, above 100 under pressure";
    return say << "no viscosity can be told at this temperature: allowed are -60 to 250 degC";
}

[[nodiscard, gnu::cold, gnu::noinline]] inline error too_thick(const fluid& f) noexcept {
    return error::composer(error_code::temperature_out_of_range)
           << f.name << " doesn't flow at this temperature: allowed are those where it has up to 1e9 mm2/s";
}

/// The line through the fluid's two points. Error: points that make none.
[[nodiscard]] inline result<viscosity_line> line_of(const fluid& f) noexcept {
    if (!is_known(f.known) || !is_known(f.also_known)) return no_viscosity(f);
    const viscosity_reading one = reading_of(f.known);
    const viscosity_reading other = reading_of(f.also_known);
    const bool falls = (one.celsius < other.celsius && one.mm2_s > other.mm2_s) ||
                       (one.celsius > other.celsius && one.mm2_s < other.mm2_s);
    if (!is_usable(one) || !is_usable(other) || !falls) return no_viscosity(f);
    return line_through(one, other);
}

[[nodiscard]] inline double density_at(const fluid& f, double celsius) noexcept {
    if (f.law == viscosity_law::water) return water_density(celsius);
    const double expansion = f.volume_expansion ? f.volume_expansion.value().value() : 0;
    return f.density_at_15_degC.value().value() / (1 + expansion * (celsius - 15));
}

[[nodiscard]] inline flags<viscosity_doubt> doubts_of(const fluid& f, viscosity_reading r) noexcept {
    flags<viscosity_doubt> d;
    if (f.law == viscosity_law::water) {
        if (r.celsius > 100) d |= viscosity_doubt::boils_without_pressure;
        return d;
    }
    if (r.mm2_s < 2) d |= viscosity_doubt::thinner_than_the_rule;
    if (r.celsius < -40) d |= viscosity_doubt::colder_than_the_rule;
    if (r.celsius > 150) d |= viscosity_doubt::hotter_than_the_rule;
    if (is_known(f.also_known)) {
        const double apart = reading_of(f.known).celsius - reading_of(f.also_known).celsius;
        if (apart < 20 && apart > -20) d |= viscosity_doubt::points_close_together;
    }
    if (f.is_multigrade) d |= viscosity_doubt::multigrade;
    if (f.density_at_15_degC && !f.volume_expansion) d |= viscosity_doubt::density_taken_at_15_degC;
    return d;
}

} // namespace detail

/// How thick a fluid is at a temperature: for oils by ASTM D341 from two points, beyond its range with a
/// doubt; dynamic from kinematic with the density at that temperature.
/// Error: a fluid with a number that no fluid has; one known at one temperature only, at another; points that make no line; a temperature
/// outside -60 to 250 degC (water: 0 to 110 degC).
[[nodiscard]] inline result<viscosity_result> viscosity(const fluid& f, temperature at) noexcept {
    if (!detail::is_fluid(f)) return detail::not_a_fluid(f);
    const double celsius = at.value();
    const bool is_water = f.law == viscosity_law::water;
    const bool in_range = is_water ? celsius >= 0 && celsius <= 110 : celsius >= -60 && celsius <= 250;
    if (!in_range) return detail::too_hot_or_cold(f);

    double mm2_s = 0;
    if (is_water) {
        mm2_s = detail::water_viscosity(celsius) / detail::water_density(celsius) * 1e3;
    } else if (detail::is_known(f.known) && detail::reading_of(f.known).celsius == celsius) {
        mm2_s = detail::reading_of(f.known).mm2_s;
        if (!(mm2_s > 0)) return detail::no_viscosity(f);
    } else {
        const auto line = detail::line_of(f);
        if (!line) return line.error();
        mm2_s = line->at(celsius);
        if (!(mm2_s <= detail::thickest_mm2_s)) return detail::too_thick(f);
    }

    viscosity_result r{.at = at,
                       .kinematic = centistokes(mm2_s),
                       .dynamic = {},
                       .density = {},
                       .spread_per_cent = f.spread_per_cent,
                       .spread_at = f.spread_at,
                       .doubts = detail::doubts_of(f, {mm2_s, celsius}),
                       .from = f.from,
                       .by = is_water ? f.from : sources::astm_d341};
    if (is_water || f.density_at_15_degC) {
        const confidence how_sure = is_water ? confidence::memory : f.density_at_15_degC.how_sure();
        const double density = detail::density_at(f, celsius);
        r.density = property<mass_density>(kilograms_per_cubic_metre(density), how_sure);
        r.dynamic =
            property<dynamic_viscosity>(dynamic_viscosity::from_value(mm2_s / 1e6 * density), how_sure);
    }
    if (celsius >= 60) r.take_care |= caution::hot;
    return r;
}

} // namespace fitwright

#endif
