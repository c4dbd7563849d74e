// What +/-0.02 mm on the distance of two axes makes of backlash: gears, a worm, a screw in its nut.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    gear_pair gears{.centre_distance = 60_mm, .spread = plus_minus(20_um)};
    std::cout << "gears: " << *backlash(gears) << '\n';
    const auto needed = least_backlash({.tooth_module = 1.5_mm, .centre_distance = 60_mm});
    std::cout << "to have: " << needed->normal << " by " << needed->from << '\n';
    gears.thinned = {120_um, 160_um};
    std::cout << "with thinner teeth: " << *backlash(gears) << '\n';

    const worm_pair worm{.wheel_pitch_diameter = 40_mm,
                         .spread = {.upper = 40_um, .lower = 0_um},
                         .lead_angle = degrees(4.76)};
    std::cout << "worm: " << *backlash(worm) << '\n';
    std::cout << "screw: " << *axial_lash(thread_profile::trapezoidal, {50_um, 250_um}) << '\n';
}
