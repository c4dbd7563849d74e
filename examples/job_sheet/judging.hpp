#ifndef JOB_SHEET_JUDGING_HPP
#define JOB_SHEET_JUDGING_HPP

#include "facts.hpp"
#include "wanting.hpp"

#include <optional>
#include <string>
#include <vector>

// The sizes of a pair held against its wants, one by one.

namespace job_sheet {

/// A want at one end of the limits.
struct want_end {
    fitwright::holding holds;
    std::optional<double> margin; ///< in the unit that the words name; below zero it misses by so much
    std::string words;            ///< "3.3 um to spare", "misses by 1.8 um", "yields"
};

struct want_row {
    want wanted;
    fitwright::holding holds;            ///< at both ends
    want_end tightest;                   ///< the smallest hole with the largest shaft
    want_end loosest;                    ///< the largest hole with the smallest shaft
    fitwright::clearance_window allows;  ///< at 20 degC, by this want alone; see `bounds_of`
    bool is_a_question_of_yield = false; ///< it holds but for a part that yields when it is pressed
};

struct judging_answer {
    std::string cannot_tell; ///< why nothing could be judged
    std::vector<want_row> rows;
    std::vector<open_want> unjudged;
    std::optional<fitwright::candidate> pair; ///< all that the library says of it

    [[nodiscard]] bool all_hold() const;
};

/// Nothing for a pair without sizes, or one of which nothing is wanted that could be judged by them.
[[nodiscard]] std::optional<judging_answer> judging_of(const pair& p, const std::optional<wanting>& w);

/// What a want bounds: neither, one or both ends. Crossed if it allows nothing.
struct bounds {
    std::optional<fitwright::length> least;
    std::optional<fitwright::length> most;
};
[[nodiscard]] bounds bounds_of(const fitwright::clearance_window& allowed);

/// "5.2 to 17.7 um", "up to 17.7 um", "any", "none": rounded inwards to a tenth.
[[nodiscard]] std::string allowed_in_words(const fitwright::clearance_window& w);

/// A line a want.
[[nodiscard]] std::vector<fact> facts_of(const judging_answer& a);

} // namespace job_sheet

#endif
