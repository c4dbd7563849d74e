// A light-alloy crank on a steel shaft carries a torque: does the press fit hold it, cold and hot?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    joint crank{.seat = "12 H7/s6"_fit,
                .hub = {.made_of = materials::aluminium_6082_t6, .outside = 30_mm, .at = 60_degC},
                .shaft = {.made_of = materials::steel_c45, .at = 60_degC},
                .joint_length = 15_mm,
                .roughness = {.hub = 4_um, .shaft = 3_um},
                .between = friction_for({.hub = material_family::aluminium,
                                         .shaft = material_family::steel,
                                         .how = joined_by::pressing,
                                         .surface = seat_surface::dry}),
                .load = {.turning = newton_metres(2)},
                .safety = {.against_slipping = 2}};
    if (const auto r = press(crank)) std::cout << *r << '\n';
    if (const auto least = interference_to_hold(crank))
        std::cout << "it would take " << least->interference << " to be sure\n";
}
