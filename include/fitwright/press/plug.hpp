#ifndef FITWRIGHT_PRESS_PLUG_HPP
#define FITWRIGHT_PRESS_PLUG_HPP

#include <fitwright/press/wanted.hpp>

// A plug pressed into a drilling, with a fluid under pressure behind it.

namespace fitwright {

/// What of the plug faces the fluid.
enum class plug_face : std::uint8_t {
    closed, ///< solid, or a cup with its back to the fluid
    open,   ///< a cup with its mouth to the fluid, which gets in and presses its wall against the seat
};

/// What the fluid does to the interference, beside pushing, where it stays out of the seat.
enum class pressure_effect : std::uint8_t { hurts, helps };

/// In words.
[[nodiscard]] constexpr text in_words(pressure_effect e) noexcept {
    return e == pressure_effect::helps ? "the fluid presses the plug's wall harder against its seat"
                                       : "the fluid widens the drilling and loosens the plug";
}

/// What a plug has to stand.
struct plug_duty {
    pressure of_fluid;                  ///< the pressure behind the plug
    double safety;                      ///< how many times over it is to hold
    plug_face face = plug_face::closed; ///< what of the plug the fluid sees
};

/// The plug in one state, the fluid under pressure.
struct plug_state {
    range<figure<pressure>> joint_pressure; ///< between plug and seat, with what the fluid changes of it
    range<double> grip_margin;              ///< grip over push
    range<double> seal_margin;              ///< joint pressure over the fluid's: below 1 it gets in between
    holding holds;                          ///< the push, as many times as asked
    holding seals;                          ///< the fluid, as many times as asked; a smooth seat all round
};

/// Whether a pressed plug holds a pressure, and what it would take.
struct plug_result {
    figure<force> push;     ///< of the fluid on the whole seat
    pressure_effect effect; ///< of the fluid on the interference
    /// On diameter; below zero it hurts. At most by that effect, at least if the fluid gets into the seat as
    /// well and widens the drilling there.
    range<length> interference_changes_by;
    plug_state at_20;      ///< without the states' temperatures
    plug_state in_service; ///< as warm as the joint says
    /// The least interference, at 20 °C and before smoothing, that holds and seals, cold and in service.
    /// What the parts don't bear of it is in the doubts.
    diametral_interference needed;
    press_result pressed; ///< the joint without the fluid

    flags<press_doubt> doubts;
    cautions take_care;
    source from;

    /// Whether it holds and seals, at 20 °C and in service.
    [[nodiscard]] constexpr holding holds() const noexcept {
        const auto worse = [](holding a, holding b) {
            if (a == holding::no || b == holding::no) return holding::no;
            return a == holding::yes ? b : a;
        };
        return worse(worse(at_20.holds, at_20.seals), worse(in_service.holds, in_service.seals));
    }
};

namespace detail {

/// On diameter, in metres. At most: a cup that is open to the fluid widens with it. At least: the drilling
/// widens too, as if the fluid stood in the seat. That the push shortens and thickens a solid plug is not
/// counted.
[[nodiscard]] constexpr range<double> interference_by_fluid(const joint& j, const elastic_pair& pair,
                                                            const plug_duty& duty) noexcept {
    const double fluid = duty.of_fluid.value();
    const double drilling = fluid * pair.hub_bore_per_pascal;
    if (duty.face == plug_face::closed) return {-drilling, 0};
    const double inside = squared(j.shaft.bore);
    const double outside = pair.diameter * pair.diameter;
    const double modulus = (*j.shaft.made_of.youngs_modulus).value();
    const double cup = 2 * fluid * pair.diameter * inside / (modulus * (outside - inside));
    return {cup - drilling, cup};
}

/// What the wall of an open cup says: fluid inside, the seat outside. Von Mises is greatest at the bore, and
/// there at the least pressure of the seat or at the most.
[[nodiscard]] constexpr flags<press_doubt> doubts_of_cup(const joint& j, double fluid,
                                                         range<figure<pressure>> seat) noexcept {
    const double inside = squared(j.shaft.bore);
    const double outside = squared(j.seat.diameter());
    double greatest = 0;
    for (const double pascals : {seat.least.value(), seat.most.value()}) {
        const double stress = stress_at(inside, outside, inside, fluid, pascals).von_mises().value();
        if (!(stress <= greatest)) greatest = stress;
    }
    const pressed_wall wall{
        {}, {}, figure<pressure>::from_value(greatest), may_bear(j.shaft.made_of, j.shaft.may_bear)};
    return doubts_of_wall(wall.margin(), j.safety.against_yield, j.shaft.made_of,
                          press_doubt::cup_wall_yields, press_doubt::shaft_strength_not_known);
}

/// What the fluid adds to the doubts in one state.
[[nodiscard]] constexpr flags<press_doubt> doubts_with_fluid(const joint& j, const plug_duty& duty,
                                                             const pressed_state& s) noexcept {
    flags<press_doubt> doubts =
        doubts_of_wall(s.hub.margin(), j.safety.against_yield, j.hub.made_of,
                       press_doubt::hub_past_elastic_limit, press_doubt::hub_strength_not_known);
    if (s.may_let_go()) doubts |= press_doubt::no_grip_left;
    if (duty.face == plug_face::open) doubts |= doubts_of_cup(j, duty.of_fluid.value(), s.joint_pressure);
    return doubts;
}

[[nodiscard]] constexpr plug_state plug_state_of(const pressed_state& s, const plug_duty& duty) noexcept {
    const double fluid = duty.of_fluid.value();
    const range<double> seal{s.joint_pressure.least.value() / fluid, s.joint_pressure.most.value() / fluid};
    return {s.joint_pressure, s.load_margin, seal, s.holds, holds(seal, duty.safety)};
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_duty(const joint& j,
                                                                const plug_duty& duty) noexcept {
    if (!(duty.of_fluid.value() > 0) || !is_amount(duty.of_fluid.value()))
        return error::composer(error_code::pressure_not_above_zero)
               << "the fluid's pressure is not above 0; allowed: above 0, over that outside";
    if (!is_factor(duty.safety)) return no_factor();
    return error::composer(error_code::joint_not_possible)
           << "a plug with a bore of " << written(j.shaft.bore).view()
           << " mm can't be open to the fluid; allowed: a bore above 0, or plug_face::closed";
}

} // namespace detail

/// Whether a plug holds a fluid under pressure, cold and in service, and the interference it would take.
///
/// The fluid pushes on the whole seat; the plug holds it by the least grip, and seals while it presses on its
/// seat harder than the fluid. What is least is reckoned as if the fluid got into the seat too. The joint's own
/// load is not used. Local codes may ask for a plug that can't fly out at all (a thread, a ring, a stake): a press
/// fit is no substitute.
/// Error: as of `press`; a pressure not above 0, a safety below 1, a solid plug that is open, a pressure that
/// takes an interference larger than the joint.
[[nodiscard]] constexpr result<plug_result> plug_under_pressure(const joint& plug,
                                                                const plug_duty& duty) noexcept {
    using namespace detail;
    const bool is_possible = duty.of_fluid.value() > 0 && is_amount(duty.of_fluid.value()) &&
                             is_factor(duty.safety) &&
                             (duty.face == plug_face::closed || plug.shaft.bore > length());
    if (!is_possible) [[unlikely]]
        return no_duty(plug, duty);
    const auto pair = elastic_pair_of(plug);
    if (!pair) return pair.error();
    const double push = duty.of_fluid.value() * circumference(pair->diameter) * pair->diameter / 4;

    joint with_fluid = plug;
    with_fluid.load = {.along = force::from_value(push)};
    with_fluid.safety.against_slipping = duty.safety;
    const auto pressed = press(with_fluid);
    if (!pressed) return pressed.error();
    const auto change = change_in_service_of(with_fluid, pair->diameter);
    if (!change) return change.error();
    const range<double> by_fluid = interference_by_fluid(plug, *pair, duty);
    const double to_grip = metres_to_hold(with_fluid, *pair, *change, push);
    const double to_seal = duty.of_fluid.value() * duty.safety * pair->interference_per_pascal +
                           change->lost + pressed->smoothing.in<metre>();
    const double left = to_seal > to_grip ? to_seal : to_grip; // with the fluid in the seat
    const double needed = left - by_fluid.least;
    if (!is_interference(needed, pair->diameter) || !is_interference(by_fluid.most, pair->diameter))
        [[unlikely]]
        return no_interference(plug);
    const range<length> changes_by = outwards(by_fluid.least, by_fluid.most);
    const auto i = plug.seat.interference();
    with_fluid.seat = {plug.seat.diameter(),
                       range<diametral_interference>{diametral_interference(i.least.value + changes_by.least),
                                                     diametral_interference(i.most.value + changes_by.most)}};
    const auto loaded = press(with_fluid);
    if (!loaded) return loaded.error();

    const bool is_open = duty.face == plug_face::open;
    flags<press_doubt> doubts = pressed->doubts | doubts_with_fluid(plug, duty, loaded->at_20) |
                                doubts_with_fluid(plug, duty, loaded->in_service);
    if (doubts_at(plug, *pair, *change, needed, by_fluid.most).contains(press_doubt::more_than_it_bears))
        doubts |= press_doubt::more_than_it_bears;
    if (plug.shaft.bore > length()) doubts |= press_doubt::cup_end_not_checked;
    return plug_result{
        .push = figure<force>::from_value(push),
        .effect = is_open ? pressure_effect::helps : pressure_effect::hurts,
        .interference_changes_by = changes_by,
        .at_20 = plug_state_of(loaded->at_20, duty),
        .in_service = plug_state_of(loaded->in_service, duty),
        .needed = diametral_interference(rounded_up(left * 1e9) - changes_by.least),
        .pressed = *pressed,
        .doubts = doubts,
        .take_care = pressed->take_care | caution::under_pressure,
        .from = sources::lame_press_fit,
    };
}

} // namespace fitwright

#endif
