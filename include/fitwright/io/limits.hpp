#ifndef FITWRIGHT_IO_LIMITS_HPP
#define FITWRIGHT_IO_LIMITS_HPP

#include <fitwright/io/error.hpp>
#include <fitwright/io/length.hpp>
#include <fitwright/io/source.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// "14 +0.018/0".
template <side Side> std::ostream& operator<<(std::ostream& out, const size_limits<Side>& l) {
    return detail::put(out, written(l));
}

/// "7.978 to 7.986 mm": limits of which nobody has said yet whether a hole or a shaft has them.
[[nodiscard]] constexpr fixed_text<111> written(stated_limits l) noexcept {
    return fixed_text<111>() << written(l.lower).view() << text(" to ") << written(l.upper).view()
                             << text(" mm");
}
inline std::ostream& operator<<(std::ostream& out, stated_limits l) { return detail::put(out, written(l)); }

/// "7.968 +/-0.002".
template <side Side> [[nodiscard]] constexpr auto written(const measured<Side>& m) noexcept {
    return written(m.limits());
}
template <side Side> std::ostream& operator<<(std::ostream& out, const measured<Side>& m) {
    return detail::put(out, written(m));
}

} // namespace fitwright

#endif
