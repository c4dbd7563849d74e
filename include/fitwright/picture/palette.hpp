#ifndef FITWRIGHT_PICTURE_PALETTE_HPP
#define FITWRIGHT_PICTURE_PALETTE_HPP

#include <fitwright/text.hpp>

// Few colours, and none that has to tell something alone: a hole's interval is hatched and bluish, a shaft's
// is a plain tint, so that a copier and any eye keep them apart. All letters are dark on white, at 7 : 1 or more.

namespace fitwright::detail::svg {

inline constexpr text paper = "#ffffff";
inline constexpr text ink = "#14181c";        ///< words, dimension lines, marks
inline constexpr text soft_ink = "#454d55";   ///< deviations, notes, extension lines
inline constexpr text hole_ink = "#0b4a7d";   ///< a hole's outline and hatching
inline constexpr text hole_tint = "#e8f2fb";  ///< behind the hatching
inline constexpr text shaft_ink = "#6b3a00";  ///< a shaft's outline
inline constexpr text shaft_tint = "#efbf74"; ///< a middle grey on a copy
inline constexpr text chart_tint = "#ccd2d8"; ///< what may be, between least and most
inline constexpr text alarm_ink = "#8f1207";  ///< the seizing line

} // namespace fitwright::detail::svg

#endif
