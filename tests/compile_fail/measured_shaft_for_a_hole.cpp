// expect: (could not convert|no known conversion from).*side::shaft.*side::hole
#include <fitwright/limits.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length size_of(measured_hole part) { return part.size(); }
length size = size_of(measured_hole(8_mm, 2_um));
#else
length size_of(measured_hole part) { return part.size(); }
length size = size_of(measured_shaft(8_mm, 2_um));
#endif
