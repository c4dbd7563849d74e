#ifndef SHARED_UTF8_HPP
#define SHARED_UTF8_HPP

#include <cstddef>
#include <string_view>

namespace shared {

/// How many bytes the character at the front of `rest` has; 0 if it is not UTF-8 (RFC 3629).
[[nodiscard]] inline std::size_t utf8_size(std::string_view rest) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(rest[i]); };
    const unsigned lead = byte(0);
    if (lead < 0x80) return 1;
    const std::size_t size = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || rest.size() < size) return 0;
    for (std::size_t i = 1; i < size; ++i)
        if ((byte(i) & 0xC0) != 0x80) return 0;
    const bool overlong = (lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xF0 && byte(1) < 0x90);
    const bool surrogate = lead == 0xED && byte(1) > 0x9F;
    const bool beyond_unicode = lead == 0xF4 && byte(1) > 0x8F;
    return overlong || surrogate || beyond_unicode ? 0 : size;
}

} // namespace shared

#endif
