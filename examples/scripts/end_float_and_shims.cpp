// The end float of a spindle in its housing, and the shim that brings it to 0.05 to 0.15 mm.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr chain_link around[] = {opens("housing", 62_mm, {.upper = 100_um, .lower = 50_um}),
                                     closes("bearing", 15_mm, {.upper = 0_um, .lower = -120_um}),
                                     closes("spacer", 31.5_mm, plus_minus(20_um)),
                                     closes("bearing", 15_mm, {.upper = 0_um, .lower = -120_um})};
    constexpr range<length> wanted{50_um, 150_um};
    constexpr shim box[] = {{100_um, 5_um}, {200_um, 5_um}, {300_um, 5_um}, {500_um, 5_um}};
    const auto end = stack(around);
    std::cout << *end << '\n';
    if (const auto for_all = choose_shim(*end, wanted, box); !for_all) std::cout << for_all.error() << '\n';
    const simulation tried{
        .seed = 1, .samples = 100'000, .comes_out = scatter::rectangular, .wanted = {550_um, 750_um}};
    std::cout << *simulate(around, tried) << '\n';
    for (const length size : {0.688_mm, 0.410_mm}) {
        const auto in = choose_shim(measured_float{.size = size, .uncertainty = 10_um}, wanted, box);
        std::cout << "this one, " << size << ": " << *in << '\n';
    }
}
