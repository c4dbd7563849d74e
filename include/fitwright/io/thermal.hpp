#ifndef FITWRIGHT_IO_THERMAL_HPP
#define FITWRIGHT_IO_THERMAL_HPP

#include <fitwright/io/put.hpp>
#include <fitwright/thermal.hpp>
#include <fitwright/written.hpp>

// Sizes at temperature are written to a tenth of a micrometre, outwards: no coefficient is known better.

namespace fitwright {

namespace detail {

/// Room for both ways from 20 °C, each with every doubt there is; names and reasons are shortened to fit.
using thermal_text = fixed_text<1999>;
using doubts_text = fixed_text<799>;

/// A name of the caller's own, shortened where it is long: "the day on which the master came back...".
template <std::size_t Longest> [[nodiscard]] constexpr fixed_text<Longest + 4> shortened(text name) noexcept {
    fixed_text<Longest> cut;
    cut << name;
    fixed_text<Longest + 4> made;
    made << cut.view();
    if (cut.is_cut()) made << text("...");
    return made;
}
[[nodiscard]] constexpr fixed_text<64> bounded_name(text name) noexcept { return shortened<60>(name); }

inline constexpr std::int64_t tenth_of_a_micrometre = 100; // nm

/// At the end of the range a length has no tenth beyond it, and is written as it is.
[[nodiscard]] constexpr bool has_tenth_beyond(length l) noexcept {
    return l.nanometres() < INT64_MAX - tenth_of_a_micrometre &&
           l.nanometres() > tenth_of_a_micrometre - INT64_MAX;
}

[[nodiscard]] constexpr fixed_text<47> down_to_a_tenth(length l) noexcept {
    if (!has_tenth_beyond(l)) return written(l);
    const std::int64_t tenths = l.nanometres() / tenth_of_a_micrometre;
    const bool is_cut_upwards = l.nanometres() % tenth_of_a_micrometre < 0;
    return written(length::from_nanometres((is_cut_upwards ? tenths - 1 : tenths) * tenth_of_a_micrometre));
}
[[nodiscard]] constexpr fixed_text<47> up_to_a_tenth(length l) noexcept {
    if (!has_tenth_beyond(l)) return written(l);
    const std::int64_t tenths = l.nanometres() / tenth_of_a_micrometre;
    const bool is_cut_downwards = l.nanometres() % tenth_of_a_micrometre > 0;
    return written(length::from_nanometres((is_cut_downwards ? tenths + 1 : tenths) * tenth_of_a_micrometre));
}
[[nodiscard]] constexpr fixed_text<47> to_a_tenth(length l) noexcept {
    return written(l / tenth_of_a_micrometre * tenth_of_a_micrometre);
}

/// "0.0211 to 0.0508 mm".
[[nodiscard]] constexpr thermal_text written_window(length least, length most) noexcept {
    thermal_text t;
    t << down_to_a_tenth(least).view() << text(" to ") << up_to_a_tenth(most).view() << text(" mm");
    return t;
}

/// "87.7 C", to a tenth of a kelvin.
[[nodiscard]] constexpr fixed_text<47> written_celsius(const temperature& t) noexcept {
    const double kelvins = t.value() < 0 ? -t.value() : t.value();
    const auto tenths = static_cast<std::int64_t>(kelvins * 10 + 0.5);
    fixed_text<47> digits;
    if (t.value() < 0 && tenths > 0) digits << text("-");
    digits << tenths / 10;
    if (tenths % 10 != 0) digits << text(".") << tenths % 10;
    return digits << text(" C");
}

/// "; mind: …; …", nothing where there is no doubt.
[[nodiscard]] constexpr doubts_text written_doubts(flags<thermal_doubt> doubts) noexcept {
    doubts_text t;
    doubts.for_each(
        [&](thermal_doubt d) { t << (t.size() == 0 ? text("; mind: ") : text("; ")) << in_words(d); });
    return t;
}

[[nodiscard]] constexpr thermal_text written_clearance(const hot_fit& f) noexcept {
    thermal_text t;
    t << text("clearance ") << written_window(f.min_clearance(), f.max_clearance()).view() << text(" (")
      << to_a_tenth(f.by_mean.least).view() << text(" to ") << to_a_tenth(f.by_mean.most).view()
      << text(" by the mean coefficients): ") << in_words(f.kind()) << text(" fit");
    return t;
}

} // namespace detail

/// "0.0347 to 0.0352 mm (0.0351 by the mean coefficient)".
[[nodiscard]] constexpr detail::thermal_text written(const spread_length& l) noexcept {
    detail::thermal_text t = detail::written_window(l.least, l.most);
    t << text(" (") << detail::to_a_tenth(l.by_mean).view() << text(" by the mean coefficient)");
    return t << detail::written_doubts(l.doubts).view();
}

/// "12.021 to 12.0393 mm".
template <side Side>
[[nodiscard]] constexpr detail::thermal_text written(const hot_limits<Side>& l) noexcept {
    return detail::written_window(l.limits.lower_limit(), l.limits.upper_limit())
           << detail::written_doubts(l.doubts).view();
}

/// "50.0158 +/-0.0022 mm at 20 C (corrected by -0.0152)".
template <side Side>
[[nodiscard]] constexpr detail::thermal_text written(const measured_at_20<Side>& m) noexcept {
    detail::thermal_text t;
    t << detail::to_a_tenth(m.part.size()).view() << text(" +/-")
      << detail::up_to_a_tenth(m.part.uncertainty()).view() << text(" mm at 20 C (corrected by ")
      << detail::to_a_tenth(m.correction).view() << text(")");
    return t << detail::written_doubts(m.doubts).view();
}

/// "clearance 0.021 to 0.0508 mm (0.0216 to 0.0507 by the mean coefficients): clearance fit".
[[nodiscard]] constexpr detail::thermal_text written(const hot_fit& f) noexcept {
    return detail::written_clearance(f) << detail::written_doubts(f.doubts).view();
}

/// A line each: "tightest in cool-down: clearance …", "loosest in warm-up: clearance …".
[[nodiscard]] constexpr detail::thermal_text written(const worst_moments_of_fit& w) noexcept {
    detail::thermal_text t;
    t << text("tightest in ") << detail::bounded_name(w.tightest.state).view() << text(": ")
      << detail::written_clearance(w.tightest.fit).view() << text("\nloosest in ")
      << detail::bounded_name(w.loosest.state).view() << text(": ")
      << detail::written_clearance(w.loosest.fit).view();
    return t << detail::written_doubts(w.doubts).view();
}

/// "happens between 87.7 C and 103.4 C (100.8 C by the mean coefficients)", "may happen from 146 C on", "does
/// not happen up to the heating limit, 150 C (aluminium 6082-T6)", …
[[nodiscard]] constexpr detail::thermal_text written(const common_temperature& c) noexcept {
    detail::thermal_text t;
    t << in_words(c.outcome);
    switch (c.outcome) {
    case happening::happens: {
        const auto earliest = detail::written_celsius(*c.earliest);
        const auto latest = detail::written_celsius(*c.latest);
        if (earliest == latest.view()) t << text(" at ") << earliest.view();
        else t << text(" between ") << earliest.view() << text(" and ") << latest.view();
        break;
    }
    case happening::may_happen:
        t << text(" from ") << detail::written_celsius(*c.earliest).view() << text(" on");
        break;
    case happening::not_up_to_heating_limit:
    case happening::not_where_expansion_is_known:
        t << text(", ") << detail::written_celsius(c.looked_upto).view() << text(" (")
          << detail::bounded_name(c.limited_by).view() << text(")");
        break;
    case happening::at_20_degC_already: break;
    }
    if (c.by_mean)
        t << text(" (") << detail::written_celsius(*c.by_mean).view() << text(" by the mean coefficients)");
    return t << detail::written_doubts(c.doubts).view();
}

/// Both ways, a line each: "heated: …", "cooled: …".
[[nodiscard]] constexpr detail::thermal_text written(const common_temperatures& c) noexcept {
    detail::thermal_text t;
    t << text("heated: ") << written(c.heated).view() << text("\ncooled: ") << written(c.cooled).view();
    return t;
}

/// "shaft at -78.5 C, hub at 120 C: hot enough within the hub's limit". The hub's temperature is rounded up.
[[nodiscard]] constexpr detail::thermal_text written(const shrink_way& w) noexcept {
    detail::thermal_text t;
    t << text("shaft at ") << detail::written_celsius(*w.shaft).view();
    if (w.hub) {
        const double needed = (*w.hub).value();
        const auto whole = static_cast<std::int64_t>(needed);
        t << text(", hub at ") << (static_cast<double>(whole) < needed ? whole + 1 : whole) << text(" C");
    }
    return t << text(": ") << in_words(w.outcome);
}

/// What to do, what it takes, what it does not tell, and the cautions.
[[nodiscard]] constexpr detail::thermal_text written(const shrink_plan& p) noexcept {
    detail::thermal_text t;
    t << in_words(p.advice);
    if (!p.missing_figure.empty()) t << text(": ") << p.missing_figure;
    t << text("; ") << written(p.best()).view() << text("; leaves ")
      << detail::to_a_tenth(p.assembly_clearance).view() << text(" mm while assembling");
    if (p.hub_limit)
        t << text("\nthe hub no hotter than ") << detail::written_celsius(*p.hub_limit).view() << text(" (")
          << detail::shortened<200>(p.hub_limit_reason).view() << text(")");
    t << text("\nnot worked out: ") << shrink_plan::not_covered << detail::written_doubts(p.doubts).view();
    detail::put_each(t, "\n", p.take_care);
    return t;
}

/// "53.6 MPa (51 to 56.2)".
[[nodiscard]] constexpr detail::thermal_text written(const restrained_stress& s) noexcept {
    const auto megapascals_of = [](const figure<pressure>& p) {
        const auto tenths = static_cast<std::int64_t>(p.value() / 1e5 + 0.5);
        fixed_text<47> digits;
        digits << tenths / 10;
        if (tenths % 10 != 0) digits << text(".") << tenths % 10;
        return digits;
    };
    detail::thermal_text t;
    t << megapascals_of(s.by_mean).view() << text(" MPa (") << megapascals_of(s.stress.least).view()
      << text(" to ") << megapascals_of(s.stress.most).view() << text(")");
    return t << detail::written_doubts(s.doubts).view();
}

inline std::ostream& operator<<(std::ostream& out, const spread_length& l) {
    return detail::put(out, written(l));
}
template <side Side> std::ostream& operator<<(std::ostream& out, const hot_limits<Side>& l) {
    return detail::put(out, written(l));
}
template <side Side> std::ostream& operator<<(std::ostream& out, const measured_at_20<Side>& m) {
    return detail::put(out, written(m));
}
inline std::ostream& operator<<(std::ostream& out, const hot_fit& f) { return detail::put(out, written(f)); }
inline std::ostream& operator<<(std::ostream& out, const worst_moments_of_fit& w) {
    return detail::put(out, written(w));
}
inline std::ostream& operator<<(std::ostream& out, const common_temperature& c) {
    return detail::put(out, written(c));
}
inline std::ostream& operator<<(std::ostream& out, const common_temperatures& c) {
    return detail::put(out, written(c));
}
inline std::ostream& operator<<(std::ostream& out, const shrink_way& w) {
    return detail::put(out, written(w));
}
inline std::ostream& operator<<(std::ostream& out, const shrink_plan& p) {
    return detail::put(out, written(p));
}
inline std::ostream& operator<<(std::ostream& out, const restrained_stress& s) {
    return detail::put(out, written(s));
}

} // namespace fitwright

#endif
