// A call-out written in the source leaves a number in the program, and nothing else of the library.
#include <fitwright/callout.hpp>

using namespace fitwright::literals;

constexpr auto slide = "12 H7/g6"_fit;
static_assert(slide.kind() == fitwright::fit_kind::clearance);

long least_clearance_in_nanometres() { return static_cast<long>(slide.min_clearance().nanometres()); }
long greatest_bore_in_nanometres() { return static_cast<long>("25 H7"_hole.upper_limit().nanometres()); }
