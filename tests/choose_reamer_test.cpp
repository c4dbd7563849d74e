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

TEST_CASE("a measured reamer keeps its share in a narrow bore") {
    constexpr drawer_tool one[] = {hand_reamer(measured_shaft{7.982_mm, 1_um})}; // up to 7.983, and 3 um over
    static_assert(reamer_that_does(between(7.981_mm, 7.986_mm), one, material_family::steel)->margin == 0_um);
    const auto narrow = reamer_that_does(between(7.981_mm, 7.985999_mm), one, material_family::steel);
    REQUIRE(!narrow);
    CHECK(narrow.error().message().find("misses by 0.001 um") != text::npos);
    CHECK(
        reamer_that_does(between(7.981_mm, 7.986_mm), one, material_family::steel)->hole.origin().how_sure ==
        confidence::practice);
}

// ISO 236-1, first choice (from memory), as sold for H7 by DIN 1420: 8 H7 is 8.006 to 8.012 mm.
TEST_CASE("the reamers off the shelf that do") {
    constexpr auto h7 = sold_reamers_for("8 H7"_hole, material_family::steel);
    static_assert(h7 && h7->size() == 1);
    CHECK((*h7)[0].tool.name() == "8 H7 hand reamer");
    CHECK((*h7)[0].hole.least() == 8.006_mm);
    CHECK((*h7)[0].hole.most() == 8.015_mm);
    CHECK(h7->origin().how_sure == confidence::memory);
    // the bore led by a rod that measures 7.990: an 8 mm reamer, since nothing says that the rod is 8 mm
    const auto led = sold_reamers_for(*bore_for(measured_shaft{7.990_mm, 2_um}, {12_um, 40_um}),
                                      material_family::copper_alloy);
    REQUIRE(led);
    CHECK(led->size() == 1);
    CHECK((*led)[0].tool.nominal == 8_mm);
    // for the rod of 7.968 there is none; what to have made is said
    const auto none = sold_reamers_for(*bore_for(measured_shaft{7.968_mm, 2_um}, {8_um, 20_um}),
                                       material_family::copper_alloy);
    REQUIRE(!none);
    CHECK(none.error().message() ==
          "no reamer for a bore of 7.978 to 7.986 mm; the 8 H7 hand reamer misses by "
          "29 um; allowed: one made for it, of 7.981 to 7.984 mm");
}

TEST_CASE("the reamers off the shelf, against every one of them, the surest first") {
    std::mt19937 random(236);
    int none = 0;
    int one = 0;
    int many = 0;
    for (int i = 0; i < 3'000; ++i) {
        const length lower = 1.4_mm + 1_um * (random() % 20'000);
        const hole_limits bore = between(lower, lower + 1_um * (3 + random() % (i % 2 == 0 ? 2'000 : 60)));
        const work_material in = i % 3 == 0 ? material_family::aluminium : material_family::steel;
        std::size_t do_ = 0;
        for (const length d : hand_reamer_diameters())
            do_ += match_reamer(*reamer_of(d, "H7"_hole_class), bore, in).suits();
        const auto found = sold_reamers_for(bore, in);
        REQUIRE(found.has_value() == (do_ > 0));
        if (!found) {
            ++none;
            continue;
        }
        CHECK(found->size() == (do_ < sold_reamers::capacity ? do_ : sold_reamers::capacity));
        length before = 1_mm * 100;
        for (const reamer_choice& c : *found) {
            CHECK(c.hole.lies_within(bore));
            CHECK(c.margin <= before);
            before = c.margin;
        }
        ++(found->size() == 1 ? one : many);
    }
    CHECK(none > 300);
    CHECK(one > 300);
    CHECK(many > 30);
    CHECK(sold_reamers_for(between(1_mm, 60_mm), material_family::steel)->size() == sold_reamers::capacity);
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
