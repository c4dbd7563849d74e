#include "support/both.hpp"
#include "support/iso286_reference.hpp"
#include <fitwright/iso286.hpp>

#include <doctest/doctest.h>

#include <utility>

// The whole of ISO 286-1 worked out by the compiler: 41 steps of sizes, 28 letters, 20 grades, holes
// and shafts. Run time has to come to the same values, and so do the printed tables.

using namespace fitwright_tests;
using fitwright::position_count;

namespace {

struct answer {
    std::int32_t upper = 0; ///< nanometres
    std::int32_t lower = 0;
    bool given = false;
    friend constexpr bool operator==(const answer&, const answer&) = default;
};

struct answers {
    answer of[position_count][grade::count]; ///< by letter and grade::step()
};

constexpr std::int64_t upper_end_mm[] = {3,    6,    10,   14,   18,   24,   30,   40,  50,   65,   80,
                                         100,  120,  140,  160,  180,  200,  225,  250, 280,  315,  355,
                                         400,  450,  500,  560,  630,  710,  800,  900, 1000, 1120, 1250,
                                         1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150};

/// Asks `limits` only where there is something to be had: composing the words of thousands of errors
/// is what would keep a compiler busy. iso286_no_value_test.cpp has errors in constant expressions.
template <side Side> constexpr answers ask(length size) {
    answers all;
    for (int p = 0; p < position_count; ++p) {
        for (int g = 0; g < grade::count; ++g) {
            const fitwright::tolerance_class<Side> c{static_cast<position>(p), grade::from_step(g)};
            if (!fitwright::detail::has_value_at(size, c)) continue;
            const auto limits = fitwright::limits(size, c);
            all.of[p][g] = {static_cast<std::int32_t>(limits->upper_deviation().nanometres()),
                            static_cast<std::int32_t>(limits->lower_deviation().nanometres()), true};
        }
    }
    return all;
}

/// Worked out while compiling, a constant for each step and side.
template <side Side, std::size_t Step>
inline constexpr answers compiled = ask<Side>(length::from_nanometres(1'000'000 * upper_end_mm[Step]));

template <side Side, std::size_t Step>
void compare(const iso286_reference& r, int& compared, int& given_values) {
    constexpr answers constant = compiled<Side, Step>;
    const length size = length::from_nanometres(1'000'000 * given(upper_end_mm[Step]));
    const answers run_time = ask<Side>(size);
    REQUIRE(r.shafts[Step].step.upto == size.nanometres());
    for (int p = 0; p < position_count; ++p) {
        for (int g = 0; g < grade::count; ++g) {
            const answer& a = constant.of[p][g];
            const auto& wanted = expected(r, Step, static_cast<position>(p), grade::from_step(g), Side);
            const bool as_printed =
                a.given == wanted.has_value() && (!wanted || *wanted == expected_limits{a.upper, a.lower});
            if (a != run_time.of[p][g] || !as_printed)
                FAIL_CHECK(class_name(static_cast<position>(p), grade::from_step(g), Side), " at ",
                           upper_end_mm[Step], " mm");
            ++compared;
            given_values += a.given;
        }
    }
}

template <std::size_t... Steps>
void compare_all(const iso286_reference& r, int& compared, int& given_values, std::index_sequence<Steps...>) {
    (compare<side::hole, Steps>(r, compared, given_values), ...);
    (compare<side::shaft, Steps>(r, compared, given_values), ...);
}

} // namespace

TEST_CASE("all of ISO 286-1, in constant evaluation and at run time") {
    const iso286_reference r = read_iso286(FITWRIGHT_TEST_DATA);
    REQUIRE(r.fault == "");
    int compared = 0;
    int given_values = 0;
    compare_all(r, compared, given_values, std::make_index_sequence<41>());
    CHECK(compared == 2 * 41 * 28 * 20);
    CHECK(given_values > 30'000);
    MESSAGE(compared, " classes, of which ", given_values, " have a value");
}
