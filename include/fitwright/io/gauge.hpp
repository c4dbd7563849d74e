#ifndef FITWRIGHT_IO_GAUGE_HPP
#define FITWRIGHT_IO_GAUGE_HPP

#include <fitwright/gauge.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/io/source.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail {

using gauge_text = fixed_text<799>;

template <side Side> constexpr void put_gauge(gauge_text& t, text what, const size_limits<Side>& l) noexcept {
    t << what << written(l.lower_limit()).view() << text(" to ") << written(l.upper_limit()).view();
}

} // namespace detail

/// "accept", "reject", "cannot tell".
inline std::ostream& operator<<(std::ostream& out, verdict v) { return out << std::string_view(in_words(v)); }

/// "GO 14.001 to 14.004, worn out below 13.998; NOT GO 14.0165 to 14.0195 mm; ISO/R 1938:1971, … (published)",
/// and the caution.
template <side Side> [[nodiscard]] constexpr detail::gauge_text written(const limit_gauge<Side>& g) noexcept {
    detail::gauge_text t;
    detail::put_gauge(t, "GO ", g.go);
    t << text(Side == side::shaft ? ", worn out below " : ", worn out above ") << written(g.worn).view();
    detail::put_gauge(t, "; NOT GO ", g.not_go);
    t << text(" mm; ") << written(g.go.origin()).view();
    detail::put_each(t, "\n", g.take_care);
    return t;
}
template <side Side> std::ostream& operator<<(std::ostream& out, const limit_gauge<Side>& g) {
    return detail::put(out, written(g));
}

/// "check plugs: GO … to …; NOT GO … to …; worn … to … mm; ISO/R 1938:1971, …".
[[nodiscard]] constexpr detail::gauge_text written(const check_gauges& g) noexcept {
    detail::gauge_text t;
    detail::put_gauge(t, "check plugs: GO ", g.go);
    detail::put_gauge(t, "; NOT GO ", g.not_go);
    detail::put_gauge(t, "; worn ", g.worn);
    return t << text(" mm; ") << written(g.go.origin()).view();
}
inline std::ostream& operator<<(std::ostream& out, const check_gauges& g) {
    return detail::put(out, written(g));
}

/// "first 14.001 to 14.004, behind it 14.0165 to 14.0195 mm; ISO/R 1938:1971, …".
[[nodiscard]] constexpr detail::gauge_text written(const two_step_plug& p) noexcept {
    detail::gauge_text t;
    detail::put_gauge(t, "first ", p.first);
    detail::put_gauge(t, ", behind it ", p.second);
    return t << text(" mm; ") << written(p.first.origin()).view();
}
inline std::ostream& operator<<(std::ostream& out, const two_step_plug& p) {
    return detail::put(out, written(p));
}

} // namespace fitwright

#endif
