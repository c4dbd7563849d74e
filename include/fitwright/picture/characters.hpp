#ifndef FITWRIGHT_PICTURE_CHARACTERS_HPP
#define FITWRIGHT_PICTURE_CHARACTERS_HPP

#include <fitwright/text.hpp>

// Names on a picture come from anybody: what is not UTF-8, what XML does not allow, and what would turn the
// direction of writing is shown as U+FFFD, so that no name can break the picture or reverse a number.

namespace fitwright::detail::svg {

/// A character of UTF-8 and the bytes it takes; 0xFFFD for what may not be shown.
struct character {
    std::uint32_t code;
    std::size_t bytes;
};

[[nodiscard]] constexpr bool may_be_shown(std::uint32_t code) noexcept {
    const bool is_control = code < 0x20 || (code >= 0x7F && code < 0xA0);
    const bool is_surrogate = code >= 0xD800 && code < 0xE000;
    const bool turns_direction = code == 0x200E || code == 0x200F || (code >= 0x202A && code <= 0x202E) ||
                                 (code >= 0x2066 && code <= 0x2069);
    return !is_control && !is_surrogate && !turns_direction && (code & 0xFFFE) != 0xFFFE && code <= 0x10FFFF;
}

[[nodiscard]] constexpr character character_at(text t, std::size_t i) noexcept {
    constexpr std::uint32_t not_shown = 0xFFFD;
    const auto byte = [&](std::size_t at) {
        return static_cast<std::uint32_t>(static_cast<unsigned char>(t[at]));
    };
    const std::uint32_t lead = byte(i);
    if (lead == '\n' || lead == '\t' || lead == '\r') return {' ', 1};
    if (lead < 0x80) return {may_be_shown(lead) ? lead : not_shown, 1};
    const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || bytes > t.size() - i) return {not_shown, 1};
    std::uint32_t code = lead & (0xFFU >> (bytes + 1));
    for (std::size_t k = 1; k < bytes; ++k) {
        if ((byte(i + k) & 0xC0) != 0x80) return {not_shown, 1};
        code = (code << 6) | (byte(i + k) & 0x3F);
    }
    const bool is_too_long = (bytes == 3 && code < 0x800) || (bytes == 4 && code < 0x10000);
    if (is_too_long) return {not_shown, 1};
    return {may_be_shown(code) ? code : not_shown, bytes};
}

/// Calls `put` with pieces of text that XML takes for text and nothing else, in elements and attributes.
template <class Put> constexpr void escape(text t, const Put& put) {
    std::size_t plain = 0; // the first byte that has not been put yet
    for (std::size_t i = 0; i < t.size();) {
        const character c = character_at(t, i);
        const bool is_changed = c.code == 0xFFFD || (c.code == ' ' && t[i] != ' ');
        text instead;
        if (c.code == '&') instead = "&amp;";
        else if (c.code == '<') instead = "&lt;";
        else if (c.code == '>') instead = "&gt;";
        else if (c.code == '"') instead = "&quot;";
        else if (c.code == '\'') instead = "&#39;";
        else if (is_changed) instead = c.code == ' ' ? text(" ") : text("\xEF\xBF\xBD");
        if (!instead.empty()) {
            if (i > plain) put(text(t.data() + plain, i - plain));
            put(instead);
            plain = i + c.bytes;
        }
        i += c.bytes;
    }
    if (plain < t.size()) put(text(t.data() + plain, t.size() - plain));
}

} // namespace fitwright::detail::svg

#endif
