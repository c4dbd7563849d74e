#ifndef FITWRIGHT_RUNNING_SPEED_CLEARANCE_HPP
#define FITWRIGHT_RUNNING_SPEED_CLEARANCE_HPP

#include <fitwright/running/film_question.hpp>

#include <cmath>

namespace fitwright {

/// How loose a bearing with an oil film should be for its speed.
struct speed_clearance {
    relative_clearance by_vogelpohl; ///< on diameter
    relative_clearance by_iso_7902;  ///< the mean of what is then made: a fit on either side of it
    diametral_clearance vogelpohl;   ///< the same of the diameter asked for
    diametral_clearance iso_7902;    ///< on diameter, from least to most
    source from_vogelpohl;           ///< where that rule comes from
    source from_iso_7902;            ///< where that rule comes from
};

namespace sources {
inline constexpr source vogelpohl{"Vogelpohl", "psi = 0.8 per mille times the fourth root of m/s",
                                  confidence::memory};
inline constexpr source iso_7902_3{"ISO 7902-3:1998, DIN 31652-3",
                                   "mean relative bearing clearances, to 50 m/s", confidence::memory};
} // namespace sources

namespace detail {

/// 0.8 per mille times the fourth root of the speed in m/s.
[[nodiscard]] inline relative_clearance vogelpohl(double metres_per_second) noexcept {
    return {.per_mille = 0.8 * std::sqrt(std::sqrt(metres_per_second))};
}

/// ISO 7902-3:1998, DIN 31652-3, from memory: mean relative clearance in hundredths of a thousandth. The
/// row for 50 to 125 m/s is left out, being uncertain.
struct speed_clearance_row {
    int upto_metres_per_second;
    int upto_100_mm, upto_250_mm, above_250_mm;
};
// clang-format off
inline constexpr speed_clearance_row speed_clearances[] = {
    // m/s  <=100  100-250  >250 mm
    {   3,   132,   112,   112},
    {  10,   160,   132,   112},
    {  25,   190,   160,   132},
    {  50,   224,   190,   160},
};
// clang-format on
static_assert(sizeof speed_clearances / sizeof speed_clearances[0] == 4);

} // namespace detail

/// The clearance for a shaft that turns so fast: Vogelpohl's rule and the table of ISO 7902-3. Slow shafts
/// without an oil film don't need it; see `recommended_clearance`.
/// Error: a diameter or speed not above 0; more than 50 m/s at the surface.
[[nodiscard]] inline result<speed_clearance> clearance_for_speed(length diameter,
                                                                 rotational_speed s) noexcept {
    if (!(diameter > length())) return detail::not_above_zero("diameter");
    if (!(s.value() > 0)) return detail::not_above_zero("speed");
    const double surface = s.value() * diameter.in<metre>() / 2;
    const detail::speed_clearance_row* found = nullptr;
    for (const auto& row : detail::speed_clearances)
        if (found == nullptr && surface <= row.upto_metres_per_second) found = &row;
    if (found == nullptr)
        return error::composer(error_code::bearing_value_not_possible)
               << "the surface runs at more than 50 m/s: allowed is up to that; faster bearings need more than a "
                  "clearance";

    const length hundred = length::from_nanometres(100'000'000);
    const int hundredths = diameter <= hundred           ? found->upto_100_mm
                           : diameter * 2 <= hundred * 5 ? found->upto_250_mm
                                                         : found->above_250_mm;
    const relative_clearance iso{.per_mille = hundredths / 100.0};
    const relative_clearance v = detail::vogelpohl(surface);
    return speed_clearance{.by_vogelpohl = v,
                           .by_iso_7902 = iso,
                           .vogelpohl = v.of(diameter),
                           .iso_7902 = iso.of(diameter),
                           .from_vogelpohl = sources::vogelpohl,
                           .from_iso_7902 = sources::iso_7902_3};
}

} // namespace fitwright

#endif
