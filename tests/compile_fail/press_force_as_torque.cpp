// expect: (could not convert|no (viable|matching|known) (conversion|constructor)|conversion from)
#include <fitwright/press.hpp>

using namespace fitwright;

constexpr auto hundred_newtons = force::from_value(100);
#ifdef CONTROL
constexpr press_load load{.along = hundred_newtons};
#else
constexpr press_load load{.turning = hundred_newtons};
#endif
