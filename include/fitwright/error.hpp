#ifndef FITWRIGHT_ERROR_HPP
#define FITWRIGHT_ERROR_HPP

#include <fitwright/text.hpp>

#include <cstddef>
#include <cstdint>
#include <type_traits>

namespace fitwright {

/// Which rule was broken. The message says it in words, with what is allowed.
enum class error_code : std::uint8_t {
    // of the text as a whole
    text_is_empty,
    text_is_too_long,
    text_is_not_utf8,
    character_not_allowed,
    something_left_over,
    ends_too_soon,
    // of a size
    size_missing,
    size_not_a_number,
    size_not_above_zero,
    number_malformed,
    decimal_comma_not_allowed,
    more_decimals_than_a_nanometre,
    fraction_without_inches,
    unit_not_known,
    unit_given_twice,
    unit_ambiguous,
    unit_missing,
    // of a tolerance class
    count_or_class,
    class_missing,
    class_alone_wanted,
    letter_not_used,
    letter_case_mixed,
    grade_missing,
    grade_not_known,
    blank_inside_a_class,
    thread_is_not_a_fit,
    // of which part a call-out speaks
    hole_wanted,
    shaft_wanted,
    fit_wanted,
    hole_and_shaft_swapped,
    two_holes,
    two_shafts,
    // of limits without a class
    deviation_missing,
    deviation_without_sign,
    two_signs,
    deviations_swapped,
    limits_crossed,
    limits_too_far_apart,
    // of the standard
    size_out_of_range,
    no_value_in_standard,
    // of a grid
    step_not_above_zero,
    nothing_on_the_grid,
    // of a quantity
    not_a_length,
    // of a buffer
    buffer_too_small,
    // of parts that lead
    window_crossed,
    window_too_narrow,
    too_many_parts,
    wall_too_thin,
    // of gauges and measuring
    no_standard_tolerance,
    instrument_too_coarse,
    not_an_uncertainty,
    // of offsets and dials
    cut_too_far_already,
    change_below_increment,
    aim_outside_limits,
    sense_not_stated,
    // of an inch fit
    inch_fit_not_known,
    // of tools
    tool_missing,
    tool_not_known,
    not_for_this_material,
    too_few_trials,
    not_a_confidence,
    // of materials
    material_not_known,
    material_ambiguous,
    property_not_known,
    temperature_out_of_range,
    // of heat
    no_states,
    clearance_below_zero,
    // of pressed joints
    joint_not_possible,
    friction_not_possible,
    load_not_possible,
    factor_below_one,
    pressure_not_above_zero,
    boring_not_possible,
    // of chance
    not_a_spread,
    not_a_share,
    // of the search for fits
    nothing_to_choose_from,
    window_not_a_clearance,
    // of leaks
    not_a_gap,
    gap_too_wide,
    eccentricity_out_of_range,
    leak_budget_too_small,
    not_a_plunger,
    // of stacks
    chain_is_empty,
    not_a_link,
    chain_too_long,
    not_a_simulation,
    no_shim_does,
    not_a_gear_pair,
    dowels_do_not_go,
    // of lubricants and oil films
    viscosity_not_known,
    viscosity_points_unusable,
    viscosity_index_not_defined,
    oil_grade_not_known,
    bearing_value_missing,
    bearing_value_not_possible,
    no_running_clearance,
    length_ratio_out_of_range,
    no_heat_balance,
    size_without_advice,
    // of the way back
    nothing_wanted,
    want_without_figure,
    lead_not_usable,
    not_asked,
    // of pictures
    too_many_to_draw,
    nothing_to_draw,
    // of a material's figures
    figure_not_possible,
    // of shims
    not_a_shim,
    // of a part or a clearance for another size
    nominal_sizes_differ,
};

/// What was wrong, where, and what is allowed. A value: it owns its words and is copied like a number.
class error {
public:
    /// Which rule was broken.
    [[nodiscard]] constexpr error_code code() const noexcept { return code_; }

    /// Where in the text, counted in characters from 1; 0 if the error is not about text.
    [[nodiscard]] constexpr std::uint32_t column() const noexcept { return column_; }

    /// The same place counted in bytes from 1; 0 if the error is not about text.
    [[nodiscard]] constexpr std::uint32_t byte_column() const noexcept { return byte_column_; }

    /// One sentence or two: what was wrong and what is allowed. Lives as long as the error.
    [[nodiscard]] constexpr text message() const noexcept { return words_.view(); }

    /// The piece that is wrong, as it was written (shortened if long); empty if there is none.
    [[nodiscard]] constexpr text piece() const noexcept {
        return {message().data() + piece_at_, piece_size_};
    }

    /// What to write instead; empty where nothing can be offered without guessing.
    [[nodiscard]] constexpr text suggestion() const noexcept {
        return {message().data() + suggestion_at_, suggestion_size_};
    }

    /// The same error, said of a place in a text: both columns count from 1.
    [[nodiscard]] constexpr error placed(std::uint32_t column, std::uint32_t byte_column) const noexcept {
        error moved = *this;
        moved.column_ = column;
        moved.byte_column_ = byte_column;
        return moved;
    }

    /// Longest message, in bytes.
    static constexpr std::size_t capacity = 239;

    /// Puts an error together.
    class composer;

private:
    fixed_text<capacity> words_;
    std::uint32_t column_ = 0;
    std::uint32_t byte_column_ = 0;
    error_code code_ = error_code::text_is_empty;
    std::uint8_t piece_at_ = 0;
    std::uint8_t piece_size_ = 0;
    std::uint8_t suggestion_at_ = 0;
    std::uint8_t suggestion_size_ = 0;
};

/// Puts the words of an error together; what does not fit is left out at the end of a character.
class error::composer {
public:
    constexpr explicit composer(error_code code) noexcept { made_.code_ = code; }

    constexpr composer& operator<<(text words) noexcept {
        made_.words_ << words;
        return *this;
    }
    constexpr composer& operator<<(std::int64_t number) noexcept {
        made_.words_ << number;
        return *this;
    }

    /// The offending piece.
    constexpr composer& piece(text p) noexcept {
        made_.piece_at_ = here();
        *this << p;
        made_.piece_size_ = static_cast<std::uint8_t>(here() - made_.piece_at_);
        return *this;
    }

    /// The offending piece, in quotation marks.
    constexpr composer& quote(text p) noexcept { return (*this << text("'")).piece(p) << text("'"); }

    /// What to write instead, in quotation marks: several pieces between `begin` and `end`.
    constexpr composer& begin_suggestion() noexcept {
        *this << text("'");
        made_.suggestion_at_ = here();
        return *this;
    }
    /// The end of what can be written instead.
    constexpr composer& end_suggestion() noexcept {
        made_.suggestion_size_ = static_cast<std::uint8_t>(here() - made_.suggestion_at_);
        return *this << text("'");
    }

    constexpr operator error() const noexcept { return made_; }

private:
    constexpr std::uint8_t here() const noexcept { return static_cast<std::uint8_t>(made_.words_.size()); }

    error made_;
};

namespace detail {

/// Reading the value of a result that holds an error is a fault of the program: it stops, in a
/// constant expression by not compiling, rather than go on with a size that nobody worked out.
[[noreturn]] inline void result_holds_no_value() {
#if defined(_MSC_VER) && !defined(__clang__)
    __fastfail(7);
#else
    __builtin_trap();
#endif
}

[[noreturn]] inline void result_holds_no_error() { result_holds_no_value(); }

} // namespace detail

/// A value, or the error that says why there is none. Shaped like `std::expected`; nothing is thrown.
///
/// `Value` is trivially copyable. Ask first (`if (auto r = …)`): `*r` without a value stops the
/// program, and does not compile in a constant expression.
template <class Value> class [[nodiscard]] result {
    static_assert(__is_trivially_copyable(Value)); // the trait of <type_traits> takes ten times as long

public:
    using value_type = Value;            ///< what it holds if all went well
    using error_type = fitwright::error; ///< what it holds if not

    constexpr result(const Value& value) noexcept : value_(value), has_value_(true) {}
    constexpr result(const fitwright::error& error) noexcept : error_(error), has_value_(false) {}
    constexpr result(const fitwright::error::composer& words) noexcept : error_(words), has_value_(false) {}

    /// Whether all went well.
    [[nodiscard]] constexpr bool has_value() const noexcept { return has_value_; }
    constexpr explicit operator bool() const noexcept { return has_value_; }

    [[nodiscard]] constexpr const Value& value() const& noexcept {
        if (!has_value_) [[unlikely]]
            detail::result_holds_no_value();
        return value_;
    }
    /// Of a result that is about to go, the value itself, so that a loop over it is safe.
    [[nodiscard]] constexpr Value value() const&& noexcept {
        if (!has_value_) [[unlikely]]
            detail::result_holds_no_value();
        return value_;
    }
    constexpr const Value& operator*() const& noexcept { return value(); }
    constexpr Value operator*() const&& noexcept { return static_cast<const result&&>(*this).value(); }
    constexpr const Value* operator->() const noexcept { return &value(); }

    template <class Other> [[nodiscard]] constexpr Value value_or(Other&& other) const noexcept {
        return has_value_ ? value_ : static_cast<Value>(static_cast<Other&&>(other));
    }

    [[nodiscard]] constexpr const fitwright::error& error() const& noexcept {
        if (has_value_) [[unlikely]]
            detail::result_holds_no_error();
        return error_;
    }
    [[nodiscard]] constexpr fitwright::error error() const&& noexcept {
        if (has_value_) [[unlikely]]
            detail::result_holds_no_error();
        return error_;
    }

    /// Goes on with `next(value)`, which gives a result itself; an error is passed on.
    template <class Next>
    constexpr auto and_then(Next&& next) const
        -> std::remove_cvref_t<std::invoke_result_t<Next, const Value&>> {
        if (has_value_) return next(value_);
        return error_;
    }

    /// Makes another value of the value; an error is passed on.
    template <class Make>
    constexpr auto transform(Make&& make) const
        -> result<std::remove_cvref_t<std::invoke_result_t<Make, const Value&>>> {
        if (has_value_) return make(value_);
        return error_;
    }

    /// Goes on with `next(error)`, which gives a result of the same kind; a value is passed on.
    template <class Next> constexpr result or_else(Next&& next) const {
        if (has_value_) return *this;
        return next(error_);
    }

private:
    union {
        Value value_;
        fitwright::error error_;
    };
    bool has_value_;
};

} // namespace fitwright

#endif
