#ifndef FITWRIGHT_TOOL_OPENING_HPP
#define FITWRIGHT_TOOL_OPENING_HPP

#include <fitwright/tool/tool_makes.hpp>

// The hole that has to be there before a tool can work, and the drill of a drawer that makes it.

namespace fitwright::detail {

/// A hole to be made ready for the next tool: what it may be by the rules for stock, what to come near
/// to, and what the largest and the smallest hole to be expected may not reach.
struct opening {
    length lowest;
    length highest;
    length aim;
    length below;    // the largest hole is smaller than this
    length at_least; // the smallest hole is not smaller
};

/// Before a tool that cuts all round at one go: a reamer, a bit.
[[nodiscard]] constexpr opening before_cut(const drawer_tool& t, const expected_hole& e,
                                           const stock& s) noexcept {
    const length size = (t.least + t.most) / 2;
    return {.lowest = size - s.most,
            .highest = size - s.least,
            .aim = size - s.middle(),
            .below = e.least(),
            .at_least = length()};
}

/// Before a boring head: as little as is enough, but a hole that it enters.
[[nodiscard]] constexpr opening before_bore(const drawer_tool& head, length target, const stock& s) noexcept {
    return {.lowest = head.least,
            .highest = target - s.least,
            .aim = target - s.least,
            .below = target - head.step / 2,
            .at_least = head.least};
}

/// Calls `visit` with each drill that a tool of the drawer is or has, from one size to another.
template <class Visit>
constexpr void for_each_drill(const drawer_tool& t, length lowest, length highest, Visit visit) noexcept {
    if (t.kind == tool_kind::drill) {
        if (lowest <= t.least && t.least <= highest) visit(drill_size{t.least, t.series, t.label});
    } else if (t.kind == tool_kind::drill_steps) {
        if (highest > t.most) highest = t.most;
        const std::int64_t step = t.step.nanometres();
        const std::int64_t ahead = (lowest - t.least).nanometres();
        for (length d = t.least + t.step * (ahead > 0 ? (ahead + step - 1) / step : 0); d <= highest;
             d += t.step)
            visit(drill_size{d});
    } else if (t.kind == tool_kind::drill_series) {
        if (highest > t.most) highest = t.most;
        const auto all = drills(t.series);
        for (std::size_t i = how_many_below(all, lowest); i < all.size() && all[i].diameter <= highest; ++i)
            visit(all[i]);
    }
}

/// The drill of the drawer that comes nearest to the aim by the count of the rule for stock, of two as near
/// the smaller; of diameter 0 if none will do.
[[nodiscard]] constexpr drill_size drill_for(const opening& o, rows<drawer_tool> drawer,
                                             work_material material) noexcept {
    drill_size best;
    length best_miss;
    const length over = counted_hole({});
    for (const drawer_tool& t : drawer)
        for_each_drill(t, o.lowest - over, o.highest - over, [&](const drill_size& drill) {
            if (!has_figures(drill.diameter)) return;
            const expected_hole e = drilled(drill.diameter, material);
            if (e.most() >= o.below || e.least() < o.at_least) return;
            const length counted = counted_hole(drill.diameter);
            const length miss = counted < o.aim ? o.aim - counted : counted - o.aim;
            const bool is_first = best.diameter == length();
            const bool is_smaller = miss == best_miss && drill.diameter < best.diameter;
            if (!is_first && miss >= best_miss && !is_smaller) return;
            best = drill;
            best_miss = miss;
        });
    return best;
}

} // namespace fitwright::detail

#endif
