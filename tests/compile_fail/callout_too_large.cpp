// expect: the_size_is_within_3150_mm
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "3150 H7"_hole;
#else
constexpr auto bore = "4000 H7"_hole;
#endif
