#ifndef FITWRIGHT_TESTS_SUPPORT_SHORT_NAMES_HPP
#define FITWRIGHT_TESTS_SUPPORT_SHORT_NAMES_HPP

#include <fitwright/iso286.hpp>

namespace fitwright_tests {

/// `hole(p, 7)` is P7. The letters are those of the enumeration: `using enum fitwright::position`.
constexpr fitwright::hole_class hole(fitwright::position p, int number) noexcept {
    return {p, fitwright::grade(number)};
}
/// `shaft(p, 6)` is p6.
constexpr fitwright::shaft_class shaft(fitwright::position p, int number) noexcept {
    return {p, fitwright::grade(number)};
}

/// Upper and lower deviation in micrometres: what a printed table has.
constexpr fitwright::deviations um(std::int64_t upper, std::int64_t lower) noexcept {
    return {.upper = fitwright::length::from_nanometres(1000 * upper),
            .lower = fitwright::length::from_nanometres(1000 * lower)};
}

/// The deviations of limits that must be there.
template <fitwright::side Side>
constexpr fitwright::deviations
deviations_of(const fitwright::result<fitwright::size_limits<Side>>& limits) noexcept {
    return {.upper = limits->upper_deviation(), .lower = limits->lower_deviation()};
}

} // namespace fitwright_tests

#endif
