// expect: (could not convert|cannot convert|no (viable|known|matching)|could not be converted)
#include <fitwright/press.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr seat_roughness rz{.hub = 6_um, .shaft = 0_um};
#else
constexpr seat_roughness rz{.hub = 6, .shaft = 0};
#endif
