#ifndef FITWRIGHT_ISO286_NO_VALUE_HPP
#define FITWRIGHT_ISO286_NO_VALUE_HPP

#include <fitwright/error.hpp>
#include <fitwright/iso286/interval.hpp>
#include <fitwright/written.hpp>

// What to say where the standard has no value: what was asked, and what would have one. Both are
// found by trying the neighbours, so the message can't disagree with the tables.

namespace fitwright::detail {

[[nodiscard]] constexpr error size_outside_tables(length nominal) noexcept {
    error::composer say(error_code::size_out_of_range);
    say << "a nominal size of ";
    say.piece(written(nominal).view()) << " mm";
    if (nominal <= length()) return say << ": allowed are sizes above 0 mm";
    return say << " is outside ISO 286-1: allowed are sizes above 0 mm up to and including 3150 mm";
}

[[nodiscard]] constexpr error no_such_grade() noexcept {
    return error::composer(error_code::grade_not_known)
           << "there is no such standard tolerance grade: allowed are IT01, IT0 and IT1 to IT18";
}

/// Writes the stretches of `first` to `last` for which `holds(i)`: "a to b, c to d".
template <class Holds, class Write>
constexpr bool list_stretches(int first, int last, Holds holds, Write write) noexcept {
    bool any = false;
    for (int i = first; i <= last; ++i) {
        if (!holds(i)) continue;
        int end = i;
        while (end < last && holds(end + 1)) ++end;
        write(i, end, any);
        any = true;
        i = end;
    }
    return any;
}

/// A nominal size inside the `row`-th range: its upper end.
[[nodiscard]] constexpr length size_in_range(int row) noexcept {
    return length::from_nanometres(std::int64_t{1'000'000} * range_upto_mm[row]);
}

template <side Side>
[[nodiscard]] constexpr bool has_value_at(length nominal, tolerance_class<Side> c) noexcept {
    return interval_of(range_of(nominal), c, js_rounding::exact_half).is_given();
}

template <side Side> constexpr void list_sizes(error::composer& say, tolerance_class<Side> c) noexcept {
    const bool barred_at_1_mm = barred_up_to_1_mm(c.position, c.grade, Side);
    const bool any = list_stretches(
        0, range_count - 1, [&](int row) { return has_value_at(size_in_range(row), c); },
        [&](int first, int last, bool again) {
            if (again) say << " and";
            if (first > 0) say << " above " << range_upto_mm[first - 1] << " mm";
            else if (barred_at_1_mm) say << " above 1 mm";
            say << " up to " << range_upto_mm[last] << " mm";
        });
    if (!any) say << " at no size";
}

template <side Side> constexpr void list_grades(error::composer& say, length nominal, position p) noexcept {
    list_stretches(
        0, grade::count - 1,
        [&](int step) {
            return has_value_at(nominal, tolerance_class<Side>{p, grade::from_step(step)});
        },
        [&](int first, int last, bool again) {
            say << (again ? ", " : "; at this size ");
            const text letter = letters(p, Side);
            say << letter << grade::from_step(first).name();
            if (last > first) say << " to " << letter << grade::from_step(last).name();
        });
}

/// Why `limits(nominal, c)` has no answer.
template <side Side>
[[nodiscard, gnu::cold, gnu::noinline]] constexpr result<size_limits<Side>>
no_value(length nominal, tolerance_class<Side> c) noexcept {
    if (!in_tables(nominal)) return size_outside_tables(nominal);
    if (!c.grade.exists()) return no_such_grade();
    const text letter = letters(c.position, Side);
    error::composer say(error_code::no_value_in_standard);
    say << "ISO 286-1 has no ";
    say.piece((fixed_text<8>() << letter << c.grade.name()).view())
        << " at " << written(nominal).view() << " mm; allowed: " << letter << c.grade.name();
    list_sizes(say, c);
    list_grades<Side>(say, nominal, c.position);
    return say;
}

/// Why `standard_tolerance(nominal, g)` has no answer.
[[nodiscard, gnu::cold, gnu::noinline]] constexpr result<length> no_tolerance(length nominal,
                                                                              grade g) noexcept {
    if (!in_tables(nominal)) return size_outside_tables(nominal);
    if (!g.exists()) return no_such_grade();
    error::composer say(error_code::no_value_in_standard);
    say << "ISO 286-1 has no IT" << g.name() << " at " << written(nominal).view() << " mm; allowed: IT"
        << g.name() << (g < grade::it1 ? " up to 500 mm" : " above 1 mm");
    return say;
}

} // namespace fitwright::detail

#endif
