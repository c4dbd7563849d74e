// expect: (could not convert|no matching function for call to|no known conversion).*(plug_gauge|side::shaft|side::hole)
#include <fitwright/gauge.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto gauge = plug_gauge(hole_limits::between(14_mm, 14.018_mm));
#else
auto gauge = plug_gauge(shaft_limits::between(14_mm, 14.018_mm));
#endif
