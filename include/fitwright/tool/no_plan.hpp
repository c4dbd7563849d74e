#ifndef FITWRIGHT_TOOL_NO_PLAN_HPP
#define FITWRIGHT_TOOL_NO_PLAN_HPP

#include <fitwright/tool/opening.hpp>
#include <fitwright/tool/tool_makes.hpp>

// What to say where the drawer has no way to a hole: what is missing from it, and what would do.

namespace fitwright::detail {

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_tool(std::size_t place) noexcept {
    return error::composer(error_code::tool_not_known)
           << "tool " << static_cast<std::int64_t>(place + 1)
           << " of the drawer is not a tool: its size is not above 0, its range the wrong way round, its "
              "step 0, or its class has no value at that size";
}

/// Whether there is a hole large enough for the boring head that leaves it something to cut.
[[nodiscard]] constexpr bool can_enter(const drawer_tool& head, length target,
                                       work_material material) noexcept {
    const auto rule = stock_before(head, target, material);
    return !rule || head.least <= target - rule->least;
}

/// The tool that holds the limits, or else comes nearest to holding them. One that may hold them, but
/// uncertainly, stands between.
[[nodiscard]] constexpr const drawer_tool* nearest_tool(const hole_task& task) noexcept {
    const drawer_tool* best = nullptr;
    length best_margin;
    for (const drawer_tool& t : task.drawer) {
        if (!(is_reamer(t) || is_head(t) || is_half_round(t)) || !reaches(t, task.wanted)) continue;
        const expected_hole e = made_by(t, task.wanted, task.material);
        length margin = margin_of(task.wanted, e);
        if (margin >= length() && !is_sure(e)) margin = length::from_nanometres(-1);
        if (is_head(t) && !can_enter(t, e.mean(), task.material)) continue;
        if (best != nullptr && margin <= best_margin) continue;
        best = &t;
        best_margin = margin;
    }
    return best;
}

/// The last tool is there, but nothing makes the hole ready for it.
[[nodiscard]] constexpr error nothing_before(const drawer_tool& last, const expected_hole& e,
                                             const stock& rule, work_material material) noexcept {
    error::composer say(error_code::tool_missing);
    say << last.name().view() << " would do, but no drill in the drawer ";
    if (is_head(last))
        return say << "opens the hole for it: wanted is a hole of " << written(last.least).view() << " to "
                   << written(e.mean() - rule.least).view() << " mm";
    say << "leaves " << written(rule.least).view() << " to " << written(rule.most).view() << " mm for it; ";
    const opening o = before_cut(last, e, rule);
    const drawer_tool metric = twist_drills(drill_series::metric, printed_mm(25));
    const drill_size other = drill_for(o, {&metric, 1}, material);
    if (other.diameter > length()) say << "a " << other.name().view() << " drill would, or a bore of ";
    else say << "wanted is a bore of ";
    return say << written(o.aim).view() << " mm";
}

/// Down to the multiple of a step, for a message: what is smaller does as well.
[[nodiscard]] constexpr length rounded_down(length l, length step) noexcept {
    return step * (l.nanometres() / step.nanometres());
}

/// What to buy: a reamer made for the hole or a boring head, and a drill.
constexpr void say_what_would_do(error::composer& say, const hole_task& task) noexcept {
    const hole_limits& wanted = task.wanted;
    const bool is_plastic = task.material.family() == material_family::plastic;
    const auto reamer = reamer_of(wanted);
    const bool can_be_reamed = reamer && match_reamer(*reamer, wanted, task.material).suits() &&
                               is_sure(reamed_hole(*reamer, task.material));
    const auto bore_rule = stock_to_leave(finishing::boring, wanted.middle(), task.material);
    if (can_be_reamed)
        say << "a reamer made for it (" << written(reamer->limits().lower_limit()).view() << " to "
            << written(reamer->limits().upper_limit()).view() << " mm)";
    if (can_be_reamed && bore_rule) say << " or ";
    if (bore_rule) {
        const length room = rounded_down(wanted.middle() - bore_rule->least, printed_um(100));
        const length um = printed_um(1);
        const length step =
            wanted.tolerance() < um ? wanted.tolerance() : rounded_down(wanted.tolerance(), um);
        say << "a boring head (from " << written(room).view() << " mm, steps of " << written(step).view()
            << " mm or less)";
    }
    if (can_be_reamed || bore_rule) say << ", and a drill under it";
    else say << "a half-round bit with its overcut from trials, and a drill under it";
    if (is_plastic) say << "; plastic springs back from a reamer, uncertainly";
}

/// By how much the nearest tool misses; nothing where that is no help.
[[nodiscard]] constexpr fixed_text<160> nearest_in_words(const drawer_tool& nearest,
                                                         const hole_task& task) noexcept {
    const expected_hole e = made_by(nearest, task.wanted, task.material);
    const length above = e.most() - task.wanted.upper_limit();
    const length below = task.wanted.lower_limit() - e.least();
    const length worse = above >= below ? above : below;
    fixed_text<160> t;
    if (worse <= length() || worse > printed_um(100)) return t; // it holds, but uncertainly; too far off
    return t << ". Nearest: " << nearest.name().view() << ", " << written(worse).view()
             << (above >= below ? " mm too large" : " mm too small");
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_plan(const hole_task& task) noexcept {
    const hole_limits& wanted = task.wanted;
    const drawer_tool* const nearest = nearest_tool(task);
    error::composer say(error_code::tool_missing);
    if (nearest != nullptr) {
        const expected_hole e = made_by(*nearest, wanted, task.material);
        const bool holds = e.lies_within(wanted);
        if (holds && is_sure(e)) {
            const auto rule = stock_before(*nearest, e.mean(), task.material);
            if (!rule) return rule.error();
            return nothing_before(*nearest, e, *rule, task.material);
        }
        if (holds && is_half_round(*nearest))
            return say << "a " << nearest->name().view()
                       << " may do, but its overcut is uncertain: cut trial holes and give the drawer what "
                          "overcut_from_trials finds";
    }
    if (const drawer_tool* const lap = best_lap(task)) {
        const expected_hole e = made_by(*lap, wanted, task.material);
        const auto rule = stock_before(*lap, e.mean(), task.material);
        if (rule && e.most() - rule->most <= e.least() - rule->least)
            return say << lap->name().view() << " would do, but nothing in the drawer makes a hole of "
                       << written(e.most() - rule->most).view() << " to "
                       << written(e.least() - rule->least).view() << " mm for it";
    }
    say << "nothing in the drawer holds " << written(wanted).view() << " mm: wanted is ";
    say_what_would_do(say, task);
    if (nearest == nullptr) return say;
    const auto miss = nearest_in_words(*nearest, task);
    const error so_far = say; // a message is never cut: the nearest is told where there is room for it
    if (so_far.message().size() + miss.size() < error::capacity) say << miss.view();
    return say;
}

} // namespace fitwright::detail

#endif
