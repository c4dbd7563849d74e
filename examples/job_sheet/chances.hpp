#ifndef JOB_SHEET_CHANCES_HPP
#define JOB_SHEET_CHANCES_HPP

#include "job.hpp"

#include <optional>
#include <string>
#include <vector>

namespace job_sheet {

/// A class for the one part that goes with the other part as it is.
struct other_class {
    std::string callout;
    fitwright::length least; ///< clearance
    fitwright::length most;
};

/// How often a transition fit comes out tight, and what comes out one way always.
struct chance_answer {
    double tight;                     ///< the share of pairs, sizes spread evenly over their tolerances
    std::string changed;              ///< the part whose class may change; empty if both are as they are
    std::vector<other_class> tighter; ///< never loose, the least interference first
    std::vector<other_class> looser;  ///< never tight, the least clearance first
};

/// Nothing for a fit that is no transition fit.
[[nodiscard]] std::optional<chance_answer> chance_of(const pair& p);

/// "50.0": to the nearest tenth.
[[nodiscard]] std::string percent(const chance_answer& c);

} // namespace job_sheet

#endif
