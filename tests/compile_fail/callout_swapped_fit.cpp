// expect: a_fit_is_wanted_a_hole_then_a_shaft
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto slide = "12 H7/g6"_fit;
#else
constexpr auto slide = "12 g6/H7"_fit;
#endif
