#ifndef FITWRIGHT_TESTS_SUPPORT_INCH_CHECKS_HPP
#define FITWRIGHT_TESTS_SUPPORT_INCH_CHECKS_HPP

#include "csv.hpp"
#include "iso286_checks.hpp"
#include <fitwright/inch.hpp>

// The tables of ANSI B4.1 as a reader of the handbook has them, and the comparison of the library with
// them, cell by cell. The test and the mutation run share it. Numbers are hundredths of a thou.

namespace fitwright_tests {

using fitwright::inch_fit_class;

inline constexpr std::int64_t nm_in_an_inch = 25'400'000;
inline constexpr std::int64_t nm_in_a_hundredth_of_a_thou = 254;

/// A printed row: a fit, a range of sizes, its limits and its clearances.
struct inch_row {
    inch_fit_class fit;
    std::string fit_name;
    size_step step;
    std::string over_in;
    std::int64_t hole_lower, hole_upper, shaft_lower, shaft_upper, clearance_min, clearance_max;
    std::string hole_symbol, shaft_symbol; ///< empty where none is printed
    fitwright::confidence how_sure;
};

/// A cell of the table of standard tolerances.
struct inch_tolerance_row {
    size_step step;
    int grade;
    std::int64_t tolerance;
};

struct inch_reference {
    std::string fault;
    std::vector<inch_row> fits;
    std::vector<inch_tolerance_row> tolerances;

    [[nodiscard]] const inch_row* find(inch_fit_class fit, std::int64_t size) const {
        for (const inch_row& row : fits)
            if (row.fit == fit && row.step.over < size && size <= row.step.upto) return &row;
        return nullptr;
    }
    [[nodiscard]] const inch_row* find(std::string_view fit, std::string_view over_in) const {
        for (const inch_row& row : fits)
            if (row.fit_name == fit && row.over_in == over_in) return &row;
        return nullptr;
    }
    /// Hundredths of a thou; 0 if the table has none.
    [[nodiscard]] std::int64_t tolerance(int grade, std::int64_t size) const {
        for (const inch_tolerance_row& row : tolerances)
            if (row.grade == grade && row.step.over < size && size <= row.step.upto) return row.tolerance;
        return 0;
    }
};

/// The fit of that name by its place in the standard, not by asking the library for its name.
inline std::optional<inch_fit_class> inch_fit_by_place(std::string_view name) {
    constexpr std::pair<std::string_view, int> families[] = {{"RC", 9}, {"LC", 11}, {"LT", 6}, {"LN", 3}, {"FN", 5}};
    int place = 0;
    for (const auto& [letters, count] : families) {
        for (int number = 1; number <= count; ++number, ++place)
            if (name == std::string(letters) + std::to_string(number)) return static_cast<inch_fit_class>(place);
    }
    return {};
}

/// What the library is to say of a row that was confirmed like that: LC1 to LC5 were worked out from
/// symbols that are from memory (data/SOURCES_inch.md).
inline fitwright::confidence confidence_of(inch_fit_class fit, std::string_view confirmed) {
    const bool symbol_from_memory = fit >= inch_fit_class::lc1 && fit <= inch_fit_class::lc5;
    const bool from_memory = confirmed == "memory" || (confirmed == "derived" && symbol_from_memory);
    return from_memory ? fitwright::confidence::memory : fitwright::confidence::published;
}

inline inch_reference read_inch(const std::string& folder) {
    inch_reference r;
    const auto inches = [&](const std::string& written) {
        const auto ten_thousandths = scaled(written, 4);
        if (!ten_thousandths) r.fault = "not a size: " + written;
        return ten_thousandths.value_or(0) * (nm_in_an_inch / 10'000);
    };
    const auto thou = [&](const std::string& written) {
        const auto hundredths = scaled(written, 2);
        if (!hundredths) r.fault = "not a number of hundredths of a thou: " + written;
        return hundredths.value_or(0);
    };
    const auto symbol = [](const std::string& written) { return written == "none" ? std::string() : written; };
    for (const char* family : {"rc", "lc", "lt", "ln", "fn"}) {
        csv_table t = read_csv(folder + "/inch_" + family + ".csv");
        for (std::size_t i = 0; i < t.rows.size(); ++i) {
            const std::string& name = t.cell(i, "fit");
            const auto fit = inch_fit_by_place(name);
            if (!fit) {
                r.fault = "no such fit: " + name;
                return r;
            }
            r.fits.push_back({*fit, name, {inches(t.cell(i, "over_in")), inches(t.cell(i, "upto_in"))}, t.cell(i, "over_in"),
                              thou(t.cell(i, "hole_lower_thou")), thou(t.cell(i, "hole_upper_thou")),
                              thou(t.cell(i, "shaft_lower_thou")), thou(t.cell(i, "shaft_upper_thou")),
                              thou(t.cell(i, "clearance_min_thou")), thou(t.cell(i, "clearance_max_thou")),
                              symbol(t.cell(i, "hole_symbol")), symbol(t.cell(i, "shaft_symbol")),
                              confidence_of(*fit, t.cell(i, "confirmed"))});
        }
        if (!t.fault.empty()) r.fault = t.fault;
    }
    csv_table t = read_csv(folder + "/inch_tolerance_grades.csv");
    for (std::size_t i = 0; i < t.rows.size(); ++i)
        r.tolerances.push_back({{inches(t.cell(i, "over_in")), inches(t.cell(i, "upto_in"))},
                                static_cast<int>(scaled(t.cell(i, "grade"), 0).value_or(0)), thou(t.cell(i, "tolerance_thou"))});
    if (!t.fault.empty()) r.fault = t.fault;
    return r;
}

/// The library's fit is the printed row to the nanometre, its clearances are the printed ones, and both
/// parts say how surely the row is known.
inline bool gives(length size, const inch_row& row) {
    const auto got = fitwright::inch_fit(row.fit, size);
    if (!got) return false;
    const auto is = [](length l, std::int64_t hundredths) {
        return l.nanometres() == hundredths * nm_in_a_hundredth_of_a_thou;
    };
    const auto& hole = got->hole();
    const auto& shaft = got->shaft();
    return hole.nominal() == size && shaft.nominal() == size && is(hole.lower_deviation(), row.hole_lower) &&
           is(hole.upper_deviation(), row.hole_upper) && is(shaft.lower_deviation(), row.shaft_lower) &&
           is(shaft.upper_deviation(), row.shaft_upper) && is(got->min_clearance(), row.clearance_min) &&
           is(got->max_clearance(), row.clearance_max) && hole.origin().how_sure == row.how_sure &&
           shaft.origin().how_sure == row.how_sure;
}

inline bool refuses(inch_fit_class fit, length size, fitwright::error_code code) {
    const auto got = fitwright::inch_fit(fit, size);
    return !got && got.error().code() == code;
}

/// Every printed row at three sizes.
inline verdict check_inch_rows(const inch_reference& r, thoroughness how) {
    verdict v;
    for (const inch_row& row : r.fits) {
        for (const length size : sizes_of(row.step)) v.take(gives(size, row), [&] { return at(row.fit_name, size); });
        if (is_decided(v, how)) break;
    }
    return v;
}

/// Every fit in every range of its family that the standard has no row for, at three sizes.
inline verdict check_inch_gaps(const inch_reference& r, thoroughness how) {
    verdict v;
    for (const inch_row& range : r.fits) {
        const bool force = range.fit == inch_fit_class::fn2; // has every range of its family; so has RC1
        if (!force && range.fit != inch_fit_class::rc1) continue;
        for (int place = 0; place < fitwright::inch_fit_class_count; ++place) {
            const auto fit = static_cast<inch_fit_class>(place);
            if ((fit >= inch_fit_class::fn1) != force || r.find(fit, range.step.upto) != nullptr) continue;
            for (const length size : sizes_of(range.step))
                v.take(refuses(fit, size, fitwright::error_code::no_value_in_standard),
                       [&] { return at("no row, fit " + std::to_string(place), size); });
        }
        if (is_decided(v, how)) break;
    }
    return v;
}

/// Every cell of the standard tolerances at three sizes.
inline verdict check_inch_tolerances(const inch_reference& r, thoroughness how) {
    verdict v;
    for (const inch_tolerance_row& row : r.tolerances) {
        for (const length size : sizes_of(row.step)) {
            const auto got = fitwright::inch_tolerance(size, fitwright::inch_grade{static_cast<std::uint8_t>(row.grade)});
            v.take(got && got->nanometres() == row.tolerance * nm_in_a_hundredth_of_a_thou,
                   [&] { return at("grade " + std::to_string(row.grade), size); });
        }
        if (is_decided(v, how)) break;
    }
    return v;
}

/// The ends of the tables: nothing at 0 and below, nothing above the last range.
inline verdict check_inch_ends(thoroughness how) {
    constexpr auto outside = fitwright::error_code::size_out_of_range;
    verdict v;
    const auto nm = [](std::int64_t n) { return length::from_nanometres(n); };
    for (const std::int64_t n : {INT64_MIN, std::int64_t{-1}, std::int64_t{0}, 1969 * nm_in_an_inch / 100 + 1, INT64_MAX}) {
        for (int place = 0; place < fitwright::inch_fit_class_count; ++place)
            v.take(refuses(static_cast<inch_fit_class>(place), nm(n), outside), [&] { return at("fit", nm(n)); });
        if (is_decided(v, how)) return v;
    }
    for (const std::int64_t n : {INT64_MIN, std::int64_t{-1}, std::int64_t{0}, 200 * nm_in_an_inch + 1, INT64_MAX}) {
        const auto got = fitwright::inch_tolerance(nm(n), fitwright::inch_grade::grade7);
        v.take(!got && got.error().code() == outside, [&] { return at("grade 7", nm(n)); });
    }
    return v;
}

} // namespace fitwright_tests

#endif
