#ifndef FITWRIGHT_CHOOSE_CHOOSE_MATES_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_MATES_HPP

#include <fitwright/choose/choose_questions.hpp>
#include <fitwright/choose/fits_within.hpp>

// One part is decided: the standard classes that come nearest to what the other is to be.

namespace fitwright::detail {

template <side Side> inline constexpr side other_side = Side == side::hole ? side::shaft : side::hole;

/// The preferred class that limits are of.
template <side Side>
[[nodiscard]] constexpr class_choice<Side> class_of(const size_limits<Side>& l, length nominal,
                                                    rows<tolerance_class<Side>> classes) noexcept {
    for (const tolerance_class<Side> c : classes)
        if (const auto known = limits(nominal, c); known && *known == l) return c;
    return {};
}

/// Grades beyond IT11 are for rough work, not for fits (ISO 286-1 prefers none for them).
[[nodiscard]] constexpr grade coarsest_for_fits(grade finest) noexcept {
    return finest > grade::it11 ? finest : grade::it11;
}

struct mates_wanted {
    length nominal;
    grade finest;
    clearance_window clearance;
};

/// How far a fit lies from the middle of a window, twice; where the window is open on a side, the greatest
/// clearance or interference.
[[nodiscard]] constexpr length off_middle(const fit& f, clearance_window w) noexcept {
    const bool is_open = w.least == -no_bound || w.most == no_bound;
    if (is_open) return greater(f.max_clearance(), -f.min_clearance());
    const length off = f.min_clearance() + f.max_clearance() - w.least - w.most;
    return greater(off, -off);
}

/// A class, and by how much it leaves the window of clearance with the part that leads.
template <side Side> struct mate_of_class {
    size_limits<Side> limits;
    class_choice<Side> of;
    pair_rank rank = pair_rank::any;
    length off;
    length off_middle;

    [[nodiscard]] constexpr bool is_better_than(const mate_of_class& m) const noexcept {
        if (off != m.off) return off < m.off;
        if (rank != m.rank) return rank < m.rank;
        if (limits.tolerance() != m.limits.tolerance()) return limits.tolerance() > m.limits.tolerance();
        return off_middle < m.off_middle;
    }
};

/// The dozen that is nearest, the nearest first.
template <side Side> class mates_of_classes {
public:
    [[nodiscard]] constexpr const mate_of_class<Side>* begin() const noexcept { return best_; }
    [[nodiscard]] constexpr const mate_of_class<Side>* end() const noexcept { return best_ + size_; }

    constexpr void add(const mate_of_class<Side>& m) noexcept {
        std::size_t at = size_;
        while (at > 0 && m.is_better_than(best_[at - 1])) --at;
        if (at == capacity) return;
        if (size_ < capacity) ++size_;
        for (std::size_t i = size_ - 1; i > at; --i) best_[i] = best_[i - 1];
        best_[at] = m;
    }

private:
    static constexpr std::size_t capacity = 12;
    mate_of_class<Side> best_[capacity];
    std::size_t size_ = 0;
};

/// With a part of no class a preferred class is worth as much as two that make no preferred fit.
template <side Side>
[[nodiscard]] constexpr pair_rank rank_with(class_choice<other_side<Side>> lead, tolerance_class<Side> mate,
                                            letter_set uncertain) noexcept {
    if ((set_of(mate.position) & uncertain) != 0) return pair_rank::not_in_print;
    if (!lead.is_given()) return is_preferred(mate) ? pair_rank::preferred_classes : pair_rank::any;
    if constexpr (Side == side::hole) return rank_of({mate, lead.given()}, uncertain);
    else return rank_of({lead.given(), mate}, uncertain);
}

[[nodiscard]] constexpr fit pair_of(const hole_limits& h, const shaft_limits& s) noexcept { return {h, s}; }
[[nodiscard]] constexpr fit pair_of(const shaft_limits& s, const hole_limits& h) noexcept { return {h, s}; }

/// The classes of one part that come nearest to a window of clearance with the other; of as near ones the
/// preferred, then the widest, then those nearest the middle, or with the least
/// play.
template <side Side>
[[nodiscard]] constexpr mates_of_classes<Side>
nearest_mates(const mates_wanted& wanted, const size_limits<other_side<Side>>& lead,
              class_choice<other_side<Side>> of_lead) noexcept {
    mates_of_classes<Side> found;
    const letter_set uncertain = uncertain_at(range_of(wanted.nominal));
    for (int p = 0; p < position_count; ++p)
        for (int step = wanted.finest.step(); step <= coarsest_for_fits(wanted.finest).step(); ++step) {
            const tolerance_class<Side> c{static_cast<position>(p), grade::from_step(step)};
            if (!has_value_at(wanted.nominal, c)) continue;
            const size_limits<Side> l = *limits(wanted.nominal, c);
            const fit f = pair_of(l, lead);
            const length tight = wanted.clearance.least - f.min_clearance();
            const length loose = f.max_clearance() - wanted.clearance.most;
            const length off = greater(length(), greater(tight, loose));
            if (off > length() && c.grade < grade::it5) continue; // as a compromise nobody grinds to IT01
            found.add(
                {l, c, rank_with<Side>(of_lead, c, uncertain), off, detail::off_middle(f, wanted.clearance)});
        }
    return found;
}

} // namespace fitwright::detail

#endif
