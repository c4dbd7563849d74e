#ifndef FITWRIGHT_TESTS_SUPPORT_ISO286_REFERENCE_HPP
#define FITWRIGHT_TESTS_SUPPORT_ISO286_REFERENCE_HPP

#include "csv.hpp"
#include <fitwright/iso286/tolerance_class.hpp>

#include <array>
#include <map>

// The tables of ISO 286-1 as a reader of the standard has them: one file a table, printed headings.
// Whatever is worked out here is worked out from those files by the rules that stand in the standard;
// nothing is asked of the library but its names for letters and grades.

namespace fitwright_tests {

using fitwright::grade;
using fitwright::length;
using fitwright::position;
using fitwright::side;

using cell = std::optional<std::int64_t>; ///< nanometres; nothing where the table is blank

/// "Above, up to and including", in nanometres.
struct size_step {
    std::int64_t over;
    std::int64_t upto;
    friend bool operator==(const size_step&, const size_step&) = default;
};

/// A row of Table 1.
struct tolerance_row {
    size_step step;
    std::array<cell, grade::count> tolerance; ///< by grade::step()
};

/// A row of the tables of fundamental deviations, by printed heading.
struct deviation_row {
    size_step step;
    std::map<std::string, cell, std::less<>> values;
    bool add_delta = false; ///< holes only

    [[nodiscard]] cell at(std::string_view heading) const {
        const auto found = values.find(heading);
        return found == values.end() ? cell() : found->second;
    }
};

/// A row of the tables of delta.
struct delta_row {
    size_step step;
    std::array<cell, grade::count> delta; ///< by grade::step(); IT3 to IT8
};

/// A row of ISO 286-2: a class, a step of sizes, its limit deviations.
struct class_row {
    std::string name;
    side part;
    position letter;
    grade it;
    size_step step;
    cell upper;
    cell lower;
};

/// Deviations in nanometres, where there are any.
struct expected_limits {
    std::int64_t upper;
    std::int64_t lower;
    friend bool operator==(const expected_limits&, const expected_limits&) = default;
};

struct iso286_reference {
    std::string fault; ///< empty if all was read
    std::vector<tolerance_row> tolerances;
    std::vector<deviation_row> shafts;
    std::vector<deviation_row> holes;
    std::vector<delta_row> deltas;
    std::vector<class_row> classes;
    std::vector<std::optional<expected_limits>> worked_out; ///< see `expected`

    /// The row of a table whose step holds the whole of `step`.
    template <class Row>
    [[nodiscard]] static const Row* containing(const std::vector<Row>& table, size_step step) {
        for (const Row& row : table)
            if (row.step.over <= step.over && step.upto <= row.step.upto) return &row;
        return nullptr;
    }
};

/// ISO 286-1:2010, 4.3.1.2: the letters in their order; I, L, O, Q and W are not used.
inline constexpr std::array<std::string_view, 28> shaft_letters{
    "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "js", "j",  "k",
    "m", "n", "p", "r",  "s", "t", "u",  "v", "x",  "y", "z", "za", "zb", "zc"};
inline constexpr std::array<std::string_view, 28> hole_letters{
    "A", "B", "C", "CD", "D", "E", "EF", "F", "FG", "G", "H", "JS", "J",  "K",
    "M", "N", "P", "R",  "S", "T", "U",  "V", "X",  "Y", "Z", "ZA", "ZB", "ZC"};
inline constexpr std::array<std::string_view, 20> grade_names{"01", "0",  "1",  "2",  "3",  "4",  "5",
                                                              "6",  "7",  "8",  "9",  "10", "11", "12",
                                                              "13", "14", "15", "16", "17", "18"};

inline std::string_view letters_of(position p, side s) {
    return (s == side::hole ? hole_letters : shaft_letters)[static_cast<std::size_t>(p)];
}

inline std::string class_name(position p, grade g, side s) {
    return std::string(letters_of(p, s)) + std::string(grade_names[static_cast<std::size_t>(g.step())]);
}

/// From "js5" or "ZC11".
inline bool read_class(std::string_view name, class_row& row) {
    const std::size_t digits = name.find_first_of("0123456789");
    if (digits == std::string_view::npos) return false;
    for (std::size_t i = 0; i < grade_names.size(); ++i) {
        if (grade_names[i] != name.substr(digits)) continue;
        for (std::size_t p = 0; p < shaft_letters.size(); ++p) {
            const bool is_shaft = shaft_letters[p] == name.substr(0, digits);
            if (!is_shaft && hole_letters[p] != name.substr(0, digits)) continue;
            row.name = name;
            row.part = is_shaft ? side::shaft : side::hole;
            row.letter = static_cast<position>(p);
            row.it = grade::from_step(static_cast<int>(i));
            return true;
        }
    }
    return false;
}

namespace reading {

inline bool step_of(csv_table& table, std::size_t row, size_step& step) {
    const cell over = scaled(table.cell(row, "over_mm"), 6);
    const cell upto = scaled(table.cell(row, "upto_mm"), 6);
    if (!over || !upto || *over >= *upto) return false;
    step = {*over, *upto};
    return true;
}

/// A blank is no value; anything else has to be a number of micrometres.
inline bool micrometres(const std::string& written, cell& value) {
    value = scaled(written, 3);
    return written.empty() || value.has_value();
}

/// Reads one file; `each(table, row)` is false where a row can't be understood.
template <class Each> void file(iso286_reference& r, const std::string& path, std::size_t rows, Each each) {
    csv_table table = read_csv(path);
    for (std::size_t i = 0; i < table.rows.size() && table.fault.empty(); ++i)
        if (!each(table, i) && table.fault.empty())
            table.fault = path + ": can't read row " + std::to_string(i + 1);
    if (table.fault.empty() && table.rows.size() != rows)
        table.fault =
            path + " has " + std::to_string(table.rows.size()) + " rows, not " + std::to_string(rows);
    if (r.fault.empty()) r.fault = table.fault;
}

inline bool deviations(csv_table& table, std::size_t i, std::vector<deviation_row>& into) {
    deviation_row row{};
    if (!step_of(table, i, row.step)) return false;
    for (std::size_t c = 2; c < table.headings.size(); ++c) {
        const std::string& heading = table.headings[c];
        const std::string& written = table.rows[i][c];
        if (heading == "js" || heading == "JS") {
            if (written != "IT/2") return false;
        } else if (heading == "add_delta") {
            row.add_delta = written == "yes";
        } else if (!micrometres(written, row.values[heading])) {
            return false;
        }
    }
    into.push_back(std::move(row));
    return true;
}

} // namespace reading

/// What the tables of ISO 286-1 say of a class in one of the 41 steps of sizes, above 1 mm.
///
/// Rules of the standard: a to h give the upper deviation of a shaft, A to H the lower one of a hole;
/// k to zc the lower one of a shaft, J to ZC the upper one of a hole; the other deviation is a
/// standard tolerance away. Table 3 adds delta to K, M, N up to IT8 and P to ZC up to IT7.
inline std::optional<expected_limits> work_out(const iso286_reference& r, std::size_t step, position p,
                                               grade g, side s) {
    const deviation_row& row = (s == side::hole ? r.holes : r.shafts)[step];
    const auto* tolerances = iso286_reference::containing(r.tolerances, row.step);
    const auto it = static_cast<std::size_t>(g.step());
    if (tolerances == nullptr || !tolerances->tolerance[it]) return {};
    const std::int64_t tolerance = *tolerances->tolerance[it];

    if (p == position::js) return expected_limits{tolerance / 2, -tolerance / 2};
    const std::string letter(letters_of(p, s));
    if (p <= position::h) {
        const cell given = row.at(letter);
        if (!given) return {};
        if (s == side::hole) return expected_limits{*given + tolerance, *given};
        return expected_limits{*given, *given - tolerance};
    }

    if (s == side::shaft) {
        std::string heading = letter;
        if (p == position::j)
            heading = g == grade::it5 || g == grade::it6 ? "j5_j6"
                      : g == grade::it7                  ? "j7"
                      : g == grade::it8                  ? "j8"
                                                         : "";
        if (p == position::k) heading = g >= grade::it4 && g <= grade::it7 ? "k_IT4_IT7" : "k_other";
        const cell given = row.at(heading);
        if (!given) return {};
        return expected_limits{*given + tolerance, *given};
    }

    std::string heading;
    bool takes_delta = false;
    if (p == position::j) {
        heading = "J" + std::string(grade_names[it]);
    } else if (p <= position::n) {
        takes_delta = row.add_delta && g <= grade::it8;
        heading = letter + (g <= grade::it8 ? "_upto_IT8" : "_above_IT8");
    } else {
        takes_delta = row.add_delta && g <= grade::it7;
        heading = letter + "_above_IT7";
    }
    const cell given = row.at(heading);
    if (!given) return {};
    std::int64_t upper = *given;
    if (takes_delta) {
        const auto* deltas = iso286_reference::containing(r.deltas, row.step);
        if (deltas == nullptr || !deltas->delta[it]) return {}; // Table 3 has no delta for IT1, IT2
        upper += *deltas->delta[it];
        // ISO 286-1:2010, Table 2, footnote: M6 above 250 up to 315 mm is -9 um, not -11 um.
        if (letter == "M" && g == grade::it6 && row.step.over >= 250'000'000 && row.step.upto <= 315'000'000)
            upper = -9'000;
    }
    return expected_limits{upper, upper - tolerance};
}

inline iso286_reference read_iso286(const std::string& folder) {
    iso286_reference r;
    reading::file(r, folder + "/it_grades.csv", 21, [&](csv_table& table, std::size_t i) {
        tolerance_row row{};
        bool good = reading::step_of(table, i, row.step);
        for (std::size_t g = 0; g < grade_names.size(); ++g)
            good = good &&
                   reading::micrometres(table.cell(i, "IT" + std::string(grade_names[g])), row.tolerance[g]);
        r.tolerances.push_back(row);
        return good;
    });
    reading::file(r, folder + "/shaft_fundamental.csv", 41,
                  [&](csv_table& table, std::size_t i) { return reading::deviations(table, i, r.shafts); });
    reading::file(r, folder + "/hole_fundamental.csv", 41,
                  [&](csv_table& table, std::size_t i) { return reading::deviations(table, i, r.holes); });
    reading::file(r, folder + "/delta.csv", 13, [&](csv_table& table, std::size_t i) {
        delta_row row{};
        bool good = reading::step_of(table, i, row.step);
        for (int g = 3; g <= 8; ++g) {
            cell& value = row.delta[static_cast<std::size_t>(grade(g).step())];
            good = good && reading::micrometres(table.cell(i, "IT" + std::to_string(g)), value) &&
                   value.has_value();
        }
        r.deltas.push_back(row);
        return good;
    });
    reading::file(r, folder + "/class_limits.csv", 7182, [&](csv_table& table, std::size_t i) {
        class_row row{"", side::hole, position::a, grade::it1, {}, {}, {}};
        const bool good = read_class(table.cell(i, "class"), row) && reading::step_of(table, i, row.step) &&
                          reading::micrometres(table.cell(i, "upper_um"), row.upper) &&
                          reading::micrometres(table.cell(i, "lower_um"), row.lower);
        r.classes.push_back(std::move(row));
        return good;
    });
    if (!r.fault.empty()) return r;
    for (std::size_t step = 0; step < r.shafts.size(); ++step)
        for (std::size_t letter = 0; letter < shaft_letters.size(); ++letter)
            for (int g = 0; g < grade::count; ++g)
                for (const side s : {side::hole, side::shaft})
                    r.worked_out.push_back(
                        work_out(r, step, static_cast<position>(letter), grade::from_step(g), s));
    return r;
}

/// What `work_out` gave, from store.
inline const std::optional<expected_limits>& expected(const iso286_reference& r, std::size_t step, position p,
                                                      grade g, side s) {
    const std::size_t place = step * shaft_letters.size() + static_cast<std::size_t>(p);
    const std::size_t finer =
        place * static_cast<std::size_t>(grade::count) + static_cast<std::size_t>(g.step());
    return r.worked_out[2 * finer + static_cast<std::size_t>(s)];
}

/// Classes that are not to be used up to and including 1 mm: ISO 286-1:2010, notes below Tables 1, 2 and 4.
inline bool barred_up_to_1_mm(position p, grade g, side s) {
    if (g >= grade::it14) return true;
    if (p == position::a || p == position::b) return true;
    return s == side::hole && p == position::n && g > grade::it8;
}

} // namespace fitwright_tests

#endif
