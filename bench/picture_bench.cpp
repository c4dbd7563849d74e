// Drawing the tolerance intervals of a fit, beside what a programmer would write by hand: as many elements
// through snprintf with "%.2f", without a scale, line breaks, escaping or checks.
//
// The ratio of the two is what counts; both draw the same fits in one run.

#include <fitwright/callout.hpp>
#include <fitwright/picture.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <cstdio>
#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

std::vector<fit> fits() {
    std::mt19937 random(286);
    std::vector<fit> made;
    for (int i = 0; i < 256; ++i) {
        const length bore = 8_mm + 1_um * static_cast<int>(random() % 90'000);
        made.emplace_back(hole_limits(bore, {18_um, 0_um}),
                          shaft_limits(bore, {-6_um, -1_um * static_cast<int>(7 + random() % 30)}));
    }
    return made;
}

constexpr int elements = 41; // of the picture of a fit without a title: 23 paths, 18 texts

void picture_by_hand(benchmark::State& state) {
    const auto all = fits();
    std::vector<char> room(16384);
    for (auto _ : state)
        for (const fit& f : all) {
            const double lower = f.hole().lower_limit().in<micrometre>();
            const double upper = f.hole().upper_limit().in<micrometre>();
            std::size_t used = 0;
            for (int i = 0; i < elements; ++i)
                used += static_cast<std::size_t>(std::snprintf(
                    room.data() + used, room.size() - used,
                    "<path class=\"hole\" d=\"M%.2f %.2fH%.2fV%.2fH%.2fZ\" fill=\"#e8f2fb\" stroke=\"#0b4a7d\"/>\n",
                    120.0, lower / 1000, 158.0, upper / 1000, 120.0));
            benchmark::DoNotOptimize(room.data());
            benchmark::ClobberMemory();
        }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(all.size()));
}
BENCHMARK(picture_by_hand);

void picture_fitwright(benchmark::State& state) {
    const auto all = fits();
    std::vector<char> room(16384);
    for (auto _ : state)
        for (const fit& f : all) {
            std::size_t used = 0;
            const auto drawn = draw(zone_picture{.of = f}, [&](text piece) {
                for (const char one : piece) room[used++] = one;
            });
            benchmark::DoNotOptimize(drawn.has_value());
            benchmark::DoNotOptimize(room.data());
            benchmark::ClobberMemory();
        }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(all.size()));
}
BENCHMARK(picture_fitwright);

} // namespace

BENCHMARK_MAIN();
