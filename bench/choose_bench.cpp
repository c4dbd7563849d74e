// choose() for pairs of a demo machine, beside brute force written with the library: every preferred fit
// judged for all wants in every state, and those that hold counted. Ours looks at more (other classes, the drawer), finds what
// each want allows, and says of each of the four best its film, leak, plan, gauge and readings.
//
// The bar is 5 ms for a pair.

#include <fitwright/callout.hpp>
#include <fitwright/choose/choose.hpp>
#include <fitwright/material.hpp>
#include <fitwright/running/lubricant.hpp>

#include <benchmark/benchmark.h>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr thermal_state day[] = {{"shed", 5_degC, 5_degC},
                                 {"working", 85_degC, 80_degC},
                                 {"worst steady", 95_degC, 95_degC},
                                 {"warm-up", 95_degC, 40_degC},
                                 {"cool-down", 60_degC, 95_degC}};

constexpr drawer_tool drawer[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                                  hand_reamer(8_mm, "H7"_hole_class), hand_reamer(14_mm, "H7"_hole_class),
                                  boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm})};

/// A plunger that must not seize, shake or leak; a shaft that runs on oil; a bush pressed into aluminium.
wants pair_of_demo(std::int64_t which) {
    wants w{.nominal = 8_mm,
            .must = want::never_seizes | want::slides_without_shake | want::holds_oil,
            .hole_made_of = materials::bronze_cusn7zn4pb7,
            .shaft_made_of = materials::steel_c45,
            .states = day,
            .left_at_least = 3_um,
            .shake_at_most = 60_um,
            .leak = leak_budget(plunger{.around = {.diameter = 8_mm,
                                                   .land = 20_mm,
                                                   .pressure_drop = megapascals(0.2),
                                                   .viscosity = millipascal_seconds(4)},
                                        .stroke = 30_mm,
                                        .under_pressure = seconds(1.5)},
                                percent{10}),
            .drawer = drawer,
            .uncertainty = 2_um};
    if (which == 1) {
        w.nominal = 25_mm;
        w.must = want::turns_freely | want::runs_on_oil;
        w.speed = revolutions_per_minute(1450);
        w.liquid = *oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95));
        w.film = {.width = 25_mm,
                  .load = newtons(300),
                  .oil_in = 30_degC,
                  .roughness = {.shaft = 1_um, .bore = 2_um}};
    }
    if (which == 2) {
        w.nominal = 14_mm;
        w.must = want::never_moves | want::presses_in;
        w.hole_made_of = materials::aluminium_6082_t6;
        w.shaft_made_of = materials::bronze_cusn7zn4pb7;
        w.joint = {.hub_outside = 40_mm,
                   .shaft_bore = 8_mm,
                   .joint_length = 28_mm,
                   .roughness = {.hub = 4_um, .shaft = 4_um},
                   .between = frictions::any_pair,
                   .load = {.along = newtons(200)},
                   .press_at_most = newtons(20'000)};
    }
    return w;
}

void every_preferred_fit_by_hand(benchmark::State& state) {
    const wants w = pair_of_demo(state.range(0));
    for (auto _ : state) {
        const detail::want_judge judge(w);
        int hold_all = 0;
        for (const basis b : {basis::hole, basis::shaft})
            for (const class_pair p : preferred_fits(b)) {
                const auto f = limits(w.nominal, p);
                if (!f) continue;
                bool all = true;
                w.must.for_each([&](want one) {
                    all = all &&
                          judge.judge(one, detail::exact_pair::tightest_of(*f)).holds == holding::yes &&
                          judge.judge(one, detail::exact_pair::loosest_of(*f)).holds == holding::yes;
                });
                hold_all += all;
            }
        benchmark::DoNotOptimize(hold_all);
    }
}
BENCHMARK(every_preferred_fit_by_hand)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);

void choose_fitwright(benchmark::State& state) {
    const wants w = pair_of_demo(state.range(0));
    for (auto _ : state) benchmark::DoNotOptimize(choose(w));
}
BENCHMARK(choose_fitwright)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
