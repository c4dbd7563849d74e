#include "read_drawer.hpp"

#include "measures.hpp"
#include "table_reader.hpp"

#include <fmt/format.h>

namespace job_sheet {

namespace {

using fitwright::drawer_tool;
using fitwright::length;
using tools = std::vector<stated<drawer_tool>>;

/// A table of three lengths: from one size to another by a step. Sizes that make no tool are reported.
template <class Make>
std::optional<stated<drawer_tool>> read_range(const toml::table& table, std::string_view what,
                                              std::string_view step, document& doc, Make make) {
    table_reader r(table, std::string(what), doc);
    const std::string material = what == "a lap" ? r.required_text("material") : std::string();
    for (const std::string_view key : {std::string_view("from"), std::string_view("to"), step})
        if (!r.has(key)) r.report_missing(key);
    const auto from = r.length("from");
    const auto to = r.length("to");
    const auto by = r.length(step);
    r.finish();
    if (!from || !to || !by) return std::nullopt;
    const drawer_tool made = make({.from = from->value, .upto = to->value, .step = by->value});
    if (made.kind == fitwright::tool_kind::none) {
        r.report(r.where(), fmt::format("{} from {} to {} by {} makes no sense: sizes and step are above 0, "
                                        "the smaller size comes first, drills go by 0.01 mm at least",
                                        what, from->written, to->written, by->written));
        return std::nullopt;
    }
    return stated<drawer_tool>{made, fmt::format("{}{}{} to {} by {}", material, material.empty() ? "" : " ",
                                                 from->written, to->written, by->written)};
}

/// The fractional series by its name, so that a plan says 9/32 in and not 7.14375 mm.
drawer_tool drills_of(fitwright::tool_range set) {
    const length sixty_fourth = length::from_nanometres(396'875);
    if (set.from == sixty_fourth && set.step == sixty_fourth)
        return fitwright::twist_drills(fitwright::drill_series::fractional, set.upto);
    return fitwright::twist_drills(set);
}

/// "8 H7": a hand reamer as it is sold for the class.
tools read_reamers(table_reader& r) {
    tools all;
    for (const placed_text& written : r.texts("reamers")) {
        const auto hole = fitwright::read_callout(written.text);
        if (!hole) {
            r.report(written, hole.error());
        } else if (hole->part != fitwright::callout_part::hole || !hole->has_classes) {
            r.report(written.where, fmt::format("'{}' is no hole with a class, such as 8 H7; reamers without "
                                                "one go into 'odd_reamers'",
                                                written.text));
        } else if (const auto made = fitwright::reamer_of(hole->nominal(), hole->hole_class); !made) {
            r.report(written.where, std::string(made.error().message()));
        } else {
            all.push_back({fitwright::hand_reamer(hole->nominal(), hole->hole_class), written.text});
        }
    }
    return all;
}

/// "1/4 in": made in inches; "7.98 +0.005/0": between limits; "7.982 mm +/- 0.001 mm": as measured.
tools read_odd_reamers(table_reader& r) {
    tools all;
    for (const placed_text& written : r.texts("odd_reamers", "7.98 +0.005/0")) {
        if (const auto size = read_length(written.text)) {
            const bool in_inches = written.text.find_first_of("i\"") != std::string::npos;
            const auto made = fitwright::inch_reamer_of(*size);
            if (!in_inches)
                r.report(written.where,
                         "nothing tells the limits of a metric reamer by its size: write them as in "
                         "7.98 +0.005/0, or as measured, 7.982 mm +/- 0.001 mm");
            else if (!made) r.report(written, made.error());
            else all.push_back({fitwright::hand_reamer(*made), written.text});
            continue;
        }
        const auto limits = fitwright::read_callout(written.text);
        if (!limits) {
            r.report(written, limits.error());
        } else if (limits->part != fitwright::callout_part::either) {
            r.report(written.where, "an odd reamer has deviations, no class; write it as in 7.98 +0.005/0");
        } else if (const fitwright::tool_limits t(limits->hole.lower_limit(), limits->hole.upper_limit());
                   !t.exist()) {
            r.report(written.where, "a reamer's sizes are above 0");
        } else {
            all.push_back({fitwright::hand_reamer(t), written.text});
        }
    }
    return all;
}

tools read_bit_stock(table_reader& r) {
    tools all;
    for (const placed_text& written : r.texts("bit_stock", "7.970 mm +/- 0.002 mm")) {
        const auto reading = read_reading(written.text);
        if (!reading) r.report(written, reading.error());
        else if (!fitwright::tool_limits(*reading).exist())
            r.report(written.where, "the size of a rod is above 0");
        else all.push_back({fitwright::half_round_bit(*reading), written.text});
    }
    return all;
}

} // namespace

drawer read_drawer(const toml::table& table, document& doc) {
    table_reader r(table, "[drawer]", doc);
    drawer d;
    for (const toml::table* const drills : r.tables("drills"))
        if (auto set = read_range(*drills, "drills", "by", doc, drills_of)) d.drills.push_back(*set);
    d.reamers = read_reamers(r);
    for (auto& odd : read_odd_reamers(r)) d.reamers.push_back(std::move(odd));
    d.bit_stock = read_bit_stock(r);
    for (const toml::table* const lap : r.tables("laps"))
        if (auto one = read_range(*lap, "a lap", "step", doc, fitwright::lap)) d.laps.push_back(*one);
    if (const toml::table* const head = r.table("boring_head"))
        d.boring_head = read_range(*head, "a boring head", "step", doc, fitwright::boring_head);
    r.finish();
    return d;
}

} // namespace job_sheet
