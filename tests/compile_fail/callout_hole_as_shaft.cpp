// expect: a_shaft_is_wanted_and_has_small_letters
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto pin = "14 g6"_shaft;
#else
constexpr auto pin = "14 G6"_shaft;
#endif
