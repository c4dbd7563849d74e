#ifndef FITWRIGHT_PICTURE_BROKEN_AXIS_HPP
#define FITWRIGHT_PICTURE_BROKEN_AXIS_HPP

#include <fitwright/length.hpp>
#include <fitwright/picture/pixels.hpp>

namespace fitwright::detail::svg {

/// Sizes along a straight line, to scale. Where nothing lies for much longer than all the rest takes, the
/// line is broken, as on a drawing: what lies on either side keeps one scale, the gap is cut short.
class broken_axis {
public:
    /// So many stretches at the most: first all that is to be seen, then `settle`, then `at`.
    static constexpr int capacity = 16;
    /// A gap is broken that is longer than so many times what is left without it.
    static constexpr int too_long = 4;

    /// Something lies here.
    constexpr void occupy(length least, length most) noexcept {
        stretch joined{least, most};
        int kept = 0;
        for (int i = 0; i < size_; ++i) { // what it touches becomes one with it
            const stretch& s = stretches_[i];
            const bool is_apart = s.most < joined.least || joined.most < s.least;
            if (is_apart) stretches_[kept++] = s;
            else {
                if (s.least < joined.least) joined.least = s.least;
                if (s.most > joined.most) joined.most = s.most;
            }
        }
        size_ = kept;
        if (size_ == capacity) return;
        int at = size_;
        for (; at > 0 && joined.least < stretches_[at - 1].least; --at) stretches_[at] = stretches_[at - 1];
        stretches_[at] = joined;
        ++size_;
    }
    constexpr void occupy(length one) noexcept { occupy(one, one); }

    /// Decides which gaps are broken, and the scale: `drawn` for all that is not, `broken` for each gap.
    constexpr void settle(px drawn, px broken) noexcept {
        drawn_ = drawn;
        broken_ = broken;
        all_ = {};
        breaks_ = 0;
        for (int i = 0; i < size_; ++i) {
            stretches_[i].is_broken_before = false;
            all_ += stretches_[i].most - stretches_[i].least;
            if (i > 0) all_ += gap_before(i);
        }
        for (;;) {
            int widest = 0;
            for (int i = 1; i < size_; ++i)
                if (!stretches_[i].is_broken_before && (widest == 0 || gap_before(i) > gap_before(widest)))
                    widest = i;
            if (widest == 0) break;
            const length rest = all_ - gap_before(widest);
            if (rest <= length() || gap_before(widest) <= rest * too_long) break;
            stretches_[widest].is_broken_before = true;
            all_ = rest;
            ++breaks_;
        }
    }

    /// How far from its low end a size lies.
    [[nodiscard]] constexpr px at(length size) const noexcept {
        if (all_ == length()) return drawn_ / 2;
        length before;
        px gaps;
        for (int i = 0; i < size_; ++i) {
            const stretch& s = stretches_[i];
            if (i > 0 && size < s.least) { // in the gap, or at the end of the stretch below it
                const length into = size - stretches_[i - 1].most;
                if (!s.is_broken_before) return to_scale(before + into) + gaps;
                const std::int64_t share = into.nanometres() * 1000 / gap_before(i).nanometres();
                return to_scale(before) + gaps + broken_ * share / 1000;
            }
            if (i > 0 && s.is_broken_before) gaps += broken_;
            else if (i > 0) before += gap_before(i);
            if (size <= s.most || i + 1 == size_) return to_scale(before + (size - s.least)) + gaps;
            before += s.most - s.least;
        }
        return {};
    }

    /// From the low end to the high end.
    [[nodiscard]] constexpr px extent() const noexcept { return drawn_ + broken_ * breaks_; }
    [[nodiscard]] constexpr int breaks() const noexcept { return breaks_; }

    /// Calls `use` with the middle of each break.
    template <class Use> constexpr void for_each_break(const Use& use) const {
        for (int i = 1; i < size_; ++i)
            if (stretches_[i].is_broken_before) use(at(stretches_[i].least) - broken_ / 2);
    }

private:
    struct stretch {
        length least;
        length most;
        bool is_broken_before = false;
    };

    [[nodiscard]] constexpr length gap_before(int i) const noexcept {
        return stretches_[i].least - stretches_[i - 1].most;
    }
    [[nodiscard]] constexpr px to_scale(length from_low_end) const noexcept {
        return {(from_low_end.nanometres() * drawn_.hundredths + all_.nanometres() / 2) / all_.nanometres()};
    }

    stretch stretches_[capacity];
    int size_ = 0;
    int breaks_ = 0;
    length all_; ///< what is to scale
    px drawn_;
    px broken_;
};

} // namespace fitwright::detail::svg

#endif
