#ifndef FITWRIGHT_PICTURE_ZONE_PICTURE_HPP
#define FITWRIGHT_PICTURE_ZONE_PICTURE_HPP

#include <fitwright/fit.hpp>
#include <fitwright/thermal/hot_fit.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace detail::svg {
struct zones;
}

/// Something that may be marked on a picture: nothing, unless one is given.
template <class Value> class marked {
public:
    constexpr marked() noexcept : nothing_() {}
    constexpr marked(const Value& value) noexcept : value_(value), is_there_(true) {}

    constexpr explicit operator bool() const noexcept { return is_there_; }
    constexpr const Value& operator*() const noexcept { return value_; }
    constexpr const Value* operator->() const noexcept { return &value_; }

private:
    union {
        char nothing_;
        Value value_;
    };
    bool is_there_ = false;
};

/// What to say of one part besides its limits.
template <side Side> struct shown_part {
    text name = {};                      ///< "plunger"; may be empty
    marked<length> target = {};          ///< what to aim at
    marked<measured<Side>> reading = {}; ///< what the part measures, with its uncertainty as a bar
    /// True where the limits are a reading and its uncertainty, with nothing to work to.
    bool is_measured = false;
};

/// The tolerance intervals of a fit beside each other, after the figures of ISO 286-1: the zero line of the
/// nominal size, the intervals to scale, limits in full with their deviations, both clearances as dimensions.
///
///     const zone_picture slide{.of = "12 H7/g6"_fit, .hole = {.name = "valve body", .target = 12.009_mm}};
///     const auto drawn = draw(slide, [&](text piece) { file << piece; });
///
/// Where a gap is much longer than the intervals the picture is broken across and says so; no interval is ever
/// drawn at another scale. Limits and clearances are written in full; clearances at temperature to 0.1 um or
/// 0.00001 in, outwards. Texts are looks at the caller's.
/// Error: limits the wrong way round; something to draw more than 10 m from the nominal size.
struct zone_picture {
    fit of;
    text title = {}; ///< over the picture; may be empty
    shown_part<side::hole> hole = {};
    shown_part<side::shaft> shaft = {};
    marked<side> only = {};               ///< this part alone; the other is not looked at
    marked<hot_fit> hot = {};             ///< drawn as ghosts with broken outlines, if both parts are
    text hot_state = "hot";               ///< what to call that state
    written_unit unit = written_unit::mm; ///< of sizes; deviations are in um, or in thou
    bool names_doubts = true;             ///< false for a page that says them beside the picture

    /// What `draw` makes of it; in draw_zones.hpp.
    friend result<detail::svg::zones> prepared(const zone_picture& p) noexcept;
};

} // namespace fitwright

#endif
