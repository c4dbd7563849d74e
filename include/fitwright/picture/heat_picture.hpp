#ifndef FITWRIGHT_PICTURE_HEAT_PICTURE_HPP
#define FITWRIGHT_PICTURE_HEAT_PICTURE_HPP

#include <fitwright/thermal/common_temperature.hpp>
#include <fitwright/thermal/worst_moments.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail::svg {
struct heat_chart;
}

/// The clearance of a fit when it is warm: on the left with both parts equally warm, on the right state by
/// state, each as a band from least to most with the spread of the coefficients in it. Below the hatched line
/// the parts interfere: what runs, seizes.
///
///     const heat_picture slide{"12 H7/g6"_fit, materials::aluminium_6082_t6, materials::steel_c45, states};
///
/// Clearances are written outwards to 0.1 um, or 0.00001 in.
/// Error: no states; the expansion of a part is not known in one of them; limits the wrong way round; more
/// than `most_states`.
struct heat_picture {
    static constexpr std::size_t most_states = 8; ///< that find room side by side

    fit of;
    material hole;
    material shaft;
    rows<thermal_state> states;
    text title = {};                      ///< over the picture; may be empty
    written_unit unit = written_unit::mm; ///< of clearances; the scale is in um, or in thou
    bool names_doubts = true;             ///< false for a page that says them beside the picture

    /// What `draw` makes of it; in draw_heat.hpp.
    friend result<detail::svg::heat_chart> prepared(const heat_picture& p) noexcept;
};

} // namespace fitwright

#endif
