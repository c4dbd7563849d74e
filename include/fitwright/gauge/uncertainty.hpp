#ifndef FITWRIGHT_GAUGE_UNCERTAINTY_HPP
#define FITWRIGHT_GAUGE_UNCERTAINTY_HPP

#include <fitwright/error.hpp>
#include <fitwright/length.hpp>
#include <fitwright/source.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// What is known of an instrument: `instrument{.resolution = 10_um, .error_limit = 4_um}` is an ordinary
/// micrometer.
struct instrument {
    length resolution;  ///< the step of the display, or what can be read between two lines
    length error_limit; ///< the largest error its maker or its calibration allows, plus and minus
    /// The standard deviation of readings of one size, taken again and again; nothing if that is part of the
    /// error limit.
    length repeatability = length();
};

namespace sources {
inline constexpr source gum{"JCGM 100:2008 (GUM)", "4.3.7, 5.1.2, 6.2.1, F.2.2.1; coverage factor 2",
                            confidence::memory};
} // namespace sources

namespace detail {

/// The least whole number whose square is not below n.
[[nodiscard]] constexpr std::uint64_t root_rounded_up(std::uint64_t n) noexcept {
    std::uint64_t root = 0; // the largest whose square is not above n, a bit at a time
    for (std::uint64_t next = std::uint64_t{1} << 31; next > 0; next >>= 1)
        if ((root + next) * (root + next) <= n) root += next;
    return root * root < n ? root + 1 : root;
}

inline constexpr length largest_contribution = length::from_nanometres(1'000'000'000);

[[nodiscard]] constexpr bool is_contribution(length l) noexcept {
    return l >= length() && l <= largest_contribution;
}

} // namespace detail

/// The expanded uncertainty of one reading, U = 2 u, about 95 %: what `measured` takes. In whole
/// nanometres, rounded up.
///
/// A reading may be off by half the resolution and by the error limit, each anywhere within as likely
/// (rectangular: half width over root three): u^2 = (resolution / 2)^2 / 3 + error_limit^2 / 3 +
/// repeatability^2. See `sources::gum`. What else there is (temperature, form, the setting standard, the hand)
/// is not in it: add it to the error limit.
/// Error: a contribution below zero or above 1 m; a resolution of zero together with an error limit of zero.
[[nodiscard]] constexpr result<length> expanded_uncertainty(const instrument& i) noexcept {
    const length contributions[] = {i.resolution, i.error_limit, i.repeatability};
    for (const length contribution : contributions)
        if (!detail::is_contribution(contribution))
            return error::composer(error_code::not_an_uncertainty)
                   << "an instrument with a resolution, error limit or repeatability of "
                   << written(contribution).view() << " mm: allowed is 0 up to 1000 mm";
    if (i.resolution == length() && i.error_limit == length())
        return error::composer(error_code::not_an_uncertainty)
               << "no instrument is without any uncertainty: allowed is a resolution or an error limit above 0";

    const auto square = [](length l) {
        const auto n = static_cast<std::uint64_t>(l.nanometres());
        return n * n;
    };
    // U^2 = 4 u^2 is a third of this sum, which fits: at most 17e18.
    const std::uint64_t three_squares =
        square(i.resolution) + 4 * square(i.error_limit) + 12 * square(i.repeatability);
    const std::uint64_t root = detail::root_rounded_up(three_squares / 3 + (three_squares % 3 != 0 ? 1 : 0));
    return length::from_nanometres(static_cast<std::int64_t>(root));
}

} // namespace fitwright

#endif
