// expect: (could not convert|no (viable|known) conversion).*gap_clearance
#include <fitwright/running/leakage.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr gap g{.diameter = 8_mm, .clearance = diametral_clearance(20_um), .land = 10_mm};
#else
constexpr gap g{.diameter = 8_mm, .clearance = 20_um, .land = 10_mm};
#endif
