#ifndef FITWRIGHT_PICTURE_SINK_HPP
#define FITWRIGHT_PICTURE_SINK_HPP

#include <fitwright/text.hpp>

namespace fitwright {

/// Where a picture goes, piece by piece: anything that can be called with a `text`, such as
/// `[&](text piece) { file << piece; }`. A look at the caller's object, which has to outlive the drawing.
class picture_sink {
public:
    template <class Take>
        requires(!std::is_same_v<std::remove_cvref_t<Take>, picture_sink> && std::is_invocable_v<Take&, text>)
    picture_sink(Take&& take)
    noexcept
        : taker_(const_cast<void*>(static_cast<const void*>(__builtin_addressof(take)))),
          call_([](void* taker, text piece) {
              (*static_cast<std::remove_reference_t<Take>*>(taker))(piece);
          }) {}

    void operator()(text piece) const { call_(taker_, piece); }

private:
    void* taker_;
    void (*call_)(void*, text);
};

/// A caller's room for a picture.
struct picture_room {
    char* first; ///< where the room begins
    std::size_t size;
};

/// What was drawn. Width and height are the picture's natural size in pixels (a pixel is 1/96 in on paper).
struct drawing {
    std::size_t bytes; ///< of SVG
    int width;         ///< in pixels at its natural size
    int height;        ///< the same
};

} // namespace fitwright

#endif
