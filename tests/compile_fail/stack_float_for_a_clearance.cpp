// expect: (could not convert|no viable conversion|conversion from|no known conversion)
#include <fitwright/chance.hpp>
#include <fitwright/stack.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr range<length> end_play{50_um, 150_um};
#ifdef CONTROL
constexpr clearance_window w{50_um, 150_um};
constexpr range<length> wanted = w; // a window is a range of lengths
#else
constexpr clearance_window w = end_play; // along the axis: on no diameter
#endif
