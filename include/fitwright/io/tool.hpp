#ifndef FITWRIGHT_IO_TOOL_HPP
#define FITWRIGHT_IO_TOOL_HPP

#include <fitwright/io/limits.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/io/source.hpp>
#include <fitwright/tool.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail {

using tool_text = fixed_text<799>;

/// "7.98 to 7.984 mm".
[[nodiscard]] constexpr fixed_text<111> from_to(length least, length most) noexcept {
    return fixed_text<111>() << written(least).view() << text(" to ") << written(most).view() << text(" mm");
}

} // namespace detail

inline std::ostream& operator<<(std::ostream& out, drill_series s) {
    return out << std::string_view(in_words(s));
}
inline std::ostream& operator<<(std::ostream& out, hole_operation o) {
    return out << std::string_view(in_words(o));
}
inline std::ostream& operator<<(std::ostream& out, hole_doubt d) {
    return out << std::string_view(in_words(d));
}

/// "6.8 mm", "13/64 in", "#7", "F".
[[nodiscard]] constexpr fixed_text<31> written(const drill_size& d) noexcept { return d.name(); }
inline std::ostream& operator<<(std::ostream& out, const drill_size& d) {
    return detail::put(out, written(d));
}

/// "10 H7 hand reamer".
[[nodiscard]] constexpr fixed_text<63> written(const drawer_tool& t) noexcept { return t.name(); }
inline std::ostream& operator<<(std::ostream& out, const drawer_tool& t) {
    return detail::put(out, written(t));
}

/// "10.006 to 10.012 mm", or "no such tool".
[[nodiscard]] constexpr fixed_text<111> written(const tool_limits& l) noexcept {
    if (!l.exist()) return fixed_text<111>() << text("no such tool");
    return detail::from_to(l.lower_limit(), l.upper_limit());
}
inline std::ostream& operator<<(std::ostream& out, const tool_limits& l) {
    return detail::put(out, written(l));
}

/// "10.006 to 10.012 mm, cuts up to 0.003 mm over: DIN 1420 (ISO 522), … (published)".
[[nodiscard]] constexpr detail::tool_text written(const reamer_size& r) noexcept {
    return detail::tool_text() << written(r.limits()).view() << text(", cuts up to ")
                               << written(r.oversize()).view() << text(" mm over: ")
                               << written(r.origin()).view();
}
inline std::ostream& operator<<(std::ostream& out, const reamer_size& r) {
    return detail::put(out, written(r));
}

/// "0.004 to 0.008 mm over, 0.006 in the mean: trial holes, …".
[[nodiscard]] constexpr detail::tool_text written(const overcut& o) noexcept {
    return detail::tool_text() << detail::from_to(o.least, o.most).view() << text(" over, ")
                               << written(o.mean).view() << text(" in the mean: ")
                               << written(o.origin()).view();
}
inline std::ostream& operator<<(std::ostream& out, const overcut& o) { return detail::put(out, written(o)); }

/// "9.7702 to 9.8852 mm: …, interpolated between its rows (…); the figures are those of steel and cast iron".
[[nodiscard]] constexpr detail::tool_text written(const expected_hole& e) noexcept {
    detail::tool_text t;
    t << detail::from_to(e.least(), e.most()).view() << text(": ") << written(e.origin()).view();
    detail::put_each(t, "; ", e.doubts());
    return t;
}
inline std::ostream& operator<<(std::ostream& out, const expected_hole& e) {
    return detail::put(out, written(e));
}

/// "suits: …", or "0.007 mm too small: …" with the hole that it is expected to cut.
[[nodiscard]] constexpr detail::tool_text written(const reamer_match& m) noexcept {
    detail::tool_text t;
    if (m.suits()) t << text("suits");
    if (m.too_small_by > length()) t << written(m.too_small_by).view() << text(" mm too small");
    if (m.too_small_by > length() && m.too_large_by > length()) t << text(" and ");
    if (m.too_large_by > length()) t << written(m.too_large_by).view() << text(" mm too large");
    return t << text(": ") << written(m.hole).view();
}
inline std::ostream& operator<<(std::ostream& out, const reamer_match& m) {
    return detail::put(out, written(m));
}

/// "0.2 to 0.3 mm on diameter: Under Sizes of Reaming …".
[[nodiscard]] constexpr detail::tool_text written(const stock& s) noexcept {
    return detail::tool_text() << detail::from_to(s.least, s.most).view() << text(" on diameter: ")
                               << written(s.origin()).view();
}
inline std::ostream& operator<<(std::ostream& out, const stock& s) { return detail::put(out, written(s)); }

/// "4.0104 mm: half the diameter and 0.001 in more, …", "less than 3.985 mm: …".
[[nodiscard]] constexpr detail::tool_text written(const flat_rule& f) noexcept {
    return detail::tool_text() << text(f.at_most ? "less than " : "") << written(f.thickness).view()
                               << text(" mm: ") << f.words << text(" (") << f.origin().document << text(")");
}
inline std::ostream& operator<<(std::ostream& out, const flat_rule& f) {
    return detail::put(out, written(f));
}

/// "drill, 9.7 mm drill: 9.7702 to 9.8852 mm, leaves 0.259 mm by the rule of 0.2 to 0.3 mm; …".
[[nodiscard]] constexpr detail::tool_text written(const hole_step& s) noexcept {
    detail::tool_text t;
    t << in_words(s.operation) << text(", ") << s.tool.name().view();
    if (s.operation == hole_operation::centre) return t;
    t << text(": ") << detail::from_to(s.least, s.most).view();
    if (s.decides_size) t << text(", decides the size");
    else
        t << text(", leaves ") << written(s.counted_stock).view() << text(" mm by the rule of ")
          << detail::from_to(s.wanted_stock.least, s.wanted_stock.most).view();
    detail::put_each(t, "; ", s.doubts);
    return t;
}
inline std::ostream& operator<<(std::ostream& out, const hole_step& s) {
    return detail::put(out, written(s));
}

/// The hole, its steps, one a line, what the size rests on, and the cautions.
[[nodiscard]] constexpr fixed_text<5999> written(const hole_plan& p) noexcept {
    fixed_text<5999> t;
    t << written(p.wanted()).view();
    for (const hole_step& s : p.steps()) t << text("\n  ") << written(s).view();
    if (p.steps().empty()) return t;
    t << text("\nsize from ") << written(p.deciding_step().origin()).view();
    if (p.needs_trial_hole()) t << text("; prove it by a trial hole");
    detail::put_each(t, "\n", p.warnings());
    return t;
}
inline std::ostream& operator<<(std::ostream& out, const hole_plan& p) {
    return detail::put(out, written(p));
}

/// "0.023 mm on radius", "0.046 mm on diameter".
template <across Across> [[nodiscard]] constexpr fixed_text<79> written(travel<Across> t) noexcept {
    return fixed_text<79>() << written(t.value).view()
                            << text(Across == across::radius ? " mm on radius" : " mm on diameter");
}
template <across Across> std::ostream& operator<<(std::ostream& out, travel<Across> t) {
    return detail::put(out, written(t));
}

/// "offset by 0.023 mm on radius, expect 14.008 +/-0.002; …".
template <side Side, across Across>
[[nodiscard]] constexpr detail::tool_text written(const offset_step<Side, Across>& s) noexcept {
    detail::tool_text t;
    t << text("offset by ") << written(s.change).view() << text(", expect ") << written(s.expected).view();
    if (s.is_clamped) t << text("; the largest change allowed: cut, measure and ask again");
    detail::put_each(t, "\n", s.take_care);
    return t;
}
template <side Side, across Across>
std::ostream& operator<<(std::ostream& out, const offset_step<Side, Across>& s) {
    return detail::put(out, written(s));
}

/// "1 division, then 0.0206 mm on diameter to go, expect 13.9874 +/-0.002; …".
template <side Side> [[nodiscard]] constexpr detail::tool_text written(const dial_move<Side>& m) noexcept {
    detail::tool_text t;
    t << m.divisions << text(m.divisions == 1 ? " division, then " : " divisions, then ")
      << written(m.rest).view() << text(" to go, expect ") << written(m.expected).view();
    detail::put_each(t, "\n", m.take_care);
    return t;
}
template <side Side> std::ostream& operator<<(std::ostream& out, const dial_move<Side>& m) {
    return detail::put(out, written(m));
}

} // namespace fitwright

#endif
