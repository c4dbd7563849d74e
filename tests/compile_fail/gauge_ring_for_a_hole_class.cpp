// expect: no matching function for call to [^a-z]*ring_gauge
#include <fitwright/gauge.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto gauge = ring_gauge(14_mm, shaft_class{position::g, grade::it6});
#else
auto gauge = ring_gauge(14_mm, hole_class{position::g, grade::it6});
#endif
