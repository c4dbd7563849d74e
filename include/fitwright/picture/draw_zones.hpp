#ifndef FITWRIGHT_PICTURE_DRAW_ZONES_HPP
#define FITWRIGHT_PICTURE_DRAW_ZONES_HPP

#include <fitwright/picture/draw.hpp>
#include <fitwright/picture/shapes.hpp>
#include <fitwright/picture/zones.hpp>

#include <initializer_list>

namespace fitwright::detail::svg {

/// "hole: valve body", with a patch of how its interval looks, in a column of its own.
template <side Side> void column_head(canvas& c, px left, px right, const shown_part<Side>& shown) {
    const area patch{left, c.down + px::of(3), left + px::of(12), c.down + px::of(15)};
    if (shown.is_measured) measured_interval(c, Side, patch);
    else interval(c, Side, patch);
    fixed_text<255> t;
    t << text(Side == side::hole ? "hole" : "shaft") << text(shown.is_measured ? ", measured" : "");
    if (!shown.name.empty()) t << text(": ") << shown.name;
    const look l{.written = {.is_bold = true}, .colour = Side == side::hole ? hole_ink : shaft_ink};
    paragraph(c, left + px::of(18), right, t.view(), l, 3);
}

/// A limit and, below it, how far it lies from the zero line.
struct limit_label {
    length size;
    length deviation;
    px middle;
};

/// Both limits of a part beside its interval; labels that would touch stand further apart than their limits.
template <side Side> void labels(canvas& c, const zones& z, const size_limits<Side>& l) {
    constexpr bool is_hole = Side == side::hole;
    const bool from_zero = l.nominal() == z.zero;
    const px height = px::of(from_zero ? 31 : 16);
    limit_label upper{l.upper_limit(), l.upper_deviation(), z.at(l.upper_limit())};
    limit_label lower{l.lower_limit(), l.lower_deviation(), z.at(l.lower_limit())};

    const px apart = height + px::of(3);
    if (lower.middle - upper.middle < apart) {
        const px half = (apart - (lower.middle - upper.middle)) / 2;
        upper.middle += -half;
        lower.middle += half;
        const px highest = z.top;
        const px lowest = z.top + z.axis.extent();
        const px too_high = highest - upper.middle;
        const px too_low = lower.middle - lowest;
        const px shift = too_high > px() ? too_high : too_low > px() ? -too_low : px();
        upper.middle += shift;
        lower.middle += shift;
    }

    const px edge = is_hole ? hole_left : shaft_right;
    const px knee = is_hole ? edge - px::of(8) : edge + px::of(8);
    const px words_at = is_hole ? margin + label_width : paper_width - margin - label_width;
    const px foot = is_hole ? words_at + px::of(3) : words_at - px::of(3);
    for (const limit_label& one : {upper, lower}) {
        c.begin_path("leader") << "M" << spot{edge, z.at(one.size)} << "H" << knee << "L"
                               << spot{foot, one.middle};
        c.end_path({.colour = soft_ink, .width = {80}});
        const px first_line = one.middle + px::of(from_zero ? -3 : 5);
        look how{.at = is_hole ? anchor::end : anchor::start};
        c.write({words_at, first_line}, written(one.size, z.sizes).view(), how, label_width);
        if (!from_zero) continue;
        how.colour = soft_ink;
        const auto digits = written(one.deviation, z.deviations);
        const text deviation = one.deviation == length() ? text("0") : digits.view(); // ISO 129-1
        c.write({words_at, first_line + px::of(15)}, deviation, how, label_width);
    }
}

/// Target and reading of a part, on its interval.
template <side Side> void marks(canvas& c, const zones& z, const shown_part<Side>& shown) {
    const px left = Side == side::hole ? hole_left : shaft_left;
    const px right = Side == side::hole ? hole_right : shaft_right;
    const px middle = (left + right) / 2;
    if (shown.target) {
        const px y = z.at(*shown.target);
        c.line("aim", {left, y}, {right, y}, {.width = {160}});
        pointer(c, {right - px::of(8), y});
    }
    if (const auto& reading = shown.reading; reading) {
        const px upper = z.at(reading->size() + reading->uncertainty());
        const px lower = z.at(reading->size() - reading->uncertainty());
        const px cap = px::of(6);
        c.begin_path("halo") << "M" << spot{middle, upper} << "V" << lower;
        c.end_path({.colour = paper, .width = px::of(5)});
        c.begin_path("bar") << "M" << spot{middle - cap, upper} << "h12M" << spot{middle - cap, lower}
                            << "h12M" << spot{middle, upper} << "V" << lower;
        c.end_path({.width = {160}});
        diamond(c, {middle, z.at(reading->size())});
    }
}

/// The two clearances as dimensions between the intervals, each named by a letter over it.
inline void clearances(canvas& c, const zones& z, px names_at) {
    const fit& f = z.asked.of;
    const auto one = [&](const char* letter, const char* kind, px x, length hole, length shaft) {
        const px of_hole = z.at(hole);
        const px of_shaft = z.at(shaft);
        const px upper = of_hole < of_shaft ? of_hole : of_shaft;
        const stroke thin{.colour = soft_ink, .width = {60}};
        c.line("guide", {x, names_at + px::of(3)}, {x, upper},
               {.colour = soft_ink, .width = {80}, .dashes = "1 3"});
        c.line("extension", {hole_right, of_hole}, {x + px::of(4), of_hole}, thin);
        c.line("extension", {shaft_left, of_shaft}, {x - px::of(4), of_shaft}, thin);
        dimension(c, kind, x, of_hole, of_shaft);
        c.write({x, names_at}, letter, {.written = {.is_bold = true}, .at = anchor::middle});
    };
    one("a", "least", least_at, f.hole().lower_limit(), f.shaft().upper_limit());
    one("b", "most", most_at, f.hole().upper_limit(), f.shaft().lower_limit());
}

inline void zero_line(canvas& c, spot from, px to) {
    c.line("zero", from, {to, from.y}, {.width = {120}, .dashes = "10 3 2 3"});
}

/// What the marks of a part stand for.
template <side Side>
void rows_of(canvas& c, const zones& z, const size_limits<Side>& l, const shown_part<Side>& shown) {
    if (shown.target)
        row(c, target_in_words(z, shown).view(), [&](spot s) {
            c.line("aim", {s.x - px::of(10), s.y}, {s.x + px::of(8), s.y}, {.width = {160}});
            pointer(c, {s.x, s.y});
        });
    if (shown.reading) row(c, reading_in_words(z, l, shown).view(), [&](spot s) { diamond(c, s); });
}

inline void legend(canvas& c, const zones& z) {
    const zone_picture& p = z.asked;
    if (z.shows_both()) {
        lettered_row(c, "a", least_clearance(p.of, z.sizes).view());
        lettered_row(c, "b", most_clearance(p.of, z.sizes).view());
    }
    if (z.shows(side::hole)) rows_of(c, z, p.of.hole(), p.hole);
    if (z.shows(side::shaft)) rows_of(c, z, p.of.shaft(), p.shaft);
    if (p.hot) {
        row(c, hot_in_words(p).view(), [&](spot s) {
            ghost(c, side::hole, {s.x - px::of(11), s.y - px::of(5), s.x - px::of(2), s.y + px::of(6)});
            ghost(c, side::shaft, {s.x + px::of(2), s.y - px::of(5), s.x + px::of(11), s.y + px::of(6)});
        });
        if (p.names_doubts) doubts(c, p.hot->doubts);
    }
    phrase t;
    t << text("zero line: nominal size ") << written(z.zero, {.unit = p.unit}).view() << text(" ")
      << z.unit();
    row(c, t.view(), [&](spot s) { zero_line(c, {s.x - px::of(12), s.y}, s.x + px::of(12)); });

    phrase scale;
    const written_unit small_unit = unit_of_deviations(p.unit);
    const bool any_deviation = (z.shows(side::hole) && p.of.hole().nominal() == z.zero) ||
                               (z.shows(side::shaft) && p.of.shaft().nominal() == z.zero);
    scale << text("Limits in ") << (p.unit == written_unit::in ? text("inches") : sign_of(p.unit));
    if (any_deviation) scale << text(", deviations from nominal in ") << sign_of(small_unit);
    scale << text(z.axis.breaks() > 0 ? ". To scale, but for the gaps cut short." : ". To scale.");
    c.down += px::of(2);
    note(c, scale.view());
}

/// A part in its strip: its interval and its limits.
template <side Side>
void strip(canvas& c, const zones& z, const size_limits<Side>& l, const shown_part<Side>& shown) {
    const px left = Side == side::hole ? hole_left : shaft_left;
    const px right = Side == side::hole ? hole_right : shaft_right;
    const area a = z.area_of(l, left, right);
    if (shown.is_measured) measured_interval(c, Side, a);
    else interval(c, Side, a);
    labels(c, z, l);
}

inline void paint(canvas& c, zones z) {
    const zone_picture& p = z.asked;
    if (!p.title.empty()) heading(c, p.title);
    const px head = c.down;
    if (z.shows(side::hole)) column_head(c, margin, px::of(176), p.hole);
    const px below_hole = c.down;
    c.down = head;
    if (z.shows(side::shaft)) column_head(c, px::of(188), paper_width - margin, p.shaft);
    if (below_hole > c.down) c.down = below_hole;

    const px names_at = c.down + px::of(16);
    z.top = c.down + px::of(14) + label_room;
    const px bottom = z.top + z.axis.extent();
    if (p.hot) {
        ghost(c, side::hole, z.area_of(p.hot->hole, hole_left - ghost_wider, hole_right + ghost_wider));
        ghost(c, side::shaft, z.area_of(p.hot->shaft, shaft_left - ghost_wider, shaft_right + ghost_wider));
    }
    if (z.shows(side::hole)) strip(c, z, p.of.hole(), p.hole);
    if (z.shows(side::shaft)) strip(c, z, p.of.shaft(), p.shaft);
    zero_line(c, {hole_left - px::of(14), z.at(z.zero)}, shaft_right + px::of(14));
    if (z.shows_both()) clearances(c, z, names_at);
    if (z.shows(side::hole)) marks(c, z, p.hole);
    if (z.shows(side::shaft)) marks(c, z, p.shaft);
    z.axis.for_each_break(
        [&](px at) { break_between(c, along::width, px::of(108), px::of(252), bottom - at); });

    c.down = bottom + label_room + px::of(4);
    legend(c, z);
}

} // namespace fitwright::detail::svg

#endif
