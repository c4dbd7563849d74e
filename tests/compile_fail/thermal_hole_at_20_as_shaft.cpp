// expect: (conversion from .*side::hole.*to .*side::shaft|no viable conversion from .*measured.*to .*side::shaft)
#include <fitwright/material.hpp>
#include <fitwright/thermal/size_at_20.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr auto corrected = size_at_20(measured_hole(50.031_mm, 2_um), materials::aluminium_6082_t6, 34_degC,
                                      {materials::steel_100cr6, 22_degC});

#ifdef CONTROL
constexpr measured_hole part = corrected->part;
#else
constexpr measured_shaft part = corrected->part;
#endif
