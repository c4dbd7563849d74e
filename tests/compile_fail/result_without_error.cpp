// expect: result_holds_no_(error|value)
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr error_code why = standard_tolerance(0_mm, grade::it7).error().code();
#else
constexpr error_code why = standard_tolerance(12_mm, grade::it7).error().code();
#endif
