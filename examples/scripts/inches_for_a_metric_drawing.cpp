// A metric hole on an inch drawing: its limits rounded inwards to 0.0001 in, and the size to set a
// boring head to that moves by 0.01 mm on diameter.
#include <fitwright/callout.hpp>
#include <fitwright/grid.hpp>
#include <fitwright/io/limits.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr auto bore = "14 H7"_hole;
    constexpr auto drawn = rounded_inwards(bore, 0.0001_in);
    constexpr auto target = target_on_grid(bore, 0.01_mm);
    constexpr number_format four_decimals{.unit = written_unit::in, .decimals = 4};

    std::cout << "metric   " << bore.lower_limit() << " to " << bore.upper_limit() << '\n';
    if (drawn)
        std::cout << "inches   " << written(drawn->lower_limit(), four_decimals) << " to "
                  << written(drawn->upper_limit(), four_decimals) << " in\n";
    if (target) std::cout << "aim at   " << *target << '\n';
    if (const auto none = rounded_inwards(bore, 0.02_in); !none)
        std::cout << "0.02 in  " << none.error() << '\n';
}
