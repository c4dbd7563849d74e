// A bench mill's spindle and the wax doser's crank: does an oil film carry them?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    const auto spindle_oil = oil(oil_kind::hydraulic, iso_vg::vg22, viscosity_index(95));
    journal spindle{.diameter = 25_mm,
                    .width = 25_mm,
                    .clearance = "25 H7/f7"_fit,
                    .load = newtons(300),
                    .speed = revolutions_per_minute(1450),
                    .lubricant = *spindle_oil,
                    .oil_in = 30_degC,
                    .roughness = {.shaft = 2_um, .bore = 3_um}};
    if (const auto f = film(spindle)) std::cout << *f << "\n\n";

    journal crank = spindle; // 8 mm, once a second
    crank.diameter = crank.width = 8_mm;
    crank.clearance = "8 H7/f7"_fit;
    crank.speed = revolutions_per_minute(60);
    if (const auto f = film(crank)) std::cout << *f << '\n';
}
