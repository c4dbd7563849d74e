#ifndef FITWRIGHT_RUNNING_CLEARANCES_HPP
#define FITWRIGHT_RUNNING_CLEARANCES_HPP

#include <fitwright/error.hpp>
#include <fitwright/running/clearance_on.hpp>
#include <fitwright/running/clearances_table.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// A clearance recommended for a use.
struct clearance_advice {
    clearance_window window; ///< on diameter; both ends the same where the rule has one figure
    text remark;
    source from;
    cautions take_care = caution::rotating;
};

/// The clearance on diameter that a use wants, by catalogues and rules of the trade: for bearings without a
/// full oil film. With one see `clearance_for_speed` and `film`.
/// Error: a diameter not above 0 up to 500 mm; a use that isn't one.
[[nodiscard]] constexpr result<clearance_advice> recommended_clearance(running_use use,
                                                                       length diameter) noexcept {
    if (diameter <= length() || diameter > length::from_nanometres(500'000'000))
        return error::composer(error_code::size_without_advice)
               << "no running clearance is known for a diameter of " << written(diameter).view()
               << " mm: allowed is above 0 up to 500 mm";
    for (const auto& row : detail::clearance_rules) {
        if (row.use != use) continue;
        const auto made = [&](std::int32_t fixed, std::int32_t share) {
            const length l = length::from_nanometres(fixed) + diameter * share / 100'000;
            const length floor = length::from_nanometres(row.floor);
            return row.floor != 0 && l < floor ? floor : l;
        };
        return clearance_advice{.window = {.least = made(row.least_fixed, row.least_share),
                                           .most = made(row.most_fixed, row.most_share)},
                                .remark = row.remark,
                                .from = row.from};
    }
    return error::composer(error_code::size_without_advice)
           << "this is no use with a rule: allowed are the enumerators of running_use";
}

} // namespace fitwright

#endif
