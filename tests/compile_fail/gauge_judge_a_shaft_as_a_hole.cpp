// expect: no matching function for call to [^a-z]*judge
#include <fitwright/gauge/judge.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr hole_limits bore = between(14_mm, 14.018_mm);

#ifdef CONTROL
auto verdict_on_it = judge(measured_hole(14.009_mm, 2_um), bore);
#else
auto verdict_on_it = judge(measured_shaft(14.009_mm, 2_um), bore);
#endif
