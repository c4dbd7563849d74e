#include "read_pair.hpp"

#include "measures.hpp"
#include "nearest.hpp"
#include "table_reader.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::side;

constexpr std::string_view want_names[] = {
    "stays put",    "slides",      "turns",          "oil film",  "no shake",
    "never seizes", "little leak", "pressure-tight", "centred",   "comes off",
    "no creep",     "passes heat", "never rubs",     "end float", "comes off by hand",
};

/// Nobody writes it: it follows from `press_at_most`.
constexpr std::string_view goes_in_name = "goes in";

std::vector<want> read_wants(table_reader& r) {
    const std::vector<std::string> names(std::begin(want_names), std::end(want_names));
    std::vector<want> all;
    for (const placed_text& written : r.texts("wants")) {
        const auto found = std::find(names.begin(), names.end(), written.text);
        if (found != names.end()) all.push_back(static_cast<want>(found - names.begin()));
        else
            r.report(written.where,
                     fmt::format("'{}' is no want{}", written.text, hint(written.text, names)));
    }
    if (!r.has("wants")) r.report_missing("wants", ": what the pair has to do, as in wants = [\"slides\"]");
    return all;
}

std::vector<std::string> read_states(table_reader& r, const job& so_far) {
    std::vector<std::string> known;
    for (const state& s : so_far.states) known.push_back(s.id);
    std::vector<std::string> all;
    for (const placed_text& written : r.texts("states")) {
        if (std::find(known.begin(), known.end(), written.text) != known.end()) all.push_back(written.text);
        else
            r.report(written.where,
                     fmt::format("there is no state '{}'{}", written.text, hint(written.text, known)));
    }
    return all;
}

part read_part_of(table_reader& r, const job& so_far) {
    const std::string id = r.required_text("part");
    if (id.empty()) return {};
    std::vector<std::string> known;
    for (const part& p : so_far.parts) {
        if (p.id == id) return p;
        known.push_back(p.id);
    }
    r.report(r.where("part"), fmt::format("there is no part '{}'{}", id, hint(id, known)));
    return {};
}

template <side Side> auto read_limits(std::string_view callout) {
    if constexpr (Side == side::hole) return fitwright::read_hole(callout);
    else return fitwright::read_shaft(callout);
}

/// The hole's or the shaft's half of a call-out, as the library writes it: "14 H7", "8 0/-0.008"; of an
/// inch fit, which has no halves, the whole.
template <side Side> std::string half_as_read(std::string_view callout) {
    const auto read = fitwright::read_callout(callout);
    if (!read) return {};
    const fitwright::callout_style style{.unit = read->unit};
    if (!read->has_classes) return std::string(written(*read));
    if constexpr (Side == side::hole) return std::string(written(read->nominal(), read->hole_class, style));
    else return std::string(written(read->nominal(), read->shaft_class, style));
}

/// What the drawing or a reading says of this part alone.
template <side Side> void read_own_size(table_reader& r, role<Side>& p) {
    const auto callout = r.placed("callout");
    const auto measured = r.placed("measured", "7.970 mm +/- 0.002 mm");
    p.has_own_size = callout || measured;
    if (callout && measured) r.report(measured->where, "a part has a call-out or is measured, not both");
    if (callout) {
        const auto limits = read_limits<Side>(callout->text);
        if (!limits) return r.report(*callout, limits.error());
        p.as_read = half_as_read<Side>(callout->text);
        p.limits = *limits;
    } else if (measured) {
        const auto reading = read_reading(measured->text);
        if (!reading) return r.report(*measured, reading.error());
        p.as_read = measured->text;
        p.limits = fitwright::measured<Side>(reading->size(), reading->uncertainty()).limits();
        p.measured = true;
    }
}

/// Readings of one part or several, and the instrument they were taken with.
template <side Side> void read_readings(table_reader& r, const job& so_far, role<Side>& p) {
    p.readings = r.lengths("readings");
    const auto with = r.placed("with");
    if (r.has("readings") != r.has("with"))
        return r.report_missing(r.has("with") ? "readings" : "with",
                                ": readings = [\"9.996 mm\"] go with the name of an instrument");
    if (!with) return;
    std::vector<std::string> known;
    for (const instrument& i : so_far.instruments) {
        known.push_back(i.name);
        if (i.name == with->text) p.with = i;
    }
    if (!p.with)
        return r.report(with->where,
                        fmt::format("there is no instrument '{}'{}", with->text, hint(with->text, known)));
    if (!p.with->reads || !p.with->error_limit)
        r.report(with->where, fmt::format("'{}' can't be relied on to any degree that is known: give the "
                                          "instrument 'reads' and 'error_limit'",
                                          with->text));
    const auto is_beyond = [&](const stated<fitwright::length>& reading) {
        const instrument& i = *p.with;
        const bool beyond =
            (i.from && reading.value < i.from->value) || (i.to && reading.value > i.to->value);
        if (beyond)
            r.report(r.where("readings"),
                     fmt::format("{} is beyond what the {} measures", reading.written, i.name));
        return beyond;
    };
    std::erase_if(p.readings, is_beyond);
}

template <side Side>
role<Side> read_role(const toml::table& table, std::string_view what, const job& so_far, document& doc) {
    table_reader r(table, std::string(what), doc);
    role<Side> p;
    p.part = read_part_of(r, so_far);
    read_own_size(r, p);
    read_readings(r, so_far, p);
    if constexpr (Side == side::hole) {
        p.outside = r.length("outside");
        p.wall = r.length("wall");
    } else {
        p.bore = r.length("bore");
    }
    r.finish();
    return p;
}

/// The call-out of both parts: an ISO fit or an inch fit.
void read_common_callout(table_reader& r, pair& p) {
    const auto callout = r.placed("callout");
    if (!callout) return;
    p.callout = callout->text;
    if ((p.hole && p.hole->has_own_size) || (p.shaft && p.shaft->has_own_size))
        return r.report(callout->where,
                        "a part of this pair has a size of its own already: give one or the other");
    const auto fit = fitwright::read_fit(callout->text);
    if (!fit) return r.report(*callout, fit.error());
    if (p.hole) {
        p.hole->limits = fit->hole();
        p.hole->as_read = half_as_read<side::hole>(callout->text);
    }
    if (p.shaft) {
        p.shaft->limits = fit->shaft();
        p.shaft->as_read = half_as_read<side::shaft>(callout->text);
    }
}

std::vector<link> read_links(table_reader& r, std::string_view key, document& doc) {
    std::vector<link> all;
    for (const toml::table* const table : r.tables(key)) {
        table_reader one(*table, "a size of the stack", doc);
        link l;
        l.name = one.required_text("name");
        l.callout = one.required_text("callout");
        if (const auto callout = one.placed("callout"); callout && !callout->text.empty()) {
            const auto read = fitwright::read_callout(callout->text);
            if (!read) one.report(*callout, read.error());
            else if (read->part != fitwright::callout_part::either)
                one.report(callout->where, "a size of a stack has deviations, no class");
            else l.limits = read->hole;
        }
        one.finish();
        all.push_back(std::move(l));
    }
    return all;
}

stack read_stack(const toml::table& table, document& doc) {
    table_reader r(table, "a stack", doc);
    stack s;
    s.gap = r.lengths("gap");
    if (!r.has("gap")) r.report_missing("gap", ": the least and the greatest that will do");
    else if (s.gap.size() != 2)
        r.report(r.where("gap"), "a gap has two lengths, the least and the greatest that will do");
    else if (s.gap[1].value < s.gap[0].value) r.report(r.where("gap"), "the least gap comes first");
    s.shims = r.lengths("shims");
    s.opens = read_links(r, "opens", doc);
    s.closes = read_links(r, "closes", doc);
    if (s.opens.empty()) r.report_missing("opens", ": the sizes that make the gap wider");
    if (s.closes.empty()) r.report_missing("closes", ": the sizes that make it narrower");
    r.finish();
    return s;
}

/// A shaft that stays as it is, and the clearance that the hole is to give it.
void read_leader(table_reader& r, pair& p) {
    const auto leads = r.placed("leads");
    p.clearance = r.window("clearance");
    if (!leads) {
        if (r.has("clearance"))
            r.report(r.where("clearance"), "only a pair whose shaft leads has a clearance to choose: "
                                           "write leads = \"shaft\" too");
        return;
    }
    p.shaft_leads = leads->text == "shaft";
    if (leads->text == "hole") {
        if (!p.hole || !p.hole->measured)
            r.report(leads->where, "a hole that leads is measured: give it 'measured'");
        if (r.has("clearance"))
            r.report(
                r.where("clearance"),
                "only a shaft that leads has a clearance to choose; the shaft for a hole is chosen by the "
                "wants: shake_at_most, left_at_least, leak_at_most, ...");
    } else if (!p.shaft_leads) {
        r.report(
            leads->where,
            fmt::format("'{}' does not lead: write leads = \"shaft\" for a shaft that stays as it is, or "
                        "\"hole\" for a hole",
                        leads->text));
    } else if (!p.shaft || !p.shaft->measured) {
        r.report(leads->where, "a shaft that leads is measured: give it 'measured'");
    }
}

std::vector<alternative> read_alternatives(table_reader& r) {
    std::vector<alternative> all;
    for (const placed_text& callout : r.texts("instead")) {
        const auto fit = fitwright::read_fit(callout.text);
        if (fit) all.push_back({callout.text, *fit});
        else r.report(callout, fit.error());
    }
    return all;
}

/// What one key of a pair asks of another.
void check_together(table_reader& r, const pair& p) {
    const auto missing = [&](std::string_view key, want w) {
        if (p.wants_to(w) && !r.has(key)) r.report_missing(key, fmt::format(": it wants '{}'", in_words(w)));
    };
    missing("leak_at_most", want::little_leak);
    missing("pressure", want::little_leak);
    missing("load", want::oil_film);
    missing("speed", want::oil_film);
    missing("oil", want::oil_film);
    missing("pressure", want::pressure_tight);
    missing("stack", want::end_float);
    if (p.stack) return;
    if (!r.has("hole")) r.report_missing("hole");
    if (!r.has("shaft")) r.report_missing("shaft");
    if (p.size && !p.is_open())
        return r.report(r.where("size"), "the sizes are given already: 'size' is for a pair whose sizes are "
                                         "left to choose");
    if (!p.is_open() || p.size || p.hole->has_own_size || p.shaft->has_own_size) return;
    r.report_missing("callout", ", and 'size' too: one says what is drawn, the other what to choose for, as "
                                "in size = \"14 mm\"");
}

} // namespace

std::string_view in_words(want w) {
    return w == want::goes_in ? goes_in_name : want_names[static_cast<std::size_t>(w)];
}

pair read_pair(const toml::table& table, const job& so_far, document& doc) {
    const std::size_t faults_before = doc.faults().size();
    table_reader r(table, "a pair", doc);
    pair p;
    p.id = r.required_text("id");
    p.name = r.required_text("name");
    p.behaviour = r.text("behaviour");
    if (const toml::table* const hole = r.table("hole"))
        p.hole = read_role<side::hole>(*hole, "a hole", so_far, doc);
    if (const toml::table* const shaft = r.table("shaft"))
        p.shaft = read_role<side::shaft>(*shaft, "a shaft", so_far, doc);
    if (const toml::table* const stack = r.table("stack")) p.stack = read_stack(*stack, doc);
    read_common_callout(r, p);
    read_leader(r, p);
    p.wants = read_wants(r);
    p.states = read_states(r, so_far);
    p.instead = read_alternatives(r);
    p.size = r.length("size");
    p.land = r.length("land");
    p.pressure = r.pressure("pressure");
    p.safety = r.factor("safety");
    p.leak_at_most = r.share("leak_at_most");
    p.shake_at_most = r.length("shake_at_most");
    p.left_at_least = r.length("left_at_least");
    p.holds = r.force("holds");
    p.press_at_most = r.force("press_at_most");
    p.load = r.force("load");
    p.speed = r.speed("speed");
    p.oil = r.oil("oil");
    for (const placed_text& caution : r.texts("cautions")) p.cautions.push_back(caution.text);
    check_together(r, p);
    r.finish();
    p.faults.assign(doc.faults().begin() + static_cast<std::ptrdiff_t>(faults_before), doc.faults().end());
    return p;
}

} // namespace job_sheet
