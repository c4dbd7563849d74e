// expect: no matching (function for call to|constructor for initialization of) [^a-z]*(const )?(fitwright::)?press_seat
#include <fitwright/press.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr press_seat seat(14_mm, diametral_interference(20_um));
#else
constexpr press_seat seat(14_mm, 20_um);
#endif
