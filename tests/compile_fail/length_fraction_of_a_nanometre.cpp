// expect: a_length_literal_has_no_fraction_of_a_nanometre
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 12.000001_mm;
#else
length size = 12.0000001_mm;
#endif
