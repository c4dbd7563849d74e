#ifndef FITWRIGHT_IO_SOURCE_HPP
#define FITWRIGHT_IO_SOURCE_HPP

#include <fitwright/io/put.hpp>
#include <fitwright/source.hpp>

namespace fitwright {

/// "ISO 286-1:2010, Tables 1 to 5 (published)".
[[nodiscard]] constexpr fixed_text<255> written(const source& s) noexcept {
    fixed_text<255> t;
    t << s.document;
    if (!s.place.empty()) t << text(", ") << s.place;
    const bool says_so = s.how_sure == confidence::stated || s.document == in_words(s.how_sure);
    if (!says_so) t << text(" (") << in_words(s.how_sure) << text(")");
    return t;
}

inline std::ostream& operator<<(std::ostream& out, const source& s) { return detail::put(out, written(s)); }

} // namespace fitwright

#endif
