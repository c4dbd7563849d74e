#ifndef FITWRIGHT_STACK_SCREW_LASH_HPP
#define FITWRIGHT_STACK_SCREW_LASH_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/error.hpp>
#include <fitwright/figure.hpp>
#include <fitwright/source.hpp>
#include <fitwright/stack/lash.hpp>
#include <fitwright/written.hpp>

// What the clearance of a thread makes of lash along its axis.

namespace fitwright {

/// Threads of a symmetric profile, by the angle between the flanks.
enum class thread_profile : std::uint8_t {
    sixty_degrees, ///< ISO metric, Unified
    trapezoidal,   ///< ISO 2904, 30 degrees
    acme,          ///< ASME B1.5, 29 degrees
};

/// The axial lash of a screw in its nut, from least to most; below zero it jams. Rounded outwards.
struct screw_lash {
    range<length> axial; ///< along the screw
    flags<lash_doubt> doubts;
    source from;
};

namespace sources {
inline constexpr source flank_lash{
    "geometry of the flanks", "clearance on the pitch diameter x tan(half angle)", confidence::published};
} // namespace sources

namespace detail {

[[nodiscard]] constexpr double tangent_of_half(thread_profile p) noexcept {
    switch (p) {
    case thread_profile::sixty_degrees: return 0.57735026918962576; // tan 30
    case thread_profile::trapezoidal: return 0.26794919243112271;   // tan 15
    case thread_profile::acme: return 0.25861758435589032;          // tan 14.5
    }
    return 0;
}

} // namespace detail

/// What the clearance on the pitch diameter, nut less screw, makes of axial lash.
/// Error: a clearance crossed, or beyond 10 mm.
[[nodiscard]] constexpr result<screw_lash> axial_lash(thread_profile p,
                                                      clearance_window on_pitch_diameter) noexcept {
    constexpr length most = length::from_nanometres(10'000'000);
    const clearance_window c = on_pitch_diameter;
    if (c.least > c.most || c.least < -most || c.most > most)
        return error::composer(error_code::window_crossed)
               << "a clearance on the pitch diameter of " << written(c.least).view() << " to "
               << written(c.most).view() << " mm: allowed is the least first, and up to 10 mm";
    const double tangent = detail::tangent_of_half(p);
    screw_lash made{.axial = {detail::lash_down(c.least.in<nanometre>() * tangent),
                              detail::lash_up(c.most.in<nanometre>() * tangent)},
                    .doubts = {},
                    .from = sources::flank_lash};
    if (made.axial.least < length()) made.doubts |= lash_doubt::jams;
    return made;
}

} // namespace fitwright

#endif
