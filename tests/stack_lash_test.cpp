#include "support/both.hpp"
#include "support/csv.hpp"
#include "support/printed_values.hpp"
#include <fitwright/io/stack.hpp>
#include <fitwright/stack/backlash.hpp>
#include <fitwright/stack/least_backlash.hpp>
#include <fitwright/stack/screw_lash.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <sstream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }
constexpr double degree = 3.14159265358979323846 / 180;

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos &&
           r.error().message().find("allowed") != text::npos && r.error().message().size() < 239;
}

/// 2 a' (inv alpha' - inv alpha) in long double.
long double exact(long double a, long double off, long double alpha) {
    const long double apart = a + off;
    const long double working = std::acos(a * std::cos(alpha) / apart);
    const auto involute = [](long double x) { return std::tan(x) - x; };
    return 2 * apart * (involute(working) - involute(alpha));
}

bool is_to_the_nanometre(length got, long double nanometres) {
    return std::fabs(static_cast<long double>(got.nanometres()) - nanometres) <= 1.01L;
}

constexpr gear_pair usual{.centre_distance = 60_mm, .spread = {.upper = 30_um, .lower = 10_um}};

} // namespace

TEST_CASE("the least backlash of ISO/TR 10064-2, every row of its table") {
    auto table = read_csv(FITWRIGHT_TEST_DATA "/stack_gear_backlash.csv");
    REQUIRE(table.fault.empty());
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        const auto mm = [&](const char* heading) { return nm(*scaled(table.cell(row, heading), 6)); };
        CAPTURE(mm("module_mm"));
        CAPTURE(mm("centre_distance_mm"));
        const auto r =
            least_backlash({.tooth_module = mm("module_mm"), .centre_distance = mm("centre_distance_mm")});
        REQUIRE(r);
        CHECK(std::abs((r->normal - mm("formula_mm")).nanometres()) <= 500); // printed to the micrometre
        const std::int64_t hundredths = (r->normal.nanometres() + 9'999) / 10'000; // the table rounds up
        CHECK(nm(hundredths * 10'000) == mm("table_mm"));
        CHECK(r->from.how_sure == confidence::memory);
    }
    CHECK(table.rows.size() == 22);
    CHECK(table.fault.empty());
    // 2/3 (0.06 + 0.05 + 0.06) mm, rounded up to the nanometre; and where nothing is to be rounded.
    FITWRIGHT_CHECK_BOTH(least_backlash({.tooth_module = given(2_mm), .centre_distance = 100_mm})->normal ==
                         nm(113'334));
    FITWRIGHT_CHECK_BOTH(least_backlash({.tooth_module = given(5_mm), .centre_distance = 300_mm})->normal ==
                         240_um);
    const auto code = error_code::not_a_gear_pair;
    CHECK(says(least_backlash({.tooth_module = 1_mm, .centre_distance = 100_mm}), code, "module of 1 mm"));
    CHECK(says(least_backlash({.tooth_module = 18.1_mm, .centre_distance = 100_mm}), code, "18 mm"));
    CHECK(says(least_backlash({.tooth_module = 2_mm, .centre_distance = 49_mm}), code, "49 mm"));
    CHECK(says(least_backlash({.tooth_module = 2_mm, .centre_distance = 1601_mm}), code, "1600 mm"));
    CHECK(least_backlash({.tooth_module = 1.5_mm, .centre_distance = 50_mm}));
    CHECK(least_backlash({.tooth_module = 18_mm, .centre_distance = 1600_mm}));
}

TEST_CASE("spur gears: exact and by the rule") {
    const auto r = backlash(usual);
    REQUIRE(r);
    CHECK(is_to_the_nanometre(r->circumferential.least, exact(60e6L, 10e3L, 20 * degree)));
    CHECK(is_to_the_nanometre(r->circumferential.most, exact(60e6L, 30e3L, 20 * degree)));
    // 0.728 da at 20 degrees, 0.523 da at the nominal 14.5 (0.517 exactly).
    CHECK(is_to_the_nanometre(r->by_the_rule.most, 30e3L * 2 * std::tan(20 * degree)));
    CHECK(agree_within(r->by_the_rule.most.in<micrometre>(), 30 * 0.728, 0.001));
    // Across the flanks: times cos alpha, there being no helix.
    CHECK(agree_within(r->normal.most.in<micrometre>(),
                       r->circumferential.most.in<micrometre>() * std::cos(20 * degree), 1e-4));
    CHECK(r->doubts.empty());
    CHECK(r->take_care.contains(caution::rotating));
    // The rule is the beginning of the exact lash, and falls short of it the further off.
    for (const std::int64_t off : {1'000, 100'000, 1'000'000}) {
        gear_pair g = usual;
        g.spread = {.upper = nm(off), .lower = nm(off)};
        const auto s = backlash(g);
        const double exactly = s->circumferential.most.in<nanometre>();
        const double rule = s->by_the_rule.most.in<nanometre>();
        CHECK(exactly >= rule);
        CHECK(exactly - rule < 0.2 * rule);
        CHECK(s->doubts.contains(lash_doubt::rule_of_thumb_off) == (exactly - rule > 0.05 * exactly));
    }
}

TEST_CASE("pressure angles, helices, and axes that close in") {
    for (const double alpha : {14.5, 20.0, 25.0})
        for (const double beta : {0.0, 15.0, -30.0}) {
            CAPTURE(alpha);
            CAPTURE(beta);
            gear_pair g = usual;
            g.pressure_angle = degrees(alpha);
            g.helix_angle = degrees(beta);
            g.spread = plus_minus(25_um);
            const auto r = backlash(g);
            REQUIRE(r);
            const long double transverse = std::atan(std::tan(alpha * degree) / std::cos(beta * degree));
            CHECK(is_to_the_nanometre(r->circumferential.most, exact(60e6L, 25e3L, transverse)));
            CHECK(is_to_the_nanometre(r->circumferential.least, exact(60e6L, -25e3L, transverse)));
            const double base_helix = std::asin(std::sin(beta * degree) * std::cos(alpha * degree));
            CHECK(agree_within(r->normal.most.in<nanometre>(),
                               r->circumferential.most.in<nanometre>() * std::cos(alpha * degree) *
                                   std::cos(base_helix),
                               1e-3));
            CHECK(r->doubts == flags(lash_doubt::jams));
            // Thinner teeth take the jam away.
            g.thinned = {30_um, 50_um};
            const auto thin = backlash(g);
            CHECK(thin->circumferential.least - r->circumferential.least == 30_um);
            CHECK(thin->circumferential.most - r->circumferential.most == 50_um);
            CHECK(!thin->doubts.contains(lash_doubt::jams));
        }
}

TEST_CASE("a worm and its wheel") {
    // tan(axial) = tan(20) / cos(30): 2 * 50 * 0.42028 = 42.03 um along the worm, which turns a wheel of 80 mm by
    // as much over 40 mm.
    const auto r = backlash(worm_pair{.wheel_pitch_diameter = 80_mm,
                                      .spread = {.upper = 50_um, .lower = 10_um},
                                      .lead_angle = degrees(30),
                                      .thinned = {5_um, 8_um}});
    REQUIRE(r);
    CHECK(is_to_the_nanometre(r->axial.most, 8e3L + 100e3L * std::tan(20 * degree) / std::cos(30 * degree)));
    CHECK(is_to_the_nanometre(r->axial.least, 5e3L + 20e3L * std::tan(20 * degree) / std::cos(30 * degree)));
    CHECK(agree_within(r->of_wheel.most.value(), r->axial.most.in<millimetre>() / 40, 1e-4));
    CHECK(r->doubts.empty());
    const auto jams = backlash(worm_pair{.wheel_pitch_diameter = 80_mm, .spread = plus_minus(50_um)});
    CHECK(jams->doubts == flags(lash_doubt::jams));
}

TEST_CASE("a screw in its nut: 0.577, 0.268, 0.259 of the clearance on the pitch diameter") {
    const auto most = [](thread_profile p) { return axial_lash(p, {10_um, 1000_um})->axial.most; };
    CHECK(most(thread_profile::sixty_degrees) == nm(577'351));
    CHECK(most(thread_profile::trapezoidal) == nm(267'950));
    CHECK(most(thread_profile::acme) == nm(258'618));
    FITWRIGHT_CHECK_BOTH(axial_lash(given(thread_profile::acme), {10_um, 20_um})->axial.least == nm(2'586));
    FITWRIGHT_CHECK_BOTH(axial_lash(given(thread_profile::acme), {-10_um, 20_um})->axial.least == nm(-2'587));
    CHECK(agree_within(detail::tangent_of_half(thread_profile::sixty_degrees), std::tan(30 * degree), 1e-15));
    CHECK(agree_within(detail::tangent_of_half(thread_profile::trapezoidal), std::tan(15 * degree), 1e-15));
    CHECK(agree_within(detail::tangent_of_half(thread_profile::acme), std::tan(14.5 * degree), 1e-15));
    CHECK(axial_lash(thread_profile::acme, {-10_um, 20_um})->doubts == flags(lash_doubt::jams));
    CHECK(axial_lash(thread_profile::acme, {0_um, 20_um})->doubts.empty());
    CHECK(says(axial_lash(thread_profile::acme, {30_um, 20_um}), error_code::window_crossed,
               "0.03 to 0.02 mm"));
    CHECK(says(axial_lash(thread_profile::acme, {0_um, 11_mm}), error_code::window_crossed, "10 mm"));
}

TEST_CASE("what is no pair of gears") {
    const auto refused = [](text piece, auto change) {
        gear_pair g = usual;
        change(g);
        CHECK(says(backlash(g), error_code::not_a_gear_pair, piece));
    };
    refused("0 mm", [](gear_pair& g) { g.centre_distance = 0_mm; });
    refused("0.03 to 0.01 mm", [](gear_pair& g) { g.spread = {.upper = 10_um, .lower = 30_um}; });
    refused("twentieth", [](gear_pair& g) { g.spread = {.upper = 3.001_mm, .lower = 0_mm}; });
    refused("twentieth", [](gear_pair& g) { g.spread = {.upper = 0_mm, .lower = -3.001_mm}; });
    refused("10 to 35 degrees", [](gear_pair& g) { g.pressure_angle = degrees(9); });
    refused("helices up to 60", [](gear_pair& g) { g.helix_angle = degrees(61); });
    refused("helices up to 60", [](gear_pair& g) { g.helix_angle = degrees(std::nan("")); });
    refused("thinning", [](gear_pair& g) { g.thinned = {20_um, 10_um}; });
    gear_pair widest = usual; // the ends themselves are allowed
    widest.spread = {.upper = 3_mm, .lower = -3_mm};
    widest.pressure_angle = degrees(10);
    widest.helix_angle = degrees(-60);
    CHECK(backlash(widest));
    worm_pair w{.wheel_pitch_diameter = 40_mm, .spread = plus_minus(10_um)};
    w.lead_angle = degrees(46);
    CHECK(says(backlash(w), error_code::not_a_gear_pair, "leads up to 45"));
    w = {.wheel_pitch_diameter = -1_mm, .spread = plus_minus(10_um)};
    CHECK(says(backlash(w), error_code::not_a_gear_pair, "wheel of -1 mm"));
    for (const auto d : {lash_doubt::jams, lash_doubt::rule_of_thumb_off}) CHECK(in_words(d).size() > 30);
}

TEST_CASE("printed") {
    const auto printed = [](const auto& value) {
        std::ostringstream out;
        out << value;
        return out.str();
    };
    gear_pair g = usual;
    g.spread = plus_minus(20_um);
    const std::string gears = printed(*backlash(g));
    CHECK(gears.find("backlash -0.0146 to 0.0146 mm along the pitch circle") == 0);
    CHECK(gears.find(std::string(in_words(lash_doubt::jams))) != std::string::npos);
    CHECK(gears.find(std::string(in_words(caution::rotating))) != std::string::npos);
    const std::string worm =
        printed(*backlash(worm_pair{.wheel_pitch_diameter = 40_mm, .spread = plus_minus(20_um)}));
    CHECK(worm.find("axial play -0.0146 to 0.0146 mm, the wheel turns -2.5") == 0);
    CHECK(worm.find(std::string(in_words(lash_doubt::jams))) != std::string::npos);
    CHECK(printed(*axial_lash(thread_profile::sixty_degrees, {0_um, 100_um})) == "axial lash 0 to 0.0578 mm");
}

TEST_CASE("spreads beyond any length are refused before they are multiplied") {
    const length least = length::from_nanometres(INT64_MIN);
    const length most = length::from_nanometres(INT64_MAX);
    for (const deviations d :
         {deviations{.upper = most, .lower = 0_um}, deviations{.upper = 0_um, .lower = least},
          deviations{.upper = most, .lower = least}}) {
        const auto gears = backlash(gear_pair{.centre_distance = 50_mm, .spread = d});
        REQUIRE(!gears.has_value());
        CHECK(gears.error().code() == error_code::not_a_gear_pair);
        CHECK(gears.error().message().find("a twentieth") != text::npos);
        CHECK(!backlash(worm_pair{.wheel_pitch_diameter = 50_mm, .spread = d}));
    }
    CHECK(!backlash(gear_pair{.centre_distance = least, .spread = plus_minus(1_um)}));
    // a twentieth itself is allowed, a nanometre more is not
    CHECK(backlash(gear_pair{.centre_distance = 50_mm, .spread = plus_minus(2.5_mm)}).has_value());
    CHECK(!backlash(gear_pair{.centre_distance = 50_mm, .spread = plus_minus(2.500001_mm)}));
}
