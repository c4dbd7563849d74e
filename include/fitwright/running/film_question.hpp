#ifndef FITWRIGHT_RUNNING_FILM_QUESTION_HPP
#define FITWRIGHT_RUNNING_FILM_QUESTION_HPP

#include <fitwright/running/journal.hpp>
#include <fitwright/running/viscosity.hpp>
#include <fitwright/written.hpp>

// What is asked of a film, looked through: bare numbers in SI units, clearances on diameter.

namespace fitwright::detail {

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_given(text what) noexcept {
    return error::composer(error_code::bearing_value_missing)
           << "the " << what
           << " is not given: an oil film can't be told without it; allowed are values above 0";
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_above_zero(text what) noexcept {
    return error::composer(error_code::bearing_value_not_possible)
           << "the " << what
           << " is not a number above 0: allowed are numbers that are; a shaft at rest, or one without "
              "load, makes no film";
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error bearing_too_large() noexcept {
    return error::composer(error_code::bearing_value_not_possible)
           << "the bearing is more than 100 m across or long: allowed are diameters and lengths up to that";
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error peaks_not_possible(text whose,
                                                                           length peaks) noexcept {
    return error::composer(error_code::bearing_value_not_possible)
           << "Rz of the " << whose << " is " << written(peaks).view()
           << " mm: allowed are 0, not known, to 1 mm";
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error growth_not_possible() noexcept {
    return error::composer(error_code::bearing_value_not_possible)
           << "the growth of the shaft or bore is no part's: allowed are -0.001 to 0.001 for each kelvin; "
              "steel has 0.0000115";
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error viscosity_not_possible() noexcept {
    return error::composer(error_code::bearing_value_not_possible)
           << "the viscosity is not a number above 0, up to 1e6 Pa s: allowed are those; water has 0.001";
}
[[nodiscard]] constexpr bool is_viscosity(dynamic_viscosity v) noexcept {
    return v.value() > 0 && v.value() <= 1e6;
}
[[nodiscard]] constexpr bool is_peak_height(length peaks) noexcept {
    return peaks >= length() && peaks <= length::from_nanometres(1'000'000);
}
[[nodiscard]] constexpr bool is_growth(const property<expansion_coefficient>& growth) noexcept {
    return !growth || (growth.value().value() >= -1e-3 && growth.value().value() <= 1e-3);
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error clearance_not_possible(bearing_clearance c) noexcept {
    error::composer say(error_code::no_running_clearance);
    say << "the clearance is " << written(c.least().value).view() << " to " << written(c.most().value).view()
        << " mm on diameter: allowed is above 0, the least first, up to a twentieth of the diameter";
    return say;
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error ratio_not_possible(length width,
                                                                           length diameter) noexcept {
    return error::composer(error_code::length_ratio_out_of_range)
           << "a bearing " << written(width).view() << " mm long on " << written(diameter).view()
           << " mm: allowed is a length of 1/4 to 4 times the diameter";
}
[[nodiscard, gnu::cold, gnu::noinline]] inline error heat_not_carried_off(double celsius) noexcept {
    return error::composer(error_code::no_heat_balance)
           << "the oil doesn't carry off the heat up to " << static_cast<std::int64_t>(celsius)
           << " degC: allowed are a thinner oil, more clearance, less speed or load, or cooling";
}
[[nodiscard, gnu::cold, gnu::noinline]] inline error closes_when_warm(double celsius) noexcept {
    return error::composer(error_code::no_running_clearance)
           << "the clearance closes at about " << static_cast<std::int64_t>(celsius)
           << " degC, before the oil carries off the heat: allowed is a clearance that is left when warm";
}

/// A journal with what every film needs.
struct film_question {
    double diameter, width, tightest, loosest; ///< m
    double load, omega;                        ///< N, rad/s

    [[nodiscard]] double surface_speed() const noexcept { return omega * diameter / 2; }
    [[nodiscard]] double mean_pressure() const noexcept { return load / (diameter * width); }

    /// Of a bearing as long as the methods hold for.
    [[nodiscard]] static result<film_question> of(const journal& j) noexcept {
        const auto asked = of_any_length(j);
        if (asked && (j.width * 4 < j.diameter || j.width > j.diameter * 4))
            return ratio_not_possible(j.width, j.diameter);
        return asked;
    }

    [[nodiscard]] static result<film_question> of_any_length(const journal& j) noexcept {
        if (!(j.diameter > length())) return not_above_zero("diameter");
        if (!(j.width > length())) return not_above_zero("length of the bearing");
        constexpr length end_of_range = length::from_nanometres(100'000'000'000); // 100 m
        if (j.diameter > end_of_range || j.width > end_of_range) return bearing_too_large();
        if (!is_peak_height(j.roughness.shaft)) return peaks_not_possible("shaft", j.roughness.shaft);
        if (!is_peak_height(j.roughness.bore)) return peaks_not_possible("bore", j.roughness.bore);
        if (!is_growth(j.growth.shaft) || !is_growth(j.growth.bore)) return growth_not_possible();
        const length least = j.clearance.least().value;
        const length most = j.clearance.most().value;
        if (least <= length() || most < least || most > j.diameter || most * 20 > j.diameter)
            return clearance_not_possible(j.clearance);
        if (!is_fit_for(j.clearance.nominal(), j.diameter))
            return fit_for_another_size(j.clearance.nominal(), j.diameter);
        if (!j.load) return not_given("load");
        if (!j.speed) return not_given("speed");
        const double load = j.load.value().value();
        const double omega = j.speed.value().value();
        if (!(load > 0 && load < 1e12)) return not_above_zero("load");
        if (!(omega > 0 && omega < 1e6)) return not_above_zero("speed");
        return film_question{.diameter = j.diameter.in<metre>(),
                             .width = j.width.in<metre>(),
                             .tightest = least.in<metre>(),
                             .loosest = most.in<metre>(),
                             .load = load,
                             .omega = omega};
    }
};

/// What the heat balance needs besides.
struct film_oil {
    const fluid* liquid;
    viscosity_line line;
    double heat_capacity; ///< J/(m3 K)
    double in;            ///< degC
    double growth;        ///< of the clearance, as a share of the diameter for each kelvin

    [[nodiscard]] static result<film_oil> of(const journal& j) noexcept {
        if (!j.oil_in) return not_given("temperature of the oil as it comes in");
        const fluid& f = j.lubricant;
        const double in = j.oil_in.value().value();
        const auto there = viscosity(f, j.oil_in.value());
        if (!there) return there.error();
        if (!there->dynamic) return not_given("density of the lubricant");
        if (!f.heat_capacity) return not_given("heat capacity of the lubricant");
        film_oil o{.liquid = &f,
                   .line = {},
                   .heat_capacity = f.heat_capacity.value().value(),
                   .in = in,
                   .growth = j.growth.shaft && j.growth.bore
                                 ? j.growth.bore.value().value() - j.growth.shaft.value().value()
                                 : 0};
        if (!(o.heat_capacity > 0)) return not_above_zero("heat capacity of the lubricant");
        if (f.law == viscosity_law::water) return o;
        const auto line = line_of(f);
        if (!line) return line.error();
        o.line = *line;
        return o;
    }

    [[nodiscard]] double hottest() const noexcept { return liquid->law == viscosity_law::water ? 110 : 250; }
    /// Pa s
    [[nodiscard]] double viscosity_at(double celsius) const noexcept {
        if (liquid->law == viscosity_law::water) return water_viscosity(celsius) / 1e3;
        return line.at(celsius) / 1e6 * density_at(*liquid, celsius);
    }
};

} // namespace fitwright::detail

#endif
