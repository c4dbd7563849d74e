// expect: the_letter_is_one_of_iso_286_in_one_case
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "12 H7"_hole;
#else
constexpr auto bore = "12 Q7"_hole;
#endif
