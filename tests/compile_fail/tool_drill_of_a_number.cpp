// expect: (no matching function for call to [^a-z]*drilled_hole|no viable conversion|could not convert)
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr auto hole = drilled_hole(9.7_mm);
#else
constexpr auto hole = drilled_hole(9.7);
#endif
