#include "read_job.hpp"

#include "measures.hpp"
#include "nearest.hpp"
#include "read_drawer.hpp"
#include "read_pair.hpp"
#include "stuff.hpp"
#include "table_reader.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

std::vector<std::string> words_only(const std::vector<placed_text>& placed) {
    std::vector<std::string> all;
    for (const placed_text& one : placed) all.push_back(one.text);
    return all;
}

template <class Item> std::vector<std::string> ids_of(const std::vector<Item>& items) {
    std::vector<std::string> all;
    for (const Item& item : items) all.push_back(item.id);
    return all;
}

/// Reads the list of tables under `key`, whose `id`s are all different.
template <class Item, class Read>
std::vector<Item> read_items(table_reader& from, std::string_view key, document& doc, Read read) {
    std::vector<Item> all;
    for (const toml::table* const table : from.tables(key)) {
        Item item = read(*table);
        const auto same = [&](const Item& other) { return other.id == item.id; };
        if (!item.id.empty() && std::any_of(all.begin(), all.end(), same)) {
            const fault twice{
                table_reader(*table, "", doc).where("id"),
                fmt::format("there is a {} '{}' already: every id is given once", key, item.id)};
            doc.report(twice.where, twice.message);
            if constexpr (requires { item.faults; }) item.faults.push_back(twice);
        }
        all.push_back(std::move(item));
    }
    return all;
}

void read_head(const toml::table& table, job& j, document& doc) {
    table_reader r(table, "[job]", doc);
    j.title = r.required_text("title");
    j.about = r.text("about");
    if (!r.has("sizes_at"))
        r.report_missing("sizes_at", ": the temperature at which the sizes are stated, such as \"20 degC\"");
    j.sizes_at = r.temperature("sizes_at");
    j.finest = r.grade("finest");
    j.cautions = words_only(r.texts("cautions"));
    r.finish();
}

std::vector<group> read_groups(const toml::table& table, document& doc) {
    table_reader r(table, "[groups]", doc);
    std::vector<std::pair<place, group>> placed;
    for (const auto& [id, node] : table)
        placed.push_back({place_of(node), {std::string(id.str()), r.required_text(id.str())}});
    std::sort(placed.begin(), placed.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<group> all;
    for (auto& [where, one] : placed) all.push_back(std::move(one));
    return all;
}

state read_state(const toml::table& table, const std::vector<group>& groups, document& doc) {
    table_reader r(table, "a state", doc);
    state s;
    s.id = r.required_text("id");
    s.note = r.text("note");
    if (const toml::table* const temperatures = r.required_table("temperatures")) {
        table_reader t(*temperatures, "temperatures", doc);
        for (const group& g : groups) {
            if (!t.has(g.id)) t.report_missing(g.id, ": every group has a temperature in every state");
            s.temperatures.push_back(t.temperature(g.id));
        }
        t.finish();
    }
    s.temperatures.resize(groups.size());
    r.finish();
    return s;
}

/// What kind of stuff a part is, said where the library doesn't know its material by name.
std::optional<fitwright::material_family> read_family(table_reader& r, const std::string& material) {
    const auto written = r.placed("family");
    if (!written) return std::nullopt;
    const auto family = family_called(written->text);
    if (!family)
        r.report(written->where, fmt::format("'{}' is no family of materials{}", written->text,
                                             hint(written->text, family_names())));
    else if (const auto known = fitwright::find_material(material); known && known->family != *family)
        r.report(written->where, fmt::format("{} is known, and its family is {}", material,
                                             std::string_view(in_words(known->family))));
    return family;
}

/// The known material whose figures stand in for those of a material that the library doesn't know.
std::optional<stated<fitwright::material>> read_stand_in(table_reader& r, const std::string& material) {
    const auto written = r.placed("taken_as");
    if (!written) return std::nullopt;
    const auto known = fitwright::find_material(written->text);
    if (!known) {
        r.report(*written, known.error());
        return std::nullopt;
    }
    if (const auto itself = fitwright::find_material(material); itself && itself->name != known->name)
        r.report(written->where,
                 fmt::format("{} is known by itself: say 'taken_as' only where it isn't", material));
    return stated<fitwright::material>{*known, written->text};
}

part read_part(const toml::table& table, const std::vector<group>& groups, document& doc) {
    table_reader r(table, "a part", doc);
    part p;
    p.id = r.required_text("id");
    p.name = r.required_text("name");
    p.material = r.required_text("material");
    p.family = read_family(r, p.material);
    p.taken_as = read_stand_in(r, p.material);
    p.of_its_own = r.temperature("temperature");
    p.brittle = r.flag("brittle");
    p.rz = r.length("rz");
    p.envelope = r.lengths("envelope");

    const auto group = r.placed("group");
    const std::vector<std::string> known_groups = ids_of(groups);
    if (group) p.group = group->text;
    if (!r.has("group") && !r.has("temperature"))
        r.report_missing("group", " (or a 'temperature' of its own)");
    if (group && std::find(known_groups.begin(), known_groups.end(), p.group) == known_groups.end())
        r.report(group->where, fmt::format("there is no group '{}'{}", p.group, hint(p.group, known_groups)));

    const std::vector<std::string> supplies = {"made", "bought", "found"};
    if (const auto written = r.placed("supply")) {
        const auto found = std::find(supplies.begin(), supplies.end(), written->text);
        if (found != supplies.end()) p.supply = static_cast<supply>(found - supplies.begin());
        else
            r.report(written->where,
                     fmt::format("'{}' is no supply{}", written->text, hint(written->text, supplies)));
    }
    r.finish();
    return p;
}

fluid read_fluid(const toml::table& table, document& doc) {
    table_reader r(table, "[fluid]", doc);
    fluid f;
    f.name = r.required_text("name");
    f.viscosity = r.viscosity("viscosity");
    f.viscosity_at = r.temperature("viscosity_at");
    f.delivery = r.pressure("delivery");
    f.relief_valve = r.pressure("relief_valve");
    f.stroke = r.length("stroke");
    f.seconds_a_shot = r.time("shot_every");
    f.seconds_under_pressure = r.time("pressure_lasts");
    f.note = r.text("note");
    r.finish();
    return f;
}

instrument read_instrument(const toml::table& table, document& doc) {
    table_reader r(table, "an instrument", doc);
    instrument i;
    i.name = r.required_text("name");
    i.from = r.length("from");
    i.to = r.length("to");
    i.reads = r.length("reads");
    i.error_limit = r.length("error_limit");
    i.note = r.text("note");
    r.finish();
    return i;
}

void sort(std::vector<fault>& faults) {
    std::stable_sort(faults.begin(), faults.end(),
                     [](const fault& a, const fault& b) { return a.where < b.where; });
}

job read_all(const toml::table& table, document& doc) {
    table_reader r(table, "a job", doc);
    job j;
    if (const toml::table* const head = r.required_table("job")) read_head(*head, j, doc);
    if (const toml::table* const groups = r.table("groups")) j.groups = read_groups(*groups, doc);
    j.states = read_items<state>(r, "state", doc,
                                 [&](const toml::table& t) { return read_state(t, j.groups, doc); });
    if (const toml::table* const fluid = r.table("fluid")) j.fluid = read_fluid(*fluid, doc);
    if (const toml::table* const drawer = r.table("drawer")) j.drawer = read_drawer(*drawer, doc);
    for (const toml::table* const t : r.tables("instrument"))
        j.instruments.push_back(read_instrument(*t, doc));
    j.parts =
        read_items<part>(r, "part", doc, [&](const toml::table& t) { return read_part(t, j.groups, doc); });
    if (!r.has("pair")) r.report_missing("pair", ": a job has at least one [[pair]]");
    const auto before_pairs = doc.faults().size();
    j.pairs = read_items<pair>(r, "pair", doc, [&](const toml::table& t) { return read_pair(t, j, doc); });
    const auto behind_pairs = doc.faults().size();
    r.finish();

    j.faults = doc.faults();
    j.faults_outside_pairs = doc.faults();
    const auto first = j.faults_outside_pairs.begin();
    j.faults_outside_pairs.erase(first + static_cast<std::ptrdiff_t>(before_pairs),
                                 first + static_cast<std::ptrdiff_t>(behind_pairs));
    sort(j.faults);
    sort(j.faults_outside_pairs);
    for (pair& p : j.pairs) sort(p.faults);
    return j;
}

} // namespace

std::variant<job, fault> read_job(std::string text) {
    document doc(std::move(text));
    try {
        return read_all(toml::parse(doc.text()), doc);
    } catch (const toml::parse_error& e) {
        const place at{e.source().begin.line, e.source().begin.column};
        return fault{at, std::string(e.description())};
    }
}

} // namespace job_sheet
