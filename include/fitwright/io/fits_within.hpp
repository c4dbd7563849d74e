#ifndef FITWRIGHT_IO_FITS_WITHIN_HPP
#define FITWRIGHT_IO_FITS_WITHIN_HPP

#include <fitwright/callout/write.hpp>
#include <fitwright/choose/fits_within.hpp>
#include <fitwright/io/put.hpp>

namespace fitwright {

/// "8 H7/f7: clearance 0.013 to 0.043 mm; a preferred fit of ISO 286-1; …"; of a miss also by how much:
/// "; too tight by 3 um".
[[nodiscard]] constexpr fixed_text<599> written(const found_fit& f) noexcept {
    fixed_text<599> t;
    t << written(f.hole.nominal(), f.classes).view() << text(": clearance ")
      << written(f.pair().min_clearance()).view() << text(" to ") << written(f.pair().max_clearance()).view()
      << text(" mm");
    const auto miss = [&](text how, length by) {
        if (by > length()) t << how << written(by, {.unit = written_unit::um}).view() << text(" um");
    };
    miss("; too tight by ", f.too_tight);
    miss("; too loose by ", f.too_loose);
    f.reasons.for_each([&](fit_reason r) { t << text("; ") << in_words(r); });
    return t;
}

inline std::ostream& operator<<(std::ostream& out, const found_fit& f) {
    return detail::put(out, written(f));
}

/// How many lie within, or that none does; then the fits, one a line.
template <std::size_t Capacity>
std::ostream& operator<<(std::ostream& out, const found_fits<Capacity>& list) {
    if (list.lie_within()) out << list.total() << " within, the best of them:";
    else if (list.too_wide() > length())
        out << "none within: the given part's tolerance of " << written(list.too_wide())
            << " mm alone takes up the window of " << written(list.window())
            << " mm, and no mate helps; the nearest:";
    else out << "none within; the nearest:";
    bool any_presses = false;
    for (const found_fit& f : list) {
        out << "\n  " << f;
        any_presses = any_presses || f.take_care.contains(caution::press_force);
    }
    if (any_presses) out << '\n' << std::string_view(in_words(caution::press_force));
    return out;
}

} // namespace fitwright

#endif
