#ifndef FITWRIGHT_CHOOSE_FITS_WITHIN_SEARCH_HPP
#define FITWRIGHT_CHOOSE_FITS_WITHIN_SEARCH_HPP

#include <fitwright/choose/fits_within_tables.hpp>

// How to look at every pair of classes without looking at every pair.
//
// All classes of a grade have the same tolerance. For one grade of the hole and one of the shaft the
// clearances of a pair then hang on one number, how far the hole's lower deviation lies above the
// shaft's, and the window is a range of it. With the classes of each grade sorted by their lower
// deviation, the shafts that go with a hole stand side by side, and two fingers that only move up find
// them for one hole after the other: 400 pairs of grades times 28 and 28 letters, in place of 560 times
// 560 pairs; and grades that are too wide together for the window cost nothing.

namespace fitwright::detail {

/// A grade of the hole and a grade of the shaft, by their steps.
struct grade_pair {
    int hole;
    int shaft;

    /// The place in the order from the cheapest: the finer of the two grades as wide as can be, then the
    /// other; at last the hole as the coarser, since it is the harder to make. From 0 to 799.
    [[nodiscard]] constexpr int order() const noexcept {
        constexpr int last = grade::count - 1;
        const int finer = hole < shaft ? hole : shaft;
        const int coarser = hole < shaft ? shaft : hole;
        return ((last - finer) * grade::count + (last - coarser)) * 2 + (hole < shaft ? 1 : 0);
    }
};

/// Calls `use` with every pair of grades in that order, until it says to stop.
template <class Use> constexpr void from_the_widest(Use use) {
    for (int finer = grade::count - 1; finer >= 0; --finer)
        for (int coarser = grade::count - 1; coarser >= finer; --coarser) {
            if (use(grade_pair{.hole = coarser, .shaft = finer})) return;
            if (coarser != finer && use(grade_pair{.hole = finer, .shaft = coarser})) return;
        }
}

/// Calls `use` with each hole of a grade and the run of shafts, `first` up to before `last`, whose clearance
/// with it sticks out of the window by no more than `miss`, in nanometres.
template <class Use>
constexpr void for_each_run(const class_table& holes, const class_table& shafts, grade_pair g,
                            clearance_window w, std::int64_t miss, Use use) {
    const std::int64_t least = w.least.nanometres() - miss + shafts.tolerance[g.shaft];
    const std::int64_t most = w.most.nanometres() + miss - holes.tolerance[g.hole];
    if (least > most) return;
    const class_table::row* const shaft = shafts.rows[g.shaft];
    const int shaft_count = shafts.size[g.shaft];
    int first = 0;
    int last = 0;
    for (int h = 0; h < holes.size[g.hole]; ++h) {
        const class_table::row& hole = holes.rows[g.hole][h];
        while (first < shaft_count && shaft[first].lower < hole.lower - most) ++first;
        while (last < shaft_count && shaft[last].lower <= hole.lower - least) ++last;
        if (first < last) use(hole, shaft + first, shaft + last);
    }
}

/// A pair on its way into the list.
struct pair_candidate {
    bool is_fine_miss = false; ///< sticks out, though it has a grade finer than IT6
    std::int64_t miss = 0;
    std::int64_t off_middle = 0; ///< from the middle of the window to that of the clearance; twice
    pair_rank rank = pair_rank::any;
    int order = 0; ///< of its grades
    class_pair classes = {{position::h, grade::it7}, {position::h, grade::it6}};

    /// The better of two.
    [[nodiscard]] constexpr bool is_before(const pair_candidate& c) const noexcept {
        if (is_fine_miss != c.is_fine_miss) return c.is_fine_miss;
        if (miss != c.miss) return miss < c.miss;
        if (rank != c.rank) return rank < c.rank;
        if (order != c.order) return order < c.order;
        const bool hole_basis = classes.hole.position == position::h;
        if (hole_basis != (c.classes.hole.position == position::h)) return hole_basis;
        if (off_middle != c.off_middle) return off_middle < c.off_middle;
        if (classes.hole.position != c.classes.hole.position)
            return classes.hole.position < c.classes.hole.position;
        return classes.shaft.position < c.classes.shaft.position;
    }

    /// True if no pair of that rank and those grades within the window comes before this one.
    [[nodiscard]] constexpr bool is_before_all(pair_rank r, grade_pair g) const noexcept {
        return rank != r ? rank < r : order < g.order();
    }
};

/// The best so far, in somebody else's room.
class best_candidates {
public:
    constexpr best_candidates(pair_candidate* room, std::size_t capacity) noexcept
        : room_(room), capacity_(capacity) {}

    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr bool is_full() const noexcept { return size_ == capacity_; }
    [[nodiscard]] constexpr const pair_candidate& worst() const noexcept { return room_[size_ - 1]; }
    [[nodiscard]] constexpr const pair_candidate& operator[](std::size_t i) const noexcept {
        return room_[i];
    }

    constexpr void consider(const pair_candidate& c) noexcept {
        if (is_full() && !c.is_before(worst())) return;
        std::size_t i = is_full() ? size_ - 1 : size_++;
        for (; i > 0 && c.is_before(room_[i - 1]); --i) room_[i] = room_[i - 1];
        room_[i] = c;
    }

private:
    pair_candidate* room_;
    std::size_t capacity_;
    std::size_t size_ = 0;
};

/// The search at one nominal size.
class fit_search {
public:
    constexpr fit_search(length nominal, clearance_window w, const fit_options& options) noexcept
        : holes_(tabulated<side::hole>(nominal, options)),
          shafts_(tabulated<side::shaft>(nominal, options)),
          window_(w),
          worst_(worst_rank(options.pairs)),
          uncertain_(uncertain_at(range_of(nominal))) {}

    struct tally {
        std::size_t total;
        int widest; ///< `grade_pair::order` of the first grades that have any
    };

    /// How many pairs lie within the window.
    [[nodiscard]] constexpr tally count() const noexcept {
        tally t{0, -1};
        from_the_widest([&](grade_pair g) {
            for_each_run(holes_, shafts_, g, window_, 0,
                         [&](const row& hole, const row* first, const row* last) {
                             if (worst_ == pair_rank::not_in_print) {
                                 t.total += static_cast<std::size_t>(last - first);
                                 return;
                             }
                             for (; first != last; ++first)
                                 if (rank_of(pair_of(g, hole, *first), uncertain_) <= worst_) ++t.total;
                         });
            if (t.widest < 0 && t.total > 0) t.widest = g.order();
            return false;
        });
        return t;
    }

    /// The best of them. Rank by rank, so that the many pairs without one are only looked at if the list has
    /// room for them.
    constexpr void collect(best_candidates& best) const noexcept {
        const preferred_marks& m = preferred_marked;
        const class_table holes =
            holes_.only([&](int step, position p) { return (m.any_hole[step] & set_of(p)) != 0; });
        const class_table shafts =
            shafts_.only([&](int step, position p) { return (m.any_shaft[step] & set_of(p)) != 0; });
        collect(best, pair_rank::preferred_fit, holes, shafts);
        collect(best, pair_rank::preferred_on_a_basis, holes, shafts);
        collect(best, pair_rank::preferred_classes, holes, shafts);
        if (best.is_full() || worst_ <= pair_rank::preferred_classes) return;
        const auto is_basis = [](int, position p) { return p == position::h; };
        const auto is_other = [](int, position p) { return p != position::h; };
        collect(best, pair_rank::on_a_basis, holes_.only(is_basis), shafts_);
        collect(best, pair_rank::on_a_basis, holes_.only(is_other), shafts_.only(is_basis));
        collect(best, pair_rank::any, holes_, shafts_);
        collect(best, pair_rank::not_in_print, holes_, shafts_);
    }

    /// Where none lies within: those that stick out by least. First of the grades that a lathe and a reamer
    /// make; the finest of all stick out least, and are the last that anybody wants to make.
    constexpr void collect_misses(best_candidates& best) const noexcept {
        collect_misses(best, false);
        if (!best.is_full()) collect_misses(best, true);
    }

private:
    using row = class_table::row;

    [[nodiscard]] static constexpr class_pair pair_of(grade_pair g, const row& hole,
                                                      const row& shaft) noexcept {
        return {{hole.position, grade::from_step(g.hole)}, {shaft.position, grade::from_step(g.shaft)}};
    }

    /// Calls `use(pair_candidate)` with each pair that sticks out by no more than `miss`.
    template <class Use>
    constexpr void visit(grade_pair g, const class_table& holes, const class_table& shafts, std::int64_t miss,
                         Use use) const {
        for_each_run(
            holes, shafts, g, window_, miss, [&](const row& hole, const row* first, const row* last) {
                for (; first != last; ++first) {
                    const class_pair classes = pair_of(g, hole, *first);
                    const std::int64_t above = hole.lower - first->lower;
                    const std::int64_t tight =
                        window_.least.nanometres() - (above - shafts.tolerance[g.shaft]);
                    const std::int64_t loose = above + holes.tolerance[g.hole] - window_.most.nanometres();
                    const std::int64_t sticks_out = tight > loose ? tight : loose;
                    const std::int64_t off = tight > loose ? tight - loose : loose - tight;
                    use(pair_candidate{false, sticks_out > 0 ? sticks_out : 0, off,
                                       rank_of(classes, uncertain_), g.order(), classes});
                }
            });
    }

    constexpr void collect_misses(best_candidates& best, bool fine) const noexcept {
        constexpr std::int64_t any_miss = 1'000'000'000'000;
        for (int hole = 0; hole < grade::count; ++hole)
            for (int shaft = 0; shaft < grade::count; ++shaft) {
                if (fine != (hole < grade::it6.step() || shaft < grade::it6.step())) continue;
                const std::int64_t miss = best.is_full() ? best.worst().miss : any_miss;
                visit({hole, shaft}, holes_, shafts_, miss, [&](pair_candidate c) {
                    c.is_fine_miss = fine;
                    if (c.rank <= worst_) best.consider(c);
                });
            }
    }

    constexpr void collect(best_candidates& best, pair_rank wanted, const class_table& holes,
                           const class_table& shafts) const noexcept {
        if (wanted > worst_) return;
        from_the_widest([&](grade_pair g) {
            if (best.is_full() && best.worst().is_before_all(wanted, g)) return true;
            visit(g, holes, shafts, 0, [&](const pair_candidate& c) {
                if (c.rank == wanted) best.consider(c);
            });
            return false;
        });
    }

    class_table holes_;
    class_table shafts_;
    clearance_window window_;
    pair_rank worst_;
    letter_set uncertain_;
};

} // namespace fitwright::detail

#endif
