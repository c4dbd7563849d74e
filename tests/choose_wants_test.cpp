// `choose` on cases worked out by hand: the formulas stand beside the figures. ISO 286-1:2010 for the limits;
// Poiseuille in a narrow annular gap, 2.5 times as much where the part lies on one side; Lamé's rings.

#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/choose/choose.hpp>
#include <fitwright/io/candidate.hpp>
#include <fitwright/material.hpp>
#include <fitwright/running/lubricant.hpp>

#include <doctest/doctest.h>

#include <limits>
#include <sstream>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;

namespace {

// Named, since clang 14 can't print such a literal in a note.
constexpr fit fit_h7_f7 = "8 H7/f7"_fit;
constexpr fit fit_h7_g6 = "8 H7/g6"_fit;
constexpr fit fit_h7_s6 = "14 H7/s6"_fit;
constexpr fit fit_h7_u6 = "14 H7/u6"_fit;
constexpr fit fit_h7_x6 = "14 H7/x6"_fit;
constexpr shaft_limits pin_m6 = "6 m6"_shaft;
constexpr hole_class hole_h7 = "H7"_hole_class;

constexpr thermal_state bench_only[] = {{"bench", 20_degC, 20_degC}};
constexpr thermal_state hot[] = {{"working", 95_degC, 95_degC}};
constexpr thermal_state day[] = {{"shed", 5_degC, 5_degC},
                                 {"working", 85_degC, 80_degC},
                                 {"warm-up", 95_degC, 40_degC},
                                 {"cool-down", 60_degC, 95_degC}};

constexpr drawer_tool drawer[] = {twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
                                  hand_reamer(8_mm, hole_h7),
                                  boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm})};

const want_answer& answer_of(const candidate& c, want w) {
    for (const want_answer& a : c.answers())
        if (a.wanted == w) return a;
    FAIL("not asked");
    return c.answered[0];
}

/// A steel plunger in a bronze barrel that strokes 30 mm against 0.2 MPa of thin wax.
wants plunger_wants() {
    return {.nominal = 8_mm,
            .must = want::turns_freely | want::holds_oil,
            .hole_made_of = materials::bronze_cusn7zn4pb7,
            .shaft_made_of = materials::steel_c45,
            .leak = leak_budget(plunger{.around = {.diameter = 8_mm,
                                                   .land = 20_mm,
                                                   .pressure_drop = megapascals(0.2),
                                                   .viscosity = millipascal_seconds(4)},
                                        .stroke = 30_mm,
                                        .under_pressure = seconds(1.5)},
                                percent{10})};
}

/// Two metals with round figures, and no spread.
constexpr material light_metal{.name = "a light metal",
                               .family = material_family::aluminium,
                               .expansion = {.to_100_degC = ppm_per_kelvin(23.4),
                                             .lowest = ppm_per_kelvin(23.4),
                                             .highest = ppm_per_kelvin(23.4)},
                               .youngs_modulus = gigapascals(70),
                               .poissons_ratio = 0.33,
                               .yield_strength = megapascals(250)};
constexpr material plain_steel{.name = "a plain steel",
                               .family = material_family::steel,
                               .expansion = {.to_100_degC = ppm_per_kelvin(11.2),
                                             .lowest = ppm_per_kelvin(11.2),
                                             .highest = ppm_per_kelvin(11.2)},
                               .youngs_modulus = gigapascals(205),
                               .poissons_ratio = 0.29,
                               .yield_strength = megapascals(290)};

/// A steel pin pressed into aluminium of 40 mm outside, 28 mm long; 0.05 is the least friction.
wants pin_wants() {
    return {.nominal = 14_mm,
            .must = want::never_moves,
            .hole_made_of = light_metal,
            .shaft_made_of = plain_steel,
            .states = hot,
            .joint = {.hub_outside = 40_mm,
                      .joint_length = 28_mm,
                      .between = {.least = 0.05, .most = 0.2},
                      .load = {.along = newtons(300)}}};
}

std::string message_of(const wants& w) {
    const auto r = choose(w);
    REQUIRE(!r);
    CHECK(r.error().message().size() < error::capacity);
    return std::string(std::string_view(r.error().message()));
}
void refuses(const wants& w, error_code code, const char* piece) {
    const std::string words = message_of(w);
    INFO(words);
    CHECK(choose(w).error().code() == code);
    CHECK(words.find(piece) != std::string::npos);
    CHECK(words.find("allowed") != std::string::npos);
}

} // namespace

TEST_CASE("a plunger: H7/f7 leaks too much, by so much; what is chosen does not") {
    const wants w = plunger_wants();
    // 43 um: pi 8 mm (21.5 um)^3 0.2 MPa / (12 4 mPa s 20 mm) 2.5 = 130.1 mm3/s; in 1.5 s of 1508 mm3: 12.94 %
    const auto f7 = held_against(w, fit_h7_f7);
    REQUIRE(f7);
    CHECK(!f7->holds_all());
    const want_answer& leak = answer_of(*f7, want::holds_oil);
    CHECK(leak.in == margin_unit::percent);
    CHECK(leak.holds() == holding::no);
    CHECK(leak.loose.holds == holding::no);
    CHECK(*leak.loose.margin == doctest::Approx(10 - 12.941).epsilon(0.001));
    CHECK(leak.tight.holds == holding::yes); // 13 um: 12.94 % (13/43)^3 = 0.358 %
    CHECK(*leak.tight.margin == doctest::Approx(10 - 0.3576).epsilon(0.001));
    CHECK(&leak.worse_end() == &leak.loose);
    // 10 % at 43 um (10/12.941)^(1/3) = 39.46 um
    CHECK(leak.allows.most.in<micrometre>() == doctest::Approx(39.46).epsilon(0.001));
    CHECK(leak.off.in<micrometre>() == doctest::Approx(43 - 39.46).epsilon(0.01));
    CHECK(f7->stopped_by()->wanted == want::holds_oil);
    CHECK(f7->leak->most.flow.value() == doctest::Approx(130.1e-9).epsilon(0.001));
    CHECK(answer_of(*f7, want::turns_freely).holds() == holding::yes);
    CHECK(f7->reasons.contains(choice_reason::wants_missed));
    CHECK(f7->err == erring::tight); // 12.9 um of room that way, none the other

    // 29 um: 12.94 % (29/43)^3 = 3.97 %
    const auto g6 = held_against(w, fit_h7_g6);
    REQUIRE(g6);
    CHECK(g6->holds_all());
    CHECK(*answer_of(*g6, want::holds_oil).loose.margin == doctest::Approx(10 - 3.970).epsilon(0.001));

    const auto found = choose(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    CHECK(found->size() == 4);
    for (const candidate& c : *found) {
        CHECK(c.holds_all());
        CHECK(c.pair().max_clearance() <= 39.5_um);
        CHECK(c.pair().min_clearance() > 0_mm);
        CHECK(c.fit_reasons.contains(fit_reason::preferred_fit));
        CHECK(c.reasons.contains(choice_reason::only_at_20));
    }
}

TEST_CASE("a plunger in all its states, with a drawer and an instrument") {
    wants w = plunger_wants();
    w.must |= want::never_seizes | want::slides_without_shake;
    w.states = day;
    w.left_at_least = 3_um;
    w.shake_at_most = 60_um;
    w.drawer = drawer;
    w.uncertainty = 2_um;
    const auto found = choose(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    const candidate& c = found->best();
    CHECK(c.pair() == fit_h7_g6);
    REQUIRE(c.hot);
    // cool-down: 5 um - 8 mm (11.2 to 12.1e-6 steel, 75 K; bronze 40 K): the tightest of the day
    CHECK(c.hot->tightest.state == "cool-down");
    CHECK(c.hot->loosest.state == "warm-up");
    CHECK(c.hot->tightest.fit.min_clearance() >= 3_um);
    CHECK(c.plan.has_value());
    CHECK(c.plan->deciding_step().tool.is_reamer());
    CHECK(c.gauge.value() == plug_gauge(c.hole).value());
    CHECK(c.hole_readings->lower_limit() == 8.002_mm);
    CHECK(c.shaft_readings->upper_limit() == 7.993_mm);
    CHECK(c.reasons.contains(choice_reason::tool_is_there));
    CHECK(c.reasons.contains(choice_reason::reading_proves));
    CHECK(c.reasons.contains(choice_reason::gauge_exists));
    CHECK(c.reasons.contains(choice_reason::one_viscosity));
    CHECK(c.take_care.contains(caution::under_pressure));
    CHECK(c.take_care.contains(caution::hot));
    // too coarse an instrument leaves nothing of 9 um
    w.uncertainty = 5_um;
    const auto coarse = choose(w);
    REQUIRE(coarse);
    CHECK(coarse->best().reasons.contains(choice_reason::instrument_too_coarse));
    CHECK(coarse->best().shaft_readings.error().code() == error_code::instrument_too_coarse);
}

TEST_CASE("a rod of 7.970 +/- 0.002 leads: the bore uses all the clearance there is") {
    const wants w{.nominal = 8_mm,
                  .must = want::never_seizes | want::slides_without_shake,
                  .leads = measured_shaft(7.970_mm, 2_um),
                  .hole_made_of = materials::brass_cuzn39pb3,
                  .shaft_made_of = materials::steel_c45,
                  .states = bench_only,
                  .left_at_least = 8_um,
                  .shake_at_most = 20_um,
                  .drawer = drawer,
                  .uncertainty = 1_um};
    const auto found = choose<8>(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    CHECK(found->allowed() == clearance_window{8_um, 20_um});
    bool has_own_limits = false;
    for (const candidate& c : *found) {
        if (!c.holds_all()) continue;
        // 7.972 + 0.008 to 7.968 + 0.020
        CHECK(c.hole.lower_limit() >= 7.980_mm);
        CHECK(c.hole.upper_limit() <= 7.988_mm);
        CHECK(c.shaft == measured_shaft(7.970_mm, 2_um).limits());
        CHECK(c.reasons.contains(choice_reason::part_is_there));
        has_own_limits =
            has_own_limits || (c.hole.lower_limit() == 7.980_mm && c.hole.upper_limit() == 7.988_mm);
    }
    CHECK(has_own_limits);
    CHECK(found->best().hole_readings.has_value());
    CHECK(!found->best().shaft_readings); // it is measured already
}

TEST_CASE("a hole that is there leads: the shaft is chosen, and no plan is made for the hole") {
    const wants w{.nominal = 8_mm,
                  .must = want::slides_without_shake,
                  .leads = measured_hole(8.020_mm, 1_um),
                  .hole_made_of = materials::brass_cuzn39pb3,
                  .shake_at_most = 20_um,
                  .drawer = drawer};
    const auto found = choose<8>(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    for (const candidate& c : *found) {
        CHECK(c.plan.error().code() == error_code::not_asked);
        CHECK(c.gauge.error().code() == error_code::not_asked);
        if (!c.holds_all()) continue;
        CHECK(c.shaft.upper_limit() <= 8.019_mm); // 8.020 - 0.001 - 0
        CHECK(c.shaft.lower_limit() >= 8.001_mm); // 8.020 + 0.001 - 0.020
    }
}

TEST_CASE("a reamer leads: the shaft goes with what it cuts") {
    wants w = plunger_wants();
    w.leads = hand_reamer(8_mm, hole_h7);
    const auto found = choose(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    const hole_limits cut = found->best().hole;
    CHECK(cut.lower_limit() == 8.006_mm); // DIN 1420, as reamed_hole has it
    CHECK(cut.upper_limit() == 8.015_mm);
    for (const candidate& c : *found) CHECK(c.hole == cut);
    CHECK(found->best().reasons.contains(choice_reason::trial_hole_first)); // nobody has seen it cut
    w.leads = twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm});
    refuses(w, error_code::lead_not_usable, "a drill does not decide a hole's size");
    refuses(w, error_code::lead_not_usable, "once it is made and measured");
    w.leads = boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm});
    refuses(w, error_code::lead_not_usable, "goes to any size");
    w.leads = drawer_tool();
    refuses(w, error_code::lead_not_usable, "not a tool");
    w.leads = hand_reamer(8_mm, hole_h7);
    w.hole_made_of = {};
    refuses(w, error_code::want_without_figure, ".hole_made_of");
}

TEST_CASE("a tool that leads and the drawer") {
    wants w = plunger_wants();
    w.leads = hand_reamer(8_mm, hole_h7);
    w.drawer = drawer;
    const auto planned = choose<1>(w);
    REQUIRE(planned);
    CHECK(planned->best().plan.has_value());
    CHECK(planned->best().reasons.contains(choice_reason::tool_is_there));
    w.drawer = rows<drawer_tool>(drawer, 1); // drills alone
    const auto bare = choose<1>(w);
    REQUIRE(bare);
    REQUIRE(!bare->best().plan);
    const std::string why(std::string_view(bare->best().plan.error().message()));
    CHECK(why.find("the 8 H7 hand reamer leads and is not in the .drawer") == 0);
    CHECK(why.find("allowed") != std::string::npos);
    // by the common overcut, on which no plan relies: a trial hole first
    w.drawer = {};
    w.leads = half_round_bit(tool_limits(7.990_mm, 7.994_mm));
    const auto bit = choose<1>(w);
    REQUIRE(bit);
    CHECK(bit->best().reasons.contains(choice_reason::trial_hole_first));
}

TEST_CASE("what the drawer makes comes first, then preferred fits, then wide ones, then close ones") {
    wants w = plunger_wants();
    w.leak = leak_budget(w.leak.past(),
                         percent{2}); // 39.46 um (2/10)^(1/3) = 23.08 um: no H7 with a fit of its own
    const auto bare = choose(w);
    REQUIRE(bare);
    REQUIRE(bare->hold_all());
    CHECK(bare->best().fit_reasons.contains(fit_reason::preferred_fit));
    w.drawer = drawer; // its boring head makes no IT6 hole
    const auto made = choose(w);
    REQUIRE(made);
    REQUIRE(made->hold_all());
    CHECK(made->best().plan.has_value());
    CHECK(made->best().pair().max_clearance() <= 23.1_um);

    // 90 um of IT11 as D11, C11, B11 and A11 have, but the least play
    const wants loose{.nominal = 8_mm, .must = want::turns_freely, .leads = measured_shaft(7.970_mm, 2_um)};
    const auto found = choose(loose);
    REQUIRE(found);
    CHECK(found->best().hole_class.given() == hole_class{position::h, grade::it11});
    CHECK(found->best().err == erring::loose);
}

TEST_CASE("a pin pressed into aluminium, at 95 C") {
    const wants w = pin_wants();
    // hot it loses 14 mm 75 K (23.4 - 11.2)e-6 = 12.81 um.
    // Lame: p = U / (14 mm (1.6092/70 GPa + 0.71/205 GPa)) = U / 3.703e-13; grip pi 14 mm 28 mm p 0.05
    // s6, 10 um: nothing is left
    const auto loose = held_against(w, fit_h7_s6);
    REQUIRE(loose);
    CHECK(answer_of(*loose, want::never_moves).loose.holds == holding::no);
    CHECK(answer_of(*loose, want::never_moves).loose.too_loose);
    CHECK(answer_of(*loose, want::never_moves).tight.holds == holding::yes);
    // u6, 15 um: 2.19 um, 5.91 MPa, 364 N; 44 um: 118.8 MPa, 235 of 250 MPa
    const auto right = held_against(w, fit_h7_u6);
    REQUIRE(right);
    CHECK(right->holds_all());
    const want_answer& grip = answer_of(*right, want::never_moves);
    CHECK(grip.in == margin_unit::times);
    CHECK(*grip.loose.margin == doctest::Approx(364.0 / 300 - 1).epsilon(0.03));
    CHECK(*grip.tight.margin == doctest::Approx(250 / 235.1 - 1).epsilon(0.03));
    // x6, 51 um: 137.7 MPa, 272 of 250 MPa: the hub yields
    const auto tight = held_against(w, fit_h7_x6);
    REQUIRE(tight);
    CHECK(answer_of(*tight, want::never_moves).tight.holds == holding::no);
    CHECK(answer_of(*tight, want::never_moves).tight.too_tight);
    CHECK(answer_of(*tight, want::never_moves).loose.holds == holding::yes);

    const auto found = choose(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    CHECK(found->best().pressed->in_service.axial_grip.least.value() >= 300);
    CHECK(found->best().take_care.contains(caution::press_force));
    CHECK(
        (found->best().pair() == fit_h7_u6 || found->best().fit_reasons.contains(fit_reason::preferred_fit)));

    wants weak_press = w;
    weak_press.must |= want::presses_in;
    weak_press.joint.press_at_most = newtons(1000); // 44 um takes 118.8 MPa 1232 mm2 0.2 = 29 kN
    const auto none = choose(weak_press);
    REQUIRE(none);
    CHECK(!none->hold_all());
    CHECK(none->allowed().least > none->allowed().most);
    CHECK(none->best().reasons.contains(choice_reason::wants_missed));
    const auto in_press = held_against(weak_press, fit_h7_u6);
    REQUIRE(in_press);
    CHECK(*answer_of(*in_press, want::presses_in).tight.margin ==
          doctest::Approx(1000 - 29'260).epsilon(0.02));
}

TEST_CASE("what the parts bear is not known: nobody can tell, and it says so") {
    wants w = pin_wants();
    w.hole_made_of.yield_strength = {};
    w.hole_made_of.least_yield_strength = {};
    const auto r = held_against(w, fit_h7_u6);
    REQUIRE(r);
    CHECK(answer_of(*r, want::never_moves).holds() == holding::cannot_tell);
    CHECK(r->reasons.contains(choice_reason::cannot_be_told));
    CHECK(!r->holds_all());
    w.joint.hub_may_bear = megapascals(250);
    CHECK(held_against(w, fit_h7_u6)->holds_all());
    // nor of a part that creeps, or is hotter than it bears: it holds today
    w.hole_made_of.family = material_family::plastic;
    CHECK(answer_of(*held_against(w, fit_h7_u6), want::never_moves).holds() == holding::cannot_tell);
    w.hole_made_of.family = material_family::aluminium;
    w.hole_made_of.highest_heating = celsius(90);
    const auto soft = held_against(w, fit_h7_u6);
    CHECK(answer_of(*soft, want::never_moves).holds() == holding::cannot_tell);
    CHECK(soft->pressed->doubts.contains(press_doubt::hotter_than_allowed));
    CHECK(soft->stopped_by()->wanted == want::never_moves);
    // what is missed stops a pair before what can't be told
    w.must |= want::presses_in;
    w.joint.press_at_most = newtons(1000);
    CHECK(held_against(w, fit_h7_u6)->stopped_by()->wanted == want::presses_in);
}

TEST_CASE("a pair that is held against the wants is one, and of their size") {
    const wants w = plunger_wants();
    const auto refused = [&](const fit& f, const char* piece) {
        const auto r = held_against(w, f);
        REQUIRE(!r);
        INFO(std::string_view(r.error().message()));
        CHECK(r.error().code() == error_code::nominal_sizes_differ);
        CHECK(r.error().message().find(piece) != text::npos);
        CHECK(r.error().message().find("allowed") != text::npos);
    };
    refused(fit_h7_s6, "a hole of 14 to 14.018 mm at a nominal size of 8 mm");
    refused({fit_h7_f7.hole(), fit_h7_s6.shaft()}, "a shaft of 14.028 to 14.039 mm");
    // crossed limits have clearances that look good at both ends
    refused({hole_limits(between(8.02_mm, 8_mm)), fit_h7_g6.shaft()}, "a hole of 8.02 to 8 mm");
    refused({fit_h7_g6.hole(), shaft_limits(between(7.99_mm, 7.98_mm))}, "the lower limit first");
    const length most = length::from_nanometres(INT64_MAX);
    refused({hole_limits(most, {.upper = most, .lower = -most}), fit_h7_g6.shaft()}, "beyond 500000 km");
    CHECK(held_against(w, {hole_limits(between(8.3_mm, 8.31_mm)), shaft_limits(between(8.27_mm, 8.28_mm))}));
}

TEST_CASE("what is said of a given pair: its classes, preferred or not; no advice to choose otherwise") {
    const wants w = plunger_wants();
    const auto g6 = held_against(w, fit_h7_g6);
    REQUIRE(g6);
    CHECK(g6->fit_reasons.contains(fit_reason::preferred_fit));
    constexpr fit odd = "8 JS9/p5"_fit; // neither preferred
    const auto js9 = held_against(w, odd);
    REQUIRE(js9);
    CHECK(js9->hole_class.given() == "JS9"_hole_class);
    CHECK(js9->shaft_class.given() == "p5"_shaft_class);
    CHECK(!js9->reasons.contains(choice_reason::no_class));
    CHECK(!js9->fit_reasons.contains(fit_reason::preferred_fit));
    CHECK(!js9->holds_all());
    CHECK(!js9->reasons.contains(choice_reason::let_one_part_lead)); // H7/g6 does
    const fit own(hole_limits(between(8.001_mm, 8.012_mm)), fit_h7_g6.shaft());
    CHECK(held_against(w, own)->reasons.contains(choice_reason::no_class));
}

TEST_CASE("a ring gauge for the shaft that is to be made") {
    wants w = plunger_wants();
    const auto g6 = held_against(w, fit_h7_g6);
    REQUIRE(g6);
    REQUIRE(g6->ring);
    CHECK(*g6->ring == ring_gauge(fit_h7_g6.shaft()).value());
    w.leads = measured_shaft(7.985_mm, 2_um);
    const auto found = choose<1>(w);
    REQUIRE(found);
    CHECK(found->best().ring.error().code() == error_code::not_asked); // the shaft is there
    w.leads = measured_hole(8.010_mm, 1_um);
    const auto hole = choose<1>(w);
    REQUIRE(hole);
    CHECK(hole->best().gauge.error().code() == error_code::not_asked);
    CHECK(hole->best().ring.has_value() == ring_gauge(hole->best().shaft).has_value());
}

TEST_CASE("cautions go with the wants, whether they hold or not") {
    wants w = pin_wants();
    w.must = want::pressure_tight;
    w.joint.of_fluid = megapascals(0.3);
    constexpr fit loose = "14 H7/f7"_fit;
    CHECK(held_against(w, loose)->take_care.contains(caution::under_pressure));
    const wants bearing{.nominal = 14_mm,
                        .must = want::runs_on_oil,
                        .hole_made_of = materials::bronze_cusn7zn4pb7,
                        .shaft_made_of = materials::steel_c45,
                        .film = {.width = 14_mm, .load = newtons(50), .oil_in = 30_degC},
                        .speed = revolutions_per_minute(1450),
                        .liquid = *oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95))};
    const auto seized = held_against(bearing, fit_h7_s6);
    REQUIRE(seized);
    CHECK(!seized->film);
    CHECK(seized->take_care.contains(caution::rotating));
}

TEST_CASE("figures that nobody can have meant are refused") {
    const double infinite = std::numeric_limits<double>::infinity();
    const double no_number = std::numeric_limits<double>::quiet_NaN();
    const length most = length::from_nanometres(INT64_MAX);
    const length least = length::from_nanometres(INT64_MIN);
    constexpr auto without_figure = error_code::want_without_figure;
    for (const length shake : {least, -1_um, 0_um, 9_mm, most}) {
        wants w{.nominal = 8_mm, .must = want::slides_without_shake, .shake_at_most = shake};
        refuses(w, without_figure, ".shake_at_most above 0, up to the nominal size");
        w = {.nominal = 8_mm,
             .must = want::never_seizes,
             .hole_made_of = plain_steel,
             .shaft_made_of = plain_steel,
             .states = hot,
             .left_at_least = shake};
        refuses(w, without_figure, ".left_at_least above 0, up to the nominal size");
    }
    for (const length off : {least, -9_mm, 9_mm, most}) {
        wants w{.nominal = 8_mm, .must = want::turns_freely, .uncertainty = off};
        refuses(w, error_code::not_an_uncertainty, "up to the nominal size");
        w.uncertainty = {};
        w.leads = measured_shaft(8_mm, off);
        refuses(w, error_code::lead_not_usable, "an eighth off");
    }
    wants w{.nominal = 8_mm, .must = want::turns_freely};
    w.leads = measured_hole(most, 1_um);
    refuses(w, error_code::lead_not_usable, "an eighth off");
    w.leads = hole_limits(most, {.upper = most, .lower = 0_um});
    refuses(w, error_code::lead_not_usable, "an eighth off");
    w.leads = shaft_limits(between(least, most));
    refuses(w, error_code::lead_not_usable, "an eighth off");

    for (const double force_of_press : {-1.0, 0.0, infinite, no_number}) {
        w = pin_wants();
        w.must = want::presses_in;
        w.joint.press_at_most = newtons(force_of_press);
        refuses(w, without_figure, ".joint.press_at_most above 0");
    }
    w = plunger_wants();
    const gap around = w.leak.past().around;
    for (const double budget : {-1.0, 0.0, infinite, no_number}) {
        w.leak = leak_budget(around, cubic_millimetres_per_second(budget));
        refuses(w, without_figure, ".leak of more than 0");
    }
    for (const double viscous : {-1.0, no_number}) {
        gap g = around;
        g.viscosity = millipascal_seconds(viscous);
        w.leak = leak_budget(g, cubic_millimetres_per_second(1));
        refuses(w, without_figure, ".leak with a viscosity");
    }
    for (const length diameter : {least, -8_mm, 5_mm, 80_mm, most}) { // of another pair
        gap g = around;
        g.diameter = diameter;
        w.leak = leak_budget(g, cubic_millimetres_per_second(1));
        refuses(w, error_code::nominal_sizes_differ, "at a nominal size of 8 mm");
    }
    gap g = around;
    g.diameter = 8.4_mm;
    w.leak = leak_budget(g, cubic_millimetres_per_second(1));
    CHECK(choose<1>(w));
}

TEST_CASE("a dowel of 6 m6 that comes out by hand and stays within 20 um") {
    wants w{.nominal = 6_mm,
            .must = want::comes_apart_by_hand | want::stays_central,
            .leads = pin_m6,
            .shake_at_most = 20_um};
    const auto found = choose<8>(w);
    REQUIRE(found);
    REQUIRE(found->hold_all());
    // m6 is 6.004 to 6.012: the hole from 6.012 to 6.024
    bool has_own_limits = false;
    for (const candidate& c : *found) {
        if (!c.holds_all()) continue;
        CHECK(c.hole.lower_limit() >= 6.012_mm);
        CHECK(c.hole.upper_limit() <= 6.024_mm);
        CHECK(c.shaft_class.given() == "m6"_shaft_class);
        has_own_limits = has_own_limits || c.hole == hole_limits::between(6.012_mm, 6.024_mm);
    }
    CHECK(has_own_limits);
    // 8 um of pin leave nothing of 8 um
    w.shake_at_most = 8_um;
    const auto none = choose(w);
    REQUIRE(none);
    CHECK(!none->hold_all());
    CHECK(none->best().off > 0_mm);
    CHECK(!none->best().reasons.contains(choice_reason::let_one_part_lead)); // one leads
}

TEST_CASE("a plug under pressure, and a bearing with its film") {
    wants w = pin_wants();
    w.must = want::pressure_tight;
    w.joint.of_fluid = megapascals(0.3);
    w.joint.safety = {.against_slipping = 1.5, .against_yield = 1};
    const auto plugs = choose(w);
    REQUIRE(plugs);
    REQUIRE(plugs->hold_all());
    REQUIRE(plugs->best().plug);
    CHECK(plugs->best().plug->holds() == holding::yes);
    CHECK(plugs->best().plug->in_service.seal_margin.least >= 1.5);
    CHECK(plugs->best().take_care.contains(caution::under_pressure));

    wants bearing{.nominal = 25_mm,
                  .must = want::turns_freely | want::runs_on_oil,
                  .hole_made_of = materials::bronze_cusn7zn4pb7,
                  .shaft_made_of = materials::steel_c45,
                  .film = {.width = 25_mm,
                           .load = newtons(300),
                           .oil_in = 30_degC,
                           .roughness = {.shaft = 1_um, .bore = 2_um}},
                  .speed = revolutions_per_minute(1450),
                  .liquid = *oil(oil_kind::hydraulic, iso_vg::vg32, viscosity_index(95))};
    const auto runs = choose(bearing);
    REQUIRE(runs);
    REQUIRE(runs->hold_all());
    CHECK(runs->best().film->regime == film_regime::full_film);
    CHECK(runs->best().film->least_film() >= runs->best().film->limit_film);
    CHECK(runs->best().take_care.contains(caution::rotating));
    // once a minute nothing floats: none holds, and the film is named
    bearing.speed = revolutions_per_minute(1);
    const auto slow = choose(bearing);
    REQUIRE(slow);
    CHECK(!slow->hold_all());
    CHECK(slow->best().stopped_by()->wanted == want::runs_on_oil);
}

TEST_CASE("wants that contradict each other: the compromise names what stops it, and by how much") {
    // from 30 um up, and up to 20 um
    const wants w{.nominal = 8_mm,
                  .must = want::never_seizes | want::stays_central,
                  .hole_made_of = materials::steel_c45,
                  .shaft_made_of = materials::steel_c45,
                  .states = bench_only,
                  .left_at_least = 30_um,
                  .shake_at_most = 20_um};
    const auto found = choose(w);
    REQUIRE(found);
    CHECK(!found->hold_all());
    CHECK(found->allowed() == clearance_window{30_um, 20_um});
    const candidate& c = found->best();
    const auto stop = c.stopped_by();
    REQUIRE(stop);
    // one of the two only, and what it is off by is what its limits say
    int broken = 0;
    for (const want_answer& a : c.answers()) broken += a.holds() != holding::yes;
    CHECK(broken == 1);
    if (stop->wanted == want::never_seizes) CHECK(stop->off == 30_um - c.pair().min_clearance());
    else CHECK(stop->off == c.pair().max_clearance() - 20_um);
    CHECK(c.hole_class.given().grade >= grade::it5);
    // no window, so letting one part lead helps nothing
    CHECK(!c.reasons.contains(choice_reason::let_one_part_lead));
}

TEST_CASE("a window that one part can use and two cannot: let one lead") {
    const wants w{.nominal = 8_mm,
                  .must = want::never_seizes | want::slides_without_shake,
                  .hole_made_of = materials::steel_c45,
                  .shaft_made_of = materials::steel_c45,
                  .states = bench_only,
                  .left_at_least = 10_um,
                  .shake_at_most = 20_um,
                  .finest = grade::it6}; // 9 um each
    const auto found = choose(w);
    REQUIRE(found);
    CHECK(!found->hold_all());
    CHECK(found->best().reasons.contains(choice_reason::let_one_part_lead));
    for (const candidate& c : *found) {
        CHECK(c.hole_class.given().grade >= grade::it6);
        CHECK(c.shaft_class.given().grade >= grade::it6);
    }
    wants narrow = w; // 8 um: not even one part of 9 um
    narrow.shake_at_most = 18_um;
    const auto none = choose(narrow);
    REQUIRE(none);
    CHECK(!none->hold_all());
    CHECK(!none->best().reasons.contains(choice_reason::let_one_part_lead));
}

TEST_CASE("what is missing is named") {
    const wants nothing{.nominal = 8_mm};
    refuses(nothing, error_code::nothing_wanted, ".must");
    const auto lacks = [](want w, const char* figure) {
        refuses({.nominal = 8_mm, .must = w}, error_code::want_without_figure, figure);
    };
    lacks(want::never_seizes, ".states");
    lacks(want::slides_without_shake, ".shake_at_most");
    lacks(want::stays_central, ".shake_at_most");
    lacks(want::runs_on_oil, ".film.width");
    lacks(want::holds_oil, ".leak");
    lacks(want::never_moves, ".joint.load");
    lacks(want::pressure_tight, ".joint.of_fluid");
    lacks(want::presses_in, ".joint.press_at_most");

    wants w = pin_wants();
    w.joint.between = {.least = 0, .most = 0};
    refuses(w, error_code::want_without_figure, "friction");
    w = pin_wants();
    w.joint.hub_outside = {};
    refuses(w, error_code::want_without_figure, ".joint.hub_outside");
    w = pin_wants();
    w.joint.joint_length = {};
    refuses(w, error_code::want_without_figure, ".joint.joint_length");
    w = pin_wants();
    w.hole_made_of = {};
    refuses(w, error_code::want_without_figure, ".hole_made_of");
    w = pin_wants();
    w.joint.hub_outside = 10_mm; // smaller than the joint: the room that is asked says so
    refuses(w, error_code::joint_not_possible, "hub of 10 mm");
    w = pin_wants();
    w.hole_made_of.youngs_modulus = {};
    refuses(w, error_code::property_not_known, "Young's modulus");

    w = plunger_wants();
    w.leak = leak_budget(w.leak.past(), percent{0});
    refuses(w, error_code::want_without_figure, "more than 0");
    w.leak = leak_budget(w.leak.past(), percent{120});
    refuses(w, error_code::want_without_figure, "up to 100 %");
    w = plunger_wants();
    gap dry = w.leak.past().around;
    dry.viscosity = {};
    w.leak = leak_budget(dry, millilitres_per_minute(1));
    refuses(w, error_code::want_without_figure, ".liquid");
    w.liquid = fluids::water;
    CHECK(choose(w).has_value());
    dry.land = {};
    w.leak = leak_budget(dry, millilitres_per_minute(1));
    refuses(w, error_code::not_a_gap, "land");

    w = {.nominal = 8_mm, .must = want::turns_freely, .states = day};
    refuses(w, error_code::want_without_figure, ".shaft_made_of");
    w = {.nominal = 8_mm, .must = want::turns_freely, .drawer = drawer};
    refuses(w, error_code::want_without_figure, "drawer");
    refuses({.nominal = 0_mm, .must = want::turns_freely}, error_code::size_out_of_range, "above 0");
    w = {.nominal = 8_mm, .must = want::turns_freely, .leads = measured_shaft(5_mm, 2_um)};
    refuses(w, error_code::lead_not_usable, "an eighth");
    w = {.nominal = 8_mm, .must = want::turns_freely, .finest = grade(99)};
    CHECK(!choose(w));
}

TEST_CASE("the answer in words: wants, reasons for and against, doubts and cautions") {
    wants w = plunger_wants();
    w.states = day;
    w.drawer = drawer;
    w.uncertainty = 2_um;
    std::ostringstream out;
    out << *choose<2>(w);
    const std::string words = out.str();
    INFO(words);
    const auto says = [&](const char* piece) { return words.find(piece) != std::string::npos; };
    CHECK(says("all wants hold:\n1. 8 H"));
    CHECK(says("holds oil: tight end yes, "));
    CHECK(says(" % of the stroke to spare"));
    CHECK(says("for: a preferred fit of ISO 286-1"));
    CHECK(says("tightest cool-down"));
    CHECK(says("mind: Density not given"));
    CHECK(says("care: Pressure stores energy"));
    CHECK(says("accept hole readings"));
    CHECK(says("hole: "));

    out.str({});
    out << *held_against(w, fit_h7_f7);
    CHECK(out.str().find("loose end no, misses by ") != std::string::npos);
    CHECK(out.str().find("against: a want does not hold") != std::string::npos);
    w.leak = leak_budget(w.leak.past(), percent{0.0001});
    w.must |= want::never_seizes;
    w.left_at_least = 10_um;
    out.str({});
    out << *choose<1>(w);
    CHECK(out.str().find("no pair holds all wants; the nearest is stopped by '") == 0);
    CHECK(out.str().find(" um beyond:") != std::string::npos);
}

TEST_CASE("every want and reason has its words") {
    for (int i = 0; i < want_count; ++i) CHECK(!in_words(static_cast<want>(1 << i)).empty());
    for (int i = 0; i < 15; ++i) CHECK(!in_words(static_cast<choice_reason>(1 << i)).empty());
    CHECK(in_words(static_cast<want>(1 << want_count)).empty());
    CHECK(speaks_against(choice_reason::no_plan));
    CHECK(!speaks_against(choice_reason::gauge_exists));
}
