#ifndef FITWRIGHT_CHOOSE_CANDIDATE_HPP
#define FITWRIGHT_CHOOSE_CANDIDATE_HPP

#include <fitwright/choose/fits_within_answer.hpp>
#include <fitwright/choose/wants.hpp>
#include <fitwright/gauge/limit_gauge.hpp>
#include <fitwright/running/film_result.hpp>
#include <fitwright/tool/hole_plan.hpp>

// What `choose` answers: candidates, the best first, each with all that is to be known of it.

namespace fitwright {

/// In what the margin of a want is told.
enum class margin_unit : std::uint8_t {
    metres,                  ///< of clearance, or of the film over its limit
    cubic_metres_per_second, ///< of leak
    percent,                 ///< of the plunger's stroke
    times,                   ///< of load, fluid or stress
    newtons,                 ///< of the press
};

/// Whether a want holds at one end of a fit, and by how much.
struct want_at_end {
    holding holds = holding::not_asked; ///< whether it does
    property<double> margin = {};       ///< in the unit of its want; below zero it misses by so much
    bool too_tight = false;             ///< more clearance mends it
    bool too_loose = false;             ///< less clearance does

    /// 0 if it holds, 2 if it doesn't, 1 if that can't be told.
    [[nodiscard]] constexpr int badness() const noexcept {
        return holds == holding::yes ? 0 : holds == holding::no ? 2 : 1;
    }
};

/// What becomes of one want in a pair.
struct want_answer {
    want wanted = want::turns_freely;     ///< which want
    margin_unit in = margin_unit::metres; ///< the unit of its margins
    want_at_end tight = {};               ///< the smallest hole and the largest shaft
    want_at_end loose = {};               ///< the largest hole and the smallest shaft
    /// The clearances at 20 °C that this want alone allows: 1 m where it has no bound, crossed if it allows
    /// none.
    clearance_window allows = {};
    length off = {}; ///< by how much the pair's clearance lies outside of them; 0 if it does not

    /// At both ends.
    [[nodiscard]] constexpr holding holds() const noexcept {
        if (tight.holds == holding::no || loose.holds == holding::no) return holding::no;
        return tight.holds == holding::yes ? loose.holds : tight.holds;
    }
    /// The end that has less margin, or misses by more.
    [[nodiscard]] constexpr const want_at_end& worse_end() const noexcept {
        if (loose.badness() != tight.badness()) return loose.badness() > tight.badness() ? loose : tight;
        return tight.margin && loose.margin && *loose.margin < *tight.margin ? loose : tight;
    }
};

/// What speaks for a candidate, and from `wants_missed` on against it.
enum class choice_reason : std::uint16_t {
    all_wants_hold = 1,
    part_is_there = 2,
    tool_is_there = 4,
    reading_proves = 8,
    gauge_exists = 16,
    wants_missed = 32,
    cannot_be_told = 64,
    no_plan = 128,
    trial_hole_first = 256,
    instrument_too_coarse = 512,
    no_gauge = 1024,
    no_class = 2048,
    only_at_20 = 4096,
    one_viscosity = 8192,
    let_one_part_lead = 16384,
};
[[nodiscard]] constexpr flags<choice_reason> operator|(choice_reason a, choice_reason b) noexcept {
    return flags<choice_reason>(a) | b;
}
/// Whether a reason speaks against a candidate.
[[nodiscard]] constexpr bool speaks_against(choice_reason r) noexcept {
    return r >= choice_reason::wants_missed;
}

/// In words.
[[nodiscard]] constexpr text in_words(choice_reason r) noexcept {
    switch (r) {
    case choice_reason::all_wants_hold: return "all wants hold at both ends";
    case choice_reason::part_is_there: return "one part is there already";
    case choice_reason::tool_is_there: return "the drawer has the tools for the hole";
    case choice_reason::reading_proves: return "the instrument can prove the tolerance";
    case choice_reason::gauge_exists: return "a standard gauge can be made for the hole";
    case choice_reason::wants_missed: return "a want does not hold";
    case choice_reason::cannot_be_told: return "whether a want holds can't be told";
    case choice_reason::no_plan: return "the drawer does not make the hole";
    case choice_reason::trial_hole_first: return "the tool alone decides the size: a trial hole first";
    case choice_reason::instrument_too_coarse: return "the instrument can't prove the tolerance";
    case choice_reason::no_gauge: return "no standard gauge for the hole: measure it";
    case choice_reason::no_class: return "limits of their own, no standard class";
    case choice_reason::only_at_20: return "no states given: looked at at 20 C alone";
    case choice_reason::one_viscosity: return "one viscosity taken for all states, as stated";
    case choice_reason::let_one_part_lead:
        return "wider than one part, narrower than two: make one, measure it, and "
               "let it lead";
    }
    return "";
}

/// On which side of the middle to aim, because there is more room: before a want breaks, or to put it right.
enum class erring : std::uint8_t { tight, loose };

/// In words, and why.
[[nodiscard]] constexpr text in_words(erring e) noexcept {
    return e == erring::tight ? "err tight: there is more room, and metal left "
                                "on can still come off"
                              : "err loose: tighter, a want breaks sooner";
}

namespace detail {
inline constexpr length no_bound = length::from_nanometres(1'000'000'000);

[[nodiscard]] constexpr error not_asked() noexcept {
    return error::composer(error_code::not_asked) << "not asked; allowed: what the wants ask for";
}
} // namespace detail

/// A pair that may do, with all that is known of it. What was not asked or can't be told is an error that
/// says why.
struct candidate {
    hole_limits hole;
    shaft_limits shaft;
    class_choice<side::hole> hole_class;   ///< given where the hole is of one
    class_choice<side::shaft> shaft_class; ///< the same

    want_answer answered[want_count] = {}; ///< see `answers`
    int answer_count = 0;                  ///< how many of them are there

    result<worst_moments_of_fit> hot = detail::not_asked(); ///< the tightest and the loosest of the states
    result<film_result> film = detail::not_asked();         ///< at the worst clearances
    result<leak_result> leak =
        detail::not_asked(); ///< the same; with one viscosity the stated, else the thinnest
    result<press_result> pressed = detail::not_asked();        ///< in the state with the least grip
    result<plug_result> plug = detail::not_asked();            ///< the same
    result<hole_plan> plan = detail::not_asked();              ///< from the drawer
    result<limit_plug> gauge = detail::not_asked();            ///< for the hole, if it is to be made
    result<limit_ring> ring = detail::not_asked();             ///< for the shaft, if it is to be made
    result<hole_limits> hole_readings = detail::not_asked();   ///< that prove the hole
    result<shaft_limits> shaft_readings = detail::not_asked(); ///< that prove the shaft

    flags<fit_reason> fit_reasons; ///< what speaks for the classes and against them
    flags<choice_reason> reasons;  ///< what speaks for the pair and against it
    erring err = erring::tight;    ///< on which side of the middle to aim
    cautions take_care;
    length off; ///< by how much it lies outside of what all wants allow; 0 if it does not

    /// At 20 °C.
    [[nodiscard]] constexpr fit pair() const noexcept { return {hole, shaft}; }
    /// Want by want.
    [[nodiscard]] constexpr rows<want_answer> answers() const noexcept {
        return {answered, static_cast<std::size_t>(answer_count)};
    }
    /// Whether all wants hold at both ends.
    [[nodiscard]] constexpr bool holds_all() const noexcept {
        return reasons.contains(choice_reason::all_wants_hold);
    }
    /// The want that stops it: of those that don't hold the one that is furthest off; one of which that can't
    /// be told only where all others hold.
    /// Error: none does.
    [[nodiscard]] constexpr result<want_answer> stopped_by() const noexcept {
        const want_answer* worst = nullptr;
        const auto is_worse = [](const want_answer& a, const want_answer& than) {
            const bool misses = a.holds() == holding::no;
            return misses == (than.holds() == holding::no) ? a.off > than.off : misses;
        };
        for (const want_answer& a : answers())
            if (a.holds() != holding::yes && (worst == nullptr || is_worse(a, *worst))) worst = &a;
        if (worst != nullptr) return *worst;
        return error::composer(error_code::nothing_wanted)
               << "no want stops this pair; allowed is to ask of one that does not "
                  "hold all";
    }
};

} // namespace fitwright

#endif
