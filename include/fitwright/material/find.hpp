#ifndef FITWRIGHT_MATERIAL_FIND_HPP
#define FITWRIGHT_MATERIAL_FIND_HPP

#include <fitwright/error.hpp>
#include <fitwright/material/material.hpp>
#include <fitwright/material/names.hpp>
#include <fitwright/material/shelf.hpp>
#include <fitwright/rows.hpp>

#include <string_view>

namespace fitwright {

/// The material with this name: a standard designation, a common name, or a trade name.
///
/// Letter case, blanks, hyphens and underscores make no difference (a material's name means the same
/// in any case, unlike a class: h7 is not H7); everything else does, and nothing is guessed. Names of
/// your own are found in your own list.
/// Error: no such name, or a word that several materials share; up to three that may be meant are named.
[[nodiscard]] constexpr result<material>
find_material(std::string_view name, rows<const material*> among = all_materials()) noexcept {
    const text asked(name.data(), name.size());
    const detail::bare_name wanted(asked);
    for (const material* m : among)
        if (detail::has_name(*m, wanted)) return *m;
    return detail::no_such_material(asked, among);
}

} // namespace fitwright

#endif
