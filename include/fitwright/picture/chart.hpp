#ifndef FITWRIGHT_PICTURE_CHART_HPP
#define FITWRIGHT_PICTURE_CHART_HPP

#include <fitwright/picture/shapes.hpp>
#include <fitwright/picture/units.hpp>

#include <initializer_list>

// What charts have in common: a scale, a frame with round numbers beside it, bands between two curves.

namespace fitwright::detail::svg {

/// From whole numbers of some unit to places on the paper.
struct scale {
    std::int64_t low;
    std::int64_t high;
    px at_low;
    px at_high;

    [[nodiscard]] constexpr px at(std::int64_t value) const noexcept {
        if (high == low) return (at_low + at_high) / 2;
        return at_low + px{(at_high - at_low).hundredths * (value - low) / (high - low)};
    }
    [[nodiscard]] constexpr bool has(std::int64_t value) const noexcept {
        return low <= value && value <= high;
    }
    /// Makes room for one more, before anything is placed.
    constexpr void include(std::int64_t value) noexcept {
        if (value < low) low = value;
        if (value > high) high = value;
    }
};

/// 1, 2 or 5 times a power of ten of `base`: the least that divides a scale into six or fewer.
[[nodiscard]] constexpr std::int64_t round_step(const scale& s, std::int64_t base) noexcept {
    const std::int64_t span = s.high - s.low;
    for (std::int64_t decade = base;; decade *= 10)
        for (const std::int64_t step : {decade, decade * 2, decade * 5})
            if (span / step <= 6 || step > INT64_MAX / 20) return step;
}

/// The frame of a chart: its scale of heights, from left to right.
struct frame {
    scale heights;
    px left;
    px right;
};

/// Lines across at round numbers, each written in front by `label(number)`.
template <class Label> void rule(canvas& c, const frame& f, std::int64_t base, const Label& label) {
    const std::int64_t step = round_step(f.heights, base);
    std::int64_t first = f.heights.low / step * step;
    if (first < f.heights.low) first += step;
    for (std::int64_t value = first; value <= f.heights.high; value += step) {
        const px y = f.heights.at(value);
        c.line("rule", {f.left, y}, {f.right, y}, {.colour = "#9aa3ab", .width = {60}});
        c.write({f.left - px::of(4), y + px::of(4)}, label(value).view(),
                {.written = {.size = px::of(12)}, .colour = soft_ink, .at = anchor::end},
                f.left - px::of(4) - margin);
    }
}

/// Below this line parts are in each other's way: hatched like the ground on a drawing.
inline void ground_line(canvas& c, px left, px right, px y) {
    c.hatch({left, y, right, y + px::of(6)}, px::of(6), {.colour = alarm_ink, .width = {90}});
    c.line("ground", {left, y}, {right, y}, {.colour = alarm_ink, .width = px::of(2)});
}

/// A band between two curves of `points` spots each.
template <class Upper, class Lower>
void band(canvas& c, const char* kind, int points, const Upper& upper, const Lower& lower, const stroke& s) {
    if (points == 0) return;
    c.begin_path(kind);
    for (int i = 0; i < points; ++i) c << (i == 0 ? "M" : "L") << upper(i);
    for (int i = points - 1; i >= 0; --i) c << "L" << lower(i);
    c << "Z";
    c.end_path(s);
}

/// The round numbers that lengths have: nanometres, or hundredths of a thou.
[[nodiscard]] constexpr std::int64_t round_base(written_unit u) noexcept { return is_inch(u) ? 254 : 1; }

} // namespace fitwright::detail::svg

#endif
