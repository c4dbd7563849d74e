// expect: no matching function for call to [^a-z]*bit_hole
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

// A tool is measured over its outside.
#ifdef CONTROL
constexpr auto hole = bit_hole(measured_shaft{7.970_mm, 2_um}, common_bit_overcut);
#else
constexpr auto hole = bit_hole(measured_hole{7.970_mm, 2_um}, common_bit_overcut);
#endif
