#include "support/both.hpp"
#include <fitwright/tool/drawer.hpp>
#include <fitwright/tool/half_round_bit.hpp>
#include <fitwright/tool/trials.hpp>
#include <fitwright/units.hpp>

#include <doctest/doctest.h>

#include <array>
#include <cmath>
#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr overcut own{.least = 4_um, .mean = 6_um, .most = 8_um};

bool says(const error& e, text piece) { return e.message().find(piece) != text::npos; }

/// The probability that Student's t lies within +/- t, by Simpson's rule over its density: no quantile
/// and no library of distributions on the way.
double probability_within(double t, int degrees) {
    const double half = (degrees + 1) / 2.0;
    const double scale =
        std::exp(std::lgamma(half) - std::lgamma(degrees / 2.0)) / std::sqrt(degrees * std::acos(-1.0));
    const auto density = [&](double x) { return scale * std::pow(1 + x * x / degrees, -half); };
    const int steps = 200'000;
    const double step = t / steps;
    double sum = density(0) + density(t);
    for (int i = 1; i < steps; ++i) sum += density(i * step) * (i % 2 == 1 ? 4 : 2);
    return 2 * sum * step / 3;
}

std::vector<measured_hole> holes(std::initializer_list<length> sizes, length uncertainty = {}) {
    std::vector<measured_hole> made;
    for (const length size : sizes) made.emplace_back(size, uncertainty);
    return made;
}

} // namespace

TEST_CASE("the hole a half-round bit leaves is the bit and its overcut") {
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), own).least() == 7.974_mm);
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), own).mean() == 7.976_mm);
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), own).most() == 7.978_mm);
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), own).origin().how_sure == confidence::stated);
    // a bit of the shaft's own rod, measured
    FITWRIGHT_CHECK_BOTH(bit_hole(measured_shaft{given(7.970_mm), 2_um}, own).least() == 7.972_mm);
    FITWRIGHT_CHECK_BOTH(bit_hole(measured_shaft{given(7.970_mm), 2_um}, own).most() == 7.980_mm);
}

// Practice, inferred from an article: 0 to about 0.0005 in. Nobody has measured it.
TEST_CASE("the common overcut is uncertain and says so") {
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), common_bit_overcut).least() == 7.970_mm);
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), common_bit_overcut).most() == 7.970_mm + 0.0005_in);
    FITWRIGHT_CHECK_BOTH(bit_hole(given(7.970_mm), common_bit_overcut).origin().how_sure ==
                         confidence::uncertain);
    FITWRIGHT_CHECK_BOTH(half_round_bit(tool_limits(given(7.970_mm), 7.970_mm)).over.origin().how_sure ==
                         confidence::uncertain);
}

TEST_CASE("the blank for a hole") {
    FITWRIGHT_CHECK_BOTH(bit_blank_for(between(given(7.978_mm), 7.986_mm), own) ==
                         tool_limits(7.974_mm, 7.978_mm));
    // the overcut varies by 4 um: in 4 um there is just one size, in less none
    FITWRIGHT_CHECK_BOTH(bit_blank_for(between(given(7.978_mm), 7.982_mm), own).tolerance() == 0_um);
    FITWRIGHT_CHECK_BOTH(bit_blank_for(between(given(7.978_mm), 7.982_mm), own).exist());
    FITWRIGHT_CHECK_BOTH(!bit_blank_for(between(given(7.978_mm), 7.981_mm), own).exist());
    for (length lower = 5_mm; lower < 6_mm; lower += 37_nm * 100) {
        const hole_limits hole = between(lower, lower + 9_um);
        const tool_limits blank = bit_blank_for(hole, own);
        REQUIRE(blank.exist());
        CHECK(bit_hole(blank.lower_limit(), own).lies_within(hole));
        CHECK(bit_hole(blank.upper_limit(), own).lies_within(hole));
        CHECK(!bit_hole(blank.lower_limit() - 1_nm, own).lies_within(hole));
        CHECK(!bit_hole(blank.upper_limit() + 1_nm, own).lies_within(hole));
    }
}

// D-bit (Cyril Collins) and D-Bits in the Workshop (Duplex): half and 0.001 in. Of all precision tools
// d-bits: a few thou below half.
TEST_CASE("both published rules for the flat are handed out, and only what they say") {
    FITWRIGHT_CHECK_BOTH(bit_flat(given(0.25_in)).half_and_a_thou.thickness == 0.126_in);
    FITWRIGHT_CHECK_BOTH(!bit_flat(given(0.25_in)).half_and_a_thou.at_most);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(7.970_mm)).half_and_a_thou.thickness == 3.985_mm + 25.4_um);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(7.970_mm)).below_half.thickness == 3.985_mm);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(7.970_mm)).below_half.at_most);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(8_mm)).half_and_a_thou.origin().how_sure == confidence::published);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(8_mm)).below_half.origin().how_sure == confidence::published);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(8_mm)).below_half.origin().document !=
                         bit_flat(given(8_mm)).half_and_a_thou.origin().document);
    FITWRIGHT_CHECK_BOTH(bit_flat(given(8_mm)).below_half.words.find("how many is not said") != text::npos);
}

// JCGM 100:2008 (GUM), Table G.2: t for 1 to 10 degrees of freedom, two decimals.
TEST_CASE("Student's t as printed") {
    struct row {
        double confidence;
        double printed[10];
    };
    constexpr row table[] = {
        {0.90, {6.31, 2.92, 2.35, 2.13, 2.02, 1.94, 1.89, 1.86, 1.83, 1.81}},
        {0.95, {12.71, 4.30, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23}},
        {0.99, {63.66, 9.92, 5.84, 4.60, 4.03, 3.71, 3.50, 3.36, 3.25, 3.17}},
    };
    for (const row& r : table)
        for (int degrees = 1; degrees <= 10; ++degrees)
            CHECK(std::abs(students_t(degrees, r.confidence) - r.printed[degrees - 1]) <= 0.005 + 1e-9);
}

TEST_CASE("Student's t against closed forms and the area under its density") {
    for (const double confidence : {0.5, 0.6827, 0.9, 0.95, 0.99, 0.999}) {
        CHECK(students_t(1, confidence) ==
              doctest::Approx(std::tan(std::acos(-1.0) * confidence / 2)).epsilon(1e-12));
        CHECK(students_t(2, confidence) ==
              doctest::Approx(confidence * std::sqrt(2 / (1 - confidence * confidence))).epsilon(1e-12));
        for (const int degrees : {3, 4, 7, 12, 29, 99})
            CHECK(probability_within(students_t(degrees, confidence), degrees) ==
                  doctest::Approx(confidence).epsilon(1e-9));
    }
}

TEST_CASE("overcut from trials: mean, spread and interval") {
    // overcuts of 4, 6, 5, 7 and 3 um: mean 5, s = sqrt(10 / 4), t(4, 95 %) = 2.7764451
    const auto trials = overcut_from_trials(holes({7.974_mm, 7.976_mm, 7.975_mm, 7.977_mm, 7.973_mm}),
                                            tool_limits(7.970_mm, 7.970_mm));
    REQUIRE(trials);
    CHECK(trials->holes == 5);
    CHECK(!trials->are_few());
    CHECK(trials->confidence == 0.95);
    CHECK(trials->mean == 5_um);
    CHECK(trials->standard_deviation == 1581_nm);
    const double half = 2.7764451051977934 * std::sqrt(2.5) * std::sqrt(1.2) * 1000; // nm
    CHECK(std::abs(static_cast<double>((trials->mean - trials->least).nanometres()) - half) <= 1);
    CHECK(std::abs(static_cast<double>((trials->most - trials->mean).nanometres()) - half) <= 1);
    CHECK(static_cast<double>((trials->most - trials->mean).nanometres()) >= half); // outwards

    // into the drawer it goes
    const drawer_tool tool = half_round_bit(tool_limits(7.970_mm, 7.970_mm), *trials);
    CHECK(tool.kind == tool_kind::half_round_bit);
    CHECK(tool.over.mean == 5_um);
    CHECK(tool.over.origin().how_sure == confidence::stated);
    CHECK(bit_hole(7.970_mm, *trials).mean() == 7.975_mm);
}

TEST_CASE("uncertain readings widen the interval") {
    // like readings on a 0.01 mm micrometer prove nothing finer than the micrometer
    const auto like = overcut_from_trials(holes({7.98_mm, 7.98_mm, 7.98_mm, 7.98_mm, 7.98_mm}, 5_um),
                                          measured_shaft{7.970_mm, 2_um});
    REQUIRE(like);
    CHECK(like->standard_deviation == 0_um);
    CHECK(like->least == 5_um);
    CHECK(like->most == 15_um);
    // the worst reading counts
    std::vector<measured_hole> mixed = holes({7.98_mm, 7.98_mm});
    mixed.emplace_back(7.98_mm, 3_um);
    CHECK(overcut_from_trials(mixed, tool_limits(7.970_mm, 7.970_mm))->most == 13_um);
}

TEST_CASE("the uncertainty of the bit's own size is counted once") {
    const measured_shaft rod(7.970_mm, 2_um);
    const auto like = overcut_from_trials(holes({7.98_mm, 7.98_mm, 7.98_mm}, 1_um), rod);
    REQUIRE(like);
    // holes of 7.98 +/- 0.001, and 2 um for the bit: not 7.975 to 7.985
    CHECK(bit_hole(rod, *like).least() == 7.977_mm);
    CHECK(bit_hole(rod, *like).most() == 7.983_mm);
    const drawer_tool in_drawer = half_round_bit(rod, *like);
    CHECK(in_drawer.over.least == 9_um);
    CHECK(in_drawer.over.most == 11_um);
    // how well the rod was measured makes no difference to the overcut over its stated size
    CHECK(overcut_from_trials(holes({7.98_mm, 7.98_mm}, 1_um), measured_shaft(7.970_mm, 20_um))->most ==
          overcut_from_trials(holes({7.98_mm, 7.98_mm}, 1_um), measured_shaft(7.970_mm, 0_um))->most);
    // another blank: the first bit may have been 2 um off, so the blank keeps as much away from both ends
    CHECK(like->tool_uncertainty == 2_um);
    CHECK(bit_blank_for(between(7.97_mm, 8_mm), *like) == tool_limits(7.963_mm, 7.987_mm));
    CHECK(!bit_blank_for(between(7.97_mm, 7.975_mm), *like).exist());
}

TEST_CASE("more confidence or fewer holes make the interval wider") {
    const auto all = holes({7.974_mm, 7.976_mm, 7.975_mm, 7.977_mm, 7.973_mm, 7.975_mm});
    const tool_limits tool(7.970_mm, 7.970_mm);
    length before;
    for (const double confidence : {0.5, 0.8, 0.9, 0.95, 0.99, 0.999}) {
        const auto trials = overcut_from_trials(all, tool, confidence);
        REQUIRE(trials);
        CHECK(trials->most - trials->least > before);
        CHECK(trials->confidence == confidence);
        before = trials->most - trials->least;
    }
    const auto two = overcut_from_trials(rows<measured_hole>(all.data(), 2), tool);
    REQUIRE(two);
    CHECK(two->are_few());
    CHECK(two->most - two->least > 40_um);
    CHECK(overcut_from_trials(rows<measured_hole>(all.data(), 4), tool)->are_few());
    CHECK(!overcut_from_trials(rows<measured_hole>(all.data(), 5), tool)->are_few());
}

TEST_CASE("a bit that cuts undersize has a negative overcut") {
    const auto trials =
        overcut_from_trials(std::array{measured_hole{7.968_mm, 0_um}, measured_hole{7.966_mm, 0_um}},
                            tool_limits(7.970_mm, 7.970_mm));
    REQUIRE(trials);
    CHECK(trials->mean == -3_um);
    CHECK(trials->least < trials->mean);
}

TEST_CASE("the interval catches the next hole as often as it says") {
    std::mt19937 random(1908); // the year of Student's paper
    std::normal_distribution<double> scatter(6'000, 1'500);
    const tool_limits tool(7.970_mm, 7.970_mm);
    const auto cut = [&] { return 7.970_mm + length::from_nanometres(std::llround(scatter(random))); };
    int caught = 0;
    constexpr int runs = 20'000;
    for (int i = 0; i < runs; ++i) {
        const auto trials = overcut_from_trials(holes({cut(), cut(), cut(), cut(), cut()}), tool, 0.9);
        const length next = cut() - 7.970_mm;
        caught += trials->least <= next && next <= trials->most;
    }
    CHECK(caught > runs * 89 / 100);
    CHECK(caught < runs * 91 / 100);
}

TEST_CASE("trials that can't be used") {
    const tool_limits tool(7.970_mm, 7.970_mm);
    CHECK(overcut_from_trials(holes({}), tool).error().code() == error_code::too_few_trials);
    CHECK(overcut_from_trials(holes({7.974_mm}), tool).error().code() == error_code::too_few_trials);
    CHECK(says(overcut_from_trials(holes({7.974_mm}), tool).error(),
               "1 trial holes say nothing of the scatter: allowed are 2 or more"));
    CHECK(overcut_from_trials(holes({7.974_mm, 7.975_mm}), tool_limits()).error().code() ==
          error_code::tool_not_known);
    for (const double confidence : {0.0, 1.0, -0.5, 1.5, std::nan("")}) {
        CHECK(overcut_from_trials(holes({7.974_mm, 7.975_mm}), tool, confidence).error().code() ==
              error_code::not_a_confidence);
        CHECK(
            says(overcut_from_trials(holes({7.974_mm, 7.975_mm}), tool, confidence).error(), "0.95 is 95 %"));
    }
}
