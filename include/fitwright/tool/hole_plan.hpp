#ifndef FITWRIGHT_TOOL_HOLE_PLAN_HPP
#define FITWRIGHT_TOOL_HOLE_PLAN_HPP

#include <fitwright/tool/drawer.hpp>
#include <fitwright/tool/stock.hpp>

namespace fitwright {

/// What is done to a hole, in the order it is done.
enum class hole_operation : std::uint8_t { centre, drill, bore, ream, half_round, lap };

/// "centre", "drill", "bore", "ream", "half-round bit", "lap".
[[nodiscard]] constexpr text in_words(hole_operation o) noexcept {
    switch (o) {
    case hole_operation::centre: return "centre";
    case hole_operation::drill: return "drill";
    case hole_operation::bore: return "bore";
    case hole_operation::ream: return "ream";
    case hole_operation::half_round: return "half-round bit";
    case hole_operation::lap: return "lap";
    }
    return "";
}

/// One step of a plan. Sizes are diameters after the step; stock is on the diameter.
///
/// Stock is told twice. `counted_stock` is what the rule counts, and what the drill was chosen by: it lies
/// within `wanted_stock`. The rule for reaming comes from a trade-school note that counts every drilled hole
/// 0.05 mm over its drill. `least_stock` to `most_stock` is what the expected sizes leave; drills in average
/// shop conditions cut more over than the note has it, so that may be less, but something is left.
struct hole_step {
    hole_operation operation = hole_operation::centre; ///< what is done
    drawer_tool tool; ///< from the drawer; of a set of drills the one to take

    length least; ///< expected after the step; 0 for the centre
    length mean;
    length most;

    length counted_stock; ///< left for the next step as the rule counts it; 0 behind the last
    stock wanted_stock;   ///< the rule; before boring its most is for the last of several passes
    length least_stock;   ///< left by the expected sizes at least; 0 behind the last
    length mean_stock;    ///< left by the mean hole
    length most_stock;    ///< left at most

    bool decides_size = false; ///< true of one step: the last

    cautions warnings;                    ///< what can hurt in this step
    const source* from = &stated_by_user; ///< where the expected sizes come from
    text note;                            ///< under which conditions; may be empty
    flags<hole_doubt> doubts;             ///< what speaks against the expected sizes

    [[nodiscard]] constexpr const source& origin() const noexcept { return *from; }

    /// On which side an error of this step can still be put right, and how.
    [[nodiscard]] constexpr text put_right() const noexcept {
        return decides_size ? put_right_at_last() : put_right_on_the_way();
    }

private:
    friend class hole_plan;

    [[nodiscard]] constexpr text put_right_on_the_way() const noexcept {
        switch (operation) {
        case hole_operation::centre:
            return "Off its place: centre again before drilling. Later only boring moves a hole; drills, "
                   "reamers, bits and laps follow it.";
        case hole_operation::drill:
            return "Too small: open it up with a larger drill, if the next tool would have more than its stock "
                   "to cut. Too large by less than the stock left: the next step puts it right; by more: this "
                   "hole is lost to the plan.";
        case hole_operation::bore:
            return "Too small: another pass. Too large by less than the stock left: the next step puts it "
                   "right; by more: this hole is lost to the plan.";
        default:
            return "Too small: the lap has more to take off, and takes its time. Too large by less than the "
                   "stock left: the lap puts it right; by more: this hole is lost to the plan.";
        }
    }

    [[nodiscard]] constexpr text put_right_at_last() const noexcept {
        switch (operation) {
        case hole_operation::drill:
            return "Too small: a larger drill, a reamer or boring. Too large: only a sleeve or a larger "
                   "shaft.";
        case hole_operation::bore:
            return "Too small: another pass. Too large: only a sleeve or a larger shaft; so creep up on it.";
        case hole_operation::ream:
        case hole_operation::half_round:
            return "Too small: lap it. Too large: only a sleeve, a larger shaft or the next reamer up.";
        default:
            return "Too small: go on lapping. Too large: only a sleeve or a larger shaft; measure often.";
        }
    }

    /// The size from which the rule counts the stock for this step.
    [[nodiscard]] constexpr length size_to_count_from() const noexcept {
        const bool is_tool_s_own =
            operation == hole_operation::ream || operation == hole_operation::half_round;
        return is_tool_s_own ? (tool.least + tool.most) / 2 : mean;
    }
    /// The hole that the rule counts on behind this step.
    [[nodiscard]] constexpr length size_counted() const noexcept {
        return operation == hole_operation::drill ? detail::counted_hole(tool.least) : mean;
    }
};

/// The way to a hole with the tools at hand: every step with its sizes, and the final hole, which lies
/// within the wanted limits as far as the sources tell.
class hole_plan {
public:
    /// Longest plan: centre, drill, bore, ream, lap.
    static constexpr int capacity = 5;

    /// A plan for this hole, without steps yet: `plan_hole` puts them in.
    constexpr explicit hole_plan(const hole_limits& wanted) noexcept : wanted_(wanted) {}

    /// A look at the steps, for as long as the plan lives.
    [[nodiscard]] constexpr rows<hole_step> steps() const noexcept {
        return {steps_, static_cast<std::size_t>(size_)};
    }
    /// The limits that the plan is for.
    [[nodiscard]] constexpr const hole_limits& wanted() const noexcept { return wanted_; }

    /// The step that decides the size: the last.
    [[nodiscard]] constexpr const hole_step& deciding_step() const noexcept {
        return steps_[size_ > 0 ? size_ - 1 : 0];
    }
    /// The smallest and the largest final hole to be expected.
    [[nodiscard]] constexpr length least() const noexcept { return deciding_step().least; }
    [[nodiscard]] constexpr length most() const noexcept { return deciding_step().most; }

    /// How far the final hole stays inside the limits on its worse side; 0 if it may just touch one.
    [[nodiscard]] constexpr length margin() const noexcept {
        const length below = least() - wanted_.lower_limit();
        const length above = wanted_.upper_limit() - most();
        return below < above ? below : above;
    }

    /// How sure the size of the final hole is: the confidence of the step that decides it.
    [[nodiscard]] constexpr confidence how_sure() const noexcept { return deciding_step().origin().how_sure; }

    /// True where the tool alone decides the size, so that a trial hole in the same stuff has to prove it
    /// first. False where the work is measured while it is cut: bored or lapped.
    [[nodiscard]] constexpr bool needs_trial_hole() const noexcept {
        return deciding_step().operation != hole_operation::bore &&
               deciding_step().operation != hole_operation::lap;
    }

    /// What speaks against the size of the final hole.
    [[nodiscard]] constexpr flags<hole_doubt> doubts() const noexcept { return deciding_step().doubts; }

    /// All cautions of all steps.
    [[nodiscard]] constexpr cautions warnings() const noexcept {
        cautions all;
        for (const hole_step& s : steps()) all = all | s.warnings;
        return all;
    }

    /// Appends a step, which becomes the one that decides the size, and works out the stock that the step
    /// before leaves for it. What goes beyond the capacity is left out.
    constexpr void add(const hole_step& step, const stock& taken = {}) noexcept {
        if (size_ == capacity) return;
        if (size_ > 1) {
            hole_step& before = steps_[size_ - 1];
            before.least_stock = step.least - before.most;
            before.mean_stock = step.mean - before.mean;
            before.most_stock = step.most - before.least;
            before.counted_stock = step.size_to_count_from() - before.size_counted();
            before.wanted_stock = taken;
        }
        if (size_ > 0) steps_[size_ - 1].decides_size = false;
        steps_[size_] = step;
        steps_[size_].decides_size = true;
        ++size_;
    }

private:
    hole_step steps_[capacity];
    int size_ = 0;
    hole_limits wanted_;
};

} // namespace fitwright

#endif
