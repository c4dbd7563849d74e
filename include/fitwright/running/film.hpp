#ifndef FITWRIGHT_RUNNING_FILM_HPP
#define FITWRIGHT_RUNNING_FILM_HPP

#include <fitwright/running/film_result.hpp>
#include <fitwright/running/film_state.hpp>
#include <fitwright/running/journal.hpp>

namespace fitwright {

/// Whether an oil film carries the shaft, how thick it is and how warm, at the tightest and the loosest
/// clearance: the table of Raimondi and Boyd, checked by the formulas of ISO 7902, the viscosity being that
/// at the temperature at which the oil carries off the heat of its own friction.
///
/// A bearing too slow or too small for a film is no error: its regime says so.
/// Error: what is not given, or not above 0; no clearance, cold or when warm; a fit of another size; a bearing shorter than 1/4 or
/// longer than 4 times its diameter; no balance of heat up to 250 degC; a lubricant without viscosity,
/// or with a number that no fluid has; Rz below 0 or above 1 mm; a growth beyond 0.001 for each kelvin.
[[nodiscard]] inline result<film_result> film(const journal& j) noexcept {
    const auto asked = detail::film_question::of(j);
    if (!asked) return asked.error();
    const auto oil = detail::film_oil::of(j);
    if (!oil) return oil.error();

    const detail::raimondi_boyd_column table(asked->width / asked->diameter);
    const auto tightest = detail::balanced(*asked, *oil, table, asked->tightest);
    if (!tightest) return tightest.error();
    const auto loosest = detail::balanced(*asked, *oil, table, asked->loosest);
    if (!loosest) return loosest.error();
    return detail::film_result_of(j, *asked, detail::state_of(j, *asked, table, *tightest),
                                  detail::state_of(j, *asked, table, *loosest));
}

/// The film at a viscosity that is known, such as from a reading of the oil's temperature: no heat balance,
/// and of the lubricant nothing is needed; where its heat capacity is known, the rise follows.
/// Errors as of `film`; of the lubricant, only what is given can be wrong; a viscosity not above 0, or above
/// 1e6 Pa s.
[[nodiscard]] inline result<film_result> film_at(const journal& j, dynamic_viscosity known) noexcept {
    const auto asked = detail::film_question::of(j);
    if (!asked) return asked.error();
    if (!detail::is_viscosity(known)) return detail::viscosity_not_possible();
    if (!detail::is_fluid(j.lubricant)) return detail::not_a_fluid(j.lubricant);

    const detail::raimondi_boyd_column table(asked->width / asked->diameter);
    const auto at = [&](double clearance) {
        return detail::state_of(j, *asked, table, {.clearance = clearance, .viscosity = known.value()});
    };
    return detail::film_result_of(j, *asked, at(asked->tightest), at(asked->loosest));
}

} // namespace fitwright

#endif
