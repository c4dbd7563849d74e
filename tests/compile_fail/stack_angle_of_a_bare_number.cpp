// expect: (could not convert|no (viable|known) conversion).*
#include <fitwright/stack.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
const gear_pair g{.centre_distance = 40_mm, .spread = plus_minus(50_um), .pressure_angle = degrees(20)};
#else
const gear_pair g{.centre_distance = 40_mm, .spread = plus_minus(50_um), .pressure_angle = 20};
#endif
