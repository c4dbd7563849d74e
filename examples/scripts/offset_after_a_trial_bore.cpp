// A trial bore is measured: how far to move the offset, or to turn the dial, for the next cut.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>
#include <fitwright/tool/offset.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr auto bore = "14 H7"_hole;
    constexpr measured_hole trial(13.962_mm, 2_um);
    constexpr radius_offset control{.increment = on_radius(1_um),
                                    .largest_change = on_radius(50_um),
                                    .sense = offset_sense::larger_makes_larger};
    if (const auto step = offset_to_recut(trial, bore, control))
        std::cout << "offset by " << step->change.value << " on radius, expect " << step->expected << '\n';
    if (const auto turn = divisions_to_go(trial, bore, on_radius(0.5_thou)))
        std::cout << turn->divisions << " divisions of half a thou on radius, then " << turn->rest.value
                  << " are left\n";
    const measured_hole too_large(14.030_mm, 2_um);
    if (const auto none = offset_to_recut(too_large, bore, control); !none) std::cout << none.error() << '\n';
}
