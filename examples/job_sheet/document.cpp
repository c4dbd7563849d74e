#include "document.hpp"

#include <string_view>

namespace job_sheet {

namespace {

/// Walks through UTF-8 text and keeps count of the place.
class walker {
public:
    explicit walker(std::string_view text) : text_(text) {}

    [[nodiscard]] place here() const { return here_; }
    [[nodiscard]] bool at_end() const { return at_ == text_.size(); }
    [[nodiscard]] bool sees(std::string_view wanted) const { return text_.substr(at_).starts_with(wanted); }
    [[nodiscard]] bool sees_blank() const { return sees(" ") || sees("\t") || sees("\r") || sees("\n"); }

    /// Past `count` characters, or up to the end.
    void skip(std::size_t count) {
        for (; count > 0 && !at_end(); --count) {
            const bool line_ends = text_[at_] == '\n';
            do ++at_;
            while (!at_end() && (static_cast<unsigned char>(text_[at_]) & 0xC0) == 0x80);
            here_ = line_ends ? place{here_.line + 1, 1} : place{here_.line, here_.column + 1};
        }
    }

private:
    std::string_view text_;
    std::size_t at_ = 0;
    place here_;
};

/// Past one character of a basic string, which may be written as an escape.
void skip_maybe_escaped(walker& w) {
    while (w.sees("\\\n") || w.sees("\\\r") || w.sees("\\ ") || w.sees("\\\t")) { // the line goes on below
        w.skip(1);
        while (w.sees_blank()) w.skip(1);
    }
    if (w.sees("\\u")) w.skip(6);
    else if (w.sees("\\U")) w.skip(10);
    else if (w.sees("\\")) w.skip(2);
    else w.skip(1);
}

} // namespace

document::document(std::string text) : text_(std::move(text)) {
    if (text_.starts_with("\xEF\xBB\xBF")) text_.erase(0, 3); // a byte order mark takes no column
}

place document::inside_string(place opening, std::size_t character) const {
    walker w(text_);
    while (!w.at_end() && w.here() < opening) w.skip(1);

    const bool escapes = w.sees("\"");
    if (w.sees("\"\"\"") || w.sees("'''")) {
        w.skip(3);
        if (w.sees("\r\n")) w.skip(1);
        if (w.sees("\n")) w.skip(1);
    } else {
        w.skip(1);
    }
    for (std::size_t i = 1; i < character; ++i) {
        if (escapes) skip_maybe_escaped(w);
        else w.skip(1);
    }
    return w.here();
}

} // namespace job_sheet
