// Reamers that lead. Reamers as sold for H7: DIN 1420 (ISO 522), Dormer catalogue p. 568: 8 H7 is 8.006
// to 8.012 mm, 10 H7 10.006 to 10.012 mm. Hand-reaming stock: tests/data/SOURCES_tool.md.

#include <fitwright/choose/next_reamer.hpp>
#include <fitwright/fitwright.hpp>

#include <doctest/doctest.h>

#include <random>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr drawer_tool drawer[] = {
    twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
    hand_reamer(8_mm, "H7"_hole_class),
    hand_reamer(measured_shaft{7.979_mm, 1_um}),
    hand_reamer(9_mm, "H7"_hole_class),
    hand_reamer(8.3_mm, "H7"_hole_class),
};

} // namespace

TEST_CASE("the reamer of the drawer that does") {
    static_assert(reamer_that_does("8 H7"_hole, drawer, material_family::steel)->tool.made_for ==
                  "H7"_hole_class);
    const auto h7 = reamer_that_does("8 H7"_hole, drawer, material_family::steel);
    REQUIRE(h7.has_value());
    CHECK(h7->tool.nominal == 8_mm);
    CHECK(h7->hole.lies_within("8 H7"_hole));
    CHECK(h7->margin >= 0_mm);

    // the found rod's bore takes the odd reamer; no standard one comes near
    const hole_limits bore = *bore_for(measured_shaft{7.968_mm, 2_um}, {8_um, 20_um});
    const auto odd = reamer_that_does(bore, drawer, material_family::copper_alloy);
    REQUIRE(odd.has_value());
    CHECK(odd->tool.least == 7.978_mm);
    CHECK(odd->hole.lies_within(bore));

    const auto none = reamer_that_does("12 H7"_hole, drawer, material_family::steel);
    REQUIRE(!none.has_value());
    CHECK(none.error().code() == error_code::tool_missing);
    CHECK(none.error().message().find("12.008 to 12.015 mm") != text::npos); // DIN 1420 for 12 H7
    CHECK(reamer_that_does("8 H7"_hole, {}, material_family::steel).error().code() ==
          error_code::tool_missing);
}

TEST_CASE("the next reamer up for a bore that is too large, and the shaft for it") {
    const measured_hole bore(8.05_mm, 3_um);
    const auto up = next_reamer_up(bore, drawer, material_family::steel);
    REQUIRE(up.has_value());
    CHECK(up->tool.nominal == 8.3_mm); // the smallest that still cuts
    CHECK(up->least_stock == up->tool.least - 8.053_mm);
    CHECK(up->least_stock > 0_mm);
    const auto shaft = shaft_for(up->hole, {6_um, 60_um});
    REQUIRE(shaft.has_value());
    const fit made(between(up->hole.least(), up->hole.most()), *shaft);
    CHECK(made.min_clearance() >= 6_um);
    CHECK(made.max_clearance() <= 60_um);

    const auto far = next_reamer_up(measured_hole(8.35_mm, 3_um), drawer, material_family::steel);
    REQUIRE(far.has_value());
    CHECK(far->tool.nominal == 9_mm);
    CHECK(far->bore_first); // 0.7 mm is more than a hand reamer takes
    CHECK(next_reamer_up(measured_hole(9.5_mm, 3_um), drawer, material_family::steel).error().code() ==
          error_code::tool_missing);
}

TEST_CASE("whatever does, does: against every reamer of many drawers") {
    std::mt19937 random(1420);
    for (int i = 0; i < 500; ++i) {
        drawer_tool tools[6];
        for (auto& t : tools)
            t = hand_reamer(measured_shaft{9.9_mm + 1_um * (random() % 200), 1_um * (random() % 4)});
        const length lower = 9.9_mm + 1_um * (random() % 200);
        const hole_limits bore = between(lower, lower + 1_um * (5 + random() % 40));
        const auto found = reamer_that_does(bore, tools, material_family::steel);
        bool any = false;
        for (const auto& t : tools)
            any = any ||
                  match_reamer(reamer_size(between(t.least, t.most)), bore, material_family::steel).suits();
        CHECK(found.has_value() == any);
        if (found) CHECK(found->hole.lies_within(bore));
    }
}
