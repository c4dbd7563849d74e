#ifndef FITWRIGHT_CHOOSE_CHOOSE_QUESTIONS_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_QUESTIONS_HPP

#include <fitwright/choose/candidate.hpp>
#include <fitwright/press/press.hpp>
#include <fitwright/running/film.hpp>
#include <fitwright/running/leakage.hpp>
#include <fitwright/running/viscosity.hpp>

// What is put to the other rooms about a pair: its clearances in all states, its bearing, its joint, its
// leak.

namespace fitwright::detail {

/// A corner of a fit.
struct exact_pair {
    length hole;
    length shaft;

    [[nodiscard]] constexpr length clearance() const noexcept { return hole - shaft; }
    [[nodiscard]] constexpr fit as_fit() const noexcept {
        return {hole_limits::between(hole, hole), shaft_limits::between(shaft, shaft)};
    }
    [[nodiscard]] static constexpr exact_pair tightest_of(const fit& f) noexcept {
        return {f.hole().lower_limit(), f.shaft().upper_limit()};
    }
    [[nodiscard]] static constexpr exact_pair loosest_of(const fit& f) noexcept {
        return {f.hole().upper_limit(), f.shaft().lower_limit()};
    }
};

/// The clearances that a pair has: at 20 °C, where it works, and both together.
struct clearances_of_pair {
    clearance_window cold;
    clearance_window working;
    clearance_window all;
};

[[nodiscard]] constexpr length lesser(length a, length b) noexcept { return a < b ? a : b; }
[[nodiscard]] constexpr length greater(length a, length b) noexcept { return a < b ? b : a; }

/// The wants, as questions about one pair after another.
class want_questions {
public:
    explicit constexpr want_questions(const wants& w) noexcept : wants_(w) {}

    [[nodiscard]] const wants& of() const noexcept { return wants_; }

    /// Over all states; of a fit, from its tightest corner to its loosest.
    [[nodiscard]] clearances_of_pair clearances(const fit& f) const noexcept {
        const clearance_window cold{f.min_clearance(), f.max_clearance()};
        if (wants_.states.empty()) return {cold, cold, cold};
        const auto hot = worst_moments(f, wants_.hole_made_of, wants_.shaft_made_of, wants_.states);
        if (!hot) return {cold, cold, cold};
        const clearance_window warm = hot->clearance();
        return {cold, warm, {lesser(cold.least, warm.least), greater(cold.most, warm.most)}};
    }

    /// With the clearance as the film has it in the working states, or with how the parts grow if none is
    /// given.
    [[nodiscard]] journal journal_of(bearing_clearance c) const noexcept {
        journal j{.diameter = wants_.nominal,
                  .width = wants_.film.width,
                  .clearance = c,
                  .load = wants_.film.load,
                  .speed = wants_.speed,
                  .lubricant = wants_.liquid,
                  .oil_in = wants_.film.oil_in,
                  .roughness = wants_.film.roughness};
        if (wants_.states.empty())
            j.growth = {.shaft = wants_.shaft_made_of.expansion.to_100_degC,
                        .bore = wants_.hole_made_of.expansion.to_100_degC};
        return j;
    }

    /// The joint with such an interference, as warm as in a state; at 20 °C without one.
    [[nodiscard]] joint joint_of(range<diametral_interference> i, const thermal_state* s) const noexcept {
        const wanted_joint& j = wants_.joint;
        return {.seat = press_seat(wants_.nominal, i),
                .hub = {.made_of = wants_.hole_made_of,
                        .outside = j.hub_outside,
                        .at = s ? s->hole : celsius(20),
                        .may_bear = j.hub_may_bear},
                .shaft = {.made_of = wants_.shaft_made_of,
                          .bore = j.shaft_bore,
                          .at = s ? s->shaft : celsius(20),
                          .may_bear = j.shaft_may_bear},
                .joint_length = j.joint_length,
                .roughness = j.roughness,
                .between = j.between,
                .load = j.load,
                .safety = j.safety,
                .speed = wants_.speed};
    }
    [[nodiscard]] plug_duty duty() const noexcept {
        return {.of_fluid = wants_.joint.of_fluid,
                .safety = wants_.joint.safety.against_slipping,
                .face = wants_.joint.face};
    }

    [[nodiscard]] bool has_one_viscosity() const noexcept {
        return wants_.leak.past().around.viscosity.value() > 0;
    }
    /// What a pair leaks, and how much that is in the unit of the budget.
    struct leaking {
        leak_result past{};
        double amount = 0;
        bool beyond_the_law = false; ///< the gap is too wide for the law of narrow gaps
    };
    /// The worst of the working states. A pair that is closed does not leak.
    /// Error: as of `leakage`, but for the clearance.
    [[nodiscard]] result<leaking> leak_of(const exact_pair& p, clearance_window working) const noexcept {
        return leak_of(p.as_fit(), working);
    }
    [[nodiscard]] result<leaking> leak_of(const fit& f, clearance_window working) const noexcept {
        if (has_one_viscosity() || wants_.states.empty()) return leak_with(working, nullptr);
        leaking worst;
        for (const thermal_state& s : wants_.states) {
            const auto hot =
                at_temperature(f, {wants_.hole_made_of, s.hole}, {wants_.shaft_made_of, s.shaft});
            if (!hot) return hot.error();
            const auto here = leak_with(hot->clearance, &s);
            if (!here) return here;
            if (here->beyond_the_law) return here;
            if (here->amount >= worst.amount) worst = *here;
        }
        return worst;
    }

    [[nodiscard, gnu::cold, gnu::noinline]] static constexpr error lacks(want w, text figure) noexcept {
        return error::composer(error_code::want_without_figure)
               << "the want '" << in_words(w) << "' needs " << figure
               << "; allowed: to state it, or not to want that";
    }

private:
    /// With a clearance, and the liquid as warm as the warmer part in a state.
    [[nodiscard]] result<leaking> leak_with(clearance_window c, const thermal_state* s) const noexcept {
        plunger p = wants_.leak.past();
        if (p.around.diameter == length()) p.around.diameter = wants_.nominal;
        if (!has_one_viscosity()) {
            const bool hole_is_warmer = s && s->hole.value() > s->shaft.value();
            const auto v = viscosity(wants_.liquid, s ? (hole_is_warmer ? s->hole : s->shaft) : celsius(20));
            if (!v) return v.error();
            if (!v->dynamic) return lacks(want::holds_oil, "the density of .liquid");
            p.around.viscosity = *v->dynamic;
            if (!p.around.density) p.around.density = v->density;
        }
        leaking made;
        if (c.most <= length()) return made;
        made.beyond_the_law = c.most > widest_gap(p.around.diameter);
        if (made.beyond_the_law) return made;
        p.around.clearance = clearance_window{greater(c.least, length()), c.most};
        if (wants_.leak.is_of_a_plunger()) {
            const auto lost = leakage(p);
            if (!lost) return lost.error();
            made.past = lost->past;
            made.amount = lost->percent_lost.most;
        } else {
            const auto past = leakage(p.around);
            if (!past) return past.error();
            made.past = *past;
            made.amount = past->most.flow.value();
        }
        return made;
    }

    const wants& wants_;
};

} // namespace fitwright::detail

#endif
