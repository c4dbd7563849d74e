#ifndef FITWRIGHT_IO_PICTURE_HPP
#define FITWRIGHT_IO_PICTURE_HPP

#include <fitwright/picture.hpp>

#include <ostream>

namespace fitwright {

/// Draws a picture to a stream; neither its width nor its locale counts.
/// Error: as of `draw` into a sink; nothing is then written. Whether the stream took it, the stream tells.
template <detail::svg::drawable Picture>
[[nodiscard]] result<drawing> draw(const Picture& p, std::ostream& out) {
    return draw(p,
                [&out](text piece) { out.write(piece.data(), static_cast<std::streamsize>(piece.size())); });
}

} // namespace fitwright

#endif
