#ifndef FITWRIGHT_IO_CANDIDATE_HPP
#define FITWRIGHT_IO_CANDIDATE_HPP

#include <fitwright/callout/write.hpp>
#include <fitwright/choose/choose.hpp>
#include <fitwright/io/put.hpp>
#include <fitwright/io/three_figures.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail {

using candidate_text = fixed_text<5999>;

/// "2.3 um", "1.2 mm3/s", "0.4 % of the stroke", "1.3 times", "400 N".
[[nodiscard]] constexpr fixed_text<63> amount(double number, margin_unit in) noexcept {
    fixed_text<63> t;
    switch (in) {
    case margin_unit::metres: return t << three_figures(number * 1e6).view() << text(" um");
    case margin_unit::cubic_metres_per_second:
        return t << three_figures(number * 1e9).view() << text(" mm3/s");
    case margin_unit::percent: return t << three_figures(number).view() << text(" % of the stroke");
    case margin_unit::times: return t << three_figures(number).view() << text(" times");
    case margin_unit::newtons: return t << three_figures(number).view() << text(" N");
    }
    return t;
}

/// "yes, 2 um to spare", "no, by 3 um".
template <class Text> constexpr void put_end(Text& t, text which, const want_at_end& e, margin_unit in) {
    t << which << in_words(e.holds);
    if (!e.margin) return;
    if (e.holds == holding::yes) t << text(", ") << amount(*e.margin, in).view() << text(" to spare");
    else if (*e.margin < 0) t << text(", misses by ") << amount(-*e.margin, in).view();
}

/// "8 H7/f7", or what of it is of a class, and limits else.
template <class Text> constexpr void put_call_out(Text& t, const candidate& c) {
    if (c.hole_class.is_given() && c.shaft_class.is_given()) {
        t << written(c.hole.nominal(), class_pair{c.hole_class.given(), c.shaft_class.given()}).view();
        return;
    }
    const auto put_part = [&](text which, const auto& limits, const auto& of) {
        t << which;
        if (of.is_given()) t << written(limits.nominal(), of.given()).view() << text(", ");
        t << written(limits.lower_limit()).view() << text(" to ") << written(limits.upper_limit()).view();
    };
    put_part("hole ", c.hole, c.hole_class);
    put_part("; shaft ", c.shaft, c.shaft_class);
    t << text(" mm");
}

template <class Text> constexpr void put_window(Text& t, clearance_window w) {
    t << written(w.least).view() << text(" to ") << written(w.most).view() << text(" mm");
}

/// "a clearance of 0.003 to 0.02 mm", "a clearance up to 0.02 mm", "no clearance: …".
template <class Text> constexpr void put_allowed(Text& t, clearance_window w) {
    if (w.least > w.most) {
        t << text("none: too tight below ") << written(w.least).view() << text(" mm, too loose above ")
          << written(w.most).view() << text(" mm");
        return;
    }
    t << text("a clearance ");
    if (w.least > -no_bound) t << text("from ") << written(w.least).view() << text(" mm ");
    if (w.most < no_bound) t << text("up to ") << written(w.most).view() << text(" mm");
    else t << text("up");
}

template <class Text> constexpr void put_figures(Text& t, const candidate& c) {
    if (c.hot) {
        const hot_moment& tight = c.hot->tightest;
        const hot_moment& loose = c.hot->loosest;
        t << text("\n  tightest ") << tight.state << text(", ") << written(tight.fit.min_clearance()).view()
          << text(" mm; loosest ") << loose.state << text(", ") << written(loose.fit.max_clearance()).view()
          << text(" mm");
    }
    if (c.leak)
        t << text("\n  leaks ") << three_figures(c.leak->least.flow.value() * 1e9).view() << text(" to ")
          << three_figures(c.leak->most.flow.value() * 1e9).view() << text(" mm3/s");
    if (c.film)
        t << text("\n  film ")
          << written(c.film->least_film(), {.unit = written_unit::um, .decimals = 2}).view()
          << text(" um at least, limit ")
          << written(c.film->limit_film, {.unit = written_unit::um, .decimals = 2}).view() << text(" um; ")
          << in_words(c.film->regime);
    const auto put_press = [&](const press_result& r) {
        t << text("\n  interference ") << written(r.at_20.interference.least.value).view() << text(" to ")
          << written(r.at_20.interference.most.value).view() << text(" mm; grips ")
          << three_figures(r.in_service.axial_grip.least.value()).view() << text(" N at least; press up to ")
          << three_figures(r.press_in_force.value()).view() << text(" N");
    };
    if (c.pressed) put_press(*c.pressed);
    else if (c.plug) put_press(c.plug->pressed);
}

template <class Text> constexpr void put_making(Text& t, const candidate& c) {
    if (c.plan) {
        t << text("\n  hole: ");
        bool is_first = true;
        for (const hole_step& s : c.plan->steps()) {
            if (s.operation == hole_operation::centre) continue;
            t << text(is_first ? "" : ", then ") << s.tool.name().view();
            is_first = false;
        }
        t << text(": ");
        put_window(t, {c.plan->least(), c.plan->most()});
    } else if (c.plan.error().code() != error_code::not_asked) {
        t << text("\n  hole: ") << c.plan.error().message();
    }
    if (c.gauge)
        t << text("\n  plug: GO ") << written(c.gauge->go.lower_limit()).view() << text(" to ")
          << written(c.gauge->go.upper_limit()).view() << text(", NOT GO ")
          << written(c.gauge->not_go.lower_limit()).view() << text(" to ")
          << written(c.gauge->not_go.upper_limit()).view() << text(" mm");
    if (c.ring)
        t << text("\n  ring: GO ") << written(c.ring->go.lower_limit()).view() << text(" to ")
          << written(c.ring->go.upper_limit()).view() << text(", NOT GO ")
          << written(c.ring->not_go.lower_limit()).view() << text(" to ")
          << written(c.ring->not_go.upper_limit()).view() << text(" mm");
    const auto put_readings = [&](text which, const auto& readings) {
        if (readings)
            t << which << written(readings->lower_limit()).view() << text(" to ")
              << written(readings->upper_limit()).view() << text(" mm");
        else if (readings.error().code() != error_code::not_asked) t << which << readings.error().message();
    };
    put_readings("\n  accept hole readings ", c.hole_readings);
    put_readings("\n  accept shaft readings ", c.shaft_readings);
}

template <class Text> constexpr void put_reasons(Text& t, const candidate& c) {
    for (const bool against : {false, true}) {
        const auto put = [&](bool is_against, text words) {
            if (is_against == against) t << text(against ? "\n  against: " : "\n  for: ") << words;
        };
        c.reasons.for_each([&](choice_reason r) { put(speaks_against(r), in_words(r)); });
        c.fit_reasons.for_each([&](fit_reason r) { put(speaks_against(r), in_words(r)); });
    }
}

template <class Text> constexpr void put_doubts(Text& t, const candidate& c) {
    const auto put = [&](auto doubts) { put_each(t, "\n  mind: ", doubts); };
    if (c.hot) put(c.hot->doubts);
    if (c.film) put(c.film->doubts), put(c.film->viscosity_doubts);
    if (c.leak) put(c.leak->doubts);
    if (c.pressed) put(c.pressed->doubts);
    else if (c.plug) put(c.plug->doubts);
    if (c.plan) put(c.plan->doubts());
    put_each(t, "\n  care: ", c.take_care);
}

} // namespace detail

/// "holds oil: tight end yes, 9.2 % of the stroke to spare; loose end no, misses by 31 % of the stroke; …".
[[nodiscard]] constexpr fixed_text<399> written(const want_answer& a) noexcept {
    fixed_text<399> t;
    t << in_words(a.wanted);
    detail::put_end(t, ": tight end ", a.tight, a.in);
    detail::put_end(t, "; loose end ", a.loose, a.in);
    if (a.off > length()) {
        t << text("; it allows ");
        detail::put_allowed(t, a.allows);
    }
    return t;
}
inline std::ostream& operator<<(std::ostream& out, const want_answer& a) {
    return detail::put(out, written(a));
}

/// The pair, its clearances, its wants one a line, what the other rooms say of it, what speaks for it and
/// against it, and all doubts and cautions.
[[nodiscard]] constexpr detail::candidate_text written(const candidate& c) noexcept {
    detail::candidate_text t;
    detail::put_call_out(t, c);
    t << text(": clearance ");
    detail::put_window(t, {c.pair().min_clearance(), c.pair().max_clearance()});
    t << text(" at 20 C");
    for (const want_answer& a : c.answers()) t << text("\n  ") << written(a).view();
    detail::put_figures(t, c);
    detail::put_making(t, c);
    detail::put_reasons(t, c);
    t << text("\n  ") << in_words(c.err);
    detail::put_doubts(t, c);
    return t;
}
inline std::ostream& operator<<(std::ostream& out, const candidate& c) {
    return detail::put(out, written(c));
}

/// Whether all wants hold, or what stops the best; then the candidates.
template <std::size_t Capacity> std::ostream& operator<<(std::ostream& out, const choices<Capacity>& list) {
    if (list.hold_all()) out << "all wants hold:";
    else if (const auto stop = list.best().stopped_by()) {
        out << "no pair holds all wants; the nearest is stopped by '"
            << std::string_view(in_words(stop->wanted)) << '\'';
        if (stop->off > length())
            out << ", " << std::string_view(written(stop->off, {.unit = written_unit::um}).view())
                << " um beyond";
        out << ':';
    }
    int place = 0;
    for (const candidate& c : list) out << '\n' << ++place << ". " << c;
    return out;
}

} // namespace fitwright

#endif
