// expect: no matching function for call to [^a-z]*limits
#include <fitwright/inch.hpp>

using namespace fitwright;
using namespace fitwright::literals;

// The symbol of an inch fit is not a class of ISO 286: H8 of RC4 is another tolerance than H8.
#ifdef CONTROL
auto bore = limits(1_in, hole_class{position::h, grade::it8});
#else
auto bore = limits(1_in, symbols(inch_fit_class::rc4).hole);
#endif
