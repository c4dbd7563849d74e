#ifndef FITWRIGHT_CHANCE_CLEARANCE_DISTRIBUTION_HPP
#define FITWRIGHT_CHANCE_CLEARANCE_DISTRIBUTION_HPP

#include <fitwright/chance/quadrature.hpp>
#include <fitwright/clearance_window.hpp>
#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/square_root.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

namespace sources {
inline constexpr source stated_distributions{"worked out from the two distributions as stated", "",
                                             confidence::stated};
inline constexpr source skewed_distributions{"holes come out small, shafts large", "one-sided triangle",
                                             confidence::practice};
} // namespace sources

/// What to keep in mind with a share of pairs.
enum class chance_doubt : std::uint8_t {
    shape_assumed = 1,
    picked_at_random = 2,
    parts_outside_limits = 4,
    few_parts = 8,
};
[[nodiscard]] constexpr flags<chance_doubt> operator|(chance_doubt a, chance_doubt b) noexcept {
    return flags<chance_doubt>(a) | b;
}

/// In words.
[[nodiscard]] constexpr text in_words(chance_doubt d) noexcept {
    switch (d) {
    case chance_doubt::shape_assumed: return "the shape of a distribution is assumed, not measured";
    case chance_doubt::picked_at_random: return "pairs are taken as they come, and form is not counted";
    case chance_doubt::parts_outside_limits: return "parts outside their limits are counted in";
    case chance_doubt::few_parts: return "fewer than 30 parts measured, so mean and spread are rough";
    }
    return "";
}

/// How the clearance of many pairs is spread, hole less shaft on the diameter; made by `clearances`.
class clearance_distribution {
public:
    /// To the nearest nanometre, as all lengths here.
    [[nodiscard]] constexpr length mean() const noexcept;
    /// The standard deviation.
    [[nodiscard]] constexpr length sigma() const noexcept;

    /// The share of pairs, from 0 to 1, with less clearance than this.
    [[nodiscard]] constexpr double share_below(length clearance) const noexcept {
        return share(detail::tail::below, clearance);
    }
    /// With more.
    [[nodiscard]] constexpr double share_above(length clearance) const noexcept {
        return share(detail::tail::above, clearance);
    }
    /// From the least to the most of the window; none in one that is the wrong way round.
    [[nodiscard]] constexpr double share_inside(clearance_window w) const noexcept {
        const double inside = 1 - share_below(w.least) - share_above(w.most);
        return w.least > w.most || inside < 0 ? 0 : inside;
    }
    /// With the shaft larger than the hole.
    [[nodiscard]] constexpr double share_interfering() const noexcept { return share_below(length()); }

    /// The clearance that a share of the pairs stay below: 0.5 is the median.
    /// Error: a share not from 0 to 1; 0 or 1 itself where a bell has no end.
    [[nodiscard]] constexpr result<length> quantile(double share) const noexcept;

    /// The clearances that a share of the pairs keep, as many tighter as looser: `central(0.9973)` is what
    /// catalogues call the probable fit, plus and minus three standard deviations of two bells.
    /// Error: as of `quantile`.
    [[nodiscard]] constexpr result<clearance_window> central(double share) const noexcept;

    /// How far at most a share may be off for want of digits: rounding alone where both shapes are made of
    /// straight lines or both are whole bells, Gauss's rule of 12 points a stretch otherwise.
    [[nodiscard]] constexpr double error_bound() const noexcept {
        const bool exact = hole_.is_polynomial() && shaft_.is_polynomial();
        const bool closed = !hole_.has_ends() && !shaft_.has_ends();
        return exact || closed ? 1e-12 : 1e-10;
    }

    [[nodiscard]] constexpr flags<chance_doubt> doubts() const noexcept { return doubts_; }
    [[nodiscard]] constexpr const source& from() const noexcept { return *from_; }

private:
    constexpr clearance_distribution(const detail::placed_part& hole, const detail::placed_part& shaft,
                                     const spread& s) noexcept;

    [[nodiscard]] constexpr double share(detail::tail which, length clearance) const noexcept {
        return detail::share_of_clearances(hole_, shaft_, which, static_cast<double>(clearance.nanometres()));
    }

    friend constexpr result<clearance_distribution> clearances(const fit& f, const spread& s) noexcept;

    detail::placed_part hole_;
    detail::placed_part shaft_;
    flags<chance_doubt> doubts_;
    const source* from_;
};

/// The distribution of the clearance of a fit, hole and shaft spread as stated and paired at random.
/// `constexpr` where both shapes are made of straight lines.
/// Error: limits that are crossed, beyond 100 m or more than 10 m apart; a Cp not from 0.1 to 100, a shift not
/// from -1 to 1; a batch without two parts or without spread; a bell of which next to nothing passes the
/// inspection.
[[nodiscard]] constexpr result<clearance_distribution> clearances(const fit& f, const spread& s) noexcept;

namespace detail {

[[nodiscard]] constexpr length nearest_nanometre(double nanometres) noexcept {
    return length::from_nanometres(static_cast<std::int64_t>(nanometres + (nanometres < 0 ? -0.5 : 0.5)));
}

[[nodiscard]] constexpr error not_a_share(bool has_ends) noexcept {
    return error::composer(error_code::not_a_share)
           << "this is no share of pairs; allowed: from 0 to 1"
           << (has_ends ? text() : text(", without 0 and 1 themselves: a bell not inspected has no end"));
}

/// No length beyond 100 m; asked before they are added.
template <side Side> [[nodiscard]] constexpr bool are_lengths_of_a_part(const size_limits<Side>& l) noexcept {
    const auto is_one = [](length part) {
        constexpr length hundred_metres = length::from_nanometres(100'000'000'000);
        return -hundred_metres <= part && part <= hundred_metres;
    };
    return is_one(l.nominal()) && is_one(l.lower_deviation()) && is_one(l.upper_deviation());
}

template <side Side>
[[nodiscard]] constexpr result<placed_part>
placed_if_possible(const size_distribution& d, const size_limits<Side>& limits, length origin) noexcept {
    constexpr double least_kept = 1e-6;
    using shape = size_distribution::shape_kind;
    const text part = Side == side::hole ? "hole" : "shaft";
    if (!are_lengths_of_a_part(limits))
        return error::composer(error_code::limits_too_far_apart)
               << "a limit of the " << part << " lies beyond 100 m; allowed: up to that";
    if (limits.tolerance() < length())
        return error::composer(error_code::limits_crossed)
               << "the limits of the " << part << " are " << written(limits.lower_limit()).view() << " to "
               << written(limits.upper_limit()).view()
               << " mm; allowed: the lower first, not above the upper";
    constexpr double farthest = 1e10; // 10 m, beyond any pair
    const auto is_beyond = [&](length l) {
        const double away = static_cast<double>(l.nanometres()) - static_cast<double>(origin.nanometres());
        return away > farthest || away < -farthest;
    };
    const bool mean_beyond =
        d.shape() == shape::batch &&
        (is_beyond(d.batch().mean) || static_cast<double>(d.batch().sigma.nanometres()) > farthest);
    if (is_beyond(limits.lower_limit()) || is_beyond(limits.upper_limit()) || mean_beyond)
        return error::composer(error_code::limits_too_far_apart)
               << "the " << part
               << " is more than 10 m away from the hole's lower limit, or so widely spread;"
               << " allowed is a pair of one nominal size";
    const capability c = d.capability();
    if (d.shape() == shape::normal && !(c.cp >= 0.1 && c.cp <= 100))
        return error::composer(error_code::not_a_spread)
               << "the Cp of the " << part << " is not one; allowed: from 0.1 to 100, usual are 0.7 to 2";
    if (d.shape() == shape::normal && !(c.shift >= -1 && c.shift <= 1))
        return error::composer(error_code::not_a_spread)
               << "the shift of the " << part
               << " leads out of its limits; allowed: from -1 to 1, halves of the"
               << " tolerance";
    if (d.shape() == shape::batch && (d.batch().parts < 2 || d.batch().sigma <= length()))
        return error::composer(error_code::not_a_spread)
               << "the batch of the " << part << " tells no spread; allowed: two parts or more, and a sigma"
               << " above 0";
    const placed_part p = placed(d, limits, origin);
    if (!(p.kept >= least_kept))
        return error::composer(error_code::not_a_spread)
               << "next to no " << part << " so spread lies from " << written(limits.lower_limit()).view()
               << " to " << written(limits.upper_limit()).view()
               << " mm; allowed is an inspection that passes one part in a million";
    return p;
}

[[nodiscard]] constexpr flags<chance_doubt> doubts_of(const size_distribution& d) noexcept {
    constexpr int enough_parts = 30;
    flags<chance_doubt> doubts = chance_doubt::picked_at_random;
    const bool is_batch = d.shape() == size_distribution::shape_kind::batch;
    if (!is_batch) doubts |= chance_doubt::shape_assumed;
    if (is_batch && d.batch().parts < enough_parts) doubts |= chance_doubt::few_parts;
    if (d.has_tails() && !d.is_inspected()) doubts |= chance_doubt::parts_outside_limits;
    return doubts;
}

} // namespace detail

constexpr clearance_distribution::clearance_distribution(const detail::placed_part& hole,
                                                         const detail::placed_part& shaft,
                                                         const spread& s) noexcept
    : hole_(hole), shaft_(shaft), doubts_(detail::doubts_of(s.hole) | detail::doubts_of(s.shaft)) {
    constexpr auto skewed = size_distribution::shape_kind::towards_maximum_material;
    const bool any_skewed = s.hole.shape() == skewed || s.shaft.shape() == skewed;
    from_ = any_skewed ? &sources::skewed_distributions : &sources::stated_distributions;
}

constexpr length clearance_distribution::mean() const noexcept {
    return detail::nearest_nanometre(hole_.average() - shaft_.average());
}

constexpr length clearance_distribution::sigma() const noexcept {
    return detail::nearest_nanometre(detail::square_root(hole_.variance() + shaft_.variance()));
}

constexpr result<length> clearance_distribution::quantile(double share) const noexcept {
    const bool has_ends = hole_.has_ends() && shaft_.has_ends();
    if (!(share >= 0 && share <= 1) || (!has_ends && (share == 0 || share == 1)))
        return detail::not_a_share(has_ends);
    constexpr double farthest = 40; // beyond it a bell is nothing even as a double
    const auto least = [](const detail::placed_part& p) {
        return p.has_ends() ? p.lower : p.mean - farthest * p.sigma;
    };
    const auto most = [](const detail::placed_part& p) {
        return p.has_ends() ? p.upper : p.mean + farthest * p.sigma;
    };
    double below = least(hole_) - most(shaft_);
    double above = most(hole_) - least(shaft_);
    if (share == 0) return detail::nearest_nanometre(below);
    if (share == 1) return detail::nearest_nanometre(above);
    while (above - below > 0.01) {
        const double middle = (below + above) / 2;
        const bool too_low = detail::share_of_clearances(hole_, shaft_, detail::tail::below, middle) < share;
        (too_low ? below : above) = middle;
    }
    return detail::nearest_nanometre((below + above) / 2);
}

constexpr result<clearance_window> clearance_distribution::central(double share) const noexcept {
    if (!(share >= 0)) return detail::not_a_share(true);
    const auto least = quantile((1 - share) / 2);
    if (!least) return least.error();
    const auto most = quantile((1 + share) / 2);
    if (!most) return most.error();
    return clearance_window{*least, *most};
}

constexpr result<clearance_distribution> clearances(const fit& f, const spread& s) noexcept {
    // Of a hole that can't be, any origin: it is refused before it is used.
    const length origin = detail::are_lengths_of_a_part(f.hole()) ? f.hole().lower_limit() : length();
    const auto hole = detail::placed_if_possible(s.hole, f.hole(), origin);
    if (!hole) return hole.error();
    const auto shaft = detail::placed_if_possible(s.shaft, f.shaft(), origin);
    if (!shaft) return shaft.error();
    return clearance_distribution(*hole, *shaft, s);
}

} // namespace fitwright

#endif
