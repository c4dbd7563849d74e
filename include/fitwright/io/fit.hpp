#ifndef FITWRIGHT_IO_FIT_HPP
#define FITWRIGHT_IO_FIT_HPP

#include <fitwright/fit.hpp>
#include <fitwright/io/limits.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// "hole 12 +0.018/0, shaft 12 -0.006/-0.017: clearance fit, clearance 0.006 to 0.035 mm".
[[nodiscard]] constexpr fixed_text<399> written(const fit& f) noexcept {
    fixed_text<399> t;
    t << text("hole ") << written(f.hole()).view() << text(", shaft ") << written(f.shaft()).view()
      << text(": ") << in_words(f.kind()) << text(" fit, clearance ") << written(f.min_clearance()).view()
      << text(" to ") << written(f.max_clearance()).view() << text(" mm");
    return t;
}

inline std::ostream& operator<<(std::ostream& out, const fit& f) { return detail::put(out, written(f)); }

inline std::ostream& operator<<(std::ostream& out, fit_kind kind) {
    return out << std::string_view(in_words(kind));
}

} // namespace fitwright

#endif
