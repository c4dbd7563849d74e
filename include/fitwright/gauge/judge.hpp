#ifndef FITWRIGHT_GAUGE_JUDGE_HPP
#define FITWRIGHT_GAUGE_JUDGE_HPP

#include <fitwright/error.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// What a reading proves about a part.
enum class verdict : std::uint8_t {
    accept,      ///< every size the part may have is allowed
    reject,      ///< none of them is
    cannot_tell, ///< some are and some aren't: measure better, or agree on it with the customer
};

/// "accept", "reject", "cannot tell".
[[nodiscard]] constexpr text in_words(verdict v) noexcept {
    switch (v) {
    case verdict::accept: return "accept";
    case verdict::reject: return "reject";
    case verdict::cannot_tell: return "cannot tell";
    }
    return "";
}

namespace sources {
inline constexpr source iso_14253_1{"ISO 14253-1", "decision rules, guard band = expanded uncertainty",
                                    confidence::memory};
} // namespace sources

/// Whether a reading proves that a part keeps its limits: ISO 14253-1 with the whole expanded
/// uncertainty as guard band, which is no less strict than the default of the edition of 2017.
///
/// A part that touches a limit is good, so a reading whose uncertainty just reaches a limit from inside is
/// accepted, and one that just reaches it from outside can't be told.
template <side Side>
[[nodiscard]] constexpr verdict judge(const measured<Side>& part, const size_limits<Side>& limits) noexcept {
    const length least = part.size() - part.uncertainty();
    const length most = part.size() + part.uncertainty();
    const bool all_are_allowed = limits.allow(least) && limits.allow(most);
    if (all_are_allowed) return verdict::accept;
    const bool limits_allow_any = limits.lower_limit() <= limits.upper_limit();
    const bool some_is_allowed =
        limits_allow_any && least <= limits.upper_limit() && most >= limits.lower_limit();
    return some_is_allowed ? verdict::cannot_tell : verdict::reject;
}

/// The same for limits without a class: the part says which side they are of.
template <side Side>
[[nodiscard]] constexpr verdict judge(const measured<Side>& part, stated_limits limits) noexcept {
    return judge(part, size_limits<Side>(limits));
}

/// The readings that may be accepted: the limits, each moved inwards by the uncertainty (a negative one is
/// taken without its sign). Work to these limits, and what the instrument shows is what holds.
/// Error: nothing is left; this instrument can't prove this tolerance.
template <side Side>
[[nodiscard]] constexpr result<size_limits<Side>> acceptance_band(const size_limits<Side>& limits,
                                                                  length uncertainty) noexcept {
    const length guard_band = uncertainty < length() ? -uncertainty : uncertainty;
    const length upper = limits.upper_deviation() - guard_band;
    const length lower = limits.lower_deviation() + guard_band;
    if (upper >= lower) return size_limits<Side>(limits.nominal(), {upper, lower}, sources::iso_14253_1);

    error::composer say(error_code::instrument_too_coarse);
    say << "this instrument can't prove this tolerance: an uncertainty of +/-" << written(guard_band).view()
        << " mm leaves nothing of " << written(limits.tolerance()).view() << " mm";
    if (limits.tolerance() < length()) return say << "; allowed are limits with the upper above the lower";
    const auto half = length::from_nanometres(limits.tolerance().nanometres() / 2);
    return say << "; allowed is up to half the tolerance, " << written(half).view() << " mm";
}

} // namespace fitwright

#endif
