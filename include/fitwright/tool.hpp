#ifndef FITWRIGHT_TOOL_HPP
#define FITWRIGHT_TOOL_HPP

// Drills, reamers and half-round bits: their sizes, the holes they leave, the stock to leave for them,
// and the way to a hole with the tools of a drawer. Statistics of trial holes are in
// <fitwright/tool/trials.hpp>, which is not cheap to compile.

#include <fitwright/tool/drawer.hpp>
#include <fitwright/tool/drill.hpp>
#include <fitwright/tool/drilled_hole.hpp>
#include <fitwright/tool/expected_hole.hpp>
#include <fitwright/tool/half_round_bit.hpp>
#include <fitwright/tool/hole_plan.hpp>
#include <fitwright/tool/offset.hpp>
#include <fitwright/tool/plan_hole.hpp>
#include <fitwright/tool/reamed_hole.hpp>
#include <fitwright/tool/reamer.hpp>
#include <fitwright/tool/stock.hpp>
#include <fitwright/tool/tool_limits.hpp>

#endif
