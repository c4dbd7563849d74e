// expect: (could not convert .*inch_grade.*grade|no matching function for call to [^a-z]*standard_tolerance)
#include <fitwright/inch.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto t = standard_tolerance(1_in, grade::it7);
#else
auto t = standard_tolerance(1_in, inch_grade::grade7);
#endif
