#ifndef FITWRIGHT_INCH_TOLERANCE_GRADES_HPP
#define FITWRIGHT_INCH_TOLERANCE_GRADES_HPP

#include <fitwright/error.hpp>
#include <fitwright/inch/size_ranges.hpp>
#include <fitwright/source.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// A tolerance grade of ANSI B4.1: 4 to 13. The higher, the wider. Not the IT grade of ISO 286 that
/// has the same number. A number known only at run time is `inch_grade{n}`; one that is no grade is
/// answered with an error.
enum class inch_grade : std::uint8_t {
    grade4 = 4,
    grade5,
    grade6,
    grade7,
    grade8,
    grade9,
    grade10,
    grade11,
    grade12,
    grade13,
};

namespace sources {
inline constexpr source ansi_b4_1_grades{"ANSI B4.1-1967 (R1987)", "standard tolerances, Table 1",
                                         confidence::published};
} // namespace sources

namespace detail {

// ANSI B4.1-1967 (R1987), Table 1: standard tolerances, in hundredths of a thousandth of an inch.
// Nominal sizes above the row before, up to and including the size at the end.
// clang-format off
inline constexpr std::int16_t grade_range_upto[] = { // hundredths of an inch
    12, 24, 40, 71, 119, 197, 315, 473, 709, 985, 1241, 1575, 1969,
    3009, 4149, 5619, 7639, 10090, 13190, 17190, 20000,
};

inline constexpr std::int16_t inch_tolerance_table[][10] = {
    //  4    5     6     7     8     9    10     11     12     13     upto in
    {  12,  15,   25,   40,   60,  100,  160,   250,   400,   600}, //   0.12
    {  15,  20,   30,   50,   70,  120,  180,   300,   500,   700}, //   0.24
    {  15,  25,   40,   60,   90,  140,  220,   350,   600,   900}, //   0.40
    {  20,  30,   40,   70,  100,  160,  280,   400,   700,  1000}, //   0.71
    {  25,  40,   50,   80,  120,  200,  350,   500,   800,  1200}, //   1.19
    {  30,  40,   60,  100,  160,  250,  400,   600,  1000,  1600}, //   1.97
    {  30,  50,   70,  120,  180,  300,  450,   700,  1200,  1800}, //   3.15
    {  40,  60,   90,  140,  220,  350,  500,   900,  1400,  2200}, //   4.73
    {  50,  70,  100,  160,  250,  400,  600,  1000,  1600,  2500}, //   7.09
    {  60,  80,  120,  180,  280,  450,  700,  1200,  1800,  2800}, //   9.85
    {  60,  90,  120,  200,  300,  500,  800,  1200,  2000,  3000}, //  12.41
    {  70, 100,  140,  220,  350,  600,  900,  1400,  2200,  3500}, //  15.75
    {  80, 100,  160,  250,  400,  600, 1000,  1600,  2500,  4000}, //  19.69
    {  90, 120,  200,  300,  500,  800, 1200,  2000,  3000,  5000}, //  30.09
    { 100, 160,  250,  400,  600, 1000, 1600,  2500,  4000,  6000}, //  41.49
    { 120, 200,  300,  500,  800, 1200, 2000,  3000,  5000,  8000}, //  56.19
    { 160, 250,  400,  600, 1000, 1600, 2500,  4000,  6000, 10000}, //  76.39
    { 200, 300,  500,  800, 1200, 2000, 3000,  5000,  8000, 12500}, //  100.9
    { 250, 400,  600, 1000, 1600, 2500, 4000,  6000, 10000, 16000}, //  131.9
    { 300, 500,  800, 1200, 2000, 3000, 5000,  8000, 12500, 20000}, //  171.9
    { 400, 600, 1000, 1600, 2500, 4000, 6000, 10000, 16000, 25000}, //    200
};
// clang-format on

inline constexpr int grade_range_count = sizeof grade_range_upto / sizeof grade_range_upto[0];
static_assert(grade_range_count == 21);
static_assert(sizeof inch_tolerance_table / sizeof inch_tolerance_table[0] == grade_range_count);

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_inch_tolerance(length nominal,
                                                                          inch_grade g) noexcept {
    if (g < inch_grade::grade4 || g > inch_grade::grade13)
        return error::composer(error_code::grade_not_known)
               << "ANSI B4.1 has no tolerance grade " << static_cast<std::int64_t>(g) << "; allowed: 4 to 13";
    error::composer say(error_code::size_out_of_range);
    say << "a nominal size of ";
    say.piece(written(nominal, {.unit = written_unit::in}).view())
        << " in is outside the tolerances of ANSI B4.1; allowed: sizes above 0 in up to and including 200 in";
    return say;
}

} // namespace detail

/// The standard tolerance of a grade at a nominal size: ANSI B4.1-1967, Table 1
/// (`sources::ansi_b4_1_grades`). Up to 0.12 in the fits use 0.2 and 0.15 thou where this table has
/// 0.15 and 0.12 for grades 5 and 4. Error: a size not above 0 up to and including 200 in; no such
/// grade.
[[nodiscard]] constexpr result<length> inch_tolerance(length nominal, inch_grade g) noexcept {
    const bool is_grade = g >= inch_grade::grade4 && g <= inch_grade::grade13;
    if (!is_grade || nominal <= length()) return detail::no_inch_tolerance(nominal, g);
    const int range = detail::range_among(detail::grade_range_upto, nominal);
    if (range == detail::grade_range_count) return detail::no_inch_tolerance(nominal, g);
    const int column = static_cast<int>(g) - static_cast<int>(inch_grade::grade4);
    return detail::hundredth_of_a_thou * detail::inch_tolerance_table[range][column];
}

} // namespace fitwright

#endif
