#ifndef FITWRIGHT_MATERIAL_FAMILY_HPP
#define FITWRIGHT_MATERIAL_FAMILY_HPP

#include <fitwright/text.hpp>

#include <cstdint>

namespace fitwright {

/// What kind of stuff a part is made of: enough to tell how it drills, reams, burns or cracks. The
/// numbers of one material are in `material.hpp`.
enum class material_family : std::uint8_t {
    steel,
    stainless_steel,
    tool_steel,
    cast_iron,
    aluminium,
    copper_alloy,
    zinc,
    magnesium,
    titanium,
    nickel_alloy,
    plastic,
    ceramic, ///< glass, stone and cemented carbide too
    other,
};

/// In words: "stainless steel", "copper alloy", …
[[nodiscard]] constexpr text in_words(material_family f) noexcept {
    switch (f) {
    case material_family::steel: return "steel";
    case material_family::stainless_steel: return "stainless steel";
    case material_family::tool_steel: return "tool steel";
    case material_family::cast_iron: return "cast iron";
    case material_family::aluminium: return "aluminium";
    case material_family::copper_alloy: return "copper alloy";
    case material_family::zinc: return "zinc";
    case material_family::magnesium: return "magnesium";
    case material_family::titanium: return "titanium";
    case material_family::nickel_alloy: return "nickel alloy";
    case material_family::plastic: return "plastic";
    case material_family::ceramic: return "ceramic";
    case material_family::other: return "other material";
    }
    return "";
}

} // namespace fitwright

#endif
