#ifndef FITWRIGHT_PRESS_WANTED_HPP
#define FITWRIGHT_PRESS_WANTED_HPP

#include <fitwright/press/press.hpp>

// The other way: from what a joint is to carry, or may bear, to its interference. Of the seat only the
// diameter counts: `.seat = press_seat(14_mm)`.

namespace fitwright {

/// An interference that was asked for: as the parts are to be made, at 20 °C and before smoothing.
struct wanted_interference {
    diametral_interference interference; ///< on diameter, before smoothing
    flags<press_doubt> doubts;
    cautions take_care;
    source from;
};

namespace detail {

/// How the interference changes from 20 °C to service: at the worst for grip, and at the worst for stress.
struct change_in_service {
    double lost;   ///< metres, 0 or more
    double gained; ///< metres, 0 or more
    bool is_sure;
};

[[nodiscard]] constexpr result<change_in_service> change_in_service_of(const joint& j,
                                                                       double diameter) noexcept {
    const auto grown = grown_pairs_of(j);
    if (!grown) return grown.error();
    const property<double> loss = loss_by_turning(j);
    const double turning = j.speed.value();
    if (turning > 0 && !loss) return no_density(j);
    const double by_turning = turning > 0 ? *loss * turning * turning : 0;
    const extremes mismatch = mismatch_of(*grown, diameter);
    return change_in_service{not_below_zero(not_below_zero(by_turning) - mismatch.least),
                             not_below_zero(not_below_zero(-by_turning) + mismatch.most), grown->is_sure};
}

[[nodiscard]] constexpr wanted_interference wanted_of(const joint& j, length interference,
                                                      const change_in_service& change) noexcept {
    wanted_interference w{.interference = diametral_interference(interference),
                          .doubts = doubts_of(j, {}),
                          .take_care = cautions_of(j),
                          .from = sources::lame_press_fit};
    if (!change.is_sure) w.doubts |= press_doubt::expansion_not_sure;
    return w;
}

/// What is doubtful of the walls at an interference, in metres, cold and in service; a fluid in a cup may press
/// harder on the hub than that.
[[nodiscard]] constexpr flags<press_doubt> doubts_at(const joint& j, const elastic_pair& pair,
                                                     const change_in_service& change, double interference,
                                                     double more_on_hub = 0) noexcept {
    const double most = interference + change.gained;
    const auto pressed = [&](const stress_per_pascal& stress, double metres, const auto& part) {
        return wall_of(stress, not_below_zero(metres) / pair.interference_per_pascal,
                       may_bear(part.made_of, part.may_bear));
    };
    const pressed_wall hub = pressed(pair.in_hub, most + more_on_hub, j.hub);
    const pressed_wall shaft = pressed(pair.in_shaft, most, j.shaft);
    flags<press_doubt> doubts = doubts_of_walls(j, hub, shaft);
    if (doubts.contains_any(press_doubt::hub_past_elastic_limit | press_doubt::shaft_past_elastic_limit |
                            press_doubt::may_crack | press_doubt::below_wished_safety))
        doubts |= press_doubt::more_than_it_bears;
    return doubts;
}

/// An interference, in metres, that a joint can have; the elastic figures end long before.
[[nodiscard]] constexpr bool is_interference(double metres, double diameter) noexcept {
    return metres <= diameter && metres >= -diameter;
}
[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_interference(const joint& j) noexcept {
    return error::composer(error_code::joint_not_possible)
           << "what is asked comes to an interference larger than the joint, "
           << written(j.seat.diameter()).view()
           << " mm; allowed: a smaller load, pressure, strength or safety, or more friction";
}

/// The least interference that holds the load, in metres and before smoothing.
[[nodiscard]] constexpr double metres_to_hold(const joint& j, const elastic_pair& pair,
                                              const change_in_service& change, double load) noexcept {
    const double area = circumference(pair.diameter) * pair.length;
    const double least = load * j.safety.against_slipping / (area * j.between.least);
    return least * pair.interference_per_pascal + change.lost + smoothing_of(j.roughness).in<metre>();
}

/// The greatest pressure that a part bears with the wished safety, in pascal; `stress` is that of one pascal.
[[nodiscard]] constexpr result<double> greatest_pressure(const material& m, const property<pressure>& stated,
                                                         double stress, double safety) noexcept {
    const property<pressure> bears = may_bear(m, stated);
    if (!bears) return not_known(m, needs_strength);
    return (*bears).value() / (stress * safety);
}

} // namespace detail

/// The interference at 20 °C that makes a pressure between the parts, to the nearest nanometre. What the parts
/// don't bear of it, cold, is in the doubts.
/// Errors as of `press`; a pressure not above 0, or one that takes an interference larger than the joint.
[[nodiscard]] constexpr result<wanted_interference>
interference_for_pressure(const joint& j, const pressure& wanted) noexcept {
    const auto pair = detail::elastic_pair_of(j);
    if (!pair) return pair.error();
    if (!(wanted.value() > 0))
        return error::composer(error_code::pressure_not_above_zero)
               << "the pressure wanted is not above 0; allowed: above 0";
    const double metres = wanted.value() * pair->interference_per_pascal;
    if (!detail::is_interference(metres, pair->diameter)) return detail::no_interference(j);
    constexpr detail::change_in_service none{.lost = 0, .gained = 0, .is_sure = true};
    wanted_interference w = detail::wanted_of(j, detail::nearest_length(metres), none);
    w.doubts |= detail::doubts_at(j, *pair, none, metres);
    return w;
}

/// The least interference that holds the joint's load with its safety, at 20 °C and in service, with the
/// least friction; smoothing is allowed for. Rounded up to a nanometre. What the parts don't bear of it, cold or
/// in service, is in the doubts: it is then more than `greatest_interference` allows.
/// Errors as of `press`; no load, or one that takes an interference larger than the joint.
[[nodiscard]] constexpr result<wanted_interference> interference_to_hold(const joint& j) noexcept {
    using namespace detail;
    const auto pair = elastic_pair_of(j);
    if (!pair) return pair.error();
    const double load = force_of(j.load, pair->diameter);
    if (!(load > 0))
        return error::composer(error_code::load_not_possible)
               << "no load is stated for the joint to hold; allowed: a force or a torque above 0";
    const auto change = change_in_service_of(j, pair->diameter);
    if (!change) return change.error();
    const double metres = metres_to_hold(j, *pair, *change, load);
    if (!is_interference(metres, pair->diameter)) return no_interference(j);
    wanted_interference w = wanted_of(j, rounded_up(metres * 1e9), *change);
    w.doubts |= doubts_at(j, *pair, *change, metres);
    return w;
}

/// The greatest interference at which neither part yields, with the joint's safety, at 20 °C and in service.
/// Rounded down to a nanometre; below zero where the growth alone makes a part yield.
/// Errors as of `press`; a strength that is not known, or one that bears an interference larger than the joint.
[[nodiscard]] constexpr result<wanted_interference> greatest_interference(const joint& j) noexcept {
    using namespace detail;
    const auto pair = elastic_pair_of(j);
    if (!pair) return pair.error();
    const auto change = change_in_service_of(j, pair->diameter);
    if (!change) return change.error();
    const double safety = j.safety.against_yield;
    const auto hub = greatest_pressure(j.hub.made_of, j.hub.may_bear, pair->in_hub.greatest, safety);
    if (!hub) return hub.error();
    const auto shaft = greatest_pressure(j.shaft.made_of, j.shaft.may_bear, pair->in_shaft.greatest, safety);
    if (!shaft) return shaft.error();
    const double least = *hub < *shaft ? *hub : *shaft;
    const double metres = least * pair->interference_per_pascal - change->gained;
    if (!is_interference(metres, pair->diameter)) return no_interference(j);
    return wanted_of(j, rounded_down(metres * 1e9), *change);
}

} // namespace fitwright

#endif
