#ifndef FITWRIGHT_CALLOUT_WRITE_HPP
#define FITWRIGHT_CALLOUT_WRITE_HPP

#include <fitwright/callout/callout.hpp>
#include <fitwright/iso286/preferred.hpp>

// Call-outs written as the standard spells them. What is written reads back as the same.

namespace fitwright {

/// How to write a call-out.
struct callout_style {
    /// The unit of the size. Millimetres need no word; the others get theirs.
    written_unit unit = written_unit::mm;
    /// U+2300 in front of the size. Without it the text is ASCII.
    bool diameter_sign = false;
};

namespace detail {

using callout_text = fixed_text<160>;

constexpr void put_size(callout_text& t, length nominal, callout_style style) noexcept {
    if (style.diameter_sign) t << text("\u2300");
    t << written(nominal, {.unit = style.unit}).view();
    if (style.unit != written_unit::mm) t << text(" ") << in_words(style.unit);
}

template <side Side> constexpr void put_class(callout_text& t, tolerance_class<Side> c) noexcept {
    t << letters(c.position, Side) << c.grade.name();
}

} // namespace detail

/// "H7".
template <side Side> [[nodiscard]] constexpr fixed_text<8> written(tolerance_class<Side> c) noexcept {
    return fixed_text<8>() << letters(c.position, Side) << c.grade.name();
}

/// "H7/g6".
[[nodiscard]] constexpr fixed_text<16> written(class_pair c) noexcept {
    return fixed_text<16>() << written(c.hole).view() << text("/") << written(c.shaft).view();
}

/// "12 H7": a size and a class.
template <side Side>
[[nodiscard]] constexpr fixed_text<160> written(length nominal, tolerance_class<Side> c,
                                                callout_style style = {}) noexcept {
    detail::callout_text t;
    detail::put_size(t, nominal, style);
    t << text(" ");
    detail::put_class(t, c);
    return t;
}

/// "12 H7/g6": a size and both classes.
[[nodiscard]] constexpr fixed_text<160> written(length nominal, class_pair c,
                                                callout_style style = {}) noexcept {
    return written(nominal, c.hole, style) << text("/") << written(c.shaft).view();
}

/// A whole call-out with its notes, in the unit it was read in: "2x 12 H7 (E) THRU".
[[nodiscard]] constexpr fixed_text<160> written(const callout& c) noexcept {
    detail::callout_text t;
    if (c.notes.count > 0) t << static_cast<std::int64_t>(c.notes.count) << text("x ");
    const callout_style style{.unit = c.unit, .diameter_sign = c.notes.diameter_sign};
    const detail::callout_text before_size = t;
    detail::put_size(t, c.nominal(), style);

    const text envelope = " (E)";
    if (c.has_inch_fit) {
        if (c.unit == written_unit::mm) t << text(" mm"); // without a unit it might be inches
        t << text(" ") << name(c.inch_class);
        if (c.notes.hole_envelope) t << envelope;
    } else if (!c.has_classes && c.hole.nominal() != c.shaft.nominal()) { // two limits, as they were read
        const int of_lower = detail::decimals_needed(c.hole.lower_limit(), c.unit);
        const int of_upper = detail::decimals_needed(c.hole.upper_limit(), c.unit);
        const int most = of_lower > of_upper ? of_lower : of_upper;
        const number_format same{.unit = c.unit, .decimals = most > 1 ? most : 1}; // not a fraction
        t = before_size;
        if (style.diameter_sign) t << text("\u2300");
        t << written(c.hole.lower_limit(), same).view();
        if (c.unit != written_unit::mm) t << text(" ") << in_words(c.unit);
        t << text("/") << written(c.hole.upper_limit(), same).view();
        if (c.notes.hole_envelope) t << envelope;
    } else if (!c.has_classes) {
        t << detail::written_deviations(c.hole, c.unit).view();
        if (c.notes.hole_envelope) t << envelope;
    }
    if (c.has_classes && c.part != callout_part::shaft) {
        t << text(" ");
        detail::put_class(t, c.hole_class);
        if (c.notes.hole_envelope) t << envelope;
    }
    if (c.has_classes && c.part != callout_part::hole) {
        t << text(c.part == callout_part::fit ? "/" : " ");
        detail::put_class(t, c.shaft_class);
        if (c.notes.shaft_envelope) t << envelope;
    }
    if (c.notes.through) t << text(" THRU");
    if (c.notes.has_depth) t << text(" DEPTH ") << written(c.notes.depth, {.unit = c.unit}).view();
    return t;
}

} // namespace fitwright

#endif
