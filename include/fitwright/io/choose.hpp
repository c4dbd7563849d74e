#ifndef FITWRIGHT_IO_CHOOSE_HPP
#define FITWRIGHT_IO_CHOOSE_HPP

#include <fitwright/callout/write.hpp>
#include <fitwright/choose.hpp>
#include <fitwright/io/candidate.hpp>
#include <fitwright/io/fits_within.hpp>
#include <fitwright/io/tool.hpp>

namespace fitwright {

/// "0.008 to 0.02 mm".
[[nodiscard]] constexpr fixed_text<111> written(clearance_window w) noexcept {
    return detail::from_to(w.least, w.most);
}
inline std::ostream& operator<<(std::ostream& out, clearance_window w) {
    return detail::put(out, written(w));
}

/// "8 P5, 7.981 to 7.987 mm: within the limits wanted", or by how much it sticks out of them.
template <side Side> [[nodiscard]] constexpr fixed_text<399> written(const class_match<Side>& m) noexcept {
    fixed_text<399> t;
    t << written(m.limits.nominal(), m.tolerance_class).view() << text(", ")
      << detail::from_to(m.limits.lower_limit(), m.limits.upper_limit()).view();
    const auto miss = [&](text how, length by) {
        if (by > length()) t << how << written(by, {.unit = written_unit::um}).view() << text(" um");
    };
    if (m.miss() == length()) t << text(": within the limits wanted");
    miss("; below those wanted by ", m.below);
    miss("; above those wanted by ", m.above);
    return t;
}
template <side Side> std::ostream& operator<<(std::ostream& out, const class_match<Side>& m) {
    return detail::put(out, written(m));
}

/// "hole 3 and shaft 1: clearance 0.008 to 0.012 mm"; parts are counted from 1.
[[nodiscard]] constexpr fixed_text<199> written(const matched_pair& p) noexcept {
    return fixed_text<199>() << text("hole ") << static_cast<std::int64_t>(p.hole + 1) << text(" and shaft ")
                             << static_cast<std::int64_t>(p.shaft + 1) << text(": clearance ")
                             << written(p.clearance).view();
}
inline std::ostream& operator<<(std::ostream& out, const matched_pair& p) {
    return detail::put(out, written(p));
}

/// The pairs, one a line.
template <std::size_t Capacity> std::ostream& operator<<(std::ostream& out, const pairing<Capacity>& pairs) {
    out << pairs.size() << (pairs.size() == 1 ? " pair" : " pairs");
    for (const matched_pair& p : pairs) out << "\n  " << p;
    return out;
}

/// "bore out to 16 +0.018/0, press in a sleeve of 16 +0.039/+0.028 …", and the caution.
[[nodiscard]] constexpr detail::tool_text written(const sleeve& s) noexcept {
    detail::tool_text t;
    t << text("bore out to ") << written(s.seat).view() << text(", press in a sleeve of ")
      << written(s.outside).view() << text(", bring its bore to ") << written(s.inside).view()
      << text(" afterwards; wall ") << written(s.wall).view() << text(" mm");
    detail::put_each(t, "\n", s.take_care);
    return t;
}
inline std::ostream& operator<<(std::ostream& out, const sleeve& s) { return detail::put(out, written(s)); }

/// "8 H7 hand reamer: hole 8.006 to 8.015 mm: DIN 1420 …".
[[nodiscard]] constexpr detail::tool_text written(const reamer_choice& r) noexcept {
    return detail::tool_text() << r.tool.name().view() << text(": hole ") << written(r.hole).view();
}
inline std::ostream& operator<<(std::ostream& out, const reamer_choice& r) {
    return detail::put(out, written(r));
}

/// The reamers, one a line.
inline std::ostream& operator<<(std::ostream& out, const sold_reamers& list) {
    out << "off the shelf (" << list.origin() << "):";
    for (const reamer_choice& r : list) out << "\n  " << r;
    return out;
}

/// "9 H7 hand reamer, takes 0.953 to 0.965 mm, bore first: hole 9.006 to 9.015 mm: …".
[[nodiscard]] constexpr detail::tool_text written(const reamer_up& r) noexcept {
    return detail::tool_text() << r.tool.name().view() << text(", takes ")
                               << detail::from_to(r.least_stock, r.most_stock).view()
                               << text(r.bore_first ? ", bore first: hole " : ": hole ")
                               << written(r.hole).view();
}
inline std::ostream& operator<<(std::ostream& out, const reamer_up& r) {
    return detail::put(out, written(r));
}

} // namespace fitwright

#endif
