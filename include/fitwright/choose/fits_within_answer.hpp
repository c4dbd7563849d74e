#ifndef FITWRIGHT_CHOOSE_FITS_WITHIN_ANSWER_HPP
#define FITWRIGHT_CHOOSE_FITS_WITHIN_ANSWER_HPP

#include <fitwright/clearance_window.hpp>
#include <fitwright/fit.hpp>
#include <fitwright/iso286/preferred.hpp>

#include <cstddef>

// What `fits_within` may be asked for and what it answers.

namespace fitwright {

/// Which pairs to look at.
enum class pair_choice : std::uint8_t {
    all_classes,       ///< any hole class of ISO 286-1 with any shaft class
    preferred_classes, ///< preferred classes with each other, and the preferred fits
    preferred_fits,    ///< the preferred fits of either basis alone
};

/// Which part has to keep its H or h.
enum class basis_choice : std::uint8_t { any, hole, shaft };

/// A class that is given, or any: `.hole = "H7"_hole_class`.
template <side Side> class class_choice {
public:
    constexpr class_choice() noexcept = default;
    constexpr class_choice(tolerance_class<Side> given) noexcept : class_(given), is_given_(true) {}

    /// Whether one is given; any is allowed otherwise.
    [[nodiscard]] constexpr bool is_given() const noexcept { return is_given_; }
    /// Of a choice that is given.
    [[nodiscard]] constexpr const tolerance_class<Side>& given() const noexcept { return class_; }
    /// Whether a class is the one that is given, or any is.
    [[nodiscard]] constexpr bool allows(tolerance_class<Side> c) const noexcept {
        return !is_given_ || c == class_;
    }

private:
    tolerance_class<Side> class_{position::h, grade::it7};
    bool is_given_ = false;
};

/// What the fits must have besides their clearance; without a word, all are looked at.
struct fit_options {
    pair_choice pairs = pair_choice::all_classes; ///< which pairs to look at
    basis_choice basis = basis_choice::any;       ///< whether the hole or the shaft keeps its H or h
    class_choice<side::hole> hole = {};           ///< the hole that is there, or the reamer
    class_choice<side::shaft> shaft = {};         ///< the stock that is there
    grade finest = grade::it01;                   ///< of either part
    grade coarsest = grade::it18;                 ///< of either part
};

/// What speaks for a fit, and the last three against it.
enum class fit_reason : std::uint16_t {
    preferred_fit = 1,
    preferred_classes = 2,
    hole_basis = 4,
    reamers_sold = 8,
    shaft_basis = 16,
    stock_sold = 32,
    widest_tolerances = 64,
    fine_work = 128,
    gauge_makers_work = 256,
    value_not_seen = 512,
};
[[nodiscard]] constexpr flags<fit_reason> operator|(fit_reason a, fit_reason b) noexcept {
    return flags<fit_reason>(a) | b;
}

/// In words.
[[nodiscard]] constexpr text in_words(fit_reason r) noexcept {
    switch (r) {
    case fit_reason::preferred_fit: return "a preferred fit of ISO 286-1";
    case fit_reason::preferred_classes: return "both classes preferred by ISO 286-1";
    case fit_reason::hole_basis: return "an H hole";
    case fit_reason::reamers_sold: return "reamers and plug gauges are sold for the hole";
    case fit_reason::shaft_basis: return "an h shaft";
    case fit_reason::stock_sold: return "ground and drawn stock comes as the shaft";
    case fit_reason::widest_tolerances: return "the widest tolerances that the window takes";
    case fit_reason::fine_work: return "finer than IT6: grind, hone or lap";
    case fit_reason::gauge_makers_work: return "finer than IT4: gauge-maker's work";
    case fit_reason::value_not_seen: return "a value that was not seen in print: check it in the standard";
    }
    return "";
}

/// Whether a reason speaks against the fit.
[[nodiscard]] constexpr bool speaks_against(fit_reason r) noexcept { return r >= fit_reason::fine_work; }

/// A pair of classes held against the window.
struct found_fit {
    class_pair classes = {{position::h, grade::it7},
                          {position::h, grade::it6}}; ///< the hole's and the shaft's
    hole_limits hole;
    shaft_limits shaft;
    flags<fit_reason> reasons; ///< what speaks for it and against it
    length too_tight;          ///< how far its least clearance lies below the window; 0 if it does not
    length too_loose;          ///< how far its greatest lies above; 0 if it does not
    cautions take_care;

    /// At the nominal size.
    [[nodiscard]] constexpr fit pair() const noexcept { return {hole, shaft}; }
    /// The greater of the two; 0 for a fit within the window.
    [[nodiscard]] constexpr length miss() const noexcept {
        return too_tight > too_loose ? too_tight : too_loose;
    }
};

/// The best fits, the best first, at most `Capacity`; and how many there are in all. Where none lies
/// within the window, the nearest misses instead: first those without a grade finer than IT6, then the
/// nearest first.
template <std::size_t Capacity> class found_fits {
public:
    [[nodiscard]] constexpr std::size_t size() const noexcept { return size_; }
    [[nodiscard]] constexpr bool empty() const noexcept { return size_ == 0; }
    [[nodiscard]] constexpr const found_fit* begin() const noexcept { return fits_; }
    [[nodiscard]] constexpr const found_fit* end() const noexcept { return fits_ + size_; }
    constexpr const found_fit& operator[](std::size_t i) const noexcept { return fits_[i]; }

    /// How many pairs lie within the window, those that did not go in the list too.
    [[nodiscard]] constexpr std::size_t total() const noexcept { return total_; }
    /// False where the list has misses.
    [[nodiscard]] constexpr bool lie_within() const noexcept { return total_ > 0; }

    /// The tolerance of a given part that alone is at least as wide as the window, so that no mate helps: give
    /// another class, or widen the window. 0 if none is.
    [[nodiscard]] constexpr length too_wide() const noexcept { return too_wide_; }
    /// How wide the window is.
    [[nodiscard]] constexpr length window() const noexcept { return window_; }

    /// For `fits_within` itself.
    constexpr void hold_against(length width, length given_tolerance) noexcept {
        window_ = width;
        too_wide_ = given_tolerance >= width ? given_tolerance : length();
    }
    /// For `fits_within` itself: one more behind the others.
    constexpr void add(const found_fit& f) noexcept { fits_[size_++] = f; }
    /// For `fits_within` itself: how many there are, kept or not.
    constexpr void count(std::size_t all_within) noexcept { total_ = all_within; }

private:
    found_fit fits_[Capacity] = {};
    std::size_t size_ = 0;
    std::size_t total_ = 0;
    length window_;
    length too_wide_;
};

} // namespace fitwright

#endif
