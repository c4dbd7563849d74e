// expect: iso_286_has_no_value_for_this_class_at_this_size
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "30 T7"_hole;
#else
constexpr auto bore = "12 T7"_hole; // T begins above 24 mm
#endif
