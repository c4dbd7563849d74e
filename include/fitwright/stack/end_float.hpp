#ifndef FITWRIGHT_STACK_END_FLOAT_HPP
#define FITWRIGHT_STACK_END_FLOAT_HPP

#include <fitwright/stack/stack_up.hpp>

// End float, and the shim that brings it where it should be: from limits, for every assembly, or from the
// float as measured, for this one.

namespace fitwright {

/// The float of an assembly, before any shim: of a chain at its worst, or as measured.
class end_float {
public:
    constexpr end_float(range<length> found) noexcept : found_(found) {}
    constexpr end_float(const stack_result& s) noexcept : found_(s.worst_case) {}

    /// The float without a shim, from least to most.
    [[nodiscard]] constexpr range<length> found() const noexcept { return found_; }

private:
    range<length> found_;
};

namespace detail {

/// As long as a stack may be; asked before a length is added to another.
[[nodiscard]] constexpr bool is_float_length(length l) noexcept {
    constexpr length farthest = length::from_nanometres(1'000'000'000'000'000); // 1000 km
    return -farthest <= l && l <= farthest;
}

} // namespace detail

/// A float as measured: `measured_float{.size = 0.62_mm, .uncertainty = 10_um}`.
struct measured_float {
    length size;
    length uncertainty;

    constexpr operator end_float() const noexcept {
        // What is too far to add stands for itself; no shim is looked for then.
        if (!detail::is_float_length(size)) return range<length>{size, size};
        if (!detail::is_float_length(uncertainty)) return range<length>{uncertainty, uncertainty};
        return range<length>{size - uncertainty, size + uncertainty};
    }
};

/// A shim in hand; an entry for each piece. Thicker than 0, up to 1 m.
struct shim {
    length thickness;    ///< as sold
    length plus_minus{}; ///< how far it may be off, either way

    friend constexpr bool operator==(shim, shim) noexcept = default;
};

/// Which shims to put in, and the float that they leave.
struct shim_choice {
    int how_many = 0;       ///< 0: it is right without; otherwise 1 or 2
    std::size_t first = 0;  ///< their places in the list
    std::size_t second = 0; ///< of a pair of shims; 0 for a single one
    range<length> left;     ///< the float with them in
    range<length> needed;   ///< what thickness would do, all told
};

namespace detail {

[[nodiscard]] constexpr bool is_float(range<length> f) noexcept {
    return is_float_length(f.least) && is_float_length(f.most) && f.least <= f.most;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_float(range<length> found,
                                                                    range<length> wanted) noexcept {
    const length ends[] = {found.least, found.most, wanted.least, wanted.most};
    for (const length end : ends)
        if (!is_float_length(end))
            return error::composer(error_code::chain_too_long)
                   << "a float of " << written(end).view() << " mm: allowed is up to 1000 km";
    const bool is_found = found.least > found.most;
    const range<length> crossed = is_found ? found : wanted;
    return error::composer(error_code::window_crossed)
           << (is_found ? "a float found" : "a float wanted") << " of " << written(crossed.least).view()
           << " to " << written(crossed.most).view() << " mm: allowed is the least first";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error float_varies(range<length> found,
                                                                     range<length> wanted) noexcept {
    return error::composer(error_code::no_shim_does)
           << "the float varies by " << written(found.most - found.least).view() << " mm and may vary by "
           << written(wanted.most - wanted.least).view()
           << " mm: no shim does for all; allowed: measure each assembly, or closer dimensions";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error float_too_small(range<length> needed) noexcept {
    return error::composer(error_code::no_shim_does)
           << "there is too little float for any shim: it takes " << written(-needed.most).view() << " to "
           << written(-needed.least).view() << " mm off the parts";
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error none_in_hand(std::size_t shims,
                                                                     range<length> needed) noexcept {
    error::composer say(error_code::no_shim_does);
    if (shims == 0) say << "there is no shim in hand";
    else if (shims == 1) say << "the one shim in hand does not do";
    else if (shims == 2) say << "neither of the 2 shims in hand does, nor both";
    else say << "none of the " << static_cast<std::int64_t>(shims) << " shims in hand does, nor any two";
    return say << ": it needs " << written(needed.least).view() << " to " << written(needed.most).view()
               << " mm";
}

[[nodiscard]] constexpr bool is_shim(const shim& s) noexcept {
    constexpr length thickest = length::from_nanometres(1'000'000'000);
    return s.thickness > length() && s.thickness <= thickest && s.plus_minus >= length() &&
           s.plus_minus <= thickest;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error not_a_shim(std::size_t place,
                                                                   const shim& s) noexcept {
    return error::composer(error_code::not_a_shim)
           << "shim no. " << static_cast<std::int64_t>(place + 1) << " is " << written(s.thickness).view()
           << " +/- " << written(s.plus_minus).view()
           << " mm: allowed are thicknesses above 0, up to 1000 mm, and +/- 0 or more";
}

/// The float with some thickness in it, which is as uncertain as it is.
[[nodiscard]] constexpr range<length> float_with(range<length> found, length thickness,
                                                 length plus_minus) noexcept {
    return {found.least - thickness - plus_minus, found.most - thickness + plus_minus};
}

/// How far the middle of a float lies from the middle of the window, twice.
[[nodiscard]] constexpr length off_middle(range<length> left, range<length> wanted) noexcept {
    const length off = left.least + left.most - wanted.least - wanted.most;
    return off < length() ? -off : off;
}

} // namespace detail

/// From which thickness to which a shim brings the float into the window at both ends; the window may be a
/// `clearance_window`. Below zero where
/// there is room for none; the least is then 0 or less also where the float is right without.
/// Error: a float or window the wrong way round or beyond 1000 km; a float that varies by more than the window is wide.
[[nodiscard]] constexpr result<range<length>> shim_needed(const end_float& f, range<length> wanted) noexcept {
    const range<length> found = f.found();
    if (!detail::is_float(found) || !detail::is_float(wanted)) return detail::not_a_float(found, wanted);
    if (found.most - found.least > wanted.most - wanted.least) return detail::float_varies(found, wanted);
    return range<length>{found.most - wanted.most, found.least - wanted.least};
}

/// The shim in hand, or the two, that bring the float into the window at both ends, nearest to its middle;
/// one rather than two, none rather than one.
/// Error: a shim that is none; as of `shim_needed`; no shim in hand does, and then which thickness would.
[[nodiscard]] constexpr result<shim_choice> choose_shim(const end_float& f, range<length> wanted,
                                                        rows<shim> in_hand) noexcept {
    for (std::size_t i = 0; i < in_hand.size(); ++i)
        if (!detail::is_shim(in_hand[i])) return detail::not_a_shim(i, in_hand[i]);
    const auto needed = shim_needed(f, wanted);
    if (!needed) return needed.error();
    const range<length> found = f.found();
    if (lies_within(found, wanted)) return shim_choice{.left = found, .needed = *needed};
    if (needed->most <= length()) return detail::float_too_small(*needed);

    shim_choice best{.left = found, .needed = *needed};
    const auto consider = [&](int how_many, std::size_t i, std::size_t k, length thickness,
                              length plus_minus) {
        const range<length> left = detail::float_with(found, thickness, plus_minus);
        if (!lies_within(left, wanted)) return;
        if (best.how_many != 0 && detail::off_middle(left, wanted) >= detail::off_middle(best.left, wanted))
            return;
        best = {.how_many = how_many, .first = i, .second = k, .left = left, .needed = *needed};
    };
    for (std::size_t i = 0; i < in_hand.size(); ++i)
        consider(1, i, i, in_hand[i].thickness, in_hand[i].plus_minus);
    if (best.how_many == 1) return best;
    for (std::size_t i = 0; i < in_hand.size(); ++i)
        for (std::size_t k = i + 1; k < in_hand.size(); ++k)
            consider(2, i, k, in_hand[i].thickness + in_hand[k].thickness,
                     in_hand[i].plus_minus + in_hand[k].plus_minus);
    if (best.how_many == 0) return detail::none_in_hand(in_hand.size(), *needed);
    return best;
}

/// The same for shims in braces.
template <std::size_t Size>
[[nodiscard]] constexpr result<shim_choice> choose_shim(const end_float& f, range<length> wanted,
                                                        const shim (&&in_hand)[Size]) noexcept {
    shim kept[Size]; // a copy: g++ 12 compares no pointer to a temporary in a constant expression
    for (std::size_t i = 0; i < Size; ++i) kept[i] = in_hand[i];
    return choose_shim(f, wanted, rows<shim>(kept));
}

} // namespace fitwright

#endif
