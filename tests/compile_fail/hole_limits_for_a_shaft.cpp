// expect: (invalid initialization of reference of type.*side::shaft.*from expression.*side::hole|no known conversion from .*(side::hole|hole_limits).* to .*(side::shaft|shaft_limits))
#include <fitwright/limits.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length largest(const shaft_limits& pin) { return pin.upper_limit(); }
length size = largest(between(8_mm, 8.01_mm));
#else
length largest(const shaft_limits& pin) { return pin.upper_limit(); }
length size = largest(hole_limits(8_mm, {.upper = 10_um, .lower = 0_um}));
#endif
