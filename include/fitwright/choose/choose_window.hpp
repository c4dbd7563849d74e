#ifndef FITWRIGHT_CHOOSE_CHOOSE_WINDOW_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_WINDOW_HPP

#include <fitwright/choose/choose_check.hpp>

// Which clearance at 20 °C each want allows, found by asking it: halving between too tight and too loose. It
// shows where to look for a pair, and says how far a pair is off; whether a pair does is asked of the pair.

namespace fitwright::detail {

/// What each want allows, and all of them together; crossed where that is nothing.
struct want_windows {
    clearance_window of[want_count] = {}; ///< by the bit of the want
    clearance_window all = {};

    [[nodiscard]] static constexpr int place_of(want w) noexcept {
        int place = 0;
        while ((static_cast<unsigned>(w) >> place) > 1) ++place;
        return place;
    }
    [[nodiscard]] constexpr clearance_window allowed_by(want w) const noexcept { return of[place_of(w)]; }
    /// By how much a pair's clearance lies outside of what a want allows.
    [[nodiscard]] constexpr length off(want w, const fit& f) const noexcept {
        const clearance_window allowed = allowed_by(w);
        return greater(length(),
                       greater(allowed.least - f.min_clearance(), f.max_clearance() - allowed.most));
    }
};

class window_search {
public:
    explicit window_search(const want_judge& judge) noexcept
        : judge_(judge), span_(farthest_clearance(judge.of().nominal)), base_(base_of(judge.of())) {}

    [[nodiscard]] want_windows find() const noexcept {
        want_windows found;
        found.all = {-no_bound, no_bound};
        const auto take = [&](want w, clearance_window allowed) {
            found.of[want_windows::place_of(w)] = allowed;
            found.all = {greater(found.all.least, allowed.least), lesser(found.all.most, allowed.most)};
        };
        for (const want w : judge_.of().must)
            if (w != want::runs_on_oil) take(w, {least_of(w), most_of(w)});
        if (judge_.of().must.contains(want::runs_on_oil)) take(want::runs_on_oil, film_window(found.all));
        return found;
    }

private:
    /// The parts lie about the one that leads, so that they grow as it does.
    [[nodiscard]] static exact_pair base_of(const wants& w) noexcept {
        if (w.leads.decides_hole()) return {leading_hole(w).middle(), length()};
        if (w.leads.decides_shaft()) return {length(), w.leads.shaft().middle()};
        return {w.nominal, length()};
    }
    [[nodiscard]] exact_pair pair(length clearance) const noexcept {
        if (base_.hole > length()) return {base_.hole, base_.hole - clearance};
        return {base_.shaft + clearance, base_.shaft};
    }

    [[nodiscard]] length least_of(want w) const noexcept {
        const auto is_too_tight = [&](length c) { return judge_.judge(w, pair(c)).too_tight; };
        if (!is_too_tight(-span_)) return -no_bound;
        return border(-span_, span_, is_too_tight).most;
    }
    [[nodiscard]] length most_of(want w) const noexcept {
        const auto is_too_loose = [&](length c) { return judge_.judge(w, pair(c)).too_loose; };
        if (!is_too_loose(span_)) return no_bound;
        return border(-span_, span_, [&](length c) { return !is_too_loose(c); }).least;
    }
    /// The neighbours between which `is_before` turns from true to false.
    template <class IsBefore>
    [[nodiscard]] static clearance_window border(length before, length behind, IsBefore is_before) noexcept {
        const length nanometre_step = length::from_nanometres(1);
        while (behind - before > nanometre_step) {
            const length between = before + (behind - before) / 2;
            if (is_before(between)) before = between;
            else behind = between;
        }
        return {before, behind};
    }

    /// A film is lost on either side and doesn't say on which, so it is looked for in steps: the longest run
    /// of clearances that have one, the ends of it to a tenth of a micrometre.
    [[nodiscard]] clearance_window film_window(clearance_window within) const noexcept {
        const auto runs = [&](length c) {
            return judge_.judge(want::runs_on_oil, pair(c)).holds == holding::yes;
        };
        constexpr int steps = 24;
        const length widest = lesser(within.most, length::from_nanometres(span_.nanometres() * 2 / 5));
        const length least_step = length::from_nanometres(judge_.of().nominal.nanometres() / 10'000 + 1);
        const length tightest = greater(within.least, least_step);
        if (tightest >= widest) return {widest, tightest};
        const double factor = std::pow(widest.in<metre>() / tightest.in<metre>(), 1.0 / steps);
        length at[steps + 1];
        bool has[steps + 1];
        double c = tightest.in<metre>();
        for (int i = 0; i <= steps; ++i, c *= factor) {
            at[i] = i == steps ? widest : length(quantity<metre>::from_value(c));
            has[i] = runs(at[i]);
        }
        int first = 0;
        int count = 0;
        for (int i = 0, run = 0; i <= steps; ++i) {
            run = has[i] ? run + 1 : 0;
            if (run > count) {
                count = run;
                first = i - run + 1;
            }
        }
        if (count == 0) return {widest, tightest};
        const int last = first + count - 1;
        const length tenth = length::from_nanometres(100);
        const auto edge = [&](length inside, length outside) {
            while ((inside > outside ? inside - outside : outside - inside) > tenth) {
                const length between = inside + (outside - inside) / 2;
                if (runs(between)) inside = between;
                else outside = between;
            }
            return inside;
        };
        return {first > 0 ? edge(at[first], at[first - 1]) : at[first],
                last < steps ? edge(at[last], at[last + 1]) : at[last]};
    }

    const want_judge& judge_;
    length span_;
    exact_pair base_;
};

} // namespace fitwright::detail

#endif
