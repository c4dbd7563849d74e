// expect: result_holds_no_value
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr length width = limits(12_mm, hole_class{position::t, grade::it7}).has_value() ? 1_mm : 0_mm;
#else
constexpr length width = limits(12_mm, hole_class{position::t, grade::it7})->tolerance();
#endif
