// A steel stub that is to drop into its hub: how hot, how cold, and whether the hub bears it.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    constexpr fit stub = "50 H7/x6"_fit;
    for (const material* hub : {&materials::steel_c45, &materials::aluminium_6082_t6}) {
        std::cout << "in " << hub->name << ", " << -stub.max_clearance() << " to " << -stub.min_clearance()
                  << " of interference\n";
        const auto plan = shrink_temperatures(stub, *hub, materials::steel_42crmo4);
        if (!plan) return std::cout << plan.error() << '\n', 1;
        for (const shrink_way& way :
             {plan->shaft_at_room, plan->shaft_in_dry_ice, plan->shaft_in_liquid_nitrogen})
            std::cout << "  " << way << '\n';
        std::cout << *plan << "\n\n";
    }
}
