#ifndef SHARED_WRITE_FILE_HPP
#define SHARED_WRITE_FILE_HPP

#include <string>
#include <string_view>

namespace shared {

/// Writes a whole file or leaves it as it was: the contents go to `name`.part, which is then renamed.
/// What is there and no regular file (a pipe, a device) is written to as it is.
/// The answer is empty, or says what failed.
[[nodiscard]] std::string write_file(const std::string& name, std::string_view contents);

} // namespace shared

#endif
