#ifndef FITWRIGHT_TESTS_SUPPORT_CSV_HPP
#define FITWRIGHT_TESTS_SUPPORT_CSV_HPP

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// The published values that the tests hold the library against: tests/data/*.csv, see SOURCES.md there.

namespace fitwright_tests {

/// A CSV file with one line of headings. `fault` is empty if it could be read and every line has as
/// many cells as there are headings.
struct csv_table {
    std::string fault;
    std::vector<std::string> headings;
    std::vector<std::vector<std::string>> rows;

    /// The place of a heading; the number of headings if there is none.
    [[nodiscard]] std::size_t column(std::string_view heading) const {
        std::size_t i = 0;
        while (i < headings.size() && headings[i] != heading) ++i;
        return i;
    }

    /// The cell of a row under a heading; empty if there is no such heading, which is a fault.
    [[nodiscard]] const std::string& cell(std::size_t row, std::string_view heading) {
        static const std::string nothing;
        const std::size_t i = column(heading);
        if (i < headings.size()) return rows[row][i];
        fault = "no heading " + std::string(heading);
        return nothing;
    }
};

/// Commas between the cells; a cell with a comma stands in quotation marks.
inline std::vector<std::string> csv_cells(std::string_view line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"') quoted = !quoted;
        else if (c == ',' && !quoted) cells.emplace_back();
        else if (c != '\r') cells.back() += c;
    }
    return cells;
}

inline csv_table read_csv(const std::string& path) {
    csv_table table;
    std::ifstream file(path);
    if (!file) {
        table.fault = "can't open " + path;
        return table;
    }
    for (std::string line; std::getline(file, line);) {
        auto cells = csv_cells(line);
        if (table.headings.empty()) table.headings = std::move(cells);
        else if (cells.size() == table.headings.size()) table.rows.push_back(std::move(cells));
        else table.fault = path + ": not as many cells as headings: " + line;
    }
    if (table.fault.empty() && table.rows.empty()) table.fault = path + " has no rows";
    return table;
}

/// A decimal number times 10 to the power of `places`, exactly; nothing if it isn't a number or has
/// more decimals than that: `scaled("-7.5", 3) == -7500`.
inline std::optional<std::int64_t> scaled(std::string_view written, int places) {
    bool negative = false;
    if (!written.empty() && (written[0] == '-' || written[0] == '+')) {
        negative = written[0] == '-';
        written.remove_prefix(1);
    }
    std::int64_t value = 0;
    bool any = false;
    bool behind_point = false;
    for (const char c : written) {
        if (c == '.' && !behind_point) {
            behind_point = true;
            continue;
        }
        if (c < '0' || c > '9' || value > 1'000'000'000'000) return {};
        if (behind_point && places-- == 0) return {};
        value = value * 10 + (c - '0');
        any = true;
    }
    if (!any) return {};
    while (places-- > 0) value *= 10;
    return negative ? -value : value;
}

} // namespace fitwright_tests

#endif
