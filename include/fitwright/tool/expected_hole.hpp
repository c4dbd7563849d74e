#ifndef FITWRIGHT_TOOL_EXPECTED_HOLE_HPP
#define FITWRIGHT_TOOL_EXPECTED_HOLE_HPP

#include <fitwright/limits.hpp>
#include <fitwright/material_family.hpp>

#include <type_traits>

namespace fitwright {

/// The hole that a tool is expected to leave: least, mean and most. An expectation, not a promise:
/// `origin()` says where it comes from and how sure it is, `note()` under which conditions.
class expected_hole {
public:
    struct sizes {
        length least;
        length mean; ///< halfway, where the source has no mean
        length most;
    };

    constexpr expected_hole(sizes s, const source& origin, text note = {}) noexcept
        : sizes_(s), source_(&origin), note_(note) {}

    [[nodiscard]] constexpr length least() const noexcept { return sizes_.least; }
    [[nodiscard]] constexpr length mean() const noexcept { return sizes_.mean; }
    [[nodiscard]] constexpr length most() const noexcept { return sizes_.most; }
    [[nodiscard]] constexpr const source& origin() const noexcept { return *source_; }
    [[nodiscard]] constexpr text note() const noexcept { return note_; }

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
    const source* source_;
    text note_;
};

/// What is drilled or reamed: a family, or anything that has one, such as `materials::steel_c45`.
class work_material {
public:
    constexpr work_material(material_family family) noexcept : family_(family) {}

    template <class Material>
        requires std::is_same_v<std::remove_cvref_t<decltype(Material::family)>, material_family>
    constexpr work_material(const Material& material) noexcept : family_(material.family) {}

    [[nodiscard]] constexpr material_family family() const noexcept { return family_; }

    /// Aluminium and magnesium: what the handbooks call light metals.
    [[nodiscard]] constexpr bool is_light_metal() const noexcept {
        return family_ == material_family::aluminium || family_ == material_family::magnesium;
    }

private:
    material_family family_;
};

} // namespace fitwright

#endif
