// expect: (could not convert|no viable conversion|no matching|cannot convert|no known conversion).*
#include <fitwright/picture/zone_picture.hpp>

using namespace fitwright;
using namespace fitwright::literals;

const hole_limits bore(12_mm, {18_um, 0_um});
const shaft_limits plunger(12_mm, {-6_um, -17_um});

#ifdef CONTROL
zone_picture slide{.of = {bore, plunger}};
#else
zone_picture slide{.of = {plunger, bore}};
#endif
