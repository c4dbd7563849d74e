#ifndef FITWRIGHT_THERMAL_HPP
#define FITWRIGHT_THERMAL_HPP

#include <fitwright/thermal/common_temperature.hpp>
#include <fitwright/thermal/growth.hpp>
#include <fitwright/thermal/hot_fit.hpp>
#include <fitwright/thermal/low_temperature.hpp>
#include <fitwright/thermal/restrained.hpp>
#include <fitwright/thermal/shrink.hpp>
#include <fitwright/thermal/size_at_20.hpp>
#include <fitwright/thermal/worst_moments.hpp>

#endif
