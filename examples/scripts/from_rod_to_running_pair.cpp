// From a rod that was found to a pair that runs: its bore, the tools for it, the leak, hot, and what to accept.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

constexpr drawer_tool drawer[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                                  boring_head({.from = 6_mm, .upto = 40_mm, .step = 0.002_mm})};
constexpr thermal_state day[] = {{"working", 80_degC, 75_degC}, {"warm-up", 90_degC, 40_degC}};
constexpr instrument micrometer{.resolution = 1_um, .error_limit = 2_um};

int main() {
    const length uncertainty = *expanded_uncertainty(micrometer);
    const measured_shaft rod(7.970_mm, uncertainty);
    const gap barrel{.diameter = 7.97_mm,
                     .land = 24_mm,
                     .pressure_drop = megapascals(0.1),
                     .viscosity = millipascal_seconds(4)};
    const auto found = choose<1>({.nominal = 8_mm,
                                  .must = want::never_seizes | want::holds_oil,
                                  .leads = rod,
                                  .hole_made_of = materials::brass_cuzn39pb3,
                                  .shaft_made_of = materials::stainless_303,
                                  .states = day,
                                  .left_at_least = 5_um,
                                  .leak = leak_budget(barrel, cubic_millimetres_per_second(40)),
                                  .drawer = drawer,
                                  .uncertainty = uncertainty});
    if (!found) return std::cout << found.error() << '\n', 1;
    std::cout << *found << '\n';
    for (const length reading : {7.986_mm, 7.995_mm})
        std::cout << "the bore reads " << reading << ": "
                  << in_words(judge(measured_hole(reading, uncertainty), found->best().hole)) << '\n';
}
