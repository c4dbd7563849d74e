#ifndef FITWRIGHT_MATERIAL_PROPERTY_HPP
#define FITWRIGHT_MATERIAL_PROPERTY_HPP

#include <fitwright/error.hpp>
#include <fitwright/source.hpp>
#include <fitwright/units.hpp>

#include <type_traits>

namespace fitwright {

namespace detail {

/// Quantities that measure the same kind of thing, in whichever unit.
template <class One, class Other> inline constexpr bool is_same_kind = false;
template <class Dimension, class One, class Other>
inline constexpr bool is_same_kind<quantity<boost::units::unit<Dimension, One>>,
                                   quantity<boost::units::unit<Dimension, Other>>> = true;

} // namespace detail

/// A property of a material: a quantity and how surely it is known, or "not known", which is an
/// answer too.
///
/// A `length` may stand here as well, exact up to 9000 km.
///
/// Unlike a Boost quantity it is trivially copyable, so a material fits into a result. Reading what
/// is not known stops the program, and does not compile in a constant expression: ask first.
template <class Quantity> class property {
public:
    /// Not known.
    constexpr property() noexcept = default;

    constexpr property(const Quantity& q, confidence how_sure = confidence::stated) noexcept
        : number_(number_of(q)), how_sure_(how_sure), is_known_(true) {}

    /// From another unit of the same kind: an elasticity in gigapascals.
    template <class Other>
        requires detail::is_same_kind<Quantity, Other>
    constexpr property(const Other& q, confidence how_sure = confidence::stated) noexcept
        : property(Quantity(q), how_sure) {}

    /// From a printed number of the quantity's own unit, where 0 says that there is none.
    [[nodiscard]] static constexpr property printed(double number, confidence how_sure) noexcept {
        property made;
        made.number_ = number;
        made.how_sure_ = how_sure;
        made.is_known_ = number != 0;
        return made;
    }

    /// Whether there is a value to read.
    [[nodiscard]] constexpr bool is_known() const noexcept { return is_known_; }
    constexpr explicit operator bool() const noexcept { return is_known_; }

    [[nodiscard]] constexpr Quantity value() const noexcept {
        if (!is_known_) [[unlikely]]
            detail::result_holds_no_value();
        if constexpr (std::is_same_v<Quantity, double>) return number_;
        else if constexpr (std::is_same_v<Quantity, length>)
            return length::from_nanometres(static_cast<std::int64_t>(number_));
        else return Quantity::from_value(number_);
    }
    constexpr Quantity operator*() const noexcept { return value(); }
    [[nodiscard]] constexpr Quantity value_or(const Quantity& other) const noexcept {
        return is_known_ ? value() : other;
    }

    [[nodiscard]] constexpr confidence how_sure() const noexcept { return how_sure_; }

    friend constexpr bool operator==(const property&, const property&) noexcept = default;

private:
    static constexpr double number_of(const Quantity& q) noexcept {
        if constexpr (std::is_same_v<Quantity, double>) return q;
        else if constexpr (std::is_same_v<Quantity, length>) return static_cast<double>(q.nanometres());
        else return q.value();
    }

    double number_ = 0;
    confidence how_sure_ = confidence::stated;
    bool is_known_ = false;
};

} // namespace fitwright

#endif
