#include "support/both.hpp"
#include "support/csv.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/press.hpp>
#include <fitwright/material.hpp>
#include <fitwright/press.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <limits>
#include <sstream>
#include <string>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr material steel{.name = "steel",
                         .family = material_family::steel,
                         .expansion = {.to_100_degC = ppm_per_kelvin(12)},
                         .youngs_modulus = gigapascals(200),
                         .poissons_ratio = 0.3,
                         .density = kilograms_per_cubic_metre(7850),
                         .yield_strength = megapascals(400)};
constexpr material bronze{.name = "bronze",
                          .family = material_family::copper_alloy,
                          .expansion = {.to_100_degC = ppm_per_kelvin(18),
                                        .lowest = ppm_per_kelvin(18),
                                        .highest = ppm_per_kelvin(18)},
                          .youngs_modulus = gigapascals(100),
                          .poissons_ratio = 0.34,
                          .density = kilograms_per_cubic_metre(8900),
                          .yield_strength = megapascals(250)};
constexpr material light{.name = "light metal",
                         .family = material_family::aluminium,
                         .expansion = {.to_100_degC = ppm_per_kelvin(23),
                                       .lowest = ppm_per_kelvin(23),
                                       .highest = ppm_per_kelvin(23)},
                         .youngs_modulus = gigapascals(70),
                         .poissons_ratio = 0.33,
                         .density = kilograms_per_cubic_metre(2700),
                         .yield_strength = megapascals(250)};

/// A steel shaft of 40 mm in a steel hub of 80 mm, 20 to 60 um larger.
constexpr joint plain(range<diametral_interference> i = {diametral_interference(20_um),
                                                         diametral_interference(60_um)}) {
    return {.seat = {40_mm, i},
            .hub = {.made_of = steel, .outside = 80_mm},
            .shaft = {.made_of = steel},
            .joint_length = 50_mm,
            .between = {.least = 0.1, .most = 0.2}};
}
constexpr joint plain(length interference) {
    return plain({diametral_interference(interference), diametral_interference(interference)});
}

constexpr double pressure_of(const joint& j) { return press(j)->at_20.joint_pressure.most.value(); }
constexpr bool is_about(double got, double wanted, double share = 1e-9) {
    const double off = got - wanted;
    const double allowed = share * (wanted < 0 ? -wanted : wanted);
    return off <= allowed && -off <= allowed;
}

/// The parts of a message, all of them.
bool says(const error& e, std::initializer_list<const char*> pieces) {
    for (const char* piece : pieces)
        if (e.message().find(piece) == text::npos) return false;
    return true;
}

} // namespace

TEST_CASE("radial and diametral interference are two types") {
    FITWRIGHT_CHECK_BOTH(given(radial_interference(10_um)).on_diameter() == diametral_interference(20_um));
    FITWRIGHT_CHECK_BOTH(given(diametral_interference(20_um)).on_radius() == radial_interference(10_um));
    CHECK_FALSE(std::is_convertible_v<radial_interference, diametral_interference>);
    CHECK_FALSE(std::is_convertible_v<diametral_interference, radial_interference>);
    CHECK_FALSE(std::is_convertible_v<length, diametral_interference>);
    CHECK_FALSE(std::is_constructible_v<press_seat, length, length>);
    // The same joint, said either way.
    joint on_radius = plain();
    on_radius.seat = {40_mm, {radial_interference(10_um), radial_interference(30_um)}};
    CHECK(press(on_radius)->at_20.joint_pressure == press(plain())->at_20.joint_pressure);
    // Both are echoed.
    CHECK(press(on_radius)->at_20.interference.most == diametral_interference(60_um));
    CHECK(press(on_radius)->at_20.interference.most.on_radius() == radial_interference(30_um));
}

TEST_CASE("a fit is a seat: ISO 286-1:2010, 40 H7/s6 interferes by 18 to 59 um") {
    constexpr press_seat seat = "40 H7/s6"_fit;
    FITWRIGHT_CHECK_BOTH(given(seat).diameter() == 40_mm);
    FITWRIGHT_CHECK_BOTH(
        given(seat).interference() ==
        range<diametral_interference>{diametral_interference(18_um), diametral_interference(59_um)});
    CHECK(press_seat("40 H7/g6"_fit).interference().most < diametral_interference());
}

TEST_CASE("a solid steel shaft in a steel hub: p = E U / (2 d) (1 - (d/D)^2)") {
    // Shigley 9e eq. 7-40, in the form for one metal and a solid shaft.
    constexpr double by_formula = 200e9 * 60e-6 / (2 * 0.040) * (1 - 0.25);
    FITWRIGHT_CHECK_BOTH(is_about(pressure_of(given(plain())), by_formula));
    // Von Mises in the hub p sqrt(3 + Q^4) / (1 - Q^2), in the shaft p.
    const auto r = press(plain());
    REQUIRE(r);
    CHECK(is_about(r->at_20.hub.greatest.value(), by_formula * std::sqrt(3 + 1.0 / 16) / 0.75));
    CHECK(is_about(r->at_20.shaft.greatest.value(), by_formula));
    CHECK(is_about(*r->at_20.hub.margin(), 400e6 / r->at_20.hub.greatest.value()));
    CHECK(r->at_20.hub.greatest.value() > 0.999 * r->at_20.hub.at_joint.von_mises().value());
    CHECK(is_about(r->at_20.hub.greatest.value(), r->at_20.hub.at_joint.von_mises().value()));
    // Through and through the same stress in a solid shaft.
    CHECK(is_about(r->at_20.shaft.at_free_side.hoop.value(), -by_formula));
    CHECK(is_about(r->at_20.shaft.at_free_side.radial.value(), -by_formula));
    CHECK(r->at_20.bore_closes_by == range<length>{});
    CHECK(r->bore_moves_by == range<length>{});
}

TEST_CASE("a bore of next to nothing doubles the stress at it, and changes the pressure by nothing") {
    joint j = plain();
    j.shaft.bore = 1_um;
    CHECK(is_about(pressure_of(j), pressure_of(plain()), 1e-6));
    CHECK(is_about(press(j)->at_20.shaft.greatest.value(), 2 * pressure_of(j), 1e-6));
}

TEST_CASE("a thin ring on a stiff shaft: p = 2 E t U / d^2") {
    // The thin ring's own formula, from hoop strain U/d and p d = 2 t sigma; the shaft hardly gives.
    constexpr material stiff{.name = "stiff", .youngs_modulus = gigapascals(2e6), .poissons_ratio = 0.3};
    joint j = plain(10_um);
    j.shaft.made_of = stiff;
    for (const length wall : {1_mm, 0.1_mm, 0.01_mm}) {
        j.hub.outside = 40_mm + wall * 2;
        const double thickness = wall.in<metre>();
        const double thin = 2 * 200e9 * thickness * 10e-6 / (0.040 * 0.040);
        // Lamé's wall is off by about its own thickness over the radius.
        CHECK(is_about(pressure_of(j), thin, 2 * thickness / 0.020));
        CHECK(press(j)->doubts.contains(press_doubt::thin_hub));
    }
}

TEST_CASE("equal materials: p = E U (D^2-d^2)(d^2-di^2) / (2 d^3 (D^2-di^2))") {
    joint j = plain();
    for (const length bore : {5_mm, 20_mm, 39_mm})
        for (const length outside : {41_mm, 60_mm, 400_mm}) {
            j.shaft.bore = bore;
            j.hub.outside = outside;
            const double d = 0.040;
            const double di = bore.in<metre>();
            const double D = outside.in<metre>();
            const double by_formula =
                200e9 * 60e-6 * (D * D - d * d) * (d * d - di * di) / (2 * d * d * d * (D * D - di * di));
            CHECK(is_about(pressure_of(j), by_formula));
        }
}

TEST_CASE("zero interference: no pressure, no stress, no grip, and it is an answer") {
    for (const length none : {0_mm, -30_um}) {
        const auto r = press(plain(none));
        REQUIRE(r);
        CHECK(r->at_20.joint_pressure.most.value() == 0);
        CHECK(r->at_20.axial_grip.most.value() == 0);
        CHECK(r->at_20.hub.greatest.value() == 0);
        CHECK(std::isinf(*r->at_20.hub.margin()));
        CHECK(r->at_20.hub_grows_by == range<length>{});
        CHECK(r->press_in_force.value() == 0);
        CHECK((*r->loosens_at).value() == 0);
        CHECK(r->at_20.may_let_go());
        CHECK(r->doubts.contains(press_doubt::no_grip_left));
    }
}

TEST_CASE("symmetry: what the seat gives is the interference, and it scales") {
    joint j = plain();
    j.shaft = {.made_of = bronze, .bore = 24_mm};
    const auto r = press(j);
    REQUIRE(r);
    // Twice the interference is twice of everything elastic.
    const auto twice = press([&] {
        joint k = j;
        k.seat = {40_mm, {diametral_interference(40_um), diametral_interference(120_um)}};
        return k;
    }());
    CHECK(is_about(twice->at_20.joint_pressure.most.value(), 2 * r->at_20.joint_pressure.most.value()));
    CHECK(is_about(twice->at_20.shaft.greatest.value(), 2 * r->at_20.shaft.greatest.value()));
    // Twice the size in every direction is the same stress.
    const auto large = press([&] {
        joint k = j;
        k.seat = {80_mm, {diametral_interference(40_um), diametral_interference(120_um)}};
        k.hub.outside = 160_mm;
        k.shaft.bore = 48_mm;
        k.joint_length = 100_mm;
        return k;
    }());
    CHECK(is_about(large->at_20.joint_pressure.most.value(), r->at_20.joint_pressure.most.value()));
    CHECK(is_about(large->press_in_force.value(), 4 * r->press_in_force.value()));
    // The parts meet: from the hoop strain at the joint, hub outwards and shaft inwards make up the interference.
    const auto strain_around = [](const wall_stress& s, const material& m) {
        return (s.hoop.value() - *m.poissons_ratio * s.radial.value()) / (*m.youngs_modulus).value();
    };
    const double hub_opens = 0.040 * strain_around(r->at_20.hub.at_joint, steel);
    const double shaft_closes = -0.040 * strain_around(r->at_20.shaft.at_joint, bronze);
    CHECK(is_about(hub_opens + shaft_closes, 60e-6));
    // And so do the free sides: closing-in and growth from the hoop strain there.
    CHECK(std::abs(0.024 * -strain_around(r->at_20.shaft.at_free_side, bronze) * 1e9 -
                   static_cast<double>(r->at_20.bore_closes_by.most.nanometres())) <= 1);
    CHECK(std::abs(0.080 * strain_around(r->at_20.hub.at_free_side, steel) * 1e9 -
                   static_cast<double>(r->at_20.hub_grows_by.most.nanometres())) <= 1);
}

TEST_CASE("radial equilibrium through the wall") {
    // d(sigma_r)/dr = (sigma_theta - sigma_r) / r, whatever the pressures.
    const ring_wall wall{.inside = 20_mm, .outside = 50_mm};
    const wall_pressures loads[] = {{.inside = megapascals(30)},
                                    {.outside = megapascals(12)},
                                    {.inside = megapascals(5), .outside = megapascals(80)}};
    const length step = 1_um;
    for (const wall_pressures& p : loads) {
        for (length at = 20_mm + step; at < 50_mm; at += 1.5_mm) {
            const auto inner = stress_in_wall(wall, p, at - step);
            const auto here = stress_in_wall(wall, p, at);
            const auto outer = stress_in_wall(wall, p, at + step);
            REQUIRE(here);
            const double slope =
                (outer->radial.value() - inner->radial.value()) / step.in<metre>(); // r is half of at
            const double wanted = (here->hoop.value() - here->radial.value()) / (at.in<metre>() / 2);
            CHECK(std::abs(slope - wanted) <= 1e-5 * std::abs(wanted));
            // Hoop and radial add up to the same all through.
            CHECK(is_about(here->hoop.value() + here->radial.value(),
                           inner->hoop.value() + inner->radial.value(), 1e-6));
        }
        // The pressures stand on the surfaces.
        CHECK(std::abs(stress_in_wall(wall, p, 20_mm)->radial.value() + p.inside.value()) <= 1e-3);
        CHECK(std::abs(stress_in_wall(wall, p, 50_mm)->radial.value() + p.outside.value()) <= 1e-3);
        // Cut in half, the wall holds together: the hoop stress carries what the pressures push apart.
        double carried = 0;
        const int slices = 3000;
        for (int i = 0; i < slices; ++i) {
            const length at = 20_mm + 10_um * i + 5_um;
            carried += stress_in_wall(wall, p, at)->hoop.value() * 2 * 5e-6; // both sides, half of 10 um each
        }
        CHECK(std::abs(carried - (p.inside.value() * 0.020 - p.outside.value() * 0.050)) <= 10);
    }
    constexpr auto bore =
        stress_in_wall({.inside = 20_mm, .outside = 50_mm}, {.inside = megapascals(30)}, 20_mm);
    static_assert(bore->radial.value() < -29.99e6 && bore->hoop.value() > 0);
    CHECK(stress_in_wall({.inside = 20_mm, .outside = 20_mm}, {}, 20_mm).error().code() ==
          error_code::joint_not_possible);
    CHECK(says(stress_in_wall(wall, {}, 51_mm).error(), {"51 mm", "20 to 50 mm"}));
}

TEST_CASE("pressure grows with interference, grip falls with roughness") {
    double last = 0;
    for (length i = 1_um; i < 100_um; i += 7_um) {
        const double p = pressure_of(plain(i));
        CHECK(p > last);
        last = p;
    }
    joint j = plain();
    double grip = press(j)->at_20.axial_grip.least.value();
    const double pressing = press(j)->press_in_force.value();
    const double stress = press(j)->at_20.hub.greatest.value();
    for (length rz = 1_um; rz < 13_um; rz += 1_um) {
        j.roughness = {.hub = rz, .shaft = rz};
        const auto r = press(j);
        CHECK(r->smoothing == rz * 16 / 10); // 0.8 (Rz + Rz), DIN 7190-1
        const bool any = r->smoothing < 20_um;
        CHECK(r->at_20.axial_grip.least.value() < grip);
        CHECK(r->at_20.may_let_go() == !any);
        CHECK(r->doubts.contains(press_doubt::smoothing_takes_all) == !any);
        CHECK_FALSE(r->doubts.contains(press_doubt::roughness_not_stated));
        grip = r->at_20.axial_grip.least.value();
        // Stress and press-in force know nothing of smoothing.
        CHECK(r->press_in_force.value() == pressing);
        CHECK(r->at_20.hub.greatest.value() == stress);
    }
    j.roughness = {.hub = 4_um};
    CHECK(press(j)->doubts.contains(press_doubt::roughness_not_stated));
}

TEST_CASE("grip from the loose end, press-in force from the tight end") {
    joint j = plain();
    j.roughness = {.hub = 3_um, .shaft = 2_um};
    const auto r = press(j);
    REQUIRE(r);
    const double area = 3.14159265358979 * 0.040 * 0.050;
    const double per_metre = 200e9 / (2 * 0.040) * 0.75;
    CHECK(is_about(r->at_20.axial_grip.least.value(), area * per_metre * 16e-6 * 0.1));
    CHECK(is_about(r->press_in_force.value(), area * per_metre * 60e-6 * 0.2));
    CHECK(is_about(r->at_20.turning_grip.least.value(), r->at_20.axial_grip.least.value() * 0.020));
    CHECK(r->at_20.axial_grip.most == r->press_in_force);
    CHECK(r->holds() == holding::not_asked);
}

TEST_CASE("a force along and a torque at once: sqrt(F^2 + (2 T / d)^2)") {
    joint j = plain();
    const auto free = press(j);
    const double least = free->at_20.axial_grip.least.value();
    const double most = free->at_20.axial_grip.most.value();
    const auto with = [&](double along, double turning, double safety) {
        j.load = {.along = force::from_value(along), .turning = torque::from_value(turning)};
        j.safety.against_slipping = safety;
        return *press(j);
    };
    CHECK(with(0.99 * least, 0, 1).holds() == holding::yes);
    CHECK(with(1.01 * least, 0, 1).holds() == holding::cannot_tell);
    CHECK(with(0.99 * most, 0, 1).holds() == holding::cannot_tell);
    CHECK(with(1.01 * most, 0, 1).holds() == holding::no);
    CHECK(with(0, 0.99 * least * 0.020, 1).holds() == holding::yes);
    CHECK(with(0.6 * 0.99 * least, 0.8 * 0.99 * least * 0.020, 1).holds() == holding::yes); // 3, 4, 5
    CHECK(with(0.6 * 1.01 * least, 0.8 * 1.01 * least * 0.020, 1).holds() == holding::cannot_tell);
    CHECK(with(0.99 * least, 0, 2).holds() == holding::cannot_tell);
    CHECK(is_about(with(least / 4, 0, 2).at_20.load_margin.least, 4));
    CHECK(is_about(with(least / 4, 0, 2).at_20.load_margin.most, 4 * most / least));
}

TEST_CASE("hot is as cold when coefficients and temperatures are equal") {
    joint j = plain();
    j.shaft.bore = 20_mm;
    const auto cold = press(j);
    j.hub.at = j.shaft.at = 95_degC;
    const auto hot = press(j);
    REQUIRE(hot);
    for (const auto* s : {&hot->at_20, &hot->in_service}) {
        CHECK(s->interference == cold->at_20.interference);
        CHECK(s->joint_pressure.least.value() == doctest::Approx(cold->at_20.joint_pressure.least.value()));
        CHECK(s->joint_pressure.most.value() == doctest::Approx(cold->at_20.joint_pressure.most.value()));
        CHECK(s->bore_closes_by == cold->at_20.bore_closes_by);
    }
    // The bore is as much larger as it grows freely: 75 K of 12 ppm/K, +/- 5 %, on 20 mm.
    CHECK(hot->bore_moves_by.least == 17.1_um);
    CHECK(hot->bore_moves_by.most == 18.9_um);
    CHECK(hot->in_service.bore.least == hot->at_20.bore.least + 17.1_um);
    CHECK(hot->in_service.bore.most == hot->at_20.bore.most + 18.9_um);
    // And at 20 °C service is the bench.
    CHECK(cold->in_service.bore == cold->at_20.bore);
    CHECK(cold->bore_moves_by == range<length>{});
}

TEST_CASE("unlike metals: U(T) = U20 + d (as (Ts - 20) - ah (Th - 20))") {
    joint j = plain(); // both coefficients without spread
    j.hub = {.made_of = light, .outside = 80_mm, .at = 95_degC};
    j.shaft = {.made_of = bronze, .bore = 20_mm, .at = 75_degC};
    const auto r = press(j);
    REQUIRE(r);
    // 40 mm (18 ppm x 55 - 23 ppm x 75) = -29.4 um
    CHECK(r->in_service.interference.least == diametral_interference(-9.4_um));
    CHECK(r->in_service.interference.most == diametral_interference(30.6_um));
    CHECK(r->in_service.joint_pressure.least.value() == 0);
    CHECK(is_about(r->in_service.joint_pressure.most.value() / r->at_20.joint_pressure.most.value(),
                   30.6 / 60, 1e-6));
    CHECK(r->in_service.may_let_go());
    CHECK_FALSE(r->at_20.may_let_go());
    CHECK(r->doubts.contains(press_doubt::no_grip_left));
    // The bore hot: free growth 19.8 um on 20 mm, less the closing-in that is left.
    const length free = 20_mm + 19.8_um;
    CHECK(r->in_service.bore.least == free - r->in_service.bore_closes_by.most);
    CHECK(r->in_service.bore.most == free); // it has let go
    // It moves the more, the more closing-in is given back.
    CHECK(r->bore_moves_by.least == r->in_service.bore.most - r->at_20.bore.most);
    CHECK(r->bore_moves_by.most == r->in_service.bore.least - r->at_20.bore.least);
}

TEST_CASE("a bore at temperature lies within its range for every coefficient in the spread") {
    material sleeve = bronze;
    sleeve.expansion = {
        .to_100_degC = ppm_per_kelvin(18), .lowest = ppm_per_kelvin(16), .highest = ppm_per_kelvin(20)};
    material block = light;
    block.expansion = {
        .to_100_degC = ppm_per_kelvin(23), .lowest = ppm_per_kelvin(21), .highest = ppm_per_kelvin(25)};
    for (const double at : {95.0, 60.0, -15.0})
        for (const length most : {25_um, 45_um}) {
            joint j = plain({diametral_interference(5_um), diametral_interference(most)});
            j.hub = {.made_of = block, .outside = 60_mm, .at = celsius(at)};
            j.shaft = {.made_of = sleeve, .bore = 34_mm, .at = celsius(at)}; // a thin one: it gives the most
            const auto whole = press(j);
            REQUIRE(whole);
            const double share = at < 0 ? 0.05 : 0; // in the cold every coefficient has a spread of its own
            const auto between_ends = [&](double lowest, double highest, double way) {
                return lowest / (1 - share) + way * (highest / (1 + share) - lowest / (1 - share));
            };
            length least = 1000_mm;
            length greatest = -1000_mm;
            range<length> moves{1000_mm, -1000_mm};
            for (int s = 0; s <= 40; ++s)
                for (int h = 0; h <= 4; ++h)
                    for (const length i : {5_um, 15_um, most}) {
                        joint k = j;
                        const auto fixed = [](material m, double ppm) {
                            m.expansion = {.to_100_degC = ppm_per_kelvin(ppm),
                                           .lowest = ppm_per_kelvin(ppm),
                                           .highest = ppm_per_kelvin(ppm),
                                           .cooled_to_minus_190_degC = ppm_per_kelvin(ppm)};
                            return m;
                        };
                        k.shaft.made_of = fixed(sleeve, between_ends(16, 20, s / 40.0));
                        k.hub.made_of = fixed(block, between_ends(21, 25, h / 4.0));
                        k.seat = press_seat(40_mm, diametral_interference(i));
                        const auto one = press(k);
                        REQUIRE(one);
                        least = std::min(least, one->in_service.bore.least);
                        greatest = std::max(greatest, one->in_service.bore.most);
                        moves.least = std::min(moves.least, one->bore_moves_by.least);
                        moves.most = std::max(moves.most, one->bore_moves_by.most);
                    }
            const auto slack = 0.2_um;
            CHECK(whole->in_service.bore.least <= least + 1_nm);
            CHECK(whole->in_service.bore.most >= greatest - 1_nm);
            CHECK(whole->bore_moves_by.least <= moves.least + 1_nm);
            CHECK(whole->bore_moves_by.most >= moves.most - 1_nm);
            // And it is no wider than it has to be.
            CHECK(whole->in_service.bore.least >= least - slack);
            CHECK(whole->in_service.bore.most <= greatest + slack);
            CHECK(whole->bore_moves_by.least >= moves.least - slack);
            CHECK(whole->bore_moves_by.most <= moves.most + slack);
        }
}

TEST_CASE("loosening by speed") {
    // One metal, solid shaft: n0 = 2/(pi D) sqrt(2 p / ((3+nu)(1-Q^2) rho)), DIN 7190-1 from memory.
    const auto r = press(plain());
    const double p = r->at_20.joint_pressure.least.value();
    const double turns = 2 / (3.14159265358979 * 0.080) * std::sqrt(2 * p / (3.3 * 0.75 * 7850));
    REQUIRE(r->loosens_at);
    CHECK(is_about((*r->loosens_at).value(), turns * 2 * 3.14159265358979));
    // The pressure falls as 1 - (n/n0)^2.
    joint j = plain();
    j.speed = rotational_speed::from_value((*r->loosens_at).value() / 2);
    const auto half = press(j);
    CHECK(is_about(half->in_service.joint_pressure.least.value(), 0.75 * p));
    CHECK(half->in_service.joint_pressure.most == r->at_20.joint_pressure.most); // it stands still at times
    CHECK(half->doubts.contains(press_doubt::stress_of_turning_not_counted));
    CHECK(half->take_care.contains(caution::rotating));
    j.speed = rotational_speed::from_value((*r->loosens_at).value() * 1.0001);
    CHECK(press(j)->in_service.may_let_go());
    CHECK(press(j)->in_service.joint_pressure.least.value() == 0);
    // A light hub on a heavy tube: the tube grows more, and nothing loosens.
    joint odd = plain();
    odd.hub = {.made_of = light, .outside = 41_mm};
    odd.hub.made_of.density = kilograms_per_cubic_metre(500);
    odd.shaft = {.made_of = bronze, .bore = 39_mm};
    CHECK(std::isinf((*press(odd)->loosens_at).value()));
    odd.speed = rotational_speed::from_value(1000);
    CHECK(press(odd)->in_service.joint_pressure.least == press(odd)->at_20.joint_pressure.least);
    CHECK(press(odd)->in_service.joint_pressure.most > press(odd)->at_20.joint_pressure.most);
    // Not known without a density; turning, that is an error.
    odd.shaft.made_of.density = {};
    const auto no_density = press(odd);
    REQUIRE_FALSE(no_density);
    CHECK(no_density.error().code() == error_code::property_not_known);
    CHECK(says(no_density.error(), {"density", "bronze"}));
    odd.speed = {};
    CHECK_FALSE(press(odd)->loosens_at.is_known());
}

TEST_CASE("doubts: what the figures don't cover is said") {
    const auto doubts = [](const joint& j) { return press(j)->doubts; };
    CHECK(doubts(plain()).contains(press_doubt::even_hub_only));
    CHECK(press(plain())->take_care.contains(caution::press_force));
    CHECK_FALSE(doubts(plain()).contains(press_doubt::hub_past_elastic_limit));

    joint tight = plain(200_um);
    CHECK(doubts(tight).contains(press_doubt::hub_past_elastic_limit));
    CHECK_FALSE(doubts(tight).contains(press_doubt::shaft_past_elastic_limit));
    CHECK(*press(tight)->at_20.hub.margin() < 1);
    tight.shaft.bore = 30_mm;
    CHECK(doubts(tight).contains(press_doubt::shaft_past_elastic_limit));

    joint wished = plain();
    wished.safety.against_yield = *press(wished)->at_20.hub.margin() * 1.01;
    CHECK(doubts(wished).contains(press_doubt::below_wished_safety));
    wished.safety.against_yield /= 1.02;
    CHECK_FALSE(doubts(wished).contains(press_doubt::below_wished_safety));

    joint thin = plain();
    thin.hub.outside = 47.999_mm;
    CHECK(doubts(thin).contains(press_doubt::thin_hub));
    thin.hub.outside = 48_mm;
    CHECK_FALSE(doubts(thin).contains(press_doubt::thin_hub));

    joint weak = plain();
    weak.hub.made_of.yield_strength = {};
    weak.shaft.made_of.yield_strength = {};
    CHECK(doubts(weak).contains(press_doubt::hub_strength_not_known));
    CHECK(doubts(weak).contains(press_doubt::shaft_strength_not_known));
    CHECK_FALSE(press(weak)->at_20.hub.margin().is_known());
    weak.hub.may_bear = megapascals(100);
    CHECK_FALSE(doubts(weak).contains(press_doubt::hub_strength_not_known));
    CHECK(is_about(*press(weak)->at_20.hub.margin() * press(weak)->at_20.hub.greatest.value(), 100e6));

    // The least yield strength counts where it is known: Callister, Ti-6Al-4V 880, at least 830 MPa.
    joint titanium = plain();
    titanium.shaft.made_of = materials::titanium_6al_4v;
    CHECK(*press(titanium)->at_20.shaft.may_bear == megapascals(830));

    // A brittle hub: half the tensile strength, EN-GJL-250, as stated; without, three quarters of its yield.
    joint iron = plain();
    iron.hub.made_of = materials::grey_iron_gjl_250;
    CHECK(doubts(iron).contains(press_doubt::brittle_hub));
    CHECK(press(iron)->take_care.contains(caution::brittle));
    CHECK(is_about((*press(iron)->at_20.hub.may_bear).value(), 0.75 * 165e6));
    iron.hub.may_bear = megapascals(250.0 / 2);
    CHECK((*press(iron)->at_20.hub.may_bear).value() == 125e6);
    CHECK_FALSE(doubts(iron).contains(press_doubt::brittle_hub)); // stated, so nothing is left to ask for
    CHECK(press(iron)->take_care.contains(caution::brittle));
    CHECK(press([] {
              joint j = plain();
              j.shaft.made_of = materials::steel_100cr6;
              return j;
          }())
              ->take_care.contains(caution::brittle)); // hard, so it may shatter

    joint soft = plain();
    soft.shaft.made_of = materials::acetal_pom_c;
    CHECK(doubts(soft).contains(press_doubt::creeps));
    soft.shaft.made_of = materials::zinc_zamak_3;
    CHECK(doubts(soft).contains(press_doubt::creeps));
    CHECK_FALSE(doubts(plain()).contains(press_doubt::creeps));

    joint hot = plain();
    hot.hub = {.made_of = materials::aluminium_6082_t6, .outside = 80_mm, .at = 151_degC};
    CHECK(doubts(hot).contains(press_doubt::hotter_than_allowed)); // 150 °C
    CHECK(doubts(hot).contains(press_doubt::strength_of_cold_metal));
    CHECK(press(hot)->take_care.contains(caution::hot));
    hot.hub.at = 95_degC;
    CHECK_FALSE(doubts(hot).contains(press_doubt::hotter_than_allowed));
    CHECK_FALSE(doubts(hot).contains(press_doubt::strength_of_cold_metal));
    CHECK(doubts(hot).contains(press_doubt::expansion_not_sure)); // its documents differ
    hot.hub.at = celsius(-40);
    CHECK(press(hot)->take_care.contains(caution::cold));

    joint sure = plain();
    CHECK_FALSE(doubts(sure).contains(press_doubt::friction_not_sure));
    sure.between = frictions::any_pair;
    CHECK(doubts(sure).contains(press_doubt::friction_not_sure));
    CHECK(press(sure)->friction_from.how_sure == confidence::published);
    CHECK(press(sure)->from.how_sure == confidence::published);

    // Each has words, and no two the same.
    std::string all;
    for (std::uint32_t n = 0; n <= 20; ++n) {
        const text words = in_words(static_cast<press_doubt>(1U << n));
        CHECK(words.size() > 10);
        CHECK(all.find(std::string(words)) == std::string::npos);
        all += std::string(words) + "\n";
    }
    CHECK(in_words(static_cast<press_doubt>(1U << 21)) == "");
}

TEST_CASE("friction by pair: DIN 7190-1:2017, 5.2 and 5.3") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/press_friction.csv");
    REQUIRE(table.fault == "");
    const auto index = [](const std::string& word, std::initializer_list<const char*> words) {
        int i = 0;
        for (const char* w : words) {
            if (word == w) return i;
            ++i;
        }
        return -1;
    };
    int in_file = 0;
    for (int how = 0; how < 3; ++how)
        for (int surface = 0; surface < 3; ++surface)
            for (int hub = 0; hub <= static_cast<int>(material_family::other); ++hub) {
                const friction_pair pair{.hub = static_cast<material_family>(hub),
                                         .shaft = material_family::steel,
                                         .how = static_cast<joined_by>(how),
                                         .surface = static_cast<seat_surface>(surface)};
                friction wanted = frictions::any_pair;
                for (std::size_t i = 0; i < table.rows.size(); ++i) {
                    std::string family(in_words(pair.hub));
                    for (char& c : family)
                        if (c == ' ') c = '_';
                    if (index(table.cell(i, "joined"), {"pressing", "shrinking", "pressure_oil"}) != how ||
                        index(table.cell(i, "surface"), {"dry", "oiled", "degreased"}) != surface ||
                        table.cell(i, "hub") != family)
                        continue;
                    ++in_file;
                    wanted = {.least = std::stod(table.cell(i, "least")),
                              .most = std::stod(table.cell(i, "most")),
                              .from = {"DIN 7190-1:2017", "",
                                       table.cell(i, "seen") == "memory" ? confidence::memory
                                                                         : confidence::uncertain}};
                }
                const friction got = friction_for(pair);
                CAPTURE(how);
                CAPTURE(surface);
                CAPTURE(hub);
                CHECK(got.least == wanted.least);
                CHECK(got.most == wanted.most);
                CHECK(got.from.document == wanted.from.document);
                CHECK(got.from.how_sure == wanted.from.how_sure);
            }
    CHECK(in_file == 17);
    CHECK(table.fault == "");
    // A shaft that isn't of steel: the span for any pair, read in a formula sheet.
    const friction other = friction_for(
        {material_family::aluminium, material_family::copper_alloy, joined_by::pressing, seat_surface::dry});
    CHECK(other.least == 0.05);
    CHECK(other.most == 0.2);
    // Norton 4e (memory) and common practice.
    CHECK(frictions::steel_on_steel_dry.least == 0.12);
    CHECK(frictions::steel_on_steel_dry.most == 0.15);
    CHECK(frictions::to_choose_a_press.most == 0.2);
}

TEST_CASE("what isn't allowed is refused, with what is") {
    const auto fails = [](const joint& j, error_code code, std::initializer_list<const char*> pieces) {
        const auto r = press(j);
        REQUIRE_FALSE(r);
        CHECK(r.error().code() == code);
        CHECK(r.error().message().find("allowed: ") != text::npos);
        CHECK(r.error().message().size() < error::capacity);
        CHECK_MESSAGE(says(r.error(), pieces), std::string(r.error().message()));
    };
    const auto but = [](auto change) {
        joint j = plain();
        change(j);
        return j;
    };
    const auto geometry = error_code::joint_not_possible;
    fails(but([](joint& j) { j.seat = press_seat(0_mm); }), geometry, {"0 mm diameter", "above 0"});
    fails(but([](joint& j) { j.hub.outside = 40_mm; }), geometry, {"40 mm outside", "larger than the joint"});
    fails(but([](joint& j) { j.hub.outside = 30_mm; }), geometry, {"30 mm"});
    fails(but([](joint& j) { j.shaft.bore = 40_mm; }), geometry, {"bore of 40 mm", "smaller than the joint"});
    fails(but([](joint& j) { j.shaft.bore = -1_mm; }), geometry, {"-1 mm", "0 (solid)"});
    fails(but([](joint& j) { j.joint_length = 0_mm; }), geometry, {"0 mm long"});
    fails(plain({diametral_interference(30_um), diametral_interference(20_um)}), geometry,
          {"0.03", "0.02 mm", "the least first"});
    fails(but([](joint& j) { j.roughness.hub = -1_um; }), geometry, {"Rz below 0"});

    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto rub = error_code::friction_not_possible;
    fails(but([](joint& j) { j.between = {.least = 0, .most = 0.1}; }), rub, {"above 0 up to 1"});
    fails(but([](joint& j) { j.between = {.least = 0.2, .most = 0.1}; }), rub, {"the least first"});
    fails(but([](joint& j) { j.between = {.least = 0.2, .most = 1.1}; }), rub, {});
    fails(but([&](joint& j) { j.between = {.least = nan, .most = 0.1}; }), rub, {});
    fails(but([&](joint& j) { j.load.along = force::from_value(nan); }), error_code::load_not_possible,
          {"not a number"});
    fails(but([&](joint& j) { j.load.turning = torque::from_value(-1); }), error_code::load_not_possible,
          {"below 0"});
    fails(but([&](joint& j) { j.speed = rotational_speed::from_value(-1); }), error_code::load_not_possible,
          {});
    fails(but([&](joint& j) { j.safety.against_slipping = 0.9; }), error_code::factor_below_one,
          {"1 (no reserve)"});
    fails(but([&](joint& j) { j.safety.against_yield = nan; }), error_code::factor_below_one, {});

    const auto unknown = error_code::property_not_known;
    fails(but([](joint& j) { j.hub.made_of.youngs_modulus = {}; }), unknown, {"Young's modulus of steel"});
    fails(but([](joint& j) { j.shaft.made_of.youngs_modulus = gigapascals(-1); }), unknown,
          {"Young's modulus"});
    fails(but([](joint& j) { j.shaft.made_of.poissons_ratio = {}; }), unknown, {"Poisson's ratio of steel"});
    fails(but([](joint& j) { j.shaft.made_of.poissons_ratio = 0.6; }), unknown, {"0 to 0.5"});
    fails(but([](joint& j) {
              j.hub.at = 50_degC;
              j.hub.made_of.expansion = {};
          }),
          unknown, {"expansion of steel"});
    fails(but([](joint& j) { j.hub.at = celsius(-300); }), error_code::temperature_out_of_range, {});
    fails(but([](joint& j) { j.shaft.at = celsius(900); }), error_code::temperature_out_of_range, {"100 C"});
    // At 20 °C nothing need be known of the expansion.
    CHECK(press(but([](joint& j) { j.hub.made_of.expansion = j.shaft.made_of.expansion = {}; })));
}

TEST_CASE("the other way: interference for a pressure, for a load, and before it yields") {
    joint j = plain();
    j.shaft = {.made_of = bronze, .bore = 20_mm, .at = 90_degC};
    j.hub.at = 70_degC;
    j.roughness = {.hub = 6_um, .shaft = 4_um};
    j.load = {.along = force::from_value(1500), .turning = torque::from_value(100)};
    j.safety = {.against_slipping = 1.5, .against_yield = 1.2};

    const auto least = interference_to_hold(j);
    REQUIRE(least);
    const auto with = [&](diametral_interference i) {
        joint k = j;
        k.seat = press_seat(40_mm, i);
        return *press(k);
    };
    const auto one_more = [](diametral_interference i, length by) {
        return diametral_interference(i.value + by);
    };
    CHECK(with(least->interference).at_20.holds == holding::yes);
    CHECK(with(least->interference).in_service.holds == holding::yes);
    const auto less = with(one_more(least->interference, -2_nm));
    CHECK((less.at_20.holds != holding::yes || less.in_service.holds != holding::yes));
    CHECK(least->doubts.contains(press_doubt::even_hub_only));
    CHECK(least->take_care.contains(caution::press_force));

    const auto most = greatest_interference(j);
    REQUIRE(most);
    const auto margin_at = [&](length by) {
        const auto r = with(one_more(most->interference, by));
        return std::min({*r.at_20.hub.margin(), *r.at_20.shaft.margin(), *r.in_service.hub.margin(),
                         *r.in_service.shaft.margin()});
    };
    CHECK(margin_at(0_nm) >= 1.2);
    CHECK(margin_at(2_nm) < 1.2);

    // Warm, the bronze shaft grows into the hub: cold decides what holds, hot what yields.
    joint cold = j;
    cold.hub.at = cold.shaft.at = 20_degC;
    CHECK(interference_to_hold(cold)->interference == least->interference);
    CHECK(greatest_interference(cold)->interference > most->interference);

    const auto for_pressure = interference_for_pressure(cold, megapascals(50));
    REQUIRE(for_pressure);
    cold.seat = press_seat(40_mm, for_pressure->interference);
    CHECK(is_about(pressure_of(cold), 50e6, 1e-4));

    CHECK(interference_to_hold(plain()).error().code() == error_code::load_not_possible);
    CHECK(interference_for_pressure(plain(), {}).error().code() == error_code::pressure_not_above_zero);
    joint weak = plain();
    weak.shaft.made_of.yield_strength = {};
    CHECK(greatest_interference(weak).error().code() == error_code::property_not_known);
    CHECK(says(greatest_interference(weak).error(), {"strength of steel"}));
    weak.hub.outside = 1_mm;
    CHECK(greatest_interference(weak).error().code() == error_code::joint_not_possible);
    CHECK(interference_to_hold(weak).error().code() == error_code::joint_not_possible);
    CHECK(interference_for_pressure(weak, megapascals(1)).error().code() == error_code::joint_not_possible);
}

TEST_CASE("while compiling as at run time") {
    constexpr joint j{.seat = "14 H7/s6"_fit,
                      .hub = {.made_of = materials::aluminium_6082_t6, .outside = 40_mm, .at = 95_degC},
                      .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 8_mm, .at = 95_degC},
                      .joint_length = 28_mm,
                      .roughness = {.hub = 4_um, .shaft = 2_um},
                      .between = frictions::any_pair,
                      .load = {.along = force::from_value(200), .turning = torque::from_value(1)},
                      .speed = revolutions_per_minute(3000)};
    constexpr press_result compiled = *press(j);
    const press_result run = *press(given(j));
    CHECK(run.at_20.joint_pressure == compiled.at_20.joint_pressure);
    CHECK(run.in_service.bore == compiled.in_service.bore);
    CHECK(run.bore_moves_by == compiled.bore_moves_by);
    CHECK(is_about((*run.loosens_at).value(), (*compiled.loosens_at).value(), 1e-14));
    CHECK(is_about(run.at_20.load_margin.least, compiled.at_20.load_margin.least, 1e-14));
    CHECK(run.doubts == compiled.doubts);
    CHECK(run.take_care == compiled.take_care);
    static_assert(std::is_trivially_copyable_v<press_result>);
}

TEST_CASE("printed with its doubts") {
    std::ostringstream out;
    joint j = plain();
    j.shaft.bore = 20_mm;
    out << *press(j);
    const std::string all = out.str();
    for (const char* piece : {"20.0 to 60.0 um on diameter (10.0 to 30.0 on radius)", "in service: the same",
                              "bore closes by ", "press-in force at most ", "mind: holds for a hub as long",
                              "mind: roughness not stated", "care: Pressing stores force"})
        CHECK_MESSAGE(all.find(piece) != std::string::npos, all);
    out.str("");
    out << diametral_interference(20_um) << ", " << diametral_interference(20_um).on_radius();
    CHECK(out.str() == "0.02 mm on diameter, 0.01 mm on radius");
    // With every doubt and caution there is, it is not cut.
    press_result worst = *press(j);
    for (std::uint32_t n = 0; n <= 20; ++n) worst.doubts |= static_cast<press_doubt>(1U << n);
    for (std::uint32_t n = 0; n <= 6; ++n) worst.take_care |= static_cast<caution>(1U << n);
    CHECK_FALSE(written(worst).is_cut());

    const auto in_figures = [](double d) { return std::string(detail::three_figures(d)); };
    CHECK(in_figures(0) == "0");
    CHECK(in_figures(9.996) == "10");
    CHECK(in_figures(0.012345) == "0.0123");
    CHECK(in_figures(12345) == "12300");
    CHECK(in_figures(999.6) == "1000");
    CHECK(in_figures(-3.14159) == "-3.14");
    CHECK(in_figures(std::numeric_limits<double>::infinity()) == "infinite");
    CHECK(in_figures(1e16) == "more than 1e15");
    CHECK(in_figures(std::nan("")) == "not a number");
}
