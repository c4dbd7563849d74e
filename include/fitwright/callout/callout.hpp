#ifndef FITWRIGHT_CALLOUT_CALLOUT_HPP
#define FITWRIGHT_CALLOUT_CALLOUT_HPP

#include <fitwright/fit.hpp>
#include <fitwright/inch.hpp>
#include <fitwright/iso286/tolerance_class.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// Which part a call-out speaks of.
enum class callout_part : std::uint8_t {
    hole,   ///< `12 H7`
    shaft,  ///< `12 g6`
    fit,    ///< `12 H7/g6`, `1/2 in RC4`: both
    either, ///< `14 +0.018/0`, `7.978/7.986`: limits without a class, which do not say
};

/// What else a call-out says; handed on, never acted upon.
struct callout_notes {
    int count = 0;               ///< `2x`; 0 if none is given
    bool diameter_sign = false;  ///< a diameter sign, or DIA
    bool through = false;        ///< THRU
    bool has_depth = false;      ///< a depth is given
    length depth;                ///< that depth
    bool hole_envelope = false;  ///< the envelope requirement (E), ISO 14405-1, for the hole
    bool shaft_envelope = false; ///< the same for the shaft

    friend constexpr bool operator==(const callout_notes&, const callout_notes&) noexcept = default;
};

/// A drawing's call-out, read: which part, its limits, and what else it says.
struct callout {
    callout_part part = callout_part::either; ///< whether it is a hole, a shaft, both or either

    /// The unit of the nominal size as written; millimetres where none is.
    written_unit unit = written_unit::mm;

    /// True if the limits come from tolerance classes: `hole_class` and `shaft_class`, by `part`.
    bool has_classes = false;
    fitwright::hole_class hole_class{position::h, grade::it7};   ///< of a hole or a fit with classes
    fitwright::shaft_class shaft_class{position::h, grade::it7}; ///< of a shaft or a fit with classes

    /// True if the limits come from a standard inch fit: `inch_class`.
    bool has_inch_fit = false;
    inch_fit_class inch_class = inch_fit_class::rc1; ///< of an inch fit

    /// The hole's limits, unless `part` is the shaft. For `either`, what the limits are for a hole.
    hole_limits hole;
    /// The shaft's limits, unless `part` is the hole. For `either`, what the limits are for a shaft.
    shaft_limits shaft;

    callout_notes notes;

    [[nodiscard]] constexpr length nominal() const noexcept {
        return part == callout_part::shaft ? shaft.nominal() : hole.nominal();
    }

    /// Everything the same but where the limits come from.
    friend constexpr bool operator==(const callout& a, const callout& b) noexcept {
        const bool same_hole =
            a.part == callout_part::shaft || (a.hole == b.hole && a.hole_class == b.hole_class);
        const bool same_shaft =
            a.part == callout_part::hole || (a.shaft == b.shaft && a.shaft_class == b.shaft_class);
        const bool same_fit = a.has_inch_fit == b.has_inch_fit && a.inch_class == b.inch_class;
        return a.part == b.part && a.unit == b.unit && a.has_classes == b.has_classes && same_fit &&
               same_hole && same_shaft && a.notes == b.notes;
    }
};

} // namespace fitwright

#endif
