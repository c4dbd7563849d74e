#ifndef FITWRIGHT_INCH_FIT_CLASS_HPP
#define FITWRIGHT_INCH_FIT_CLASS_HPP

#include <fitwright/rows.hpp>
#include <fitwright/text.hpp>

#include <cstdint>

namespace fitwright {

/// The standard inch fits of ANSI B4.1: running and sliding (RC), locational with clearance (LC),
/// transition (LT) or interference (LN), force and shrink (FN). Within a family the number grows with
/// the clearance, or with the interference.
// clang-format off
enum class inch_fit_class : std::uint8_t {
    rc1, rc2, rc3, rc4, rc5, rc6, rc7, rc8, rc9,
    lc1, lc2, lc3, lc4, lc5, lc6, lc7, lc8, lc9, lc10, lc11,
    lt1, lt2, lt3, lt4, lt5, lt6,
    ln1, ln2, ln3,
    fn1, fn2, fn3, fn4, fn5,
};
// clang-format on

/// How many standard inch fits there are.
inline constexpr int inch_fit_class_count = 34;

/// The tolerance symbols printed above a fit's columns. They name the fit, they do not give its
/// limits: one symbol has different deviations in different tables, and none of them is ISO 286's.
struct inch_symbols {
    text hole;
    text shaft; ///< empty where the standard prints none: RC9, LC10, LC11, FN1

    friend constexpr bool operator==(inch_symbols, inch_symbols) noexcept = default;
};

namespace detail {

struct inch_fit_words {
    const char* name;
    const char* hole;
    const char* shaft;
    const char* purpose;
};

// Names and symbols: ANSI B4.1-1967; what they are for: in our words.
// clang-format off
inline constexpr inch_fit_words inch_words[] = {
    {"RC1",  "H5",  "g4",  "close sliding: exact location without perceptible play"},
    {"RC2",  "H6",  "g5",  "sliding: exact location, moves and turns easily; large ones may seize when warmed a little"},
    {"RC3",  "H7",  "f6",  "precision running: the closest that runs freely; slow, lightly loaded, at an even temperature"},
    {"RC4",  "H8",  "f7",  "close running: exact machinery at moderate speed and bearing pressure"},
    {"RC5",  "H8",  "e7",  "medium running: higher speed, or heavy bearing pressure"},
    {"RC6",  "H9",  "e8",  "medium running, with wider tolerances than RC5"},
    {"RC7",  "H9",  "d8",  "free running: where accuracy does not matter, or the temperature varies much"},
    {"RC8",  "H10", "c9",  "loose running: shafts to wide commercial tolerances"},
    {"RC9",  "H11", "",    "loose running, the widest"},
    {"LC1",  "H6",  "h5",  "snug location of parts at rest, put together by hand; the closest"},
    {"LC2",  "H7",  "h6",  "snug location of parts at rest, put together by hand"},
    {"LC3",  "H8",  "h7",  "snug location of parts at rest, put together by hand; wider than LC2"},
    {"LC4",  "H10", "h9",  "snug location of parts at rest, put together by hand; the widest that may just touch"},
    {"LC5",  "H7",  "g6",  "location with a small clearance that is always there"},
    {"LC6",  "H9",  "f8",  "location with a small clearance that is always there; wider than LC5"},
    {"LC7",  "H10", "e9",  "location with an assured clearance"},
    {"LC8",  "H10", "d9",  "location with an assured clearance, larger than that of LC7"},
    {"LC9",  "H11", "c10", "loose location, for easy assembly"},
    {"LC10", "H12", "",    "fasteners: freedom of assembly comes first"},
    {"LC11", "H13", "",    "fasteners: freedom of assembly comes first; the widest"},
    {"LT1",  "H7",  "js6", "location where a little clearance or a little interference will do; mostly clearance"},
    {"LT2",  "H8",  "js7", "location where a little clearance or a little interference will do; wider than LT1"},
    {"LT3",  "H7",  "k6",  "location where a little clearance or a little interference will do"},
    {"LT4",  "H8",  "k7",  "location where a little clearance or a little interference will do; wider than LT3"},
    {"LT5",  "H7",  "n6",  "location, mostly with interference"},
    {"LT6",  "H7",  "n7",  "location, mostly with interference; wider than LT5"},
    {"LN1",  "H6",  "n5",  "exact and rigid location; not to carry a load by friction; the lightest"},
    {"LN2",  "H7",  "p6",  "exact and rigid location; not to carry a load by friction"},
    {"LN3",  "H7",  "r6",  "exact and rigid location; not to carry a load by friction; the tightest"},
    {"FN1",  "H6",  "",    "light drive: thin walls, long fits, hubs of cast iron"},
    {"FN2",  "H7",  "s6",  "medium drive: ordinary steel parts, shrink fits on light sections; the limit for good cast iron"},
    {"FN3",  "H7",  "t6",  "heavy drive: heavier steel parts, shrink fits on medium sections"},
    {"FN4",  "H7",  "u6",  "force: parts that bear high stress, shrink fits"},
    {"FN5",  "H8",  "x7",  "force: parts that bear the highest stress, shrink fits"},
};
// clang-format on

namespace every_inch_fit {
using enum inch_fit_class;
inline constexpr inch_fit_class list[] = {
    rc1, rc2,  rc3,  rc4, rc5, rc6, rc7, rc8, rc9, lc1, lc2, lc3, lc4, lc5, lc6, lc7, lc8,
    lc9, lc10, lc11, lt1, lt2, lt3, lt4, lt5, lt6, ln1, ln2, ln3, fn1, fn2, fn3, fn4, fn5,
};
} // namespace every_inch_fit

static_assert(sizeof inch_words / sizeof inch_words[0] == inch_fit_class_count);
static_assert(sizeof every_inch_fit::list / sizeof every_inch_fit::list[0] == inch_fit_class_count);
static_assert(static_cast<int>(inch_fit_class::fn5) == inch_fit_class_count - 1);

/// False for a number that was cast to the enumeration and is none of its values.
[[nodiscard]] constexpr bool exists(inch_fit_class c) noexcept {
    return static_cast<int>(c) < inch_fit_class_count;
}

[[nodiscard]] constexpr inch_fit_words words_of(inch_fit_class c) noexcept {
    return exists(c) ? inch_words[static_cast<int>(c)] : inch_fit_words{"?", "", "", ""};
}

} // namespace detail

/// Every standard inch fit, in the order of the standard.
[[nodiscard]] constexpr rows<inch_fit_class> inch_fit_classes() noexcept {
    return detail::every_inch_fit::list;
}

/// The name as a drawing has it: "RC4".
[[nodiscard]] constexpr text name(inch_fit_class c) noexcept { return detail::words_of(c).name; }

/// The symbols of hole and shaft: "H8" and "f7".
[[nodiscard]] constexpr inch_symbols symbols(inch_fit_class c) noexcept {
    return {detail::words_of(c).hole, detail::words_of(c).shaft};
}

/// What the fit is for, in a few words.
[[nodiscard]] constexpr text purpose(inch_fit_class c) noexcept { return detail::words_of(c).purpose; }

} // namespace fitwright

#endif
