#ifndef FITWRIGHT_STACK_LASH_HPP
#define FITWRIGHT_STACK_LASH_HPP

#include <fitwright/flags.hpp>
#include <fitwright/length.hpp>
#include <fitwright/text.hpp>

// What lashes have in common.

namespace fitwright {

/// What to mind about a lash.
enum class lash_doubt : std::uint8_t {
    jams = 1,
    rule_of_thumb_off = 2,
};

[[nodiscard]] constexpr flags<lash_doubt> operator|(lash_doubt a, lash_doubt b) noexcept {
    return flags(a) | b;
}

/// What the doubt is.
[[nodiscard]] constexpr text in_words(lash_doubt d) noexcept {
    switch (d) {
    case lash_doubt::jams: return "Below zero the flanks jam: thinner teeth, or axes further apart.";
    case lash_doubt::rule_of_thumb_off:
        return "The axes are so far off that the rule of thumb misses the exact lash by more than 5 %.";
    }
    return "";
}

namespace detail {

/// Outwards to the nanometre.
[[nodiscard]] constexpr length lash_down(double nanometres) noexcept {
    const double up = nanometres + 1e-6; // of the arithmetic
    const auto whole = static_cast<std::int64_t>(up);
    return length::from_nanometres(static_cast<double>(whole) > up ? whole - 1 : whole);
}
[[nodiscard]] constexpr length lash_up(double nanometres) noexcept { return -lash_down(-nanometres); }

} // namespace detail

} // namespace fitwright

#endif
