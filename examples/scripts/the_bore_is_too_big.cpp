// 12 H7 was wanted, the bore measures 12.080: a shaft for it as it is, or a sleeve.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr measured_hole bore(12.080_mm, 3_um);
    if (const auto shaft = shaft_for(bore, {.least = 6_um, .most = 35_um}))
        std::cout << "a shaft of " << shaft->lower_limit() << " to " << shaft->upper_limit() << '\n';
    if (const auto s = sleeve_for(bore, "12 H7"_hole, {.wall = 1.5_mm}))
        std::cout << "or bore out to " << s->seat << ", press in a sleeve of " << s->outside
                  << ",\nand bring its bore to " << s->inside
                  << " afterwards: pressing closes it. The wall is " << s->wall << ".\n"
                  << in_words(caution::press_force) << '\n';
}
