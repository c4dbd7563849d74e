// expect: result_holds_no_value
#include <fitwright/callout/literals.hpp>
#include <fitwright/material.hpp>
#include <fitwright/thermal/common_temperature.hpp>

using namespace fitwright;
using namespace fitwright::literals;

// Two parts of one material never seize.
constexpr auto slide = "12 H7/g6"_fit;
constexpr auto seizes = seizing_temperature(slide, materials::steel_c45, materials::steel_c45);

#ifdef CONTROL
constexpr bool never = !seizes->heated.is_possible();
#else
constexpr double never = (*seizes->heated.earliest).value();
#endif
