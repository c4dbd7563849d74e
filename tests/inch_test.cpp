#include "support/both.hpp"
#include "support/csv.hpp"
#include "support/inch_checks.hpp"
#include "support/short_names.hpp"

#include <fitwright/inch.hpp>

#include <doctest/doctest.h>

#include <map>
#include <set>

// ANSI B4.1-1967 and B4.2-1978. Where each row was printed: data/SOURCES_inch.md.

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;
using enum fitwright::inch_fit_class;
using enum fitwright::position;

namespace {

const inch_reference& reference() {
    static const inch_reference read = read_inch(FITWRIGHT_TEST_DATA);
    return read;
}

/// Passes if all of the `expected_number` comparisons that there should be were made and were right.
void report(const fitwright_tests::verdict& v, std::size_t expected_number) {
    CHECK(v.first_wrong == "");
    CHECK(v.wrong == 0);
    CHECK(v.compared == expected_number);
}

std::string family(const inch_row& row) { return row.fit_name.substr(0, 2); }

std::int64_t hundredths(length l) {
    REQUIRE(l.nanometres() % nm_in_a_hundredth_of_a_thou == 0);
    return l.nanometres() / nm_in_a_hundredth_of_a_thou;
}

/// Shaft's upper deviation of a fit that must be there.
constexpr length shaft_upper(inch_fit_class c, length nominal) noexcept { return inch_fit(c, nominal)->shaft().upper_deviation(); }

std::string words(text t) { return std::string(t.data(), t.size()); }

} // namespace

// ---- the tables

TEST_CASE("the printed tables are there and whole") {
    REQUIRE(reference().fault == "");
    CHECK(reference().fits.size() == 492);
    CHECK(reference().tolerances.size() == 210);
    std::map<inch_fit_class, std::vector<size_step>> steps;
    for (const inch_row& row : reference().fits) steps[row.fit].push_back(row.step);
    CHECK(steps.size() == inch_fit_class_count);
    for (const auto& entry : steps) {
        const inch_fit_class fit = entry.first;
        const std::vector<size_step>& of_fit = entry.second;
        CAPTURE(words(name(fit)));
        CHECK(of_fit.size() == (fit == lt3 || fit == lt4 ? 11 : fit == fn3 ? 19 : fit >= fn1 ? 25 : 13));
        CHECK(of_fit.back().upto == (19.69_in).nanometres());
        for (std::size_t i = 1; i < of_fit.size(); ++i) CHECK(of_fit[i].over == of_fit[i - 1].upto);
    }
}

TEST_CASE("a folder without the files is a fault") { CHECK(read_inch(FITWRIGHT_TEST_DATA "/no_such_folder").fault != ""); }

TEST_CASE("every printed row, at three sizes: limits, clearances, nominal size, confidence") {
    REQUIRE(reference().fault == "");
    report(check_inch_rows(reference(), thoroughness::everything), 492 * 3);
}

TEST_CASE("no fit where the standard has none: LT3, LT4 up to 0.24 in, FN3 up to 0.95 in") {
    report(check_inch_gaps(reference(), thoroughness::everything), (2 * 2 + 6) * 3);
}

TEST_CASE("every standard tolerance, at three sizes") {
    report(check_inch_tolerances(reference(), thoroughness::everything), 210 * 3);
}

TEST_CASE("nothing outside the tables") { report(check_inch_ends(thoroughness::everything), 5 * 34 + 5); }

TEST_CASE("a size between, and a nanometre to either side of each end: against a search of the printed rows") {
    std::vector<std::int64_t> sizes;
    for (std::int64_t n = 1; n <= 1'969; n += 3) sizes.push_back(n * nm_in_an_inch / 100 + 17);
    for (const inch_row& row : reference().fits)
        for (const std::int64_t off : {-1, 0, 1}) sizes.push_back(row.step.upto + off);
    std::size_t found = 0;
    std::size_t wrong = 0;
    for (const std::int64_t size : sizes) {
        for (const inch_fit_class c : inch_fit_classes()) {
            const inch_row* const row = reference().find(c, size);
            const length nominal = length::from_nanometres(size);
            if (row == nullptr ? inch_fit(c, nominal).has_value() : !gives(nominal, *row)) ++wrong;
            if (row != nullptr) ++found;
        }
    }
    CHECK(wrong == 0);
    CHECK(found > 60'000);
}

// ---- what the printed tables must satisfy, whatever the library says

TEST_CASE("every printed row closes: clearances follow from the limits") {
    for (const inch_row& row : reference().fits) {
        CAPTURE(row.fit_name);
        CAPTURE(row.over_in);
        CHECK(row.hole_lower == 0);
        CHECK(row.hole_lower < row.hole_upper);
        CHECK(row.shaft_lower < row.shaft_upper);
        CHECK(row.clearance_min == row.hole_lower - row.shaft_upper);
        CHECK(row.clearance_max == row.hole_upper - row.shaft_lower);
    }
}

TEST_CASE("each family is of its kind") {
    for (const inch_row& row : reference().fits) {
        CAPTURE(row.fit_name);
        CAPTURE(row.over_in);
        const std::string f = family(row);
        const fit_kind kind = f == "RC" || f == "LC" ? fit_kind::clearance
                              : f == "LT"            ? fit_kind::transition
                                                     : fit_kind::interference;
        CHECK(inch_fit(row.fit, length::from_nanometres(row.step.upto))->kind() == kind);
    }
}

TEST_CASE("widths are those of the grades, but for the odd ones that are printed so") {
    csv_table odd = read_csv(FITWRIGHT_TEST_DATA "/inch_odd_widths.csv");
    REQUIRE(odd.fault == "");
    REQUIRE(odd.rows.size() == 16);
    // The shafts without a symbol are of these grades in every row but two.
    const std::map<std::string, int> grade_without_symbol{{"RC9", 10}, {"LC10", 12}, {"LC11", 13}, {"FN1", 5}};
    std::size_t odd_ones = 0;
    for (const inch_row& row : reference().fits) {
        const length size = length::from_nanometres(row.step.upto);
        const auto fit = inch_fit(row.fit, size);
        REQUIRE(fit);
        for (const bool is_hole : {true, false}) {
            CAPTURE(row.fit_name);
            CAPTURE(row.over_in);
            CAPTURE(is_hole);
            const std::string& symbol = is_hole ? row.hole_symbol : row.shaft_symbol;
            const std::size_t digits = symbol.find_first_of("0123456789");
            const int number = symbol.empty() ? grade_without_symbol.at(row.fit_name) : std::stoi(symbol.substr(digits));
            const std::int64_t by_grade = hundredths(*inch_tolerance(size, inch_grade{static_cast<std::uint8_t>(number)}));
            const std::int64_t width = hundredths(is_hole ? fit->hole().tolerance() : fit->shaft().tolerance());
            const std::string part = is_hole ? "hole" : "shaft";
            bool is_odd = false;
            for (std::size_t i = 0; i < odd.rows.size(); ++i) {
                if (odd.cell(i, "fit") != row.fit_name || odd.cell(i, "over_in") != row.over_in || odd.cell(i, "part") != part)
                    continue;
                is_odd = true;
                ++odd_ones;
                CHECK(odd.cell(i, "grade") == std::to_string(number));
                CHECK(scaled(odd.cell(i, "tolerance_thou"), 2) == by_grade);
                CHECK(scaled(odd.cell(i, "width_thou"), 2) == width);
            }
            CHECK((width != by_grade) == is_odd);
        }
    }
    CHECK(odd_ones == odd.rows.size());
}

TEST_CASE("misprints that are about are not in the tables") {
    csv_table t = read_csv(FITWRIGHT_TEST_DATA "/inch_misprints.csv");
    REQUIRE(t.fault == "");
    REQUIRE(t.rows.size() == 4);
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        const inch_row* const row = reference().find(t.cell(i, "fit"), t.cell(i, "over_in"));
        REQUIRE(row != nullptr);
        const auto fit = inch_fit(row->fit, length::from_nanometres(row->step.upto));
        REQUIRE(fit);
        const std::string& field = t.cell(i, "field");
        const length got = field == "clearance_max"   ? fit->max_clearance()
                           : field == "clearance_min" ? fit->min_clearance()
                                                      : fit->shaft().upper_deviation();
        CAPTURE(t.cell(i, "fit"));
        CHECK(hundredths(got) == scaled(t.cell(i, "right"), 2));
        CHECK(hundredths(got) != scaled(t.cell(i, "misprint"), 2));
    }
    // One copy lets the range of RC1 to RC4 over 0.12 in end at 0.40 in instead of 0.24.
    for (const inch_fit_class c : {rc1, rc2, rc3, rc4}) CHECK(inch_fit(c, 0.24_in)->shaft() != inch_fit(c, 0.3_in)->shaft());
    CHECK(inch_fit(rc4, 0.3_in)->max_clearance() == 2_thou);
}

TEST_CASE("growth: hole tolerances, clearances and greatest interferences never fall as the size rises") {
    std::map<std::string, int> falls_of_least_interference;
    for (std::size_t i = 1; i < reference().fits.size(); ++i) {
        const inch_row& before = reference().fits[i - 1];
        const inch_row& row = reference().fits[i];
        if (before.fit != row.fit) continue;
        CAPTURE(row.fit_name);
        CAPTURE(row.over_in);
        const auto less = inch_fit(row.fit, length::from_nanometres(before.step.upto));
        const auto more = inch_fit(row.fit, length::from_nanometres(row.step.upto));
        CHECK(more->hole().tolerance() >= less->hole().tolerance());
        if (row.fit <= lc11) {
            CHECK(more->min_clearance() >= less->min_clearance());
            CHECK(more->max_clearance() >= less->max_clearance());
        } else {
            CHECK(more->min_clearance() <= less->min_clearance());
        }
        if (row.fit >= fn1 && more->max_clearance() > less->max_clearance()) ++falls_of_least_interference[row.fit_name];
    }
    // The hole's tolerance steps up there: once each in FN2, FN3 and FN4.
    CHECK(falls_of_least_interference == std::map<std::string, int>{{"FN2", 1}, {"FN3", 1}, {"FN4", 1}});
    CHECK(inch_fit(fn2, 9.85_in)->max_clearance() == -4.2_thou);
    CHECK(inch_fit(fn2, 9.86_in)->max_clearance() == -4_thou);
}

// ---- what is easily got wrong

TEST_CASE("the letter does not give the deviation: look up by fit") {
    // f, g, e, d above 9.85 in: larger in the running fits than in the locational ones
    FITWRIGHT_CHECK_BOTH((shaft_upper(rc3, given(14_in)) == -3_thou && shaft_upper(lc6, given(14_in)) == -2.5_thou));
    FITWRIGHT_CHECK_BOTH((shaft_upper(rc1, given(14_in)) == -1_thou && shaft_upper(lc5, given(14_in)) == -0.7_thou));
    FITWRIGHT_CHECK_BOTH((shaft_upper(rc5, given(14_in)) == -6_thou && shaft_upper(lc7, given(14_in)) == -5_thou));
    FITWRIGHT_CHECK_BOTH((shaft_upper(rc7, given(14_in)) == -10_thou && shaft_upper(lc8, given(14_in)) == -8_thou));
    // and the same up to there
    for (const length size : {0.1_in, 0.5_in, 1_in, 5_in, 9.85_in}) {
        CHECK(shaft_upper(rc3, size) == shaft_upper(lc6, size));
        CHECK(shaft_upper(rc5, size) == shaft_upper(lc7, size));
        CHECK(shaft_upper(rc7, size) == shaft_upper(lc8, size));
        CHECK(shaft_upper(rc8, size) == shaft_upper(lc9, size));
        CHECK(shaft_upper(rc1, size) == shaft_upper(lc5, size));
    }
    // n5 of LN1 and n6 of LT5 begin apart between 0.40 and 1.97 in
    for (const length size : {0.5_in, 1_in, 1.5_in})
        CHECK(inch_fit(ln1, size)->shaft().lower_deviation() < inch_fit(lt5, size)->shaft().lower_deviation());
    CHECK(inch_fit(ln1, 0.3_in)->shaft().lower_deviation() == inch_fit(lt5, 0.3_in)->shaft().lower_deviation());
}

TEST_CASE("the smallest range: grades 5 and 4 are wider in the fits than in the table of tolerances") {
    FITWRIGHT_CHECK_BOTH(inch_tolerance(given(0.1_in), inch_grade::grade5).value() == 0.15_thou);
    FITWRIGHT_CHECK_BOTH(inch_tolerance(given(0.1_in), inch_grade::grade4).value() == 0.12_thou);
    FITWRIGHT_CHECK_BOTH(inch_fit(rc1, given(0.1_in))->hole().tolerance() == 0.2_thou);
    FITWRIGHT_CHECK_BOTH(inch_fit(rc1, given(0.1_in))->shaft().tolerance() == 0.15_thou);
}

TEST_CASE("js to a hundredth of a thou, and half values, are exact") {
    FITWRIGHT_CHECK_BOTH(inch_fit(lt1, given(0.1_in))->shaft().upper_deviation() == given(3048_nm)); // 0.12 thou
    FITWRIGHT_CHECK_BOTH(inch_fit(lt2, given(0.5_in))->shaft().lower_deviation() == given(-8890_nm)); // -0.35 thou
    FITWRIGHT_CHECK_BOTH(inch_fit(rc1, given(0.5_in))->shaft().upper_deviation() == given(-6350_nm)); // -0.25 thou
}

TEST_CASE("line to line: LN1 and LN2 have no least interference up to 1.97 in") {
    for (const inch_fit_class c : {ln1, ln2}) {
        CHECK(inch_fit(c, 1.97_in)->max_clearance() == 0_thou);
        CHECK(inch_fit(c, 1.98_in)->max_clearance() < 0_thou);
        CHECK(inch_fit(c, 1.97_in)->kind() == fit_kind::interference);
    }
}

TEST_CASE("ranges are over, up to and including; force fits have finer ones") {
    FITWRIGHT_CHECK_BOTH(inch_fit(rc4, given(1.19_in))->max_clearance() == 2.8_thou);
    FITWRIGHT_CHECK_BOTH(inch_fit(rc4, given(1.19_in + 1_nm))->max_clearance() == 3.6_thou);
    FITWRIGHT_CHECK_BOTH((!inch_fit(lt3, given(0.24_in)) && inch_fit(lt3, given(0.24_in + 1_nm))));
    FITWRIGHT_CHECK_BOTH((!inch_fit(fn3, given(0.95_in)) && inch_fit(fn3, given(0.95_in + 1_nm))));
    FITWRIGHT_CHECK_BOTH(inch_fit(fn5, given(0.56_in))->min_clearance() == -2.3_thou);
    FITWRIGHT_CHECK_BOTH(inch_fit(fn5, given(0.57_in))->min_clearance() == -2.5_thou);
    FITWRIGHT_CHECK_BOTH((inch_fit(rc4, given(19.69_in)) && !inch_fit(rc4, given(19.69_in + 1_nm))));
    FITWRIGHT_CHECK_BOTH((inch_fit(rc4, given(1_nm)) && !inch_fit(rc4, given(0_nm))));
}

TEST_CASE("a nominal size in millimetres is looked up as it is") {
    constexpr auto at_12_mm = inch_fit(rc4, 12_mm); // 0.472 in
    static_assert(at_12_mm->hole().lower_limit() == 12_mm && at_12_mm->hole().upper_limit() == 12.0254_mm);
    static_assert(at_12_mm->shaft().upper_limit() == 11.98476_mm && at_12_mm->shaft().lower_limit() == 11.96698_mm);
    // 30 mm ends a range of ISO 286; 1.19 in, where that of B4.1 ends, is 30.226 mm
    CHECK(inch_fit(rc4, 30.226_mm)->max_clearance() == 2.8_thou);
    CHECK(inch_fit(rc4, 30.227_mm)->max_clearance() == 3.6_thou);
}

TEST_CASE("these are not converted ISO 286 limits, nor those of ASA B4.1-1955") {
    CHECK(inch_fit(rc4, 25_mm)->hole() != *limits(25_mm, hole(h, 8)));
    CHECK(symbols(rc3) == inch_symbols{"H7", "f6"}); // 1955: H6/f6
    CHECK(symbols(rc4) == inch_symbols{"H8", "f7"}); // 1955: H7/f7
}

// ---- names

TEST_CASE("names, families and symbols as printed") {
    csv_table t = read_csv(FITWRIGHT_TEST_DATA "/inch_fit_classes.csv");
    REQUIRE(t.fault == "");
    REQUIRE(t.rows.size() == inch_fit_class_count);
    REQUIRE(inch_fit_classes().size() == inch_fit_class_count);
    std::set<std::string> purposes;
    for (std::size_t i = 0; i < t.rows.size(); ++i) {
        const inch_fit_class c = inch_fit_classes()[i];
        CHECK(static_cast<std::size_t>(c) == i);
        CHECK(words(name(c)) == t.cell(i, "fit"));
        CHECK(words(symbols(c).hole) == t.cell(i, "hole_symbol"));
        CHECK((symbols(c).shaft.empty() ? "none" : words(symbols(c).shaft)) == t.cell(i, "shaft_symbol"));
        CHECK(purposes.insert(words(purpose(c))).second);
        CHECK(purpose(c).size() > 10);
        CHECK(*read_inch_fit_class(name(c)) == c);
        CHECK(*read_inch_fit_class(t.cell(i, "fit")) == c);
    }
    for (const inch_row& row : reference().fits) {
        CHECK(words(symbols(row.fit).hole) == row.hole_symbol);
        CHECK(words(symbols(row.fit).shaft) == row.shaft_symbol);
    }
    for (const inch_fit_class c : {rc9, lc10, lc11, fn1}) CHECK(symbols(c).shaft.empty());
    FITWRIGHT_CHECK_BOTH((name(given(rc4)) == "RC4" && symbols(given(rc4)).shaft == "f7"));
}

TEST_CASE("the sizes of a fit are those it has rows for") {
    for (const inch_fit_class c : inch_fit_classes()) {
        const inch_row* first = nullptr;
        const inch_row* last = nullptr;
        for (const inch_row& row : reference().fits) {
            if (row.fit != c) continue;
            if (first == nullptr) first = &row;
            last = &row;
        }
        REQUIRE(first != nullptr);
        CHECK(sizes_of(c).over.nanometres() == first->step.over);
        CHECK(sizes_of(c).upto.nanometres() == last->step.upto);
    }
    FITWRIGHT_CHECK_BOTH(sizes_of(given(fn3)) == inch_sizes{0.95_in, 19.69_in});
}

TEST_CASE("reading a name: strict, with an offer where the meaning is plain") {
    FITWRIGHT_CHECK_BOTH(*read_inch_fit_class(given(text("RC4"))) == rc4);
    FITWRIGHT_CHECK_BOTH(*read_inch_fit_class(given(text(" \tLC11 "))) == lc11);
    CHECK(*read_inch_fit_class(std::string("FN5")) == fn5);
    CHECK(*read_inch_fit_class(std::string_view("LT1 or so").substr(0, 3)) == lt1);

    struct wrong_name {
        const char* written;
        error_code code;
        std::uint32_t column;
        const char* piece;
        const char* suggestion;
        const char* allowed;
    };
    using enum error_code;
    const wrong_name cases[] = {
        {"", text_is_empty, 1, "", "", "RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5"},
        {" \t ", text_is_empty, 4, "", "", "RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5"},
        {"rc4", letter_case_mixed, 1, "rc4", "RC4", "allowed: capitals, RC1 to RC9"},
        {"  Lc11", letter_case_mixed, 3, "Lc11", "LC11", "LC1 to LC11"},
        {"RC 4", blank_inside_a_class, 1, "RC 4", "RC4", "allowed: none"},
        {"fn 5", letter_case_mixed, 1, "fn 5", "FN5", "FN1 to FN5"},
        {"RC04", inch_fit_not_known, 1, "RC04", "RC4", "RC1 to RC9"},
        {"RC0", inch_fit_not_known, 1, "RC0", "", "RC1 to RC9"},
        {"RC10", inch_fit_not_known, 1, "RC10", "", "RC1 to RC9"},
        {"LC12", inch_fit_not_known, 1, "LC12", "", "LC1 to LC11"},
        {"LT7", inch_fit_not_known, 1, "LT7", "", "LT1 to LT6"},
        {"LN4", inch_fit_not_known, 1, "LN4", "", "LN1 to LN3"},
        {"FN6", inch_fit_not_known, 1, "FN6", "", "FN1 to FN5"},
        {"RC", inch_fit_not_known, 1, "RC", "", "RC1 to RC9"},
        {"R", inch_fit_not_known, 1, "R", "", "RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5"},
        {"H8/f7", inch_fit_not_known, 1, "H8/f7", "", "RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1 to LN3, FN1 to FN5"},
        {"RC4 x", inch_fit_not_known, 1, "RC4 x", "", "RC1 to RC9"},
        {"RC-4", inch_fit_not_known, 1, "RC-4", "", "RC1 to RC9"},
        {"RC\xC2\xA0" "4\n", inch_fit_not_known, 1, "RC??4?", "", "RC1 to RC9"},
        {"RC4444444444444444444444444", inch_fit_not_known, 1, "RC444444444444444444...", "", "RC1 to RC9"},
    };
    for (const wrong_name& w : cases) {
        CAPTURE(w.written);
        const auto read = read_inch_fit_class(w.written);
        REQUIRE(!read);
        CHECK(read.error().code() == w.code);
        CHECK(read.error().column() == w.column);
        CHECK(read.error().byte_column() == w.column);
        CHECK(read.error().piece() == w.piece);
        CHECK(read.error().suggestion() == w.suggestion);
        CHECK(words(read.error().message()).find(w.allowed) != std::string::npos);
    }
    FITWRIGHT_CHECK_BOTH(read_inch_fit_class(given(text("rc4"))).error().suggestion() == "RC4");
    FITWRIGHT_CHECK_BOTH(read_inch_fit_class(given(text("RC10"))).error().code() == error_code::inch_fit_not_known);
}

TEST_CASE("of all short texts only the names are read, and what is offered can be read") {
    constexpr char characters[] = {'R', 'C', 'L', 'T', 'N', 'F', 'r', 'c', '0', '1', '4', '9', ' '};
    std::set<std::string> names;
    for (const inch_fit_class c : inch_fit_classes()) names.insert(words(name(c)));
    std::string written(4, ' ');
    std::size_t read_ones = 0;
    std::size_t wrong = 0;
    for (const char first : characters)
        for (const char second : characters)
            for (const char third : characters)
                for (const char fourth : characters) {
                    written = {first, second, third, fourth};
                    std::string bare = written;
                    while (!bare.empty() && bare.back() == ' ') bare.pop_back();
                    while (!bare.empty() && bare.front() == ' ') bare.erase(0, 1);
                    const auto read = read_inch_fit_class(written);
                    if (read.has_value() != names.contains(bare)) ++wrong;
                    if (read) {
                        ++read_ones;
                        if (name(*read) != text(bare.c_str())) ++wrong;
                    } else if (const text offered = read.error().suggestion(); !offered.empty()) {
                        if (!read_inch_fit_class(offered)) ++wrong;
                    }
                }
    CHECK(wrong == 0);
    CHECK(read_ones > 20);
}

// ---- errors and sources

TEST_CASE("a size that a fit is not given for: which sizes it has") {
    const auto says = [](const error& e, const char* piece) { return words(e.message()).find(piece) != std::string::npos; };
    const auto below = inch_fit(lt3, 0.2_in);
    REQUIRE(!below);
    CHECK(below.error().message() == "ANSI B4.1 has no LT3 at 0.2 in (5.08 mm); allowed: LT3 above 0.24 in up to and including 19.69 in");
    CHECK(below.error().code() == error_code::no_value_in_standard);
    CHECK(below.error().piece() == "0.2");
    CHECK(below.error().column() == 0);

    const auto above = inch_fit(fn3, 508_mm);
    REQUIRE(!above);
    CHECK(above.error().code() == error_code::size_out_of_range);
    CHECK(says(above.error(), "20 in (508 mm)"));
    CHECK(says(above.error(), "FN3 above 0.95 in up to and including 19.69 in"));
    CHECK(says(inch_fit(rc1, -(1_in)).error(), "RC1 above 0 in up to and including 19.69 in"));

    FITWRIGHT_CHECK_BOTH(inch_fit(given(rc1), given(0_in)).error().code() == error_code::size_out_of_range);
    FITWRIGHT_CHECK_BOTH(inch_fit(given(fn3), given(0.5_in)).error().code() == error_code::no_value_in_standard);
}

TEST_CASE("what is no fit and no grade") {
    constexpr auto no_fit = static_cast<inch_fit_class>(inch_fit_class_count);
    FITWRIGHT_CHECK_BOTH(inch_fit(given(no_fit), 1_in).error().code() == error_code::inch_fit_not_known);
    CHECK(words(inch_fit(no_fit, 1_in).error().message()).find("FN1 to FN5") != std::string::npos);
    CHECK(name(no_fit) == "?");
    CHECK(symbols(no_fit) == inch_symbols{"", ""});
    CHECK(purpose(no_fit).empty());
    CHECK(sizes_of(no_fit) == inch_sizes{});
    for (const int number : {0, 3, 14, 255}) {
        const auto got = inch_tolerance(1_in, inch_grade{static_cast<std::uint8_t>(number)});
        REQUIRE(!got);
        CHECK(got.error().code() == error_code::grade_not_known);
        CHECK(words(got.error().message()) == "ANSI B4.1 has no tolerance grade " + std::to_string(number) + "; allowed: 4 to 13");
    }
    CHECK(words(inch_tolerance(201_in, inch_grade::grade13).error().message()).find("201 in is outside") != std::string::npos);
    CHECK(words(inch_tolerance(201_in, inch_grade::grade13).error().message()).find("up to and including 200 in") != std::string::npos);
}

TEST_CASE("every row says where it comes from; what is from memory says so") {
    std::size_t from_memory = 0;
    for (const inch_row& row : reference().fits) {
        const auto fit = inch_fit(row.fit, length::from_nanometres(row.step.upto));
        CHECK(&fit->hole().origin() == &fit->shaft().origin());
        const std::string place = words(fit->hole().origin().place);
        const std::string f = family(row);
        const char* const about = f == "RC"   ? "running"
                                  : f == "LC" ? "clearance"
                                  : f == "LT" ? "transition"
                                  : f == "LN" ? "interference"
                                              : "force";
        CHECK(place.find(about) == 0);
        CHECK(words(fit->hole().origin().document).find("ANSI B4.1-1967") == 0);
        if (row.how_sure == confidence::memory) ++from_memory;
    }
    CHECK(from_memory == 5 * 13 + 4 * 3 + 2 * 8 + 1 + 5 + 2); // LC1-5, LC6-9, LC10-11, LT1, FN at 3.94 in, FN2
    CHECK(inch_fit(rc4, 1_in)->hole().origin().how_sure == confidence::published);
    CHECK(inch_fit(lc2, 1_in)->hole().origin().how_sure == confidence::memory);
}

TEST_CASE("a fit is a plain value") {
    static_assert(std::is_trivially_copyable_v<result<fit>>);
    static_assert(noexcept(inch_fit(rc4, length())) && noexcept(read_inch_fit_class(text())));
    static_assert(inch_grade{7} == inch_grade::grade7 && inch_grade{13} == inch_grade::grade13);
    static_assert(inch_tolerance(1_in, inch_grade{7}).value() == 0.8_thou);
}

// ---- ANSI B4.2-1978

TEST_CASE("preferred metric fits, hole basis and shaft basis") {
    csv_table t = read_csv(FITWRIGHT_TEST_DATA "/inch_b4_2_preferred_fits.csv");
    REQUIRE(t.fault == "");
    REQUIRE(t.rows.size() == 10);
    const auto written = [](const class_pair& p) {
        return class_name(p.hole.position, p.hole.grade, side::hole) + "/" + class_name(p.shaft.position, p.shaft.grade, side::shaft);
    };
    const auto by_hole = preferred_metric_fits(basis::hole);
    const auto by_shaft = preferred_metric_fits(basis::shaft);
    REQUIRE(by_hole.size() == 10);
    REQUIRE(by_shaft.size() == 10);
    for (std::size_t i = 0; i < 10; ++i) {
        CAPTURE(written(by_hole[i]));
        CHECK(written(by_hole[i]) == t.cell(i, "hole_basis"));
        CHECK(written(by_shaft[i]) == t.cell(i, "shaft_basis"));
        CHECK(words(preferred_metric_fit_name(i)) == t.cell(i, "name"));
        CHECK(by_hole[i].hole.position == h);
        CHECK(by_shaft[i].shaft.position == h);
        CHECK(by_hole[i].shaft.position == by_shaft[i].hole.position);
        for (const basis b : {basis::hole, basis::shaft}) {
            const auto at_50_mm = limits(50_mm, preferred_metric_fits(b)[i]);
            REQUIRE(at_50_mm);
            CHECK(in_words(at_50_mm->kind()) == t.cell(i, "kind"));
        }
    }
    CHECK(by_hole[4] == by_shaft[4]); // H7/h6 is its own twin
    CHECK(preferred_metric_fit_name(10) == "?");
    static_assert(sources::ansi_b4_2.how_sure == confidence::published);
    FITWRIGHT_CHECK_BOTH(preferred_metric_fits(given(basis::hole))[3] == class_pair{hole(h, 7), shaft(g, 6)});
}

TEST_CASE("a twin has the clearances of its fit, but for the delta rule of the holes K to U") {
    for (std::size_t i = 0; i < 10; ++i) {
        const auto by_hole = limits(30_mm, preferred_metric_fits(basis::hole)[i]);
        const auto by_shaft = limits(30_mm, preferred_metric_fits(basis::shaft)[i]);
        CHECK(by_hole->min_clearance() == by_shaft->min_clearance());
        CHECK(by_hole->max_clearance() == by_shaft->max_clearance());
    }
}
