#ifndef FITWRIGHT_CHOOSE_MATE_HPP
#define FITWRIGHT_CHOOSE_MATE_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/iso286.hpp>
#include <fitwright/window_crossed.hpp>
#include <fitwright/written.hpp>

// The part in hand leads: which limits its mate needs, and how near a standard class comes to them.

namespace fitwright {

namespace sources {
/// Interval arithmetic on the measured size: the mate is right wherever in its uncertainty the part lies.
inline constexpr source worked_from_measured{"worked out from the measured mate and the window", "",
                                             confidence::stated};
} // namespace sources

namespace detail {

[[nodiscard]] constexpr error window_too_narrow(clearance_window w, length uncertainty) noexcept {
    return error::composer(error_code::window_too_narrow)
           << "a window of " << written(w.most - w.least, {.unit = written_unit::um}).view()
           << " um leaves the mate nothing, since the part is only known to +/-"
           << written(uncertainty, {.unit = written_unit::um}).view()
           << " um; allowed: a window of more than "
           << written(uncertainty * 2, {.unit = written_unit::um}).view() << " um, or a better measurement";
}

} // namespace detail

/// The bore that goes with a measured shaft: every size within it has a clearance in the window, wherever
/// in its uncertainty the shaft lies. The nominal size is the bore's lower limit.
/// Error: a window the wrong way round, or no wider than the uncertainty either way; no bore above 0.
[[nodiscard]] constexpr result<hole_limits> bore_for(measured_shaft shaft, clearance_window w) noexcept {
    if (w.least > w.most) return detail::window_crossed(w);
    w = {detail::kept_near(w.least), detail::kept_near(w.most)};
    const length lower = shaft.size() + shaft.uncertainty() + w.least;
    const length upper = shaft.size() - shaft.uncertainty() + w.most;
    if (lower >= upper) return detail::window_too_narrow(w, shaft.uncertainty());
    if (lower <= length()) return detail::size_outside_tables(lower);
    return hole_limits(lower, {.upper = upper - lower, .lower = length()}, sources::worked_from_measured);
}

/// The shaft that goes with a measured hole, likewise. The nominal size is the shaft's upper limit.
/// Error: as of `bore_for`.
[[nodiscard]] constexpr result<shaft_limits> shaft_for(measured_hole hole, clearance_window w) noexcept {
    if (w.least > w.most) return detail::window_crossed(w);
    w = {detail::kept_near(w.least), detail::kept_near(w.most)};
    const length upper = hole.size() - hole.uncertainty() - w.least;
    const length lower = hole.size() + hole.uncertainty() - w.most;
    if (lower >= upper) return detail::window_too_narrow(w, hole.uncertainty());
    if (lower <= length()) return detail::size_outside_tables(lower);
    return shaft_limits(upper, {.upper = length(), .lower = lower - upper}, sources::worked_from_measured);
}

/// The clearance that a measured part has with limits: from its least to its most.
[[nodiscard]] constexpr clearance_window clearance_of(const hole_limits& hole,
                                                      measured_shaft shaft) noexcept {
    const fit f(hole, shaft.limits());
    return {f.min_clearance(), f.max_clearance()};
}
/// The same for a measured hole and the limits of a shaft.
[[nodiscard]] constexpr clearance_window clearance_of(measured_hole hole,
                                                      const shaft_limits& shaft) noexcept {
    const fit f(hole.limits(), shaft);
    return {f.min_clearance(), f.max_clearance()};
}

/// A standard class held against limits that are wanted: how far it sticks out, on either side.
template <side Side> struct class_match {
    fitwright::tolerance_class<Side> tolerance_class; ///< the class that comes nearest
    size_limits<Side> limits;                         ///< its limits at the nominal size
    length below; ///< how far its lower limit lies below the wanted one; 0 if it does not
    length above; ///< how far its upper limit lies above the wanted one; 0 if it does not

    /// The greater of the two: 0 if every part of the class is one of the wanted.
    [[nodiscard]] constexpr length miss() const noexcept { return below > above ? below : above; }
};

namespace detail {

[[nodiscard]] constexpr bool is_preferred(hole_class c) noexcept {
    for (const hole_class p : preferred_hole_classes())
        if (p == c) return true;
    return false;
}
[[nodiscard]] constexpr bool is_preferred(shaft_class c) noexcept {
    for (const shaft_class p : preferred_shaft_classes())
        if (p == c) return true;
    return false;
}

template <side Side>
[[nodiscard]] constexpr class_match<Side> held_against(const size_limits<Side>& wanted,
                                                       tolerance_class<Side> c,
                                                       const size_limits<Side>& its) noexcept {
    const length below = wanted.lower_limit() - its.lower_limit();
    const length above = its.upper_limit() - wanted.upper_limit();
    return {c, its, below > length() ? below : length(), above > length() ? above : length()};
}

/// The better match: the smaller miss, then a preferred class, then the wider tolerance (cheaper to hold).
template <side Side>
[[nodiscard]] constexpr bool is_better(const class_match<Side>& a, const class_match<Side>& b) noexcept {
    if (a.miss() != b.miss()) return a.miss() < b.miss();
    const bool a_preferred = is_preferred(a.tolerance_class);
    if (a_preferred != is_preferred(b.tolerance_class)) return a_preferred;
    return a.limits.tolerance() > b.limits.tolerance();
}

} // namespace detail

/// Of all ISO 286 classes at a nominal size, the one that comes nearest to the limits wanted: it lies
/// within them, or misses them by least. Of several that lie within, a preferred one, then the widest.
/// Error: a nominal size outside the tables.
template <side Side>
[[nodiscard]] constexpr result<class_match<Side>> nearest_class(const size_limits<Side>& wanted,
                                                                length nominal) noexcept {
    if (!detail::in_tables(nominal)) return detail::size_outside_tables(nominal);
    constexpr tolerance_class<Side> first{position::h, grade::it7}; // has a value at every size
    class_match<Side> best = detail::held_against(wanted, first, *limits(nominal, first));
    for (int p = 0; p < position_count; ++p)
        for (int step = 0; step < grade::count; ++step) {
            const tolerance_class<Side> c{static_cast<position>(p), grade::from_step(step)};
            if (!detail::has_value_at(nominal, c)) continue;
            const auto match = detail::held_against(wanted, c, *limits(nominal, c));
            if (detail::is_better(match, best)) best = match;
        }
    return best;
}

} // namespace fitwright

#endif
