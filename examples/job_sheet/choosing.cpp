#include "choosing.hpp"

#include "figures.hpp"
#include "judging.hpp"
#include "read_pair.hpp"
#include "shop_words.hpp"
#include <fitwright/io/candidate.hpp>

#include <fmt/format.h>

namespace job_sheet {

namespace {

using fitwright::length;
using fitwright::side;

constexpr std::size_t most_choices = 3;

template <side Side>
std::string in_words(const fitwright::size_limits<Side>& limits, const fitwright::class_choice<Side>& of) {
    if (of.is_given()) return std::string(written(limits.nominal(), of.given()));
    return fmt::format("{} to {}", mm(limits.lower_limit()), mm(limits.upper_limit()));
}

/// A dial stops at its lines: the last cut goes to the one inside the limits.
std::string tools_of(const fitwright::candidate& c) {
    if (!c.plan) return {};
    const length step = c.plan->deciding_step().tool.step;
    const auto target = step > length() ? fitwright::target_on_grid(c.hole, step)
                                        : fitwright::result<length>(c.hole.middle());
    return way_of(*c.plan, target ? std::optional<length>(*target) : std::nullopt);
}

/// The job's word for the library's want.
std::string_view word_for(fitwright::want theirs, const wanting& w) {
    for (const asked_want& one : w.asked())
        if (one.theirs == theirs) return job_sheet::in_words(one.mine);
    return in_words(theirs);
}

std::string stopped_by(const fitwright::candidate& c, const wanting& w) {
    const auto want = c.stopped_by();
    if (!want) return {};
    const std::string_view word = word_for(want->wanted, w);
    if (want->holds() == fitwright::holding::cannot_tell) return fmt::format("'{}' can't be told", word);
    std::string words = fmt::format("'{}' does not hold", word);
    if (want->off > length())
        words += fmt::format(
            ": {} um of clearance off",
            um(length::from_nanometres(100) * multiples_above(want->off, length::from_nanometres(100))));
    return words;
}

choice choice_of(const fitwright::candidate& c, const wanting& w) {
    choice made{.pair = c,
                .hole = in_words(c.hole, c.hole_class),
                .shaft = in_words(c.shaft, c.shaft_class),
                .stopped_by = stopped_by(c, w),
                .tools = w.hole_is_made() ? tools_of(c) : std::string(),
                .against = {}};
    c.reasons.for_each([&](fitwright::choice_reason r) {
        const bool is_said = r == fitwright::choice_reason::wants_missed; // with its number
        const bool is_no_matter = r == fitwright::choice_reason::no_gauge && !w.hole_is_made();
        if (speaks_against(r) && !is_said && !is_no_matter) made.against.emplace_back(in_words(r));
    });
    return made;
}

/// A want that no clearance gives, such as a film at a few turns a minute: to come near it is no use.
std::optional<fitwright::want> given_by_none(const fitwright::candidate& c) {
    for (const fitwright::want_answer& a : c.answers())
        if (a.holds() != fitwright::holding::yes && a.allows.least > a.allows.most) return a.wanted;
    return std::nullopt;
}

} // namespace

std::optional<choosing_answer> choosing_of(std::optional<wanting> w) {
    if (!w || !w->leaves_a_choice() || w->asked().empty()) return std::nullopt;
    choosing_answer a;
    auto found = fitwright::choose<most_choices>(w->to_choose());
    while (const auto hopeless = found ? given_by_none(found->best()) : std::nullopt) {
        a.given_up.emplace_back(word_for(*hopeless, *w));
        w->give_up(*hopeless);
        if (w->asked().empty()) {
            a.no_choice = "no clearance gives it";
            return a;
        }
        found = fitwright::choose<most_choices>(w->to_choose());
    }
    if (!found) {
        a.no_choice = found.error().message();
        return a;
    }
    a.allowed = found->allowed();
    if (!bounds_of(*a.allowed).most) { // the widest classes there are would do, which helps nobody
        a.no_choice =
            "nothing says how loose it may be; state shake_at_most = \"40 um\", or what it may leak";
        return a;
    }
    for (const fitwright::candidate& c : *found) {
        if (!a.all.empty() && !c.holds_all()) break; // of what won't do the best is enough
        a.all.push_back(choice_of(c, *w));
    }
    return a;
}

void take_sizes(const choosing_answer& from, pair& to) {
    if (from.all.empty()) return;
    const choice& best = from.all.front();
    const auto take = [](auto& r, auto limits, const std::string& words, bool has_class) {
        if (r->limits || r->has_own_size) return;
        r->limits = has_class ? limits : limits.between(limits.lower_limit(), limits.upper_limit());
        r->as_read = has_class ? words : "to suit the wants";
    };
    take(to.hole, best.pair.hole, best.hole, best.pair.hole_class.is_given());
    take(to.shaft, best.pair.shaft, best.shaft, best.pair.shaft_class.is_given());
}

std::vector<fact> facts_of(const choosing_answer& a) {
    const std::string label = a.decides ? "chosen" : "would do";
    std::vector<fact> all;
    for (const std::string& one : a.given_up)
        all.push_back({label, fmt::format("no clearance at all gives '{}': chosen without it", one)});
    if (!a.no_choice.empty()) {
        all.push_back({label, "nothing: " + a.no_choice});
        return all;
    }
    for (const choice& c : a.all) {
        const fitwright::fit f = c.pair.pair();
        const std::string_view other = a.decides && &c != &a.all.front() ? "or " : "";
        std::string words = fmt::format("{}hole {}, shaft {}: clearance {} to {} um", other, c.hole, c.shaft,
                                        um(f.min_clearance()), um(f.max_clearance()));
        words += c.stopped_by.empty() ? ": all wants hold"
                                      : "; nothing holds all, this comes nearest: " + c.stopped_by;
        if (!c.tools.empty()) words += "; " + c.tools;
        for (const std::string& one : c.against) words += "; " + one;
        all.push_back({label, std::move(words)});
    }
    if (a.allowed) {
        const std::string allowed = allowed_in_words(*a.allowed);
        all.push_back({label, allowed == "none" ? "the wants contradict each other: no clearance does for all"
                                                : "all wants together allow " + allowed + " at 20 C"});
    }
    return all;
}

} // namespace job_sheet
