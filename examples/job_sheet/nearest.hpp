#ifndef JOB_SHEET_NEAREST_HPP
#define JOB_SHEET_NEAREST_HPP

#include <string>
#include <string_view>
#include <vector>

namespace job_sheet {

/// What to say behind a word that is not one of `known`: "; did you mean 'x'?" if one is near, else
/// "; known here: ...".
[[nodiscard]] std::string hint(std::string_view word, const std::vector<std::string>& known);

} // namespace job_sheet

#endif
