#ifndef FITWRIGHT_TOOL_STOCK_HPP
#define FITWRIGHT_TOOL_STOCK_HPP

#include <fitwright/tool/drilled_hole.hpp>

namespace fitwright {

namespace sources {
inline constexpr source hand_reaming_stock{
    "Under Sizes of Reaming (trade-school note); Manual Reaming (Institut fuer Berufliche Entwicklung)",
    "stock for hand reaming", confidence::published};
inline constexpr source machine_reaming_stock{"Dormer technical handbook; Metal Cutting Tool Handbook",
                                              "stock for machine reaming", confidence::memory};
inline constexpr source hand_after_machine_stock{"Modern Shop Practice (H. M. Raymond)",
                                                 "fluted chucking reamers", confidence::published};
inline constexpr source finishing_stock{"practice", "stock for finishing", confidence::practice};
} // namespace sources

/// What a hole is finished by, and what came before where that matters.
enum class finishing : std::uint8_t {
    hand_reaming,
    machine_reaming,            ///< of a drilled hole
    machine_reaming_core_drill, ///< of a hole opened up by a core drill
    hand_reaming_after_machine, ///< two reamers: the first leaves this for the second
    boring,                     ///< the finishing pass, in steel
    honing,                     ///< after boring or reaming
    lapping,                    ///< a hardened steel bore
    grinding,                   ///< not hardened
    grinding_after_hardening,
};

/// What to leave on the diameter for the next tool.
struct stock {
    length least;
    length most;
    const source* from = &stated_by_user;

    [[nodiscard]] constexpr length middle() const noexcept { return (least + most) / 2; }
    /// Whether so much left on does for the next tool.
    [[nodiscard]] constexpr bool allows(length left) const noexcept { return least <= left && left <= most; }
    [[nodiscard]] constexpr const source& origin() const noexcept { return *from; }

    friend constexpr bool operator==(const stock& a, const stock& b) noexcept {
        return a.least == b.least && a.most == b.most;
    }
};

namespace detail {

struct stock_row {
    std::int16_t upto_mm;
    std::int16_t least_um, most_um;
};
struct machine_stock_row {
    std::int16_t upto_mm;
    std::int16_t drilled_um, core_drilled_um;
};
struct machine_stock_point {
    std::int16_t diameter_thou, stock_thou;
};
struct finishing_row {
    finishing by;
    std::int16_t from_mm, upto_mm;
    std::int16_t least_um, most_um;
};

// clang-format off

// Hand reaming, trade-school note; the trainees' handbook says the same but 0.3 for 21 to 32 mm and
// 0.5 for 33 to 50, and leaves the sizes between its rows open. Light metals: half as much again.
inline constexpr stock_row hand_stock_table[] = {
    // up to mm    um
    {      5,  100,  200},
    {     20,  200,  300},
    {     50,  300,  500},
    {  32767,  500, 1000}, // above 50 mm, open
};
// Machine reaming: one figure a range; Dormer technical handbook, from memory.
inline constexpr machine_stock_row machine_stock_table[] = {
    // up to mm  drilled  core-drilled
    {         4,    100,      100},
    {        11,    200,      150},
    {        39,    300,      200},
    {        50,    400,      300},
};
// Machine reaming: one figure a size; Metal Cutting Tool Handbook, from memory.
inline constexpr machine_stock_point machine_stock_points[] = {
    // 0.001 in
    {  250,  10},
    {  500,  15},
    { 1500,  25},
};
// Practice.
inline constexpr finishing_row finishing_table[] = {
    //                                    mm         um
    {finishing::boring,                    6,  50, 200, 500},
    {finishing::honing,                    6, 100,  20, 100},
    {finishing::lapping,                   1,  50,   5,  20},
    {finishing::grinding,                 10,  50, 200, 300},
    {finishing::grinding_after_hardening, 10,  50, 300, 500},
};

// clang-format on
static_assert(sizeof hand_stock_table / sizeof hand_stock_table[0] == 4);
static_assert(sizeof machine_stock_table / sizeof machine_stock_table[0] == 4);
static_assert(sizeof machine_stock_points / sizeof machine_stock_points[0] == 3);
static_assert(sizeof finishing_table / sizeof finishing_table[0] == 5);

[[nodiscard]] constexpr stock hand_stock(length finished, work_material material) noexcept {
    int row = 0;
    while (finished > detail::printed_mm(hand_stock_table[row].upto_mm)) ++row;
    const int percent = material.is_light_metal() ? 150 : 100;
    return {detail::printed_um(hand_stock_table[row].least_um) * percent / 100,
            detail::printed_um(hand_stock_table[row].most_um) * percent / 100, &sources::hand_reaming_stock};
}

/// The Metal Cutting Tool Handbook's figure between its points; 0 outside them.
[[nodiscard]] constexpr length machine_stock_by_points(length finished) noexcept {
    for (int i = 1; i < 3; ++i) {
        const auto below = machine_stock_points[i - 1];
        const auto above = machine_stock_points[i];
        if (finished < printed_thou(below.diameter_thou) || finished > printed_thou(above.diameter_thou))
            continue;
        return printed_thou(below.stock_thou) +
               printed_thou(above.stock_thou - below.stock_thou) *
                   (finished - printed_thou(below.diameter_thou)).nanometres() /
                   printed_thou(above.diameter_thou - below.diameter_thou).nanometres();
    }
    return {};
}

/// The hole that stock is reckoned from: the trade-school note counts every drill to cut 0.05 mm over.
[[nodiscard]] constexpr length counted_hole(length drill) noexcept { return drill + printed_um(50); }

[[nodiscard]] constexpr error no_stock(length finished, text allowed) noexcept {
    return error::composer(error_code::size_out_of_range)
           << "nothing says what stock to leave for " << written(finished).view() << " mm: allowed are "
           << allowed;
}

} // namespace detail

/// The stock to leave on the diameter of a hole that is to be finished at this size. Counted from the hole,
/// not the drill: a drill cuts 0.05 mm over, says the trade-school note.
///
/// - Hand reaming: published; light metals half as much again; above 50 mm the note is open.
/// - Machine reaming: from one handbook's figure up to another's, or up to what a hand reamer takes
///   where that is more. Both handbooks are from memory.
/// - Hand reaming after a machine reamer: published, one figure a range.
/// - Boring, honing, lapping, grinding: practice, the material makes no difference.
/// Error: a size not above 0, or outside the sizes that the source speaks of.
[[nodiscard]] constexpr result<stock> stock_to_leave(finishing by, length finished,
                                                     work_material material) noexcept {
    if (finished <= length()) return detail::no_stock(finished, "sizes above 0");
    switch (by) {
    case finishing::hand_reaming: return detail::hand_stock(finished, material);
    case finishing::machine_reaming:
    case finishing::machine_reaming_core_drill:
        for (const auto& row : detail::machine_stock_table) {
            if (finished > detail::printed_mm(row.upto_mm)) continue;
            const bool drilled = by == finishing::machine_reaming;
            length most = detail::hand_stock(finished, material).most;
            if (const length other = detail::machine_stock_by_points(finished); other > most) most = other;
            const length least = detail::printed_um(drilled ? row.drilled_um : row.core_drilled_um);
            return stock{least, most < least ? least : most, &sources::machine_reaming_stock};
        }
        return detail::no_stock(finished, "sizes up to 50 mm for machine reaming");
    case finishing::hand_reaming_after_machine: {
        const int figure = finished <= detail::printed_thou(1000)   ? 4
                           : finished <= detail::printed_thou(2000) ? 7
                                                                    : 10;
        return stock{detail::printed_thou(figure), detail::printed_thou(figure),
                     &sources::hand_after_machine_stock};
    }
    default: break;
    }
    for (const auto& row : detail::finishing_table) {
        if (row.by != by) continue;
        if (finished >= detail::printed_mm(row.from_mm) && finished <= detail::printed_mm(row.upto_mm))
            return stock{detail::printed_um(row.least_um), detail::printed_um(row.most_um),
                         &sources::finishing_stock};
        error::composer say = error::composer(error_code::size_out_of_range)
                              << "nothing says what stock to leave for " << written(finished).view()
                              << " mm: allowed are " << std::int64_t{row.from_mm} << " to "
                              << std::int64_t{row.upto_mm} << " mm";
        return say;
    }
    return detail::no_stock(finished, "the ways of finishing that are listed");
}

/// The drill to use under a reamer: of the drills of a series that leave a stock within the rule, counted
/// to cut 0.05 mm over, the one nearest the middle of it, of two as near the smaller.
/// `reamer` is the reamer's nominal size; `by` is one of the ways of reaming, or boring.
/// Error: as of `stock_to_leave`; no drill of the series leaves such a stock.
[[nodiscard]] constexpr result<drill_size> drill_under_reamer(length reamer, drill_series series,
                                                              finishing by, work_material material) noexcept {
    const auto rule = stock_to_leave(by, reamer, material);
    if (!rule) return rule.error();
    const drill_size* best = nullptr;
    length best_miss;
    for (const drill_size& drill : drills(series)) {
        const length left = reamer - detail::counted_hole(drill.diameter);
        if (!rule->allows(left)) continue;
        const length miss = left < rule->middle() ? rule->middle() - left : left - rule->middle();
        if (best != nullptr && miss >= best_miss) continue;
        best = &drill;
        best_miss = miss;
    }
    if (best != nullptr) return *best;
    return error::composer(error_code::tool_missing)
           << "no " << in_words(series) << " drill leaves " << written(rule->least).view() << " to "
           << written(rule->most).view() << " mm under a reamer of " << written(reamer).view()
           << " mm; try another series, or bore";
}

} // namespace fitwright

#endif
