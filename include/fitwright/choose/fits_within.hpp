#ifndef FITWRIGHT_CHOOSE_FITS_WITHIN_HPP
#define FITWRIGHT_CHOOSE_FITS_WITHIN_HPP

#include <fitwright/choose/fits_within_search.hpp>
#include <fitwright/choose/mate.hpp>

// From a window of clearance to the ISO fits that keep it.

namespace fitwright {

namespace detail {

[[nodiscard]] constexpr result<bool> can_search_fits(length nominal, clearance_window w,
                                                     const fit_options& options) noexcept {
    constexpr length farthest = length::from_nanometres(1'000'000'000);
    if (!in_tables(nominal)) return size_outside_tables(nominal);
    if (w.least > w.most) return window_crossed(w);
    if (w.least < -farthest || w.most > farthest)
        return error::composer(error_code::window_not_a_clearance)
               << "a clearance of " << written(w.least).view() << " to " << written(w.most).view()
               << " mm; allowed: from -1000 to 1000 mm, and ISO 286 has none beyond 40 mm";
    if (!options.finest.exists() || !options.coarsest.exists()) return no_such_grade();
    if (options.finest > options.coarsest)
        return error::composer(error_code::nothing_to_choose_from)
               << "IT" << options.finest.name() << " as the finest grade is coarser than IT"
               << options.coarsest.name() << "; allowed: the finest first, IT01 to IT18";
    if (options.hole.is_given())
        if (const auto hole = limits(nominal, options.hole.given()); !hole) return hole.error();
    if (options.shaft.is_given())
        if (const auto shaft = limits(nominal, options.shaft.given()); !shaft) return shaft.error();
    return true;
}

/// Reamers and plug gauges as the catalogues have them: H6 to H9, 1 to 50 mm.
[[nodiscard]] constexpr bool are_reamers_sold(length nominal, hole_class c) noexcept {
    return c.position == position::h && c.grade >= grade::it6 && c.grade <= grade::it9 &&
           nominal >= length::from_nanometres(1'000'000) && nominal <= length::from_nanometres(50'000'000);
}
/// Stock: ground to h6 and h8, drawn to h9 and h11, up to 100 mm.
[[nodiscard]] constexpr bool is_stock_sold(length nominal, shaft_class c) noexcept {
    const bool is_sold_grade =
        c.grade == grade::it6 || c.grade == grade::it8 || c.grade == grade::it9 || c.grade == grade::it11;
    return c.position == position::h && is_sold_grade && nominal <= length::from_nanometres(100'000'000);
}

/// What speaks for a fit, and against it.
[[nodiscard]] constexpr flags<fit_reason> fit_reasons_of(const pair_candidate& c, const fit& f,
                                                         int widest) noexcept {
    flags<fit_reason> reasons;
    if (c.rank == pair_rank::preferred_fit) reasons |= fit_reason::preferred_fit;
    if (c.rank == pair_rank::preferred_classes || c.rank == pair_rank::preferred_on_a_basis)
        reasons |= fit_reason::preferred_classes;
    if (c.classes.hole.position == position::h) reasons |= fit_reason::hole_basis;
    if (are_reamers_sold(f.hole().nominal(), c.classes.hole)) reasons |= fit_reason::reamers_sold;
    if (c.classes.shaft.position == position::h) reasons |= fit_reason::shaft_basis;
    if (is_stock_sold(f.shaft().nominal(), c.classes.shaft)) reasons |= fit_reason::stock_sold;
    if (c.order == widest) reasons |= fit_reason::widest_tolerances;
    const grade finer =
        c.classes.hole.grade < c.classes.shaft.grade ? c.classes.hole.grade : c.classes.shaft.grade;
    if (finer < grade::it4) reasons |= fit_reason::gauge_makers_work;
    else if (finer < grade::it6) reasons |= fit_reason::fine_work;
    if (f.hole().origin().how_sure != confidence::published ||
        f.shaft().origin().how_sure != confidence::published)
        reasons |= fit_reason::value_not_seen;
    return reasons;
}

/// The wider tolerance of the parts that are given.
[[nodiscard]] constexpr length given_tolerance(length nominal, const fit_options& options) noexcept {
    const length hole =
        options.hole.is_given() ? limits(nominal, options.hole.given())->tolerance() : length();
    const length shaft =
        options.shaft.is_given() ? limits(nominal, options.shaft.given())->tolerance() : length();
    return hole > shaft ? hole : shaft;
}

[[nodiscard]] constexpr found_fit found_pair(length nominal, clearance_window w, const pair_candidate& c,
                                             int widest) noexcept {
    const fit f = *limits(nominal, c.classes);
    const length tight = w.least - f.min_clearance();
    const length loose = f.max_clearance() - w.most;
    return {
        .classes = c.classes,
        .hole = f.hole(),
        .shaft = f.shaft(),
        .reasons = fit_reasons_of(c, f, widest),
        .too_tight = tight > length() ? tight : length(),
        .too_loose = loose > length() ? loose : length(),
        .take_care = f.kind() == fit_kind::clearance ? cautions() : caution::press_force,
    };
}

} // namespace detail

/// Every pair of ISO 286 classes at a nominal size whose clearance, from least to most, lies inside a window;
/// the best `Capacity` of them and the total. Where none does, the pairs that stick out of it by least, those
/// with a grade finer than IT6 after all others; `too_wide()` says where a given part alone is the reason.
///
/// The best are, in this order: the preferred fits; pairs of preferred classes, first those with an H hole or
/// an h shaft; other pairs with one of these; others; those with a value that was not seen in print. Among
/// equals the cheapest, taken as the one whose tighter part has the wider tolerance, then the wider other one
/// (common practice, no source); then an H hole; then the one nearest the middle of the window.
/// Classes from ISO 286-1:2010, Tables 1 to 5; js and JS are exactly half the tolerance either way.
/// Error: a size outside the tables; a window the wrong way round or beyond 1 m; no such grade, or the finest
/// coarser than the coarsest; a given class without a value there; options that leave no pair.
template <std::size_t Capacity = 16>
[[nodiscard]] constexpr result<found_fits<Capacity>> fits_within(length nominal, clearance_window w,
                                                                 const fit_options& options = {}) noexcept {
    static_assert(Capacity > 0);
    if (const auto can = detail::can_search_fits(nominal, w, options); !can) return can.error();
    const detail::fit_search search(nominal, w, options);
    const auto all = search.count();
    detail::pair_candidate room[Capacity] = {};
    detail::best_candidates best(room, Capacity);
    if (all.total > 0) search.collect(best);
    else search.collect_misses(best);
    if (best.size() == 0)
        return error::composer(error_code::nothing_to_choose_from)
               << "these options leave no pair at " << written(nominal).view()
               << " mm; allowed: other classes, grades or basis, or all_classes";
    found_fits<Capacity> list;
    list.count(all.total);
    if (all.total == 0) list.hold_against(w.most - w.least, detail::given_tolerance(nominal, options));
    for (std::size_t i = 0; i < best.size(); ++i)
        list.add(detail::found_pair(nominal, w, best[i], all.widest));
    return list;
}

} // namespace fitwright

#endif
