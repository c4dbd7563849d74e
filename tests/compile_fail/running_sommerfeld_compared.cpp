// expect: (no match for .*operator<|invalid operands to binary expression)
#include <fitwright/running/sommerfeld.hpp>

using namespace fitwright;

#ifdef CONTROL
constexpr bool heavier = sommerfeld_load_number(1) < sommerfeld_load_number(2);
#else
constexpr bool heavier = sommerfeld_load_number(1) < sommerfeld_number(2);
#endif
