// The share of pairs inside a window, beside a simulation of 10 000 pairs, which is good for one per cent.

#include <fitwright/callout.hpp>
#include <fitwright/chance.hpp>

#include <benchmark/benchmark.h>

#include <random>

using namespace fitwright;
using namespace fitwright::literals;
using sizes = size_distribution;

namespace {

constexpr fit dowel = "6 H7/m6"_fit;
constexpr clearance_window window{0_um, 8_um};

void ten_thousand_pairs_even(benchmark::State& state) {
    std::mt19937_64 random(6);
    for (auto _ : state) {
        int inside = 0;
        for (int i = 0; i < 10'000; ++i) {
            const auto hole = static_cast<std::int64_t>(random() % 12'000);
            const auto shaft = 4'000 + static_cast<std::int64_t>(random() % 8'000);
            inside += hole - shaft >= 0 && hole - shaft <= 8'000;
        }
        benchmark::DoNotOptimize(inside);
    }
}
BENCHMARK(ten_thousand_pairs_even)->Unit(benchmark::kMicrosecond);

void probability_of(benchmark::State& state, const spread& s) {
    fit f = dowel;
    for (auto _ : state) {
        benchmark::DoNotOptimize(f);
        benchmark::DoNotOptimize(probability(f, window, s)->inside);
    }
}
BENCHMARK_CAPTURE(probability_of, even, spread::both(sizes::uniform()))->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(probability_of, safe_side, spread::both(sizes::towards_maximum_material()))
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(probability_of, bells, spread::both(sizes::normal({.cp = 1.33})))
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(probability_of, bells_inspected, spread::both(sizes::normal({.cp = 1.33}).inspected()))
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(probability_of, even_hole_and_bell, (spread{sizes::uniform(), sizes::normal({.cp = 1.33})}))
    ->Unit(benchmark::kMicrosecond);

void median_bells_inspected(benchmark::State& state) {
    const auto c = clearances(dowel, spread::both(sizes::normal({.cp = 1.33}).inspected()));
    for (auto _ : state) benchmark::DoNotOptimize(c->quantile(0.5));
}
BENCHMARK(median_bells_inspected)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
