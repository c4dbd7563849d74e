// The wax doser's plunger: it slides, never seizes, hardly shakes, loses at most 5 % of its stroke. What to make?
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr thermal_state day[] = {{"warm-up", 95_degC, 40_degC}, {"cool-down", 60_degC, 85_degC}};
constexpr drawer_tool drawer[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                                  hand_reamer(8_mm, "H7"_hole_class)};
constexpr gap barrel{
    .diameter = 8_mm, .land = 20_mm, .pressure_drop = megapascals(0.2), .viscosity = millipascal_seconds(4)};

int main() {
    const wants w{.nominal = 8_mm,
                  .must = want::slides_without_shake | want::never_seizes | want::holds_oil,
                  .hole_made_of = materials::bronze_cusn7zn4pb7,
                  .shaft_made_of = materials::steel_c45,
                  .states = day,
                  .left_at_least = 2_um,
                  .shake_at_most = 40_um,
                  .leak = leak_budget(plunger{barrel, 30_mm, seconds(1.5)}, percent{5}),
                  .drawer = drawer};
    if (const auto drawn = held_against(w, "8 H7/f7"_fit)) std::cout << *drawn->stopped_by() << "\n\n";
    if (const auto found = choose<1>(w)) std::cout << *found << '\n';
}
