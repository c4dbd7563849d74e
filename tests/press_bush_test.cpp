#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/press.hpp>
#include <fitwright/material.hpp>
#include <fitwright/press.hpp>

#include <doctest/doctest.h>

#include <limits>
#include <sstream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

// Bushes that close when they are pressed in, and plugs that are to hold a pressure.

namespace {

/// A bush of 10/14 mm in a boss of cast aluminium.
constexpr joint bush{.seat = "14 H7/r6"_fit,
                     .hub = {.made_of = materials::aluminium_356_t6, .outside = 30_mm},
                     .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 10_mm},
                     .joint_length = 12_mm,
                     .roughness = {.hub = 3_um, .shaft = 2_um},
                     .between = frictions::any_pair};

/// A brass plug of 9 x 8 mm in a block of aluminium with a wall of 6 mm.
constexpr joint plug_at(double degrees) {
    return {.seat = "9 H7/s6"_fit,
            .hub = {.made_of = materials::aluminium_6082_t6, .outside = 21_mm, .at = celsius(degrees)},
            .shaft = {.made_of = materials::brass_cuzn39pb3, .at = celsius(degrees)},
            .joint_length = 8_mm,
            .roughness = {.hub = 4_um, .shaft = 4_um},
            .between = frictions::any_pair};
}
constexpr plug_duty three_bar{.of_fluid = megapascals(0.3), .safety = 2};

} // namespace

TEST_CASE("the limits of a bore before and after pressing undo each other") {
    constexpr hole_limits wanted = between(10.013_mm, 10.028_mm); // 10 F7, ISO 286-1:2010
    constexpr range<length> closes{4_um, 9_um};
    constexpr auto plan = *bore_before_pressing(wanted, closes);
    FITWRIGHT_CHECK_BOTH(!bore_before_pressing(given(wanted), given(closes))->ream_after_pressing);
    FITWRIGHT_CHECK_BOTH(given(plan).before.lower_limit() == 10.022_mm);
    FITWRIGHT_CHECK_BOTH(given(plan).before.upper_limit() == 10.032_mm);
    CHECK(plan.tolerance_left == 10_um);
    // What is bored to these limits is within those wanted, both ways of closing.
    constexpr hole_limits after = bore_after_pressing(plan.before, closes);
    FITWRIGHT_CHECK_BOTH(bore_after_pressing(given(plan).before, given(closes)) == after);
    CHECK(after.lower_limit() == wanted.lower_limit());
    CHECK(after.upper_limit() == wanted.upper_limit());
    // A nanometre more of spread costs a nanometre of tolerance.
    CHECK(bore_before_pressing(wanted, {4_um, 9_um + 1_nm})->tolerance_left == 10_um - 1_nm);
    CHECK(plan.before.origin().how_sure == confidence::published);
}

TEST_CASE("the spread is wider than the tolerance: ream after pressing") {
    constexpr hole_limits wanted = between(10.013_mm, 10.028_mm);
    // As wide as the tolerance leaves one size; a nanometre more leaves none.
    const auto just = bore_before_pressing(wanted, {5_um, 20_um});
    CHECK_FALSE(just->ream_after_pressing);
    CHECK(just->before.tolerance() == 0_um);
    CHECK(just->before.lower_limit() == 10.033_mm);
    const auto over = bore_before_pressing(wanted, {5_um, 20.001_um});
    CHECK(over->ream_after_pressing);
    CHECK(over->tolerance_left == -1_nm);
    CHECK(over->tolerance == 15_um);
    CHECK(over->closes_by.most == 20.001_um);
    // What the shop can hold decides as well.
    CHECK(bore_before_pressing(wanted, {5_um, 12_um}, {.least_tolerance = 8_um})->ream_after_pressing ==
          false);
    CHECK(bore_before_pressing(wanted, {5_um, 12_um}, {.least_tolerance = 8.001_um})->ream_after_pressing);
    // The stock is there even in the bush that closes least.
    const auto reamed = bore_before_pressing(wanted, {5_um, 25_um}, {.stock = 0.1_mm});
    CHECK(reamed->largest_before_reaming == 9.918_mm);

    for (const auto& bad :
         {bore_before_pressing(between(10_mm, 9_mm), {5_um, 6_um}),
          bore_before_pressing(wanted, {6_um, 5_um}), bore_before_pressing(wanted, {-1_um, 5_um}),
          bore_before_pressing(wanted, {5_um, 6_um}, {.stock = -1_um}),
          bore_before_pressing(wanted, {5_um, 6_um}, {.least_tolerance = -1_um})}) {
        REQUIRE_FALSE(bad);
        CHECK(bad.error().code() == error_code::boring_not_possible);
        CHECK(bad.error().message().find("allowed: ") != text::npos);
    }
}

TEST_CASE("a bush of 10/14 pressed r6 into a boss of 30: ream 10 F7 after pressing") {
    const auto pressed = press(bush);
    REQUIRE(pressed);
    const auto plan = ream_after_pressing("10 F7"_hole, *pressed, {.stock = 0.1_mm});
    REQUIRE(plan);
    CHECK(plan->closes_by == pressed->at_20.bore_closes_by);
    CHECK(plan->ream_after_pressing); // 5 to 34 um of interference, 29 um of spread
    CHECK(plan->doubts == pressed->doubts);
    CHECK(plan->take_care.contains(caution::press_force));
    // By hand, Lame: a thin bush in a soft boss closes by half of the interference.
    const double hub = ((30.0 * 30 + 14 * 14) / (30.0 * 30 - 14 * 14) + 0.33) / 72.4e9;
    const double shaft = ((14.0 * 14 + 10 * 10) / (14.0 * 14 - 10 * 10) - 0.34) / 100e9;
    const double pascals = 34e-6 / (0.014 * (hub + shaft));
    const double closes = 2 * pascals * 0.010 / (100e9 * (1 - 100.0 / 196));
    CHECK(pressed->at_20.bore_closes_by.most - length(quantity<metre>::from_value(closes)) <= 1_nm);
    CHECK(pressed->at_20.bore_closes_by.most >= length(quantity<metre>::from_value(closes)));
    CHECK(pressed->doubts.contains(press_doubt::shaft_past_elastic_limit)); // 97 MPa is soon reached

    std::ostringstream out;
    out << *plan;
    CHECK(out.str().find("ream after pressing; before it bore no larger than 9.913") != std::string::npos);
    CHECK(out.str().find("mind: the shaft yields") != std::string::npos);
    out.str("");
    out << *bore_before_pressing("10 F7"_hole, {5_um, 9_um});
    CHECK(out.str().starts_with(
        "the bore closes by 5.0 to 9.0 um, a spread of 4.0 um of a tolerance of 15.0 um: bore "
        "10.022 to 10.033 mm before pressing\ncare: "));
}

TEST_CASE("past its elastic limit a bush closes further than Lame says: ream it, whatever the spread") {
    joint tight = bush;
    tight.seat = press_seat(14_mm, diametral_interference(20_um)); // one size: no spread but the smoothing
    const auto pressed = press(tight);
    REQUIRE(pressed);
    REQUIRE(*pressed->at_20.shaft.margin() < 1);
    const auto plan = ream_after_pressing("10 F7"_hole, *pressed, {.stock = 0.1_mm});
    REQUIRE(plan);
    CHECK(plan->tolerance_left > 10_um); // by the spread alone it could be bored first
    CHECK(plan->ream_after_pressing);
    CHECK(plan->may_yield);
    CHECK(plan->before.tolerance() == 0_um);
    CHECK(plan->doubts.contains(press_doubt::shaft_past_elastic_limit));
    CHECK(in_words(press_doubt::shaft_past_elastic_limit).find("further than said here") != text::npos);
    // The least is a bound still, so the stock is.
    CHECK(plan->largest_before_reaming == 9.913_mm + pressed->at_20.bore_closes_by.least);
    std::ostringstream out;
    out << *plan;
    CHECK(out.str().find(" um, and further where the bush yields") != std::string::npos);
    CHECK(out.str().find("ream after pressing") != std::string::npos);
    CHECK(out.str().find("before pressing\n") == std::string::npos);

    // It yields only when it is hot, or not at all.
    joint hot = bush;
    hot.hub = {.made_of = materials::steel_c45, .outside = 30_mm, .at = 150_degC};
    hot.shaft.at = 150_degC;
    hot.seat = press_seat(14_mm, diametral_interference(8_um));
    REQUIRE(*press(hot)->at_20.shaft.margin() > 1);
    REQUIRE(*press(hot)->in_service.shaft.margin() < 1);
    CHECK(ream_after_pressing("10 F7"_hole, *press(hot))->ream_after_pressing);
    hot.hub.at = hot.shaft.at = 20_degC;
    const auto fine = ream_after_pressing("10 F7"_hole, *press(hot));
    CHECK_FALSE(fine->ream_after_pressing);
    CHECK_FALSE(fine->may_yield);

    // Just below the limit, and just above it.
    const auto most = greatest_interference(bush)->interference.value;
    tight.seat = press_seat(14_mm, diametral_interference(most));
    CHECK_FALSE(ream_after_pressing("10 F7"_hole, *press(tight))->may_yield);
    tight.seat = press_seat(14_mm, diametral_interference(most + 2_nm));
    CHECK(ream_after_pressing("10 F7"_hole, *press(tight))->may_yield);
}

TEST_CASE("the bore of a pressed liner hot: free growth less the closing-in at temperature") {
    joint liner = bush;
    liner.hub.at = liner.shaft.at = 95_degC;
    const auto r = press(liner);
    REQUIRE(r);
    constexpr hole_limits finished = between(10.013_mm, 10.028_mm);
    const hole_limits hot = bore_in_service(finished, r->bore_moves_by);
    CHECK(hot.lower_limit() == finished.lower_limit() + r->bore_moves_by.least);
    CHECK(hot.upper_limit() == finished.upper_limit() + r->bore_moves_by.most);
    // The block grows more than the bronze and lets the bush open again: more than bronze alone would grow.
    const auto alone = mean_expansion(liner.shaft.made_of, 95_degC);
    const auto free = length(quantity<metre>::from_value(0.010 * 75 * alone->value().value()));
    CHECK(r->bore_moves_by.most > free);
}

TEST_CASE("a plug of 9 H7/s6 in aluminium holds 0.3 MPa on the bench; hot it can't be told") {
    const auto cold = plug_under_pressure(plug_at(20), three_bar);
    REQUIRE(cold);
    // 0.3 MPa on 9 mm diameter.
    CHECK(cold->push.value() == doctest::Approx(0.3e6 * 3.14159265358979 / 4 * 81e-6));
    CHECK(cold->holds() == holding::yes);
    CHECK(cold->take_care.contains(caution::under_pressure));
    CHECK(cold->take_care.contains(caution::press_force));
    CHECK(cold->at_20.grip_margin.least == doctest::Approx(cold->in_service.grip_margin.least));

    const auto hot = plug_under_pressure(plug_at(95), three_bar);
    REQUIRE(hot);
    CHECK(hot->at_20.holds == holding::yes);
    CHECK(hot->in_service.holds == holding::cannot_tell);
    CHECK(hot->holds() == holding::cannot_tell);
    CHECK(hot->needed > cold->needed);
    CHECK(hot->needed > interference_of("9 H7/s6"_fit).least);

    // With the interference that it says is needed it holds, and with 10 nm less it doesn't for sure.
    for (const double at : {20.0, 95.0}) {
        joint enough = plug_at(at);
        const auto needed = plug_under_pressure(enough, three_bar)->needed;
        enough.seat = press_seat(9_mm, needed);
        CHECK(plug_under_pressure(enough, three_bar)->holds() == holding::yes);
        enough.seat = press_seat(9_mm, diametral_interference(needed.value - 10_nm));
        CHECK(plug_under_pressure(enough, three_bar)->holds() != holding::yes);
    }

    // A clearance fit doesn't hold whatever comes out.
    joint loose = plug_at(20);
    loose.seat = "9 H7/g6"_fit;
    CHECK(plug_under_pressure(loose, three_bar)->holds() == holding::no);
    CHECK(plug_under_pressure(loose, three_bar)->doubts.contains(press_doubt::no_grip_left));
}

TEST_CASE("the fluid widens the drilling; in a cup open to it it presses the wall outwards") {
    const plug_duty high{.of_fluid = megapascals(30), .safety = 1};
    joint cup = plug_at(20);
    const auto solid = plug_under_pressure(cup, high);
    REQUIRE(solid);
    CHECK(solid->effect == pressure_effect::hurts);
    CHECK(solid->interference_changes_by.most == 0_um); // the fluid stays out of the seat
    // By hand: d p/E ((D^2+d^2)/(D^2-d^2) + nu)
    const double widens = 0.009 * 30e6 / 70e9 * ((441.0 + 81) / (441 - 81) + 0.33);
    CHECK(static_cast<double>(-solid->interference_changes_by.least.nanometres()) ==
          doctest::Approx(widens * 1e9).epsilon(0.001));
    CHECK(solid->at_20.joint_pressure.least < solid->pressed.at_20.joint_pressure.least);
    CHECK(solid->at_20.joint_pressure.most == solid->pressed.at_20.joint_pressure.most);

    cup.shaft.bore = 8_mm; // a thin cup
    const auto closed = plug_under_pressure(cup, high);
    const auto open =
        plug_under_pressure(cup, {.of_fluid = megapascals(30), .safety = 1, .face = plug_face::open});
    REQUIRE(open);
    CHECK(closed->effect == pressure_effect::hurts);
    CHECK(open->effect == pressure_effect::helps);
    CHECK(open->interference_changes_by.most > open->interference_changes_by.least);
    CHECK(open->interference_changes_by.least > 0_um); // even if it gets into the seat: so thin is the cup
    CHECK(open->needed < closed->needed);
    CHECK(open->at_20.grip_margin.least > closed->at_20.grip_margin.least);
    // A wall of nothing passes the pressure on: the fluid then presses on the seat by itself.
    cup.shaft.bore = 8.99_mm;
    cup.joint_length = 80_mm; // so soft a cup takes a long seat to hold by
    cup.seat = press_seat(9_mm, diametral_interference(0_um));
    const auto foil =
        plug_under_pressure(cup, {.of_fluid = megapascals(30), .safety = 1, .face = plug_face::open});
    CHECK(foil->at_20.joint_pressure.most.value() == doctest::Approx(30e6).epsilon(0.01));
    CHECK(foil->doubts.contains(press_doubt::cup_end_not_checked));
}

TEST_CASE("an open cup: fluid inside it alone raises the pressure of the seat, as Lame has it") {
    // A cup of 7/9 mm: the seat's pressure with the fluid inside the cup only, from the two rings by hand.
    joint cup = plug_at(20);
    cup.shaft.bore = 7_mm;
    cup.seat = press_seat(9_mm, diametral_interference(20_um));
    cup.roughness = {.hub = 0_um, .shaft = 0_um};
    const plug_duty duty{.of_fluid = megapascals(30), .safety = 1, .face = plug_face::open};
    const auto r = plug_under_pressure(cup, duty);
    REQUIRE(r);
    const double hub = ((441.0 + 81) / (441 - 81) + 0.33) / 70e9;
    const double shaft = ((81.0 + 49) / (81 - 49) - 0.34) / 96e9;
    const double bulges = 2 * 30e6 * 49 / (96e9 * (81 - 49)); // of the cup, per diameter
    const double at_rest = 20e-6 / 0.009 / (hub + shaft);
    const double with_fluid = (20e-6 / 0.009 + bulges) / (hub + shaft);
    CHECK(r->pressed.at_20.joint_pressure.most.value() == doctest::Approx(at_rest).epsilon(0.001));
    CHECK(r->at_20.joint_pressure.most.value() == doctest::Approx(with_fluid).epsilon(0.001));
    CHECK(with_fluid > at_rest);
    CHECK(r->effect == pressure_effect::helps);
    // If it gets into the seat as well, the drilling widens.
    const double in_seat = (20e-6 / 0.009 + bulges - 30e6 * hub) / (hub + shaft);
    CHECK(r->at_20.joint_pressure.least.value() == doctest::Approx(in_seat).epsilon(0.001));
    CHECK(in_seat < with_fluid);
    std::ostringstream out;
    out << *r;
    CHECK(out.str().find("harder against its seat, unless it gets into the seat") != std::string::npos);
    // What is needed is by the worse of the two.
    cup.seat = press_seat(9_mm, r->needed);
    CHECK(plug_under_pressure(cup, duty)->holds() == holding::yes);
    cup.seat = press_seat(9_mm, diametral_interference(r->needed.value - 10_nm));
    CHECK(plug_under_pressure(cup, duty)->holds() != holding::yes);
}

TEST_CASE("the wall of an open cup is checked against bursting") {
    joint cup = plug_at(20);
    cup.shaft.bore = 8.5_mm; // a wall of 0.25 mm
    cup.seat = press_seat(9_mm, diametral_interference(1_um));
    const auto doubts_at = [&](double megapascals_in, plug_face face) {
        return plug_under_pressure(cup, {.of_fluid = megapascals(megapascals_in), .safety = 1, .face = face})
            ->doubts;
    };
    // In its seat the drilling holds the wall; loose in it, 30 MPa on 8.5 mm make 510 MPa in 0.25 mm (the
    // boiler formula), and brass yields at 250.
    CHECK_FALSE(doubts_at(30, plug_face::open).contains(press_doubt::cup_wall_yields));
    cup.seat = press_seat(9_mm, diametral_interference(-100_um));
    CHECK(doubts_at(30, plug_face::open).contains(press_doubt::cup_wall_yields));
    CHECK(doubts_at(16, plug_face::open).contains(press_doubt::cup_wall_yields));
    CHECK_FALSE(doubts_at(13, plug_face::open).contains(press_doubt::cup_wall_yields));
    CHECK_FALSE(doubts_at(1, plug_face::open).contains(press_doubt::cup_wall_yields));
    CHECK_FALSE(doubts_at(30, plug_face::closed).contains(press_doubt::cup_wall_yields));
    CHECK(doubts_at(1, plug_face::open).contains(press_doubt::cup_end_not_checked));
    CHECK_FALSE(
        plug_under_pressure(plug_at(20), three_bar)->doubts.contains(press_doubt::cup_end_not_checked));
    cup.shaft.made_of.yield_strength = cup.shaft.made_of.least_yield_strength = {};
    CHECK(doubts_at(1, plug_face::open).contains(press_doubt::shaft_strength_not_known));
}

TEST_CASE("what a plug needs is held against what the parts bear") {
    CHECK_FALSE(
        plug_under_pressure(plug_at(95), three_bar)->doubts.contains(press_doubt::more_than_it_bears));
    const auto high = plug_under_pressure(plug_at(20), {.of_fluid = megapascals(60), .safety = 3});
    REQUIRE(high);
    CHECK(high->needed > greatest_interference(plug_at(20))->interference);
    CHECK(high->doubts.contains(press_doubt::more_than_it_bears));
}

TEST_CASE("a plug's pressure or safety without end is refused, not wrapped round") {
    const double inf = std::numeric_limits<double>::infinity();
    for (const plug_face face : {plug_face::closed, plug_face::open}) {
        joint cup = plug_at(95);
        cup.shaft.bore = 5_mm;
        const auto of = [&](double pascals, double safety) {
            return plug_under_pressure(
                cup, {.of_fluid = pressure::from_value(pascals), .safety = safety, .face = face});
        };
        CHECK(of(1e6, inf).error().code() == error_code::factor_below_one);
        CHECK(of(1e6, 1e299).error().code() == error_code::joint_not_possible);
        CHECK(of(1e299, 1).error().code() == error_code::joint_not_possible);
        CHECK(of(1e16, 1).error().code() == error_code::joint_not_possible);
        cup.between.least = 1e-300;
        CHECK(of(1e6, 1).error().code() == error_code::joint_not_possible);
    }
    const hole_limits wanted = between(10.013_mm, 10.028_mm);
    const length end = length::from_nanometres(std::numeric_limits<std::int64_t>::max());
    CHECK_FALSE(bore_before_pressing(wanted, {0_um, end}));
    CHECK_FALSE(bore_before_pressing(wanted, {0_um, 1_um}, {.stock = end}));
}

TEST_CASE("a plug that can't be is refused, with what is allowed") {
    const auto code_of = [](const joint& j, const plug_duty& d) {
        return plug_under_pressure(j, d).error().code();
    };
    CHECK(code_of(plug_at(20), {.of_fluid = {}, .safety = 2}) == error_code::pressure_not_above_zero);
    CHECK(code_of(plug_at(20), {.of_fluid = megapascals(-1), .safety = 2}) ==
          error_code::pressure_not_above_zero);
    CHECK(code_of(plug_at(20), {.of_fluid = megapascals(1), .safety = 0.5}) == error_code::factor_below_one);
    CHECK(code_of(plug_at(20), {.of_fluid = megapascals(1), .safety = 2, .face = plug_face::open}) ==
          error_code::joint_not_possible);
    joint bad = plug_at(20);
    bad.hub.outside = 9_mm;
    CHECK(code_of(bad, three_bar) == error_code::joint_not_possible);
    bad = plug_at(20);
    bad.shaft.at = celsius(-250);
    CHECK(code_of(bad, three_bar) == error_code::temperature_out_of_range);
}

TEST_CASE("a plug printed, with its doubts") {
    std::ostringstream out;
    out << *plug_under_pressure(plug_at(95), three_bar);
    for (const char* piece :
         {"the fluid pushes with 19.1 N", "widens the drilling", "at 20 C: holds yes", "seals yes",
          "in service: holds cannot tell", "needed: an interference of at least ",
          "mind: the joint may let go", "care: Pressure stores energy"})
        CHECK_MESSAGE(out.str().find(piece) != std::string::npos, out.str());
    out.str("");
    out << *greatest_interference(plug_at(95));
    CHECK(out.str().find("on diameter\nmind: ") != std::string::npos);
}
