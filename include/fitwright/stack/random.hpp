#ifndef FITWRIGHT_STACK_RANDOM_HPP
#define FITWRIGHT_STACK_RANDOM_HPP

#include <fitwright/stack/ziggurat_table.hpp>

#include <cstdint>

// Random numbers that are the same on every machine: whole numbers all the way, no floating point, no
// <random>, whose distributions each library works out in its own way.

namespace fitwright {

/// SplitMix64: 64 random bits at a time from a 64-bit state.
/// G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014.
/// A seed of 1234567 gives 6457827717110365317, 3203168211198807973, 9817491932198370423, …
class split_mix {
public:
    constexpr explicit split_mix(std::uint64_t seed) noexcept : state_(seed) {}

    /// The next 64 bits.
    constexpr std::uint64_t next() noexcept {
        std::uint64_t z = state_ += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

private:
    std::uint64_t state_;
};

namespace detail {

// Deviates are whole numbers of 2^-28.
inline constexpr int deviate_bits = 28;

/// Anywhere from -1 to 1 as likely.
constexpr std::int64_t rectangular_deviate(split_mix& random) noexcept {
    return static_cast<std::int64_t>(random.next()) >> (63 - deviate_bits);
}

/// From -1 to 1, most likely 0: the mean of two that are rectangular.
constexpr std::int64_t triangular_deviate(split_mix& random) noexcept {
    const std::uint64_t bits = random.next();
    return static_cast<std::int64_t>(bits >> 36) + static_cast<std::int64_t>(bits << 36 >> 36) -
           ((std::int64_t{1} << deviate_bits) - 1);
}

constexpr std::uint64_t thirty_two_bits(split_mix& random) noexcept { return random.next() >> 32; }

/// Exponential with mean 1, in 2^-32: J. von Neumann, Various techniques used in connection with random
/// digits, NBS Applied Mathematics Series 12, 1951. It only compares: the chance that a run of falling
/// numbers which begins with u has an odd length is exp(-u).
constexpr std::uint64_t exponential_deviate(split_mix& random) noexcept {
    for (std::uint64_t whole = 0;; whole += std::uint64_t{1} << 32) {
        const std::uint64_t first = thirty_two_bits(random);
        std::uint64_t last = first;
        bool odd = true;
        for (;;) {
            const std::uint64_t following = thirty_two_bits(random);
            if (following >= last) break;
            last = following;
            odd = !odd;
        }
        if (odd) return whole + first;
    }
}

/// Beyond the lowest layer's edge r: r + E / r for exponential E, taken where a second one is above half the
/// square of E / r (Marsaglia 1964).
constexpr std::int64_t normal_tail(split_mix& random) noexcept {
    constexpr std::uint64_t r = ziggurat_edge[1];
    for (;;) {
        const std::uint64_t beyond = (exponential_deviate(random) << 24) / r; // 2^-28
        const std::uint64_t half_square = (beyond * beyond) >> 25;            // 2^-32
        if (exponential_deviate(random) > half_square) return static_cast<std::int64_t>(r + beyond);
    }
}

/// Whether a point of a layer's end, beyond the next layer's edge, lies under the bell: a random height
/// between the layer's bottom and top against bottom * exp((edge^2 - x^2) / 2).
constexpr bool is_under_the_bell(std::uint64_t layer, std::uint64_t x, split_mix& random) noexcept {
    const std::uint64_t edge = ziggurat_edge[layer];
    const std::uint64_t bottom = ziggurat_height[layer];
    const std::uint64_t top = ziggurat_height[layer + 1];
    constexpr std::uint64_t one = std::uint64_t{1} << 32;
    const std::uint64_t d = ((edge - x) * (edge + x)) >> 26; // 2^-31, below 0.75
    std::uint64_t series = one;                              // exp(d) - 1 = d (1 + d/2 (1 + d/3 (…)))
    for (std::uint64_t k = 13; k >= 2; --k) series = one + ((d * series) >> 31) / k;
    const std::uint64_t rise = (d * series) >> 31;
    return thirty_two_bits(random) * (top - bottom) < bottom * rise;
}

/// What the quick way doesn't settle, once in eighty.
constexpr std::int64_t normal_deviate_the_long_way(std::uint64_t bits, split_mix& random) noexcept {
    for (;;) {
        const std::uint64_t layer = bits & 127;
        const std::uint64_t x = ((bits >> 32) * ziggurat_edge[layer]) >> 32;
        const bool is_negative = (bits & 128) != 0;
        const auto signed_x = [=](std::int64_t size) { return is_negative ? -size : size; };
        if (x < ziggurat_edge[layer + 1]) return signed_x(static_cast<std::int64_t>(x));
        if (layer == 0) return signed_x(normal_tail(random));
        if (is_under_the_bell(layer, x, random)) return signed_x(static_cast<std::int64_t>(x));
        bits = random.next();
    }
}

/// Normal with mean 0 and standard deviation 1, by the ziggurat (Marsaglia & Tsang 2000): a layer, a place
/// in it, and in most cases nothing more. Layer, sign and place come from different bits (J. A. Doornik,
/// An Improved Ziggurat Method to Generate Normal Random Samples, 2005).
constexpr std::int64_t normal_deviate(split_mix& random) noexcept {
    const std::uint64_t bits = random.next();
    const std::uint64_t layer = bits & 127;
    const std::uint64_t x = ((bits >> 32) * ziggurat_edge[layer]) >> 32;
    if (x >= ziggurat_edge[layer + 1]) [[unlikely]]
        return normal_deviate_the_long_way(bits, random);
    const auto sign = static_cast<std::int64_t>((bits >> 7) & 1);
    return (static_cast<std::int64_t>(x) ^ -sign) + sign;
}

} // namespace detail

} // namespace fitwright

#endif
