#ifndef FITWRIGHT_PICTURE_CANVAS_HPP
#define FITWRIGHT_PICTURE_CANVAS_HPP

#include <fitwright/picture/lettering.hpp>
#include <fitwright/picture/palette.hpp>
#include <fitwright/picture/sink.hpp>

namespace fitwright::detail::svg {

inline constexpr px paper_width = px::of(360); ///< a telephone's
inline constexpr px margin = px::of(6);

/// Where a word stands on its spot.
enum class anchor : std::uint8_t { start, middle, end };

/// How to write a word.
struct look {
    letters written = {};
    text colour = ink;
    anchor at = anchor::start;
};

/// How to draw a line.
struct stroke {
    text colour = ink;
    px width = px::of(1);
    text dashes = ""; ///< lengths of dash and gap; solid if empty
    text fill = "none";
};

/// Writes SVG to a sink, or nowhere to learn how much it will be. Elements carry a class beginning with
/// "fw-", and no id, so that any number of pictures can stand on one page.
class canvas {
public:
    explicit canvas(const picture_sink* out) noexcept : out_(out) {}

    /// Markup, as it is.
    canvas& operator<<(text markup) {
        bytes_ += markup.size();
        if (out_ != nullptr) (*out_)(markup);
        return *this;
    }
    canvas& operator<<(const char* markup) { return *this << text(markup); }
    canvas& operator<<(px p) { return *this << written(p).view(); }
    canvas& operator<<(spot s) { return *this << s.x << " " << s.y; }

    /// Somebody's words.
    canvas& words(text t) {
        escape(t, [this](text piece) { *this << piece; });
        return *this;
    }

    /// One line of words. A `widest` above zero squeezes what is wider.
    void write(spot s, text t, const look& l = {}, px widest = {}) {
        *this << "<text x=\"" << s.x << "\" y=\"" << s.y << "\"";
        if (l.written.size != letters{}.size) *this << " font-size=\"" << l.written.size << "\"";
        if (l.written.is_bold) *this << " font-weight=\"bold\"";
        if (!(l.colour == ink)) *this << " fill=\"" << l.colour << "\"";
        if (l.at == anchor::middle) *this << " text-anchor=\"middle\"";
        if (l.at == anchor::end) *this << " text-anchor=\"end\"";
        if (widest > px() && width_of(t, l.written) > widest)
            *this << " textLength=\"" << widest << "\" lengthAdjust=\"spacingAndGlyphs\"";
        *this << ">";
        words(t) << "</text>\n";
    }

    /// Begins a path: its data follow, then `end_path`.
    canvas& begin_path(const char* kind) { return *this << "<path class=\"fw-" << kind << "\" d=\""; }
    void end_path(const stroke& s) {
        *this << "\" fill=\"" << s.fill << "\" stroke=\"" << s.colour << "\"";
        if (s.width != px::of(1)) *this << " stroke-width=\"" << s.width << "\"";
        if (!s.dashes.empty()) *this << " stroke-dasharray=\"" << s.dashes << "\"";
        *this << "/>\n";
    }

    void line(const char* kind, spot from, spot to, const stroke& s = {}) {
        begin_path(kind) << "M" << from << "L" << to;
        end_path(s);
    }

    /// An upright rectangle; one without height still shows its outline.
    void box(const char* kind, const area& a, const stroke& s) {
        begin_path(kind) << "M" << a.left << " " << a.top << "H" << a.right << "V" << a.bottom << "H"
                         << a.left << "Z";
        end_path(s);
    }

    /// Lines at 45 degrees inside a rectangle.
    void hatch(const area& a, px apart, const stroke& s) {
        if (a.right <= a.left || a.bottom <= a.top) return;
        begin_path("hatch");
        const std::int64_t step = apart.hundredths;
        std::int64_t sum = ((a.left + a.top).hundredths / step + 1) * step; // of x and y along a line
        for (; sum < (a.right + a.bottom).hundredths; sum += step) {
            const px on_bottom = px{sum} - a.bottom;
            const px on_top = px{sum} - a.top;
            const px from = on_bottom > a.left ? on_bottom : a.left;
            const px to = on_top < a.right ? on_top : a.right;
            *this << "M" << from << " " << px{sum} - from << "L" << to << " " << px{sum} - to;
        }
        end_path(s);
    }

    [[nodiscard]] std::size_t bytes() const noexcept { return bytes_; }

    px down = px::of(4); ///< how far the paper is filled from the top

private:
    const picture_sink* out_;
    std::size_t bytes_ = 0;
};

} // namespace fitwright::detail::svg

#endif
