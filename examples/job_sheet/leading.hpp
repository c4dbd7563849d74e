#ifndef JOB_SHEET_LEADING_HPP
#define JOB_SHEET_LEADING_HPP

#include "choosing.hpp"
#include "job.hpp"

#include <optional>
#include <string>
#include <vector>

namespace job_sheet {

/// A hole that this shaft could get, and the clearance it would have in it.
struct hole_tried {
    std::string what; ///< "8 H7/f7", "8 H7 hand reamer"
    fitwright::length lower;
    fitwright::length upper;
    fitwright::clearance_window clearance;
    bool is_sure = true; ///< false where nobody has measured what the tool cuts
};

/// The class that comes nearest to the bore.
struct class_tried {
    hole_tried hole;
    fitwright::length miss; ///< how far it sticks out of the bore
    bool is_preferred = false;
};

/// The answer to a measured shaft that stays as it is.
struct leading_answer {
    fitwright::clearance_window wanted;
    std::optional<fitwright::hole_limits> bore;
    std::string no_bore;              ///< why there is none
    std::string not_the_nominal;      ///< "the shaft is not 8 mm: …"; empty if it may be
    std::vector<class_tried> nearest; ///< at the whole millimetre next to it, and at the shaft's own size
    std::vector<hole_tried> tried;    ///< as the job's alternatives, and by the tools of the drawer
};

/// Nothing for a pair that states no clearance for its shaft to have.
[[nodiscard]] std::optional<leading_answer> leading_of(const pair& p, const job& j);
/// The same where the wants decide: the clearance that they allow and the bore that was chosen. Nothing for a
/// pair whose shaft doesn't lead.
[[nodiscard]] std::optional<leading_answer> leading_of(const pair& p, const choosing_answer& chosen,
                                                       const job& j);

/// "the shaft is not 8 mm": which whole millimetre.
[[nodiscard]] fitwright::length whole_mm_near(fitwright::length l);

} // namespace job_sheet

#endif
