#ifndef JOB_SHEET_PRESSING_HPP
#define JOB_SHEET_PRESSING_HPP

#include "facts.hpp"
#include "job.hpp"
#include <fitwright/press.hpp>
#include <fitwright/thermal.hpp>

#include <optional>
#include <string>
#include <variant>
#include <vector>

// What pressing a pair together does: force, grip, stress, and how far a bush closes.

namespace job_sheet {

/// The joint in one of the job's states.
struct pressed_row {
    std::string state;
    fitwright::pressed_state joint;
    fitwright::range<fitwright::length> bore_moves; ///< the bore, from pressed at 20 degC to here
    std::optional<fitwright::plug_state> plug;      ///< where there is a pressure to hold
};

/// A part where it is stressed most, and when that is.
struct worst_wall {
    fitwright::pressed_wall wall;
    std::string where;
};

/// The bore of the part that is pressed in: what it is to be, and how to come to it.
struct bush_answer {
    std::string wanted_by; ///< the pair whose hole it is; empty if only its nominal size is known
    std::optional<fitwright::bush_bore> way;
    fitwright::length bore; ///< nominal
};

struct pressing_answer {
    std::string cannot_tell; ///< what is missing; the rest is then empty
    std::optional<fitwright::press_result> at_20;
    std::vector<pressed_row> rows; ///< a row a state
    std::optional<bush_answer> bush;
    std::optional<fitwright::shrink_plan> drop_in;
    std::string no_drop_in;
    std::vector<std::string> doubts;
    std::vector<std::string> sources;
    fitwright::cautions take_care;

    /// The row in which the least pressure is least.
    [[nodiscard]] const pressed_row* weakest() const;
    /// At 20 degC or in the state in which the stress is greatest.
    [[nodiscard]] worst_wall hub() const;
    [[nodiscard]] worst_wall shaft() const;
};

/// Nothing for a pair that is not to hold by itself.
[[nodiscard]] std::optional<pressing_answer> pressing_of(const pair& p, const job& j);

/// The joint that a pair makes, without temperatures; or what is missing for it.
[[nodiscard]] std::variant<fitwright::joint, std::string> joint_of(const pair& p, const fitwright::fit& f);

/// The pair in which a bush is pressed into its seat; none if it isn't one.
[[nodiscard]] const pair* seat_of(const part& bush, const job& j);
/// By how much the bush's bore, finished in its seat at 20 degC, moves in a state: it can't grow as it would
/// if it were free. Nothing if that can't be told.
[[nodiscard]] std::optional<fitwright::range<fitwright::length>> bore_moves_in(const pair& seat,
                                                                               const state& s, const job& j);

/// In words: pressure, force, grip, stress, bore, drop-in temperature.
[[nodiscard]] std::vector<fact> facts_of(const pressing_answer& a, const pair& p);

} // namespace job_sheet

#endif
