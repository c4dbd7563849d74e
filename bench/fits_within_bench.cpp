// All ISO fits in a window, beside brute force: the same tables laid out as bare integers, and every hole
// class held against every shaft class. Both count all pairs; ours also ranks them and gives reasons.

#include <fitwright/choose/fits_within.hpp>

#include <benchmark/benchmark.h>

#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

constexpr length nominal = 25_mm;
constexpr clearance_window windows[] = {
    {13_um, 50_um},    // 3 thousand pairs
    {3_um, 4_um},      // none: the nearest misses
    {-100_mm, 100_mm}, // all 257 thousand
};

struct bare_limits {
    std::int64_t lower;
    std::int64_t upper;
};

template <side Side> std::vector<bare_limits> every_class() {
    std::vector<bare_limits> all;
    for (int p = 0; p < position_count; ++p)
        for (int g = 0; g < grade::count; ++g)
            if (const auto l =
                    limits(nominal, tolerance_class<Side>{static_cast<position>(p), grade::from_step(g)}))
                all.push_back({l->lower_deviation().nanometres(), l->upper_deviation().nanometres()});
    return all;
}

/// Counts alone: no rank, no list.
void every_pair_by_hand(benchmark::State& state) {
    const clearance_window w = windows[state.range(0)];
    for (auto _ : state) {
        const auto holes = every_class<side::hole>();
        const auto shafts = every_class<side::shaft>();
        int within = 0;
        for (const bare_limits& h : holes)
            for (const bare_limits& s : shafts)
                within +=
                    h.lower - s.upper >= w.least.nanometres() && h.upper - s.lower <= w.most.nanometres();
        benchmark::DoNotOptimize(within);
    }
}
BENCHMARK(every_pair_by_hand)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);

/// As one would write it with the library: `limits` of each pair.
void every_pair_by_limits(benchmark::State& state) {
    const clearance_window w = windows[state.range(0)];
    for (auto _ : state) {
        int within = 0;
        for (int i = 0; i < position_count * grade::count; ++i)
            for (int k = 0; k < position_count * grade::count; ++k) {
                const class_pair p{
                    {static_cast<position>(i / grade::count), grade::from_step(i % grade::count)},
                    {static_cast<position>(k / grade::count), grade::from_step(k % grade::count)}};
                if (!detail::has_value_at(nominal, p.hole) || !detail::has_value_at(nominal, p.shaft))
                    continue;
                const auto f = limits(nominal, p);
                within += f->min_clearance() >= w.least && f->max_clearance() <= w.most;
            }
        benchmark::DoNotOptimize(within);
    }
}
BENCHMARK(every_pair_by_limits)->Arg(0)->Unit(benchmark::kMicrosecond);

void fits_within_fitwright(benchmark::State& state) {
    clearance_window w = windows[state.range(0)];
    for (auto _ : state) {
        benchmark::DoNotOptimize(w);
        benchmark::DoNotOptimize(fits_within(nominal, w));
    }
}
BENCHMARK(fits_within_fitwright)->DenseRange(0, 2)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
