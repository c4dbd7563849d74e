#ifndef POST_BORES_HOLE_LIST_HPP
#define POST_BORES_HOLE_LIST_HPP

#include "csv.hpp"
#include <fitwright/limits.hpp>
#include <fitwright/material_family.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace post_bores {

/// How the list wants a hole to be finished.
enum class process { as_planned, drill, bore, ream };

/// A hole as the list asks for it. Places are in the coordinates of the list; Z
/// points up.
struct hole {
    fitwright::length x;
    fitwright::length y;
    fitwright::length z_top;
    fitwright::length depth; ///< of the full diameter, below the top
    bool through = false;
    fitwright::hole_limits limits;
    post_bores::process process = post_bores::process::as_planned;
    bool probe = false;
    fitwright::material_family material = fitwright::material_family::other;
};

/// A row of the list: its cells by the names below, and the hole that they
/// describe if none is wrong.
struct hole_row {
    csv_record cells;
    std::optional<hole> asked;
    std::vector<fault> faults;
};

/// The list, checked row by row. `columns` are the known ones, each with its
/// place in the header.
class hole_list {
public:
    std::vector<std::string> header;
    std::vector<hole_row> rows;

    /// What the row has in one of the columns of `known_columns`; empty in a
    /// column the list lacks.
    [[nodiscard]] const csv_cell& cell(const hole_row& row, std::string_view column) const;
    [[nodiscard]] const std::string& text(const hole_row& row, std::string_view column) const {
        return cell(row, column).text;
    }
    /// The columns that only the list's owner knows, by their place in the
    /// header.
    [[nodiscard]] std::vector<std::size_t> unknown_columns() const;
};

/// Reads a list of holes: a header, then a row a hole. The columns, in any
/// order, letter case, blanks, hyphens and underscores making no difference:
/// tag, x, y, z_top, depth, through, callout, process, material, and note,
/// which may be missing. Numbers are millimetres unless `in` follows. A wrong
/// row keeps its faults; a header that is none, or no CSV, is the only answer.
[[nodiscard]] std::variant<hole_list, fault> read_hole_list(std::string_view text);

} // namespace post_bores

#endif
