#ifndef FITWRIGHT_STACK_SIMULATE_HPP
#define FITWRIGHT_STACK_SIMULATE_HPP

#include <fitwright/stack/random.hpp>
#include <fitwright/stack/stack_up.hpp>

// The gap by trying: so many assemblies put together of parts that come out at random. The same seed gives
// the same answer to the nanometre on every machine and with every compiler, since it is worked out in
// whole numbers.

namespace fitwright {

/// As a window: every gap is good.
inline constexpr range<length> any_gap{length::from_nanometres(-INT64_MAX),
                                       length::from_nanometres(INT64_MAX)};

/// What to try. `simulation{.seed = 1, .samples = 100'000, .comes_out = scatter::normal}`
struct simulation {
    std::uint64_t seed;   ///< the same seed gives the same samples everywhere
    std::int64_t samples; ///< how many chains were tried
    scatter comes_out;    ///< for each link that has no way of its own
    double sigmas = 3;    ///< in half a tolerance, of links that come out normal: 3 is Cp = 1, 4 is Cp = 1.33
    range<length> wanted = any_gap; ///< which gaps are good, the least first
};

/// What the tried assemblies came to.
struct simulated_gap {
    std::int64_t samples = 0;   ///< how many chains were tried
    std::uint64_t seed = 0;     ///< the same seed gives the same samples everywhere
    length mean;                ///< to the nearest nanometre
    length standard_deviation;  ///< to the nearest nanometre
    range<length> seen;         ///< the least and the greatest gap of all
    range<length> most_of_them; ///< 99.73 % lie between, to a thousandth of the worst case
    bool has_window = false;    ///< whether a window was asked about; the three below are nothing without one
    double below = 0;           ///< the share that came out under the window
    double above = 0;           ///< and over it
    range<double> outside_95; ///< between these bounds lies the share outside, with 95 % confidence (Wilson)
    flags<stack_doubt> doubts;
    source from;

    /// Of the samples, those that keep the gap asked for less.
    [[nodiscard]] constexpr double outside() const noexcept { return below + above; }
};

namespace sources {
inline constexpr source tried_by_simulation{
    "simulation", "SplitMix64 (Steele, Lea, Flood 2014), ziggurat (Marsaglia, Tsang 2000)",
    confidence::stated};
} // namespace sources

namespace detail {

/// How the gap is counted while trying: in units of 2^-(fine + deviate_bits) nanometres from the middle,
/// so fine that half the worst case is 2^29 steps of a deviate.
struct trial_scale {
    std::int64_t half;         ///< half the worst case, in nanometres, rounded up
    std::int64_t twice_middle; ///< in nanometres
    int fine;
};

inline constexpr std::int64_t most_half = std::int64_t{1} << 29; // 0.54 m

[[nodiscard]] constexpr trial_scale scale_of(const contribution& worst) noexcept {
    const std::int64_t half = (worst.most - worst.least + 1) / 2;
    int fine = 0;
    while (fine < 30 && ((half + 1) << (fine + 1)) <= most_half) ++fine;
    return {half, worst.least + worst.most, fine};
}

/// The tally of one run. Offsets are whole steps of 2^-21 of half the worst case, or a little more.
class trial_tally {
public:
    constexpr explicit trial_tally(const trial_scale& scale) noexcept : scale_(scale) {}

    static constexpr int step_bits = deviate_bits + 29 - 21;
    static constexpr std::size_t block = 512;
    static constexpr std::int64_t bins = 2048;

    /// Counts a block of gaps, in units from the middle.
    constexpr void add(const std::int64_t (&gaps)[block], std::size_t how_many,
                       range<std::int64_t> wanted) noexcept {
        std::int64_t sum = 0;
        std::int64_t squares = 0;
        for (std::size_t i = 0; i < how_many; ++i) {
            const std::int64_t gap = gaps[i];
            below_ += gap < wanted.least ? 1 : 0;
            above_ += gap > wanted.most ? 1 : 0;
            if (gap < least_) least_ = gap;
            if (gap > most_) most_ = gap;
            const std::int64_t steps = gap >> step_bits;
            sum += steps;
            squares += steps * steps;
            const std::int64_t bin = (steps >> bin_bits) + bins / 2;
            ++counts_[bin < 0 ? 0 : bin >= bins ? bins - 1 : bin];
        }
        samples_ += static_cast<std::int64_t>(how_many);
        sum_ += sum;
        squares_ += static_cast<double>(squares);
    }

    [[nodiscard]] constexpr simulated_gap told(const simulation& s) const noexcept {
        simulated_gap made;
        const auto count = static_cast<double>(samples_);
        const double mean = static_cast<double>(sum_) / count;
        const double root = square_root(squares_ / count);
        const double size_of_mean = mean < 0 ? -mean : mean;
        // As a product of sum and difference: a product less a product may be rounded once or twice.
        const double deviation =
            root > size_of_mean ? square_root((root - size_of_mean) * (root + size_of_mean)) : 0;
        made.samples = samples_;
        made.seed = s.seed;
        made.mean = from_middle(mean + 0.5);
        made.standard_deviation = quantity<nanometre>::from_value(deviation * nanometres_per_step());
        made.seen = {from_middle(static_cast<double>(least_ >> step_bits)),
                     from_middle(static_cast<double>((most_ >> step_bits) + 1))};
        made.most_of_them = {quantile(0.00135), quantile(0.99865)};
        made.from = sources::tried_by_simulation;
        made.has_window = s.wanted != any_gap;
        if (!made.has_window) return made;
        made.below = static_cast<double>(below_) / count;
        made.above = static_cast<double>(above_) / count;
        made.outside_95 = wilson(static_cast<double>(below_ + above_) / count, count);
        if (below_ + above_ < 10) made.doubts |= stack_doubt::few_outside;
        return made;
    }

private:
    static constexpr int bin_bits = 11; // 2048 bins over twice the worst case
    [[nodiscard]] constexpr double nanometres_per_step() const noexcept {
        return static_cast<double>(std::int64_t{1} << 8) /
               static_cast<double>(std::int64_t{1} << scale_.fine);
    }
    [[nodiscard]] constexpr length from_middle(double steps) const noexcept {
        const double off = steps * nanometres_per_step();
        return quantity<nanometre>::from_value(off + static_cast<double>(scale_.twice_middle) / 2);
    }
    /// Below which this share of the gaps lies; straight across a bin.
    [[nodiscard]] constexpr length quantile(double share) const noexcept {
        const double wanted = share * static_cast<double>(samples_);
        double passed = 0;
        std::int64_t bin = 0;
        while (bin < bins - 1 && passed + static_cast<double>(counts_[bin]) < wanted)
            passed += static_cast<double>(counts_[bin++]);
        const auto in_it = static_cast<double>(counts_[bin]);
        const double across = in_it > 0 ? (wanted - passed) / in_it : 0;
        const double steps =
            (static_cast<double>(bin - bins / 2) + across) * static_cast<double>(1 << bin_bits);
        return from_middle(steps);
    }
    /// E. B. Wilson, Probable inference, J. Amer. Statist. Assoc. 22 (1927).
    [[nodiscard]] static constexpr range<double> wilson(double share, double count) noexcept {
        constexpr double z = 1.959964; // 95 %
        const double weight = 1 / (1 + z * z / count);
        const double centre = weight * (share + z * z / 2 / count);
        const double half = weight * z * square_root(share * (1 - share) / count + z * z / 4 / count / count);
        return {centre > half ? centre - half : 0, centre + half < 1 ? centre + half : 1};
    }

    trial_scale scale_;
    std::int64_t samples_ = 0;
    std::int64_t below_ = 0;
    std::int64_t above_ = 0;
    std::int64_t least_ = INT64_MAX;
    std::int64_t most_ = -INT64_MAX;
    std::int64_t sum_ = 0;
    double squares_ = 0;
    std::uint32_t counts_[bins] = {};
};

/// Adds a link to each gap of a block; a loop of its own for each way of coming out.
template <class Deviate>
constexpr void add_link(std::int64_t (&gaps)[trial_tally::block], std::size_t how_many, std::int64_t size,
                        split_mix& random, Deviate deviate) noexcept {
    split_mix own = random; // in a register
    for (std::size_t i = 0; i < how_many; ++i) gaps[i] += size * deviate(own);
    random = own;
}

[[nodiscard]] constexpr scatter scatter_of(const chain_link& l, const simulation& s) noexcept {
    return l.comes_out == scatter::not_stated ? s.comes_out : l.comes_out;
}

/// Half its tolerance in the units of the tally, signed.
[[nodiscard]] constexpr std::int64_t half_in_units(const chain_link& l, const trial_scale& scale) noexcept {
    const std::int64_t tolerance = (l.allowed.upper - l.allowed.lower).nanometres() * l.factor.times;
    const std::int64_t half = (tolerance << scale.fine) / (2 * l.factor.per);
    return l.effect == on_gap::opens ? half : -half;
}

/// A limit of the window in the units of the tally; beyond all gaps where it lies far out.
[[nodiscard]] constexpr std::int64_t in_units(length limit, const trial_scale& scale) noexcept {
    const std::int64_t beyond = 32 * (scale.half + 1);
    const std::int64_t limit_nm = limit.nanometres();
    const std::int64_t middle = scale.twice_middle / 2;
    if (limit_nm < middle - beyond) return -INT64_MAX;
    if (limit_nm > middle + beyond) return INT64_MAX;
    return (limit_nm * 2 - scale.twice_middle) * (std::int64_t{1} << (scale.fine + deviate_bits - 1));
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_simulation(const simulation& s) noexcept {
    error::composer say(error_code::not_a_simulation);
    if (s.wanted.least > s.wanted.most)
        return error::composer(error_code::window_crossed)
               << "a gap wanted of " << written(s.wanted.least).view() << " to "
               << written(s.wanted.most).view() << " mm: allowed is the least first";
    if (s.samples < 2 || s.samples > 4'000'000'000)
        return say << s.samples << " samples: allowed are 2 to 4000000000";
    if (s.comes_out == scatter::not_stated)
        return say << "it is not said how the links come out: allowed are normal, rectangular and triangular";
    return say << "a half tolerance that is not 1 to 10 sigmas: allowed is that, 3 being usual";
}

[[nodiscard]] constexpr bool is_simulation(const simulation& s) noexcept {
    return s.samples >= 2 && s.samples <= 4'000'000'000 && s.comes_out != scatter::not_stated &&
           s.sigmas >= 1 && s.sigmas <= 10 && s.wanted.least <= s.wanted.most;
}

} // namespace detail

/// Tries a chain: mean, scatter, and the share of gaps outside a window.
///
/// Links are independent and centred in their limits. Each takes the random numbers of a block of 512
/// samples at a time, in the order of the chain.
/// Error: as of `stack`; limits that lie more than 1 m apart in the sum; fewer than 2 samples, or more than 4
/// thousand million; a scatter that is not stated; sigmas outside 1 to 10; a window the wrong way round.
[[nodiscard]] constexpr result<simulated_gap> simulate(rows<chain_link> links, const simulation& s) noexcept {
    if (!detail::is_simulation(s)) return detail::not_a_simulation(s);
    const auto worst = detail::contribution_of(links);
    if (!worst) return worst.error();
    if (worst->most - worst->least > 1'000'000'000)
        return error::composer(error_code::chain_too_long)
               << "the tolerances add up to more than 1 m: allowed is up to that to be tried";
    const detail::trial_scale scale = detail::scale_of(*worst);
    const range<std::int64_t> wanted{detail::in_units(s.wanted.least, scale),
                                     detail::in_units(s.wanted.most, scale)};
    split_mix random(s.seed);
    detail::trial_tally tally(scale);
    flags<stack_doubt> doubts;
    for (std::int64_t left = s.samples; left > 0;) {
        constexpr auto block = detail::trial_tally::block;
        const std::size_t now = left < std::int64_t{block} ? static_cast<std::size_t>(left) : block;
        std::int64_t gaps[block] = {};
        for (const chain_link& l : links) {
            const std::int64_t half = detail::half_in_units(l, scale);
            switch (detail::scatter_of(l, s)) {
            case scatter::rectangular:
                detail::add_link(gaps, now, half, random, detail::rectangular_deviate);
                break;
            case scatter::triangular:
                detail::add_link(gaps, now, half, random, detail::triangular_deviate);
                break;
            default:
                doubts |= stack_doubt::beyond_limits;
                detail::add_link(gaps, now, static_cast<std::int64_t>(static_cast<double>(half) / s.sigmas),
                                 random, detail::normal_deviate);
            }
        }
        tally.add(gaps, now, wanted);
        left -= static_cast<std::int64_t>(now);
    }
    simulated_gap made = tally.told(s);
    made.doubts |= doubts;
    return made;
}

/// The same for links in braces.
template <std::size_t Size>
[[nodiscard]] constexpr result<simulated_gap> simulate(const chain_link (&&links)[Size],
                                                       const simulation& s) noexcept {
    chain_link kept[Size]; // a copy: g++ 12 compares no pointer to a temporary in a constant expression
    for (std::size_t i = 0; i < Size; ++i) kept[i] = links[i];
    return simulate(rows<chain_link>(kept), s);
}

} // namespace fitwright

#endif
