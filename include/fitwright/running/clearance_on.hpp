#ifndef FITWRIGHT_RUNNING_CLEARANCE_ON_HPP
#define FITWRIGHT_RUNNING_CLEARANCE_ON_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/error.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/units.hpp>
#include <fitwright/written.hpp>

// Books on bearings reckon with the clearance on the radius, drawings and fits with that on the diameter,
// twice as much; taking one for the other is the commonest mistake of all. Here they are two types.

namespace fitwright {

namespace detail {

/// On the diameter what is on the radius; beyond the range of a length, the end of it, which is refused.
[[nodiscard]] constexpr length twice(length on_radius) noexcept {
    constexpr length most = length::from_nanometres(INT64_MAX / 2);
    return (on_radius > most ? most : on_radius < -most ? -most : on_radius) * 2;
}

} // namespace detail

/// How much larger a hole's radius is than its shaft's: the gap all round when the shaft is centred.
struct radial_clearance {
    constexpr radial_clearance() noexcept = default;
    constexpr explicit radial_clearance(length gap) noexcept : value(gap) {}

    length value;

    friend constexpr auto operator<=>(radial_clearance, radial_clearance) noexcept = default;
};

/// How much larger a hole's diameter is than its shaft's, as fits have it: twice the radial clearance.
struct diametral_clearance {
    constexpr diametral_clearance() noexcept = default;
    constexpr explicit diametral_clearance(length clearance) noexcept : value(clearance) {}
    constexpr explicit diametral_clearance(radial_clearance gap) noexcept : value(detail::twice(gap.value)) {}

    length value;

    friend constexpr auto operator<=>(diametral_clearance, diametral_clearance) noexcept = default;
};

/// Diametral clearance as a share of the diameter, in thousandths: psi of ISO 7902, and c/r of the books.
struct relative_clearance {
    double per_mille = 0; ///< of the diameter

    /// The clearance it makes of a diameter, to the nearest nanometre.
    [[nodiscard]] constexpr diametral_clearance of(length diameter) const noexcept {
        return diametral_clearance(
            quantity<nanometre>::from_value(static_cast<double>(diameter.nanometres()) * per_mille / 1000));
    }
    friend constexpr auto operator<=>(relative_clearance, relative_clearance) noexcept = default;
};

/// The clearance of a bearing from its tightest pair to its loosest: from a fit, from a window, or one
/// clearance as measured. A bare length has to say first which it is.
class bearing_clearance {
public:
    /// None: to be refused.
    constexpr bearing_clearance() noexcept = default;
    /// A fit's nominal size is kept, so that a fit for another diameter is noticed.
    constexpr bearing_clearance(const fit& f) noexcept
        : least_(f.min_clearance()), most_(f.max_clearance()), nominal_(f.hole().nominal()) {}
    /// A window is on diameter.
    constexpr bearing_clearance(clearance_window w) noexcept : least_(w.least), most_(w.most) {}
    constexpr bearing_clearance(diametral_clearance c) noexcept : least_(c.value), most_(c.value) {}
    constexpr bearing_clearance(radial_clearance c) noexcept : bearing_clearance(diametral_clearance(c)) {}

    [[nodiscard]] constexpr diametral_clearance least() const noexcept { return diametral_clearance(least_); }
    [[nodiscard]] constexpr diametral_clearance most() const noexcept { return diametral_clearance(most_); }
    /// Of the fit that it was made from; 0 of any other.
    [[nodiscard]] constexpr length nominal() const noexcept { return nominal_; }

    /// The same clearances, wherever they come from.
    friend constexpr bool operator==(bearing_clearance a, bearing_clearance b) noexcept {
        return a.least_ == b.least_ && a.most_ == b.most_;
    }

private:
    length least_;
    length most_;
    length nominal_;
};

namespace detail {

/// Whether a clearance can be one of a diameter: its fit, if it has one, is of that size, or no more than a
/// tenth off. Bores that were opened up and diameters rounded to the catalogue's stay well within.
[[nodiscard]] constexpr bool is_fit_for(length nominal, length diameter) noexcept {
    if (nominal == length()) return true;
    const double off = static_cast<double>(nominal.nanometres()) / static_cast<double>(diameter.nanometres());
    return off >= 0.9 && off <= 1.1;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error fit_for_another_size(length nominal,
                                                                             length diameter) noexcept {
    return error::composer(error_code::nominal_sizes_differ)
           << "a fit of " << written(nominal).view() << " mm gives the clearance at a diameter of "
           << written(diameter).view() << " mm: allowed is a fit of that size, or no more than a tenth off";
}

} // namespace detail

} // namespace fitwright

#endif
