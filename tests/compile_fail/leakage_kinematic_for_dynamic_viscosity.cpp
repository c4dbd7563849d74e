// expect: (could not convert|no (viable|known) conversion from) .*quantity
#include <fitwright/running/leakage.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
const gap g{.diameter = 8_mm, .land = 10_mm, .viscosity = millipascal_seconds(32)};
#else
const gap g{.diameter = 8_mm, .land = 10_mm, .viscosity = centistokes(32)};
#endif
