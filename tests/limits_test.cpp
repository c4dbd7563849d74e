#include "support/both.hpp"
#include <fitwright/limits.hpp>

#include <doctest/doctest.h>

#include <initializer_list>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr hole_limits bore(14_mm, {.upper = 18_um, .lower = 0_um});
constexpr shaft_limits pin(14_mm, {.upper = -6_um, .lower = -17_um});

} // namespace

TEST_CASE("limits are a nominal size and its deviations") {
    FITWRIGHT_CHECK_BOTH(given(bore).nominal() == 14_mm);
    FITWRIGHT_CHECK_BOTH(given(bore).upper_deviation() == 18_um);
    FITWRIGHT_CHECK_BOTH(given(bore).lower_deviation() == 0_um);
    FITWRIGHT_CHECK_BOTH(given(bore).upper_limit() == 14.018_mm);
    FITWRIGHT_CHECK_BOTH(given(bore).lower_limit() == 14_mm);
    FITWRIGHT_CHECK_BOTH(given(bore).middle() == 14.009_mm);
    FITWRIGHT_CHECK_BOTH(given(bore).tolerance() == 18_um);
    FITWRIGHT_CHECK_BOTH(given(pin).upper_limit() == 13.994_mm);
    FITWRIGHT_CHECK_BOTH(given(pin).lower_limit() == 13.983_mm);
    FITWRIGHT_CHECK_BOTH(given(pin).middle() == 13.9885_mm);
    FITWRIGHT_CHECK_BOTH(given(pin).tolerance() == 11_um);
    FITWRIGHT_CHECK_BOTH(hole_limits(given(1_mm), {.upper = 3_nm, .lower = 0_nm}).middle() == 1.000002_mm);
}

TEST_CASE("both limits are allowed sizes") {
    FITWRIGHT_CHECK_BOTH(given(bore).allow(14_mm));
    FITWRIGHT_CHECK_BOTH(given(bore).allow(14.018_mm));
    FITWRIGHT_CHECK_BOTH(given(bore).allow(14.009_mm));
    FITWRIGHT_CHECK_BOTH(!given(bore).allow(13.999999_mm));
    FITWRIGHT_CHECK_BOTH(!given(bore).allow(14.018001_mm));
}

TEST_CASE("limits without a class") {
    constexpr hole_limits hole = between(7.978_mm, 7.986_mm);
    constexpr shaft_limits shaft = between(7.978_mm, 7.986_mm);
    FITWRIGHT_CHECK_BOTH(given(hole).lower_limit() == 7.978_mm);
    FITWRIGHT_CHECK_BOTH(given(hole).upper_limit() == 7.986_mm);
    FITWRIGHT_CHECK_BOTH(given(shaft).lower_limit() == 7.978_mm);
    FITWRIGHT_CHECK_BOTH(given(shaft).upper_limit() == 7.986_mm);
    // The nominal size is where there is most material.
    FITWRIGHT_CHECK_BOTH(given(hole).nominal() == 7.978_mm);
    FITWRIGHT_CHECK_BOTH(given(hole).upper_deviation() == 8_um);
    FITWRIGHT_CHECK_BOTH(given(hole).lower_deviation() == 0_um);
    FITWRIGHT_CHECK_BOTH(given(shaft).nominal() == 7.986_mm);
    FITWRIGHT_CHECK_BOTH(given(shaft).upper_deviation() == 0_um);
    FITWRIGHT_CHECK_BOTH(given(shaft).lower_deviation() == -8_um);
    FITWRIGHT_CHECK_BOTH(hole_limits::between(given(7.978_mm), 7.986_mm) == hole);
    FITWRIGHT_CHECK_BOTH(shaft_limits::between(given(7.978_mm), 7.986_mm) == shaft);
    FITWRIGHT_CHECK_BOTH(between(given(1_mm), 2_mm) == stated_limits{1_mm, 2_mm});
}

TEST_CASE("limits the wrong way round are kept, and allow nothing") {
    constexpr hole_limits crossed = between(8_mm, 7.99_mm);
    FITWRIGHT_CHECK_BOTH(given(crossed).tolerance() == -10_um);
    FITWRIGHT_CHECK_BOTH(!given(crossed).allow(8_mm));
    FITWRIGHT_CHECK_BOTH(!given(crossed).allow(7.99_mm));
    FITWRIGHT_CHECK_BOTH(!given(crossed).allow(7.995_mm));
}

TEST_CASE("a single size has no tolerance, and is allowed") {
    constexpr shaft_limits gauge = between(8_mm, 8_mm);
    FITWRIGHT_CHECK_BOTH(given(gauge).tolerance() == 0_mm);
    FITWRIGHT_CHECK_BOTH(given(gauge).middle() == 8_mm);
    FITWRIGHT_CHECK_BOTH(given(gauge).allow(8_mm));
}

TEST_CASE("limits are equal if nominal size and limits are, wherever they come from") {
    static constexpr source drawing{"drawing 4711", "view A", confidence::stated};
    constexpr hole_limits drawn(14_mm, {.upper = 18_um, .lower = 0_um}, drawing);
    FITWRIGHT_CHECK_BOTH(given(drawn) == bore);
    FITWRIGHT_CHECK_BOTH(given(bore) != hole_limits(14_mm, {.upper = 18_um, .lower = 1_um}));
    FITWRIGHT_CHECK_BOTH(given(bore) != hole_limits(14_mm, {.upper = 19_um, .lower = 0_um}));
    FITWRIGHT_CHECK_BOTH(given(bore) != hole_limits(14.001_mm, {.upper = 17_um, .lower = -1_um}));
    CHECK(drawn.origin().document == "drawing 4711");
    CHECK(bore.origin().document == "as stated");
    CHECK(bore.origin().how_sure == confidence::stated);
    static_assert(!std::is_convertible_v<hole_limits, shaft_limits> &&
                  !std::is_convertible_v<shaft_limits, hole_limits>);
    static_assert(!std::is_constructible_v<hole_limits, shaft_limits>);
    static_assert(std::is_trivially_copyable_v<hole_limits> && std::is_trivially_copyable_v<shaft_limits>);
}

TEST_CASE("a part as measured") {
    constexpr measured_shaft part(7.968_mm, 2_um);
    FITWRIGHT_CHECK_BOTH(given(part).size() == 7.968_mm);
    FITWRIGHT_CHECK_BOTH(given(part).uncertainty() == 2_um);
    FITWRIGHT_CHECK_BOTH(given(part).limits().lower_limit() == 7.966_mm);
    FITWRIGHT_CHECK_BOTH(given(part).limits().upper_limit() == 7.97_mm);
    FITWRIGHT_CHECK_BOTH(given(part).limits().nominal() == 7.968_mm);
    FITWRIGHT_CHECK_BOTH(measured_hole(given(8_mm), -2_um).uncertainty() == 2_um);
    FITWRIGHT_CHECK_BOTH(measured_hole(given(8_mm), 0_um).limits().tolerance() == 0_um);
    FITWRIGHT_CHECK_BOTH(given(part) == measured_shaft(7.968_mm, 2_um));
    FITWRIGHT_CHECK_BOTH(given(part) != measured_shaft(7.968_mm, 3_um));
    static_assert(!std::is_convertible_v<measured_hole, measured_shaft>);
    static_assert(std::is_trivially_copyable_v<measured_shaft>);
}

TEST_CASE("sources and cautions") {
    FITWRIGHT_CHECK_BOTH(in_words(given(confidence::published)) == "published");
    for (const auto c : {confidence::published, confidence::practice, confidence::memory,
                         confidence::uncertain, confidence::stated})
        CHECK(!in_words(c).empty());
    FITWRIGHT_CHECK_BOTH(cautions().empty());
    FITWRIGHT_CHECK_BOTH((given(caution::hot) | caution::press_force).contains(caution::hot));
    FITWRIGHT_CHECK_BOTH((given(caution::hot) | caution::press_force).contains(caution::press_force));
    FITWRIGHT_CHECK_BOTH(!(given(caution::hot) | caution::press_force).contains(caution::cold));
    FITWRIGHT_CHECK_BOTH((cautions(caution::hot) | caution::hot) == cautions(caution::hot));
    for (const auto c : {caution::hot, caution::cold, caution::press_force, caution::under_pressure,
                         caution::rotating, caution::brittle, caution::chemical})
        CHECK(!in_words(c).empty());
}

TEST_CASE("sizes beyond any part are taken as far away, and nothing overflows") {
    constexpr length least = length::from_nanometres(INT64_MIN);
    constexpr length most = length::from_nanometres(INT64_MAX);
    constexpr length farther = length::from_nanometres(500'000'000'000'000'000); // 500 000 km
    FITWRIGHT_CHECK_BOTH(hole_limits::between(given(least), given(most)).lower_limit() < -farther);
    FITWRIGHT_CHECK_BOTH(hole_limits::between(given(least), given(most)).upper_limit() > farther);
    FITWRIGHT_CHECK_BOTH(hole_limits::between(given(least), given(most)).tolerance() > farther * 2);
    FITWRIGHT_CHECK_BOTH(shaft_limits::between(given(least), given(most)).middle() == 0_mm);
    FITWRIGHT_CHECK_BOTH(shaft_limits(between(given(most), given(least))).tolerance() < -farther * 2);
    FITWRIGHT_CHECK_BOTH(measured_hole(given(most), given(least)).uncertainty() > farther);
    FITWRIGHT_CHECK_BOTH(measured_hole(given(most), given(least)).limits().upper_limit() > farther * 2);
    FITWRIGHT_CHECK_BOTH(measured_shaft(given(least), given(most)).limits().lower_limit() < -farther * 2);
    FITWRIGHT_CHECK_BOTH(measured_shaft(given(8_mm), given(-2_um)).uncertainty() == 2_um);
    // what is not beyond it stays as it is
    FITWRIGHT_CHECK_BOTH(measured_shaft(given(farther), 0_um).size() == farther);
}
