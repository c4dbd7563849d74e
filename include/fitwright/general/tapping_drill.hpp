#ifndef FITWRIGHT_GENERAL_TAPPING_DRILL_HPP
#define FITWRIGHT_GENERAL_TAPPING_DRILL_HPP

#include <fitwright/error.hpp>
#include <fitwright/general/tapping_drill_table.hpp>
#include <fitwright/length.hpp>
#include <fitwright/source.hpp>
#include <fitwright/written.hpp>

namespace fitwright {

/// An ISO metric thread: `metric_thread{.diameter = 10_mm, .pitch = 1.25_mm}` is M10 x 1.25.
struct metric_thread {
    length diameter;
    length pitch; ///< from crest to crest
    friend constexpr bool operator==(metric_thread, metric_thread) noexcept = default;
};

/// The drill for a hole that is to be tapped, and how surely it is known.
struct tapping_hole {
    length drill; ///< as the table gives it
    source origin;
};

namespace sources {
inline constexpr source iso_2306{"ISO 2306:1972", "drills for tapping", confidence::published};
inline constexpr source iso_2306_memory{"ISO 2306:1972", "drills for tapping", confidence::memory};
} // namespace sources

namespace detail {

inline constexpr length hundredth_of_a_millimetre = length::from_nanometres(10'000);

[[nodiscard]] constexpr metric_thread thread_of(const tapping::row& row) noexcept {
    return {.diameter = hundredth_of_a_millimetre * row.diameter,
            .pitch = hundredth_of_a_millimetre * row.pitch};
}

/// Calls `use(row)` for every row until it says true.
template <class Use> constexpr void for_each_tapping_drill(Use use) noexcept {
    for (const tapping::row& row : tapping::coarse)
        if (use(row)) return;
    for (const tapping::row& row : tapping::fine)
        if (use(row)) return;
}

/// Which diameters next to this one there are.
constexpr void name_thread_neighbours(error::composer& say, length diameter) noexcept {
    const tapping::row* below = nullptr;
    const tapping::row* above = nullptr;
    for (const tapping::row& row : tapping::coarse) {
        if (thread_of(row).diameter < diameter) below = &row;
        else if (above == nullptr) above = &row;
    }
    say << " M1 to M64; next to this one:";
    if (below != nullptr) say << " M" << written(thread_of(*below).diameter).view();
    if (above != nullptr) say << " M" << written(thread_of(*above).diameter).view();
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_coarse_thread(length diameter) noexcept {
    error::composer say(error_code::no_value_in_standard);
    say << "there is no coarse thread M" << written(diameter).view() << " in ISO 2306: allowed are";
    name_thread_neighbours(say, diameter);
    return say;
}

[[nodiscard, gnu::cold, gnu::noinline]] constexpr error no_tapping_drill(metric_thread thread) noexcept {
    error::composer say(error_code::no_value_in_standard);
    say << "ISO 2306 has no tapping drill for M" << written(thread.diameter).view() << " x "
        << written(thread.pitch).view() << ": allowed are";
    bool any = false;
    for_each_tapping_drill([&](const tapping::row& row) {
        if (thread_of(row).diameter != thread.diameter) return false;
        say << (any ? ", " : " the pitches ") << written(thread_of(row).pitch).view();
        any = true;
        return false;
    });
    if (any) return say << " mm";
    name_thread_neighbours(say, thread.diameter);
    return say;
}

} // namespace detail

/// The coarse thread of a diameter, which is what "M8" without a pitch means: M1 to M64.
/// Error: a diameter without one in ISO 2306 (names the neighbours).
[[nodiscard]] constexpr result<metric_thread> coarse_thread(length diameter) noexcept {
    for (const detail::tapping::row& row : detail::tapping::coarse)
        if (detail::thread_of(row).diameter == diameter) return detail::thread_of(row);
    return detail::no_coarse_thread(diameter);
}

/// The drill for a hole that is to be tapped by cutting: ISO 2306:1972. A thread-forming tap takes a
/// larger one, by its maker.
/// Error: a thread that ISO 2306 doesn't list (names the pitches of its diameter, or the neighbours).
[[nodiscard]] constexpr result<tapping_hole> tapping_drill(metric_thread thread) noexcept {
    const detail::tapping::row* found = nullptr;
    detail::for_each_tapping_drill([&](const detail::tapping::row& row) {
        if (detail::thread_of(row) == thread) found = &row;
        return found != nullptr;
    });
    if (found == nullptr) return detail::no_tapping_drill(thread);
    return tapping_hole{detail::hundredth_of_a_millimetre * found->drill,
                        found->how == detail::tapping::read_in::print ? sources::iso_2306
                                                                      : sources::iso_2306_memory};
}

} // namespace fitwright

#endif
