#ifndef FITWRIGHT_TOOL_PRINTED_UNITS_HPP
#define FITWRIGHT_TOOL_PRINTED_UNITS_HPP

#include <fitwright/length.hpp>

// The units that the tables of tools are printed in.

namespace fitwright::detail {

[[nodiscard]] constexpr length printed_mm(std::int64_t n) noexcept {
    return length::from_nanometres(n * 1'000'000);
}
[[nodiscard]] constexpr length printed_um(std::int64_t n) noexcept {
    return length::from_nanometres(n * 1'000);
}
[[nodiscard]] constexpr length printed_64ths(std::int64_t n) noexcept {
    return length::from_nanometres(n * 396'875);
}
/// 0.001 in.
[[nodiscard]] constexpr length printed_thou(std::int64_t n) noexcept {
    return length::from_nanometres(n * 25'400);
}
/// 0.0001 in.
[[nodiscard]] constexpr length printed_tenths(std::int64_t n) noexcept {
    return length::from_nanometres(n * 2'540);
}

} // namespace fitwright::detail

#endif
