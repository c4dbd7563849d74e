#ifndef JOB_SHEET_PICTURE_HPP
#define JOB_SHEET_PICTURE_HPP

#include "answer.hpp"

#include <string>

namespace job_sheet {

/// The tolerance intervals of a pair as SVG: to scale, with the zero line of the nominal size and the
/// limits written out. Empty if the pair has no limits to draw, or is a stack.
[[nodiscard]] std::string picture(const pair_answer& a);

} // namespace job_sheet

#endif
