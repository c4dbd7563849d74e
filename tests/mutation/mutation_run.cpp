#include "../support/iso286_checks.hpp"
#include <fitwright/length.hpp>

#include <cstdio>

// The mutation run: changes one value of the tables of ISO 286-1 after another, and asks the checks
// of iso286_table_test.cpp each time. A change that no check notices fails the run.
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

/// Every check of the tables; `changed_row` only tells where to begin.
bool all_is_well(const iso286_reference& r, std::size_t changed_row = 0) {
    constexpr auto how = thoroughness::first_difference;
    return check_standard_tolerances(r, how).wrong == 0 &&
           check_deviations(r, side::shaft, how, changed_row).wrong == 0 &&
           check_deviations(r, side::hole, how, changed_row).wrong == 0 && check_steps(r).wrong == 0;
}

/// Puts another value into a cell, asks the checks, and puts the right one back.
template <class Number>
void mutate(const iso286_reference& r, tally& t, const char* table, std::size_t row, Number& value,
            Number other) {
    const Number right = value;
    if (other == right) return;
    value = other;
    tables::small_rows = tables::work_out_small_rows();
    ++t.mutants;
    if (!all_is_well(r, row)) ++t.caught;
    else
        std::printf("not caught: %s, row %zu: %ld instead of %ld\n", table, row, static_cast<long>(other),
                    static_cast<long>(right));
    value = right;
    tables::small_rows = tables::work_out_small_rows();
}

void print(const char* table, std::size_t cells, tally before, tally after) {
    std::printf("%-26s %5zu cells, %5d mutants, %5d caught\n", table, cells, after.mutants - before.mutants,
                after.caught - before.caught);
}

/// Each number of a list: one more, one less. Not above `largest`, and not less in the last row: then
/// the library would look for a row beyond the end of a table.
template <class Number, std::size_t Size>
void mutate_list(const iso286_reference& r, tally& t, const char* name, Number (&list)[Size], int largest) {
    const tally before = t;
    for (std::size_t i = 0; i < Size; ++i) {
        if (list[i] < largest) mutate(r, t, name, i, list[i], static_cast<Number>(list[i] + 1));
        if (list[i] > 0 && i + 1 < Size) mutate(r, t, name, i, list[i], static_cast<Number>(list[i] - 1));
    }
    print(name, Size, before, t);
}

/// Each cell of a table: one more, one less, its sign changed, no value; a value where there is none.
template <class Number, std::size_t Rows, std::size_t Columns>
void mutate_table(const iso286_reference& r, tally& t, const char* name, Number (&table)[Rows][Columns],
                  Number none) {
    const tally before = t;
    for (std::size_t row = 0; row < Rows; ++row) {
        for (Number& value : table[row]) {
            if (value == none) {
                for (const int other : {0, 1, 40}) mutate(r, t, name, row, value, static_cast<Number>(other));
                continue;
            }
            mutate(r, t, name, row, value, static_cast<Number>(value + 1));
            mutate(r, t, name, row, value, static_cast<Number>(value - 1));
            mutate(r, t, name, row, value, static_cast<Number>(-value));
            mutate(r, t, name, row, value, none);
        }
    }
    print(name, Rows * Columns, before, t);
}

} // namespace

int main() {
    const iso286_reference r = read_iso286(FITWRIGHT_TEST_DATA);
    if (!r.fault.empty()) {
        std::printf("%s\n", r.fault.c_str());
        return 1;
    }
    if (!all_is_well(r)) {
        std::printf("the tables are wrong before anything is changed\n");
        return 1;
    }
    tally t;
    mutate_list(r, t, "main_range_upto_mm", tables::main_range_upto_mm, 4000);
    mutate_table(r, t, "standard_tolerance_table", tables::standard_tolerance_table, tables::na);
    mutate_list(r, t, "range_upto_mm", tables::range_upto_mm, 4000);
    mutate_list(r, t, "main_row_of", tables::main_row_of, tables::main_range_count - 1);
    mutate_table(r, t, "shaft_table_a_to_g", tables::shaft_table_a_to_g, tables::nov);
    mutate_table(r, t, "shaft_table_j_and_k", tables::shaft_table_j_and_k, tables::nov);
    mutate_table(r, t, "shaft_table_m_to_zc", tables::shaft_table_m_to_zc, tables::nov);
    std::printf("%d mutants, %d caught\n", t.mutants, t.caught);
    if (!all_is_well(r)) {
        std::printf("not everything was put back\n");
        return 1;
    }
    return t.mutants > 0 && t.caught == t.mutants ? 0 : 1;
}
