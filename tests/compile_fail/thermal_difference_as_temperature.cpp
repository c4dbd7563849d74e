// expect: (could not convert|no (viable|known|matching))
#include <fitwright/material.hpp>
#include <fitwright/thermal/part.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr warm_part block{materials::aluminium_6082_t6, 95_degC};
#else
constexpr warm_part block{materials::aluminium_6082_t6, 75_K};
#endif
