// End float with its shims, and two dowels: what is done when parts are put together.
#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/stack.hpp>
#include <fitwright/stack.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <random>
#include <sstream>
#include <string>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

template <class Result> bool says(const Result& r, error_code code, text piece) {
    return !r && r.error().code() == code && r.error().message().find(piece) != text::npos &&
           r.error().message().size() < 239;
}

constexpr range<length> wanted{50_um, 150_um};
constexpr shim box[] = {{100_um, 5_um}, {200_um, 5_um}, {300_um, 5_um}, {500_um, 5_um}};

constexpr two_dowels cover{.distance = 60_mm,
                           .dowels_plus_minus = 20_um,
                           .holes_plus_minus = 20_um,
                           .first = "6 H7/g6"_fit, // 4 to 24 um
                           .second = "6 H7/g6"_fit};

} // namespace

TEST_CASE("which shim is needed") {
    constexpr range<length> found{300_um, 340_um};
    FITWRIGHT_CHECK_BOTH(*shim_needed(range<length>(given(found)), wanted) == range<length>{190_um, 250_um});
    // As measured: the uncertainty both ways.
    constexpr measured_float m{.size = 320_um, .uncertainty = 20_um};
    FITWRIGHT_CHECK_BOTH(*shim_needed(given(m), wanted) == range<length>{190_um, 250_um});
    // Of a chain: its worst case.
    constexpr chain_link links[] = {opens("a", 10.3_mm, {.upper = 40_um, .lower = 0_um}),
                                    closes("b", 10_mm, {})};
    FITWRIGHT_CHECK_BOTH(*shim_needed(*stack(links), wanted) == range<length>{190_um, 250_um});
    // As wide as the window: one thickness only; wider: none.
    FITWRIGHT_CHECK_BOTH(*shim_needed(range<length>{300_um, 400_um}, wanted) ==
                         range<length>{250_um, 250_um});
    CHECK(says(shim_needed(range<length>{300_um, 400.001_um}, wanted), error_code::no_shim_does,
               "varies by 0.100001 mm"));
    CHECK(says(shim_needed(range<length>{301_um, 300_um}, wanted), error_code::window_crossed,
               "a float found"));
    CHECK(says(shim_needed(range<length>{300_um, 301_um}, {150_um, 50_um}), error_code::window_crossed,
               "a float wanted"));
}

TEST_CASE("which shim in hand") {
    const auto choose = [](range<length> found) { return choose_shim(found, wanted, box); };
    constexpr auto one = choose_shim(range<length>{290_um, 310_um}, wanted, box);
    FITWRIGHT_CHECK_BOTH(given(one)->how_many == 1);
    FITWRIGHT_CHECK_BOTH(given(one)->first == 1);
    FITWRIGHT_CHECK_BOTH(given(one)->left ==
                         range<length>{85_um, 115_um}); // the shim's own tolerance is in it
    FITWRIGHT_CHECK_BOTH(given(one)->needed == range<length>{160_um, 240_um});
    CHECK(choose({60_um, 150_um})->how_many == 0);
    CHECK(choose({60_um, 150_um})->left == range<length>{60_um, 150_um});
    CHECK(choose({680_um, 700_um})->how_many == 2); // 100 + 500 rather than none
    CHECK(choose({680_um, 700_um})->first == 0);
    CHECK(choose({680_um, 700_um})->second == 3);
    CHECK(says(choose({40_um, 60_um}), error_code::no_shim_does, "it takes 0.01 to 0.09 mm off"));
    CHECK(says(choose({-20_um, 0_um}), error_code::no_shim_does, "it takes 0.07 to 0.15 mm off the parts"));
    CHECK(says(choose({960_um, 1000_um}), error_code::no_shim_does,
               "none of the 4 shims in hand does, nor any two: it needs 0.85 to 0.91 mm"));
    // One piece of each: the same shim is not taken twice.
    CHECK(!choose_shim(range<length>{280_um, 300_um}, wanted, rows<shim>(box, 1)));
    constexpr range<length> as_found{300_um, 320_um};
    CHECK(says(choose_shim(as_found, wanted, {}), error_code::no_shim_does,
               "there is no shim in hand: it needs 0.17 to 0.25 mm"));
    CHECK(says(choose_shim(as_found, wanted, rows<shim>(box, 1)), error_code::no_shim_does,
               "the one shim in hand does not do: it needs"));
    constexpr shim thin[] = {{10_um}, {20_um}};
    CHECK(says(choose_shim(as_found, wanted, thin), error_code::no_shim_does,
               "neither of the 2 shims in hand does, nor both: it needs"));
}

TEST_CASE("what is no shim") {
    constexpr range<length> found{290_um, 310_um};
    const length least = nm(INT64_MIN);
    const length most = nm(INT64_MAX);
    for (const shim s : {shim{0_um}, shim{-200_um}, shim{200_um, -5_um}, shim{least}, shim{most},
                         shim{200_um, most}, shim{200_um, least}}) {
        const shim in_hand[] = {box[1], s}; // though the first alone would do
        CHECK(says(choose_shim(found, wanted, in_hand), error_code::not_a_shim, "shim no. 2 is "));
        CHECK(says(choose_shim(found, wanted, in_hand), error_code::not_a_shim,
                   "allowed are thicknesses above 0"));
    }
}

TEST_CASE("floats beyond any stack are refused before they are subtracted") {
    const length least = nm(INT64_MIN);
    const length most = nm(INT64_MAX);
    const end_float floats[] = {range<length>{least, most}, range<length>{least, 0_mm},
                                range<length>{0_mm, most}, measured_float{.size = most, .uncertainty = 1_um},
                                measured_float{.size = 1_mm, .uncertainty = least}};
    for (const end_float& f : floats) {
        CHECK(says(shim_needed(f, wanted), error_code::chain_too_long, "allowed is up to 1000 km"));
        CHECK(says(choose_shim(f, wanted, box), error_code::chain_too_long, "allowed is up to 1000 km"));
    }
    CHECK(says(shim_needed(range<length>{0_mm, 1_um}, {least, most}), error_code::chain_too_long, "1000 km"));
    two_dowels far_off = cover;
    far_off.second = {hole_limits(most, {.upper = most, .lower = least}), cover.second.shaft()};
    CHECK(says(second_hole_for(far_off), error_code::dowels_do_not_go, "allowed are sizes above 0"));
    far_off.second = cover.second;
    far_off.first = {cover.first.hole(), shaft_limits(least, {.upper = least, .lower = least})};
    CHECK(says(second_hole_for(far_off), error_code::dowels_do_not_go, "allowed are sizes above 0"));
}

TEST_CASE("the choice against every single shim and pair") {
    std::mt19937 random(9);
    const auto upto = [&](int n) { return static_cast<std::int64_t>(random() % static_cast<unsigned>(n)); };
    int none = 0;
    int pairs = 0;
    for (int trial = 0; trial < 2'000; ++trial) {
        std::vector<shim> shims;
        for (std::int64_t i = upto(7); i >= 0; --i)
            shims.push_back({nm((50 + upto(500)) * 1000), nm(upto(5) * 1000)});
        const length least = nm(150'000 + upto(800'000));
        const range<length> found{least, least + nm(upto(80'000))};
        std::vector<range<length>> singles;
        std::vector<range<length>> doubles;
        const auto good = [&](length thickness, length plus_minus) {
            // Every corner of float and shim lies in the window.
            return found.least - thickness - plus_minus >= wanted.least &&
                   found.most - thickness + plus_minus <= wanted.most;
        };
        const auto left = [&](length t, length pm) {
            return range<length>{found.least - t - pm, found.most - t + pm};
        };
        for (std::size_t i = 0; i < shims.size(); ++i) {
            if (good(shims[i].thickness, shims[i].plus_minus))
                singles.push_back(left(shims[i].thickness, shims[i].plus_minus));
            for (std::size_t k = 0; k < i; ++k) {
                const length t = shims[i].thickness + shims[k].thickness;
                const length pm = shims[i].plus_minus + shims[k].plus_minus;
                if (good(t, pm)) doubles.push_back(left(t, pm));
            }
        }
        const auto chosen = choose_shim(found, wanted, shims);
        if (lies_within(found, wanted)) {
            CHECK(chosen->how_many == 0);
            continue;
        }
        const auto& allowed = singles.empty() ? doubles : singles;
        if (allowed.empty()) {
            ++none;
            CHECK(!chosen);
            continue;
        }
        REQUIRE(chosen);
        CHECK(chosen->how_many == (singles.empty() ? 2 : 1));
        pairs += chosen->how_many == 2 ? 1 : 0;
        CHECK(lies_within(chosen->left, wanted));
        const auto off = [](range<length> r) { return std::abs((r.least + r.most - 200_um).nanometres()); };
        for (const auto& other : allowed) CHECK(off(chosen->left) <= off(other));
    }
    CHECK(none > 100);
    CHECK(pairs > 100);
}

TEST_CASE("two dowels by hand") {
    // Both ways 2 (20 + 20) = 80 um; the first pair gives 4, the second has 4: 72 are missing.
    FITWRIGHT_CHECK_BOTH(second_hole_for(given(cover))->left == -72_um);
    FITWRIGHT_CHECK_BOTH(second_hole_for(given(cover))->off == 38_um);
    FITWRIGHT_CHECK_BOTH(second_hole_for(given(cover))->round_hole == 6.072_mm); // the dowel's 5.996 and 76
    FITWRIGHT_CHECK_BOTH(second_hole_for(given(cover))->slot == 6.072_mm);
    FITWRIGHT_CHECK_BOTH(!second_hole_for(given(cover))->always_goes_on());
    // (6^2 - 5.996^2) / (4 * 0.038) - 0.038 = 0.277684...
    FITWRIGHT_CHECK_BOTH(second_hole_for(given(cover))->relieved_land == nm(277'684));
    const auto r = second_hole_for(cover);
    CHECK(std::fabs(r->turn.value() - 0.024 / 60) < 1e-12);       // (24 + 24) / 2 um over 60 mm
    CHECK(std::fabs(r->turn_round.value() - 0.060 / 60) < 1e-12); // (24 + 6.084 - 5.988) / 2
    CHECK(r->from.how_sure == confidence::stated);

    // The hole made as it says goes on, a nanometre less does not.
    two_dowels made = cover;
    made.second = fit(between(r->round_hole, r->round_hole + 12_um), "6 g6"_shaft);
    CHECK(second_hole_for(made)->left == 0_um);
    CHECK(second_hole_for(made)->always_goes_on());
    CHECK(second_hole_for(made)->round_hole == r->round_hole);
    CHECK(second_hole_for(made)->relieved_land == 5.996_mm); // no relief needed
    made.second = fit(between(r->round_hole - 1_nm, r->round_hole + 12_um), "6 g6"_shaft);
    CHECK(second_hole_for(made)->left == -1_nm);

    // The first pair alone can give it all.
    two_dowels loose = cover;
    loose.first = fit(between(6.1_mm, 6.11_mm), "6 g6"_shaft);
    CHECK(second_hole_for(loose)->off == 0_um);
    CHECK(second_hole_for(loose)->left == 28_um);
    CHECK(second_hole_for(loose)->round_hole == 6_mm);
    // No room at all for a relief in a hole as tight as its dowel.
    two_dowels tight = cover;
    tight.second = "6 H7/h6"_fit;
    CHECK(second_hole_for(tight)->relieved_land == length());
}

TEST_CASE("two dowels by trying: at the worst, and at random") {
    std::mt19937 random(4);
    std::uniform_real_distribution<double> any(-1, 1);
    const auto upto = [&](int n) {
        return nm(static_cast<std::int64_t>(random() % static_cast<unsigned>(n)));
    };
    int both = 0;
    for (int trial = 0; trial < 300; ++trial) {
        two_dowels d{
            .distance = 50_mm,
            .dowels_plus_minus = upto(30'000),
            .holes_plus_minus = upto(30'000),
            .first = fit(between(6_mm + upto(20'000), 6.03_mm), between(5.97_mm, 6_mm - upto(20'000))),
            .second = fit(between(6_mm + upto(50'000), 6.06_mm), between(5.94_mm, 6_mm - upto(50'000)))};
        const auto r = second_hole_for(d);
        REQUIRE(r);
        // Radii in line with the centres: the plate slides by half the first clearance, then half the second.
        const auto goes_on = [&](double dowels, double holes, double first, double second) {
            return std::fabs(dowels - holes) <= (first + second) / 2;
        };
        const double td = d.dowels_plus_minus.in<nanometre>();
        const double th = d.holes_plus_minus.in<nanometre>();
        const double first = d.first.min_clearance().in<nanometre>();
        const double second = d.second.min_clearance().in<nanometre>();
        CHECK(r->always_goes_on() == (goes_on(td, -th, first, second) && goes_on(-td, th, first, second)));
        both += r->always_goes_on() ? 1 : 0;
        for (int i = 0; i < 50 && r->always_goes_on(); ++i)
            CHECK(goes_on(td * any(random), th * any(random), first + 1000 * (any(random) + 1), second));

        // The corners of the land are in the hole when it is that far off; those of a wider one are not.
        const double hole = d.second.hole().lower_limit().in<nanometre>() / 2;
        const double dowel = d.second.shaft().upper_limit().in<nanometre>() / 2;
        const auto corner = [&](double land) {
            return std::hypot(land / 2 + r->off.in<nanometre>(), std::sqrt(dowel * dowel - land * land / 4));
        };
        const double land = r->relieved_land.in<nanometre>();
        if (land > 0) CHECK(corner(land) <= hole + 1e-3);
        if (land > 0 && land < 2 * dowel) CHECK(corner(land + 2) > hole - 1e-3);
        CHECK((land == 2 * dowel) == (2 * (hole - dowel) >= 2 * r->off.in<nanometre>()));
    }
    CHECK(both > 30);
    CHECK(both < 270);
}

TEST_CASE("what is no pair of dowels") {
    const auto refused = [](text piece, auto change) {
        two_dowels d = cover;
        change(d);
        CHECK(says(second_hole_for(d), error_code::dowels_do_not_go, piece));
    };
    refused("distances above 0", [](two_dowels& d) { d.distance = 0_mm; });
    refused("-0.001 and 0.02 mm", [](two_dowels& d) { d.dowels_plus_minus = -1_um; });
    refused("0 to 10 mm", [](two_dowels& d) { d.holes_plus_minus = 10.001_mm; });
    refused("the first pair has a least clearance of -0.012 mm",
            [](two_dowels& d) { d.first = "6 H7/m6"_fit; });
    refused("the second pair", [](two_dowels& d) { d.second = "6 H7/m6"_fit; });
    refused("sizes above 0", [](two_dowels& d) { d.second = {between(1_mm, 2_mm), between(0_mm, 1_mm)}; });
    refused("lower limit first", [](two_dowels& d) { d.first = {between(7_mm, 6_mm), between(5_mm, 6_mm)}; });
}

TEST_CASE("printed") {
    const auto printed = [](const auto& value) {
        std::ostringstream out;
        out << value;
        return out.str();
    };
    CHECK(printed(*choose_shim(range<length>{290_um, 310_um}, wanted, box)) ==
          "shim no. 2: leaves 0.085 to 0.115 mm");
    CHECK(printed(*choose_shim(range<length>{680_um, 700_um}, wanted, box)) ==
          "shims no. 1 and 4: leaves 0.07 to 0.11 mm");
    CHECK(printed(*choose_shim(range<length>{60_um, 70_um}, wanted, box)) ==
          "no shim: leaves 0.06 to 0.07 mm");
    CHECK(printed(*second_hole_for(cover))
              .find("0.072 mm is missing. The second hole round from 6.072 mm, or a slot from "
                    "6.072 mm long, or the dowel relieved to a land of 0.27 mm") != std::string::npos);
    two_dowels loose = cover;
    loose.second = fit(between(6.1_mm, 6.11_mm), "6 g6"_shaft);
    CHECK(printed(*second_hole_for(loose)).find("always goes on, with 0.028 mm to spare") == 0);
}

TEST_CASE("a float wanted from a clearance window, and shims in braces") {
    constexpr measured_float found{.size = 0.62_mm, .uncertainty = 10_um};
    constexpr clearance_window window{50_um, 150_um};
    static_assert(shim_needed(found, window)->most == 0.56_mm);
    CHECK(*shim_needed(found, window) == *shim_needed(found, range<length>{50_um, 150_um}));
    // 0.61 to 0.63 less 0.5 is 0.11 to 0.13 mm
    constexpr auto shims = choose_shim(found, window, {shim{0.1_mm}, shim{0.5_mm}});
    static_assert(shims->how_many == 1 && shims->first == 1);
    CHECK(shims->left == range<length>{0.11_mm, 0.13_mm});
    CHECK(lies_within(shims->left, window));
}
