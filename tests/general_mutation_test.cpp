// The mutation run of the tables of general.hpp: changes one value after another, and asks the checks that
// general_test.cpp makes of them. A change that no check notices fails the run.
//
// The tables are constants; for this file only, they and the functions that read them lose their `constexpr`.
#include "support/csv.hpp"

#include <fitwright/iso286.hpp>

#include <doctest/doctest.h>

#if defined(__clang__)
#pragma clang diagnostic ignored "-Wkeyword-macro"
#endif
#define constexpr
#include <fitwright/general.hpp>
#undef constexpr

#include "support/general_checks.hpp"

using namespace fitwright_tests;
namespace tables = fitwright::detail;

namespace {

struct mutation_run {
    general_reference reference = read_general(FITWRIGHT_TEST_DATA);
    void (*checks)(general_reference&, general_tally&) = nullptr;
    int mutants = 0;
    int caught = 0;

    bool all_is_well() {
        general_tally t;
        checks(reference, t);
        return t.wrong == 0 && t.compared > 0;
    }

    template <class Value> void mutate(Value& value, Value other) {
        if (other == value) return;
        const Value right = value;
        value = other;
        ++mutants;
        const bool is_caught = !all_is_well();
        caught += is_caught ? 1 : 0;
        if (!is_caught) MESSAGE("not caught: ", other, " instead of ", right);
        value = right;
    }

    /// One more and one less.
    void mutate_number(std::int16_t& value) {
        if (value < INT16_MAX) mutate(value, static_cast<std::int16_t>(value + 1));
        mutate(value, static_cast<std::int16_t>(value - 1));
    }

    template <std::size_t Size> void mutate_general(tables::general::row (&table)[Size]) {
        for (auto& row : table) {
            mutate_number(row.upto_mm);
            for (std::int16_t& value : row.of_class) {
                mutate_number(value);
                mutate(value, tables::general::none);
            }
        }
    }
};

} // namespace

TEST_CASE("no value of the tables of general.hpp can be changed without a check noticing") {
    mutation_run run;
    REQUIRE(run.reference.fault == "");

    run.checks = check_general_tolerances;
    REQUIRE(run.all_is_well());
    run.mutate_general(tables::general::lengths);
    run.mutate_general(tables::general::edges);
    run.mutate_general(tables::general::angles);
    CHECK(run.all_is_well());

    run.checks = check_clearance_holes;
    REQUIRE(run.all_is_well());
    for (auto& row : tables::iso_273_table) {
        run.mutate_number(row.thread);
        for (std::int16_t& hole : row.fine_medium_coarse) run.mutate_number(hole);
    }
    for (auto& row : tables::asme_inch_table) {
        run.mutate_number(row.screw);
        for (auto& hole : row.close_normal_loose) {
            run.mutate<const char*>(hole.drill, "?");
            run.mutate_number(hole.least);
            run.mutate_number(hole.most);
        }
    }
    for (auto& row : tables::asme_metric_table) {
        run.mutate_number(row.screw);
        for (const char*& drill : row.close_normal_loose) run.mutate<const char*>(drill, "?");
    }
    CHECK(run.all_is_well());

    run.checks = check_tapping_drills;
    REQUIRE(run.all_is_well());
    const auto mutate_row = [&](tables::tapping::row& row) {
        for (std::int16_t* value : {&row.diameter, &row.pitch, &row.drill}) run.mutate_number(*value);
        ++run.mutants;
        row.how = row.how == tables::tapping::read_in::print ? tables::tapping::read_in::memory : tables::tapping::read_in::print;
        run.caught += run.all_is_well() ? 0 : 1;
        row.how = row.how == tables::tapping::read_in::print ? tables::tapping::read_in::memory : tables::tapping::read_in::print;
    };
    for (auto& row : tables::tapping::coarse) mutate_row(row);
    for (auto& row : tables::tapping::fine) mutate_row(row);
    CHECK(run.all_is_well());

    MESSAGE(run.mutants, " mutants, ", run.caught, " caught");
    CHECK(run.mutants > 1000);
    CHECK(run.caught == run.mutants);
}
