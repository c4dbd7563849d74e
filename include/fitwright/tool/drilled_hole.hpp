#ifndef FITWRIGHT_TOOL_DRILLED_HOLE_HPP
#define FITWRIGHT_TOOL_DRILLED_HOLE_HPP

#include <fitwright/tool/closing_in.hpp>
#include <fitwright/tool/drill.hpp>

namespace fitwright {

namespace sources {
inline constexpr source drill_oversize{"Machinery's Handbook, 27th edition",
                                       "p. 885, Oversize Diameters in Drilling", confidence::memory};
inline constexpr source drill_oversize_interpolated{
    "Machinery's Handbook, 27th edition",
    "p. 885, Oversize Diameters in Drilling, interpolated between its rows", confidence::memory};
inline constexpr source drill_oversize_of_steel{
    "Machinery's Handbook, 27th edition; practice",
    "p. 885, Oversize Diameters in Drilling, of steel and cast iron, taken for another material",
    confidence::practice};
inline constexpr source jig_drilling{"AND10387", "drilled hole size tolerance with jigs",
                                     confidence::published};
inline constexpr source jig_drilling_without_jig{
    "AND10387; practice", "drilled hole size tolerance with jigs, taken for drilling without",
    confidence::practice};
} // namespace sources

namespace detail {

struct oversize_row {
    std::int8_t diameter_64ths;
    std::int8_t most, mean, least;
};

struct jig_drilling_row {
    std::int16_t upto_tenths;
    std::int16_t plus_tenths, minus_tenths;
};

// clang-format off

// Machinery's Handbook, 27th edition, p. 885: how much larger than the drill the hole came out, in
// 0.0001 in. The six rows are from memory; the conditions of the tests were read.
inline constexpr oversize_row oversize_table[] = {
    // 1/64 in  average   mean  average
    //          maximum         minimum
    {      4,        20,    15,      10}, // 1/16 in
    {      8,        45,    30,      10}, // 1/8
    {     16,        65,    40,      25}, // 1/4
    {     32,        80,    50,      30}, // 1/2
    {     48,        80,    50,      30}, // 3/4
    {     64,        90,    70,      40}, // 1
};

// AND10387, in 0.0001 in, from a 0.0135 in drill on.
inline constexpr jig_drilling_row jig_drilling_table[] = {
    // up to   plus  minus
    {   1250,    40,    10},
    {   2500,    50,    10},
    {   5000,    60,    10},
    {   7500,    80,    10},
    {  10000,   100,    10},
    {  20000,   120,    10},
};

// clang-format on
inline constexpr int oversize_row_count = sizeof oversize_table / sizeof oversize_table[0];
static_assert(oversize_row_count == 6);
inline constexpr int jig_drilling_row_count = sizeof jig_drilling_table / sizeof jig_drilling_table[0];
static_assert(jig_drilling_row_count == 6);

[[nodiscard]] constexpr bool has_test_figures(length drill) noexcept {
    return drill >= printed_64ths(oversize_table[0].diameter_64ths) &&
           drill <= printed_64ths(oversize_table[oversize_row_count - 1].diameter_64ths);
}

[[nodiscard]] constexpr bool has_jig_tolerance(length drill) noexcept {
    return drill >= printed_tenths(135) &&
           drill <= printed_tenths(jig_drilling_table[jig_drilling_row_count - 1].upto_tenths);
}

/// For a drill with test figures.
[[nodiscard]] constexpr expected_hole by_test_figures(length drill) noexcept {
    int upper = 1;
    while (upper < oversize_row_count - 1 && drill > printed_64ths(oversize_table[upper].diameter_64ths))
        ++upper;
    const oversize_row below = oversize_table[upper - 1];
    const oversize_row above = oversize_table[upper];
    const length beyond = drill - printed_64ths(below.diameter_64ths);
    const length apart = printed_64ths(above.diameter_64ths - below.diameter_64ths);
    const auto oversize = [&](int from, int to) {
        return printed_tenths(from) + printed_tenths(to - from) * beyond.nanometres() / apart.nanometres();
    };
    const bool is_a_row = beyond == length() || beyond == apart;
    return {{.least = drill + oversize(below.least, above.least),
             .mean = drill + oversize(below.mean, above.mean),
             .most = drill + oversize(below.most, above.most)},
            is_a_row ? sources::drill_oversize : sources::drill_oversize_interpolated,
            "averages over 2800 holes in steel and cast iron under average shop conditions: a good point "
            "lands between least and mean, a badly ground one beyond the most; light metals, plastics and "
            "high-strength materials can close in"};
}

/// For a drill with a tolerance with jigs.
[[nodiscard]] constexpr expected_hole by_jig_tolerance(length drill) noexcept {
    int row = 0;
    while (drill > printed_tenths(jig_drilling_table[row].upto_tenths)) ++row;
    const length least = drill - printed_tenths(jig_drilling_table[row].minus_tenths);
    const length most = drill + printed_tenths(jig_drilling_table[row].plus_tenths);
    return {{.least = least, .mean = (least + most) / 2, .most = most},
            sources::jig_drilling,
            "drilled through a jig: a tolerance to keep, not a test"};
}

/// The same hole once the tool is out. Nobody says that a drilled hole closes in at least by so much: its
/// most stays.
[[nodiscard]] constexpr expected_hole closed_in(const expected_hole& cut, work_material work) noexcept {
    const closing_in closes = closing_in_of(work);
    flags<hole_doubt> doubts = cut.doubts() | closes.doubts;
    if (is_tough(work)) doubts |= hole_doubt::dull_edge;
    const bool is_guess = closes.from != nullptr && closes.from->how_sure == confidence::uncertain;
    return {{.least = cut.least() - closes.of(cut.least(), closes.most),
             .mean = cut.mean() - closes.of(cut.mean(), closes.most) / 2,
             .most = cut.most()},
            is_guess ? *closes.from : cut.origin(),
            cut.note(),
            doubts};
}

/// For a drill with test figures: those of steel and cast iron in any material.
[[nodiscard]] constexpr expected_hole by_test_figures(length drill, work_material work) noexcept {
    const expected_hole tested = by_test_figures(drill);
    const bool is_tested = work.family() == material_family::steel ||
                           work.family() == material_family::tool_steel ||
                           work.family() == material_family::cast_iron;
    if (is_tested) return closed_in(tested, work);
    const expected_hole carried_over({tested.least(), tested.mean(), tested.most()},
                                     sources::drill_oversize_of_steel, tested.note(),
                                     hole_doubt::figures_of_steel);
    return closed_in(carried_over, work);
}

/// For a drill with a tolerance with jigs, of which there is none.
[[nodiscard]] constexpr expected_hole without_jig(length drill, work_material work) noexcept {
    const expected_hole through_jig = by_jig_tolerance(drill);
    const expected_hole without(
        {through_jig.least(), through_jig.mean(), through_jig.most()}, sources::jig_drilling_without_jig,
        "a tolerance for drilling through a jig, not a test", hole_doubt::without_jig);
    return closed_in(without, work);
}

} // namespace detail

/// The hole that a twist drill leaves: the least, mean and most of a handbook's tests in steel and cast
/// iron, between its rows interpolated (`origin()` says so). A hole is normally larger than its drill.
/// Error: a drill outside the tests, 1/16 to 1 in (1.5875 to 25.4 mm).
[[nodiscard]] constexpr result<expected_hole> drilled_hole(length drill) noexcept {
    if (detail::has_test_figures(drill)) return detail::by_test_figures(drill);
    return error::composer(error_code::size_out_of_range)
           << "no test tells what hole a drill of " << written(drill).view()
           << " mm leaves: allowed are drills from 1.5875 to 25.4 mm (1/16 to 1 in)";
}

/// The same for a drill out of a series.
[[nodiscard]] constexpr result<expected_hole> drilled_hole(const drill_size& drill) noexcept {
    return drilled_hole(drill.diameter);
}

/// The same in a material. Steel and cast iron were tested; for any other the same figures are taken, as
/// practice, with a doubt; aluminium and magnesium may close in by up to 0.05 % of the diameter as they
/// cool, plastic and thin walls spring back, uncertainly (see `reamed_hole`).
[[nodiscard]] constexpr result<expected_hole> drilled_hole(length drill, work_material material) noexcept {
    if (!detail::has_test_figures(drill)) return drilled_hole(drill);
    return detail::by_test_figures(drill, material);
}

/// The same for a drill out of a series.
[[nodiscard]] constexpr result<expected_hole> drilled_hole(const drill_size& drill,
                                                           work_material material) noexcept {
    return drilled_hole(drill.diameter, material);
}

/// The sizes allowed to a hole that is drilled through a jig: AND10387. A tolerance, wider than what a
/// good drill does; the mean is only halfway.
/// Error: a drill outside 0.0135 to 2 in (0.3429 to 50.8 mm).
[[nodiscard]] constexpr result<expected_hole> jig_drilled_hole(length drill) noexcept {
    if (detail::has_jig_tolerance(drill)) return detail::by_jig_tolerance(drill);
    return error::composer(error_code::size_out_of_range)
           << "AND10387 has no tolerance for a hole drilled by " << written(drill).view()
           << " mm: allowed are drills from 0.3429 to 50.8 mm (0.0135 to 2 in)";
}

} // namespace fitwright

#endif
