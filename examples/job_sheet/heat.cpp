#include "heat.hpp"

#include "figures.hpp"
#include "pressing.hpp"
#include "stuff.hpp"
#include <fitwright/io/source.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace job_sheet {

namespace {

using fitwright::fit_kind;
using fitwright::length;

std::string celsius(const fitwright::temperature& t) { return fmt::format("{:.0f} C", t.value()); }

/// The states one after the other; the first that is tightest, and the first that is loosest.
void go_through_states(const pair& p, const fitwright::fit& f, const fitwright::material& hole,
                       const fitwright::material& shaft, const job& j, heat_answer& h) {
    fitwright::flags<fitwright::thermal_doubt> doubts;
    const pair* const seat = seat_of(p.hole->part, j);
    for (const state& s : j.states) {
        if (!counts_for(p, s)) continue;
        hot_row row{.state = s.id, .hole_at = "?", .shaft_at = "?", .clearance = {}, .no_answer = {}};
        const auto hole_at = temperature_of(p.hole->part, s, j);
        const auto shaft_at = temperature_of(p.shaft->part, s, j);
        if (hole_at) row.hole_at = hole_at->written;
        if (shaft_at) row.shaft_at = shaft_at->written;
        if (hole_at && shaft_at) {
            const auto hot = fitwright::at_temperature(f, {hole, hole_at->value}, {shaft, shaft_at->value});
            if (hot) {
                row.clearance = hot->clearance;
                const auto moves = seat != nullptr ? bore_moves_in(*seat, s, j) : std::nullopt;
                if (moves) {
                    const fitwright::hole_limits bore = bore_in_service(f.hole(), *moves);
                    row.clearance = {bore.lower_limit() - hot->shaft.upper_limit(),
                                     bore.upper_limit() - hot->shaft.lower_limit()};
                    h.held_in = fmt::format("the {} held in the {}, pair {}", p.hole->part.name,
                                            seat->hole->part.name, seat->id);
                }
                doubts |= hot->doubts;
                h.take_care |= hot->take_care;
            } else row.no_answer = hot.error().message();
        } else row.no_answer = "how warm the parts are is not stated";
        h.rows.push_back(std::move(row));
        const auto& here = h.rows.back().clearance;
        const std::size_t at = h.rows.size() - 1;
        if (!here) continue;
        if (!h.tightest || here->least < h.rows[*h.tightest].clearance->least) h.tightest = at;
        if (!h.loosest || here->most > h.rows[*h.loosest].clearance->most) h.loosest = at;
    }
    doubts.for_each([&](fitwright::thermal_doubt d) { h.doubts.emplace_back(in_words(d)); });
}

void add_happening(std::string what, const fitwright::result<fitwright::common_temperatures>& at,
                   heat_answer& h) {
    if (!at) return;
    h.happenings.push_back({std::move(what), *at});
    h.take_care |= at->heated.take_care;
}

std::string in_words(const fitwright::common_temperature& t, std::string_view way) {
    using fitwright::happening;
    const auto span = [&] {
        const std::string first = celsius(*t.earliest);
        if (!t.latest) return fmt::format("{} at the worst", first);
        const std::string last = celsius(*t.latest);
        return first == last ? first : first + " to " + last;
    };
    switch (t.outcome) {
    case happening::happens: return fmt::format("{} to {}", way, span());
    case happening::may_happen: return fmt::format("may be, {} to {}", way, span());
    case happening::at_20_degC_already: return "at 20 C already";
    case happening::not_up_to_heating_limit:
        return fmt::format("not {} to {}, as hot as {} may be", way, celsius(t.looked_upto),
                           std::string_view(t.limited_by));
    case happening::not_where_expansion_is_known:
        return fmt::format("not {} to {}; further the expansion of {} is not known", way,
                           celsius(t.looked_upto), std::string_view(t.limited_by));
    }
    return {};
}

} // namespace

std::optional<stated<fitwright::temperature>> temperature_of(const part& p, const state& s, const job& j) {
    if (p.of_its_own) return p.of_its_own;
    for (std::size_t g = 0; g < j.groups.size(); ++g)
        if (j.groups[g].id == p.group) return s.temperatures[g];
    return std::nullopt;
}

bool counts_for(const pair& p, const state& s) {
    return p.states.empty() || std::find(p.states.begin(), p.states.end(), s.id) != p.states.end();
}

std::optional<heat_answer> heat_of(const pair& p, const fitwright::fit& drawn, const job& j) {
    if (j.states.empty() || !p.hole || !p.shaft) return std::nullopt;
    heat_answer h;
    const reckoned hole = material_of(p.hole->part);
    const reckoned shaft = material_of(p.shaft->part);
    if (!hole.material || !shaft.material) {
        h.reckoned_with = hole.material ? shaft.words : hole.words;
        return h;
    }
    h.can_tell = true;
    h.reckoned_with = fmt::format("hole {}; shaft {}", hole.words, shaft.words);
    go_through_states(p, drawn, *hole.material, *shaft.material, j, h);
    const fit_kind kind = drawn.kind();
    if (!h.held_in.empty()) return h; // a held bush doesn't grow as its metal would: the states tell
    if (kind == fit_kind::clearance)
        add_happening("seizes", seizing_temperature(drawn, *hole.material, *shaft.material), h);
    if (kind == fit_kind::interference) {
        add_happening("lets go", freeing_temperature(drawn, *hole.material, *shaft.material), h);
        if (p.wants_to(want::comes_off))
            add_happening("comes apart", parting_temperature(drawn, *hole.material, *shaft.material), h);
    }
    for (const happening_answer& happening : h.happenings)
        for (const fitwright::source& s : {happening.at.hole_expansion, happening.at.shaft_expansion}) {
            std::string words(written(s));
            if (std::find(h.sources.begin(), h.sources.end(), words) == h.sources.end())
                h.sources.push_back(std::move(words));
        }
    return h;
}

std::optional<heat_answer> heat_of(const pair& p, const job& j) {
    if (!p.hole || !p.shaft || !p.hole->limits || !p.shaft->limits) return std::nullopt;
    return heat_of(p, fitwright::fit(*p.hole->limits, *p.shaft->limits), j);
}

std::string about_um(const fitwright::clearance_window& w) {
    const length tenth = length::from_nanometres(100);
    return fmt::format("{} to {}", um(tenth * multiples_below(w.least, tenth)),
                       um(tenth * multiples_above(w.most, tenth)));
}

std::vector<fact> facts_of(const heat_answer& h) {
    std::vector<fact> all;
    if (!h.can_tell) {
        all.push_back({"heat", "can't tell: " + h.reckoned_with});
        return all;
    }
    all.push_back({"heat", "reckoned with " + h.reckoned_with + "; both ends of the coefficients' spread"});
    if (!h.held_in.empty())
        all.push_back(
            {"heat", h.held_in + ": its bore moves as it can there, from the size it has once pressed"});
    for (const happening_answer& one : h.happenings) {
        all.push_back(
            {one.what, fmt::format("with both parts equally warm: {}; {}", in_words(one.at.heated, "heated"),
                                   in_words(one.at.cooled, "cooled"))});
    }
    for (const std::string& d : h.doubts) all.push_back({"mind", d});
    for (const std::string& s : h.sources) all.push_back({"figures", s});
    return all;
}

} // namespace job_sheet
