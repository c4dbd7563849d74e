// A wax doser's plunger, 8 H7/f7, pushes hot wax at 2 bar: what leaks past it, as drawn and hot.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr auto pair = "8 H7/f7"_fit;
    const auto hot =
        at_temperature(pair, {materials::bronze_cusn7zn4pb7, 90_degC}, {materials::stainless_303, 90_degC});
    gap around{.diameter = 8_mm,
               .clearance = pair,
               .land = 20_mm,
               .pressure_drop = megapascals(0.2),
               .viscosity = millipascal_seconds(4), // wax at 90 C, as its maker says
               .density = kilograms_per_cubic_metre(770)};
    if (const auto leak = leakage(around)) std::cout << "as drawn: " << *leak << '\n';
    if (hot) around.clearance = *hot;
    if (const auto leak = leakage(around)) std::cout << "at 90 C:  " << *leak << '\n';
    const plunger doser{.around = around, .stroke = 30_mm, .under_pressure = seconds(1.5)};
    if (const auto lost = leakage(doser)) std::cout << "a stroke: " << *lost << '\n';
}
