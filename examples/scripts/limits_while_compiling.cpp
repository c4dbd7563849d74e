// A drawing's call-outs, checked while compiling and exact to the published table.
#include <fitwright/callout.hpp>
#include <fitwright/io/fit.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr auto bore = "12 H7"_hole;
constexpr auto slide = "12 H7/g6"_fit;

static_assert(bore.upper_deviation() == 18_um && bore.lower_limit() == 12_mm);
static_assert(slide.min_clearance() == 6_um && slide.max_clearance() == 35_um);

int main() {
    std::cout << "bore   " << bore.lower_limit() << " to " << bore.upper_limit() << '\n';
    std::cout << "shaft  " << slide.shaft().lower_limit() << " to " << slide.shaft().upper_limit() << '\n';
    std::cout << "fit    " << slide << '\n';
    std::cout << "source " << bore.origin() << '\n';
}
