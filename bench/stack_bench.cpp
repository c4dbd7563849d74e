// Ten million assemblies of a chain, tried; beside a plain loop with the standard library's engine and
// distributions, which tells only the mean and the scatter. And the rules, which need no trying.
//
// One iteration is ten million samples of the whole chain, to be below 0.5 s of processor time; the plain loop
// takes a tenth as many, so compare the items per second.

#include <fitwright/stack.hpp>

#include <benchmark/benchmark.h>

#include <cmath>
#include <random>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr std::int64_t samples = 10'000'000;

/// Seven links: the shaft in its housing of the text-books.
constexpr chain_link housing[] = {
    closes("ring", 0.0505_in, plus_minus(0.0015_in)),    opens("shaft", 8_in, plus_minus(0.008_in)),
    closes("bearing", 0.5093_in, plus_minus(0.0025_in)), opens("sleeve", 0.4_in, plus_minus(0.002_in)),
    closes("case", 7.711_in, plus_minus(0.006_in)),      opens("sleeve", 0.4_in, plus_minus(0.002_in)),
    closes("bearing", 0.5093_in, plus_minus(0.0025_in))};

template <class Distribution>
void plain_loop(benchmark::State& state, Distribution (*of)(const chain_link&)) {
    for (auto _ : state) {
        std::mt19937_64 random(1);
        Distribution links[7];
        double sign[7];
        for (int i = 0; i < 7; ++i) {
            links[i] = of(housing[i]);
            sign[i] = housing[i].effect == on_gap::opens ? 1 : -1;
        }
        double sum = 0;
        double squares = 0;
        for (std::int64_t n = 0; n < samples / 10; ++n) {
            double gap = 0;
            for (int i = 0; i < 7; ++i) gap += sign[i] * links[i](random);
            sum += gap;
            squares += gap * gap;
        }
        benchmark::DoNotOptimize(sum);
        benchmark::DoNotOptimize(squares);
    }
    state.SetItemsProcessed(state.iterations() * samples / 10);
}

void plain_loop_normal(benchmark::State& state) {
    plain_loop<std::normal_distribution<double>>(state, [](const chain_link& l) {
        return std::normal_distribution<double>((l.lower_limit() + l.upper_limit()).in<inch>() / 2,
                                                (l.upper_limit() - l.lower_limit()).in<inch>() / 6);
    });
}
BENCHMARK(plain_loop_normal)->Unit(benchmark::kMillisecond)->Iterations(1);

void plain_loop_rectangular(benchmark::State& state) {
    plain_loop<std::uniform_real_distribution<double>>(state, [](const chain_link& l) {
        return std::uniform_real_distribution<double>(l.lower_limit().in<inch>(), l.upper_limit().in<inch>());
    });
}
BENCHMARK(plain_loop_rectangular)->Unit(benchmark::kMillisecond)->Iterations(1);

void fitwright_tried(benchmark::State& state, scatter comes_out) {
    for (auto _ : state)
        benchmark::DoNotOptimize(simulate(
            housing,
            {.seed = 1, .samples = samples, .comes_out = comes_out, .wanted = {0.005_in, 0.035_in}}));
    state.SetItemsProcessed(state.iterations() * samples);
}
BENCHMARK_CAPTURE(fitwright_tried, normal, scatter::normal)->Unit(benchmark::kMillisecond)->Iterations(1);
BENCHMARK_CAPTURE(fitwright_tried, rectangular, scatter::rectangular)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);
BENCHMARK_CAPTURE(fitwright_tried, triangular, scatter::triangular)
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

void by_the_rules(benchmark::State& state) {
    const chain_link* hidden = housing;
    benchmark::DoNotOptimize(hidden);
    for (auto _ : state) benchmark::DoNotOptimize(stack(rows<chain_link>(hidden, 7)));
}
BENCHMARK(by_the_rules);

} // namespace

BENCHMARK_MAIN();
