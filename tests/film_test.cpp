#include "support/both.hpp"
#include "support/running_checks.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/running.hpp>
#include <fitwright/material.hpp>
#include <fitwright/running.hpp>

#include <doctest/doctest.h>

#include <random>
#include <sstream>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

const std::string data = FITWRIGHT_TEST_DATA;

length metres(double m) { return quantity<metre>::from_value(m); }

const fluid vg32 = *oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95));

/// A bearing of a small machine with a film of about half the clearance.
journal spindle() {
    return {.diameter = 25_mm,
            .width = 20_mm,
            .clearance = "25 H7/f7"_fit,
            .load = force::from_value(300),
            .speed = revolutions_per_minute(1450),
            .lubricant = vg32,
            .oil_in = 40_degC,
            .roughness = {.shaft = 2_um, .bore = 3_um}};
}

/// The same with one clearance, such that S comes out as wanted at this viscosity.
journal of_sommerfeld(double s, double length_by_diameter, double viscosity) {
    journal j{.diameter = 50_mm,
              .width = metres(0.05 * length_by_diameter),
              .clearance = diametral_clearance(100_um)};
    const double turns = 20;
    const double stretch = 0.05 / 1e-4;
    j.speed = revolutions_per_minute(60 * turns);
    j.load = force::from_value(stretch * stretch * viscosity * turns / s * 0.05 * 0.05 * length_by_diameter);
    return j;
}

double value(const property<temperature>& t) { return t.value().value(); }

} // namespace

TEST_CASE("two Sommerfeld numbers") {
    // Raimondi and Boyd's S = 0.121 (L/D = 1, eccentricity 0.6) is So = 1.315.
    FITWRIGHT_CHECK_BOTH(sommerfeld_load_number(sommerfeld_number(given(0.121))).value > 1.315);
    FITWRIGHT_CHECK_BOTH(sommerfeld_load_number(sommerfeld_number(given(0.121))).value < 1.316);
    FITWRIGHT_CHECK_BOTH(sommerfeld_number(sommerfeld_load_number(given(0.5))) > sommerfeld_number(0.318));
    static_assert(!std::is_convertible_v<sommerfeld_number, sommerfeld_load_number>);
    static_assert(!std::is_convertible_v<sommerfeld_load_number, sommerfeld_number>);
    static_assert(!std::is_convertible_v<double, sommerfeld_number>);
}

TEST_CASE("clearance on radius and on diameter") {
    FITWRIGHT_CHECK_BOTH(diametral_clearance(radial_clearance(given(20_um))) == diametral_clearance(40_um));
    FITWRIGHT_CHECK_BOTH(bearing_clearance(radial_clearance(20_um)) ==
                         bearing_clearance(diametral_clearance(40_um)));
    FITWRIGHT_CHECK_BOTH(bearing_clearance("25 H7/f7"_fit).least() == diametral_clearance(20_um));
    FITWRIGHT_CHECK_BOTH(bearing_clearance("25 H7/f7"_fit).most() == diametral_clearance(62_um));
    FITWRIGHT_CHECK_BOTH(bearing_clearance(clearance_window{8_um, 20_um}).most() ==
                         diametral_clearance(20_um));
    FITWRIGHT_CHECK_BOTH(relative_clearance{.per_mille = 1.5}.of(given(20_mm)) == diametral_clearance(30_um));
    // Beyond the range of a length: the end of it.
    constexpr length huge = length::from_nanometres(5'000'000'000'000'000'000);
    FITWRIGHT_CHECK_BOTH(diametral_clearance(radial_clearance(given(huge))).value > huge);
    FITWRIGHT_CHECK_BOTH(diametral_clearance(radial_clearance(given(-huge))).value < -huge);
    FITWRIGHT_CHECK_BOTH(bearing_clearance(radial_clearance(given(huge))).least().value > huge);
    static_assert(!std::is_convertible_v<length, bearing_clearance>);
    static_assert(!std::is_convertible_v<radial_clearance, diametral_clearance>);
    static_assert(!std::is_constructible_v<radial_clearance, diametral_clearance>);
}

TEST_CASE("the table of Raimondi and Boyd, cell by cell") {
    csv_table table = read_csv(data + "/bearing_raimondi_boyd.csv");
    int cells = 0;
    const double eccentricities[] = {0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 0.97};
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const std::string ratio = table.cell(i, "L_over_D");
        const int which = ratio == "inf" ? 0 : ratio == "1.0" ? 1 : ratio == "0.5" ? 2 : 3;
        const auto row = i % 7;
        CHECK(detail::raimondi_boyd_eccentricity[row] == eccentricities[row]);
        CHECK(std::stod(table.cell(i, "epsilon")) == eccentricities[row]);
        const detail::raimondi_boyd_row& got = detail::raimondi_boyd[which][row];
        const auto check = [&](double have, const char* heading, double share) {
            CAPTURE(heading);
            const std::string worked_out = std::string(heading) + "_calc";
            const bool is_printed = !table.cell(i, heading).empty();
            CHECK(have == std::stod(table.cell(i, is_printed ? heading : worked_out.c_str())));
            // The fresh solution of the Reynolds equation beside it.
            CHECK(std::fabs(have - std::stod(table.cell(i, worked_out))) <= share * std::fabs(have));
            ++cells;
        };
        CAPTURE(ratio);
        CAPTURE(row);
        check(got.s, "S", 0.032);
        check(got.friction, "f_r_over_c", 0.032);
        check(got.flow, "Q_over_rcNL", 0.06);
        check(got.side_share, "Qs_over_Q", 0.011);
        check(got.pressure_evenness, "P_over_pmax", 0.061);
    }
    CHECK(table.fault == "");
    CHECK(cells == 4 * 7 * 5);
}

TEST_CASE("at the printed points the reading is the printed row") {
    for (const auto& printed_ratio : {std::pair{1.0, 1}, std::pair{0.5, 2}, std::pair{0.25, 3}}) {
        const double ratio = printed_ratio.first;
        const int which = printed_ratio.second;
        const detail::raimondi_boyd_column column(ratio);
        for (int row = 0; row < 7; ++row) {
            const detail::raimondi_boyd_row& printed = detail::raimondi_boyd[which][row];
            const auto r = column.at(printed.s);
            CAPTURE(ratio);
            CAPTURE(row);
            CHECK(1 - r.gap_left == doctest::Approx(detail::raimondi_boyd_eccentricity[row]));
            CHECK(r.friction == doctest::Approx(printed.friction));
            CHECK(r.flow == doctest::Approx(printed.flow));
            CHECK(r.side_share == doctest::Approx(printed.side_share));
            CHECK(r.pressure_evenness == doctest::Approx(printed.pressure_evenness));
        }
    }
}

TEST_CASE("between the printed points, against a fresh solution of the Reynolds equation") {
    // Full bearing, oil at the widest gap, pressure never below 0; 360 by 24 points on half the length.
    struct row {
        double ratio, eccentricity, s, friction;
    };
    constexpr row solved[] = {
        {0.25, 0.3, 4.4988, 93.229},    {0.25, 0.5, 1.7921, 41.049},      {0.25, 0.7, 0.58772, 16.466},
        {0.25, 0.85, 0.15315, 5.9302},  {0.25, 0.95, 0.022973, 1.5802},   {0.35, 0.3, 2.3604, 48.979},
        {0.35, 0.5, 0.9567, 22.009},    {0.35, 0.7, 0.32631, 9.2433},     {0.35, 0.85, 0.09158, 3.6275},
        {0.35, 0.95, 0.015972, 1.1431}, {0.5, 0.3, 1.2204, 25.391},       {0.5, 0.5, 0.50955, 11.818},
        {0.5, 0.7, 0.18516, 5.3462},    {0.5, 0.85, 0.05774, 2.3665},     {0.5, 0.95, 0.011945, 0.89599},
        {0.75, 0.3, 0.60683, 12.695},   {0.75, 0.5, 0.26648, 6.2799},     {0.75, 0.7, 0.10698, 3.1925},
        {0.75, 0.85, 0.038395, 1.653},  {0.75, 0.95, 0.0094888, 0.75063}, {1, 0.3, 0.38902, 8.1873},
        {1, 0.5, 0.17873, 4.2816},      {1, 0.7, 0.077859, 2.3939},       {1, 0.85, 0.030865, 1.38},
        {1, 0.95, 0.0084582, 0.69272},  {1.5, 0.3, 0.23043, 4.9049},      {1.5, 0.5, 0.11348, 2.7961},
        {1.5, 0.7, 0.055261, 1.7774},   {1.5, 0.85, 0.02468, 1.1604},     {1.5, 0.95, 0.0075479, 0.64443},
        {2, 0.3, 0.17341, 3.7244},      {2, 0.5, 0.089461, 2.2494},       {2, 0.7, 0.046479, 1.5389},
        {2, 0.85, 0.0221, 1.0705},      {2, 0.95, 0.0071381, 0.62372},
    };
    for (const row& r : solved) {
        CAPTURE(r.ratio);
        CAPTURE(r.eccentricity);
        const auto reading = detail::raimondi_boyd_column(r.ratio).at(r.s);
        CHECK(agree(reading.gap_left, 1 - r.eccentricity, 0.035));
        CHECK(agree(reading.friction, r.friction, 0.02));
    }
    // Flows: Q and its share that leaves at the sides.
    struct flow_row {
        double ratio, eccentricity, s, flow, side_share;
    };
    for (const flow_row& r :
         {flow_row{0.35, 0.4, 1.468, 4.345, 0.561}, flow_row{0.35, 0.9, 0.046447, 5.843, 0.942},
          flow_row{0.75, 0.1, 2.1126, 3.404, 0.162}, flow_row{0.75, 0.9, 0.022386, 5.272, 0.931},
          flow_row{2, 0.1, 0.55884, 3.264, 0.105}, flow_row{2, 0.9, 0.01454, 2.995, 0.871}}) {
        CAPTURE(r.ratio);
        CAPTURE(r.eccentricity);
        const auto reading = detail::raimondi_boyd_column(r.ratio).at(r.s);
        CHECK(agree(reading.flow, r.flow, 0.05));
        CHECK(agree(reading.flow * reading.side_share, r.flow * r.side_share, 0.075));
    }
}

TEST_CASE("what a heavier load does, and that nothing jumps") {
    for (const double ratio : {0.25, 0.3, 0.5, 0.8, 1.0, 1.7, 4.0}) {
        const detail::raimondi_boyd_column column(ratio);
        auto before = column.at(1000);
        for (double s = 1000; s > 1e-5; s /= 1.003) {
            const auto here = column.at(s);
            CHECK(here.gap_left <= before.gap_left + 1e-12);
            CHECK(here.gap_left > 0);
            CHECK(here.gap_left >= before.gap_left * 0.98); // no jump where the rules meet
            CHECK(here.friction <= before.friction * 1.000001);
            CHECK(here.friction >= before.friction * 0.98);
            CHECK(std::fabs(here.flow - before.flow) < 0.05);
            CHECK(here.side_share < 1);
            before = here;
        }
    }
}

TEST_CASE("the formulas of ISO 7902 against the table") {
    // At the printed eccentricities: the shares that the formulas are known to keep.
    for (const auto& [ratio, which] : {std::pair{1.0, 1}, std::pair{0.5, 2}, std::pair{0.25, 3}})
        for (int row = 0; row < 6; ++row) {
            const double e = detail::raimondi_boyd_eccentricity[row];
            const detail::raimondi_boyd_row& printed = detail::raimondi_boyd[which][row];
            const double so = detail::iso7902::load_number(e, ratio);
            CHECK(agree(so, sommerfeld_load_number(sommerfeld_number(printed.s)).value, 0.058));
            CHECK(agree(detail::iso7902::friction(e, ratio, so), printed.friction, 0.054));
            const double side = printed.flow * printed.side_share * ratio / (8 * 3.14159265358979);
            CHECK(agree(detail::iso7902::side_flow(e, ratio), side, 0.035));
            CHECK(detail::iso7902::eccentricity(so, ratio) == doctest::Approx(e));
        }
    // The attitude angle as Raimondi and Boyd print it.
    csv_table table = read_csv(data + "/bearing_raimondi_boyd.csv");
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        if (table.cell(i, "phi_deg").empty() || table.cell(i, "L_over_D") == "inf") continue;
        const double e = std::stod(table.cell(i, "epsilon"));
        if (e > 0.95) continue;
        const double angle =
            detail::iso7902::attitude(e, std::stod(table.cell(i, "L_over_D"))) * 180 / 3.14159265358979;
        CHECK(std::fabs(angle - std::stod(table.cell(i, "phi_deg"))) < 2.2);
    }
    // Over the range that both hold for, asked the same question.
    double film_apart = 0;
    double friction_apart = 0;
    int compared = 0;
    for (const double ratio : {0.25, 0.3, 0.4, 0.5, 0.6, 0.75, 0.9, 1.0})
        for (double s = 0.005; s < 20; s *= 1.05) {
            const auto f = film_at(of_sommerfeld(s, ratio, 0.03), millipascal_seconds(30));
            REQUIRE(f);
            CHECK(agree(f->tightest.sommerfeld.value, s, 1e-4));
            if (f->tightest.by_table.eccentricity < 0.1 || f->tightest.by_table.eccentricity > 0.95) continue;
            film_apart = std::fmax(film_apart, std::fabs(f->tightest.film_difference()));
            friction_apart = std::fmax(friction_apart, std::fabs(f->tightest.friction_difference()));
            CHECK(agree(f->tightest.by_formula.side_flow.value(), f->tightest.by_table.side_flow.value(),
                        0.09));
            CHECK(!f->doubts.contains(film_doubt::methods_differ));
            ++compared;
        }
    CHECK(compared > 500);
    CHECK(film_apart < 0.068);
    CHECK(film_apart > 0.03); // they are two methods, not one
    CHECK(friction_apart < 0.036);
    CHECK(friction_apart > 0.01);
}

TEST_CASE("worked examples") { // the book beside each row; all that a row prints is compared
    csv_table table = read_csv(data + "/bearing_examples.csv");
    int compared = 0;
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const std::string kind = table.cell(i, "kind");
        CAPTURE(table.cell(i, "id"));
        std::string fault;
        const auto in = quantities(table.cell(i, "inputs"), fault);
        const auto printed = quantities(table.cell(i, "printed"), fault);
        REQUIRE(fault == "");
        const double share = tolerance_of(table.cell(i, "tol_pct"));
        const bool has_gap = in.contains("c");
        journal j{.diameter = metres(in.at("D")),
                  .width = metres(in.at("L")),
                  .clearance = radial_clearance(metres(has_gap ? in.at("c") : printed.at("c_diametral") / 2)),
                  .speed = revolutions_per_minute(60 * in.at("N"))};
        if (in.contains("W")) j.load = force::from_value(in.at("W"));
        std::map<std::string, double> got;
        if (kind == "petroff" || kind == "petroff_clearance") {
            const auto p = petroff(j, dynamic_viscosity::from_value(in.at("mu")));
            REQUIRE(p);
            CHECK(p->drag.least == p->drag.most);
            got["torque"] = p->drag.most.value();
            got["power"] = p->power_lost.most.value();
            got["tau"] = p->shear_stress.most.value();
            // The drag goes by one over the clearance, which the row asks for.
            if (kind == "petroff_clearance")
                got["c_diametral"] = printed.at("c_diametral") * got["torque"] / in.at("T");
        } else {
            const double mu = in.contains("mu") ? in.at("mu") : printed.at("mu");
            // The rise of temperature that the book takes: all oil leaves warm, 1.514 MJ/(m3 K).
            j.lubricant.heat_capacity =
                volumetric_heat_capacity::from_value(4 * 3.14159265358979 / 8.3 * 1e6);
            const auto f = film_at(j, dynamic_viscosity::from_value(mu));
            REQUIRE(f);
            const film_state& s = f->tightest;
            const double gap = in.at("c");
            got["P"] = in.at("W") / in.at("D") / in.at("L");
            got["S"] = s.sommerfeld.value;
            got["h0"] = s.by_table.least_film.in<metre>();
            got["h0_over_c"] = got["h0"] / gap;
            got["f"] = s.by_table.friction_coefficient;
            got["f_r_over_c"] = got["f"] * in.at("D") / 2 / gap;
            got["torque"] = s.drag.value();
            got["power"] = s.power_lost.value();
            got["Q"] = s.flow.value();
            got["Qs"] = s.by_table.side_flow.value();
            got["Qs_over_Q"] = got["Qs"] / got["Q"];
            got["pmax"] = s.greatest_pressure.value();
            got["dT"] = s.rise.value().value() * (1 - got["Qs_over_Q"] / 2);
            if (kind == "rb_viscosity")
                got["mu"] = mu * in.at("S") / got["S"]; // the row asks for the viscosity
        }
        for (const auto& quantity_printed : printed) {
            const std::string& name = quantity_printed.first;
            const double wanted = quantity_printed.second;
            CAPTURE(name);
            REQUIRE(got.contains(name));
            CHECK(agree(got.at(name), wanted, share));
            ++compared;
        }
    }
    CHECK(table.fault == "");
    CHECK(compared == 27);
}

TEST_CASE("Petroff is the limit of a light load") {
    journal j = spindle();
    const auto unloaded = petroff(j, millipascal_seconds(20));
    REQUIRE(unloaded);
    double before = 1;
    for (const double newtons : {100.0, 10.0, 1.0, 0.1}) {
        j.load = force::from_value(newtons);
        const auto f = film_at(j, millipascal_seconds(20));
        REQUIRE(f);
        const double more = f->loosest.drag.value() / unloaded->drag.least.value() - 1;
        CHECK(more > -1e-9);
        CHECK(more < before);
        before = more;
        CHECK(f->loosest.power_lost.value() ==
              doctest::Approx(f->loosest.drag.value() * j.speed.value().value()));
    }
    CHECK(before < 1e-4);
    // The formulas tend there too.
    const auto light = film_at(j, millipascal_seconds(20));
    CHECK(std::fabs(light->tightest.friction_difference()) < 0.02);
    CHECK(light->doubts.contains(film_doubt::lightly_loaded));
}

TEST_CASE("the heat balance balances") {
    std::mt19937 random(7902);
    const auto between = [&](double a, double b) {
        return a + (b - a) * static_cast<double>(random() % 10'001) / 10'000;
    };
    int balanced = 0;
    for (int i = 0; i < 3000; ++i) {
        journal j = spindle();
        j.diameter = metres(between(0.008, 0.1));
        j.width = metres(j.diameter.in<metre>() * between(0.3, 1.5));
        j.clearance = clearance_window{.least = metres(j.diameter.in<metre>() * between(0.0004, 0.001)),
                                       .most = metres(j.diameter.in<metre>() * between(0.001, 0.003))};
        j.load = force::from_value(between(1e3, 3e6) * j.diameter.in<metre>() * j.width.in<metre>());
        j.speed = revolutions_per_minute(between(20, 6000));
        j.oil_in = celsius(between(10, 60));
        const auto f = film(j);
        if (!f) {
            CHECK(f.error().code() == error_code::no_heat_balance);
            continue;
        }
        ++balanced;
        for (const film_state* s : {&f->tightest, &f->loosest}) {
            // Half the rise above the oil that comes in, the viscosity being that of the film.
            CHECK(value(s->film_temperature) ==
                  doctest::Approx(value(j.oil_in) + s->rise.value().value() / 2).epsilon(1e-5));
            CHECK(value(s->oil_out) ==
                  doctest::Approx(value(j.oil_in) + s->rise.value().value()).epsilon(1e-5));
            const auto v = viscosity(j.lubricant, s->film_temperature.value());
            REQUIRE(v);
            CHECK(v->dynamic.value().value() == doctest::Approx(s->viscosity.value()));
            // The heat that the oil carries off is the friction's: what leaves at the sides half warmed.
            const double carried = j.lubricant.heat_capacity.value().value() * s->rise.value().value() *
                                   (s->flow.value() - s->by_table.side_flow.value() / 2);
            CHECK(carried == doctest::Approx(s->power_lost.value()).epsilon(1e-5));
            // And the film at that viscosity is the film.
            const auto again = film_at(j, s->viscosity);
            REQUIRE(again);
            const film_state& same = s == &f->tightest ? again->tightest : again->loosest;
            CHECK(same.by_table.least_film == s->by_table.least_film);
        }
        CHECK(f->least_film() == (f->tightest.by_table.least_film < f->loosest.by_table.least_film
                                      ? f->tightest.by_table.least_film
                                      : f->loosest.by_table.least_film));
        CHECK(value(f->tightest.film_temperature) >= value(f->loosest.film_temperature) - 0.5);
    }
    CHECK(balanced > 2500);
}

TEST_CASE("parts that grow") {
    journal j = spindle();
    const auto cold = film(j);
    REQUIRE(cold);
    CHECK(cold->tightest.clearance == diametral_clearance(20_um));
    CHECK(cold->doubts.contains(film_doubt::clearance_taken_cold));
    j.growth = {.shaft = materials::steel_c45.expansion.to_100_degC,
                .bore = materials::bronze_cusn7zn4pb7.expansion.to_100_degC};
    const auto warm = film(j);
    REQUIRE(warm);
    CHECK(!warm->doubts.contains(film_doubt::clearance_taken_cold));
    const double apart = materials::bronze_cusn7zn4pb7.expansion.to_100_degC.value().value() -
                         materials::steel_c45.expansion.to_100_degC.value().value();
    for (const film_state* s : {&warm->tightest, &warm->loosest}) {
        const length clearance_cold = s == &warm->tightest ? 20_um : 62_um;
        const double grown = 0.025 * apart * (value(s->film_temperature) - 20);
        CHECK(s->clearance.value.in<metre>() ==
              doctest::Approx(clearance_cold.in<metre>() + grown).epsilon(1e-4));
    }
    // An aluminium shaft in an iron bore closes before the balance is found, or is too tight to begin with.
    j.growth = {.shaft = ppm_per_kelvin(24), .bore = ppm_per_kelvin(11)};
    j.clearance = diametral_clearance(8_um);
    CHECK(says(film(j), error_code::no_running_clearance, "closes at about"));
    j.oil_in = 90_degC;
    CHECK(says(film(j), error_code::no_running_clearance, "closes at about 90 degC"));
}

TEST_CASE("slow and small is boundary, not an error") {
    journal crank{.diameter = 8_mm,
                  .width = 8_mm,
                  .clearance = "8 H7/f7"_fit,
                  .load = force::from_value(200),
                  .speed = revolutions_per_minute(60),
                  .lubricant = vg32,
                  .oil_in = 25_degC,
                  .roughness = {.shaft = 2_um, .bore = 3_um}};
    const auto slow = film(crank);
    REQUIRE(slow);
    CHECK(slow->regime == film_regime::boundary);
    CHECK(in_words(slow->regime).find("use the catalogue clearances") != text::npos);
    CHECK(slow->doubts.contains(film_doubt::beyond_the_table));
    CHECK(slow->doubts.contains(film_doubt::below_the_limit_film));
    CHECK(slow->doubts.contains(film_doubt::starts_under_load)); // 3.1 MPa
    CHECK(slow->take_care == caution::rotating);
    // Faster: mixed, then a full film; the limit is the sum of both peak heights.
    CHECK(slow->limit_film == 5_um);
    CHECK(slow->touching_film == 721_nm); // a fifth of the root of 2^2 + 3^2
    film_regime before = film_regime::boundary;
    for (double turns = 60; turns < 100'000; turns *= 1.5) {
        crank.speed = revolutions_per_minute(turns);
        crank.load = force::from_value(20);
        const auto f = film(crank);
        REQUIRE(f);
        CHECK(f->regime >= before);
        const film_regime expected = f->least_film() >= f->limit_film      ? film_regime::full_film
                                     : f->least_film() >= f->touching_film ? film_regime::mixed
                                                                           : film_regime::boundary;
        CHECK(f->regime == expected);
        CHECK(f->doubts.contains(film_doubt::below_the_limit_film) == (f->regime != film_regime::full_film));
        before = f->regime;
        if (before == film_regime::full_film) break;
    }
    CHECK(before == film_regime::full_film);
    // Without roughness Trumpler's limit: 0.0002 in and 0.00004 of the diameter.
    crank.roughness = {.shaft = 2_um};
    const auto by_rule = film(crank);
    REQUIRE(by_rule);
    CHECK(by_rule->limit_film == 5.4_um);
    CHECK(by_rule->touching_film == 756_nm);
    CHECK(by_rule->doubts.contains(film_doubt::limit_film_by_rule));
    CHECK(!slow->doubts.contains(film_doubt::limit_film_by_rule));
}

TEST_CASE("doubts and their limits") {
    // Eccentricity: S of the printed rows at L/D = 1.
    const auto at = [](double s, double ratio = 1) {
        const auto f = film_at(of_sommerfeld(s, ratio, 0.03), millipascal_seconds(30));
        REQUIRE(f);
        return f->doubts;
    };
    CHECK(!at(0.631 * 0.99).contains(film_doubt::lightly_loaded));
    CHECK(at(0.631 * 1.01).contains(film_doubt::lightly_loaded));
    CHECK(!at(0.00855).contains(film_doubt::beyond_the_table)); // 0.95 lies at 0.0085
    CHECK(at(0.0083).contains(film_doubt::beyond_the_table));
    CHECK(!at(0.1, 1).contains(film_doubt::longer_than_its_diameter));
    CHECK(at(0.1, 1.01).contains(film_doubt::longer_than_its_diameter));
    CHECK(at(0.1).contains(film_doubt::turbulence_not_checked));
    const auto longer = film_at(of_sommerfeld(0.1, 1.5, 0.03), millipascal_seconds(30));
    CHECK(!longer->tightest.has_formula);
    CHECK(longer->tightest.film_difference() == 0);
    CHECK(longer->tightest.friction_difference() == 0);

    // Turbulence, ISO 7902-1: rho U s / (2 eta) up to 41.3 sqrt(D / s).
    journal fast = of_sommerfeld(0.3, 1, 0.001);
    fast.lubricant = fluids::water;
    const double limit = 41.3 * std::sqrt(0.05 / 1e-4);
    const double surface = 2 * 3.14159265358979 * 20 * 0.025;
    const double thin = detail::water_density(20) * surface * 1e-4 / 2 / limit;
    CHECK(film_at(fast, dynamic_viscosity::from_value(thin * 0.999))->doubts.contains(film_doubt::turbulent));
    CHECK(
        !film_at(fast, dynamic_viscosity::from_value(thin * 1.001))->doubts.contains(film_doubt::turbulent));

    // Trumpler: 2.07 MPa on the projected area; oil out up to 121 degC.
    journal heavy = spindle();
    heavy.load = force::from_value(2.06e6 * 0.025 * 0.02);
    CHECK(!film(heavy)->doubts.contains(film_doubt::starts_under_load));
    heavy.load = force::from_value(2.08e6 * 0.025 * 0.02);
    CHECK(film(heavy)->doubts.contains(film_doubt::starts_under_load));
    journal hot = spindle();
    for (const double turns : {1450.0, 4000.0, 12'000.0}) {
        hot.speed = revolutions_per_minute(turns);
        const auto f = film(hot);
        REQUIRE(f);
        CHECK(f->doubts.contains(film_doubt::oil_out_too_hot) == (value(f->tightest.oil_out) > 121));
        CHECK(f->take_care.contains(caution::hot) == (value(f->tightest.oil_out) >= 60));
    }
    CHECK(film(hot)->doubts.contains(film_doubt::oil_out_too_hot));

    // A doubtful viscosity makes a doubtful film.
    journal multigrade = spindle();
    multigrade.lubricant = *oil(oil_kind::engine, *engine_oil_grade("10W-40"), viscosity_index(150));
    const auto f = film(multigrade);
    CHECK(f->viscosity_doubts == viscosity_doubt::multigrade);
    CHECK(f->doubts.contains(film_doubt::viscosity_doubtful));
    CHECK(!film(spindle())->doubts.contains(film_doubt::viscosity_doubtful));
    for (std::uint32_t bit = 1; bit <= 2048; bit <<= 1)
        CHECK(!in_words(static_cast<film_doubt>(bit)).empty());
}

TEST_CASE("what is not given is asked for") {
    const auto without = [](auto change) {
        journal j = spindle();
        change(j);
        return film(j);
    };
    using e = error_code;
    CHECK(says(without([](journal& j) { j.load = {}; }), e::bearing_value_missing, "load is not given"));
    CHECK(says(without([](journal& j) { j.speed = {}; }), e::bearing_value_missing, "speed is not given"));
    CHECK(
        says(without([](journal& j) { j.oil_in = {}; }), e::bearing_value_missing, "temperature of the oil"));
    CHECK(says(without([](journal& j) { j.lubricant.density_at_15_degC = {}; }), e::bearing_value_missing,
               "density"));
    CHECK(says(without([](journal& j) { j.lubricant.heat_capacity = {}; }), e::bearing_value_missing,
               "heat capacity"));
    CHECK(says(without([](journal& j) { j.lubricant = {}; }), e::viscosity_not_known, "no viscosity"));
    CHECK(says(without([](journal& j) {
                   j.lubricant.also_known = {};
                   j.oil_in = 40_degC;
               }),
               e::viscosity_not_known, "at one temperature only"));
    CHECK(says(without([](journal& j) { j.diameter = 0_mm; }), e::bearing_value_not_possible, "diameter"));
    CHECK(says(without([](journal& j) { j.width = 0_mm; }), e::bearing_value_not_possible,
               "length of the bearing"));
    CHECK(says(without([](journal& j) { j.load = force::from_value(0); }), e::bearing_value_not_possible,
               "load"));
    CHECK(says(without([](journal& j) { j.load = force::from_value(std::nan("")); }),
               e::bearing_value_not_possible, "load"));
    CHECK(says(without([](journal& j) { j.speed = revolutions_per_minute(-5); }),
               e::bearing_value_not_possible, "speed"));
    CHECK(says(without([](journal& j) { j.clearance = {}; }), e::no_running_clearance, "0 to 0 mm"));
    CHECK(says(without([](journal& j) { j.clearance = "25 H7/k6"_fit; }), e::no_running_clearance,
               "-0.015 to 0.019"));
    CHECK(says(without([](journal& j) { j.clearance = "32 H7/f7"_fit; }), e::nominal_sizes_differ,
               "a fit of 32 mm gives the clearance at a diameter of 25 mm"));
    CHECK(without([](journal& j) { j.clearance = "26 H7/f7"_fit; }));
    CHECK(says(without([](journal& j) {
                   j.clearance = clearance_window{20_um, 10_um};
               }),
               e::no_running_clearance, "least first"));
    CHECK(says(without([](journal& j) { j.clearance = diametral_clearance(1.251_mm); }),
               e::no_running_clearance, "twentieth"));
    CHECK(says(without([](journal& j) { j.width = 6.249_mm; }), e::length_ratio_out_of_range,
               "6.249 mm long on 25 mm"));
    CHECK(says(without([](journal& j) { j.width = 100.001_mm; }), e::length_ratio_out_of_range,
               "1/4 to 4 times"));
    CHECK(without([](journal& j) { j.width = 6.25_mm; }));
    CHECK(says(without([](journal& j) { j.oil_in = celsius(-61); }), e::temperature_out_of_range,
               "-60 to 250"));
    CHECK(says(
        without([](journal& j) { j.lubricant.heat_capacity = volumetric_heat_capacity::from_value(-1); }),
        e::bearing_value_not_possible, "heat capacity"));
    CHECK(says(without([](journal& j) {
                   j.speed = revolutions_per_minute(400'000);
                   j.lubricant.heat_capacity = volumetric_heat_capacity::from_value(1e3);
               }),
               e::no_heat_balance, "up to 250 degC"));
    CHECK(says(film_at(spindle(), millipascal_seconds(0)), e::bearing_value_not_possible, "viscosity"));
    CHECK(says(petroff(spindle(), millipascal_seconds(-1)), e::bearing_value_not_possible, "viscosity"));
    for (const double wrong : {std::nan(""), HUGE_VAL, 1.001e6}) {
        const auto known = dynamic_viscosity::from_value(wrong);
        CHECK(says(film_at(spindle(), known), e::bearing_value_not_possible, "up to 1e6 Pa s"));
        CHECK(says(petroff(spindle(), known), e::bearing_value_not_possible, "up to 1e6 Pa s"));
    }
    journal j = spindle(); // Petroff's law is that of any length
    j.width = 25_mm;
    const double long_drag = petroff(j, millipascal_seconds(10))->drag.most.value();
    j.width = 1_mm;
    CHECK(agree(petroff(j, millipascal_seconds(10))->drag.most.value(), long_drag / 25, 1e-9));
}

TEST_CASE("numbers that no bearing and no oil has") {
    const auto refused = [](auto change, error_code code, const char* piece) {
        journal j = spindle();
        change(j);
        CHECK(says(film(j), code, piece));
        CHECK(says(film_at(j, millipascal_seconds(20)), code, piece));
    };
    using e = error_code;
    const auto not_possible = e::bearing_value_not_possible;
    for (const double wrong : {0.0, -870.0, 30'001.0, std::nan(""), HUGE_VAL})
        refused([&](journal& j) { j.lubricant.density_at_15_degC = kilograms_per_cubic_metre(wrong); },
                not_possible, "density of the lubricant");
    for (const double wrong : {0.0, -1.7e6, 1.1e8, std::nan(""), HUGE_VAL})
        refused([&](journal& j) { j.lubricant.heat_capacity = volumetric_heat_capacity::from_value(wrong); },
                not_possible, "heat capacity of the lubricant");
    for (const double wrong : {-0.001, 0.011, std::nan(""), HUGE_VAL})
        refused([&](journal& j) { j.lubricant.volume_expansion = expansion_coefficient::from_value(wrong); },
                not_possible, "volume expansion of the lubricant");
    for (const double wrong : {1.1e9, std::nan(""), HUGE_VAL}) {
        refused([&](journal& j) { j.lubricant.known.viscosity = centistokes(wrong); },
                e::viscosity_points_unusable, "up to 1e9 mm2/s");
        refused([&](journal& j) { j.lubricant.also_known.viscosity = centistokes(wrong); },
                e::viscosity_points_unusable, "up to 1e9 mm2/s");
    }
    for (const double wrong : {1.1e-3, -1.1e-3, std::nan(""), HUGE_VAL}) {
        refused([&](journal& j) { j.growth.shaft = expansion_coefficient::from_value(wrong); }, not_possible,
                "0.001 for each kelvin");
        refused([&](journal& j) { j.growth.bore = expansion_coefficient::from_value(wrong); }, not_possible,
                "0.001 for each kelvin");
    }
    refused([](journal& j) { j.roughness.shaft = -1_um; }, not_possible, "Rz of the shaft is -0.001 mm");
    refused([](journal& j) { j.roughness.bore = 1.001_mm; }, not_possible, "Rz of the bore is 1.001 mm");
    const length huge = length::from_nanometres(5'000'000'000'000'000'000);
    refused([&](journal& j) { j.diameter = huge; }, not_possible, "100 m");
    refused([&](journal& j) { j.width = huge; }, not_possible, "100 m");
    refused([&](journal& j) { j.clearance = radial_clearance(huge); }, e::no_running_clearance, "twentieth");
    refused([&](journal& j) { j.clearance = diametral_clearance(huge); }, e::no_running_clearance,
            "twentieth");
}

TEST_CASE("one rough surface is enough to stop a film") {
    journal j = spindle();
    j.roughness = {};
    const auto by_rule = film(j);
    REQUIRE(by_rule);
    CHECK(by_rule->limit_film == 6080_nm); // 0.0002 in and 0.00004 of 25 mm
    CHECK(by_rule->regime == film_regime::full_film);
    for (const peak_heights rough : {peak_heights{.shaft = 30_um}, peak_heights{.bore = 30_um}}) {
        j.roughness = rough;
        const auto f = film(j);
        REQUIRE(f);
        CHECK(f->limit_film == 30_um);
        CHECK(f->touching_film == 6_um); // a fifth of Rz
        CHECK(f->regime == film_regime::mixed);
        CHECK(f->doubts.contains(film_doubt::limit_film_by_rule));
        CHECK(f->doubts.contains(film_doubt::below_the_limit_film));
    }
    j.roughness = {.shaft = 2_um}; // a fine one says nothing of the other
    CHECK(film(j)->limit_film == by_rule->limit_film);
    CHECK(film(j)->touching_film == by_rule->touching_film);
}

TEST_CASE("what steadies a light shaft: all three make it more eccentric") {
    const std::string_view said = in_words(film_doubt::lightly_loaded);
    CHECK(said.find("a shorter bearing, thinner oil or more clearance") != said.npos);
    const journal j = spindle();
    const auto eccentricity_of = [](const journal& of, double viscosity) {
        return film_at(of, millipascal_seconds(viscosity))->tightest.by_table.eccentricity;
    };
    const double before = eccentricity_of(j, 30);
    journal shorter = j;
    shorter.width = 12_mm;
    CHECK(eccentricity_of(shorter, 30) > before);
    CHECK(eccentricity_of(j, 15) > before);
    journal looser = j;
    looser.clearance = diametral_clearance(40_um);
    CHECK(eccentricity_of(looser, 30) > before);
}

TEST_CASE("water carries too, if it is fast enough") {
    journal j = spindle();
    j.lubricant = fluids::water;
    j.oil_in = 15_degC;
    j.speed = revolutions_per_minute(6000);
    const auto f = film(j);
    REQUIRE(f);
    CHECK(value(f->tightest.film_temperature) > 15);
    CHECK(value(f->tightest.film_temperature) < 40);
    CHECK(f->viscosity_doubts.empty());
}

TEST_CASE("a known viscosity needs no lubricant") {
    journal j = spindle();
    j.lubricant = {};
    j.oil_in = {};
    const auto f = film_at(j, millipascal_seconds(20));
    REQUIRE(f);
    CHECK(!f->tightest.rise.is_known());
    CHECK(!f->tightest.film_temperature.is_known());
    CHECK(f->tightest.viscosity.value() == 0.02);
    CHECK(f->from.how_sure == confidence::memory);
    CHECK(f->at_this_speed.per_mille == doctest::Approx(0.8 * std::pow(1.8980, 0.25)).epsilon(1e-4));
}

TEST_CASE("in words") {
    journal j = spindle();
    j.load = force::from_value(500);
    std::ostringstream out;
    out << *film(j);
    const std::string said = out.str();
    for (const char* piece : {"tightest, clearance 20 um: film ", "loosest, clearance 62 um: film ",
                              "formulas", "limit film 5 um; full film: the oil alone carries",
                              "mind (tightest): The clearance is taken as given", "care: Turning parts"})
        CHECK_MESSAGE(said.find(piece) != std::string::npos, said);
    const auto printed = [](const journal& of) {
        std::ostringstream words;
        words << *film(of);
        return words.str();
    };
    j.load = force::from_value(100); // light at the tight end only
    CHECK_MESSAGE(printed(j).find("mind (tightest): Eccentricity below 0.2") != std::string::npos,
                  printed(j));
    j.speed = revolutions_per_minute(1);
    CHECK_MESSAGE(printed(j).find("boundary, no film that carries (") != std::string::npos, printed(j));
    std::ostringstream drag;
    drag << *petroff(j, millipascal_seconds(20));
    CHECK(drag.str().starts_with("drag 0.0"));
}
