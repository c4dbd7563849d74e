#ifndef JOB_SHEET_LOOK_AT_HPP
#define JOB_SHEET_LOOK_AT_HPP

#include "answer.hpp"

namespace job_sheet {

/// Where a pair's limits and what it is wanted for do not go together, the worst first.
[[nodiscard]] std::vector<remark> what_to_look_at(const pair_answer& a, const job& j);

} // namespace job_sheet

#endif
