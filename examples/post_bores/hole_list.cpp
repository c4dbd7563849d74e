#include "hole_list.hpp"

#include "job_sheet/nearest.hpp"
#include "read_hole.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace post_bores {

namespace {

const std::vector<std::string> known_columns = {"tag",     "x",       "y",       "z_top",    "depth",
                                                "through", "callout", "process", "material", "note"};

/// "Call-out" and "z top" are `callout` and `z_top`.
std::string bare(std::string_view name) {
    std::string letters;
    for (const char c : name) {
        if (c == ' ' || c == '-' || c == '_') continue;
        letters += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return letters;
}

bool is_called(std::string_view name, std::string_view column) { return bare(name) == bare(column); }

std::optional<fault> fault_of(const csv_record& header) {
    for (std::size_t i = 0; i < header.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (bare(header[i].text) == bare(header[j].text))
                return fault{header[i].where, fmt::format("there is a column '{}' already", header[j].text)};
    if (header.size() == 1 && header[0].text.find(';') != std::string::npos)
        return fault{header[0].where, "the columns are separated by commas in CSV "
                                      "(RFC 4180), here they are by "
                                      "semicolons"};
    for (const std::string& column : known_columns) {
        const auto has_it = [&](const csv_cell& c) { return is_called(c.text, column); };
        if (column == "note" || std::any_of(header.begin(), header.end(), has_it)) continue;
        std::vector<std::string> others; // that may be this one, misspelt
        for (const csv_cell& c : header) {
            const auto is_this = [&](const std::string& k) { return is_called(c.text, k); };
            if (std::none_of(known_columns.begin(), known_columns.end(), is_this)) others.push_back(c.text);
        }
        std::string hint = others.empty() ? "" : job_sheet::hint(column, others);
        if (hint.starts_with("; did you mean ")) // the other way round: the column that is there
            hint = "; is that the column " + hint.substr(15);
        else
            hint = "; wanted are tag, x, y, z_top, depth, through, callout, "
                   "process, material, and note if you like";
        return fault{header[0].where, fmt::format("the header lacks the column '{}'{}", column, hint)};
    }
    return std::nullopt;
}

} // namespace

const csv_cell& hole_list::cell(const hole_row& row, std::string_view column) const {
    static const csv_cell none;
    for (std::size_t i = 0; i < header.size() && i < row.cells.size(); ++i)
        if (is_called(header[i], column)) return row.cells[i];
    return none;
}

std::vector<std::size_t> hole_list::unknown_columns() const {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < header.size(); ++i) {
        const auto is_this = [&](const std::string& k) { return is_called(header[i], k); };
        if (std::none_of(known_columns.begin(), known_columns.end(), is_this)) all.push_back(i);
    }
    return all;
}

std::variant<hole_list, fault> read_hole_list(std::string_view text) {
    auto read = read_csv(text);
    if (auto* const no_csv = std::get_if<fault>(&read)) return *no_csv;
    auto& records = std::get<std::vector<csv_record>>(read);
    if (records.empty()) return fault{{}, "the list is empty: wanted are a header and a row a hole"};
    if (auto wrong = fault_of(records[0])) return *wrong;

    hole_list list;
    for (const csv_cell& c : records[0]) list.header.push_back(c.text);
    for (std::size_t i = 1; i < records.size(); ++i) {
        hole_row row{.cells = std::move(records[i]), .asked = {}, .faults = {}};
        if (row.cells.size() != list.header.size())
            row.faults.push_back({row.cells[0].where, fmt::format("{} cells, and the header has {}",
                                                                  row.cells.size(), list.header.size())});
        else row.asked = read_hole(list, row);
        for (const hole_row& other : list.rows)
            if (row.faults.empty() && list.text(other, "tag") == list.text(row, "tag"))
                row.faults.push_back({list.cell(row, "tag").where,
                                      fmt::format("there is a hole '{}' already", list.text(row, "tag"))});
        if (!row.faults.empty()) row.asked.reset();
        list.rows.push_back(std::move(row));
    }
    if (list.rows.empty()) return fault{{}, "the list has a header but no holes"};
    return list;
}

} // namespace post_bores
