#ifndef FITWRIGHT_PICTURE_DRAW_HEAT_HPP
#define FITWRIGHT_PICTURE_DRAW_HEAT_HPP

#include <fitwright/picture/chart.hpp>
#include <fitwright/picture/checks.hpp>
#include <fitwright/picture/draw.hpp>
#include <fitwright/picture/heat_picture.hpp>

#include <initializer_list>

namespace fitwright {

namespace detail::svg {

inline constexpr int heat_points = 33; ///< of each curve

/// A state as it is drawn.
struct drawn_state {
    text name;
    double hole; ///< °C
    double shaft;
    clearance_window clearance;
};

/// A heat_picture, worked out.
struct heat_chart {
    text title;
    written_unit unit;
    bool names_doubts;
    drawn_state states[heat_picture::most_states];
    int size = 0;
    std::size_t tightest = 0;
    double coldest = 20; ///< of the curve, in °C
    double hottest = 20;
    clearance_window curve[heat_points]; ///< both parts equally warm
    bool has_curve = true;               ///< false where an expansion is not known on the way
    common_temperatures seizing;
    flags<thermal_doubt> doubts;
};

[[nodiscard]] inline text name_of(const heat_chart& h) noexcept {
    return h.title.empty() ? text("Clearance against temperature") : h.title;
}

/// "warm-up: hole 95 °C, shaft 60 °C: 0.021 to 0.0508 mm".
[[nodiscard]] inline phrase state_in_words(const heat_chart& h, int i) noexcept {
    const drawn_state& s = h.states[i];
    const auto hole = celsius_digits(s.hole);
    const auto shaft = celsius_digits(s.shaft);
    phrase t;
    t << (fixed_text<255>() << s.name).view();
    if (hole == shaft.view())
        t << text(", ") << hole.view()
          << text(" \xC2\xB0"
                  "C: ");
    else
        t << text(", hole ") << hole.view()
          << text(" \xC2\xB0"
                  "C, shaft ")
          << shaft.view()
          << text(" \xC2\xB0"
                  "C: ");
    put_outwards(t, h.states[i].clearance, h.unit);
    return t << text(" ") << sign_of(h.unit);
}

/// "heated together they may seize from 87.7 °C".
[[nodiscard]] inline phrase seizing_in_words(const common_temperature& way, text how) noexcept {
    phrase t;
    if (way.outcome == happening::at_20_degC_already)
        return t << text("the tightest pair interferes at 20 \xC2\xB0"
                         "C");
    t << text("both ") << how;
    if (way.is_possible())
        return t << text(": seizing ") << in_words(way.outcome) << text(", from ")
                 << celsius_digits((*way.earliest).value()).view()
                 << text(" \xC2\xB0"
                         "C");
    return t << text(": seizing ") << in_words(way.outcome) << text(", ")
             << celsius_digits(way.looked_upto.value()).view()
             << text(" \xC2\xB0"
                     "C");
}

inline void describe(canvas& c, const heat_chart& h) {
    c << "Clearance from least to most. ";
    for (int i = 0; i < h.size; ++i) c.words(state_in_words(h, i).view()) << ". ";
    c.words(seizing_in_words(h.seizing.heated, "heated").view()) << ".";
}

inline constexpr px heat_top_room = px::of(24);
inline constexpr px heat_height = px::of(156);
inline constexpr px curve_left = px::of(52);
inline constexpr px curve_right = px::of(190);
inline constexpr px states_left = px::of(204);
inline constexpr px states_right = px::of(354);

inline constexpr stroke may_be{.colour = ink, .width = {120}, .dashes = "", .fill = chart_tint};

/// Both parts equally warm: a band over the temperature, and where it first meets the ground.
inline void common_curve(canvas& c, const heat_chart& h, const scale& heights) {
    const auto x_at = [&](double celsius) {
        const double share = h.hottest > h.coldest ? (celsius - h.coldest) / (h.hottest - h.coldest) : 0.5;
        return curve_left + px{static_cast<std::int64_t>(
                                static_cast<double>((curve_right - curve_left).hundredths) * share + 0.5)};
    };
    const auto x_of = [&](int i) { return curve_left + (curve_right - curve_left) * i / (heat_points - 1); };
    if (h.has_curve)
        band(
            c, "band", heat_points,
            [&](int i) {
                return spot{x_of(i), heights.at(h.curve[i].most.nanometres())};
            },
            [&](int i) {
                return spot{x_of(i), heights.at(h.curve[i].least.nanometres())};
            },
            may_be);
    for (const common_temperature* way : {&h.seizing.heated, &h.seizing.cooled}) {
        if (!way->is_possible()) continue;
        const double at = (*way->earliest).value();
        if (at < h.coldest || at > h.hottest) continue;
        const spot foot{x_at(at), heights.at(0)};
        c.line("seizing", {foot.x, heights.at_high}, foot,
               {.colour = alarm_ink, .width = {120}, .dashes = "5 3"});
        c.begin_path("seizes-here") << "M" << spot{foot.x - px::of(5), foot.y} << "l5 -5l5 5l-5 5Z";
        c.end_path({.colour = alarm_ink, .width = px::of(1), .dashes = "", .fill = paper});
    }
    const px below = heights.at_low + px::of(20);
    const look how{.written = {.size = px::of(12)}, .colour = soft_ink};
    look at_right = how;
    at_right.at = anchor::end;
    c.write({curve_left, below},
            (celsius_digits(h.coldest) << text(" \xC2\xB0"
                                               "C"))
                .view(),
            how);
    c.write({curve_right, below},
            (celsius_digits(h.hottest) << text(" \xC2\xB0"
                                               "C"))
                .view(),
            at_right);
}

/// State by state: a bar each, its number below.
inline void state_bars(canvas& c, const heat_chart& h, const scale& heights) {
    const px apart = (states_right - states_left) / h.size;
    const px half = px::of(6);
    for (int i = 0; i < h.size; ++i) {
        const px middle = states_left + apart * i + apart / 2;
        c.box("state",
              {middle - half, heights.at(h.states[i].clearance.most.nanometres()), middle + half,
               heights.at(h.states[i].clearance.least.nanometres())},
              may_be);
        if (h.states[i].clearance.least < length()) { // what is below the ground shows as such
            const length most = h.states[i].clearance.most;
            const px upper = heights.at(most < length() ? most.nanometres() : 0);
            c.hatch(
                {middle - half, upper, middle + half, heights.at(h.states[i].clearance.least.nanometres())},
                px::of(5), {.colour = alarm_ink, .width = {90}});
        }
        c.write({middle, heights.at_low + px::of(20)},
                (fixed_text<7>() << static_cast<std::int64_t>(i + 1)).view(),
                {.written = {.is_bold = true}, .at = anchor::middle});
    }
}

inline void paint(canvas& c, const heat_chart& h) {
    if (!h.title.empty()) heading(c, h.title);
    c.down += px::of(15);
    const look head{.written = {.size = px::of(12), .is_bold = true}, .at = anchor::middle};
    c.write({(curve_left + curve_right) / 2, c.down}, "equally warm", head);
    c.write({(states_left + states_right) / 2, c.down}, "state by state", head);

    const px top = c.down + px::of(12);
    scale heights{0, 0, top + heat_height, top};
    const auto see = [&](const clearance_window& w) {
        heights.include(w.least.nanometres());
        heights.include(w.most.nanometres());
    };
    for (int i = 0; i < h.size; ++i) see(h.states[i].clearance);
    if (h.has_curve)
        for (const clearance_window& w : h.curve) see(w);
    if (heights.low == heights.high) heights.high = 1000;

    const written_unit fine = unit_of_deviations(h.unit);
    rule(c, {heights, curve_left, states_right}, round_base(h.unit),
         [&](std::int64_t n) { return written(length::from_nanometres(n), {.unit = fine}); });
    ground_line(c, curve_left, curve_right, heights.at(0));
    ground_line(c, states_left, states_right, heights.at(0));
    common_curve(c, h, heights);
    state_bars(c, h, heights);

    c.down = heights.at_low + px::of(28);
    for (int i = 0; i < h.size; ++i)
        lettered_row(c, (fixed_text<7>() << static_cast<std::int64_t>(i + 1)).view(),
                     state_in_words(h, i).view());
    row(c, "no clearance: below, the parts interfere, and what runs seizes",
        [&](spot s) { ground_line(c, s.x - px::of(12), s.x + px::of(12), s.y - px::of(3)); });
    const auto way = [&](const common_temperature& t, text how) {
        row(c, seizing_in_words(t, how).view(), [&](spot s) {
            c.begin_path("seizes-here") << "M" << spot{s.x - px::of(5), s.y} << "l5 -5l5 5l-5 5Z";
            c.end_path({.colour = alarm_ink, .width = px::of(1), .dashes = "", .fill = paper});
        });
    };
    way(h.seizing.heated, "heated");
    if (h.seizing.cooled.is_possible()) way(h.seizing.cooled, "cooled");
    if (h.names_doubts) doubts(c, h.doubts);
    c.down += px::of(2);
    phrase t;
    t << text("From least to most clearance, in ") << sign_of(fine) << text(", to scale.");
    if (!h.has_curve) t << text(" Equally warm: not drawn, an expansion is not known.");
    note(c, t.view());
}

} // namespace detail::svg

/// Checked and worked out, for `draw`.
[[nodiscard]] inline result<detail::svg::heat_chart> prepared(const heat_picture& p) noexcept {
    using namespace detail::svg;
    if (const auto f = drawable_fit(p.of); !f) return f.error();
    if (p.states.size() > heat_picture::most_states)
        return error::composer(error_code::too_many_to_draw)
               << "there are " << static_cast<std::int64_t>(p.states.size())
               << " states; a picture has room for up to "
               << static_cast<std::int64_t>(heat_picture::most_states);
    const auto worst = worst_moments(p.of, p.hole, p.shaft, p.states);
    if (!worst) return worst.error();
    const auto seizing = seizing_temperature(p.of, p.hole, p.shaft);
    if (!seizing) return seizing.error();

    heat_chart h{.title = p.title,
                 .unit = p.unit,
                 .names_doubts = p.names_doubts,
                 .states = {},
                 .curve = {},
                 .seizing = *seizing,
                 .doubts = worst->doubts | seizing->heated.doubts};
    h.tightest = worst->tightest.index;
    const auto reach = [&](double celsius) {
        if (celsius < h.coldest) h.coldest = celsius;
        if (celsius > h.hottest) h.hottest = celsius;
    };
    for (const thermal_state& s : p.states) {
        const auto hot = at_temperature(p.of, {p.hole, s.hole}, {p.shaft, s.shaft});
        if (!hot) return hot.error();
        h.states[h.size++] = {s.name, s.hole.value(), s.shaft.value(), hot->clearance};

        reach(s.hole.value());
        reach(s.shaft.value());
    }
    if (h.hottest - h.coldest < 40) reach(h.coldest + 40);
    if (seizing->heated.is_possible()) { // shown if it is not much further than the states
        const double seizes = (*seizing->heated.earliest).value();
        if (seizes < h.hottest + (h.hottest - h.coldest)) reach(seizes);
    }
    for (int i = 0; i < heat_points; ++i) {
        const temperature here = celsius(h.coldest + (h.hottest - h.coldest) * i / (heat_points - 1));
        const auto hot = at_temperature(p.of, {p.hole, here}, {p.shaft, here});
        h.has_curve = h.has_curve && hot.has_value();
        if (hot) h.curve[i] = hot->clearance;
    }
    return h;
}

} // namespace fitwright

#endif
