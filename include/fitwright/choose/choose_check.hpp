#ifndef FITWRIGHT_CHOOSE_CHOOSE_CHECK_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_CHECK_HPP

#include <fitwright/choose/choose_judge.hpp>
#include <fitwright/choose/mate.hpp>
#include <fitwright/tool/tool_makes.hpp>

// What has to be stated before anything can be chosen. Nothing is taken for granted: what is missing is
// named.

namespace fitwright::detail {

/// The farthest clearance that is looked at, either way: an eighth of the diameter.
[[nodiscard]] constexpr length farthest_clearance(length nominal) noexcept {
    return length::from_nanometres(nominal.nanometres() / 8);
}

/// The name of a figure that a want needs and doesn't find; empty if all are there.
[[nodiscard]] constexpr text missing_figure(const wants& w, want what) noexcept {
    const wanted_joint& j = w.joint;
    const auto of_joint = [&]() -> text {
        if (w.hole_made_of.name.empty()) return ".hole_made_of";
        if (w.shaft_made_of.name.empty()) return ".shaft_made_of";
        if (j.hub_outside == length()) return ".joint.hub_outside";
        if (j.joint_length == length()) return ".joint.joint_length";
        if (!(j.between.most > 0)) return ".joint.between, the friction";
        return {};
    };
    switch (what) {
    case want::turns_freely:
    case want::comes_apart_by_hand: return {};
    case want::never_seizes:
        if (w.states.empty()) return ".states";
        return w.left_at_least > length() ? text() : ".left_at_least above 0";
    case want::slides_without_shake:
    case want::stays_central: return w.shake_at_most > length() ? text() : ".shake_at_most above 0";
    case want::runs_on_oil:
        if (w.film.width == length()) return ".film.width";
        if (!w.film.load) return ".film.load";
        if (!w.film.oil_in) return ".film.oil_in";
        if (w.speed.value() == 0) return ".speed";
        return w.liquid.name.empty() ? ".liquid" : text();
    case want::holds_oil:
        if (!w.leak.is_given()) return ".leak";
        if (!(w.leak.at_most() > 0) || (w.leak.is_of_a_plunger() && w.leak.at_most() > 100))
            return ".leak of more than 0, a plunger's up to 100 %";
        if (w.leak.past().around.pressure_drop.value() == 0) return ".leak with a pressure drop";
        return w.liquid.name.empty() && w.leak.past().around.viscosity.value() == 0
                   ? ".liquid, or .leak with a viscosity"
                   : text();
    case want::never_moves:
        return j.load.along.value() == 0 && j.load.turning.value() == 0 ? ".joint.load" : of_joint();
    case want::pressure_tight: return j.of_fluid.value() == 0 ? ".joint.of_fluid" : of_joint();
    case want::presses_in: return j.press_at_most.value() == 0 ? ".joint.press_at_most" : of_joint();
    }
    return {};
}

/// The hole that leads; of a tool what it cuts.
[[nodiscard]] constexpr hole_limits leading_hole(const wants& w) noexcept {
    if (w.leads.kind() != lead_kind::tool) return w.leads.hole();
    const expected_hole cut = made_by(w.leads.tool(), {}, w.hole_made_of);
    return {cut.least(), {.upper = cut.most() - cut.least(), .lower = length()}, cut.origin()};
}

[[nodiscard]] constexpr result<bool> check_lead(const wants& w) noexcept {
    if (w.leads.kind() == lead_kind::nothing) return true;
    const bool is_tool = w.leads.kind() == lead_kind::tool;
    if (is_tool && !w.leads.tool().is_reamer() && !is_half_round(w.leads.tool()))
        return error::composer(error_code::lead_not_usable)
               << "the " << w.leads.tool().name().view()
               << " does not decide a hole's size; allowed: a reamer or a "
                  "half-round bit, or the limits of the "
                  "hole";
    if (is_tool && w.hole_made_of.name.empty())
        return error::composer(error_code::want_without_figure)
               << "what a tool cuts hangs on the material; allowed: to state "
                  ".hole_made_of";
    const hole_limits hole = w.leads.decides_hole() ? leading_hole(w) : hole_limits();
    const length lower = w.leads.decides_hole() ? hole.lower_limit() : w.leads.shaft().lower_limit();
    const length upper = w.leads.decides_hole() ? hole.upper_limit() : w.leads.shaft().upper_limit();
    const length most_off = farthest_clearance(w.nominal);
    if (lower > upper || lower < w.nominal - most_off || upper > w.nominal + most_off)
        return error::composer(error_code::lead_not_usable)
               << "a part of " << written(lower).view() << " to " << written(upper).view()
               << " mm leads at a nominal size of " << written(w.nominal).view()
               << " mm; allowed: the lower limit first, no more than an eighth off";
    return true;
}

/// Puts each question once, to a pair it can be put to: what is wrong with it then is not the pair.
[[nodiscard]] inline result<bool> check_questions(const want_judge& judge) noexcept {
    const wants& w = judge.of();
    const length thousandth = length::from_nanometres(w.nominal.nanometres() / 1000 + 1);
    const exact_pair loose{w.nominal, w.nominal - thousandth};
    if (!w.states.empty()) {
        const auto hot = worst_moments(loose.as_fit(), w.hole_made_of, w.shaft_made_of, w.states);
        if (!hot) return hot.error();
    }
    if (w.must.contains(want::runs_on_oil)) {
        const auto f = film(judge.journal_of(diametral_clearance(thousandth)));
        if (!f && f.error().code() != error_code::no_running_clearance &&
            f.error().code() != error_code::no_heat_balance)
            return f.error();
    }
    if (w.must.contains(want::holds_oil)) {
        const auto l = judge.leak_of(loose, {length(), thousandth});
        if (!l) return l.error();
    }
    const bool presses = w.must.contains(want::never_moves) || w.must.contains(want::presses_in);
    const bool plugs = w.must.contains(want::pressure_tight);
    if (!presses && !plugs) return true;
    const diametral_interference i(thousandth);
    const auto press_as = [&](const thermal_state* s) -> result<bool> {
        const joint j = judge.joint_of({i, i}, s);
        if (presses)
            if (const auto r = press(j); !r) return r.error();
        if (plugs)
            if (const auto r = plug_under_pressure(j, judge.duty()); !r) return r.error();
        return true;
    };
    if (const auto cold = press_as(nullptr); !cold) return cold;
    for (const thermal_state& s : w.states)
        if (const auto hot = press_as(&s); !hot) return hot;
    return true;
}

/// Whether there is an answer to be looked for.
[[nodiscard]] inline result<bool> check(const want_judge& judge) noexcept {
    const wants& w = judge.of();
    if (w.must.empty())
        return error::composer(error_code::nothing_wanted)
               << "nothing is wanted of the pair; allowed: .must with one want or "
                  "more, such as "
                  "want::turns_freely | want::never_seizes";
    if (!in_tables(w.nominal)) return size_outside_tables(w.nominal);
    if (!w.finest.exists()) return no_such_grade();
    for (const want what : w.must)
        if (const text figure = missing_figure(w, what); !figure.empty())
            return want_judge::lacks(what, figure);
    if (!w.states.empty() && (w.hole_made_of.name.empty() || w.shaft_made_of.name.empty()))
        return error::composer(error_code::want_without_figure)
               << "states are given, but not what the parts are made of; allowed: "
                  "to state .hole_made_of and "
                  ".shaft_made_of";
    if (!w.drawer.empty() && w.hole_made_of.name.empty())
        return error::composer(error_code::want_without_figure)
               << "a drawer is given, but not what its tools are to cut; allowed: "
                  "to state .hole_made_of";
    if (const auto lead = check_lead(w); !lead) return lead;
    return check_questions(judge);
}

} // namespace fitwright::detail

#endif
