// expect: (could not convert .*length.* to .*bearing_clearance|no viable conversion from .*length.* to .*bearing_clearance)
#include <fitwright/running/journal.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
const journal j{.diameter = 25_mm, .width = 20_mm, .clearance = radial_clearance(20_um)};
#else
const length c = 20_um;
const journal j{.diameter = 25_mm, .width = 20_mm, .clearance = c};
#endif
