#ifndef FITWRIGHT_CHOOSE_SOLD_REAMERS_HPP
#define FITWRIGHT_CHOOSE_SOLD_REAMERS_HPP

#include <fitwright/choose/next_reamer.hpp>

// The reamers that can be bought off the shelf: which of them do for a bore.

namespace fitwright {

/// The reamers off the shelf that do for a bore, the surest first: the one with the most room to both limits.
/// Holds the eight surest; a bore so wide that more of them do is none that is reamed.
class sold_reamers {
public:
    static constexpr std::size_t capacity = 8; ///< how many there can be at most

    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr const reamer_choice* begin() const noexcept { return choices_; }
    [[nodiscard]] constexpr const reamer_choice* end() const noexcept { return choices_ + size_; }
    constexpr const reamer_choice& operator[](std::size_t i) const noexcept { return choices_[i]; }

    /// The document that the diameters come from; the limits are those of DIN 1420.
    [[nodiscard]] constexpr const source& origin() const noexcept { return sources::hand_reamer_diameters; }

    /// Puts one in its place; where there are more than eight the least sure goes.
    constexpr void add(const reamer_choice& one) noexcept {
        std::size_t place = size_;
        while (place > 0 && choices_[place - 1].margin < one.margin) --place;
        if (place == capacity) return;
        if (size_ < capacity) ++size_;
        for (std::size_t i = size_ - 1; i > place; --i) choices_[i] = choices_[i - 1];
        choices_[place] = one;
    }

private:
    reamer_choice choices_[capacity];
    std::size_t size_ = 0;
};

/// The hand reamers off the shelf that surely cut a bore, each with the hole it is expected to cut: also for
/// limits without a class, such as those of `bore_for`. Searched are the diameters of `hand_reamer_diameters`
/// (from memory), as sold for H7 by DIN 1420.
/// Error: none does; says by how much the nearest misses, and what to have made.
[[nodiscard]] constexpr result<sold_reamers> sold_reamers_for(const hole_limits& bore,
                                                              work_material material) noexcept {
    sold_reamers found;
    reamer_choice nearest;
    for (const length diameter : hand_reamer_diameters()) {
        reamer_choice one{hand_reamer(diameter, {position::h, grade::it7})};
        one.hole = reamed_hole(one.tool.reamer(), material);
        one.margin = detail::room_to_limits(bore, one.hole);
        if (one.margin >= length()) found.add(one);
        if (nearest.tool.kind == tool_kind::none || one.margin > nearest.margin) nearest = one;
    }
    if (found.size() > 0) return found;
    return detail::no_reamer_does(bore, &nearest.tool, -nearest.margin);
}

} // namespace fitwright

#endif
