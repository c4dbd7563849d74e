#include "support/both.hpp"
#include <fitwright/length.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <limits>
#include <type_traits>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

template <length Size> constexpr std::int64_t as_argument = Size.nanometres();

} // namespace

TEST_CASE("a length is a number of nanometres") {
    FITWRIGHT_CHECK_BOTH(nm(given(12'018'000)).nanometres() == 12'018'000);
    FITWRIGHT_CHECK_BOTH(length().nanometres() == 0);
    FITWRIGHT_CHECK_BOTH(nm(given(std::numeric_limits<std::int64_t>::max())).nanometres() ==
                         std::numeric_limits<std::int64_t>::max());
    FITWRIGHT_CHECK_BOTH(nm(given(std::numeric_limits<std::int64_t>::lowest())).nanometres() ==
                         std::numeric_limits<std::int64_t>::lowest());
}

TEST_CASE("as cheap as the integer it holds") {
    static_assert(sizeof(length) == sizeof(std::int64_t));
    static_assert(std::is_trivially_copyable_v<length>);
    static_assert(std::is_standard_layout_v<length>);
    static_assert(std::is_nothrow_default_constructible_v<length>);
    static_assert(!std::is_convertible_v<int, length> && !std::is_constructible_v<length, int>);
    static_assert(!std::is_convertible_v<double, length> && !std::is_constructible_v<length, double>);
    static_assert(!std::is_convertible_v<length, std::int64_t> && !std::is_convertible_v<length, double>);
    static_assert(as_argument<12.018_mm> == 12'018'000); // a template argument
    static_assert(std::is_same_v<decltype(0_mm <=> 0_mm), std::strong_ordering>);
}

TEST_CASE("literals, whole and decimal") {
    FITWRIGHT_CHECK_BOTH(given(12_mm) == nm(12'000'000));
    FITWRIGHT_CHECK_BOTH(given(7.968_mm) == nm(7'968'000));
    FITWRIGHT_CHECK_BOTH(given(0.000001_mm) == nm(1));
    FITWRIGHT_CHECK_BOTH(given(0_mm) == nm(0));
    FITWRIGHT_CHECK_BOTH(given(0.0_mm) == nm(0));
    FITWRIGHT_CHECK_BOTH(given(.5_mm) == nm(500'000));
    FITWRIGHT_CHECK_BOTH(given(5._mm) == nm(5'000'000));
    FITWRIGHT_CHECK_BOTH(given(1'000_mm) == nm(1'000'000'000));
    FITWRIGHT_CHECK_BOTH(given(3150.000001_mm) == nm(3'150'000'001));
    FITWRIGHT_CHECK_BOTH(given(0.100000_mm) == nm(100'000));
    FITWRIGHT_CHECK_BOTH(given(18_um) == nm(18'000));
    FITWRIGHT_CHECK_BOTH(given(7.5_um) == nm(7'500));
    FITWRIGHT_CHECK_BOTH(given(0.001_um) == nm(1));
    FITWRIGHT_CHECK_BOTH(given(2540_nm) == nm(2540));
    FITWRIGHT_CHECK_BOTH(given(2540.0_nm) == nm(2540));
    FITWRIGHT_CHECK_BOTH(-given(12_mm) == nm(-12'000'000));
}

// 1 in is 25.4 mm exactly (ISO 31-1; international inch of 1959).
TEST_CASE("literals in inches") {
    FITWRIGHT_CHECK_BOTH(given(1_in) == 25.4_mm);
    FITWRIGHT_CHECK_BOTH(given(0.25_in) == 6.35_mm);
    FITWRIGHT_CHECK_BOTH(given(0.015625_in) == nm(396'875)); // 1/64 in
    FITWRIGHT_CHECK_BOTH(given(0.0001_in) == nm(2'540));
    FITWRIGHT_CHECK_BOTH(given(0.001_in) == nm(25'400));
    FITWRIGHT_CHECK_BOTH(given(1_thou) == nm(25'400));
    FITWRIGHT_CHECK_BOTH(given(1.5_thou) == nm(38'100));
    FITWRIGHT_CHECK_BOTH(given(1000_thou) == 1_in);
    // What is no whole number of nanometres goes to the nearest.
    FITWRIGHT_CHECK_BOTH(given(0.0000001_in) == nm(3));         // 2.54 nm
    FITWRIGHT_CHECK_BOTH(given(0.3333333_in) == nm(8'466'666)); // 8 466 665.82 nm
    FITWRIGHT_CHECK_BOTH(given(0.00001_thou) == nm(0));         // 0.254 nm
    FITWRIGHT_CHECK_BOTH(given(0.00003_thou) == nm(1));         // 0.762 nm
}

TEST_CASE("every 64th, and every 128th, of an inch is a whole number of nanometres") {
    for (int n = 1; n <= 640; ++n) CHECK((1_in * n / 64).nanometres() * 64 == 25'400'000 * std::int64_t{n});
    FITWRIGHT_CHECK_BOTH(given(1_in) / 64 == nm(396'875));
    FITWRIGHT_CHECK_BOTH(given(1_in) * 63 / 64 == nm(25'003'125));
}

TEST_CASE("sums and multiples") {
    FITWRIGHT_CHECK_BOTH(given(12_mm) + 18_um == 12.018_mm);
    FITWRIGHT_CHECK_BOTH(given(12_mm) - 17_um == 11.983_mm);
    FITWRIGHT_CHECK_BOTH(given(12_mm) - 12_mm == 0_mm);
    FITWRIGHT_CHECK_BOTH(given(6_mm) * 2 == 12_mm);
    FITWRIGHT_CHECK_BOTH(2 * given(6_mm) == 12_mm);
    FITWRIGHT_CHECK_BOTH(given(6_mm) * -2 == -12_mm);
    FITWRIGHT_CHECK_BOTH(given(6_mm) * 2u == 12_mm);
    FITWRIGHT_CHECK_BOTH(given(6_mm) * std::int64_t{-3} == -18_mm);
    FITWRIGHT_CHECK_BOTH(given(6_mm) * short{3} == 18_mm);
    FITWRIGHT_CHECK_BOTH([] {
        length l = given(1_mm);
        l += 2_mm;
        l -= 0.5_mm;
        return l;
    }() == 2.5_mm);
}

TEST_CASE("a quotient is the nearest nanometre, ties away from zero") {
    FITWRIGHT_CHECK_BOTH(given(nm(7)) / 2 == nm(4));
    FITWRIGHT_CHECK_BOTH(given(nm(-7)) / 2 == nm(-4));
    FITWRIGHT_CHECK_BOTH(given(nm(7)) / -2 == nm(-4));
    FITWRIGHT_CHECK_BOTH(given(nm(-7)) / -2 == nm(4));
    FITWRIGHT_CHECK_BOTH(given(nm(7)) / 3 == nm(2));
    FITWRIGHT_CHECK_BOTH(given(nm(8)) / 3 == nm(3));
    FITWRIGHT_CHECK_BOTH(given(nm(-8)) / 3 == nm(-3));
    FITWRIGHT_CHECK_BOTH(given(nm(1)) / 3 == nm(0));
    FITWRIGHT_CHECK_BOTH(given(nm(12)) / 4u == nm(3));
    FITWRIGHT_CHECK_BOTH(given(12.018_mm) / 2 == 6.009_mm);
}

TEST_CASE("quotients against the definition, for all small numbers") {
    for (std::int64_t n = -60; n <= 60; ++n) {
        for (int by = -13; by <= 13; ++by) {
            if (by == 0) continue;
            const std::int64_t q = (nm(n) / by).nanometres();
            const std::int64_t off = 2 * (n - q * by); // twice what is left over
            const std::int64_t divisor = by < 0 ? -by : by;
            const std::int64_t left = off < 0 ? -off : off;
            CAPTURE(n);
            CAPTURE(by);
            CHECK(left <= divisor);
            if (left == divisor) CHECK((q < 0 ? -q : q) * divisor > (n < 0 ? -n : n)); // away from zero
        }
    }
}

namespace {

template <class Length> Length rounded_up_to_micrometres(Length l) {
    Length size = 0_um;
    for (; size < l; size += 1_um) {
        if (size > 1_mm) return 1_mm;
    }
    return size;
}

} // namespace

TEST_CASE("literals in a template") {
    CHECK(rounded_up_to_micrometres(given(2.5_um)) == 3_um);
    const auto twice = [](auto l) { return l * 2 + 1_um; };
    CHECK(twice(given(2.5_um)) == 6_um);
}
TEST_CASE("order") {
    FITWRIGHT_CHECK_BOTH(given(1_mm) < 1.000001_mm);
    FITWRIGHT_CHECK_BOTH(given(-1_mm) < 0_mm);
    FITWRIGHT_CHECK_BOTH(given(1_mm) >= 1000_um);
    FITWRIGHT_CHECK_BOTH(given(1_mm) == 1000_um);
    FITWRIGHT_CHECK_BOTH(given(1_mm) != 1001_um);
    FITWRIGHT_CHECK_BOTH((given(1_mm) <=> 2_mm) == std::strong_ordering::less);
}
