#include <fitwright/callout.hpp>
#include <fitwright/io.hpp>
#include <fitwright/io/choose.hpp>
#include <fitwright/io/gauge.hpp>
#include <fitwright/io/tool.hpp>
#include <fitwright/material.hpp>

#include <doctest/doctest.h>

#include <sstream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

template <class Value> std::string printed(const Value& value) {
    std::ostringstream out;
    out << value;
    return out.str();
}

bool says(const std::string& whole, const std::string& piece) {
    return whole.find(piece) != std::string::npos;
}

constexpr auto steel = material_family::steel;

} // namespace

TEST_CASE("tools and their sizes") {
    CHECK(printed(reamer_for("10 H7"_hole)) == "10.006 to 10.012 mm");
    CHECK(printed(tool_limits()) == "no such tool");
    CHECK(printed(between(7.978_mm, 7.986_mm)) == "7.978 to 7.986 mm");
    CHECK(printed(hand_reamer(10_mm, "H7"_hole_class)) == "10 H7 hand reamer");
    CHECK(printed(*nearest_drill(5.1_mm, drill_series::number)) == "#7");
    CHECK(printed(drill_series::letter) == "letter");
    CHECK(printed(*reamer_of("10 H7"_hole)) ==
          "10.006 to 10.012 mm, cuts up to 0.003 mm over: DIN 1420 (ISO 522), 15 % and 35 % of the hole's "
          "tolerance, rounded up (published)");
    CHECK(printed(overcut{4_um, 6_um, 8_um}) == "0.004 to 0.008 mm over, 0.006 in the mean: as stated");
    CHECK(says(printed(common_bit_overcut), "(uncertain)"));
    CHECK(says(printed(*stock_to_leave(finishing::hand_reaming, 10_mm, steel)),
               "0.2 to 0.3 mm on diameter: Under"));
    CHECK(
        printed(bit_flat(7.970_mm).below_half) ==
        "less than 3.985 mm: a few thou below half the diameter; how many is not said (Of all precision tools "
        "d-bits)");
}

TEST_CASE("expected holes, with their doubts") {
    const auto in_brass = printed(*drilled_hole(10_mm, material_family::copper_alloy));
    CHECK(says(in_brass, "10.07"));
    CHECK(says(in_brass, "(common practice, no source); the figures are those of steel and cast iron"));
    const reamer_size reamer = *reamer_of("10 H7"_hole);
    CHECK(printed(match_reamer(reamer, "10 H7"_hole, steel)) ==
          "suits: 10.006 to 10.015 mm: DIN 1420 (ISO 522), 15 % and 35 % of the hole's tolerance, rounded up "
          "(published)");
    CHECK(printed(match_reamer(reamer, "10 F7"_hole, steel)).find("0.007 mm too small: 10.006") == 0);
    CHECK(printed(match_reamer(reamer, "10 H6"_hole, steel)).find("0.006 mm too large: 10.006") == 0);
    CHECK(says(printed(match_reamer(reamer, "10 H7"_hole, material_family::aluminium)),
               "it closes in as it cools"));
    CHECK(says(printed(match_reamer(reamer, between(10.007_mm, 10.01_mm), steel)),
               "0.001 mm too small and 0.005 mm too large"));
}

TEST_CASE("a plan, whole") {
    constexpr drawer_tool drawer[] = {twist_drill(9.7_mm), hand_reamer(10_mm, "H7"_hole_class)};
    const auto plan = plan_hole("10 H7"_hole, drawer, materials::brass_cuzn39pb3);
    REQUIRE(plan);
    CHECK(
        printed(*plan) ==
        "10 +0.015/0\n"
        "  centre, centre drill\n"
        "  drill, 9.7 mm drill: 9.7702 to 9.8852 mm, leaves 0.259 mm by the rule of 0.2 to 0.3 mm; the figures "
        "are those of steel and cast iron\n"
        "  ream, 10 H7 hand reamer: 10.006 to 10.015 mm, decides the size\n"
        "size from DIN 1420 (ISO 522), 15 % and 35 % of the hole's tolerance, rounded up (published); prove it "
        "by a trial hole\n"
        "Turning parts catch and burst: guards on, no loose sleeves, check the safe speed.");
    CHECK(printed(plan->steps()[0]) == "centre, centre drill");
    CHECK(printed(hole_operation::half_round) == "half-round bit");
    CHECK(printed(hole_plan("10 H7"_hole)) == "10 +0.015/0");
    // the longest there is isn't cut
    constexpr drawer_tool longest[] = {twist_drill(9_mm), hand_reamer(between(9.982_mm, 9.984_mm)),
                                       boring_head({.from = 5_mm, .upto = 12_mm, .step = 0.04_mm}),
                                       lap({.from = 9_mm, .upto = 11_mm, .step = 1_um})};
    const auto lapped = plan_hole(between(9.985_mm, 9.995_mm), longest, material_family::magnesium);
    const auto bored = plan_hole(between(9.993_mm, 9.995_mm), longest, material_family::cast_iron);
    REQUIRE(bored);
    CHECK(bored->steps().size() == 5);
    CHECK(!written(*bored).is_cut());
    if (lapped) CHECK(!written(*lapped).is_cut());
}

TEST_CASE("offsets and dials") {
    constexpr radius_offset control{.increment = on_radius(1_um),
                                    .largest_change = on_radius(20_um),
                                    .sense = offset_sense::larger_makes_larger};
    const auto step = offset_to_recut(measured_hole(13.962_mm, 2_um), "14 H7"_hole, control);
    REQUIRE(step);
    const std::string said = printed(*step);
    CHECK(said.find("offset by 0.02 mm on radius, expect 14.002 +/-0.002; the largest change allowed: cut, "
                    "measure and ask again\nTurning parts") == 0);
    CHECK(printed(on_diameter(1_um)) == "0.001 mm on diameter");
    const auto turn = divisions_to_go(measured_hole(13.962_mm, 2_um), "14 H7"_hole, on_radius(0.5_thou));
    REQUIRE(turn);
    CHECK(says(printed(*turn), "division, then "));
}

TEST_CASE("gauges and verdicts") {
    CHECK(printed(verdict::cannot_tell) == "cannot tell");
    const auto plug = plug_gauge("14 H7"_hole);
    REQUIRE(plug);
    CHECK(printed(*plug).find(
              "GO 14.001 to 14.004, worn out below 13.998; NOT GO 14.0165 to 14.0195 mm; ISO/R "
              "1938:1971, formulas, constants for IT6 and IT7 (published)\nTurning parts") == 0);
    CHECK(says(printed(*ring_gauge("14 g6"_shaft)), "worn out above "));
    CHECK(printed(*checks_for_ring("14 g6"_shaft)).find("check plugs: GO ") == 0);
    CHECK(printed(on_one_end(*plug)).find("first 14.001 to 14.004, behind it 14.0165 to 14.0195 mm; ISO/R") ==
          0);
    // the source that stands for a grade of finer_grade
    CHECK(says(printed(*plug_gauge(between(8_mm, 8.012_mm), {.constants_of = grade::it6})),
               "constants of the next finer grade"));
}

TEST_CASE("parts that lead") {
    const auto bore = bore_for(measured_shaft{7.968_mm, 2_um}, {8_um, 20_um});
    CHECK(printed(clearance_window{8_um, 20_um}) == "0.008 to 0.02 mm");
    CHECK(printed(*nearest_class(*bore, 8_mm)).find("8 ") == 0);
    CHECK(printed(*nearest_class("8 H7"_hole, 8_mm)) == "8 H7, 8 to 8.015 mm: within the limits wanted");
    CHECK(says(printed(*nearest_class(hole_limits(between(8.1_mm, 8.101_mm)), 12_mm)), "those wanted by "));
    const measured_hole holes[] = {{8.01_mm, 1_um}, {8.02_mm, 1_um}};
    const measured_shaft shafts[] = {{8.01_mm, 1_um}, {8_mm, 1_um}};
    CHECK(
        printed(*pair_up(holes, shafts, {5_um, 15_um})) ==
        "2 pairs\n  hole 1 and shaft 2: clearance 0.008 to 0.012 mm\n  hole 2 and shaft 1: clearance 0.008 to 0.012 mm");
    CHECK(
        printed(*sleeve_for(measured_hole(12.08_mm, 3_um), "12 H7"_hole, {.wall = 1.5_mm})) ==
        "bore out to 16 +0.018/0, press in a sleeve of 16 +0.039/+0.028, bring its bore to 12 +0.018/0 "
        "afterwards; wall 1.991 mm\nPressing stores force: guard the work, stand aside, never a hammer on a hard "
        "or brittle part.");
    constexpr drawer_tool drawer[] = {hand_reamer(9_mm, "H7"_hole_class)};
    CHECK(
        printed(*next_reamer_up(measured_hole(8.05_mm, 3_um), drawer, steel))
            .find(
                "9 H7 hand reamer, takes 0.953 to 0.965 mm, bore first: hole 9.006 to 9.015 mm: DIN 1420") ==
        0);
    CHECK(printed(*reamer_that_does("9 H7"_hole, drawer, steel))
              .find("9 H7 hand reamer: hole 9.006 to 9.015 mm") == 0);
    CHECK(
        printed(*sold_reamers_for("8 H7"_hole, steel))
            .find(
                "off the shelf (ISO 236-1, first choice of diameters (from memory of the document)):\n  8 H7 hand") ==
        0);
}
