#ifndef FITWRIGHT_FLAGS_HPP
#define FITWRIGHT_FLAGS_HPP

#include <cstddef>
#include <cstdint>

namespace fitwright {

/// A set of the enumerators of `Flag`, an enumeration whose values are single bits (1, 2, 4, …).
/// An enumeration of flags has its own `operator|`, so that two of them make a set.
template <class Flag> class flags {
public:
    constexpr flags() noexcept = default;
    constexpr flags(Flag flag) noexcept : bits_(static_cast<std::uint32_t>(flag)) {}

    [[nodiscard]] constexpr bool empty() const noexcept { return bits_ == 0; }
    /// Whether a flag is in the set.
    [[nodiscard]] constexpr bool contains(Flag flag) const noexcept {
        return (bits_ & static_cast<std::uint32_t>(flag)) != 0;
    }
    /// Whether one of these flags or more are in the set.
    [[nodiscard]] constexpr bool contains_any(flags some) const noexcept { return (bits_ & some.bits_) != 0; }

    constexpr flags& operator|=(flags more) noexcept {
        bits_ |= more.bits_;
        return *this;
    }
    friend constexpr flags operator|(flags a, flags b) noexcept { return a |= b; }
    friend constexpr bool operator==(flags, flags) noexcept = default;

    /// For a range-for: each flag of the set, the lowest bit first.
    class iterator {
    public:
        constexpr Flag operator*() const noexcept { return static_cast<Flag>(rest_ & (~rest_ + 1)); }
        constexpr iterator& operator++() noexcept {
            rest_ &= rest_ - 1;
            return *this;
        }
        friend constexpr bool operator==(iterator, iterator) noexcept = default;

    private:
        friend class flags;
        constexpr explicit iterator(std::uint32_t rest) noexcept : rest_(rest) {}
        std::uint32_t rest_;
    };
    [[nodiscard]] constexpr iterator begin() const noexcept { return iterator(bits_); }
    [[nodiscard]] constexpr iterator end() const noexcept { return iterator(0); }

    /// Calls `use` with each flag of the set, the lowest bit first.
    template <class Use> constexpr void for_each(Use use) const {
        for (const Flag flag : *this) use(flag);
    }

private:
    std::uint32_t bits_ = 0;
};

} // namespace fitwright

#endif
