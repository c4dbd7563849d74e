// The size leads, the library follows: a rod as it measures, and the bore that goes with it.
#include <fitwright/choose/mate.hpp>
#include <fitwright/io/limits.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    const measured_shaft rod(7.968_mm, 2_um);
    const clearance_window wanted{.least = 8_um, .most = 20_um};

    std::cout << "rod      " << rod << '\n';
    if (const auto bore = bore_for(rod, wanted))
        std::cout << "bore     " << bore->lower_limit() << " to " << bore->upper_limit() << '\n';
    if (const auto none = bore_for(rod, {.least = 8_um, .most = 11_um}); !none)
        std::cout << "no bore  " << none.error() << '\n';
}
