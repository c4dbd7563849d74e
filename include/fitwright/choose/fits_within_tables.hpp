#ifndef FITWRIGHT_CHOOSE_FITS_WITHIN_TABLES_HPP
#define FITWRIGHT_CHOOSE_FITS_WITHIN_TABLES_HPP

#include <fitwright/choose/fits_within_answer.hpp>

// The classes of one nominal size, laid out for a search.

namespace fitwright::detail {

/// A set of letters, a bit each.
using letter_set = std::uint32_t;

[[nodiscard]] constexpr letter_set set_of(position p) noexcept {
    return letter_set{1} << static_cast<int>(p);
}

/// The preferred classes and fits, to be asked without a search. By step of the grade.
struct preferred_marks {
    letter_set hole[grade::count];                      ///< preferred classes
    letter_set shaft[grade::count];                     ///< likewise
    letter_set with_hole_h[grade::count][grade::count]; ///< shafts of preferred fits, by H's grade and theirs
    letter_set with_shaft_h[grade::count][grade::count]; ///< holes of them, by h's grade and theirs
    letter_set any_hole[grade::count];                   ///< preferred, or in a preferred fit
    letter_set any_shaft[grade::count];                  ///< likewise
};

inline constexpr preferred_marks preferred_marked = [] {
    preferred_marks m{};
    for (const hole_class c : preferred_hole_classes()) m.hole[c.grade.step()] |= set_of(c.position);
    for (const shaft_class c : preferred_shaft_classes()) m.shaft[c.grade.step()] |= set_of(c.position);
    for (int g = 0; g < grade::count; ++g) {
        m.any_hole[g] = m.hole[g];
        m.any_shaft[g] = m.shaft[g];
    }
    const auto mark = [&](class_pair p) {
        m.any_hole[p.hole.grade.step()] |= set_of(p.hole.position);
        m.any_shaft[p.shaft.grade.step()] |= set_of(p.shaft.position);
    };
    for (const class_pair p : preferred_fits(basis::hole)) {
        m.with_hole_h[p.hole.grade.step()][p.shaft.grade.step()] |= set_of(p.shaft.position);
        mark(p);
    }
    for (const class_pair p : preferred_fits(basis::shaft)) {
        m.with_shaft_h[p.shaft.grade.step()][p.hole.grade.step()] |= set_of(p.hole.position);
        mark(p);
    }
    return m;
}();

/// How a pair ranks before its tolerances are looked at, the best first.
enum class pair_rank : std::uint8_t {
    preferred_fit,
    preferred_on_a_basis, ///< preferred classes, one of them H or h
    preferred_classes,
    on_a_basis,
    any,
    not_in_print, ///< with a value that nobody has seen in print
};

/// `uncertain`: the letters whose values at this size were not seen in print.
[[nodiscard]] constexpr pair_rank rank_of(class_pair p, letter_set uncertain) noexcept {
    const preferred_marks& m = preferred_marked;
    const int hole_step = p.hole.grade.step();
    const int shaft_step = p.shaft.grade.step();
    const letter_set hole = set_of(p.hole.position);
    const letter_set shaft = set_of(p.shaft.position);
    const bool hole_basis = p.hole.position == position::h;
    const bool shaft_basis = p.shaft.position == position::h;
    if (((hole | shaft) & uncertain) != 0) return pair_rank::not_in_print;
    if ((hole_basis && (m.with_hole_h[hole_step][shaft_step] & shaft) != 0) ||
        (shaft_basis && (m.with_shaft_h[shaft_step][hole_step] & hole) != 0))
        return pair_rank::preferred_fit;
    const bool on_a_basis = hole_basis || shaft_basis;
    if ((m.hole[hole_step] & hole) != 0 && (m.shaft[shaft_step] & shaft) != 0)
        return on_a_basis ? pair_rank::preferred_on_a_basis : pair_rank::preferred_classes;
    return on_a_basis ? pair_rank::on_a_basis : pair_rank::any;
}

/// The letters whose values are uncertain at a size.
[[nodiscard]] constexpr letter_set uncertain_at(size_range r) noexcept {
    letter_set letters = 0;
    for (int p = 0; p < position_count; ++p)
        if (source_of(r, static_cast<position>(p), grade::it7).how_sure == confidence::uncertain)
            letters |= set_of(static_cast<position>(p));
    return letters;
}

/// The worst rank that is still looked at.
[[nodiscard]] constexpr pair_rank worst_rank(pair_choice c) noexcept {
    if (c == pair_choice::preferred_fits) return pair_rank::preferred_fit;
    return c == pair_choice::preferred_classes ? pair_rank::preferred_classes : pair_rank::not_in_print;
}

/// The classes of one side at a nominal size, by grade, each grade sorted by the lower deviation.
struct class_table {
    struct row {
        std::int32_t lower; ///< in nanometres
        fitwright::position position;
    };
    row rows[grade::count][position_count];
    std::int32_t tolerance[grade::count];
    int size[grade::count];

    constexpr void add(int step, row r) noexcept {
        int i = size[step]++;
        for (; i > 0 && rows[step][i - 1].lower > r.lower; --i) rows[step][i] = rows[step][i - 1];
        rows[step][i] = r;
    }

    /// The rows for which `keep(step, position)`.
    template <class Keep> [[nodiscard]] constexpr class_table only(Keep keep) const noexcept {
        class_table kept{};
        for (int step = 0; step < grade::count; ++step) {
            kept.tolerance[step] = tolerance[step];
            for (int i = 0; i < size[step]; ++i)
                if (keep(step, rows[step][i].position)) kept.rows[step][kept.size[step]++] = rows[step][i];
        }
        return kept;
    }
};

/// Every class of a side that the options allow, at a size within the tables.
template <side Side>
[[nodiscard]] constexpr class_table tabulated(length nominal, const fit_options& options) noexcept {
    const size_range range = range_of(nominal);
    const bool on_basis = options.basis == (Side == side::hole ? basis_choice::hole : basis_choice::shaft);
    const bool preferred_only = options.pairs != pair_choice::all_classes;
    class_table table{};
    for (int step = options.finest.step(); step <= options.coarsest.step(); ++step)
        for (int p = 0; p < position_count; ++p) {
            const tolerance_class<Side> c{static_cast<position>(p), grade::from_step(step)};
            const letter_set preferred =
                Side == side::hole ? preferred_marked.any_hole[step] : preferred_marked.any_shaft[step];
            bool wanted = !on_basis || c.position == position::h;
            if constexpr (Side == side::hole) wanted = wanted && options.hole.allows(c);
            else wanted = wanted && options.shaft.allows(c);
            if (!wanted || (preferred_only && (preferred & set_of(c.position)) == 0)) continue;
            const interval i = interval_of(range, c, js_rounding::exact_half);
            if (!i.is_given()) continue;
            table.tolerance[step] = static_cast<std::int32_t>(i.upper - i.lower);
            table.add(step, {static_cast<std::int32_t>(i.lower), c.position});
        }
    return table;
}

} // namespace fitwright::detail

#endif
