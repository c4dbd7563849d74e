// What the press has to give, and the tightest fit that neither part yields at.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    const joint pulley{.seat = "20 H7/p6"_fit,
                       .hub = {.made_of = materials::grey_iron_gjl_250,
                               .outside = 45_mm,
                               .may_bear = megapascals(125)}, // half its tensile strength: it is brittle
                       .shaft = {.made_of = materials::steel_c45},
                       .joint_length = 25_mm,
                       .roughness = {.hub = 10_um, .shaft = 4_um},
                       .between = friction_for({.hub = material_family::cast_iron,
                                                .shaft = material_family::steel,
                                                .how = joined_by::pressing,
                                                .surface = seat_surface::dry})};
    if (const auto r = press(pulley))
        std::cout << "by the table it goes in with at most " << r->press_in_force
                  << "; to be sure, a press for " << r->press_capacity << "\nhub " << r->at_20.hub << '\n';
    if (const auto most = greatest_interference(pulley)) std::cout << "no more than " << *most << '\n';
}
