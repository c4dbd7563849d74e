#ifndef SHARED_FILES_HPP
#define SHARED_FILES_HPP

#include <optional>
#include <string>

// What every program here does with whole files.

namespace shared {

/// Nothing if the file can't be read, or is a folder.
[[nodiscard]] std::optional<std::string> contents_of(const std::string& name);

/// False if standard output doesn't take it all; `program` then complains of it.
[[nodiscard]] bool write_to_stdout(const std::string& text, const char* program);

} // namespace shared

#endif
