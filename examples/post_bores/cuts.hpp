#ifndef POST_BORES_CUTS_HPP
#define POST_BORES_CUTS_HPP

#include "block_writer.hpp"
#include "planned_hole.hpp"

// The moves of one tool at one hole. Each begins and ends in the hole's middle
// at the safe height.

namespace post_bores {

/// Where a tool works, on the control's grid.
struct spot_to_cut {
    length x;
    length y;
    length clear; ///< Z: nothing moves rapidly below
    length safe;  ///< Z: from hole to hole
    length top;
};

/// Centres, drills, and reams: by a cycle where the control has it.
void sink(block_writer& out, const machine& m, const operation& o, const spot_to_cut& at);

/// Mills a bore with cutter compensation, from its middle out: down a helix to
/// each diameter in turn, and once around on the floor. Stops to measure before
/// the last pass, if there are several.
void mill_out(block_writer& out, const machine& m, const operation& o, const spot_to_cut& at,
              const std::string& radius_register);

/// The spindle and the coolant.
void start(block_writer& out, const machine& m, const operation& o);
void stop(block_writer& out, const machine& m);

/// Touches the wall at both ends of X, writes the places into variables of the
/// control, and stops.
void touch(block_writer& out, const machine& m, const planned_hole& p, const spot_to_cut& at);

} // namespace post_bores

#endif
