// expect: (could not convert|no (viable|known) conversion from).*across::diameter.*across::radius
#include <fitwright/tool/offset.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr radius_offset control{.increment = on_radius(1_um), .largest_change = on_radius(50_um),
                                .sense = offset_sense::larger_makes_larger};
#else
constexpr radius_offset control{.increment = on_diameter(1_um), .largest_change = on_radius(50_um),
                                .sense = offset_sense::larger_makes_larger};
#endif
