// expect: (no known conversion|could not convert|invalid initialization|no viable conversion)
#include <fitwright/callout.hpp>
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

#ifdef CONTROL
constexpr auto reamer = reamer_for("10 H7"_hole);
#else
constexpr auto reamer = reamer_for("10 h7"_shaft);
#endif
