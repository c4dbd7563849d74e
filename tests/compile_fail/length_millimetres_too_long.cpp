// expect: a_length_literal_is_too_long
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 1000000000_mm;
#else
length size = 100000000000_mm;
#endif
