#ifndef FITWRIGHT_ROWS_HPP
#define FITWRIGHT_ROWS_HPP

#include <cstddef>

namespace fitwright {

/// A look at the rows of a table that stands elsewhere; the like of std::span<const Row>, without
/// its header.
template <class Row> class rows {
public:
    constexpr rows() noexcept = default;
    constexpr rows(const Row* first, std::size_t size) noexcept : first_(first), size_(size) {}
    template <std::size_t Size>
    constexpr rows(const Row (&table)[Size]) noexcept : first_(table), size_(Size) {}

    /// From what keeps its elements side by side: std::vector, std::array, std::span.
    template <class Container>
        requires requires(const Container& c, const Row*& first, std::size_t& size) {
            first = c.data();
            size = c.size();
        }
    constexpr rows(const Container& c) noexcept : first_(c.data()), size_(c.size()) {}

    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
    [[nodiscard]] constexpr const Row* begin() const noexcept { return first_; }
    [[nodiscard]] constexpr const Row* end() const noexcept { return first_ + size_; }
    constexpr const Row& operator[](std::size_t i) const noexcept { return first_[i]; }

private:
    const Row* first_ = nullptr;
    std::size_t size_ = 0;
};

} // namespace fitwright

#endif
