// What results on heat and cold read like: never without their doubts.

#include <fitwright/callout.hpp>
#include <fitwright/io/thermal.hpp>
#include <fitwright/material.hpp>

#include <doctest/doctest.h>

#include <sstream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright::materials;

namespace {

template <class Value> std::string printed(const Value& v) {
    std::ostringstream out;
    out << v;
    return out.str();
}

constexpr length nm_of(std::int64_t n) { return length::from_nanometres(n); }

constexpr fit slide = "12 H7/g6"_fit;

} // namespace

TEST_CASE("lengths with a spread are rounded outwards") {
    CHECK(printed(*growth(100_mm, steel_c45, 95_degC)) ==
          "0.084 to 0.0908 mm (0.0848 by the mean coefficient)");
    CHECK(printed(*growth(100_mm, brass_c36000, celsius(-10))) ==
          "-0.0646 to -0.0584 mm (-0.0615 by the mean coefficient); mind: an expansion coefficient is used "
          "beyond its table");
    CHECK(printed(*at_temperature("12 H7"_hole, {steel_c45, 95_degC})) == "12.01 to 12.029 mm");
    CHECK(printed(*size_at_20(measured_hole(50.031_mm, 2_um), aluminium_7075_t6, 34_degC,
                              {steel_100cr6, 22_degC})) ==
          "50.0158 +/-0.0022 mm at 20 C (corrected by -0.0152)");
    const spread_length rounded{nm_of(-1), nm_of(50), nm_of(1), {}, {}, {}};
    CHECK(printed(rounded) == "-0.0001 to 0.0001 mm (0.0001 by the mean coefficient)");
}

TEST_CASE("a fit at temperature, and the worst moments") {
    CHECK(printed(*at_temperature(slide, {aluminium_7075_t6, 95_degC}, {steel_c45, 60_degC})) ==
          "clearance 0.0212 to 0.051 mm (0.0216 to 0.0507 by the mean coefficients): clearance fit");
    CHECK(printed(*at_temperature(slide, {nylon_pa66_dry, 90_degC}, {steel_c45, 20_degC})) ==
          "clearance 0.0732 to 0.1562 mm (0.0732 to 0.1023 by the mean coefficients): clearance fit; mind: a "
          "part is hotter than its material bears; a plastic swells with moisture and creeps as well");
    constexpr thermal_state states[] = {{"bench", 20_degC, 20_degC}, {"hot", 80_degC, 80_degC}};
    CHECK(
        printed(*worst_moments(slide, bronze_cusn7zn4pb7, steel_c45, states)) ==
        "tightest in bench: clearance 0.006 to 0.035 mm (0.006 to 0.035 by the mean coefficients): clearance "
        "fit\nloosest in hot: clearance 0.0102 to 0.04 mm (0.0108 to 0.0399 by the mean coefficients): clearance "
        "fit");
}

TEST_CASE("a common temperature, or why there is none") {
    CHECK(printed(seizing_temperature(slide, stainless_304, aluminium_7075_t6)->heated) ==
          "happens between 85.9 C and 100.7 C (100.7 C by the mean coefficients)");
    CHECK(printed(seizing_temperature(slide, aluminium_7075_t6, stainless_304)->heated) ==
          "does not happen up to the heating limit, 110 C (aluminium 7075-T6)");
    CHECK(printed(seizing_temperature(slide, steel_c45, bronze_cusn7zn4pb7)->cooled) ==
          "does not happen as far as the expansion is known, -40 C (bearing bronze CuSn7Zn4Pb7); mind: an "
          "expansion coefficient is used beyond its table");
    CHECK(printed(seizing_temperature("12 H7/s6"_fit, steel_c45, steel_1018)->heated) ==
          "is so at 20 C already");
    CHECK(printed(seizing_temperature("14 H7/h6"_fit, steel_c45, steel_1018)->heated) ==
          "may happen from 20 C on (20 C by the mean coefficients)");
    CHECK(printed(freeing_temperature("14 H7/p6"_fit, aluminium_7075_t6, bronze_cusn7zn4pb7)->heated) ==
          "happens at 20 C (20 C by the mean coefficients)");
    const std::string both = printed(*seizing_temperature(slide, steel_c45, steel_1018));
    CHECK(both.find("heated: ") == 0);
    CHECK(both.find("\ncooled: ") != std::string::npos);
}

TEST_CASE("a shrink plan tells what to do, the limit, what it leaves out, and the cautions") {
    const auto plan = shrink_temperatures("50 H7/x6"_fit, aluminium_6082_t6, steel_42crmo4);
    CHECK(printed(plan->shaft_at_room) ==
          "shaft at 20 C, hub at 159 C: not possible: hotter than the hub may be");
    const std::string all = printed(*plan);
    for (const char* piece :
         {"chill the shaft in dry ice, heat the hub; shaft at -78.5 C, hub at 120 C: hot enough",
          "leaves 0.05 mm while assembling", "the hub no hotter than 150 C (T6 is aged",
          "not worked out: how long", "mind: an expansion coefficient is uncertain", "Hot parts burn",
          "Cold burns"}) {
        CAPTURE(piece);
        CHECK(all.find(piece) != std::string::npos);
    }
    CHECK(printed(
              shrink_temperatures("14 H7/s6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7)->shaft_in_dry_ice) ==
          "shaft at -78.5 C: can't tell: the expansion is not known so far");
    // Nothing is cut off, even with every doubt and caution.
    shrink_plan worst = *plan;
    for (std::uint32_t bit = 1; bit <= 64; bit <<= 1) worst.doubts |= static_cast<thermal_doubt>(bit);
    worst.take_care |= caution::brittle;
    CHECK(!written(worst).is_cut());
    CHECK(printed(worst).find("Brittle") != std::string::npos);
}

TEST_CASE("a bar between walls") {
    CHECK(printed(*stress_when_restrained({.made_of = steel_c45, .size = 500_mm, .at = 60_degC})) ==
          "92.7 MPa (91.8 to 99.2)");
}

TEST_CASE("into a caller's buffer") {
    char room[200];
    const auto t = print({room, sizeof room}, *growth(100_mm, steel_c45, 95_degC));
    CHECK(*t == "0.084 to 0.0908 mm (0.0848 by the mean coefficient)");
}
