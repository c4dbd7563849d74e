#ifndef FITWRIGHT_PRESS_WALL_HPP
#define FITWRIGHT_PRESS_WALL_HPP

#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/square_root.hpp>
#include <fitwright/written.hpp>

// Lamé's thick ring: what pressure does to a wall. Elastic, plane stress (the ends are free).

namespace fitwright {

/// A ring or tube by its diameters; without an inside it is solid.
struct ring_wall {
    length inside;  ///< at the bore
    length outside; ///< at the outer surface
};

/// The pressures on a wall.
struct wall_pressures {
    pressure inside = {};  ///< at the bore
    pressure outside = {}; ///< at the outer surface
};

/// The stress at one place of a wall; tension is above zero, pressure below.
struct wall_stress {
    figure<pressure> hoop;   ///< around
    figure<pressure> radial; ///< from inside outwards

    /// The equivalent stress to hold against the yield strength (von Mises, no stress along the axis).
    [[nodiscard]] constexpr figure<pressure> von_mises() const noexcept {
        const double a = hoop.value();
        const double b = radial.value();
        return figure<pressure>::from_value(detail::square_root(a * a - a * b + b * b));
    }
};

namespace detail {

/// Lamé, with squares of diameters: those of the inside, the outside and the place. Pascal.
[[nodiscard]] constexpr wall_stress stress_at(double inside, double outside, double place,
                                              double inner_pressure, double outer_pressure) noexcept {
    const double mean = (inner_pressure * inside - outer_pressure * outside) / (outside - inside);
    const double swing =
        inside > 0 ? (inner_pressure - outer_pressure) * inside * outside / (outside - inside) / place : 0;
    return {figure<pressure>::from_value(mean + swing), figure<pressure>::from_value(mean - swing)};
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_wall(ring_wall w) noexcept {
    return error::composer(error_code::joint_not_possible)
           << "a wall from " << written(w.inside).view() << " to " << written(w.outside).view()
           << " mm diameter; allowed: an inside of 0 (solid) or more and an outside larger than that";
}

[[nodiscard]] constexpr double squared(length l) noexcept {
    const double metres = l.in<metre>();
    return metres * metres;
}

} // namespace detail

/// The stress in a wall at a diameter between its inside and its outside.
/// `stress_in_wall({.inside = 20_mm, .outside = 100_mm}, {.inside = megapascals(300)}, 50_mm)`
/// Source: Lamé, as in Shigley 9e eq. 3-49 to 3-51. A solid has no pressure inside.
/// Error: an outside not larger than the inside, a place that isn't in the wall.
[[nodiscard]] constexpr result<wall_stress> stress_in_wall(ring_wall w, const wall_pressures& p,
                                                           length at_diameter) noexcept {
    if (w.inside < length() || w.outside <= w.inside) return detail::no_wall(w);
    if (at_diameter < w.inside || at_diameter > w.outside)
        return error::composer(error_code::joint_not_possible)
               << "a stress at " << written(at_diameter).view() << " mm diameter; allowed: within the wall, "
               << written(w.inside).view() << " to " << written(w.outside).view() << " mm";
    return detail::stress_at(detail::squared(w.inside), detail::squared(w.outside),
                             detail::squared(at_diameter), p.inside.value(), p.outside.value());
}

} // namespace fitwright

#endif
