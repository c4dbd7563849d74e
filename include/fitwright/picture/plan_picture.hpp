#ifndef FITWRIGHT_PICTURE_PLAN_PICTURE_HPP
#define FITWRIGHT_PICTURE_PLAN_PICTURE_HPP

#include <fitwright/tool/hole_plan.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail::svg {
struct plan_chart;
}

/// The steps of a hole plan as a ladder of sizes: each from the least to the most to be expected, beside the
/// limits of the hole that is wanted, all on one scale. A gap much longer than the rest is cut short, and that
/// is said. Where the centre comes first it is named, but has no size to draw.
///
///     const plan_picture ladder{*plan_hole("10 H7"_hole, drawer, materials::brass_cuzn39pb3)};
///
/// Error: a plan without steps; limits the wrong way round; sizes more than 10 m apart.
struct plan_picture {
    hole_plan of;
    text title = {};                      ///< over the picture; may be empty
    written_unit unit = written_unit::mm; ///< of all sizes
    bool names_doubts = true;             ///< false for a page that says them beside the picture

    /// What `draw` makes of it; in draw_plan.hpp.
    friend result<detail::svg::plan_chart> prepared(const plan_picture& p) noexcept;
};

} // namespace fitwright

#endif
