#ifndef FITWRIGHT_IO_ERROR_HPP
#define FITWRIGHT_IO_ERROR_HPP

#include <fitwright/io/put.hpp>

namespace fitwright {

/// "column 4: ..." or, for an error that is not about text, the message alone.
[[nodiscard]] constexpr fixed_text<error::capacity + 24> written(const error& e) noexcept {
    fixed_text<error::capacity + 24> t;
    if (e.column() > 0) t << text("column ") << static_cast<std::int64_t>(e.column()) << text(": ");
    return t << e.message();
}

inline std::ostream& operator<<(std::ostream& out, const error& e) { return detail::put(out, written(e)); }

} // namespace fitwright

#endif
