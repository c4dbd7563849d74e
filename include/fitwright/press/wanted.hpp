#ifndef FITWRIGHT_PRESS_WANTED_HPP
#define FITWRIGHT_PRESS_WANTED_HPP

#include <fitwright/press/press.hpp>

// The other way: from what a joint is to carry, or may bear, to its interference. Of the seat only the
// diameter counts: `.seat = press_seat(14_mm)`.

namespace fitwright {

/// An interference that was asked for: as the parts are to be made, at 20 °C and before smoothing.
struct wanted_interference {
    diametral_interference interference;
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
                                                      bool is_sure) noexcept {
    wanted_interference w{.interference = diametral_interference(interference),
                          .doubts = doubts_of(j, {}),
                          .take_care = cautions_of(j),
                          .from = sources::lame_press_fit};
    if (!is_sure) w.doubts |= press_doubt::expansion_not_sure;
    return w;
}

/// The greatest pressure that a part bears with the wished safety, in pascal; `stress` is that of one pascal.
[[nodiscard]] constexpr result<double> greatest_pressure(const material& m, const property<pressure>& stated,
                                                         double stress, double safety) noexcept {
    const property<pressure> bears = may_bear(m, stated);
    if (!bears || !((*bears).value() > 0)) return not_known(m, "the strength");
    return (*bears).value() / (stress * safety);
}

} // namespace detail

/// The interference at 20 °C that makes a pressure between the parts, to the nearest nanometre.
/// Errors as of `press`; a pressure not above 0.
[[nodiscard]] constexpr result<wanted_interference>
interference_for_pressure(const joint& j, const pressure& wanted) noexcept {
    const auto pair = detail::elastic_pair_of(j);
    if (!pair) return pair.error();
    if (!(wanted.value() > 0))
        return error::composer(error_code::pressure_not_above_zero)
               << "the pressure wanted is not above 0; allowed: above 0";
    return detail::wanted_of(j, detail::nearest_length(wanted.value() * pair->interference_per_pascal), true);
}

/// The least interference that holds the joint's load with its safety, at 20 °C and in service, with the
/// least friction; smoothing is allowed for. Rounded up to a nanometre.
/// Errors as of `press`; no load.
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
    const double area = circumference(pair->diameter) * pair->length;
    const double least = load * j.safety.against_slipping / (area * j.between.least);
    const double metres = least * pair->interference_per_pascal + change->lost;
    return wanted_of(j, rounded_up(metres * 1e9) + smoothing_of(j.roughness), change->is_sure);
}

/// The greatest interference at which neither part yields, with the joint's safety, at 20 °C and in service.
/// Rounded down to a nanometre; below zero where the growth alone makes a part yield.
/// Errors as of `press`; a strength that is not known.
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
    return wanted_of(j, rounded_down((least * pair->interference_per_pascal - change->gained) * 1e9),
                     change->is_sure);
}

} // namespace fitwright

#endif
