#include "support/both.hpp"
#include "support/csv.hpp"
#include "support/short_names.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/tool/reamed_hole.hpp>
#include <fitwright/tool/reamer.hpp>
#include <fitwright/tool/stock.hpp>
#include <fitwright/units.hpp>

#include <doctest/doctest.h>

#include <random>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;
using enum fitwright::position;

namespace {

csv_table data(const std::string& name) {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/" + name);
    REQUIRE(table.fault == "");
    return table;
}

std::int64_t whole(const std::string& cell) { return scaled(cell, 0).value(); }
length mm(const std::string& cell) { return length::from_nanometres(scaled(cell, 6).value()); }
length inches(const std::string& cell) {
    return length::from_nanometres(scaled(cell, 7).value() * 254 / 100);
}

/// The hole 10 mm + IT, and what DIN 1420 makes of it in micrometres above 10 mm.
constexpr hole_limits hole_of(std::int64_t it_um) { return {10_mm, um(it_um, 0)}; }
constexpr bool is_reamer(const tool_limits& r, std::int64_t upper_um, std::int64_t lower_um) {
    return r.upper_limit() == 10_mm + 1_um * upper_um && r.lower_limit() == 10_mm + 1_um * lower_um;
}

constexpr bool says(const error& e, text piece) { return e.message().find(piece) != text::npos; }

struct has_family {
    text name;
    material_family family;
};

} // namespace

// DIN 1420: rows printed by Guhring and Dormer, the rest by the rule on ISO 286 limits.
TEST_CASE("reamers for ISO 286 holes, every worked row") {
    csv_table table = data("reamer_worked.csv");
    REQUIRE(table.rows.size() == 67);
    int printed = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const length nominal = mm(table.cell(i, "upto_mm"));
        const auto wanted_class = read_hole_class(text(table.cell(i, "hole_class").c_str()));
        REQUIRE(wanted_class);
        const auto hole = limits(nominal, *wanted_class);
        REQUIRE(hole);
        CAPTURE(table.cell(i, "hole_class"));
        CHECK(hole->lower_deviation() == 1_um * whole(table.cell(i, "hole_lower_um")));
        CHECK(hole->upper_deviation() == 1_um * whole(table.cell(i, "hole_upper_um")));
        CHECK(hole->tolerance() == 1_um * whole(table.cell(i, "it_um")));
        const tool_limits reamer = reamer_for(*hole);
        CHECK(reamer.upper_limit() == nominal + 1_um * whole(table.cell(i, "reamer_upper_um")));
        CHECK(reamer.lower_limit() == nominal + 1_um * whole(table.cell(i, "reamer_lower_um")));
        CHECK(hole->upper_limit() - reamer.upper_limit() == 1_um * whole(table.cell(i, "reduction_um")));
        CHECK(reamer.tolerance() == 1_um * whole(table.cell(i, "reamer_tolerance_um")));
        const auto as_sold = reamer_of(nominal, *wanted_class);
        REQUIRE(as_sold);
        CHECK(as_sold->limits() == reamer);
        CHECK(as_sold->oversize() == hole->upper_limit() - reamer.upper_limit());
        printed += table.cell(i, "confirmed") != "rule";
    }
    CHECK(printed == 20);
    CHECK(table.fault == "");
}

// DIN 1420: the H7 table as Dormer prints it, p. 568.
TEST_CASE("H7 reamers, every range") {
    csv_table table = data("reamer_h7_limits.csv");
    REQUIRE(table.rows.size() == 7);
    for (std::size_t i = 0; i < table.rows.size(); ++i)
        for (const length nominal : {mm(table.cell(i, "over_mm")) + 1_um, mm(table.cell(i, "upto_mm"))}) {
            const auto hole = limits(nominal, hole_class{h, grade::it7});
            REQUIRE(hole);
            CHECK(hole->upper_deviation() == 1_um * whole(table.cell(i, "hole_upper_um")));
            CHECK(reamer_for(*hole).upper_limit() == nominal + 1_um * whole(table.cell(i, "upper_um")));
            CHECK(reamer_for(*hole).lower_limit() == nominal + 1_um * whole(table.cell(i, "lower_um")));
        }
    CHECK(table.fault == "");
}

// Dormer's worked example; Guhring's table.
TEST_CASE("a reamer marked with a class is not of that class in size") {
    FITWRIGHT_CHECK_BOTH(reamer_for(given("10 D8"_hole)) == tool_limits(10.050_mm, 10.058_mm));
    FITWRIGHT_CHECK_BOTH(reamer_for(given("10 H7"_hole)) == tool_limits(10.006_mm, 10.012_mm));
    FITWRIGHT_CHECK_BOTH(reamer_for(given("10 H7"_hole)).origin().how_sure == confidence::published);
    // below nominal for minus holes
    FITWRIGHT_CHECK_BOTH(reamer_for(given("10 N7"_hole)) == tool_limits(9.987_mm, 9.993_mm));
    CHECK(reamer_for("10 H7"_hole).upper_limit<millimetre>().value() == 10.012);
    CHECK(reamer_for("10 H7"_hole).middle() == 10.009_mm);
    CHECK(reamer_for("10 H7"_hole).allow(10.012_mm));
    CHECK(!reamer_for("10 H7"_hole).allow(10.012001_mm));
}

// Exact products are not raised: taking IT as a difference of floating-point millimetres raises them.
TEST_CASE("shares of a tolerance are rounded up in integers") {
    FITWRIGHT_CHECK_BOTH(is_reamer(reamer_for(hole_of(given(std::int64_t{60}))), 51, 30));
    FITWRIGHT_CHECK_BOTH(is_reamer(reamer_for(hole_of(given(std::int64_t{140}))), 119, 70));
    FITWRIGHT_CHECK_BOTH(is_reamer(reamer_for(hole_of(given(std::int64_t{160}))), 136, 80));
    FITWRIGHT_CHECK_BOTH(is_reamer(reamer_for(hole_of(given(std::int64_t{220}))), 187, 110));
    FITWRIGHT_CHECK_BOTH(is_reamer(reamer_for(hole_of(given(std::int64_t{40}))), 34, 20));

    // against a rule written another way: count up in single micrometres until the share is covered
    for (std::int64_t it = 2; it <= 2'000; ++it) {
        std::int64_t reserve = 0;
        std::int64_t made = 0;
        while (reserve * 20 < it * 3) ++reserve; // 15 % is 3/20
        while (made * 20 < it * 7) ++made;       // 35 % is 7/20
        if (!is_reamer(reamer_for(hole_of(it)), it - reserve, it - reserve - made)) FAIL_CHECK(it);
    }
}

TEST_CASE("limits with an odd end keep it; only the shares are rounded") {
    FITWRIGHT_CHECK_BOTH(reamer_for(given("10 JS7"_hole)) == tool_limits(9.9985_mm, 10.0045_mm));
    // 0.5000 to 0.5007 in: 17.78 um, of which 2.667 and 6.223 um become 3 and 7 um
    FITWRIGHT_CHECK_BOTH(reamer_for(hole_limits::between(given(0.5_in), 0.5007_in)).upper_limit() ==
                         0.5007_in - 3_um);
    FITWRIGHT_CHECK_BOTH(reamer_for(hole_limits::between(given(0.5_in), 0.5007_in)).tolerance() == 7_um);
}

TEST_CASE("where the rounded shares take more than the tolerance there is no reamer") {
    const auto exist = [](length tolerance) {
        return reamer_for(hole_limits::between(10_mm, 10_mm + tolerance)).exist();
    };
    FITWRIGHT_CHECK_BOTH(!reamer_for(hole_limits::between(given(10_mm), 10.001_mm)).exist());
    FITWRIGHT_CHECK_BOTH(reamer_for(hole_limits::between(given(10_mm), 10.001_mm)) == tool_limits());
    FITWRIGHT_CHECK_BOTH(!reamer_for(hole_limits::between(given(10_mm), 10.001_mm)).allow(10_mm));
    FITWRIGHT_CHECK_BOTH(!reamer_for(hole_limits::between(given(10_mm), 10_mm)).exist());
    FITWRIGHT_CHECK_BOTH(!reamer_for(hole_limits::between(given(10.1_mm), 10_mm)).exist());
    CHECK(!exist(1.999_um));
    CHECK(exist(2_um));
    CHECK(exist(2.857_um));
    CHECK(!exist(2.858_um));
    CHECK(!exist(2.999_um));
    CHECK(exist(3_um));
    for (length tolerance = 3_um; tolerance < 200_um; tolerance += 7_nm) {
        const auto hole = hole_limits::between(10_mm, 10_mm + tolerance);
        const tool_limits reamer = reamer_for(hole);
        if (!reamer.exist() || reamer.lower_limit() < hole.lower_limit() ||
            reamer.upper_limit() >= hole.upper_limit())
            FAIL_CHECK(tolerance.nanometres());
    }
    FITWRIGHT_CHECK_BOTH(reamer_of(given(1_mm), hole(h, 1)).error().code() == error_code::tool_not_known);
    FITWRIGHT_CHECK_BOTH(says(reamer_of(given(1_mm), hole(h, 1)).error(), "a tolerance of 3 um or more"));
    FITWRIGHT_CHECK_BOTH(reamer_of(given(0_mm), hole(h, 7)).error().code() == error_code::size_out_of_range);
}

// ASME B94.2, from memory.
TEST_CASE("inch reamers, every range") {
    csv_table table = data("reamer_inch_tolerance.csv");
    REQUIRE(table.rows.size() == 3);
    for (std::size_t i = 0; i < 3; ++i)
        for (const length nominal :
             {inches(table.cell(i, "over_in")) + 1_nm, inches(table.cell(i, "upto_in"))}) {
            const auto reamer = inch_reamer_of(nominal);
            REQUIRE(reamer);
            CHECK(reamer->limits().upper_limit() == nominal + inches(table.cell(i, "upper_in")));
            CHECK(reamer->limits().lower_limit() == nominal + inches(table.cell(i, "lower_in")));
            CHECK(reamer->limits().origin().how_sure == confidence::memory);
        }
    CHECK(table.fault == "");
    FITWRIGHT_CHECK_BOTH(inch_reamer_of(given(0.25_in))->limits() == tool_limits(0.2501_in, 0.2504_in));
    FITWRIGHT_CHECK_BOTH(!inch_reamer_of(given(0_in)));
    FITWRIGHT_CHECK_BOTH(
        says(inch_reamer_of(given(3_in) + 1_nm).error(), "allowed are sizes above 0 up to 3 in"));
}

// ISO 236-1, from memory; what is uncertain is not handed out.
TEST_CASE("diameters of hand reamers") {
    csv_table table = data("reamer_diameters.csv");
    const auto all = hand_reamer_diameters();
    std::size_t shipped = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (table.cell(i, "confirmed") != "memory") continue;
        REQUIRE(shipped < all.size());
        CHECK(all[shipped] == mm(table.cell(i, "diameter_mm")));
        ++shipped;
    }
    CHECK(shipped == all.size());
    CHECK(sources::hand_reamer_diameters.how_sure == confidence::memory);
}

TEST_CASE("a reamer of which only the size is known") {
    constexpr reamer_size measured = tool_limits(measured_shaft{7.982_mm, 1_um});
    FITWRIGHT_CHECK_BOTH(measured.limits() == tool_limits(7.981_mm, 7.983_mm));
    FITWRIGHT_CHECK_BOTH(measured.oversize() == 3_um); // 15 % of IT7 = 15 um, rounded up
    FITWRIGHT_CHECK_BOTH(measured.origin().how_sure == confidence::practice);
    // whatever hole it is used for, and however narrow that is
    constexpr hole_limits narrow = between(7.978_mm, 7.985_mm);
    FITWRIGHT_CHECK_BOTH(match_reamer(measured, given(narrow), material_family::steel).hole.most() ==
                         7.986_mm);
    FITWRIGHT_CHECK_BOTH(match_reamer(measured, given(narrow), material_family::steel).too_large_by == 1_um);
    FITWRIGHT_CHECK_BOTH(
        match_reamer(measured, given(narrow), material_family::steel).hole.origin().how_sure ==
        confidence::practice);
    FITWRIGHT_CHECK_BOTH(match_reamer(measured, given("8 H7"_hole), material_family::steel).hole.most() ==
                         7.986_mm); // nor in one that it does not suit
    // one sold for H7 keeps the share of H7 in an H6 hole
    FITWRIGHT_CHECK_BOTH(
        match_reamer(*reamer_of(10_mm, "H7"_hole_class), given("10 H6"_hole), material_family::steel)
            .hole.most() == 10.015_mm);
    // from trials: as they had it
    FITWRIGHT_CHECK_BOTH(reamed_hole(reamer_size(measured.limits(), 8_um), material_family::steel).most() ==
                         7.991_mm);
}

TEST_CASE("the hole a reamer is expected to cut") {
    constexpr reamer_size h7 = *reamer_of(10_mm, "H7"_hole_class);
    for (const material_family family :
         {material_family::steel, material_family::cast_iron, material_family::copper_alloy,
          material_family::titanium, material_family::other}) {
        const expected_hole hole = reamed_hole(h7, family);
        CHECK(hole.least() == 10.006_mm);
        CHECK(hole.most() == 10.015_mm);
        CHECK(hole.mean() == 10.0105_mm);
        CHECK(hole.note().find("cut a test hole") == 0);
    }
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::steel)).origin().how_sure ==
                         confidence::published);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::cast_iron)).origin().how_sure ==
                         confidence::practice);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::steel)).doubts().empty());
    // tough alloys: nobody says by how much a dull reamer cuts under
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::nickel_alloy)).doubts() ==
                         hole_doubt::dull_edge);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::titanium)).origin().how_sure ==
                         confidence::practice);
    // light metal, Machinery's Handbook 27: expansion x diameter x rise; 25e-6 / K x 20 K is 0.05 %
    for (const material_family light : {material_family::aluminium, material_family::magnesium}) {
        const expected_hole hole = reamed_hole(h7, light);
        CHECK(hole.least() == 10.001_mm);
        CHECK(hole.most() == 10.015_mm);
        CHECK(hole.doubts() == hole_doubt::closes_in_warm);
        CHECK(hole.origin().how_sure == confidence::practice);
        CHECK(hole.origin().place.find("rise of up to 20 K") != text::npos);
    }
    FITWRIGHT_CHECK_BOTH(match_reamer(h7, given("10 H7"_hole), material_family::aluminium).suits());
    FITWRIGHT_CHECK_BOTH(
        match_reamer(*reamer_of(40_mm, "H7"_hole_class), given("40 H7"_hole), material_family::aluminium)
            .too_small_by == 8_um); // 40.012 less 0.05 %
    // a thin wall springs back: a guess of 0.1 %, which no plan relies on
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, thin_walled(given(material_family::steel))).least() == 9.996_mm);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, thin_walled(given(material_family::steel))).most() == 10.015_mm);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, thin_walled(given(material_family::steel))).origin().how_sure ==
                         confidence::uncertain);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, thin_walled(material_family::aluminium)).least() == 9.991_mm);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, thin_walled(material_family::aluminium)).doubts() ==
                         (hole_doubt::closes_in_warm | hole_doubt::springs_back));
    // plastic: 0.02 to 0.1 mm back on 10 mm, uncertain
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::plastic)).least() == 9.906_mm);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::plastic)).most() == 9.995_mm);
    FITWRIGHT_CHECK_BOTH(reamed_hole(h7, given(material_family::plastic)).origin().how_sure ==
                         confidence::uncertain);
    // anything with a family will do
    FITWRIGHT_CHECK_BOTH(
        reamed_hole(h7, has_family{"a grey iron", given(material_family::cast_iron)}).origin().how_sure ==
        confidence::practice);
}

TEST_CASE("whether a reamer suits a hole") {
    constexpr reamer_size h7 = *reamer_of(10_mm, "H7"_hole_class);
    constexpr auto steel = material_family::steel;
    FITWRIGHT_CHECK_BOTH(match_reamer(h7, given("10 H7"_hole), steel).suits());
    FITWRIGHT_CHECK_BOTH(match_reamer(h7, given("10 H9"_hole), steel).suits());
    FITWRIGHT_CHECK_BOTH(!match_reamer(h7, given("10 H6"_hole), steel).suits());
    FITWRIGHT_CHECK_BOTH(match_reamer(h7, given("10 H6"_hole), steel).too_large_by ==
                         6_um); // 10.012 + 3 - 10.009
    FITWRIGHT_CHECK_BOTH(match_reamer(h7, given("10 H6"_hole), steel).too_small_by == 0_um);
    FITWRIGHT_CHECK_BOTH(match_reamer(h7, given("10 F7"_hole), steel).too_small_by == 7_um);
    FITWRIGHT_CHECK_BOTH(!match_reamer(h7, given("10 H7"_hole), given(material_family::plastic)).suits());
    // worn down to the hole's lower limit it still does; a micrometre less and it doesn't
    FITWRIGHT_CHECK_BOTH(match_reamer(tool_limits(10_mm, 10.002_mm), given("10 H7"_hole), steel).suits());
    FITWRIGHT_CHECK_BOTH(
        match_reamer(tool_limits(9.999_mm, 10.002_mm), given("10 H7"_hole), steel).too_small_by == 1_um);
}

TEST_CASE("a reamer made for a hole always suits it, a larger one never does") {
    std::mt19937 random(1420);
    int tried = 0;
    for (int i = 0; i < 20'000; ++i) {
        const length lower = 1_mm + 1_nm * (random() % 100'000'000);
        const hole_limits hole = between(lower, lower + 1_nm * (random() % 60'000));
        const auto made = reamer_of(hole);
        REQUIRE(made.has_value() == reamer_for(hole).exist());
        if (!made) continue;
        ++tried;
        CHECK(made->limits() == reamer_for(hole));
        if (!match_reamer(*made, hole, material_family::steel).suits())
            FAIL_CHECK(lower.nanometres() << " + " << hole.tolerance().nanometres());
        const tool_limits larger(made->limits().lower_limit(), made->limits().upper_limit() + 1_nm);
        if (match_reamer(reamer_size(larger, made->oversize()), hole, material_family::steel).suits())
            FAIL_CHECK(lower.nanometres());
        // of known size only, it cuts over by what its own size has it, the same in every hole
        const reamer_size measured(made->limits());
        const hole_limits wide = between(lower - 1_mm, lower + 1_mm);
        if (match_reamer(measured, hole, material_family::steel).hole.most() !=
            match_reamer(measured, wide, material_family::steel).hole.most())
            FAIL_CHECK(lower.nanometres());
    }
    CHECK(tried > 18'000);
}

// The trade-school note and the trainees' handbook; Dormer, Metal Cutting Tool Handbook (both from
// memory); Modern Shop Practice.
TEST_CASE("stock for reaming, every row") {
    csv_table table = data("stock_reaming.csv");
    REQUIRE(table.rows.size() == 27);
    int checked = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const bool metric = table.cell(i, "unit") == "mm";
        const auto size = [&](const std::string& cell) { return metric ? mm(cell) : inches(cell); };
        const std::string& source_name = table.cell(i, "source");
        const std::string& method = table.cell(i, "method");
        const length over = size(table.cell(i, "over"));
        const length upto = table.cell(i, "upto").empty() ? over + 100_mm : size(table.cell(i, "upto"));
        const length least = size(table.cell(i, "least"));
        const length most = size(table.cell(i, "most"));
        const work_material material =
            table.cell(i, "material") == "light metal" ? material_family::aluminium : material_family::steel;
        const bool is_point = over == upto;
        for (const length finished : {is_point ? over : over + 1_um, upto}) {
            CAPTURE(source_name);
            CAPTURE(method);
            CAPTURE(finished);
            if (source_name == "Metal Cutting Tool Handbook" && method == "hand") {
                // 0.001 to 0.003 in, a fraction of what the others leave: not used
                CHECK(stock_to_leave(finishing::hand_reaming, 20_mm, material)->least > most);
            } else if (method == "hand") {
                const auto rule = stock_to_leave(finishing::hand_reaming, finished, material);
                REQUIRE(rule);
                CHECK(rule->origin().how_sure == confidence::published);
                if (source_name == "Under Sizes of Reaming") CHECK(*rule == stock{least, most});
                else CHECK((rule->allows(least) && rule->allows(most)));
            } else if (method == "machine, hole drilled") {
                const auto rule = stock_to_leave(finishing::machine_reaming, finished, material);
                REQUIRE(rule);
                CHECK(rule->least == least);
                CHECK(rule->most >= most);
                CHECK(rule->origin().how_sure == confidence::memory);
            } else if (method == "machine, hole core-drilled") {
                const auto rule = stock_to_leave(finishing::machine_reaming_core_drill, finished, material);
                REQUIRE(rule);
                CHECK(rule->least == least);
            } else if (method == "machine") {
                const auto rule = stock_to_leave(finishing::machine_reaming, finished, material);
                REQUIRE(rule);
                CHECK(rule->allows(least));
                const length hand_most = stock_to_leave(finishing::hand_reaming, finished, material)->most;
                CHECK(rule->most == (hand_most > most ? hand_most : most));
            } else {
                CHECK(*stock_to_leave(finishing::hand_reaming_after_machine, finished, material) ==
                      stock{least, most});
            }
            ++checked;
        }
    }
    CHECK(checked == 54);
    CHECK(table.fault == "");
    // the note prints 5 to 20 and 21 to 50 mm: what lies between belongs to the row above 20
    FITWRIGHT_CHECK_BOTH(*stock_to_leave(finishing::hand_reaming, given(20.001_mm), material_family::steel) ==
                         stock{300_um, 500_um});
    // between the printed points the machine figure is interpolated: 3/8 in gives 0.0125 in
    FITWRIGHT_CHECK_BOTH(
        stock_to_leave(finishing::machine_reaming, given(0.375_in), material_family::steel)->most ==
        0.0125_in);
    FITWRIGHT_CHECK_BOTH(*stock_to_leave(finishing::hand_reaming, given(10_mm), material_family::magnesium) ==
                         stock{300_um, 450_um});
}

// Common practice.
TEST_CASE("stock for finishing, every row") {
    csv_table table = data("stock_finishing.csv");
    REQUIRE(table.rows.size() == 5);
    constexpr finishing in_order[] = {finishing::boring, finishing::honing, finishing::lapping,
                                      finishing::grinding, finishing::grinding_after_hardening};
    for (std::size_t i = 0; i < 5; ++i) {
        const length over = mm(table.cell(i, "over_mm"));
        const length upto = mm(table.cell(i, "upto_mm"));
        for (const length finished : {over, upto}) {
            const auto rule = stock_to_leave(in_order[i], finished, material_family::steel);
            REQUIRE(rule);
            CHECK(rule->least == mm(table.cell(i, "least_mm")));
            CHECK(rule->most == mm(table.cell(i, "most_mm")));
            CHECK(rule->origin().how_sure == confidence::practice);
        }
        CHECK(!stock_to_leave(in_order[i], over - 1_nm, material_family::steel));
        CHECK(!stock_to_leave(in_order[i], upto + 1_nm, material_family::steel));
    }
    CHECK(table.fault == "");
    FITWRIGHT_CHECK_BOTH(
        stock_to_leave(finishing::boring, given(60_mm), material_family::steel).error().code() ==
        error_code::size_out_of_range);
    FITWRIGHT_CHECK_BOTH(says(stock_to_leave(finishing::boring, given(60_mm), material_family::steel).error(),
                              "allowed are 6 to 50 mm"));
    FITWRIGHT_CHECK_BOTH(
        says(stock_to_leave(finishing::machine_reaming, given(51_mm), material_family::steel).error(),
             "up to 50 mm for machine reaming"));
    FITWRIGHT_CHECK_BOTH(
        says(stock_to_leave(finishing::hand_reaming, given(0_mm), material_family::steel).error(),
             "sizes above 0"));
}

// The trade-school note: drill = reamed size - (undersize + 0.05 mm).
TEST_CASE("the drill under a reamer") {
    using enum drill_series;
    constexpr auto steel = material_family::steel;
    FITWRIGHT_CHECK_BOTH(drill_under_reamer(given(10_mm), metric, finishing::hand_reaming, steel)->diameter ==
                         9.7_mm);
    FITWRIGHT_CHECK_BOTH(drill_under_reamer(given(8_mm), metric, finishing::hand_reaming, steel)->diameter ==
                         7.7_mm);
    FITWRIGHT_CHECK_BOTH(drill_under_reamer(given(3_mm), metric, finishing::hand_reaming, steel)->diameter ==
                         2.8_mm);
    FITWRIGHT_CHECK_BOTH(
        drill_under_reamer(given(10_mm), metric, finishing::hand_reaming, material_family::aluminium)
            ->diameter == 9.6_mm);
    FITWRIGHT_CHECK_BOTH(drill_under_reamer(given(0.25_in), letter, finishing::hand_reaming, steel)->name() ==
                         "B");
    FITWRIGHT_CHECK_BOTH(
        drill_under_reamer(given(12_mm), letter, finishing::hand_reaming, steel).error().code() ==
        error_code::tool_missing);
    FITWRIGHT_CHECK_BOTH(
        says(drill_under_reamer(given(12_mm), letter, finishing::hand_reaming, steel).error(),
             "no letter drill leaves 0.2 to 0.3 mm under a reamer of 12 mm"));
    FITWRIGHT_CHECK_BOTH(
        drill_under_reamer(given(60_mm), metric, finishing::machine_reaming, steel).error().code() ==
        error_code::size_out_of_range);
    for (const length reamer : hand_reamer_diameters()) {
        if (reamer < 2_mm || reamer > 25_mm) continue;
        const auto drill = drill_under_reamer(reamer, metric, finishing::hand_reaming, steel);
        REQUIRE(drill);
        const auto rule = *stock_to_leave(finishing::hand_reaming, reamer, steel);
        CHECK(rule.allows(reamer - drill->diameter - 50_um));
    }
}
