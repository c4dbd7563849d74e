#ifndef FITWRIGHT_TOOL_DRAWER_HPP
#define FITWRIGHT_TOOL_DRAWER_HPP

#include <fitwright/tool/drill.hpp>
#include <fitwright/tool/half_round_bit.hpp>
#include <fitwright/tool/reamer.hpp>

namespace fitwright {

/// What kind of tool lies in the drawer.
enum class tool_kind : std::uint8_t {
    none, ///< not a tool: made of sizes that make no sense, or of a class without a value
    centre_drill,
    drill,
    drill_steps,
    drill_series,
    hand_reamer,
    machine_reamer,
    boring_head,
    half_round_bit,
    lap,
};

/// A tool of the user's, or a set of drills; made by the functions below. A drawer is an array of them:
///
///     constexpr drawer_tool drawer[] = {
///         twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm}),
///         hand_reamer(10_mm, "H7"_hole_class),
///         boring_head({.from = 8_mm, .upto = 50_mm, .step = 0.01_mm}),
///     };
struct drawer_tool {
    tool_kind kind = tool_kind::none;
    fitwright::drill_series series =
        fitwright::drill_series::metric;          ///< of a drill: metric, fractional, number or letter
    std::uint8_t label = 0;                       ///< of a drill, see `drill_size`
    bool has_class = false;                       ///< a reamer sold for a class
    bool is_inch = false;                         ///< a reamer sold by a size in inches
    hole_class made_for{position::h, grade::it7}; ///< that class, at the nominal size
    length nominal;                               ///< of a reamer with a class, or sold in inches
    length least;                                 ///< the smallest the tool is, or makes
    length most;                                  ///< the largest
    length step;                                  ///< between drills of a set; of a dial, on the diameter
    overcut over;                                 ///< the hole beyond the tool: reamers and bits

    /// "9.7 mm drill", "#7 drill", "10 H7 hand reamer", "1/4 in hand reamer", "boring head from 8 to 50 mm", …
    [[nodiscard]] constexpr fixed_text<63> name() const noexcept;

    /// Whether it is a hand or a machine reamer.
    [[nodiscard]] constexpr bool is_reamer() const noexcept {
        return kind == tool_kind::hand_reamer || kind == tool_kind::machine_reamer;
    }
    /// A reamer's size, with what it cuts over.
    [[nodiscard]] constexpr reamer_size reamer() const noexcept {
        return {tool_limits(least, most), over.most, over.origin()};
    }
};

/// From one size to another, by steps on the diameter.
struct tool_range {
    length from;
    length upto; ///< the last of its sizes
    length step; ///< from one size to the next, on diameter
};

namespace detail {

[[nodiscard]] constexpr drawer_tool tool_of(tool_kind kind, tool_range r) noexcept {
    drawer_tool made;
    if (r.from <= length() || r.from > r.upto || r.step <= length()) return made;
    made.kind = kind;
    made.least = r.from;
    made.most = r.upto;
    made.step = r.step;
    return made;
}

[[nodiscard]] constexpr drawer_tool reamer_tool(tool_kind kind, const reamer_size& reamer) noexcept {
    drawer_tool made;
    if (!reamer.limits().exist() || reamer.oversize() < length()) return made;
    made.kind = kind;
    made.least = reamer.limits().lower_limit();
    made.most = reamer.limits().upper_limit();
    made.over = {length(), reamer.oversize() / 2, reamer.oversize(), &reamer.origin()};
    made.nominal = reamer.sold_in_inches_as();
    made.is_inch = made.nominal > length();
    return made;
}

[[nodiscard]] constexpr drawer_tool reamer_tool(tool_kind kind, length nominal, hole_class c) noexcept {
    const auto reamer = reamer_of(nominal, c);
    if (!reamer) return {};
    drawer_tool made = reamer_tool(kind, *reamer);
    made.has_class = true;
    made.made_for = c;
    made.nominal = nominal;
    return made;
}

} // namespace detail

/// A centre drill or another spotting tool; no plan asks whether the drawer has one.
[[nodiscard]] constexpr drawer_tool centre_drill() noexcept {
    drawer_tool made;
    made.kind = tool_kind::centre_drill;
    return made;
}

/// A drill of a series: `twist_drill(*nearest_drill(5_mm, drill_series::number))`.
[[nodiscard]] constexpr drawer_tool twist_drill(const drill_size& drill) noexcept {
    drawer_tool made;
    if (drill.diameter <= length()) return made;
    made.kind = tool_kind::drill;
    made.series = drill.series;
    made.label = drill.label;
    made.least = made.most = drill.diameter;
    return made;
}

/// A drill of any diameter.
[[nodiscard]] constexpr drawer_tool twist_drill(length diameter) noexcept {
    return twist_drill(drill_size{diameter});
}

/// A set of drills: `twist_drills({.from = 1_mm, .upto = 13_mm, .step = 0.1_mm})`. Steps of 0.01 mm at
/// least.
[[nodiscard]] constexpr drawer_tool twist_drills(tool_range set) noexcept {
    if (set.step < length::from_nanometres(10'000)) return {};
    return detail::tool_of(tool_kind::drill_steps, set);
}

/// The drills of a series up to a diameter.
[[nodiscard]] constexpr drawer_tool twist_drills(drill_series series, length upto) noexcept {
    drawer_tool made;
    const auto all = drills(series);
    if (upto < all[0].diameter) return made;
    made.kind = tool_kind::drill_series;
    made.series = series;
    made.least = all[0].diameter;
    made.most = upto;
    return made;
}

/// A hand reamer as it is sold for a class: `hand_reamer(10_mm, "H7"_hole_class)`.
[[nodiscard]] constexpr drawer_tool hand_reamer(length nominal, hole_class made_for) noexcept {
    return detail::reamer_tool(tool_kind::hand_reamer, nominal, made_for);
}

/// A hand reamer of known size: `hand_reamer(measured_shaft{7.981_mm, 1_um})`, or
/// `hand_reamer(*inch_reamer_of(0.25_in))`.
[[nodiscard]] constexpr drawer_tool hand_reamer(const reamer_size& reamer) noexcept {
    return detail::reamer_tool(tool_kind::hand_reamer, reamer);
}
/// The same by the limits of the reamer itself.
[[nodiscard]] constexpr drawer_tool hand_reamer(const tool_limits& limits) noexcept {
    return hand_reamer(reamer_size(limits));
}

/// A machine reamer as it is sold for a class.
[[nodiscard]] constexpr drawer_tool machine_reamer(length nominal, hole_class made_for) noexcept {
    return detail::reamer_tool(tool_kind::machine_reamer, nominal, made_for);
}

/// A machine reamer of known size.
[[nodiscard]] constexpr drawer_tool machine_reamer(const reamer_size& reamer) noexcept {
    return detail::reamer_tool(tool_kind::machine_reamer, reamer);
}
/// The same by the limits of the reamer itself.
[[nodiscard]] constexpr drawer_tool machine_reamer(const tool_limits& limits) noexcept {
    return machine_reamer(reamer_size(limits));
}

/// A boring head or bar: the bores it makes, from the smallest hole it enters, and its dial's step on
/// the diameter. After a trial cut and a reading it comes within half a step to either side.
[[nodiscard]] constexpr drawer_tool boring_head(tool_range bores) noexcept {
    return detail::tool_of(tool_kind::boring_head, bores);
}

/// A lap: the bores it makes, and what it takes off the diameter between two readings. It comes within
/// half of that to either side.
[[nodiscard]] constexpr drawer_tool lap(tool_range bores) noexcept {
    return detail::tool_of(tool_kind::lap, bores);
}

/// A half-round bit, or stock to make one of: `half_round_bit(measured_shaft{7.970_mm, 2_um}, overcut)`.
/// Without an overcut from trials it has the common one, on which no plan relies.
[[nodiscard]] constexpr drawer_tool half_round_bit(const tool_limits& tool,
                                                   const overcut& over = common_bit_overcut) noexcept {
    drawer_tool made;
    if (!tool.exist() || over.least > over.most) return made;
    made.kind = tool_kind::half_round_bit;
    made.least = tool.lower_limit();
    made.most = tool.upper_limit();
    made.over = over;
    return made;
}

namespace detail {

/// "1/4 in"; "0.251 in" where it is no whole 64th.
[[nodiscard]] constexpr fixed_text<31> inches_in_words(length size) noexcept {
    const std::int64_t sixty_fourths = size.nanometres() / printed_64ths(1).nanometres();
    if (printed_64ths(sixty_fourths) == size && sixty_fourths < 256)
        return drill_size{size, drill_series::fractional, static_cast<std::uint8_t>(sixty_fourths)}.name();
    return fixed_text<31>() << written(size, {.unit = written_unit::in}).view() << " in";
}

} // namespace detail

constexpr fixed_text<63> drawer_tool::name() const noexcept {
    fixed_text<63> t;
    const auto sizes = [&](text what) {
        t << what << " from " << written(least).view() << " to " << written(most).view() << " mm";
    };
    const auto one_size = [&](text what) {
        if (has_class)
            t << written(nominal).view() << " " << letters(made_for.position, side::hole)
              << made_for.grade.name();
        else if (is_inch) t << detail::inches_in_words(nominal).view();
        else t << written((least + most) / 2).view() << " mm";
        t << " " << what;
    };
    switch (kind) {
    case tool_kind::none: t << "not a tool"; break;
    case tool_kind::centre_drill: t << "centre drill"; break;
    case tool_kind::drill: t << drill_size{least, series, label}.name().view() << " drill"; break;
    case tool_kind::drill_steps:
        sizes("drills");
        t << " by " << written(step).view();
        break;
    case tool_kind::drill_series:
        t << in_words(series) << " drills up to " << written(most).view() << " mm";
        break;
    case tool_kind::hand_reamer: one_size("hand reamer"); break;
    case tool_kind::machine_reamer: one_size("machine reamer"); break;
    case tool_kind::boring_head: sizes("boring head"); break;
    case tool_kind::half_round_bit: one_size("half-round bit"); break;
    case tool_kind::lap: sizes("lap"); break;
    }
    return t;
}

} // namespace fitwright

#endif
