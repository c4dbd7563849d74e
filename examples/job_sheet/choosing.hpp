#ifndef JOB_SHEET_CHOOSING_HPP
#define JOB_SHEET_CHOOSING_HPP

#include "facts.hpp"
#include "wanting.hpp"

#include <optional>
#include <string>
#include <vector>

// What would do all that is wanted of a pair.

namespace job_sheet {

struct choice {
    fitwright::candidate pair;
    std::string hole;       ///< "8 H7", or its limits
    std::string shaft;      ///< the same
    std::string stopped_by; ///< the want that does not hold, and by how much; empty if all do
    std::string tools;      ///< "7.7 mm drill, then 8 H7 hand reamer"; empty without a plan
    std::vector<std::string> against;
};

struct choosing_answer {
    bool decides = false;  ///< the pair has no call-out: the first is what is made
    std::string no_choice; ///< why there is none
    std::optional<fitwright::clearance_window> allowed; ///< by all wants together, at 20 degC
    std::vector<choice> all;                            ///< the best first
    std::vector<std::string> given_up; ///< wants that no clearance gives, left out of the choice
};

/// For a pair without a call-out, what to make; nothing if there is no part left to choose.
[[nodiscard]] std::optional<choosing_answer> choosing_of(std::optional<wanting> w);

/// The sizes that the best choice gives a pair that has none.
void take_sizes(const choosing_answer& from, pair& to);

[[nodiscard]] std::vector<fact> facts_of(const choosing_answer& a);

} // namespace job_sheet

#endif
