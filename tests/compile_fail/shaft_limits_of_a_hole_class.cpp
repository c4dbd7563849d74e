// expect: (conversion from .*to non-scalar type|no viable conversion from).*(size_limits<fitwright::side::shaft>|shaft_limits)
#include <fitwright/iso286.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
shaft_limits pin = *limits(12_mm, shaft_class{position::g, grade::it6});
#else
shaft_limits pin = *limits(12_mm, hole_class{position::h, grade::it7});
#endif
