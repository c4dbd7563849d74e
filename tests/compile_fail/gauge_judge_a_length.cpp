// expect: no matching function for call to [^a-z]*judge
#include <fitwright/gauge/judge.hpp>

using namespace fitwright;
using namespace fitwright::literals;

// A bare size says neither which side it is of nor how surely it is known.
#ifdef CONTROL
auto verdict_on_it = judge(measured_hole(14.009_mm, 2_um), between(14_mm, 14.018_mm));
#else
auto verdict_on_it = judge(14.009_mm, between(14_mm, 14.018_mm));
#endif
