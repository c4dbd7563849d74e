#ifndef JOB_SHEET_SHOP_WORDS_HPP
#define JOB_SHEET_SHOP_WORDS_HPP

#include "answer.hpp"
#include "facts.hpp"
#include "units_shown.hpp"

#include <string>
#include <vector>

// What to make, with what, and how to check it: in words, for every format that people read.

namespace job_sheet {

/// The answer in a few lines: what to make and with what, how to check it, what the readings prove.
[[nodiscard]] std::vector<fact> brief(const pair_answer& a, units_shown units = units_shown::both);

/// "7.7 mm drill, then bore to 14.010 mm": to the target where there is one, else to the mean.
[[nodiscard]] std::string way_of(const fitwright::hole_plan& plan,
                                 const std::optional<fitwright::length>& target);
/// Of a hole that is made: "13 mm drill, then bore to 14.010 mm", or that there is no plan. Else empty.
[[nodiscard]] std::string way_to_make(const pair_answer& a);
/// "GO plug 14.001 to 14.004 mm, NOT GO 14.0165 to 14.0195 mm", or to measure it.
[[nodiscard]] std::string check_in_words(const gauge_answer& g, units_shown units);
/// "9.996 mm by the micrometer 0-25, good for +/-7.394 um: can't tell"
[[nodiscard]] std::string reading_in_words(const reading_answer& r);

/// "hole 14.000 to 14.018 mm, shaft 14.028 to 14.039 mm": the sizes alone of what is to be made.
[[nodiscard]] std::string to_make(const pair_answer& a, units_shown units = units_shown::both);

/// A step of a hole's plan, as a row of a table.
struct step_row {
    std::string step;
    std::string after;  ///< the sizes that are expected after it
    std::string leaves; ///< the stock that is expected to be left for the next step
    std::string rule;   ///< what the rule wants it to be
};
[[nodiscard]] std::vector<step_row> rows_of(const fitwright::hole_plan& plan);

/// What holds of every plan of the sheet; empty if there is none.
[[nodiscard]] std::vector<std::string> about_plans(const sheet& s);

/// What goes with one plan: where an error of its last step can be put right, and what its size rests on.
[[nodiscard]] std::vector<fact> remarks_on(const fitwright::hole_plan& plan);

/// The reasons behind the brief answer: what leads, reamers, gauges, how often.
[[nodiscard]] std::vector<fact> details(const pair_answer& a);

/// "28 to 47 um: up to 27 um too loose"
[[nodiscard]] std::string clearance_in_words(fitwright::clearance_window has,
                                             fitwright::clearance_window wanted);

/// "; in the state 'worst steady' -23.6 to 5.7 um: lets go": the one state that decides, of a pair drawn
/// otherwise.
[[nodiscard]] std::string decisive_state(const alternative_answer& other);

} // namespace job_sheet

#endif
