// How loose may a plunger be that is to lose no more than 2 % of its stroke? And which fit keeps that?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    plunger doser{.around = {.diameter = 8_mm,
                             .land = 20_mm,
                             .pressure_drop = megapascals(0.2),
                             .viscosity = millipascal_seconds(4),
                             .density = kilograms_per_cubic_metre(770)},
                  .stroke = 30_mm,
                  .under_pressure = stroke_rate{.per_minute = 20}.under_pressure()};
    const auto allowed = greatest_clearance(doser, percent{2});
    if (!allowed) return 1;
    std::cout << *allowed << '\n';
    for (const fit& pair : {"8 H7/f7"_fit, "8 H6/g5"_fit}) {
        doser.around.clearance = pair;
        std::cout << pair << '\n'
                  << (pair.max_clearance() <= allowed->greatest ? "  keeps it, " : "  does not, ")
                  << leakage(doser)->percent_lost.most << " % at most\n";
    }
}
