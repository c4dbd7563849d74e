// expect: (no match for [^a-z]*operator[*]|invalid operands to binary expression).*length
#include <fitwright/length.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
length twice = 12_mm * 2;
#else
auto area = 12_mm * 3_mm;
#endif
