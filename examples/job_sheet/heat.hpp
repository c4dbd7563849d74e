#ifndef JOB_SHEET_HEAT_HPP
#define JOB_SHEET_HEAT_HPP

#include "facts.hpp"
#include "job.hpp"
#include <fitwright/thermal.hpp>

#include <optional>
#include <string>
#include <vector>

// A pair in each of the states that the machine gets into.

namespace job_sheet {

/// What is left of the clearance in one state.
struct hot_row {
    std::string state;
    std::string hole_at; ///< as the job writes it: "95 degC"
    std::string shaft_at;
    std::optional<fitwright::clearance_window> clearance; ///< at the worst of the coefficients' spread
    std::string no_answer;                                ///< why there is none
};

/// Where a common temperature does something to the pair: it seizes, lets go, comes apart.
struct happening_answer {
    std::string what; ///< "seizes", "lets go", "comes apart"
    fitwright::common_temperatures at;
};

struct heat_answer {
    std::string reckoned_with; ///< the materials; or why nothing can be reckoned
    bool can_tell = false;
    std::string held_in; ///< the hole's part is a bush, pressed into another
    std::vector<hot_row> rows;
    std::optional<std::size_t> tightest; ///< which of the rows
    std::optional<std::size_t> loosest;
    std::vector<happening_answer> happenings;
    std::vector<std::string> doubts;
    std::vector<std::string> sources;
    fitwright::cautions take_care;
};

/// Nothing where the job has no states, or the pair no two parts with sizes.
[[nodiscard]] std::optional<heat_answer> heat_of(const pair& p, const job& j);
/// The same pair drawn otherwise.
[[nodiscard]] std::optional<heat_answer> heat_of(const pair& p, const fitwright::fit& drawn, const job& j);

/// How warm a part is in a state; nothing if the job doesn't say.
[[nodiscard]] std::optional<stated<fitwright::temperature>> temperature_of(const part& p, const state& s,
                                                                           const job& j);
/// Whether the pair is asked about in a state.
[[nodiscard]] bool counts_for(const pair& p, const state& s);

/// "-12.4 to 3.1", in micrometres to a tenth, outwards: no coefficient is known better.
[[nodiscard]] std::string about_um(const fitwright::clearance_window& w);

/// "seizes: at 143 to 171 C if both parts are equally warm".
[[nodiscard]] std::vector<fact> facts_of(const heat_answer& h);

} // namespace job_sheet

#endif
