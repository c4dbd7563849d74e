#ifndef FITWRIGHT_MATERIAL_SHELF_HPP
#define FITWRIGHT_MATERIAL_SHELF_HPP

#include <fitwright/material/materials.hpp>
#include <fitwright/rows.hpp>

namespace fitwright {

namespace detail {

inline constexpr const material* shelf[] = {
    &materials::steel_1018,
    &materials::steel_c45,
    &materials::steel_11smnpb30,
    &materials::steel_a36,
    &materials::steel_42crmo4,
    &materials::steel_34crnimo6,
    &materials::steel_100cr6,
    &materials::tool_steel_o1,
    &materials::tool_steel_d2,
    &materials::tool_steel_m2,
    &materials::tool_steel_h13,
    &materials::stainless_303,
    &materials::stainless_304,
    &materials::stainless_316,
    &materials::stainless_416,
    &materials::stainless_440c,
    &materials::stainless_17_4ph,
    &materials::stainless_431,
    &materials::valve_steel_21_4n,
    &materials::valve_steel_x45crsi9_3,
    &materials::grey_iron_gjl_250,
    &materials::ductile_iron_gjs_400_15,
    &materials::aluminium_6061_t6,
    &materials::aluminium_6082_t6,
    &materials::aluminium_2024_t351,
    &materials::aluminium_7075_t6,
    &materials::aluminium_356_t6,
    &materials::brass_c36000,
    &materials::brass_cuzn39pb3,
    &materials::phosphor_bronze_cusn5,
    &materials::bronze_cusn7zn4pb7,
    &materials::aluminium_bronze_c95400,
    &materials::copper_cu_etp,
    &materials::beryllium_copper_c17200,
    &materials::titanium_6al_4v,
    &materials::titanium_grade_2,
    &materials::magnesium_az31,
    &materials::magnesium_az91,
    &materials::zinc_zamak_3,
    &materials::invar_36,
    &materials::tungsten_carbide_6_co,
    &materials::silicon_nitride,
    &materials::ptfe,
    &materials::acetal_pom_c,
    &materials::nylon_pa66_dry,
    &materials::peek,
    &materials::uhmw_polyethylene,
    &materials::epoxy_unfilled,
    &materials::nickel_200,
    &materials::monel_400,
    &materials::inconel_718,
    &materials::gauge_block_steel,
    &materials::granite,
    &materials::borosilicate_glass,
};
static_assert(sizeof shelf / sizeof shelf[0] == 54);

} // namespace detail

/// Every material that has a name here.
[[nodiscard]] constexpr rows<const material*> all_materials() noexcept { return detail::shelf; }

} // namespace fitwright

#endif
