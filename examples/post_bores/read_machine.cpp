#include "read_machine.hpp"

#include "job_sheet/read_drawer.hpp"
#include "read_dialect.hpp"
#include "read_family.hpp"
#include <fitwright/gauge/uncertainty.hpp>

#include <fmt/format.h>

#include <algorithm>

namespace post_bores {

namespace {

using job_sheet::document;
using job_sheet::fault;

heights read_heights(const toml::table& table, document& doc) {
    table_reader r(table, "[heights]", doc);
    heights h;
    h.safe = required_length(r, "safe");
    h.clearance = required_length(r, "clearance");
    h.breakthrough = required_length(r, "breakthrough");
    h.reamer_lead = required_length(r, "reamer_lead");
    h.peck = required_length(r, "peck");
    if (h.safe < h.clearance) r.report(r.where("safe"), "'safe' is below 'clearance'");
    r.finish();
    return h;
}

spot read_spot(const toml::table& table, document& doc) {
    table_reader r(table, "[spot]", doc);
    spot s;
    s.diameter = required_length(r, "diameter");
    s.depth = required_length(r, "depth");
    r.finish();
    return s;
}

void read_spindle(const toml::table& table, machine& m, document& doc) {
    table_reader r(table, "[spindle]", doc);
    m.slowest = required_whole(r, "slowest", 1, 200'000);
    m.fastest = required_whole(r, "fastest", 1, 200'000);
    if (m.slowest > m.fastest) r.report(r.where("slowest"), "'slowest' is above 'fastest'");
    r.finish();
}

std::vector<fitwright::drawer_tool> read_tools(const toml::table& table, document& doc) {
    for (const std::string_view key : {"boring_head", "bit_stock", "laps"})
        if (const toml::node* const node = table.get(key))
            doc.report(job_sheet::place_of(*node),
                       fmt::format("'{}' is for work by hand: a machine's drawer has "
                                   "drills, reamers and "
                                   "odd_reamers; what bores are [[mill]]s",
                                   key));
    const job_sheet::drawer d = job_sheet::read_drawer(table, doc);
    std::vector<fitwright::drawer_tool> all;
    for (const auto& set : d.drills) all.push_back(set.value);
    for (const auto& reamer : d.reamers) {
        all.push_back(reamer.value);
        all.back().kind = fitwright::tool_kind::machine_reamer;
    }
    return all;
}

mill read_mill(const toml::table& table, const dialect& words, document& doc) {
    table_reader r(table, "a mill", doc);
    mill m;
    m.diameter = required_length(r, "diameter");
    const length from = required_length(r, "bores_from");
    const length to = required_length(r, "bores_to");
    m.reach = required_length(r, "reach");
    m.pitch = required_length(r, "pitch");
    m.sideways = required_length(r, "sideways");
    // With less room the entry line could not be longer than the tool's radius.
    if (from * 5 < m.diameter * 6)
        r.report(r.where("bores_from"), "a mill needs a bore of at least 1.2 times its diameter to start its "
                                        "compensation in");
    if (m.sideways * 2 > m.diameter)
        r.report(r.where("sideways"), "a pass takes off the radius of the mill at most");
    m.as_bores = fitwright::boring_head({.from = from, .upto = to, .step = words.increment() * 2});
    if (from > to) r.report(r.where("bores_to"), "'bores_to' is below 'bores_from'");
    r.finish();
    return m;
}

probe read_probe(const toml::table& table, document& doc) {
    table_reader r(table, "[probe]", doc);
    probe p;
    p.word = required_word(r, "word", "G31 or G38.2");
    p.feed = required_speed(r, "feed", {.unit = "mm/min"});
    p.ball = required_length(r, "ball");
    p.depth = required_length(r, "depth");
    p.overtravel = required_length(r, "overtravel");
    p.trip_x = r.required_text("trip_x");
    p.first_result = required_whole(r, "first_result", 1, 9998);
    if (p.trip_x.find_first_not_of("#0123456789") != std::string::npos)
        r.report(r.where("trip_x"), "a variable of the control is written as in \"#5061\"");
    r.finish();
    return p;
}

cutting::rate read_rate(table_reader& from, std::string_view key, document& doc) {
    const toml::table* const table = from.required_table(key);
    if (table == nullptr) return {};
    table_reader r(*table, std::string(key), doc);
    cutting::rate made;
    made.speed = required_speed(r, "speed", {.unit = "m/min"});
    if (!r.has("feed")) r.report_missing("feed", ": a turn, of the tool's diameter, such as \"1.5 %\"");
    if (const auto share = r.share("feed")) made.feed = share->value;
    if (r.has("feed") && !(made.feed > 0)) r.report(r.where("feed"), "a feed is above 0");
    r.finish();
    return made;
}

cutting read_cutting(const toml::table& table, document& doc) {
    table_reader r(table, "[[cutting]]", doc);
    cutting c;
    const std::string family = r.required_text("family");
    const auto read = read_family(family);
    if (read) c.family = *read;
    else if (!family.empty()) r.report(r.where("family"), std::string(read.error().message()));
    c.drill = read_rate(r, "drill", doc);
    c.ream = read_rate(r, "ream", doc);
    c.mill = read_rate(r, "mill", doc);
    r.finish();
    return c;
}

gauging read_instrument(const toml::table& table, document& doc) {
    table_reader r(table, "an instrument", doc);
    gauging g;
    g.name = r.required_text("name");
    g.from = required_length(r, "from");
    g.to = required_length(r, "to");
    g.reads = required_length(r, "reads");
    const length error_limit = required_length(r, "error_limit");
    const auto uncertainty =
        fitwright::expanded_uncertainty({.resolution = g.reads, .error_limit = error_limit});
    if (uncertainty) g.uncertainty = *uncertainty;
    else r.report(r.where(), std::string(uncertainty.error().message()));
    r.finish();
    return g;
}

machine read_all(const toml::table& table, document& doc) {
    table_reader r(table, "a machine file", doc);
    machine m;
    m.name = r.required_text("name");
    if (const auto* const t = r.required_table("dialect")) m.dialect = read_dialect(*t, doc);
    if (const auto* const t = r.required_table("offsets")) m.offsets = read_offsets(*t, doc);
    if (const auto* const t = r.required_table("heights")) m.heights = read_heights(*t, doc);
    if (const auto* const t = r.required_table("spindle")) read_spindle(*t, m, doc);
    if (const auto* const t = r.required_table("drawer")) m.drawer = read_tools(*t, doc);
    if (const auto* const t = r.required_table("spot")) m.spot = read_spot(*t, doc);
    for (const auto* const t : r.tables("mill")) m.mills.push_back(read_mill(*t, m.dialect, doc));
    if (const auto* const t = r.table("probe")) m.probe = read_probe(*t, doc);
    for (const auto* const t : r.tables("cutting")) m.cutting.push_back(read_cutting(*t, doc));
    for (const auto* const t : r.tables("instrument")) m.instruments.push_back(read_instrument(*t, doc));
    if (m.cutting.empty()) r.report_missing("cutting", ": how fast to cut each kind of stuff");
    r.finish();
    return m;
}

} // namespace

std::variant<machine, std::vector<fault>> read_machine(std::string text) {
    document doc(std::move(text));
    try {
        machine m = read_all(toml::parse(doc.text()), doc);
        if (doc.faults().empty()) return m;
        std::vector<fault> faults = doc.faults();
        std::stable_sort(faults.begin(), faults.end(),
                         [](const fault& a, const fault& b) { return a.where < b.where; });
        return faults;
    } catch (const toml::parse_error& e) {
        return std::vector<fault>{
            {{e.source().begin.line, e.source().begin.column}, std::string(e.description())}};
    }
}

} // namespace post_bores
