#include "support/both.hpp"
#include <fitwright/fit.hpp>
#include <fitwright/units.hpp>

#include <boost/units/base_units/imperial/foot.hpp>
#include <boost/units/base_units/imperial/yard.hpp>
#include <boost/units/base_units/metric/angstrom.hpp>
#include <boost/units/systems/cgs/length.hpp>
#include <boost/units/systems/si/prefixes.hpp>
#include <doctest/doctest.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <limits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

template <class Unit> constexpr quantity<Unit> of(double value) { return quantity<Unit>::from_value(value); }

using foot = boost::units::imperial::foot_base_unit::unit_type;
using yard = boost::units::imperial::yard_base_unit::unit_type;
using angstrom = boost::units::metric::angstrom_base_unit::unit_type;
using centimetre = boost::units::cgs::length;

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

} // namespace

TEST_CASE("a length in a unit is the nearest double") {
    FITWRIGHT_CHECK_BOTH(given(12.018_mm).in<millimetre>() == 12.018);
    FITWRIGHT_CHECK_BOTH(given(12.018_mm).as<millimetre>().value() == 12.018);
    FITWRIGHT_CHECK_BOTH(given(12.018_mm).in<metre>() == 0.012018);
    FITWRIGHT_CHECK_BOTH(given(12.018_mm).in<micrometre>() == 12018.0);
    FITWRIGHT_CHECK_BOTH(given(12.018_mm).in<nanometre>() == 12018000.0);
    FITWRIGHT_CHECK_BOTH(given(0.25_in).in<inch>() == 0.25);
    FITWRIGHT_CHECK_BOTH(given(0.0001_in).in<inch>() == 0.0001);
    FITWRIGHT_CHECK_BOTH(given(1.5_thou).in<thou>() == 1.5);
    FITWRIGHT_CHECK_BOTH(given(-0.3_um).in<micrometre>() == -0.3);
    FITWRIGHT_CHECK_BOTH(given(30.48_mm).in<foot>() == 0.1);
    FITWRIGHT_CHECK_BOTH(given(914.4_mm).in<yard>() == 1.0);
    FITWRIGHT_CHECK_BOTH(given(12_nm).in<angstrom>() == 120.0);
    FITWRIGHT_CHECK_BOTH(given(7_mm).in<centimetre>() == 0.7);
}

TEST_CASE("every micrometre up to 20 mm prints as it is written") {
    // strtod gives the nearest double of the decimal digits; so must we.
    for (int um = 0; um <= 20'000; ++um) {
        char digits[32];
        std::snprintf(digits, sizeof digits, "%d.%03d", um / 1000, um % 1000);
        CHECK(nm(1000 * um).in<millimetre>() == std::strtod(digits, nullptr));
    }
    for (int tenths = 0; tenths <= 20'000; ++tenths) {
        char digits[32];
        std::snprintf(digits, sizeof digits, "%d.%04d", tenths / 10'000, tenths % 10'000);
        CHECK(nm(2540 * std::int64_t{tenths}).in<inch>() == std::strtod(digits, nullptr));
    }
}

TEST_CASE("from a quantity to the nearest nanometre and back") {
    FITWRIGHT_CHECK_BOTH(length(of<millimetre>(given(12.018))) == 12.018_mm);
    FITWRIGHT_CHECK_BOTH(length(of<metre>(given(0.012018))) == 12.018_mm);
    FITWRIGHT_CHECK_BOTH(length(of<micrometre>(given(7.5))) == 7.5_um);
    FITWRIGHT_CHECK_BOTH(length(of<nanometre>(given(2540.0))) == 2540_nm);
    FITWRIGHT_CHECK_BOTH(length(of<inch>(given(0.25))) == 6.35_mm);
    FITWRIGHT_CHECK_BOTH(length(of<thou>(given(1.5))) == 38.1_um);
    FITWRIGHT_CHECK_BOTH(length(of<foot>(given(0.1))) == 30.48_mm);
    FITWRIGHT_CHECK_BOTH(length(of<yard>(given(1.0))) == 914.4_mm);
    FITWRIGHT_CHECK_BOTH(length(of<angstrom>(given(120.0))) == 12_nm);
    FITWRIGHT_CHECK_BOTH(length(of<centimetre>(given(0.7))) == 7_mm);
    FITWRIGHT_CHECK_BOTH(length(quantity<millimetre, int>::from_value(given(12))) == 12_mm);
    FITWRIGHT_CHECK_BOTH(length(quantity<millimetre, float>::from_value(given(0.5f))) == 0.5_mm);
    FITWRIGHT_CHECK_BOTH(length(of<nanometre>(given(0.5))) == 1_nm);
    FITWRIGHT_CHECK_BOTH(length(of<nanometre>(given(-0.5))) == -1_nm);
    FITWRIGHT_CHECK_BOTH(length(of<nanometre>(given(0.49999999999999994))) == 0_nm);
    FITWRIGHT_CHECK_BOTH(length(of<nanometre>(given(-2.4))) == -2_nm);
    FITWRIGHT_CHECK_BOTH(length(of<millimetre>(given(-0.0))) == 0_mm);
    // A quantity turns into a length by itself.
    const length by_itself = 12.0 * millimetre();
    CHECK(by_itself == 12_mm);
    const length metres = 0.02 * boost::units::si::metre;
    CHECK(metres == 20_mm);
    const length kilo = 0.001 * boost::units::si::kilo * boost::units::si::metre;
    CHECK(kilo == 1000_mm);
}

TEST_CASE("a length that went through a double comes back the same") {
    std::int64_t n = 1;
    for (int i = 0; i < 4000; ++i) {
        n = (n * 48271) % 2147483647; // spread over the sizes up to 2147 mm
        for (const std::int64_t signed_n : {n, -n}) {
            CHECK(length(nm(signed_n).as<millimetre>()) == nm(signed_n));
            CHECK(length(nm(signed_n).as<metre>()) == nm(signed_n));
            CHECK(length(nm(signed_n).as<inch>()) == nm(signed_n));
            CHECK(length(nm(signed_n).as<foot>()) == nm(signed_n));
        }
    }
}

TEST_CASE("what is not a number or too long") {
    FITWRIGHT_CHECK_BOTH(to_length(of<millimetre>(given(12.0))).value() == 12_mm);
    // At run time only: a compiler takes no arithmetic with NaN, or that overflows, as constant.
    CHECK(to_length(of<millimetre>(given(not_a_number))).error().code() == error_code::not_a_length);
    FITWRIGHT_CHECK_BOTH(!to_length(of<millimetre>(given(infinite))));
    FITWRIGHT_CHECK_BOTH(!to_length(of<millimetre>(given(-infinite))));
    FITWRIGHT_CHECK_BOTH(!to_length(of<metre>(given(1e10))));
    FITWRIGHT_CHECK_BOTH(!to_length(of<metre>(given(-1e10))));
    FITWRIGHT_CHECK_BOTH(to_length(of<metre>(given(9e9))).has_value());
    CHECK(to_length(of<metre>(given(1e300))).error().message().find("allowed") != text::npos);

    CHECK(length(of<metre>(given(1e300))) == nm(std::numeric_limits<std::int64_t>::max()));
    FITWRIGHT_CHECK_BOTH(length(of<metre>(given(infinite))) == nm(std::numeric_limits<std::int64_t>::max()));
    FITWRIGHT_CHECK_BOTH(length(of<metre>(given(-infinite))) ==
                         nm(-std::numeric_limits<std::int64_t>::max()));
    CHECK(length(of<metre>(given(not_a_number))) == nm(-std::numeric_limits<std::int64_t>::max()));
}

TEST_CASE("accessors of limits and fits in a unit") {
    const hole_limits bore(12_mm, {.upper = 18_um, .lower = 0_um});
    const shaft_limits pin(12_mm, {.upper = -6_um, .lower = -17_um});
    CHECK(bore.nominal<millimetre>().value() == 12.0);
    CHECK(bore.upper_deviation<micrometre>().value() == 18.0);
    CHECK(bore.lower_deviation<micrometre>().value() == 0.0);
    CHECK(bore.upper_limit<millimetre>().value() == 12.018);
    CHECK(bore.lower_limit<metre>().value() == 0.012);
    CHECK(bore.middle<millimetre>().value() == 12.009);
    CHECK(bore.tolerance<micrometre>().value() == 18.0);
    CHECK(pin.upper_limit<inch>().value() == 11.994 / 25.4);
    static_assert(std::is_same_v<decltype(bore.upper_limit<inch>()), quantity<inch>>);

    const fit slide(bore, pin);
    CHECK(slide.min_clearance<micrometre>().value() == 6.0);
    CHECK(slide.max_clearance<micrometre>().value() == 35.0);
    CHECK(slide.mean_clearance<micrometre>().value() == 20.5);
    CHECK(slide.tolerance<micrometre>().value() == 29.0);
}

TEST_CASE("only lengths become lengths") {
    static_assert(std::is_convertible_v<quantity<millimetre>, length>);
    static_assert(std::is_convertible_v<quantity<foot, int>, length>);
    static_assert(!std::is_constructible_v<length, force>);
    static_assert(!std::is_constructible_v<length, pressure>);
    static_assert(!std::is_constructible_v<length, temperature>);
    static_assert(!std::is_constructible_v<length, quantity<boost::units::si::dimensionless>>);
}

TEST_CASE("temperatures") {
    FITWRIGHT_CHECK_BOTH((95.0_degC).value() == 95.0);
    FITWRIGHT_CHECK_BOTH((95_degC).value() == 95.0);
    FITWRIGHT_CHECK_BOTH((20.5_degC).value() == 20.5);
    FITWRIGHT_CHECK_BOTH((32_degF).value() == 0.0);
    FITWRIGHT_CHECK_BOTH((212.0_degF).value() == 100.0);
    FITWRIGHT_CHECK_BOTH((68_degF).value() == 20.0);
    FITWRIGHT_CHECK_BOTH((40_K).value() == 40.0);
    FITWRIGHT_CHECK_BOTH((0.5_K).value() == 0.5);
    FITWRIGHT_CHECK_BOTH(celsius(given(-196.0)).value() == -196.0);
    FITWRIGHT_CHECK_BOTH(fahrenheit(given(-40.0)).value() == -40.0);
    // Two readings differ by kelvins; readings don't add up.
    CHECK((95_degC - 20_degC).value() == 75.0);
    static_assert(!std::is_same_v<temperature, temperature_difference>);
    static_assert(!std::is_convertible_v<temperature, temperature_difference>);
    static_assert(!std::is_convertible_v<temperature_difference, temperature>);
}
