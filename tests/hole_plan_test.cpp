#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/tool.hpp>

#include <doctest/doctest.h>

#include <array>
#include <random>
#include <string>
#include <type_traits>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr auto brass = material_family::copper_alloy;

constexpr drawer_tool drawer[] = {
    twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
    twist_drills(drill_series::fractional, 0.5_in),
    hand_reamer(6_mm, "H7"_hole_class),
    hand_reamer(8_mm, "H7"_hole_class),
    hand_reamer(10_mm, "H7"_hole_class),
    hand_reamer(*inch_reamer_of(0.25_in)),
    hand_reamer(between(7.980_mm, 7.984_mm)),
    boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm}),
    half_round_bit(measured_shaft{7.970_mm, 2_um}),
};

constexpr bool says(const error& e, text piece) { return e.message().find(piece) != text::npos; }

/// What is done, in one letter a step: centre, drill, bore, ream, half-round bit, lap.
constexpr fixed_text<15> steps_of(const result<hole_plan>& plan) {
    fixed_text<15> t;
    if (!plan) return t << "none";
    for (const hole_step& s : plan->steps()) {
        constexpr char letters[] = {'c', 'd', 'b', 'r', 'h', 'l'};
        t << text(&letters[static_cast<int>(s.operation)], 1);
    }
    return t;
}

constexpr length drill_of(const result<hole_plan>& plan) { return plan->steps()[1].tool.least; }

struct some_material {
    text name;
    material_family family;
};

/// What every plan has to hold, whatever the drawer.
void check_plan(const hole_plan& plan, const hole_limits& wanted) {
    const auto steps = plan.steps();
    REQUIRE(steps.size() >= 2);
    REQUIRE(steps.size() <= hole_plan::capacity);
    CHECK(steps[0].operation == hole_operation::centre);
    CHECK(steps[1].operation == hole_operation::drill);
    for (std::size_t i = 1; i < steps.size(); ++i) {
        CHECK(steps[i].least <= steps[i].mean);
        CHECK(steps[i].mean <= steps[i].most);
        CHECK(steps[i - 1].most < steps[i].least); // each step cuts all round
        CHECK(steps[i - 1].operation < steps[i].operation);
        CHECK(!steps[i].put_right().empty());
        CHECK(steps[i].tool.kind != tool_kind::none);
        if (i < 2) continue;
        const hole_step& before = steps[i - 1];
        CHECK(before.least_stock == steps[i].least - before.most);
        CHECK(before.mean_stock == steps[i].mean - before.mean);
        CHECK(before.most_stock == steps[i].most - before.least);
        CHECK(before.least_stock > 0_um);
        // within the rule: a drilled hole counted 0.05 mm over its drill, a bored one as it is
        const length counted =
            before.operation == hole_operation::drill ? before.tool.least + 50_um : before.mean;
        const bool is_bore = steps[i].operation == hole_operation::bore;
        const length size = is_bore || steps[i].operation == hole_operation::lap
                                ? steps[i].mean
                                : (steps[i].tool.least + steps[i].tool.most) / 2;
        CHECK(before.counted_stock == size - counted);
        CHECK(before.counted_stock >= before.wanted_stock.least); // what is told beside the rule keeps it
        if (!is_bore) CHECK(before.counted_stock <= before.wanted_stock.most);
        if (steps[i].operation == hole_operation::lap) {
            CHECK(before.least_stock >= before.wanted_stock.least);
            CHECK(before.most_stock <= before.wanted_stock.most);
        }
    }
    for (std::size_t i = 0; i < steps.size(); ++i) CHECK(steps[i].decides_size == (i + 1 == steps.size()));
    CHECK(plan.wanted() == wanted);
    CHECK(wanted.allow(plan.least()));
    CHECK(wanted.allow(plan.most()));
    CHECK(plan.margin() >= 0_um);
    CHECK(plan.how_sure() != confidence::uncertain);
    const auto last = plan.deciding_step().operation;
    CHECK(plan.needs_trial_hole() == (last != hole_operation::bore && last != hole_operation::lap));
}

} // namespace

TEST_CASE("a reamer decides where one suits") {
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H7"_hole), drawer, brass)) == "cdr");
    constexpr auto plan = plan_hole("10 H7"_hole, drawer, brass);
    static_assert(plan.has_value());
    const auto steps = plan->steps();
    CHECK(steps[1].tool.name() == "9.7 mm drill");
    CHECK(steps[2].tool.name() == "10 H7 hand reamer");
    CHECK(steps[2].least == 10.006_mm);
    CHECK(steps[2].most == 10.015_mm);
    CHECK(plan->least() == 10.006_mm);
    CHECK(plan->most() == 10.015_mm);
    CHECK(plan->margin() == 0_um);
    CHECK(plan->how_sure() == confidence::published);
    CHECK(plan->needs_trial_hole());
    CHECK(steps[1].origin().how_sure == confidence::practice); // the figures of steel, from memory, in brass
    CHECK(plan_hole("10 H7"_hole, drawer, material_family::steel)->steps()[1].origin().how_sure ==
          confidence::memory);
    CHECK(steps[1].wanted_stock == stock{200_um, 300_um});
    CHECK(steps[1].warnings.contains(caution::rotating));
    CHECK(!steps[2].warnings.contains(caution::rotating)); // by hand
    CHECK(plan->warnings().contains(caution::rotating));
    CHECK(steps[2].put_right().find("Too small: lap it. Too large: only a sleeve") != text::npos);
    CHECK(steps[1].put_right().find("by less than the stock left: the next step puts it right") !=
          text::npos);
    CHECK(steps[1].put_right().find("Too small: open it up with a larger drill") ==
          0);                                // a drill takes no more off
    CHECK(steps[1].counted_stock == 259_um); // 10.009 less 9.75
    CHECK(steps[2].counted_stock == 0_um);
    CHECK(steps[1].doubts == hole_doubt::figures_of_steel); // brass
    CHECK(plan->doubts().empty());
    CHECK(steps[0].put_right().find("only boring moves a hole") != text::npos);
    CHECK(steps[0].least == 0_um);
    check_plan(*plan, "10 H7"_hole);
    static_assert(std::is_trivially_copyable_v<hole_plan>);
}

TEST_CASE("boring decides where no reamer suits, with the largest drill that leaves enough") {
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("14 H7"_hole), drawer, brass)) == "cdb");
    FITWRIGHT_CHECK_BOTH(drill_of(plan_hole(given("14 H7"_hole), drawer, brass)) == 13_mm);
    FITWRIGHT_CHECK_BOTH(drill_of(plan_hole(given("10 F7"_hole), drawer, brass)) == 9.7_mm);
    constexpr auto plan = plan_hole("14 H7"_hole, drawer, brass);
    CHECK(plan->least() == 14.004_mm); // 14.009 +/- half a division
    CHECK(plan->most() == 14.014_mm);
    CHECK(plan->margin() == 4_um);
    CHECK(plan->how_sure() == confidence::practice);
    CHECK(!plan->needs_trial_hole());
    CHECK(plan->deciding_step().put_right().find("another pass") != text::npos);
}

TEST_CASE("a drill decides where the hole is wide") {
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H13"_hole), drawer, brass)) == "cd");
    FITWRIGHT_CHECK_BOTH(drill_of(plan_hole(given("10 H13"_hole), drawer, brass)) == 10_mm);
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H13"_hole), drawer, material_family::steel)->how_sure() ==
                         confidence::memory);
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H13"_hole), drawer, brass)->how_sure() == confidence::practice);
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H13"_hole), drawer, material_family::titanium)->doubts() ==
                         (hole_doubt::figures_of_steel | hole_doubt::dull_edge));
    // in plastic or a thin wall nobody knows how far it springs back: no drill decides there
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H13"_hole), drawer, material_family::plastic)) ==
                         "cdb");
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H7"_hole), drawer, thin_walled(brass))) == "cdb");
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H13"_hole), drawer, brass)->needs_trial_hole());
    // below the tests the tolerance with jigs speaks: 1 mm drill, +0.004/-0.001 in
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(between(given(0.97_mm), 1.11_mm), drawer, brass)) == "cd");
    FITWRIGHT_CHECK_BOTH(plan_hole(between(given(0.97_mm), 1.11_mm), drawer, brass)->how_sure() ==
                         confidence::practice); // there is no jig
    FITWRIGHT_CHECK_BOTH(plan_hole(between(given(0.97_mm), 1.11_mm), drawer, brass)->doubts() ==
                         hole_doubt::without_jig);
}

TEST_CASE("a half-round bit decides only with an overcut from trials") {
    constexpr drawer_tool unproved[] = {twist_drill(7.7_mm), half_round_bit(measured_shaft{7.970_mm, 2_um})};
    constexpr drawer_tool proved[] = {
        twist_drill(7.7_mm),
        half_round_bit(measured_shaft{7.970_mm, 2_um}, {.least = 4_um, .mean = 6_um, .most = 8_um})};
    constexpr hole_limits wanted = between(7.968_mm, 7.988_mm);
    FITWRIGHT_CHECK_BOTH(plan_hole(given(wanted), unproved, brass).error().code() ==
                         error_code::tool_missing);
    FITWRIGHT_CHECK_BOTH(
        says(plan_hole(given(wanted), unproved, brass).error(), "its overcut is uncertain: cut trial holes"));
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given(wanted), proved, brass)) == "cdh");
    FITWRIGHT_CHECK_BOTH(plan_hole(given(wanted), proved, brass)->least() == 7.972_mm);
    FITWRIGHT_CHECK_BOTH(plan_hole(given(wanted), proved, brass)->most() == 7.980_mm);
    FITWRIGHT_CHECK_BOTH(plan_hole(given(wanted), proved, brass)->how_sure() == confidence::stated);
}

TEST_CASE("a bore makes ready for a reamer where no drill does") {
    constexpr drawer_tool few[] = {twist_drill(9_mm), machine_reamer(10_mm, "H7"_hole_class),
                                   boring_head({.from = 5_mm, .upto = 12_mm, .step = 0.04_mm})};
    constexpr auto plan = plan_hole("10 H7"_hole, few, brass);
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H7"_hole), few, brass)) == "cdbr");
    check_plan(*plan, "10 H7"_hole);
    CHECK(plan->steps()[2].origin().how_sure == confidence::practice);
    CHECK(plan->steps()[3].warnings.contains(caution::rotating));
}

TEST_CASE("a lap decides only where nothing else holds the limits") {
    constexpr drawer_tool fine[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                                    boring_head({.from = 6_mm, .upto = 50_mm, .step = 0.01_mm}),
                                    lap({.from = 7.9_mm, .upto = 8.1_mm, .step = 2_um})};
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("8 H7"_hole), fine, brass)) == "cdb");
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("8 H5"_hole), fine, brass)) == "cdbl");
    constexpr auto plan = plan_hole("8 H5"_hole, fine, brass);
    check_plan(*plan, "8 H5"_hole);
    CHECK(plan->least() == 8.002_mm);
    CHECK(plan->most() == 8.004_mm);
    CHECK(!plan->needs_trial_hole());
    CHECK(plan->deciding_step().warnings.contains(caution::chemical));
    CHECK(plan->deciding_step().put_right().find("measure often") != text::npos);

    // the longest plan: bored for a reamer, lapped behind it
    constexpr drawer_tool longest[] = {twist_drill(9_mm), hand_reamer(between(9.982_mm, 9.984_mm)),
                                       boring_head({.from = 5_mm, .upto = 12_mm, .step = 0.04_mm}),
                                       lap({.from = 9_mm, .upto = 11_mm, .step = 1_um})};
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(between(given(9.993_mm), 9.995_mm), longest, brass)) == "cdbrl");
    check_plan(*plan_hole(between(9.993_mm, 9.995_mm), longest, brass), between(9.993_mm, 9.995_mm));
}

TEST_CASE("of two tools of a kind the one with the larger margin, then the first") {
    constexpr drawer_tool two[] = {twist_drill(7.7_mm), hand_reamer(between(7.976_mm, 7.977_mm)),
                                   hand_reamer(between(7.978_mm, 7.979_mm)),
                                   hand_reamer(between(7.978_mm, 7.979_mm))};
    constexpr auto plan = plan_hole(between(7.97_mm, 7.99_mm), two, brass);
    CHECK(plan->deciding_step().tool.least == 7.978_mm);
    constexpr drawer_tool same[] = {twist_drill(7.7_mm), machine_reamer(between(7.978_mm, 7.979_mm)),
                                    hand_reamer(between(7.978_mm, 7.979_mm))};
    CHECK(plan_hole(between(7.97_mm, 7.99_mm), same, brass)->deciding_step().tool.kind ==
          tool_kind::machine_reamer);
    // a better reamer that no drill makes ready for gives way to one that has its drill
    constexpr drawer_tool lonely[] = {twist_drill(9.7_mm), hand_reamer(10_mm, "H7"_hole_class)};
    CHECK(plan_hole("10 H7"_hole, lonely, brass)->deciding_step().tool.has_class);
}

TEST_CASE("the material tells") {
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H7"_hole), drawer, material_family::plastic)) == "cdb");
    // light metals take half as much stock again
    FITWRIGHT_CHECK_BOTH(drill_of(plan_hole(given("10 H7"_hole), drawer, material_family::aluminium)) ==
                         9.6_mm);
    FITWRIGHT_CHECK_BOTH(
        plan_hole(given("10 H7"_hole), drawer, material_family::aluminium)->deciding_step().doubts ==
        hole_doubt::closes_in_warm);
    // 40 mm of aluminium closes in by more than an H7 reamer leaves
    constexpr drawer_tool large[] = {twist_drill(39.55_mm), hand_reamer(40_mm, "H7"_hole_class),
                                     boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm})};
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("40 H7"_hole), large, material_family::steel)) == "cdr");
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("40 H7"_hole), large, material_family::aluminium)) ==
                         "cdb");
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H7"_hole), drawer, material_family::magnesium)
                             ->warnings()
                             .contains(caution::hot));
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H7"_hole), drawer, material_family::cast_iron)
                             ->warnings()
                             .contains(caution::brittle));
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H7"_hole), drawer, material_family::ceramic).error().code() ==
                         error_code::not_for_this_material);
    FITWRIGHT_CHECK_BOTH(
        says(plan_hole(given("10 H7"_hole), drawer, material_family::ceramic).error(), "grind it"));
    constexpr some_material zinc{"a zinc alloy", material_family::zinc};
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H7"_hole), drawer, zinc)) == "cdr");
}

TEST_CASE("what is missing, and what would do") {
    constexpr rows<drawer_tool> empty;
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H7"_hole), empty, brass).error().code() ==
                         error_code::tool_missing);
    FITWRIGHT_CHECK_BOTH(
        plan_hole(given("10 H7"_hole), empty, brass).error().message() ==
        "nothing in the drawer holds 10 +0.015/0 mm: wanted is a reamer made for it (10.006 to 10.012 mm) "
        "or a boring head (from 9.8 mm, steps of 0.015 mm or less), and a drill under it");
    // a reamer, but no drill under it
    constexpr drawer_tool no_drill[] = {hand_reamer(10_mm, "H7"_hole_class), twist_drill(9_mm)};
    FITWRIGHT_CHECK_BOTH(
        plan_hole(given("10 H7"_hole), no_drill, brass).error().message() ==
        "10 H7 hand reamer would do, but no drill in the drawer leaves 0.2 to 0.3 mm for it; a 9.7 mm drill would, or a bore of 9.759 mm");
    // a boring head, but no hole to enter
    constexpr drawer_tool no_hole[] = {boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm}),
                                       twist_drill(5_mm)};
    FITWRIGHT_CHECK_BOTH(says(plan_hole(given("14 H7"_hole), no_hole, brass).error(),
                              "opens the hole for it: wanted is a hole of 8 to 13.809 mm"));
    // by how much the nearest misses
    FITWRIGHT_CHECK_BOTH(says(plan_hole(given("10 H6"_hole), drawer, brass).error(),
                              "Nearest: boring head from 8 to 50 mm, 0.0005 mm too large"));
    FITWRIGHT_CHECK_BOTH(says(plan_hole(given("6 F7"_hole), drawer, brass).error(),
                              "Nearest: 6 H7 hand reamer, 0.005 mm too small"));
    // a lap, but nothing before it
    constexpr drawer_tool only_a_lap[] = {lap({.from = 7.9_mm, .upto = 8.1_mm, .step = 2_um}),
                                          twist_drill(7.7_mm)};
    FITWRIGHT_CHECK_BOTH(
        plan_hole(given("8 H5"_hole), only_a_lap, brass).error().message() ==
        "lap from 7.9 to 8.1 mm would do, but nothing in the drawer makes a hole of 7.984 to 7.997 mm for it");
    // a lap so coarse that no hole leaves it stock within the rule is no offer
    constexpr drawer_tool coarse_lap[] = {lap({.from = 7_mm, .upto = 9_mm, .step = 40_um})};
    FITWRIGHT_CHECK_BOTH(!says(plan_hole(given("8 H9"_hole), coarse_lap, brass).error(), "would do"));
    // too small to bore, no figure for it
    FITWRIGHT_CHECK_BOTH(!says(plan_hole(given("3 F7"_hole), drawer, brass).error(), "boring head"));
    FITWRIGHT_CHECK_BOTH(says(plan_hole(given("3 F7"_hole), drawer, brass).error(),
                              "a reamer made for it (3.01 to 3.014 mm), and a drill under it"));
    // plastic springs back
    FITWRIGHT_CHECK_BOTH(says(plan_hole(given("6 H7"_hole), drawer, material_family::plastic).error(),
                              "plastic springs back from a reamer, uncertainly"));
    FITWRIGHT_CHECK_BOTH(
        !says(plan_hole(given("6 H7"_hole), drawer, material_family::plastic).error(), "wanted is a reamer"));
}

TEST_CASE("no message is cut off at inch sizes") {
    for (const hole_limits& wanted :
         {"1.0013 in +0.0007/-0.0003"_hole, "1/4 in F7"_hole, "0.31255 in +0.00015/0"_hole})
        for (const material_family family : {material_family::steel, material_family::plastic}) {
            const auto plan = plan_hole(wanted, drawer, family);
            if (!plan) CHECK(plan.error().message().size() < error::capacity);
            CHECK(plan_hole(wanted, rows<drawer_tool>(), family).error().message().size() < error::capacity);
        }
    // a step of just the tolerance fits, an odd number of nanometres too
    const drawer_tool odd[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                               boring_head({.from = 5_mm, .upto = 50_mm, .step = 10001_nm})};
    CHECK(steps_of(plan_hole(between(9.999_mm, 10.009001_mm), odd, brass)) == "cdb");
    CHECK(steps_of(plan_hole(between(9.999_mm, 10.009_mm), odd, brass)) == "cdb"); // half of it is 5000 nm
    CHECK(steps_of(plan_hole(between(9.999_mm, 10.008999_mm), odd, brass)) == "none");
}

TEST_CASE("no message is ever cut off") {
    std::mt19937 random(239);
    const auto some = [&](length from, length upto) {
        return from + 1_nm * (static_cast<std::int64_t>(random()) * 4 % (upto - from).nanometres());
    };
    const material_family families[] = {material_family::steel, material_family::plastic,
                                        material_family::aluminium, material_family::titanium};
    std::size_t longest = 0;
    int refused = 0;
    for (int i = 0; i < 20'000; ++i) {
        const length size = i % 3 == 0 ? some(1_mm, 10_mm) : some(1_mm, i % 3 == 1 ? 60_mm : 3000_mm);
        const length tolerance = some(0_mm, i % 2 == 0 ? 0.02_mm : 0.5_mm);
        const hole_limits wanted(size, {.upper = tolerance, .lower = -some(0_mm, 0.3_mm)});
        const length below = size - some(0_mm, 0.05_mm);
        const drawer_tool odd[] = {
            twist_drill(size / 3),
            twist_drills({.from = size / 2, .upto = size / 2 + 123.4_um, .step = 12.346_um}),
            twist_drills(drill_series::fractional, 0.1_in),
            i % 5 < 2 ? machine_reamer(between(below, below + 3.001_um)) : twist_drill(1_mm),
            i % 5 == 1 ? hand_reamer(*inch_reamer_of(1.2345_in)) : twist_drill(1_mm),
            i % 5 == 2 ? half_round_bit(measured_shaft{below, 1.001_um}) : twist_drill(1_mm),
            i % 5 == 3 ? boring_head({.from = below * 9 / 10, .upto = size * 2, .step = tolerance + 1_um})
                       : twist_drill(1_mm),
            i % 5 == 4 ? lap({.from = below * 9 / 10, .upto = size * 2, .step = 1_nm + tolerance / 2})
                       : twist_drill(1_mm),
        };
        for (const material_family family : families) {
            const auto plan = plan_hole(wanted, odd, family);
            if (plan) continue;
            ++refused;
            const text said = plan.error().message();
            if (said.size() >= error::capacity) FAIL_CHECK(std::string(said));
            if (said.size() > longest) longest = said.size();
            const text whole_ends[] = {" mm",
                                       " mm too large",
                                       " mm too small",
                                       "under it",
                                       "uncertainly",
                                       "overcut_from_trials finds",
                                       "machine reaming",
                                       "for it"};
            bool ends_whole = false;
            for (const text end : whole_ends)
                ends_whole = ends_whole ||
                             (said.size() > end.size() && text(said.end() - end.size(), end.size()) == end);
            if (!ends_whole) FAIL_CHECK(std::string(said));
        }
    }
    CHECK(refused > 30'000);
    CHECK(longest > 200); // the long ones were among them
    for (const drawer_tool& t :
         {boring_head({.from = 1234.567891_mm, .upto = 2345.678912_mm, .step = 1_nm}),
          twist_drills({.from = 1234.567891_mm, .upto = 2345.678912_mm, .step = 123.456789_mm}),
          machine_reamer(between(1234.567891_mm, 1234.567893_mm)),
          hand_reamer(3.1_mm, hole_class{position::zc, grade::it18})})
        CHECK(!t.name().is_cut());
}

TEST_CASE("what would do, does") {
    // the drill, the reamer and the boring head that an error names are bought, and the plan is there
    for (const hole_limits& wanted :
         {"10 H7"_hole, "12 F7"_hole, "20 H6"_hole, "8 K7"_hole, "14 D9"_hole, "9 N8"_hole}) {
        CHECK(!plan_hole(wanted, rows<drawer_tool>(), brass));
        const drawer_tool reamer[] = {hand_reamer(*reamer_of(wanted)),
                                      twist_drills(drill_series::metric, 25_mm)};
        CHECK(steps_of(plan_hole(wanted, reamer, brass)) == "cdr");
        const drawer_tool head[] = {boring_head({.from = 5_mm, .upto = 50_mm, .step = wanted.tolerance()}),
                                    twist_drills(drill_series::metric, 25_mm)};
        CHECK(steps_of(plan_hole(wanted, head, brass)) == "cdb");
    }
}

TEST_CASE("what is not a tool, a hole or a drawer") {
    constexpr drawer_tool second[] = {twist_drill(9.7_mm),
                                      hand_reamer(10_mm, hole_class{position::v, grade::it7})};
    FITWRIGHT_CHECK_BOTH(plan_hole(given("10 H7"_hole), second, brass).error().code() ==
                         error_code::tool_not_known);
    FITWRIGHT_CHECK_BOTH(
        says(plan_hole(given("10 H7"_hole), second, brass).error(), "tool 2 of the drawer is not a tool"));
    FITWRIGHT_CHECK_BOTH(twist_drill(given(0_mm)).kind == tool_kind::none);
    FITWRIGHT_CHECK_BOTH(twist_drills({.from = given(2_mm), .upto = 1_mm, .step = 0.1_mm}).kind ==
                         tool_kind::none);
    FITWRIGHT_CHECK_BOTH(twist_drills({.from = given(1_mm), .upto = 2_mm, .step = 9_um}).kind ==
                         tool_kind::none);
    FITWRIGHT_CHECK_BOTH(twist_drills(drill_series::letter, given(5_mm)).kind == tool_kind::none);
    FITWRIGHT_CHECK_BOTH(boring_head({.from = given(8_mm), .upto = 50_mm, .step = 0_mm}).kind ==
                         tool_kind::none);
    FITWRIGHT_CHECK_BOTH(lap({.from = given(-8_mm), .upto = 50_mm, .step = 1_um}).kind == tool_kind::none);
    FITWRIGHT_CHECK_BOTH(hand_reamer(tool_limits(given(8_mm), 7_mm)).kind == tool_kind::none);
    FITWRIGHT_CHECK_BOTH(half_round_bit(tool_limits()).kind == tool_kind::none);
    FITWRIGHT_CHECK_BOTH(plan_hole(between(given(10.1_mm), 10_mm), drawer, brass).error().code() ==
                         error_code::limits_crossed);
    FITWRIGHT_CHECK_BOTH(plan_hole(between(given(0_mm), 10_mm), drawer, brass).error().code() ==
                         error_code::size_not_above_zero);
    FITWRIGHT_CHECK_BOTH(
        says(plan_hole(between(given(-1_mm), 10_mm), drawer, brass).error(), "allowed are sizes above 0"));
}

TEST_CASE("names of tools") {
    FITWRIGHT_CHECK_BOTH(drawer_tool().name() == "not a tool");
    FITWRIGHT_CHECK_BOTH(centre_drill().name() == "centre drill");
    FITWRIGHT_CHECK_BOTH(twist_drill(given(9.7_mm)).name() == "9.7 mm drill");
    FITWRIGHT_CHECK_BOTH(twist_drill(*nearest_drill(given(0.201_in), drill_series::number)).name() ==
                         "#7 drill");
    FITWRIGHT_CHECK_BOTH(drawer[0].name() == "drills from 1 to 13 mm by 0.1");
    FITWRIGHT_CHECK_BOTH(drawer[1].name() == "fractional drills up to 12.7 mm");
    FITWRIGHT_CHECK_BOTH(drawer[4].name() == "10 H7 hand reamer");
    FITWRIGHT_CHECK_BOTH(drawer[6].name() == "7.982 mm hand reamer");
    FITWRIGHT_CHECK_BOTH(drawer[7].name() == "boring head from 8 to 50 mm");
    FITWRIGHT_CHECK_BOTH(drawer[8].name() == "7.97 mm half-round bit");
    FITWRIGHT_CHECK_BOTH(machine_reamer(given(12_mm), "F8"_hole_class).name() == "12 F8 machine reamer");
    FITWRIGHT_CHECK_BOTH(lap({.from = given(7.5_mm), .upto = 8_mm, .step = 1_um}).name() ==
                         "lap from 7.5 to 8 mm");
    FITWRIGHT_CHECK_BOTH(drawer[5].name() == "1/4 in hand reamer");
    FITWRIGHT_CHECK_BOTH(machine_reamer(*inch_reamer_of(given(1.5_in))).name() == "1 1/2 in machine reamer");
    FITWRIGHT_CHECK_BOTH(hand_reamer(*inch_reamer_of(given(0.251_in))).name() == "0.251 in hand reamer");
    FITWRIGHT_CHECK_BOTH(in_words(given(hole_operation::half_round)) == "half-round bit");
}

TEST_CASE("a drawer may be any contiguous range") {
    const std::vector<drawer_tool> vector(std::begin(drawer), std::end(drawer));
    const std::array<drawer_tool, 2> array{twist_drill(9.7_mm), hand_reamer(10_mm, "H7"_hole_class)};
    CHECK(steps_of(plan_hole("10 H7"_hole, vector, brass)) == "cdr");
    CHECK(steps_of(plan_hole("10 H7"_hole, array, brass)) == "cdr");
    CHECK(steps_of(plan_hole("10 H7"_hole, rows<drawer_tool>(drawer), brass)) == "cdr");
    // and a list in braces: the plan keeps copies
    const auto braced =
        plan_hole("10 H7"_hole, {twist_drill(9.7_mm), hand_reamer(10_mm, "H7"_hole_class)}, brass);
    CHECK(steps_of(braced) == "cdr");
    CHECK(braced->steps()[2].tool.name() == "10 H7 hand reamer");
    FITWRIGHT_CHECK_BOTH(steps_of(plan_hole(given("10 H7"_hole), {twist_drill(9.7_mm)}, brass)) == "none");
    FITWRIGHT_CHECK_BOTH(
        steps_of(plan_hole(given("10 H7"_hole), {twist_drill(9.7_mm), hand_reamer(10_mm, "H7"_hole_class)},
                           brass)) == "cdr");
}

TEST_CASE("a set of drills is as good as its drills one by one") {
    std::mt19937 random(9);
    std::vector<drawer_tool> one_by_one;
    for (length d = 1_mm; d <= 13_mm; d += 0.1_mm) one_by_one.push_back(twist_drill(d));
    for (const drill_size& d : drills(drill_series::fractional))
        if (d.diameter <= 0.5_in) one_by_one.push_back(twist_drill(d));
    REQUIRE(one_by_one.size() == 121 + 32);
    for (std::size_t i = 2; i < std::size(drawer); ++i) one_by_one.push_back(drawer[i]);
    int planned = 0;
    for (int i = 0; i < 3'000; ++i) {
        const length lower = 1_mm + 1_um * (random() % 40'000);
        const hole_limits wanted = between(lower, lower + 1_um * (1 + random() % (i % 2 == 0 ? 30 : 300)));
        const auto by_sets = plan_hole(wanted, drawer, brass);
        const auto singly = plan_hole(wanted, one_by_one, brass);
        REQUIRE(by_sets.has_value() == singly.has_value());
        if (!by_sets) continue;
        ++planned;
        CHECK(steps_of(by_sets) == steps_of(singly));
        CHECK(drill_of(by_sets) == drill_of(singly));
        CHECK(by_sets->least() == singly->least());
        CHECK(by_sets->most() == singly->most());
    }
    CHECK(planned > 1'000);
}

// Brute force: every tool that could be the last, every drill before it, no order and no short cuts.
TEST_CASE("where one step behind a drill does, the planner finds it") {
    std::mt19937 random(10);
    const material_family families[] = {material_family::steel, material_family::aluminium,
                                        material_family::plastic};
    int planned = 0;
    int refused = 0;
    for (int i = 0; i < 4'000; ++i) {
        std::vector<drawer_tool> mine;
        std::vector<length> my_drills;
        for (int k = 0; k < 12; ++k) {
            my_drills.push_back(5_mm + 0.1_mm * (random() % 70));
            mine.push_back(twist_drill(my_drills.back()));
        }
        for (int k = 0; k < 6; ++k) {
            const length lower = 6_mm + 1_um * (random() % 6'000);
            mine.push_back(random() % 2 == 0 ? hand_reamer(between(lower, lower + 1_um * (random() % 6)))
                                             : machine_reamer(6_mm + 1_mm * (random() % 7), "H8"_hole_class));
        }
        if (random() % 2 == 0)
            mine.push_back(boring_head({.from = 7_mm, .upto = 11_mm, .step = 1_um * (1 + random() % 30)}));
        const drawer_tool& aim = mine[12 + random() % 6];
        const length lower =
            random() % 2 == 0 ? 6_mm + 1_um * (random() % 6'000) : aim.least - 1_um * (random() % 8);
        const hole_limits wanted = between(lower, lower + 1_um * (4 + random() % 40));
        const work_material material = families[random() % 3];

        bool possible = false;
        for (const length d : my_drills) {
            const expected_hole drilled = *drilled_hole(d, material);
            const bool is_plastic = material.family() == material_family::plastic;
            if (!is_plastic && drilled.lies_within(wanted)) possible = true;
            for (const drawer_tool& t : mine) {
                if (t.kind == tool_kind::boring_head) {
                    const length target = wanted.middle();
                    const expected_hole bored({target - t.step / 2, target, target + t.step / 2},
                                              stated_by_user);
                    if (wanted.lower_limit() < t.least || wanted.upper_limit() > t.most ||
                        !bored.lies_within(wanted))
                        continue;
                    if (d + 50_um <= target - 200_um && drilled.least() >= t.least &&
                        drilled.most() < bored.least())
                        possible = true;
                } else if (t.kind == tool_kind::hand_reamer || t.kind == tool_kind::machine_reamer) {
                    if (is_plastic) continue;
                    const reamer_size reamer(tool_limits(t.least, t.most), t.over.most, t.over.origin());
                    if (!match_reamer(reamer, wanted, material).suits()) continue;
                    const length size = (t.least + t.most) / 2;
                    const auto by = t.kind == tool_kind::hand_reamer ? finishing::hand_reaming
                                                                     : finishing::machine_reaming;
                    const auto rule = stock_to_leave(by, size, material);
                    if (rule && rule->allows(size - d - 50_um) &&
                        drilled.most() < reamed_hole(reamer, material).least())
                        possible = true;
                }
            }
        }
        const auto plan = plan_hole(wanted, mine, material);
        const bool is_short = plan && plan->steps().size() <= 3;
        if (is_short != possible)
            FAIL_CHECK(i << (possible ? ": a way was missed" : ": there is no such way"));
        if (plan) {
            check_plan(*plan, wanted);
            ++planned;
        } else {
            CHECK(!plan.error().message().empty());
            CHECK(plan.error().message().size() < error::capacity); // nothing was cut off
            ++refused;
        }
    }
    CHECK(planned > 400);
    CHECK(refused > 400);
}
