#ifndef FITWRIGHT_IO_PRESS_HPP
#define FITWRIGHT_IO_PRESS_HPP

#include <fitwright/grid.hpp>
#include <fitwright/io/figure.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/press/bore.hpp>
#include <fitwright/press/plug.hpp>
#include <fitwright/press/press.hpp>
#include <fitwright/press/wanted.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail {

using press_text = fixed_text<6143>;

[[nodiscard]] constexpr auto in_um(length l) noexcept {
    return written(l, {.unit = written_unit::um, .decimals = 1});
}
[[nodiscard]] constexpr auto in_megapascals(const figure<pressure>& p) noexcept {
    return three_figures(p.value() / 1e6);
}

constexpr void put_range(press_text& t, const char* what, range<length> r) noexcept {
    t << text(what) << in_um(r.least).view() << text(" to ") << in_um(r.most).view() << text(" um");
}

constexpr void put_wall(press_text& t, const char* what, const pressed_wall& wall) noexcept {
    t << text(what) << in_megapascals(wall.greatest).view() << text(" MPa");
    if (const auto margin = wall.margin(); !margin) t << text(", margin not known");
    else t << text(", margin ") << three_figures(*margin).view();
}

constexpr void put_state(press_text& t, const pressed_state& s) noexcept {
    put_range(t, "interference ", {s.interference.least.value, s.interference.most.value});
    t << text(" on diameter (") << in_um(s.interference.least.on_radius().value).view() << text(" to ")
      << in_um(s.interference.most.on_radius().value).view() << text(" on radius)\n  pressure ")
      << in_megapascals(s.joint_pressure.least).view() << text(" to ")
      << in_megapascals(s.joint_pressure.most).view() << text(" MPa; ");
    if (s.may_let_go()) t << text("no grip left at least");
    else
        t << text("grip at least ") << three_figures(s.axial_grip.least.value()).view() << text(" N, or ")
          << three_figures(s.turning_grip.least.value()).view() << text(" N m");
    if (s.holds != holding::not_asked)
        t << text("; holds the load: ") << in_words(s.holds) << text(" (")
          << three_figures(s.load_margin.least).view() << text(" to ")
          << three_figures(s.load_margin.most).view() << text(" times)");
    if (s.bore.most > length()) {
        put_range(t, "\n  bore closes by ", s.bore_closes_by);
        t << text(", to ") << written(s.bore.least, {.decimals = 4}).view() << text(" to ")
          << written(s.bore.most, {.decimals = 4}).view() << text(" mm");
    }
    put_range(t, "\n  hub grows by ", s.hub_grows_by);
    put_wall(t, "\n  hub stress at most ", s.hub);
    put_wall(t, "; shaft ", s.shaft);
}

constexpr void put_plug_state(press_text& t, const char* when, const plug_state& s) noexcept {
    t << text("\n") << text(when) << text(": holds ") << in_words(s.holds) << text(" (")
      << three_figures(s.grip_margin.least).view() << text(" to ") << three_figures(s.grip_margin.most).view()
      << text(" times), seals ") << in_words(s.seals) << text(" (")
      << three_figures(s.seal_margin.least).view() << text(" to ") << three_figures(s.seal_margin.most).view()
      << text(" times)");
}

} // namespace detail

/// "0.02 mm on diameter".
[[nodiscard]] constexpr fixed_text<71> written(diametral_interference i) noexcept {
    return fixed_text<71>() << written(i.value).view() << text(" mm on diameter");
}
/// "0.01 mm on radius".
[[nodiscard]] constexpr fixed_text<71> written(radial_interference i) noexcept {
    return fixed_text<71>() << written(i.value).view() << text(" mm on radius");
}

/// Some lines: both states, the force to press it in, then what to mind.
[[nodiscard]] constexpr detail::press_text written(const press_result& r) noexcept {
    detail::press_text t;
    t << text("at 20 C: ");
    detail::put_state(t, r.at_20);
    t << text("\nin service: ");
    const bool is_the_same = r.in_service.interference == r.at_20.interference &&
                             r.in_service.joint_pressure == r.at_20.joint_pressure &&
                             r.in_service.bore == r.at_20.bore;
    if (is_the_same) t << text("the same");
    else detail::put_state(t, r.in_service);
    t << text("\npress-in force at most ") << written(r.press_in_force).view();
    if (r.press_capacity != r.press_in_force)
        t << text(" by the friction stated; a press for ") << written(r.press_capacity).view();
    detail::put_each(t, "\nmind: ", r.doubts);
    detail::put_each(t, "\ncare: ", r.take_care);
    return t;
}

/// What to bore, or that it is to be reamed after pressing, with the numbers; then what to mind.
[[nodiscard]] constexpr detail::press_text written(const bush_bore& b) noexcept {
    detail::press_text t;
    detail::put_range(t, "the bore closes by ", b.closes_by);
    if (b.may_yield) t << text(", and further where the bush yields; it has");
    else
        t << text(", a spread of ") << detail::in_um(b.closes_by.most - b.closes_by.least).view()
          << text(" um of");
    t << text(" a tolerance of ") << detail::in_um(b.tolerance).view() << text(" um: ");
    const length tenth = length::from_nanometres(100); // of a micrometre, inwards
    if (b.ream_after_pressing) {
        const length largest = detail::multiple_at_or_below(b.largest_before_reaming, tenth);
        t << text("ream after pressing; before it bore no larger than ") << written(largest).view()
          << text(" mm");
    } else {
        const hole_limits before = rounded_inwards(b.before, tenth).value_or(b.before);
        t << text("bore ") << written(before.lower_limit()).view() << text(" to ")
          << written(before.upper_limit()).view() << text(" mm before pressing");
    }
    detail::put_each(t, "\nmind: ", b.doubts);
    detail::put_each(t, "\ncare: ", b.take_care);
    return t;
}

/// The push, whether it holds and seals, what it would take; then what to mind.
[[nodiscard]] constexpr detail::press_text written(const plug_result& p) noexcept {
    detail::press_text t;
    t << text("the fluid pushes with ") << detail::three_figures(p.push.value()).view() << text(" N; ")
      << in_words(p.effect);
    if (p.effect == pressure_effect::helps) t << text(", unless it gets into the seat");
    detail::put_plug_state(t, "at 20 C", p.at_20);
    detail::put_plug_state(t, "in service", p.in_service);
    t << text("\nneeded: an interference of at least ") << written(p.needed).view();
    detail::put_each(t, "\nmind: ", p.doubts);
    detail::put_each(t, "\ncare: ", p.take_care);
    return t;
}

/// The interference, then what to mind.
[[nodiscard]] constexpr detail::press_text written(const wanted_interference& w) noexcept {
    detail::press_text t;
    t << written(w.interference).view();
    detail::put_each(t, "\nmind: ", w.doubts);
    detail::put_each(t, "\ncare: ", w.take_care);
    return t;
}

/// As of the state in a `press_result`.
[[nodiscard]] constexpr detail::press_text written(const pressed_state& s) noexcept {
    detail::press_text t;
    detail::put_state(t, s);
    return t;
}

/// "241 MPa, margin 1.04".
[[nodiscard]] constexpr fixed_text<99> written(const pressed_wall& w) noexcept {
    fixed_text<99> t;
    t << written(w.greatest).view() << text(", margin ") << written(w.margin()).view();
    return t;
}

/// "0.01 to 0.039 mm on diameter".
[[nodiscard]] constexpr fixed_text<119> written(range<diametral_interference> r) noexcept {
    return fixed_text<119>() << written(r.least.value).view() << text(" to ") << written(r.most).view();
}

inline std::ostream& operator<<(std::ostream& out, diametral_interference i) {
    return detail::put(out, written(i));
}
inline std::ostream& operator<<(std::ostream& out, radial_interference i) {
    return detail::put(out, written(i));
}
inline std::ostream& operator<<(std::ostream& out, const range<diametral_interference>& r) {
    return detail::put(out, written(r));
}
inline std::ostream& operator<<(std::ostream& out, const pressed_wall& w) {
    return detail::put(out, written(w));
}
inline std::ostream& operator<<(std::ostream& out, const pressed_state& s) {
    return detail::put(out, written(s));
}
inline std::ostream& operator<<(std::ostream& out, const press_result& r) {
    return detail::put(out, written(r));
}
inline std::ostream& operator<<(std::ostream& out, const bush_bore& b) {
    return detail::put(out, written(b));
}
inline std::ostream& operator<<(std::ostream& out, const plug_result& p) {
    return detail::put(out, written(p));
}
inline std::ostream& operator<<(std::ostream& out, const wanted_interference& w) {
    return detail::put(out, written(w));
}
inline std::ostream& operator<<(std::ostream& out, pressure_effect e) {
    return out << std::string_view(in_words(e));
}
inline std::ostream& operator<<(std::ostream& out, holding h) { return out << std::string_view(in_words(h)); }
inline std::ostream& operator<<(std::ostream& out, press_doubt d) {
    return out << std::string_view(in_words(d));
}

} // namespace fitwright

#endif
