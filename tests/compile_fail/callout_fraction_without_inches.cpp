// expect: a_fraction_is_in_inches
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "1/4 in H7"_hole;
#else
constexpr auto bore = "1/4 H7"_hole;
#endif
