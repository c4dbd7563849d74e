#ifndef FITWRIGHT_RUNNING_SLIDING_DRAG_HPP
#define FITWRIGHT_RUNNING_SLIDING_DRAG_HPP

#include <fitwright/figure.hpp>
#include <fitwright/running/gap_checks.hpp>

// What the liquid in a gap holds back of a part that moves along it.

namespace fitwright {

namespace sources {
inline constexpr source sliding_film{"Newton's law of viscosity", "eta U / c over pi D L",
                                     confidence::published};
} // namespace sources

/// The drag of a part that slides centred in its gap, from the widest clearance to the tightest. Off the
/// centre it is more by 1 / sqrt(1 - e^2), and where it touches it rubs.
struct sliding_drag_result {
    range<figure<force>> drag; ///< friction on the part that slides
    source from = sources::sliding_film;
};

/// What the moving wall of a gap is held back with, pi D L eta U / c; the pressure's own push is not in it.
/// Error: a least clearance of zero; otherwise as of `leakage`.
[[nodiscard]] constexpr result<sliding_drag_result> sliding_drag(const gap& g) noexcept {
    if (!detail::is_gap(g)) return detail::not_a_gap(g);
    if (!detail::is_clearance(g) || g.clearance.on_diameter().least == length())
        return detail::not_a_clearance(g);
    constexpr double pi = 3.141592653589793;
    const double speed_of_wall = g.wall_speed.value() < 0 ? -g.wall_speed.value() : g.wall_speed.value();
    const double times_gap =
        pi * g.diameter.in<metre>() * g.land.in<metre>() * g.viscosity.value() * speed_of_wall;
    const auto at = [&](length clearance) {
        return figure<force>::from_value(times_gap / (clearance.in<metre>() / 2));
    };
    const clearance_window c = g.clearance.on_diameter();
    return sliding_drag_result{.drag = {at(c.most), at(c.least)}};
}

} // namespace fitwright

#endif
