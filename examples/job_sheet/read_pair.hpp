#ifndef JOB_SHEET_READ_PAIR_HPP
#define JOB_SHEET_READ_PAIR_HPP

#include "job.hpp"
#include "toml.hpp"

namespace job_sheet {

/// Reads one [[pair]]; the parts and states it speaks of are those of `so_far`.
[[nodiscard]] pair read_pair(const toml::table& table, const job& so_far, document& doc);

/// What a want is called in job files and on sheets: "stays put".
[[nodiscard]] std::string_view in_words(want w);

} // namespace job_sheet

#endif
