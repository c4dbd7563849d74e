// The common temperature at which a clearance closes or an interference lets go.

#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/material.hpp>
#include <fitwright/thermal/common_temperature.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <set>
#include <string_view>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright::materials;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

double at(const property<temperature>& p) { return (*p).value(); }

/// A metal with one coefficient at all temperatures, in 1e-6/K; no heating limit.
constexpr material steady(text name, double ppm) {
    const auto a = ppm_per_kelvin(ppm);
    return {.name = name,
            .family = material_family::steel,
            .expansion = {.to_100_degC = a,
                          .lowest = a,
                          .highest = a,
                          .to_200_degC = a,
                          .to_300_degC = a,
                          .to_500_degC = a,
                          .cooled_to_minus_190_degC = a}};
}

fit of_sizes(length hole, length shaft) { return {between(hole, hole), between(shaft, shaft)}; }

} // namespace

TEST_CASE("a shaft that grows more than its hole seizes hot and not cold") {
    // 100 mm, 24 against 12 millionths, 12 um of clearance: 10 K and a little less for the second order.
    const auto seizes = seizing_temperature(of_sizes(100.012_mm, 100_mm), steady("a", 12), steady("b", 24));
    CHECK(seizes->heated.outcome == happening::happens);
    CHECK(at(seizes->heated.by_mean) ==
          doctest::Approx(20 + 0.012 / (100 * 24e-6 - 100.012 * 12e-6)).epsilon(1e-9));
    CHECK(at(seizes->heated.earliest) == doctest::Approx(at(seizes->heated.latest)));
    CHECK(seizes->heated.doubts.contains(thermal_doubt::heating_limit_not_known));
    CHECK(seizes->cooled.outcome == happening::not_where_expansion_is_known);
    CHECK(!seizes->cooled.is_possible());
    CHECK(!seizes->cooled.by_mean);
    CHECK(!seizes->cooled.latest);
    CHECK(seizes->cooled.looked_upto.value() == -200);

    // A hole that grows more seizes cold.
    const auto cold = seizing_temperature(of_sizes(100.012_mm, 100_mm), steady("a", 24), steady("b", 12));
    CHECK(cold->heated.outcome == happening::not_where_expansion_is_known);
    CHECK(cold->heated.looked_upto.value() == 500);
    CHECK(at(cold->cooled.by_mean) == doctest::Approx(10).epsilon(0.01));
}

TEST_CASE("while compiling") {
    constexpr auto seizes = seizing_temperature("12 H7/g6"_fit, aluminium_6082_t6, stainless_303);
    static_assert(seizes->heated.outcome == happening::not_up_to_heating_limit);
    static_assert(seizes->heated.looked_upto.value() == 150);
    static_assert(seizes->heated.limited_by == "aluminium 6082-T6");
    static_assert(seizes->cooled.outcome == happening::not_where_expansion_is_known);
    static_assert(seizes->cooled.looked_upto.value() == -40);
    static_assert(seizes->cooled.limited_by == "stainless 303");
    const auto again = seizing_temperature(given("12 H7/g6"_fit), aluminium_6082_t6, stainless_303);
    CHECK(again->heated.outcome == seizes->heated.outcome);
    CHECK(again->heated.limited_by == seizes->heated.limited_by);
}

TEST_CASE("the found temperature is the one at which the fit just touches") {
    std::mt19937 random(4);
    const auto known = all_materials();
    int found = 0;
    for (int i = 0; i < 400; ++i) {
        const material& of_hole = *known[random() % known.size()];
        const material& of_shaft = *known[random() % known.size()];
        const length hole = nm(5'000'000 + static_cast<std::int64_t>(random() % 100'000'000));
        const length shaft = hole - nm(static_cast<std::int64_t>(random() % 40'000));
        const fit f(between(hole, hole + 10_um), between(shaft - 8_um, shaft));
        const auto seizes = seizing_temperature(f, of_hole, of_shaft);
        REQUIRE(seizes.has_value());
        CAPTURE(of_hole.name);
        CAPTURE(of_shaft.name);
        for (const common_temperature* way : {&seizes->heated, &seizes->cooled}) {
            const auto least_at = [&](const temperature& t) {
                return at_temperature(f, {of_hole, t}, {of_shaft, t})->min_clearance();
            };
            const double end = way->looked_upto.value();
            const double first = way->is_possible() ? at(way->earliest) : end;
            // Nowhere before it does the pair close.
            for (int step = 0; step <= 40; ++step) {
                const double t = 20 + (first - 20) * step / 40;
                CHECK(least_at(celsius(t)) >= -1_nm);
            }
            if (!way->is_possible()) continue;
            ++found;
            // Up to the spread that begins to count beyond the table the clearance is 0 there.
            if (first > -189) CHECK(least_at(*way->earliest) <= 1_nm);
            if (way->by_mean && first > -189) {
                const auto hot = at_temperature(f, {of_hole, *way->by_mean}, {of_shaft, *way->by_mean});
                CHECK(hot->by_mean.least >= -1_nm);
                CHECK(hot->by_mean.least <= 1_nm);
                CHECK(std::fabs(at(way->by_mean) - 20) >= std::fabs(first - 20) - 1e-6);
            }
            if (way->latest) {
                CHECK(way->outcome == happening::happens);
                CHECK(std::fabs(at(way->latest) - 20) >= std::fabs(first - 20) - 1e-6);
            } else CHECK(way->outcome == happening::may_happen);
        }
    }
    CHECK(found > 100);
}

TEST_CASE("one material never seizes at a common temperature") {
    for (const material* m : all_materials()) {
        CAPTURE(m->name);
        for (const fit& f : {"12 H7/g6"_fit, "12 H7/h6"_fit}) { // h6 may just touch, hot as cold
            const auto seizes = seizing_temperature(f, *m, *m);
            CHECK(!seizes->heated.is_possible());
            CHECK(!seizes->cooled.is_possible());
        }
        CHECK(!freeing_temperature("12 H7/s6"_fit, *m, *m)->heated.is_possible());
    }
}

TEST_CASE("so it is at 20 C already") {
    const auto pressed = seizing_temperature("12 H7/s6"_fit, aluminium_6082_t6, steel_c45);
    CHECK(pressed->heated.outcome == happening::at_20_degC_already);
    CHECK(pressed->cooled.outcome == happening::at_20_degC_already);
    CHECK(!pressed->heated.is_possible());
    const auto free = freeing_temperature("12 H7/g6"_fit, aluminium_6082_t6, steel_c45);
    CHECK(free->heated.outcome == happening::at_20_degC_already);
    CHECK(parting_temperature("12 H7/g6"_fit, aluminium_6082_t6, steel_c45)->cooled.outcome ==
          happening::at_20_degC_already);
}

TEST_CASE("a fit that just touches closes at once, or lets go at once") {
    const auto closes = seizing_temperature("14 H7/h6"_fit, steel_c45, aluminium_6082_t6);
    CHECK(closes->heated.outcome == happening::happens);
    CHECK(at(closes->heated.latest) == doctest::Approx(20).epsilon(1e-6));
    // A liner drawn p6: 18 um of tolerance and 18 um of interference leave nothing; warm it lets go.
    const auto lets_go = freeing_temperature("14 H7/p6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(at(lets_go->heated.earliest) == doctest::Approx(20).epsilon(1e-6));
    // Drawn s6 it holds past 95 C, the loosest pair no longer at the heating limit of the block.
    const auto holds = freeing_temperature("14 H7/s6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(at(holds->heated.earliest) > 130);
    CHECK(at(holds->heated.earliest) < 150);
    // The tightest pair comes apart later than the loosest lets go.
    const auto parts = parting_temperature("14 H7/s6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(parts->heated.outcome == happening::not_up_to_heating_limit);
}

TEST_CASE("may happen: at the worst of the spread only") {
    // C45 11.2 to 12.1, 1018 11.7 to 12.2: which of the two grows more nobody can tell.
    const auto unlike = seizing_temperature("14 H7/h6"_fit, steel_c45, steel_1018);
    CHECK(unlike->heated.outcome == happening::may_happen);
    CHECK(unlike->heated.earliest.is_known());
    CHECK(!unlike->heated.latest);
    CHECK(unlike->heated.earliest.how_sure() == confidence::published);
}

TEST_CASE("a mean that bends on the way") {
    // Both have 10 millionths up to 200 C and 11 at 500 C; the shaft's is at 11 by 300 C already.
    material hole = steady("hole", 10);
    hole.expansion.to_300_degC = {};
    hole.expansion.to_500_degC = ppm_per_kelvin(11);
    material shaft = hole;
    shaft.name = "shaft";
    shaft.expansion.to_300_degC = ppm_per_kelvin(11);
    const fit f = of_sizes(50.001_mm, 50_mm);
    CHECK(!seizing_temperature(f, shaft, hole)->heated.is_possible());
    const auto closes = seizing_temperature(f, hole, shaft);
    CHECK(closes->heated.outcome == happening::happens);
    CHECK(at(closes->heated.by_mean) > 200);
    CHECK(at(closes->heated.by_mean) < 300);
    const temperature t = *closes->heated.by_mean;
    CHECK(at_temperature(f, {hole, t}, {shaft, t})->by_mean == clearance_window{0_mm, 0_mm});
}

TEST_CASE("a dip between the knees of a curve is not jumped over") {
    // A parabola that is below zero from 140 to 160 C only, though open at 100 and at 200 C.
    const auto dip = [](double t) { return (t - 140) * (t - 160); };
    const auto found = detail::first_crossing(20, 500, dip);
    CHECK(found.is_there);
    CHECK(found.celsius == doctest::Approx(140).epsilon(1e-9));
    // One that only touches never falls below.
    CHECK(!detail::first_crossing(20, 500, [](double t) { return (t - 150) * (t - 150); }).is_there);
    // Downwards too.
    const auto cold = detail::first_crossing(20, -200, [](double t) { return (t + 50) * (t + 70); });
    CHECK(cold.celsius == doctest::Approx(-50).epsilon(1e-9));
    CHECK(!detail::first_crossing(20, 20, dip).is_there);
}

TEST_CASE("how far to look") {
    const auto looked = [](const material& hole, const material& shaft) {
        const auto r = seizing_temperature("12 H7/g6"_fit, hole, shaft);
        return range<double>{r->cooled.looked_upto.value(), r->heated.looked_upto.value()};
    };
    CHECK(looked(aluminium_6082_t6, steel_c45) == range<double>{-200, 150});
    CHECK(looked(steel_c45, aluminium_2024_t351) == range<double>{-200, 100});
    CHECK(looked(steel_c45, steel_100cr6) == range<double>{-200, 120});
    CHECK(looked(tool_steel_m2, valve_steel_21_4n).most == 500);
    material cool = steel_c45;
    cool.highest_heating = celsius(10); // below where the search begins
    CHECK(looked(cool, steel_c45) == range<double>{-200, 20});
    // No search goes where a coefficient is not known, whichever pair.
    for (const material* hole : all_materials())
        for (const material* shaft : all_materials()) {
            const range<double> r = looked(*hole, *shaft);
            for (const double t : {r.least, r.most}) {
                CHECK(growth(1_mm, *hole, celsius(t)).has_value());
                CHECK(growth(1_mm, *shaft, celsius(t)).has_value());
            }
        }
}

TEST_CASE("no coefficient, no answer") {
    constexpr material unknown{.name = "found metal"};
    const auto none = seizing_temperature("12 H7/g6"_fit, unknown, steel_c45);
    CHECK(none.error().code() == error_code::property_not_known);
    CHECK(none.error().message().find("found metal is not known; allowed") != text::npos);
    CHECK(freeing_temperature("12 H7/s6"_fit, steel_c45, unknown).error().code() ==
          error_code::property_not_known);
}

TEST_CASE("where the coefficients of an answer come from") {
    const auto seizes = seizing_temperature("12 H7/g6"_fit, stainless_303, steel_c45);
    CHECK(seizes->hole_expansion.place == "stainless 303");
    CHECK(seizes->hole_expansion.how_sure == confidence::memory);
    CHECK(seizes->shaft_expansion.document == steel_c45.documents);
    CHECK(seizes->heated.take_care == cautions(caution::hot));
    CHECK(seizes->cooled.take_care == cautions(caution::cold));
}

TEST_CASE("where a pair lets go, the smoothing of its seat is not counted, and that is said") {
    const auto frees = freeing_temperature("14 H7/s6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(frees->heated.doubts.contains(thermal_doubt::smoothing_not_counted));
    CHECK(frees->cooled.doubts.contains(thermal_doubt::smoothing_not_counted));
    const auto loose = freeing_temperature("14 H7/g6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(!loose->heated.doubts.contains(thermal_doubt::smoothing_not_counted));
    const auto seizes = seizing_temperature("14 H7/g6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(!seizes->heated.doubts.contains(thermal_doubt::smoothing_not_counted));
}

TEST_CASE("outcomes in words") {
    std::set<std::string_view> seen;
    for (int i = 0; i <= static_cast<int>(happening::at_20_degC_already); ++i)
        CHECK(seen.insert(std::string_view(in_words(static_cast<happening>(i)))).second);
    CHECK(seen.count("") == 0);
    CHECK(seen.size() == 5);
}
