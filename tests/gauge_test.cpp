#include "support/both.hpp"
#include "support/gauge_checks.hpp"

#include <fitwright/callout.hpp>
#include <fitwright/gauge.hpp>

#include <doctest/doctest.h>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr grade it(int number) { return grade(number); }

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos;
}

std::int64_t thousandths(const std::string& micrometres) {
    const auto n = scaled(micrometres, 3);
    REQUIRE(n);
    return *n;
}

} // namespace

TEST_CASE("every constant and every formula, ISO/R 1938:1971") {
    const gauge_reference r = read_gauges(FITWRIGHT_TEST_DATA);
    REQUIRE(r.fault == "");
    REQUIRE(r.constants.size() == 11 * 13);
    REQUIRE(r.formulas.size() == 9);
    const gauge_tally t = check_gauges_against(r, false);
    CHECK(t.first_wrong == "");
    CHECK(t.wrong == 0);
    // 6 cases a row: plug, ring and checks take 4 comparisons each, a rod 4 above 6 mm and 1 below.
    CHECK(t.compared == 6 * (143 * (4 + 4 + 4) + 121 * 4 + 22));
}

TEST_CASE("the grade each gauge is made to: gauge_grade_of_tolerance.csv") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/gauge_grade_of_tolerance.csv");
    REQUIRE(table.fault == "");
    REQUIRE(table.rows.size() == 11);
    const length nominal = 100_mm;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const grade work = it(std::stoi(table.cell(i, "work_it_grade")));
        const length tolerance = *standard_tolerance(nominal, work);
        const hole_limits hole(nominal, {.upper = tolerance, .lower = length()});
        const shaft_limits shaft(nominal, {.upper = length(), .lower = -tolerance});
        const auto made_to = [&](const char* heading) {
            return *standard_tolerance(nominal, it(std::stoi(table.cell(i, heading))));
        };
        CHECK(plug_gauge(hole)->go.tolerance() == made_to("h_it"));
        CHECK(rod_gauge(hole)->go.tolerance() == made_to("hs_it"));
        CHECK(ring_gauge(shaft)->not_go.tolerance() == made_to("h1_it"));
        CHECK(checks_for_ring(shaft)->worn.tolerance() == made_to("hp_it"));
    }
}

// GOST 21401-75 for m6 (the rows marked yes), and the formulas worked out elsewhere.
TEST_CASE("worked gauges: gauge_worked.csv") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/gauge_worked.csv");
    REQUIRE(table.fault == "");
    REQUIRE(table.rows.size() == 73);
    int printed = 0;
    int moved = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const length nominal = length::from_nanometres(*scaled(table.cell(i, "upto_mm"), 6));
        const auto at = [&](const char* heading) { return length::from_nanometres(thousandths(table.cell(i, heading))); };
        const auto compare = [&](const auto& gauge, const auto& rounded) {
            REQUIRE(gauge);
            REQUIRE(rounded);
            CAPTURE(table.cell(i, "work_class"));
            CAPTURE(nominal);
            CHECK(gauge->go.lower_deviation() == at("go_new_min_um"));
            CHECK(gauge->go.upper_deviation() == at("go_new_max_um"));
            CHECK(gauge->not_go.lower_deviation() == at("notgo_min_um"));
            CHECK(gauge->not_go.upper_deviation() == at("notgo_max_um"));
            CHECK(gauge->worn == nominal + at("go_worn_um"));
            CHECK(gauge->constants_of == it(std::stoi(table.cell(i, "it_grade"))));
            CHECK(gauge->go.nominal() == nominal);
            CHECK(gauge->go.origin().how_sure ==
                  (gauge->constants_of <= grade::it7 ? confidence::published : confidence::memory));
            CHECK(rounded->go.tolerance() == gauge->go.tolerance());
            CHECK(rounded->worn == gauge->worn);
            if (table.cell(i, "confirmed") != "yes") return;
            ++printed;
            moved += rounded->go != gauge->go ? 1 : 0;
            CHECK(rounded->go.lower_deviation() == at("printed_go_min_um"));
            CHECK(rounded->not_go.lower_deviation() == at("printed_notgo_min_um"));
            CHECK(rounded->worn == nominal + at("printed_worn_um"));
        };
        const deviations d{.upper = at("work_upper_um"), .lower = at("work_lower_um")};
        constexpr gauge_options rounding{.rounding = gauge_rounding::half_micrometre};
        if (table.cell(i, "gauge") == "plug") {
            const auto c = read_hole_class(table.cell(i, "work_class"));
            REQUIRE(c);
            CHECK(*limits(nominal, *c) == hole_limits(nominal, d));
            compare(plug_gauge(nominal, *c), plug_gauge(hole_limits(nominal, d), rounding));
        } else {
            const auto c = read_shaft_class(table.cell(i, "work_class"));
            REQUIRE(c);
            CHECK(*limits(nominal, *c) == shaft_limits(nominal, d));
            compare(ring_gauge(nominal, *c), ring_gauge(nominal, *c, rounding));
        }
    }
    CHECK(printed == 8);
    CHECK(moved == 1); // 6 to 10 mm, where H1 is 2.5 um
}

TEST_CASE("a plug and a ring, worked by hand") {
    // 10 H7: K = 10, G = 10.015; z 2, y 1.5, H 2.5 um.
    constexpr auto plug = plug_gauge("10 H7"_hole);
    FITWRIGHT_CHECK_BOTH(given(plug)->go == shaft_limits(10_mm, {.upper = 3.25_um, .lower = 0.75_um}));
    FITWRIGHT_CHECK_BOTH(given(plug)->not_go == shaft_limits(10_mm, {.upper = 16.25_um, .lower = 13.75_um}));
    FITWRIGHT_CHECK_BOTH(given(plug)->worn == 9.9985_mm);
    FITWRIGHT_CHECK_BOTH(given(plug)->constants_of == grade::it7);
    FITWRIGHT_CHECK_BOTH(given(plug)->take_care.contains(caution::rotating));
    FITWRIGHT_CHECK_BOTH(*plug_gauge(given("10 H7"_hole)) == *plug_gauge(10_mm, {position::h, grade::it7}));

    // 10 h6: K = 9.991, G = 10; z1 2, y1 1.5, H1 2.5, Hp 1 um.
    FITWRIGHT_CHECK_BOTH(ring_gauge(given("10 h6"_shaft))->go == hole_limits(10_mm, {.upper = -0.75_um, .lower = -3.25_um}));
    FITWRIGHT_CHECK_BOTH(ring_gauge(given("10 h6"_shaft))->not_go == hole_limits(10_mm, {.upper = -7.75_um, .lower = -10.25_um}));
    FITWRIGHT_CHECK_BOTH(ring_gauge(given("10 h6"_shaft))->worn == 10.0015_mm);
    FITWRIGHT_CHECK_BOTH(*ring_gauge(given("10 h6"_shaft)) == *ring_gauge(10_mm, {position::h, grade::it6}));
    FITWRIGHT_CHECK_BOTH(checks_for_ring(given("10 h6"_shaft))->worn == shaft_limits(10_mm, {.upper = 2_um, .lower = 1_um}));

    // 200 H7, above 180 mm: K = 200, G = 200.046; z 7, y 6, alpha 3, H 10 um.
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("200 H7"_hole))->go == shaft_limits(200_mm, {.upper = 12_um, .lower = 2_um}));
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("200 H7"_hole))->not_go == shaft_limits(200_mm, {.upper = 48_um, .lower = 38_um}));
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("200 H7"_hole))->worn == 199.997_mm);
    // Hs is 7 um there.
    FITWRIGHT_CHECK_BOTH(rod_gauge(given("200 H7"_hole))->go == shaft_limits(200_mm, {.upper = 10.5_um, .lower = 3.5_um}));
}

TEST_CASE("the ends of the ranges") {
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("180 H7"_hole))->worn == 179.996_mm);  // y 4, no alpha yet
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("181 H7"_hole))->worn == 180.997_mm);  // y 6, alpha 3
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("500 H16"_hole))->worn == 500.22_mm);  // no y, alpha 220
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("25 H9"_hole))->worn == 25_mm);        // no y from IT9 on
    FITWRIGHT_CHECK_BOTH(plug_gauge(given("25 H8"_hole))->worn == 24.996_mm);
    CHECK(says(plug_gauge("501 H7"_hole), error_code::size_out_of_range, "501 mm: allowed are sizes above 0 mm up to and including 500 mm"));
    CHECK(says(ring_gauge(between(-0.01_mm, 0_mm)), error_code::size_out_of_range, "sizes above 0 mm"));
    CHECK(says(plug_gauge(hole_limits(5000_mm, {.upper = 1_mm, .lower = 0_mm})), error_code::size_out_of_range, "500 mm"));
    CHECK(says(rod_gauge("6 H7"_hole), error_code::size_out_of_range, "above 6 mm"));
    CHECK(rod_gauge(hole_limits(6.000001_mm, {.upper = 15_um, .lower = 0_um})).has_value());
    CHECK(says(plug_gauge(between(10_mm, 9.9_mm)), error_code::limits_crossed, "upper limit has to be above"));
    CHECK(says(plug_gauge(between(10_mm, 10_mm)), error_code::limits_crossed, "allow no size"));
    CHECK(says(plug_gauge(10_mm, {position::h, grade::it5}), error_code::no_standard_tolerance, "finer than IT6 (0.009 mm)"));
    CHECK(says(plug_gauge(10_mm, {position::h, grade::it17}), error_code::no_standard_tolerance, "coarser than IT16 (0.9 mm)"));
    CHECK(says(plug_gauge(10_mm, {position::k, grade::it9}), error_code::no_value_in_standard, "K9"));
    CHECK(says(ring_gauge(10_mm, {position::cd, grade(-1)}), error_code::grade_not_known, "IT18"));
}

TEST_CASE("a tolerance that is no standard one has a gauge only by a grade that is named") {
    constexpr hole_limits bore = between(8_mm, 8.012_mm);
    CHECK(says(plug_gauge(bore), error_code::no_standard_tolerance, "0.012 mm here is between IT6 (0.009 mm) and IT7 (0.015 mm)"));
    CHECK(says(plug_gauge(bore), error_code::no_standard_tolerance, "allowed if you name the grade"));
    CHECK(says(plug_gauge(between(8_mm, 8.03_mm)), error_code::no_standard_tolerance, "IT6 to IT8"));
    FITWRIGHT_CHECK_BOTH(*finer_grade(given(bore)) == grade::it6);
    FITWRIGHT_CHECK_BOTH(*finer_grade(hole_limits(given(8_mm), {.upper = 5_mm, .lower = 0_mm})) == grade::it16);
    FITWRIGHT_CHECK_BOTH(*finer_grade(given("8 h7"_shaft)) == grade::it7);
    CHECK(says(finer_grade(hole_limits(8_mm, {.upper = 8_um, .lower = 0_um})), error_code::no_standard_tolerance, "judge the reading"));

    constexpr auto plug = plug_gauge(bore, {.constants_of = grade::it6});
    FITWRIGHT_CHECK_BOTH(given(plug)->constants_of == grade::it6);
    FITWRIGHT_CHECK_BOTH(given(plug)->go == shaft_limits(8_mm, {.upper = 2.25_um, .lower = 0.75_um})); // z 1.5, H 1.5
    FITWRIGHT_CHECK_BOTH(given(plug)->not_go == shaft_limits(8_mm, {.upper = 12.75_um, .lower = 11.25_um}));
    // It is the grade of finer_grade, so the source doesn't say that the user would have it so.
    CHECK(plug->go.origin().how_sure == confidence::practice);
    CHECK(plug->go.origin().place.find("of the next finer grade") != text::npos);
    CHECK(plug->go.origin().place.find("named") == text::npos);
    CHECK(plug_gauge(between(8_mm, 8.03_mm), {.constants_of = *finer_grade(hole_limits::between(8_mm, 8.03_mm))})
              ->go.origin()
              .place.find("from memory, of the next finer grade") != text::npos);
    CHECK(plug_gauge(between(8_mm, 8.03_mm), {.constants_of = grade::it7})->go.origin().how_sure ==
          confidence::stated);

    // A finer grade may be named for a standard tolerance too; a coarser one takes too much of it.
    CHECK(plug_gauge("8 H7"_hole, {.constants_of = grade::it7})->go.origin().how_sure == confidence::published);
    CHECK(plug_gauge("8 H7"_hole, {.constants_of = grade::it6})->go.origin().how_sure == confidence::stated);
    CHECK(plug_gauge("8 H9"_hole, {.constants_of = grade::it8})->go.origin().how_sure == confidence::memory);
    CHECK(plug_gauge("8 H9"_hole, {.constants_of = grade::it8})->go.origin().place.find("named") != text::npos);
    CHECK(says(plug_gauge("8 H7"_hole, {.constants_of = grade::it8}), error_code::grade_not_known, "allowed is IT6 to IT7"));
    CHECK(says(plug_gauge(bore, {.constants_of = grade::it7}), error_code::grade_not_known, "allowed is IT6, no wider"));
    CHECK(says(plug_gauge(bore, {.constants_of = grade::it5}), error_code::grade_not_known, "IT5"));
    CHECK(says(plug_gauge(between(8_mm, 13_mm), {.constants_of = grade::it17}), error_code::grade_not_known, "IT6 to IT16"));
    CHECK(says(checks_for_ring(between(8_mm, 8.012_mm)), error_code::no_standard_tolerance, "IT6"));
}

TEST_CASE("JS as rounded in ISO 286-1:1988 is still of its grade") {
    const hole_class js7{position::js, grade::it7};
    const auto rounded = limits(8_mm, js7, js_rounding::whole_micrometre_1988);
    REQUIRE(rounded);
    REQUIRE(rounded->tolerance() == 14_um); // IT7 is 15 um
    CHECK(plug_gauge(*rounded)->constants_of == grade::it7);
    CHECK(plug_gauge(*rounded)->go.origin().how_sure == confidence::published);
    CHECK(plug_gauge(*limits(8_mm, js7))->constants_of == grade::it7);
    // 14 um that lie otherwise are no standard tolerance.
    CHECK(says(plug_gauge(hole_limits(8_mm, {.upper = 14_um, .lower = 0_um})), error_code::no_standard_tolerance, "0.014"));
}

TEST_CASE("every class with gauges: GO inside the limits, NOT GO beyond GO, rounding inwards") {
    int gauges = 0;
    for (const length nominal : {1_mm, 3_mm, 6_mm, 7.5_mm, 10_mm, 18_mm, 30_mm, 50_mm, 80_mm, 120_mm, 180_mm, 250_mm, 315_mm, 400_mm, 500_mm}) {
        for (int p = 0; p < position_count; ++p) {
            for (int number = 0; number <= 18; ++number) {
                const auto hole = limits(nominal, hole_class{static_cast<position>(p), it(number)});
                if (hole) {
                    const auto plug = plug_gauge(*hole);
                    CHECK(plug.has_value() == (number >= 6 && number <= 16));
                    if (!plug) continue;
                    ++gauges;
                    CHECK(plug->constants_of == it(number));
                    CHECK(hole->allow(plug->go.lower_limit()));
                    CHECK(hole->allow(plug->go.upper_limit()));
                    CHECK(plug->go.upper_limit() < plug->not_go.lower_limit());
                    CHECK(plug->worn < plug->go.lower_limit());
                    CHECK(plug->not_go.lower_limit() < hole->upper_limit());
                    if (nominal <= 180_mm) CHECK(plug->not_go.middle() == hole->upper_limit());

                    const auto rounded = plug_gauge(*hole, {.rounding = gauge_rounding::half_micrometre});
                    const length go_by = rounded->go.lower_limit() - plug->go.lower_limit();
                    const length not_go_by = rounded->not_go.lower_limit() - plug->not_go.lower_limit();
                    CHECK((go_by == 0_um || go_by == 0.25_um));
                    CHECK((not_go_by == 0_um || not_go_by == -0.25_um));
                    const bool has_quarters = plug->go.upper_limit().nanometres() % 500 == 250;
                    CHECK((go_by != 0_um) == has_quarters);

                    const two_step_plug step = on_one_end(*plug);
                    CHECK(step.first == plug->go);
                    CHECK(step.second == plug->not_go);
                    CHECK(step.least_step > 0_um);
                    CHECK(step.most_step == step.least_step + plug->go.tolerance() + plug->not_go.tolerance());
                }
                const auto shaft = limits(nominal, shaft_class{static_cast<position>(p), it(number)});
                if (shaft && number >= 6 && number <= 16) {
                    const auto ring = ring_gauge(*shaft);
                    REQUIRE(ring);
                    ++gauges;
                    CHECK(shaft->allow(ring->go.lower_limit()));
                    CHECK(shaft->allow(ring->go.upper_limit()));
                    CHECK(ring->not_go.upper_limit() < ring->go.lower_limit());
                    CHECK(ring->worn > ring->go.upper_limit());
                    const auto rounded = ring_gauge(*shaft, {.rounding = gauge_rounding::half_micrometre});
                    CHECK(rounded->go.lower_limit() <= ring->go.lower_limit());
                    CHECK(rounded->not_go.lower_limit() >= ring->not_go.lower_limit());
                    CHECK(rounded->go.lower_limit().nanometres() % 500 != 250);
                    const auto checks = checks_for_ring(*shaft);
                    CHECK(checks->go.middle() == ring->go.middle());
                    CHECK(checks->not_go.middle() == ring->not_go.middle());
                    CHECK(checks->worn.middle() == ring->worn);
                    CHECK(checks->go.tolerance() < ring->go.tolerance());
                }
            }
        }
    }
    CHECK(gauges > 3000);
}

TEST_CASE("a gauge just made can be judged against its own limits") {
    constexpr auto plug = plug_gauge("10 H7"_hole);
    FITWRIGHT_CHECK_BOTH(judge(measured_shaft(given(10.002_mm), 0.5_um), plug->go) == verdict::accept);
    FITWRIGHT_CHECK_BOTH(judge(measured_shaft(given(10.004_mm), 0.5_um), plug->go) == verdict::reject);
}
