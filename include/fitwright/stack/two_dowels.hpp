#ifndef FITWRIGHT_STACK_TWO_DOWELS_HPP
#define FITWRIGHT_STACK_TWO_DOWELS_HPP

#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/stack/units.hpp>
#include <fitwright/written.hpp>

// Two dowels in one plate, two holes in the other. The first pair places the plate; what the distances
// between centres are off by is left to the second, which needs the room for it: a larger hole, a slot in
// line with the centres, or a dowel relieved on both sides.

namespace fitwright {

/// Two plates, one with both dowels and one with both holes.
struct two_dowels {
    length distance;          ///< between centres, nominal
    length dowels_plus_minus; ///< how far the dowels' distance may be off, either way
    length holes_plus_minus;  ///< how far the holes' distance may be off, either way
    fit first;                ///< hole and dowel of the pair that places the plate
    fit second;               ///< hole and dowel of the other pair, both round
};

/// What is left for the second hole.
struct second_hole {
    length off;        ///< how far the second hole may be off its dowel, either way, once the first pair has
                       ///< given what it can
    length left;       ///< of the second pair's least clearance, at the worst; below zero: it may not go on
    length round_hole; ///< the least hole that always goes on, if it stays round
    length slot;       ///< or the least length of a slot in line with the centres, as wide as the hole was
    length relieved_land;     ///< or the widest land of a dowel relieved in line with the centres; the
                              ///< dowel's own diameter where it needs no relief, 0 where the hole has no room
    figure<plane_angle> turn; ///< how far the plate may turn either way, at the greatest clearances
    figure<plane_angle> turn_round; ///< the same with the larger round hole
    source from;

    /// Whether every pair of parts within the limits goes together.
    [[nodiscard]] constexpr bool always_goes_on() const noexcept { return left >= length(); }
};

namespace sources {
inline constexpr source two_dowel_geometry{"geometry of two round pins in two holes, worst case", "",
                                           confidence::stated};
} // namespace sources

namespace detail {

[[nodiscard]] constexpr bool is_plus_minus(length l) noexcept {
    return l >= length() && l <= length::from_nanometres(10'000'000);
}

/// No length beyond any pin; asked before they are added.
template <side Side> [[nodiscard]] constexpr bool are_pin_lengths(const size_limits<Side>& l) noexcept {
    constexpr length longest_pin = length::from_nanometres(1'000'000'000);
    return -longest_pin <= l.nominal() && l.nominal() <= longest_pin && -longest_pin <= l.lower_deviation() &&
           l.lower_deviation() <= longest_pin && -longest_pin <= l.upper_deviation() &&
           l.upper_deviation() <= longest_pin;
}

[[nodiscard]] constexpr bool is_pin_fit(const fit& f) noexcept {
    return are_pin_lengths(f.hole()) && are_pin_lengths(f.shaft()) && f.shaft().lower_limit() > length() &&
           f.shaft().tolerance() >= length() && f.hole().tolerance() >= length() &&
           f.hole().upper_limit() <= length::from_nanometres(1'000'000'000);
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error dowels_do_not_go(const two_dowels& d) noexcept {
    error::composer say(error_code::dowels_do_not_go);
    if (d.distance <= length()) return say << "dowels without a distance: allowed are distances above 0";
    if (!is_plus_minus(d.dowels_plus_minus) || !is_plus_minus(d.holes_plus_minus))
        return say << "distances that are off by " << written(d.dowels_plus_minus).view() << " and "
                   << written(d.holes_plus_minus).view() << " mm: allowed is 0 to 10 mm, either way";
    if (!is_pin_fit(d.first) || !is_pin_fit(d.second))
        return say
               << "a dowel or hole that is none: allowed are sizes above 0, up to 1000 mm, lower limit first";
    const bool is_first = d.first.min_clearance() < length();
    return say << "the " << (is_first ? "first" : "second") << " pair has a least clearance of "
               << written(is_first ? d.first.min_clearance() : d.second.min_clearance()).view()
               << " mm: allowed is 0 or more; the dowels are pressed into the other plate";
}

/// The widest land, symmetric about the dowel's axis, whose corners clear the hole when the dowel is off by
/// so much: (land / 2 + off)^2 + (dowel^2 - land^2) / 4 = hole^2 / 4. Rounded down.
[[nodiscard]] constexpr length widest_land(length hole, length dowel, length off) noexcept {
    const std::int64_t clearance = (hole - dowel).nanometres();
    const std::int64_t twice_off = off.nanometres() * 2;
    if (clearance >= twice_off) return dowel;
    const double squares = static_cast<double>(clearance) * static_cast<double>((hole + dowel).nanometres());
    const double land = squares / (2 * static_cast<double>(twice_off)) - static_cast<double>(twice_off) / 2;
    return land > 0 ? length::from_nanometres(static_cast<std::int64_t>(land)) : length();
}

} // namespace detail

/// What is left for the second of two holes over two dowels, and what it takes so that the plate always
/// goes on: c1 + c2 >= 2 (t dowels + t holes), the clearances being the least on diameter.
/// Error: a distance not above zero; tolerances outside 0 to 10 mm; a pair without clearance.
[[nodiscard]] constexpr result<second_hole> second_hole_for(const two_dowels& d) noexcept {
    if (d.distance <= length() || !detail::is_plus_minus(d.dowels_plus_minus) ||
        !detail::is_plus_minus(d.holes_plus_minus) || !detail::is_pin_fit(d.first) ||
        !detail::is_pin_fit(d.second) || d.first.min_clearance() < length() ||
        d.second.min_clearance() < length())
        return detail::dowels_do_not_go(d);
    const length given = d.first.min_clearance();
    const length both_ways = (d.dowels_plus_minus + d.holes_plus_minus) * 2;
    const length taken = both_ways > given ? both_ways - given : length();
    const length dowel = d.second.shaft().upper_limit();
    const length to_clear = dowel + taken;
    const length hole = d.second.hole().lower_limit();
    const auto turn = [&](length clearance) {
        return figure<plane_angle>::from_value((d.first.max_clearance() + clearance).in<nanometre>() / 2 /
                                               d.distance.in<nanometre>());
    };
    const length round_hole = to_clear > hole ? to_clear : hole;
    return second_hole{
        .off = length::from_nanometres((taken.nanometres() + 1) / 2),
        .left = given + d.second.min_clearance() - both_ways,
        .round_hole = round_hole,
        .slot = round_hole,
        .relieved_land =
            detail::widest_land(hole, dowel, length::from_nanometres((taken.nanometres() + 1) / 2)),
        .turn = turn(d.second.max_clearance()),
        .turn_round = turn(round_hole + d.second.hole().tolerance() - d.second.shaft().lower_limit()),
        .from = sources::two_dowel_geometry};
}

} // namespace fitwright

#endif
