// expect: deviations_have_signs_and_the_upper_stands_first
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "14 +0.018/0"_hole;
#else
constexpr auto bore = "14 0.018/0"_hole;
#endif
