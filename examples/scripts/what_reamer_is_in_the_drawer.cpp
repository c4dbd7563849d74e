// A bore worked out from a rod: does a reamer in the drawer cut it, and what if the bore came out too large?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr drawer_tool drawer[] = {hand_reamer(8_mm, "H7"_hole_class),
                                  hand_reamer(measured_shaft{7.979_mm, 1_um}),
                                  hand_reamer(9_mm, "H7"_hole_class)};

int main() {
    const auto brass = materials::brass_cuzn39pb3;
    const auto bore = bore_for(measured_shaft{7.968_mm, 2_um}, {.least = 8_um, .most = 20_um});
    if (const auto r = reamer_that_does(*bore, drawer, brass))
        std::cout << r->tool.name() << " cuts " << r->hole.least() << " to " << r->hole.most() << '\n';
    if (const auto shelf = sold_reamers_for(*bore, brass); !shelf) std::cout << shelf.error() << '\n';
    if (const auto shelf = sold_reamers_for(between(7.99_mm, 8.02_mm), brass))
        for (const reamer_choice& r : *shelf) std::cout << "off the shelf: " << r.tool.name() << '\n';
    if (const auto none = reamer_that_does("8 F8"_hole, drawer, brass); !none)
        std::cout << none.error() << '\n';
    if (const auto up = next_reamer_up(measured_hole{8.05_mm, 3_um}, drawer, brass))
        std::cout << "too large: next is the " << up->tool.name() << (up->bore_first ? ", bore first" : "")
                  << '\n';
}
