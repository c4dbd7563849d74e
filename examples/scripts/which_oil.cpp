// Which oil for this bearing: the thinnest grade whose film stays above the limit, tightest and loosest.
#include <fitwright/fitwright.hpp>
#include <fitwright/io.hpp>

#include <iostream>

using namespace fitwright;
using namespace fitwright::literals;

int main() {
    journal line_shaft{.diameter = 30_mm,
                       .width = 25_mm,
                       .clearance = "30 H8/f7"_fit,
                       .load = newtons(900),
                       .speed = revolutions_per_minute(250),
                       .oil_in = 25_degC};
    for (const iso_vg grade : {iso_vg::vg22, iso_vg::vg32, iso_vg::vg46, iso_vg::vg68, iso_vg::vg100}) {
        const auto liquid = oil(oil_kind::hydraulic, grade, viscosity_index(95));
        if (!liquid) continue;
        line_shaft.lubricant = *liquid;
        const auto f = film(line_shaft);
        if (!f) continue;
        std::cout << "VG " << static_cast<int>(grade) << "  least film " << f->least_film() << ", limit "
                  << f->limit_film << ": " << f->regime << '\n';
        if (f->regime == film_regime::full_film) return 0;
    }
}
