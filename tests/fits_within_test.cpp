// The way from a window to ISO fits, held against every pair of classes there is (ISO 286-1:2010).

#include "support/both.hpp"
#include <fitwright/callout.hpp>
#include <fitwright/choose/fits_within.hpp>
#include <fitwright/io/fits_within.hpp>

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <sstream>
#include <tuple>
#include <vector>

using namespace fitwright;
using namespace fitwright::literals;
using fitwright_tests::given;

namespace {

// Named, since clang 14 can't print such a literal in a note.
constexpr hole_class hole_h7 = "H7"_hole_class;
constexpr hole_class hole_g7 = "G7"_hole_class;
constexpr hole_class hole_f7 = "F7"_hole_class;
constexpr shaft_class shaft_g6 = "g6"_shaft_class;
constexpr shaft_class shaft_h6 = "h6"_shaft_class;

/// One class at one size, by the public function alone.
template <side Side> struct known_class {
    tolerance_class<Side> c;
    std::int64_t lower, upper;
    bool preferred, uncertain;
};

template <side Side, class Preferred>
std::vector<known_class<Side>> every_class(length nominal, const Preferred& preferred) {
    std::vector<known_class<Side>> all;
    for (int p = 0; p < position_count; ++p)
        for (int g = 0; g < grade::count; ++g) {
            const tolerance_class<Side> c{static_cast<position>(p), grade::from_step(g)};
            const auto l = limits(nominal, c);
            if (!l) continue;
            all.push_back({c, l->lower_deviation().nanometres(), l->upper_deviation().nanometres(),
                           std::find(preferred.begin(), preferred.end(), c) != preferred.end(),
                           l->origin().how_sure == confidence::uncertain});
        }
    return all;
}

/// Which pairs are preferred fits: by steps and positions.
bool is_preferred_fit(class_pair p) {
    for (const basis b : {basis::hole, basis::shaft})
        for (const class_pair known : preferred_fits(b))
            if (known == p) return true;
    return false;
}

int rank_by_hand(const known_class<side::hole>& h, const known_class<side::shaft>& s) {
    const bool on_a_basis = h.c.position == position::h || s.c.position == position::h;
    if (h.uncertain || s.uncertain) return 5;
    if (on_a_basis && is_preferred_fit({h.c, s.c})) return 0;
    if (h.preferred && s.preferred) return on_a_basis ? 1 : 2;
    return on_a_basis ? 3 : 4;
}

bool allowed_by_hand(const known_class<side::hole>& h, const known_class<side::shaft>& s,
                     const fit_options& o) {
    const auto in_range = [&](grade g) { return o.finest <= g && g <= o.coarsest; };
    if (!in_range(h.c.grade) || !in_range(s.c.grade)) return false;
    if (o.hole.is_given() && h.c != o.hole.given()) return false;
    if (o.shaft.is_given() && s.c != o.shaft.given()) return false;
    if (o.basis == basis_choice::hole && h.c.position != position::h) return false;
    if (o.basis == basis_choice::shaft && s.c.position != position::h) return false;
    if (o.pairs == pair_choice::preferred_fits) return rank_by_hand(h, s) == 0;
    if (o.pairs == pair_choice::preferred_classes) return rank_by_hand(h, s) <= 2;
    return true;
}

/// A pair with what it is ranked by, in the order of the ranking.
struct ranked {
    bool fine_miss; ///< out of the window, with a grade finer than IT6
    std::int64_t miss;
    int rank;
    std::int64_t narrower, wider; ///< tolerances, negative: the wider the better
    bool hole_is_finer;
    std::int64_t off_middle;
    class_pair classes{hole_h7, shaft_h6};

    auto key() const {
        return std::tuple(fine_miss, miss, rank, narrower, wider, hole_is_finer,
                          classes.hole.position != position::h, off_middle, classes.hole.position,
                          classes.shaft.position);
    }
};

struct by_hand {
    std::size_t total = 0;
    std::vector<ranked> best; ///< as many as asked for
};

by_hand every_pair(const std::vector<known_class<side::hole>>& holes,
                   const std::vector<known_class<side::shaft>>& shafts, clearance_window w,
                   const fit_options& o, std::size_t wanted) {
    by_hand found;
    const std::int64_t least = w.least.nanometres();
    const std::int64_t most = w.most.nanometres();
    std::vector<ranked> within;
    std::vector<ranked> misses;
    std::pair bar(true, INT64_MAX); // misses beyond it are not among the best
    for (const auto& h : holes)
        for (const auto& s : shafts) {
            const std::int64_t tight = least - (h.lower - s.upper);
            const std::int64_t loose = (h.upper - s.lower) - most;
            const std::int64_t miss = tight > loose ? tight : loose;
            const bool fine = h.c.grade < grade::it6 || s.c.grade < grade::it6;
            if (miss > 0 && (found.total > 0 || std::pair(fine, miss) > bar)) continue;
            if (!allowed_by_hand(h, s, o)) continue;
            if (miss <= 0) ++found.total;
            const std::int64_t th = h.upper - h.lower;
            const std::int64_t ts = s.upper - s.lower;
            auto& list = miss <= 0 ? within : misses;
            list.push_back({miss > 0 && fine,
                            (std::max)(miss, std::int64_t{0}),
                            rank_by_hand(h, s),
                            -(std::min)(th, ts),
                            -(std::max)(th, ts),
                            th < ts,
                            std::abs(tight - loose),
                            {h.c, s.c}});
            if (miss > 0 && misses.size() > 4000) {
                std::nth_element(misses.begin(), misses.begin() + static_cast<std::ptrdiff_t>(wanted),
                                 misses.end(),
                                 [](const auto& a, const auto& b) { return a.key() < b.key(); });
                misses.resize(wanted + 1);
                bar = {misses.back().fine_miss, misses.back().miss};
            }
        }
    found.best = found.total > 0 ? within : misses;
    const auto count = (std::min)(wanted, found.best.size());
    std::partial_sort(found.best.begin(), found.best.begin() + static_cast<std::ptrdiff_t>(count),
                      found.best.end(), [](const auto& a, const auto& b) { return a.key() < b.key(); });
    found.best.resize(count);
    return found;
}

constexpr std::size_t listed = 16;

void check_against_every_pair(length nominal, const std::vector<known_class<side::hole>>& holes,
                              const std::vector<known_class<side::shaft>>& shafts, clearance_window w,
                              const fit_options& o) {
    const by_hand expected = every_pair(holes, shafts, w, o, listed);
    const auto found = fits_within<listed>(nominal, w, o);
    if (expected.best.empty()) {
        REQUIRE(!found.has_value());
        CHECK(found.error().code() == error_code::nothing_to_choose_from);
        return;
    }
    REQUIRE(found.has_value());
    CHECK(found->total() == expected.total);
    CHECK(found->lie_within() == (expected.total > 0));
    REQUIRE(found->size() == expected.best.size());
    for (std::size_t i = 0; i < expected.best.size(); ++i) {
        const found_fit& f = (*found)[i];
        CHECK(f.classes == expected.best[i].classes);
        CHECK(f.miss().nanometres() == expected.best[i].miss);
        CHECK(f.pair() == *limits(nominal, f.classes));
        CHECK((w.least <= f.pair().min_clearance() && f.pair().max_clearance() <= w.most) ==
              (f.miss() == 0_nm));
        CHECK(f.reasons.contains(fit_reason::preferred_fit) == (expected.best[i].rank == 0));
        CHECK(f.reasons.contains(fit_reason::preferred_classes) ==
              (expected.best[i].rank == 1 || expected.best[i].rank == 2));
        CHECK(f.reasons.contains(fit_reason::hole_basis) == (f.classes.hole.position == position::h));
        CHECK(f.reasons.contains(fit_reason::shaft_basis) == (f.classes.shaft.position == position::h));
    }
}

} // namespace

TEST_CASE("against every pair of classes, at 200 sizes") {
    std::mt19937 random(540);
    const auto below = [&](unsigned n) { return static_cast<int>(random() % n); };
    std::size_t within = 0;
    std::size_t misses = 0;
    for (int i = 0; i < 200; ++i) {
        // the ends of ranges and just above them, fractions, and anything up to 3150 mm
        const int row = i % detail::range_count;
        length nominal = 1_mm * detail::range_upto_mm[row];
        if (i % 3 == 1) nominal += 1_nm;
        if (i % 3 == 2) nominal = 1_nm * (400'000 + random() % (1'000'000u * (i % 2 == 0 ? 60 : 3149)));
        if (nominal > 3150_mm) nominal = 3150_mm;
        if (i == 0) nominal = 1_mm;
        if (i == 1) nominal = 0.5_mm;
        CAPTURE(nominal);
        const auto holes = every_class<side::hole>(nominal, preferred_hole_classes());
        const auto shafts = every_class<side::shaft>(nominal, preferred_shaft_classes());
        const length unit = *standard_tolerance(nominal, grade::it6) / 10;

        const length least = unit * (below(100) - 50);
        const clearance_window windows[] = {
            {least, least + unit * (10 + below(100))},    // as a drawing has it
            {least * 4, least * 4 + unit * below(10)},    // narrow: few, or none
            {unit * -below(30), unit * (5 + below(400))}, // wide, about nothing
        };
        const grade finest = grade(1 + below(8));
        const fit_options narrowed[] = {
            {},
            {.pairs = pair_choice::preferred_classes},
            {.pairs = pair_choice::preferred_fits},
            {.pairs = pair_choice::all_classes,
             .basis = below(2) == 0 ? basis_choice::hole : basis_choice::shaft,
             .finest = finest,
             .coarsest = grade(9 + below(10))},
            {.hole = hole_class{position::h, grade(5 + below(5))}},
            {.shaft = shaft_class{position::g, grade(4 + below(4))}, .finest = grade::it4},
        };
        for (std::size_t k = 0; k < std::size(windows); ++k) {
            check_against_every_pair(nominal, holes, shafts, windows[k], {});
            check_against_every_pair(nominal, holes, shafts, windows[k],
                                     narrowed[1 + (static_cast<std::size_t>(i) + k) % 5]);
            const auto found = fits_within(nominal, windows[k]);
            (found->lie_within() ? within : misses) += 1;
        }
    }
    CHECK(within > 300); // both kinds of answer were asked for
    CHECK(misses > 20);
}

TEST_CASE("a window from a textbook fit finds that fit") {
    // 25 mm: H7 +21/0, g6 -7/-20 (ISO 286-2:2010); the others are G7/h6, H6/g5, G6/h5
    FITWRIGHT_CHECK_BOTH(
        fits_within<4>(given(25_mm), {7_um, 41_um}, {.pairs = pair_choice::preferred_fits})->total() == 4);
    constexpr auto slides = fits_within<4>(25_mm, {7_um, 41_um}, {.pairs = pair_choice::preferred_fits});
    static_assert(slides->lie_within() && slides->size() == 4);
    CHECK((*slides)[0].classes == class_pair{hole_h7, shaft_g6});
    CHECK((*slides)[1].classes == class_pair{hole_g7, shaft_h6});
    // the reamer is there: what may the shaft be
    const auto for_the_reamer = fits_within(8_mm, {5_um, 35_um}, {.hole = hole_h7});
    REQUIRE(for_the_reamer.has_value());
    CHECK((*for_the_reamer)[0].classes == class_pair{hole_h7, shaft_g6});
    for (const found_fit& f : *for_the_reamer) CHECK(f.classes.hole == hole_h7);
    // the stock is there: what may the hole be
    const auto for_the_stock = fits_within(8_mm, {5_um, 35_um}, {.shaft = shaft_h6});
    CHECK((*for_the_stock)[0].classes == class_pair{hole_g7, shaft_h6});
    // a dowel: never loose
    const auto tight = fits_within(6_mm, {-30_um, 0_um}, {.pairs = pair_choice::preferred_fits});
    for (const found_fit& f : *tight) {
        CHECK(f.pair().kind() == fit_kind::interference);
        CHECK(f.take_care.contains(caution::press_force));
    }
    CHECK((*for_the_stock)[0].take_care.empty());
}

TEST_CASE("each has its reasons, for and against") {
    const auto first = (*fits_within(25_mm, {7_um, 41_um}))[0];
    CHECK(first.reasons.contains(fit_reason::preferred_fit));
    CHECK(first.reasons.contains(fit_reason::hole_basis));
    CHECK(!first.reasons.contains(fit_reason::fine_work));
    CHECK((*fits_within(25_mm, {0_um, 18_um}))[0].reasons.contains(fit_reason::fine_work));
    CHECK((*fits_within(25_mm, {-5_um, 5_um}))[0].reasons.contains(fit_reason::gauge_makers_work));
    CHECK(fits_within<1>(25_mm, {7_um, 41_um})->size() == 1);

    // of all that lie within, one at least has the widest tolerances
    const auto all = fits_within<4000>(25_mm, {13_um, 50_um});
    REQUIRE(all.has_value());
    REQUIRE(all->size() == all->total());
    std::size_t widest = 0;
    length widest_finer;
    for (const found_fit& f : *all) {
        const length finer = (std::min)(f.hole.tolerance(), f.shaft.tolerance());
        widest_finer = (std::max)(widest_finer, finer);
    }
    for (const found_fit& f : *all)
        if (f.reasons.contains(fit_reason::widest_tolerances)) {
            ++widest;
            CHECK((std::min)(f.hole.tolerance(), f.shaft.tolerance()) == widest_finer);
        }
    CHECK(widest > 0);
    CHECK(widest < 10);

    // values that were not seen in print come last, and say so: cd, ef, fg above 10 mm
    bool any_seen_after = false;
    bool unseen = false;
    for (const found_fit& f : *all) {
        if (f.reasons.contains(fit_reason::value_not_seen)) unseen = true;
        else if (unseen) any_seen_after = true;
    }
    CHECK(unseen);
    CHECK(!any_seen_after);

    using enum fit_reason;
    for (const fit_reason r : {preferred_fit, preferred_classes, hole_basis, reamers_sold, shaft_basis,
                               stock_sold, widest_tolerances, fine_work, gauge_makers_work, value_not_seen})
        CHECK(!in_words(r).empty());
    CHECK((preferred_fit | fine_work).contains(fine_work));
}

TEST_CASE("nearest misses, to the nanometre") {
    // H7/h6 at 25 mm is 0 to 34 um: a window of 1 to 33 um misses by 1 um either way
    const auto missed = fits_within(25_mm, {1_um, 33_um}, {.hole = hole_h7, .shaft = shaft_h6});
    REQUIRE(missed.has_value());
    CHECK(!missed->lie_within());
    CHECK(missed->total() == 0);
    REQUIRE(missed->size() == 1);
    CHECK((*missed)[0].too_tight == 1_um);
    CHECK((*missed)[0].too_loose == 1_um);
    CHECK(!(*missed)[0].reasons.contains(fit_reason::widest_tolerances));
    // half a nanometre has no place in a length: a window of nothing lies one side or the other
    const auto nothing = fits_within(25_mm, {3.5_um, 3.5_um});
    REQUIRE(nothing.has_value());
    CHECK((*nothing)[0].miss() > 0_nm);
    for (std::size_t i = 1; i < nothing->size(); ++i) CHECK((*nothing)[i].miss() >= (*nothing)[i - 1].miss());
}

TEST_CASE("a miss that a reamer makes comes before a nearer one that only a gauge-maker does") {
    const auto any = fits_within(8_mm, {3.5_um, 3.5_um});
    REQUIRE(any.has_value());
    CHECK(!any->lie_within());
    for (const found_fit& f : *any) {
        CHECK(f.classes.hole.grade >= grade::it6);
        CHECK(f.classes.shaft.grade >= grade::it6);
    }
    // where there are fewer of those than room, the fine ones follow, and are nearer: H7 to h5 and h4, say
    const auto few =
        fits_within<400>(8_mm, {3.5_um, 3.5_um}, {.basis = basis_choice::shaft, .hole = hole_h7});
    REQUIRE(few.has_value());
    REQUIRE(few->size() > 2);
    CHECK((*few)[0].classes.shaft == shaft_h6);
    bool any_fine = false;
    for (const found_fit& f : *few) {
        const bool fine = f.classes.shaft.grade < grade::it6;
        CHECK(fine >= any_fine);
        any_fine = fine;
    }
    CHECK(any_fine);
    CHECK((*few)[few->size() - 1].classes.shaft.grade < grade::it6);
}

TEST_CASE("a given part that takes up the window by itself is named") {
    // 8 H7 has 15 um, and so has the window: any shaft at all is one too many
    const auto none = fits_within(8_mm, {5_um, 20_um}, {.hole = hole_h7});
    REQUIRE(none.has_value());
    CHECK(!none->lie_within());
    CHECK(none->too_wide() == 15_um);
    CHECK(none->window() == 15_um);
    std::ostringstream out;
    out << *none;
    CHECK(out.str().find("none within: the given part's tolerance of 0.015 mm alone takes up the window of "
                         "0.015 mm, and no mate helps; the nearest:\n") == 0);
    // a nanometre wider, and it is no longer the hole alone
    CHECK(fits_within(8_mm, {5_um, 20.001_um}, {.hole = hole_h7})->too_wide() == 0_nm);
    // h6 has 9 um; the wider of both is named
    CHECK(fits_within(8_mm, {0_um, 8_um}, {.shaft = shaft_h6})->too_wide() == 9_um);
    CHECK(fits_within(8_mm, {0_um, 8_um}, {.hole = hole_h7, .shaft = shaft_h6})->too_wide() == 15_um);
    CHECK(fits_within(8_mm, {0_um, 40_um}, {.hole = hole_h7})->too_wide() == 0_nm);
}

TEST_CASE("reamers, stock and gauge-makers only where there are such") {
    using enum fit_reason;
    const auto reasons = [](length nominal, hole_class h, shaft_class s) {
        return (*fits_within<1>(nominal, {-2_mm, 2_mm}, {.hole = h, .shaft = s}))[0].reasons;
    };
    const auto is_reamed = [&](length nominal, int g) {
        return reasons(nominal, {position::h, grade(g)}, shaft_g6).contains(reamers_sold);
    };
    for (int g = 1; g <= 12; ++g) CHECK(is_reamed(8_mm, g) == (g >= 6 && g <= 9));
    CHECK(is_reamed(1_mm, 7));
    CHECK(!is_reamed(0.999_mm, 7));
    CHECK(is_reamed(50_mm, 7));
    CHECK(!is_reamed(50.001_mm, 7));
    CHECK(!reasons(8_mm, hole_g7, shaft_g6).contains(reamers_sold));
    CHECK(reasons(8_mm, {position::h, grade::it12}, shaft_g6).contains(hole_basis));

    const auto is_stock = [&](length nominal, int g) {
        return reasons(nominal, hole_h7, {position::h, grade(g)}).contains(stock_sold);
    };
    for (int g = 1; g <= 13; ++g) CHECK(is_stock(8_mm, g) == (g == 6 || g == 8 || g == 9 || g == 11));
    CHECK(is_stock(100_mm, 6));
    CHECK(!is_stock(100.001_mm, 6));
    CHECK(!reasons(8_mm, hole_h7, shaft_g6).contains(stock_sold));

    for (int g = 1; g <= 7; ++g) {
        const auto of_shaft = reasons(8_mm, hole_h7, {position::h, grade(g)});
        CHECK(of_shaft.contains(gauge_makers_work) == (g < 4));
        CHECK(of_shaft.contains(fine_work) == (g == 4 || g == 5));
    }
    CHECK(speaks_against(gauge_makers_work));
    CHECK(!speaks_against(widest_tolerances));
}

TEST_CASE("written, with its reasons and its miss") {
    std::ostringstream out;
    out << *fits_within<1>(25_mm, {7_um, 41_um}) << '\n' << *fits_within<1>(6_mm, {-30_um, 0_um});
    CHECK(out.str().find(
              " within, the best of them:\n  25 H7/g6: clearance 0.007 to 0.041 mm; a preferred fit of "
              "ISO 286-1; an H hole") != std::string::npos);
    CHECK(out.str().find("Pressing stores force") != std::string::npos);
    std::ostringstream missed;
    missed << *fits_within(25_mm, {1_um, 32.5_um}, {.hole = hole_h7, .shaft = shaft_h6});
    CHECK(missed.str().find(
              "none within; the nearest:\n  25 H7/h6: clearance 0 to 0.034 mm; too tight by 1 um; too "
              "loose by 1.5 um; a preferred fit") == 0);
    CHECK(missed.str().find("Pressing") == std::string::npos);
}

TEST_CASE("what can't be searched says why") {
    const auto code = [](length nominal, clearance_window w, const fit_options& o) {
        const auto found = fits_within(nominal, w, o);
        REQUIRE(!found.has_value());
        CHECK(found.error().message().find("allowed") != text::npos);
        return found.error().code();
    };
    CHECK(code(0_mm, {0_um, 10_um}, {}) == error_code::size_out_of_range);
    CHECK(code(3150.001_mm, {0_um, 10_um}, {}) == error_code::size_out_of_range);
    CHECK(code(8_mm, {10_um, 9_um}, {}) == error_code::window_crossed);
    CHECK(code(8_mm, {0_um, 1000.001_mm}, {}) == error_code::window_not_a_clearance);
    CHECK(code(8_mm, {-2000_mm, 0_um}, {}) == error_code::window_not_a_clearance);
    CHECK(code(8_mm, {length::from_nanometres(INT64_MIN), length::from_nanometres(INT64_MAX)}, {}) ==
          error_code::window_not_a_clearance);
    CHECK(code(8_mm, {0_um, 10_um}, {.finest = grade(19)}) == error_code::grade_not_known);
    CHECK(code(8_mm, {0_um, 10_um}, {.finest = grade::it8, .coarsest = grade::it7}) ==
          error_code::nothing_to_choose_from);
    CHECK(code(8_mm, {0_um, 10_um}, {.hole = hole_class{position::t, grade::it7}}) ==
          error_code::no_value_in_standard);
    CHECK(code(8_mm, {0_um, 10_um}, {.shaft = shaft_class{position::v, grade::it7}}) ==
          error_code::no_value_in_standard);
    CHECK(code(8_mm, {0_um, 10_um}, {.basis = basis_choice::hole, .hole = hole_f7}) ==
          error_code::nothing_to_choose_from);
    CHECK(code(600_mm, {0_um, 10_um}, {.finest = grade::it01, .coarsest = grade::it0}) ==
          error_code::nothing_to_choose_from); // these grades end at 500 mm
}
