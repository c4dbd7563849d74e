// Every call of the README's "Pick a header", compiled as it stands there and checked to answer.
// tests/readme_test.cpp looks each of them up in this file.

#include <fitwright/choose.hpp>
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <doctest/doctest.h>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

TEST_CASE("the calls of the README's table do what it says") {
    const std::int64_t n = 7'968'000;
    CHECK(length::from_nanometres(n) == 7.968_mm);
    CHECK(12_mm > 0.25_in);

    const hole_limits bore = "12 H7"_hole;
    const shaft_limits pin = "12 g6"_shaft;
    const length l = 12.018_mm;
    CHECK(l.as<inch>().value() == doctest::Approx(0.473149606));
    CHECK(bore.upper_limit<millimetre>().value() == 12.018);
    CHECK((95_degC).value() == 95);

    CHECK(hole_limits(14_mm, {.upper = 18_um, .lower = 0_um}) == "14 H7"_hole);
    CHECK(between(7.978_mm, 7.986_mm).upper == 7.986_mm);

    CHECK(standard_tolerance(25_mm, grade(7)).value() == 21_um); // ISO 286-1:2010 Table 1
    CHECK(limits(25_mm, "H7"_hole_class)->upper_limit() == 25.021_mm);
    CHECK(preferred_fits(basis::hole).size() == 45);

    CHECK(fit(bore, pin).min_clearance() == 6_um);
    CHECK(fit(bore, pin).kind() == fit_kind::clearance);

    CHECK("25 H7"_hole.upper_limit() == 25.021_mm);
    CHECK("25 g6"_shaft.upper_limit() == 24.993_mm);
    CHECK("25 H7/g6"_fit.max_clearance() == 41_um);

    const char* const t = "12 H7";
    CHECK(read_hole(t).has_value());
    CHECK(!read_shaft(t).has_value());
    CHECK(!read_fit(t).has_value());
    CHECK(read_callout(t).has_value());
    CHECK(written(25_mm, "H7"_hole_class) == "25 H7");
    CHECK(written(bore) == "12 +0.018/0");

    CHECK(rounded_inwards(bore, 0.0001_in)->upper_limit() == 0.4731_in);
    CHECK(target_on_grid(bore, 0.01_mm).value() == 12.01_mm);

    CHECK(bore_for(measured_shaft{7.968_mm, 2_um}, {8_um, 20_um})->lower_limit() == 7.978_mm);
    const measured_hole holes[] = {{8.010_mm, 1_um}};
    const measured_shaft shafts[] = {{7.996_mm, 1_um}};
    CHECK(pair_up(holes, shafts, {8_um, 20_um})->size() == 1);

    std::cout << bore << '\n';
    char room[64];
    CHECK(print({room, sizeof room}, bore).value() == "12 +0.018/0");
}
