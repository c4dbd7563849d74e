// expect: (could not convert|no (viable|matching|known) (conversion|constructor)|conversion from)
#include <fitwright/press.hpp>

using namespace fitwright;

constexpr auto newtons = force::from_value(100);
#ifdef CONTROL
constexpr press_load load{.along = newtons};
#else
constexpr press_load load{.turning = newtons};
#endif
