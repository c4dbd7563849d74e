// expect: result_holds_no_value
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr length width = *standard_tolerance(12_mm, grade::it7);
#else
constexpr length width = *standard_tolerance(0_mm, grade::it7);
#endif
