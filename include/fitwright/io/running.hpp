#ifndef FITWRIGHT_IO_RUNNING_HPP
#define FITWRIGHT_IO_RUNNING_HPP

#include <fitwright/callout/write.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/io/source.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/running/bush_fits.hpp>
#include <fitwright/running/clearances.hpp>
#include <fitwright/running/film.hpp>
#include <fitwright/running/nearest_fit.hpp>
#include <fitwright/running/petroff.hpp>

// Results of running parts in words: three figures, films in micrometres, and always what is doubtful.

namespace fitwright {

namespace detail {

using running_text = fixed_text<2999>;

/// "8.12 um".
[[nodiscard]] constexpr fixed_text<47> in_micrometres(length l) noexcept {
    return fixed_text<47>() << three_figures(static_cast<double>(l.nanometres()) / 1000).view()
                            << text(" um");
}

/// "clearance 20 um: film 8.12 um (formulas 7.98 um), eccentricity 0.189, friction 0.0158, 9.02 W, …"
constexpr void put_state(running_text& t, const film_state& f) noexcept {
    t << text("clearance ") << in_micrometres(f.clearance.value).view();
    if (f.regime == film_regime::boundary) {
        t << text(": boundary, no film that carries (") << in_micrometres(f.by_table.least_film).view()
          << text(" reckoned)");
        return;
    }
    t << text(": film ") << in_micrometres(f.by_table.least_film).view();
    if (f.has_formula)
        t << text(" (formulas ") << in_micrometres(f.by_formula.least_film).view() << text(")");
    t << text(", eccentricity ") << three_figures(f.by_table.eccentricity).view() << text(", friction ")
      << three_figures(f.by_table.friction_coefficient).view() << text(", ")
      << three_figures(f.power_lost.value()).view() << text(" W");
    if (f.oil_out)
        t << text(", oil in the film ") << three_figures(f.film_temperature.value().value()).view()
          << text(" C, out ") << three_figures(f.oil_out.value().value()).view() << text(" C");
}

} // namespace detail

/// "32 mm2/s, 27.4 mPa.s at 40 C, +/-10 % by its grade (…)", then a line for each doubt.
[[nodiscard]] constexpr detail::running_text written(const viscosity_result& v) noexcept {
    detail::running_text t;
    t << detail::three_figures(v.kinematic.value() * 1e6).view() << text(" mm2/s");
    if (v.dynamic)
        t << text(", ") << detail::three_figures(v.dynamic.value().value() * 1e3).view() << text(" mPa.s");
    t << text(" at ") << detail::three_figures(v.at.value()).view() << text(" C");
    if (v.spread_per_cent > 0)
        t << text(", +/-") << detail::three_figures(v.spread_per_cent).view() << text(" % by its grade");
    if (v.spread_per_cent > 0 && v.spread_at)
        t << text(" at ") << detail::three_figures(v.spread_at.value().value()).view() << text(" C");
    t << text(" (") << written(v.from).view();
    if (v.by.document != v.from.document) t << text("; ") << v.by.document;
    t << text(")");
    detail::put_each(t, "\n  mind: ", v.doubts);
    return t;
}

/// A line for the tightest and one for the loosest, what carries, and what is doubtful; what is so at one
/// end only says at which.
[[nodiscard]] constexpr detail::running_text written(const film_result& f) noexcept {
    detail::running_text t;
    t << text("tightest, ");
    detail::put_state(t, f.tightest);
    t << text("\nloosest, ");
    detail::put_state(t, f.loosest);
    t << text("\nlimit film ") << detail::in_micrometres(f.limit_film).view() << text("; ")
      << in_words(f.regime);
    f.doubts.for_each([&](film_doubt d) {
        t << text("\n  mind");
        if (!f.loosest.doubts.contains(d)) t << text(" (tightest)");
        if (!f.tightest.doubts.contains(d)) t << text(" (loosest)");
        t << text(": ") << in_words(d);
    });
    detail::put_each(t, "\n  mind: ", f.viscosity_doubts);
    detail::put_each(t, "\n  care: ", f.take_care);
    return t;
}

/// "drag 0.0123 to 0.0456 N.m, 1.2 to 3.4 W".
[[nodiscard]] constexpr detail::running_text written(const petroff_result& p) noexcept {
    detail::running_text t;
    t << text("drag ") << detail::three_figures(p.drag.least.value()).view() << text(" to ")
      << detail::three_figures(p.drag.most.value()).view() << text(" N.m, ")
      << detail::three_figures(p.power_lost.least.value()).view() << text(" to ")
      << detail::three_figures(p.power_lost.most.value()).view() << text(" W");
    detail::put_each(t, "\n  care: ", p.take_care);
    return t;
}

/// "1.2 per mille".
[[nodiscard]] constexpr fixed_text<47> written(relative_clearance c) noexcept {
    return fixed_text<47>() << detail::three_figures(c.per_mille).view() << text(" per mille");
}

/// "0.73 per mille or 8.77 um by Vogelpohl (…), 1.32 per mille or 15.8 um by ISO 7902-3:1998, … (…)".
[[nodiscard]] constexpr detail::running_text written(const speed_clearance& s) noexcept {
    detail::running_text t;
    t << written(s.by_vogelpohl).view() << text(" or ") << detail::in_micrometres(s.vogelpohl.value).view()
      << text(" by ") << written(s.from_vogelpohl).view() << text("; ") << written(s.by_iso_7902).view()
      << text(" or ") << detail::in_micrometres(s.iso_7902.value).view() << text(" by ")
      << written(s.from_iso_7902).view();
    return t;
}

/// "0.024 to 0.048 mm on diameter: 0.002 to 0.004 in each inch (common practice, no source)".
[[nodiscard]] constexpr detail::running_text written(const clearance_advice& a) noexcept {
    detail::running_text t;
    t << written(a.window.least).view();
    if (a.window.most != a.window.least) t << text(" to ") << written(a.window.most).view();
    t << text(" mm on diameter: ") << a.remark << text(" (");
    if (a.from.how_sure == confidence::practice) t << in_words(a.from.how_sure);
    else t << written(a.from).view();
    return t << text(")");
}

/// "housing H7, shaft e7 or g7, bush s6 outside, bore E6, about H8 when pressed in (ISO 4379:1993, …)".
[[nodiscard]] constexpr detail::running_text written(const bush_advice& b) noexcept {
    detail::running_text t;
    t << text("housing ") << written(b.housing).view() << text(", shaft ") << written(b.shaft).view();
    if (b.close_shaft != b.shaft) t << text(" or ") << written(b.close_shaft).view();
    if (b.bush.are_known)
        t << text(", bush ") << written(b.bush.outside).view() << text(" outside, bore ")
          << written(b.bush.bore_before).view() << text(", about ") << written(b.bush.bore_after).view()
          << text(" when pressed in");
    return t << text(" (") << written(b.from).view() << text(")");
}

/// "H8/f7, clearance 0.016 to 0.061 mm, 0.2 um off".
[[nodiscard]] constexpr detail::running_text written(const running_fit& f) noexcept {
    detail::running_text t;
    t << written(f.classes).view() << text(", clearance ") << written(f.sizes.min_clearance()).view()
      << text(" to ") << written(f.sizes.max_clearance()).view() << text(" mm");
    if (f.off != length()) t << text(", ") << detail::in_micrometres(f.off).view() << text(" off");
    return t;
}

inline std::ostream& operator<<(std::ostream& out, const viscosity_result& v) {
    return detail::put(out, written(v));
}
inline std::ostream& operator<<(std::ostream& out, const film_result& f) {
    return detail::put(out, written(f));
}
inline std::ostream& operator<<(std::ostream& out, const petroff_result& p) {
    return detail::put(out, written(p));
}
inline std::ostream& operator<<(std::ostream& out, relative_clearance c) {
    return detail::put(out, written(c));
}
inline std::ostream& operator<<(std::ostream& out, const speed_clearance& s) {
    return detail::put(out, written(s));
}
inline std::ostream& operator<<(std::ostream& out, const clearance_advice& a) {
    return detail::put(out, written(a));
}
inline std::ostream& operator<<(std::ostream& out, const bush_advice& b) {
    return detail::put(out, written(b));
}
inline std::ostream& operator<<(std::ostream& out, const running_fit& f) {
    return detail::put(out, written(f));
}
inline std::ostream& operator<<(std::ostream& out, film_regime r) {
    return out << std::string_view(in_words(r));
}

} // namespace fitwright

#endif
