// expect: (cannot convert|no viable conversion from) [^a-z]*fitwright::length[^a-z]* to [^a-z]*double
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
std::int64_t n = (12_mm).nanometres();
#else
double size = 12_mm;
#endif
