#ifndef FITWRIGHT_TOOL_HOLE_PLANNER_HPP
#define FITWRIGHT_TOOL_HOLE_PLANNER_HPP

#include <fitwright/tool/hole_plan.hpp>
#include <fitwright/tool/no_plan.hpp>
#include <fitwright/tool/opening.hpp>
#include <fitwright/tool/tool_makes.hpp>

// How plan_hole finds its way. The rules it follows are told in plan_hole.hpp.

namespace fitwright::detail {

class hole_planner {
public:
    constexpr explicit hole_planner(const hole_task& task) noexcept
        : task_(task), wanted_(task.wanted), drawer_(task.drawer), material_(task.material) {}

    [[nodiscard]] constexpr result<hole_plan> plan() const noexcept;

private:
    /// One way to the hole, kept until a better one turns up.
    struct way {
        const drawer_tool* last = nullptr;
        drill_size drill;
        const drawer_tool* bore = nullptr;
        length bored_to;
        length margin;

        [[nodiscard]] constexpr bool found() const noexcept { return last != nullptr; }
    };

    // ---- what comes before the last tool

    /// A drill, or a drill and a bore, before the last tool; false if there is nothing for it.
    [[nodiscard]] constexpr bool make_ready(way& w, const expected_hole& e, bool with_bore) const noexcept {
        const auto rule = stock_before(*w.last, e.mean(), material_);
        if (!rule) return false;
        if (is_head(*w.last)) {
            w.drill = drill_for(before_bore(*w.last, e.mean(), *rule), drawer_, material_);
            return w.drill.diameter > length();
        }
        const opening o = before_cut(*w.last, e, *rule);
        if (!with_bore) {
            w.drill = drill_for(o, drawer_, material_);
            return w.drill.diameter > length();
        }
        for (const drawer_tool& head : drawer_) {
            if (!is_head(head) || o.aim < head.least || o.aim > head.most) continue;
            const expected_hole bored = set_by_dial(o.aim, head.step);
            if (bored.least() < o.lowest || bored.most() > o.highest || bored.most() >= o.below) continue;
            const auto bore_rule = stock_before(head, o.aim, material_);
            if (!bore_rule) continue;
            w.drill = drill_for(before_bore(head, o.aim, *bore_rule), drawer_, material_);
            if (w.drill.diameter == length()) continue;
            w.bore = &head;
            w.bored_to = o.aim;
            return true;
        }
        return false;
    }

    // ---- the ways, from the shortest and surest on

    [[nodiscard]] constexpr way drilled_only(const hole_limits& h) const noexcept {
        way best; // no drill leaves a hole more than 0.3 mm larger than itself
        for (const drawer_tool& t : drawer_)
            for_each_drill(
                t, h.lower_limit() - printed_um(300), h.upper_limit(), [&](const drill_size& drill) {
                    if (!has_figures(drill.diameter)) return;
                    const expected_hole e = drilled(drill.diameter, material_);
                    const length margin = margin_of(h, e);
                    if (margin < length() || !is_sure(e) || (best.found() && margin <= best.margin)) return;
                    best.last = &t;
                    best.drill = drill;
                    best.margin = margin;
                });
        return best;
    }

    template <class IsKind>
    [[nodiscard]] constexpr way finished_by(IsKind is_kind, const hole_limits& h,
                                            bool with_bore) const noexcept {
        way best;
        for (const drawer_tool& t : drawer_) {
            if (!is_kind(t) || !reaches(t, h)) continue;
            const expected_hole e = made_by(t, h, material_);
            const length margin = margin_of(h, e);
            if (margin < length() || !is_sure(e) || (best.found() && margin <= best.margin)) continue;
            way w;
            w.last = &t;
            w.margin = margin;
            if (make_ready(w, e, with_bore)) best = w;
        }
        return best;
    }

    [[nodiscard]] constexpr way without_lap(const hole_limits& h) const noexcept {
        way w = drilled_only(h);
        if (!w.found()) w = finished_by(is_reamer, h, false);
        if (!w.found()) w = finished_by(is_head, h, false);
        if (!w.found()) w = finished_by(is_half_round, h, false);
        if (!w.found()) w = finished_by(is_reamer, h, true);
        if (!w.found()) w = finished_by(is_half_round, h, true);
        return w;
    }

    // ---- the plan, step by step

    [[nodiscard]] constexpr cautions warnings_of(const drawer_tool& t) const noexcept {
        cautions all;
        if (t.kind != tool_kind::hand_reamer) all = all | caution::rotating;
        if (is_lap(t)) all = all | caution::chemical;
        if (material_.family() == material_family::cast_iron) all = all | caution::brittle;
        if (material_.family() == material_family::magnesium) all = all | caution::hot;
        return all;
    }

    [[nodiscard]] constexpr hole_step step_of(hole_operation operation, const drawer_tool& t,
                                              const expected_hole& e) const noexcept {
        hole_step s;
        s.operation = operation;
        s.tool = t;
        s.least = e.least();
        s.mean = e.mean();
        s.most = e.most();
        s.warnings = warnings_of(t);
        s.from = &e.origin();
        s.note = e.note();
        s.doubts = e.doubts();
        return s;
    }

    constexpr void add_steps(hole_plan& made, const way& w, const hole_limits& h) const noexcept {
        hole_step centre;
        centre.tool = centre_drill();
        centre.warnings = warnings_of(centre.tool);
        made.add(centre);
        made.add(step_of(hole_operation::drill, twist_drill(w.drill), drilled(w.drill.diameter, material_)));
        if (w.bore != nullptr) {
            const auto rule = stock_before(*w.bore, w.bored_to, material_);
            made.add(step_of(hole_operation::bore, *w.bore, set_by_dial(w.bored_to, w.bore->step)), *rule);
        }
        if (is_reamer(*w.last) || is_head(*w.last) || is_half_round(*w.last)) {
            const expected_hole e = made_by(*w.last, h, material_);
            const auto rule = stock_before(*w.last, e.mean(), material_);
            const auto operation = is_reamer(*w.last) ? hole_operation::ream
                                   : is_head(*w.last) ? hole_operation::bore
                                                      : hole_operation::half_round;
            made.add(step_of(operation, *w.last, e), *rule);
        }
    }

    hole_task task_;
    hole_limits wanted_;
    rows<drawer_tool> drawer_;
    work_material material_;
};

constexpr result<hole_plan> hole_planner::plan() const noexcept {
    if (wanted_.tolerance() < length())
        return error::composer(error_code::limits_crossed)
               << "the limits " << written(wanted_.lower_limit()).view() << " to "
               << written(wanted_.upper_limit()).view() << " mm are the wrong way round";
    if (wanted_.lower_limit() <= length())
        return error::composer(error_code::size_not_above_zero)
               << "a hole of " << written(wanted_.lower_limit()).view() << " mm: allowed are sizes above 0";
    if (material_.family() == material_family::ceramic)
        return error::composer(error_code::not_for_this_material)
               << "drills, reamers, boring heads and bits don't cut ceramic, glass or stone; grind it";
    for (std::size_t i = 0; i < drawer_.size(); ++i)
        if (drawer_[i].kind == tool_kind::none) return not_a_tool(i);

    hole_plan made(wanted_);
    if (const way w = without_lap(wanted_); w.found()) {
        add_steps(made, w, wanted_);
        return made;
    }
    if (const drawer_tool* lap = best_lap(task_)) {
        const expected_hole e = made_by(*lap, wanted_, material_);
        if (const auto rule = stock_before(*lap, e.mean(), material_)) {
            const hole_limits before = hole_limits::between(e.most() - rule->most, e.least() - rule->least);
            if (const way w = without_lap(before); before.tolerance() >= length() && w.found()) {
                add_steps(made, w, before);
                made.add(step_of(hole_operation::lap, *lap, e), *rule);
                return made;
            }
        }
    }
    return no_plan(task_);
}

} // namespace fitwright::detail

#endif
