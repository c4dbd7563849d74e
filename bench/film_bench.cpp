// film() with its heat balance at both ends of the clearance, beside one reading of the bearing table written
// down bare: logarithms of the printed columns at L/D = 1, one viscosity, no units, no checks, no balance.
//
// The bar is 20 us for a film with its balance; what it costs beside the bare reading counts besides.

#include <fitwright/callout.hpp>
#include <fitwright/running.hpp>

#include <benchmark/benchmark.h>

#include <cmath>
#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

/// The same mix of loads and speeds for all.
std::vector<journal> questions() {
    std::mt19937 random(1958);
    const auto vg32 = oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95));
    std::vector<journal> made(512);
    for (auto& j : made)
        j = {.diameter = 25_mm,
             .width = 25_mm,
             .clearance = "25 H7/f7"_fit,
             .load = force::from_value(100 + static_cast<double>(random() % 1000)),
             .speed = revolutions_per_minute(200 + static_cast<double>(random() % 3000)),
             .lubricant = *vg32,
             .oil_in = 40_degC};
    return made;
}

// ---- by hand: one column of the table, one clearance

constexpr double bare_s[] = {1.33, 0.631, 0.264, 0.121, 0.0446, 0.0188, 0.00474};
constexpr double bare_gap[] = {0.9, 0.8, 0.6, 0.4, 0.2, 0.1, 0.03};
constexpr double bare_friction[] = {26.4, 12.8, 5.79, 3.22, 1.7, 1.05, 0.514};

struct bare_film {
    double least_film, friction;
};

bare_film read_by_hand(double diameter, double clearance, double load, double omega, double viscosity) {
    const double stretch = diameter / clearance;
    const double s = stretch * stretch * viscosity * omega / 6.283185307 * diameter * diameter / load;
    int row = 0;
    while (row < 5 && s < bare_s[row + 1]) ++row;
    const double u = std::log(s / bare_s[row]) / std::log(bare_s[row + 1] / bare_s[row]);
    return {.least_film = clearance / 2 * bare_gap[row] * std::pow(bare_gap[row + 1] / bare_gap[row], u),
            .friction =
                bare_friction[row] * std::pow(bare_friction[row + 1] / bare_friction[row], u) / stretch};
}

void one_reading_by_hand(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& j : asked)
            benchmark::DoNotOptimize(
                read_by_hand(0.025, 41e-6, j.load.value().value(), j.speed.value().value(), 0.02));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(one_reading_by_hand);

void film_at_a_known_viscosity(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& j : asked) benchmark::DoNotOptimize(film_at(j, millipascal_seconds(20)));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(film_at_a_known_viscosity);

void film_with_heat_balance(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& j : asked) benchmark::DoNotOptimize(film(j));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(film_with_heat_balance);

void viscosity_of_an_oil(benchmark::State& state) {
    const auto asked = questions();
    double degrees = 20;
    for (auto _ : state) {
        degrees = degrees < 120 ? degrees + 0.5 : 20;
        benchmark::DoNotOptimize(viscosity(asked[0].lubricant, celsius(degrees)));
    }
    state.SetItemsProcessed(state.iterations());
}
BENCHMARK(viscosity_of_an_oil);

} // namespace

BENCHMARK_MAIN();
