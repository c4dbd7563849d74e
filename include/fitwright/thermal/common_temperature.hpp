#ifndef FITWRIGHT_THERMAL_COMMON_TEMPERATURE_HPP
#define FITWRIGHT_THERMAL_COMMON_TEMPERATURE_HPP

#include <fitwright/thermal/first_crossing.hpp>
#include <fitwright/thermal/hot_fit.hpp>

// Both parts heated, or cooled, together from 20 °C: where a clearance closes, where an interference lets
// go. "It doesn't" is an answer, and no number stands in for it.

namespace fitwright {

/// Whether something happens on the way from 20 °C.
enum class happening : std::uint8_t {
    happens,                      ///< whatever the coefficients are within their spread
    may_happen,                   ///< at one end of the spread, not at the other
    not_up_to_heating_limit,      ///< not before one of the parts is as hot as it may be
    not_where_expansion_is_known, ///< not as far as both coefficients are known
    at_20_degC_already,           ///< so it is at the start
};

/// In words.
[[nodiscard]] constexpr text in_words(happening h) noexcept {
    switch (h) {
    case happening::happens: return "happens";
    case happening::may_happen: return "may happen";
    case happening::not_up_to_heating_limit: return "does not happen up to the heating limit";
    case happening::not_where_expansion_is_known: return "does not happen as far as the expansion is known";
    case happening::at_20_degC_already: return "is so at 20 C already";
    }
    return "";
}

/// Where something happens on one way from 20 °C. A temperature at which it doesn't is not known: ask first.
struct common_temperature {
    happening outcome;               ///< whether and when it happens
    property<temperature> earliest;  ///< nearest to 20 °C that the spread of the coefficients lets it be
    property<temperature> by_mean;   ///< by the mean coefficients
    property<temperature> latest;    ///< by here it has happened, whatever the coefficients
    figure<temperature> looked_upto; ///< how far it was looked
    text limited_by;                 ///< the material that lets us look no further: a look at its `name`
    flags<thermal_doubt> doubts;     ///< where it happens first, or else at the end of the search
    cautions take_care;              ///< the same

    /// True where it happens, or may.
    [[nodiscard]] constexpr bool is_possible() const noexcept { return earliest.is_known(); }
};

/// Both ways from 20 °C.
struct common_temperatures {
    common_temperature heated; ///< both parts equally warm, from 20 °C on upwards
    common_temperature cooled; ///< both parts equally cold, from 20 °C on downwards
    source hole_expansion;     ///< where the coefficients come from
    source shaft_expansion;    ///< the same
};

namespace detail {

/// Which of a strain's numbers to take.
using spread_end = double strain::*;

/// A hole and a shaft at one temperature, and what is to stay above zero: their clearance (+1), or their
/// interference (-1).
struct common_pair {
    const material* hole_is;
    const material* shaft_is;
    length hole;
    length shaft;
    int sign;
    spread_end of_hole = &strain::by_mean;
    spread_end of_shaft = &strain::by_mean;

    [[nodiscard]] constexpr double operator()(double celsius_here) const noexcept {
        const temperature t = celsius(celsius_here);
        return sign * clearance_of(hole, shaft, (*strain_at(*hole_is, t)).*of_hole,
                                   (*strain_at(*shaft_is, t)).*of_shaft);
    }

    [[nodiscard]] constexpr common_pair with(spread_end hole_end, spread_end shaft_end) const noexcept {
        common_pair made = *this;
        made.of_hole = hole_end;
        made.of_shaft = shaft_end;
        return made;
    }
};

/// How far something is from 20 °C, either way.
[[nodiscard]] constexpr double way_to(double celsius) noexcept {
    return celsius < reference_celsius ? reference_celsius - celsius : celsius - reference_celsius;
}

/// How far to look, and who says so.
struct search_end {
    double celsius;
    text limited_by;
    bool is_heating_limit = false;

    constexpr void come_nearer(const search_end& other) noexcept {
        if (way_to(other.celsius) < way_to(celsius)) *this = other;
    }
};

[[nodiscard]] constexpr common_temperature look_for(const common_pair& pair, const search_end& end) noexcept {
    common_temperature found{.outcome = end.is_heating_limit ? happening::not_up_to_heating_limit
                                                             : happening::not_where_expansion_is_known,
                             .earliest = {},
                             .by_mean = {},
                             .latest = {},
                             .looked_upto = figure<temperature>::from_value(end.celsius),
                             .limited_by = end.limited_by,
                             .doubts = {},
                             .take_care = {}};
    if (is_below_zero(pair(reference_celsius))) {
        found.outcome = happening::at_20_degC_already;
        return found;
    }
    // Unlike parts lie at opposite ends of their spreads, parts of one material at the same end.
    const bool is_one_material = is_same_material(*pair.hole_is, *pair.shaft_is);
    const auto on_the_way = [&](spread_end hole_end, spread_end shaft_end) {
        return first_crossing(reference_celsius, end.celsius, pair.with(hole_end, shaft_end));
    };
    const spread_end lowest = &strain::by_lowest;
    const spread_end highest = &strain::by_highest;
    crossing earliest = on_the_way(lowest, is_one_material ? lowest : highest);
    crossing latest = on_the_way(highest, is_one_material ? highest : lowest);
    const crossing by_mean = on_the_way(&strain::by_mean, &strain::by_mean);
    const bool is_other_way_round =
        latest.is_there && (!earliest.is_there || way_to(latest.celsius) < way_to(earliest.celsius));
    if (is_other_way_round) {
        const crossing swapped = earliest;
        earliest = latest;
        latest = swapped;
    }

    const auto known = [&](const crossing& c) -> property<temperature> {
        if (!c.is_there) return {};
        const temperature t = celsius(c.celsius);
        return {t, less_sure(strain_at(*pair.hole_is, t)->how_sure, strain_at(*pair.shaft_is, t)->how_sure)};
    };
    found.earliest = known(earliest);
    found.by_mean = known(by_mean);
    found.latest = known(latest);
    if (earliest.is_there) found.outcome = latest.is_there ? happening::happens : happening::may_happen;

    const temperature t = found.earliest.value_or(found.looked_upto);
    const strain of_hole = *strain_at(*pair.hole_is, t);
    const strain of_shaft = *strain_at(*pair.shaft_is, t);
    found.doubts = of_hole.doubts | of_shaft.doubts;
    found.take_care = of_hole.take_care | of_shaft.take_care;
    return found;
}

/// Where the coefficient comes from, as sure as the less sure of both ways.
[[nodiscard]] constexpr source least_sure_source(const material& m,
                                                 const common_temperatures& ways) noexcept {
    const auto how_sure = [&](const common_temperature& way) {
        return strain_at(m, way.earliest.value_or(way.looked_upto))->how_sure;
    };
    return {m.documents, m.name, less_sure(how_sure(ways.heated), how_sure(ways.cooled))};
}

[[nodiscard]] constexpr result<common_temperatures> look_both_ways(const fit& f,
                                                                   const common_pair& pair) noexcept {
    if (!allow_a_size(f)) return no_size_in(f);
    const material& hole = *pair.hole_is;
    const material& shaft = *pair.shaft_is;
    const auto known_of_hole = expansion_known(hole);
    if (!known_of_hole) return known_of_hole.error();
    const auto known_of_shaft = expansion_known(shaft);
    if (!known_of_shaft) return known_of_shaft.error();

    search_end hot{known_of_hole->most, hole.name};
    search_end cold{known_of_hole->least, hole.name};
    hot.come_nearer({known_of_shaft->most, shaft.name});
    cold.come_nearer({known_of_shaft->least, shaft.name});
    for (const material* m : {pair.hole_is, pair.shaft_is}) {
        if (!m->highest_heating) continue;
        const double limit = (*m->highest_heating).value();
        hot.come_nearer({limit > reference_celsius ? limit : reference_celsius, m->name, true});
    }

    common_temperatures made{look_for(pair, hot), look_for(pair, cold), {}, {}};
    if (!hole.highest_heating || !shaft.highest_heating)
        made.heated.doubts |= thermal_doubt::heating_limit_not_known;
    made.hole_expansion = least_sure_source(hole, made);
    made.shaft_expansion = least_sure_source(shaft, made);
    return made;
}

} // namespace detail

/// The common temperature at which a clearance may close: the largest shaft in the smallest hole just
/// touches. Beyond it the pair seizes.
///
/// Parts that get warm at unlike speeds are further apart than this: look at `worst_moments` too.
/// Error: limits that are crossed or not above zero; the expansion of one of the materials is not known at all.
[[nodiscard]] constexpr result<common_temperatures> seizing_temperature(const fit& f, const material& hole,
                                                                        const material& shaft) noexcept {
    return detail::look_both_ways(f, {&hole, &shaft, f.hole().lower_limit(), f.shaft().upper_limit(), +1});
}

/// The common temperature at which an interference may let go: the smallest shaft in the largest hole just
/// touches. Beyond it the loosest pair has lost its grip.
///
/// By the sizes alone: pressing smooths the seat, which takes from the interference (DIN 7190-1), so that a
/// rough pair lets go earlier. `press` counts it.
/// Error: limits that are crossed or not above zero; the expansion of one of the materials is not known at all.
[[nodiscard]] constexpr result<common_temperatures> freeing_temperature(const fit& f, const material& hole,
                                                                        const material& shaft) noexcept {
    auto frees =
        detail::look_both_ways(f, {&hole, &shaft, f.hole().upper_limit(), f.shaft().lower_limit(), -1});
    return frees.transform([](common_temperatures both) {
        for (common_temperature* way : {&both.heated, &both.cooled})
            if (way->outcome != happening::at_20_degC_already)
                way->doubts |= thermal_doubt::smoothing_not_counted;
        return both;
    });
}

/// The common temperature at which every pair comes apart: the largest shaft in the smallest hole just
/// touches. A pressed pair that is to be taken apart goes to `latest`, and a little further for room.
/// Error: limits that are crossed or not above zero; the expansion of one of the materials is not known at all.
[[nodiscard]] constexpr result<common_temperatures> parting_temperature(const fit& f, const material& hole,
                                                                        const material& shaft) noexcept {
    return detail::look_both_ways(f, {&hole, &shaft, f.hole().lower_limit(), f.shaft().upper_limit(), -1});
}

} // namespace fitwright

#endif
