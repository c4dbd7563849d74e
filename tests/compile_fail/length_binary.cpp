// expect: a_length_is_written_with_digits_and_one_point_at_most
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 5_mm;
#else
length size = 0b101_mm;
#endif
