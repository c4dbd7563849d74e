#ifndef FITWRIGHT_WINDOW_CROSSED_HPP
#define FITWRIGHT_WINDOW_CROSSED_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/error.hpp>
#include <fitwright/written.hpp>

namespace fitwright::detail {

/// What is said of a window the wrong way round, by whoever takes one.
[[nodiscard]] constexpr error window_crossed(clearance_window w) noexcept {
    return error::composer(error_code::window_crossed)
           << "a clearance of " << written(w.least).view() << " to " << written(w.most).view()
           << " mm; allowed: the least first, and not above the most";
}

} // namespace fitwright::detail

#endif
