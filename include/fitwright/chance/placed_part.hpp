#ifndef FITWRIGHT_CHANCE_PLACED_PART_HPP
#define FITWRIGHT_CHANCE_PLACED_PART_HPP

#include <fitwright/chance/size_distribution.hpp>
#include <fitwright/limits.hpp>

#include <cmath>

// A distribution put on the limits of a part. Sizes here are nanometres above an origin near by, as
// doubles. Only the bells need the exponential and error functions; the others work while compiling.

namespace fitwright::detail {

inline constexpr double root_of_2 = 1.4142135623730951;
inline constexpr double root_of_two_pi = 2.5066282746310002;

/// Density of the standard normal distribution.
[[nodiscard]] inline double bell(double z) noexcept { return std::exp(-0.5 * z * z) / root_of_two_pi; }

/// Its share below z, with all its digits in the lower tail.
[[nodiscard]] inline double bell_below(double z) noexcept { return 0.5 * std::erfc(-z / root_of_2); }

/// Its share between, from whichever tail keeps the digits.
[[nodiscard]] inline double bell_between(double lower, double upper) noexcept {
    if (lower > 0) return bell_below(-lower) - bell_below(-upper);
    return bell_below(upper) - bell_below(lower);
}

/// Which end of a distribution.
enum class tail : bool { below, above };

/// The places where a density or its slope jumps, and enough within a bell that no stretch between two
/// is wider than two standard deviations: in between, a quadrature sees a smooth function.
struct break_points {
    static constexpr int most = 11;
    double place[most];
    int size;

    constexpr void add(double p) noexcept { place[size++] = p; }
};

struct placed_part {
    enum class form : std::uint8_t { point, uniform, triangle, cut_off_bell, bell };

    form kind;
    double lower; ///< the ends; of a bell with both tails, the limits, which then don't matter
    double upper;
    double peak = 0;  ///< of a triangle
    double mean = 0;  ///< of a bell before it is cut off
    double sigma = 0; ///< likewise
    double kept = 1;  ///< the share of the bell between the ends

    /// True if every size lies between the ends.
    [[nodiscard]] constexpr bool has_ends() const noexcept { return kind != form::bell; }
    /// True if density and shares are polynomials between the break points.
    [[nodiscard]] constexpr bool is_polynomial() const noexcept { return kind <= form::triangle; }

    /// Of a part that is no point and has ends, between them.
    [[nodiscard]] constexpr double density(double x) const noexcept {
        if (kind == form::uniform) return 1 / (upper - lower);
        if (kind == form::triangle) {
            const double height = 2 / (upper - lower);
            return x < peak ? height * (x - lower) / (peak - lower) : height * (upper - x) / (upper - peak);
        }
        return bell((x - mean) / sigma) / (sigma * kept);
    }

    /// The share of the parts that are smaller, or larger, than x.
    [[nodiscard]] constexpr double share(tail which, double x) const noexcept {
        const bool below = which == tail::below;
        if (has_ends()) { // a point is neither below itself nor above
            if (x <= lower) return below || x == upper ? 0 : 1;
            if (x >= upper) return below ? 1 : 0;
        }
        switch (kind) {
        case form::point: return 0;
        case form::uniform: return (below ? x - lower : upper - x) / (upper - lower);
        case form::triangle: {
            const bool rising = x < peak;
            const double side = rising ? x - lower : upper - x;
            const double beyond = side * side / ((upper - lower) * (rising ? peak - lower : upper - peak));
            return rising == below ? beyond : 1 - beyond;
        }
        case form::cut_off_bell:
            return bell_between(((below ? lower : x) - mean) / sigma, ((below ? x : upper) - mean) / sigma) /
                   kept;
        case form::bell: return bell_below((below ? x - mean : mean - x) / sigma);
        }
        return 0;
    }

    [[nodiscard]] constexpr double average() const noexcept {
        if (kind == form::bell) return mean;
        if (kind == form::triangle) return (lower + peak + upper) / 3;
        if (kind == form::cut_off_bell) return mean + sigma * drift();
        return (lower + upper) / 2;
    }

    [[nodiscard]] constexpr double variance() const noexcept {
        const double width = upper - lower;
        if (kind == form::bell) return sigma * sigma;
        if (kind == form::triangle) return (width * width - (peak - lower) * (upper - peak)) / 18;
        if (kind == form::cut_off_bell) {
            const double from = (lower - mean) / sigma;
            const double to = (upper - mean) / sigma;
            // So narrow a strip of the bell is a straight line, and below it the digits would cancel.
            if (to - from < 3e-3) return width * width / 12;
            const double narrower = (from * bell(from) - to * bell(to)) / kept - drift() * drift();
            return sigma * sigma * (1 + narrower);
        }
        return width * width / 12;
    }

    [[nodiscard]] constexpr break_points breaks() const noexcept {
        break_points found{};
        if (has_ends()) {
            found.add(lower);
            found.add(upper);
        }
        if (kind == form::triangle) found.add(peak);
        if (!is_polynomial())
            for (int sigmas = -8; sigmas <= 8; sigmas += 2) found.add(mean + sigmas * sigma);
        return found;
    }

private:
    /// How far cutting off moves the mean of a bell, in standard deviations.
    [[nodiscard]] double drift() const noexcept {
        return (bell((lower - mean) / sigma) - bell((upper - mean) / sigma)) / kept;
    }
};

/// A distribution on limits that are not crossed.
template <side Side>
[[nodiscard]] constexpr placed_part placed(const size_distribution& d, const size_limits<Side>& limits,
                                           length origin) noexcept {
    using form = placed_part::form;
    using shape = size_distribution::shape_kind;
    const auto above_origin = [&](length l) { return static_cast<double>((l - origin).nanometres()); };
    const double lower = above_origin(limits.lower_limit());
    const double upper = above_origin(limits.upper_limit());
    placed_part p{.kind = form::point, .lower = lower, .upper = upper};

    const bool is_batch = d.shape() == shape::batch;
    if (lower == upper && !is_batch) return p;
    if (d.shape() == shape::uniform) {
        p.kind = form::uniform;
    } else if (!d.has_tails()) {
        p.kind = form::triangle;
        p.peak = d.shape() == shape::triangular ? (lower + upper) / 2 : Side == side::hole ? lower : upper;
    } else {
        p.kind = d.is_inspected() ? form::cut_off_bell : form::bell;
        const double half = (upper - lower) / 2;
        const double towards_metal = (Side == side::hole ? -half : half) * d.capability().shift;
        p.mean = is_batch ? above_origin(d.batch().mean) : (lower + upper) / 2 + towards_metal;
        p.sigma =
            is_batch ? static_cast<double>(d.batch().sigma.nanometres()) : half / (3 * d.capability().cp);
        if (d.is_inspected()) p.kept = bell_between((lower - p.mean) / p.sigma, (upper - p.mean) / p.sigma);
    }
    return p;
}

} // namespace fitwright::detail

#endif
