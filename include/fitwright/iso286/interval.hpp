#ifndef FITWRIGHT_ISO286_INTERVAL_HPP
#define FITWRIGHT_ISO286_INTERVAL_HPP

#include <fitwright/iso286/fundamental_deviations.hpp>
#include <fitwright/iso286/standard_tolerances.hpp>
#include <fitwright/iso286/tolerance_class.hpp>

// From a place in the tables and a class to its deviations, in bare integers. No messages here.
// Everything comes down to one number, the upper deviation; the lower one is a tolerance below it.

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
    0,  1,  2,  3,  3,  4,  4,  5,  5,  6,  6,  7,  7,  8,  8,  8,  9,  9,  9,  10, 10,
    11, 11, 12, 12, 13, 13, 14, 14, 15, 15, 16, 16, 17, 17, 18, 18, 19, 19, 20, 20,
};

/// The row of each whole millimetre up to 500, where nearly all work is: found without a search.
struct rows_of_millimetres {
    std::uint8_t row[501];
};
inline constexpr rows_of_millimetres small_rows = [] {
    rows_of_millimetres found{};
    int row = 0;
    for (int mm = 1; mm <= 500; ++mm) {
        if (mm > range_upto_mm[row]) ++row;
        found.row[mm] = static_cast<std::uint8_t>(row);
    }
    return found;
}();

inline constexpr length largest_nominal = length::from_nanometres(3'150'000'000);

[[nodiscard]] constexpr bool in_tables(length nominal) noexcept {
    return nominal > length() && nominal <= largest_nominal;
}

/// For a nominal size `in_tables`. Ranges are "above, up to and including", and end on whole
/// millimetres: rounding up to a millimetre leaves every size in its range.
[[nodiscard]] constexpr size_range range_of(length nominal) noexcept {
    const auto mm = static_cast<std::int32_t>((nominal.nanometres() + 999'999) / 1'000'000);
    int row = 24;
    if (mm <= 500) [[likely]]
        row = small_rows.row[mm];
    else
        while (mm > range_upto_mm[row]) ++row;
    return {row, main_row_of[row], nominal.nanometres() <= 1'000'000};
}

/// IT of the grade, in nanometres, or `na`.
[[nodiscard]] constexpr std::int32_t tolerance_at(size_range r, grade g) noexcept {
    const std::int32_t tenths = standard_tolerance_table[r.main_row][g.step()];
    return tenths == na ? na : tenths * 100;
}

/// Up to 1 mm: IT14 to IT18 are not to be used, nor a, b, A, B, nor N above IT8
/// (ISO 286-1:2010, notes to Tables 1 to 4).
[[nodiscard]] constexpr bool barred_up_to_1_mm(position p, grade g, side s) noexcept {
    return g >= grade::it14 || p <= position::b || (p == position::n && s == side::hole && g > grade::it8);
}

/// js and JS: half the tolerance to either side, in nanometres.
[[nodiscard]] constexpr std::int32_t half_tolerance(std::int32_t tolerance, grade g,
                                                    js_rounding rounding) noexcept {
    const std::int32_t half = tolerance / 2;
    const bool round = rounding == js_rounding::whole_micrometre_1988 && g >= grade::it7 && g <= grade::it11;
    return round ? half - half % 1000 : half;
}

/// Lower deviation ei of a shaft from j to zc, in micrometres, or `nov`.
[[nodiscard]] constexpr int shaft_lower_deviation(size_range r, position p, grade g) noexcept {
    if (p >= position::m)
        return shaft_table_m_to_zc[r.row][static_cast<int>(p) - static_cast<int>(position::m)];
    if (p == position::k) return g >= grade::it4 && g <= grade::it7 ? shaft_table_j_and_k[r.row][3] : 0;
    if (g == grade::it5 || g == grade::it6) return shaft_table_j_and_k[r.row][0];
    if (g == grade::it7) return shaft_table_j_and_k[r.row][1];
    if (g == grade::it8) return shaft_table_j_and_k[r.row][2];
    return nov;
}

/// Upper deviation es of a shaft, in nanometres, or `na`.
[[nodiscard]] constexpr std::int32_t shaft_upper_deviation(size_range r, position p, grade g,
                                                           std::int32_t tolerance) noexcept {
    if (p < position::h) {
        const int es = shaft_table_a_to_g[r.row][static_cast<int>(p)];
        return es == nov ? na : es * 1000;
    }
    if (p == position::h) return 0;
    const int ei = shaft_lower_deviation(r, p, g);
    return ei == nov ? na : ei * 1000 + tolerance;
}

/// The rows of the ranges above 3 mm up to 500 mm, in which the rule of delta holds.
[[nodiscard]] constexpr bool above_3_up_to_500_mm(size_range r) noexcept { return r.row > 0 && r.row < 25; }

/// Upper deviation ES of a hole, in nanometres, or `na` (ISO 286-1:2010, Tables 2 and 3).
///
/// A to G mirror a to g: EI = -es. From J on the general rule is ES = -ei of the shaft of the same
/// letter. Above 3 mm up to 500 mm, K, M, N up to IT8 and P to ZC up to IT7 take delta =
/// IT(n) - IT(n-1) on top, so that H7/p6 and P7/h6 come out the same. Delta is tabulated from IT3 to
/// IT8; finer classes have no value.
[[nodiscard]] constexpr std::int32_t hole_upper_deviation(size_range r, position p, grade g,
                                                          std::int32_t tolerance) noexcept {
    if (p < position::h) {
        const int es = shaft_table_a_to_g[r.row][static_cast<int>(p)];
        return es == nov ? na : tolerance - es * 1000;
    }
    if (p == position::h) return tolerance;

    const bool mid = above_3_up_to_500_mm(r);
    if (p == position::j) {
        if (g < grade::it6 || g > grade::it8) return na;
        const grade mirrored = mid ? grade::from_step(g.step() - 1) : g; // J7 mirrors j6, and so on
        const int ei = shaft_lower_deviation(r, position::j, mirrored);
        if (ei == nov) return na;
        return -ei * 1000 + (mid ? tolerance - tolerance_at(r, mirrored) : 0);
    }

    const bool takes_delta = g <= (p <= position::n ? grade::it8 : grade::it7);
    if (mid && !takes_delta) {
        if (p == position::k) return na; // no K above IT8
        if (p == position::n) return 0;  // N9 and coarser begin at the nominal size
    }

    const int ei = p == position::k ? shaft_table_j_and_k[r.row][3] : shaft_lower_deviation(r, p, g);
    if (ei == nov) return na;
    if (!mid || !takes_delta) return -ei * 1000;
    if (g < grade::it3) return na;
    const std::int32_t delta = tolerance - tolerance_at(r, grade::from_step(g.step() - 1));
    const bool m6_special = p == position::m && g == grade::it6 && r.main_row == 10; // -9, not -11
    return -ei * 1000 + delta + (m6_special ? 2000 : 0);
}

/// Upper and lower deviation in nanometres; `upper` is `na` where the standard has no value.
struct interval {
    std::int64_t upper;
    std::int64_t lower;

    [[nodiscard]] constexpr bool is_given() const noexcept { return upper != na; }
};

template <side Side>
[[nodiscard]] constexpr interval interval_of(size_range r, tolerance_class<Side> c,
                                             js_rounding rounding) noexcept {
    if (!c.grade.exists() || static_cast<int>(c.position) >= position_count) return {na, na};
    const std::int32_t tolerance = tolerance_at(r, c.grade);
    if (tolerance == na || (r.up_to_1_mm && barred_up_to_1_mm(c.position, c.grade, Side))) return {na, na};
    if (c.position == position::js) {
        const std::int32_t half = half_tolerance(tolerance, c.grade, rounding);
        return {half, -half};
    }
    std::int32_t upper;
    if constexpr (Side == side::hole) upper = hole_upper_deviation(r, c.position, c.grade, tolerance);
    else upper = shaft_upper_deviation(r, c.position, c.grade, tolerance);
    if (upper == na) return {na, na};
    return {upper, upper - tolerance};
}

} // namespace detail

} // namespace fitwright

#endif
