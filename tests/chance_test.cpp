// How often. Closed forms are named where they are used; printed examples are in tests/data/chance_examples.csv.

#include "support/both.hpp"
#include "support/csv.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/chance.hpp>
#include <fitwright/io/chance.hpp>
#include <fitwright/stack/simulate.hpp>
#include <fitwright/units.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using fitwright_tests::given;
using sizes = size_distribution;

namespace {

constexpr bool is_close(double a, double b, double by) { return a - b < by && b - a < by; }

constexpr fit pair_of(length hole_lower, length hole_upper, length shaft_lower, length shaft_upper) {
    return {between(hole_lower, hole_upper), between(shaft_lower, shaft_upper)};
}

/// The share below x of the sum of n even distributions on 0 to 1: Irwin and Hall.
constexpr double irwin_hall(int n, double x) {
    double sum = 0;
    double choose = 1;
    double factorial = 1;
    for (int k = 1; k <= n; ++k) factorial *= k;
    for (int k = 0; k <= n && k < x; ++k) {
        double power = 1;
        for (int i = 0; i < n; ++i) power *= x - k;
        sum += (k % 2 == 0 ? choose : -choose) * power;
        choose = choose * (n - k) / (k + 1);
    }
    return sum / factorial;
}

/// Share below of an even hole and an even shaft: the trapezoid, by areas.
constexpr double trapezoid_below(double hole_width, double shaft_width, double above_least) {
    const auto ramp = [](double x) { return x > 0 ? x * x / 2 : 0; };
    const double all = hole_width + shaft_width;
    return (ramp(above_least) - ramp(above_least - hole_width) - ramp(above_least - shaft_width) +
            ramp(above_least - all)) /
           (hole_width * shaft_width);
}

constexpr double below(const fit& f, const spread& s, length clearance) {
    return probability(f, {clearance, 1_mm}, s)->tighter;
}

} // namespace

TEST_CASE("two even parts: the trapezoid") {
    // 6 H7/m6, +12/0 and +12/+4: tight wherever the shaft is above the hole, two thirds of the rectangle
    FITWRIGHT_CHECK_BOTH(
        is_close(below("6 H7/m6"_fit, spread::both(sizes::uniform()), given(0_um)), 2.0 / 3, 1e-14));
    for (const auto& f : {"6 H7/m6"_fit, "25 H8/f7"_fit, "400 H11/c5"_fit, "50 M6/h9"_fit})
        for (int i = -2; i <= 42; ++i) {
            const length c = f.min_clearance() + f.tolerance() * i / 40;
            const double expected =
                trapezoid_below(f.hole().tolerance().in<nanometre>(), f.shaft().tolerance().in<nanometre>(),
                                (c - f.min_clearance()).in<nanometre>());
            CHECK(below(f, spread::both(sizes::uniform()), c) == doctest::Approx(expected).epsilon(1e-12));
        }
}

TEST_CASE("triangles of twice the width of an even part are sums of even parts") {
    constexpr fit equal = pair_of(10_mm, 10.020_mm, 9.970_mm, 9.990_mm); // clearance 10 to 50 um
    constexpr fit half = pair_of(10_mm, 10.010_mm, 9.970_mm, 9.990_mm);  // clearance 10 to 40 um
    FITWRIGHT_CHECK_BOTH(
        is_close(below(equal, spread::both(sizes::triangular()), given(22_um)), irwin_hall(4, 1.2), 1e-13));
    for (int i = 0; i <= 40; ++i) {
        const length c = 10_um + 1_um * i;
        CHECK(below(equal, spread::both(sizes::triangular()), c) ==
              doctest::Approx(irwin_hall(4, i / 10.0)).epsilon(1e-12));
        CHECK(below(half, {.hole = sizes::uniform(), .shaft = sizes::triangular()}, c) ==
              doctest::Approx(irwin_hall(3, i / 10.0)).epsilon(1e-12));
    }
    CHECK(below(half, {.hole = sizes::triangular(), .shaft = sizes::uniform()}, 15_um) !=
          doctest::Approx(irwin_hall(3, 0.5))); // the other way round is another thing
}

TEST_CASE("holes come out small, shafts large") {
    // The one-sided triangle is the smaller, or larger, of two even parts. Of four even sizes the two of
    // the hole are both above the two of the shaft in one order of six.
    constexpr fit same = pair_of(8_mm, 8.010_mm, 8_mm, 8.010_mm);
    constexpr spread safe = spread::both(sizes::towards_maximum_material());
    FITWRIGHT_CHECK_BOTH(is_close(below(same, safe, given(0_um)), 5.0 / 6, 1e-14));
    constexpr auto c = clearances("8 H7/g6"_fit, safe); // +15/0 and -5/-14: means 5 and -8
    FITWRIGHT_CHECK_BOTH(given(c)->mean() == 13_um);
    CHECK(c->mean() < "8 H7/g6"_fit.mean_clearance());
    // variance of the one-sided triangle: the square of the tolerance over 18
    CHECK(c->sigma() == length::from_nanometres(std::llround(std::sqrt((15e3 * 15e3 + 9e3 * 9e3) / 18))));
    CHECK(probability(same, {-1_um, 1_um}, safe)->from.how_sure == confidence::practice);
    CHECK(probability(same, {-1_um, 1_um}, spread::both(sizes::uniform()))->from.how_sure ==
          confidence::stated);
}

TEST_CASE("means and standard deviations") {
    constexpr fit f = pair_of(20_mm, 20.024_mm, 19.960_mm, 19.984_mm);
    FITWRIGHT_CHECK_BOTH(given(clearances(f, spread::both(sizes::uniform())))->mean() == 40_um);
    // width over the root of 12, of 24, of 6 Cp
    FITWRIGHT_CHECK_BOTH(given(clearances(f, spread::both(sizes::uniform())))->sigma() == 9.798_um);
    FITWRIGHT_CHECK_BOTH(given(clearances(f, spread::both(sizes::triangular())))->sigma() == 6.928_um);
    CHECK(clearances(f, spread::both(sizes::normal({.cp = 1})))->sigma() == 5.657_um);
    CHECK(clearances(f, spread::both(sizes::normal({.cp = 2})))->sigma() == 2.828_um);
    // a shift of 0.5 moves the hole down by a quarter of its tolerance and the shaft up
    CHECK(clearances(f, spread::both(sizes::normal({.cp = 1, .shift = 0.5})))->mean() == 28_um);
    CHECK(clearances(f, spread::both(sizes::normal({.cp = 1, .shift = -0.5})))->mean() == 52_um);
    static_assert(capability{.cp = 2, .shift = 0.25}.cpk() == 1.5 &&
                  capability{.cp = 2, .shift = -0.25}.cpk() == 1.5);
    static_assert(capability::of_cpk(1.5).cpk() == 1.5);
    // Motorola's rule: sigma = T / (3 Cp (1 - k)), T half the tolerance
    CHECK(
        clearances(f, spread::both(sizes::normal(capability::of_cpk(capability{2, 0.25}.cpk()))))->sigma() ==
        length::from_nanometres(std::llround(12e3 / (3 * 2 * 0.75) * std::sqrt(2.0))));

    // the standard normal, cut off: variances 0.2911, 0.7737, 0.9733 at 1, 2 and 3 sigma
    const struct {
        double cp, variance;
    } cut_off[] = {{1.0 / 3, 0.29112509}, {2.0 / 3, 0.77374126}, {1, 0.97333692}};
    for (const auto& row : cut_off) {
        constexpr fit wide = pair_of(100_mm, 106_mm, 90_mm, 90_mm);
        const auto c =
            clearances(wide, {.hole = sizes::normal({.cp = row.cp}).inspected(), .shaft = sizes::uniform()});
        const double sigma = 6.0 / (6 * row.cp);
        CHECK(c->sigma().in<millimetre>() == doctest::Approx(sigma * std::sqrt(row.variance)).epsilon(1e-6));
        CHECK(c->mean() == 13_mm);
    }
    // cut off on one side at the mean: half a bell, mean sigma times root of 2 / pi, variance 1 - 2 / pi
    const auto half_bell =
        clearances(pair_of(10_mm, 20_mm, 10_mm, 10_mm),
                   {.hole = sizes::of({.mean = 10_mm, .sigma = 1_mm, .parts = 50}).inspected(),
                    .shaft = sizes::uniform()});
    CHECK(half_bell->mean().in<millimetre>() ==
          doctest::Approx(std::sqrt(2 / std::acos(-1.0))).epsilon(1e-6));
    CHECK(half_bell->sigma().in<millimetre>() ==
          doctest::Approx(std::sqrt(1 - 2 / std::acos(-1.0))).epsilon(1e-6));
}

TEST_CASE("printed examples") {
    fitwright_tests::csv_table table = fitwright_tests::read_csv(FITWRIGHT_TEST_DATA "/chance_examples.csv");
    REQUIRE(table.fault == "");
    REQUIRE(table.rows.size() == 7);
    const auto um = [](double number) { return length::from_nanometres(std::llround(number * 1000)); };
    const auto two = [](const std::string& cell) {
        const auto colon = cell.find(':');
        REQUIRE(colon != std::string::npos);
        return std::pair(std::stod(cell.substr(0, colon)), std::stod(cell.substr(colon + 1)));
    };
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        CAPTURE(table.cell(i, "id"));
        const auto hole = two(table.cell(i, "hole"));
        const auto shaft = two(table.cell(i, "shaft"));
        const double within = std::stod(table.cell(i, "within"));
        const std::string least = table.cell(i, "least");
        const double most = std::stod(table.cell(i, "most"));
        if (table.cell(i, "kind") == "limits_um") {
            const length size = 40_mm;
            const fit f = pair_of(size + um(hole.first), size + um(hole.second), size + um(shaft.first),
                                  size + um(shaft.second));
            const auto probable = clearances(f, spread::both(sizes::normal({.cp = 1})))->central(0.9973);
            REQUIRE(probable.has_value());
            CHECK(std::abs(probable->least.in<micrometre>() - std::stod(least)) <= within);
            CHECK(std::abs(probable->most.in<micrometre>() - most) <= within);
            continue;
        }
        const fit f = pair_of(um(hole.first), um(hole.first), um(shaft.first), um(shaft.first));
        const auto c = clearances(
            f, {.hole = sizes::of({.mean = um(hole.first), .sigma = um(hole.second), .parts = 100}),
                .shaft = sizes::of({.mean = um(shaft.first), .sigma = um(shaft.second), .parts = 100})});
        REQUIRE(c.has_value());
        const std::string wanted = table.cell(i, "wanted");
        if (wanted == "share_below_um") {
            CHECK(std::abs(c->share_below(um(std::stod(least))) - most) <= within);
        } else if (wanted == "share_inside_um") {
            const auto window = two(least);
            CHECK(std::abs(c->share_inside({um(window.first), um(window.second)}) - most) <= within);
        } else {
            REQUIRE(wanted == "quantile_um");
            CHECK(std::abs(c->quantile(std::stod(least))->in<micrometre>() - most) <= within);
        }
    }
    REQUIRE(table.fault == "");
}

namespace {

/// One part written down again: its density and its share below, straight from the definitions.
struct written_again {
    sizes::shape_kind shape;
    bool cut;
    double lower, upper, mean, sigma;
    bool lean_low; ///< of the one-sided triangle

    double phi_below(double x) const { return 0.5 * std::erfc((mean - x) / sigma / std::sqrt(2.0)); }
    double kept() const { return cut ? phi_below(upper) - phi_below(lower) : 1; }
    double from() const { return shape >= sizes::shape_kind::normal && !cut ? mean - 10 * sigma : lower; }
    double to() const { return shape >= sizes::shape_kind::normal && !cut ? mean + 10 * sigma : upper; }
    double density(double x) const {
        if (x < from() || x > to()) return 0;
        const double width = upper - lower;
        const double place = (x - lower) / width;
        switch (shape) {
        case sizes::shape_kind::uniform: return 1 / width;
        case sizes::shape_kind::triangular: return (place < 0.5 ? 4 * place : 4 * (1 - place)) / width;
        case sizes::shape_kind::towards_maximum_material: return 2 * (lean_low ? 1 - place : place) / width;
        default: break;
        }
        const double z = (x - mean) / sigma;
        return std::exp(-z * z / 2) / (sigma * std::sqrt(2 * std::acos(-1.0))) / kept();
    }
    double share_below(double x) const {
        if (x <= from()) return 0;
        if (x >= to()) return 1;
        const double place = (x - lower) / (upper - lower);
        switch (shape) {
        case sizes::shape_kind::uniform: return place;
        case sizes::shape_kind::triangular:
            return place < 0.5 ? 2 * place * place : 1 - 2 * (1 - place) * (1 - place);
        case sizes::shape_kind::towards_maximum_material:
            return lean_low ? 1 - (1 - place) * (1 - place) : place * place;
        default: break;
        }
        return (phi_below(x) - (cut ? phi_below(lower) : 0)) / kept();
    }
};

template <side Side> written_again again(const sizes& d, const size_limits<Side>& l) {
    const double lower = l.lower_limit().template in<nanometre>();
    const double upper = l.upper_limit().template in<nanometre>();
    const double towards_metal = Side == side::hole ? -1 : 1;
    const bool batch = d.shape() == sizes::shape_kind::batch;
    return {d.shape(),
            d.is_inspected(),
            lower,
            upper,
            batch ? d.batch().mean.in<nanometre>()
                  : (lower + upper) / 2 + towards_metal * d.capability().shift * (upper - lower) / 2,
            batch ? d.batch().sigma.in<nanometre>() : (upper - lower) / (6 * d.capability().cp),
            Side == side::hole};
}

/// Share below by Simpson's rule over the hole, from corner to corner.
double by_simpson(const written_again& hole, const written_again& shaft, double clearance) {
    std::vector<double> corners{hole.from(), hole.to()};
    for (const double c : {(hole.lower + hole.upper) / 2, shaft.from() + clearance, shaft.to() + clearance,
                           (shaft.lower + shaft.upper) / 2 + clearance})
        if (c > hole.from() && c < hole.to()) corners.push_back(c);
    std::sort(corners.begin(), corners.end());
    double sum = 0;
    for (std::size_t i = 1; i < corners.size(); ++i) {
        constexpr int steps = 20'000;
        const double a = corners[i - 1];
        const double step = (corners[i] - a) / steps;
        if (!(step > 0)) continue;
        double of_this = 0;
        for (int k = 0; k <= steps; ++k) {
            // the ends from inside, where a density jumps
            const double x = a + step * (k == 0 ? 1e-9 : k == steps ? steps - 1e-9 : k);
            of_this += (k == 0 || k == steps ? 1
                        : k % 2 == 1         ? 4
                                             : 2) *
                       hole.density(x) * (1 - shaft.share_below(x - clearance));
        }
        sum += of_this * step / 3;
    }
    return sum;
}

const sizes all_shapes[] = {
    sizes::uniform(),
    sizes::triangular(),
    sizes::towards_maximum_material(),
    sizes::normal({.cp = 1}),
    sizes::normal({.cp = 0.6, .shift = 0.3}).inspected(),
    sizes::normal({.cp = 1.67, .shift = 0.5}),
    sizes::normal({.cp = 3, .shift = -0.8}).inspected(),
};

} // namespace

TEST_CASE("every two shapes, by Simpson's rule") {
    for (const fit& f : {"25 H7/k6"_fit, "25 H13/h5"_fit, "25 K5/h9"_fit})
        for (const sizes& hole : all_shapes)
            for (const sizes& shaft : all_shapes) {
                const auto c = clearances(f, {.hole = hole, .shaft = shaft});
                REQUIRE(c.has_value());
                const length clearance = c->mean() - c->sigma();
                const double off = std::abs(
                    c->share_below(clearance) -
                    by_simpson(again(hole, f.hole()), again(shaft, f.shaft()), clearance.in<nanometre>()));
                CHECK(off < 1e-10); // what error_bound() states for quadrature
            }
}

TEST_CASE("widely different tolerances and capabilities leave nothing out") {
    // whatever the widths, all pairs lie somewhere, and the mean is the mean of the means
    for (const double cp : {0.1, 0.5, 1.0, 5.0, 100.0})
        for (const double shift : {-1.0, 0.0, 0.7})
            for (const length width : {1_um, 50_um, 5_mm})
                for (const sizes& other : all_shapes)
                    for (const bool cut : {false, true}) {
                        const sizes bell =
                            cut ? sizes::normal({cp, shift}).inspected() : sizes::normal({cp, shift});
                        const fit f = pair_of(30_mm, 30_mm + width, 20_mm, 20.020_mm);
                        const auto c = clearances(f, {.hole = bell, .shaft = other});
                        REQUIRE(c.has_value());
                        for (const int sigmas : {-3, -1, 0, 2}) {
                            const length at = c->mean() + c->sigma() * sigmas;
                            CHECK(c->share_below(at) + c->share_above(at) ==
                                  doctest::Approx(1).epsilon(c->error_bound()));
                        }
                    }
}

namespace {

/// Numbers for the simulation, the same everywhere: the 64-bit mixing function splitmix64.
class numbers {
public:
    explicit numbers(std::uint64_t seed) : state_(seed) {}
    double even() { // above 0 and below 1
        state_ += 0x9E3779B97F4A7C15u;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
        return (static_cast<double>((z ^ (z >> 31)) >> 11) + 0.5) * 0x1p-53;
    }
    double bell() { return std::sqrt(-2 * std::log(even())) * std::cos(2 * std::acos(-1.0) * even()); }

private:
    std::uint64_t state_;
};

template <side Side> double one_part(const sizes& d, const size_limits<Side>& l, numbers& random) {
    const written_again p = again(d, l);
    const double width = p.upper - p.lower;
    switch (d.shape()) {
    case sizes::shape_kind::uniform: return p.lower + width * random.even();
    case sizes::shape_kind::triangular: return p.lower + width / 2 * (random.even() + random.even());
    case sizes::shape_kind::towards_maximum_material: {
        const double a = random.even();
        const double b = random.even();
        return p.lower + width * (p.lean_low ? (std::min)(a, b) : (std::max)(a, b));
    }
    default: break;
    }
    for (;;) {
        const double size = p.mean + p.sigma * random.bell();
        if (!p.cut || (size >= p.lower && size <= p.upper)) return size;
    }
}

} // namespace

TEST_CASE("every two shapes, by simulation") {
    // 4.5 standard deviations of the count: 294 counts, once in 500 runs with other seeds
    constexpr int pairs = 20'000;
    numbers random(286);
    const fit f = "6 H7/m6"_fit;
    constexpr clearance_window window{-6_um, 1_um};
    for (const sizes& hole : all_shapes)
        for (const sizes& shaft : all_shapes) {
            int tighter = 0;
            int inside = 0;
            double sum = 0;
            for (int i = 0; i < pairs; ++i) {
                const double c = one_part(hole, f.hole(), random) - one_part(shaft, f.shaft(), random);
                tighter += c < window.least.in<nanometre>() ? 1 : 0;
                inside += c >= window.least.in<nanometre>() && c <= window.most.in<nanometre>() ? 1 : 0;
                sum += c;
            }
            const spread s{.hole = hole, .shaft = shaft};
            const auto p = probability(f, window, s);
            const auto c = clearances(f, s);
            REQUIRE(p.has_value());
            const auto agrees = [](int count, double share) {
                const double sigma = std::sqrt(pairs * share * (1 - share));
                return std::abs(count - pairs * share) <= 4.5 * sigma + 1;
            };
            CHECK(agrees(tighter, p->tighter));
            CHECK(agrees(inside, p->inside));
            CHECK(agrees(pairs - tighter - inside, p->looser));
            CHECK(std::abs(sum / pairs - c->mean().in<nanometre>()) <
                  4.5 * c->sigma().in<nanometre>() / std::sqrt(pairs) + 1);
        }
}

TEST_CASE("what holds of any distribution") {
    for (const fit& f : {"6 H7/m6"_fit, "50 H8/e8"_fit, "120 P7/h6"_fit})
        for (const sizes& hole : all_shapes)
            for (const sizes& shaft : all_shapes) {
                const spread s{.hole = hole, .shaft = shaft};
                const auto c = clearances(f, s);
                length before = c->quantile(0.001).value();
                for (const double share : {0.01, 0.25, 0.5, 0.75, 0.99, 0.999}) {
                    const length at = c->quantile(share).value();
                    CHECK(at >= before);
                    before = at;
                    CHECK(c->share_below(at - 1_nm) < share); // to the nearest nanometre
                    CHECK(c->share_below(at + 1_nm) > share);
                }
                double inside = 0;
                for (int i = 0; i <= 20; ++i) { // a wider window never has fewer
                    const clearance_window w{c->mean() - 1_um * i, c->mean() + 1_um * i};
                    const auto p = probability(f, w, s);
                    CHECK(p->inside >= inside);
                    CHECK(p->inside + p->tighter + p->looser == doctest::Approx(1));
                    CHECK(p->inside == c->share_inside(w));
                    inside = p->inside;
                }
                const auto central = c->central(0.9);
                CHECK(c->share_inside(*central) == doctest::Approx(0.9).epsilon(1e-3));
                CHECK(c->share_interfering() == c->share_below(0_nm));
                if (!hole.has_tails() && !shaft.has_tails()) {
                    CHECK(probability(f, {f.min_clearance(), f.max_clearance()}, s)->inside == 1);
                    CHECK(c->quantile(0).value() == f.min_clearance());
                    CHECK(c->quantile(1).value() == f.max_clearance());
                }
            }
}

TEST_CASE("one size only: the ends of a window belong to it") {
    constexpr fit one = pair_of(8.010_mm, 8.010_mm, 8_mm, 8_mm);
    constexpr spread s = spread::both(sizes::uniform());
    FITWRIGHT_CHECK_BOTH(probability(one, {given(10_um), 10_um}, s)->inside == 1);
    FITWRIGHT_CHECK_BOTH(probability(one, {given(10.001_um), 20_um}, s)->tighter == 1);
    FITWRIGHT_CHECK_BOTH(probability(one, {given(0_um), 9.999_um}, s)->looser == 1);
    FITWRIGHT_CHECK_BOTH(clearances(one, s)->quantile(given(0.5)).value() == 10_um);
    CHECK(clearances(one, s)->sigma() == 0_nm);
    // one known shaft in many holes: the distribution of the hole itself
    constexpr fit known = pair_of(8_mm, 8.015_mm, 7.990_mm, 7.990_mm);
    FITWRIGHT_CHECK_BOTH(is_close(probability(known, {given(13_um), 16_um}, s)->inside, 0.2, 1e-14));
    constexpr fit known_hole = pair_of(8_mm, 8_mm, 7.980_mm, 7.990_mm);
    FITWRIGHT_CHECK_BOTH(is_close(probability(known_hole, {given(13_um), 16_um}, s)->inside, 0.3, 1e-14));
    CHECK(probability(known_hole, {13_um, 16_um}, spread::both(sizes::normal({})))->inside ==
          doctest::Approx(0.7257469 - 0.1150697)); // 1.2 sigma of 10/6 um below the mean to 0.6 above
}

TEST_CASE("far tails keep their digits") {
    // 6 sigma either way: one in a thousand million, by the complementary error function
    constexpr fit f = pair_of(20_mm, 20.030_mm, 19.940_mm, 19.970_mm); // mean 60 um
    const auto c = clearances(f, spread::both(sizes::normal({.cp = 1})));
    const double sigma = 5 * std::sqrt(2.0);
    CHECK(c->share_interfering() ==
          doctest::Approx(0.5 * std::erfc(60 / sigma / std::sqrt(2.0))).epsilon(1e-9));
    CHECK(c->share_interfering() > 0);
    // the very corner of the trapezoid: 1 nm of 30 um either way
    const auto even = clearances(f, spread::both(sizes::uniform()));
    CHECK(even->share_below(f.min_clearance() + 1_nm) == doctest::Approx(0.5 / (30e3 * 30e3)).epsilon(1e-9));
    CHECK(even->share_above(f.max_clearance() - 1_nm) == doctest::Approx(0.5 / (30e3 * 30e3)).epsilon(1e-9));
}

TEST_CASE("what is assumed is said") {
    const fit dowel = "6 H7/m6"_fit;
    constexpr clearance_window any{-20_um, 20_um};
    const auto doubts_of = [&](const sizes& shape) {
        return probability(dowel, any, spread::both(shape))->doubts;
    };
    using enum chance_doubt;
    CHECK(doubts_of(sizes::uniform()) == (shape_assumed | picked_at_random));
    CHECK(doubts_of(sizes::normal({})) == (shape_assumed | picked_at_random | parts_outside_limits));
    CHECK(doubts_of(sizes::normal({}).inspected()) == (shape_assumed | picked_at_random));
    CHECK(doubts_of(sizes::of({6.004_mm, 1_um, 12})) ==
          (few_parts | picked_at_random | parts_outside_limits));
    CHECK(doubts_of(sizes::of({6.004_mm, 1_um, 30}).inspected()) == flags(picked_at_random));
    for (const auto d : {shape_assumed, picked_at_random, parts_outside_limits, few_parts})
        CHECK(!in_words(d).empty());
    CHECK(probability(dowel, any, spread::both(sizes::uniform()))->take_care.contains(caution::press_force));
    CHECK(probability("6 H7/g6"_fit, any, spread::both(sizes::uniform()))->take_care.empty());
    CHECK(clearances(dowel, spread::both(sizes::normal({})))->error_bound() == 1e-12);
    CHECK(clearances(dowel, spread::both(sizes::triangular()))->error_bound() == 1e-12);
    CHECK(clearances(dowel, {sizes::normal({}), sizes::triangular()})->error_bound() == 1e-10);
}

TEST_CASE("written, with what is assumed") {
    const spread even = spread::both(sizes::uniform());
    const auto words = written(*probability("6 H7/m6"_fit, {0_um, 8_um}, even));
    CHECK(words.view().find("33.3 % inside, 66.7 % tighter, 0.0 % looser; mind: the shape") == 0);
    CHECK(words.view().find("form is not counted\nPressing") != text::npos);
    const auto spread_out = written(*clearances("6 H7/m6"_fit, even));
    CHECK(spread_out.view().find("clearance -0.0020 mm in the mean, standard deviation 0.0042 mm, 66.7 % "
                                 "interfering; mind: ") == 0);
    // a little is not nothing
    FITWRIGHT_CHECK_BOTH(detail::written_share(given(0.0)).view() == text("0.0 %"));
    FITWRIGHT_CHECK_BOTH(detail::written_share(given(1e-9)).view() == text("less than 0.1 %"));
    FITWRIGHT_CHECK_BOTH(detail::written_share(given(1 - 1e-9)).view() == text("more than 99.9 %"));
    FITWRIGHT_CHECK_BOTH(detail::written_share(given(1.0)).view() == text("100.0 %"));
}

TEST_CASE("what can't be worked out says why") {
    const fit f = "25 H7/k6"_fit;
    const auto fault = [&](const sizes& hole, const char* piece) {
        const auto p = probability(f, {0_um, 10_um}, {.hole = hole, .shaft = sizes::uniform()});
        REQUIRE(!p.has_value());
        CHECK(p.error().message().find(piece) != text::npos);
        CHECK(p.error().message().find("allowed") != text::npos);
        return p.error().code();
    };
    const double not_a_number = std::numeric_limits<double>::quiet_NaN();
    for (const double cp : {0.0, -1.0, 0.09, 101.0, not_a_number})
        CHECK(fault(sizes::normal({.cp = cp}), "0.1 to 100") == error_code::not_a_spread);
    for (const double shift : {-1.01, 1.01, not_a_number})
        CHECK(fault(sizes::normal({.cp = 1, .shift = shift}), "-1 to 1") == error_code::not_a_spread);
    CHECK(fault(sizes::of({25_mm, 0_um, 30}), "two parts") == error_code::not_a_spread);
    CHECK(fault(sizes::of({25_mm, 1_um, 1}), "two parts") == error_code::not_a_spread);
    CHECK(fault(sizes::of({25.1_mm, 5_um, 30}).inspected(), "25.021") == error_code::not_a_spread);
    CHECK(fault(sizes::of({40000_mm, 5_um, 30}), "10 m") == error_code::limits_too_far_apart);
    CHECK(sizes::of({25.1_mm, 5_um, 30}).has_tails());

    CHECK(probability(f, {10_um, 0_um}, spread::both(sizes::uniform())).error().code() ==
          error_code::window_crossed);
    const fit crossed = pair_of(10_mm, 10.01_mm, 10_mm, 9.99_mm);
    CHECK(clearances(crossed, spread::both(sizes::uniform())).error().code() == error_code::limits_crossed);
    CHECK(clearances(crossed, spread::both(sizes::uniform())).error().message().find("shaft") != text::npos);

    const auto even = clearances(f, spread::both(sizes::uniform()));
    const auto bell = clearances(f, spread::both(sizes::normal({})));
    for (const double share : {-0.01, 1.01, not_a_number}) {
        CHECK(even->quantile(share).error().code() == error_code::not_a_share);
        CHECK(bell->quantile(share).error().code() == error_code::not_a_share);
        CHECK(bell->central(share).error().code() == error_code::not_a_share);
    }
    CHECK(bell->quantile(0).error().message().find("no end") != text::npos);
    CHECK(bell->quantile(1).error().code() == error_code::not_a_share);
    CHECK(even->share_inside({10_um, 0_um}) == 0);
}

TEST_CASE("lengths beyond any part are refused before they are added") {
    const length least = length::from_nanometres(INT64_MIN);
    const length most = length::from_nanometres(INT64_MAX);
    const fit good = "25 H7/k6"_fit;
    const spread even = spread::both(sizes::uniform());
    const fit bad[] = {{good.hole(), shaft_limits(25_mm, {.upper = 0_um, .lower = least})},
                       {good.hole(), shaft_limits(least, {.upper = 0_um, .lower = -1_um})},
                       {hole_limits(most, {.upper = most, .lower = 0_um}), good.shaft()},
                       {hole_limits(25_mm, {.upper = most, .lower = least}), good.shaft()}};
    for (const fit& f : bad) {
        const auto c = clearances(f, even);
        REQUIRE(!c.has_value());
        CHECK(c.error().code() == error_code::limits_too_far_apart);
        CHECK(c.error().message().find("lies beyond 100 m; allowed") != text::npos);
        CHECK(!probability(f, {0_um, 10_um}, even).has_value());
    }
    for (const length sigma : {most, length::from_nanometres(10'000'000'001)})
        CHECK(clearances(good, spread::both(sizes::of({25_mm, sigma, 30}))).error().code() ==
              error_code::limits_too_far_apart);
    CHECK(probability(good, {least, most}, even)->inside == 1);
}

TEST_CASE("a press is needed where pairs interfere, whatever the limits say") {
    constexpr clearance_window any{-100_um, 100_um};
    const auto care = [&](const fit& f, const spread& s) { return probability(f, any, s)->take_care; };
    const fit slide = "25 H7/g6"_fit; // 7 um at least
    CHECK(care(slide, spread::both(sizes::uniform())).empty());
    CHECK(care(slide, spread::both(sizes::normal({.cp = 0.5}))).contains(caution::press_force));
    CHECK(care(slide, spread::both(sizes::normal({.cp = 0.5}).inspected())).empty());
    // a transition fit of which the parts as measured all go together
    const fit either = "25 H7/k6"_fit;
    CHECK(care(either, spread::both(sizes::uniform())).contains(caution::press_force));
    CHECK(care(either, {sizes::of({25.02_mm, 100_nm, 30}), sizes::of({25.003_mm, 100_nm, 30})}).empty());
}

TEST_CASE("a narrow strip of a wide bell keeps its scatter") {
    // as even as can be: width over the root of 12, though the bell is up to 100 000 times as wide
    const fit f = pair_of(25_mm, 25.010_mm, 24_mm, 24_mm);
    for (const length sigma : {3_mm, 30_mm, 300_mm, 1000_mm}) {
        const auto c =
            clearances(f, {.hole = sizes::of({25.005_mm, sigma, 30}).inspected(), .shaft = sizes::uniform()});
        REQUIRE(c.has_value());
        CHECK(c->sigma() == 2887_nm);
        CHECK(c->mean() == 1.005_mm);
    }
}

TEST_CASE("what a link says of itself, as a distribution") {
    using shape = sizes::shape_kind;
    static_assert(sizes::of(scatter::rectangular).shape() == shape::uniform);
    static_assert(sizes::of(scatter::triangular).shape() == shape::triangular);
    static_assert(sizes::of(scatter::normal).shape() == shape::normal);
    static_assert(sizes::of(scatter::normal).capability().cp == 1);
    static_assert(sizes::of(scatter::not_stated).shape() == shape::uniform);
    // the share by chance is the share of a simulated chain: hole less shaft
    constexpr fit slide = "8 H7/g6"_fit;
    for (const scatter s : {scatter::normal, scatter::rectangular, scatter::triangular}) {
        const auto tried = simulate(
            {opens("hole", slide.hole()), closes("shaft", slide.shaft())},
            {.seed = 1, .samples = 1'000'000, .comes_out = s, .wanted = clearance_window{9_um, 20_um}});
        REQUIRE(tried);
        const auto told = probability(slide, {9_um, 20_um}, spread::both(sizes::of(s)));
        REQUIRE(told);
        CHECK(tried->below == doctest::Approx(told->tighter).epsilon(0.03));
        CHECK(tried->above == doctest::Approx(told->looser).epsilon(0.03));
    }
}
