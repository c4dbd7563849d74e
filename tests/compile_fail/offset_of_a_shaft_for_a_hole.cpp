// expect: no matching function for call to [^a-z]*divisions_to_go
#include <fitwright/tool/offset.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr hole_limits bore = between(14_mm, 14.018_mm);

#ifdef CONTROL
auto move = divisions_to_go(measured_hole(13.9_mm, 2_um), bore, on_radius(0.01_mm));
#else
auto move = divisions_to_go(measured_shaft(13.9_mm, 2_um), bore, on_radius(0.01_mm));
#endif
