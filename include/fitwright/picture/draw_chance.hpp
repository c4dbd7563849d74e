#ifndef FITWRIGHT_PICTURE_DRAW_CHANCE_HPP
#define FITWRIGHT_PICTURE_DRAW_CHANCE_HPP

#include <fitwright/picture/chance_picture.hpp>
#include <fitwright/picture/chart.hpp>
#include <fitwright/picture/checks.hpp>
#include <fitwright/picture/draw.hpp>

#include <initializer_list>

namespace fitwright {

namespace detail::svg {

inline constexpr int hill_steps = 96; ///< columns of the hill

/// A chance_picture, worked out.
struct chance_chart {
    text title;
    written_unit unit;
    bool names_doubts;
    clearance_window window;
    clearance_window hill; ///< from where to where it is drawn
    length mean;
    length sigma;
    share_of_pairs shares;
    double interfering;
    std::int64_t heights[hill_steps + 1]; ///< of the curve, in thousandths of the highest
};

[[nodiscard]] inline text name_of(const chance_chart& h) noexcept {
    return h.title.empty() ? text("How often which clearance comes out") : h.title;
}

/// "12.3 %"; shares that are not quite nothing or all say so.
[[nodiscard]] constexpr fixed_text<31> share_in_words(double share) noexcept {
    fixed_text<31> t;
    if (share > 0 && share < 0.0005) return t << text("less than 0.1 %");
    if (share < 1 && share > 0.9995) return t << text("more than 99.9 %");
    const auto tenths = static_cast<std::int64_t>(share * 1000 + 0.5);
    return t << tenths / 10 << text(".") << tenths % 10 << text(" %");
}

[[nodiscard]] inline phrase inside_in_words(const chance_chart& h) noexcept {
    const number_format f{.unit = h.unit};
    return phrase() << share_in_words(h.shares.inside).view() << text(" of the pairs from ")
                    << written(h.window.least, f).view() << text(" to ") << written(h.window.most, f).view()
                    << text(" ") << sign_of(h.unit);
}

[[nodiscard]] inline phrase outside_in_words(const chance_chart& h) noexcept {
    return phrase() << share_in_words(h.shares.tighter).view() << text(" tighter, ")
                    << share_in_words(h.shares.looser).view() << text(" looser");
}

[[nodiscard]] inline phrase mean_in_words(const chance_chart& h) noexcept {
    const number_format f{.unit = h.unit, .decimals = is_inch(h.unit) ? 5 : 4};
    return phrase() << text("mean ") << written(h.mean, f).view() << text(", standard deviation ")
                    << written(h.sigma, f).view() << text(" ") << sign_of(h.unit);
}

inline void describe(canvas& c, const chance_chart& h) {
    c << inside_in_words(h).view() << "; " << outside_in_words(h).view() << "; " << mean_in_words(h).view()
      << "; " << share_in_words(h.interfering).view() << " interfere.";
}

inline constexpr px hill_left = px::of(24);
inline constexpr px hill_right = px::of(336);
inline constexpr px hill_height = px::of(140);

/// The hill on its scale of clearances, which runs to the right.
struct placed_hill {
    const chance_chart& of;
    scale along;
    px top;
    px bottom;

    [[nodiscard]] spot at(int step) const noexcept {
        const px x = along.at_low + (along.at_high - along.at_low) * step / hill_steps;
        return {x, bottom - px{(bottom - top).hundredths * of.heights[step] / 1000}};
    }
    /// The curve at some place between its columns.
    [[nodiscard]] px height_at(px x) const noexcept {
        const std::int64_t all = (along.at_high - along.at_low).hundredths;
        const std::int64_t into = (x - along.at_low).hundredths * hill_steps;
        const int step = static_cast<int>(into / all);
        if (step >= hill_steps) return at(hill_steps).y;
        const px left = at(step).y;
        return left + px{(at(step + 1).y - left).hundredths * (into - step * all) / all};
    }
};

/// Upright lines under the curve, where the pairs keep the window.
inline void window_hatch(canvas& c, const placed_hill& h) {
    const auto inside = [&](length l) {
        const std::int64_t n = l.nanometres();
        return h.along.at(n < h.along.low ? h.along.low : n > h.along.high ? h.along.high : n);
    };
    const px from = inside(h.of.window.least);
    const px to = inside(h.of.window.most);
    c.begin_path("inside") << "M" << spot{from, h.bottom};
    for (px x = from + px::of(2); x < to; x += px::of(4))
        c << "M" << spot{x, h.bottom} << "V" << h.height_at(x);
    c.end_path({.colour = hole_ink, .width = {150}});
    for (const length edge : {h.of.window.least, h.of.window.most}) {
        if (!h.along.has(edge.nanometres())) continue;
        const px x = h.along.at(edge.nanometres());
        c.line("edge", {x, h.top - px::of(8)}, {x, h.bottom + px::of(5)},
               {.colour = hole_ink, .width = px::of(2)});
    }
}

inline void paint(canvas& c, const chance_chart& h) {
    if (!h.title.empty()) heading(c, h.title);
    const px top = c.down + px::of(14);
    const px bottom = top + hill_height;
    const placed_hill hill{
        h, {h.hill.least.nanometres(), h.hill.most.nanometres(), hill_left, hill_right}, top, bottom};

    band(
        c, "hill", hill_steps + 1, [&](int i) { return hill.at(i); },
        [&](int i) {
            return spot{hill.at(i).x, bottom};
        },
        {.colour = ink, .width = {150}, .dashes = "", .fill = chart_tint});
    window_hatch(c, hill);
    c.line("base", {hill_left - px::of(8), bottom}, {hill_right + px::of(8), bottom}, {.width = {120}});
    if (hill.along.has(0)) {
        const px zero = hill.along.at(0);
        c.line("no-clearance", {zero, top - px::of(8)}, {zero, bottom + px::of(5)},
               {.colour = alarm_ink, .width = px::of(2), .dashes = "5 3"});
    }

    const written_unit fine = unit_of_deviations(h.unit);
    const std::int64_t step = round_step(hill.along, round_base(h.unit));
    std::int64_t first = hill.along.low / step * step;
    if (first < hill.along.low) first += step;
    for (std::int64_t n = first; n <= hill.along.high; n += step) {
        const px x = hill.along.at(n);
        c.line("tick", {x, bottom}, {x, bottom + px::of(5)});
        c.write({x, bottom + px::of(18)}, written(length::from_nanometres(n), {.unit = fine}).view(),
                {.written = {.size = px::of(12)}, .colour = soft_ink, .at = anchor::middle}, px::of(46));
    }

    c.down = bottom + px::of(26);
    row(c, inside_in_words(h).view(), [&](spot s) {
        c.begin_path("inside");
        for (int i = -8; i <= 8; i += 4) c << "M" << spot{s.x + px::of(i), s.y - px::of(6)} << "v12";
        c.end_path({.colour = hole_ink, .width = {150}});
    });
    row(c, outside_in_words(h).view(), [&](spot s) {
        c.box("hill", {s.x - px::of(10), s.y - px::of(5), s.x + px::of(10), s.y + px::of(5)},
              {.colour = ink, .width = {150}, .dashes = "", .fill = chart_tint});
    });
    row(c, mean_in_words(h).view());
    row(c,
        (phrase() << text("no clearance; ") << share_in_words(h.interfering).view() << text(" interfere"))
            .view(),
        [&](spot s) {
            if (!hill.along.has(0)) return;
            c.line("no-clearance", {s.x, s.y - px::of(7)}, {s.x, s.y + px::of(7)},
                   {.colour = alarm_ink, .width = px::of(2), .dashes = "5 3"});
        });
    if (h.names_doubts) doubts(c, h.shares.doubts);
    c.down += px::of(2);
    note(
        c,
        (phrase() << text("Clearance in ") << sign_of(fine) << text("; the higher, the more often.")).view());
}

} // namespace detail::svg

/// Checked and worked out, for `draw`.
[[nodiscard]] inline result<detail::svg::chance_chart> prepared(const chance_picture& p) noexcept {
    using namespace detail::svg;
    if (const auto f = drawable_fit(p.of); !f) return f.error();
    const auto shares = probability(p.of, p.window, p.spread);
    if (!shares) return shares.error();
    const auto pairs = clearances(p.of, p.spread);
    if (!pairs) return pairs.error();

    chance_chart h{p.title,
                   p.unit,
                   p.names_doubts,
                   p.window,
                   {},
                   pairs->mean(),
                   pairs->sigma(),
                   *shares,
                   pairs->share_interfering(),
                   {}};
    constexpr double rare = 2e-4; // of the pairs, at either end
    const auto least = pairs->quantile(rare);
    const auto most = pairs->quantile(1 - rare);
    if (!least) return least.error();
    if (!most) return most.error();
    h.hill = {*least, *most};
    length reach = h.hill.most - h.hill.least;
    if (reach < length::from_nanometres(200)) reach = length::from_nanometres(200);
    h.hill = {h.hill.least - reach / 12, h.hill.most + reach / 12};
    const clearance_window beside{h.hill.least - reach, h.hill.most + reach};
    for (const length edge : {p.window.least, p.window.most, length()}) { // shown if it is not far off
        if (edge < h.hill.least && edge > beside.least) h.hill.least = edge - reach / 12;
        if (edge > h.hill.most && edge < beside.most) h.hill.most = edge + reach / 12;
    }

    // The height of the curve at a place is the share of a column about it.
    const length span = h.hill.most - h.hill.least;
    double column[hill_steps + 1];
    double highest = 0;
    double before = pairs->share_below(h.hill.least - span / (2 * hill_steps));
    for (int i = 0; i <= hill_steps; ++i) {
        const length end =
            h.hill.least + length::from_nanometres(span.nanometres() * (2 * i + 1) / (2 * hill_steps));
        const double upto = pairs->share_below(end);
        column[i] = upto > before ? upto - before : 0;
        if (column[i] > highest) highest = column[i];
        before = upto;
    }
    for (int i = 0; i <= hill_steps; ++i)
        h.heights[i] = highest > 0 ? static_cast<std::int64_t>(column[i] / highest * 1000 + 0.5) : 0;
    return h;
}

} // namespace fitwright

#endif
