#ifndef FITWRIGHT_TOOL_HOLE_PLANNER_HPP
#define FITWRIGHT_TOOL_HOLE_PLANNER_HPP

#include <fitwright/tool/hole_plan.hpp>
#include <fitwright/tool/reamed_hole.hpp>

// How plan_hole finds its way. The rules it follows are told in plan_hole.hpp.

namespace fitwright {

namespace sources {
inline constexpr source set_by_dial{
    "practice", "after a trial cut and a reading: within half a step of the dial to either side",
    confidence::practice};
inline constexpr source bit_stock{"practice", "under a half-round bit as under a hand reamer",
                                  confidence::practice};
} // namespace sources

namespace detail {

class hole_planner {
public:
    constexpr hole_planner(const hole_limits& wanted, rows<drawer_tool> drawer,
                           work_material material) noexcept
        : wanted_(wanted), drawer_(drawer), material_(material) {}

    [[nodiscard]] constexpr result<hole_plan> plan() const noexcept;

private:
    /// A hole to be made ready for the next tool: what it may be by the rules for stock, what to come near
    /// to, and what the largest and the smallest hole to be expected may not reach.
    struct opening {
        length lowest;
        length highest;
        length aim;
        length below;    // the largest hole is smaller than this
        length at_least; // the smallest hole is not smaller
    };

    /// One way to the hole, kept until a better one turns up.
    struct way {
        const drawer_tool* last = nullptr;
        drill_size drill;
        const drawer_tool* bore = nullptr;
        length bored_to;
        length margin;

        [[nodiscard]] constexpr bool found() const noexcept { return last != nullptr; }
    };

    [[nodiscard]] static constexpr length margin_of(const hole_limits& h, length least,
                                                    length most) noexcept {
        const length below = least - h.lower_limit();
        const length above = h.upper_limit() - most;
        return below < above ? below : above;
    }

    // ---- what a tool makes

    [[nodiscard]] static constexpr bool has_figures(length drill) noexcept {
        return has_test_figures(drill) || has_jig_tolerance(drill);
    }
    [[nodiscard]] static constexpr expected_hole drilled(length drill) noexcept {
        return has_test_figures(drill) ? by_test_figures(drill) : by_jig_tolerance(drill);
    }

    [[nodiscard]] static constexpr bool is_reamer(const drawer_tool& t) noexcept {
        return t.kind == tool_kind::hand_reamer || t.kind == tool_kind::machine_reamer;
    }

    [[nodiscard]] static constexpr expected_hole set_by_dial(length target, length step) noexcept {
        const length half = length::from_nanometres(step.nanometres() / 2); // a step of the tolerance fits
        return {{.least = target - half, .mean = target, .most = target + half},
                sources::set_by_dial,
                "the uncertainty of your own reading comes on top"};
    }

    [[nodiscard]] constexpr expected_hole made_by(const drawer_tool& t, const hole_limits& h) const noexcept {
        const tool_limits size(t.least, t.most);
        if (is_reamer(t))
            return reamed_hole(reamer_size(size, t.over.most, t.over.origin()).used_for(h), material_);
        if (t.kind == tool_kind::half_round_bit) return bit_hole(size, t.over);
        return set_by_dial(h.middle(), t.step);
    }

    /// Whether the tool can leave a hole of about the size at all; rejects most tools at little cost.
    [[nodiscard]] static constexpr bool reaches(const drawer_tool& t, const hole_limits& h) noexcept {
        if (t.kind == tool_kind::boring_head || t.kind == tool_kind::lap)
            return t.least <= h.lower_limit() && h.upper_limit() <= t.most;
        constexpr length slack = printed_mm(2);
        return t.least <= h.upper_limit() + slack && h.lower_limit() <= t.most + slack;
    }

    [[nodiscard]] static constexpr bool is_sure(const expected_hole& e) noexcept {
        return e.origin().how_sure != confidence::uncertain;
    }

    [[nodiscard]] constexpr result<stock> stock_before(const drawer_tool& t, length size) const noexcept {
        switch (t.kind) {
        case tool_kind::machine_reamer: return stock_to_leave(finishing::machine_reaming, size, material_);
        case tool_kind::boring_head: return stock_to_leave(finishing::boring, size, material_);
        case tool_kind::lap: return stock_to_leave(finishing::lapping, size, material_);
        case tool_kind::half_round_bit: {
            const auto as_reamed = stock_to_leave(finishing::hand_reaming, size, material_);
            if (!as_reamed) return as_reamed;
            return stock{as_reamed->least, as_reamed->most, &sources::bit_stock};
        }
        default: return stock_to_leave(finishing::hand_reaming, size, material_);
        }
    }

    /// Before a tool that cuts all round at one go: a reamer, a bit.
    [[nodiscard]] static constexpr opening before_cut(const drawer_tool& t, const expected_hole& e,
                                                      const stock& s) noexcept {
        const length size = (t.least + t.most) / 2;
        return {.lowest = size - s.most,
                .highest = size - s.least,
                .aim = size - s.middle(),
                .below = e.least(),
                .at_least = length()};
    }
    /// Before a boring head: as little as is enough, but a hole that it enters.
    [[nodiscard]] static constexpr opening before_bore(const drawer_tool& head, length target,
                                                       const stock& s) noexcept {
        return {.lowest = head.least,
                .highest = target - s.least,
                .aim = target - s.least,
                .below = target - head.step / 2,
                .at_least = head.least};
    }

    /// Whether there is a hole large enough for the boring head that leaves it something to cut.
    [[nodiscard]] constexpr bool can_enter(const drawer_tool& head, length target) const noexcept {
        const auto rule = stock_before(head, target);
        return !rule || head.least <= target - rule->least;
    }

    // ---- what comes before the last tool

    template <class Visit>
    static constexpr void for_each_drill(const drawer_tool& t, length lowest, length highest,
                                         Visit visit) noexcept {
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
            for (std::size_t i = how_many_below(all, lowest); i < all.size() && all[i].diameter <= highest;
                 ++i)
                visit(all[i]);
        }
    }

    /// The drill that comes nearest to the aim, of two as near the smaller; of diameter 0 if none will do.
    [[nodiscard]] constexpr drill_size drill_for(const opening& o) const noexcept {
        drill_size best;
        length best_miss;
        const length over = counted_hole({});
        for (const drawer_tool& t : drawer_)
            for_each_drill(t, o.lowest - over, o.highest - over, [&](const drill_size& drill) {
                if (!has_figures(drill.diameter)) return;
                const expected_hole e = drilled(drill.diameter);
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

    /// A drill, or a drill and a bore, before the last tool; false if there is nothing for it.
    [[nodiscard]] constexpr bool make_ready(way& w, const expected_hole& e, bool with_bore) const noexcept {
        const auto rule = stock_before(*w.last, e.mean());
        if (!rule) return false;
        if (w.last->kind == tool_kind::boring_head) {
            w.drill = drill_for(before_bore(*w.last, e.mean(), *rule));
            return w.drill.diameter > length();
        }
        const opening o = before_cut(*w.last, e, *rule);
        if (!with_bore) {
            w.drill = drill_for(o);
            return w.drill.diameter > length();
        }
        for (const drawer_tool& head : drawer_) {
            if (head.kind != tool_kind::boring_head || o.aim < head.least || o.aim > head.most) continue;
            const expected_hole bored = set_by_dial(o.aim, head.step);
            if (bored.least() < o.lowest || bored.most() > o.highest || bored.most() >= o.below) continue;
            const auto bore_rule = stock_before(head, o.aim);
            if (!bore_rule) continue;
            w.drill = drill_for(before_bore(head, o.aim, *bore_rule));
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
            for_each_drill(t, h.lower_limit() - printed_um(300), h.upper_limit(),
                           [&](const drill_size& drill) {
                               if (!has_figures(drill.diameter)) return;
                               const expected_hole e = drilled(drill.diameter);
                               const length margin = margin_of(h, e.least(), e.most());
                               if (margin < length() || (best.found() && margin <= best.margin)) return;
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
            const expected_hole e = made_by(t, h);
            const length margin = margin_of(h, e.least(), e.most());
            if (margin < length() || !is_sure(e) || (best.found() && margin <= best.margin)) continue;
            way w;
            w.last = &t;
            w.margin = margin;
            if (make_ready(w, e, with_bore)) best = w;
        }
        return best;
    }

    static constexpr bool is_head(const drawer_tool& t) noexcept { return t.kind == tool_kind::boring_head; }
    static constexpr bool is_half_round(const drawer_tool& t) noexcept {
        return t.kind == tool_kind::half_round_bit;
    }
    static constexpr bool is_lap(const drawer_tool& t) noexcept { return t.kind == tool_kind::lap; }

    [[nodiscard]] constexpr way without_lap(const hole_limits& h) const noexcept {
        way w = drilled_only(h);
        if (!w.found()) w = finished_by(is_reamer, h, false);
        if (!w.found()) w = finished_by(is_head, h, false);
        if (!w.found()) w = finished_by(is_half_round, h, false);
        if (!w.found()) w = finished_by(is_reamer, h, true);
        if (!w.found()) w = finished_by(is_half_round, h, true);
        return w;
    }

    /// The lap with the largest margin; which one makes no difference to what comes before.
    [[nodiscard]] constexpr const drawer_tool* best_lap() const noexcept {
        const drawer_tool* best = nullptr;
        for (const drawer_tool& t : drawer_)
            if (is_lap(t) && reaches(t, wanted_) && t.step <= wanted_.tolerance() &&
                (best == nullptr || t.step < best->step))
                best = &t;
        return best;
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
        return s;
    }

    constexpr void add_steps(hole_plan& made, const way& w, const hole_limits& h) const noexcept {
        hole_step centre;
        centre.tool = centre_drill();
        centre.warnings = warnings_of(centre.tool);
        made.add(centre);
        made.add(step_of(hole_operation::drill, twist_drill(w.drill), drilled(w.drill.diameter)));
        if (w.bore != nullptr) {
            const auto rule = stock_before(*w.bore, w.bored_to);
            made.add(step_of(hole_operation::bore, *w.bore, set_by_dial(w.bored_to, w.bore->step)), *rule);
        }
        if (is_reamer(*w.last) || is_head(*w.last) || is_half_round(*w.last)) {
            const expected_hole e = made_by(*w.last, h);
            const auto rule = stock_before(*w.last, e.mean());
            const auto operation = is_reamer(*w.last) ? hole_operation::ream
                                   : is_head(*w.last) ? hole_operation::bore
                                                      : hole_operation::half_round;
            made.add(step_of(operation, *w.last, e), *rule);
        }
    }

    // ---- what is missing

    [[nodiscard]] constexpr error without_preparation(const drawer_tool& last,
                                                      const stock& rule) const noexcept;
    [[nodiscard]] constexpr error missing() const noexcept;
    [[nodiscard]] constexpr const drawer_tool* nearest_tool() const noexcept;

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
        if (drawer_[i].kind == tool_kind::none)
            return error::composer(error_code::tool_not_known)
                   << "tool " << static_cast<std::int64_t>(i + 1)
                   << " of the drawer is not a tool: its size is not above 0, its range the wrong way round, its "
                      "step 0, or its class has no value at that size";

    hole_plan made(wanted_);
    if (const way w = without_lap(wanted_); w.found()) {
        add_steps(made, w, wanted_);
        return made;
    }
    if (const drawer_tool* lap = best_lap()) {
        const expected_hole e = made_by(*lap, wanted_);
        if (const auto rule = stock_before(*lap, e.mean())) {
            const hole_limits before = hole_limits::between(e.most() - rule->most, e.least() - rule->least);
            if (const way w = without_lap(before); before.tolerance() >= length() && w.found()) {
                add_steps(made, w, before);
                made.add(step_of(hole_operation::lap, *lap, e), *rule);
                return made;
            }
        }
    }
    return missing();
}

/// The tool that holds the limits, or else comes nearest to holding them. One that may hold them, but
/// uncertainly, stands between.
constexpr const drawer_tool* hole_planner::nearest_tool() const noexcept {
    const drawer_tool* best = nullptr;
    length best_margin;
    for (const drawer_tool& t : drawer_) {
        if (!(is_reamer(t) || is_head(t) || is_half_round(t)) || !reaches(t, wanted_)) continue;
        const expected_hole e = made_by(t, wanted_);
        length margin = margin_of(wanted_, e.least(), e.most());
        if (margin >= length() && !is_sure(e)) margin = length::from_nanometres(-1);
        if (is_head(t) && !can_enter(t, e.mean())) continue;
        if (best != nullptr && margin <= best_margin) continue;
        best = &t;
        best_margin = margin;
    }
    return best;
}

/// The last tool is there, but nothing makes the hole ready for it.
constexpr error hole_planner::without_preparation(const drawer_tool& last, const stock& rule) const noexcept {
    const expected_hole e = made_by(last, wanted_);
    error::composer say(error_code::tool_missing);
    say << last.name().view() << " would do, but no drill in the drawer ";
    if (is_head(last))
        return say << "opens the hole for it: wanted is a hole of " << written(last.least).view() << " to "
                   << written(e.mean() - rule.least).view() << " mm";
    say << "leaves " << written(rule.least).view() << " to " << written(rule.most).view() << " mm for it; ";
    const opening o = before_cut(last, e, rule);
    const drawer_tool metric = twist_drills(drill_series::metric, printed_mm(25));
    const drill_size other = hole_planner(wanted_, {&metric, 1}, material_).drill_for(o);
    if (other.diameter > length()) say << "a " << other.name().view() << " drill would, or a bore of ";
    else say << "wanted is a bore of ";
    return say << written(o.aim).view() << " mm";
}

constexpr error hole_planner::missing() const noexcept {
    const drawer_tool* nearest = nearest_tool();
    error::composer say(error_code::tool_missing);
    if (nearest != nullptr) {
        const expected_hole e = made_by(*nearest, wanted_);
        const bool holds = e.lies_within(wanted_);
        if (holds && is_sure(e)) {
            const auto rule = stock_before(*nearest, e.mean());
            if (!rule) return rule.error();
            return without_preparation(*nearest, *rule);
        }
        if (holds && is_half_round(*nearest))
            return say << "a " << nearest->name().view()
                       << " may do, but its overcut is uncertain: cut trial holes and give the drawer what "
                          "overcut_from_trials finds";
    }
    if (const drawer_tool* lap = best_lap()) {
        const expected_hole e = made_by(*lap, wanted_);
        if (const auto rule = stock_before(*lap, e.mean()))
            return say << lap->name().view() << " would do, but nothing in the drawer makes a hole of "
                       << written(e.most() - rule->most).view() << " to "
                       << written(e.least() - rule->least).view() << " mm for it";
    }
    say << "nothing in the drawer holds " << written(wanted_).view() << " mm: wanted is ";
    const bool is_plastic = material_.family() == material_family::plastic;
    const tool_limits reamer = reamer_for(wanted_);
    const auto bore_rule = stock_to_leave(finishing::boring, wanted_.middle(), material_);
    const bool can_be_bored = bore_rule.has_value();
    const bool can_be_reamed = reamer.exist() && !is_plastic;
    if (can_be_reamed)
        say << "a reamer of " << written(reamer.lower_limit()).view() << " to "
            << written(reamer.upper_limit()).view() << " mm";
    if (can_be_reamed && can_be_bored) say << " or ";
    if (can_be_bored) {
        constexpr std::int64_t tenth_mm = 100'000;
        const length room = wanted_.middle() - bore_rule->least;
        say << "a boring head from "
            << written(length::from_nanometres(room.nanometres() / tenth_mm * tenth_mm)).view()
            << " mm on by " << written(wanted_.tolerance()).view() << " mm or finer";
    }
    if (can_be_reamed || can_be_bored) say << ", and a drill under it";
    else say << "a half-round bit with its overcut from trials, and a drill under it";
    if (is_plastic) say << "; plastic springs back from a reamer, uncertainly";
    if (nearest == nullptr) return say;
    const expected_hole e = made_by(*nearest, wanted_);
    const length above = e.most() - wanted_.upper_limit();
    const length below = wanted_.lower_limit() - e.least();
    const length worse = above >= below ? above : below;
    if (worse <= length() || worse > printed_um(100)) return say; // it holds, but uncertainly; no help
    return say << ". Nearest: " << nearest->name().view() << ", " << written(worse).view()
               << (above >= below ? " mm too large" : " mm too small");
}

} // namespace detail

} // namespace fitwright

#endif
