#ifndef FITWRIGHT_PICTURE_DRAW_PLAN_HPP
#define FITWRIGHT_PICTURE_DRAW_PLAN_HPP

#include <fitwright/picture/broken_axis.hpp>
#include <fitwright/picture/checks.hpp>
#include <fitwright/picture/draw.hpp>
#include <fitwright/picture/plan_picture.hpp>
#include <fitwright/picture/shapes.hpp>
#include <fitwright/picture/units.hpp>

namespace fitwright {

namespace detail::svg {

inline constexpr px ladder_left = px::of(12);
inline constexpr px ladder_width = px::of(336);
inline constexpr px ladder_break = px::of(36);
inline constexpr px rung_height = px::of(24);

/// A plan_picture with its scale.
struct plan_chart {
    plan_picture asked;
    broken_axis axis;

    [[nodiscard]] px at(length size) const noexcept { return ladder_left + axis.at(size); }
};

[[nodiscard]] inline text name_of(const plan_chart& p) noexcept {
    return p.asked.title.empty() ? text("The way to a hole, step by step") : p.asked.title;
}

/// "10 to 10.015 mm".
inline void put_sizes(phrase& t, length least, length most, written_unit u) noexcept {
    t << written(least, {.unit = u}).view() << text(" to ") << written(most, {.unit = u}).view() << text(" ")
      << sign_of(u);
}

/// "drill, 9.7 mm drill: 9.7702 to 9.8852 mm, leaves 0.259 mm".
[[nodiscard]] inline phrase step_in_words(const hole_step& s, written_unit u) noexcept {
    phrase t;
    t << in_words(s.operation) << text(", ") << s.tool.name().view();
    if (s.operation == hole_operation::centre) return t;
    t << text(": ");
    put_sizes(t, s.least, s.most, u);
    if (s.decides_size) t << text(", decides the size");
    else t << text(", leaves ") << written(s.counted_stock, {.unit = u}).view() << text(" ") << sign_of(u);
    return t;
}

[[nodiscard]] inline phrase wanted_in_words(const plan_chart& p) noexcept {
    phrase t;
    t << text("hole wanted: ");
    put_sizes(t, p.asked.of.wanted().lower_limit(), p.asked.of.wanted().upper_limit(), p.asked.unit);
    return t;
}

inline void describe(canvas& c, const plan_chart& p) {
    c.words(wanted_in_words(p).view());
    for (const hole_step& s : p.asked.of.steps()) c.words("; ").words(step_in_words(s, p.asked.unit).view());
    c << ".";
}

/// One step: its bar in front of the limits that are wanted.
inline void rung(canvas& c, const plan_chart& p, const hole_step& s) {
    const px top = c.down + px::of(1);
    const px bottom = top + rung_height;
    const hole_limits& wanted = p.asked.of.wanted();
    const area limits{p.at(wanted.lower_limit()), top, p.at(wanted.upper_limit()), bottom};
    c.line("axis", {ladder_left, bottom}, {ladder_left + p.axis.extent(), bottom}, {.colour = soft_ink});
    interval(c, side::hole, limits);
    c.box("step", {p.at(s.least), top + px::of(6), p.at(s.most), bottom - px::of(6)},
          {.colour = ink, .width = {150}, .dashes = "", .fill = s.decides_size ? shaft_tint : chart_tint});
    const px mean = p.at(s.mean);
    c.line("mean", {mean, top + px::of(3)}, {mean, bottom - px::of(3)}, {.width = {120}});
    p.axis.for_each_break([&](px at) {
        break_between(c, along::height, top - px::of(1), bottom + px::of(2), ladder_left + at);
    });
    c.down = bottom + px::of(5);
}

inline void paint(canvas& c, const plan_chart& p) {
    const hole_plan& plan = p.asked.of;
    if (!p.asked.title.empty()) heading(c, p.asked.title);
    row(c, wanted_in_words(p).view(), {.written = {.is_bold = true}, .colour = hole_ink}, [&](spot s) {
        interval(c, side::hole, {s.x - px::of(10), s.y - px::of(6), s.x + px::of(10), s.y + px::of(6)});
    });
    c.down += px::of(4);
    std::int64_t number = 0;
    for (const hole_step& s : plan.steps()) {
        lettered_row(c, (fixed_text<23>() << ++number).view(), step_in_words(s, p.asked.unit).view());
        if (s.operation != hole_operation::centre) rung(c, p, s);
    }
    c.down += px::of(2);
    phrase t;
    t << text("Bars from least to most to be expected, a stroke at the mean; the limits of the hole hatched");
    t << text(p.axis.breaks() > 0 ? ". To scale, but for the gaps cut short." : ". To scale.");
    if (plan.needs_trial_hole()) t << text(" Prove it by a trial hole.");
    note(c, t.view());
    if (p.asked.names_doubts) doubts(c, plan.doubts());
}

} // namespace detail::svg

/// Checked and worked out, for `draw`.
[[nodiscard]] inline result<detail::svg::plan_chart> prepared(const plan_picture& p) noexcept {
    using namespace detail::svg;
    const hole_limits& wanted = p.of.wanted();
    if (p.of.steps().empty())
        return error::composer(error_code::nothing_to_draw)
               << "the plan has no steps to draw; allowed is a plan of one step or more, as plan_hole makes it";
    if (const auto f = drawable_fit({wanted, {}}); !f && f.error().code() == error_code::limits_crossed)
        return f.error();
    plan_chart chart{.asked = p, .axis = {}};
    bool any_beyond = false;
    const auto see = [&](length least, length most) {
        any_beyond = any_beyond || least > most || is_beyond(least, wanted.nominal()) ||
                     is_beyond(most, wanted.nominal());
        chart.axis.occupy(least, most);
    };
    see(wanted.lower_limit(), wanted.upper_limit());
    for (const hole_step& s : p.of.steps())
        if (s.operation != hole_operation::centre) see(s.least, s.most);
    if (any_beyond) return too_far_to_draw();
    chart.axis.settle(ladder_width, px());
    const int breaks = chart.axis.breaks();
    chart.axis.settle(ladder_width - ladder_break * breaks, ladder_break);
    return chart;
}

} // namespace fitwright

#endif
