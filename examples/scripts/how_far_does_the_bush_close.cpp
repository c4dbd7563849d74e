// A liner is pressed into a block: how far its bore closes, and where the bore goes when it is hot.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    const joint liner{.seat = "14 H7/s6"_fit,
                      .hub = {.made_of = materials::aluminium_6082_t6, .outside = 40_mm, .at = 95_degC},
                      .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 8_mm, .at = 95_degC},
                      .joint_length = 28_mm,
                      .roughness = {.hub = 4_um, .shaft = 3_um},
                      .between = frictions::any_pair};
    const auto pressed = press(liner);
    if (!pressed) return std::cerr << pressed.error() << '\n', 1;
    const auto moves = pressed->bore_moves_by;
    std::cout << "closes by " << pressed->at_20.bore_closes_by << '\n'
              << "from 20 to 95 C it opens by " << moves << '\n'
              << "finished to 7.986 +0.004/0 it is "
              << bore_in_service(between(7.986_mm, 7.990_mm), moves).lower_limit() << " at least, hot\n";
    if (pressed->doubts.contains(press_doubt::shaft_past_elastic_limit))
        std::cout << "mind: " << press_doubt::shaft_past_elastic_limit << '\n';
}
