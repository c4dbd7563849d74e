#ifndef FITWRIGHT_PRESS_PRESS_HPP
#define FITWRIGHT_PRESS_PRESS_HPP

#include <fitwright/press/elastic.hpp>
#include <fitwright/press/result.hpp>
#include <fitwright/press/turning.hpp>
#include <fitwright/press/warm.hpp>

namespace fitwright {

namespace sources {
/// The pressures, stresses and changes of diameter.
inline constexpr source lame_press_fit{"Lame, thick rings", "as in Shigley 9e eq. 7-39, 7-40",
                                       confidence::published};
/// The smoothing, the mismatch at temperature, and which end counts for what.
inline constexpr source din_7190_1_press_fit{"DIN 7190-1:2017", "elastic press fits", confidence::memory};
} // namespace sources

namespace detail {

[[nodiscard]] constexpr double not_below_zero(double number) noexcept { return number > 0 ? number : 0; }

[[nodiscard]] constexpr length nearest_length(double metres) noexcept {
    return length(quantity<metre>::from_value(metres));
}
[[nodiscard]] constexpr range<length> outwards(double least, double most) noexcept {
    return {rounded_down(least * 1e9), rounded_up(most * 1e9)};
}

/// What goes on at the seat in one state, on diameter and in metres.
struct seat_state {
    range<double> interference; ///< before smoothing, standing still
    double smoothing;
    double lost_by_turning; ///< below zero where the shaft grows more than the hub
};

[[nodiscard]] constexpr pressed_wall wall_of(const stress_per_pascal& s, double pascals,
                                             const property<pressure>& may_bear) noexcept {
    const auto times = [&](double per_pascal) { return figure<pressure>::from_value(per_pascal * pascals); };
    return {{times(s.hoop_at_joint), times(-1)},
            {times(s.hoop_at_free_side), times(s.radial_at_free_side)},
            times(s.greatest),
            may_bear};
}

/// The force along the seat that a load makes of its two parts.
[[nodiscard]] constexpr double force_of(const press_load& load, double diameter) noexcept {
    const double along = load.along.value();
    const double around = 2 * load.turning.value() / diameter;
    if (around == 0) return along;
    return square_root(along * along + around * around);
}

[[nodiscard]] constexpr holding holds(range<double> margin, double wished) noexcept {
    if (margin.least >= wished) return holding::yes;
    return margin.most < wished ? holding::no : holding::cannot_tell;
}

/// What goes on in one state; the bore without any free growth.
[[nodiscard]] constexpr pressed_state state_of(const joint& j, const elastic_pair& pair, double load,
                                               const seat_state& seat) noexcept {
    const auto pressure_at = [&](double interference) {
        return not_below_zero(interference) / pair.interference_per_pascal;
    };
    // It stands still at times, so that turning never adds to the least or takes off the most.
    const double least =
        pressure_at(seat.interference.least - seat.smoothing - not_below_zero(seat.lost_by_turning));
    const double most = pressure_at(seat.interference.most + not_below_zero(-seat.lost_by_turning));
    const double area = circumference(pair.diameter) * pair.length;
    const double least_grip = area * least * j.between.least;
    // But what turns grips with what turning leaves, in the tightest pair too.
    const double most_grip =
        area * pressure_at(seat.interference.most - seat.lost_by_turning) * j.between.most;
    const double arm = pair.diameter / 2;
    pressed_state s{
        .interference = {diametral_interference(nearest_length(seat.interference.least)),
                         diametral_interference(nearest_length(seat.interference.most))},
        .joint_pressure = {figure<pressure>::from_value(least), figure<pressure>::from_value(most)},
        .axial_grip = {figure<force>::from_value(least_grip), figure<force>::from_value(most_grip)},
        .turning_grip = {figure<torque>::from_value(least_grip * arm),
                         figure<torque>::from_value(most_grip * arm)},
        .bore_closes_by = outwards(least * pair.bore_per_pascal, most * pair.bore_per_pascal),
        .hub_grows_by = outwards(least * pair.outside_per_pascal, most * pair.outside_per_pascal),
        .bore = {},
        .hub = wall_of(pair.in_hub, most, may_bear(j.hub.made_of, j.hub.may_bear)),
        .shaft = wall_of(pair.in_shaft, most, may_bear(j.shaft.made_of, j.shaft.may_bear)),
    };
    if (j.shaft.bore > length())
        s.bore = {j.shaft.bore - s.bore_closes_by.most, j.shaft.bore - s.bore_closes_by.least};
    if (load > 0) {
        s.load_margin = {least_grip / load, most_grip / load};
        s.holds = holds(s.load_margin, j.safety.against_slipping);
    }
    return s;
}

/// Yield strength from which steel may break before it bends, at 56 HRC and more; common practice.
inline constexpr double hard_from_pascals = 1.45e9;
[[nodiscard]] constexpr bool may_shatter(const material& m) noexcept {
    return is_brittle(m) || (m.yield_strength && (*m.yield_strength).value() >= hard_from_pascals);
}
[[nodiscard]] constexpr bool does_creep(const material& m) noexcept {
    return m.family == material_family::plastic || m.family == material_family::zinc;
}

/// What is doubtful of a wall at its greatest stress; `past` is said of what yields.
[[nodiscard]] constexpr flags<press_doubt> doubts_of_wall(const property<double>& margin, double wished,
                                                          const material& m, press_doubt past,
                                                          press_doubt not_known) noexcept {
    if (!margin) return not_known;
    if (!(*margin >= 1)) return is_brittle(m) ? press_doubt::may_crack : past;
    if (!(*margin >= wished)) return press_doubt::below_wished_safety;
    return {};
}

[[nodiscard]] constexpr flags<press_doubt> doubts_of_walls(const joint& j, const pressed_wall& hub,
                                                           const pressed_wall& shaft) noexcept {
    const double wished = j.safety.against_yield;
    return doubts_of_wall(hub.margin(), wished, j.hub.made_of, press_doubt::hub_past_elastic_limit,
                          press_doubt::hub_strength_not_known) |
           doubts_of_wall(shaft.margin(), wished, j.shaft.made_of, press_doubt::shaft_past_elastic_limit,
                          press_doubt::shaft_strength_not_known);
}

[[nodiscard]] constexpr flags<press_doubt> doubts_of_state(const joint& j, const pressed_state& s) noexcept {
    flags<press_doubt> doubts = doubts_of_walls(j, s.hub, s.shaft);
    if (s.may_let_go()) doubts |= press_doubt::no_grip_left;
    return doubts;
}

inline constexpr double weaker_from_celsius = 100; ///< common practice

[[nodiscard]] constexpr flags<press_doubt> doubts_of_part(const material& m, const temperature& at) noexcept {
    flags<press_doubt> doubts;
    if (does_creep(m)) doubts |= press_doubt::creeps;
    if (m.highest_heating && at.value() > (*m.highest_heating).value())
        doubts |= press_doubt::hotter_than_allowed;
    if (at.value() > weaker_from_celsius) doubts |= press_doubt::strength_of_cold_metal;
    return doubts;
}

[[nodiscard]] constexpr flags<press_doubt> doubts_of(const joint& j, length smoothing) noexcept {
    flags<press_doubt> doubts = press_doubt::even_hub_only;
    doubts |= doubts_of_part(j.hub.made_of, j.hub.at) | doubts_of_part(j.shaft.made_of, j.shaft.at);
    const length least = j.seat.interference().least.value;
    if (least > length() && least <= smoothing) doubts |= press_doubt::smoothing_takes_all;
    if (!j.roughness.hub.is_stated() || !j.roughness.shaft.is_stated())
        doubts |= press_doubt::roughness_not_stated;
    if (j.between.from.how_sure != confidence::stated) doubts |= press_doubt::friction_not_sure;
    if (is_brittle(j.hub.made_of) && !j.hub.may_bear) doubts |= press_doubt::brittle_hub;
    if (j.hub.outside * 5 < j.seat.diameter() * 6) doubts |= press_doubt::thin_hub;
    if (j.speed.value() > 0) doubts |= press_doubt::stress_of_turning_not_counted;
    return doubts;
}

[[nodiscard]] constexpr cautions cautions_of(const joint& j) noexcept {
    cautions care = caution::press_force;
    care |= cautions_at(j.hub.at.value()) | cautions_at(j.shaft.at.value());
    if (j.speed.value() > 0) care |= caution::rotating;
    if (may_shatter(j.hub.made_of) || may_shatter(j.shaft.made_of)) care |= caution::brittle;
    return care;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_density(const joint& j) noexcept {
    return not_known(j.hub.made_of.density ? j.shaft.made_of : j.hub.made_of, needs_density);
}

/// What the press should be good for at a pressure, in pascal.
[[nodiscard]] constexpr figure<force> capacity_for(const joint& j, const elastic_pair& pair,
                                                   const figure<pressure>& greatest) noexcept {
    const double usual = frictions::to_choose_a_press.most;
    const double most = j.between.most < usual ? usual : j.between.most;
    return figure<force>::from_value(circumference(pair.diameter) * pair.length * greatest.value() * most);
}

/// The speed at which so much interference is gone, in radian per second.
[[nodiscard]] constexpr property<rotational_speed> gone_at(double interference,
                                                           const property<double>& loss) noexcept {
    if (!loss) return {};
    const double squared = not_below_zero(interference) / *loss;
    return property<rotational_speed>(
        rotational_speed::from_value(*loss > 0 ? square_root(squared) : __builtin_inf()), loss.how_sure());
}

} // namespace detail

/// What pressing two parts together does: pressure, stress, grip, the force of the press, how far the bush
/// closes and the hub grows; at 20 °C and in service.
///
/// Elastic, both parts as long as the joint. Grip is from the least interference, smoothed by 0.8 (Rz + Rz),
/// with the least friction; stress and press-in force from the greatest, not smoothed, with the most friction;
/// what the press should be good for from no less friction than `frictions::to_choose_a_press` has at most.
/// In service the mismatch of the growth counts as interference, with the spread of the coefficients. Where
/// the interference is gone the pressure is 0: that is an answer.
/// Source: `sources::lame_press_fit`, `sources::din_7190_1_press_fit`.
/// Error: a geometry, friction, load or safety that is not possible; E or Poisson's ratio not known; at
/// other temperatures the expansion; turning, the densities.
[[nodiscard]] constexpr result<press_result> press(const joint& j) noexcept {
    using namespace detail;
    const auto pair = elastic_pair_of(j);
    if (!pair) return pair.error();
    const auto grown = grown_pairs_of(j);
    if (!grown) return grown.error();
    const property<double> loss = loss_by_turning(j);
    const double turning = j.speed.value();
    if (turning > 0 && !loss) return no_density(j);

    const length smoothing = smoothing_of(j.roughness);
    const double smoothed = smoothing.in<metre>();
    const double load = force_of(j.load, pair->diameter);
    const range<double> cold{j.seat.interference().least.value.in<metre>(),
                             j.seat.interference().most.value.in<metre>()};
    const extremes mismatch = mismatch_of(*grown, pair->diameter);
    const range<double> warm{cold.least + mismatch.least, cold.most + mismatch.most};
    const double lost = turning > 0 ? *loss * turning * turning : 0;

    const bool is_service_as_at_20 = j.hub.at.value() == 20 && j.shaft.at.value() == 20 && turning == 0;
    const pressed_state at_20 = state_of(j, *pair, load, {cold, smoothed, 0});

    press_result r{
        .diameter = j.seat.diameter(),
        .smoothing = smoothing,
        .at_20 = at_20,
        .in_service = is_service_as_at_20 ? at_20 : state_of(j, *pair, load, {warm, smoothed, lost}),
        .press_in_force = at_20.axial_grip.most,
        .press_capacity = capacity_for(j, *pair, at_20.joint_pressure.most),
        .bore_moves_by = {},
        .loosens_at = gone_at(warm.least - smoothed, loss),
        .doubts = doubts_of(j, smoothing),
        .take_care = cautions_of(j),
        .from = sources::lame_press_fit,
        .friction_from = j.between.from,
    };
    r.doubts |= doubts_of_state(j, r.at_20) | doubts_of_state(j, r.in_service);
    if (!grown->is_sure) r.doubts |= press_doubt::expansion_not_sure;
    if (j.shaft.bore > length() && !is_service_as_at_20) {
        const warm_bore bore =
            warm_bore_of(*pair, *grown, j.shaft.bore.in<metre>(), {cold.least - smoothed, cold.most});
        r.in_service.bore = outwards(bore.size.least, bore.size.most);
        r.bore_moves_by = outwards(bore.move.least, bore.move.most);
    }
    return r;
}

} // namespace fitwright

#endif
