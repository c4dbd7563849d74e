// The reamer for a bore, the drill that goes under it, and the hole that drill leaves.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr tool_limits reamer = reamer_for("10 H7"_hole);
    static_assert(reamer.lower_limit() == 10.006_mm && reamer.upper_limit() == 10.012_mm);
    std::cout << "reamer  " << reamer.lower_limit() << " to " << reamer.upper_limit() << '\n';
    const auto steel = material_family::steel;
    for (const drill_series series : {drill_series::metric, drill_series::letter})
        if (const auto drill = drill_under_reamer(10_mm, series, finishing::hand_reaming, steel))
            std::cout << "drill   " << drill->name() << ", " << drill->diameter << '\n';
        else std::cout << "drill   " << drill.error() << '\n';
    if (const auto hole = drilled_hole(9.7_mm))
        std::cout << "a 9.7 mm drill leaves " << hole->least() << " to " << hole->most() << "\n  "
                  << hole->note() << '\n';
    std::cout << "under 6 mm: " << largest_drill_under(6_mm, drill_series::number)->name() << '\n';
}
