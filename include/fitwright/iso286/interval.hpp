#ifndef FITWRIGHT_ISO286_INTERVAL_HPP
#define FITWRIGHT_ISO286_INTERVAL_HPP

#include <fitwright/iso286/fundamental_deviations.hpp>
#include <fitwright/iso286/standard_tolerances.hpp>
#include <fitwright/iso286/tolerance_class.hpp>

// From a place in the tables and a class to its deviations, in bare integers. No messages here.

namespace fitwright {

/// How js and JS are taken.
enum class js_rounding : std::uint8_t {
    /// Exactly half the tolerance: ISO 286-1:2010.
    exact_half,
    /// ISO 286-1:1988: in IT7 to IT11 half an odd tolerance is rounded down to a whole micrometre.
    whole_micrometre_1988,
};

namespace detail {

/// The range of nominal sizes that a size belongs to.
struct size_range {
    int row;      ///< of the fundamental deviations, 0 to 40
    int main_row; ///< of the standard tolerances, 0 to 20
    bool up_to_1_mm;
};

inline constexpr std::uint8_t main_row_of[range_count] = {
    0, 1, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 8, 8, 9, 9, 9, 10, 10, 11, 11, 12, 12,
    13, 13, 14, 14, 15, 15, 16, 16, 17, 17, 18, 18, 19, 19, 20, 20,
};

inline constexpr length largest_nominal = length::from_nanometres(3'150'000'000);

[[nodiscard]] constexpr bool in_tables(length nominal) noexcept {
    return nominal > length() && nominal <= largest_nominal;
}

/// For a nominal size `in_tables`. Ranges are "above, up to and including", and end on whole
/// millimetres: rounding up to a millimetre leaves every size in its range.
[[nodiscard]] constexpr size_range range_of(length nominal) noexcept {
    const auto mm = static_cast<std::int32_t>((nominal.nanometres() + 999'999) / 1'000'000);
    int row = 0;
    if (mm > range_upto_mm[row + 31]) row += 32;
    for (int stride = 16; stride > 0; stride /= 2)
        if (row + stride <= range_count - 1 && mm > range_upto_mm[row + stride - 1]) row += stride;
    return {row, main_row_of[row], nominal.nanometres() <= 1'000'000};
}

/// Deviations in nanometres; `given` is false where the standard has no value.
struct interval {
    std::int32_t upper;
    std::int32_t lower;
    bool given;
};

inline constexpr interval no_interval{0, 0, false};

/// IT of the grade, in nanometres, or `na`.
[[nodiscard]] constexpr std::int32_t tolerance_at(const size_range& r, grade g) noexcept {
    const std::int32_t tenths = standard_tolerance_table[r.main_row][g.step()];
    return tenths == na ? na : tenths * 100;
}

/// Up to 1 mm: IT14 to IT18 are not to be used, nor a, b, A, B, nor N above IT8
/// (ISO 286-1:2010, notes to Tables 1 to 4).
[[nodiscard]] constexpr bool barred_up_to_1_mm(position p, grade g, side s) noexcept {
    return g >= grade::it14 || p <= position::b || (p == position::n && s == side::hole && g > grade::it8);
}

/// js and JS: half the tolerance to either side.
[[nodiscard]] constexpr interval symmetrical(std::int32_t tolerance, grade g, js_rounding rounding) noexcept {
    std::int32_t half = tolerance / 2;
    if (rounding == js_rounding::whole_micrometre_1988 && g >= grade::it7 && g <= grade::it11)
        half -= half % 1000;
    return {half, -half, true};
}

/// Lower deviation ei of a shaft from j to zc, in micrometres, or `nil`.
[[nodiscard]] constexpr int shaft_lower_deviation(const size_range& r, position p, grade g) noexcept {
    if (p >= position::m)
        return shaft_table_m_to_zc[r.row][static_cast<int>(p) - static_cast<int>(position::m)];
    if (p == position::k)
        return g >= grade::it4 && g <= grade::it7 ? shaft_table_j_and_k[r.row][3] : 0;
    if (g == grade::it5 || g == grade::it6) return shaft_table_j_and_k[r.row][0];
    if (g == grade::it7) return shaft_table_j_and_k[r.row][1];
    if (g == grade::it8) return shaft_table_j_and_k[r.row][2];
    return nil;
}

[[nodiscard]] constexpr interval shaft_interval(const size_range& r, position p, grade g, js_rounding rounding) noexcept {
    const std::int32_t tolerance = tolerance_at(r, g);
    if (tolerance == na || (r.up_to_1_mm && barred_up_to_1_mm(p, g, side::shaft))) return no_interval;
    if (p < position::h) {
        const int es = shaft_table_a_to_g[r.row][static_cast<int>(p)];
        return es == nil ? no_interval : interval{es * 1000, es * 1000 - tolerance, true};
    }
    if (p == position::h) return {0, -tolerance, true};
    if (p == position::js) return symmetrical(tolerance, g, rounding);
    const int ei = shaft_lower_deviation(r, p, g);
    return ei == nil ? no_interval : interval{ei * 1000 + tolerance, ei * 1000, true};
}

/// The last rows of the ranges up to 3 mm and up to 500 mm, between which the rule of delta holds.
[[nodiscard]] constexpr bool above_3_up_to_500_mm(const size_range& r) noexcept {
    return r.row > 0 && r.row < 25;
}

/// Upper deviation ES of a hole from J to ZC, in nanometres, or `na` (ISO 286-1:2010, Tables 2 and 3).
///
/// The general rule is ES = -ei of the shaft of the same letter. Above 3 mm up to 500 mm, K, M, N up
/// to IT8 and P to ZC up to IT7 take delta = IT(n) - IT(n-1) on top, so that H7/p6 and P7/h6 come
/// out the same. Delta is tabulated from IT3 to IT8; finer classes have no value.
[[nodiscard]] constexpr std::int32_t hole_upper_deviation(const size_range& r, position p, grade g) noexcept {
    const bool mid = above_3_up_to_500_mm(r);

    if (p == position::j) {
        if (g < grade::it6 || g > grade::it8) return na;
        const grade mirrored = mid ? grade::from_step(g.step() - 1) : g; // J7 mirrors j6, and so on
        const int ei = shaft_lower_deviation(r, position::j, mirrored);
        if (ei == nil) return na;
        return -ei * 1000 + (mid ? tolerance_at(r, g) - tolerance_at(r, mirrored) : 0);
    }

    const bool takes_delta = g <= (p <= position::n ? grade::it8 : grade::it7);
    if (mid && !takes_delta) {
        if (p == position::k) return na; // no K above IT8
        if (p == position::n) return 0;  // N9 and coarser begin at the nominal size
    }

    const int ei = p == position::k ? shaft_table_j_and_k[r.row][3] : shaft_lower_deviation(r, p, g);
    if (ei == nil) return na;
    if (!mid || !takes_delta) return -ei * 1000;
    if (g < grade::it3) return na;
    const std::int32_t delta = tolerance_at(r, g) - tolerance_at(r, grade::from_step(g.step() - 1));
    const bool m6_special = p == position::m && g == grade::it6 && r.main_row == 10; // -9, not -11
    return -ei * 1000 + delta + (m6_special ? 2000 : 0);
}

[[nodiscard]] constexpr interval hole_interval(const size_range& r, position p, grade g, js_rounding rounding) noexcept {
    const std::int32_t tolerance = tolerance_at(r, g);
    if (tolerance == na || (r.up_to_1_mm && barred_up_to_1_mm(p, g, side::hole))) return no_interval;
    if (p < position::h) { // A to G mirror a to g: EI = -es
        const int es = shaft_table_a_to_g[r.row][static_cast<int>(p)];
        return es == nil ? no_interval : interval{-es * 1000 + tolerance, -es * 1000, true};
    }
    if (p == position::h) return {tolerance, 0, true};
    if (p == position::js) return symmetrical(tolerance, g, rounding);
    const std::int32_t es = hole_upper_deviation(r, p, g);
    return es == na ? no_interval : interval{es, es - tolerance, true};
}

template <side Side>
[[nodiscard]] constexpr interval interval_of(const size_range& r, tolerance_class<Side> c, js_rounding rounding) noexcept {
    if (!c.grade.exists() || static_cast<int>(c.position) >= position_count) return no_interval;
    if constexpr (Side == side::hole) return hole_interval(r, c.position, c.grade, rounding);
    else return shaft_interval(r, c.position, c.grade, rounding);
}

} // namespace detail

} // namespace fitwright

#endif
