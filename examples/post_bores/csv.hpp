#ifndef POST_BORES_CSV_HPP
#define POST_BORES_CSV_HPP

#include "job_sheet/document.hpp"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

// CSV by RFC 4180 in UTF-8. Lines may end with LF alone; ours do.

namespace post_bores {

using job_sheet::fault;
using job_sheet::place;

struct csv_cell {
    std::string text;
    place where; ///< of the first character of the text, behind its quotation
                 ///< mark if it has one
    bool quoted = false;

    /// Where the `character`-th character (from 1) of the text stands in the
    /// file.
    [[nodiscard]] place inside(std::size_t character) const;
};

using csv_record = std::vector<csv_cell>;

/// All records, the header with them; or the first place that is no CSV. A byte
/// order mark and empty lines are passed over.
[[nodiscard]] std::variant<std::vector<csv_record>, fault> read_csv(std::string_view text);

/// A record as it is written, its line end with it.
[[nodiscard]] std::string csv_line(const std::vector<std::string>& cells);

} // namespace post_bores

#endif
