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
    double taken_off_least;     ///< by smoothing and by turning
    double added_to_most;       ///< by turning, where the shaft grows more than the hub
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
    const double least =
        not_below_zero(seat.interference.least - seat.taken_off_least) / pair.interference_per_pascal;
    const double most =
        not_below_zero(seat.interference.most + seat.added_to_most) / pair.interference_per_pascal;
    const double area = circumference(pair.diameter) * pair.length;
    const double least_grip = area * least * j.between.least;
    const double most_grip = area * most * j.between.most;
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
        .load_margin = {},
    };
    if (j.shaft.bore > length())
        s.bore = {j.shaft.bore - s.bore_closes_by.most, j.shaft.bore - s.bore_closes_by.least};
    if (load > 0) {
        s.load_margin = {least_grip / load, most_grip / load};
        s.holds = holds(s.load_margin, j.safety.against_slipping);
    }
    return s;
}

/// Shafts and hubs of cast iron and ceramics break; so hard a steel may.
[[nodiscard]] constexpr bool is_brittle(const material& m) noexcept {
    return m.family == material_family::cast_iron || m.family == material_family::ceramic;
}
inline constexpr double hard_from_pascals = 1.2e9; ///< yield strength; common practice
[[nodiscard]] constexpr bool may_shatter(const material& m) noexcept {
    return is_brittle(m) || (m.yield_strength && (*m.yield_strength).value() >= hard_from_pascals);
}
[[nodiscard]] constexpr bool does_creep(const material& m) noexcept {
    return m.family == material_family::plastic || m.family == material_family::zinc;
}

[[nodiscard]] constexpr flags<press_doubt> doubts_of_walls(const joint& j, const pressed_state& s) noexcept {
    flags<press_doubt> doubts;
    const auto look_at = [&](const pressed_wall& wall, press_doubt past, press_doubt not_known) {
        const property<double> margin = wall.margin();
        if (!margin) doubts |= not_known;
        else if (*margin < 1) doubts |= past;
        else if (*margin < j.safety.against_yield) doubts |= press_doubt::below_wished_safety;
    };
    look_at(s.hub, press_doubt::hub_past_elastic_limit, press_doubt::hub_strength_not_known);
    look_at(s.shaft, press_doubt::shaft_past_elastic_limit, press_doubt::shaft_strength_not_known);
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
    if (j.roughness.hub == length() || j.roughness.shaft == length())
        doubts |= press_doubt::roughness_not_stated;
    if (j.between.from.how_sure != confidence::stated) doubts |= press_doubt::friction_not_sure;
    if (is_brittle(j.hub.made_of)) doubts |= press_doubt::brittle_hub;
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
    return not_known(j.hub.made_of.density ? j.shaft.made_of : j.hub.made_of,
                     "the density, which turning needs,");
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
/// with the least friction; stress and press-in force from the greatest, not smoothed, with the most friction.
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
        .in_service =
            is_service_as_at_20
                ? at_20
                : state_of(j, *pair, load, {warm, smoothed + not_below_zero(lost), not_below_zero(-lost)}),
        .press_in_force = at_20.axial_grip.most,
        .bore_moves_by = {},
        .loosens_at = gone_at(warm.least - smoothed, loss),
        .doubts = doubts_of(j, smoothing),
        .take_care = cautions_of(j),
        .from = sources::lame_press_fit,
        .friction_from = j.between.from,
    };
    r.doubts |= doubts_of_walls(j, r.at_20) | doubts_of_walls(j, r.in_service);
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
