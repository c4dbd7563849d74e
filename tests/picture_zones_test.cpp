// The tolerance intervals of a fit: what is written is the library's own, what is drawn is to scale (ISO 286-1,
// figures), and whatever the fit nothing lies on anything else.

#include "support/both.hpp"
#include "support/svg.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/material/materials.hpp>
#include <fitwright/picture.hpp>
#include <fitwright/thermal.hpp>

#include <random>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

std::string words_of(length l, number_format f = {}) { return std::string(written(l, f)); }

/// Pixels for each nanometre of a box that shows a tolerance.
double scale_of(const rectangle& box, length tolerance) {
    return (box.bottom - box.top) / static_cast<double>(tolerance.nanometres());
}

constexpr double half_a_hundredth = 0.011; // of a pixel at either end

} // namespace

TEST_CASE("12 H7/g6: limits, deviations and clearances as written") {
    // ISO 286-2: 12 H7 is +18/0, g6 is -6/-17 um
    const picture_read p(svg_of(zone_picture{"12 H7/g6"_fit}));
    p.check_house_rules();
    for (const char* line :
         {"12.018", "+18", "12.000", "0", "11.994", "-6", "11.983", "-17", "a", "b", "hole", "shaft",
          "least clearance 0.006 mm", "greatest clearance 0.035 mm", "zero line: nominal size 12 mm",
          "Limits in mm, deviations from nominal in \xC2\xB5m. To scale."})
        CHECK_MESSAGE(p.has_line(line), line);
    CHECK(p.all()[2].words ==
          "hole: 12.000 to 12.018 mm. shaft: 11.983 to 11.994 mm. fit with clearance: least clearance "
          "0.006 mm, greatest clearance 0.035 mm.");
    CHECK(p.root().get("aria-label") == "Tolerance intervals of a hole and a shaft");
}

TEST_CASE("12 H7/g6: drawn to scale about the zero line") {
    const picture_read p(svg_of(zone_picture{"12 H7/g6"_fit}));
    const rectangle hole = p.box("hole", 1); // the first is the patch of the heading
    const rectangle shaft = p.box("shaft", 1);
    const double zero = numbers_of(p.of_class("zero").front().get("d")).at(1);
    const double pixels = 170.0 / 35; // all there is to see, from 11.983 to 12.018
    CHECK(hole.bottom == zero);
    CHECK(hole.bottom - hole.top == doctest::Approx(18 * pixels).epsilon(0.0005));
    CHECK(shaft.top - zero == doctest::Approx(6 * pixels).epsilon(0.001));
    CHECK(shaft.bottom - zero == doctest::Approx(17 * pixels).epsilon(0.0005));

    // the dimensions end at the limits they are between; 6 um is long enough for heads inside
    const auto least = numbers_of(p.of_class("least").front().get("d"));
    CHECK(least == std::vector<double>{174, hole.bottom, 174, shaft.top});
    const auto most = numbers_of(p.of_class("most").front().get("d"));
    CHECK(most == std::vector<double>{189, hole.top, 189, shaft.bottom});
}

TEST_CASE("interference and transition say which is which") {
    // ISO 286-2: 25 H7 +21/0, k6 +15/+2, p6 +35/+22
    const picture_read transition(svg_of(zone_picture{"25 H7/k6"_fit}));
    CHECK(transition.has_line("greatest interference 0.015 mm"));
    CHECK(transition.has_line("greatest clearance 0.019 mm"));
    const picture_read pressed(svg_of(zone_picture{"25 H7/p6"_fit}));
    CHECK(pressed.has_line("greatest interference 0.035 mm"));
    CHECK(pressed.has_line("least interference 0.001 mm"));
    pressed.check_house_rules();
}

TEST_CASE("target and reading stand where they are, and are written out") {
    zone_picture asked{"12 H7/g6"_fit};
    asked.hole.target = 12.009_mm;
    asked.shaft.reading = measured_shaft{11.9885_mm, 2_um};
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    CHECK(p.has_line("hole: aim at 12.0090 mm"));
    CHECK(p.has_line("shaft: measures 11.9885 \xC2\xB1"
                     "0.0020 mm, accept"));

    CHECK(p.all()[2].words.find("shaft: measures 11.9885 \xC2\xB1"
                                "0.0020 mm, accept") != std::string::npos); // read out as well

    const rectangle hole = p.box("hole", 1);
    const rectangle shaft = p.box("shaft", 1);
    const auto aim = numbers_of(p.of_class("aim").front().get("d"));
    CHECK(aim.at(1) == doctest::Approx((hole.top + hole.bottom) / 2).epsilon(0.0001));
    const auto bar = numbers_of(p.of_class("bar").front().get("d")); // cap, cap, stem
    const double pixels = 170.0 / 35;
    CHECK(bar.at(1) - shaft.top == doctest::Approx(3.5 * pixels).epsilon(0.001));
    CHECK(bar.at(4) - bar.at(1) == doctest::Approx(4 * pixels).epsilon(0.001));

    asked.shaft.reading = measured_shaft{11.983_mm, 2_um};
    CHECK(picture_read(svg_of(asked)).says("cannot tell"));
    asked.shaft.reading = measured_shaft{11.98_mm, 2_um};
    CHECK(picture_read(svg_of(asked)).says("reject"));
}

TEST_CASE("a part that leads is drawn as measured, without a tint") {
    const measured_shaft leads{7.968_mm, 2_um};
    zone_picture asked{fit(hole_limits(between(7.978_mm, 7.986_mm)), leads.limits())};
    asked.shaft.is_measured = true;
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    CHECK(p.has_line("shaft, measured"));
    CHECK(p.of_class("shaft").at(1).get("stroke-dasharray") == "2 3");
    CHECK(p.of_class("shaft").at(1).get("fill") == "#ffffff");
    CHECK(p.has_line("zero line: nominal size 7.978 mm"));
    CHECK(p.has_line("7.970"));
    CHECK(p.says("7.966"));
    // the shaft's own nominal is another, so its deviations would not be those from this zero line
    CHECK_FALSE(p.has_line("+2"));
    CHECK_FALSE(p.has_line("-2"));

    // where the hole leads, the shaft's nominal size is the zero line
    zone_picture other{fit(measured_hole{12.011_mm, 1_um}.limits(), shaft_limits(12_mm, {-6_um, -17_um}))};
    other.hole.is_measured = true;
    const picture_read q(svg_of(other));
    CHECK(q.has_line("zero line: nominal size 12 mm"));
    CHECK(q.has_line("-17"));
}

TEST_CASE("one part alone") {
    zone_picture asked{"12 H7/g6"_fit};
    asked.only = side::shaft;
    asked.shaft.target = 11.99_mm;
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    CHECK(p.root().get("aria-label") == "Tolerance interval of a shaft");
    CHECK(p.all()[2].words == "shaft: 11.983 to 11.994 mm. shaft: aim at 11.990 mm. ");
    CHECK(p.of_class("hole").empty());
    CHECK(p.of_class("least").empty());
    CHECK_FALSE(p.says("clearance"));
    CHECK(p.has_line("11.994"));
    CHECK(p.has_line("-17"));
    CHECK(p.has_line("shaft: aim at 11.990 mm"));
    CHECK(p.box("shaft", 1).bottom - p.box("shaft", 1).top ==
          doctest::Approx(170.0 * 11 / 17).epsilon(0.0005));

    // a state of the pair is none of one part
    asked.hot = *at_temperature(asked.of, {materials::steel_c45, 95_degC}, {materials::steel_c45, 20_degC});
    CHECK(svg_of(asked) == svg_of([&] {
              zone_picture cold = asked;
              cold.hot = {};
              return cold;
          }()));

    // the other part is not looked at, whatever it is
    asked.of = fit("12 H7"_hole, shaft_limits(12_mm, {-1_um, 1_um}));
    asked.only = side::hole;
    const picture_read q(svg_of(asked));
    q.check_house_rules();
    CHECK(q.has_line("+18"));
    CHECK(q.of_class("shaft").empty());
}

TEST_CASE("hot intervals are ghosts, to the same scale, with their doubts") {
    const fit slide = "12 H7/g6"_fit;
    const auto hot =
        at_temperature(slide, {materials::aluminium_6082_t6, 95_degC}, {materials::steel_c45, 60_degC});
    REQUIRE(hot);
    zone_picture asked{slide};
    asked.hot = *hot;
    asked.hot_state = "warm-up";
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    const auto outwards = [](length least, length most) {
        return words_of(fitwright::detail::multiple_at_or_below(least, 100_nm)) + " to " +
               words_of(fitwright::detail::multiple_at_or_above(most, 100_nm));
    };
    CHECK(p.says("warm-up: clearance " + outwards(hot->min_clearance(), hot->max_clearance()) + " mm, hole " +
                 outwards(hot->hole.lower_limit(), hot->hole.upper_limit()) + ", shaft " +
                 outwards(hot->shaft.lower_limit(), hot->shaft.upper_limit())));
    hot->doubts.for_each([&](thermal_doubt d) { CHECK(p.says("mind: " + std::string(in_words(d)))); });
    CHECK(p.of_class("hot-hole").size() == 2); // in the picture and in its legend
    for (const element& e : p.of_class("hot-hole")) {
        CHECK(!e.get("stroke-dasharray").empty());
        CHECK(e.get("fill") == "none");
    }
    const double cold = scale_of(p.box("hole", 1), slide.hole().tolerance());
    CHECK(scale_of(p.box("hot-hole"), hot->hole.tolerance()) == doctest::Approx(cold).epsilon(0.001));
    CHECK(scale_of(p.box("hot-shaft"), hot->shaft.tolerance()) == doctest::Approx(cold).epsilon(0.001));
}

TEST_CASE("a gap much longer than the intervals is cut short and said to be") {
    const fit far_off(hole_limits(12_mm, {18_um, 0_um}), shaft_limits(12_mm, {-2_mm, -2.011_mm}));
    const picture_read p(svg_of(zone_picture{far_off}));
    p.check_house_rules();
    CHECK(p.of_class("break").size() == 1);
    CHECK(p.says("To scale, but for the gaps cut short."));
    CHECK(scale_of(p.box("hole", 1), 18_um) == doctest::Approx(170.0 / 29000).epsilon(0.001));
    CHECK(scale_of(p.box("shaft", 1), 11_um) == doctest::Approx(170.0 / 29000).epsilon(0.001));
    CHECK(p.box("shaft", 1).top - p.box("hole", 1).bottom == doctest::Approx(44));
    CHECK(p.has_line("least clearance 2.000 mm"));

    // four times as long as the rest is not yet much longer
    const auto breaks = [](length gap) {
        const fit f(hole_limits(12_mm, {10_um, 0_um}), shaft_limits(12_mm, {-gap, -gap - 10_um}));
        return picture_read(svg_of(zone_picture{f})).of_class("break").size();
    };
    CHECK(breaks(80_um) == 0);
    CHECK(breaks(80_um + 1_nm) == 1);
}

TEST_CASE("no tolerance at all is still seen") {
    const fit exact(hole_limits(12_mm, {0_um, 0_um}), shaft_limits(12_mm, {0_um, 0_um}));
    const picture_read p(svg_of(zone_picture{exact}));
    p.check_house_rules();
    const rectangle hole = p.box("hole", 1);
    CHECK(hole.top == hole.bottom);
    CHECK(p.of_class("hole").at(1).get("stroke-width") == "3.5");
    CHECK(p.has_line("least clearance 0 mm"));
}

TEST_CASE("inches: limits in inches, deviations in thou") {
    const auto hole = rounded_inwards(hole_limits(0.5_in, {0.0007_in, 0_in}), 0.0001_in);
    const auto shaft = rounded_inwards(shaft_limits(0.5_in, {-0.0004_in, -0.0008_in}), 0.0001_in);
    zone_picture asked{fit(*hole, *shaft)};
    asked.unit = written_unit::in;
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    for (const char* line :
         {"0.5007", "+0.7", "0.5000", "0", "0.4996", "-0.4", "0.4992", "-0.8", "least clearance 0.0004 in",
          "greatest clearance 0.0015 in", "zero line: nominal size 0.5 in"})
        CHECK_MESSAGE(p.has_line(line), line);
    CHECK(p.says("Limits in inches, deviations from nominal in thou. To scale."));
}

TEST_CASE("names are text, whatever they are") {
    zone_picture asked{"12 H7/g6"_fit};
    asked.title = "<script>alert('1')</script> & \"more\"";
    asked.hole.name = "a\x01"
                      "b\xFF"
                      "c\xED\xA0\x80"
                      "d\xE2\x80\xAE"
                      "e\xC0\xAF]]>";
    asked.shaft.name = "\xE2\x8C\x80 \xE4\xB8\xAD\xE6\x96\x87\tand\nmore \xF0\x9F\x94\xA9 \xEF\xBF\xBF";
    const std::string svg = svg_of(asked);
    CHECK(svg.find("<script") == std::string::npos);
    CHECK(svg.find("&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt; &amp; &quot;more&quot;") !=
          std::string::npos);
    CHECK(svg.find('\x01') == std::string::npos);
    CHECK(svg.find('\xFF') == std::string::npos);
    CHECK(svg.find("\xE2\x80\xAE") == std::string::npos); // would turn the numbers behind it round
    const picture_read p(svg);
    p.check_house_rules();
    CHECK(p.all()[1].words == "<script>alert('1')</script> & \"more\"");
    CHECK(p.says("a\xEF\xBF\xBD"
                 "b\xEF\xBF\xBD"
                 "c"));
    CHECK(p.says("\xE2\x8C\x80"));
    CHECK(p.says("\xF0\x9F\x94\xA9 \xEF\xBF\xBD"));
}

TEST_CASE("long names break over lines and end in dots; the whole title is read out") {
    zone_picture asked{"12 H7/g6"_fit};
    const std::string title =
        "a title that goes on and on about the pump, its plunger, its bush and its housing, "
        "about the wax and the weather, and what the neighbour thought of it all in the end";
    const std::string name(300, 'W');
    asked.title = title;
    asked.hole.name = name;
    const picture_read p(svg_of(asked));
    p.check_house_rules();
    CHECK(p.says("\xE2\x80\xA6"));
    CHECK(p.all()[1].words == title);
}

TEST_CASE("the same picture gives the same bytes") {
    zone_picture asked{"12 H7/g6"_fit};
    asked.title = "twice";
    asked.hole.target = 12.01_mm;
    CHECK(svg_of(asked) == svg_of(asked));
    asked.hole.target = 12.011_mm;
    const std::string other = svg_of(asked);
    CHECK(other.find("12.011") != std::string::npos);
}

TEST_CASE("into a caller's room, with the size it takes") {
    const zone_picture asked{"12 H7/g6"_fit};
    const std::string whole = svg_of(asked);
    CHECK(bytes_of(asked).value() == whole.size());
    std::vector<char> room(whole.size() + 1, '?');
    const auto drawn = draw(asked, picture_room{room.data(), room.size()});
    REQUIRE(drawn);
    CHECK(std::string(*drawn) == whole);
    CHECK(room.back() == '\0');

    const auto refused = draw(asked, picture_room{room.data(), room.size() - 1});
    REQUIRE(!refused);
    CHECK(refused.error().code() == error_code::buffer_too_small);
    CHECK(std::string(refused.error().message()).find(std::to_string(whole.size() + 1)) != std::string::npos);
    CHECK(!draw(asked, picture_room{nullptr, 0}));
}

TEST_CASE("what can't be drawn is refused, and nothing is written") {
    std::string made;
    const auto refused = [&](const zone_picture& p) {
        const auto r = draw(p, [&](text piece) { made.append(piece.data(), piece.size()); });
        REQUIRE(!r);
        CHECK(!bytes_of(p));
        return r.error();
    };
    const shaft_limits shaft(12_mm, {-6_um, -17_um});
    const error crossed = refused(zone_picture{fit(hole_limits(12_mm, {0_um, 18_um}), shaft)});
    CHECK(crossed.code() == error_code::limits_crossed);
    CHECK(crossed.message().find("hole") != text::npos);
    CHECK(refused(zone_picture{fit("12 H7"_hole, shaft_limits(12_mm, {-17_um, -6_um}))})
              .message()
              .find("shaft") != text::npos);
    const error apart = refused(zone_picture{fit(hole_limits(10.013_mm * 1000, {18_um, 0_um}), shaft)});
    CHECK(apart.code() == error_code::limits_too_far_apart);
    CHECK(apart.message().find("10 m") != text::npos);
    const length huge = length::from_nanometres(INT64_MAX);
    CHECK(refused(zone_picture{fit(hole_limits(huge, {0_nm, 0_nm}), shaft_limits(-huge, {0_nm, 0_nm}))})
              .code() == error_code::limits_too_far_apart);
    CHECK(made.empty());
}

TEST_CASE(
    "five hundred fits, wild ones among them: nothing overlaps, every number is the library's, to scale") {
    std::mt19937_64 random(286);
    const auto upto = [&](std::int64_t n) {
        return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(n));
    };
    const auto some_length = [&] { // 0, or anything from nanometres to metres
        std::int64_t magnitude = 1;
        for (std::int64_t i = upto(10); i > 0; --i) magnitude *= 10;
        return length::from_nanometres(upto(4) == 0 ? 0 : upto(magnitude * 9) + 1);
    };
    const char* names[] = {"",
                           "plunger",
                           "bush of the lower bearing, left, turned from the bar",
                           "Donaudampfschifffahrtsgesellschaftskapitaensmuetze",
                           "<&>\"'",
                           "WWWWWWWWWWWWWWWW MMMMMMMM"};
    int with_breaks = 0;
    for (int round = 0; round < 500; ++round) {
        const length nominal = length::from_nanometres(1'000'000 + upto(3'149'000'000));
        const length shaft_nominal = upto(3) == 0 ? nominal + some_length() : nominal;
        const auto deviations_of = [&] {
            const length lower = upto(2) == 0 ? some_length() : -some_length();
            return deviations{.upper = lower + some_length(), .lower = lower};
        };
        const fit f(hole_limits(nominal, deviations_of()), shaft_limits(shaft_nominal, deviations_of()));
        zone_picture asked{f};
        asked.title = names[upto(6)];
        asked.hole.name = names[upto(6)];
        asked.shaft.name = names[upto(6)];
        asked.hole.is_measured = upto(5) == 0;
        asked.shaft.is_measured = upto(5) == 0;
        if (upto(8) == 0) asked.only = upto(2) == 0 ? side::hole : side::shaft;
        asked.unit = upto(4) == 0 ? written_unit::in : written_unit::mm;
        if (upto(3) == 0) asked.hole.target = f.hole().middle();
        if (upto(3) == 0) asked.shaft.target = f.shaft().middle();
        if (upto(3) == 0)
            asked.hole.reading = measured_hole{f.hole().upper_limit() + some_length(), some_length()};
        if (upto(3) == 0)
            asked.shaft.reading = measured_shaft{f.shaft().lower_limit() - some_length(), some_length()};
        if (upto(3) == 0) {
            const auto hot =
                at_temperature(f, {materials::aluminium_6082_t6, celsius(static_cast<double>(upto(140)))},
                               {materials::steel_c45, celsius(static_cast<double>(upto(140)))});
            if (hot) asked.hot = *hot;
        }
        const auto drawable = bytes_of(asked);
        if (!drawable) {
            CHECK(drawable.error().code() == error_code::limits_too_far_apart);
            continue;
        }
        const std::string svg = svg_of(asked);
        CAPTURE(round);
        CAPTURE(svg);
        const picture_read p(svg);
        p.check_house_rules();
        if (!p.of_class("break").empty()) ++with_breaks;

        if (asked.only) continue;

        // one scale for both intervals, whatever lies between
        const rectangle hole = p.box("hole", 1);
        const rectangle shaft = p.box("shaft", 1);
        const double of_hole = static_cast<double>(f.hole().tolerance().nanometres());
        const double of_shaft = static_cast<double>(f.shaft().tolerance().nanometres());
        const double per_nanometre =
            (hole.bottom - hole.top + shaft.bottom - shaft.top) / (of_hole + of_shaft);
        const bool is_uncut = p.of_class("break").empty();
        if (is_uncut && of_hole + of_shaft > 0) {
            CHECK(std::abs(hole.bottom - hole.top - of_hole * per_nanometre) < 2 * half_a_hundredth);
            const double apart =
                static_cast<double>((f.hole().lower_limit() - f.shaft().lower_limit()).nanometres());
            const double slack =
                2 * half_a_hundredth + std::abs(apart) * 2 * half_a_hundredth / (of_hole + of_shaft);
            CHECK(std::abs(shaft.bottom - hole.bottom - apart * per_nanometre) < slack);
        }

        // every number is one that the library writes of this fit
        std::set<std::string> allowed{"0"};
        for (const char* name : names)
            for (const auto& n : numbers_in(name)) allowed.insert(n);
        const auto may_say = [&](length l, written_unit u) {
            for (int decimals = -1; decimals <= 8; ++decimals)
                for (const bool plus : {false, true}) {
                    const number_format exact{.unit = u, .decimals = decimals, .with_plus = plus};
                    if (decimals < 0 || decimals >= fitwright::detail::decimals_needed(l, u))
                        allowed.insert(words_of(l, exact));
                }
        };
        const bool is_inch = asked.unit == written_unit::in;
        for (const length l : {f.hole().lower_limit(), f.hole().upper_limit(), f.shaft().lower_limit(),
                               f.shaft().upper_limit(), f.min_clearance(), f.max_clearance(),
                               -f.min_clearance(), -f.max_clearance(), nominal, shaft_nominal})
            may_say(l, asked.unit);
        for (const length l : {f.hole().lower_deviation(), f.hole().upper_deviation(),
                               f.shaft().lower_deviation(), f.shaft().upper_deviation()})
            may_say(l, is_inch ? written_unit::thousandth : written_unit::um);
        if (asked.hole.target) may_say(*asked.hole.target, asked.unit);
        if (asked.shaft.target) may_say(*asked.shaft.target, asked.unit);
        const auto may_read = [&](const auto& reading) {
            if (!reading) return;
            may_say(reading->size(), asked.unit);
            may_say(reading->uncertainty(), asked.unit);
        };
        may_read(asked.hole.reading);
        may_read(asked.shaft.reading);
        if (asked.hot) {
            const length step = is_inch ? 254_nm : 100_nm;
            for (const length l :
                 {asked.hot->hole.lower_limit(), asked.hot->shaft.lower_limit(), asked.hot->min_clearance()})
                may_say(fitwright::detail::multiple_at_or_below(l, step), asked.unit);
            for (const length l :
                 {asked.hot->hole.upper_limit(), asked.hot->shaft.upper_limit(), asked.hot->max_clearance()})
                may_say(fitwright::detail::multiple_at_or_above(l, step), asked.unit);
        }
        for (const element& e : p.texts())
            for (const std::string& number : numbers_in(e.words))
                CHECK_MESSAGE(allowed.count(number) == 1, number << " in " << e.words);
    }
    CHECK(with_breaks > 50);
}
