#include "support/both.hpp"

#include <fitwright/callout.hpp>
#include <fitwright/gauge.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <random>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

/// ISO 14253-1 by trying every size the part may have.
template <side Side> verdict judged_by_trying(const measured<Side>& part, const size_limits<Side>& limits) {
    bool any_good = false;
    bool any_bad = false;
    for (length size = part.size() - part.uncertainty(); size <= part.size() + part.uncertainty(); size += nm(1)) {
        if (limits.allow(size)) any_good = true;
        else any_bad = true;
    }
    return any_good && any_bad ? verdict::cannot_tell : any_good ? verdict::accept : verdict::reject;
}

} // namespace

TEST_CASE("verdicts at the limits") {
    constexpr hole_limits bore(14_mm, {.upper = 18_um, .lower = 0_um});
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.009_mm), 2_um), bore) == verdict::accept);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.016_mm), 2_um), bore) == verdict::accept);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.016001_mm), 2_um), bore) == verdict::cannot_tell);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.02_mm), 2_um), bore) == verdict::cannot_tell);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.020001_mm), 2_um), bore) == verdict::reject);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(13.998_mm), 2_um), bore) == verdict::cannot_tell);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(13.997999_mm), 2_um), bore) == verdict::reject);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.018_mm), 0_um), bore) == verdict::accept);
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.018001_mm), 0_um), bore) == verdict::reject);
    // Wider than the tolerance on both sides.
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(14.009_mm), 20_um), bore) == verdict::cannot_tell);
    // Limits the wrong way round allow no size.
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(8_mm), 20_um), hole_limits::between(8.01_mm, 7.99_mm)) == verdict::reject);
    // limits without a class: the part says which side they are of
    FITWRIGHT_CHECK_BOTH(judge(measured_hole(given(8_mm), 1_um), between(7.99_mm, 8.001_mm)) == verdict::accept);
    FITWRIGHT_CHECK_BOTH(judge(measured_shaft(given(8_mm), 1_um), between(7.99_mm, 8_mm)) == verdict::cannot_tell);
    CHECK(in_words(verdict::accept) == "accept");
    CHECK(in_words(verdict::reject) == "reject");
    CHECK(in_words(verdict::cannot_tell) == "cannot tell");
}

TEST_CASE("verdicts against every size the part may have, and the band against the verdicts") {
    std::mt19937 random(7);
    std::uniform_int_distribution<std::int64_t> some(-40, 40);
    std::uniform_int_distribution<std::int64_t> width(0, 30);
    int of_each[3] = {};
    int without_band = 0;
    for (int i = 0; i < 30'000; ++i) {
        const length lower = 10_mm + nm(some(random));
        const auto limits = shaft_limits::between(lower, lower + nm(width(random)));
        const measured_shaft part(10_mm + nm(some(random)), nm(width(random)));
        const verdict v = judge(part, limits);
        REQUIRE(v == judged_by_trying(part, limits));
        ++of_each[static_cast<int>(v)];

        const auto band = acceptance_band(limits, part.uncertainty());
        REQUIRE((v == verdict::accept) == (band && band->allow(part.size())));
        if (!band) {
            ++without_band;
            REQUIRE(limits.tolerance() < part.uncertainty() * 2);
            continue;
        }
        REQUIRE(limits.allow(band->lower_limit()));
        REQUIRE(limits.allow(band->upper_limit()));
        REQUIRE(band->nominal() == limits.nominal());
        REQUIRE(band->tolerance() == limits.tolerance() - part.uncertainty() * 2);
    }
    for (const int n : of_each) CHECK(n > 500);
    CHECK(without_band > 1000);
}

TEST_CASE("the band of readings that may be accepted") {
    constexpr auto band = acceptance_band("14 H7"_hole, 2_um);
    FITWRIGHT_CHECK_BOTH(*given(band) == hole_limits(14_mm, {.upper = 16_um, .lower = 2_um}));
    CHECK(band->origin().document == "ISO 14253-1");
    CHECK(band->origin().how_sure == confidence::memory);
    FITWRIGHT_CHECK_BOTH(*acceptance_band(given("14 H7"_hole), -2_um) == *band);
    // A single reading is left at half the tolerance, none beyond.
    FITWRIGHT_CHECK_BOTH(acceptance_band(given("14 H7"_hole), 9_um)->tolerance() == 0_um);
    FITWRIGHT_CHECK_BOTH(!acceptance_band(given("14 H7"_hole), 9.001_um));
    const auto none = acceptance_band("10 h6"_shaft, 5_um);
    REQUIRE(!none);
    CHECK(none.error().code() == error_code::instrument_too_coarse);
    CHECK(none.error().message() == "this instrument can't prove this tolerance: an uncertainty of +/-0.005 mm leaves nothing of "
                                    "0.009 mm; allowed is up to half the tolerance, 0.0045 mm");
    const auto crossed = acceptance_band(hole_limits::between(8_mm, 7.99_mm), 0_um);
    REQUIRE(!crossed);
    CHECK(crossed.error().message().find("upper above the lower") != text::npos);
}

TEST_CASE("a micrometer that reads 0.01 mm can't prove 10 h6") {
    constexpr shaft_limits pin = "10 h6"_shaft;
    // Even without any error of its own: 0.01 / root 3 is 5.774 um, half the tolerance 4.5 um.
    constexpr length at_best = *expanded_uncertainty({.resolution = 10_um, .error_limit = 0_um});
    constexpr length usual = *expanded_uncertainty({.resolution = 10_um, .error_limit = 4_um});
    FITWRIGHT_CHECK_BOTH(given(at_best) == 5.774_um);
    FITWRIGHT_CHECK_BOTH(given(usual) == 7.394_um);
    FITWRIGHT_CHECK_BOTH(!acceptance_band(given(pin), at_best));
    for (const length uncertainty : {at_best, usual})
        for (length reading = 9.98_mm; reading <= 10.01_mm; reading += 10_um) {
            CAPTURE(reading);
            const bool is_far_off = reading + uncertainty < pin.lower_limit() || reading - uncertainty > pin.upper_limit();
            CHECK(judge(measured_shaft(reading, uncertainty), pin) == (is_far_off ? verdict::reject : verdict::cannot_tell));
        }
    FITWRIGHT_CHECK_BOTH(judge(measured_shaft(given(9.99_mm), at_best), pin) == verdict::cannot_tell);
    FITWRIGHT_CHECK_BOTH(judge(measured_shaft(given(10_mm), at_best), pin) == verdict::cannot_tell);
    // One that reads 0.001 mm and is right within 2 um leaves something.
    FITWRIGHT_CHECK_BOTH(acceptance_band(given(pin), *expanded_uncertainty({.resolution = 1_um, .error_limit = 2_um})).has_value());
}

TEST_CASE("uncertainty of a reading, JCGM 100:2008") {
    // U = 2 sqrt((r / 2)^2 / 3 + m^2 / 3 + s^2), rounded up to a nanometre: against floating point.
    std::mt19937 random(3);
    std::uniform_int_distribution<std::int64_t> some(0, 60'000);
    for (int i = 0; i < 20'000; ++i) {
        const instrument tool{.resolution = nm(some(random) + 1), .error_limit = nm(some(random)), .repeatability = nm(some(random) / 10)};
        const auto is = expanded_uncertainty(tool);
        REQUIRE(is);
        const auto part = [](length l) { return static_cast<long double>(l.nanometres()); };
        const long double half = part(tool.resolution) / 2;
        const long double error = part(tool.error_limit);
        const long double spread = part(tool.repeatability);
        const long double exact = 2 * std::sqrt(half * half / 3 + error * error / 3 + spread * spread);
        REQUIRE(part(*is) >= exact - 1e-6L);
        REQUIRE(part(*is) < exact + 1 + 1e-6L);
    }
    // Exact roots are not raised: resolution 3, error limit 0: U^2 = 3, so 2; 6 and 6: 12 + 48 = 60, so 8.
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{.resolution = 3_nm, .error_limit = 0_nm})) == 2_nm);
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{.resolution = 6_nm, .error_limit = 6_nm})) == 8_nm);
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{.resolution = 0_nm, .error_limit = 3_nm, .repeatability = 3_nm})) == 7_nm); // root 48
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{.resolution = 12_nm, .error_limit = 6_nm, .repeatability = 0_nm})) == 10_nm); // root 96
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{.resolution = 2_nm, .error_limit = 2_nm, .repeatability = 1_nm})) == 4_nm); // root 10.67
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{.resolution = 6_nm, .error_limit = 0_nm, .repeatability = 1_nm})) == 4_nm); // root 16
    // The largest that is allowed: root(17 / 3) m.
    FITWRIGHT_CHECK_BOTH(*expanded_uncertainty(given(instrument{1000_mm, 1000_mm, 1000_mm})) == 2380.476143_mm);
}

TEST_CASE("what is no instrument") {
    const auto refused = [](instrument i, text piece) {
        const auto r = expanded_uncertainty(i);
        return !r && r.error().code() == error_code::not_an_uncertainty && r.error().message().find(piece) != text::npos;
    };
    CHECK(refused({.resolution = -1_um, .error_limit = 0_um}, "-0.001 mm: allowed is 0 up to 1000 mm"));
    CHECK(refused({.resolution = 1_um, .error_limit = -1_um}, "-0.001 mm"));
    CHECK(refused({.resolution = 1_um, .error_limit = 1_um, .repeatability = -1_um}, "-0.001 mm"));
    CHECK(refused({.resolution = 1000.000001_mm, .error_limit = 0_um}, "1000.000001 mm"));
    CHECK(refused({.resolution = 0_um, .error_limit = 0_um}, "without any uncertainty"));
    CHECK(refused({.resolution = 0_um, .error_limit = 0_um, .repeatability = 1_um}, "without any uncertainty"));
    CHECK(expanded_uncertainty({.resolution = 0_um, .error_limit = 1_um}).has_value());
}

TEST_CASE("the root, rounded up, of every small number and at the end of the range") {
    using detail::root_rounded_up;
    for (std::uint64_t n = 0, root = 0; n < 70'000; ++n) {
        if (root * root < n) ++root;
        REQUIRE(root_rounded_up(n) == root);
    }
    constexpr std::uint64_t largest_root = 4'294'967'295;
    FITWRIGHT_CHECK_BOTH(root_rounded_up(given(largest_root * largest_root)) == largest_root);
    FITWRIGHT_CHECK_BOTH(root_rounded_up(given(largest_root * largest_root - 1)) == largest_root);
    FITWRIGHT_CHECK_BOTH(root_rounded_up(given(largest_root * largest_root + 1)) == largest_root + 1);
}
