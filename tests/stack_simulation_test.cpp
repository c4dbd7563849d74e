#include "support/both.hpp"
#include "support/csv.hpp"
#include "support/printed_values.hpp"
#include <fitwright/io/stack.hpp>
#include <fitwright/stack/simulate.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
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

double deviate(std::int64_t units) { return std::ldexp(static_cast<double>(units), -detail::deviate_bits); }
double phi(double z) { return std::erfc(-z / std::sqrt(2.0)) / 2; }

/// Chase's shaft in its housing: see stack_examples.csv, SK1.
constexpr chain_link housing[] = {
    closes("ring", 0.0505_in, plus_minus(0.0015_in)),    opens("shaft", 8_in, plus_minus(0.008_in)),
    closes("bearing", 0.5093_in, plus_minus(0.0025_in)), opens("sleeve", 0.4_in, plus_minus(0.002_in)),
    closes("case", 7.711_in, plus_minus(0.006_in)),      opens("sleeve", 0.4_in, plus_minus(0.002_in)),
    closes("bearing", 0.5093_in, plus_minus(0.0025_in))};

constexpr chain_link one_link[] = {opens("a", 10_mm, plus_minus(0.3_mm))};

/// How far a share may be from what it should be: five standard errors.
bool is_share_of(double got, double truth, double samples) {
    return std::fabs(got - truth) < 5 * std::sqrt(truth * (1 - truth) / samples) + 1e-12;
}

} // namespace

TEST_CASE("the generator gives its published numbers") {
    // Reference outputs of SplitMix64 for these seeds, printed in many places.
    constexpr std::uint64_t of_1234567[] = {6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
                                            4593380528125082431U, 16408922859458223821U};
    constexpr std::uint64_t of_zero[] = {0xE220A8397B1DCDAF, 0x6E789E6AA1B965F4, 0x06C45D188009454F,
                                         0xF88BB8A8724C81EC};
    constexpr auto gives = [](std::uint64_t seed, const auto& published) {
        split_mix random(seed);
        for (const std::uint64_t number : published)
            if (random.next() != number) return false;
        return true;
    };
    FITWRIGHT_CHECK_BOTH(gives(given(std::uint64_t{1234567}), of_1234567));
    FITWRIGHT_CHECK_BOTH(gives(given(std::uint64_t{0}), of_zero));
}

TEST_CASE("the table of the ziggurat is what its definition says, to the last bit") {
    // Marsaglia & Tsang 2000 print r = 3.442619855899 and v = 9.91256303526217e-3 for 128 layers; with more figures,
    // layers of the area v = r f(r) + (area of the tail) close at the top of the bell:
    constexpr long double r = 3.442619855896652121424L;
    constexpr long double v = 9.91256303533646109569e-3L;
    CHECK(std::fabs(r - 3.442619855899L) < 1e-11L);
    CHECK(std::fabs(v - 9.91256303526217e-3L) < 1e-12L);
    const auto bell = [](long double x) { return std::exp(-x * x / 2); };
    CHECK(std::fabs(v - r * bell(r) - std::sqrt(std::acos(-1.0L) / 2) * std::erfc(r / std::sqrt(2.0L))) <
          1e-17L);
    const auto is_rounded = [](auto entry, long double exact, int bits) {
        return std::fabs(static_cast<long double>(entry) - std::ldexp(exact, bits)) < 0.501L;
    };
    CHECK(is_rounded(detail::ziggurat_edge[0], v / bell(r), detail::deviate_bits));
    CHECK(is_rounded(detail::ziggurat_height[0], bell(v / bell(r)), 32));
    long double edge = r;
    for (int i = 1; i < 128; ++i) {
        CAPTURE(i);
        CHECK(is_rounded(detail::ziggurat_edge[i], edge, detail::deviate_bits));
        CHECK(is_rounded(detail::ziggurat_height[i], bell(edge), 32));
        const long double height = v / edge + bell(edge);
        if (i == 127) CHECK(std::fabs(height - 1) < 1e-14L);
        else edge = std::sqrt(-2 * std::log(height));
    }
    CHECK(detail::ziggurat_edge[128] == 0);
    CHECK(detail::ziggurat_height[128] == std::uint64_t{1} << 32);
}

TEST_CASE("normal deviates: moments, tails, and the whole curve") {
    split_mix random(286);
    constexpr int count = 4'000'000;
    std::vector<int> bins(1200); // a hundredth of a sigma each
    double sums[5] = {};
    int beyond_edge = 0;
    for (int i = 0; i < count; ++i) {
        const double z = deviate(detail::normal_deviate(random));
        double power = 1;
        for (double& sum : sums) sum += power, power *= z;
        beyond_edge += std::fabs(z) > 3.442619855899 ? 1 : 0;
        const double bin = std::floor(z * 100) + 600;
        if (bin >= 0 && bin < 1200) ++bins[static_cast<std::size_t>(bin)];
    }
    const double root = std::sqrt(double{count});
    CHECK(std::fabs(sums[1] / count) < 5 / root);
    CHECK(std::fabs(sums[2] / count - 1) < 5 * std::sqrt(2.0) / root);
    CHECK(std::fabs(sums[3] / count) < 5 * std::sqrt(15.0) / root);
    CHECK(std::fabs(sums[4] / count - 3) < 5 * std::sqrt(96.0) / root);
    CHECK(is_share_of(double(beyond_edge) / count, 2 * phi(-3.442619855899),
                      count)); // the tail and its own way
    // Chi squared over bins that expect 50 or more.
    double chi = 0;
    int degrees_of_freedom = -1;
    for (int i = 0; i < 1200; ++i) {
        const double expected = count * (phi((i - 599) / 100.0) - phi((i - 600) / 100.0));
        if (expected < 50) continue;
        const double off = bins[static_cast<std::size_t>(i)] - expected;
        chi += off * off / expected;
        ++degrees_of_freedom;
    }
    CHECK(degrees_of_freedom > 600);
    CHECK(std::fabs(chi - degrees_of_freedom) < 5 * std::sqrt(2.0 * degrees_of_freedom));
}

TEST_CASE("rectangular and triangular deviates: never beyond one, and their moments") {
    split_mix random(3);
    constexpr int count = 1'000'000;
    double squares[2] = {};
    double fourths[2] = {};
    double mean[2] = {};
    bool inside = true;
    int inner_half[2] = {};
    for (int i = 0; i < count; ++i)
        for (int kind = 0; kind < 2; ++kind) {
            const double z =
                deviate(kind == 0 ? detail::rectangular_deviate(random) : detail::triangular_deviate(random));
            inside = inside && z >= -1 && z <= 1;
            mean[kind] += z;
            squares[kind] += z * z;
            fourths[kind] += z * z * z * z;
            inner_half[kind] += std::fabs(z) < 0.5 ? 1 : 0;
        }
    CHECK(inside);
    const double root = std::sqrt(double{count});
    CHECK(std::fabs(mean[0] / count) < 5 * std::sqrt(1.0 / 3) / root);
    CHECK(std::fabs(mean[1] / count) < 5 * std::sqrt(1.0 / 6) / root);
    CHECK(std::fabs(squares[0] / count - 1.0 / 3) < 5 * 0.298 / root);
    CHECK(std::fabs(squares[1] / count - 1.0 / 6) < 5 * 0.197 / root);
    CHECK(std::fabs(fourths[0] / count - 1.0 / 5) < 0.002);
    CHECK(std::fabs(fourths[1] / count - 1.0 / 15) < 0.002);
    CHECK(is_share_of(inner_half[0] / double{count}, 0.5, count));
    CHECK(is_share_of(inner_half[1] / double{count}, 0.75, count));
}

TEST_CASE("exponential deviates") {
    split_mix random(8);
    constexpr int count = 500'000;
    double sum = 0;
    int above_one = 0;
    for (int i = 0; i < count; ++i) {
        const double e = std::ldexp(static_cast<double>(detail::exponential_deviate(random)), -32);
        sum += e;
        above_one += e > 1 ? 1 : 0;
    }
    CHECK(std::fabs(sum / count - 1) < 5 / std::sqrt(double{count}));
    CHECK(is_share_of(above_one / double{count}, std::exp(-1.0), count));
}

TEST_CASE("Chase's chain by trying") {
    // Sigma 0.003693 in for normal links within 1 % at 40 000 draws; 0.006397 in for rectangular ones.
    const range<length> wanted{0.005_in, 0.035_in};
    const auto normal =
        simulate(housing, {.seed = 1, .samples = 40'000, .comes_out = scatter::normal, .wanted = wanted});
    REQUIRE(normal);
    CHECK(agree_within(normal->standard_deviation.in<inch>(), 0.003693, 0.01));
    CHECK(std::fabs(normal->mean.in<inch>() - 0.0199) < 5 * 0.003693 / 200);
    const double low = phi((0.005 - 0.0199) / 0.003693);
    const double high = phi(-(0.035 - 0.0199) / 0.003693);
    CHECK(is_share_of(normal->below, low, 40'000));
    CHECK(is_share_of(normal->above, high, 40'000));
    CHECK(normal->outside_95.least <= normal->outside());
    CHECK(normal->outside_95.most >= normal->outside());
    CHECK(normal->doubts == (stack_doubt::beyond_limits | stack_doubt::few_outside));

    const auto rectangular = simulate(
        housing, {.seed = 1, .samples = 1'000'000, .comes_out = scatter::rectangular, .wanted = wanted});
    REQUIRE(rectangular);
    CHECK(agree_within(rectangular->standard_deviation.in<inch>(), 0.006397, 0.003));
    CHECK(lies_within(rectangular->seen, stack(housing)->worst_case));
    CHECK(rectangular->doubts.empty());
    // Sigma of a triangle is a root of six of its half width.
    const auto triangular =
        simulate(housing, {.seed = 1, .samples = 1'000'000, .comes_out = scatter::triangular});
    CHECK(agree_within(triangular->standard_deviation.in<inch>(), 0.011079 / std::sqrt(6.0), 0.003));
    CHECK(triangular->from.document == "simulation");
}

TEST_CASE("one link against its closed form") {
    constexpr std::int64_t count = 1'000'000;
    const auto tried = [](scatter s, range<length> w, double sigmas = 3) {
        return *simulate(one_link,
                         {.seed = 11, .samples = count, .comes_out = s, .sigmas = sigmas, .wanted = w});
    };
    const range<length> w{9.85_mm, 10.2_mm}; // 0.15 below and 0.2 above the middle of +/-0.3
    const auto rectangular = tried(scatter::rectangular, w);
    CHECK(is_share_of(rectangular.below, 0.25, count));
    CHECK(is_share_of(rectangular.above, 1.0 / 6, count));
    const auto triangular = tried(scatter::triangular, w);
    CHECK(is_share_of(triangular.below, 0.125, count));
    CHECK(is_share_of(triangular.above, 1.0 / 18, count));
    const auto normal = tried(scatter::normal, w); // sigma 0.1
    CHECK(is_share_of(normal.below, phi(-1.5), count));
    CHECK(is_share_of(normal.above, phi(-2), count));
    CHECK(agree_within(normal.standard_deviation.in<millimetre>(), 0.1, 0.005));
    const auto better = tried(scatter::normal, w, 4.5);
    CHECK(agree_within(better.standard_deviation.in<millimetre>(), 0.3 / 4.5, 0.005));
    // Of the quantiles, 0.135 % and 99.865 %: of a rectangle just inside its ends, of a bell three sigma.
    CHECK(std::fabs(rectangular.most_of_them.least.in<millimetre>() - (9.7 + 0.6 * 0.00135)) < 0.001);
    CHECK(std::fabs(rectangular.most_of_them.most.in<millimetre>() - (10.3 - 0.6 * 0.00135)) < 0.001);
    CHECK(std::fabs(normal.most_of_them.least.in<millimetre>() - 9.7) < 0.004);
    CHECK(std::fabs(normal.most_of_them.most.in<millimetre>() - 10.3) < 0.004);
    CHECK(normal.seen.least < 9.7_mm); // links are not cut off at their limits, and the doubt says so
    CHECK(normal.doubts.contains(stack_doubt::beyond_limits));
    // A window on the edge counts its edge as good: all of a rectangle is within its limits.
    CHECK(tried(scatter::rectangular, {9.7_mm, 10.3_mm}).outside() == 0);
    CHECK(tried(scatter::rectangular, {10.3_mm, 11_mm}).below > 0.999);
    CHECK(tried(scatter::rectangular, {1'000'000_mm, 1'000'001_mm}).below == 1);
    CHECK(tried(scatter::rectangular, {-1'000'001_mm, -1'000'000_mm}).above == 1);
}

TEST_CASE("closing links and factors turn the distribution round and stretch it") {
    constexpr std::int64_t count = 200'000;
    constexpr chain_link closing[] = {closes("a", 10_mm, plus_minus(0.3_mm)).counted({.times = 1, .per = 2})};
    const auto s = simulate(
        closing,
        {.seed = 2, .samples = count, .comes_out = scatter::rectangular, .wanted = {-5.075_mm, -4.9_mm}});
    REQUIRE(s);
    CHECK(is_share_of(s->below, 0.25, count));
    CHECK(is_share_of(s->above, 1.0 / 6, count));
    CHECK(std::fabs(s->mean.in<millimetre>() + 5) < 5 * 0.15 / std::sqrt(3.0 * count));
    // A link with a way of its own.
    constexpr chain_link mixed[] = {one_link[0].coming_out(scatter::rectangular), one_link[0]};
    const auto m = simulate(mixed, {.seed = 2, .samples = count, .comes_out = scatter::normal});
    CHECK(agree_within(m->standard_deviation.in<millimetre>(), std::sqrt(0.03 + 0.01), 0.01));
}

TEST_CASE("the same seed, the same answer: while compiling too, on every machine") {
    constexpr simulation s{
        .seed = 42, .samples = 700, .comes_out = scatter::normal, .wanted = {0.5_mm, 0.6_mm}};
    constexpr auto told = [](const simulation& of) {
        const auto r = simulate(housing, of);
        return r->mean == nm(509'572) && r->standard_deviation == nm(93'304);
    };
    FITWRIGHT_CHECK_BOTH(told(given(s)));
    constexpr auto compiled = simulate(housing, s);
    const auto run = simulate(housing, given(s));
    CHECK(compiled->mean == run->mean);
    CHECK(compiled->standard_deviation == run->standard_deviation);
    CHECK(compiled->most_of_them == run->most_of_them);
    CHECK(compiled->seen == run->seen);
    CHECK(compiled->below == run->below);
    CHECK(compiled->above == run->above);
    simulation other = s;
    other.seed = 43;
    CHECK(simulate(housing, other)->mean != run->mean);
}

TEST_CASE("a fine tolerance and a wide one keep their figures") {
    for (const std::int64_t half : {1LL, 7LL, 1'000LL, 123'456'789LL, 500'000'000LL}) {
        const chain_link l[] = {opens("a", 10'000_mm, plus_minus(nm(half)))};
        const auto s = simulate(l, {.seed = 5,
                                    .samples = 100'000,
                                    .comes_out = scatter::rectangular,
                                    .wanted = {10'000_mm, 20'000_mm}});
        REQUIRE(s);
        CAPTURE(half);
        CHECK(std::fabs(static_cast<double>(s->standard_deviation.nanometres()) -
                        static_cast<double>(half) / std::sqrt(3.0)) < 0.5 + 0.01 * static_cast<double>(half));
        CHECK(is_share_of(s->below, 0.5, 100'000));
        CHECK(lies_within(s->seen, {10'000_mm - nm(half + 1), 10'000_mm + nm(half + 1)}));
    }
    const chain_link none[] = {opens("a", 10_mm, {})};
    const auto s = simulate(none, {.seed = 5, .samples = 1'000, .comes_out = scatter::normal});
    CHECK(s->mean == 10_mm);
    CHECK(s->standard_deviation == length());
}

TEST_CASE("confidence bounds hold the truth 95 times in 100") {
    int held = 0;
    constexpr int runs = 400;
    for (std::uint64_t seed = 0; seed < runs; ++seed) {
        const auto s = simulate(one_link, {.seed = seed,
                                           .samples = 512,
                                           .comes_out = scatter::rectangular,
                                           .wanted = {9.76_mm, 11_mm}}); // 10 % outside
        held += s->outside_95.least <= 0.1 && 0.1 <= s->outside_95.most ? 1 : 0;
    }
    CHECK(held > runs * 0.92);
    CHECK(held < runs * 0.98);
}

TEST_CASE("what is no simulation") {
    constexpr simulation good{.seed = 1, .samples = 100, .comes_out = scatter::normal};
    const auto refused = [&](text piece, auto change) {
        simulation s = good;
        change(s);
        CHECK(says(simulate(housing, s), error_code::not_a_simulation, piece));
    };
    refused("1 samples: allowed", [](simulation& s) { s.samples = 1; });
    refused("4000000000", [](simulation& s) { s.samples = 4'000'000'001; });
    refused("allowed are normal", [](simulation& s) { s.comes_out = scatter::not_stated; });
    refused("1 to 10 sigmas", [](simulation& s) { s.sigmas = 0.9; });
    refused("1 to 10 sigmas", [](simulation& s) { s.sigmas = std::nan(""); });
    const chain_link wide[] = {opens("a", 10'000_mm, plus_minus(501_mm))};
    CHECK(says(simulate(wide, good), error_code::chain_too_long, "1 m"));
    CHECK(simulate(housing, good));
}

TEST_CASE("printed") {
    std::ostringstream out;
    out << *simulate(housing, {.seed = 18'446'744'073'709'551'615U,
                               .samples = 2'000,
                               .comes_out = scatter::normal,
                               .wanted = {0.2_mm, 0.9_mm}});
    CHECK(out.str().find("2000 tried from seed 18446744073709551615: mean 0.50") == 0);
    CHECK(out.str().find("% outside (95 % confidence)") != std::string::npos);
    CHECK(out.str().find(std::string(in_words(stack_doubt::beyond_limits))) != std::string::npos);
}

TEST_CASE("a window the wrong way round is refused, and none asked about is none told of") {
    const simulation crossed{
        .seed = 1, .samples = 100, .comes_out = scatter::normal, .wanted = {15_mm, 14_mm}};
    CHECK(says(simulate(housing, crossed), error_code::window_crossed,
               "a gap wanted of 15 to 14 mm: allowed is the least first"));
    std::ostringstream out;
    const auto bare = simulate(housing, {.seed = 1, .samples = 100, .comes_out = scatter::normal});
    REQUIRE(bare.has_value());
    CHECK(!bare->has_window);
    CHECK(bare->outside() == 0);
    out << *bare;
    CHECK(out.str().find("window") == std::string::npos);
    CHECK(out.str().find("outside (95") == std::string::npos);
    // from INT64_MIN it is a window, if a wide one
    const auto widest = simulate(
        housing,
        {.seed = 1, .samples = 100, .comes_out = scatter::normal, .wanted = {nm(INT64_MIN), nm(INT64_MAX)}});
    REQUIRE(widest.has_value());
    CHECK(widest->has_window);
    CHECK(widest->outside() == 0);
}

TEST_CASE("links in braces are tried as in an array") {
    const chain_link links[] = {opens("housing", 40_mm, plus_minus(50_um)),
                                closes("shaft", 39_mm, plus_minus(30_um))};
    const simulation s{.seed = 7, .samples = 1000, .comes_out = scatter::rectangular};
    const auto in_braces =
        simulate({opens("housing", 40_mm, plus_minus(50_um)), closes("shaft", 39_mm, plus_minus(30_um))}, s);
    REQUIRE(in_braces);
    CHECK(in_braces->mean == simulate(links, s)->mean);
    CHECK(in_braces->seen == simulate(links, s)->seen);
}
