#ifndef JOB_SHEET_UNITS_SHOWN_HPP
#define JOB_SHEET_UNITS_SHOWN_HPP

namespace job_sheet {

/// In what sizes, gauges and the clearance at 20 degC are shown. Limits in inches lie within those in
/// millimetres. Plans, heat and what is reckoned stay metric.
enum class units_shown { both, mm, inch };

} // namespace job_sheet

#endif
