// Pairing 200 holes with 200 shafts, beside the least that any method must do: look at every pair once.

#include <fitwright/choose.hpp>

#include <benchmark/benchmark.h>

#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

struct trays {
    std::vector<measured_hole> holes;
    std::vector<measured_shaft> shafts;
};

trays two_hundred() {
    std::mt19937 random(200);
    trays t;
    for (int i = 0; i < 200; ++i) {
        t.holes.emplace_back(8_mm + 1_nm * (random() % 18'000), 1_um);
        t.shafts.emplace_back(7.986_mm + 1_nm * (random() % 9'000), 1_um);
    }
    return t;
}

constexpr clearance_window wanted{8_um, 20_um};

void every_pair_once(benchmark::State& state) {
    const trays t = two_hundred();
    for (auto _ : state) {
        int good = 0;
        for (const auto& h : t.holes)
            for (const auto& s : t.shafts) {
                const length c = h.size() - s.size();
                const length u = h.uncertainty() + s.uncertainty();
                good += c - u >= wanted.least && c + u <= wanted.most ? 1 : 0;
            }
        benchmark::DoNotOptimize(good);
    }
}
BENCHMARK(every_pair_once)->Unit(benchmark::kMicrosecond);

void pair_up_fitwright(benchmark::State& state) {
    const trays t = two_hundred();
    for (auto _ : state) benchmark::DoNotOptimize(pair_up(t.holes, t.shafts, wanted)->size());
}
BENCHMARK(pair_up_fitwright)->Unit(benchmark::kMicrosecond);

void nearest_class_fitwright(benchmark::State& state) {
    const hole_limits bore = *bore_for(measured_shaft{7.968_mm, 2_um}, {8_um, 20_um});
    for (auto _ : state) benchmark::DoNotOptimize(nearest_class(bore, 8_mm));
}
BENCHMARK(nearest_class_fitwright)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
