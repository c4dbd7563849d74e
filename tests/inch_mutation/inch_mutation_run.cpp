#include "../support/inch_checks.hpp"

#include <cstdio>

// The mutation run: changes one value of the tables of ANSI B4.1 after another, and asks the checks of
// inch_test.cpp each time. A change that no check notices fails the run.
//
// It is built against a copy of the library whose tables can be written to (CMakeLists.txt makes it),
// or this file would not compile.

using namespace fitwright_tests;
namespace tables = fitwright::detail;

namespace {

struct tally {
    int mutants = 0;
    int caught = 0;
};

bool all_is_well(const inch_reference& r) {
    constexpr auto how = thoroughness::first_difference;
    return check_inch_rows(r, how).wrong == 0 && check_inch_gaps(r, how).wrong == 0 &&
           check_inch_tolerances(r, how).wrong == 0 && check_inch_ends(how).wrong == 0;
}

/// Puts another value into a cell, asks the checks, and puts the right one back.
void mutate(const inch_reference& r, tally& t, const char* table, std::size_t row, std::int16_t& value, int other) {
    const std::int16_t right = value;
    if (other == right || other > INT16_MAX) return;
    value = static_cast<std::int16_t>(other);
    ++t.mutants;
    if (!all_is_well(r)) ++t.caught;
    else
        std::printf("not caught: %s, row %zu: %d instead of %d\n", table, row, other, right);
    value = right;
}

void print(const char* table, std::size_t cells, tally before, tally after) {
    std::printf("%-24s %4zu cells, %5d mutants, %5d caught\n", table, cells, after.mutants - before.mutants,
                after.caught - before.caught);
}

/// The ends of the ranges: one more, one less.
template <std::size_t Size>
void mutate_list(const inch_reference& r, tally& t, const char* name, std::int16_t (&list)[Size]) {
    const tally before = t;
    for (std::size_t i = 0; i < Size; ++i) {
        mutate(r, t, name, i, list[i], list[i] + 1);
        mutate(r, t, name, i, list[i], list[i] - 1);
    }
    print(name, Size, before, t);
}

/// Each cell: one more, one less, its sign changed, nothing. Where there is no fit the hole's deviation
/// alone says so, the two behind it are not read.
template <std::size_t Rows, std::size_t Columns>
void mutate_table(const inch_reference& r, tally& t, const char* name, bool triples, std::int16_t (&table)[Rows][Columns]) {
    const tally before = t;
    std::size_t cells = 0;
    for (std::size_t row = 0; row < Rows; ++row) {
        for (std::size_t column = 0; column < Columns; ++column) {
            const bool no_fit = triples && table[row][column - column % 3] == 0;
            if (no_fit && column % 3 != 0) continue;
            std::int16_t& value = table[row][column];
            ++cells;
            for (const int other : {value + 1, value - 1, -value, 0}) mutate(r, t, name, row, value, other);
        }
    }
    print(name, cells, before, t);
}

} // namespace

int main() {
    const inch_reference r = read_inch(FITWRIGHT_TEST_DATA);
    if (!r.fault.empty()) {
        std::printf("%s\n", r.fault.c_str());
        return 1;
    }
    if (!all_is_well(r)) {
        std::printf("the tables are wrong before anything is changed\n");
        return 1;
    }
    tally t;
    mutate_list(r, t, "inch_range_upto", tables::inch_range_upto);
    mutate_list(r, t, "force_range_upto", tables::force_range_upto);
    mutate_list(r, t, "grade_range_upto", tables::grade_range_upto);
    mutate_table(r, t, "running_fits_1_to_4", true, tables::running_fits_1_to_4);
    mutate_table(r, t, "running_fits_5_to_9", true, tables::running_fits_5_to_9);
    mutate_table(r, t, "clearance_fits_1_to_5", true, tables::clearance_fits_1_to_5);
    mutate_table(r, t, "clearance_fits_6_to_11", true, tables::clearance_fits_6_to_11);
    mutate_table(r, t, "transition_fits", true, tables::transition_fits);
    mutate_table(r, t, "interference_fits", true, tables::interference_fits);
    mutate_table(r, t, "force_fits", true, tables::force_fits);
    mutate_table(r, t, "inch_tolerance_table", false, tables::inch_tolerance_table);
    std::printf("%d mutants, %d caught\n", t.mutants, t.caught);
    if (!all_is_well(r)) {
        std::printf("not everything was put back\n");
        return 1;
    }
    return t.mutants > 0 && t.caught == t.mutants ? 0 : 1;
}
