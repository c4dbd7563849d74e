// expect: a_length_literal_has_no_fraction_of_a_nanometre
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size = 1.0_nm;
#else
length size = 0.5_nm;
#endif
