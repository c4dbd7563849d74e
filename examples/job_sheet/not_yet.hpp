#ifndef JOB_SHEET_NOT_YET_HPP
#define JOB_SHEET_NOT_YET_HPP

#include "answer.hpp"

namespace job_sheet {

/// What this pair needs and the sheet can't compute yet: "temperature states", "leak", … What has
/// become possible is taken out of the one list in not_yet.cpp.
[[nodiscard]] std::vector<std::string> not_yet_computed(const pair_answer& a, const job& j);

} // namespace job_sheet

#endif
