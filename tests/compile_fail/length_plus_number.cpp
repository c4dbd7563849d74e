// expect: (no match for [^a-z]*operator[+]|invalid operands to binary expression).*int
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length more = 12_mm + 3_mm;
#else
length more = 12_mm + 3;
#endif
