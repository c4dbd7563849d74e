// expect: no matching function for call to [^a-z]*plan_hole
#include <fitwright/callout.hpp>
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr drawer_tool drawer[] = {twist_drill(9.7_mm), hand_reamer(10_mm, "H7"_hole_class)};

#ifdef CONTROL
constexpr auto plan = plan_hole("10 H7"_hole, drawer, material_family::steel);
#else
constexpr auto plan = plan_hole("10 H7"_hole, drawer, "steel");
#endif
