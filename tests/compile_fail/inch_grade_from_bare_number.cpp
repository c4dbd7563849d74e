// expect: (cannot convert [^a-z]*int[^a-z]* to [^a-z]*fitwright::inch_grade|no matching function for call to [^a-z]*inch_tolerance)
#include <fitwright/inch.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto t = inch_tolerance(1_in, inch_grade{7});
#else
auto t = inch_tolerance(1_in, 7);
#endif
