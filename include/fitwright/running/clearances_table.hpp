#ifndef FITWRIGHT_RUNNING_CLEARANCES_TABLE_HPP
#define FITWRIGHT_RUNNING_CLEARANCES_TABLE_HPP

#include <fitwright/source.hpp>

#include <cstdint>

namespace fitwright {

/// What runs, and how it is oiled.
enum class running_use : std::uint8_t {
    oil_lubricated_journal,   ///< in general
    self_lubricating_bush,    ///< turning all the time; bush pressed in
    oscillating_without_play, ///< swinging, free play not wanted
    precision_spindle,        ///< of a small machine tool
    grease_lubricated_pin,    ///< or oiled by hand
    plastic_bush,             ///< POM, PA; small sizes
};

} // namespace fitwright

namespace fitwright::detail {

/// Least and most clearance on diameter: a fixed part in nanometres, a part of the diameter in hundredths of
/// a thousandth, and never less than the floor, in nanometres.
struct clearance_rule_row {
    running_use use;
    std::int32_t least_fixed, most_fixed, least_share, most_share, floor;
    source from;
    const char* remark;
};

inline constexpr source common_practice{"common practice, no source", "", confidence::practice};
inline constexpr source catalogue_page{"a bearing maker's catalogue", "page on running clearances",
                                       confidence::published};

// clang-format off
inline constexpr clearance_rule_row clearance_rules[] = {
    //                                        fixed, nm        share, 0.01 per mille   floor
    {running_use::oil_lubricated_journal,         0,     0,    100, 100,      0, common_practice, "0.001 in each inch"},
    {running_use::self_lubricating_bush,          0,     0,    150, 150,      0, catalogue_page,  "0.0015 in each inch, bush pressed in"},
    {running_use::oscillating_without_play,  -12700,     0,      0,   0,      0, catalogue_page,  "0.0005 in tight to close running, which has no figure there: 0 is taken"},
    {running_use::precision_spindle,           7620, 12700,     30,  30,      0, common_practice, "0.0003 to 0.0005 in, and 0.0003 in each inch"},
    {running_use::grease_lubricated_pin,          0,     0,    200, 400,      0, common_practice, "0.002 to 0.004 in each inch"},
    {running_use::plastic_bush,                   0,     0,    300, 500,  50000, common_practice, "small sizes; plastics swell and grow"},
};
// clang-format on

static_assert(sizeof clearance_rules / sizeof clearance_rules[0] == 6);

} // namespace fitwright::detail

#endif
