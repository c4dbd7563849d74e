#ifndef JOB_SHEET_RUNNING_HPP
#define JOB_SHEET_RUNNING_HPP

#include "facts.hpp"
#include "heat.hpp"
#include "job.hpp"
#include "leading.hpp"
#include <fitwright/running.hpp>

#include <optional>
#include <string>
#include <vector>

// What runs and what leaks: a plunger that delivers, a journal that turns.

namespace job_sheet {

/// What a plunger loses of each shot, in per cent of what it sweeps.
struct leak_row {
    std::string where; ///< a state, "as 8 H7/f7", a tool of the drawer
    fitwright::clearance_window clearance;
    double least_percent;
    double most_percent;
    bool is_within_budget;
};

struct leak_answer {
    std::string cannot_tell;
    double budget_percent = 0;
    std::vector<leak_row> states;
    std::vector<leak_row> instead;                       ///< at 20 degC
    std::optional<fitwright::length> greatest_clearance; ///< that keeps the budget
    std::vector<std::string> assumptions;
    std::vector<std::string> doubts;
    std::string source;
};

/// The film in one state.
struct film_row {
    std::string state;
    std::optional<fitwright::film_result> film;
    std::string no_film; ///< why there is no answer
};

struct film_answer {
    std::string cannot_tell;
    std::vector<film_row> rows;
    std::string oil;
    std::optional<fitwright::clearance_advice> advice; ///< for a journal without a film
    std::vector<std::string> doubts;
    std::string source;

    /// The state with the thinnest film.
    [[nodiscard]] const film_row* thinnest() const;
};

/// What is missing before a leak can be told; empty if nothing is.
[[nodiscard]] std::string missing_for_a_leak(const pair& p, const job& j);
/// The plunger of a pair for which nothing is missing.
[[nodiscard]] fitwright::plunger plunger_of(const pair& p, const job& j, fitwright::length diameter,
                                            const fitwright::clearance_window& clearance);
/// The oil of a pair that names its grade; nothing for one that the library doesn't take.
[[nodiscard]] std::optional<fitwright::fluid> oil_of(const pair& p);

/// Nothing where no leak matters.
[[nodiscard]] std::optional<leak_answer> leak_of(const pair& p, const std::optional<heat_answer>& heat,
                                                 const std::optional<leading_answer>& leading, const job& j);
/// Nothing where no film is wanted.
[[nodiscard]] std::optional<film_answer> film_of(const pair& p, const std::optional<heat_answer>& heat,
                                                 const job& j);

[[nodiscard]] std::vector<fact> facts_of(const leak_answer& a);
[[nodiscard]] std::vector<fact> facts_of(const film_answer& a);

/// "3.1": to two figures, and whole numbers from 10 on.
[[nodiscard]] std::string percent(double share);

} // namespace job_sheet

#endif
