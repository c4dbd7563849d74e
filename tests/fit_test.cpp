#include "support/both.hpp"
#include <fitwright/fit.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <initializer_list>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr fit made(length lowest_hole, length highest_hole, length lowest_shaft, length highest_shaft) {
    return {between(lowest_hole, highest_hole), between(lowest_shaft, highest_shaft)};
}

// Limits from the ISO 286-2 tables: 12 H7/g6, 25 H7/p6, 25 H7/k6.
constexpr fit sliding{hole_limits(12_mm, {.upper = 18_um, .lower = 0_um}),
                      shaft_limits(12_mm, {.upper = -6_um, .lower = -17_um})};
constexpr fit pressed{hole_limits(25_mm, {.upper = 21_um, .lower = 0_um}),
                      shaft_limits(25_mm, {.upper = 35_um, .lower = 22_um})};
constexpr fit located{hole_limits(25_mm, {.upper = 21_um, .lower = 0_um}),
                      shaft_limits(25_mm, {.upper = 15_um, .lower = 2_um})};

} // namespace

TEST_CASE("clearances") {
    FITWRIGHT_CHECK_BOTH(given(sliding).min_clearance() == 6_um);
    FITWRIGHT_CHECK_BOTH(given(sliding).max_clearance() == 35_um);
    FITWRIGHT_CHECK_BOTH(given(sliding).mean_clearance() == 20.5_um);
    FITWRIGHT_CHECK_BOTH(given(sliding).tolerance() == 29_um);
    FITWRIGHT_CHECK_BOTH(given(pressed).min_clearance() == -35_um);
    FITWRIGHT_CHECK_BOTH(given(pressed).max_clearance() == -1_um);
    FITWRIGHT_CHECK_BOTH(given(pressed).mean_clearance() == -18_um);
    FITWRIGHT_CHECK_BOTH(given(located).min_clearance() == -15_um);
    FITWRIGHT_CHECK_BOTH(given(located).max_clearance() == 19_um);
    FITWRIGHT_CHECK_BOTH(given(sliding).hole().upper_limit() == 12.018_mm);
    FITWRIGHT_CHECK_BOTH(given(sliding).shaft().lower_limit() == 11.983_mm);
    FITWRIGHT_CHECK_BOTH(made(8_mm, 8.000001_mm, 7_mm, 7_mm).mean_clearance() ==
                         1.000001_mm); // a tie: away from zero
}

// ISO 286-1:2010, 3.3: zero counts as clearance at one end, as interference at the other.
TEST_CASE("kinds of fit") {
    FITWRIGHT_CHECK_BOTH(given(sliding).kind() == fit_kind::clearance);
    FITWRIGHT_CHECK_BOTH(given(located).kind() == fit_kind::transition);
    FITWRIGHT_CHECK_BOTH(given(pressed).kind() == fit_kind::interference);
    // They may just touch: H7/h6 is a clearance fit.
    FITWRIGHT_CHECK_BOTH(made(given(8_mm), 8.01_mm, 7.99_mm, 8_mm).kind() == fit_kind::clearance);
    FITWRIGHT_CHECK_BOTH(made(given(8_mm), 8.01_mm, 8.01_mm, 8.02_mm).kind() == fit_kind::interference);
    FITWRIGHT_CHECK_BOTH(made(given(8_mm), 8.01_mm, 7.99_mm, 8.000001_mm).kind() == fit_kind::transition);
    FITWRIGHT_CHECK_BOTH(made(given(8_mm), 8.01_mm, 8.009999_mm, 8.02_mm).kind() == fit_kind::transition);
    FITWRIGHT_CHECK_BOTH(in_words(given(fit_kind::clearance)) == "clearance");
    FITWRIGHT_CHECK_BOTH(in_words(given(fit_kind::transition)) == "transition");
    FITWRIGHT_CHECK_BOTH(in_words(given(fit_kind::interference)) == "interference");
}

TEST_CASE("against every pair of parts that the limits allow") {
    // Limits of a few nanometres, so that all parts can be tried.
    for (int hole_low = -3; hole_low <= 3; ++hole_low) {
        for (int hole_width = 0; hole_width <= 3; ++hole_width) {
            for (int shaft_low = -3; shaft_low <= 3; ++shaft_low) {
                for (int shaft_width = 0; shaft_width <= 3; ++shaft_width) {
                    const auto at = [](int n) { return 8_mm + length::from_nanometres(n); };
                    const fit f = made(at(hole_low), at(hole_low + hole_width), at(shaft_low),
                                       at(shaft_low + shaft_width));
                    length least = 1_mm;
                    length most = -1_mm;
                    for (int h = hole_low; h <= hole_low + hole_width; ++h) {
                        for (int s = shaft_low; s <= shaft_low + shaft_width; ++s) {
                            least = (std::min)(least, at(h) - at(s));
                            most = (std::max)(most, at(h) - at(s));
                        }
                    }
                    CHECK(f.min_clearance() == least);
                    CHECK(f.max_clearance() == most);
                    CHECK(f.tolerance() == most - least);
                    CHECK((f.kind() == fit_kind::clearance) == (least >= 0_mm));
                    CHECK((f.kind() == fit_kind::interference) == (most <= 0_mm && least < 0_mm));
                }
            }
        }
    }
}

TEST_CASE("fits compare by their limits") {
    FITWRIGHT_CHECK_BOTH(given(sliding) == fit(sliding.hole(), sliding.shaft()));
    FITWRIGHT_CHECK_BOTH(given(sliding) != located);
    static_assert(std::is_trivially_copyable_v<fit>);
    static_assert(!std::is_constructible_v<fit, shaft_limits, hole_limits>);
    static_assert(!std::is_constructible_v<fit, hole_limits, hole_limits>);
    // Limits of which nobody said what they are of fit either place.
    static_assert(std::is_constructible_v<fit, stated_limits, stated_limits>);
}

TEST_CASE("the clearances of limits beyond any part don't overflow") {
    constexpr length least = length::from_nanometres(INT64_MIN);
    constexpr length most = length::from_nanometres(INT64_MAX);
    constexpr fit stated(between(least, most), between(least, most));
    static_assert(stated.min_clearance() < 0_mm && stated.max_clearance() > 0_mm);
    static_assert(stated.mean_clearance() == 0_mm);
    static_assert(stated.tolerance() == stated.max_clearance() - stated.min_clearance());
    constexpr fit read(measured_hole(most, least).limits(), measured_shaft(least, most).limits());
    static_assert(read.mean_clearance() > 0_mm);
    CHECK(fitwright_tests::fetched(stated).kind() == fit_kind::transition);
}
