#ifndef FITWRIGHT_RUNNING_FILM_STATE_HPP
#define FITWRIGHT_RUNNING_FILM_STATE_HPP

#include <fitwright/running/film_balance.hpp>
#include <fitwright/running/film_result.hpp>
#include <fitwright/running/iso7902.hpp>
#include <fitwright/running/speed_clearance.hpp>

// What is then to say of the film: bare numbers in SI units, clearances on diameter.

namespace fitwright::detail {

/// m: the sum of both peak heights (ISO 7902-1, without tilt and waviness), or where they are not known
/// Trumpler's limit for ground shafts, 0.0002 in and 0.00004 of the diameter, but no less than the one peak
/// height that is known.
[[nodiscard]] inline double limit_film_of(const journal& j) noexcept {
    const double peaks = (j.roughness.shaft + j.roughness.bore).in<metre>();
    if (j.roughness.shaft > length() && j.roughness.bore > length()) return peaks;
    return std::fmax(0.0002 * 0.0254 + 0.00004 * j.diameter.in<metre>(), peaks);
}

/// m: the film as thick as both surfaces are rough by root mean square, which is a fifth of Rz (common
/// practice); of two alike surfaces that is 0.14 of the sum of their peak heights.
[[nodiscard]] inline double touching_film_of(const journal& j) noexcept {
    const double peaks = std::hypot(j.roughness.shaft.in<metre>(), j.roughness.bore.in<metre>()) / 5;
    if (j.roughness.shaft > length() && j.roughness.bore > length()) return peaks;
    return std::fmax(limit_film_of(j) * 0.14, peaks);
}

[[nodiscard]] inline length to_nanometre(double metres) noexcept {
    return quantity<metre>::from_value(metres);
}

/// All there is to say of a film at one clearance.
[[nodiscard]] inline film_state state_of(const journal& j, const film_question& q,
                                         const raimondi_boyd_column& table, const film_moment& m) noexcept {
    const double s = sommerfeld_of(q, m.clearance, m.viscosity);
    const raimondi_boyd_reading r = table.at(s);
    const double radial = m.clearance / 2;
    const double psi = m.clearance / q.diameter;
    const double turns = q.omega / (2 * half_turn);
    const double flow = r.flow * q.diameter / 2 * radial * turns * q.width;
    const double friction = r.friction * psi;
    const double drag = friction * q.load * q.diameter / 2;

    film_state f;
    f.clearance = diametral_clearance(to_nanometre(m.clearance));
    f.viscosity = figure<dynamic_viscosity>::from_value(m.viscosity);
    f.sommerfeld = sommerfeld_number(s);
    f.by_table = {.eccentricity = 1 - r.gap_left,
                  .least_film = to_nanometre(radial * r.gap_left),
                  .friction_coefficient = friction,
                  .side_flow = figure<volume_flow>::from_value(flow * r.side_share)};
    f.drag = figure<torque>::from_value(drag);
    f.power_lost = figure<power>::from_value(drag * q.omega);
    f.flow = figure<volume_flow>::from_value(flow);
    f.greatest_pressure = figure<pressure>::from_value(q.mean_pressure() / r.pressure_evenness);

    const double b = q.width / q.diameter;
    f.has_formula = b <= 1;
    if (f.has_formula) {
        const double so = sommerfeld_load_number(f.sommerfeld).value;
        const double e = iso7902::eccentricity(so, b);
        f.by_formula = {.eccentricity = e,
                        .least_film = to_nanometre(radial * (1 - e)),
                        .friction_coefficient = iso7902::friction(e, b, so) * psi,
                        .side_flow = figure<volume_flow>::from_value(
                            q.diameter * q.diameter * q.diameter * psi * q.omega * iso7902::side_flow(e, b))};
    } else {
        f.doubts |= film_doubt::longer_than_its_diameter;
    }

    const bool heat_is_known = j.lubricant.heat_capacity && j.lubricant.heat_capacity.value().value() > 0;
    if (heat_is_known) {
        const double rise = rise_of(q, r, j.lubricant.heat_capacity.value().value());
        f.rise = temperature_difference::from_value(rise);
        if (m.has_temperature) {
            f.film_temperature = celsius(m.celsius);
            f.oil_out = celsius(m.celsius + rise / 2);
        }
    }
    return f;
}

[[nodiscard]] inline bool differ_by_a_tenth(const film_state& f) noexcept {
    const double film = f.film_difference();
    const double friction = f.friction_difference();
    return film > 0.1 || film < -0.1 || friction > 0.1 || friction < -0.1;
}

/// The regime and the doubts of one state.
inline void judge_state(const journal& j, const film_question& q, film_state& f) noexcept {
    const double film = f.by_table.least_film.in<metre>();
    const double limit = limit_film_of(j);
    f.regime = film >= limit                 ? film_regime::full_film
               : film >= touching_film_of(j) ? film_regime::mixed
                                             : film_regime::boundary;
    if (film < limit) f.doubts |= film_doubt::below_the_limit_film;
    if (f.by_table.eccentricity < 0.2) f.doubts |= film_doubt::lightly_loaded;
    const bool is_beyond = f.by_table.eccentricity > 0.95;
    if (is_beyond) f.doubts |= film_doubt::beyond_the_table;
    else if (differ_by_a_tenth(f)) f.doubts |= film_doubt::methods_differ;
    if (f.oil_out && f.oil_out.value().value() > 121) f.doubts |= film_doubt::oil_out_too_hot;
    if (q.mean_pressure() > 2.07e6) f.doubts |= film_doubt::starts_under_load;

    const double warm = f.film_temperature ? f.film_temperature.value().value() : 20;
    const bool growth_is_known = j.growth.shaft && j.growth.bore;
    if (!growth_is_known && (warm > 50 || warm < -10)) f.doubts |= film_doubt::clearance_taken_cold;

    const bool is_water = j.lubricant.law == viscosity_law::water;
    if (!is_water && !j.lubricant.density_at_15_degC) {
        f.doubts |= film_doubt::turbulence_not_checked;
    } else {
        const double clearance = f.clearance.value.in<metre>();
        const double reynolds =
            density_at(j.lubricant, warm) * q.surface_speed() * clearance / (2 * f.viscosity.value());
        if (reynolds > 41.3 * std::sqrt(q.diameter / clearance)) f.doubts |= film_doubt::turbulent;
    }
    const bool peaks_are_known = j.roughness.shaft > length() && j.roughness.bore > length();
    if (!peaks_are_known) f.doubts |= film_doubt::limit_film_by_rule;
}

[[nodiscard]] inline flags<viscosity_doubt> viscosity_doubts_of(const journal& j,
                                                                const film_state& f) noexcept {
    if (!f.film_temperature) return {};
    const double at = f.film_temperature.value().value();
    return doubts_of(j.lubricant, {f.viscosity.value() / density_at(j.lubricant, at) * 1e6, at});
}

[[nodiscard]] inline film_result film_result_of(const journal& j, const film_question& q, film_state tightest,
                                                film_state loosest) noexcept {
    judge_state(j, q, tightest);
    judge_state(j, q, loosest);
    const auto viscosity_doubts = viscosity_doubts_of(j, tightest) | viscosity_doubts_of(j, loosest);
    if (!viscosity_doubts.empty()) {
        tightest.doubts |= film_doubt::viscosity_doubtful;
        loosest.doubts |= film_doubt::viscosity_doubtful;
    }
    cautions take_care = caution::rotating;
    const auto is_hot = [](const film_state& f) { return f.oil_out && f.oil_out.value().value() >= 60; };
    if (is_hot(tightest) || is_hot(loosest)) take_care |= caution::hot;
    return {.tightest = tightest,
            .loosest = loosest,
            .limit_film = to_nanometre(limit_film_of(j)),
            .touching_film = to_nanometre(touching_film_of(j)),
            .at_this_speed = vogelpohl(q.surface_speed()),
            .regime = tightest.regime < loosest.regime ? tightest.regime : loosest.regime,
            .doubts = tightest.doubts | loosest.doubts,
            .viscosity_doubts = viscosity_doubts,
            .take_care = take_care,
            .from = sources::oil_film};
}

} // namespace fitwright::detail

#endif
