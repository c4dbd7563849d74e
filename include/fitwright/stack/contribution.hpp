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

/// No longer than a link may be; asked of every length before it is added to another.
[[nodiscard]] constexpr bool is_link_length(length l) noexcept {
    return l.nanometres() >= -longest_link && l.nanometres() <= longest_link;
}
[[nodiscard]] constexpr bool has_link_lengths(const chain_link& l) noexcept {
    return is_link_length(l.nominal) && is_link_length(l.allowed.lower) && is_link_length(l.allowed.upper) &&
           is_link_length(l.lower_limit()) && is_link_length(l.upper_limit());
}

[[nodiscard]] constexpr bool is_link(const chain_link& l) noexcept {
    return has_link_lengths(l) && l.allowed.lower <= l.allowed.upper && l.factor.times > 0 &&
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

/// The name of a link in an error; of a long one its beginning, so that there is room for what is wrong.
[[nodiscard]] constexpr fixed_text<43> link_name(text name) noexcept {
    fixed_text<40> beginning;
    beginning << name;
    fixed_text<43> made;
    made << beginning.view();
    return beginning.is_cut() ? made << text("...") : made;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_link(const chain_link& l) noexcept {
    error::composer say(error_code::not_a_link);
    const auto name = link_name(l.name);
    if (!has_link_lengths(l))
        return say << "the link '" << name.view() << "' is longer than 100 m: allowed is up to that";
    if (l.allowed.lower > l.allowed.upper)
        return error::composer(error_code::limits_crossed)
               << "the link '" << name.view() << "' is from " << written(l.lower_limit()).view() << " to "
               << written(l.upper_limit()).view() << " mm: allowed is the lower limit first";
    return say << "the link '" << name.view() << "' counts " << l.factor.times << " times per "
               << l.factor.per
               << ": allowed are whole numbers from 1 to 1000000; what closes the gap says so by closes()";
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
