#include "cuts.hpp"

#include <fmt/format.h>

namespace post_bores {

void touch(block_writer& out, const machine& m, const planned_hole& p, const spot_to_cut& at) {
    const probe& by = *m.probe;
    const length half_way = p.asked.depth / 2;
    const length z = at.top - (by.depth < half_way ? by.depth : half_way);
    const length reach = (p.asked.limits.upper_limit() - by.ball) / 2 + by.overtravel;
    out.go({.code = "G0", .x = at.x, .y = at.y});
    out.go({.code = "G0", .z = at.clear});
    out.go({.code = "G1", .z = z, .feed = by.feed});
    int variable = by.first_result;
    for (const length x : {at.x - reach, at.x + reach}) {
        out.go({.code = by.word, .x = x, .feed = by.feed});
        out.block(fmt::format("#{}={}", variable++, by.trip_x));
        out.forget(); // it stands where it touched
        out.go({.code = "G1", .x = at.x, .y = at.y, .z = z, .feed = by.feed});
    }
    out.go({.code = "G0", .z = at.safe});
    out.comment(fmt::format("size across X: #{} less #{} and the ball, {} as it is qualified",
                            by.first_result + 1, by.first_result, m.dialect.number(by.ball)));
    out.block("M0");
}

} // namespace post_bores
