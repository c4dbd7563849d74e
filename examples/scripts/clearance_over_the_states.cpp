// A wax doser's steel plunger in its bronze liner: the tightest and the loosest moment of its day.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr thermal_state day[] = {{"shed", 5_degC, 5_degC},      {"bench", 20_degC, 20_degC},
                                 {"working", 85_degC, 80_degC}, {"worst steady", 95_degC, 95_degC},
                                 {"warm-up", 95_degC, 40_degC}, {"cool-down", 60_degC, 95_degC}};

int main() {
    constexpr fit plunger = "8 H7/g6"_fit;
    for (const thermal_state& s : day)
        if (const auto hot = at_temperature(plunger, {materials::bronze_cusn7zn4pb7, s.hole},
                                            {materials::steel_c45, s.shaft}))
            std::cout << s.name << ": " << *hot << '\n';
    const auto worst = worst_moments(plunger, materials::bronze_cusn7zn4pb7, materials::steel_c45, day);
    if (!worst) return std::cout << worst.error() << '\n', 1;
    std::cout << '\n' << *worst << '\n';
}
