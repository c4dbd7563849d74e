#ifndef FITWRIGHT_TESTS_SUPPORT_KNOWN_EXCEPTIONS_HPP
#define FITWRIGHT_TESTS_SUPPORT_KNOWN_EXCEPTIONS_HPP

#include "csv.hpp"

#include <doctest/doctest.h>

#include <set>
#include <tuple>

namespace fitwright_tests {

/// A place where the published tables depart from a rule of the standard: which check, where, and the
/// values, so that a value which changes is not taken for the exception that was known.
using finding = std::tuple<std::string, std::string, std::string>;

/// Passes if what was found by the `checks` is what known_exceptions.csv lists for them, no more and
/// no less.
inline void expect_known_exceptions(const std::set<finding>& found, const std::set<std::string>& checks) {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/known_exceptions.csv");
    REQUIRE(table.fault == "");
    REQUIRE(table.rows.size() == 75);
    std::set<finding> known;
    for (std::size_t i = 0; i < table.rows.size(); ++i)
        if (checks.contains(table.cell(i, "check")))
            known.insert({table.cell(i, "check"), table.cell(i, "where"), table.cell(i, "detail")});
    REQUIRE(table.fault == "");
    CHECK(!known.empty());
    const auto words = [](const finding& f) {
        return std::get<0>(f) + " " + std::get<1>(f) + ": " + std::get<2>(f);
    };
    for (const finding& f : found)
        if (!known.contains(f)) FAIL_CHECK("not a known exception: ", words(f));
    for (const finding& f : known)
        if (!found.contains(f)) FAIL_CHECK("a known exception that does not occur any more: ", words(f));
}

} // namespace fitwright_tests

#endif
