#include "support/both.hpp"
#include <fitwright/written.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <cstdlib>
#include <limits>
#include <string>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;
using enum fitwright::written_unit;

namespace {

constexpr length nanometres(std::int64_t n) { return length::from_nanometres(n); }

constexpr std::int64_t in_unit(written_unit u) {
    constexpr std::int64_t of[] = {1'000'000, 1'000, 1, 25'400'000, 25'400};
    return of[static_cast<int>(u)];
}

/// Digits of `n` nanometres, to so many decimals: another way to the same end. It scales first and
/// divides once, by long division of decimal digits, where the library goes digit by digit.
std::string expected(std::int64_t n, written_unit u, int decimals, bool with_plus = false) {
    const bool below_zero = n < 0;
    std::uint64_t magnitude = below_zero ? 0 - static_cast<std::uint64_t>(n) : static_cast<std::uint64_t>(n);
    // Schoolbook long division of the digits of magnitude, with `decimals` zeros and one more behind.
    std::string dividend = std::to_string(magnitude) + std::string(static_cast<std::size_t>(decimals), '0');
    const auto divisor = static_cast<std::uint64_t>(in_unit(u));
    std::string quotient;
    std::uint64_t rest = 0;
    for (const char digit : dividend) {
        rest = rest * 10 + static_cast<std::uint64_t>(digit - '0');
        quotient += static_cast<char>('0' + rest / divisor);
        rest %= divisor;
    }
    if (rest * 2 >= divisor) { // ties away from zero
        std::size_t i = quotient.size();
        while (i > 0 && quotient[i - 1] == '9') quotient[--i] = '0';
        if (i == 0) quotient.insert(0, "1");
        else ++quotient[i - 1];
    }
    const auto places = static_cast<std::size_t>(decimals);
    if (quotient.size() <= places) quotient.insert(0, places + 1 - quotient.size(), '0');
    std::string whole = quotient.substr(0, quotient.size() - places);
    while (whole.size() > 1 && whole[0] == '0') whole.erase(0, 1);
    std::string all = whole;
    if (decimals > 0) all += "." + quotient.substr(quotient.size() - places);
    const bool is_zero = all.find_first_not_of("0.") == std::string::npos;
    if (is_zero) return all;
    return (below_zero ? "-" : with_plus ? "+" : "") + all;
}

std::string trimmed(std::string digits) {
    if (digits.find('.') == std::string::npos) return digits;
    while (digits.back() == '0') digits.pop_back();
    if (digits.back() == '.') digits.pop_back();
    return digits == "-0" ? "0" : digits;
}

} // namespace

TEST_CASE("millimetres, as needed") {
    FITWRIGHT_CHECK_BOTH(written(given(12.018_mm)) == "12.018");
    FITWRIGHT_CHECK_BOTH(written(given(12_mm)) == "12");
    FITWRIGHT_CHECK_BOTH(written(given(120_mm)) == "120");
    FITWRIGHT_CHECK_BOTH(written(given(0_mm)) == "0");
    FITWRIGHT_CHECK_BOTH(written(given(-0.5_mm)) == "-0.5");
    FITWRIGHT_CHECK_BOTH(written(given(1_nm)) == "0.000001");
    FITWRIGHT_CHECK_BOTH(written(given(-1_nm)) == "-0.000001");
    FITWRIGHT_CHECK_BOTH(written(given(3150.000001_mm)) == "3150.000001");
    FITWRIGHT_CHECK_BOTH(written(given(0.396875_mm)) == "0.396875");
}

TEST_CASE("other units, as needed") {
    FITWRIGHT_CHECK_BOTH(written(given(7.5_um), {.unit = um}) == "7.5");
    FITWRIGHT_CHECK_BOTH(written(given(18_um), {.unit = um}) == "18");
    FITWRIGHT_CHECK_BOTH(written(given(-0.15_um), {.unit = um}) == "-0.15");
    FITWRIGHT_CHECK_BOTH(written(given(2540_nm), {.unit = nm}) == "2540");
    FITWRIGHT_CHECK_BOTH(written(given(0.25_in), {.unit = in}) == "0.25");
    FITWRIGHT_CHECK_BOTH(written(given(0.0001_in), {.unit = in}) == "0.0001");
    FITWRIGHT_CHECK_BOTH(written(given(0.015625_in), {.unit = in}) == "0.015625"); // 1/64
    FITWRIGHT_CHECK_BOTH(written(given(1.5_thou), {.unit = thousandth}) == "1.5");
    FITWRIGHT_CHECK_BOTH(written(given(1_in), {.unit = thousandth}) == "1000");
}

TEST_CASE("so many decimals: exact if there is room, else the nearest, ties away from zero") {
    FITWRIGHT_CHECK_BOTH(written(given(12_mm), {.decimals = 3}) == "12.000");
    FITWRIGHT_CHECK_BOTH(written(given(12.018_mm), {.decimals = 9}) == "12.018000000");
    FITWRIGHT_CHECK_BOTH(written(given(12.018_mm), {.decimals = 2}) == "12.02");
    FITWRIGHT_CHECK_BOTH(written(given(12.018_mm), {.decimals = 0}) == "12");
    FITWRIGHT_CHECK_BOTH(written(given(12.5_mm), {.decimals = 0}) == "13");
    FITWRIGHT_CHECK_BOTH(written(given(-12.5_mm), {.decimals = 0}) == "-13");
    FITWRIGHT_CHECK_BOTH(written(given(12.499999_mm), {.decimals = 0}) == "12");
    FITWRIGHT_CHECK_BOTH(written(given(0.0995_mm), {.decimals = 3}) == "0.100");
    FITWRIGHT_CHECK_BOTH(written(given(9.9995_mm), {.decimals = 3}) == "10.000");
    FITWRIGHT_CHECK_BOTH(written(given(0.0004_mm), {.decimals = 3}) == "0.000");
    FITWRIGHT_CHECK_BOTH(written(given(-0.0004_mm), {.decimals = 3}) == "0.000"); // no minus before nothing
    FITWRIGHT_CHECK_BOTH(written(given(-0.0005_mm), {.decimals = 3}) == "-0.001");
    FITWRIGHT_CHECK_BOTH(written(given(14_mm), {.unit = in, .decimals = 4}) == "0.5512"); // 0.551 181…
    FITWRIGHT_CHECK_BOTH(written(given(14.018_mm), {.unit = in, .decimals = 4}) ==
                         "0.5519");                                                  // outwards: 0.551 889…
    FITWRIGHT_CHECK_BOTH(written(given(12_mm), {.decimals = 12}) == "12.000000000"); // nine at the most
}

TEST_CASE("a plus before what is above zero") {
    FITWRIGHT_CHECK_BOTH(written(given(18_um), {.unit = um, .with_plus = true}) == "+18");
    FITWRIGHT_CHECK_BOTH(written(given(-18_um), {.unit = um, .with_plus = true}) == "-18");
    FITWRIGHT_CHECK_BOTH(written(given(0_um), {.unit = um, .with_plus = true}) == "0");
    FITWRIGHT_CHECK_BOTH(written(given(0.4_um), {.unit = um, .decimals = 0, .with_plus = true}) == "0");
}

TEST_CASE("against another way of dividing, for lengths of every magnitude") {
    std::uint64_t state = 286;
    for (int i = 0; i < 3000; ++i) {
        state = state * 6364136223846793005u + 1442695040888963407u;
        const auto n = static_cast<std::int64_t>(state >> (1 + i % 63)); // as many small ones as large
        for (const std::int64_t signed_n : {n, -n}) {
            for (const written_unit u : {mm, um, nm, in, thousandth}) {
                for (const int decimals : {0, 1, 3, 4, 6, 9}) {
                    const std::string got = written(nanometres(signed_n), {.unit = u, .decimals = decimals});
                    if (got != expected(signed_n, u, decimals))
                        FAIL_CHECK(got, " for ", signed_n, " nm in ", in_words(u));
                    const std::string plus =
                        written(nanometres(signed_n), {.unit = u, .decimals = decimals, .with_plus = true});
                    if (plus != expected(signed_n, u, decimals, true))
                        FAIL_CHECK(plus, " for ", signed_n, " nm");
                }
            }
            CHECK(written(nanometres(signed_n)).view() == trimmed(expected(signed_n, mm, 6)));
            CHECK(written(nanometres(signed_n), {.unit = um}).view() == trimmed(expected(signed_n, um, 3)));
            CHECK(written(nanometres(signed_n), {.unit = nm}).view() == std::to_string(signed_n));
        }
    }
}

TEST_CASE("as needed is enough to read back the same nanometre") {
    std::int64_t n = 1;
    for (int i = 0; i < 3000; ++i) {
        n = n * 48271 % 2147483647;
        for (const std::int64_t signed_n : {n, -n}) {
            const auto reads_back = [&](written_unit u) {
                const std::string digits = written(nanometres(signed_n), {.unit = u});
                const long double value =
                    std::strtold(digits.c_str(), nullptr) * static_cast<long double>(in_unit(u));
                return static_cast<std::int64_t>(value + (value < 0 ? -0.5L : 0.5L)) == signed_n;
            };
            CHECK(reads_back(mm));
            CHECK(reads_back(um));
            CHECK(reads_back(nm));
            CHECK(reads_back(in));
            CHECK(reads_back(thousandth));
        }
    }
}

TEST_CASE("the ends of the range") {
    const length longest = nanometres(std::numeric_limits<std::int64_t>::max());
    const length lowest = nanometres(std::numeric_limits<std::int64_t>::lowest());
    CHECK(written(longest) == "9223372036854.775807");
    CHECK(written(lowest) == "-9223372036854.775808");
    CHECK(written(longest, {.unit = nm}) == "9223372036854775807");
    CHECK(written(lowest, {.unit = nm}) == "-9223372036854775808");
    CHECK(!written(lowest, {.unit = nm, .decimals = 9, .with_plus = true}).is_cut());
    CHECK(written(longest, {.unit = in, .decimals = 9}).view() == expected(longest.nanometres(), in, 9));
}

TEST_CASE("units") {
    for (const written_unit u : {mm, um, nm, in, thousandth}) CHECK(one(u).nanometres() == in_unit(u));
    FITWRIGHT_CHECK_BOTH(in_words(given(mm)) == "mm");
    FITWRIGHT_CHECK_BOTH(in_words(given(um)) == "um");
    FITWRIGHT_CHECK_BOTH(in_words(given(nm)) == "nm");
    FITWRIGHT_CHECK_BOTH(in_words(given(in)) == "in");
    FITWRIGHT_CHECK_BOTH(in_words(given(thousandth)) == "thou");
}

// ISO 129-1: both deviations with the same number of decimals, nothing as 0.
TEST_CASE("limits, as a drawing has them") {
    FITWRIGHT_CHECK_BOTH(written(hole_limits(given(14_mm), {.upper = 18_um, .lower = 0_um})) ==
                         "14 +0.018/0");
    FITWRIGHT_CHECK_BOTH(written(shaft_limits(given(12_mm), {.upper = -6_um, .lower = -17_um})) ==
                         "12 -0.006/-0.017");
    FITWRIGHT_CHECK_BOTH(written(hole_limits(given(10_mm), {.upper = 7.5_um, .lower = -7.5_um})) ==
                         "10 +/-0.0075");
    FITWRIGHT_CHECK_BOTH(written(hole_limits(given(10_mm), {.upper = 10_um, .lower = -5_um})) ==
                         "10 +0.010/-0.005");
    FITWRIGHT_CHECK_BOTH(written(hole_limits(given(0.5_in), {.upper = 0.0007_in, .lower = 0_in}), in) ==
                         "0.5 in +0.0007/0");
    FITWRIGHT_CHECK_BOTH(written(shaft_limits(given(12_mm), {.upper = 0_um, .lower = 0_um})) == "12 +/-0");
    // The wrong way round: as they are, each with its own sign.
    CHECK(written(hole_limits(given(12_mm), {.upper = -5_um, .lower = 5_um})) == "12 -0.005/+0.005");
}
