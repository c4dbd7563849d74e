// expect: a_hole_is_wanted_and_has_capital_letters
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "14 H7"_hole;
#else
constexpr auto bore = "14 h7"_hole;
#endif
