#ifndef FITWRIGHT_PICTURE_HPP
#define FITWRIGHT_PICTURE_HPP

// Pictures as SVG, drawn into whatever takes pieces of text: files, strings, a caller's buffer. Not part of
// fitwright.hpp.

#include <fitwright/picture/draw_chance.hpp>
#include <fitwright/picture/draw_heat.hpp>
#include <fitwright/picture/draw_plan.hpp>
#include <fitwright/picture/draw_press.hpp>
#include <fitwright/picture/draw_zones.hpp>

#endif
