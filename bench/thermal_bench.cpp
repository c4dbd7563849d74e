// A fit over the six states of a machine, beside what a programmer would write by hand: a loop over bare
// doubles with one coefficient a part, without its spread, the cold, limits of validity or sources.
//
// The ratio of the two is what counts; both run over the same inputs in one run.

#include <fitwright/callout.hpp>
#include <fitwright/material.hpp>
#include <fitwright/thermal/worst_moments.hpp>

#include <benchmark/benchmark.h>

#include <cstddef>
#include <cstdint>
#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr std::size_t state_count = 6;

/// Sizes and temperatures that the compiler can't know.
struct question {
    fit pair;
    thermal_state states[state_count];
};

std::vector<question> questions() {
    std::mt19937 random(286);
    const auto around = [&](int celsius_here) {
        return celsius(celsius_here + static_cast<int>(random() % 9));
    };
    std::vector<question> made;
    for (int i = 0; i < 512; ++i) {
        const length bore =
            length::from_nanometres(8'000'000 + static_cast<std::int64_t>(random() % 90'000'000));
        const hole_limits hole = between(bore, bore + 18_um);
        const shaft_limits shaft = between(bore - 30_um, bore - 12_um);
        made.push_back({{hole, shaft},
                        {{"shed", around(1), around(1)},
                         {"bench", around(16), around(16)},
                         {"working", around(81), around(76)},
                         {"worst steady", around(91), around(91)},
                         {"warm-up", around(91), around(36)},
                         {"cool-down", around(56), around(91)}}});
    }
    return made;
}

struct bare_answer {
    double tightest, loosest;
    std::size_t tightest_at, loosest_at;
};

bare_answer by_hand(const question& q) {
    const double hole_least = static_cast<double>(q.pair.hole().lower_limit().nanometres());
    const double hole_most = static_cast<double>(q.pair.hole().upper_limit().nanometres());
    const double shaft_least = static_cast<double>(q.pair.shaft().lower_limit().nanometres());
    const double shaft_most = static_cast<double>(q.pair.shaft().upper_limit().nanometres());
    bare_answer a{1e300, -1e300, 0, 0};
    for (std::size_t i = 0; i < state_count; ++i) {
        const double hole = 1 + 23.4e-6 * (q.states[i].hole.value() - 20);
        const double shaft = 1 + 11.3e-6 * (q.states[i].shaft.value() - 20);
        const double least = hole_least * hole - shaft_most * shaft;
        const double most = hole_most * hole - shaft_least * shaft;
        if (least < a.tightest) a.tightest = least, a.tightest_at = i;
        if (most > a.loosest) a.loosest = most, a.loosest_at = i;
    }
    return a;
}

void six_states_by_hand(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& q : asked) benchmark::DoNotOptimize(by_hand(q));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(six_states_by_hand);

void six_states_fitwright(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& q : asked)
            benchmark::DoNotOptimize(
                worst_moments(q.pair, materials::aluminium_6082_t6, materials::steel_c45, q.states));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(six_states_fitwright);

void one_state_fitwright(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& q : asked)
            benchmark::DoNotOptimize(at_temperature(q.pair, {materials::aluminium_6082_t6, q.states[4].hole},
                                                    {materials::steel_c45, q.states[4].shaft}));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(one_state_fitwright);

} // namespace

BENCHMARK_MAIN();
