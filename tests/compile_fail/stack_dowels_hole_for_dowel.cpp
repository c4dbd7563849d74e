// expect: (could not convert|no (viable|known) conversion|no matching).*(size_limits|fit)
#include <fitwright/callout.hpp>
#include <fitwright/stack.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr two_dowels cover{.distance = 60_mm, .dowels_plus_minus = 20_um, .holes_plus_minus = 20_um,
                           .first = {"6 H7"_hole, "6 h6"_shaft}, .second = {"6 H7"_hole, "6 h6"_shaft}};
#else
constexpr two_dowels cover{.distance = 60_mm, .dowels_plus_minus = 20_um, .holes_plus_minus = 20_um,
                           .first = {"6 h6"_shaft, "6 H7"_hole}, .second = {"6 H7"_hole, "6 h6"_shaft}};
#endif
