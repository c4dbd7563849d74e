#ifndef FITWRIGHT_IO_PUT_HPP
#define FITWRIGHT_IO_PUT_HPP

#include <fitwright/error.hpp>
#include <fitwright/flags.hpp>
#include <fitwright/text.hpp>

#include <ostream>
#include <string_view>

namespace fitwright {

namespace detail {

/// Through the stream's own operator, so that width and fill hold; no locale is asked.
template <std::size_t Capacity> std::ostream& put(std::ostream& out, const fixed_text<Capacity>& t) {
    return out << std::string_view(t);
}

/// The words of each flag of a set (doubts, cautions), with `before` in front of each: "\n  mind: ".
template <class Text, class Flag>
constexpr void put_each(Text& t, fitwright::text before, flags<Flag> set) noexcept {
    set.for_each([&](Flag flag) { t << before << in_words(flag); });
}

} // namespace detail

/// A caller's room for characters.
struct buffer {
    char* first; ///< where it begins
    std::size_t size;
};

/// Prints anything that can be `written` to a caller's buffer, with a zero behind it. The answer is a
/// look at the characters in the buffer.
/// Error: the buffer is too small; the message says how many bytes it takes. Nothing is then printed.
template <class Value> [[nodiscard]] constexpr result<text> print(buffer room, const Value& value) noexcept {
    const auto all = written(value);
    if (all.size() >= room.size)
        return error::composer(error_code::buffer_too_small)
               << "the buffer has " << static_cast<std::int64_t>(room.size) << " bytes; needed are "
               << static_cast<std::int64_t>(all.size() + 1);
    for (std::size_t i = 0; i < all.size(); ++i) room.first[i] = all.view()[i];
    room.first[all.size()] = '\0';
    return text(room.first, all.size());
}

} // namespace fitwright

#endif
