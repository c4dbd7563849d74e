// Every call of the README's "Pick a header", compiled as it stands there and checked to answer.
// tests/readme_test.cpp looks each of them up in this file.

#include <fitwright/chance.hpp>
#include <fitwright/choose.hpp>
#include <fitwright/choose/next_reamer.hpp>
#include <fitwright/fitwright.hpp>
#include <fitwright/gauge.hpp>
#include <fitwright/general.hpp>
#include <fitwright/io.hpp>
#include <fitwright/io/picture.hpp>
#include <fitwright/material.hpp>
#include <fitwright/press.hpp>
#include <fitwright/thermal.hpp>
#include <fitwright/tool.hpp>
#include <fitwright/tool/trials.hpp>

#include <doctest/doctest.h>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

TEST_CASE("the calls of the README's table do what it says") {
    const std::int64_t n = 7'968'000;
    CHECK(length::from_nanometres(n) == 7.968_mm);
    CHECK(12_mm > 0.25_in);

    const hole_limits bore = "12 H7"_hole;
    const shaft_limits pin = "12 g6"_shaft;
    const length l = 12.018_mm;
    CHECK(l.as<inch>().value() == doctest::Approx(0.473149606));
    CHECK(bore.upper_limit<millimetre>().value() == 12.018);
    CHECK((95_degC).value() == 95);

    CHECK(hole_limits(14_mm, {.upper = 18_um, .lower = 0_um}) == "14 H7"_hole);
    CHECK(between(7.978_mm, 7.986_mm).upper == 7.986_mm);

    CHECK(standard_tolerance(25_mm, grade(7)).value() == 21_um); // ISO 286-1:2010 Table 1
    CHECK(limits(25_mm, "H7"_hole_class)->upper_limit() == 25.021_mm);
    CHECK(preferred_fits(basis::hole).size() == 45);

    CHECK(fit(bore, pin).min_clearance() == 6_um);
    CHECK(fit(bore, pin).kind() == fit_kind::clearance);

    CHECK("25 H7"_hole.upper_limit() == 25.021_mm);
    CHECK("25 g6"_shaft.upper_limit() == 24.993_mm);
    CHECK("25 H7/g6"_fit.max_clearance() == 41_um);

    const char* const t = "12 H7";
    CHECK(read_hole(t).has_value());
    CHECK(!read_shaft(t).has_value());
    CHECK(!read_fit(t).has_value());
    CHECK(read_callout(t).has_value());
    CHECK(written(25_mm, "H7"_hole_class) == "25 H7");
    CHECK(written(bore) == "12 +0.018/0");

    CHECK(rounded_inwards(bore, 0.0001_in)->upper_limit() == 0.4731_in);
    CHECK(target_on_grid(bore, 0.01_mm).value() == 12.01_mm);

    CHECK(inch_fit(inch_fit_class::rc4, 0.5_in)->min_clearance() == 0.0006_in); // ANSI B4.1, RC4
    CHECK(inch_fit("RC4", 0.5_in)->max_clearance() == 0.0023_in);
    CHECK(general_tolerance(25_mm, general_class::medium).value() == 0.2_mm);       // ISO 2768-1 Table 1
    CHECK(clearance_hole(6_mm, clearance_series::medium)->lower_limit() == 6.6_mm); // ISO 273
    CHECK(tapping_drill(*coarse_thread(6_mm))->drill == 5_mm);                      // ISO 2306

    const auto steel = material_family::steel;
    const drawer_tool drawer[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                                  hand_reamer(12_mm, "H7"_hole_class), hand_reamer(13_mm, "H7"_hole_class)};
    CHECK(reamer_for(bore).upper_limit() == 12.015_mm); // DIN 1420: 12.018 less 3 um
    CHECK(drill_under_reamer(10_mm, drill_series::metric, finishing::hand_reaming, steel)->diameter ==
          9.7_mm);
    CHECK(drilled_hole(9.7_mm)->least() > 9.7_mm);
    CHECK(sold_reamers_for(bore, steel).has_value());
    CHECK(plan_hole(bore, drawer, materials::brass_cuzn39pb3)->steps().size() == 3);

    const measured_shaft rod(7.970_mm, 2_um);
    const measured_hole trials[] = {{7.979_mm, 1_um}, {7.981_mm, 1_um}, {7.980_mm, 1_um}};
    const auto trial_cut = overcut_from_trials(trials, rod);
    REQUIRE(trial_cut.has_value());
    const overcut cut = *trial_cut;
    CHECK(bit_hole(rod, cut).mean() > 7.970_mm);

    const measured_hole trial(11.962_mm, 2_um);
    const radius_offset control{.increment = on_radius(1_um),
                                .largest_change = on_radius(50_um),
                                .sense = offset_sense::larger_makes_larger};
    CHECK(offset_to_recut(trial, bore, control)->change.value > 0_mm);
    CHECK(divisions_to_go(trial, bore, on_radius(1_thou))->divisions == 0);

    CHECK(plug_gauge(bore)->go.lower_limit() > 12_mm);
    CHECK(ring_gauge(pin)->go.upper_limit() < 12_mm);
    CHECK(judge(measured_shaft(11.99_mm, 4_um), pin) == verdict::accept);
    CHECK(acceptance_band(pin, 2_um)->upper_limit() == 11.992_mm);
    CHECK(materials::steel_c45.family == material_family::steel);
    CHECK(find_material("CuZn39Pb3").has_value());

    const material block = materials::aluminium_6082_t6;
    const material steel_pin = materials::steel_c45;
    const fit slide(bore, pin);
    const fit tight = "12 H7/p6"_fit;
    const thermal_state states[] = {{"bench", 20_degC, 20_degC}, {"cool-down", 40_degC, 95_degC}};
    CHECK(at_temperature(slide, {block, 95_degC}, {steel_pin, 60_degC})->min_clearance() > 6_um);
    CHECK(worst_moments(slide, block, steel_pin, states)->tightest.state == "cool-down");
    CHECK(!seizing_temperature(slide, block, steel_pin)->heated.is_possible());
    CHECK(freeing_temperature(tight, block, steel_pin)->heated.is_possible());
    CHECK(!parting_temperature(tight, block, steel_pin)->heated.is_possible()); // the block bears 150 C
    CHECK(shrink_temperatures(tight, block, steel_pin)->advice != shrink_advice::goes_in_at_room_temperature);
    CHECK(shrinkage_on_cooling(50_mm, steel_pin, coolant::dry_ice).has_value());
    CHECK(size_at_20(50.031_mm, block, 34_degC, {steel_pin, 22_degC})->by_mean < 50.031_mm);

    const joint bush{.seat = "14 H7/r6"_fit,
                     .hub = {.made_of = block, .outside = 30_mm, .at = 60_degC},
                     .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 10_mm, .at = 60_degC},
                     .joint_length = 12_mm,
                     .between = frictions::any_pair};
    const auto pressed = press(bush);
    REQUIRE(pressed.has_value());
    CHECK(
        friction_for({.hub = steel, .shaft = steel, .how = joined_by::pressing, .surface = seat_surface::dry})
            .least > 0.05);
    CHECK(ream_after_pressing("10 H7"_hole, *pressed)->closes_by.most > 10_um);
    CHECK(bore_in_service("10 H7"_hole, pressed->bore_moves_by).upper_limit() > 10.015_mm);
    const joint plug{.seat = "9 H7/s6"_fit,
                     .hub = {.made_of = block, .outside = 21_mm},
                     .shaft = {.made_of = materials::brass_cuzn39pb3},
                     .joint_length = 8_mm,
                     .between = frictions::any_pair};
    CHECK(plug_under_pressure(plug, {.of_fluid = megapascals(0.3), .safety = 2})->holds() == holding::yes);
    joint hub = bush;
    hub.load.along = force::from_value(100);
    CHECK(interference_to_hold(hub)->interference.value > 0_um);
    CHECK(greatest_interference(hub)->interference.value > 0_um);

    const auto made_oil = oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95));
    REQUIRE(made_oil.has_value());
    const fluid spindle_oil = *made_oil;
    CHECK(viscosity(spindle_oil, 60_degC)->kinematic.value() < 32e-6);
    const journal spindle{.diameter = 25_mm,
                          .width = 20_mm,
                          .clearance = "25 H7/f7"_fit,
                          .load = newtons(300),
                          .speed = revolutions_per_minute(1450),
                          .lubricant = spindle_oil,
                          .oil_in = 40_degC};
    CHECK(film(spindle)->regime == film_regime::full_film);
    CHECK(petroff(spindle, millipascal_seconds(20)).has_value());
    CHECK(clearance_for_speed(12_mm, revolutions_per_minute(2800)).has_value());
    CHECK(recommended_clearance(running_use::plastic_bush, 12_mm).has_value());
    CHECK(nearest_running_fit(12_mm, diametral_clearance(16_um), basis::hole).has_value());
    CHECK(recommended_bush_fit(bush_kind::solid_bronze, 12_mm)->housing == "H7"_hole_class); // ISO 4379
    const gap around{.diameter = 8_mm,
                     .clearance = "8 H7/g6"_fit,
                     .land = 20_mm,
                     .pressure_drop = megapascals(2),
                     .viscosity = millipascal_seconds(30)};
    CHECK(leakage(around)->flow().most.value() > leakage(around)->flow().least.value());
    CHECK(greatest_clearance(around, millilitres_per_minute(5))->greatest > 5_um);
    const chain_link chain[] = {opens("housing", 40_mm, {.upper = 100_um, .lower = 0_um}),
                                closes("shaft", 39.6_mm, {.upper = 0_um, .lower = -100_um})};
    const shim box[] = {{100_um}, {200_um}};
    CHECK(stack(chain)->worst_case.most == 0.6_mm);
    CHECK(simulate(chain, {.seed = 1, .samples = 10'000, .comes_out = scatter::normal}).has_value());
    CHECK(
        choose_shim(measured_float{.size = 0.28_mm, .uncertainty = 10_um}, {50_um, 150_um}, box)->how_many ==
        1);
    CHECK(least_backlash({.tooth_module = 2_mm, .centre_distance = 100_mm}).has_value());
    const two_dowels pair_of_dowels{.distance = 60_mm,
                                    .dowels_plus_minus = 20_um,
                                    .holes_plus_minus = 20_um,
                                    .first = "6 H7/h6"_fit,
                                    .second = "6 H7/h6"_fit};
    CHECK(second_hole_for(pair_of_dowels).has_value());

    const wants plunger_wants{.nominal = 12_mm,
                              .must = want::turns_freely | want::slides_without_shake,
                              .hole_made_of = block,
                              .shaft_made_of = steel_pin,
                              .shake_at_most = 40_um};
    CHECK(choose(plunger_wants)->best().holds_all());
    CHECK(!held_against(plunger_wants, "12 H7/f7"_fit)->holds_all()); // up to 52 um

    const fit doubtful = "12 H7/m6"_fit;
    CHECK(fits_within(12_mm, {8_um, 40_um})->lie_within());
    CHECK(probability(doubtful, {0_um, 20_um}, spread::both(size_distribution::uniform()))->inside > 0.1);
    CHECK(clearances(doubtful, spread::both(size_distribution::triangular()))->share_interfering() > 0.5);

    CHECK(nearest_class(bore, 12_mm)->miss() == 0_nm);
    const measured_hole too_large(12.08_mm, 3_um);
    CHECK(shaft_for(too_large, {6_um, 35_um}).has_value());
    CHECK(sleeve_for(too_large, bore, {.wall = 1.5_mm})->seat.nominal() == 16_mm);
    CHECK(next_reamer_up(too_large, drawer, steel)->tool.nominal == 13_mm);
    CHECK(bore_for(measured_shaft{7.968_mm, 2_um}, {8_um, 20_um})->lower_limit() == 7.978_mm);
    const measured_hole holes[] = {{8.010_mm, 1_um}};
    const measured_shaft shafts[] = {{7.996_mm, 1_um}};
    CHECK(pair_up(holes, shafts, {8_um, 20_um})->size() == 1);

    CHECK(draw(zone_picture{.of = slide}, std::cout).has_value());
    std::cout << bore << '\n';
    char room[64];
    CHECK(print({room, sizeof room}, bore).value() == "12 +0.018/0");
}
