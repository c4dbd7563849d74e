// A plug closes a cross drilling: does it hold the relief valve's pressure, on the bench and hot?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    const joint plug{.seat = "9 H7/s6"_fit,
                     .hub = {.made_of = materials::aluminium_6082_t6, .outside = 21_mm, .at = 95_degC},
                     .shaft = {.made_of = materials::brass_cuzn39pb3, .at = 95_degC},
                     .joint_length = 8_mm,
                     .roughness = {.hub = 4_um, .shaft = 4_um},
                     .between = frictions::any_pair};
    if (const auto r = plug_under_pressure(plug, {.of_fluid = megapascals(0.3), .safety = 2}))
        std::cout << *r << '\n';
}
