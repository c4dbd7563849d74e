#ifndef FITWRIGHT_RUNNING_FILM_RESULT_HPP
#define FITWRIGHT_RUNNING_FILM_RESULT_HPP

#include <fitwright/figure.hpp>
#include <fitwright/running/clearance_on.hpp>
#include <fitwright/running/sommerfeld.hpp>
#include <fitwright/running/units.hpp>
#include <fitwright/running/viscosity.hpp>

namespace fitwright {

/// What carries the shaft.
enum class film_regime : std::uint8_t {
    boundary,  ///< the peaks of the surfaces
    mixed,     ///< the oil in part, the peaks in part
    full_film, ///< the oil alone
};

/// In words, and what to do about it.
[[nodiscard]] constexpr text in_words(film_regime r) noexcept {
    switch (r) {
    case film_regime::boundary:
        return "boundary: no film carries; use the catalogue clearances, keep it oiled or greased, and mind "
               "pressure times speed";
    case film_regime::mixed:
        return "mixed: the surfaces touch in part; thicker oil, smoother surfaces or a bush that stands it";
    case film_regime::full_film: return "full film: the oil alone carries";
    }
    return "";
}

/// What makes a film less sure.
enum class film_doubt : std::uint16_t {
    lightly_loaded = 1,
    beyond_the_table = 2,
    turbulent = 4,
    turbulence_not_checked = 8,
    below_the_limit_film = 16,
    limit_film_by_rule = 32,
    longer_than_its_diameter = 64,
    methods_differ = 128,
    oil_out_too_hot = 256,
    starts_under_load = 512,
    viscosity_doubtful = 1024,
    clearance_taken_cold = 2048,
};

[[nodiscard]] constexpr flags<film_doubt> operator|(film_doubt a, film_doubt b) noexcept {
    return flags<film_doubt>(a) | b;
}

/// What is doubtful, and why.
[[nodiscard]] constexpr text in_words(film_doubt d) noexcept {
    switch (d) {
    case film_doubt::lightly_loaded:
        return "Eccentricity below 0.2: a light, fast shaft may whirl; take a shorter bearing, thinner oil or more clearance.";
    case film_doubt::beyond_the_table: return "Eccentricity above 0.95: beyond what both methods hold for.";
    case film_doubt::turbulent: return "The film is turbulent: more friction and heat than said here.";
    case film_doubt::turbulence_not_checked:
        return "Whether the film is laminar is not checked, as the density is not known.";
    case film_doubt::below_the_limit_film:
        return "The film is thinner than the limit: friction and wear are higher than said here.";
    case film_doubt::limit_film_by_rule:
        return "The limit film is Trumpler's for finely ground shafts: give Rz of both surfaces; tilt comes on top.";
    case film_doubt::longer_than_its_diameter:
        return "Longer than its diameter: it carries on its edges unless aligned; the formulas of ISO 7902 end here.";
    case film_doubt::methods_differ: return "The table and the formulas differ by more than a tenth.";
    case film_doubt::oil_out_too_hot: return "The oil leaves above 121 degC (Trumpler): it ages fast.";
    case film_doubt::starts_under_load:
        return "Above 2.07 MPa on the projected area (Trumpler): it wears at each start under load.";
    case film_doubt::viscosity_doubtful: return "The viscosity is doubtful itself.";
    case film_doubt::clearance_taken_cold:
        return "The clearance is taken as given though the film is 30 K or more from 20 degC: say how the parts grow.";
    }
    return "";
}

/// What one of the methods says of a film.
struct film_reading {
    double eccentricity = 0;         ///< as a share of the radial clearance: 0 centred, 1 touching
    length least_film;               ///< where it is thinnest
    double friction_coefficient = 0; ///< friction over load
    figure<volume_flow> side_flow;   ///< out at the ends, by the pressure of the film
};

/// A film at one clearance.
struct film_state {
    diametral_clearance clearance; ///< as it is when warm
    figure<dynamic_viscosity> viscosity;
    sommerfeld_number sommerfeld;               ///< the bearing's characteristic number
    film_reading by_table;                      ///< Raimondi and Boyd; the figures below are theirs
    film_reading by_formula;                    ///< ISO 7902-2, DIN 31652-2: a check
    bool has_formula = true;                    ///< not for bearings longer than their diameter
    figure<torque> drag;                        ///< friction at the shaft's surface
    figure<power> power_lost;                   ///< to friction
    figure<volume_flow> flow;                   ///< what the bearing draws
    figure<pressure> greatest_pressure;         ///< in the film
    property<temperature_difference> rise;      ///< of the oil on its way through; all the heat goes with it
    property<temperature> film_temperature;     ///< that the viscosity is taken at
    property<temperature> oil_out;              ///< as it leaves the bearing
    film_regime regime = film_regime::boundary; ///< boundary, mixed or full film
    flags<film_doubt> doubts;

    /// How far the formulas lie from the table, as a share: in least film, in friction. 0 without formulas.
    [[nodiscard]] constexpr double film_difference() const noexcept {
        if (!has_formula || by_table.least_film == length()) return 0;
        return static_cast<double>(by_formula.least_film.nanometres()) /
                   static_cast<double>(by_table.least_film.nanometres()) -
               1;
    }
    /// Of the two methods, as a share of the first.
    [[nodiscard]] constexpr double friction_difference() const noexcept {
        if (!has_formula) return 0;
        return by_formula.friction_coefficient / by_table.friction_coefficient - 1;
    }
};

/// The film at both ends of the clearance.
struct film_result {
    film_state tightest;                     ///< at the least clearance
    film_state loosest;                      ///< at the greatest clearance
    length limit_film;                       ///< below it the surfaces begin to touch
    length touching_film;                    ///< below it nothing but their peaks carries
    relative_clearance at_this_speed;        ///< what Vogelpohl recommends
    film_regime regime;                      ///< the worse of both
    flags<film_doubt> doubts;                ///< those of both
    flags<viscosity_doubt> viscosity_doubts; ///< what to mind of the oil's viscosity
    cautions take_care;
    source from;

    /// The thinnest film of both ends: what has to stay above the limit.
    [[nodiscard]] constexpr length least_film() const noexcept {
        const length tight = tightest.by_table.least_film;
        const length loose = loosest.by_table.least_film;
        return tight < loose ? tight : loose;
    }
};

namespace sources {
inline constexpr source oil_film{"Raimondi and Boyd, ASLE Trans. 1 (1958); ISO 7902-2, DIN 31652-2",
                                 "full bearing, steady load; checked against each other", confidence::memory};
} // namespace sources

} // namespace fitwright

#endif
