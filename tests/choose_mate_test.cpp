// Parts that lead. The sizes are arithmetic on the numbers given; classes are those of ISO 286-1:2010.

#include "support/both.hpp"
#include <fitwright/choose.hpp>
#include <fitwright/fitwright.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <numeric>
#include <random>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using fitwright_tests::given;

TEST_CASE("a measured shaft leads: the bore is right wherever in its uncertainty the shaft lies") {
    FITWRIGHT_CHECK_BOTH(
        bore_for(measured_shaft{given(7.968_mm), given(2_um)}, clearance_window{given(8_um), given(20_um)})
            ->lower_limit() == 7.978_mm);
    FITWRIGHT_CHECK_BOTH(
        bore_for(measured_shaft{given(7.968_mm), given(2_um)}, clearance_window{given(8_um), given(20_um)})
            ->upper_limit() == 7.986_mm);
    FITWRIGHT_CHECK_BOTH(
        shaft_for(measured_hole{given(8.012_mm), given(1_um)}, clearance_window{given(5_um), given(15_um)})
            ->upper_limit() == 8.006_mm);
    FITWRIGHT_CHECK_BOTH(
        shaft_for(measured_hole{given(8.012_mm), given(1_um)}, clearance_window{given(5_um), given(15_um)})
            ->lower_limit() == 7.998_mm);
    // an interference is a negative clearance
    FITWRIGHT_CHECK_BOTH(
        bore_for(measured_shaft{given(10_mm), given(1_um)}, clearance_window{given(-30_um), given(-10_um)})
            ->upper_limit() == 9.989_mm);

    std::mt19937 random(8);
    for (int i = 0; i < 2000; ++i) {
        const length size = 1_mm + 1_nm * (random() % 50'000'000);
        const length u = 1_nm * (random() % 8'000);
        const length least = 1_nm * (random() % 40'000) - 20_um;
        const clearance_window w{least, least + 1_nm * (random() % 30'000)};
        const auto bore = bore_for(measured_shaft{size, u}, w);
        CHECK(bore.has_value() == (w.most - w.least > u * 2));
        if (!bore) continue;
        CHECK(bore->lower_limit() - (size + u) == w.least); // the tightest pair there can be
        CHECK(bore->upper_limit() - (size - u) == w.most);  // the loosest
        CHECK(clearance_of(*bore, measured_shaft{size, u}) == w);
        const auto back = shaft_for(measured_hole{size, u}, w);
        REQUIRE(back.has_value());
        CHECK(clearance_of(measured_hole{size, u}, *back) == w);
    }
}

TEST_CASE("what can't lead says why") {
    const auto narrow = bore_for(measured_shaft{8_mm, 5_um}, {8_um, 16_um});
    REQUIRE(!narrow.has_value());
    CHECK(narrow.error().code() == error_code::window_too_narrow);
    CHECK(narrow.error().message().find("10 um") != text::npos); // what would do
    CHECK(bore_for(measured_shaft{8_mm, 0_um}, {20_um, 8_um}).error().code() == error_code::window_crossed);
    CHECK(bore_for(measured_shaft{10_um, 0_um}, {-20_um, -15_um}).error().code() ==
          error_code::size_out_of_range);
    CHECK(shaft_for(measured_hole{10_um, 0_um}, {20_um, 40_um}).error().code() ==
          error_code::size_out_of_range);
}

TEST_CASE("the nearest standard class, against every class there is") {
    // 8 F7 is +28/+13, 8 E7 +40/+25, 8 G7 +20/+5 (ISO 286-2:2010): a window of +12 to +30 takes F7 whole
    const auto f7 = nearest_class<side::hole>(between(8.012_mm, 8.030_mm), 8_mm);
    REQUIRE(f7.has_value());
    CHECK(f7->tolerance_class == "F7"_hole_class);
    CHECK(f7->miss() == 0_nm);
    // the rod that is 7.97: of an 8 mm bore only a fine class below the nominal size would do
    constexpr hole_limits rods_bore = *bore_for(measured_shaft{7.970_mm, 2_um}, {8_um, 20_um});
    static_assert(nearest_class(rods_bore, 8_mm)->tolerance_class == "P5"_hole_class); // 8 P5: -13/-19
    CHECK(nearest_class(rods_bore, 8_mm)->miss() == 0_nm);
    CHECK(nearest_class(rods_bore, 7.97_mm)->tolerance_class == "F4"_hole_class); // +17/+13
    // where none lies within, the miss says by how much
    CHECK(nearest_class<side::hole>(between(8.012_mm, 8.013_mm), 8_mm)->miss() > 0_nm);
    CHECK(!nearest_class<side::shaft>(between(1_mm, 2_mm), 4000_mm));

    std::mt19937 random(286);
    for (int i = 0; i < 200; ++i) {
        const length nominal = 1_mm * (1 + random() % 200);
        const length lower = nominal + 1_um * (random() % 120) - 60_um;
        const shaft_limits wanted = between(lower, lower + 1_um * (1 + random() % 80));
        const auto found = nearest_class(wanted, nominal);
        REQUIRE(found.has_value());
        length least_miss = 1_mm * 4000;
        for (int p = 0; p < position_count; ++p)
            for (int g = 0; g < grade::count; ++g)
                if (const auto l =
                        limits(nominal, shaft_class{static_cast<position>(p), grade::from_step(g)})) {
                    const length miss = (std::max)({wanted.lower_limit() - l->lower_limit(),
                                                    l->upper_limit() - wanted.upper_limit(), 0_nm});
                    least_miss = (std::min)(least_miss, miss);
                }
        CHECK(found->miss() == least_miss);
        CHECK((found->miss() > 0_nm ||
               (wanted.allow(found->limits.lower_limit()) && wanted.allow(found->limits.upper_limit()))));
    }
}

namespace {

bool is_good(measured_hole h, measured_shaft s, clearance_window w) {
    const length either_way = h.uncertainty() + s.uncertainty();
    const length c = h.size() - s.size();
    return c - either_way >= w.least && c + either_way <= w.most;
}

/// The most good pairs there can be, by trying every order of the shafts.
std::size_t most_pairs(const std::vector<measured_hole>& holes, const std::vector<measured_shaft>& shafts,
                       clearance_window w) {
    const std::size_t n = (std::max)(holes.size(), shafts.size());
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::size_t most = 0;
    do {
        std::size_t good = 0;
        for (std::size_t i = 0; i < holes.size(); ++i)
            if (order[i] < shafts.size() && is_good(holes[i], shafts[order[i]], w)) ++good;
        most = (std::max)(most, good);
    } while (std::next_permutation(order.begin(), order.end()));
    return most;
}

} // namespace

TEST_CASE("pairing: as many good pairs as any order of the parts gives, each part once") {
    std::mt19937 random(200);
    const clearance_window w{8_um, 20_um};
    for (int i = 0; i < 300; ++i) {
        std::vector<measured_hole> holes;
        std::vector<measured_shaft> shafts;
        for (std::size_t n = random() % 7; n > 0; --n)
            holes.emplace_back(8_mm + 1_nm * (random() % 40'000), 1_nm * (random() % 3'000));
        for (std::size_t n = random() % 7; n > 0; --n)
            shafts.emplace_back(7.985_mm + 1_nm * (random() % 40'000), 1_nm * (random() % 3'000));
        const auto found = pair_up<8>(holes, shafts, w);
        REQUIRE(found.has_value());
        CHECK(found->size() == most_pairs(holes, shafts, w));
        std::vector<bool> used(8, false);
        std::size_t last_hole = 0;
        for (const matched_pair& p : *found) {
            CHECK(is_good(holes[p.hole], shafts[p.shaft], w));
            CHECK(!used[p.shaft]);
            used[p.shaft] = true;
            CHECK((p.hole >= last_hole));
            last_hole = p.hole + 1;
            CHECK(p.clearance.least >= w.least);
            CHECK(p.clearance.most <= w.most);
        }
    }
}

TEST_CASE("pairing: two hundred of each, empty trays, too many") {
    std::mt19937 random(200);
    std::vector<measured_hole> holes;
    std::vector<measured_shaft> shafts;
    for (int i = 0; i < 200; ++i) {
        holes.emplace_back(8_mm + 1_nm * (random() % 18'000), 1_um);
        shafts.emplace_back(7.986_mm + 1_nm * (random() % 9'000), 1_um);
    }
    const auto found = pair_up(holes, shafts, {8_um, 20_um});
    REQUIRE(found.has_value());
    CHECK(found->size() > 150);
    CHECK(pair_up({}, shafts, {8_um, 20_um})->empty());
    CHECK(pair_up<8>(holes, shafts, {8_um, 20_um}).error().code() == error_code::too_many_parts);
    CHECK(pair_up(holes, shafts, {20_um, 8_um}).error().code() == error_code::window_crossed);

    constexpr measured_hole two_holes[] = {{8.010_mm, 1_um}, {8.020_mm, 1_um}};
    constexpr measured_shaft two_shafts[] = {{8.006_mm, 1_um}, {7.996_mm, 1_um}};
    static_assert(pair_up<2>(two_holes, two_shafts, {10_um, 20_um})->size() == 2);
    static_assert((*pair_up<2>(two_holes, two_shafts, {10_um, 20_um}))[0].shaft == 1);
}

TEST_CASE("a sleeve for a bore that is too large") {
    const auto s = sleeve_for(measured_hole{12.08_mm, 5_um}, "12 H7"_hole, {.wall = 1.5_mm});
    REQUIRE(s.has_value());
    CHECK(s->seat == "16 H7"_hole); // 12.018 + 3 = 15.018, up to a whole millimetre
    CHECK(s->outside == "16 s6"_shaft);
    CHECK(s->inside == "12 H7"_hole);
    CHECK(s->wall == 1.991_mm);
    CHECK(s->press().kind() == fit_kind::interference);
    CHECK(s->take_care.contains(caution::press_force));
    static_assert(sleeve_for(measured_hole{12.08_mm, 5_um}, "12 H7"_hole, {.wall = 1.5_mm})->seat ==
                  "16 H7"_hole);
    // a bore that is far too large decides the seat itself
    CHECK(sleeve_for(measured_hole{17.3_mm, 5_um}, "12 H7"_hole, {.wall = 1.5_mm})->seat.nominal() == 18_mm);
    CHECK(sleeve_for(measured_hole{12.08_mm, 5_um}, "12 H7"_hole, {.wall = 0_mm}).error().code() ==
          error_code::wall_too_thin);
    CHECK(!sleeve_for(measured_hole{12.08_mm, 5_um}, "12 H7"_hole, {.wall = 1_mm, .step = 0_mm}));
    CHECK(!sleeve_for(measured_hole{12.08_mm, 5_um}, "12 H7"_hole, {.wall = 2000_mm}));
}

TEST_CASE("windows and parts beyond any clearance are refused, and nothing overflows") {
    const length least = length::from_nanometres(INT64_MIN);
    const length most = length::from_nanometres(INT64_MAX);
    CHECK(!bore_for(measured_shaft{8_mm, 2_um}, {most, most}));
    CHECK(!bore_for(measured_shaft{8_mm, least}, {least, most}));
    CHECK(!shaft_for(measured_hole{8_mm, 2_um}, {least, least}));
    CHECK(!shaft_for(measured_hole{least, most}, {least, most}));
    CHECK(bore_for(measured_shaft{8_mm, 2_um}, {10_um, most})->lower_limit() == 8.012_mm);
    constexpr measured_hole hole[] = {{8.010_mm, 1_um}};
    constexpr measured_shaft shaft[] = {{8.006_mm, 1_um}};
    CHECK(pair_up<1>(hole, shaft, {least, most})->size() == 1);
    CHECK(pair_up<1>(hole, shaft, {0_mm, most})->size() == 1);
    CHECK(pair_up<1>(hole, shaft, {most, most})->empty());
    for (const length wall : {least, -1_mm, 10'001_mm, most})
        CHECK(sleeve_for(measured_hole{12.08_mm, 5_um}, "12 H7"_hole, {.wall = wall}).error().code() ==
              error_code::wall_too_thin);
}
