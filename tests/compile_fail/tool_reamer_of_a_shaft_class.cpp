// expect: no matching function for call to [^a-z]*hand_reamer
#include <fitwright/callout.hpp>
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr auto reamer = hand_reamer(10_mm, "H7"_hole_class);
#else
constexpr auto reamer = hand_reamer(10_mm, "h7"_shaft_class);
#endif
