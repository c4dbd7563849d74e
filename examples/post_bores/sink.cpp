#include "cuts.hpp"

namespace post_bores {

namespace {

using fitwright::hole_operation;

/// Drills deeper than three times their diameter go up after each peck.
bool pecks(const operation& o, const spot_to_cut& at) {
    return o.what == hole_operation::drill && at.top - o.bottom > o.diameter * 3;
}

/// The same moves without a cycle. A drill goes back down at its feed, since
/// nothing moves rapidly towards the work below the clearance.
void written_out(block_writer& out, const machine& m, const operation& o, const spot_to_cut& at) {
    out.go({.code = "G0", .z = at.clear});
    length depth = at.top;
    do {
        const length next = pecks(o, at) ? depth - m.heights.peck : o.bottom;
        depth = next > o.bottom ? next : o.bottom;
        out.go({.code = "G1", .z = depth, .feed = o.feed});
        if (o.what == hole_operation::ream) out.go({.code = "G1", .z = at.clear, .feed = o.feed});
        else if (depth > o.bottom) out.go({.code = "G0", .z = at.clear});
    } while (depth > o.bottom);
    out.go({.code = "G0", .z = at.safe});
}

} // namespace

void sink(block_writer& out, const machine& m, const operation& o, const spot_to_cut& at) {
    const std::string_view cycle = o.what == hole_operation::ream ? "G85" : pecks(o, at) ? "G83" : "G81";
    out.go({.code = "G0", .x = at.x, .y = at.y});
    out.go({.code = "G0", .z = at.safe});
    if (!m.dialect.has_cycle(cycle)) return written_out(out, m, o, at);

    std::string own = " R" + m.dialect.number(at.clear);
    if (cycle == "G83") own += " Q" + m.dialect.number(m.heights.peck);
    out.cycle("G98 " + std::string(cycle),
              {.code = cycle, .x = at.x, .y = at.y, .z = o.bottom, .feed = o.feed}, own);
    out.block("G80");
}

} // namespace post_bores
