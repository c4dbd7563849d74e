// expect: (conversion from .*side::shaft.*to .*side::hole|no viable conversion from .*size_limits.*to .*side::hole)
#include <fitwright/material.hpp>
#include <fitwright/thermal/growth.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr shaft_limits rod = between(11.983_mm, 11.994_mm);
constexpr warm_part warm{materials::steel_c45, 60_degC};

#ifdef CONTROL
constexpr shaft_limits hot = at_temperature(rod, warm)->limits;
#else
constexpr hole_limits hot = at_temperature(rod, warm)->limits;
#endif
