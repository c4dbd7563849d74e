#include "look_at.hpp"

#include "figures.hpp"
#include "read_pair.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;

constexpr want wants_it_tight[] = {want::stays_put, want::no_creep, want::pressure_tight};
constexpr want wants_it_loose[] = {want::slides,       want::turns,       want::oil_film,
                                   want::never_seizes, want::passes_heat, want::never_rubs};

/// A want that some pairs within the limits miss. A transition fit that is to stay put or to come off is meant to
/// be so: its parts are paired or picked, and how often they fit is said. What is to run does not wait for luck.
verdict missed(const pair_answer& a, want w) {
    const bool is_transition = a.clearance && a.clearance->kind == fitwright::fit_kind::transition;
    const bool runs =
        std::find(std::begin(wants_it_loose), std::end(wants_it_loose), w) != std::end(wants_it_loose);
    return is_transition && !runs ? verdict::look_at : verdict::wont_do;
}

using fitwright::holding;

holding worse(holding a, holding b) {
    return a == holding::no || (a != holding::yes && b != holding::no) ? a : b;
}

verdict brought_by(holding h) { return h == holding::no ? verdict::wont_do : verdict::cannot_tell; }

/// Where the heat takes away what the sizes at 20 C give.
void compare_hot(const pair_answer& a, std::vector<remark>& notes) {
    if (!a.heat) return;
    if (!a.heat->can_tell) {
        notes.push_back({verdict::cannot_tell, "can't tell what the heat does: " + a.heat->reckoned_with});
        return;
    }
    for (const hot_row& r : a.heat->rows)
        if (!r.clearance)
            notes.push_back({verdict::cannot_tell, fmt::format("state '{}': {}", r.state, r.no_answer)});
    if (!a.heat->tightest) return;
    const hot_row& tightest = a.heat->rows[*a.heat->tightest];
    const hot_row& loosest = a.heat->rows[*a.heat->loosest];
    const length tenth = length::from_nanometres(100);
    for (const want w : wants_it_tight)
        if (a.asked.wants_to(w) && loosest.clearance->most > length())
            notes.push_back(
                {missed(a, w),
                 fmt::format("wants '{}', but in the state '{}' may be loose by up to {} um", in_words(w),
                             loosest.state, um(tenth * multiples_above(loosest.clearance->most, tenth))),
                 w});
    for (const want w : wants_it_loose)
        if (a.asked.wants_to(w) && tightest.clearance->least < length())
            notes.push_back(
                {missed(a, w),
                 fmt::format("wants '{}', but in the state '{}' may be tight by up to {} um", in_words(w),
                             tightest.state, um(tenth * multiples_above(-tightest.clearance->least, tenth))),
                 w});
}

/// The want that a pressed joint is for: the first of those that the pair has.
std::optional<want> want_of_joint(const pair& p) {
    for (const want w : wants_it_tight)
        if (p.wants_to(w)) return w;
    return std::nullopt;
}

/// A joint that lets go, or yields, or doesn't hold what is behind it.
void pressed_joints(const pair_answer& a, std::vector<remark>& notes) {
    if (!a.pressing) return;
    const pressing_answer& p = *a.pressing;
    if (!p.at_20) {
        notes.push_back({verdict::cannot_tell, "can't tell what pressing does: " + p.cannot_tell,
                         want_of_joint(a.asked)});
        return;
    }
    const auto look_at = [&](const worst_wall& w, std::string_view part) {
        const auto margin = w.wall.margin();
        if (margin && !(*margin >= 1))
            notes.push_back(
                {verdict::look_at,
                 fmt::format("pressed: the {}'s part yields at the greatest interference {}", part, w.where),
                 want_of_joint(a.asked)});
    };
    look_at(p.hub(), "hole");
    look_at(p.shaft(), "shaft");
    if (const pressed_row* const weakest = p.weakest(); weakest != nullptr && weakest->joint.may_let_go())
        notes.push_back({missed(a, want::stays_put),
                         fmt::format("pressed: no grip is left at the least interference in the state '{}'",
                                     weakest->state),
                         want_of_joint(a.asked)});
    for (const pressed_row& r : p.rows)
        if (r.plug && (r.plug->holds != fitwright::holding::yes || r.plug->seals != fitwright::holding::yes))
            notes.push_back({brought_by(worse(r.plug->holds, r.plug->seals)),
                             fmt::format("plug: in the state '{}' it holds: {}, it seals: {}", r.state,
                                         std::string_view(in_words(r.plug->holds)),
                                         std::string_view(in_words(r.plug->seals))),
                             want::pressure_tight});
}

/// A leak over its budget, a film that doesn't carry.
void running_parts(const pair_answer& a, std::vector<remark>& notes) {
    if (a.leak && !a.leak->cannot_tell.empty())
        notes.push_back(
            {verdict::cannot_tell, "can't tell the leak: " + a.leak->cannot_tell, want::little_leak});
    if (a.leak) {
        const leak_row* worst = nullptr;
        for (const leak_row& r : a.leak->states)
            if (!r.is_within_budget && (worst == nullptr || r.most_percent > worst->most_percent)) worst = &r;
        if (worst != nullptr)
            notes.push_back(
                {verdict::wont_do,
                 fmt::format("leak: up to {} % of a shot in the state '{}', where {} % are wanted",
                             percent(worst->most_percent), worst->where, percent(a.leak->budget_percent)),
                 want::little_leak});
    }
    if (a.film && !a.film->cannot_tell.empty())
        notes.push_back(
            {verdict::cannot_tell, "can't tell the oil film: " + a.film->cannot_tell, want::oil_film});
    if (a.film)
        if (const film_row* const r = a.film->thinnest();
            r != nullptr && r->film->regime != fitwright::film_regime::full_film)
            notes.push_back({verdict::wont_do,
                             fmt::format("wants '{}', but {}", in_words(want::oil_film),
                                         std::string_view(in_words(r->film->regime))),
                             want::oil_film});
}

void compare_with_wants(const pair_answer& a, std::vector<remark>& notes) {
    if (!a.clearance) return;
    const clearance_answer& c = *a.clearance;
    for (const want w : wants_it_tight)
        if (a.asked.wants_to(w) && c.greatest > length())
            notes.push_back({missed(a, w),
                             fmt::format("wants '{}', but may come out loose by up to {} um", in_words(w),
                                         um(c.greatest)),
                             w});
    for (const want w : wants_it_loose)
        if (a.asked.wants_to(w) && c.least < length())
            notes.push_back(
                {missed(a, w),
                 fmt::format("wants '{}', but may come out tight by up to {} um", in_words(w), um(-c.least)),
                 w});
    if (a.asked.wants_to(want::comes_off) && c.kind == fitwright::fit_kind::interference)
        notes.push_back(
            {verdict::wont_do, fmt::format("wants '{}', but is always tight", in_words(want::comes_off))});
}

/// A bought or found part has one size, whatever the drawing says of it in other pairs.
template <side Side>
void compare_with_other_pairs(const pair& asked, std::optional<role<Side>> pair::*which, const job& j,
                              std::vector<remark>& notes) {
    const auto& mine = asked.*which;
    if (!mine || !mine->limits || mine->part.supply == supply::made) return;
    for (const pair& other : j.pairs) {
        const auto& theirs = other.*which;
        if (!theirs || !theirs->limits || theirs->part.id != mine->part.id ||
            *theirs->limits == *mine->limits)
            continue;
        if (theirs->limits->nominal() != mine->limits->nominal()) continue;
        notes.push_back(
            {verdict::look_at,
             fmt::format("the {} is not made here, and is {} here but {} in pair {}: it can't be both",
                         mine->part.name, mine->as_read, theirs->as_read, other.id)});
    }
}

/// Both parts of an inch fit rest on the same table.
void note_once(std::vector<remark>& notes, std::string note) {
    const auto is_it = [&](const remark& r) { return r.text == note; };
    if (std::none_of(notes.begin(), notes.end(), is_it)) notes.push_back({verdict::look_at, std::move(note)});
}

template <side Side> void doubt_the_source(const std::optional<role<Side>>& r, std::vector<remark>& notes) {
    if (!r || !r->limits) return;
    const fitwright::confidence c = r->limits->origin().how_sure;
    if (c == fitwright::confidence::memory || c == fitwright::confidence::uncertain)
        note_once(notes, fmt::format("the limits of {} are {}: check them before you rely on them",
                                     r->as_read, std::string_view(in_words(c))));
}

void readings_that_prove_nothing(const pair_answer& a, std::vector<remark>& notes) {
    for (const reading_answer& r : a.readings) {
        if (r.verdict == fitwright::verdict::accept) continue;
        const bool is_bad = r.verdict == fitwright::verdict::reject;
        notes.push_back({is_bad ? verdict::wont_do : verdict::cannot_tell,
                         fmt::format("{}: a reading of {} {} by the {}", r.role, r.written,
                                     is_bad ? "is rejected" : "can't be told good or bad", r.instrument)});
    }
}

void what_is_not_at_hand(const pair_answer& a, std::vector<remark>& notes) {
    if (a.leading && !a.leading->no_bore.empty())
        notes.push_back({verdict::wont_do, "no bore suits: " + a.leading->no_bore});
    if (a.making && !a.making->no_plan.empty())
        notes.push_back({verdict::look_at, "no plan for the hole: something is missing, see below"});
}

/// Whether a room of the sheet has said enough of a want, in its own words.
bool is_spoken_of(want w, const std::vector<remark>& notes) {
    return std::any_of(notes.begin(), notes.end(), [w](const remark& r) { return r.about == w; });
}

std::string why_nothing_is_chosen(const pair_answer& a) {
    if (a.judging && a.judging->rows.empty() && !a.judging->unjudged.empty())
        return "none of the wants can be judged";
    return "the wants of the pair say nothing that sizes could be chosen by";
}

/// The wants that nothing above speaks of: held against the sizes, each at both ends of the limits.
void wants_missed(const pair_answer& a, std::vector<remark>& notes) {
    if (!a.judging) return;
    const judging_answer& judged = *a.judging;
    if (!judged.cannot_tell.empty())
        notes.push_back({verdict::cannot_tell, "can't tell whether the wants hold: " + judged.cannot_tell});
    for (const want_row& r : judged.rows) {
        if (r.holds == holding::yes || is_spoken_of(r.wanted, notes)) continue;
        const want_end& worse = r.loosest.holds == r.holds ? r.loosest : r.tightest;
        const verdict brings = r.holds == holding::cannot_tell ? verdict::cannot_tell
                               : r.is_a_question_of_yield      ? verdict::look_at
                                                               : missed(a, r.wanted);
        notes.push_back(
            {brings, fmt::format("wants '{}', but the {} pair within the limits: {}", in_words(r.wanted),
                                 &worse == &r.loosest ? "loosest" : "tightest", worse.words)});
    }
    for (const open_want& w : judged.unjudged)
        if (!is_spoken_of(w.mine, notes))
            notes.push_back({verdict::look_at, fmt::format("wants '{}', not judged: it takes {}",
                                                           in_words(w.mine), w.missing)});
}

void nothing_chosen(const pair_answer& a, std::vector<remark>& notes) {
    if (!a.asked.is_open()) return;
    if (!a.choosing) notes.push_back({verdict::cannot_tell, "no sizes: " + why_nothing_is_chosen(a)});
    else if (!a.choosing->no_choice.empty())
        notes.push_back({verdict::cannot_tell, "no sizes: " + a.choosing->no_choice});
}

} // namespace

std::vector<remark> what_to_look_at(const pair_answer& a, const job& j) {
    std::vector<remark> notes;
    compare_with_wants(a, notes);
    compare_hot(a, notes);
    pressed_joints(a, notes);
    running_parts(a, notes);
    wants_missed(a, notes);
    nothing_chosen(a, notes);
    if (a.end_float && !a.end_float->does_for_all)
        notes.push_back(
            a.end_float->cannot_tell.empty()
                ? remark{verdict::look_at,
                         "no shim does for every assembly: measure the float of each, see below"}
                : remark{verdict::cannot_tell, "can't tell the float: " + a.end_float->cannot_tell});
    compare_with_other_pairs<side::hole>(a.asked, &pair::hole, j, notes);
    compare_with_other_pairs<side::shaft>(a.asked, &pair::shaft, j, notes);
    doubt_the_source(a.asked.hole, notes);
    doubt_the_source(a.asked.shaft, notes);
    readings_that_prove_nothing(a, notes);
    what_is_not_at_hand(a, notes);
    std::stable_sort(notes.begin(), notes.end(),
                     [](const remark& x, const remark& y) { return x.brings > y.brings; });
    return notes;
}

} // namespace job_sheet
