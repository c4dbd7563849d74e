// A half-round bit ground from the rod itself: trial holes tell how much it cuts over.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>
#include <fitwright/tool/trials.hpp> // Student's t, by Boost.Math

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr measured_shaft rod(7.970_mm, 2_um);
    constexpr measured_hole trials[] = {
        {7.979_mm, 1_um}, {7.981_mm, 1_um}, {7.980_mm, 1_um}, {7.982_mm, 1_um}, {7.980_mm, 1_um}};
    const auto cut = overcut_from_trials(trials, rod);
    if (!cut) return std::cout << cut.error() << '\n', 1;
    std::cout << "cuts " << cut->mean << " over, the next hole " << cut->least << " to " << cut->most
              << " (95 %)\n";
    const expected_hole hole = bit_hole(rod, *cut);
    std::cout << "a hole of " << hole.least() << " to " << hole.most() << '\n';
    const flat_rules flat = bit_flat(rod.size()); // two published rules that contradict each other
    std::cout << "leave " << flat.half_and_a_thou.thickness << " at the flat (" << flat.half_and_a_thou.words
              << ")\nor less than " << flat.below_half.thickness << " (" << flat.below_half.words << ")\n";
    if (const auto few = overcut_from_trials(rows(trials, 1), rod); !few) std::cout << few.error() << '\n';
}
