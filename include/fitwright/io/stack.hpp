#ifndef FITWRIGHT_IO_STACK_HPP
#define FITWRIGHT_IO_STACK_HPP

#include <fitwright/io/put.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/stack.hpp>
#include <fitwright/written.hpp>

// Chains in words: lengths in millimetres to the nanometre where they are exact, to a tenth of a
// micrometre, outwards, where statistics or angles made them.

namespace fitwright {

namespace detail {

using stack_text = fixed_text<1599>;

/// "0.0211 to 0.0508".
constexpr void put_exact(stack_text& t, range<length> r) noexcept {
    t << written(r.least).view() << text(" to ") << written(r.most).view();
}
constexpr void put_to_a_tenth(stack_text& t, range<length> r) noexcept {
    constexpr std::int64_t tenth = 100; // nm
    put_exact(t, {length::from_nanometres(divided_down(r.least.nanometres(), tenth) * tenth),
                  length::from_nanometres(-divided_down(-r.most.nanometres(), tenth) * tenth)});
}

constexpr void put_minutes(stack_text& t, const figure<plane_angle>& a) noexcept {
    t << three_figures(a.value() / degrees(1).value() * 60).view();
}

[[nodiscard]] constexpr fixed_text<31> in_per_cent(double share) noexcept {
    return three_figures(share * 100);
}

} // namespace detail

/// "closes by housing, 40 to 40.1 mm".
[[nodiscard]] constexpr detail::stack_text written(const chain_link& l) noexcept {
    detail::stack_text t;
    t << text(l.effect == on_gap::opens ? "opens by " : "closes by ") << l.name << text(", ");
    detail::put_exact(t, {l.lower_limit(), l.upper_limit()});
    t << text(" mm");
    if (l.factor != link_factor{}) t << text(", times ") << l.factor.times << text("/") << l.factor.per;
    return t;
}

/// The gap by each rule, a line each, and what to mind.
[[nodiscard]] constexpr detail::stack_text written(const stack_result& s) noexcept {
    detail::stack_text t;
    t << text("nominal gap ") << written(s.nominal).view() << text(" mm\nworst case ");
    detail::put_exact(t, s.worst_case);
    t << text(" mm\nroot of squares ");
    detail::put_to_a_tenth(t, s.root_sum_square);
    t << text(" mm, times 1.5 ");
    detail::put_to_a_tenth(t, s.benderized);
    t << text(" mm, modified ");
    detail::put_to_a_tenth(t, s.modified);
    t << text(" mm\nthe widest tolerance: link no. ") << static_cast<std::int64_t>(s.widest_link + 1);
    detail::put_each(t, "\n  mind: ", s.doubts);
    return t;
}

/// Mean, scatter and, where there is a window, the share outside with its bounds; and what to mind.
[[nodiscard]] constexpr detail::stack_text written(const simulated_gap& s) noexcept {
    detail::stack_text t;
    t << s.samples << text(" tried from seed ");
    t << fixed_text<20>().put_digits(s.seed).view();
    t << text(": mean ") << written(s.mean, {.decimals = 4}).view() << text(" mm, standard deviation ")
      << written(s.standard_deviation, {.decimals = 4}).view() << text(" mm, 99.73 % within ");
    detail::put_to_a_tenth(t, s.most_of_them);
    t << text(" mm");
    if (s.has_window)
        t << text("\n") << detail::in_per_cent(s.below).view() << text(" % below and ")
          << detail::in_per_cent(s.above).view() << text(" % above the window, in truth ")
          << detail::in_per_cent(s.outside_95.least).view() << text(" to ")
          << detail::in_per_cent(s.outside_95.most).view() << text(" % outside (95 % confidence)");
    detail::put_each(t, "\n  mind: ", s.doubts);
    return t;
}

/// "shims no. 2 and 5: leaves 0.05 to 0.12 mm", counted from 1.
[[nodiscard]] constexpr detail::stack_text written(const shim_choice& c) noexcept {
    detail::stack_text t;
    if (c.how_many == 0) t << text("no shim");
    else t << text(c.how_many == 1 ? "shim no. " : "shims no. ") << static_cast<std::int64_t>(c.first + 1);
    if (c.how_many == 2) t << text(" and ") << static_cast<std::int64_t>(c.second + 1);
    t << text(": leaves ");
    detail::put_exact(t, c.left);
    return t << text(" mm");
}

/// "backlash 0.0072 to 0.022 mm along the pitch circle, 0.0068 to 0.0206 mm across the flanks".
[[nodiscard]] constexpr detail::stack_text written(const gear_lash& g) noexcept {
    detail::stack_text t;
    t << text("backlash ");
    detail::put_to_a_tenth(t, g.circumferential);
    t << text(" mm along the pitch circle, ");
    detail::put_to_a_tenth(t, g.normal);
    t << text(" mm across the flanks (by the rule of thumb ");
    detail::put_to_a_tenth(t, g.by_the_rule);
    t << text(" mm)");
    detail::put_each(t, "\n  mind: ", g.doubts);
    detail::put_each(t, "\n  care: ", g.take_care);
    return t;
}

/// "axial play 0 to 0.0146 mm, the wheel turns 0 to 2.51 minutes of arc".
[[nodiscard]] constexpr detail::stack_text written(const worm_lash& w) noexcept {
    detail::stack_text t;
    t << text("axial play ");
    detail::put_to_a_tenth(t, w.axial);
    t << text(" mm, the wheel turns ");
    detail::put_minutes(t, w.of_wheel.least);
    t << text(" to ");
    detail::put_minutes(t, w.of_wheel.most);
    t << text(" minutes of arc");
    detail::put_each(t, "\n  mind: ", w.doubts);
    detail::put_each(t, "\n  care: ", w.take_care);
    return t;
}

/// "axial lash 0.0346 to 0.1155 mm".
[[nodiscard]] constexpr detail::stack_text written(const screw_lash& s) noexcept {
    detail::stack_text t;
    t << text("axial lash ");
    detail::put_to_a_tenth(t, s.axial);
    t << text(" mm");
    detail::put_each(t, "\n  mind: ", s.doubts);
    return t;
}

/// Whether the plate always goes on; if not, by how much it misses and three ways out.
[[nodiscard]] constexpr detail::stack_text written(const second_hole& h) noexcept {
    detail::stack_text t;
    if (h.always_goes_on()) {
        t << text("always goes on, with ") << written(h.left).view() << text(" mm to spare");
    } else {
        t << text("does not always go on: ") << written(-h.left).view()
          << text(" mm is missing. The second hole round from ") << written(h.round_hole).view()
          << text(" mm, or a slot from ") << written(h.slot).view() << text(" mm long");
        if (h.relieved_land > length())
            t << text(", or the dowel relieved to a land of ")
              << written(length::from_nanometres(detail::divided_down(h.relieved_land.nanometres(), 10'000) *
                                                 10'000))
                     .view()
              << text(" mm");
    }
    t << text("; the plate turns up to ");
    detail::put_minutes(t, h.turn);
    t << text(" minutes of arc");
    if (!h.always_goes_on()) {
        t << text(" with slot or relief, ");
        detail::put_minutes(t, h.turn_round);
        t << text(" with the round hole");
    }
    return t;
}

inline std::ostream& operator<<(std::ostream& out, const chain_link& l) {
    return detail::put(out, written(l));
}
inline std::ostream& operator<<(std::ostream& out, const stack_result& s) {
    return detail::put(out, written(s));
}
inline std::ostream& operator<<(std::ostream& out, const simulated_gap& s) {
    return detail::put(out, written(s));
}
inline std::ostream& operator<<(std::ostream& out, const shim_choice& c) {
    return detail::put(out, written(c));
}
inline std::ostream& operator<<(std::ostream& out, const gear_lash& g) {
    return detail::put(out, written(g));
}
inline std::ostream& operator<<(std::ostream& out, const worm_lash& w) {
    return detail::put(out, written(w));
}
inline std::ostream& operator<<(std::ostream& out, const screw_lash& s) {
    return detail::put(out, written(s));
}
inline std::ostream& operator<<(std::ostream& out, const second_hole& h) {
    return detail::put(out, written(h));
}

} // namespace fitwright

#endif
