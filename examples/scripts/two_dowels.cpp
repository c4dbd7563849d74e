// A cover on two dowels 60 mm apart, both distances within 0.02 mm: does it always go on?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    two_dowels cover{.distance = 60_mm,
                     .dowels_plus_minus = 20_um,
                     .holes_plus_minus = 20_um,
                     .first = "6 H7/h6"_fit,
                     .second = "6 H7/h6"_fit};
    std::cout << "both holes H7: " << *second_hole_for(cover) << '\n';
    cover.second = {between(6.090_mm, 6.120_mm), "6 h6"_shaft};
    std::cout << "the second 6.09 to 6.12: " << *second_hole_for(cover) << '\n';
    cover.first = "6 H7/m6"_fit;
    if (const auto none = second_hole_for(cover); !none) std::cout << none.error() << '\n';
}
