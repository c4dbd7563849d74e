#ifndef JOB_SHEET_CAUTIONS_HPP
#define JOB_SHEET_CAUTIONS_HPP

#include "answer.hpp"

namespace job_sheet {

/// What can hurt someone, or the work, at this pair; and whom to ask where it can hurt someone.
[[nodiscard]] std::vector<std::string> cautions_of(const pair_answer& a, const job& j);

} // namespace job_sheet

#endif
