#include "answer.hpp"
#include "cuts.hpp"
#include <fitwright/grid.hpp>

#include <fmt/format.h>

namespace post_bores {

namespace {

class program_writer {
public:
    explicit program_writer(const answer& a) : a_(a), m_(*a.on), words_(a.on->dialect), out_(a.on->dialect) {
        for (const planned_hole& h : a.holes)
            if (&h == a.holes.data() || h.asked.z_top > highest_) highest_ = h.asked.z_top;
    }

    std::string write() {
        if (words_.percent_signs) out_.block("%");
        if (!words_.program_number.empty()) out_.block(words_.program_number);
        head();
        safe_line();
        for (const task& t : a_.tasks) {
            if (t.tool != tool_) change_to(t);
            work_on(t);
        }
        if (tool_ > 0) stop(out_, m_);
        out_.block("M30");
        if (words_.percent_signs) out_.block("%");
        return out_.take();
    }

private:
    void head() {
        out_.comment(fmt::format("{}, for {}", a_.list_name, m_.name));
        for (const std::string& c : cautions()) out_.comment(c);
        out_.comment(
            fmt::format("in {}; X0 Y0 Z0 are those of the list", words_.inches ? "inches" : "millimetres"));
        for (const numbered_tool& t : a_.tools) out_.comment(about(t));
        // The reason stands in the sheet: in capitals h7 would read H7 here.
        for (const hole_row* row : a_.left_out)
            out_.comment(fmt::format("hole {} is left out: line {} of the list, see the sheet",
                                     a_.list->text(*row, "tag"), row->faults[0].where.line));
    }

    std::string about(const numbered_tool& t) const {
        std::string words = fmt::format("T{} {}", t.number, t.name);
        if (t.mill == nullptr) return words;
        const bool by_radius = m_.offsets.holds == register_holds::radius;
        const length value = by_radius ? t.mill->diameter / 2 : t.mill->diameter;
        return words + fmt::format(", {} holds its {}, {} before the first cut",
                                   m_.offsets.radius_register.of(t.number), by_radius ? "radius" : "diameter",
                                   words_.number(value));
    }

    /// Whatever the last program left switched on is off; units first, alone.
    void safe_line() {
        out_.block(words_.units_word);
        out_.block(fmt::format("G17 G40{}{}", m_.offsets.length.empty() ? "" : " G49",
                               words_.cycles.empty() ? "" : " G80"));
        out_.block("G90 G94");
        out_.block(m_.offsets.work);
    }

    void change_to(const task& t) {
        if (tool_ > 0) stop(out_, m_);
        tool_ = t.tool;
        turns_ = 0;
        out_.forget();
        out_.comment(a_.tools[static_cast<std::size_t>(tool_ - 1)].name);
        out_.block(fmt::format("T{} {}", tool_, words_.tool_change));
        const std::string length_offset =
            m_.offsets.length.empty() ? "" : m_.offsets.length + " " + m_.offsets.length_register.of(tool_);
        out_.go({.code = "G0", .with = length_offset, .z = safe()});
    }

    void work_on(const task& t) {
        const hole& asked = t.hole->asked;
        const spot_to_cut at{.x = words_.on_grid(asked.x),
                             .y = words_.on_grid(asked.y),
                             .clear = words_.on_grid(asked.z_top + m_.heights.clearance),
                             .safe = safe(),
                             .top = words_.on_grid(asked.z_top)};
        if (t.what != nullptr && t.what->turns_a_minute != turns_) start(out_, m_, *t.what);
        if (t.what != nullptr) turns_ = t.what->turns_a_minute;
        out_.comment(fmt::format("{} {}", a_.list->text(*t.hole->row, "tag"), limits(*t.hole)));
        if (t.what == nullptr) touch(out_, m_, *t.hole, at);
        else if (t.what->mill == nullptr) sink(out_, m_, *t.what, at);
        else mill_out(out_, m_, *t.what, at, m_.offsets.radius_register.of(t.tool));
    }

    /// "14 H7, 14. to 14.018": in the program's unit, never wider than the
    /// drawing.
    std::string limits(const planned_hole& h) const {
        const std::string callout = a_.list->text(*h.row, "callout");
        const auto l = fitwright::rounded_inwards(h.asked.limits, words_.increment());
        if (!l) return callout;
        return fmt::format("{}, {} to {}", callout, words_.number(l->lower_limit()),
                           words_.number(l->upper_limit()));
    }

    [[nodiscard]] length safe() const { return words_.on_grid(highest_ + m_.heights.safe); }

    const answer& a_;
    const machine& m_;
    const dialect& words_;
    block_writer out_;
    length highest_;
    int tool_ = 0;
    int turns_ = 0;
};

} // namespace

std::string program(const answer& a) { return program_writer(a).write(); }

} // namespace post_bores
