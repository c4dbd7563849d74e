#ifndef POST_BORES_READ_MACHINE_HPP
#define POST_BORES_READ_MACHINE_HPP

#include "job_sheet/document.hpp"
#include "machine.hpp"

#include <variant>

namespace post_bores {

/// Reads a machine file, TOML such as `plain_machine` is; or says all that is
/// wrong with it. No key has a silent default: whatever a control is told has
/// been decided by somebody.
[[nodiscard]] std::variant<machine, std::vector<job_sheet::fault>> read_machine(std::string text);

/// A plain three-axis mill in millimetres, to start a machine file from and for
/// lists without one.
[[nodiscard]] std::string_view plain_machine();

} // namespace post_bores

#endif
