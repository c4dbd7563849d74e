#ifndef FITWRIGHT_RUNNING_FILM_BALANCE_HPP
#define FITWRIGHT_RUNNING_FILM_BALANCE_HPP

#include <fitwright/running/film_question.hpp>
#include <fitwright/running/raimondi_boyd.hpp>

// How warm the film gets: bare numbers in SI units, clearances on diameter.

namespace fitwright::detail {

/// The film at one clearance and one temperature.
struct film_moment {
    double clearance = 0; ///< m, on diameter
    double viscosity = 0; ///< Pa s
    double celsius = 0;
    bool has_temperature = false;
};

[[nodiscard]] inline double sommerfeld_of(const film_question& q, double clearance,
                                          double viscosity) noexcept {
    const double stretch = q.diameter / clearance;
    return stretch * stretch * viscosity * q.omega / (2 * half_turn) / q.mean_pressure();
}

/// K, if all the heat of friction goes with the oil, and what leaves at the sides is half warmed.
[[nodiscard]] inline double rise_of(const film_question& q, const raimondi_boyd_reading& r,
                                    double heat_capacity) noexcept {
    return 4 * half_turn * q.mean_pressure() * r.friction / (heat_capacity * r.flow * (1 - r.side_share / 2));
}

/// The temperature at which the oil carries off the heat, for one clearance at 20 degC. The film is half
/// way between the oil that comes in and the oil that leaves. The first such temperature from below is the
/// one where a bearing settles; it is fenced in by doubling, then found by false position.
[[nodiscard]] inline result<film_moment> balanced(const film_question& q, const film_oil& oil,
                                                  const raimondi_boyd_column& table, double cold) noexcept {
    const auto clearance_at = [&](double celsius) { return cold + q.diameter * oil.growth * (celsius - 20); };
    const auto surplus = [&](double warmer) {
        const double celsius = oil.in + warmer;
        const double s = sommerfeld_of(q, clearance_at(celsius), oil.viscosity_at(celsius));
        return rise_of(q, table.at(s), oil.heat_capacity) / 2 - warmer;
    };
    const double most = oil.hottest() - oil.in;
    if (clearance_at(oil.in) <= 0) return closes_when_warm(oil.in);

    double low = 0;
    double low_surplus = surplus(0);
    double high = low_surplus < 2 ? low_surplus : 2;
    double high_surplus = 0;
    for (;; high *= 2) {
        if (high > most) high = most;
        if (clearance_at(oil.in + high) <= 0) return closes_when_warm(oil.in + high);
        high_surplus = surplus(high);
        if (high_surplus <= 0) break;
        if (high >= most) return heat_not_carried_off(oil.hottest());
        low = high;
        low_surplus = high_surplus;
    }
    double warmer = high;
    for (int i = 0; i < 60 && high - low > 1e-6;
         ++i) { // halving a stale end (Illinois) keeps it from creeping
        warmer = high - high_surplus * (high - low) / (high_surplus - low_surplus);
        const double here = surplus(warmer);
        if (here > -1e-6 && here < 1e-6) break;
        if (here > 0) {
            low = warmer;
            low_surplus = here;
            high_surplus /= 2;
        } else {
            high = warmer;
            high_surplus = here;
            low_surplus /= 2;
        }
    }
    const double celsius = oil.in + warmer;
    return film_moment{.clearance = clearance_at(celsius),
                       .viscosity = oil.viscosity_at(celsius),
                       .celsius = celsius,
                       .has_temperature = true};
}

} // namespace fitwright::detail

#endif
