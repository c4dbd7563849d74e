#ifndef JOB_SHEET_READ_JOB_HPP
#define JOB_SHEET_READ_JOB_HPP

#include "job.hpp"

#include <string>
#include <variant>

namespace job_sheet {

/// The job that the text of a job file states, as far as it can be read, and all that is wrong with
/// it; or the one fault that makes it no TOML.
[[nodiscard]] std::variant<job, fault> read_job(std::string text);

} // namespace job_sheet

#endif
