#ifndef JOB_SHEET_FIGURES_HPP
#define JOB_SHEET_FIGURES_HPP

#include "answer.hpp"
#include "units_shown.hpp"

#include <cstdint>
#include <string>
#include <string_view>

// Numbers and words as the sheet shows them, in every format alike.

namespace job_sheet {

/// Whole steps at or below, and at or above, a length.
[[nodiscard]] std::int64_t multiples_below(fitwright::length l, fitwright::length step);
[[nodiscard]] std::int64_t multiples_above(fitwright::length l, fitwright::length step);

/// "14.018", "13.9945": exact, three decimals at least.
[[nodiscard]] std::string mm(fitwright::length l, int least_decimals = 3);
/// "18", "-5.5": exact.
[[nodiscard]] std::string um(fitwright::length l);
/// "+18", "0": exact, with its sign.
[[nodiscard]] std::string signed_um(fitwright::length deviation);
/// "0.5512"
[[nodiscard]] std::string inches(fitwright::length l, int decimals);

/// Limits to work to: whole 0.0001 in within those given, or 0.00001 in where that leaves less than two sizes;
/// nothing where that does too.
[[nodiscard]] std::optional<inch_limits> inches_within(fitwright::length lower, fitwright::length upper);
/// "14.000 to 14.018 mm", or "0.5512 to 0.5518 in" where inches alone are shown.
[[nodiscard]] std::string range_in_words(fitwright::length lower, fitwright::length upper,
                                         units_shown units = units_shown::both);

/// Clearance in 0.0001 in: the least rounded down, the greatest up, so that the truth lies between;
/// the mean to the nearest.
struct tenths {
    std::int64_t least;
    std::int64_t mean;
    std::int64_t greatest;
};
[[nodiscard]] tenths in_tenths(const clearance_answer& c);

/// "DIN 1420 (ISO 522) (published)": the document alone; a sheet has no room for its clauses.
[[nodiscard]] std::string in_short(const fitwright::source& s);

/// "aim at 14.01 mm", and a word where that is one of the limits. The size has a target.
[[nodiscard]] std::string aim_in_words(const size_answer& s);
/// "transition fit: comes out loose or tight"
[[nodiscard]] std::string_view kind_in_words(fitwright::fit_kind kind);
/// "line 12, column 4: ..."
[[nodiscard]] std::string in_words(const fault& f);
/// "answered", "look at", "refused"
[[nodiscard]] std::string_view in_words(status s);
/// "good", "look at it", "can't tell", "won't do"
[[nodiscard]] std::string_view in_words(verdict v);
/// "16 pairs: 4 good, 7 to look at, 3 won't do, 2 can't be told"
[[nodiscard]] std::string count_in_words(const sheet& s);
/// The remarks without their verdicts.
[[nodiscard]] std::vector<std::string> texts(const std::vector<remark>& remarks);

} // namespace job_sheet

#endif
