// A plunger of 8 mm that has to slide and must not leak: 10 to 45 um. Which ISO fits keep that?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr clearance_window wanted{.least = 10_um, .most = 45_um};
    std::cout << "any: " << *fits_within<4>(8_mm, wanted) << "\n\n";

    // the reamer is in the drawer, and nobody here grinds
    const fit_options reamed{.hole = "H7"_hole_class, .finest = grade::it6};
    std::cout << "H7 hole: " << *fits_within<4>(8_mm, wanted, reamed) << "\n\n";

    // a window that no preferred fit keeps
    const fit_options preferred{.pairs = pair_choice::preferred_fits};
    std::cout << "12 to 20 um: " << *fits_within<2>(8_mm, {12_um, 20_um}, preferred) << '\n';
}
