#ifndef FITWRIGHT_CHOOSE_SLEEVE_HPP
#define FITWRIGHT_CHOOSE_SLEEVE_HPP

#include <fitwright/choose/mate.hpp>
#include <fitwright/grid.hpp>

// A bore that is already too large: what of it can be saved.

namespace fitwright {

/// What a sleeve is to be like.
struct sleeve_wishes {
    length wall;                                      ///< the least wall
    length step = length::from_nanometres(1'000'000); ///< the seat's nominal size is a multiple of it
    hole_class seat{position::h, grade::it7};         ///< common practice, no source
    shaft_class outside{position::s, grade::it6};     ///< common practice, no source: a press fit
};

/// A sleeve for a bore that is too large: bore the seat, press the sleeve, then bring it to size.
struct sleeve {
    hole_limits seat;     ///< what the bore is opened to
    shaft_limits outside; ///< the sleeve's outside
    hole_limits inside;   ///< what was wanted of the bore; bring it to size after pressing, which closes it
    length wall;          ///< the wall that is left, at the nominal sizes
    cautions take_care = caution::press_force;

    /// Of the sleeve in its seat.
    [[nodiscard]] constexpr fit press() const noexcept { return {seat, outside}; }
};

namespace sources {
inline constexpr source sleeve_practice{"sleeve in a bore that is too large", "", confidence::practice};
} // namespace sources

/// The sleeve for a bore that came out larger than `wanted`: the smallest seat that leaves the wall and
/// clears the old bore.
/// Error: a wall or step not above 0 or beyond 10 m; a seat outside ISO 286, or without value there.
[[nodiscard]] constexpr result<sleeve> sleeve_for(measured_hole too_large, const hole_limits& wanted,
                                                  const sleeve_wishes& wishes) noexcept {
    if (!detail::is_step(wishes.step)) return detail::no_step(wishes.step);
    constexpr length thickest = length::from_nanometres(10'000'000'000);
    if (wishes.wall <= length() || wishes.wall > thickest)
        return error::composer(error_code::wall_too_thin)
               << "a wall of " << written(wishes.wall).view() << " mm; allowed: a wall above 0, up to 10 m";
    const length old_bore = too_large.size() + too_large.uncertainty();
    const length inside = wanted.upper_limit();
    const length for_wall = inside + wishes.wall * 2;
    const length at_least = for_wall > old_bore ? for_wall : old_bore;
    const length nominal = detail::multiple_at_or_above(at_least, wishes.step);
    const auto seat = limits(nominal, wishes.seat);
    if (!seat) return seat.error();
    const auto outside = limits(nominal, wishes.outside);
    if (!outside) return outside.error();
    return sleeve{*seat, *outside, wanted, (nominal - inside) / 2};
}

} // namespace fitwright

#endif
