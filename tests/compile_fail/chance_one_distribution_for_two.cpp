// expect: (cannot convert|could not convert|no viable conversion|no matching function|invalid initialization).*(size_distribution|spread|probability)
#include <fitwright/callout.hpp>
#include <fitwright/chance.hpp>

using namespace fitwright;
using namespace fitwright::literals;

constexpr fit dowel = "6 H7/m6"_fit;
constexpr clearance_window loose{.least = 0_um, .most = 10_um};

#ifdef CONTROL
auto share = probability(dowel, loose, spread::both(size_distribution::uniform()));
#else
auto share = probability(dowel, loose, size_distribution::uniform());
#endif
