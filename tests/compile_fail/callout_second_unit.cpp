// expect: the_unit_is_mm_um_nm_in_or_thou_and_given_once
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "12 mm H7"_hole;
#else
constexpr auto bore = "12 mm in H7"_hole;
#endif
