#ifndef FITWRIGHT_TESTS_SUPPORT_ISO286_CHECKS_HPP
#define FITWRIGHT_TESTS_SUPPORT_ISO286_CHECKS_HPP

#include "iso286_reference.hpp"
#include <fitwright/iso286.hpp>

// The comparison of the library with the published tables, cell by cell. The test of the tables and
// the mutation run share it: what the mutation run proves of these checks holds for the test.

namespace fitwright_tests {

/// How many values were compared and what was wrong with them.
struct verdict {
    std::size_t compared = 0;
    std::size_t wrong = 0;
    std::string first_wrong;

    /// `describe()` gives the words, and is called for the first difference only.
    template <class Describe> void take(bool right, Describe describe) {
        ++compared;
        if (right) return;
        if (wrong++ == 0) first_wrong = describe();
    }
};

/// How much to compare: everything, or as little as shows whether anything is wrong.
enum class thoroughness : bool { first_difference, everything };

inline bool is_decided(const verdict& v, thoroughness how) {
    return how == thoroughness::first_difference && v.wrong > 0;
}

/// Three sizes of a step: just above its lower end, in the middle, its upper end.
inline std::array<length, 3> sizes_of(size_step step) {
    return {length::from_nanometres(step.over + 1), length::from_nanometres((step.over + step.upto) / 2),
            length::from_nanometres(step.upto)};
}

inline std::string at(std::string_view what, length size) {
    return std::string(what) + " at " + std::to_string(size.nanometres()) + " nm";
}

template <side Side>
bool gives(length size, position p, grade g, const std::optional<expected_limits>& wanted) {
    const auto got = fitwright::limits(size, fitwright::tolerance_class<Side>{p, g});
    if (!wanted) return !got && got.error().code() == fitwright::error_code::no_value_in_standard;
    return got && got->nominal() == size && got->upper_deviation().nanometres() == wanted->upper &&
           got->lower_deviation().nanometres() == wanted->lower;
}

inline bool gives(length size, position p, grade g, side s, const std::optional<expected_limits>& wanted) {
    return s == side::hole ? gives<side::hole>(size, p, g, wanted) : gives<side::shaft>(size, p, g, wanted);
}

/// Every row of class_limits.csv at three sizes.
inline verdict check_classes(const iso286_reference& r, thoroughness how) {
    verdict v;
    for (const class_row& row : r.classes) {
        std::optional<expected_limits> wanted;
        if (row.upper && row.lower) wanted = expected_limits{*row.upper, *row.lower};
        for (const length size : sizes_of(row.step))
            v.take(gives(size, row.letter, row.it, row.part, wanted), [&] { return at(row.name, size); });
        if (is_decided(v, how)) break;
    }
    return v;
}

/// Every cell of it_grades.csv at three sizes, blank ones too.
inline verdict check_standard_tolerances(const iso286_reference& r, thoroughness how) {
    verdict v;
    for (const tolerance_row& row : r.tolerances) {
        for (std::size_t step = 0; step < row.tolerance.size(); ++step) {
            const grade g = grade::from_step(static_cast<int>(step));
            for (const length size : sizes_of(row.step)) {
                const bool barred = g >= grade::it14 && size.nanometres() <= 1'000'000;
                const cell wanted = barred ? cell() : row.tolerance[step];
                const auto got = fitwright::standard_tolerance(size, g);
                v.take(wanted ? got && got->nanometres() == *wanted
                              : !got && got.error().code() == fitwright::error_code::no_value_in_standard,
                       [&] { return at("IT" + std::string(grade_names[step]), size); });
            }
            if (is_decided(v, how)) return v;
        }
    }
    return v;
}

/// Every class there could be (41 steps of sizes, 28 letters, 20 grades) of one side, against what the
/// tables of fundamental deviations and of delta say, at three sizes of each step.
/// Begins with `first_step`: whoever expects a difference there needn't wait for it.
inline verdict check_deviations(const iso286_reference& r, side s, thoroughness how,
                                std::size_t first_step = 0) {
    verdict v;
    for (std::size_t i = 0; i < r.shafts.size(); ++i) {
        const std::size_t step = (first_step + i) % r.shafts.size();
        for (std::size_t letter = 0; letter < shaft_letters.size(); ++letter) {
            for (int it = 0; it < grade::count; ++it) {
                const auto p = static_cast<position>(letter);
                const grade g = grade::from_step(it);
                const auto& wanted = expected(r, step, p, g, s);
                const auto sizes = sizes_of(r.shafts[step].step);
                for (const length size : sizes) {
                    const bool barred = size.nanometres() <= 1'000'000 && barred_up_to_1_mm(p, g, s);
                    v.take(gives(size, p, g, s, barred ? std::optional<expected_limits>() : wanted),
                           [&] { return at(class_name(p, g, s), size); });
                }
            }
            if (is_decided(v, how)) return v;
        }
    }
    return v;
}

/// The upper ends of the steps of sizes, as the library's tables print them beside their rows, and
/// which row of Table 1 belongs to which of the finer steps.
inline verdict check_steps(const iso286_reference& r) {
    namespace tables = fitwright::detail;
    verdict v;
    for (std::size_t i = 0; i < r.tolerances.size(); ++i)
        v.take(tables::main_range_upto_mm[i] * std::int64_t{1'000'000} == r.tolerances[i].step.upto,
               [&] { return "row " + std::to_string(i) + " of main_range_upto_mm"; });
    for (std::size_t i = 0; i < r.shafts.size(); ++i) {
        v.take(tables::range_upto_mm[i] * std::int64_t{1'000'000} == r.shafts[i].step.upto,
               [&] { return "row " + std::to_string(i) + " of range_upto_mm"; });
        const auto main_row = static_cast<std::size_t>(tables::main_row_of[i]);
        v.take(main_row < r.tolerances.size() &&
                   iso286_reference::containing(r.tolerances, r.shafts[i].step) == &r.tolerances[main_row],
               [&] { return "row " + std::to_string(i) + " of main_row_of"; });
    }
    return v;
}

} // namespace fitwright_tests

#endif
