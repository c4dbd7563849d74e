#ifndef FITWRIGHT_CHOOSE_CHOOSE_SEARCH_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_SEARCH_HPP

#include <fitwright/choose/choose_mates.hpp>
#include <fitwright/choose/choose_window.hpp>
#include <fitwright/choose/fits_within.hpp>
#include <fitwright/grid.hpp>
#include <fitwright/tool/plan_hole.hpp>

// Which pairs are looked at, and which of them are kept. Each is judged at both ends by the functions that
// answer the questions; nothing is kept for lying in a window alone.

namespace fitwright::detail {

/// A pair that is looked at, and what it is ranked by.
struct choice_seed {
    fit sizes{{}, {}};
    class_choice<side::hole> hole;
    class_choice<side::shaft> shaft;
    pair_rank rank = pair_rank::any;
    int broken = 0;  ///< wants that don't hold, or of which that can't be told
    length off = {}; ///< the furthest of them
    bool has_no_plan = false;
    length finer = {}; ///< the tolerance of the part that is harder to make
    length wider = {};
    length off_middle = {}; ///< of what all wants allow

    /// First what holds all, or breaks the fewest wants by least; then what the drawer makes; then preferred
    /// fits; then the widest tolerances; then the middle, or the least play.
    [[nodiscard]] constexpr bool is_better_than(const choice_seed& o) const noexcept {
        if (broken != o.broken) return broken < o.broken;
        if (off != o.off) return off < o.off;
        if (has_no_plan != o.has_no_plan) return o.has_no_plan;
        if (rank != o.rank) return rank < o.rank;
        if (finer != o.finer) return finer > o.finer;
        if (wider != o.wider) return wider > o.wider;
        return off_middle < o.off_middle;
    }
};

/// The best seeds, the best first, in a room of the caller's.
class choice_search {
public:
    choice_search(const want_judge& judge, const want_windows& windows, choice_seed* room,
                  std::size_t capacity) noexcept
        : judge_(judge), windows_(windows), kept_(room), capacity_(capacity) {}

    [[nodiscard]] std::size_t size() const noexcept { return size_; }

    void find() noexcept {
        const wants& w = judge_.of();
        if (w.leads.decides_hole()) return look_for_shafts(leading_hole(w));
        if (w.leads.decides_shaft()) return look_for_holes(w.leads.shaft());
        const letter_set uncertain = uncertain_at(range_of(w.nominal));
        for (const basis b : {basis::hole, basis::shaft})
            for (const class_pair p : preferred_fits(b))
                if (p.hole.grade >= w.finest && p.shaft.grade >= w.finest)
                    look_at_classes(p, rank_of(p, uncertain));
        auto more = fits_within<16>(w.nominal, window_to_search(),
                                    {.finest = w.finest, .coarsest = coarsest_for_fits(w.finest)});
        if (!more || !more->lie_within()) // as a compromise nobody grinds to IT01
            more = fits_within<16>(w.nominal, window_to_search(),
                                   {.pairs = pair_choice::preferred_classes,
                                    .finest = w.finest,
                                    .coarsest = coarsest_for_fits(w.finest)});
        if (more)
            for (const found_fit& f : *more)
                if (const pair_rank rank = rank_of(f.classes, uncertain); rank != pair_rank::preferred_fit)
                    look_at_classes(f.classes, rank);
        for (const drawer_tool& t : w.drawer)
            if (t.is_reamer() || is_half_round(t)) look_at_tool(t);
    }

private:
    /// Where nothing is left between the wants, halfway between them.
    [[nodiscard]] clearance_window window_to_search() const noexcept {
        const clearance_window all = windows_.all;
        if (all.least <= all.most) return all;
        const length middle = (all.least + all.most) / 2;
        return {middle, middle};
    }

    void look_at_classes(class_pair p, pair_rank rank) noexcept {
        if (const auto f = limits(judge_.of().nominal, p))
            look_at({.sizes = *f, .hole = p.hole, .shaft = p.shaft, .rank = rank});
    }

    /// What a tool of the drawer cuts, if that is near the nominal size and sure.
    void look_at_tool(const drawer_tool& t) noexcept {
        const length nominal = judge_.of().nominal;
        const expected_hole cut = made_by(t, {}, judge_.of().hole_made_of);
        const length apart = cut.mean() > nominal ? cut.mean() - nominal : nominal - cut.mean();
        if (apart * 50 > nominal || !is_sure(cut)) return;
        look_for_shafts(
            hole_limits(cut.least(), {.upper = cut.most() - cut.least(), .lower = length()}, cut.origin()));
    }

    void look_for_shafts(const hole_limits& hole) noexcept {
        const auto class_of_it = class_of(hole, judge_.of().nominal, preferred_hole_classes());
        const auto with = [&](const shaft_limits& s, class_choice<side::shaft> c, pair_rank rank) {
            look_at({.sizes = {hole, s}, .hole = class_of_it, .shaft = c, .rank = rank});
        };
        const mates_wanted wanted{judge_.of().nominal, judge_.of().finest, window_to_search()};
        for (const auto& m : nearest_mates<side::shaft>(wanted, hole, class_of_it))
            with(m.limits, m.of, m.rank);
        const measured_hole as_measured(hole.middle(), half_of(hole.tolerance()));
        if (const auto s = shaft_for(as_measured, bounded_window(hole.tolerance())))
            look_at_own(*s, [&](const shaft_limits& own) { with(own, {}, pair_rank::on_a_basis); });
    }
    void look_for_holes(const shaft_limits& shaft) noexcept {
        const auto class_of_it = class_of(shaft, judge_.of().nominal, preferred_shaft_classes());
        const auto with = [&](const hole_limits& h, class_choice<side::hole> c, pair_rank rank) {
            look_at({.sizes = {h, shaft}, .hole = c, .shaft = class_of_it, .rank = rank});
        };
        const mates_wanted wanted{judge_.of().nominal, judge_.of().finest, window_to_search()};
        for (const auto& m : nearest_mates<side::hole>(wanted, shaft, class_of_it))
            with(m.limits, m.of, m.rank);
        const clearance_window w = bounded_window(shaft.tolerance());
        const measured_shaft as_measured(shaft.middle(), half_of(shaft.tolerance()));
        if (const auto h = bore_for(as_measured, w))
            look_at_own(*h, [&](const hole_limits& own) { with(own, {}, pair_rank::on_a_basis); });
        for (const drawer_tool& t : judge_.of().drawer) {
            if (!t.is_reamer() && !is_half_round(t)) continue;
            const expected_hole cut = made_by(t, {}, judge_.of().hole_made_of);
            if (!is_sure(cut) || cut.least() - shaft.upper_limit() < w.least ||
                cut.most() - shaft.lower_limit() > w.most)
                continue;
            with({cut.least(), {.upper = cut.most() - cut.least(), .lower = length()}, cut.origin()}, {},
                 pair_rank::on_a_basis);
        }
    }

    static constexpr length micrometre_step = length::from_nanometres(1000);

    [[nodiscard]] static constexpr length half_of(length tolerance) noexcept {
        return length::from_nanometres((tolerance.nanometres() + 1) / 2);
    }
    [[nodiscard]] bool can_be_made(length tolerance) const noexcept {
        const auto finest = standard_tolerance(judge_.of().nominal, judge_.of().finest);
        return judge_.of().finest == grade::it01 ? tolerance > length() : finest && tolerance >= *finest;
    }
    /// Limits of no class, to whole micrometres where there is room for it.
    template <side Side, class LookAt>
    void look_at_own(const size_limits<Side>& own, LookAt look_at) const noexcept {
        const auto rounded = rounded_inwards(own, micrometre_step);
        if (rounded && can_be_made(rounded->tolerance())) look_at(*rounded);
        else if (can_be_made(own.tolerance())) look_at(own);
    }
    /// A side that no want bounds is closed so that the part that is made has IT9; crossed without any bound.
    [[nodiscard]] clearance_window bounded_window(length of_lead) const noexcept {
        const length wide = standard_tolerance(judge_.of().nominal, grade::it9).value_or(length()) + of_lead;
        clearance_window w = windows_.all;
        if (w.most == no_bound && w.least == -no_bound) return {w.most, w.least};
        if (w.most == no_bound) w.most = lesser(w.most, w.least + wide);
        else if (w.least == -no_bound) w.least = greater(w.least, w.most - wide);
        return w;
    }

    /// Judges a pair and keeps it if it is among the best.
    void look_at(choice_seed s) noexcept {
        const lead_kind lead = judge_.of().leads.kind();
        const bool has_hole = judge_.of().leads.decides_hole();
        const length of_hole = has_hole ? s.sizes.shaft().tolerance() : s.sizes.hole().tolerance();
        const length of_shaft =
            judge_.of().leads.decides_shaft() ? s.sizes.hole().tolerance() : s.sizes.shaft().tolerance();
        s.finer = lesser(of_hole, of_shaft);
        s.wider = greater(of_hole, of_shaft);
        s.off_middle = off_middle(s.sizes, windows_.all);
        if (can_not_enter(s)) return;
        const exact_pair tight = exact_pair::tightest_of(s.sizes);
        const exact_pair loose = exact_pair::loosest_of(s.sizes);
        const clearances_of_pair at_tight = judge_.clearances(tight.as_fit());
        const clearances_of_pair at_loose = judge_.clearances(loose.as_fit());
        const auto ask = [&](want w) {
            if (judge_.judge(w, tight, at_tight).holds == holding::yes &&
                judge_.judge(w, loose, at_loose).holds == holding::yes)
                return;
            ++s.broken;
            s.off = greater(s.off, windows_.off(w, s.sizes));
        };
        for (const want w : judge_.of().must)
            if (w != want::runs_on_oil) ask(w);
        if (can_not_enter(s)) return; // before the dear one is asked
        if (judge_.of().must.contains(want::runs_on_oil)) ask(want::runs_on_oil);
        if (!judge_.of().drawer.empty() && lead != lead_kind::drawn_hole && lead != lead_kind::found_hole)
            s.has_no_plan = !has_plan(s.sizes.hole());
        keep(s);
    }
    [[nodiscard]] bool can_not_enter(const choice_seed& s) const noexcept {
        return size_ == capacity_ && !s.is_better_than(kept_[size_ - 1]);
    }
    [[nodiscard]] bool has_plan(const hole_limits& hole) noexcept {
        if (!(hole == planned_)) {
            planned_ = hole;
            planned_well_ = plan_hole(hole, judge_.of().drawer, judge_.of().hole_made_of).has_value();
        }
        return planned_well_;
    }
    void keep(const choice_seed& s) noexcept {
        for (std::size_t i = 0; i < size_; ++i) // some preferred fits are of both bases
            if (kept_[i].sizes == s.sizes) return;
        std::size_t at = size_;
        while (at > 0 && s.is_better_than(kept_[at - 1])) --at;
        if (at == capacity_) return;
        if (size_ < capacity_) ++size_;
        for (std::size_t i = size_ - 1; i > at; --i) kept_[i] = kept_[i - 1];
        kept_[at] = s;
    }

    const want_judge& judge_;
    const want_windows& windows_;
    choice_seed* kept_;
    std::size_t capacity_;
    std::size_t size_ = 0;
    hole_limits planned_;
    bool planned_well_ = false;
};

} // namespace fitwright::detail

#endif
