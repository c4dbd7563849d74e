// A stainless bush in an aluminium block that works at 80 C: which fit holds it, and does the bench press do?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr thermal_state working[] = {{"working", 80_degC, 80_degC}};

int main() {
    wants w{.nominal = 14_mm,
            .must = want::never_moves | want::presses_in,
            .hole_made_of = materials::aluminium_6082_t6,
            .shaft_made_of = materials::stainless_303,
            .states = working,
            .joint = {.hub_outside = 40_mm,
                      .shaft_bore = 8_mm,
                      .joint_length = 20_mm,
                      .roughness = {.hub = 4_um, .shaft = 4_um},
                      .between = frictions::any_pair,
                      .load = {.along = newtons(50)},
                      .press_at_most = newtons(15'000)}};
    if (const auto found = choose<1>(w)) std::cout << *found << "\n\n";
    w.leads = "14 H7"_hole; // the block is reamed already
    if (const auto found = choose<1>(w)) std::cout << *found << '\n';
}
