// expect: a_number_has_digits_and_one_point_at_most
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "12.5 H7"_hole;
#else
constexpr auto bore = "12,5 H7"_hole;
#endif
