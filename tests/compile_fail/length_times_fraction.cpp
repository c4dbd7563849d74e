// expect: (no match for [^a-z]*operator[*]|invalid operands to binary expression).*double
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length half = 12_mm / 2;
#else
length half = 12_mm * 0.5;
#endif
