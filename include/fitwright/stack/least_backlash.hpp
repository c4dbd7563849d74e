#ifndef FITWRIGHT_STACK_LEAST_BACKLASH_HPP
#define FITWRIGHT_STACK_LEAST_BACKLASH_HPP

#include <fitwright/error.hpp>
#include <fitwright/source.hpp>
#include <fitwright/written.hpp>

// How much backlash a pair of gears is to have at least.

namespace fitwright {

namespace sources {
inline constexpr source iso_tr_10064_2{"ISO/TR 10064-2:1996", "Table A.1 and its formula",
                                       confidence::memory};
} // namespace sources

/// The size of a pair of gears.
struct gear_size {
    length tooth_module;    ///< normal to the tooth
    length centre_distance; ///< of both axes
};

/// The least backlash that a pair of gears is to have, across the flanks, and where that comes from.
struct least_lash {
    length normal; ///< rounded up to the nanometre
    source from;
};

/// The least normal backlash of ISO/TR 10064-2, 2/3 (0.06 + 0.0005 a + 0.03 m) mm: industrial gears and
/// housings of ferrous metal, below 15 m/s at the pitch line, made with the usual tolerances.
/// Error: a module outside 1.5 to 18 mm; a centre distance outside 50 to 1600 mm: the table has no others.
[[nodiscard]] constexpr result<least_lash> least_backlash(gear_size g) noexcept {
    const std::int64_t a = g.centre_distance.nanometres();
    const std::int64_t m = g.tooth_module.nanometres();
    if (m < 1'500'000 || m > 18'000'000 || a < 50'000'000 || a > 1'600'000'000)
        return error::composer(error_code::not_a_gear_pair)
               << "a module of " << written(g.tooth_module).view() << " mm at a centre distance of "
               << written(g.centre_distance).view()
               << " mm: allowed are modules of 1.5 to 18 mm and centre distances of 50 to 1600 mm";
    const std::int64_t thirty_thousandfold = 2 * (600'000'000 + 5 * a + 300 * m);
    return least_lash{.normal = length::from_nanometres((thirty_thousandfold + 29'999) / 30'000),
                      .from = sources::iso_tr_10064_2};
}

} // namespace fitwright

#endif
