#ifndef FITWRIGHT_CHOOSE_CHOOSE_JUDGE_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_JUDGE_HPP

#include <fitwright/choose/choose_questions.hpp>

// Whether a want holds for two parts of exact size. A fit is judged at its two corners; what is wanted of a
// clearance is an interval, so what holds at both corners holds between them.

namespace fitwright::detail {

/// The wants, made ready to be asked of one pair after another. `check` first: after it nothing but the
/// clearance can make a function refuse.
class want_judge : public want_questions {
public:
    using want_questions::want_questions;

    [[nodiscard]] want_at_end judge(want w, const exact_pair& p) const noexcept {
        return judge(w, p, clearances(p.as_fit()));
    }
    /// The same where the clearances are known already.
    [[nodiscard]] want_at_end judge(want w, const exact_pair& p, const clearances_of_pair& c) const noexcept {
        switch (w) {
        case want::turns_freely: return within(c.all, length::from_nanometres(1), {}, false);
        case want::never_seizes: return within(c.all, of().left_at_least, {}, false);
        case want::slides_without_shake: return within(c.all, length(), of().shake_at_most, true);
        case want::stays_central: return at_most_shake(c.all.most);
        case want::comes_apart_by_hand: return within(c.cold, length(), {}, false);
        case want::runs_on_oil: return on_oil(p, c.working);
        case want::holds_oil: return judged(leak_of(p, c.working));
        case want::never_moves:
        case want::pressure_tight: return over_states(w, p);
        case want::presses_in: return in_the_press(p);
        }
        return {};
    }

private:
    [[nodiscard]] static want_at_end ended(bool holds, length margin) noexcept {
        return {.holds = holds ? holding::yes : holding::no, .margin = margin.in<metre>()};
    }
    [[nodiscard]] static want_at_end within(clearance_window c, length least, length most,
                                            bool has_most) noexcept {
        const length above_least = c.least - least;
        const length below_most = has_most ? most - c.most : above_least;
        want_at_end e =
            ended(above_least >= length() && below_most >= length(), lesser(above_least, below_most));
        e.too_tight = above_least < length();
        e.too_loose = has_most && below_most < length();
        return e;
    }
    [[nodiscard]] want_at_end at_most_shake(length most) const noexcept {
        const length left = of().shake_at_most - most;
        want_at_end e = ended(left >= length(), left);
        e.too_loose = left < length();
        return e;
    }

    [[nodiscard]] want_at_end on_oil(const exact_pair& p, clearance_window working) const noexcept {
        const auto f =
            film(journal_of(of().states.empty() ? clearance_window{p.clearance(), p.clearance()} : working));
        if (!f) { // after `check` only the clearance can be why
            const bool is_too_wide = working.most * 20 > of().nominal;
            return {.holds = holding::no, .too_tight = !is_too_wide, .too_loose = is_too_wide};
        }
        want_at_end e = ended(f->regime == film_regime::full_film, f->least_film() - f->limit_film);
        if (e.holds == holding::yes && f->doubts.contains(film_doubt::beyond_the_table))
            e.holds = holding::cannot_tell;
        return e;
    }

    [[nodiscard]] want_at_end judged(const result<leaking>& l) const noexcept {
        if (!l || l->beyond_the_law) return {.holds = holding::no, .too_loose = true};
        const double left = of().leak.at_most() - l->amount;
        return {.holds = left >= 0 ? holding::yes : holding::no, .margin = left, .too_loose = left < 0};
    }
    /// Whatever holds least: at 20 °C, which every answer of the room has, and in every state.
    [[nodiscard]] want_at_end over_states(want w, const exact_pair& p) const noexcept {
        const diametral_interference i(-p.clearance());
        const auto one = [&](const thermal_state* s) {
            const joint j = joint_of({i, i}, s);
            return w == want::never_moves ? moves(press(j)) : seals(plug_under_pressure(j, duty()));
        };
        if (of().states.empty()) return one(nullptr);
        want_at_end worst = one(of().states.begin());
        for (const thermal_state& s : of().states) {
            const want_at_end here = one(&s);
            const bool is_worse =
                here.badness() > worst.badness() || (here.badness() == worst.badness() && here.margin &&
                                                     worst.margin && *here.margin < *worst.margin);
            const bool tight = worst.too_tight || here.too_tight;
            const bool loose = worst.too_loose || here.too_loose;
            if (is_worse) worst = here;
            worst.too_tight = tight;
            worst.too_loose = loose;
        }
        return worst;
    }
    /// Takes a margin that has to be 0 or more into an end.
    static void take(want_at_end& e, double margin) noexcept {
        if (!e.margin || margin < *e.margin) e.margin = property<double>(margin);
    }
    /// Against yield, in both parts and states; what the parts bear, and go on bearing, has to be known for a
    /// yes.
    void bear(want_at_end& e, const press_result& r, flags<press_doubt> doubts) const noexcept {
        for (const pressed_state* s : {&r.at_20, &r.in_service})
            for (const pressed_wall* wall : {&s->hub, &s->shaft})
                if (const property<double> times = wall->margin())
                    take(e, *times - of().joint.safety.against_yield);
        constexpr flags<press_doubt> tight = press_doubt::hub_past_elastic_limit |
                                             press_doubt::shaft_past_elastic_limit | press_doubt::may_crack |
                                             press_doubt::below_wished_safety;
        constexpr flags<press_doubt> not_known = // a part that creeps or softens lets go some day
            press_doubt::hub_strength_not_known | press_doubt::shaft_strength_not_known |
            press_doubt::creeps | press_doubt::hotter_than_allowed;
        e.too_tight = doubts.contains_any(tight);
        if (e.too_tight || doubts.contains(press_doubt::cup_wall_yields)) e.holds = holding::no;
        else if (e.holds == holding::yes && doubts.contains_any(not_known)) e.holds = holding::cannot_tell;
    }
    [[nodiscard]] want_at_end moves(const result<press_result>& r) const noexcept {
        if (!r) return {.holds = holding::cannot_tell};
        want_at_end e{.holds = r->holds()};
        e.too_loose = e.holds != holding::yes;
        for (const pressed_state* s : {&r->at_20, &r->in_service})
            take(e, s->load_margin.least - of().joint.safety.against_slipping);
        bear(e, *r, r->doubts);
        return e;
    }
    [[nodiscard]] want_at_end seals(const result<plug_result>& r) const noexcept {
        if (!r) return {.holds = holding::cannot_tell};
        want_at_end e{.holds = r->holds()};
        e.too_loose = e.holds != holding::yes;
        for (const plug_state* s : {&r->at_20, &r->in_service}) {
            take(e, s->grip_margin.least - duty().safety);
            take(e, s->seal_margin.least - duty().safety);
        }
        bear(e, r->pressed, r->doubts);
        return e;
    }
    [[nodiscard]] want_at_end in_the_press(const exact_pair& p) const noexcept {
        const diametral_interference i(-p.clearance());
        const auto r = press(joint_of({i, i}, nullptr));
        if (!r) return {.holds = holding::cannot_tell};
        const double left = of().joint.press_at_most.value() - r->press_in_force.value();
        return {.holds = left >= 0 ? holding::yes : holding::no, .margin = left, .too_tight = left < 0};
    }
};

} // namespace fitwright::detail

#endif
