// expect: (cannot convert|could not convert|no matching function for call to).*(inch_fit|length)
#include <fitwright/inch.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto f = inch_fit(inch_fit_class::rc4, 1_in);
#else
auto f = inch_fit(1_in, inch_fit_class::rc4);
#endif
