// The mutation run of the gauge tables: changes one value after another, and asks the checks that
// gauge_test.cpp makes of them. A change that no check notices fails the run.
//
// The tables are constants; for this file only, they and the functions that read them lose their `constexpr`.
#include "support/csv.hpp"

#include <fitwright/iso286.hpp>

#include <doctest/doctest.h>

#include <iterator>
#include <map>

#if defined(__clang__)
#pragma clang diagnostic ignored "-Wkeyword-macro"
#endif
#define constexpr
#include <fitwright/gauge/constants.hpp>
#include <fitwright/gauge/limit_gauge.hpp>
#undef constexpr

#include "support/gauge_checks.hpp"

using namespace fitwright_tests;
namespace tables = fitwright::detail;

namespace {

struct mutation_run {
    gauge_reference reference = read_gauges(FITWRIGHT_TEST_DATA);
    int mutants = 0;
    int caught = 0;

    bool all_is_well() const {
        const gauge_tally t = check_gauges_against(reference, true);
        return t.wrong == 0 && t.compared > 0;
    }

    template <class Number> void mutate(Number& value, int other) {
        if (other == value) return;
        const Number right = value;
        value = static_cast<Number>(other);
        ++mutants;
        const bool is_caught = !all_is_well();
        caught += is_caught ? 1 : 0;
        if (!is_caught) MESSAGE("not caught: ", other, " instead of ", int(right));
        value = right;
    }

    /// One more, one less, the sign changed, nothing, ten times as much.
    template <class Row, std::size_t Size> void mutate_table(Row (&table)[Size]) {
        for (Row& row : table)
            for (auto& value : row)
                for (const int other : {value + 1, value - 1, -value, 0, value * 10}) mutate(value, other);
    }
};

} // namespace

TEST_CASE("no value of the gauge tables can be changed without a check noticing") {
    mutation_run run;
    REQUIRE(run.reference.fault == "");
    REQUIRE(run.all_is_well());
    run.mutate_table(tables::gauge_z);
    run.mutate_table(tables::gauge_y);
    run.mutate_table(tables::gauge_alpha);
    for (tables::gauge_grades& row : tables::gauge_made_to)
        for (std::int8_t* value : {&row.plug, &row.rod, &row.ring, &row.check})
            for (const int other : {*value + 1, *value - 1}) run.mutate(*value, other);
    MESSAGE(run.mutants, " mutants, ", run.caught, " caught");
    CHECK(run.mutants > 1000);
    CHECK(run.caught == run.mutants);
    CHECK(run.all_is_well());
}
