#ifndef FITWRIGHT_CHANCE_SIZE_DISTRIBUTION_HPP
#define FITWRIGHT_CHANCE_SIZE_DISTRIBUTION_HPP

#include <fitwright/length.hpp>
#include <fitwright/stack/chain.hpp>

namespace fitwright {

/// How well a process keeps a tolerance: `{.cp = 1.33, .shift = 0.25}`.
struct capability {
    /// The tolerance over six standard deviations; from 0.1 to 100.
    double cp = 1;
    /// How far the mean lies off the middle of the tolerance, in halves of it, towards maximum material
    /// (a hole's lower limit, a shaft's upper one); negative the other way; from -1 to 1.
    double shift = 0;

    /// Distance of the mean from the nearer limit over three standard deviations.
    [[nodiscard]] constexpr double cpk() const noexcept { return cp * (1 - (shift < 0 ? -shift : shift)); }

    /// Where only Cpk is known: a process in the middle with the spread that Cpk allows. It has at least
    /// the parts outside the limits that the real one has, the same number on either side.
    [[nodiscard]] static constexpr capability of_cpk(double cpk) noexcept { return {.cp = cpk}; }
};

/// Parts that were measured: their mean size and their standard deviation.
struct measured_batch {
    length mean;
    length sigma; ///< standard deviation
    int parts;    ///< how many were measured; at least 2
};

/// How the sizes of many parts lie in their limits; on its own it belongs to no part and no size. A link of a
/// chain says the same by a `scatter`, which has only the shapes that a simulation draws.
///
/// A shape that was not measured is an assumption, and what is worked out with it says so.
class size_distribution {
public:
    /// How the sizes are spread.
    enum class shape_kind : std::uint8_t { uniform, triangular, towards_maximum_material, normal, batch };

    /// Every size within the limits is as likely as any other. For when nothing is known but the limits.
    [[nodiscard]] static constexpr size_distribution uniform() noexcept {
        return size_distribution(shape_kind::uniform);
    }

    /// Most in the middle, falling in straight lines to none at the limits. For careful work aimed at the
    /// middle; standard deviation: the tolerance over the root of 24.
    [[nodiscard]] static constexpr size_distribution triangular() noexcept {
        return size_distribution(shape_kind::triangular);
    }

    /// Skewed towards the safe side: most at the maximum-material limit, falling in a straight line to none
    /// at the other. Whoever sneaks up on a size stops once the part is good, with metal left on: holes
    /// come out small, shafts large. The mean lies a third of the tolerance from that limit.
    /// Common practice, no source, is the lean; the straight line is the simplest shape that has it.
    [[nodiscard]] static constexpr size_distribution towards_maximum_material() noexcept {
        return size_distribution(shape_kind::towards_maximum_material);
    }

    /// The bell of a process whose capability is known. Its tails reach past the limits unless `inspected`.
    [[nodiscard]] static constexpr size_distribution normal(fitwright::capability c) noexcept {
        size_distribution made(shape_kind::normal);
        made.capability_ = c;
        return made;
    }

    /// The bell of parts that were measured, wherever their limits are.
    [[nodiscard]] static constexpr size_distribution of(measured_batch b) noexcept {
        size_distribution made(shape_kind::batch);
        made.batch_ = b;
        return made;
    }

    /// What a link of a chain says of itself: a normal one has three standard deviations in half its tolerance,
    /// as `simulation` has it unless told otherwise; of one that says nothing only the limits are known.
    [[nodiscard]] static constexpr size_distribution of(scatter s) noexcept {
        switch (s) {
        case scatter::normal: return normal({.cp = 1});
        case scatter::triangular: return triangular();
        case scatter::rectangular:
        case scatter::not_stated: break;
        }
        return uniform();
    }

    /// The same once every part outside its limits is thrown out: cut off at the limits, and what is left
    /// counted as all. The first three shapes have nothing to throw out.
    [[nodiscard]] constexpr size_distribution inspected() const noexcept {
        size_distribution cut_off = *this;
        cut_off.is_inspected_ = true;
        return cut_off;
    }

    /// How they are spread.
    [[nodiscard]] constexpr shape_kind shape() const noexcept { return shape_; }
    /// Whether what is outside the limits is sorted out.
    [[nodiscard]] constexpr bool is_inspected() const noexcept { return is_inspected_; }
    /// Of a normal shape.
    [[nodiscard]] constexpr const fitwright::capability& capability() const noexcept { return capability_; }
    /// Of measured parts.
    [[nodiscard]] constexpr const measured_batch& batch() const noexcept { return batch_; }

    /// True for the two that are bells, and so have tails.
    [[nodiscard]] constexpr bool has_tails() const noexcept { return shape_ >= shape_kind::normal; }

private:
    constexpr explicit size_distribution(shape_kind s) noexcept : shape_(s) {}

    fitwright::capability capability_{};
    measured_batch batch_{};
    shape_kind shape_;
    bool is_inspected_ = false;
};

/// How the holes lie in their limits, and how the shafts do.
struct spread {
    size_distribution hole;
    size_distribution shaft;

    /// The same shape for both.
    [[nodiscard]] static constexpr spread both(const size_distribution& shape) noexcept {
        return {.hole = shape, .shaft = shape};
    }
};

} // namespace fitwright

#endif
