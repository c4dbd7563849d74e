// A slide that is right on the bench: what is left of its clearance hot, and where it seizes.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr fit slide = "12 H7/g6"_fit;
    const auto hot =
        at_temperature(slide, {materials::aluminium_6082_t6, 95_degC}, {materials::steel_c45, 60_degC});
    if (!hot) return std::cout << hot.error() << '\n', 1;
    std::cout << "steel in aluminium, 60 in 95 C:\n  " << *hot << '\n';

    std::cout << "aluminium in stainless, both as warm:\n";
    const auto seizes = seizing_temperature(slide, materials::stainless_303, materials::aluminium_6082_t6);
    if (seizes) std::cout << *seizes << '\n';

    std::cout << "the liner drawn p6 and s6, where it lets go:\n";
    for (const fit& liner : {"14 H7/p6"_fit, "14 H7/s6"_fit})
        if (const auto frees =
                freeing_temperature(liner, materials::aluminium_6082_t6, materials::bronze_cusn7zn4pb7))
            std::cout << "  " << frees->heated << '\n';
}
