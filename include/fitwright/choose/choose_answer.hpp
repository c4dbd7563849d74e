#ifndef FITWRIGHT_CHOOSE_CHOOSE_ANSWER_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_ANSWER_HPP

#include <fitwright/choose/choose_search.hpp>
#include <fitwright/gauge/judge.hpp>

// All that is to be said of a pair that was kept.

namespace fitwright::detail {

[[nodiscard]] constexpr margin_unit margin_unit_of(want w, const wants& all) noexcept {
    switch (w) {
    case want::holds_oil:
        return all.leak.is_of_a_plunger() ? margin_unit::percent : margin_unit::cubic_metres_per_second;
    case want::never_moves:
    case want::pressure_tight: return margin_unit::times;
    case want::presses_in: return margin_unit::newtons;
    default: return margin_unit::metres;
    }
}

/// The class that limits are of, a preferred one if it can be.
template <side Side>
[[nodiscard]] constexpr class_choice<Side> any_class_of(const size_limits<Side>& l, length nominal) noexcept {
    for (int step = 0; step < grade::count; ++step) {
        const grade g = grade::from_step(step);
        if (const auto its = standard_tolerance(nominal, g); !its || *its != l.tolerance()) continue;
        for (int p = 0; p < position_count; ++p) {
            const tolerance_class<Side> c{static_cast<position>(p), g};
            if (has_value_at(nominal, c) && *limits(nominal, c) == l) return c;
        }
    }
    return {};
}

class choice_answer {
public:
    /// `one_could_lead`: no pair that was looked at does, though there is room for one part.
    choice_answer(const want_judge& judge, const want_windows& windows, bool one_could_lead) noexcept
        : judge_(judge), wants_(judge.of()), windows_(windows), one_could_lead_(one_could_lead) {}

    /// Whether clearance is left for one part that the shop can hold: IT5 where it has not said.
    [[nodiscard]] static bool has_room_for_one(const wants& w, const want_windows& windows) noexcept {
        const auto of_one = standard_tolerance(w.nominal, w.finest < grade::it5 ? grade::it5 : w.finest);
        return w.leads.kind() == lead_kind::nothing && of_one &&
               windows.all.most - windows.all.least > *of_one;
    }

    [[nodiscard]] candidate of(const choice_seed& s) const noexcept {
        candidate c;
        c.hole = s.sizes.hole();
        c.shaft = s.sizes.shaft();
        c.hole_class = s.hole.is_given() ? s.hole : any_class_of(c.hole, wants_.nominal);
        c.shaft_class = s.shaft.is_given() ? s.shaft : any_class_of(c.shaft, wants_.nominal);
        answer_wants(c);
        ask_other_rooms(c);
        how_to_make(c);
        how_to_measure(c);
        c.fit_reasons = fit_reasons_of(c);
        c.reasons |= reasons_of(c);
        const length to_tight = c.pair().min_clearance() - windows_.all.least;
        const length to_loose = windows_.all.most - c.pair().max_clearance();
        c.err = to_loose > to_tight ? erring::loose : erring::tight;
        return c;
    }

private:
    void answer_wants(candidate& c) const noexcept {
        const exact_pair tight = exact_pair::tightest_of(c.pair());
        const exact_pair loose = exact_pair::loosest_of(c.pair());
        const clearances_of_pair at_tight = judge_.clearances(tight.as_fit());
        const clearances_of_pair at_loose = judge_.clearances(loose.as_fit());
        for (const want w : wants_.must) {
            want_answer a{.wanted = w,
                          .in = margin_unit_of(w, wants_),
                          .tight = judge_.judge(w, tight, at_tight),
                          .loose = judge_.judge(w, loose, at_loose),
                          .allows = windows_.allowed_by(w)};
            if (a.holds() != holding::yes) a.off = windows_.off(w, c.pair());
            c.off = greater(c.off, a.off);
            c.answered[c.answer_count++] = a;
        }
    }

    void ask_other_rooms(candidate& c) const noexcept {
        const clearances_of_pair clearance = judge_.clearances(c.pair());
        if (!wants_.states.empty()) {
            c.hot = worst_moments(c.pair(), wants_.hole_made_of, wants_.shaft_made_of, wants_.states);
            if (c.hot) c.take_care |= c.hot->take_care;
        }
        if (wants_.must.contains(want::runs_on_oil)) {
            c.film = film(judge_.journal_of(wants_.states.empty() ? clearance.cold : clearance.working));
            if (c.film) c.take_care |= c.film->take_care;
            c.take_care |= caution::rotating; // without a film too
        }
        if (wants_.must.contains(want::holds_oil)) {
            c.leak = leak_of(c.pair(), clearance.working);
            c.take_care |= caution::under_pressure;
        }
        const bool presses =
            wants_.must.contains(want::never_moves) || wants_.must.contains(want::presses_in);
        const bool plugs = wants_.must.contains(want::pressure_tight);
        const auto press_as = [&](const thermal_state* s) {
            const joint j = judge_.joint_of(interference_of(c.pair()), s);
            if (presses)
                keep_weaker(c.pressed, press(j),
                            [](const press_result& r) { return r.in_service.axial_grip.least.value(); });
            if (plugs)
                keep_weaker(c.plug, plug_under_pressure(j, judge_.duty()),
                            [](const plug_result& r) { return r.in_service.seal_margin.least; });
        };
        if (presses || plugs) {
            if (wants_.states.empty()) press_as(nullptr);
            for (const thermal_state& s : wants_.states) press_as(&s);
        }
        if (c.pressed) c.take_care |= c.pressed->take_care;
        if (c.plug) c.take_care |= c.plug->take_care;
        if (plugs) c.take_care |= caution::under_pressure; // whether it seals or not
        if (c.pair().min_clearance() < length()) c.take_care |= caution::press_force;
    }
    template <class Result, class Grip>
    static void keep_weaker(Result& kept, const Result& one, Grip grip) noexcept {
        if (!one) return;
        if (!kept || grip(*one) < grip(*kept)) kept = one;
    }
    [[nodiscard]] result<leak_result> leak_of(const fit& f, clearance_window working) const noexcept {
        const auto l = judge_.leak_of(f, working);
        if (!l) return l.error();
        if (l->beyond_the_law || working.most <= length()) {
            gap g = wants_.leak.past().around;
            g.diameter = wants_.nominal;
            g.clearance = working;
            return not_a_clearance(g);
        }
        return l->past;
    }

    [[nodiscard]] bool hole_is_made() const noexcept { return wants_.leads.kind() != lead_kind::found_hole; }

    [[nodiscard]] bool shaft_is_made() const noexcept {
        return wants_.leads.kind() != lead_kind::found_shaft;
    }
    /// Whether the tool that leads lies in the drawer.
    [[nodiscard]] bool drawer_has_lead() const noexcept {
        const drawer_tool& lead = wants_.leads.tool();
        for (const drawer_tool& t : wants_.drawer)
            if (t.kind == lead.kind && t.least == lead.least && t.most == lead.most) return true;
        return false;
    }

    void how_to_make(candidate& c) const noexcept {
        if (shaft_is_made()) c.ring = ring_gauge(c.shaft);
        if (!hole_is_made()) return;
        const bool tool_leads = wants_.leads.kind() == lead_kind::tool;
        if (tool_leads) c.reasons |= choice_reason::trial_hole_first;
        if (!wants_.drawer.empty()) {
            c.plan = plan_hole(c.hole, wants_.drawer, wants_.hole_made_of);
            if (!c.plan && tool_leads && !drawer_has_lead())
                c.plan =
                    error::composer(error_code::tool_missing)
                    << "the " << wants_.leads.tool().name().view()
                    << " leads and is not in the .drawer, so nobody can tell how to come to it; allowed: a "
                       "drawer with it";
            c.reasons |= c.plan ? choice_reason::tool_is_there : choice_reason::no_plan;
            if (c.plan) {
                c.take_care |= c.plan->warnings();
                if (c.plan->needs_trial_hole()) c.reasons |= choice_reason::trial_hole_first;
            }
        }
        c.gauge = plug_gauge(c.hole);
        c.reasons |= c.gauge ? choice_reason::gauge_exists : choice_reason::no_gauge;
    }

    void how_to_measure(candidate& c) const noexcept {
        if (wants_.uncertainty == length()) return;
        bool proves = true;
        if (hole_is_made()) {
            c.hole_readings = acceptance_band(c.hole, wants_.uncertainty);
            proves = c.hole_readings.has_value();
        }
        if (shaft_is_made()) {
            c.shaft_readings = acceptance_band(c.shaft, wants_.uncertainty);
            proves = proves && c.shaft_readings.has_value();
        }
        c.reasons |= proves ? choice_reason::reading_proves : choice_reason::instrument_too_coarse;
    }

    /// Finer than IT6, of the parts that are to be made.
    [[nodiscard]] bool is_fine(const candidate& c) const noexcept {
        const length sixth = standard_tolerance(wants_.nominal, grade::it6).value_or(length());
        return (!wants_.leads.decides_hole() && c.hole.tolerance() < sixth) ||
               (!wants_.leads.decides_shaft() && c.shaft.tolerance() < sixth);
    }
    [[nodiscard]] flags<fit_reason> fit_reasons_of(const candidate& c) const noexcept {
        if (!c.hole_class.is_given() || !c.shaft_class.is_given())
            return is_fine(c) ? fit_reason::fine_work : flags<fit_reason>();
        pair_candidate as_pair;
        as_pair.classes = {c.hole_class.given(), c.shaft_class.given()};
        as_pair.rank = rank_of(as_pair.classes, uncertain_at(range_of(wants_.nominal)));
        as_pair.order = 0;
        return detail::fit_reasons_of(as_pair, c.pair(), -1);
    }

    [[nodiscard]] flags<choice_reason> reasons_of(const candidate& c) const noexcept {
        flags<choice_reason> reasons;
        bool any_missed = false;
        bool any_unknown = false;
        for (const want_answer& a : c.answers()) {
            any_missed = any_missed || a.holds() == holding::no;
            any_unknown = any_unknown || a.holds() == holding::cannot_tell;
        }
        if (any_missed) reasons |= choice_reason::wants_missed;
        if (any_unknown) reasons |= choice_reason::cannot_be_told;
        const bool holds_all = !any_missed && !any_unknown;
        if (holds_all) reasons |= choice_reason::all_wants_hold;
        const lead_kind lead = wants_.leads.kind();
        if (lead == lead_kind::found_hole || lead == lead_kind::found_shaft)
            reasons |= choice_reason::part_is_there;
        const bool hole_has_none = !c.hole_class.is_given() && !wants_.leads.decides_hole();
        const bool shaft_has_none = !c.shaft_class.is_given() && !wants_.leads.decides_shaft();
        if (hole_has_none || shaft_has_none) reasons |= choice_reason::no_class;
        if (wants_.states.empty()) reasons |= choice_reason::only_at_20;
        if (wants_.must.contains(want::holds_oil) && wants_.states.size() > 1 && judge_.has_one_viscosity())
            reasons |= choice_reason::one_viscosity;
        if (one_could_lead_ && c.off > length()) reasons |= choice_reason::let_one_part_lead;
        return reasons;
    }

    const want_judge& judge_;
    const wants& wants_;
    const want_windows& windows_;
    bool one_could_lead_;
};

} // namespace fitwright::detail

#endif
