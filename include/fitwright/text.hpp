#ifndef FITWRIGHT_TEXT_HPP
#define FITWRIGHT_TEXT_HPP

#include <cstddef>
#include <cstdint>
#include <type_traits>

namespace fitwright {

class text;

namespace detail {

/// What can be made from characters and their number: std::string_view, std::string and the like.
template <class Other>
concept made_from_characters = std::is_class_v<Other> && !std::is_same_v<Other, text> &&
                               requires(Other other, const char* first, std::size_t size) {
    Other(first, size);
    other.size();
    other.substr(size);
};

/// What lends its characters: data() and size().
template <class Other>
concept has_characters = std::is_class_v<Other> && !std::is_same_v<Other, text> &&
                         requires(const Other& other, const char*& first, std::size_t& size) {
    first = other.data();
    size = other.size();
};

} // namespace detail

/// A look at characters that somebody else keeps: a literal, or the buffer of a longer-lived object.
///
/// It stands where std::string_view would, and turns into one (or into a std::string) by itself;
/// the headers that stand at the bottom can't afford to include <string_view>.
class text {
public:
    constexpr text() noexcept = default;

    /// Characters up to the terminating zero.
    constexpr text(const char* zero_terminated) noexcept : first_(zero_terminated) {
        while (first_[size_] != '\0') ++size_;
    }

    text(std::nullptr_t) = delete; // no characters are text()

    constexpr text(const char* first, std::size_t size) noexcept : first_(first), size_(size) {}

    /// What others keep: std::string_view, std::string, whatever has its characters side by side.
    template <detail::has_characters Other>
    constexpr text(const Other& other) noexcept : first_(other.data()), size_(other.size()) {}

    [[nodiscard]] constexpr const char* data() const noexcept { return first_; }
    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
    [[nodiscard]] constexpr const char* begin() const noexcept { return first_; }
    [[nodiscard]] constexpr const char* end() const noexcept { return first_ + size_; }
    constexpr char operator[](std::size_t i) const noexcept { return first_[i]; }

    /// What `find` answers where there is nothing to find.
    static constexpr std::size_t npos = static_cast<std::size_t>(-1);

    /// Where `wanted` first begins, or `npos`.
    [[nodiscard]] constexpr std::size_t find(text wanted) const noexcept {
        for (std::size_t i = 0; i + wanted.size_ <= size_; ++i)
            if (text(first_ + i, wanted.size_) == wanted) return i;
        return npos;
    }

    template <detail::made_from_characters Other> constexpr operator Other() const {
        return Other(first_, size_);
    }

    friend constexpr bool operator==(text a, text b) noexcept {
        if (a.size_ != b.size_) return false;
        for (std::size_t i = 0; i < a.size_; ++i)
            if (a.first_[i] != b.first_[i]) return false;
        return true;
    }

    template <detail::has_characters Other>
    friend constexpr bool operator==(text a, const Other& b) noexcept {
        return a == text(b.data(), b.size());
    }

    /// Any stream that can `write` characters will do, so no stream header is needed here.
    template <class Stream>
        requires requires(Stream& out, const char* first) { out.write(first, 1); }
    friend Stream& operator<<(Stream& out, text t) {
        out.write(t.first_, static_cast<std::ptrdiff_t>(t.size_));
        return out;
    }

private:
    const char* first_ = "";
    std::size_t size_ = 0;
};

namespace detail {

/// Where the characters of a `fixed_text` end: one function for texts of every capacity.
struct text_end {
    std::uint16_t size = 0;
    bool is_cut = false;

    constexpr void append(char* characters, std::size_t capacity, text more) noexcept {
        if (is_cut) return;                                    // no hole in the middle
        std::size_t n = size < capacity ? capacity - size : 0; // never more, but g++ 12 at -O3 can't see that
        if (more.size() <= n) n = more.size();
        else is_cut = true;
        while (n < more.size() && n > 0 && (more[n] & 0xC0) == 0x80) --n; // not inside a character
        if (__builtin_is_constant_evaluated())
            for (std::size_t i = 0; i < n; ++i) characters[size + i] = more[i];
        else __builtin_memcpy(characters + size, more.data(), n);
        size = static_cast<std::uint16_t>(size + n);
    }

    /// The digits of a whole number, behind a minus if it is below zero.
    constexpr void append_digits(char* characters, std::size_t capacity, std::uint64_t number,
                                 bool below_zero) noexcept {
        char digits[21] = {};
        std::size_t first = sizeof digits;
        do digits[--first] = static_cast<char>('0' + number % 10);
        while ((number /= 10) != 0);
        if (below_zero) digits[--first] = '-';
        append(characters, capacity, text(digits + first, sizeof digits - first));
    }
};

} // namespace detail

/// Characters of its own, `Capacity` at the most; what does not fit is left out, and `is_cut()` tells.
template <std::size_t Capacity> class fixed_text {
    static_assert(Capacity < 65536);

public:
    constexpr fixed_text() noexcept = default;

    constexpr fixed_text& operator<<(text more) noexcept {
        end_.append(characters_, Capacity, more);
        return *this;
    }

    constexpr fixed_text& operator<<(std::int64_t number) noexcept {
        const auto magnitude = static_cast<std::uint64_t>(number);
        end_.append_digits(characters_, Capacity, number < 0 ? 0 - magnitude : magnitude, number < 0);
        return *this;
    }

    /// The digits of a whole number without sign.
    constexpr fixed_text& put_digits(std::uint64_t number) noexcept {
        end_.append_digits(characters_, Capacity, number, false);
        return *this;
    }

    [[nodiscard]] constexpr std::size_t size() const noexcept { return end_.size; }
    /// Whether something was left out for want of room.
    [[nodiscard]] constexpr bool is_cut() const noexcept { return end_.is_cut; }

    /// A look at the characters, for as long as this object lives; a zero follows them.
    [[nodiscard]] constexpr text view() const noexcept { return {characters_, size()}; }
    [[nodiscard]] constexpr const char* data() const noexcept { return characters_; }

    template <detail::made_from_characters Other> constexpr operator Other() const {
        return Other(characters_, size());
    }
    friend constexpr bool operator==(const fixed_text& a, text b) noexcept { return a.view() == b; }

    template <class Stream>
        requires requires(Stream& out, const char* first) { out.write(first, 1); }
    friend Stream& operator<<(Stream& out, const fixed_text& t) { return out << t.view(); }

private:
    char characters_[Capacity + 1] = {};
    detail::text_end end_;
};

} // namespace fitwright

#endif
