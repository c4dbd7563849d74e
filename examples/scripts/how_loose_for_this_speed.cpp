// A shaft of 12 mm: how loose for its speed, how loose for its use, and which fit comes nearest.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    if (const auto loose = clearance_for_speed(12_mm, revolutions_per_minute(2800))) {
        std::cout << "2800 rpm, oil film: " << *loose << '\n';
        if (const auto f = nearest_running_fit(12_mm, loose->iso_7902, basis::hole))
            std::cout << "  " << *f << '\n';
    }
    for (const running_use use : {running_use::grease_lubricated_pin, running_use::plastic_bush})
        if (const auto wanted = recommended_clearance(use, 12_mm)) {
            std::cout << *wanted << '\n';
            if (const auto f = nearest_running_fit(12_mm, wanted->window, basis::hole))
                std::cout << "  " << *f << '\n';
        }
    if (const auto bush = recommended_bush_fit(bush_kind::sintered_bronze, 12_mm))
        std::cout << "sintered bush: " << *bush << '\n';
}
