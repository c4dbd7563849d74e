#ifndef FITWRIGHT_GENERAL_HPP
#define FITWRIGHT_GENERAL_HPP

// What a drawing doesn't say by itself: general tolerances (ISO 2768-1), holes that screws pass through
// (ISO 273, ASME B18.2.8) and holes to be tapped (ISO 2306).

#include <fitwright/general/clearance_hole.hpp>
#include <fitwright/general/general_tolerance.hpp>
#include <fitwright/general/tapping_drill.hpp>

#endif
