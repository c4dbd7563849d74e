// expect: no matching function for call to [^a-z]*hand_reamer
#include <fitwright/callout.hpp>
#include <fitwright/tool.hpp>

using namespace fitwright;
using namespace fitwright::literals;

// A reamer marked H7 is not H7 in size.
#ifdef CONTROL
constexpr auto reamer = hand_reamer(reamer_for("10 H7"_hole));
#else
constexpr auto reamer = hand_reamer("10 H7"_hole);
#endif
