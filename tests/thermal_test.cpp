// Growth, fits at temperature, readings of warm parts, the worst moments.

#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/material.hpp>
#include <fitwright/thermal.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <string_view>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright::materials;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos;
}

/// The temperatures in °C at which the expansion of a material may be known.
std::vector<double> temperatures() {
    std::vector<double> all{-273, -200, -190, -40, 20, 100, 200, 300, 500};
    for (double t = -201.5; t < 510; t += 3.7) all.push_back(t);
    return all;
}

constexpr material unknown{.name = "found metal"};

constexpr fit slide = "12 H7/g6"_fit; // 12 +0.018/0, -0.006/-0.017

/// The states of a bench machine: the hole's part, the shaft.
constexpr thermal_state states[] = {{"shed", 5_degC, 5_degC},      {"bench", 20_degC, 20_degC},
                                    {"working", 85_degC, 80_degC}, {"worst steady", 95_degC, 95_degC},
                                    {"warm-up", 95_degC, 40_degC}, {"cool-down", 60_degC, 95_degC}};

} // namespace

TEST_CASE("growth, worked out by hand") {
    // C45: 11.3e-6/K to 100 C, from 11.2 to 12.1 (Callister), taken from 2 % below; 100 mm over 75 K.
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), steel_c45, 95_degC)->by_mean == 84750_nm);
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), steel_c45, 95_degC)->least == 83055_nm);
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), steel_c45, 95_degC)->most == 90750_nm);
    FITWRIGHT_CHECK_BOTH(size_at_temperature(given(100_mm), steel_c45, 95_degC)->by_mean == 100.08475_mm);
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), steel_c45, 95_degC)->from.how_sure == confidence::published);
    // Halfway from 100 to 200 C the mean is 11.8e-6/K: 100 mm over 130 K.
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), steel_c45, 150_degC)->by_mean == 153400_nm);
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), steel_c45, 150_degC)->from.how_sure == confidence::memory);
    // A cooled part is smallest by the highest coefficient: bronze 18.0e-6/K, +/-5 % in the cold, over -30 K.
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), bronze_cusn7zn4pb7, celsius(-10))->by_mean == -54_um);
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), bronze_cusn7zn4pb7, celsius(-10))->least == -56700_nm);
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), bronze_cusn7zn4pb7, celsius(-10))->most == -51300_nm);
    // The difference of two sizes below zero is taken the same way.
    FITWRIGHT_CHECK_BOTH(growth(-given(100_mm), steel_c45, 95_degC)->least == -90750_nm);
    FITWRIGHT_CHECK_BOTH(growth(-given(100_mm), steel_c45, 95_degC)->most == -83055_nm);
}

TEST_CASE("the short way to a coefficient is no other way") {
    for (const material* m : all_materials())
        for (const double t : temperatures()) {
            const bool has_cold_figures_elsewhere =
                detail::polynomial_of(*m) != nullptr || detail::total_of(*m) != nullptr;
            if (t < 20 && has_cold_figures_elsewhere) continue;
            CAPTURE(m->name);
            CAPTURE(t);
            const auto a = mean_expansion(*m, celsius(t));
            const auto s = detail::strain_at(*m, celsius(t));
            REQUIRE(a.has_value() == s.has_value());
            if (!a || t == 20) continue;
            CHECK(s->by_mean == a->value().value() * (t - 20));
            CHECK(s->by_lowest == a->lowest().value() * (t - 20));
            CHECK(s->by_highest == a->highest().value() * (t - 20));
            CHECK(s->how_sure == a->from().how_sure);
            const bool is_by_the_mean_of_a_warm_part = t < 20 && !m->expansion.cooled_to_minus_190_degC;
            CHECK(s->doubts.contains(thermal_doubt::extrapolated) ==
                  (a->how() == table_reading::extrapolated && !is_by_the_mean_of_a_warm_part));
            CHECK(s->doubts.contains(thermal_doubt::cold_figures_not_known) ==
                  (is_by_the_mean_of_a_warm_part && t < 0));
            CHECK(s->doubts.contains(thermal_doubt::uncertain_expansion) ==
                  (s->how_sure == confidence::uncertain));
        }
}

TEST_CASE("at 20 C nothing has grown, whatever the material") {
    FITWRIGHT_CHECK_BOTH(growth(given(100_mm), unknown, 20_degC)->most == 0_mm);
    FITWRIGHT_CHECK_BOTH(size_at_temperature(given(100_mm), unknown, 20_degC)->least == 100_mm);
    FITWRIGHT_CHECK_BOTH(at_temperature(given(slide), {unknown, 20_degC}, {steel_c45, 20_degC})->clearance ==
                         clearance_window{6_um, 35_um});
    for (const material* m : all_materials()) {
        const auto hot = at_temperature(slide, {*m, 20_degC}, {steel_1018, 20_degC});
        CHECK(hot->hole == slide.hole());
        CHECK(hot->shaft == slide.shaft());
        CHECK(hot->clearance == hot->by_mean);
        CHECK(hot->kind() == slide.kind());
    }
}

TEST_CASE("growth rises with temperature, and the spread holds the mean") {
    for (const material* m : all_materials()) {
        CAPTURE(m->name);
        length before = nm(INT64_MIN);
        for (double t = -200; t <= 500; t += 5) {
            const auto g = growth(1000_mm, *m, celsius(t));
            if (!g) continue;
            CHECK(g->by_mean > before);
            CHECK(g->least <= g->by_mean);
            CHECK(g->by_mean <= g->most);
            before = g->by_mean;
        }
        CHECK(before > 0_mm); // some of it was known
    }
}

TEST_CASE("doubts and cautions of a warm part") {
    const auto doubts = [](const material& m, double t) { return growth(10_mm, m, celsius(t))->doubts; };
    const auto care = [](const material& m, double t) { return growth(10_mm, m, celsius(t))->take_care; };
    CHECK(doubts(steel_c45, 95).empty());
    CHECK(doubts(steel_c45, 301) == flags(thermal_doubt::above_heating_limit));
    CHECK(!doubts(steel_c45, 300).contains(thermal_doubt::above_heating_limit));
    CHECK(doubts(steel_c45, -195) == flags(thermal_doubt::extrapolated));
    CHECK(doubts(aluminium_6082_t6, 50) == flags(thermal_doubt::uncertain_expansion));
    CHECK(doubts(bronze_cusn7zn4pb7, 5).empty());
    CHECK(doubts(bronze_cusn7zn4pb7, -0.1) == flags(thermal_doubt::cold_figures_not_known));
    CHECK(doubts(brass_c36000, 5).empty());
    CHECK(doubts(brass_c36000, -5) == flags(thermal_doubt::uncertain_expansion));
    CHECK(doubts(nylon_pa66_dry, 90) == (thermal_doubt::plastic_moves | thermal_doubt::above_heating_limit));
    CHECK(doubts(steel_100cr6, -78) ==
          (thermal_doubt::uncertain_expansion | thermal_doubt::hard_steel_grows_cold));
    CHECK(care(steel_c45, 20).empty());
    CHECK(care(steel_c45, 49.9).empty());
    CHECK(care(steel_c45, 50) == cautions(caution::hot));
    CHECK(care(steel_c45, -19.9).empty());
    CHECK(care(steel_c45, -20) == cautions(caution::cold));
    for (std::uint32_t bit = 1; bit <= 512; bit <<= 1)
        CHECK(!in_words(static_cast<thermal_doubt>(bit)).empty());
}

TEST_CASE("a fit with its parts at unlike temperatures, worked out by hand") {
    // 6082: 23.4e-6/K +/-2 %; C45: 11.3e-6/K, -2 % to 12.1.
    // Least 6000 + 12000 * 22.932e-6 * 75 - 11994 * 12.1e-6 * 40 = 20833.7 nm and so on.
    constexpr auto hot = at_temperature(slide, {aluminium_6082_t6, 95_degC}, {steel_c45, 60_degC});
    static_assert(hot->min_clearance() == 20833_nm && hot->max_clearance() == 51206_nm);
    const auto again = at_temperature(given(slide), {aluminium_6082_t6, 95_degC}, {steel_c45, 60_degC});
    CHECK(again->clearance == hot->clearance);
    FITWRIGHT_CHECK_BOTH(given(*hot).by_mean == clearance_window{21639_nm, 50675_nm});
    FITWRIGHT_CHECK_BOTH(given(*hot).kind() == fit_kind::clearance);
    FITWRIGHT_CHECK_BOTH(given(*hot).hole.nominal() == 12_mm);
    FITWRIGHT_CHECK_BOTH(given(*hot).hole.lower_limit() == 12.020638_mm);
    FITWRIGHT_CHECK_BOTH(given(*hot).hole.upper_limit() == 12.039514_mm);
    FITWRIGHT_CHECK_BOTH(given(*hot).shaft.lower_limit() == 11.988307_mm);
    FITWRIGHT_CHECK_BOTH(given(*hot).shaft.upper_limit() == 11.999806_mm);
    CHECK(hot->min_clearance<micrometre>().value() == doctest::Approx(20.833));
    CHECK(hot->doubts == flags(thermal_doubt::uncertain_expansion));
    CHECK(hot->take_care == cautions(caution::hot));
    CHECK(hot->hole_expansion.place == "aluminium 6082-T6");
    CHECK(hot->shaft_expansion.place == "steel C45");
    // One part by itself.
    FITWRIGHT_CHECK_BOTH(at_temperature(given("12 H7"_hole), {aluminium_6082_t6, 95_degC})->limits ==
                         at_temperature(slide, {aluminium_6082_t6, 95_degC}, {steel_c45, 60_degC})->hole);
}

TEST_CASE("a fit of one material at one temperature keeps its clearance") {
    // 6 um * (1 + 11.07e-6 * 75) = 6.005 um; 35 um * (1 + 12.1e-6 * 75) = 35.032 um.
    FITWRIGHT_CHECK_BOTH(
        at_temperature(given(slide), {steel_c45, 95_degC}, {steel_c45, 95_degC})->clearance ==
        clearance_window{6004_nm, 35032_nm});
    for (const material* m : all_materials())
        for (const double t : {-35.0, 20.0, 60.0, 100.0}) {
            CAPTURE(m->name);
            CAPTURE(t);
            const auto hot = at_temperature(slide, {*m, celsius(t)}, {*m, celsius(t)});
            REQUIRE(hot.has_value());
            const double grown = 1 + detail::strain_at(*m, celsius(t))->by_mean;
            CHECK(std::fabs(static_cast<double>(hot->by_mean.least.nanometres()) - 6000 * grown) <= 0.5001);
            CHECK(std::fabs(static_cast<double>(hot->min_clearance().nanometres()) / 6000 - 1) < 0.03);
            CHECK(hot->kind() == fit_kind::clearance);
        }
    // Another name makes another material, whose coefficient is independent of the first.
    material other = steel_c45;
    other.name = "another heat of it";
    const auto unlike = at_temperature(slide, {steel_c45, 95_degC}, {other, 95_degC});
    CHECK(unlike->min_clearance() < 5300_nm);
    CHECK(unlike->max_clearance() > 35700_nm);
    // At unlike temperatures one material still has one coefficient: both parts at its lowest, or at its highest.
    const auto warmed = at_temperature(slide, {steel_c45, 95_degC}, {steel_c45, 40_degC});
    CHECK(warmed->min_clearance() == nm(6000 + 9966 - 2656)); // 12 mm * 830.55e-6, 11.994 mm * 221.48e-6
}

TEST_CASE("a fit at temperature holds every pair, at every end of the spreads") {
    std::mt19937 random(12);
    const auto known = all_materials();
    const auto below = [&](std::uint32_t n) { return static_cast<std::int64_t>(random() % n); };
    int tried = 0;
    for (int i = 0; i < 3000; ++i) {
        const material& of_hole = *known[random() % known.size()];
        const material& of_shaft = *known[random() % known.size()];
        const double hole_at = static_cast<double>(below(1400)) / 10 - 40;
        const double shaft_at = static_cast<double>(below(1400)) / 10 - 40;
        const length size = nm(1'000'000 + below(100'000'000));
        const fit f(between(size, size + nm(below(50'000))), between(size - nm(below(60'000)), size));
        const auto hot = at_temperature(f, {of_hole, celsius(hole_at)}, {of_shaft, celsius(shaft_at)});
        const auto a = detail::strain_at(of_hole, celsius(hole_at));
        const auto b = detail::strain_at(of_shaft, celsius(shaft_at));
        REQUIRE(hot.has_value() == (a.has_value() && b.has_value()));
        if (!hot || &of_hole == &of_shaft) continue;
        ++tried;
        const auto at_ends = [&](length hole, length shaft, bool least) {
            double found = least ? 1e300 : -1e300;
            for (const double ah : {a->by_lowest, a->by_highest})
                for (const double as : {b->by_lowest, b->by_highest}) {
                    const double c = static_cast<double>(hole.nanometres()) * (1 + ah) -
                                     static_cast<double>(shaft.nanometres()) * (1 + as);
                    found = least ? std::fmin(found, c) : std::fmax(found, c);
                }
            return found;
        };
        // Outwards, and by no more than a nanometre.
        const double least = at_ends(f.hole().lower_limit(), f.shaft().upper_limit(), true);
        const double most = at_ends(f.hole().upper_limit(), f.shaft().lower_limit(), false);
        const auto stated_least = static_cast<double>(hot->min_clearance().nanometres());
        const auto stated_most = static_cast<double>(hot->max_clearance().nanometres());
        CHECK(stated_least <= least + 2e-6);
        CHECK(stated_least > least - 1.00001);
        CHECK(stated_most >= most - 2e-6);
        CHECK(stated_most < most + 1.00001);
        CHECK(hot->min_clearance() <= hot->by_mean.least);
        CHECK(hot->by_mean.most <= hot->max_clearance());
        // The limits of the parts say the same of the pair, each rounded by itself.
        const length by_limits = hot->hole.lower_limit() - hot->shaft.upper_limit();
        CHECK(by_limits <= hot->min_clearance());
        CHECK(by_limits >= hot->min_clearance() - 2_nm);
    }
    CHECK(tried > 2000);
}

TEST_CASE("the heater in its block") {
    // A cartridge 6.5 -0.02/-0.06 at 250 C in a bore 6.5 H7 at 95 C: the cold clearance is 20 to 75 um.
    constexpr fit cartridge("6.5 H7"_hole, shaft_limits(6.5_mm, {.upper = -20_um, .lower = -60_um}));
    const auto hot = at_temperature(cartridge, {aluminium_6082_t6, 95_degC}, {stainless_304, 250_degC});
    CHECK(hot->kind() == fit_kind::clearance);
    CHECK(hot->min_clearance() < 8_um); // 20 + 11.3 - 26.3
    CHECK(hot->min_clearance() > 3_um);
}

TEST_CASE("what is not known of a material at a temperature is an error") {
    CHECK(says(growth(10_mm, unknown, 30_degC), error_code::property_not_known, "found metal is not known"));
    CHECK(says(size_at_temperature(10_mm, steel_c45, 501_degC), error_code::temperature_out_of_range,
               "not known above 500 C"));
    CHECK(says(at_temperature(slide, {bronze_cusn7zn4pb7, celsius(-41)}, {steel_c45, 20_degC}),
               error_code::temperature_out_of_range, "bronze CuSn7Zn4Pb7 is not known below -40 C"));
    CHECK(says(at_temperature(slide, {steel_c45, 20_degC}, {unknown, 21_degC}),
               error_code::property_not_known, "found metal"));
    CHECK(says(at_temperature("12 H7"_hole, {unknown, 21_degC}), error_code::property_not_known,
               "found metal"));
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(says(growth(10_mm, steel_c45, celsius(nan)), error_code::temperature_out_of_range,
               "not a temperature"));
    CHECK(says(growth(10_mm, steel_c45, celsius(-300)), error_code::temperature_out_of_range, "-273.15"));
}

TEST_CASE("a warm reading as it would be at 20 C") {
    // Aluminium at 34 C read by a steel gauge at 22 C: 50.031 * (1 + 11.9e-6 * 2) / (1 + 23.4e-6 * 14).
    constexpr warm_part gauge{steel_100cr6, 22_degC};
    FITWRIGHT_CHECK_BOTH(size_at_20(given(50.031_mm), aluminium_6082_t6, 34_degC, gauge)->by_mean ==
                         50.015806_mm);
    constexpr measured_hole reading(50.031_mm, 2_um);
    static_assert(std::is_same_v<decltype(size_at_20(reading, steel_c45, 20_degC, gauge)),
                                 result<measured_at_20<side::hole>>>);
    static_assert(std::is_same_v<decltype(size_at_20(measured_shaft(1_mm, 1_um), steel_c45, 20_degC, gauge)),
                                 result<measured_at_20<side::shaft>>>);
    FITWRIGHT_CHECK_BOTH(size_at_20(given(reading), aluminium_6082_t6, 34_degC, gauge)->part.size() ==
                         50.015806_mm);
    FITWRIGHT_CHECK_BOTH(size_at_20(given(reading), aluminium_6082_t6, 34_degC, gauge)->correction ==
                         -15194_nm);
    // 2 um of the reading, 0.47e-6 * 14 * 50.03 mm = 0.33 um of the part and 0.6e-6 * 2 * 50.03 mm = 0.06 um of
    // the gauge.
    FITWRIGHT_CHECK_BOTH(size_at_20(given(reading), aluminium_6082_t6, 34_degC, gauge)->part.uncertainty() ==
                         2387_nm);
    const auto corrected = size_at_20(reading, aluminium_6082_t6, 34_degC, gauge);
    CHECK(corrected->part_expansion.place == "aluminium 6082-T6");
    CHECK(corrected->gauge_expansion.place == "steel 100Cr6");
    CHECK(corrected->doubts == flags(thermal_doubt::uncertain_expansion));

    // Part and gauge alike, or both at 20 C: the reading is the size.
    for (const material* m : all_materials()) {
        const auto alike = size_at_20(reading, *m, 35_degC, {*m, 35_degC});
        CHECK(alike->part == reading);
        CHECK(alike->correction == 0_mm);
        CHECK(size_at_20(reading, *m, 20_degC, {steel_c45, 20_degC})->part == reading);
        // A reading taken off the size at temperature by a gauge at 20 C leads back to the size.
        const length warm = size_at_temperature(50_mm, *m, 70_degC)->by_mean;
        const auto back = size_at_20(warm, *m, 70_degC, {steel_c45, 20_degC});
        CHECK(back->by_mean >= 50_mm - 1_nm);
        CHECK(back->by_mean <= 50_mm + 1_nm);
        CHECK(back->least <= back->by_mean);
        CHECK(back->by_mean <= back->most);
    }
    // To the first order, 8800 nm less, it is the textbook's L20 = L * (1 + (a_gauge - a_part) * (T - 20 C)).
    const auto both_warm = size_at_20(100_mm, brass_c36000, 30_degC, {steel_1018, 30_degC});
    CHECK(both_warm->by_mean == nm(100'000'000 - 8'800 + 2));
    CHECK(says(size_at_20(reading, unknown, 30_degC, gauge), error_code::property_not_known, "found metal"));
    CHECK(says(size_at_20(100_mm, steel_c45, 30_degC, {unknown, 30_degC}), error_code::property_not_known,
               "found metal"));
}

TEST_CASE("the worst moments of a plunger") {
    // A bronze liner and a steel plunger.
    constexpr fit plunger = "8 H7/g6"_fit;
    constexpr auto worst = worst_moments(plunger, bronze_cusn7zn4pb7, steel_c45, states);
    static_assert(worst.has_value());
    FITWRIGHT_CHECK_BOTH(given(*worst).tightest.state == "cool-down");
    FITWRIGHT_CHECK_BOTH(given(*worst).loosest.state == "warm-up");
    FITWRIGHT_CHECK_BOTH(given(*worst).tightest.index == 5);
    FITWRIGHT_CHECK_BOTH(given(*worst).loosest.index == 4);
    // Bronze 18.0e-6/K +/-2 %: 5000 + 8000 * 17.64e-6 * 40 - 7995 * 12.1e-6 * 75;
    // 29000 + 8015 * 18.36e-6 * 75 - 7986 * 11.074e-6 * 20.
    FITWRIGHT_CHECK_BOTH(given(*worst).clearance() == clearance_window{3389_nm, 38268_nm});
    CHECK(worst->take_care == cautions(caution::hot));
    CHECK(worst->doubts.empty());

    // The same as looking at each state by itself.
    for (const material* hole : all_materials())
        for (const material* shaft : {&steel_c45, &aluminium_6082_t6, &stainless_303}) {
            CAPTURE(hole->name);
            CAPTURE(shaft->name);
            const auto all = worst_moments(plunger, *hole, *shaft, states);
            REQUIRE(all.has_value());
            length least = 1_mm;
            length most = -1_mm;
            flags<thermal_doubt> doubts;
            for (const thermal_state& s : states) {
                const auto hot = at_temperature(plunger, {*hole, s.hole}, {*shaft, s.shaft});
                if (hot->min_clearance() < least) least = hot->min_clearance();
                if (hot->max_clearance() > most) most = hot->max_clearance();
                doubts |= hot->doubts;
            }
            CHECK(all->clearance() == clearance_window{least, most});
            CHECK(all->tightest.fit.min_clearance() == least);
            CHECK(all->loosest.fit.max_clearance() == most);
            CHECK(all->doubts == doubts);
            const thermal_state& tightest = states[all->tightest.index];
            CHECK(tightest.name == all->tightest.state);
            CHECK(at_temperature(plunger, {*hole, tightest.hole}, {*shaft, tightest.shaft})->by_mean ==
                  all->tightest.fit.by_mean);
        }
}

TEST_CASE("of equal moments the first") {
    constexpr thermal_state twice[] = {{"one", 30_degC, 30_degC}, {"two", 30_degC, 30_degC}};
    FITWRIGHT_CHECK_BOTH(worst_moments(given(slide), steel_c45, brass_c36000, twice)->tightest.state ==
                         "one");
    FITWRIGHT_CHECK_BOTH(worst_moments(given(slide), steel_c45, brass_c36000, twice)->loosest.index == 0);
}

TEST_CASE("a moment of which nobody can tell") {
    const thermal_state with_frost[] = {{"bench", 20_degC, 20_degC},
                                        {"hard frost", celsius(-45), celsius(-45)}};
    CHECK(says(
        worst_moments(slide, bronze_cusn7zn4pb7, steel_c45, with_frost), error_code::temperature_out_of_range,
        "in state 'hard frost', the hole: the expansion of bearing bronze CuSn7Zn4Pb7 is not known below -40 C"));
    CHECK(says(worst_moments(slide, steel_c45, bronze_cusn7zn4pb7, with_frost),
               error_code::temperature_out_of_range,
               "in state 'hard frost', the shaft: the expansion of bearing bronze"));
    CHECK(says(worst_moments(slide, unknown, steel_c45, with_frost), error_code::property_not_known,
               "in state 'hard frost', the hole: the expansion of found metal is not known; allowed: "));
    CHECK(
        says(worst_moments(slide, steel_c45, steel_c45, {}), error_code::no_states, "allowed: one or more"));
    // The longest material's name and a long state: nothing is cut.
    const thermal_state long_name[] = {
        {"a state with far too long a name for anybody", celsius(-60), 20_degC}};
    const auto refused = worst_moments(slide, epoxy_unfilled, steel_c45, long_name);
    CHECK(says(refused, error_code::temperature_out_of_range, "or a material of your own that states more"));
}

TEST_CASE("sizes beyond what a length holds are its ends, not an overflow") {
    const length longest = nm(INT64_MAX);
    FITWRIGHT_CHECK_BOTH(detail::rounded_up(given(1e300)) == nm(INT64_MAX));
    FITWRIGHT_CHECK_BOTH(detail::rounded_down(given(-1e300)) == nm(-INT64_MAX));
    CHECK(growth(longest, steel_c45, 95_degC)->by_mean > 0_mm);
    FITWRIGHT_CHECK_BOTH(detail::rounded_down(given(-0.5)) == nm(-1));
    FITWRIGHT_CHECK_BOTH(detail::rounded_up(given(0.5)) == nm(1));
    FITWRIGHT_CHECK_BOTH(detail::rounded_up(given(7.0)) == nm(7));
    FITWRIGHT_CHECK_BOTH(detail::rounded_down(given(7.0)) == nm(7));
    FITWRIGHT_CHECK_BOTH(detail::rounded_down(given(6.9999999999)) == nm(7)); // noise of the arithmetic
    FITWRIGHT_CHECK_BOTH(detail::rounded_to_nearest(given(6.4)) == nm(6));
    FITWRIGHT_CHECK_BOTH(detail::rounded_to_nearest(given(-6.6)) == nm(-7));
}

TEST_CASE("in the cold both ways of asking say the same, and the spread lies on both sides") {
    for (const material* m : all_materials())
        for (double t = 19.5; t >= -250; t -= 2.5) {
            CAPTURE(m->name);
            CAPTURE(t);
            const auto grown = growth(1000_mm, *m, celsius(t));
            const auto shrunk = shrinkage_on_cooling(1000_mm, *m, celsius(t));
            REQUIRE(grown.has_value() == shrunk.has_value());
            if (!grown) {
                CHECK(grown.error().message() == shrunk.error().message());
                break;
            }
            CHECK(grown->least == -shrunk->most);
            CHECK(grown->most == -shrunk->least);
            CHECK(grown->doubts == shrunk->doubts);
            CHECK(grown->from.document == shrunk->from.document);
            // 5 % for metals, 20 % for plastics (common practice), whatever the spread of the warm part is.
            const double share = m->family == material_family::plastic ? 0.2 : 0.05;
            const auto mean = static_cast<double>(shrunk->by_mean.nanometres());
            CHECK(static_cast<double>(shrunk->most.nanometres()) >= mean * (1 + share) - 2);
            CHECK(static_cast<double>(shrunk->least.nanometres()) <= mean * (1 - share) + 2);
            const auto limits = at_temperature(hole_limits(between(999_mm, 1000_mm)), {*m, celsius(t)});
            CHECK(limits->limits.upper_limit() == 1000_mm + grown->most);
            CHECK(limits->limits.lower_limit() <= 999_mm + growth(999_mm, *m, celsius(t))->least + 1_nm);
        }
    // By the curve of NIST, not by the straight line.
    CHECK(growth(1000_mm, aluminium_6061_t6, celsius(-78))->from.document ==
          sources::nist_cryogenic.document);
    CHECK(growth(1000_mm, aluminium_6061_t6, 30_degC)->from.document == aluminium_6061_t6.documents);
}

TEST_CASE("limits that allow no size have no size when hot either") {
    const hole_limits bore = "12 H7"_hole;
    const shaft_limits pin = "12 g6"_shaft;
    const hole_limits crossed_hole(12_mm, {.upper = -1_um, .lower = 5_um});
    const shaft_limits crossed_shaft(12_mm, {.upper = -1_um, .lower = 5_um});
    const hole_limits no_hole(12_um, {.upper = 5_um, .lower = -12_um});
    const shaft_limits no_shaft(-12_mm, {.upper = 5_um, .lower = 0_um});
    const warm_part warm{steel_c45, 95_degC};
    const auto refused = [](const auto& r, error_code code, text part) {
        return says(r, code, part) && says(r, code, "allowed: ");
    };
    CHECK(refused(at_temperature(crossed_hole, warm), error_code::limits_crossed, "of the hole is below"));
    CHECK(refused(at_temperature(crossed_shaft, warm), error_code::limits_crossed, "of the shaft is below"));
    CHECK(refused(at_temperature(no_hole, warm), error_code::size_not_above_zero, "of the hole is not"));
    CHECK(refused(at_temperature(no_shaft, warm), error_code::size_not_above_zero, "of the shaft is not"));
    for (const fit& f : {fit(crossed_hole, pin), fit(bore, crossed_shaft)}) {
        const text part = f.hole() == bore ? "of the shaft is below" : "of the hole is below";
        CHECK(refused(at_temperature(f, warm, warm), error_code::limits_crossed, part));
        CHECK(refused(worst_moments(f, steel_c45, steel_c45, states), error_code::limits_crossed, part));
        CHECK(refused(seizing_temperature(f, steel_c45, steel_1018), error_code::limits_crossed, part));
        CHECK(refused(freeing_temperature(f, steel_c45, steel_1018), error_code::limits_crossed, part));
        CHECK(refused(parting_temperature(f, steel_c45, steel_1018), error_code::limits_crossed, part));
        CHECK(refused(shrink_temperatures(f, steel_c45, steel_1018), error_code::limits_crossed, part));
    }
    for (const fit& f : {fit(no_hole, pin), fit(bore, no_shaft)}) {
        CHECK(refused(at_temperature(f, warm, warm), error_code::size_not_above_zero, "not above zero"));
        CHECK(refused(worst_moments(f, steel_c45, steel_c45, states), error_code::size_not_above_zero,
                      "not above zero"));
        CHECK(
            refused(seizing_temperature(f, steel_c45, steel_1018), error_code::size_not_above_zero, "above"));
        CHECK(
            refused(freeing_temperature(f, steel_c45, steel_1018), error_code::size_not_above_zero, "above"));
        CHECK(
            refused(parting_temperature(f, steel_c45, steel_1018), error_code::size_not_above_zero, "above"));
        CHECK(
            refused(shrink_temperatures(f, steel_c45, steel_1018), error_code::size_not_above_zero, "above"));
    }
    CHECK(refused(size_at_20(measured_hole(0_mm, 1_um), steel_c45, 30_degC, warm),
                  error_code::size_not_above_zero, "of the hole is not"));
    // One size only is a size.
    FITWRIGHT_CHECK_BOTH(at_temperature(hole_limits(given(12_mm), {}), {steel_c45, 95_degC}).has_value());
}

TEST_CASE("a figure that can't be is refused wherever it would count") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    using figure_of = property<expansion_coefficient> expansion_means::*;
    struct place {
        figure_of where;
        const char* name;
        double used_at;
    };
    const place places[] = {{&expansion_means::to_100_degC, "to_100_degC", 60},
                            {&expansion_means::lowest, "lowest", 60},
                            {&expansion_means::highest, "highest", 60},
                            {&expansion_means::to_200_degC, "to_200_degC", 150},
                            {&expansion_means::to_300_degC, "to_300_degC", 250},
                            {&expansion_means::to_500_degC, "to_500_degC", 400},
                            {&expansion_means::cooled_to_minus_190_degC, "cooled_to_minus_190_degC", -60}};
    for (const place& p : places)
        for (const double wrong : {nan, inf, -inf, 11.3, 1.001e-3, -1.001e-3}) {
            CAPTURE(p.name);
            CAPTURE(wrong);
            material mine = steel_c45;
            mine.name = "our steel";
            mine.expansion.*p.where = expansion_coefficient::from_value(wrong);
            const auto refused = [&](const auto& r) {
                return says(r, error_code::figure_not_possible,
                            "the expansion of our steel is not possible: ") &&
                       says(r, error_code::figure_not_possible, p.name) &&
                       says(r, error_code::figure_not_possible, "allowed: a number from -0.001 to 0.001");
            };
            CHECK(refused(mean_expansion(mine, celsius(p.used_at))));
            CHECK(refused(growth(100_mm, mine, celsius(p.used_at))));
            CHECK(refused(at_temperature(slide, {mine, celsius(p.used_at)}, {steel_c45, 20_degC})));
            CHECK(refused(seizing_temperature(slide, mine, steel_c45)));
            CHECK(refused(shrink_temperatures("12 H7/s6"_fit, mine, steel_c45)));
            CHECK(refused(shrink_temperatures("12 H7/s6"_fit, steel_c45, mine)));
        }
    material edge{.name = "edge", .expansion = {.to_100_degC = expansion_coefficient::from_value(1e-3)}};
    CHECK(growth(100_mm, edge, 60_degC)->by_mean == 4_mm);
    edge.highest_heating = celsius(nan);
    CHECK(says(seizing_temperature(slide, edge, steel_c45), error_code::figure_not_possible,
               "the heating limit of edge is not a temperature: highest_heating"));
}

TEST_CASE("two handbooks that agree to the digit still leave a spread") {
    const property<expansion_coefficient> a(ppm_per_kelvin(10), confidence::published);
    material agreed{.name = "agreed",
                    .family = material_family::steel,
                    .expansion = {.to_100_degC = a, .lowest = a, .highest = a}};
    const auto g = growth(1000_mm, agreed, 100_degC);
    CHECK(g->least == 784_um);
    CHECK(g->by_mean == 800_um);
    CHECK(g->most == 816_um);
    // Ends that the user states are his, even if there is nothing between them.
    agreed.expansion.lowest = agreed.expansion.highest = ppm_per_kelvin(10);
    CHECK(growth(1000_mm, agreed, 100_degC)->least == 800_um);
    CHECK(growth(1000_mm, agreed, 100_degC)->most == 800_um);
    // In the cold they say nothing.
    agreed.expansion.cooled_to_minus_190_degC = ppm_per_kelvin(10);
    CHECK(growth(1000_mm, agreed, celsius(-80))->least == -1050_um);
}
