// Shrink and cool: how hot the hub, how cold the shaft; the shrinkage in the cold; the restrained bar.

#include "support/both.hpp"
#include "support/csv.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/material.hpp>
#include <fitwright/thermal.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright::materials;
using namespace fitwright_tests;

namespace {

double at(const property<temperature>& p) { return (*p).value(); }

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos;
}

constexpr material unknown{.name = "found metal"};

} // namespace

TEST_CASE("heat alone, by the formula of DIN 7190-1") {
    // 50 H7/u6: U = 86 um at most, 50 um to assemble with. The mean of C45 to 200 C is 12.3, to 300 C 13.1
    // millionths: T = 20 + (86 + 50) / (a * 50 mm), with a on the line between.
    constexpr auto plan = shrink_temperatures("50 H7/u6"_fit, steel_c45, steel_42crmo4);
    static_assert(plan->advice == shrink_advice::heat_the_hub);
    static_assert(plan->shaft_at_room.outcome == shrink_outcome::within_limit);
    static_assert(plan->interference == 86_um && plan->assembly_clearance == 50_um);
    static_assert(plan->clearance_from.document.find("DIN 7190-1") != text::npos);
    const double by_mean = at(plan->shaft_at_room.hub_by_mean);
    const double mean = (12.3 + 0.8 * (by_mean - 200) / 100) * 1e-6;
    CHECK(by_mean == doctest::Approx(20 + 0.136 / (mean * 50)).epsilon(1e-6));
    // With the lowest coefficient, 2 % below the mean, it takes a little more.
    const double safe = at(plan->shaft_at_room.hub);
    const double lowest = (12.3 + 0.8 * (safe - 200) / 100) * 1e-6 * 0.98;
    CHECK(safe == doctest::Approx(20 + 0.136 / (lowest * 50)).epsilon(1e-6));
    CHECK(at(plan->hub_limit) == 300);
    CHECK(plan->take_care == cautions(caution::hot));
    CHECK(plan->hub_expansion.place == "steel C45");
    CHECK(shrink_plan::not_covered.find("how long") != text::npos);
    CHECK(plan->best().hub == plan->shaft_at_room.hub);
    static_assert(!std::is_reference_v<decltype(plan->best())>); // of a plan that may be a temporary
    // The chilled shaft shrinks less than the coefficient of a warm one says: 12.3 * 98.5 K would be 60 um.
    const double saved = safe - at(plan->shaft_in_dry_ice.hub);
    CHECK(saved > 55);
    CHECK(saved < 75);
}

TEST_CASE("at the temperatures found, the tightest pair has the clearance asked for") {
    // Materials with a mean of their own in the cold, so that `at_temperature` follows.
    const material* known[] = {&steel_1018,    &steel_c45,         &steel_42crmo4,     &grey_iron_gjl_250,
                               &copper_cu_etp, &aluminium_6082_t6, &aluminium_7075_t6, &aluminium_356_t6};
    int found = 0;
    for (const material* hub : known)
        for (const material* shaft : known)
            for (const fit& f : {"20 H7/s6"_fit, "50 H7/u6"_fit, "80 H7/p6"_fit})
                for (const property<length> room_to_spare :
                     {property<length>(), property<length>(0_um), property<length>(10_um)}) {
                    const auto plan =
                        shrink_temperatures(f, *hub, *shaft, {.assembly_clearance = room_to_spare});
                    REQUIRE(plan.has_value());
                    CAPTURE(hub->name);
                    CAPTURE(shaft->name);
                    CHECK(plan->assembly_clearance == room_to_spare.value_or(f.hole().nominal() / 1000));
                    CHECK((plan->clearance_from.how_sure == confidence::stated) == room_to_spare.is_known());
                    for (const shrink_way* way :
                         {&plan->shaft_at_room, &plan->shaft_in_dry_ice, &plan->shaft_in_liquid_nitrogen}) {
                        if (!way->hub) continue;
                        ++found;
                        const auto hot = at_temperature(f, {*hub, *way->hub}, {*shaft, *way->shaft});
                        CHECK(hot->min_clearance() >= plan->assembly_clearance - 1_nm);
                        if (at(way->hub) > 20) CHECK(hot->min_clearance() <= plan->assembly_clearance + 1_nm);
                        CHECK(at(way->hub) >= at(way->hub_by_mean) - 1e-6);
                        const double limit = (*hub->highest_heating).value();
                        CHECK((way->outcome == shrink_outcome::above_limit) == (at(way->hub) > limit));
                        CHECK((way->outcome == shrink_outcome::hub_stays_at_room) == (at(way->hub) == 20));
                    }
                    if (plan->shaft_alone) {
                        const auto cold = at_temperature(f, {*hub, 20_degC}, {*shaft, *plan->shaft_alone});
                        CHECK(cold->min_clearance() >= plan->assembly_clearance - 1_nm);
                        CHECK(at(plan->shaft_alone) >= -200);
                    }
                    // The colder the shaft, the less heat.
                    if (plan->shaft_in_dry_ice.hub && plan->shaft_at_room.hub)
                        CHECK(at(plan->shaft_in_dry_ice.hub) <= at(plan->shaft_at_room.hub));
                }
    CHECK(found > 800);
}

TEST_CASE("which way to take") {
    const auto advice = [](const fit& f, const material& hub, const material& shaft) {
        return shrink_temperatures(f, hub, shaft)->advice;
    };
    CHECK(advice("20 H7/d9"_fit, steel_c45, steel_c45) == shrink_advice::goes_in_at_room_temperature);
    CHECK(advice("50 H7/u6"_fit, steel_c45, steel_42crmo4) == shrink_advice::heat_the_hub);
    CHECK(advice("50 H7/x6"_fit, aluminium_6082_t6, steel_42crmo4) ==
          shrink_advice::shaft_in_dry_ice_and_heat_the_hub);
    CHECK(advice("50 H7/za6"_fit, aluminium_7075_t6, steel_42crmo4) == shrink_advice::not_possible);
    CHECK(advice("120 H7/k6"_fit, aluminium_2024_t351, aluminium_7075_t6) == shrink_advice::heat_the_hub);
    // A gauge may not be heated at all: cold alone does it, or nothing.
    material no_heat = steel_c45;
    no_heat.name = "a hub that must stay cold";
    no_heat.highest_heating = 21_degC;
    CHECK(advice("100 H7/k6"_fit, no_heat, aluminium_7075_t6) == shrink_advice::shaft_in_dry_ice);
    CHECK(advice("100 H7/p6"_fit, no_heat, aluminium_7075_t6) == shrink_advice::shaft_in_dry_ice);
    CHECK(advice("100 H7/u6"_fit, no_heat, aluminium_7075_t6) == shrink_advice::shaft_in_liquid_nitrogen);
    no_heat.highest_heating = 30_degC;
    CHECK(advice("100 H7/r6"_fit, no_heat, steel_c45) == shrink_advice::shaft_in_liquid_nitrogen);
    // Chilled as well, the caution says so.
    const auto chilled = shrink_temperatures("50 H7/x6"_fit, aluminium_6082_t6, steel_42crmo4);
    CHECK(chilled->take_care == (caution::hot | caution::cold));
    CHECK(chilled->best().hub == chilled->shaft_in_dry_ice.hub);
    CHECK(chilled->best().hub != chilled->shaft_at_room.hub);
    CHECK(
        shrink_temperatures("100 H7/u6"_fit, no_heat, aluminium_7075_t6)->take_care.contains(caution::cold));
}

TEST_CASE("what is not known is said, not guessed") {
    // Bronze: no coefficient in the cold.
    const auto bronze = shrink_temperatures("14 H7/s6"_fit, aluminium_6082_t6, bronze_cusn7zn4pb7);
    CHECK(bronze->shaft_at_room.outcome == shrink_outcome::above_limit);
    CHECK(bronze->shaft_in_dry_ice.outcome == shrink_outcome::expansion_not_known);
    CHECK(!bronze->shaft_in_dry_ice.hub);
    CHECK(!bronze->shaft_alone);
    CHECK(bronze->advice == shrink_advice::cannot_tell);
    CHECK(bronze->missing_figure.find("state cooled_to_minus_190_degC, or press it") != text::npos);
    CHECK(bronze->hub_limit_reason.find("T6") != text::npos);
    // No heating limit: possible, with a doubt.
    material mine = steel_c45;
    mine.highest_heating = {};
    const auto no_limit = shrink_temperatures("50 H7/u6"_fit, mine, steel_42crmo4);
    CHECK(no_limit->shaft_at_room.outcome == shrink_outcome::limit_not_known);
    CHECK(no_limit->advice == shrink_advice::heat_the_hub);
    CHECK(no_limit->doubts.contains(thermal_doubt::heating_limit_not_known));
    // Hotter than the coefficient is known: 100 C for Zamak.
    const auto zamak = shrink_temperatures("20 H7/u6"_fit, zinc_zamak_3, steel_c45);
    CHECK(zamak->shaft_at_room.outcome == shrink_outcome::above_limit); // 80 C, which is less
    CHECK(!zamak->shaft_at_room.hub);
    // Hardened steel in dry ice.
    const auto pin = shrink_temperatures("20 H7/m6"_fit, zinc_zamak_3, steel_100cr6);
    CHECK(at(pin->shaft_in_dry_ice.hub) < at(pin->shaft_at_room.hub));
    material cold_hub = steel_c45;
    cold_hub.highest_heating = 21_degC;
    const auto cracks =
        shrink_temperatures("20 H7/k6"_fit, cold_hub, steel_100cr6, {.assembly_clearance = 2_um});
    CHECK(cracks->advice == shrink_advice::shaft_in_dry_ice);
    CHECK(cracks->doubts.contains(thermal_doubt::hard_steel_grows_cold));
    CHECK(cracks->take_care.contains(caution::brittle));
    CHECK(cracks->take_care.contains(caution::cold));
}

TEST_CASE("a heating limit that is too low is too low, wherever the coefficient ends") {
    // 20 H7/u6 wants 54 + 20 um: 300 K for a steel hub. The coefficient is known to 100 C only.
    material mine{.name = "our steel",
                  .family = material_family::steel,
                  .expansion = {.to_100_degC = ppm_per_kelvin(12)}};
    const auto outcome = [&] {
        return shrink_temperatures("20 H7/u6"_fit, mine, mine)->shaft_at_room.outcome;
    };
    CHECK(outcome() == shrink_outcome::expansion_not_known);
    mine.highest_heating = 120_degC;
    CHECK(outcome() == shrink_outcome::expansion_not_known);
    for (const double limit : {100.0, 90.0, 20.0}) {
        mine.highest_heating = celsius(limit);
        CHECK(outcome() == shrink_outcome::above_limit);
    }
}

TEST_CASE("for want of a figure nobody can tell, which is not the same as not possible") {
    material mine{.name = "our steel",
                  .family = material_family::steel,
                  .expansion = {.to_100_degC = ppm_per_kelvin(12)}};
    const auto plan = [&] { return *shrink_temperatures("20 H7/u6"_fit, mine, mine); };
    CHECK(plan().advice == shrink_advice::cannot_tell);
    CHECK(plan().missing_figure == "the hub's expansion above 100 C is not known; state to_200_degC");
    mine.expansion.to_200_degC = ppm_per_kelvin(12);
    CHECK(plan().missing_figure == "the hub's expansion above 200 C is not known; state to_300_degC");
    mine.expansion.to_300_degC = ppm_per_kelvin(12);
    CHECK(plan().missing_figure == "the hub's expansion above 300 C is not known; state to_500_degC");
    mine.expansion.to_500_degC = ppm_per_kelvin(12);
    CHECK(plan().advice == shrink_advice::heat_the_hub);
    CHECK(plan().missing_figure.empty());
    mine.highest_heating = 100_degC;
    CHECK(plan().advice == shrink_advice::cannot_tell);
    CHECK(plan().missing_figure.find("the shaft's expansion below -40 C is not known") == 0);
    mine.expansion.cooled_to_minus_190_degC = ppm_per_kelvin(8);
    CHECK(plan().advice == shrink_advice::not_possible);
    CHECK(plan().missing_figure.empty());
    // No figure helps beyond 500 C.
    material invar{.name = "our Invar",
                   .family = material_family::nickel_alloy,
                   .expansion = {.to_100_degC = ppm_per_kelvin(1), .to_500_degC = ppm_per_kelvin(1)}};
    CHECK(shrink_temperatures("20 H7/u6"_fit, invar, mine)->advice == shrink_advice::not_possible);
}

TEST_CASE("a clearance of zero to assemble with may be stated") {
    const fit f = "50 H7/u6"_fit;
    const auto touching = shrink_temperatures(f, steel_c45, steel_c45, {.assembly_clearance = 0_um});
    CHECK(touching->assembly_clearance == 0_um);
    CHECK(touching->clearance_from.how_sure == confidence::stated);
    const auto usual = shrink_temperatures(f, steel_c45, steel_c45);
    CHECK(usual->assembly_clearance == 50_um);
    CHECK(at(touching->shaft_at_room.hub) < at(usual->shaft_at_room.hub));
    FITWRIGHT_CHECK_BOTH(property<length>(given(-7_nm)).value() == -7_nm);
    FITWRIGHT_CHECK_BOTH(property<length>().value_or(given(3_mm)) == 3_mm);
}

TEST_CASE("what is so small has no time to be put in place") {
    const auto is_doubtful = [](const fit& f) {
        return shrink_temperatures(f, steel_c45, steel_c45)
            ->doubts.contains(thermal_doubt::soon_at_room_again);
    };
    CHECK(is_doubtful("8 H7/s6"_fit));
    CHECK(is_doubtful("14 H7/s6"_fit));
    CHECK(!is_doubtful("15 H7/s6"_fit));
    CHECK(!is_doubtful("8 H7/d9"_fit)); // goes in as it is
}

TEST_CASE("the answer counts on what a bath of dry ice reaches") {
    CHECK(part_temperature_in(coolant::dry_ice).value() == -72);
    CHECK(part_temperature_in(coolant::liquid_nitrogen).value() == -196);
    const auto plan = shrink_temperatures("50 H7/x6"_fit, aluminium_6082_t6, steel_42crmo4);
    CHECK(at(plan->shaft_in_dry_ice.shaft) == -72);
    CHECK(shrinkage_on_cooling(100_mm, steel_c45, coolant::dry_ice)->by_mean ==
          shrinkage_on_cooling(100_mm, steel_c45, celsius(-72))->by_mean);
}

TEST_CASE("a material of one's own keeps its own figures, whatever its name") {
    // The names of the tables, other figures.
    for (const material* theirs : {&aluminium_6061_t6, &stainless_304, &brass_c36000, &steel_100cr6}) {
        material mine = *theirs;
        mine.documents = "our own reading";
        mine.expansion.to_100_degC = ppm_per_kelvin(30);
        mine.expansion.cooled_to_minus_190_degC = ppm_per_kelvin(25);
        CAPTURE(mine.name);
        const auto s = shrinkage_on_cooling(1000_mm, mine, celsius(-190));
        CHECK(s->by_mean == 5250_um); // 25e-6 over 210 K
        CHECK(s->from.document == "our own reading");
        CHECK(with_cold_expansion(mine).expansion.cooled_to_minus_190_degC ==
              mine.expansion.cooled_to_minus_190_degC);
        mine.expansion.cooled_to_minus_190_degC = {};
        CHECK(!with_cold_expansion(mine).expansion.cooled_to_minus_190_degC);
        CHECK(!shrinkage_on_cooling(1000_mm, mine, celsius(-190)));
        // One figure of one's own is enough: that of the cold.
        mine = *theirs;
        mine.expansion.cooled_to_minus_190_degC = ppm_per_kelvin(15);
        CHECK(shrinkage_on_cooling(1000_mm, mine, celsius(-190))->by_mean == 3150_um);
    }
    // What comes from a table of the cold leaves the sources of the other figures as they are.
    const material chilled = with_cold_expansion(steel_100cr6);
    CHECK(chilled.documents == steel_100cr6.documents);
    CHECK(chilled.source_of(chilled.youngs_modulus).document == steel_100cr6.documents);
    CHECK(growth(10_mm, chilled, celsius(-78))->from.document == sources::ekin_low_temperature.document);
    CHECK(growth(10_mm, chilled, celsius(-78))->by_mean ==
          growth(10_mm, steel_100cr6, celsius(-78))->by_mean);
    CHECK(growth(10_mm, steel_100cr6, 60_degC)->from.document == steel_100cr6.documents);
}

TEST_CASE("another room, another clearance") {
    const fit f = "50 H7/u6"_fit;
    const auto warm = shrink_temperatures(f, steel_c45, steel_c45, {.room = 35_degC});
    const auto cool = shrink_temperatures(f, steel_c45, steel_c45, {.room = 5_degC});
    // A warmer shaft is larger, so the hub has to be hotter, by nearly as much.
    CHECK(at(warm->shaft_at_room.hub) - at(cool->shaft_at_room.hub) > 20);
    CHECK(at(warm->shaft_at_room.hub) - at(cool->shaft_at_room.hub) < 30);
    // The chilled shaft does not know what room it came from.
    CHECK(at(warm->shaft_in_dry_ice.hub) == doctest::Approx(at(cool->shaft_in_dry_ice.hub)).epsilon(1e-9));
    const auto generous = shrink_temperatures(f, steel_c45, steel_c45, {.assembly_clearance = 100_um});
    CHECK(at(generous->shaft_at_room.hub) > at(warm->shaft_at_room.hub));
}

TEST_CASE("what can't be a shrink fit") {
    const fit f = "50 H7/u6"_fit;
    CHECK(says(shrink_temperatures(f, steel_c45, steel_c45, {.assembly_clearance = -1_um}),
               error_code::clearance_below_zero, "allowed: zero or more, or none stated for a thousandth"));
    CHECK(says(shrink_temperatures(fit(between(0_mm, 0_mm), between(0_mm, 1_um)), steel_c45, steel_c45),
               error_code::size_not_above_zero, "allowed: sizes above zero"));
    CHECK(says(shrink_temperatures(f, unknown, steel_c45), error_code::property_not_known, "found metal"));
    CHECK(says(shrink_temperatures(f, steel_c45, unknown), error_code::property_not_known, "found metal"));
    CHECK(says(shrink_temperatures(f, steel_c45, steel_c45, {.room = 600_degC}),
               error_code::temperature_out_of_range, "not known above 500 C"));
}

TEST_CASE("shrinkage in the cold, as printed") {
    csv_table table = read_csv(FITWRIGHT_TEST_DATA "/thermal_low_temperature.csv");
    struct made_of {
        const char* printed_for;
        const material* m;
    };
    const made_of ours[] = {{"aluminium 6061-T6", &aluminium_6061_t6},
                            {"stainless 304", &stainless_304},
                            {"carbon steel (iron)", &steel_100cr6},
                            {"carbon steel (iron)", &tool_steel_o1},
                            {"brass 65/35", &brass_c36000},
                            {"brass 65/35", &brass_cuzn39pb3},
                            {"titanium 6Al-4V", &titanium_6al_4v},
                            {"Invar 36", &invar_36},
                            {"PTFE", &ptfe},
                            {"nylon", &nylon_pa66_dry}};
    int found = 0;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        CAPTURE(table.cell(row, "printed_for"));
        const bool is_nist = table.cell(row, "document") == "NIST";
        const double to_77 = std::atof(table.cell(row, "to_77_K_percent").c_str());
        for (const made_of& our : ours) {
            if (table.cell(row, "printed_for") != our.printed_for) continue;
            CAPTURE(our.m->name);
            ++found;
            // 1 m, in percent; from 293.15 K, where the table begins at 293 K.
            const auto shrunk = [&](double kelvins) {
                return static_cast<double>(shrinkage_on_cooling(1000_mm, *our.m, celsius(kelvins - 273.15))
                                               ->by_mean.nanometres()) /
                       1e7;
            };
            CHECK(std::fabs(shrunk(77) - to_77) < (is_nist ? 0.0015 : 0.006 * to_77));
            if (is_nist) {
                CHECK(std::fabs(shrunk(195) - std::atof(table.cell(row, "to_195_K_percent").c_str())) <
                      0.0015);
                const char* const letter[] = {"a", "b", "c", "d", "e"};
                for (int i = 0; i < 5; ++i)
                    CHECK(detail::polynomial_of(*our.m)->coefficient[i] ==
                          std::atof(table.cell(row, letter[i]).c_str()));
            }
            if (!is_nist)
                CHECK((*with_cold_expansion(*our.m).expansion.cooled_to_minus_190_degC).value() ==
                      doctest::Approx(to_77 / 100 / (293 - 77)).epsilon(1e-12));
            const auto s = shrinkage_on_cooling(1000_mm, *our.m, coolant::liquid_nitrogen);
            CHECK(s->least < s->by_mean);
            CHECK(s->by_mean < s->most);
            CHECK(s->from.place == our.m->name);
            CHECK(s->from.document == (is_nist ? text("NIST cryogenic material properties")
                                               : sources::ekin_low_temperature.document));
            CHECK(s->from.how_sure == (is_nist ? confidence::memory : confidence::uncertain));
            CHECK(s->doubts.contains(thermal_doubt::uncertain_expansion) == !is_nist);
            CHECK(s->take_care == cautions(caution::cold));
        }
        // Materials with a mean of their own in the cold agree with Ekin's totals.
        const material* own = table.cell(row, "printed_for") == "copper"                ? &copper_cu_etp
                              : table.cell(row, "printed_for") == "carbon steel (iron)" ? &steel_1018
                                                                                        : nullptr;
        if (own == nullptr) continue;
        ++found;
        const auto s = shrinkage_on_cooling(1000_mm, *own, celsius(77 - 273.15));
        CHECK(static_cast<double>(s->by_mean.nanometres()) / 1e7 == doctest::Approx(to_77).epsilon(0.04));
    }
    CHECK(table.fault == "");
    CHECK(found == 12);
}

TEST_CASE("shrinkage, from 20 C down") {
    FITWRIGHT_CHECK_BOTH(shrinkage_on_cooling(given(100_mm), aluminium_6061_t6, 20_degC)->by_mean == 0_mm);
    FITWRIGHT_CHECK_BOTH(temperature_of(given(coolant::dry_ice)).value() == -78.5);
    FITWRIGHT_CHECK_BOTH(temperature_of(given(coolant::liquid_nitrogen)).value() == -196);
    // The coefficient of warm aluminium would say 23.6e-6 * 216 K: a third too much.
    constexpr auto nitrogen = shrinkage_on_cooling(100_mm, aluminium_6061_t6, coolant::liquid_nitrogen);
    static_assert(nitrogen->by_mean > 380_um && nitrogen->by_mean < 395_um);
    for (const material* m : all_materials()) {
        CAPTURE(m->name);
        length before = 0_mm;
        for (double t = 15; t >= -196; t -= 5) {
            const auto s = shrinkage_on_cooling(1000_mm, *m, celsius(t));
            if (!s) {
                CHECK(s.error().code() == error_code::temperature_out_of_range);
                CHECK(t < -40);
                break;
            }
            CHECK(s->by_mean > before);
            before = s->by_mean;
        }
    }
    CHECK(says(shrinkage_on_cooling(1_mm, steel_c45, 21_degC), error_code::temperature_out_of_range,
               "allowed: 20 C and below"));
    CHECK(says(shrinkage_on_cooling(1_mm, bronze_cusn7zn4pb7, coolant::dry_ice),
               error_code::temperature_out_of_range, "not known below -40 C"));
    CHECK(says(shrinkage_on_cooling(1_mm, aluminium_6061_t6, celsius(-251)),
               error_code::temperature_out_of_range, "not known below -200 C"));
    // A material with a mean of its own keeps it.
    CHECK(with_cold_expansion(steel_c45).documents == steel_c45.documents);
    CHECK(with_cold_expansion(steel_c45).expansion.cooled_to_minus_190_degC ==
          steel_c45.expansion.cooled_to_minus_190_degC);
    CHECK(at_temperature("12 H7/g6"_fit, {with_cold_expansion(brass_c36000), celsius(-190)},
                         {steel_c45, celsius(-190)})
              .has_value());
}

TEST_CASE("a bar between walls") {
    // C45: 11.3e-6/K, 2 % below to 12.1; 205 GPa; 40 K: 92.66 MPa.
    constexpr restrained_bar bar{.made_of = steel_c45, .size = 500_mm, .at = 60_degC};
    constexpr auto pressed = stress_when_restrained(bar);
    static_assert(pressed->doubts.empty());
    CHECK(pressed->by_mean.value() == doctest::Approx(205e9 * 11.3e-6 * 40));
    CHECK(pressed->stress.least.value() == doctest::Approx(205e9 * 11.3e-6 * 0.98 * 40));
    CHECK(pressed->stress.most.value() == doctest::Approx(205e9 * 12.1e-6 * 40));
    CHECK(pressed->modulus.how_sure == confidence::memory);
    // Before the gap is closed there is none, nor in the cold.
    restrained_bar with_gap = bar;
    with_gap.gap = 500_um;
    CHECK(stress_when_restrained(with_gap)->stress.most.value() == 0);
    with_gap.gap = 226_um;
    CHECK(stress_when_restrained(with_gap)->by_mean.value() == doctest::Approx(0));
    CHECK(stress_when_restrained(with_gap)->stress.most.value() > 1e6);
    restrained_bar cold = bar;
    cold.at = 0_degC;
    CHECK(stress_when_restrained(cold)->stress.most.value() == 0);
    restrained_bar hot = bar;
    hot.at = 200_degC;
    CHECK(stress_when_restrained(hot)->doubts == flags(thermal_doubt::above_yield));
    restrained_bar wrong = bar;
    wrong.size = 0_mm;
    CHECK(says(stress_when_restrained(wrong), error_code::size_not_above_zero, "allowed: a size above zero"));
    wrong = bar;
    wrong.gap = -1_um;
    CHECK(says(stress_when_restrained(wrong), error_code::clearance_below_zero, "allowed: zero or more"));
    for (const double modulus : {0.0, -1.0, std::nan(""), HUGE_VAL}) {
        wrong = bar;
        wrong.made_of.youngs_modulus = pressure::from_value(modulus);
        CHECK(says(stress_when_restrained(wrong), error_code::figure_not_possible,
                   "youngs_modulus; allowed: "));
    }
    wrong = bar;
    wrong.made_of = unknown;
    CHECK(
        says(stress_when_restrained(wrong), error_code::property_not_known, "the elasticity of found metal"));
}

TEST_CASE("outcomes and advice in words") {
    std::set<std::string_view> seen;
    for (int i = 0; i <= static_cast<int>(shrink_outcome::expansion_not_known); ++i)
        CHECK(seen.insert(std::string_view(in_words(static_cast<shrink_outcome>(i)))).second);
    for (int i = 0; i <= static_cast<int>(shrink_advice::cannot_tell); ++i)
        CHECK(seen.insert(std::string_view(in_words(static_cast<shrink_advice>(i)))).second);
    CHECK(seen.size() == 13);
    CHECK(seen.count("") == 0);
    FITWRIGHT_CHECK_BOTH(in_words(given(coolant::dry_ice)) == "dry ice");
}
