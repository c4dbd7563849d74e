#ifndef JOB_SHEET_MAKING_HPP
#define JOB_SHEET_MAKING_HPP

#include "job.hpp"

#include <optional>
#include <string>
#include <vector>

namespace job_sheet {

/// How a hole is made with what is in the drawer.
struct making_answer {
    fitwright::tool_limits reamer;            ///< what to buy for it; may not exist
    std::vector<std::string> suiting;         ///< the reamers of the drawer that suit it
    std::string material;                     ///< what the plan holds for, or why nothing is known of it
    bool is_material_known = false;           ///< if not, nothing is said of the tools in the drawer
    std::optional<fitwright::hole_plan> plan; ///< from the job's drawer
    std::string no_plan; ///< why there is none, and what would do; empty without a drawer
};

/// Whether a hole or a shaft is made here to limits.
template <fitwright::side Side> [[nodiscard]] bool is_made_here(const std::optional<role<Side>>& r) {
    return r && r->limits && !r->measured && r->part.supply == supply::made;
}

/// Nothing for a hole that is not made here.
[[nodiscard]] std::optional<making_answer> making_of(const std::optional<role<fitwright::side::hole>>& hole,
                                                     const job& j);

/// A reamer of the drawer, with what it cuts over its size.
[[nodiscard]] fitwright::reamer_size reamer_of(const fitwright::drawer_tool& t);

} // namespace job_sheet

#endif
