// expect: (could not convert|no viable conversion|cannot convert|no known conversion|conversion from).*
#include <fitwright/picture/zone_picture.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
shown_part<side::hole> bore{.target = 12.009_mm};
#else
shown_part<side::hole> bore{.target = 12.009};
#endif
