// expect: (could not convert|no (viable|known) conversion from|conversion from)
#include <fitwright/press.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr plug_duty duty{.of_fluid = megapascals(0.3), .safety = 2};
#else
constexpr plug_duty duty{.of_fluid = 0.3, .safety = 2};
#endif
