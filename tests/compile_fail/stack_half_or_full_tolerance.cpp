// expect: no matching function for call to .*opens
#include <fitwright/stack.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr chain_link l = opens("housing", 40_mm, plus_minus(50_um));
#else
constexpr chain_link l = opens("housing", 40_mm, 50_um); // half or all of it?
#endif
