// From the drawer to the hole: which steps, and to what size.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr drawer_tool drawer[] = {
    twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
    hand_reamer(10_mm, "H7"_hole_class),
    boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm}),
};

int main() {
    for (const hole_limits bore : {"10 H7"_hole, "14 H7"_hole, "14 H5"_hole}) {
        std::cout << bore << '\n';
        const auto plan = plan_hole(bore, drawer, materials::brass_cuzn39pb3);
        if (!plan) std::cout << "  " << plan.error() << '\n';
        else for (const hole_step& s : plan->steps()) {
                std::cout << "  " << in_words(s.operation) << ", " << s.tool.name();
                if (s.most > 0_mm) std::cout << ": " << s.least << " to " << s.most;
                std::cout << (s.decides_size ? ", decides the size\n" : "\n");
            }
    }
}
