// A pressed joint, cold and warm, beside what a programmer would write by hand: Lamé's formula in bare doubles
// for the two pressures, without checks, spread, margins or doubts.
//
// The ratio of the two is what counts; both run over the same inputs in one run.

#include <fitwright/material.hpp>
#include <fitwright/press.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

/// Sizes that the compiler can't know; every other shaft is hollow.
std::vector<joint> questions(double degrees) {
    std::mt19937 random(7190);
    const auto um = [&](std::uint32_t from, std::uint32_t span) {
        return length::from_nanometres(1000 * static_cast<std::int64_t>(from + random() % span));
    };
    std::vector<joint> made;
    for (int i = 0; i < 256; ++i) {
        const length d = um(8'000, 60'000);
        const length least = um(5, 20);
        made.push_back(
            {.seat = {d, {diametral_interference(least), diametral_interference(least + um(10, 20))}},
             .hub = {.made_of = materials::aluminium_6082_t6,
                     .outside = d + um(5'000, 40'000),
                     .at = celsius(degrees)},
             .shaft = {.made_of = materials::bronze_cusn7zn4pb7,
                       .bore = i % 2 == 0 ? 0_mm : d - um(2'000, 4'000),
                       .at = celsius(degrees)},
             .joint_length = um(10'000, 30'000),
             .roughness = {.hub = 3_um, .shaft = 2_um},
             .between = frictions::any_pair,
             .load = {.along = force::from_value(100), .turning = torque::from_value(1)}});
    }
    return made;
}

struct bare_joint {
    double diameter, outside, bore, joint_length, least, most, hub_modulus, hub_poisson, shaft_modulus,
        shaft_poisson;
};

struct bare_answer {
    double least, most, grip, press_in_force, closes_by;
};

bare_answer by_hand(const bare_joint& j) {
    const double dd = j.diameter * j.diameter;
    const double hub =
        ((j.outside * j.outside + dd) / (j.outside * j.outside - dd) + j.hub_poisson) / j.hub_modulus;
    const double shaft =
        ((dd + j.bore * j.bore) / (dd - j.bore * j.bore) - j.shaft_poisson) / j.shaft_modulus;
    const double least = j.least / (j.diameter * (hub + shaft));
    const double most = j.most / (j.diameter * (hub + shaft));
    const double area = 3.14159265358979 * j.diameter * j.joint_length;
    return {least, most, area * least * 0.05, area * most * 0.2,
            2 * most * j.bore / (j.shaft_modulus * (1 - j.bore * j.bore / dd))};
}

std::vector<bare_joint> bare(const std::vector<joint>& joints) {
    std::vector<bare_joint> made;
    for (const joint& j : joints)
        made.push_back({j.seat.diameter().in<metre>(), j.hub.outside.in<metre>(), j.shaft.bore.in<metre>(),
                        j.joint_length.in<metre>(), j.seat.interference().least.value.in<metre>() - 4e-6,
                        j.seat.interference().most.value.in<metre>(), 70e9, 0.33, 100e9, 0.34});
    return made;
}

void press_by_hand(benchmark::State& state) {
    const auto asked = bare(questions(20));
    for (auto _ : state)
        for (const bare_joint& j : asked) benchmark::DoNotOptimize(by_hand(j));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(press_by_hand);

void press_fitwright(benchmark::State& state) {
    const auto asked = questions(static_cast<double>(state.range(0)));
    for (auto _ : state)
        for (const joint& j : asked) benchmark::DoNotOptimize(press(j));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(press_fitwright)->ArgName("degC")->Arg(20)->Arg(95);

} // namespace

BENCHMARK_MAIN();
