#ifndef POST_BORES_READ_HOLE_HPP
#define POST_BORES_READ_HOLE_HPP

#include "hole_list.hpp"

namespace post_bores {

/// The hole that a row describes; what is wrong in any of its cells becomes a
/// fault of the row.
[[nodiscard]] std::optional<hole> read_hole(const hole_list& list, hole_row& row);

} // namespace post_bores

#endif
