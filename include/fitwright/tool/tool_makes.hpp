#ifndef FITWRIGHT_TOOL_TOOL_MAKES_HPP
#define FITWRIGHT_TOOL_TOOL_MAKES_HPP

#include <fitwright/tool/drawer.hpp>
#include <fitwright/tool/reamed_hole.hpp>
#include <fitwright/tool/stock.hpp>

// What each tool of a drawer makes of a hole, and what has to be left for it: plan_hole looks here.

namespace fitwright {

namespace sources {
inline constexpr source set_by_dial{
    "practice", "after a trial cut and a reading: within half a step of the dial to either side",
    confidence::practice};
inline constexpr source bit_stock{"practice", "under a half-round bit as under a hand reamer",
                                  confidence::practice};
} // namespace sources

namespace detail {

/// The hole that is wanted, the tools there are, and what it is made in.
struct hole_task {
    hole_limits wanted;
    rows<drawer_tool> drawer;
    work_material material;
};

[[nodiscard]] constexpr bool is_reamer(const drawer_tool& t) noexcept { return t.is_reamer(); }
[[nodiscard]] constexpr bool is_head(const drawer_tool& t) noexcept {
    return t.kind == tool_kind::boring_head;
}
[[nodiscard]] constexpr bool is_half_round(const drawer_tool& t) noexcept {
    return t.kind == tool_kind::half_round_bit;
}
[[nodiscard]] constexpr bool is_lap(const drawer_tool& t) noexcept { return t.kind == tool_kind::lap; }

/// How far an expected hole stays inside the limits on its worse side; below 0 if it doesn't.
[[nodiscard]] constexpr length margin_of(const hole_limits& h, const expected_hole& e) noexcept {
    const length below = e.least() - h.lower_limit();
    const length above = h.upper_limit() - e.most();
    return below < above ? below : above;
}

/// No plan relies on what is uncertain.
[[nodiscard]] constexpr bool is_sure(const expected_hole& e) noexcept {
    return e.origin().how_sure != confidence::uncertain;
}

[[nodiscard]] constexpr bool has_figures(length drill) noexcept {
    return has_test_figures(drill) || has_jig_tolerance(drill);
}
/// For a drill that has figures.
[[nodiscard]] constexpr expected_hole drilled(length drill, work_material material) noexcept {
    return has_test_figures(drill) ? by_test_figures(drill, material) : without_jig(drill, material);
}

[[nodiscard]] constexpr expected_hole set_by_dial(length target, length step) noexcept {
    const length half = length::from_nanometres(step.nanometres() / 2); // a step of the tolerance fits
    return {{.least = target - half, .mean = target, .most = target + half},
            sources::set_by_dial,
            "the uncertainty of your own reading comes on top"};
}

/// What a tool that can be the last leaves when it is used for the limits.
[[nodiscard]] constexpr expected_hole made_by(const drawer_tool& t, const hole_limits& h,
                                              work_material material) noexcept {
    if (t.is_reamer()) return reamed_hole(t.reamer(), material);
    if (is_half_round(t)) return bit_hole(tool_limits(t.least, t.most), t.over);
    return set_by_dial(h.middle(), t.step);
}

/// Whether the tool can leave a hole of about the size at all; rejects most tools at little cost.
[[nodiscard]] constexpr bool reaches(const drawer_tool& t, const hole_limits& h) noexcept {
    if (is_head(t) || is_lap(t)) return t.least <= h.lower_limit() && h.upper_limit() <= t.most;
    constexpr length slack = printed_mm(2);
    return t.least <= h.upper_limit() + slack && h.lower_limit() <= t.most + slack;
}

/// What to leave for the tool in a hole that it brings to the size.
[[nodiscard]] constexpr result<stock> stock_before(const drawer_tool& t, length size,
                                                   work_material material) noexcept {
    switch (t.kind) {
    case tool_kind::machine_reamer: return stock_to_leave(finishing::machine_reaming, size, material);
    case tool_kind::boring_head: return stock_to_leave(finishing::boring, size, material);
    case tool_kind::lap: return stock_to_leave(finishing::lapping, size, material);
    case tool_kind::half_round_bit: {
        const auto as_reamed = stock_to_leave(finishing::hand_reaming, size, material);
        if (!as_reamed) return as_reamed;
        return stock{as_reamed->least, as_reamed->most, &sources::bit_stock};
    }
    default: return stock_to_leave(finishing::hand_reaming, size, material);
    }
}

/// The lap with the largest margin; which one makes no difference to what comes before.
[[nodiscard]] constexpr const drawer_tool* best_lap(const hole_task& task) noexcept {
    const drawer_tool* best = nullptr;
    for (const drawer_tool& t : task.drawer)
        if (is_lap(t) && reaches(t, task.wanted) && t.step <= task.wanted.tolerance() &&
            (best == nullptr || t.step < best->step))
            best = &t;
    return best;
}

} // namespace detail

} // namespace fitwright

#endif
