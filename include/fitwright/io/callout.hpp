#ifndef FITWRIGHT_IO_CALLOUT_HPP
#define FITWRIGHT_IO_CALLOUT_HPP

#include <fitwright/callout/write.hpp>
#include <fitwright/io/put.hpp>

namespace fitwright {

/// "IT7".
[[nodiscard]] constexpr fixed_text<8> written(grade g) noexcept {
    return fixed_text<8>() << text("IT") << g.name();
}

inline std::ostream& operator<<(std::ostream& out, grade g) { return detail::put(out, written(g)); }

/// "H7".
template <side Side> std::ostream& operator<<(std::ostream& out, tolerance_class<Side> c) {
    return detail::put(out, written(c));
}

/// "H7/g6".
inline std::ostream& operator<<(std::ostream& out, class_pair c) { return detail::put(out, written(c)); }

/// "RC4".
inline std::ostream& operator<<(std::ostream& out, inch_fit_class c) {
    return out << std::string_view(name(c));
}

/// "2x 12 H7 (E) THRU".
inline std::ostream& operator<<(std::ostream& out, const callout& c) { return detail::put(out, written(c)); }

} // namespace fitwright

#endif
