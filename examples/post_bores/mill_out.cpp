#include "cuts.hpp"

#include <fmt/format.h>

namespace post_bores {

namespace {

/// The round of one pass. Everything is a whole number of the control's steps,
/// so each arc begins and ends equally far from its centre.
class round_of_pass {
public:
    round_of_pass(block_writer& out, const machine& m, const operation& o, const spot_to_cut& at,
                  length diameter)
        : out_(out), words_(m.dialect), mill_(*o.mill), bottom_(o.bottom), at_(at), radius_(diameter / 2) {
        // Controls take F for the tool's centre or for the wall. For the centre it
        // is the smaller, so the edge is never faster than it should be.
        const double wall = static_cast<double>(radius_.nanometres());
        const double tool = static_cast<double>((mill_.diameter / 2).nanometres());
        feed_ = o.feed * (wall - tool) / wall;
    }

    void cut(const std::string& radius_register) {
        const length entry = entry_radius();
        const length left = at_.x + radius_ - entry; // where the arcs in and out have their middle
        out_.go({.code = "G0", .z = at_.clear});
        out_.go(
            {.code = "G1", .with = "G41 " + radius_register, .x = left, .y = at_.y - entry, .feed = feed_});
        out_.turn({.code = "G3", .x = at_.x + radius_, .y = at_.y, .feed = feed_}, {length(), entry, entry});
        wind_down();
        around(bottom_, bottom_);
        out_.turn({.code = "G3", .x = left, .y = at_.y + entry, .feed = feed_}, {-entry, length(), entry});
        out_.go({.code = "G1", .with = "G40", .x = at_.x, .y = at_.y, .feed = feed_});
        out_.go({.code = "G0", .z = at_.safe});
    }

private:
    /// Of the arcs in and out. Larger than the tool's radius, or the control
    /// can't follow on the inside; and such that the straight line before it is
    /// longer than the tool's radius too, or the control has no room to start its
    /// compensation.
    [[nodiscard]] length entry_radius() const {
        const length tool = mill_.diameter / 2;
        if (radius_ * 10 > tool * 22) return words_.on_grid(radius_ / 2);
        return words_.on_grid((radius_ + tool) / 2);
    }

    void wind_down() {
        const length deep = at_.clear - bottom_;
        const std::int64_t turns =
            (deep.nanometres() + mill_.pitch.nanometres() - 1) / mill_.pitch.nanometres();
        for (std::int64_t i = 0; i < turns; ++i)
            around(at_.clear - deep * i / turns, at_.clear - deep * (i + 1) / turns);
    }

    /// Once around from the right, in as many arcs as the control wants.
    void around(length from_z, length to_z) {
        const int arcs = words_.arcs_a_turn;
        for (int i = 0; i < arcs; ++i) {
            const direction from = corner(i);
            const direction to = corner(i + 1);
            const length z = from_z + (to_z - from_z) * (i + 1) / arcs;
            out_.turn({.code = "G3",
                       .x = at_.x + radius_ * to.x,
                       .y = at_.y + radius_ * to.y,
                       .z = z,
                       .feed = feed_},
                      {-radius_ * from.x, -radius_ * from.y, radius_});
        }
    }

    struct direction {
        int x;
        int y;
    };
    [[nodiscard]] direction corner(int i) const {
        constexpr direction quarters[] = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
        return quarters[i * (4 / words_.arcs_a_turn) % 4];
    }

    block_writer& out_;
    const dialect& words_;
    const mill& mill_;
    length bottom_;
    const spot_to_cut& at_;
    length radius_;
    double feed_ = 0;
};

} // namespace

void start(block_writer& out, const machine& m, const operation& o) {
    out.block(fmt::format("S{} M3", o.turns_a_minute));
    if (!m.dialect.coolant.empty()) out.block(m.dialect.coolant);
}

void stop(block_writer& out, const machine& m) {
    out.block("M5");
    if (!m.dialect.coolant.empty()) out.block("M9");
}

void mill_out(block_writer& out, const machine& m, const operation& o, const spot_to_cut& at,
              const std::string& radius_register) {
    out.go({.code = "G0", .x = at.x, .y = at.y});
    out.go({.code = "G0", .z = at.safe});
    if (o.passes.size() == 1) out.comment("one pass: prove the offset by a trial bore first");
    for (const length& diameter : o.passes) {
        if (&diameter == &o.passes.back() && o.passes.size() > 1) {
            stop(out, m);
            const bool by_radius = m.offsets.holds == register_holds::radius;
            out.comment(fmt::format("measure: the bore is to be {} now; correct {} by {} what it differs",
                                    m.dialect.number(o.passes[o.passes.size() - 2]), radius_register,
                                    by_radius ? "half" : "all"));
            out.block("M1");
            start(out, m, o);
        }
        out.comment(fmt::format("bore {}", m.dialect.number(diameter)));
        round_of_pass(out, m, o, at, diameter).cut(radius_register);
    }
}

} // namespace post_bores
