#ifndef JOB_SHEET_CAUTIONS_HPP
#define JOB_SHEET_CAUTIONS_HPP

#include "answer.hpp"

#include <string_view>

namespace job_sheet {

/// What can hurt someone, or the work, at this pair.
[[nodiscard]] fitwright::cautions biting(const pair_answer& a, const job& j);

/// The same in words, the job's own with them; and whom to ask where it can hurt someone.
[[nodiscard]] std::vector<std::string> cautions_of(const pair_answer& a);

inline constexpr fitwright::caution all_cautions[] = {
    fitwright::caution::hot,         fitwright::caution::cold,
    fitwright::caution::press_force, fitwright::caution::under_pressure,
    fitwright::caution::rotating,    fitwright::caution::brittle,
    fitwright::caution::chemical};

inline constexpr std::string_view whom_to_ask =
    "Where a failure can hurt someone: follow local codes; have a qualified person check.";

} // namespace job_sheet

#endif
