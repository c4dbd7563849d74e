#ifndef FITWRIGHT_THERMAL_DOUBT_HPP
#define FITWRIGHT_THERMAL_DOUBT_HPP

#include <fitwright/flags.hpp>
#include <fitwright/text.hpp>

#include <cstdint>

namespace fitwright {

/// Why a size at temperature is to be taken with care.
enum class thermal_doubt : std::uint16_t {
    extrapolated = 1,             ///< a coefficient beyond its table: further than it was measured
    uncertain_expansion = 2,      ///< the documents differ on the coefficient, or could not be read
    above_heating_limit = 4,      ///< hotter than the material bears
    heating_limit_not_known = 8,  ///< how hot the material may be is not known
    plastic_moves = 16,           ///< a plastic swells and creeps as well
    hard_steel_grows_cold = 32,   ///< hardened steel with retained austenite
    above_yield = 64,             ///< the stress is more than the material bears elastically
    cold_figures_not_known = 128, ///< in frost, by the mean coefficient of 20 to 100 °C
    soon_at_room_again = 256,     ///< a part so small that it has no time to be put in place
    smoothing_not_counted = 512,  ///< by the sizes as measured, not as they are once the seat is smoothed
};

[[nodiscard]] constexpr flags<thermal_doubt> operator|(thermal_doubt a, thermal_doubt b) noexcept {
    return flags(a) | b;
}

/// In words, to be read behind "mind:".
[[nodiscard]] constexpr text in_words(thermal_doubt d) noexcept {
    switch (d) {
    case thermal_doubt::extrapolated: return "an expansion coefficient is used beyond its table";
    case thermal_doubt::uncertain_expansion: return "an expansion coefficient is uncertain";
    case thermal_doubt::above_heating_limit: return "a part is hotter than its material bears";
    case thermal_doubt::heating_limit_not_known: return "how hot the part may be is not known";
    case thermal_doubt::plastic_moves: return "a plastic swells with moisture and creeps as well";
    case thermal_doubt::hard_steel_grows_cold:
        return "chilled so far, hardened steel may grow for good, or crack";
    case thermal_doubt::above_yield: return "the stress is above yield: it is less, and stays bent";
    case thermal_doubt::cold_figures_not_known:
        return "cold figures not known: the mean of 20 to 100 C is used";
    case thermal_doubt::soon_at_room_again:
        return "a part so small stays hot or cold for a second or two only";
    case thermal_doubt::smoothing_not_counted: return "by the sizes alone; smoothing of the seat takes more";
    }
    return "";
}

} // namespace fitwright

#endif
