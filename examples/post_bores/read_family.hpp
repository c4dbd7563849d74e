#ifndef POST_BORES_READ_FAMILY_HPP
#define POST_BORES_READ_FAMILY_HPP

#include <fitwright/error.hpp>
#include <fitwright/material_family.hpp>

#include <string_view>

namespace post_bores {

/// What kind of stuff it is, by the name of a family ("aluminium") or of a
/// material ("EN AW-6082 T6"). Error: no such name.
[[nodiscard]] fitwright::result<fitwright::material_family> read_family(std::string_view name);

} // namespace post_bores

#endif
