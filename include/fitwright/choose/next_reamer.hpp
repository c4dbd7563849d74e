#ifndef FITWRIGHT_CHOOSE_NEXT_REAMER_HPP
#define FITWRIGHT_CHOOSE_NEXT_REAMER_HPP

#include <fitwright/choose/mate.hpp>
#include <fitwright/tool/drawer.hpp>
#include <fitwright/tool/reamed_hole.hpp>
#include <fitwright/tool/stock.hpp>

// The reamers in the drawer: which does for a bore, and which comes next where a bore is too large.

namespace fitwright {

/// A reamer of the drawer and the hole it is expected to cut.
struct reamer_choice {
    drawer_tool tool = {}; ///< the reamer
    expected_hole hole = {};
    length margin = {}; ///< from the expected hole to the nearer limit of the bore; the more, the surer
};

namespace detail {

/// No reamer does: by how much the nearest misses, and what would do.
[[nodiscard]] constexpr error no_reamer_does(const hole_limits& bore, const drawer_tool* nearest,
                                             length misses_by) noexcept {
    error::composer say(error_code::tool_missing);
    say << "no reamer for a bore of " << written(bore.lower_limit()).view() << " to "
        << written(bore.upper_limit()).view() << " mm";
    if (nearest != nullptr)
        say << "; the " << nearest->name().view() << " misses by "
            << written(misses_by, {.unit = written_unit::um}).view() << " um";
    const tool_limits wanted = reamer_for(bore);
    if (wanted.exist())
        say << "; allowed: one made for it, of " << written(wanted.lower_limit()).view() << " to "
            << written(wanted.upper_limit()).view() << " mm";
    return say;
}

/// From an expected hole to the nearer limit; below 0 where the hole is not within them.
[[nodiscard]] constexpr length room_to_limits(const hole_limits& bore, const expected_hole& cut) noexcept {
    const length below = cut.least() - bore.lower_limit();
    const length above = bore.upper_limit() - cut.most();
    return below < above ? below : above;
}

} // namespace detail

/// The reamer of the drawer that surely cuts a bore, the one with the most room to both limits: also for
/// limits without a class, such as those of `bore_for`.
/// Error: none does; says by how much the nearest misses.
[[nodiscard]] constexpr result<reamer_choice>
reamer_that_does(const hole_limits& bore, rows<drawer_tool> drawer, work_material material) noexcept {
    const drawer_tool* nearest = nullptr;
    length best_margin;
    for (const drawer_tool& tool : drawer) {
        if (!tool.is_reamer()) continue;
        const length margin = detail::room_to_limits(bore, reamed_hole(tool.reamer(), material));
        if (nearest != nullptr && margin <= best_margin) continue;
        nearest = &tool;
        best_margin = margin;
    }
    if (nearest == nullptr || best_margin < length())
        return detail::no_reamer_does(bore, nearest, -best_margin);
    return reamer_choice{*nearest, reamed_hole(nearest->reamer(), material), best_margin};
}

/// The next reamer up for a bore that is already too large, and what then goes in it.
struct reamer_up {
    drawer_tool tool; ///< the reamer
    expected_hole hole;
    length least_stock; ///< what it takes off the bore at least, on the diameter
    length most_stock;  ///< that it takes off, on diameter
    bool bore_first;    ///< true if that is more than a reamer should take: open the bore up first
};

/// The smallest reamer of the drawer that still cuts all round in a bore that is too large.
/// Error: a bore outside the sizes for which there is a rule of stock; no reamer large enough.
[[nodiscard]] constexpr result<reamer_up> next_reamer_up(measured_hole too_large, rows<drawer_tool> drawer,
                                                         work_material material) noexcept {
    const drawer_tool* next = nullptr;
    stock rule;
    for (const drawer_tool& tool : drawer) {
        if (!tool.is_reamer() || (next != nullptr && tool.least >= next->least)) continue;
        const auto by =
            tool.kind == tool_kind::hand_reamer ? finishing::hand_reaming : finishing::machine_reaming;
        const auto of_it = stock_to_leave(by, tool.least, material);
        if (!of_it || tool.least - too_large.size() - too_large.uncertainty() < of_it->least) continue;
        next = &tool;
        rule = *of_it;
    }
    if (next == nullptr)
        return error::composer(error_code::tool_missing)
               << "no reamer in the drawer is larger than a bore of " << written(too_large.size()).view()
               << " mm by enough to cut; allowed: a larger reamer, boring, a sleeve, or a shaft to suit the bore";
    const length least = next->least - too_large.size() - too_large.uncertainty();
    const length most = next->most - too_large.size() + too_large.uncertainty();
    return reamer_up{*next, reamed_hole(next->reamer(), material), least, most, most > rule.most};
}

/// The shaft for a hole that is only expected: right wherever in its expected sizes the hole comes out.
/// Error: as of `shaft_for` a measured hole.
[[nodiscard]] constexpr result<shaft_limits> shaft_for(const expected_hole& hole,
                                                       clearance_window w) noexcept {
    const length half = (hole.most() - hole.least() + length::from_nanometres(1)) / 2;
    return shaft_for(measured_hole(hole.least() + half, half), w);
}

} // namespace fitwright

#endif
