#ifndef JOB_SHEET_PICTURES_HPP
#define JOB_SHEET_PICTURES_HPP

#include "answer.hpp"
#include "units_shown.hpp"

#include <string>
#include <vector>

// What of a pair is worth drawing.

namespace job_sheet {

struct drawn {
    std::string svg;
    std::string caption;
};

/// Both tolerance intervals, with their ghosts in the tightest state.
[[nodiscard]] std::vector<drawn> picture_of_sizes(const pair_answer& a, const job& j, units_shown units);
/// The clearance in the states, where a state takes away what there is at 20 degC, or nearly.
[[nodiscard]] std::vector<drawn> picture_of_heat(const pair_answer& a, const job& j, units_shown units);
/// Pressure and closing-in of a bush.
[[nodiscard]] std::vector<drawn> picture_of_pressing(const pair_answer& a, const job& j);
/// How often a transition fit comes out tight.
[[nodiscard]] std::vector<drawn> picture_of_chance(const pair_answer& a, units_shown units);
/// The ladder of a plan with two steps or more before the last.
[[nodiscard]] std::vector<drawn> picture_of_plan(const pair_answer& a, units_shown units);

} // namespace job_sheet

#endif
