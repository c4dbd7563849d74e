#include "support/both.hpp"
#include "support/general_checks.hpp"

#include <fitwright/callout.hpp>
#include <fitwright/general.hpp>

#include <doctest/doctest.h>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos;
}

} // namespace

TEST_CASE("every row of the tables: ISO 2768-1, ISO 273, ASME B18.2.8, ISO 2306") {
    general_reference r = read_general(FITWRIGHT_TEST_DATA);
    REQUIRE(r.fault == "");
    REQUIRE(r.tolerances.rows.size() == 16);
    REQUIRE(r.iso_273.rows.size() == 35);
    REQUIRE(r.asme_inch.rows.size() == 66);
    REQUIRE(r.asme_metric.rows.size() == 60);
    REQUIRE(r.iso_2306.rows.size() == 75);
    const general_tally t = check_general_against(r);
    CHECK(t.first_wrong == "");
    CHECK(t.wrong == 0);
    CHECK(t.compared == 16 * 4 * 3 + 1 + 35 * 3 + 66 + 60 + 75 + 39);
    CHECK(read_general(FITWRIGHT_TEST_DATA).fault == r.fault);
    for (const csv_table* table : {&r.tolerances, &r.iso_273, &r.asme_inch, &r.asme_metric, &r.iso_2306}) CHECK(table->fault == "");
}

TEST_CASE("general tolerances, ISO 2768-1:1989") {
    FITWRIGHT_CHECK_BOTH(*general_tolerance(given(14_mm), general_class::medium) == 200_um);
    FITWRIGHT_CHECK_BOTH(*general_tolerance(given(30_mm), general_class::fine) == 100_um);
    FITWRIGHT_CHECK_BOTH(*general_tolerance(given(30.000001_mm), general_class::fine) == 150_um);
    FITWRIGHT_CHECK_BOTH(*general_tolerance(given(0.5_mm), general_class::coarse) == 200_um);
    FITWRIGHT_CHECK_BOTH(*general_limits<side::hole>(given(14_mm), general_class::medium) ==
                         hole_limits(14_mm, {.upper = 200_um, .lower = -200_um}));
    FITWRIGHT_CHECK_BOTH(general_limits<side::shaft>(given(2000_mm), general_class::very_coarse)->lower_limit() == 1994_mm);
    CHECK(general_limits<side::hole>(14_mm, general_class::medium)->origin().document == "ISO 2768-1:1989");
    FITWRIGHT_CHECK_BOTH(*general_edge_tolerance(given(0.5_mm), general_class::fine) == 200_um);
    FITWRIGHT_CHECK_BOTH(*general_edge_tolerance(given(1000_mm), general_class::very_coarse) == 2_mm);
    FITWRIGHT_CHECK_BOTH(general_angle_tolerance(given(10_mm), general_class::medium)->count == 60);
    FITWRIGHT_CHECK_BOTH(*general_angle_tolerance(given(10.000001_mm), general_class::medium) == arc_minutes{30});
    FITWRIGHT_CHECK_BOTH(letter(given(general_class::fine)) == "f");
    FITWRIGHT_CHECK_BOTH(letter(given(general_class::medium)) == "m");
    FITWRIGHT_CHECK_BOTH(letter(given(general_class::coarse)) == "c");
    FITWRIGHT_CHECK_BOTH(letter(given(general_class::very_coarse)) == "v");
}

TEST_CASE("where ISO 2768-1 has no value") {
    CHECK(says(general_tolerance(0.499999_mm, general_class::medium), error_code::size_out_of_range,
               "ISO 2768-m has no general tolerance at 0.499999 mm: allowed are sizes from 0.5 mm up to 4000 mm"));
    CHECK(says(general_tolerance(4000.000001_mm, general_class::coarse), error_code::size_out_of_range, "up to 4000 mm"));
    CHECK(says(general_tolerance(-5_mm, general_class::coarse), error_code::size_out_of_range, "-5 mm"));
    CHECK(says(general_tolerance(2500_mm, general_class::fine), error_code::no_value_in_standard, "from 0.5 mm up to 2000 mm"));
    CHECK(says(general_tolerance(3_mm, general_class::very_coarse), error_code::no_value_in_standard, "above 3 mm up to 4000 mm"));
    CHECK(says(general_limits<side::hole>(3_mm, general_class::very_coarse), error_code::no_value_in_standard, "ISO 2768-v"));
    CHECK(says(general_edge_tolerance(0.4_mm, general_class::fine), error_code::size_out_of_range, "from 0.5 mm"));
    CHECK(says(general_angle_tolerance(0_mm, general_class::fine), error_code::size_out_of_range, "above 0 mm"));
    constexpr auto none = static_cast<general_class>(4);
    CHECK(letter(none) == "?");
    CHECK(says(general_tolerance(14_mm, none), error_code::no_value_in_standard, "allowed are f (fine), m (medium)"));
    CHECK(says(general_edge_tolerance(14_mm, none), error_code::no_value_in_standard, "v (very coarse)"));
    CHECK(says(general_angle_tolerance(14_mm, none), error_code::no_value_in_standard, "c (coarse)"));
}

TEST_CASE("clearance holes") {
    // ISO 273: M8 medium is 9 H13.
    FITWRIGHT_CHECK_BOTH(*clearance_hole(given(8_mm), clearance_series::medium) == hole_limits(9_mm, {.upper = 220_um, .lower = 0_um}));
    FITWRIGHT_CHECK_BOTH(*clearance_hole(given(8_mm), clearance_series::fine) == "8.4 H12"_hole);
    FITWRIGHT_CHECK_BOTH(clearance_hole(given(8_mm), clearance_series::coarse)->origin().how_sure == confidence::published);
    // ASME B18.2.8: 1/4 in loose, #10 normal, M6 close.
    FITWRIGHT_CHECK_BOTH(asme_clearance_hole(given(0.25_in), screw_fit::loose)->hole == hole_limits::between(0.297_in, 0.311_in));
    FITWRIGHT_CHECK_BOTH(asme_clearance_hole(given(0.25_in), screw_fit::loose)->drill == "19/64");
    FITWRIGHT_CHECK_BOTH(asme_clearance_hole(numbered_screw(given(10)), screw_fit::normal)->drill == "#2");
    FITWRIGHT_CHECK_BOTH(asme_clearance_hole(given(6_mm), screw_fit::close)->hole == "6.4 H12"_hole);
    FITWRIGHT_CHECK_BOTH(numbered_screw(given(0)) == 0.06_in);
    FITWRIGHT_CHECK_BOTH(numbered_screw(given(8)) == 0.164_in);

    CHECK(says(clearance_hole(8.5_mm, clearance_series::fine), error_code::no_value_in_standard, "a thread of 8.5 mm: allowed are its sizes M1 to M64; next to this one are 8 mm and 10 mm"));
    CHECK(says(clearance_hole(0.5_mm, clearance_series::fine), error_code::no_value_in_standard, "next to this one are 1 mm"));
    CHECK(says(clearance_hole(65_mm, clearance_series::fine), error_code::no_value_in_standard, "next to this one are 64 mm"));
    CHECK(says(clearance_hole(8_mm, static_cast<clearance_series>(3)), error_code::no_value_in_standard, "fine, medium and coarse"));
    CHECK(says(asme_clearance_hole(7_mm, screw_fit::close), error_code::no_value_in_standard, "0.25 in and 0.3125 in; 6 mm and 8 mm"));
    CHECK(says(asme_clearance_hole(7_mm, static_cast<screw_fit>(3)), error_code::no_value_in_standard, "close, normal and loose"));
}

TEST_CASE("tapping drills") {
    FITWRIGHT_CHECK_BOTH(tapping_drill(given(metric_thread{.diameter = 8_mm, .pitch = 1.25_mm}))->drill == 6.8_mm); // not 6.75
    FITWRIGHT_CHECK_BOTH(tapping_drill(given(metric_thread{.diameter = 12_mm, .pitch = 1.75_mm}))->drill == 10.2_mm);
    FITWRIGHT_CHECK_BOTH(tapping_drill(given(metric_thread{.diameter = 10_mm, .pitch = 1.25_mm}))->drill == 8.8_mm);
    FITWRIGHT_CHECK_BOTH(tapping_drill(*coarse_thread(given(6_mm)))->drill == 5_mm);
    FITWRIGHT_CHECK_BOTH(*coarse_thread(given(10_mm)) == metric_thread{.diameter = 10_mm, .pitch = 1.5_mm});
    CHECK(says(tapping_drill({.diameter = 8_mm, .pitch = 1.5_mm}), error_code::no_value_in_standard, "M8 x 1.5: allowed are the pitches 1.25, 0.75, 1 mm"));
    CHECK(says(tapping_drill({.diameter = 13_mm, .pitch = 1.5_mm}), error_code::no_value_in_standard, "next to this one: M12 M14"));
    CHECK(says(coarse_thread(0.9_mm), error_code::no_value_in_standard, "M1 to M64; next to this one: M1"));
    CHECK(says(coarse_thread(70_mm), error_code::no_value_in_standard, "next to this one: M64"));
}

// ISO 68-1 and ISO 965-1: the minor diameter is d - 1.0825 P. A tapping drill lies between it and a little
// more, or the tap would have to turn what the drill left.
TEST_CASE("every tapping drill is within 0.05 mm of diameter less pitch, and above the minor diameter") {
    for (const auto& table : {rows<detail::tapping::row>(detail::tapping::coarse), rows<detail::tapping::row>(detail::tapping::fine)})
        for (const detail::tapping::row& row : table) {
            const metric_thread thread = detail::thread_of(row);
            const length drill = tapping_drill(thread)->drill;
            const length usual = thread.diameter - thread.pitch;
            CHECK(drill - usual <= 50_um);
            CHECK(usual - drill <= 50_um);
            CHECK(drill >= thread.diameter - thread.pitch * 10825 / 10000);
        }
}

TEST_CASE("clearance holes rise with the thread and with the series") {
    length before[3];
    for (const detail::iso_273_row& row : detail::iso_273_table) {
        const length thread = detail::tenth_of_a_millimetre * row.thread;
        length smaller = thread;
        for (int s = 0; s < 3; ++s) {
            const hole_limits hole = *clearance_hole(thread, static_cast<clearance_series>(s));
            CHECK(hole.lower_limit() > smaller);
            CHECK(hole.lower_limit() > before[s]);
            smaller = before[s] = hole.lower_limit();
        }
    }
}
