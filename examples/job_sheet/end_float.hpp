#ifndef JOB_SHEET_END_FLOAT_HPP
#define JOB_SHEET_END_FLOAT_HPP

#include "facts.hpp"
#include "job.hpp"
#include <fitwright/stack.hpp>

#include <optional>
#include <string>
#include <vector>

// A chain of sizes, and the shims that bring its gap to where it should be.

namespace job_sheet {

/// Shims to put in where the gap is measured to lie between two sizes.
struct shim_row {
    std::string shims; ///< as the job writes them; "none"
    fitwright::range<fitwright::length> measured;
};

struct float_answer {
    std::string cannot_tell;
    fitwright::stack_result chain{};
    fitwright::range<fitwright::length> wanted;
    std::string for_all; ///< the shim that does for every assembly, or why there is none
    bool does_for_all = false;
    std::vector<shim_row> by_measure; ///< which shim by the gap found, the smallest gap first
    std::vector<std::string> doubts;
    std::string source;
};

/// Nothing for a pair without a chain.
[[nodiscard]] std::optional<float_answer> float_of(const pair& p);

[[nodiscard]] std::vector<fact> facts_of(const float_answer& a);

} // namespace job_sheet

#endif
