#ifndef FITWRIGHT_PICTURE_DRAW_HPP
#define FITWRIGHT_PICTURE_DRAW_HPP

#include <fitwright/error.hpp>
#include <fitwright/picture/canvas.hpp>

namespace fitwright {

namespace detail::svg {

/// What can be drawn: `prepared(p)` checks it and works out what it takes, the rest draws that. Each
/// picture's own header has these for its type.
template <class Picture>
concept drawable = requires(const Picture& p, canvas& c) {
    paint(c, *prepared(p));
    describe(c, *prepared(p));
    name_of(*prepared(p));
};

template <class Prepared> drawing put_whole(const Prepared& p, const picture_sink* out, px height) {
    canvas c(out);
    c << "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " << paper_width << " " << height
      << "\" width=\"" << paper_width << "\" height=\"" << height << "\" role=\"img\" aria-label=\"";
    c.words(name_of(p)) << "\">\n<title>";
    c.words(name_of(p)) << "</title>\n<desc>";
    describe(c, p);
    c << "</desc>\n<path class=\"fw-paper\" d=\"M0 0H" << paper_width << "V" << height << "H0Z\" fill=\""
      << paper << "\"/>\n<g font-family=\"sans-serif\" font-size=\"" << letters{}.size << "\" fill=\"" << ink
      << "\">\n";
    paint(c, p);
    c << "</g>\n</svg>\n";
    return {c.bytes(), static_cast<int>(paper_width.hundredths / 100),
            static_cast<int>(height.hundredths / 100)};
}

/// How tall it comes out: it is painted nowhere once.
template <class Prepared> px height_of(const Prepared& p) {
    canvas nowhere(nullptr);
    paint(nowhere, p);
    return px::of((nowhere.down.hundredths + 99) / 100 + 8);
}

} // namespace detail::svg

/// Draws a picture as one SVG element that needs nothing else: no font, script, id or outside reference.
/// The same picture gives the same bytes. Either the whole of it goes to the sink or, on an error, nothing.
/// Error: as the picture's own header says.
template <detail::svg::drawable Picture>
[[nodiscard]] result<drawing> draw(const Picture& p, const picture_sink& out) {
    const auto ready = prepared(p);
    if (!ready) return ready.error();
    return detail::svg::put_whole(*ready, &out, detail::svg::height_of(*ready));
}

/// How many bytes a picture takes.
/// Error: as the picture's own header says.
template <detail::svg::drawable Picture> [[nodiscard]] result<std::size_t> bytes_of(const Picture& p) {
    const auto ready = prepared(p);
    if (!ready) return ready.error();
    return detail::svg::put_whole(*ready, nullptr, detail::svg::height_of(*ready)).bytes;
}

/// Draws a picture into a caller's room, with a zero behind it. The answer is a look at the characters.
/// Error: the room is too small; the message says how many bytes it takes, and nothing is drawn. As of `draw`.
template <detail::svg::drawable Picture>
[[nodiscard]] result<text> draw(const Picture& p, picture_room room) {
    const auto bytes = bytes_of(p);
    if (!bytes) return bytes.error();
    if (*bytes >= room.size)
        return error::composer(error_code::buffer_too_small)
               << "the room has " << static_cast<std::int64_t>(room.size) << " bytes; needed are "
               << static_cast<std::int64_t>(*bytes + 1);
    std::size_t used = 0;
    const auto keep = [&](text piece) {
        for (const char one : piece) room.first[used++] = one;
    };
    const auto drawn = draw(p, picture_sink(keep));
    if (!drawn) return drawn.error();
    room.first[used] = '\0';
    return text(room.first, used);
}

} // namespace fitwright

#endif
