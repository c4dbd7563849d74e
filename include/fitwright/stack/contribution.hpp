#ifndef FITWRIGHT_STACK_CONTRIBUTION_HPP
#define FITWRIGHT_STACK_CONTRIBUTION_HPP

#include <fitwright/error.hpp>
#include <fitwright/rows.hpp>
#include <fitwright/stack/chain.hpp>
#include <fitwright/written.hpp>

// What a link adds to the gap, in whole nanometres; and which links and chains can be reckoned with.

namespace fitwright::detail {

/// From `least` to `most`, signed: a link that closes adds below zero.
struct contribution {
    std::int64_t least;
    std::int64_t most;
};

inline constexpr std::int64_t longest_link = 100'000'000'000; // 100 m
inline constexpr std::int64_t largest_factor = 1'000'000;

[[nodiscard]] constexpr bool is_link(const chain_link& l) noexcept {
    const std::int64_t lower = l.lower_limit().nanometres();
    const std::int64_t upper = l.upper_limit().nanometres();
    return lower >= -longest_link && lower <= upper && upper <= longest_link && l.factor.times > 0 &&
           l.factor.times <= largest_factor && l.factor.per > 0 && l.factor.per <= largest_factor;
}

[[nodiscard]] constexpr std::int64_t divided_down(std::int64_t n, std::int64_t divisor) noexcept {
    return n / divisor - (n % divisor < 0 ? 1 : 0); // the divisor is above 0
}

/// A size times its factor; what is not a whole nanometre goes down, or up.
[[nodiscard]] constexpr std::int64_t counted_down(length size, link_factor f) noexcept {
    return divided_down(size.nanometres() * f.times, f.per);
}
[[nodiscard]] constexpr std::int64_t counted_up(length size, link_factor f) noexcept {
    return -divided_down(-size.nanometres() * f.times, f.per);
}

[[nodiscard]] constexpr contribution contribution_of(const chain_link& l) noexcept {
    const std::int64_t least = counted_down(l.lower_limit(), l.factor);
    const std::int64_t most = counted_up(l.upper_limit(), l.factor);
    if (l.effect == on_gap::opens) return {least, most};
    return {-most, -least};
}

/// Half its tolerance as it counts, in nanometres; no nanometre is rounded.
[[nodiscard]] constexpr double half_tolerance_of(const chain_link& l) noexcept {
    const length tolerance = l.allowed.upper - l.allowed.lower;
    return static_cast<double>(tolerance.nanometres() * l.factor.times) / static_cast<double>(l.factor.per) /
           2;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_link(const chain_link& l) noexcept {
    error::composer say(error_code::not_a_link);
    if (l.lower_limit() > l.upper_limit())
        return error::composer(error_code::limits_crossed)
               << "the link '" << l.name << "' is from " << written(l.lower_limit()).view() << " to "
               << written(l.upper_limit()).view() << " mm: allowed is the lower limit first";
    if (l.factor.times <= 0 || l.factor.per <= 0 || l.factor.times > largest_factor ||
        l.factor.per > largest_factor)
        return say
               << "the link '" << l.name << "' counts " << l.factor.times << " times per " << l.factor.per
               << ": allowed are whole numbers from 1 to 1000000; what closes the gap says so by closes()";
    return say << "the link '" << l.name << "' is longer than 100 m: allowed is up to that";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error chain_is_empty() noexcept {
    return error::composer(error_code::chain_is_empty)
           << "a chain without links has no gap: allowed are one link or more";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error chain_too_long() noexcept {
    return error::composer(error_code::chain_too_long)
           << "the links add up to more than 1000 km: allowed is up to that";
}

/// The whole chain, or why it can't be reckoned with.
[[nodiscard]] constexpr result<contribution> contribution_of(rows<chain_link> links) noexcept {
    constexpr std::int64_t most_of_all = 1'000'000'000'000'000; // 1000 km
    if (links.empty()) return chain_is_empty();
    contribution all{0, 0};
    for (const chain_link& l : links) {
        if (!is_link(l)) return not_a_link(l);
        const contribution its = contribution_of(l);
        all.least += its.least;
        all.most += its.most;
        if (all.least < -most_of_all || all.most > most_of_all || all.least > most_of_all ||
            all.most < -most_of_all)
            return chain_too_long();
    }
    return all;
}

} // namespace fitwright::detail

#endif
