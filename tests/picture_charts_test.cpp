// Clearance against temperature, the ladder of a hole plan, how often which clearance, pressure over interference:
// what is written is what the library answers, what is drawn is to scale.

#include "support/both.hpp"
#include "support/svg.hpp"
#include <fitwright/fitwright.hpp>
#include <fitwright/io/chance.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/picture.hpp>

#include <cmath>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

// Named, since clang 14 does not survive a list of literals.
constexpr fit fit_12_h7_g6 = "12 H7/g6"_fit;
constexpr fit fit_12_h7_s6 = "12 H7/s6"_fit;
constexpr fit fit_12_h7_k6 = "12 H7/k6"_fit;
constexpr fit fit_300_d10_h9 = "300 D10/h9"_fit;
constexpr fit fit_3_h6_h5 = "3 H6/h5"_fit;
constexpr fit fit_8_h7_g6 = "8 H7/g6"_fit;
constexpr fit fit_8_h7_k6 = "8 H7/k6"_fit;
constexpr fit fit_8_h7_s6 = "8 H7/s6"_fit;
constexpr fit fit_200_c11_h11 = "200 C11/h11"_fit;
constexpr fit fit_14_h7_p6 = "14 H7/p6"_fit;
constexpr fit fit_14_h7_k6 = "14 H7/k6"_fit;
constexpr fit fit_14_h7_zc8 = "14 H7/zc8"_fit;
constexpr hole_limits bore_10_h7 = "10 H7"_hole;
constexpr fit fit_250_h7_x7 = "250 H7/x7"_fit;

const thermal_state states[] = {{"bench", 20_degC, 20_degC},
                                {"warm-up", 95_degC, 60_degC},
                                {"working", 90_degC, 85_degC},
                                {"cool-down", 40_degC, 70_degC}};

heat_picture slide_when_warm() {
    return {.of = "12 H7/g6"_fit,
            .hole = materials::steel_c45,
            .shaft = materials::aluminium_6082_t6,
            .states = states};
}

/// "0.021 to 0.0508", outwards to 0.1 um.
std::string outwards(clearance_window w) {
    return std::string(written(fitwright::detail::multiple_at_or_below(w.least, 100_nm))) + " to " +
           std::string(written(fitwright::detail::multiple_at_or_above(w.most, 100_nm)));
}

/// Pixels for each nanometre, from the lines across and the numbers before them.
struct ruled {
    double zero; ///< where 0 is
    double per_unit;
};
ruled ruled_by(const picture_read& p, std::size_t first, std::size_t last) {
    const auto lines = p.of_class("rule");
    REQUIRE(lines.size() > last);
    const auto height = [&](std::size_t i) { return numbers_of(lines[i].get("d")).at(1); };
    std::vector<double> values;
    for (const element& e : p.texts())
        if (e.get("text-anchor") == "end" && e.get("font-size") == "12" && !numbers_in(e.words).empty() &&
            numbers_in(e.words)[0] == e.words)
            values.push_back(std::stod(e.words));
    REQUIRE(values.size() > last);
    const double per_unit = (height(first) - height(last)) / (values[last] - values[first]);
    return {height(first) + values[first] * per_unit, per_unit};
}

constexpr drawer_tool drawer[] = {
    twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
    hand_reamer(10_mm, "H7"_hole_class),
    boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm}),
};

joint liner() {
    return {.seat = "14 H7/s6"_fit,
            .hub = {.made_of = materials::aluminium_6082_t6, .outside = 40_mm, .at = 95_degC},
            .shaft = {.made_of = materials::bronze_cusn7zn4pb7, .bore = 8_mm, .at = 95_degC},
            .joint_length = 28_mm,
            .roughness = {.hub = 6_um, .shaft = 4_um},
            .between = frictions::any_pair};
}

template <class Picture> error refused(const Picture& p) {
    std::string made;
    const auto r = draw(p, [&](text piece) { made.append(piece.data(), piece.size()); });
    REQUIRE(!r);
    CHECK(made.empty());
    CHECK(r.error().message().size() < error::capacity);
    return r.error();
}

} // namespace

TEST_CASE("heat: every state with its clearance, and where it seizes") {
    const heat_picture asked = slide_when_warm();
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    const char* how_warm[] = {", 20 \xC2\xB0"
                              "C: ",
                              ", hole 95 \xC2\xB0"
                              "C, shaft 60 \xC2\xB0"
                              "C: ",
                              ", hole 90 \xC2\xB0"
                              "C, shaft 85 \xC2\xB0"
                              "C: ",
                              ", hole 40 \xC2\xB0"
                              "C, shaft 70 \xC2\xB0"
                              "C: "};
    const ruled scale = ruled_by(p, 0, 2);
    const auto bars = p.of_class("state");
    REQUIRE(bars.size() == 4);
    double bars_least = 1e9;
    for (std::size_t i = 0; i < 4; ++i) {
        const auto hot =
            at_temperature(asked.of, {asked.hole, states[i].hole}, {asked.shaft, states[i].shaft});
        REQUIRE(hot);
        CHECK(p.says(std::string(states[i].name) + how_warm[i] + outwards(hot->clearance) + " mm"));
        const rectangle bar = box_of(bars[i]);
        CHECK(std::abs(bar.top - (scale.zero - hot->max_clearance().in<micrometre>() * scale.per_unit)) <
              0.05);
        CHECK(std::abs(bar.bottom - (scale.zero - hot->min_clearance().in<micrometre>() * scale.per_unit)) <
              0.05);
        bars_least = (std::min)(bars_least, hot->min_clearance().in<micrometre>());
    }
    const auto ground = numbers_of(p.of_class("ground").front().get("d"));
    CHECK(ground.at(1) == doctest::Approx(scale.zero).epsilon(0.0005));
    CHECK(bars_least < 0); // an aluminium shaft in steel: two states lie below the ground, and show it
    CHECK(p.of_class("hatch").size() > 3);

    const auto seizing = seizing_temperature(asked.of, asked.hole, asked.shaft);
    REQUIRE(seizing);
    REQUIRE(seizing->heated.is_possible());
    CHECK(p.of_class("seizing").size() == 1);
    CHECK(p.says("both heated: seizing " + std::string(in_words(seizing->heated.outcome)) + ", from "));
    seizing->heated.doubts.for_each(
        [&](thermal_doubt d) { CHECK(p.says("mind: " + std::string(in_words(d)))); });
}

TEST_CASE("heat: the band over the temperature begins and ends at the fit of that temperature") {
    const heat_picture asked = slide_when_warm();
    const picture_read p(svg_of(asked));
    const ruled scale = ruled_by(p, 0, 2);
    const auto band = numbers_of(p.of_class("band").front().get("d"));
    REQUIRE(band.size() == 2 * 2 * 33);
    CHECK(p.has_line("20 \xC2\xB0"
                     "C"));
    CHECK(p.has_line("95 \xC2\xB0"
                     "C"));
    const auto height = [&](length l) { return scale.zero - l.in<micrometre>() * scale.per_unit; };
    const auto at = [&](temperature t) {
        return *at_temperature(asked.of, {asked.hole, t}, {asked.shaft, t});
    };
    CHECK(std::abs(band[1] - height(at(20_degC).max_clearance())) < 0.05);
    CHECK(std::abs(band[65] - height(at(95_degC).max_clearance())) < 0.05);
    CHECK(std::abs(band[67] - height(at(95_degC).min_clearance())) < 0.05);
    CHECK(std::abs(band[131] - height(at(20_degC).min_clearance())) < 0.05);

    // the mark of seizing stands where the band's lower edge meets the ground
    const auto mark = numbers_of(p.of_class("seizing").front().get("d"));
    const double seizes = (*seizing_temperature(asked.of, asked.hole, asked.shaft)->heated.earliest).value();
    CHECK(mark.at(0) == doctest::Approx(band[0] + (band[64] - band[0]) * (seizes - 20) / 75).epsilon(0.001));
}

TEST_CASE("heat: other fits, other units, one state, eight states") {
    for (const fit& f : {fit_12_h7_g6, fit_12_h7_s6, fit_12_h7_k6, fit_300_d10_h9, fit_3_h6_h5})
        for (const written_unit u : {written_unit::mm, written_unit::in}) {
            thermal_state many[8];
            for (auto& s : many)
                s = {"a state with rather a long name, longer than a line of the legend is", 20_degC,
                     120_degC};
            for (const std::size_t how_many : {std::size_t(1), std::size_t(8)}) {
                heat_picture asked = slide_when_warm();
                asked.of = f;
                asked.unit = u;
                asked.states = rows<thermal_state>(many, how_many);
                asked.title = "<b>&";
                const std::string svg = svg_of(asked);
                CHECK(svg == svg_of(asked));
                picture_read(svg).check_house_rules();
                asked.names_doubts = false;
                CHECK_FALSE(picture_read(svg_of(asked)).says("mind:"));
            }
        }
    heat_picture cold = slide_when_warm();
    cold.hole = materials::aluminium_6082_t6;
    cold.shaft = materials::steel_c45;
    const picture_read p(svg_of(cold));
    p.check_house_rules();
    CHECK(p.says("both heated: seizing does not happen"));
    CHECK(p.says("both cooled: seizing"));
}

TEST_CASE("heat: what can't be drawn is refused") {
    heat_picture asked = slide_when_warm();
    asked.states = rows<thermal_state>();
    CHECK(refused(asked).code() == error_code::no_states);
    const thermal_state nine[9] = {};
    asked.states = nine;
    const error too_many = refused(asked);
    CHECK(too_many.code() == error_code::too_many_to_draw);
    CHECK(too_many.message() == "there are 9 states; a picture has room for up to 8");
    const thermal_state furnace[] = {{"furnace", celsius(3000), celsius(20)}};
    asked.states = furnace;
    CHECK(refused(asked).message().find("furnace") != text::npos);
    asked = slide_when_warm();
    asked.of = fit("12 H7"_hole, shaft_limits(12_mm, {-2_um, -1_um}));
    CHECK(refused(asked).code() == error_code::limits_crossed);
}

TEST_CASE("plan: every step with its sizes, on one scale with the limits") {
    const auto plan = plan_hole(bore_10_h7, drawer, materials::brass_cuzn39pb3);
    REQUIRE(plan);
    const picture_read p(svg_of(plan_picture{*plan}));
    p.check_house_rules();
    CHECK(p.has_line("hole wanted: 10 to 10.015 mm")); // ISO 286-2: 10 H7 +15/0
    std::size_t drawn = 0;
    double pixels = 0;
    for (const hole_step& s : plan->steps()) {
        CHECK(p.says(std::string(in_words(s.operation)) + ", " + std::string(s.tool.name())));
        if (s.operation == hole_operation::centre) continue;
        CHECK(p.says(std::string(written(s.least)) + " to " + std::string(written(s.most)) + " mm"));
        if (!s.decides_size) CHECK(p.says("leaves " + std::string(written(s.counted_stock)) + " mm"));
        const rectangle bar = p.box("step", drawn);
        const rectangle limits = p.box("hole", drawn + 1); // the first is the patch of the legend
        const double here = (bar.right - bar.left) / static_cast<double>((s.most - s.least).nanometres());
        const double of_limits = (limits.right - limits.left) / 15000;
        CHECK(here == doctest::Approx(of_limits).epsilon(0.002));
        const auto mean = numbers_of(p.of_class("mean").at(drawn).get("d"));
        CHECK(std::abs(mean.at(0) - bar.left -
                       static_cast<double>((s.mean - s.least).nanometres()) * of_limits) < 0.05);
        if (p.of_class("break").empty())
            CHECK(std::abs(bar.left - limits.left -
                           static_cast<double>((s.least - 10_mm).nanometres()) * of_limits) < 0.1);
        pixels = here;
        ++drawn;
    }
    CHECK(drawn == 2);
    CHECK(pixels > 0);
    CHECK(p.of_class("step").back().get("fill") != p.of_class("step").front().get("fill"));
    CHECK(p.says("decides the size"));
    CHECK(p.says("Prove it by a trial hole."));
}

TEST_CASE("plan: all sizes that the drawer reaches, in both units") {
    int with_breaks = 0;
    for (int mm = 2; mm <= 40; ++mm)
        for (const written_unit u : {written_unit::mm, written_unit::in}) {
            const auto bore = limits(1_mm * mm, "H7"_hole_class);
            const auto plan = plan_hole(*bore, drawer, materials::brass_cuzn39pb3);
            if (!plan) continue;
            const plan_picture asked{.of = *plan, .title = "a & b", .unit = u};
            const std::string svg = svg_of(asked);
            CHECK(svg == svg_of(asked));
            const picture_read p(svg);
            p.check_house_rules();
            if (p.of_class("break").empty()) continue;
            ++with_breaks;
            CHECK(p.says("but for the gaps cut short"));
        }
    CHECK(with_breaks > 10);
}

TEST_CASE("plan: what can't be drawn is refused") {
    const error empty = refused(plan_picture{hole_plan(bore_10_h7)});
    CHECK(empty.code() == error_code::nothing_to_draw);
    CHECK(empty.message().find("allowed") != text::npos);
    hole_plan crossed(hole_limits(10_mm, {0_um, 15_um}));
    crossed.add({});
    CHECK(refused(plan_picture{crossed}).code() == error_code::limits_crossed);
    hole_plan beyond(bore_10_h7);
    hole_step step;
    step.operation = hole_operation::drill;
    step.most = 10.011_mm * 1000;
    beyond.add(step);
    CHECK(refused(plan_picture{beyond}).code() == error_code::limits_too_far_apart);
}

TEST_CASE("chance: shares as printed, the hill as the distribution has it") {
    // two triangles: symmetrical, 12.0 um in the middle (8 H7/g6: least 5, most 29 um; ISO 286-2)
    const chance_picture asked{.of = "8 H7/g6"_fit,
                               .spread = spread::both(size_distribution::triangular()),
                               .window = {8_um, 20_um}};
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    const auto shares = *probability(asked.of, asked.window, asked.spread);
    const auto pairs = *clearances(asked.of, asked.spread);
    const auto share = [](double s) { return std::string(fitwright::detail::written_share(s)); };
    CHECK(p.has_line(share(shares.inside) + " of the pairs from 0.008 to 0.02 mm"));
    CHECK(p.has_line(share(shares.tighter) + " tighter, " + share(shares.looser) + " looser"));
    CHECK(p.has_line("mean " + std::string(written(pairs.mean(), {.decimals = 4})) + ", standard deviation " +
                     std::string(written(pairs.sigma(), {.decimals = 4})) + " mm"));
    CHECK(p.has_line("no clearance; 0.0 % interfere"));
    shares.doubts.for_each([&](chance_doubt d) { CHECK(p.says("mind: " + std::string(in_words(d)))); });

    // from the ticks: where a clearance lies
    const auto ticks = p.of_class("tick");
    REQUIRE(ticks.size() > 2);
    const double first = numbers_of(ticks[0].get("d")).at(0);
    std::vector<std::pair<double, double>> placed; // x, value
    for (const element& e : p.texts())
        if (e.get("text-anchor") == "middle") placed.emplace_back(e.number("x", 0), std::stod(e.words));
    REQUIRE(placed.size() == ticks.size());
    CHECK(placed[0].first == first);
    const double per_um = (placed.back().first - first) / (placed.back().second - placed[0].second);
    const auto x_of = [&](length l) { return first + (l.in<micrometre>() - placed[0].second) * per_um; };
    const auto edges = p.of_class("edge");
    REQUIRE(edges.size() == 2);
    CHECK(std::abs(numbers_of(edges[0].get("d")).at(0) - x_of(8_um)) < 0.05);
    CHECK(std::abs(numbers_of(edges[1].get("d")).at(0) - x_of(20_um)) < 0.05);

    // the area under the curve, split at the window's edges, is in the ratio of the shares
    const auto hill = numbers_of(p.of_class("hill").front().get("d"));
    REQUIRE(hill.size() == 4 * 97);
    const double base = hill.back();
    double all = 0;
    double inside = 0;
    double top = base;
    double top_at = 0;
    for (std::size_t i = 0; i + 1 < 97; ++i) {
        const double middle = (hill[2 * i] + hill[2 * i + 2]) / 2;
        const double area =
            (hill[2 * i + 2] - hill[2 * i]) * (base - (hill[2 * i + 1] + hill[2 * i + 3]) / 2);
        all += area;
        if (middle > x_of(8_um) && middle < x_of(20_um)) inside += area;
        if (hill[2 * i + 1] < top) {
            top = hill[2 * i + 1];
            top_at = hill[2 * i];
        }
    }
    CHECK(inside / all == doctest::Approx(shares.inside).epsilon(0.03));
    CHECK(base - top == 140);
    CHECK(std::abs(top_at - x_of(pairs.mean())) < 4);
}

TEST_CASE("chance: every shape, every kind of fit, windows near and far") {
    const size_distribution shapes[] = {size_distribution::uniform(), size_distribution::triangular(),
                                        size_distribution::towards_maximum_material(),
                                        size_distribution::normal({.cp = 1.33, .shift = 0.25}),
                                        size_distribution::normal({.cp = 0.7}).inspected()};
    const clearance_window windows[] = {
        {8_um, 20_um}, {-1_mm, 1_mm}, {0_um, 0_um}, {5_mm, 6_mm}, {-6_um, 2_um}};
    const fit exact(hole_limits(8_mm, {1_nm, 0_nm}), shaft_limits(8_mm, {0_nm, -1_nm}));
    for (const fit& f : {fit_8_h7_g6, fit_8_h7_k6, fit_8_h7_s6, fit_200_c11_h11, exact})
        for (const auto& hole : shapes)
            for (const auto& shaft : shapes)
                for (const auto& window : windows) {
                    const chance_picture asked{.of = f,
                                               .spread = {.hole = hole, .shaft = shaft},
                                               .window = window,
                                               .title = "8 & <9>",
                                               .unit = window.least < length() ? written_unit::in
                                                                               : written_unit::mm};
                    const std::string svg = svg_of(asked);
                    picture_read(svg).check_house_rules();
                }
}

TEST_CASE("chance: what can't be drawn is refused; shares are words as the library prints them") {
    chance_picture asked{
        .of = "8 H7/g6"_fit, .spread = spread::both(size_distribution::uniform()), .window = {20_um, 8_um}};
    CHECK(refused(asked).code() == error_code::window_crossed);
    asked.window = {8_um, 20_um};
    asked.spread.hole = size_distribution::normal({.cp = 0});
    CHECK(refused(asked).code() == error_code::not_a_spread);
    for (const double share : {0.0, 1e-9, 0.0004, 0.0005, 0.123, 0.5, 0.9994, 0.99951, 1.0})
        CHECK(fitwright::detail::svg::share_in_words(share) ==
              fitwright::detail::written_share(share).view());
}

TEST_CASE("press: pressures and closing-in as press has them, over the interference") {
    const press_picture asked{.of = liner(), .title = "Liner in the block"};
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    const auto whole = press(liner());
    REQUIRE(whole);
    const auto in_um = [](length l) {
        return std::string(written(l, {.unit = written_unit::um, .decimals = 1}));
    };
    const auto state = [&](const char* when, const pressed_state& s) {
        return when + std::string(": ") +
               std::string(fitwright::detail::three_figures(s.joint_pressure.least.value() / 1e6)) + " to " +
               std::string(fitwright::detail::three_figures(s.joint_pressure.most.value() / 1e6)) +
               " MPa, the bore closes by " + in_um(s.bore_closes_by.least) + " to " +
               in_um(s.bore_closes_by.most) + " \xC2\xB5m";
    };
    CHECK(p.says(state("at 20 \xC2\xB0"
                       "C",
                       whole->at_20)));
    CHECK(p.says(state("in service", whole->in_service)));
    CHECK(p.has_line("10")); // ISO 286-2: 14 H7 +18/0, s6 +39/+28
    CHECK(p.has_line("39"));
    whole->doubts.for_each([&](press_doubt d) { CHECK(p.says("mind: " + std::string(in_words(d)))); });

    // both panels: 25 spots there, 25 back; the ends are those of the whole range
    const auto lines = p.of_class("cold");
    REQUIRE(lines.size() == 2);
    REQUIRE(p.of_class("service").size() == 2);
    const ruled pressures = ruled_by(p, 0, 2);
    const auto cold = numbers_of(lines[0].get("d"));
    REQUIRE(cold.size() == 100);
    const auto height = [&](const figure<pressure>& q) {
        return pressures.zero - q.value() / 1e6 * pressures.per_unit;
    };
    CHECK(std::abs(cold[99] - height(whole->at_20.joint_pressure.least)) < 0.1);
    CHECK(std::abs(cold[49] - height(whole->at_20.joint_pressure.most)) < 0.1);
    const auto service = numbers_of(p.of_class("service")[0].get("d"));
    CHECK(std::abs(service[99] - height(whole->in_service.joint_pressure.least)) < 0.1);
    CHECK(std::abs(service[49] - height(whole->in_service.joint_pressure.most)) < 0.1);
}

TEST_CASE("press: solid shafts, standing still at 20 C, loads, no roughness, transition fits") {
    for (const fit& f : {fit_14_h7_p6, fit_14_h7_k6, fit_14_h7_zc8, fit_250_h7_x7})
        for (const bool is_hollow : {false, true})
            for (const double service : {20.0, 95.0}) {
                joint j = liner();
                j.seat = f;
                j.hub.outside = f.hole().nominal() * 2;
                j.shaft.bore = is_hollow ? f.hole().nominal() / 2 : 0_mm;
                j.hub.at = celsius(service);
                j.shaft.at = celsius(service);
                j.roughness = {};
                j.load = {.along = force::from_value(500)};
                const press_picture asked{.of = j, .unit = is_hollow ? written_unit::um : written_unit::in};
                const std::string svg = svg_of(asked);
                CHECK(svg == svg_of(asked));
                const picture_read p(svg);
                p.check_house_rules();
                CHECK(p.says(is_hollow ? "the bore closes by" : "the hub grows by"));
                CHECK(p.says("holds the load: "));
                CHECK(p.of_class("service").empty() == (service == 20));
            }
}

TEST_CASE("press: what can't be drawn is refused") {
    joint j = liner();
    j.seat = press_seat(14_mm, diametral_interference(20_um));
    const error no_range = refused(press_picture{.of = j});
    CHECK(no_range.code() == error_code::nothing_to_draw);
    CHECK(no_range.message().find("allowed") != text::npos);
    j = liner();
    j.hub.outside = 10_mm;
    CHECK(refused(press_picture{.of = j}).code() == press(j).error().code());
}
