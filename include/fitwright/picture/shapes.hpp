#ifndef FITWRIGHT_PICTURE_SHAPES_HPP
#define FITWRIGHT_PICTURE_SHAPES_HPP

#include <fitwright/limits.hpp>
#include <fitwright/picture/canvas.hpp>

// The things a picture is put together from: intervals, marks, dimension arrows, a break, rows of words.

namespace fitwright::detail::svg {

/// A hole's interval is hatched, a shaft's tinted.
inline void interval(canvas& c, side part, const area& a) {
    const bool is_hole = part == side::hole;
    const stroke outline{.colour = is_hole ? hole_ink : shaft_ink,
                         .width = {a.top == a.bottom ? 350 : 150},
                         .dashes = "",
                         .fill = is_hole ? hole_tint : shaft_tint};
    c.box(is_hole ? "hole" : "shaft", a, outline);
    if (is_hole) c.hatch(a, px::of(7), {.colour = hole_ink, .width = {90}});
}

/// What a measured part may be: an outline of dots with a bar in the middle.
inline void measured_interval(canvas& c, side part, const area& a) {
    const text colour = part == side::hole ? hole_ink : shaft_ink;
    const px middle = (a.left + a.right) / 2;
    c.box(part == side::hole ? "hole" : "shaft", a,
          {.colour = colour, .width = {200}, .dashes = "2 3", .fill = paper});
    c.line("bar", {middle, a.top}, {middle, a.bottom}, {.width = {200}});
}

/// The same interval somewhere else: broken lines, nothing inside.
inline void ghost(canvas& c, side part, const area& a) {
    c.box(part == side::hole ? "hot-hole" : "hot-shaft", a,
          {.colour = part == side::hole ? hole_ink : shaft_ink, .width = {150}, .dashes = "5 3"});
}

/// A filled triangle whose tip points left.
inline void pointer(canvas& c, spot tip) {
    c.begin_path("target") << "M" << tip << "l8 -5v10Z";
    c.end_path({.colour = ink, .width = px::of(1), .dashes = "", .fill = ink});
}

/// A diamond.
inline void diamond(canvas& c, spot middle) {
    c.begin_path("reading") << "M" << spot{middle.x, middle.y - px::of(5)} << "l5 5l-5 5l-5 -5Z";
    c.end_path({.colour = paper, .width = px::of(1), .dashes = "", .fill = ink});
}

/// A dimension line from one height to another, its heads outside where it is too short to hold them.
inline void dimension(canvas& c, const char* kind, px x, px from, px to) {
    const px top = from < to ? from : to;
    const px bottom = from < to ? to : from;
    const bool has_room = bottom - top >= px::of(16);
    const px tail = has_room ? px() : px::of(9);
    c.line(kind, {x, top - tail}, {x, bottom + tail});
    c.begin_path("heads") << "M" << spot{x, top} << (has_room ? "l-3 7h6Z" : "l-3 -7h6Z") << "M"
                          << spot{x, bottom} << (has_room ? "l-3 -7h6Z" : "l-3 7h6Z");
    c.end_path({.colour = ink, .width = {50}, .dashes = "", .fill = ink});
}

/// Which way a break runs.
enum class along : std::uint8_t { width, height };

/// Two zigzags and nothing between them: the gap is longer than it looks. `from` to `to` along the way it runs,
/// `middle` across.
inline void break_between(canvas& c, along way, px from, px to, px middle) {
    const px step = px::of(8);
    const std::int64_t steps = (to - from).hundredths / step.hundredths;
    const auto place = [&](px across, std::int64_t i) {
        const px there = from + step * i;
        const px aside = across + px::of(i % 2 == 0 ? -2 : 2);
        return way == along::width ? spot{there, aside} : spot{aside, there};
    };
    const auto edge = [&](px across) {
        for (std::int64_t i = 0; i <= steps; ++i) c << (i == 0 ? "M" : "L") << place(across, i);
    };
    c.begin_path("gap");
    edge(middle - px::of(4));
    for (std::int64_t i = steps; i >= 0; --i) c << "L" << place(middle + px::of(4), i);
    c << "Z";
    c.end_path({.colour = paper, .width = {20}, .dashes = "", .fill = paper});
    c.begin_path("break");
    edge(middle - px::of(4));
    edge(middle + px::of(4));
    c.end_path({.colour = soft_ink});
}

inline constexpr px line_height = px::of(17);
inline constexpr px behind_symbol = px::of(34);

/// Words over as many lines as they take, at most `most_lines`; then three dots. Moves `c.down` behind them.
inline void paragraph(canvas& c, px left, px right, text words, const look& l = {}, int most_lines = 12) {
    for (int i = 0; i < most_lines && !words.empty(); ++i) {
        const bool is_last = i + 1 == most_lines;
        text line = next_line(words, right - left, l.written);
        if (line.empty() && words.empty()) break;
        c.down += line_height;
        const spot s{l.at == anchor::end ? right : left, c.down - px::of(4)};
        if (is_last && !words.empty()) {
            text again = line;
            line = next_line(again, right - left - px::of(16), l.written);
            fixed_text<511> cut;
            c.write(s, (cut << line << text("\xE2\x80\xA6")).view(), l);
            break;
        }
        c.write(s, line, l);
    }
}

/// A row of the legend without a symbol.
inline void row(canvas& c, text words, const look& l = {}) {
    paragraph(c, behind_symbol, paper_width - margin, words, l);
}

/// A row of the legend behind a symbol, which `symbol(middle of its place)` draws.
template <class Symbol> void row(canvas& c, text words, const look& l, const Symbol& symbol) {
    symbol(spot{px::of(18), c.down + line_height / 2});
    row(c, words, l);
}
template <class Symbol>
    requires std::is_invocable_v<const Symbol&, spot>
void row(canvas& c, text words, const Symbol& symbol) { row(c, words, {}, symbol); }

/// A row that begins with a letter, as the letter stands in the picture.
inline void lettered_row(canvas& c, text letter, text words) {
    row(c, words, [&](spot s) {
        c.write({s.x, s.y + px::of(5)}, letter, {.written = {.is_bold = true}, .at = anchor::middle});
    });
}

/// What to mind of the figures, each on its own: `set` is a set of doubts.
template <class Doubts> void doubts(canvas& c, const Doubts& set) {
    set.for_each([&](auto doubt) {
        fixed_text<511> t;
        row(c, (t << text("mind: ") << in_words(doubt)).view(),
            {.written = {.size = px::of(12)}, .colour = soft_ink});
    });
}

/// A note under a picture, in soft ink.
inline void note(canvas& c, text words) {
    paragraph(c, margin, paper_width - margin, words, {.written = {.size = px::of(12)}, .colour = soft_ink});
}

/// The title over a picture.
inline void heading(canvas& c, text words) {
    c.down += px::of(2);
    paragraph(c, margin, paper_width - margin, words, {.written = {.size = px::of(14), .is_bold = true}}, 3);
}

} // namespace fitwright::detail::svg

#endif
