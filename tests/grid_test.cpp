#include "support/both.hpp"
#include <fitwright/grid.hpp>

#include <doctest/doctest.h>

#include <cstdint>
#include <optional>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using namespace fitwright_tests;

namespace {

constexpr length nm(std::int64_t n) { return length::from_nanometres(n); }

constexpr hole_limits bore(14_mm, {.upper = 18_um, .lower = 0_um});
constexpr shaft_limits pin(14_mm, {.upper = -6_um, .lower = -17_um});

/// Every multiple of the step that the limits allow, by trying all sizes.
template <side Side> std::vector<length> multiples(const size_limits<Side>& limits, length step) {
    std::vector<length> all;
    for (length size = limits.lower_limit(); size <= limits.upper_limit(); size += nm(1))
        if (size.nanometres() % step.nanometres() == 0) all.push_back(size);
    return all;
}

/// The multiple nearest to half of `twice_aim`; of two as near a hole takes the smaller, a shaft the larger.
template <side Side> std::optional<length> nearest(const std::vector<length>& all, length twice_aim) {
    std::optional<length> best;
    const auto off = [&](length size) {
        return size * 2 > twice_aim ? size * 2 - twice_aim : twice_aim - size * 2;
    };
    for (const length size : all) {
        const bool is_nearer = !best || off(size) < off(*best);
        const bool is_as_near = best && off(size) == off(*best);
        if (is_nearer || (is_as_near && (Side == side::hole ? size < *best : size > *best))) best = size;
    }
    return best;
}

template <side Side> void check_against_trying(length lower, length upper, length step) {
    const auto limits = size_limits<Side>::between(lower, upper);
    const auto all = multiples(limits, step);
    const auto rounded = rounded_inwards(limits, step);
    const auto target = target_on_grid(limits, step);
    CAPTURE(lower.nanometres());
    CAPTURE(upper.nanometres());
    CAPTURE(step.nanometres());
    CHECK(rounded.has_value() == !all.empty());
    CHECK(target.has_value() == !all.empty());
    if (all.empty()) {
        CHECK(rounded.error().code() == error_code::nothing_on_the_grid);
        CHECK(target.error().code() == error_code::nothing_on_the_grid);
        return;
    }
    CHECK(rounded->lower_limit() == all.front());
    CHECK(rounded->upper_limit() == all.back());
    CHECK(rounded->nominal() == limits.nominal());
    CHECK(*target == *nearest<Side>(all, lower + upper));
    for (length aim = lower - nm(3); aim <= upper + nm(3); aim += nm(1))
        CHECK(target_on_grid(limits, step, aim).value() == *nearest<Side>(all, aim * 2));
}

} // namespace

// 14 mm is 0.551 181 in, 14.018 mm is 0.551 889 in: rounded to the nearest it would be 0.5519.
TEST_CASE("limits for an inch drawing with four decimals let no wrong part pass") {
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 0.0001_in)->lower_limit() == 0.5512_in);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 0.0001_in)->upper_limit() == 0.5518_in);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 0.0001_in)->nominal() == 14_mm);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(pin), 0.0001_in)->lower_limit() == 0.5506_in); // 0.550 512
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(pin), 0.0001_in)->upper_limit() == 0.5509_in); // 0.550 945
}

TEST_CASE("limits on the grid already stay as they are") {
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 1_um).value() == bore);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 1_nm).value() == bore);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 9_um)->upper_limit() == 14.013_mm); // 1557 times 9 um
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 20_um)->upper_limit() == 14_mm);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 20_um)->tolerance() == 0_um);
    CHECK(&rounded_inwards(bore, 20_um)->origin() == &bore.origin());
}

TEST_CASE("a target on the machine's grid, ties away from scrap") {
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 10_um).value() == 14.01_mm); // the middle is 14.009
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 6_um).value() == 14.01_mm);  // 14.004, 14.010, 14.016
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 2_um).value() ==
                         14.008_mm); // of 14.008 and 14.010: the smaller hole
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(pin), 1_um).value() ==
                         13.989_mm); // of 13.988 and 13.989: the larger shaft
    FITWRIGHT_CHECK_BOTH(target_on_grid(hole_limits(between(given(8_mm), 8.000001_mm)), 1_nm).value() ==
                         8_mm);
    FITWRIGHT_CHECK_BOTH(target_on_grid(shaft_limits(between(given(8_mm), 8.000001_mm)), 1_nm).value() ==
                         8.000001_mm);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 1_um, 14.0125_mm).value() == 14.012_mm);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(pin), 1_um, 13.9905_mm).value() == 13.991_mm);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 1_um, 20_mm).value() ==
                         14.018_mm); // never outside the limits
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 1_um, -20_mm).value() == 14_mm);
}

TEST_CASE("no multiple between the limits") {
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(pin), 0.05_mm).error().code() ==
                         error_code::nothing_on_the_grid);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(pin), 0.05_mm).error().code() ==
                         error_code::nothing_on_the_grid);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(pin), 0.05_mm, 14_mm).error().code() ==
                         error_code::nothing_on_the_grid);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(pin), 0.05_mm).error().message().find("0.05 mm") !=
                         text::npos);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(pin), 0.05_mm).error().message().find("13.983 to 13.994 mm") !=
                         text::npos);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(pin), 0.05_mm).error().message().find("0.011 mm or less") !=
                         text::npos);
    // Limits the wrong way round have nothing between them.
    FITWRIGHT_CHECK_BOTH(!rounded_inwards(hole_limits(between(given(8.01_mm), 8_mm)), 1_um));
}

TEST_CASE("a step of as much as the tolerance always finds a multiple") {
    for (std::int64_t lower = 8'000'000; lower < 8'000'050; ++lower) {
        for (std::int64_t width = 1; width <= 12; ++width) {
            CHECK(rounded_inwards(hole_limits(between(nm(lower), nm(lower + width))), nm(width)).has_value());
            CHECK(target_on_grid(shaft_limits(between(nm(lower), nm(lower + width))), nm(width)).has_value());
        }
    }
}

TEST_CASE("a step that is none") {
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), 0_mm).error().code() ==
                         error_code::step_not_above_zero);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), -1_um).error().code() ==
                         error_code::step_not_above_zero);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 0_mm).error().code() == error_code::step_not_above_zero);
    FITWRIGHT_CHECK_BOTH(target_on_grid(given(bore), 0_mm, 14_mm).error().code() ==
                         error_code::step_not_above_zero);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(bore), -1_um).error().message().find("-0.001 mm") !=
                         text::npos);
}

TEST_CASE("against trying every size: limits of a few nanometres, on every grid") {
    for (const std::int64_t from :
         {std::int64_t{8'000'000}, std::int64_t{-20}}) { // and below zero: deviations
        for (std::int64_t lower = from; lower < from + 24; ++lower) {
            for (std::int64_t width = 0; width <= 14; ++width) {
                for (std::int64_t step = 1; step <= 12; ++step) {
                    check_against_trying<side::hole>(nm(lower), nm(lower + width), nm(step));
                    check_against_trying<side::shaft>(nm(lower), nm(lower + width), nm(step));
                }
            }
        }
    }
}

TEST_CASE("what limits on a coarser grid allow, the limits allow; and the next multiple outside they don't") {
    std::int64_t state = 286;
    for (int i = 0; i < 20'000; ++i) {
        state = state * 48271 % 2147483647;
        const length nominal = nm(state % 500'000'000 + 1);
        state = state * 48271 % 2147483647;
        const length lower = nominal + nm(state % 200'000 - 100'000);
        state = state * 48271 % 2147483647;
        const length upper = lower + nm(state % 100'000);
        const length steps[] = {1_um, 5_um, 10_um, 0.0001_in, 0.001_in, 0.00005_in, 7_um};
        const length step = steps[i % 7];
        const hole_limits limits(nominal, {.upper = upper - nominal, .lower = lower - nominal});
        const auto rounded = rounded_inwards(limits, step);
        if (!rounded) {
            CHECK(limits.tolerance() < step);
            continue;
        }
        CHECK(limits.allow(rounded->lower_limit()));
        CHECK(limits.allow(rounded->upper_limit()));
        CHECK(!limits.allow(rounded->lower_limit() - step));
        CHECK(!limits.allow(rounded->upper_limit() + step));
        CHECK(rounded->lower_limit().nanometres() % step.nanometres() == 0);
        CHECK(rounded->upper_limit().nanometres() % step.nanometres() == 0);
        const auto target = target_on_grid(limits, step);
        CHECK(limits.allow(*target));
        const length off = *target * 2 - lower - upper;
        CHECK(((off <= step && off >= -step) || *target == rounded->lower_limit() ||
               *target == rounded->upper_limit()));
    }
}

TEST_CASE("multiples of a step at the ends of the range are clamped, and nothing overflows") {
    constexpr length least = nm(INT64_MIN);
    constexpr length most = nm(INT64_MAX);
    for (const length step : {1_nm, 3_nm, 1_um, 0.0001_in, 10'000_mm}) {
        const length lowest = detail::multiple_at_or_below(least, step);
        const length highest = detail::multiple_at_or_above(most, step);
        CHECK(lowest.nanometres() % step.nanometres() == 0);
        CHECK(highest.nanometres() % step.nanometres() == 0);
        CHECK(lowest == -highest);
        CHECK(highest > nm(500'000'000'000'000'000));
        CHECK(detail::multiple_at_or_above(least, step) - lowest <= step);
        CHECK(highest - detail::multiple_at_or_below(most, step) <= step);
    }
    static_assert(detail::multiple_at_or_below(least, 10'000_mm) < 0_mm);
    static_assert(detail::multiple_at_or_above(most, 3_nm) > 0_mm);
    constexpr hole_limits all = between(least, most);
    FITWRIGHT_CHECK_BOTH(rounded_inwards(given(all), 1_um)->tolerance() <= all.tolerance());
    FITWRIGHT_CHECK_BOTH(*target_on_grid(given(all), 1_um) == 0_mm);
    FITWRIGHT_CHECK_BOTH(*target_on_grid(given(all), 1_um, most) ==
                         rounded_inwards(all, 1_um)->upper_limit());
    for (const length step : {least, -1_nm, 0_nm, 10'000.001_mm, most})
        CHECK(rounded_inwards(all, step).error().code() == error_code::step_not_above_zero);
}
