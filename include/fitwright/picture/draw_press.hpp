#ifndef FITWRIGHT_PICTURE_DRAW_PRESS_HPP
#define FITWRIGHT_PICTURE_DRAW_PRESS_HPP

#include <fitwright/io/three_figures.hpp>
#include <fitwright/picture/chart.hpp>
#include <fitwright/picture/checks.hpp>
#include <fitwright/picture/draw.hpp>
#include <fitwright/picture/press_picture.hpp>

namespace fitwright {

namespace detail::svg {

inline constexpr int press_points = 25; ///< of each curve

/// Least and most of something over the interference, in whole pascals or nanometres.
struct press_curve {
    range<std::int64_t> at_20[press_points];
    range<std::int64_t> in_service[press_points];
};

/// What a state comes to at the ends of the interference.
struct press_ends {
    range<double> pascals;
    range<length> moves;
};

/// A press_picture, worked out.
struct press_chart {
    text title;
    written_unit unit;
    bool names_doubts;
    range<length> interference;
    press_curve pressure;
    press_curve movement;
    press_ends at_20;
    press_ends in_service;
    bool closes_bore; ///< false of a solid shaft: then the hub's outside is what is shown
    bool has_service; ///< false where it works at 20 °C, standing still
    holding holds;
    flags<press_doubt> doubts;
};

[[nodiscard]] inline text name_of(const press_chart& h) noexcept {
    return h.title.empty() ? text("Pressure and closing-in over the interference") : h.title;
}

[[nodiscard]] constexpr text what_moves(const press_chart& h) noexcept {
    return h.closes_bore ? text("the bore closes by ") : text("the hub grows by ");
}

/// "at 20 °C: 13.2 to 41.7 MPa, the bore closes by 3.1 to 9.8 µm".
[[nodiscard]] inline phrase ends_in_words(const press_chart& h, const press_ends& e, text when) noexcept {
    const number_format f{.unit = h.unit,
                          .decimals = h.unit == written_unit::um ? 1 : number_format::as_needed};
    return phrase() << when << text(": ") << three_figures(e.pascals.least / 1e6).view() << text(" to ")
                    << three_figures(e.pascals.most / 1e6).view() << text(" MPa, ") << what_moves(h)
                    << written(e.moves.least, f).view() << text(" to ") << written(e.moves.most, f).view()
                    << text(" ") << sign_of(h.unit);
}

inline void describe(canvas& c, const press_chart& h) {
    c << "Interference from " << written(h.interference.least, {.unit = h.unit}).view() << " to "
      << written(h.interference.most, {.unit = h.unit}).view() << " " << sign_of(h.unit) << " on diameter; "
      << ends_in_words(h, h.at_20,
                       "at 20 \xC2\xB0"
                       "C")
             .view();
    if (h.has_service) c << "; " << ends_in_words(h, h.in_service, "in service").view();
    c << ".";
}

inline constexpr px press_left = px::of(58);
inline constexpr px press_right = px::of(348);
inline constexpr px press_height = px::of(110);

inline constexpr stroke cold_band{.colour = ink, .width = {120}, .dashes = "", .fill = chart_tint};
inline constexpr stroke service_band{.colour = alarm_ink, .width = {180}, .dashes = "6 3"};

/// One of the two charts. Moves `c.down` below it.
template <class Label>
void press_panel(canvas& c, const press_chart& h, const press_curve& curve, text head, std::int64_t base,
                 const Label& label) {
    c.down += px::of(17);
    c.write({margin, c.down - px::of(3)}, head, {.written = {.size = px::of(12), .is_bold = true}});
    const px top = c.down + px::of(8);
    scale heights{0, 0, top + press_height, top};
    for (int i = 0; i < press_points; ++i) {
        heights.include(curve.at_20[i].most);
        if (h.has_service) heights.include(curve.in_service[i].most);
    }
    if (heights.high == 0) heights.high = base * 10;
    rule(c, {heights, press_left, press_right}, base, label);
    const auto put = [&](const char* kind, const range<std::int64_t>* points, const stroke& s) {
        const auto x = [&](int i) {
            return press_left + (press_right - press_left) * i / (press_points - 1);
        };
        band(
            c, kind, press_points,
            [&](int i) {
                return spot{x(i), heights.at(points[i].most)};
            },
            [&](int i) {
                return spot{x(i), heights.at(points[i].least)};
            },
            s);
    };
    put("cold", curve.at_20, cold_band);
    if (h.has_service) put("service", curve.in_service, service_band);
    c.line("base", {press_left, heights.at_low}, {press_right, heights.at_low}, {.width = {120}});
    c.down = heights.at_low + px::of(8);
}

inline void paint(canvas& c, const press_chart& h) {
    if (!h.title.empty()) heading(c, h.title);
    press_panel(c, h, h.pressure, "pressure between the parts, MPa", 1000,
                [](std::int64_t pascals) { return three_figures(static_cast<double>(pascals) / 1e6); });
    phrase head;
    head << text(h.closes_bore ? "the bore closes by, " : "the hub grows by, ") << sign_of(h.unit);
    press_panel(c, h, h.movement, head.view(), round_base(h.unit),
                [&](std::int64_t n) { return written(length::from_nanometres(n), {.unit = h.unit}); });

    const look how{.written = {.size = px::of(12)}, .colour = soft_ink};
    look at_right = how;
    at_right.at = anchor::end;
    c.down += px::of(12);
    const px half = (press_right - press_left) / 2 - px::of(4);
    c.write({press_left, c.down}, written(h.interference.least, {.unit = h.unit}).view(), how, half);
    c.write({press_right, c.down}, written(h.interference.most, {.unit = h.unit}).view(), at_right, half);
    c.down += px::of(4);
    look middle = how;
    middle.at = anchor::middle;
    c.down += line_height;
    c.write({(press_left + press_right) / 2, c.down - px::of(4)},
            (phrase() << text("interference on diameter, ") << sign_of(h.unit)).view(), middle);

    c.down += px::of(4);
    const auto patch = [&](const stroke& s) {
        return [&c, s](spot at) {
            c.box("patch", {at.x - px::of(10), at.y - px::of(5), at.x + px::of(10), at.y + px::of(5)}, s);
        };
    };
    row(c,
        ends_in_words(h, h.at_20,
                      "at 20 \xC2\xB0"
                      "C")
            .view(),
        patch(cold_band));
    if (h.has_service) row(c, ends_in_words(h, h.in_service, "in service").view(), patch(service_band));
    if (h.holds != holding::not_asked)
        row(c, (phrase() << text("holds the load: ") << in_words(h.holds)).view());
    if (h.names_doubts) doubts(c, h.doubts);
    c.down += px::of(2);
    note(c, "Lower edges: smoothed, the weaker end; upper edges: not smoothed. To scale.");
}

} // namespace detail::svg

/// Checked and worked out, for `draw`.
[[nodiscard]] inline result<detail::svg::press_chart> prepared(const press_picture& p) noexcept {
    using namespace detail::svg;
    const auto whole = press(p.of);
    if (!whole) return whole.error();
    const range<diametral_interference> i = p.of.seat.interference();
    if (i.least.value >= i.most.value || is_beyond(i.most.value, i.least.value))
        return error::composer(error_code::nothing_to_draw)
               << "an interference from " << written(i.least.value).view() << " to "
               << written(i.most.value).view()
               << " mm has no range to draw; allowed: the least first, and below the most";

    const bool closes_bore = p.of.shaft.bore > length();
    const auto ends = [&](const pressed_state& s) -> press_ends {
        return {{s.joint_pressure.least.value(), s.joint_pressure.most.value()},
                closes_bore ? s.bore_closes_by : s.hub_grows_by};
    };
    press_chart h{.title = p.title,
                  .unit = p.unit,
                  .names_doubts = p.names_doubts,
                  .interference = {i.least.value, i.most.value},
                  .pressure = {},
                  .movement = {},
                  .at_20 = ends(whole->at_20),
                  .in_service = ends(whole->in_service),
                  .closes_bore = closes_bore,
                  .has_service = whole->in_service.joint_pressure != whole->at_20.joint_pressure,
                  .holds = whole->holds(),
                  .doubts = whole->doubts};
    joint one = p.of;
    for (int k = 0; k < press_points; ++k) {
        const std::int64_t into = (i.most.value - i.least.value).nanometres() * k / (press_points - 1);
        const diametral_interference here(i.least.value + length::from_nanometres(into));
        one.seat = press_seat(p.of.seat.diameter(), here);
        const auto r = press(one);
        if (!r) return r.error();
        const auto put = [&](const pressed_state& s, range<std::int64_t>& pascals,
                             range<std::int64_t>& moves) {
            const press_ends e = ends(s);
            pascals = {static_cast<std::int64_t>(e.pascals.least + 0.5),
                       static_cast<std::int64_t>(e.pascals.most + 0.5)};
            moves = {e.moves.least.nanometres(), e.moves.most.nanometres()};
        };
        put(r->at_20, h.pressure.at_20[k], h.movement.at_20[k]);
        put(r->in_service, h.pressure.in_service[k], h.movement.in_service[k]);
    }
    return h;
}

} // namespace fitwright

#endif
