#include "support/both.hpp"
#include "support/csv.hpp"
#include "support/printed_values.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/io/stack.hpp>
#include <fitwright/stack.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <random>
#include <sstream>
#include <string>
#include <string_view>
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

/// A printed link, `sign:nominal:tolerance`; without a unit it is taken for millimetres.
chain_link link_of(const printed_value& v) {
    int sign = 0;
    double nominal = 0;
    double tolerance = 0;
    REQUIRE(std::sscanf(v.written.c_str(), "%d:%lf:%lf", &sign, &nominal, &tolerance) == 3);
    const double unit = v.unit == 1 ? 1e-3 : v.unit;
    const length size = quantity<metre>::from_value(nominal * unit);
    const deviations either_way = plus_minus(quantity<metre>::from_value(tolerance * unit));
    return sign > 0 ? opens("", size, either_way) : closes("", size, either_way);
}

constexpr chain_link spindle[] = {opens("housing", 62_mm, {.upper = 100_um, .lower = 50_um}),
                                  closes("bearing", 15_mm, {.upper = 0_um, .lower = -120_um}),
                                  closes("spacer", 31.5_mm, plus_minus(20_um)),
                                  closes("bearing", 15_mm, {.upper = 0_um, .lower = -120_um})};

} // namespace

TEST_CASE("the printed examples, within 3 %") {
    auto table = read_csv(FITWRIGHT_TEST_DATA "/stack_examples.csv");
    REQUIRE(table.fault.empty());
    int chains = 0;
    for (std::size_t row = 0; row < table.rows.size(); ++row) {
        CAPTURE(table.cell(row, "id"));
        CAPTURE(table.cell(row, "source"));
        const auto in = printed_values(table.cell(row, "inputs"));
        const auto out = printed_values(table.cell(row, "printed"));
        std::vector<chain_link> links;
        if (table.cell(row, "kind") == "chain") {
            ++chains;
            for (const auto& v : in) links.push_back(link_of(v));
        } else { // a hole and a shaft are a chain of two
            const auto size = [&](const char* name) -> length {
                return quantity<metre>::from_value(si_of(in, name));
            };
            const fit f(between(size("hole_min"), size("hole_max")),
                        between(size("shaft_min"), size("shaft_max")));
            links = {opens("hole", f.hole()), closes("shaft", f.shaft())};
            CHECK(stack(links)->worst_case == range<length>{f.min_clearance(), f.max_clearance()});
        }
        const auto s = stack(links);
        REQUIRE(s);
        for (const auto& printed : out) {
            CAPTURE(printed.name);
            const std::string& n = printed.name;
            const length got = n == "nominal"            ? s->nominal
                               : n == "worst_case"       ? half_of(s->worst_case)
                               : n == "rss"              ? half_of(s->root_sum_square)
                               : n == "max"              ? s->worst_case.most
                               : n == "min"              ? s->worst_case.least
                               : n == "max_clearance"    ? s->worst_case.most
                               : n == "max_interference" ? -s->worst_case.least
                               : n == "min_interference" ? -s->worst_case.most
                                                         : length();
            REQUIRE(got != length());
            CHECK(agree_within(got.in<metre>(), printed.number() * (printed.unit == 1 ? 1e-3 : printed.unit),
                               0.03));
        }
    }
    CHECK(table.rows.size() == 5);
    CHECK(chains == 3);
    CHECK(table.fault.empty());
}

TEST_CASE("a chain by hand") {
    FITWRIGHT_CHECK_BOTH(stack(spindle)->nominal == 0.5_mm);
    FITWRIGHT_CHECK_BOTH(stack(spindle)->worst_case == range<length>{0.53_mm, 0.86_mm});
    // About the middle, 0.695: the root of 25^2 + 60^2 + 20^2 + 60^2 is 90.6918 um.
    FITWRIGHT_CHECK_BOTH(stack(spindle)->root_sum_square == range<length>{0.604308_mm, 0.785692_mm});
    FITWRIGHT_CHECK_BOTH(stack(spindle)->benderized == range<length>{0.558962_mm, 0.831038_mm});
    // Cf = 1 + (165 - 90.6918) / (2 * 90.6918) = 1.40967: 127.8459 um.
    FITWRIGHT_CHECK_BOTH(stack(spindle)->modified == range<length>{0.567154_mm, 0.822846_mm});
    FITWRIGHT_CHECK_BOTH(stack(spindle)->widest_link == 1);
    FITWRIGHT_CHECK_BOTH(stack(spindle)->doubts.empty());
    CHECK(stack(spindle)->from.how_sure == confidence::memory);
    CHECK(half_of({0_nm, 3_nm}) == 2_nm);
    static_assert(lies_within({5_um, 6_um}, {5_um, 6_um}) && !lies_within({4_um, 6_um}, {5_um, 6_um}) &&
                  !lies_within({5_um, 7_um}, {5_um, 6_um}));
}

TEST_CASE("links from all that has limits") {
    static_assert(opens("pin", "8 m6"_shaft).upper_limit() == 8.015_mm);
    static_assert(closes("bore", "8 H7"_hole).lower_limit() == 8_mm);
    static_assert(opens("step", between(3_mm, 3.1_mm)).nominal == 3_mm);
    static_assert(closes("step", between(3_mm, 3.1_mm)).upper_limit() == 3.1_mm);
    static_assert(opens("rod", measured_shaft(7.968_mm, 2_um)).lower_limit() == 7.966_mm);
    static_assert(closes("bore", measured_hole(8_mm, 2_um)).effect == on_gap::closes);
    static_assert(closes("a", 1_mm, plus_minus(1_um)).coming_out(scatter::triangular).comes_out ==
                  scatter::triangular);
    // From any container that keeps them side by side.
    const std::vector<chain_link> links(std::begin(spindle), std::end(spindle));
    CHECK(stack(links)->worst_case == stack(spindle)->worst_case);
}

TEST_CASE("a factor: exact where it is whole, outwards where it is not") {
    // A diameter that enters by its radius, a flank that enters by its tangent.
    constexpr chain_link radius[] = {opens("eye", 10_mm, plus_minus(3_nm)).counted({.times = 1, .per = 2})};
    FITWRIGHT_CHECK_BOTH(stack(radius)->worst_case == range<length>{nm(4'999'998), nm(5'000'002)});
    FITWRIGHT_CHECK_BOTH(stack(radius)->nominal == 5_mm);
    constexpr chain_link twice[] = {closes("washer", 1_mm, plus_minus(10_um)).counted({.times = 2})};
    FITWRIGHT_CHECK_BOTH(stack(twice)->worst_case == range<length>{-2.02_mm, -1.98_mm});
    constexpr chain_link flank[] = {
        closes("flank", 1_mm, plus_minus(1_um)).counted({.times = 577, .per = 1000})};
    FITWRIGHT_CHECK_BOTH(stack(flank)->worst_case == range<length>{nm(-577'577), nm(-576'423)});
}

TEST_CASE("worst case against every corner") {
    std::mt19937 random(6);
    const auto upto = [&](int n) { return static_cast<std::int64_t>(random() % static_cast<unsigned>(n)); };
    for (int trial = 0; trial < 200; ++trial) {
        std::vector<chain_link> links;
        const auto how_many = static_cast<std::size_t>(1 + upto(9));
        for (std::size_t i = 0; i < how_many; ++i) {
            const deviations d{.upper = nm(upto(200'000)), .lower = nm(-upto(200'000))};
            const length size = nm(upto(100'000'000));
            links.push_back(upto(2) == 0 ? opens("", size, d) : closes("", size, d));
            links.back().factor.times = 1 + upto(3);
        }
        length least = nm(INT64_MAX);
        length most = nm(-INT64_MAX);
        for (unsigned corner = 0; corner < 1U << how_many; ++corner) {
            length gap;
            for (std::size_t i = 0; i < how_many; ++i) {
                const chain_link& l = links[i];
                const length size = (corner >> i & 1U) != 0 ? l.upper_limit() : l.lower_limit();
                gap += (l.effect == on_gap::opens ? size : -size) * l.factor.times;
            }
            if (gap < least) least = gap;
            if (gap > most) most = gap;
        }
        const auto s = stack(links);
        REQUIRE(s);
        CHECK(s->worst_case == range<length>{least, most});
        // Each rule within the worst case, and none narrower than the root of squares.
        for (const range<length>& r : {s->root_sum_square, s->benderized, s->modified}) {
            CHECK(lies_within(r, s->worst_case));
            CHECK(lies_within(s->root_sum_square, r));
            CHECK(r.least + r.most == least + most); // about the middle
        }
    }
}

TEST_CASE("one link, two, and links without tolerance") {
    constexpr chain_link one[] = {opens("a", 5_mm, plus_minus(10_um))};
    FITWRIGHT_CHECK_BOTH(stack(one)->root_sum_square == stack(one)->worst_case);
    FITWRIGHT_CHECK_BOTH(stack(one)->modified == stack(one)->worst_case);
    FITWRIGHT_CHECK_BOTH(stack(one)->doubts == (stack_doubt::few_links | stack_doubt::one_link_rules));
    // Two equal ones: Bender's 1.5 * 14.1421 is cut off at the 20 of the worst case; half the scatter is not more
    // than half. Modified: 1 + (20 - 14.1421) / (2 (sqrt 2 - 1)) = 21.2 is cut off as well.
    constexpr chain_link two[] = {opens("a", 5_mm, plus_minus(10_um)), closes("b", 4_mm, plus_minus(10_um))};
    FITWRIGHT_CHECK_BOTH(stack(two)->benderized == stack(two)->worst_case);
    FITWRIGHT_CHECK_BOTH(stack(two)->modified == stack(two)->worst_case);
    FITWRIGHT_CHECK_BOTH(stack(two)->root_sum_square == range<length>{nm(985'857), nm(1'014'143)});
    FITWRIGHT_CHECK_BOTH(stack(two)->doubts == flags(stack_doubt::few_links));
    constexpr chain_link stiff[] = {opens("a", 5_mm, {}), closes("b", 4_mm, {})};
    FITWRIGHT_CHECK_BOTH(stack(stiff)->modified == range<length>{1_mm, 1_mm});
    FITWRIGHT_CHECK_BOTH(stack(stiff)->worst_case == range<length>{1_mm, 1_mm});
    for (std::uint32_t bits = 1; bits <= 8; bits *= 2)
        CHECK(in_words(static_cast<stack_doubt>(bits)).size() > 30);
}

TEST_CASE("what is no chain") {
    const auto refused = [](error_code code, text piece, chain_link l) {
        const chain_link links[] = {spindle[0], l};
        CHECK(says(stack(links), code, piece));
        CHECK(says(simulate(links, {.seed = 1, .samples = 10, .comes_out = scatter::normal}), code, piece));
    };
    CHECK(says(stack(rows<chain_link>()), error_code::chain_is_empty, "allowed are one link"));
    refused(error_code::limits_crossed, "'pin' is from 4.01 to 4 mm",
            opens("pin", 4_mm, {.upper = 0_um, .lower = 10_um}));
    refused(error_code::not_a_link, "'pin' counts 0 times per 1",
            opens("pin", 4_mm, {}).counted({.times = 0}));
    refused(error_code::not_a_link, "counts 1 times per -2",
            opens("pin", 4_mm, {}).counted({.times = 1, .per = -2}));
    refused(error_code::not_a_link, "1000001 times", opens("pin", 4_mm, {}).counted({.times = 1'000'001}));
    refused(error_code::not_a_link, "longer than 100 m", opens("pin", 100'001_mm, {}));
    refused(error_code::chain_too_long, "1000 km",
            opens("pin", 100'000_mm, {}).counted({.times = 1'000'000}));
    CHECK(stack(rows<chain_link>(spindle, 1)));
    const chain_link longest[] = {opens("a", 100'000_mm, {}).counted({.times = 10'000})};
    CHECK(stack(longest)->worst_case.most == nm(1'000'000'000'000'000));
}

TEST_CASE("printed") {
    std::ostringstream out;
    out << *stack(rows<chain_link>(spindle, 2));
    const std::string s = out.str();
    CHECK(s.find("worst case 47.05 to 47.22 mm") != std::string::npos);
    CHECK(s.find(std::string(in_words(stack_doubt::few_links))) != std::string::npos);
    CHECK(s.find("link no. 2") != std::string::npos);
    std::ostringstream link;
    link << spindle[1].counted({.times = 1, .per = 2});
    CHECK(link.str() == "closes by bearing, 14.88 to 15 mm, times 1/2");
}

TEST_CASE("lengths beyond any part are refused before they are added") {
    const length least = length::from_nanometres(INT64_MIN);
    const length most = length::from_nanometres(INT64_MAX);
    const chain_link too_long[] = {opens("a", length::from_nanometres(INT64_MAX - 5), plus_minus(50_um)),
                                   opens("a", 10_mm, {.upper = most, .lower = least}),
                                   opens("a", between(least, most)),
                                   opens("a", length::from_nanometres(20'000'000'000'000),
                                         {.upper = length::from_nanometres(-19'999'999'000'000),
                                          .lower = length::from_nanometres(-20'000'000'000'000)})
                                       .counted({.times = 1'000'000})};
    for (const chain_link& l : too_long) {
        const auto made = stack(rows<chain_link>(&l, 1));
        REQUIRE(!made.has_value());
        CHECK(made.error().code() == error_code::not_a_link);
        CHECK(made.error().message().find("longer than 100 m: allowed") != text::npos);
    }
}

TEST_CASE("a long name leaves room for what is wrong") {
    const std::string name = std::string(39, 'n') + "\xC3\xA4" + std::string(260, 'x');
    const chain_link crossed[] = {opens(name, 10_mm, {.upper = 0_um, .lower = 50_um})};
    const auto made = stack(crossed);
    REQUIRE(!made.has_value());
    CHECK(made.error().message().find("nnn...' is from 10.05 to 10 mm: allowed is the lower limit first") !=
          text::npos);
    const chain_link short_enough[] = {opens(std::string_view(name).substr(0, 39), 10_mm, {0_um, 50_um})};
    CHECK(stack(short_enough).error().message().find("nnn' is from") != text::npos);
}

TEST_CASE("links in braces: the same as in an array") {
    constexpr chain_link links[] = {opens("housing", 40_mm, plus_minus(50_um)),
                                    closes("shaft", 39_mm, plus_minus(30_um))};
    constexpr auto in_braces =
        stack({opens("housing", 40_mm, plus_minus(50_um)), closes("shaft", 39_mm, plus_minus(30_um))});
    static_assert(in_braces->worst_case == range<length>{0.92_mm, 1.08_mm});
    CHECK(in_braces->worst_case == stack(links)->worst_case);
    CHECK(in_braces->root_sum_square == stack(links)->root_sum_square);
    CHECK(stack({opens("housing", 40_mm, plus_minus(50_um))})->nominal == 40_mm);
}

TEST_CASE("plus or minus: from the end of the range of a length too, and refused there") {
    static_assert(plus_minus(length::from_nanometres(INT64_MIN)).lower > 0_mm);
    static_assert(plus_minus(50_um).lower == -50_um && plus_minus(50_um).upper == 50_um);
    for (const length half : {length::from_nanometres(INT64_MIN), length::from_nanometres(INT64_MAX)}) {
        const auto made = stack({opens("a", 10_mm, plus_minus(half))});
        REQUIRE(!made);
        CHECK(made.error().code() == error_code::not_a_link);
    }
}
