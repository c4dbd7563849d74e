#ifndef FITWRIGHT_MATERIAL_MATERIAL_HPP
#define FITWRIGHT_MATERIAL_MATERIAL_HPP

#include <fitwright/material/property.hpp>
#include <fitwright/material/units.hpp>
#include <fitwright/material_family.hpp>
#include <fitwright/source.hpp>
#include <fitwright/text.hpp>

namespace fitwright {

/// Mean coefficients of expansion between 20 °C and the temperature named; what is left out is not
/// known. A hole grows like the solid that would fill it.
struct expansion_means {
    property<expansion_coefficient> to_100_degC = {}; ///< between 20 °C and 100 °C
    /// The least and the greatest that handbooks give for 20 to 100 °C.
    property<expansion_coefficient> lowest = {};
    property<expansion_coefficient> highest = {};     ///< the other end of what handbooks give
    property<expansion_coefficient> to_200_degC = {}; ///< between 20 °C and 200 °C
    property<expansion_coefficient> to_300_degC = {}; ///< between 20 °C and 300 °C
    property<expansion_coefficient> to_500_degC = {}; ///< between 20 °C and 500 °C
    /// Between -190 °C and 20 °C: a cold part shrinks less for each kelvin than a hot one grows.
    property<expansion_coefficient> cooled_to_minus_190_degC = {};
};

/// What a part is made of. Your own metal is written with designated initialisers, and what you
/// leave out is not known:
///
///     constexpr material gunmetal{.name = "our gunmetal",
///                                 .family = material_family::copper_alloy,
///                                 .expansion = {.to_100_degC = ppm_per_kelvin(18)},
///                                 .youngs_modulus = gigapascals(100)};
struct material {
    text name;
    material_family family = material_family::other;
    /// Designations and other names, a semicolon between them.
    text other_names = "";
    /// Heat treatment or form for which the yield strength holds.
    text condition = "";

    expansion_means expansion = {};         ///< mean coefficients from 20 °C on
    property<pressure> youngs_modulus = {}; ///< at 20 °C
    property<double> poissons_ratio = {};   ///< at 20 °C
    property<mass_density> density = {};
    /// Yield strength as usually found in this condition.
    property<pressure> yield_strength = {};
    /// The least a standard lets through, where it is known and lower: take this one to be safe.
    property<pressure> least_yield_strength = {};
    /// Heated further than this to assemble it, the part is spoilt or changed for good.
    property<temperature> highest_heating = {};
    /// Why no further.
    text heating_limit_reason = "";

    /// What to mind in the shop.
    text remark = "";
    /// Where the numbers come from; how surely, each `property` says.
    text documents = stated_by_user.document;

    /// Where one of the properties comes from.
    template <class Quantity>
    [[nodiscard]] constexpr source source_of(const property<Quantity>& p) const noexcept {
        return {documents, name, p.how_sure()};
    }
};

} // namespace fitwright

#endif
