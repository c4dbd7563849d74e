#include "read_family.hpp"

#include <fitwright/material.hpp>

namespace post_bores {

fitwright::result<fitwright::material_family> read_family(std::string_view name) {
    using fitwright::material_family;
    for (auto f = material_family::steel; f < material_family::other;
         f = static_cast<material_family>(static_cast<int>(f) + 1))
        if (in_words(f) == name) return f;
    const auto known = fitwright::find_material(name);
    if (known) return known->family;
    return known.error();
}

} // namespace post_bores
