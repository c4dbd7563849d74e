#ifndef FITWRIGHT_PICTURE_ZONES_HPP
#define FITWRIGHT_PICTURE_ZONES_HPP

#include <fitwright/gauge/judge.hpp>
#include <fitwright/picture/broken_axis.hpp>
#include <fitwright/picture/canvas.hpp>
#include <fitwright/picture/checks.hpp>
#include <fitwright/picture/units.hpp>
#include <fitwright/picture/zone_picture.hpp>

#include <initializer_list>

// How a zone_picture is laid out. From the left: the hole's limits, its interval, the two clearances, the
// shaft's interval, its limits. Each has its own strip, so nothing can lie on anything else, whatever the fit.

namespace fitwright {

namespace detail::svg {

inline constexpr px label_width = px::of(92);
inline constexpr px hole_left = px::of(120);
inline constexpr px hole_right = px::of(158);
inline constexpr px shaft_left = px::of(202);
inline constexpr px shaft_right = px::of(240);
inline constexpr px least_at = px::of(174); ///< the dimension of the least clearance
inline constexpr px most_at = px::of(189);
inline constexpr px ghost_wider = px::of(5);
inline constexpr px zones_height = px::of(170);
inline constexpr px break_height = px::of(44);
inline constexpr px label_room = px::of(20); ///< for a label above and below the intervals

/// A zone_picture with its scale.
struct zones {
    zone_picture asked;
    length zero; ///< the nominal size of the zero line
    broken_axis axis;
    number_format sizes = {};                       ///< as many decimals for all of them
    number_format deviations = {.with_plus = true}; ///< the same
    px top = {};                                    ///< of the intervals on the paper

    [[nodiscard]] px at(length size) const noexcept { return top + axis.extent() - axis.at(size); }
    [[nodiscard]] bool shows(side part) const noexcept { return !asked.only || *asked.only == part; }
    [[nodiscard]] bool shows_both() const noexcept { return !asked.only; }
    [[nodiscard]] text unit() const noexcept { return sign_of(asked.unit); }
    template <side Side>
    [[nodiscard]] area area_of(const size_limits<Side>& l, px left, px right) const noexcept {
        return {left, at(l.upper_limit()), right, at(l.lower_limit())};
    }
};

[[nodiscard]] constexpr text name_of(const zones& z) noexcept {
    if (!z.asked.title.empty()) return z.asked.title;
    if (z.shows_both()) return "Tolerance intervals of a hole and a shaft";
    return z.shows(side::hole) ? text("Tolerance interval of a hole") : text("Tolerance interval of a shaft");
}

/// "clearance 0.006 mm", "interference 0.001 mm".
constexpr phrase clearance_in_words(text which, length clearance, const number_format& f) noexcept {
    const bool interferes = clearance < length();
    return phrase() << which << text(interferes ? " interference " : " clearance ")
                    << written(interferes ? -clearance : clearance, f).view() << text(" ") << sign_of(f.unit);
}

/// The two clearances of a fit in words; of two interferences the least is the one with the loosest parts.
[[nodiscard]] constexpr phrase least_clearance(const fit& f, const number_format& sizes) noexcept {
    const length least = f.min_clearance();
    return clearance_in_words(least < length() ? "greatest" : "least", least, sizes);
}
[[nodiscard]] constexpr phrase most_clearance(const fit& f, const number_format& sizes) noexcept {
    const length most = f.max_clearance();
    return clearance_in_words(most < length() ? "least" : "greatest", most, sizes);
}

/// "warm-up: clearance 0.021 to 0.0508 mm, hole 12.021 to 12.0393, shaft …".
[[nodiscard]] constexpr phrase hot_in_words(const zone_picture& p) noexcept {
    phrase t;
    t << (fixed_text<255>() << p.hot_state).view() << text(": clearance ");
    put_outwards(t, p.hot->clearance, p.unit);
    t << text(" ") << sign_of(p.unit) << text(", hole ");
    put_outwards(t, {p.hot->hole.lower_limit(), p.hot->hole.upper_limit()}, p.unit);
    t << text(", shaft ");
    put_outwards(t, {p.hot->shaft.lower_limit(), p.hot->shaft.upper_limit()}, p.unit);
    return t;
}

template <side Side> [[nodiscard]] constexpr text part_in_words() noexcept {
    return Side == side::hole ? "hole" : "shaft";
}

/// "hole: aim at 12.009 mm".
template <side Side>
[[nodiscard]] constexpr phrase target_in_words(const zones& z, const shown_part<Side>& shown) noexcept {
    return phrase() << part_in_words<Side>() << text(": aim at ") << written(*shown.target, z.sizes).view()
                    << text(" ") << z.unit();
}

/// "shaft: measures 11.988 ±0.002 mm, accept".
template <side Side>
[[nodiscard]] constexpr phrase reading_in_words(const zones& z, const size_limits<Side>& l,
                                                const shown_part<Side>& shown) noexcept {
    return phrase() << part_in_words<Side>() << text(": measures ")
                    << written(shown.reading->size(), z.sizes).view() << text(" \xC2\xB1")
                    << written(shown.reading->uncertainty(), z.sizes).view() << text(" ") << z.unit()
                    << text(", ") << in_words(judge(*shown.reading, l));
}

/// "hole valve body: 12.000 to 12.018 mm. ", then its marks.
template <side Side>
void describe_part(canvas& c, const zones& z, const size_limits<Side>& l, const shown_part<Side>& shown) {
    c << part_in_words<Side>();
    if (!shown.name.empty()) (c << " (").words(shown.name) << ")";
    c << ": " << written(l.lower_limit(), z.sizes).view() << " to "
      << written(l.upper_limit(), z.sizes).view() << " " << z.unit()
      << (shown.is_measured ? ", as measured. " : ". ");
    if (shown.target) c << target_in_words(z, shown).view() << ". ";
    if (shown.reading) c << reading_in_words(z, l, shown).view() << ". ";
}

inline void describe(canvas& c, const zones& z) {
    const zone_picture& p = z.asked;
    if (z.shows(side::hole)) describe_part(c, z, p.of.hole(), p.hole);
    if (z.shows(side::shaft)) describe_part(c, z, p.of.shaft(), p.shaft);
    if (!z.shows_both()) return;
    c << "fit with " << in_words(p.of.kind()) << ": " << least_clearance(p.of, z.sizes).view() << ", "
      << most_clearance(p.of, z.sizes).view() << ".";
    if (p.hot) c.words(" At temperature: ").words(hot_in_words(p).view()) << ".";
}

} // namespace detail::svg

/// Checked and worked out, for `draw`.
[[nodiscard]] inline result<detail::svg::zones> prepared(const zone_picture& p) noexcept {
    using namespace detail::svg;
    using detail::decimals_needed;
    zones z{.asked = p, .zero = {}, .axis = {}};
    if (p.only) z.asked.hot = {};
    // Of one part alone, the other is a twin that needs no place of its own.
    if (p.only && *p.only == side::hole)
        z.asked.of = fit(p.of.hole(), {p.of.hole().nominal(),
                                       {p.of.hole().upper_deviation(), p.of.hole().lower_deviation()}});
    if (p.only && *p.only == side::shaft)
        z.asked.of =
            fit({p.of.shaft().nominal(), {p.of.shaft().upper_deviation(), p.of.shaft().lower_deviation()}},
                p.of.shaft());
    const fit& f = z.asked.of;
    if (const auto drawable = drawable_fit(f); !drawable) return drawable.error();

    const bool hole_leads = p.hole.is_measured && !p.shaft.is_measured;
    z.zero = hole_leads ? f.shaft().nominal() : f.hole().nominal();
    z.sizes.unit = p.unit;
    z.deviations.unit = unit_of_deviations(p.unit);

    bool any_beyond = false;
    const auto see = [&](length least, length most) {
        any_beyond = any_beyond || is_beyond(least, z.zero) || is_beyond(most, z.zero);
        z.axis.occupy(least, most);
    };
    const auto count = [](number_format& format, length l) {
        const int needed = decimals_needed(l, format.unit);
        if (needed > format.decimals) format.decimals = needed;
    };
    const auto see_part = [&](const auto& limits, const auto& shown) {
        see(limits.lower_limit(), limits.upper_limit());
        for (const length size : {limits.lower_limit(), limits.upper_limit()}) count(z.sizes, size);
        if (shown.target) {
            see(*shown.target, *shown.target);
            count(z.sizes, *shown.target);
        }
        if (const auto& r = shown.reading; r) {
            see(r->size() - r->uncertainty(), r->size() + r->uncertainty());
            for (const length size : {r->size(), r->uncertainty()}) count(z.sizes, size);
        }
        if (limits.nominal() != z.zero) return;
        for (const length d : {limits.lower_deviation(), limits.upper_deviation()}) count(z.deviations, d);
    };
    see(z.zero, z.zero);
    if (z.shows(side::hole)) see_part(f.hole(), p.hole);
    if (z.shows(side::shaft)) see_part(f.shaft(), p.shaft);
    if (const auto& hot = z.asked.hot; hot) {
        see(hot->hole.lower_limit(), hot->hole.upper_limit());
        see(hot->shaft.lower_limit(), hot->shaft.upper_limit());
    }
    if (any_beyond) return too_far_to_draw();
    z.axis.settle(zones_height, break_height);
    return z;
}

} // namespace fitwright

#endif
