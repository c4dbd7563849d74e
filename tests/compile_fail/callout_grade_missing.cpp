// expect: the_grade_is_01_0_or_1_to_18_behind_the_letter
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto wanted = "H7"_hole_class;
#else
constexpr auto wanted = "H"_hole_class;
#endif
