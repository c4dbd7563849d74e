#ifndef FITWRIGHT_TOOL_EXPECTED_HOLE_HPP
#define FITWRIGHT_TOOL_EXPECTED_HOLE_HPP

#include <fitwright/flags.hpp>
#include <fitwright/limits.hpp>
#include <fitwright/material_family.hpp>

#include <type_traits>

namespace fitwright {

/// Why a hole may come out otherwise than expected.
enum class hole_doubt : std::uint8_t {
    figures_of_steel = 1, ///< measured in steel and cast iron, taken for another material
    without_jig = 2,      ///< a tolerance for drilling through a jig, taken for drilling without
    closes_in_warm = 4,   ///< cut warm, it is smaller when cold: counted for a rise of up to 20 K
    springs_back = 8,     ///< plastic or a thin wall, by a figure that is uncertain
    dull_edge = 16,       ///< a tough alloy closes on a tool that is dull at the corner: not counted
};

[[nodiscard]] constexpr flags<hole_doubt> operator|(hole_doubt a, hole_doubt b) noexcept {
    return flags<hole_doubt>(a) | b;
}

/// What to say of a doubt.
[[nodiscard]] constexpr text in_words(hole_doubt d) noexcept {
    switch (d) {
    case hole_doubt::figures_of_steel: return "the figures are those of steel and cast iron";
    case hole_doubt::without_jig: return "the figures are a tolerance for drilling through a jig";
    case hole_doubt::closes_in_warm:
        return "cut warm, it closes in as it cools: a rise of up to 20 K is counted, let it cool before it is more";
    case hole_doubt::springs_back: return "the work springs back, by a figure that is uncertain";
    case hole_doubt::dull_edge:
        return "a tool dull at the corner leaves a tough alloy undersize: not counted";
    }
    return "";
}

/// The hole that a tool is expected to leave: least, mean and most. An expectation, not a promise:
/// `origin()` says where it comes from and how sure it is, `note()` under which conditions, `doubts()`
/// what speaks against it.
class expected_hole {
public:
    /// What is expected of a hole: its least, its mean and its most.
    struct sizes {
        length least;
        length mean; ///< halfway, where the source has no mean
        length most;
    };

    /// No hole: sizes of 0.
    constexpr expected_hole() noexcept = default;

    constexpr expected_hole(sizes s, const source& origin, text note = {},
                            flags<hole_doubt> doubts = {}) noexcept
        : sizes_(s), source_(&origin), note_(note), doubts_(doubts) {}

    [[nodiscard]] constexpr length least() const noexcept { return sizes_.least; }
    [[nodiscard]] constexpr length mean() const noexcept { return sizes_.mean; }
    [[nodiscard]] constexpr length most() const noexcept { return sizes_.most; }
    [[nodiscard]] constexpr const source& origin() const noexcept { return *source_; }
    [[nodiscard]] constexpr text note() const noexcept { return note_; }
    [[nodiscard]] constexpr flags<hole_doubt> doubts() const noexcept { return doubts_; }

    /// True if the least and the most both lie within the limits.
    [[nodiscard]] constexpr bool lies_within(const hole_limits& wanted) const noexcept {
        return wanted.allow(least()) && wanted.allow(most());
    }

    // The same as Boost.Units quantities: needs units.hpp.
    template <class Unit> [[nodiscard]] constexpr auto least() const noexcept {
        return least().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto mean() const noexcept {
        return mean().template as<Unit>();
    }
    template <class Unit> [[nodiscard]] constexpr auto most() const noexcept {
        return most().template as<Unit>();
    }

private:
    sizes sizes_;
    const source* source_ = &stated_by_user;
    text note_;
    flags<hole_doubt> doubts_;
};

/// What is drilled or reamed: a family, or anything that has one, such as `materials::steel_c45`.
class work_material {
public:
    constexpr work_material(material_family family) noexcept : family_(family) {}

    template <class Material>
        requires std::is_same_v<std::remove_cvref_t<decltype(Material::family)>, material_family>
    constexpr work_material(const Material& material) noexcept : family_(material.family) {}

    [[nodiscard]] constexpr material_family family() const noexcept { return family_; }

    /// True if the work gives way under the tool and springs back: see `thin_walled`.
    [[nodiscard]] constexpr bool is_thin_walled() const noexcept { return is_thin_walled_; }

    /// Aluminium and magnesium: what the handbooks call light metals.
    [[nodiscard]] constexpr bool is_light_metal() const noexcept {
        return family_ == material_family::aluminium || family_ == material_family::magnesium;
    }

    /// The same stuff, in work whose wall is too thin to stand up to the tool.
    friend constexpr work_material thin_walled(work_material work) noexcept;

private:
    material_family family_;
    bool is_thin_walled_ = false;
};

/// Work with a thin wall, such as a tube or a pressed liner: `reamed_hole(reamer, thin_walled(brass))`.
[[nodiscard]] constexpr work_material thin_walled(work_material work) noexcept {
    work.is_thin_walled_ = true;
    return work;
}

} // namespace fitwright

#endif
