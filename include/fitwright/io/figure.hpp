#ifndef FITWRIGHT_IO_FIGURE_HPP
#define FITWRIGHT_IO_FIGURE_HPP

#include <fitwright/figure.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/material/property.hpp>
#include <fitwright/material/units.hpp>
#include <fitwright/running/units.hpp>
#include <fitwright/written.hpp>

// Quantities as results carry them, to three figures, in their unit with the prefix that suits: "116 MPa",
// "4.61 kN"; and their ranges.

namespace fitwright {

namespace detail {

/// The name of the unit that is printed, how many of it the quantity's own unit is, whether prefixes suit it.
struct printed_unit {
    const char* name;
    double times;
    bool has_prefixes;
};

template <class Quantity> inline constexpr printed_unit unit_of = {}; // those without a name don't print
template <> inline constexpr printed_unit unit_of<double>{"", 1, false};
template <> inline constexpr printed_unit unit_of<pressure>{"Pa", 1, true};
template <> inline constexpr printed_unit unit_of<force>{"N", 1, true};
template <> inline constexpr printed_unit unit_of<torque>{"N m", 1, true};
template <> inline constexpr printed_unit unit_of<power>{"W", 1, true};
template <> inline constexpr printed_unit unit_of<speed>{"m/s", 1, false};
template <> inline constexpr printed_unit unit_of<rotational_speed>{"rad/s", 1, false};
template <> inline constexpr printed_unit unit_of<temperature>{"C", 1, false};
template <> inline constexpr printed_unit unit_of<expansion_coefficient>{"ppm/K", 1e6, false};
template <> inline constexpr printed_unit unit_of<mass_density>{"kg/m3", 1, false};

template <class Quantity>
concept has_printed_unit = (unit_of<Quantity>.name != nullptr);

struct prefix {
    const char* name;
    double worth;
};

/// The prefix that leaves one to three digits before the point.
[[nodiscard]] constexpr prefix prefix_for(double number) noexcept {
    constexpr prefix all[] = {{"G", 1e9}, {"M", 1e6}, {"k", 1e3}, {"", 1}, {"m", 1e-3}, {"u", 1e-6}};
    const double size = number < 0 ? -number : number;
    if (!(size > 0) || size > 1e15) return {"", 1};
    for (const prefix& p : all)
        if (size >= 0.9995 * p.worth) return p;
    return {"", 1};
}

using figure_text = fixed_text<79>;

constexpr void put_unit(figure_text& t, const printed_unit& unit, const prefix& p) noexcept {
    if (*unit.name == '\0') return;
    t << text(" ") << text(p.name, __builtin_strlen(p.name)) << text(unit.name, __builtin_strlen(unit.name));
}

[[nodiscard]] constexpr figure_text in_unit(double number, const printed_unit& unit) noexcept {
    const prefix p = unit.has_prefixes ? prefix_for(number) : prefix{"", 1};
    figure_text t;
    t << three_figures(number * unit.times / p.worth).view();
    put_unit(t, unit, p);
    return t;
}

/// Both ends with the prefix of the greater.
[[nodiscard]] constexpr figure_text range_in_unit(range<double> r, const printed_unit& unit) noexcept {
    const double greater = -r.least > r.most ? r.least : r.most;
    const prefix p = unit.has_prefixes ? prefix_for(greater) : prefix{"", 1};
    figure_text t;
    t << three_figures(r.least * unit.times / p.worth).view() << text(" to ")
      << three_figures(r.most * unit.times / p.worth).view();
    put_unit(t, unit, p);
    return t;
}

} // namespace detail

/// "116 MPa", "4.61 kN", "2.67 N m".
template <class Quantity>
    requires detail::has_printed_unit<Quantity>
[[nodiscard]] constexpr detail::figure_text written(const figure<Quantity>& f) noexcept {
    return detail::in_unit(f.value(), detail::unit_of<Quantity>);
}

/// "13.1 to 116 MPa".
template <class Quantity>
    requires detail::has_printed_unit<Quantity>
[[nodiscard]] constexpr detail::figure_text written(const range<figure<Quantity>>& r) noexcept {
    return detail::range_in_unit({r.least.value(), r.most.value()}, detail::unit_of<Quantity>);
}

/// "1.34 to 13.8".
[[nodiscard]] constexpr detail::figure_text written(const range<double>& r) noexcept {
    return detail::range_in_unit(r, detail::unit_of<double>);
}

/// "0.0019 to 0.016847 mm".
[[nodiscard]] constexpr fixed_text<103> written(const range<length>& r) noexcept {
    return fixed_text<103>() << written(r.least).view() << text(" to ") << written(r.most).view()
                             << text(" mm");
}

/// "70 GPa", or "not known".
template <class Quantity>
    requires detail::has_printed_unit<Quantity>
[[nodiscard]] constexpr detail::figure_text written(const property<Quantity>& p) noexcept {
    if (!p) return detail::figure_text() << text("not known");
    if constexpr (std::is_same_v<Quantity, double>) return detail::in_unit(*p, detail::unit_of<double>);
    else return detail::in_unit((*p).value(), detail::unit_of<Quantity>);
}

template <class Quantity>
requires detail::has_printed_unit<Quantity> std::ostream& operator<<(std::ostream& out,
                                                                     const figure<Quantity>& f) {
    return detail::put(out, written(f));
}
template <class Quantity>
requires detail::has_printed_unit<Quantity> std::ostream& operator<<(std::ostream& out,
                                                                     const range<figure<Quantity>>& r) {
    return detail::put(out, written(r));
}
inline std::ostream& operator<<(std::ostream& out, const range<double>& r) {
    return detail::put(out, written(r));
}
inline std::ostream& operator<<(std::ostream& out, const range<length>& r) {
    return detail::put(out, written(r));
}
template <class Quantity>
requires detail::has_printed_unit<Quantity> std::ostream& operator<<(std::ostream& out,
                                                                     const property<Quantity>& p) {
    return detail::put(out, written(p));
}

} // namespace fitwright

#endif
