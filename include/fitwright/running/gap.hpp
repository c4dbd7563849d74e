#ifndef FITWRIGHT_RUNNING_GAP_HPP
#define FITWRIGHT_RUNNING_GAP_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/flags.hpp>
#include <fitwright/material/property.hpp>
#include <fitwright/material/units.hpp>
#include <fitwright/running/clearance_on.hpp>
#include <fitwright/running/flow.hpp>

// A ring-shaped gap with liquid pressed through it: a plunger in its barrel, a valve spool, a rod in its
// guide. What leaks through it is told by leak.hpp.

namespace fitwright {

/// The clearance of a gap on the diameter, from least to most. It is made from what says by its type which
/// clearance it means: a window or a fit (cold or at temperature), which are on the diameter, or one
/// clearance as measured, on either; never from a bare length.
class gap_clearance {
public:
    /// None: not stated.
    constexpr gap_clearance() noexcept = default;
    constexpr gap_clearance(clearance_window on_diameter) noexcept : on_diameter_(on_diameter) {}
    constexpr gap_clearance(diametral_clearance c) noexcept : on_diameter_{c.value, c.value} {}
    constexpr gap_clearance(radial_clearance c) noexcept : gap_clearance(diametral_clearance(c)) {}
    /// From a fit, or anything else with `min_clearance()` and `max_clearance()` on the diameter.
    template <class Pair>
        requires requires(const Pair& pair, length& l) {
            l = pair.min_clearance();
            l = pair.max_clearance();
        }
    constexpr gap_clearance(const Pair& pair) noexcept
        : on_diameter_{pair.min_clearance(), pair.max_clearance()} {
        // kept, so that a fit for another diameter is noticed
        if constexpr (requires { nominal_ = pair.hole().nominal(); }) nominal_ = pair.hole().nominal();
    }

    /// From least to most.
    [[nodiscard]] constexpr clearance_window on_diameter() const noexcept { return on_diameter_; }
    /// Of the fit that it was made from; 0 of any other.
    [[nodiscard]] constexpr length nominal() const noexcept { return nominal_; }

private:
    clearance_window on_diameter_{};
    length nominal_{};
};

/// How far the inner part lies off the centre of the bore, as a share of the radial gap: 0 is concentric, 1
/// touches. From least to most where it is not known.
struct eccentricity {
    double least;
    double most;

    static const eccentricity none;    ///< concentric
    static const eccentricity full;    ///< on one side of the bore
    static const eccentricity unknown; ///< anywhere between the two: an unguided plunger

    /// One that is known.
    [[nodiscard]] static constexpr eccentricity of(double share) noexcept { return {share, share}; }
};
inline constexpr eccentricity eccentricity::none{0, 0};
inline constexpr eccentricity eccentricity::full{1, 1};
inline constexpr eccentricity eccentricity::unknown{0, 1};

/// A ring-shaped gap and the liquid in it, hot or cold: the clearance and the viscosity are those of the
/// temperature that is asked about.
/// `gap{.diameter = 8_mm, .clearance = "8 H7/g6"_fit, .land = 20_mm, .pressure_drop = megapascals(2), …}`
struct gap {
    length diameter;           ///< of the middle of the gap; the nominal size is as good
    gap_clearance clearance{}; ///< on the diameter
    length land;               ///< how long the gap seals, along the axis
    pressure pressure_drop{};  ///< from one end of the land to the other
    dynamic_viscosity viscosity{};
    property<mass_density> density{}; ///< for the Reynolds number and the losses at both ends
    /// How fast the inner part moves along the axis: above zero with the leak, below zero against it.
    speed wall_speed{};
    eccentricity lies = eccentricity::unknown; ///< concentric, aside, or anywhere between
};

/// What makes a leak less certain than its number looks.
enum class leak_doubt : std::uint16_t {
    turbulent = 1,
    turbulent_at_the_widest = 2,
    short_land = 4,
    density_unknown = 8,
    gap_gives = 16,
    against_the_pressure = 32,
    law_ends = 64,
    delivers_nothing = 128,
};

[[nodiscard]] constexpr flags<leak_doubt> operator|(leak_doubt a, leak_doubt b) noexcept {
    return flags(a) | b;
}

/// What the doubt is, and which way it moves the leak.
[[nodiscard]] constexpr text in_words(leak_doubt d) noexcept {
    switch (d) {
    case leak_doubt::turbulent:
        return "Turbulent (Reynolds number above 2000): the laminar law says more than really leaks.";
    case leak_doubt::turbulent_at_the_widest:
        return "Turbulent where the gap is widest, if the part lies to one side: the law says rather too much.";
    case leak_doubt::short_land:
        return "Short land (inlet length above a tenth of it): the losses at its ends, 1.5 to 2 velocity heads "
               "by common practice, are a good part of the pressure.";
    case leak_doubt::density_unknown:
        return "Density not given: laminar flow and a long land are taken for granted.";
    case leak_doubt::gap_gives:
        return "Above 10 MPa the bore opens by micrometres (more leak) and oil thickens (less): neither is in it.";
    case leak_doubt::against_the_pressure:
        return "The moving wall drags more liquid against the pressure than leaks with it.";
    case leak_doubt::law_ends:
        return "The law ends at a radial gap of 0.05 of the diameter, and the budget is not used up there.";
    case leak_doubt::delivers_nothing: return "The leak is as much as the stroke: it may deliver nothing.";
    }
    return "";
}

namespace sources {
/// The concentric form and the factor 2.5 of a part that lies on one side were read in print.
inline constexpr source annular_gap{"M. G. Rabie, Fluid Power Engineering (2009)",
                                    "eq. 2.19; times 1 + 1.5 e^2 where eccentric", confidence::published};
} // namespace sources

} // namespace fitwright

#endif
