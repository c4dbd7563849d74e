// Two trays of measured parts: the most pairs that are good whatever the readings are worth.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr measured_hole bores[] = {{8.012_mm, 1_um}, {8.004_mm, 1_um}, {8.019_mm, 1_um}};
    constexpr measured_shaft pins[] = {
        {8.001_mm, 1_um}, {7.993_mm, 1_um}, {7.999_mm, 1_um}, {8.006_mm, 1_um}};
    const auto pairs = pair_up(bores, pins, {.least = 8_um, .most = 16_um});
    if (!pairs) std::cout << pairs.error() << '\n';
    else
        for (const matched_pair& p : *pairs)
            std::cout << bores[p.hole].size() << " with " << pins[p.shaft].size() << ": clearance "
                      << p.clearance.least << " to " << p.clearance.most << '\n';
}
