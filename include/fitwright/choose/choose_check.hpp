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

/// A figure above 0 that somebody can have meant.
[[nodiscard]] constexpr bool is_figure(double number) noexcept { return number > 0 && number <= 1e15; }
/// A clearance above 0, and no more than the part is thick.
[[nodiscard]] constexpr bool is_some_clearance(length clearance, length nominal) noexcept {
    return clearance > length() && clearance <= nominal;
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
        return is_some_clearance(w.left_at_least, w.nominal)
                   ? text()
                   : ".left_at_least above 0, up to the nominal size";
    case want::slides_without_shake:
    case want::stays_central:
        return is_some_clearance(w.shake_at_most, w.nominal)
                   ? text()
                   : ".shake_at_most above 0, up to the nominal size";
    case want::runs_on_oil:
        if (w.film.width == length()) return ".film.width";
        if (!w.film.load) return ".film.load";
        if (!w.film.oil_in) return ".film.oil_in";
        if (w.speed.value() == 0) return ".speed";
        return w.liquid.name.empty() ? ".liquid" : text();
    case want::holds_oil:
        if (!w.leak.is_given()) return ".leak";
        if (!is_figure(w.leak.at_most()) || (w.leak.is_of_a_plunger() && w.leak.at_most() > 100))
            return ".leak of more than 0, a plunger's up to 100 %";
        if (w.leak.past().around.pressure_drop.value() == 0) return ".leak with a pressure drop";
        return w.liquid.name.empty() && !(w.leak.past().around.viscosity.value() > 0)
                   ? ".liquid, or .leak with a viscosity"
                   : text();
    case want::never_moves:
        return j.load.along.value() == 0 && j.load.turning.value() == 0 ? ".joint.load" : of_joint();
    case want::pressure_tight: return j.of_fluid.value() == 0 ? ".joint.of_fluid" : of_joint();
    case want::presses_in:
        return is_figure(j.press_at_most.value()) ? of_joint() : ".joint.press_at_most above 0";
    }
    return {};
}

/// The hole that leads; of a tool what it cuts.
[[nodiscard]] constexpr hole_limits leading_hole(const wants& w) noexcept {
    if (w.leads.kind() != lead_kind::tool) return w.leads.hole();
    const expected_hole cut = made_by(w.leads.tool(), {}, w.hole_made_of);
    return {cut.least(), {.upper = cut.most() - cut.least(), .lower = length()}, cut.origin()};
}

/// A part as it is looked at: its lower limit first, and no more than an eighth off the nominal size.
template <side Side>
[[nodiscard]] constexpr result<bool> check_part(const size_limits<Side>& l, const wants& w,
                                                error_code code) noexcept {
    const auto is_length_of_a_part = [](length one) { return -farthest_size <= one && one <= farthest_size; };
    const text part = Side == side::hole ? "a hole" : "a shaft";
    if (!is_length_of_a_part(l.nominal()) || !is_length_of_a_part(l.lower_deviation()) ||
        !is_length_of_a_part(l.upper_deviation())) // asked before they are added
        return error::composer(code) << part << " beyond 500000 km; allowed: no more than an eighth off the "
                                     << written(w.nominal).view() << " mm of the wants";
    const length most_off = farthest_clearance(w.nominal);
    if (l.lower_limit() <= l.upper_limit() && l.lower_limit() >= w.nominal - most_off &&
        l.upper_limit() <= w.nominal + most_off)
        return true;
    return error::composer(code) << part << " of " << written(l.lower_limit()).view() << " to "
                                 << written(l.upper_limit()).view() << " mm at a nominal size of "
                                 << written(w.nominal).view()
                                 << " mm; allowed: the lower limit first, no more than an eighth off";
}

/// Why a tool that is no reamer and no half-round bit can't lead.
[[nodiscard]] constexpr error tool_decides_nothing(const drawer_tool& t) noexcept {
    error::composer say(error_code::lead_not_usable);
    if (t.kind == tool_kind::none) say << "what leads is not a tool";
    else if (is_head(t) || is_lap(t))
        say << t.name().view() << ": it goes to any size, so it does not decide the hole's";
    else
        say << t.name().view()
            << ": a drill does not decide a hole's size, it cuts over by hundredths or tenths of a millimetre";
    return say << "; allowed to lead: a reamer, a half-round bit, or the hole once it is made and measured";
}

[[nodiscard]] constexpr result<bool> check_lead(const wants& w) noexcept {
    if (w.leads.kind() == lead_kind::nothing) return true;
    const bool is_tool = w.leads.kind() == lead_kind::tool;
    if (is_tool && !w.leads.tool().is_reamer() && !is_half_round(w.leads.tool()))
        return tool_decides_nothing(w.leads.tool());
    if (is_tool && w.hole_made_of.name.empty())
        return error::composer(error_code::want_without_figure)
               << "what a tool cuts hangs on the material; allowed: to state "
                  ".hole_made_of";
    if (w.leads.decides_hole()) return check_part(leading_hole(w), w, error_code::lead_not_usable);
    return check_part(w.leads.shaft(), w, error_code::lead_not_usable);
}

/// Whether a pair that is given can be held against the wants.
[[nodiscard]] constexpr result<bool> check_given(const wants& w, const fit& given) noexcept {
    const auto hole = check_part(given.hole(), w, error_code::nominal_sizes_differ);
    return hole ? check_part(given.shaft(), w, error_code::nominal_sizes_differ) : hole;
}

/// The gap that leaks is the pair's: its diameter, where it is stated, is that of the pair.
[[nodiscard]] constexpr result<bool> check_gap(const wants& w) noexcept {
    const length diameter = w.leak.past().around.diameter;
    if (!w.must.contains(want::holds_oil) || diameter == length()) return true;
    if (diameter > length() && is_fit_for(w.nominal, diameter)) return true;
    return error::composer(error_code::nominal_sizes_differ)
           << "a .leak of " << written(diameter).view() << " mm diameter at a nominal size of "
           << written(w.nominal).view()
           << " mm; allowed: the same, or no more than a tenth off; or none, for that of the wants";
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
    if (w.uncertainty > w.nominal || w.uncertainty < -w.nominal)
        return error::composer(error_code::not_an_uncertainty)
               << "an uncertainty of " << written(w.uncertainty).view()
               << " mm; allowed: 0, not stated, up to the nominal size";
    if (const auto lead = check_lead(w); !lead) return lead;
    if (const auto leak = check_gap(w); !leak) return leak;
    return check_questions(judge);
}

} // namespace fitwright::detail

#endif
