// expect: a_thread_is_not_a_fit
#include <fitwright/callout.hpp>
using namespace fitwright::literals;
#ifdef CONTROL
constexpr auto bore = "8 H7"_hole;
#else
constexpr auto bore = "M8 H7"_hole;
#endif
