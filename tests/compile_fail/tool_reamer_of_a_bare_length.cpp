// expect: no matching function for call to [^a-z]*hand_reamer
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

// Nothing says whether a "10 mm reamer" is 10.000 mm or an H7 reamer of 10.006 to 10.012 mm.
#ifdef CONTROL
constexpr auto reamer = hand_reamer(measured_shaft{10.009_mm, 1_um});
#else
constexpr auto reamer = hand_reamer(10_mm);
#endif
