#ifndef FITWRIGHT_RUNNING_NEAREST_FIT_HPP
#define FITWRIGHT_RUNNING_NEAREST_FIT_HPP

#include <fitwright/iso286/preferred.hpp>
#include <fitwright/running/clearance_on.hpp>
#include <fitwright/window_crossed.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// A preferred fit that comes nearest to a clearance.
struct running_fit {
    class_pair classes; ///< the hole's and the shaft's
    fit sizes;          ///< at the nominal size
    /// How far its mean clearance is from the one wanted, or from the middle of the window; 0 for a fit that
    /// keeps within it.
    length off;
};

namespace detail {

/// The preferred running fit with the least `off(fit)`; of two that are as near the one with the wider
/// tolerances, which is cheaper.
template <class Off>
[[nodiscard]] constexpr result<running_fit> nearest_by(length nominal, basis b, Off off) noexcept {
    result<running_fit> best =
        error::composer(error_code::no_running_clearance)
        << "no preferred fit runs at this size: allowed are sizes that ISO 286 has fits for";
    for (const class_pair& classes : preferred_fits(b)) {
        const auto f = limits(nominal, classes);
        if (!f) {
            if (!best) best = f.error();
            continue;
        }
        if (f->min_clearance() <= length()) continue;
        const running_fit candidate{.classes = classes, .sizes = *f, .off = off(*f)};
        const bool is_better = !best || candidate.off < best->off ||
                               (candidate.off == best->off && f->tolerance() > best->sizes.tolerance());
        if (is_better) best = candidate;
    }
    return best;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_clearance_wanted(length most) noexcept {
    return error::composer(error_code::window_not_a_clearance)
           << "a clearance of " << written(most).view()
           << " mm at most is no running fit: allowed is a most above 0; parts without play want a transition "
              "fit, such as H7/k6, or a fitted pair";
}

} // namespace detail

/// The preferred running fit whose mean clearance is nearest to the one wanted.
/// Error: a clearance not above 0; as of `limits`, where no preferred fit has a value.
[[nodiscard]] constexpr result<running_fit> nearest_running_fit(length nominal, diametral_clearance wanted,
                                                                basis b) noexcept {
    if (wanted.value <= length()) return detail::no_clearance_wanted(wanted.value);
    return detail::nearest_by(nominal, b, [&](const fit& f) {
        const length apart = f.mean_clearance() - wanted.value;
        return apart < length() ? -apart : apart;
    });
}

/// The preferred running fit that keeps within a window with the widest tolerances; where none does, the one
/// whose mean clearance is nearest to the middle of what of the window is above 0. A fit that touches doesn't run, so the least
/// clearance is always above 0.
/// Error: a window whose least is above its most, or whose most is not above 0; as of `limits`.
[[nodiscard]] constexpr result<running_fit> nearest_running_fit(length nominal, clearance_window wanted,
                                                                basis b) noexcept {
    if (wanted.least > wanted.most) return detail::window_crossed(wanted);
    if (wanted.most <= length()) return detail::no_clearance_wanted(wanted.most);
    const auto within = detail::nearest_by(nominal, b, [&](const fit& f) {
        return f.min_clearance() >= wanted.least && f.max_clearance() <= wanted.most
                   ? length()
                   : length::from_nanometres(1);
    });
    if (!within || within->off == length()) return within;
    const length least = wanted.least > length() ? wanted.least : length(); // less doesn't run
    return nearest_running_fit(nominal, diametral_clearance(least + (wanted.most - least) / 2), b);
}

} // namespace fitwright

#endif
