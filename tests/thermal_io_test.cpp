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
          "0.083 to 0.0908 mm (0.0848 by the mean coefficient)");
    CHECK(
        printed(*growth(100_mm, bronze_cusn7zn4pb7, celsius(-10))) ==
        "-0.0567 to -0.0513 mm (-0.054 by the mean coefficient); mind: cold figures not known: the mean of 20 "
        "to 100 C is used");
    CHECK(printed(*at_temperature("12 H7"_hole, {steel_c45, 95_degC})) == "12.0099 to 12.029 mm");
    CHECK(printed(*size_at_20(measured_hole(50.031_mm, 2_um), aluminium_7075_t6, 34_degC,
                              {steel_100cr6, 22_degC})) ==
          "50.0158 +/-0.0024 mm at 20 C (corrected by -0.0152)");
    const spread_length rounded{nm_of(-1), nm_of(50), nm_of(1), {}, {}, {}};
    CHECK(printed(rounded) == "-0.0001 to 0.0001 mm (0.0001 by the mean coefficient)");
}

TEST_CASE("a fit at temperature, and the worst moments") {
    CHECK(printed(*at_temperature(slide, {aluminium_7075_t6, 95_degC}, {steel_c45, 60_degC})) ==
          "clearance 0.0208 to 0.0513 mm (0.0216 to 0.0507 by the mean coefficients): clearance fit");
    CHECK(printed(*at_temperature(slide, {nylon_pa66_dry, 90_degC}, {steel_c45, 20_degC})) ==
          "clearance 0.0718 to 0.1562 mm (0.0732 to 0.1023 by the mean coefficients): clearance fit; mind: a "
          "part is hotter than its material bears; a plastic swells with moisture and creeps as well");
    constexpr thermal_state states[] = {{"bench", 20_degC, 20_degC}, {"hot", 80_degC, 80_degC}};
    CHECK(
        printed(*worst_moments(slide, bronze_cusn7zn4pb7, steel_c45, states)) ==
        "tightest in bench: clearance 0.006 to 0.035 mm (0.006 to 0.035 by the mean coefficients): clearance "
        "fit\nloosest in hot: clearance 0.0099 to 0.0403 mm (0.0108 to 0.0399 by the mean coefficients): clearance "
        "fit");
}

TEST_CASE("a common temperature, or why there is none") {
    CHECK(printed(seizing_temperature(slide, stainless_304, aluminium_7075_t6)->heated) ==
          "may happen from 83.6 C on (100.7 C by the mean coefficients)");
    CHECK(printed(seizing_temperature(slide, steel_c45, aluminium_7075_t6)->heated) ==
          "happens between 59.1 C and 66.2 C (61.4 C by the mean coefficients)");
    CHECK(printed(seizing_temperature(slide, aluminium_7075_t6, stainless_304)->heated) ==
          "does not happen up to the heating limit, 110 C (aluminium 7075-T6)");
    CHECK(printed(seizing_temperature(slide, steel_c45, bronze_cusn7zn4pb7)->cooled) ==
          "does not happen as far as the expansion is known, -40 C (bearing bronze CuSn7Zn4Pb7); mind: "
          "cold figures not known: the mean of 20 to 100 C is used");
    CHECK(printed(seizing_temperature("12 H7/s6"_fit, steel_c45, steel_1018)->heated) ==
          "is so at 20 C already");
    CHECK(printed(seizing_temperature("14 H7/h6"_fit, steel_c45, steel_1018)->heated) ==
          "may happen from 20 C on (20 C by the mean coefficients)");
    CHECK(
        printed(freeing_temperature("14 H7/p6"_fit, aluminium_7075_t6, bronze_cusn7zn4pb7)->heated) ==
        "happens at 20 C (20 C by the mean coefficients); mind: by the sizes alone; smoothing of the seat takes "
        "more");
    const std::string both = printed(*seizing_temperature(slide, steel_c45, steel_1018));
    CHECK(both.find("heated: ") == 0);
    CHECK(both.find("\ncooled: ") != std::string::npos);
}

TEST_CASE("a shrink plan tells what to do, the limit, what it leaves out, and the cautions") {
    const auto plan = shrink_temperatures("50 H7/x6"_fit, aluminium_6082_t6, steel_42crmo4);
    CHECK(printed(plan->shaft_at_room) ==
          "shaft at 20 C, hub at 161 C: not possible: hotter than the hub may be");
    const std::string all = printed(*plan);
    for (const char* piece :
         {"chill the shaft in dry ice, heat the hub; shaft at -72 C, hub at 123 C: hot enough",
          "leaves 0.05 mm while assembling", "the hub no hotter than 150 C (T6 is aged",
          "not worked out: how long", "mind: an expansion coefficient is uncertain", "Hot parts burn",
          "Cold burns"}) {
        CAPTURE(piece);
        CHECK(all.find(piece) != std::string::npos);
    }
    CHECK(printed(
              shrink_temperatures("14 H7/s6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7)->shaft_in_dry_ice) ==
          "shaft at -72 C: can't tell: the expansion is not known so far");
    // Nothing is cut off, even with every doubt and caution.
    shrink_plan worst = *plan;
    for (std::uint32_t bit = 1; bit <= 512; bit <<= 1) worst.doubts |= static_cast<thermal_doubt>(bit);
    worst.take_care |= caution::brittle;
    CHECK(!written(worst).is_cut());
    CHECK(printed(worst).find("Brittle") != std::string::npos);
}

TEST_CASE("nothing is cut silently, however long the names and however many the doubts") {
    const std::string long_name(500, 'x');
    flags<thermal_doubt> all;
    for (std::uint32_t bit = 1; bit <= 512; bit <<= 1) all |= static_cast<thermal_doubt>(bit);
    const auto has_all_doubts = [&](const auto& w) {
        CHECK(!w.is_cut());
        bool has = true;
        all.for_each([&](thermal_doubt d) { has = has && w.view().find(in_words(d)) != text::npos; });
        return has;
    };
    auto g = *growth(100_mm, steel_c45, 95_degC);
    g.doubts = all;
    CHECK(has_all_doubts(written(g)));
    auto hot = *at_temperature(slide, {steel_c45, 95_degC}, {steel_c45, 95_degC});
    hot.doubts = all;
    CHECK(has_all_doubts(written(hot)));

    const thermal_state states[] = {{text(long_name), 20_degC, 20_degC}};
    auto worst = *worst_moments(slide, bronze_cusn7zn4pb7, steel_c45, states);
    worst.doubts = all;
    CHECK(has_all_doubts(written(worst)));
    CHECK(printed(worst).find("xxx...: clearance 0.006") != std::string::npos);
    CHECK(printed(worst).find("\nloosest in xxx") != std::string::npos);

    material mine = aluminium_6082_t6;
    mine.name = text(long_name);
    mine.heating_limit_reason = text(long_name);
    auto frees = *freeing_temperature("14 H7/s6"_fit, mine, steel_c45);
    frees.heated.doubts = all;
    frees.cooled.doubts = all;
    CHECK(has_all_doubts(written(frees.heated)));
    CHECK(has_all_doubts(written(frees)));
    CHECK(printed(frees).find("\ncooled: ") != std::string::npos);

    auto plan = *shrink_temperatures("50 H7/x6"_fit, mine, steel_42crmo4);
    plan.doubts = all;
    plan.take_care = caution::hot | caution::cold | caution::brittle;
    CHECK(has_all_doubts(written(plan)));
    CHECK(printed(plan).find("Brittle") != std::string::npos);

    // An error keeps what is allowed.
    for (const auto& r : {at_temperature(slide, {mine, 400_degC}, {steel_c45, 20_degC}),
                          at_temperature(slide, {steel_c45, 20_degC}, {mine, 400_degC})})
        CHECK(r.error().message().find("or a material of your own that states more") != text::npos);
    const thermal_state hot_state[] = {{text(long_name), 400_degC, 20_degC}};
    const auto refused = worst_moments(slide, mine, steel_c45, hot_state);
    CHECK(refused.error().message().find("or a material of your own that states more") != text::npos);
    mine.expansion.cooled_to_minus_190_degC = ppm_per_kelvin(1e9);
    CHECK(worst_moments(slide, mine, steel_c45, hot_state).error().message().find("for each kelvin") !=
          text::npos);
}

TEST_CASE("a plan that nobody can make says which figure is missing") {
    const material mine{.name = "our steel",
                        .family = material_family::steel,
                        .expansion = {.to_100_degC = ppm_per_kelvin(12)}};
    CHECK(
        printed(*shrink_temperatures("20 H7/u6"_fit, mine, mine))
            .find(
                "can't tell: the hub's expansion above 100 C is not known; state to_200_degC; shaft at 20 C: "
                "can't tell: the expansion is not known so far; leaves 0.02 mm while assembling") == 0);
}

TEST_CASE("a bar between walls") {
    CHECK(printed(*stress_when_restrained({.made_of = steel_c45, .size = 500_mm, .at = 60_degC})) ==
          "92.7 MPa (90.8 to 99.2)");
}

TEST_CASE("into a caller's buffer") {
    char room[200];
    const auto t = print({room, sizeof room}, *growth(100_mm, steel_c45, 95_degC));
    CHECK(*t == "0.083 to 0.0908 mm (0.0848 by the mean coefficient)");
}
