// limits() and fit on run-time input, beside what a programmer would write by hand: the printed
// tables as bare integers, looked up without checks, units or sources.
//
// The ratio of the two is what counts; both run over the same inputs in one run.

#include <fitwright/fit.hpp>
#include <fitwright/iso286.hpp>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdint>
#include <random>
#include <vector>

using namespace fitwright;

namespace {

struct question {
    std::int64_t nominal_nm;
    int letter; // position, as a number
    int grade;  // IT number, 5 to 11
};

/// The same mix of sizes and classes for both: shafts from d to u, whose table is the same for both.
std::vector<question> questions() {
    std::mt19937 random(286);
    std::vector<question> made(4096);
    const int letters[] = {4, 5, 7, 9, 10, 15, 16, 17, 18, 20};
    for (auto& q : made) {
        q.nominal_nm = 1'000'000 + static_cast<std::int64_t>(random() % 499'000) * 1'000;
        q.letter = letters[random() % std::size(letters)];
        q.grade = 5 + static_cast<int>(random() % 7);
    }
    return made;
}

// ---- by hand: the two tables, in micrometres, and nothing around them

struct bare_limits {
    std::int64_t lower_nm;
    std::int64_t upper_nm;
};

struct bare_tables {
    int range_upto_mm[25];
    int main_row[25];
    int tolerance_um[13][19]; // by IT number
    int deviation_um[25][28]; // es up to h, ei from k on
};

bare_tables by_hand() {
    bare_tables t{};
    for (int row = 0; row < 25; ++row) {
        t.range_upto_mm[row] = detail::range_upto_mm[row];
        t.main_row[row] = detail::main_row_of[row];
        for (int p = 0; p < 10; ++p) t.deviation_um[row][p] = detail::shaft_table_a_to_g[row][p];
        for (int p = 0; p < 14; ++p) t.deviation_um[row][14 + p] = detail::shaft_table_m_to_zc[row][p];
    }
    for (int row = 0; row < 13; ++row)
        for (int g = 1; g < 19; ++g)
            t.tolerance_um[row][g] = detail::standard_tolerance_table[row][g + 1] / 10;
    return t;
}

const bare_tables hand = by_hand();

bare_limits look_up_by_hand(const question& q) {
    const int mm = static_cast<int>((q.nominal_nm + 999'999) / 1'000'000);
    const auto row = static_cast<std::size_t>(
        std::lower_bound(std::begin(hand.range_upto_mm), std::end(hand.range_upto_mm), mm) -
        hand.range_upto_mm);
    const std::int64_t tolerance = hand.tolerance_um[hand.main_row[row]][q.grade];
    const std::int64_t deviation = hand.deviation_um[row][q.letter];
    if (q.letter <= 10)
        return {q.nominal_nm + (deviation - tolerance) * 1000, q.nominal_nm + deviation * 1000};
    return {q.nominal_nm + deviation * 1000, q.nominal_nm + (deviation + tolerance) * 1000};
}

void limits_by_hand(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& q : asked) benchmark::DoNotOptimize(look_up_by_hand(q));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(limits_by_hand);

void limits_fitwright(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& q : asked)
            benchmark::DoNotOptimize(limits(length::from_nanometres(q.nominal_nm),
                                            shaft_class{static_cast<position>(q.letter), grade(q.grade)}));
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(limits_fitwright);

// ---- a fit: the clearances and the kind

void fit_by_hand(benchmark::State& state) {
    const auto asked = questions();
    for (auto _ : state)
        for (const auto& q : asked) {
            const bare_limits hole{q.nominal_nm, q.nominal_nm + 18'000};
            const bare_limits shaft{q.nominal_nm - q.grade * 1000, q.nominal_nm - q.letter * 100};
            const std::int64_t least = hole.lower_nm - shaft.upper_nm;
            const std::int64_t most = hole.upper_nm - shaft.lower_nm;
            benchmark::DoNotOptimize(least);
            benchmark::DoNotOptimize(most);
            benchmark::DoNotOptimize(least >= 0 ? 0 : most <= 0 ? 2 : 1);
        }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(fit_by_hand);

void fit_fitwright(benchmark::State& state) {
    const auto asked = questions();
    const auto nm = [](std::int64_t n) { return length::from_nanometres(n); };
    for (auto _ : state)
        for (const auto& q : asked) {
            const hole_limits hole = between(nm(q.nominal_nm), nm(q.nominal_nm + 18'000));
            const shaft_limits shaft =
                between(nm(q.nominal_nm - q.grade * 1000), nm(q.nominal_nm - q.letter * 100));
            const fit f(hole, shaft);
            const length least = f.min_clearance();
            const length most = f.max_clearance();
            benchmark::DoNotOptimize(least.nanometres());
            benchmark::DoNotOptimize(most.nanometres());
            benchmark::DoNotOptimize(static_cast<int>(f.kind()));
        }
    state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(asked.size()));
}
BENCHMARK(fit_fitwright);

} // namespace

BENCHMARK_MAIN();
