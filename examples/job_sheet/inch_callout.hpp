#ifndef JOB_SHEET_INCH_CALLOUT_HPP
#define JOB_SHEET_INCH_CALLOUT_HPP

#include "job.hpp"

#include <optional>
#include <string_view>

namespace job_sheet {

/// `1/4 in RC4`: a size in inches and a class of ANSI B4.1 (RC1 to RC9, LC1 to LC11, LT1 to LT6, LN1
/// to LN3, FN1 to FN5). Nothing if the text is not that.
[[nodiscard]] std::optional<inch_fit> read_inch_fit(std::string_view text);

} // namespace job_sheet

#endif
