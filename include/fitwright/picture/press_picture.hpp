#ifndef FITWRIGHT_PICTURE_PRESS_PICTURE_HPP
#define FITWRIGHT_PICTURE_PRESS_PICTURE_HPP

#include <fitwright/press/press.hpp>

namespace fitwright {

namespace detail::svg {
struct press_chart;
}

/// What a pressed joint does over the range of its interference: the pressure between the parts, and below it
/// by how much the shaft's bore closes (of a solid shaft, by how much the hub's outside grows), at 20 °C as a
/// band and in service as a broken outline.
///
///     const press_picture liner{liner_in_block};
///
/// At every interference the lower edge is smoothed and by the weaker end of the spread, the upper edge the
/// other: `press` of a joint with that interference alone. Pressures are written to three figures.
/// Error: as of `press`; an interference the wrong way round, or without a range.
struct press_picture {
    joint of;
    text title = {};                      ///< over the picture; may be empty
    written_unit unit = written_unit::um; ///< of interference and closing-in
    bool names_doubts = true;             ///< false for a page that says them beside the picture

    /// What `draw` makes of it; in draw_press.hpp.
    friend result<detail::svg::press_chart> prepared(const press_picture& p) noexcept;
};

} // namespace fitwright

#endif
