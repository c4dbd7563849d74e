#ifndef FITWRIGHT_RUNNING_JOURNAL_HPP
#define FITWRIGHT_RUNNING_JOURNAL_HPP

#include <fitwright/running/clearance_on.hpp>
#include <fitwright/running/fluid.hpp>

namespace fitwright {

/// Rz of both surfaces, peak to valley; 0 is not known.
struct peak_heights {
    length shaft = {};
    /// Rz of the bearing.
    length bore = {};
};

/// How much each part grows for each kelvin; with both known the clearance is that at the film's temperature.
/// A bush held in a colder housing closes more than this: then give the clearance as it is when warm.
struct bearing_growth {
    property<expansion_coefficient> shaft = {};
    /// Rz of the bearing.
    property<expansion_coefficient> bore = {};
};

/// A shaft that turns in a plain round bearing full of oil, under a steady load. Written with designated
/// initialisers; what is left out is not known, and what is needed is asked for.
///
///     film({.diameter = 25_mm, .width = 20_mm, .clearance = "25 H7/f7"_fit, .load = newtons(300),
///           .speed = revolutions_per_minute(1450), .lubricant = *spindle_oil, .oil_in = 40_degC});
struct journal {
    length diameter;
    length width;                          ///< how long the bearing is, along the shaft
    bearing_clearance clearance;           ///< as built, or as the film has it
    property<force> load = {};             ///< across the shaft
    property<rotational_speed> speed = {}; ///< of the shaft
    fluid lubricant = {};                  ///< the oil
    property<temperature> oil_in = {};     ///< as it comes to the bearing
    /// Rz of both surfaces.
    peak_heights roughness = {};
    bearing_growth growth = {}; ///< of shaft and bore with the film's heat
};

} // namespace fitwright

#endif
