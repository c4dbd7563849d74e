// expect: no matching function for call to [^a-z]*divisions_to_go
#include <fitwright/tool/offset.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr hole_limits bore = between(14_mm, 14.018_mm);
constexpr measured_hole trial(13.9_mm, 2_um);

#ifdef CONTROL
auto move = divisions_to_go(trial, bore, 14.009_mm, on_radius(0.01_mm));
#else
auto move = divisions_to_go(trial, bore, 14.009_mm, 0.01_mm);
#endif
