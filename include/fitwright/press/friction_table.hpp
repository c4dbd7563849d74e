#ifndef FITWRIGHT_PRESS_FRICTION_TABLE_HPP
#define FITWRIGHT_PRESS_FRICTION_TABLE_HPP

#include <fitwright/material_family.hpp>
#include <fitwright/source.hpp>

#include <cstdint>

namespace fitwright {

/// How the parts come together.
enum class joined_by : std::uint8_t {
    pressing,     ///< pushed in along the axis, cold
    shrinking,    ///< the hub hot or the shaft cold, without force
    pressure_oil, ///< floated on with oil under pressure, without force along the axis
};

/// What is between them.
enum class seat_surface : std::uint8_t {
    dry,       ///< wiped, nothing put on
    oiled,     ///< a film of mineral oil
    degreased, ///< washed clean; with pressure oil: joined with glycerine
};

namespace sources {
inline constexpr source din_7190_1_transverse{"DIN 7190-1:2017", "5.3, joined without force along the axis",
                                              confidence::memory};
inline constexpr source din_7190_1_longitudinal{"DIN 7190-1:2017", "5.2, pressed in", confidence::uncertain};
inline constexpr source whz_formulas{"WHZ, formulas of machine elements (2013), 6/6",
                                     "friction of press fits, any pair", confidence::published};
} // namespace sources

namespace detail {

struct friction_row {
    material_family hub;
    joined_by how;
    seat_surface surface;
    std::uint8_t least; ///< in hundredths
    std::uint8_t most;  ///< in hundredths
};

// Shafts of steel. DIN 7190-1:2017: in 5.2 the figures for slipping and for breaking loose, here the least
// and the most; in 5.3 one figure serves for both.

// clang-format off
inline constexpr friction_row friction_joined_without_force[] = { // 5.3
    {material_family::steel,        joined_by::pressure_oil, seat_surface::oiled,     12, 12},
    {material_family::steel,        joined_by::pressure_oil, seat_surface::degreased, 18, 18},
    {material_family::steel,        joined_by::shrinking,    seat_surface::dry,       14, 15}, // hub at 300 °C
    {material_family::steel,        joined_by::shrinking,    seat_surface::degreased, 20, 20}, // hub at 300 °C
    {material_family::cast_iron,    joined_by::pressure_oil, seat_surface::oiled,     10, 10},
    {material_family::cast_iron,    joined_by::pressure_oil, seat_surface::degreased, 16, 16},
    {material_family::aluminium,    joined_by::shrinking,    seat_surface::dry,       10, 15},
    {material_family::magnesium,    joined_by::shrinking,    seat_surface::dry,       10, 15},
    {material_family::copper_alloy, joined_by::shrinking,    seat_surface::dry,       17, 25},
};
static_assert(sizeof friction_joined_without_force / sizeof(friction_row) == 9);

inline constexpr friction_row friction_pressed_in[] = { // 5.2
    {material_family::steel,        joined_by::pressing, seat_surface::dry,    8, 11}, // E335
    {material_family::steel,        joined_by::pressing, seat_surface::oiled,  7,  8}, // E335
    {material_family::steel,        joined_by::pressing, seat_surface::dry,    9, 10}, // S235
    {material_family::steel,        joined_by::pressing, seat_surface::oiled,  6,  7}, // S235
    {material_family::steel,        joined_by::pressing, seat_surface::dry,    8, 11}, // GE300
    {material_family::steel,        joined_by::pressing, seat_surface::oiled,  7,  8}, // GE300
    {material_family::cast_iron,    joined_by::pressing, seat_surface::dry,   11, 12}, // EN-GJL-250
    {material_family::cast_iron,    joined_by::pressing, seat_surface::oiled,  5,  6}, // EN-GJL-250
    {material_family::cast_iron,    joined_by::pressing, seat_surface::dry,    9, 10}, // EN-GJS-600-3
    {material_family::cast_iron,    joined_by::pressing, seat_surface::oiled,  5,  6}, // EN-GJS-600-3
    {material_family::aluminium,    joined_by::pressing, seat_surface::dry,    6,  7}, // G-AlSi12(Cu)
    {material_family::aluminium,    joined_by::pressing, seat_surface::oiled,  4,  5}, // G-AlSi12(Cu)
    {material_family::copper_alloy, joined_by::pressing, seat_surface::dry,    6,  7}, // cast tin-lead bronze
    {material_family::titanium,     joined_by::pressing, seat_surface::oiled,  5,  5}, // TiAl6V4, slipping only
};
static_assert(sizeof friction_pressed_in / sizeof(friction_row) == 14);
// clang-format on

} // namespace detail

} // namespace fitwright

#endif
