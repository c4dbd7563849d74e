#ifndef JOB_SHEET_READ_DRAWER_HPP
#define JOB_SHEET_READ_DRAWER_HPP

#include "job.hpp"
#include "toml.hpp"

namespace job_sheet {

/// Reads [drawer], each entry into a tool of the library's.
[[nodiscard]] drawer read_drawer(const toml::table& table, document& doc);

} // namespace job_sheet

#endif
