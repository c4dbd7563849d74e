// expect: (could not convert|no viable conversion|cannot convert|no known conversion).*
#include <fitwright/picture/zone_picture.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
shown_part<side::shaft> plunger{.reading = measured_shaft{11.988_mm, 2_um}};
#else
shown_part<side::shaft> plunger{.reading = measured_hole{11.988_mm, 2_um}};
#endif
