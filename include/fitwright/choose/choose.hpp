#ifndef FITWRIGHT_CHOOSE_CHOOSE_HPP
#define FITWRIGHT_CHOOSE_CHOOSE_HPP

#include <fitwright/choose/choose_answer.hpp>

// The way back: from what a pair must do to the pairs that do it.

namespace fitwright {

/// The best candidates, the best first, at most `Capacity`. If the first does not hold all wants, none that
/// was looked at does: it is the best compromise, and says what stops it.
template <std::size_t Capacity> class choices {
public:
    [[nodiscard]] std::size_t size() const noexcept { return size_; }
    [[nodiscard]] bool empty() const noexcept { return size_ == 0; }
    [[nodiscard]] const candidate* begin() const noexcept { return list_; }
    [[nodiscard]] const candidate* end() const noexcept { return list_ + size_; }
    const candidate& operator[](std::size_t i) const noexcept { return list_[i]; }
    /// The first.
    [[nodiscard]] const candidate& best() const noexcept { return list_[0]; }

    /// Whether there is one that holds all wants.
    [[nodiscard]] bool hold_all() const noexcept { return best().holds_all(); }
    /// The clearance at 20 °C that all wants together allow, to be taken as a guide; crossed if they
    /// contradict each other.
    [[nodiscard]] clearance_window allowed() const noexcept { return allowed_; }

    /// For `choose` itself: one more behind the others.
    void add(const candidate& c) noexcept { list_[size_++] = c; }
    /// For `choose` itself.
    void allow(clearance_window all_together) noexcept { allowed_ = all_together; }

private:
    candidate list_[Capacity];
    std::size_t size_ = 0;
    clearance_window allowed_;
};

/// A pair that is given, held against all that is wanted: a call-out on a drawing, parts as they are. The
/// answer is a candidate's; nothing is chosen.
/// Error: a part the wrong way round or more than an eighth off the nominal size; as of `choose`.
[[nodiscard]] inline result<candidate> held_against(const wants& w, const fit& given) noexcept {
    const detail::want_judge judge(w);
    if (const auto can = detail::check(judge); !can) return can.error();
    if (const auto can = detail::check_given(w, given); !can) return can.error();
    const detail::want_windows windows = detail::window_search(judge).find();
    return detail::choice_answer(judge, windows, false)
        .of({.sizes = given,
             .hole = detail::class_of(given.hole(), w.nominal, preferred_hole_classes()),
             .shaft = detail::class_of(given.shaft(), w.nominal, preferred_shaft_classes())});
}

/// What to make for all that is wanted of a pair: candidates, the best first, each judged at its tightest and
/// its loosest and in every state, with film, leak, pressing, tools, gauge and readings where they are asked
/// for.
///
/// With nothing leading: all preferred fits, the best other pairs of classes up to IT11, and what each reamer
/// or half-round bit of the drawer cuts, with a shaft to go with it. With one part there: the classes that
/// come nearest for the other, and limits of its own that use all the clearance there is (inwards to a
/// micrometre; IT9 wide where no want bounds them). Not looked at: two parts both without a class.
///
/// First come those that hold all wants at both ends, else those that break the fewest by least; then those
/// that the drawer makes, if there is one; then preferred fits and preferred classes; then the widest
/// tolerances, then the middle of what is allowed, or the least play where that is open. A want of which it
/// can't be told whether it holds counts as broken.
/// Error: nothing wanted; a want without its figure (it is named); a lead that can't be used; a leaking gap of
/// another diameter; an uncertainty wider than the part; a size outside ISO 286; no pair as coarse as the shop
/// needs; whatever the rooms that are asked refuse, clearance aside.
template <std::size_t Capacity = 4> [[nodiscard]] result<choices<Capacity>> choose(const wants& w) noexcept {
    static_assert(Capacity > 0);
    const detail::want_judge judge(w);
    if (const auto can = detail::check(judge); !can) return can.error();
    const detail::want_windows windows = detail::window_search(judge).find();
    detail::choice_seed room[Capacity];
    detail::choice_search search(judge, windows, room, Capacity);
    search.find();
    if (search.size() == 0)
        return error::composer(error_code::nothing_to_choose_from)
               << "no pair of classes at " << written(w.nominal).view() << " mm as coarse as IT"
               << w.finest.name() << "; allowed: a finer grade as the finest that the shop holds";
    choices<Capacity> found;
    found.allow(windows.all);
    const bool one_could_lead = room[0].broken > 0 && detail::choice_answer::has_room_for_one(w, windows);
    const detail::choice_answer answer(judge, windows, one_could_lead);
    for (std::size_t i = 0; i < search.size(); ++i) found.add(answer.of(room[i]));
    return found;
}

} // namespace fitwright

#endif
