// expect: (could not convert [^a-z]*1[^a-z]* from [^a-z]*int[^a-z]* to [^a-z]*(fitwright::)?length|no matching function for call to [^a-z]*inch_fit)
#include <fitwright/inch.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
auto f = inch_fit(inch_fit_class::rc4, 1_in);
#else
auto f = inch_fit(inch_fit_class::rc4, 1);
#endif
