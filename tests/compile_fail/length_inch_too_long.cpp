// expect: a_length_literal_is_too_long
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 0.3333333333_in;
#else
length size = 0.333333333333_in;
#endif
