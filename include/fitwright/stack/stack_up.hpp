#ifndef FITWRIGHT_STACK_STACK_UP_HPP
#define FITWRIGHT_STACK_STACK_UP_HPP

#include <fitwright/figure.hpp>
#include <fitwright/flags.hpp>
#include <fitwright/square_root.hpp>
#include <fitwright/stack/contribution.hpp>

// The gap at the end of a chain: what it can be at worst, and what it is by the rules of statistics.

namespace fitwright {

/// What makes the statistical answers less certain than the worst case.
enum class stack_doubt : std::uint8_t {
    few_links = 1,
    one_link_rules = 2,
    beyond_limits = 4,
    few_outside = 8,
};

[[nodiscard]] constexpr flags<stack_doubt> operator|(stack_doubt a, stack_doubt b) noexcept {
    return flags(a) | b;
}

/// What the doubt is.
[[nodiscard]] constexpr text in_words(stack_doubt d) noexcept {
    switch (d) {
    case stack_doubt::few_links:
        return "Fewer than four links: go by the worst case, not by the root of squares.";
    case stack_doubt::one_link_rules:
        return "One link has more than half of the scatter: how that one comes out decides.";
    case stack_doubt::beyond_limits:
        return "Normal links were not cut off at their limits: parts that are sorted or gauged come out otherwise.";
    case stack_doubt::few_outside:
        return "Fewer than ten samples fell outside: their share is only known to its bounds.";
    }
    return "";
}

namespace sources {
inline constexpr source tolerance_chains{
    "P. Drake, Dimensioning and Tolerancing Handbook (1999)",
    "ch. 9: worst case, RSS, modified RSS; 1.5 RSS: A. Bender, SAE 680490 (1968)", confidence::memory};
} // namespace sources

/// The gap at the end of a chain, from least to most by each rule. The statistical ones stand about the
/// middle, suppose independent links that are centred, normal and three sigma in half their tolerance, and
/// are cut off where they would be wider than the worst case. Rounded outwards to the nanometre.
struct stack_result {
    length nominal;                ///< with every link at its nominal size, to the nearest nanometre
    range<length> worst_case;      ///< whatever comes out; exact
    range<length> root_sum_square; ///< 99.73 % of the gaps
    range<length> benderized;      ///< 1.5 times as wide, for processes that wander
    range<length> modified;        ///< between worst case and root of squares, by the number of links
    std::size_t widest_link = 0;   ///< the one that adds the most tolerance: where to begin
    flags<stack_doubt> doubts;
    source from = sources::tolerance_chains;
};

/// Half of what a gap varies by, as in 12 +/- 0.1; rounded up where that is no whole nanometre.
[[nodiscard]] constexpr length half_of(range<length> gap) noexcept {
    const std::int64_t all = (gap.most - gap.least).nanometres();
    return length::from_nanometres(all / 2 + all % 2);
}

/// Whether a gap lies within a window at both ends.
[[nodiscard]] constexpr bool lies_within(range<length> gap, range<length> window) noexcept {
    return window.least <= gap.least && gap.most <= window.most;
}

namespace detail {

/// The middle and so much either way, outwards, and no wider than the worst case.
[[nodiscard]] constexpr range<length> about_the_middle(const contribution& worst, double half) noexcept {
    const double middle = static_cast<double>(worst.least + worst.most) / 2;
    constexpr double noise = 1e-6; // of the arithmetic, in nanometres
    const double lowest = middle - half + noise;
    const double highest = middle + half - noise;
    auto least = static_cast<std::int64_t>(lowest);
    auto most = static_cast<std::int64_t>(highest);
    if (static_cast<double>(least) > lowest) --least;
    if (static_cast<double>(most) < highest) ++most;
    return {length::from_nanometres(least > worst.least ? least : worst.least),
            length::from_nanometres(most < worst.most ? most : worst.most)};
}

/// Drake: Cf = 1 + (worst case - RSS) / (2 RSS (sqrt(n) - 1)).
[[nodiscard]] constexpr double modified_half(double sum, double root, std::size_t links) noexcept {
    if (links < 2 || !(root > 0)) return sum;
    return root + (sum - root) / 2 / (square_root(static_cast<double>(links)) - 1);
}

[[nodiscard]] constexpr length nominal_gap(rows<chain_link> links) noexcept {
    double nominal = 0;
    for (const chain_link& l : links) {
        const double size =
            static_cast<double>(l.nominal.nanometres() * l.factor.times) / static_cast<double>(l.factor.per);
        nominal += l.effect == on_gap::opens ? size : -size;
    }
    return quantity<nanometre>::from_value(nominal);
}

} // namespace detail

/// The gap at the end of a chain of dimensions.
/// Error: no links; a link with crossed limits, longer than 100 m, or counted by a factor outside 1 to a
/// million; links that add up to more than 1000 km.
[[nodiscard]] constexpr result<stack_result> stack(rows<chain_link> links) noexcept {
    const auto worst = detail::contribution_of(links);
    if (!worst) return worst.error();
    stack_result made{
        .nominal = detail::nominal_gap(links),
        .worst_case = {length::from_nanometres(worst->least), length::from_nanometres(worst->most)},
        .root_sum_square = {},
        .benderized = {},
        .modified = {},
        .doubts = {}};
    double sum = 0;
    double squares = 0;
    double widest = 0;
    for (std::size_t i = 0; i < links.size(); ++i) {
        const double half = detail::half_tolerance_of(links[i]);
        sum += half;
        squares += half * half;
        if (half > widest) {
            widest = half;
            made.widest_link = i;
        }
    }
    const double root = detail::square_root(squares);
    made.root_sum_square = detail::about_the_middle(*worst, root);
    made.benderized = detail::about_the_middle(*worst, 1.5 * root);
    made.modified = detail::about_the_middle(*worst, detail::modified_half(sum, root, links.size()));
    if (links.size() < 4) made.doubts |= stack_doubt::few_links;
    if (widest * widest * 2 > squares) made.doubts |= stack_doubt::one_link_rules;
    return made;
}

/// The same for links in braces: `stack({opens("housing", …), closes("shaft", …)})`. The answer keeps no link.
template <std::size_t Size>
[[nodiscard]] constexpr result<stack_result> stack(const chain_link (&&links)[Size]) noexcept {
    chain_link kept[Size]; // a copy: g++ 12 compares no pointer to a temporary in a constant expression
    for (std::size_t i = 0; i < Size; ++i) kept[i] = links[i];
    return stack(rows<chain_link>(kept));
}

} // namespace fitwright

#endif
