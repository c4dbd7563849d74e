#ifndef JOB_SHEET_FACTS_HPP
#define JOB_SHEET_FACTS_HPP

#include "job.hpp"

#include <string>
#include <vector>

// What the job states and the sheet repeats, in words.

namespace job_sheet {

struct fact {
    std::string label;
    std::string text;
};

struct facts {
    std::string title;
    std::vector<fact> lines;
};

/// The fluid, the drawer and the instruments.
[[nodiscard]] std::vector<facts> facts_of(const job& j);

/// "in contact over 28 mm, pressure 0.1 MPa"
[[nodiscard]] std::string given(const pair& p);

/// "0.05 mm to 0.15 mm"; "0.1 mm, 0.2 mm"
[[nodiscard]] std::vector<fact> facts_of(const stack& s);

} // namespace job_sheet

#endif
