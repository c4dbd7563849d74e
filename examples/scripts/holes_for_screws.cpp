// Clearance holes, tapping drills, and what a drawing means that gives no tolerance.
#include <fitwright/general.hpp>
#include <fitwright/io/limits.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    if (const auto hole = clearance_hole(6_mm, clearance_series::medium))
        std::cout << "M6 goes through " << *hole << " (" << hole->origin() << ")\n";
    if (const auto tap = tapping_drill(*coarse_thread(6_mm)))
        std::cout << "M6 is tapped in a hole of " << tap->drill << '\n';
    if (const auto t = general_tolerance(25_mm, general_class::medium))
        std::cout << "25 mm without a tolerance, ISO 2768-m: +/-" << *t << '\n';
    if (const auto none = clearance_hole(6.5_mm, clearance_series::fine); !none)
        std::cout << none.error() << '\n';
}
