// How loose may a plunger be that is to lose no more than 2 % of its stroke? And which fit keeps that, warm as it runs?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    plunger doser{.around = {.diameter = 8_mm,
                             .land = 20_mm,
                             .pressure_drop = megapascals(0.2),
                             .viscosity = millipascal_seconds(4), // at 80 degC
                             .density = kilograms_per_cubic_metre(770)},
                  .stroke = 30_mm,
                  .under_pressure = stroke_rate{.per_minute = 20}.under_pressure()};
    const auto allowed = greatest_clearance(doser, percent{2});
    if (!allowed) return 1;
    std::cout << *allowed << '\n';
    for (const fit& pair : {"8 H7/f7"_fit, "8 H6/g5"_fit, "8 H5/g4"_fit}) {
        const auto hot =
            at_temperature(pair, {materials::bronze_cusn7zn4pb7, 80_degC}, {materials::steel_c45, 80_degC});
        if (!hot) return 1;
        doser.around.clearance = hot->clearance;
        std::cout << pair << (hot->clearance.most <= allowed->greatest ? "\n  keeps it, " : "\n  does not, ")
                  << leakage(doser)->percent_lost.most << " % at most\n";
    }
}
