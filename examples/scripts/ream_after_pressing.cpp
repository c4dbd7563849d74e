// Bushes are pressed into a bracket: bore them to size first, or ream them afterwards?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    joint bush{.seat = "14 H7/r6"_fit,
               .hub = {.made_of = materials::aluminium_356_t6, .outside = 30_mm},
               .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 10_mm},
               .joint_length = 12_mm,
               .roughness = {.hub = 3_um, .shaft = 2_um},
               .between = frictions::any_pair};
    if (const auto drawn = press(bush))
        std::cout << *ream_after_pressing("10 F7"_hole, *drawn, {.stock = 0.1_mm}) << "\n\n";
    // Both seats made and measured, tight but short of yielding: the bore can be finished before pressing.
    bush.seat = fit(measured_hole(14.008_mm, 1_um).limits(), measured_shaft(14.020_mm, 1_um).limits());
    if (const auto measured = press(bush)) std::cout << *ream_after_pressing("10 F7"_hole, *measured) << '\n';
}
