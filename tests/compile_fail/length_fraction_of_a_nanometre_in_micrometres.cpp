// expect: a_length_literal_has_no_fraction_of_a_nanometre
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 7.125_um;
#else
length size = 7.1255_um;
#endif
