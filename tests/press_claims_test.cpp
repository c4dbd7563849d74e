#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/press.hpp>
#include <fitwright/io/thermal.hpp>
#include <fitwright/material.hpp>
#include <fitwright/press.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <initializer_list>
#include <limits>
#include <sstream>
#include <string>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

// What a pressed joint's answer may not claim: strength that isn't there, grip above the loosening speed, numbers
// made of what isn't a number; and how its figures print.

namespace {

constexpr joint hub_on_shaft{.seat = {40_mm, {diametral_interference(20_um), diametral_interference(60_um)}},
                             .hub = {.made_of = materials::steel_c45, .outside = 80_mm},
                             .shaft = {.made_of = materials::steel_c45},
                             .joint_length = 50_mm,
                             .between = {.least = 0.1, .most = 0.15}};

template <class Change> joint but(Change change) {
    joint j = hub_on_shaft;
    change(j);
    return j;
}

/// The error of the first that fails of press and its three ways back; all fail or none.
void refuses(const joint& j, error_code code, std::initializer_list<const char*> pieces) {
    const auto looks_at = [&](const auto& r) {
        REQUIRE_FALSE(r);
        CHECK(r.error().code() == code);
        CHECK(r.error().message().find("allowed: ") != text::npos);
        CHECK(r.error().message().size() < error::capacity);
        for (const char* piece : pieces)
            CHECK_MESSAGE(r.error().message().find(piece) != text::npos, std::string(r.error().message()));
    };
    looks_at(press(j));
    looks_at(interference_for_pressure(j, megapascals(10)));
    looks_at(interference_to_hold(j));
    looks_at(greatest_interference(j));
}

const double nan_number = std::numeric_limits<double>::quiet_NaN();
const double inf_number = std::numeric_limits<double>::infinity();

/// As a stream prints it.
template <class Value> std::string printed(const Value& v) {
    std::ostringstream out;
    out << v;
    return out.str();
}

} // namespace

TEST_CASE("an interference that was asked for is held against what the walls bear") {
    // C45 bears 290 MPa (EN, least); the hub's stress is p sqrt(3 + Q^4) / (1 - Q^2) = 2.3332 p.
    const double per_pascal = std::sqrt(3 + 1.0 / 16) / 0.75;
    const double bears = 290e6 / per_pascal;
    const auto doubts_at = [](const joint& j, double pascals) {
        return interference_for_pressure(j, pressure::from_value(pascals))->doubts;
    };
    CHECK_FALSE(doubts_at(hub_on_shaft, 0.99 * bears).contains(press_doubt::more_than_it_bears));
    CHECK(doubts_at(hub_on_shaft, 1.01 * bears).contains(press_doubt::more_than_it_bears));
    CHECK(doubts_at(hub_on_shaft, 1.01 * bears).contains(press_doubt::hub_past_elastic_limit));
    const joint wished = but([](joint& j) { j.safety.against_yield = 1.5; });
    CHECK(doubts_at(wished, 0.99 * bears).contains(press_doubt::below_wished_safety));
    CHECK(doubts_at(wished, 0.99 * bears).contains(press_doubt::more_than_it_bears));
    CHECK_FALSE(doubts_at(wished, 0.99 * bears / 1.5).contains(press_doubt::more_than_it_bears));
    const joint unknown =
        but([](joint& j) { j.hub.made_of.yield_strength = j.hub.made_of.least_yield_strength = {}; });
    CHECK(doubts_at(unknown, 1e6).contains(press_doubt::hub_strength_not_known));
    CHECK_FALSE(doubts_at(unknown, 1e6).contains(press_doubt::more_than_it_bears));

    // What a load takes, cold: the load at which it is as much as the parts bear.
    joint loaded = hub_on_shaft;
    const auto most = greatest_interference(loaded);
    loaded.seat = press_seat(40_mm, most->interference);
    const double grip = press(loaded)->at_20.axial_grip.least.value();
    loaded.load.along = newtons(0.999 * grip);
    CHECK_FALSE(interference_to_hold(loaded)->doubts.contains(press_doubt::more_than_it_bears));
    CHECK(interference_to_hold(loaded)->interference < most->interference);
    loaded.load.along = newtons(1.001 * grip);
    CHECK(interference_to_hold(loaded)->doubts.contains(press_doubt::more_than_it_bears));
    CHECK(interference_to_hold(loaded)->interference > most->interference);

    // And warm, where the shaft grows into the hub: what is enough cold is then too much.
    loaded.load.along = newtons(0.9 * grip);
    CHECK_FALSE(interference_to_hold(loaded)->doubts.contains(press_doubt::hub_past_elastic_limit));
    loaded.shaft.at = 60_degC;
    CHECK(interference_to_hold(loaded)->doubts.contains(press_doubt::hub_past_elastic_limit));
    CHECK(interference_to_hold(loaded)->doubts.contains(press_doubt::more_than_it_bears));
}

TEST_CASE("above the loosening speed of the tightest pair nothing holds") {
    joint j = but([](joint& k) { k.load.along = newtons(1); });
    const double least_gone = (*press(j)->loosens_at).value();
    joint tightest = j;
    tightest.seat = press_seat(40_mm, diametral_interference(60_um));
    const double all_gone = (*press(tightest)->loosens_at).value();
    const auto at = [&](double speed) {
        j.speed = rotational_speed::from_value(speed);
        return *press(j);
    };
    CHECK(at(0.99 * least_gone).in_service.holds == holding::yes);
    CHECK(at(1.01 * least_gone).in_service.holds == holding::cannot_tell);
    CHECK(at(0.99 * all_gone).in_service.holds == holding::cannot_tell);
    CHECK(at(1.01 * all_gone).in_service.holds == holding::no);
    CHECK(at(1.01 * all_gone).holds() == holding::no);
    CHECK(at(1.01 * all_gone).in_service.axial_grip.most.value() == 0);
    CHECK(at(1.01 * all_gone).at_20.holds == holding::yes);
    // The stress is that of standing still, which it does at times.
    CHECK(at(1.01 * all_gone).in_service.joint_pressure.most == press(j)->at_20.joint_pressure.most);
    CHECK(at(1.01 * all_gone).in_service.hub.greatest == press(j)->at_20.hub.greatest);
    // The grip falls with the square of the speed, at most as at least.
    CHECK(at(all_gone / 2).in_service.axial_grip.most.value() ==
          doctest::Approx(0.75 * press(j)->at_20.axial_grip.most.value()));
}

TEST_CASE("a property that is not a number is refused by its name, with what is allowed") {
    const auto code = error_code::property_not_known;
    for (const double bad : {nan_number, inf_number, 0.0, -1.0}) {
        CAPTURE(bad);
        refuses(but([&](joint& j) { j.hub.may_bear = pressure::from_value(bad); }), code,
                {"strength of steel C45", "above 0", "may_bear"});
        refuses(but([&](joint& j) { j.shaft.may_bear = pressure::from_value(bad); }), code, {"strength"});
        refuses(but([&](joint& j) { j.shaft.made_of.least_yield_strength = pressure::from_value(bad); }),
                code, {"strength of steel C45"});
        refuses(but([&](joint& j) { j.hub.made_of.density = mass_density::from_value(bad); }), code,
                {"density", "above 0"});
        refuses(but([&](joint& j) { j.hub.made_of.youngs_modulus = pressure::from_value(bad); }), code,
                {"Young's modulus of steel C45", "above 0"});
    }
    for (const double bad : {nan_number, inf_number, -0.1, 0.51})
        refuses(but([&](joint& j) { j.shaft.made_of.poissons_ratio = bad; }), code,
                {"Poisson's ratio of steel C45", "0 to 0.5"});
    // What lacks is told by its own name, and says nothing of another property.
    const joint weak =
        but([](joint& j) { j.hub.made_of.yield_strength = j.hub.made_of.least_yield_strength = {}; });
    const auto no_strength = greatest_interference(weak).error();
    CHECK(no_strength.message().find("may_bear") != text::npos);
    CHECK(no_strength.message().find("Poisson") == text::npos);
    const auto no_density = press(but([](joint& j) {
                                j.shaft.made_of.density = {};
                                j.speed = revolutions_per_minute(100);
                            })).error();
    CHECK(no_density.message().find("density") != text::npos);
    CHECK(no_density.message().find("Poisson") == text::npos);
}

TEST_CASE("what has no end is refused, or ends with the range of a length") {
    for (const double bad : {inf_number, 1e301, nan_number}) {
        refuses(but([&](joint& j) { j.safety.against_slipping = bad; }), error_code::factor_below_one,
                {"1 (no reserve)"});
        refuses(but([&](joint& j) { j.safety.against_yield = bad; }), error_code::factor_below_one, {});
    }
    const auto rough = [](joint& j) {
        j.roughness = {.hub = 6_um, .shaft = 4_um};
        j.load.along = newtons(100);
    };
    const auto refuses_to_hold = [](const joint& j) {
        const auto r = interference_to_hold(j);
        REQUIRE_FALSE(r);
        CHECK(r.error().code() == error_code::joint_not_possible);
        CHECK(r.error().message().find("larger than the joint, 40 mm; allowed: a smaller load") !=
              text::npos);
    };
    refuses_to_hold(but([&](joint& j) { rough(j), j.between.least = 1e-300; }));
    refuses_to_hold(but([&](joint& j) { rough(j), j.safety.against_slipping = 1e299; }));
    refuses_to_hold(but([&](joint& j) { rough(j), j.load.along = newtons(1e15); }));
    CHECK_FALSE(interference_for_pressure(hub_on_shaft, megapascals(1e9)));
    CHECK_FALSE(interference_for_pressure(hub_on_shaft, megapascals(1e290)));
    CHECK_FALSE(greatest_interference(but([](joint& j) {
        j.hub.may_bear = megapascals(1e290);
        j.shaft.may_bear = megapascals(1e290);
    })));

    // Sizes at the end of the range.
    const length end = length::from_nanometres(std::numeric_limits<std::int64_t>::max());
    const auto geometry = error_code::joint_not_possible;
    refuses(but([&](joint& j) { j.hub.outside = end; }), geometry, {"1 km"});
    refuses(but([&](joint& j) { j.joint_length = end; }), geometry, {"1 km"});
    refuses(but([&](joint& j) { j.roughness.hub = j.roughness.shaft = end; }), geometry, {"Rz"});
    refuses(but([&](joint& j) { j.seat = press_seat(40_mm, diametral_interference(end)); }), geometry,
            {"larger than the joint"});
    refuses(but([&](joint& j) { j.seat = press_seat(40_mm, diametral_interference(-end)); }), geometry,
            {"1 km"});

    // What is written to a tenth of a micrometre has none beyond the end.
    FITWRIGHT_CHECK_BOTH(detail::up_to_a_tenth(given(length::from_nanometres(INT64_MAX))) ==
                         "9223372036854.775807");
    FITWRIGHT_CHECK_BOTH(detail::down_to_a_tenth(given(length::from_nanometres(-INT64_MAX))) ==
                         "-9223372036854.775807");
    FITWRIGHT_CHECK_BOTH(detail::up_to_a_tenth(given(12.00001_mm)) == "12.0001");

    FITWRIGHT_CHECK_BOTH(given(radial_interference(9'000'000'000_mm * 1000)).on_diameter().value ==
                         length::from_nanometres(INT64_MAX));
    FITWRIGHT_CHECK_BOTH(given(radial_interference(-9'000'000'000_mm * 1000)).on_diameter().value ==
                         length::from_nanometres(-INT64_MAX));
}

TEST_CASE("what is brittle may crack; ductile iron yields, and hot-work steel is not glass") {
    joint iron = hub_on_shaft;
    iron.hub = {.made_of = materials::grey_iron_gjl_250, .outside = 80_mm};
    iron.seat = press_seat(40_mm, diametral_interference(100_um));
    const auto grey = press(iron);
    REQUIRE(*grey->at_20.hub.margin() < 1);
    CHECK(grey->doubts.contains(press_doubt::may_crack));
    CHECK(grey->doubts.contains(press_doubt::brittle_hub));
    CHECK_FALSE(grey->doubts.contains(press_doubt::hub_past_elastic_limit));
    CHECK(printed(*grey).find("the hub yields") == std::string::npos);

    iron.hub.made_of = materials::ductile_iron_gjs_400_15; // EN 1563: 250 MPa, elongation 15 %
    const auto ductile = press(iron);
    REQUIRE(*ductile->at_20.hub.margin() < 1);
    CHECK(ductile->doubts.contains(press_doubt::hub_past_elastic_limit));
    CHECK_FALSE(ductile->doubts.contains(press_doubt::may_crack));
    CHECK_FALSE(ductile->doubts.contains(press_doubt::brittle_hub));
    CHECK_FALSE(ductile->take_care.contains(caution::brittle));
    CHECK(*ductile->at_20.hub.may_bear == megapascals(250));
    // Iron of which nothing is said is taken for brittle.
    iron.hub.made_of.condition = "";
    CHECK(press(iron)->doubts.contains(press_doubt::may_crack));

    const auto is_brittle = [](const material& shaft) {
        return press(but([&](joint& j) { j.shaft.made_of = shaft; }))->take_care.contains(caution::brittle);
    };
    CHECK_FALSE(is_brittle(materials::tool_steel_h13)); // 46 to 52 HRC
    CHECK_FALSE(is_brittle(materials::steel_34crnimo6));
    CHECK(is_brittle(materials::tool_steel_o1)); // 60 HRC
    CHECK(is_brittle(materials::steel_100cr6));
    CHECK(is_brittle(materials::tungsten_carbide_6_co));
}

TEST_CASE("a roughness of 0 is lapped; one that isn't stated is not stated") {
    const auto doubts = [](seat_roughness r) {
        return press(but([&](joint& j) { j.roughness = r; }))->doubts;
    };
    CHECK(doubts({}).contains(press_doubt::roughness_not_stated));
    CHECK(doubts({.hub = 4_um}).contains(press_doubt::roughness_not_stated));
    CHECK(doubts({.shaft = 0_um}).contains(press_doubt::roughness_not_stated));
    CHECK_FALSE(doubts({.hub = 0_um, .shaft = 0_um}).contains(press_doubt::roughness_not_stated));
    CHECK_FALSE(doubts({.hub = 6_um, .shaft = 0_um}).contains(press_doubt::roughness_not_stated));
    CHECK(press(but([](joint& j) { j.roughness = {.hub = 6_um, .shaft = 0_um}; }))->smoothing == 4.8_um);
    const quantity<micrometre> rz = quantity<micrometre>::from_value(6);
    CHECK(seat_roughness{.hub = rz}.hub.height() == 6_um);
    CHECK_FALSE(roughness_height().is_stated());
    CHECK(roughness_height() != roughness_height(0_um));
}

TEST_CASE("the press is chosen by no less friction than is usual for choosing one") {
    const auto own = press(hub_on_shaft); // 0.15 at most
    CHECK(own->press_in_force == own->at_20.axial_grip.most);
    CHECK(own->press_capacity.value() == doctest::Approx(own->press_in_force.value() * 0.20 / 0.15));
    const auto rougher = press(but([](joint& j) { j.between = {.least = 0.1, .most = 0.3}; }));
    CHECK(rougher->press_capacity == rougher->press_in_force);
    CHECK(printed(*own).find(" by the friction stated; a press for ") != std::string::npos);
    CHECK(printed(*rougher).find("a press for ") == std::string::npos);
    CHECK(press(but([](joint& j) { j.seat = press_seat(40_mm); }))->press_capacity.value() == 0);
}

TEST_CASE("without a load nothing is asked, and the margin is without end") {
    const auto r = press(hub_on_shaft);
    CHECK(std::isinf(r->at_20.load_margin.least));
    CHECK(std::isinf(r->in_service.load_margin.most));
    CHECK(r->at_20.holds == holding::not_asked);
}

TEST_CASE("figures print with their unit, and the prefix that suits") {
    using force_figure = figure<force>;
    CHECK(printed(force_figure::from_value(28348.6)) == "28.3 kN");
    CHECK(printed(force_figure::from_value(999.4)) == "999 N");
    CHECK(printed(force_figure::from_value(999.6)) == "1 kN");
    CHECK(printed(force_figure::from_value(0)) == "0 N");
    CHECK(printed(force_figure::from_value(-4610)) == "-4.61 kN");
    CHECK(printed(force_figure::from_value(0.0123)) == "12.3 mN");
    CHECK(printed(force_figure::from_value(inf_number)) == "infinite N");
    CHECK(printed(figure<pressure>(megapascals(116.2))) == "116 MPa");
    CHECK(printed(figure<torque>(newton_metres(2.671))) == "2.67 N m");
    CHECK(printed(figure<rotational_speed>::from_value(10500)) == "10500 rad/s");
    // A range has one unit for both ends.
    CHECK(printed(range<figure<pressure>>{megapascals(0.05), megapascals(116)}) == "0.05 to 116 MPa");
    CHECK(printed(range<figure<force>>{newtons(0), newtons(12000)}) == "0 to 12 kN");
    CHECK(printed(range<length>{1.9_um, 16.847_um}) == "0.0019 to 0.016847 mm");
    CHECK(printed(range<double>{1.336, 13.81}) == "1.34 to 13.8");
    CHECK(printed(
              range<diametral_interference>{diametral_interference(10_um), diametral_interference(39_um)}) ==
          "0.01 to 0.039 mm on diameter");
    CHECK(printed(materials::steel_c45.youngs_modulus) == "205 GPa");
    CHECK(printed(materials::steel_c45.poissons_ratio) == "0.29");
    CHECK(printed(materials::steel_c45.density) == "7850 kg/m3");
    CHECK(printed(materials::steel_c45.highest_heating) == "300 C");
    CHECK(printed(materials::steel_c45.expansion.to_100_degC) == "11.3 ppm/K");
    CHECK(printed(property<pressure>()) == "not known");
    const auto r = press(hub_on_shaft);
    CHECK(printed(r->at_20).starts_with("interference 20.0 to 60.0 um on diameter"));
    CHECK(printed(*r).find(printed(r->at_20)) != std::string::npos);
    CHECK(printed(r->at_20.hub).find("MPa, margin ") != std::string::npos);
    CHECK(printed(pressure_effect::helps) == std::string(in_words(pressure_effect::helps)));
    FITWRIGHT_CHECK_BOTH(written(given(figure<pressure>(megapascals(116.2)))) == "116 MPa");
}

TEST_CASE("flags go into a range-for, the lowest bit first") {
    constexpr auto count = [](flags<press_doubt> set) {
        int n = 0;
        std::uint32_t last = 0;
        for (const press_doubt d : set) {
            n += static_cast<std::uint32_t>(d) > last ? 1 : 100;
            last = static_cast<std::uint32_t>(d);
        }
        return n;
    };
    FITWRIGHT_CHECK_BOTH(count(given(flags<press_doubt>())) == 0);
    FITWRIGHT_CHECK_BOTH(count(given(press_doubt::creeps | press_doubt::thin_hub)) == 2);
    FITWRIGHT_CHECK_BOTH(count(given(flags(static_cast<press_doubt>(1U << 31)))) == 1);
    CHECK((press_doubt::creeps | press_doubt::thin_hub)
              .contains_any(press_doubt::creeps | press_doubt::may_crack));
    CHECK_FALSE((press_doubt::creeps | press_doubt::thin_hub).contains_any(press_doubt::may_crack));
}
