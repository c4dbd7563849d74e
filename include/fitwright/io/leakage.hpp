#ifndef FITWRIGHT_IO_LEAKAGE_HPP
#define FITWRIGHT_IO_LEAKAGE_HPP

#include <fitwright/io/put.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/running/leakage.hpp>
#include <fitwright/written.hpp>

// Leaks in words: three figures, in cubic millimetres a second and millilitres a minute; clearances always
// say that they are on the diameter.

namespace fitwright {

namespace detail {

using leak_text = fixed_text<1999>;

[[nodiscard]] constexpr fixed_text<31> in_cubic_millimetres(const figure<volume_flow>& f) noexcept {
    return three_figures(f.value() * 1e9);
}
[[nodiscard]] constexpr fixed_text<31> in_millilitres(const figure<volume>& v) noexcept {
    return three_figures(v.value() * 1e6);
}

constexpr void put_leak_notes(leak_text& t, flags<leak_doubt> doubts, cautions care) noexcept {
    put_each(t, "\n  mind: ", doubts);
    put_each(t, "\n  care: ", care);
}

/// "at 0.005 mm: 2.3 concentric, 5.76 to one side".
constexpr void put_leak_end(leak_text& t, const range<leak>& end) noexcept {
    t << text("\n  at ") << written(end.least.clearance).view() << text(" mm: ")
      << in_cubic_millimetres(end.least.flow).view() << text(" concentric, ")
      << in_cubic_millimetres(end.most.flow).view() << text(" to one side");
}

/// What stands between the first line and the notes.
constexpr void put_leak_ends(leak_text& t, const leak_result& r) noexcept {
    put_leak_end(t, r.tight);
    put_leak_end(t, r.loose);
    if (r.most.reynolds > 0) t << text("; Reynolds number up to ") << three_figures(r.most.reynolds).view();
}

} // namespace detail

/// "leaks 2.3 to 1120 mm3/s (0.138 to 67.4 ml/min), clearance 0.005 to 0.029 mm on diameter", both ends, the
/// doubts and the cautions.
[[nodiscard]] constexpr detail::leak_text written(const leak_result& r) noexcept {
    detail::leak_text t;
    const auto in_millilitres_per_minute = [](const figure<volume_flow>& f) {
        return detail::three_figures(f.value() * 60e6);
    };
    t << text("leaks ") << detail::in_cubic_millimetres(r.least.flow).view() << text(" to ")
      << detail::in_cubic_millimetres(r.most.flow).view() << text(" mm3/s (")
      << in_millilitres_per_minute(r.least.flow).view() << text(" to ")
      << in_millilitres_per_minute(r.most.flow).view() << text(" ml/min), clearance ")
      << written(r.tight.least.clearance).view() << text(" to ") << written(r.loose.least.clearance).view()
      << text(" mm on diameter");
    detail::put_leak_ends(t, r);
    detail::put_leak_notes(t, r.doubts, r.take_care);
    return t;
}

/// "loses 0.0012 to 0.584 ml of 1.51 ml each stroke, 0.0794 to 38.7 %", then as of a leak.
[[nodiscard]] constexpr detail::leak_text written(const plunger_leak& p) noexcept {
    detail::leak_text t;
    const auto no_more = [](double number, double most) { return number < most ? number : most; };
    const auto lost = [&](const figure<volume>& leaked) { // a stroke loses no more than it sweeps
        return detail::in_millilitres(figure<volume>::from_value(no_more(leaked.value(), p.swept.value())));
    };
    t << text("loses ") << lost(p.leaked.least).view() << text(" to ") << lost(p.leaked.most).view()
      << text(" ml of ") << detail::in_millilitres(p.swept).view() << text(" ml each stroke, ")
      << detail::three_figures(no_more(p.percent_lost.least, 100)).view() << text(" to ")
      << detail::three_figures(no_more(p.percent_lost.most, 100)).view() << text(" %; mm3/s under pressure:");
    detail::put_leak_ends(t, p.past);
    detail::put_leak_notes(t, p.doubts, p.take_care);
    return t;
}

/// "a clearance of up to 0.014226 mm on diameter, which leaks 2.1 mm3/s", the doubts and the cautions.
[[nodiscard]] constexpr detail::leak_text written(const allowed_clearance& a) noexcept {
    detail::leak_text t;
    t << text("a clearance of up to ") << written(a.greatest).view() << text(" mm on diameter, which leaks ")
      << detail::in_cubic_millimetres(a.at_greatest.flow).view() << text(" mm3/s");
    detail::put_leak_notes(t, a.doubts, a.take_care);
    return t;
}

inline std::ostream& operator<<(std::ostream& out, const leak_result& r) {
    return detail::put(out, written(r));
}
inline std::ostream& operator<<(std::ostream& out, const plunger_leak& p) {
    return detail::put(out, written(p));
}
inline std::ostream& operator<<(std::ostream& out, const allowed_clearance& a) {
    return detail::put(out, written(a));
}
inline std::ostream& operator<<(std::ostream& out, leak_doubt d) {
    return out << std::string_view(in_words(d));
}

} // namespace fitwright

#endif
