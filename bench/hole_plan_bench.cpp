// plan_hole for a drawer of 200 tools, beside what a programmer would write by hand: a plain double
// loop over the drawer, every last tool with every drill before it, in bare integers and without the
// words, the sources and the longer plans.
//
// The bar is 50 us a plan. `crowded` is the worst case of a drawer: a hundred reamers that all suit,
// and a hundred drills of which none leaves the right stock, so that every way is tried in vain.

#include <fitwright/callout.hpp>
#include <fitwright/tool.hpp>

#include <benchmark/benchmark.h>

#include <cstdint>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

/// A hundred drills one by one, eighty reamers, ten boring heads, five bits, five laps.
std::vector<drawer_tool> mixed() {
    std::vector<drawer_tool> made;
    for (int i = 0; i < 100; ++i) made.push_back(twist_drill(3_mm + 0.1_mm * i));
    for (int i = 0; i < 40; ++i) made.push_back(hand_reamer(3_mm + 0.25_mm * i, "H7"_hole_class));
    for (int i = 0; i < 40; ++i) made.push_back(machine_reamer(3_mm + 0.25_mm * i, "H8"_hole_class));
    for (int i = 1; i <= 10; ++i)
        made.push_back(boring_head({.from = 6_mm + 1_mm * i, .upto = 50_mm, .step = 2_um * i}));
    for (int i = 1; i <= 5; ++i) made.push_back(half_round_bit(measured_shaft{5_mm + 0.5_mm * i, 2_um}));
    for (int i = 1; i <= 5; ++i) made.push_back(lap({.from = 5_mm, .upto = 15_mm, .step = 1_um * i}));
    return made;
}

std::vector<drawer_tool> crowded() {
    std::vector<drawer_tool> made;
    for (int i = 0; i < 100; ++i) made.push_back(twist_drill(9.78_mm + 1_um * i));
    for (int i = 0; i < 100; ++i) made.push_back(hand_reamer(between(10_mm + 1_um * (i % 10), 10.01_mm)));
    return made;
}

// ---- by hand

struct bare_tool {
    bool is_drill;
    std::int64_t least_nm;
    std::int64_t most_nm;
};

struct bare_plan {
    const bare_tool* drill;
    const bare_tool* last;
};

std::vector<bare_tool> bare(const std::vector<drawer_tool>& drawer) {
    std::vector<bare_tool> made;
    for (const drawer_tool& t : drawer)
        made.push_back({t.kind == tool_kind::drill, t.least.nanometres(),
                        t.most.nanometres() + t.over.most.nanometres()});
    return made;
}

bare_plan plan_by_hand(const std::vector<bare_tool>& drawer, std::int64_t lower_nm, std::int64_t upper_nm) {
    bare_plan best{nullptr, nullptr};
    std::int64_t best_miss = INT64_MAX;
    for (const bare_tool& last : drawer) {
        if (last.is_drill || last.least_nm < lower_nm || last.most_nm > upper_nm) continue;
        for (const bare_tool& drill : drawer) {
            if (!drill.is_drill) continue;
            const std::int64_t left = last.least_nm - (drill.least_nm + 50'000);
            if (left < 200'000 || left > 300'000) continue;
            const std::int64_t miss = left > 250'000 ? left - 250'000 : 250'000 - left;
            if (miss >= best_miss) continue;
            best = {&drill, &last};
            best_miss = miss;
        }
    }
    return best;
}

void by_hand(benchmark::State& state, const std::vector<drawer_tool>& drawer, const hole_limits& wanted) {
    const auto tools = bare(drawer);
    for (auto _ : state)
        benchmark::DoNotOptimize(
            plan_by_hand(tools, wanted.lower_limit().nanometres(), wanted.upper_limit().nanometres()));
}

void by_fitwright(benchmark::State& state, const std::vector<drawer_tool>& drawer,
                  const hole_limits& wanted) {
    for (auto _ : state) benchmark::DoNotOptimize(plan_hole(wanted, drawer, material_family::steel));
}

BENCHMARK_CAPTURE(by_hand, reamed, mixed(), "10 H7"_hole);
BENCHMARK_CAPTURE(by_fitwright, reamed, mixed(), "10 H7"_hole);
BENCHMARK_CAPTURE(by_fitwright, bored, mixed(), "10.1 H7"_hole);
BENCHMARK_CAPTURE(by_fitwright, lapped, mixed(), "12 H1"_hole);
BENCHMARK_CAPTURE(by_fitwright, nothing_suits, mixed(), "4.6 H6"_hole);
BENCHMARK_CAPTURE(by_hand, crowded, crowded(), "10 H7"_hole);
BENCHMARK_CAPTURE(by_fitwright, crowded, crowded(), "10 H7"_hole);

} // namespace

BENCHMARK_MAIN();
