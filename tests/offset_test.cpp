#include "support/both.hpp"

#include <fitwright/callout.hpp>
#include <fitwright/gauge/judge.hpp>
#include <fitwright/tool/offset.hpp>

#include <doctest/doctest.h>

#include <random>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

constexpr hole_limits bore = "14 H7"_hole;   // 14 to 14.018, middle 14.009
constexpr shaft_limits pin = "14 g6"_shaft;  // 13.983 to 13.994, middle 13.9885

constexpr radius_offset by_radius{
    .increment = on_radius(1_um), .largest_change = on_radius(50_um), .sense = offset_sense::larger_makes_larger};
constexpr diameter_offset by_diameter{
    .increment = on_diameter(1_um), .largest_change = on_diameter(100_um), .sense = offset_sense::larger_makes_larger};

template <across Across> constexpr offset_register<Across> reversed(offset_register<Across> r) {
    r.sense = offset_sense::larger_makes_smaller;
    return r;
}

constexpr measured_hole hole_of(length size) { return {size, 2_um}; }
constexpr measured_shaft shaft_of(length size) { return {size, 2_um}; }

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos;
}

} // namespace

TEST_CASE("radius and diameter") {
    FITWRIGHT_CHECK_BOTH(given(on_radius(10_um)).across_diameter() == 20_um);
    FITWRIGHT_CHECK_BOTH(given(on_diameter(10_um)).across_diameter() == 10_um);
    FITWRIGHT_CHECK_BOTH(given(on_radius(10_um)) < on_radius(11_um));
    static_assert(!std::is_convertible_v<travel<across::radius>, travel<across::diameter>>);
    static_assert(!std::is_constructible_v<travel<across::radius>, travel<across::diameter>>);
    static_assert(!std::is_convertible_v<length, travel<across::radius>>);
}

TEST_CASE("the sign of a change, for each convention") {
    // A bore of 13.98 is to grow by 29 um to 14.009: 14 um on the radius leave 1 um on.
    constexpr measured_hole trial = hole_of(13.98_mm);
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, by_diameter)->change == on_diameter(29_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, reversed(by_diameter))->change == on_diameter(-29_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, by_radius)->change == on_radius(14_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, reversed(by_radius))->change == on_radius(-14_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, by_diameter)->expected == hole_of(14.009_mm));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, by_radius)->expected == hole_of(14.008_mm));
    FITWRIGHT_CHECK_BOTH(!offset_to_recut(given(trial), bore, by_radius)->is_clamped);
    FITWRIGHT_CHECK_BOTH(judge(offset_to_recut(given(trial), bore, by_radius)->expected, bore) == verdict::accept);
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, by_radius)->take_care.contains(caution::rotating));
    // A shaft of 14.0185 is to shrink by 30 um to 13.9885.
    constexpr measured_shaft turned = shaft_of(14.0185_mm);
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(turned), pin, by_diameter)->change == on_diameter(-30_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(turned), pin, reversed(by_diameter))->change == on_diameter(30_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(turned), pin, by_radius)->change == on_radius(-15_um));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(turned), pin, by_radius)->expected == shaft_of(13.9885_mm));
    // An aim of one's own.
    FITWRIGHT_CHECK_BOTH(offset_to_recut(given(trial), bore, 14.002_mm, by_diameter)->change == on_diameter(22_um));
}

TEST_CASE("a change that is too much for one step is clamped") {
    constexpr auto step = offset_to_recut(hole_of(13.8_mm), bore, by_radius);
    FITWRIGHT_CHECK_BOTH(given(step)->is_clamped);
    FITWRIGHT_CHECK_BOTH(given(step)->change == on_radius(50_um));
    FITWRIGHT_CHECK_BOTH(given(step)->expected == hole_of(13.9_mm));
    // Exactly the largest is not too much, nor is it if no whole increment fits in what is over.
    FITWRIGHT_CHECK_BOTH(!offset_to_recut(hole_of(given(13.909_mm)), bore, by_radius)->is_clamped);
    FITWRIGHT_CHECK_BOTH(!offset_to_recut(hole_of(given(13.908_mm)), bore, by_radius)->is_clamped);
    FITWRIGHT_CHECK_BOTH(offset_to_recut(hole_of(given(13.907_mm)), bore, by_radius)->is_clamped);
    // The largest change counts in whole increments.
    constexpr radius_offset odd{.increment = on_radius(4_um), .largest_change = on_radius(50_um), .sense = offset_sense::larger_makes_larger};
    FITWRIGHT_CHECK_BOTH(offset_to_recut(hole_of(given(13.8_mm)), bore, odd)->change == on_radius(48_um));
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(14.3_mm)), bore, by_radius)->change == on_radius(-50_um));
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(14.3_mm)), bore, by_radius)->is_clamped);
}

TEST_CASE("a part cut too far is refused, one that is good is left alone") {
    CHECK(says(offset_to_recut(hole_of(14.018001_mm), bore, by_radius), error_code::cut_too_far_already,
               "the hole is 14.018001 mm and a cut makes it larger still: allowed is up to 14.018 mm"));
    CHECK(says(offset_to_recut(shaft_of(13.982999_mm), pin, by_radius), error_code::cut_too_far_already,
               "the shaft is 13.982999 mm and a cut makes it smaller still: allowed is down to 13.983 mm"));
    CHECK(says(divisions_to_go(hole_of(14.02_mm), bore, on_radius(1_thou)), error_code::cut_too_far_already, "14.02"));
    for (const length good : {14.009_mm, 14.0105_mm, 14.018_mm}) {
        CHECK(offset_to_recut(hole_of(good), bore, by_radius)->change == on_radius(0_um));
        CHECK(offset_to_recut(hole_of(good), bore, by_radius)->expected == hole_of(good));
        CHECK(divisions_to_go(hole_of(good), bore, on_radius(1_um))->divisions == 0);
        CHECK(divisions_to_go(hole_of(good), bore, on_radius(1_um))->rest == on_diameter(0_um));
    }
    // Good, and short of the aim by less than an increment.
    CHECK(offset_to_recut(hole_of(14.008_mm), bore, by_radius)->change == on_radius(0_um));
    // The next part can be made smaller.
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(14.029_mm)), bore, by_radius)->change == on_radius(-10_um));
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(14.029_mm)), bore, by_radius)->expected == hole_of(14.009_mm));
}

TEST_CASE("a change below the control's increment is refused") {
    constexpr radius_offset coarse{.increment = on_radius(10_um), .largest_change = on_radius(50_um), .sense = offset_sense::larger_makes_larger};
    CHECK(says(offset_to_recut(hole_of(13.995_mm), bore, coarse), error_code::change_below_increment,
               "the aim is 0.014 mm away on the diameter and the smallest change makes 0.02 mm"));
    FITWRIGHT_CHECK_BOTH(offset_to_recut(hole_of(given(13.995_mm)), bore, 14.015_mm, coarse)->change == on_radius(10_um));
    // For the next part the nearest allowed size will do, on either side of the aim.
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(13.995_mm)), bore, coarse)->expected == hole_of(14.015_mm));
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(13.985_mm)), bore, coarse)->expected == hole_of(14.005_mm));
    // As near either side: the one that leaves metal on. 13.999 or 14.019, and 14.007 and 14.011 about 14.009.
    constexpr diameter_offset of_four{.increment = on_diameter(4_um), .largest_change = on_diameter(400_um), .sense = offset_sense::larger_makes_larger};
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(13.987_mm)), bore, of_four)->expected == hole_of(14.007_mm));
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(shaft_of(given(14.0105_mm)), pin, of_four)->expected == shaft_of(13.9905_mm));
    // 13.999 and 14.019: neither is allowed.
    CHECK(says(offset_for_next_part(hole_of(13.979_mm), bore, coarse), error_code::change_below_increment, "0.02 mm"));
    CHECK(says(offset_for_next_part(hole_of(14.039_mm), bore, coarse), error_code::change_below_increment, "0.03 mm away"));
    // Only the one that is less near is allowed.
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(13.98_mm)), bore, 14.017_mm, by_diameter)->expected == hole_of(14.017_mm));
    FITWRIGHT_CHECK_BOTH(offset_for_next_part(hole_of(given(13.979_mm)), bore, 14.018_mm, of_four)->expected == hole_of(14.015_mm));
}

TEST_CASE("what is no aim and no register") {
    CHECK(says(offset_to_recut(hole_of(13.98_mm), bore, 14.019_mm, by_radius), error_code::aim_outside_limits, "from 14 up to 14.018 mm"));
    CHECK(says(offset_for_next_part(hole_of(13.98_mm), bore, 13.999_mm, by_radius), error_code::aim_outside_limits, "13.999"));
    CHECK(says(divisions_to_go(hole_of(13.98_mm), bore, 15_mm, on_radius(1_um)), error_code::aim_outside_limits, "15 mm"));
    radius_offset r = by_radius;
    r.increment = on_radius(0_um);
    CHECK(says(offset_to_recut(hole_of(13.98_mm), bore, r), error_code::step_not_above_zero, "steps above zero"));
    CHECK(says(offset_for_next_part(hole_of(13.98_mm), bore, r), error_code::step_not_above_zero, "steps above zero"));
    r = by_radius;
    r.largest_change = on_radius(0.9_um);
    CHECK(says(offset_to_recut(hole_of(13.98_mm), bore, r), error_code::change_below_increment, "0.0009 mm and the smallest"));
    constexpr radius_offset without_sense{.increment = on_radius(1_um), .largest_change = on_radius(50_um), .sense = {}};
    CHECK(says(offset_to_recut(hole_of(13.98_mm), bore, without_sense), error_code::sense_not_stated, "larger_makes_smaller"));
    CHECK(says(divisions_to_go(hole_of(13.98_mm), bore, on_radius(0_um)), error_code::step_not_above_zero, "0 mm"));
    CHECK(says(divisions_to_go(hole_of(13.98_mm), bore, on_radius(-1_um)), error_code::step_not_above_zero, "-0.001 mm"));
}

TEST_CASE("dials in millimetres and thou, on radius and diameter") {
    // 109 um to go.
    constexpr measured_hole trial = hole_of(13.9_mm);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_radius(0.01_mm))->divisions == 5);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_radius(0.01_mm))->rest == on_diameter(9_um));
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_diameter(0.01_mm))->divisions == 10);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_radius(1_thou))->divisions == 2);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_radius(1_thou))->rest == on_diameter(7.4_um));
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_diameter(1_thou))->divisions == 4);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_diameter(1_thou))->rest == on_diameter(7.4_um));
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, on_diameter(1_thou))->expected == hole_of(14.0016_mm));
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, 14_mm, on_radius(0.01_mm))->divisions == 5);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(given(trial), bore, 14_mm, on_radius(0.01_mm))->rest == on_diameter(0_um));
    FITWRIGHT_CHECK_BOTH(divisions_to_go(shaft_of(given(14.0925_mm)), pin, on_radius(0.02_mm))->divisions == 2);
    FITWRIGHT_CHECK_BOTH(divisions_to_go(shaft_of(given(14.0925_mm)), pin, on_radius(0.02_mm))->expected == shaft_of(14.0125_mm));
}

TEST_CASE("any trial: never beyond the aim, never wrong by an increment, the number and the size agree") {
    std::mt19937 random(11);
    std::uniform_int_distribution<std::int64_t> some(-60, 60);
    std::uniform_int_distribution<std::int64_t> few(1, 9);
    int cuts = 0;
    int clamped = 0;
    int refused = 0;
    const auto try_one = [&]<side Side, across Across>(measured<Side> trial, size_limits<Side> wanted, length aim,
                                                       offset_register<Across> r) {
        const length step = r.increment.across_diameter();
        const bool is_hole = Side == side::hole;
        const length metal_on = is_hole ? aim - trial.size() : trial.size() - aim;
        const auto cut = offset_to_recut(trial, wanted, aim, r);
        const auto dial = divisions_to_go(trial, wanted, aim, r.increment);
        if (cut) {
            ++cuts;
            const length taken_off = is_hole ? cut->expected.size() - trial.size() : trial.size() - cut->expected.size();
            REQUIRE(taken_off >= 0_nm);
            REQUIRE((metal_on < 0_nm || taken_off <= metal_on));
            REQUIRE(cut->change.across_diameter() == (is_hole == (r.sense == offset_sense::larger_makes_larger) ? taken_off : -taken_off));
            REQUIRE(taken_off <= r.largest_change.across_diameter());
            clamped += cut->is_clamped ? 1 : 0;
            if (cut->is_clamped) REQUIRE(taken_off + step <= metal_on);
            else REQUIRE((metal_on < 0_nm || metal_on - taken_off < step));
            if (!cut->is_clamped) {
                REQUIRE(dial);
                REQUIRE(dial->expected == cut->expected);
                REQUIRE(step * dial->divisions == taken_off);
                if (metal_on >= 0_nm) REQUIRE(taken_off + dial->rest.value == metal_on);
            }
        } else {
            ++refused;
            REQUIRE(!wanted.allow(trial.size()));
            REQUIRE((cut.error().code() == error_code::cut_too_far_already) == (metal_on < 0_nm));
            REQUIRE(dial.has_value() == (metal_on >= 0_nm));
        }

        // The next part: by trying every number of increments.
        const auto next = offset_for_next_part(trial, wanted, aim, r);
        length best = 1_mm;
        for (std::int64_t n = -200; n <= 200; ++n) {
            const length size = trial.size() + step * n;
            const length off = size < aim ? aim - size : size - aim;
            if (wanted.allow(size) && off < best) best = off;
        }
        REQUIRE(next.has_value() == (best < 1_mm));
        if (next && !next->is_clamped) {
            REQUIRE(wanted.allow(next->expected.size()));
            const length size = next->expected.size();
            REQUIRE((size < aim ? aim - size : size - aim) == best);
            if (size != aim && (size < aim) != is_hole) // the other way is no nearer, and as near only if not allowed
                REQUIRE(!(wanted.allow(aim + (aim - size)) && (best * 2 == step)));
        }
    };
    for (int i = 0; i < 20'000; ++i) {
        const length aim = 5_mm + nm(some(random));
        const length upper = aim + nm(few(random) - 1);
        const length lower = aim - nm(few(random) - 1);
        const length size = 5_mm + nm(some(random));
        const length increment = nm(few(random));
        const length largest = increment + nm(some(random) + 60);
        const auto sense = i % 2 == 0 ? offset_sense::larger_makes_larger : offset_sense::larger_makes_smaller;
        const radius_offset on_r{.increment = on_radius(increment), .largest_change = on_radius(largest), .sense = sense};
        const diameter_offset on_d{.increment = on_diameter(increment), .largest_change = on_diameter(largest), .sense = sense};
        try_one(measured_hole(size, 1_nm), hole_limits::between(lower, upper), aim, on_r);
        try_one(measured_hole(size, 1_nm), hole_limits::between(lower, upper), aim, on_d);
        try_one(measured_shaft(size, 1_nm), shaft_limits::between(lower, upper), aim, on_r);
        try_one(measured_shaft(size, 1_nm), shaft_limits::between(lower, upper), aim, on_d);
    }
    CHECK(cuts > 20'000);
    CHECK(clamped > 5'000);
    CHECK(refused > 20'000);
}
