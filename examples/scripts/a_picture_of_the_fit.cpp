// The slide of the wax doser, drawn: `a_picture_of_the_fit > slide.svg`, then open it in a browser.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>
#include <fitwright/io/picture.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    const zone_picture slide{.of = "8 H7/f7"_fit,
                             .title = "8 H7/f7: the plunger in its bore",
                             .hole = {.name = "doser body", .target = 8.007_mm},
                             .shaft = {.name = "plunger", .reading = measured_shaft{7.98_mm, 2_um}}};
    const auto drawn = draw(slide, std::cout);
    if (!drawn) return std::cerr << drawn.error() << '\n', 1;
}
