#ifndef JOB_SHEET_CHECKING_HPP
#define JOB_SHEET_CHECKING_HPP

#include "job.hpp"

#include <optional>
#include <string>
#include <vector>

namespace job_sheet {

/// The plug or the ring to check a part with; both gauges' limits, and the size at which GO is scrap.
struct gauge_sizes {
    fitwright::length go_lower;
    fitwright::length go_upper;
    fitwright::length not_go_lower;
    fitwright::length not_go_upper;
    fitwright::length worn;
    std::string source;
};

struct gauge_answer {
    std::string role; ///< "hole" has plugs, "shaft" rings
    std::optional<gauge_sizes> sizes;
    std::string remark; ///< whose constants were taken; or why there is no gauge, and what to do instead
};

/// What a reading proves.
struct reading_answer {
    std::string role;
    std::string written;
    fitwright::length reading;
    std::string instrument;
    fitwright::length uncertainty; ///< expanded, about 95 %
    fitwright::verdict verdict;
    std::string would_do; ///< where it can't be told: which uncertainty would tell, and an instrument
};

/// For the parts that are made here.
[[nodiscard]] std::vector<gauge_answer> gauges_of(const pair& p);
/// For the readings that the job gives.
[[nodiscard]] std::vector<reading_answer> readings_of(const pair& p);

} // namespace job_sheet

#endif
