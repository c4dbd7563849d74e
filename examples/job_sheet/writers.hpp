#ifndef JOB_SHEET_WRITERS_HPP
#define JOB_SHEET_WRITERS_HPP

#include "answer.hpp"
#include "text_lines.hpp"
#include "units_shown.hpp"

#include <string>

// The sheet in each of its formats. The same sheet gives the same bytes.

namespace job_sheet {

/// For the bench: at most 100 columns.
[[nodiscard]] std::string text_sheet(const sheet& s, lettering l, units_shown units);
/// For the wall: one HTML page with its pictures inside, for a screen, a telephone or A4.
[[nodiscard]] std::string html_sheet(const sheet& s, units_shown units);
/// For a spreadsheet: a row for each part of each pair.
[[nodiscard]] std::string csv_sheet(const sheet& s);
/// For programs: lengths as whole nanometres and as text.
[[nodiscard]] std::string json_sheet(const sheet& s);

} // namespace job_sheet

#endif
