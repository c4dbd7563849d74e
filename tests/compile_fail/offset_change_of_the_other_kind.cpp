// expect: (no match for [^a-z]*operator==|invalid operands to binary expression).*across::radius.*across::diameter
#include <fitwright/tool/offset.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr bool same = on_radius(10_um).across_diameter() == on_diameter(20_um).value;
#else
constexpr bool same = on_radius(10_um) == on_diameter(10_um);
#endif
