#ifndef FITWRIGHT_SOURCE_HPP
#define FITWRIGHT_SOURCE_HPP

#include <fitwright/flags.hpp>
#include <fitwright/text.hpp>

#include <cstdint>

namespace fitwright {

/// How surely a value is known to stand in the document it is said to come from.
enum class confidence : std::uint8_t {
    published, ///< read in a printed copy of the table, or follows exactly from values that were
    practice,  ///< a rule of the trade: common practice, no source
    memory,    ///< known from memory of the document, not read again
    uncertain, ///< printed copies differ or could not be read: check before you rely on it
    stated,    ///< given by the user: a drawing, a reading, a wish
};

/// In words: "published", "common practice, no source", …
[[nodiscard]] constexpr text in_words(confidence c) noexcept {
    switch (c) {
    case confidence::published: return "published";
    case confidence::practice: return "common practice, no source";
    case confidence::memory: return "from memory of the document";
    case confidence::uncertain: return "uncertain";
    case confidence::stated: return "as stated by the user";
    }
    return "";
}

/// Where a number comes from.
struct source {
    text document; ///< standard and edition, or handbook
    text place;    ///< table, clause or page
    confidence how_sure = confidence::stated;
};

/// Where limits without a class come from: whoever stated them.
inline constexpr source stated_by_user{"as stated", "", confidence::stated};

/// What can hurt someone, or the work. Results carry those that go with them.
enum class caution : std::uint16_t {
    hot = 1,
    cold = 2,
    press_force = 4,
    under_pressure = 8,
    rotating = 16,
    brittle = 32,
    chemical = 64,
};

/// A set of cautions.
using cautions = flags<caution>;

[[nodiscard]] constexpr cautions operator|(caution a, caution b) noexcept { return cautions(a) | b; }

/// What to say of a caution: the usual words, and whom to ask.
[[nodiscard]] constexpr text in_words(caution c) noexcept {
    switch (c) {
    case caution::hot:
        return "Hot parts burn: gloves, tongs, a place to put them down; no oil or solvent near the flame.";
    case caution::cold:
        return "Cold burns; liquid nitrogen and dry ice drive out the air: gloves, face shield, open windows.";
    case caution::press_force:
        return "Pressing stores force: guard the work, stand aside, never a hammer on a hard or brittle part.";
    case caution::under_pressure:
        return "Pressure stores energy: relief valve first, follow local codes, have a qualified person check it.";
    case caution::rotating:
        return "Turning parts catch and burst: guards on, no loose sleeves, check the safe speed.";
    case caution::brittle:
        return "Brittle parts break without warning: eye protection, press evenly, no blows.";
    case caution::chemical: return "Read the safety data sheet of the fluid or compound and follow it.";
    }
    return "";
}

} // namespace fitwright

#endif
