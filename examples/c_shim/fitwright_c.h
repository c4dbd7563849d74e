#ifndef FITWRIGHT_C_H
#define FITWRIGHT_C_H

/// \file
/// fitwright for other languages: limits and fits of ISO 286 and what a post-processor asks of them.
/// C99, and C++ as it is. `fitwright_c.cpp` makes a shared library of it, or WebAssembly.
///
/// **Lengths** are whole nanometres in an `int64_t` (the names end in `_nm`): 12.018 mm is 12018000, half a
/// micrometre 500, 0.0001 in 2540. They are exact, so they compare with `==`. Allowed are -10^15 to 10^15 nm
/// (1000 km). All sizes are diameters (or widths) at 20 degC; clearances are on the diameter, below zero
/// where the parts interfere.
///
/// **What a function gives back** is 0 or more if all went well, or one of `fitwright_code`, which are all
/// below zero. Functions that write text give back how long it is. After an error nothing but the
/// `fitwright_error` was written to, which then says what was wrong and what is allowed; after a success its
/// `code` is 0. Whoever wants no words passes a null pointer for it.
///
/// **Structs** are plain data that the caller owns, laid out alike on every machine: fixed widths, no pointer,
/// no hidden gap. Those that only take an answer need nothing but `size` and `version` set, which
/// `FITWRIGHT_INIT` does; other languages set `size` to what `fitwright_sizeof_…` says and `version` to
/// `FITWRIGHT_C_VERSION`. A struct of another size or version is refused. A struct may be read from and
/// answered into in one call.
///
/// **Text** is UTF-8. What goes in has a length in bytes and needs no terminating zero. What comes out goes
/// into the caller's buffer, as `snprintf` does it: always terminated if there is room for anything, cut
/// at the end of a character if there is not enough, and the length it needs (without the zero) is what
/// the function gives back. A null buffer of capacity 0 asks for that length alone.
///
/// **Lifetimes, threads**: nothing is handed over and nothing kept. No function allocates, throws, reads the
/// locale or has state; all may be called from any thread at any time, on structs of that thread's own.
///
/// **What stays** within one `FITWRIGHT_C_VERSION`: functions and their meaning, structs, the numbers behind
/// all names, and which code an error has. A later version adds functions, codes, and fields at the end of
/// structs; it goes on taking the structs of this one. The wording of messages may change at any time, and
/// so may a value of a table if it proves wrong.

#include <stddef.h>
#include <stdint.h>
#include <string.h>

/// The version of this interface, for the `version` of every struct.
#define FITWRIGHT_C_VERSION 1

/// Makes a struct ready: everything zero but its size and version. `fitwright_limits bore; FITWRIGHT_INIT(bore);`
#define FITWRIGHT_INIT(thing)                                                                                \
    (memset(&(thing), 0, sizeof(thing)), (thing).size = sizeof(thing), (thing).version = FITWRIGHT_C_VERSION)

#if defined(_WIN32)
#if defined(FITWRIGHT_C_BUILD)
#define FITWRIGHT_API __declspec(dllexport)
#else
#define FITWRIGHT_API __declspec(dllimport)
#endif
#else
#define FITWRIGHT_API __attribute__((visibility("default")))
#endif

#ifdef __cplusplus
extern "C" {
#endif

/// Why there is no answer.
enum fitwright_code {
    FITWRIGHT_OK = 0,

    // The calling program is wrong.
    FITWRIGHT_NULL_POINTER = -1,
    FITWRIGHT_STRUCT_SIZE = -2,     ///< `size` is not the size of that struct
    FITWRIGHT_STRUCT_VERSION = -3,  ///< `version` is not known: a newer header than library
    FITWRIGHT_NUMBER_UNKNOWN = -4,  ///< a number that is none of its enumeration, or not allowed there
    FITWRIGHT_LENGTH_TOO_LONG = -5, ///< beyond 1000 km
    FITWRIGHT_OTHER_ERROR = -99,    ///< one this header has no name for: see its message

    // The text as a whole.
    FITWRIGHT_TEXT_IS_EMPTY = -100,
    FITWRIGHT_TEXT_IS_TOO_LONG = -101,
    FITWRIGHT_TEXT_IS_NOT_UTF8 = -102,
    FITWRIGHT_CHARACTER_NOT_ALLOWED = -103,
    FITWRIGHT_SOMETHING_LEFT_OVER = -104,
    FITWRIGHT_ENDS_TOO_SOON = -105,
    // Its size.
    FITWRIGHT_SIZE_MISSING = -110,
    FITWRIGHT_SIZE_NOT_A_NUMBER = -111,
    FITWRIGHT_SIZE_NOT_ABOVE_ZERO = -112,
    FITWRIGHT_NUMBER_MALFORMED = -113,
    FITWRIGHT_DECIMAL_COMMA_NOT_ALLOWED = -114,
    FITWRIGHT_MORE_DECIMALS_THAN_A_NANOMETRE = -115,
    FITWRIGHT_FRACTION_WITHOUT_INCHES = -116,
    FITWRIGHT_UNIT_NOT_KNOWN = -117,
    FITWRIGHT_UNIT_GIVEN_TWICE = -118,
    FITWRIGHT_UNIT_AMBIGUOUS = -119,
    FITWRIGHT_UNIT_MISSING = -120,
    // Its tolerance class.
    FITWRIGHT_COUNT_OR_CLASS = -130,
    FITWRIGHT_CLASS_MISSING = -131,
    FITWRIGHT_CLASS_ALONE_WANTED = -132,
    FITWRIGHT_LETTER_NOT_USED = -133,
    FITWRIGHT_LETTER_CASE_MIXED = -134,
    FITWRIGHT_GRADE_MISSING = -135,
    FITWRIGHT_GRADE_NOT_KNOWN = -136,
    FITWRIGHT_BLANK_INSIDE_A_CLASS = -137,
    FITWRIGHT_THREAD_IS_NOT_A_FIT = -138,
    FITWRIGHT_INCH_FIT_NOT_KNOWN = -139,
    // Which part it speaks of.
    FITWRIGHT_HOLE_WANTED = -140,
    FITWRIGHT_SHAFT_WANTED = -141,
    FITWRIGHT_FIT_WANTED = -142,
    FITWRIGHT_HOLE_AND_SHAFT_SWAPPED = -143,
    FITWRIGHT_TWO_HOLES = -144,
    FITWRIGHT_TWO_SHAFTS = -145,
    // Limits without a class.
    FITWRIGHT_DEVIATION_MISSING = -150,
    FITWRIGHT_DEVIATION_WITHOUT_SIGN = -151,
    FITWRIGHT_TWO_SIGNS = -152,
    FITWRIGHT_DEVIATIONS_SWAPPED = -153,
    FITWRIGHT_LIMITS_CROSSED = -154,
    FITWRIGHT_LIMITS_TOO_FAR_APART = -155,
    // The standard.
    FITWRIGHT_SIZE_OUT_OF_RANGE = -160,
    FITWRIGHT_NO_VALUE_IN_STANDARD = -161,
    FITWRIGHT_NO_STANDARD_TOLERANCE = -162,
    // Grids, tools, readings, offsets.
    FITWRIGHT_STEP_NOT_ABOVE_ZERO = -170,
    FITWRIGHT_NOTHING_ON_THE_GRID = -171,
    FITWRIGHT_TOOL_MISSING = -172,
    FITWRIGHT_TOOL_NOT_KNOWN = -173,
    FITWRIGHT_INSTRUMENT_TOO_COARSE = -174,
    FITWRIGHT_CUT_TOO_FAR_ALREADY = -175,
    FITWRIGHT_CHANGE_BELOW_INCREMENT = -176,
    FITWRIGHT_AIM_OUTSIDE_LIMITS = -177
};

/// Which part. A struct left zero says none, and is refused.
enum fitwright_part {
    FITWRIGHT_HOLE = 1,
    FITWRIGHT_SHAFT = 2,
    FITWRIGHT_TOOL = 3,  ///< limits of a reamer: neither a hole's nor a shaft's
    FITWRIGHT_FIT = 4,   ///< a call-out with both, `12 H7/g6`
    FITWRIGHT_EITHER = 5 ///< a call-out that does not say, `14 +0.018/0`
};

enum fitwright_unit { FITWRIGHT_MM = 1, FITWRIGHT_UM, FITWRIGHT_NM, FITWRIGHT_IN, FITWRIGHT_THOU };

enum fitwright_kind { FITWRIGHT_CLEARANCE = 1, FITWRIGHT_TRANSITION, FITWRIGHT_INTERFERENCE };

enum fitwright_verdict { FITWRIGHT_ACCEPT = 1, FITWRIGHT_REJECT, FITWRIGHT_CANNOT_TELL };

/// How surely a value is known to stand in its source.
enum fitwright_confidence {
    FITWRIGHT_PUBLISHED = 1, ///< read in a printed copy
    FITWRIGHT_PRACTICE,      ///< a rule of the trade, no source
    FITWRIGHT_MEMORY,        ///< from memory of the document
    FITWRIGHT_UNCERTAIN,     ///< printed copies differ, or could not be read: check it
    FITWRIGHT_STATED         ///< given by the caller
};

/// The series that twist drills are sold in.
enum fitwright_series {
    FITWRIGHT_METRIC = 1, ///< 0.2 to 25 mm
    FITWRIGHT_FRACTIONAL, ///< 1/64 to 1 3/4 in
    FITWRIGHT_NUMBER,     ///< #80 to #1
    FITWRIGHT_LETTER      ///< A to Z
};

enum fitwright_reaming { FITWRIGHT_BY_HAND = 1, FITWRIGHT_BY_MACHINE };

/// What is reamed.
enum fitwright_material {
    FITWRIGHT_STEEL = 1,
    FITWRIGHT_STAINLESS_STEEL,
    FITWRIGHT_TOOL_STEEL,
    FITWRIGHT_CAST_IRON,
    FITWRIGHT_ALUMINIUM,
    FITWRIGHT_COPPER_ALLOY,
    FITWRIGHT_ZINC,
    FITWRIGHT_MAGNESIUM,
    FITWRIGHT_TITANIUM,
    FITWRIGHT_NICKEL_ALLOY,
    FITWRIGHT_PLASTIC,
    FITWRIGHT_CERAMIC,
    FITWRIGHT_OTHER_MATERIAL
};

/// What the number in an offset register counts.
enum fitwright_across { FITWRIGHT_RADIUS = 1, FITWRIGHT_DIAMETER };

/// What a larger number in the register does to the next cut.
enum fitwright_sense { FITWRIGHT_LARGER_MAKES_LARGER = 1, FITWRIGHT_LARGER_MAKES_SMALLER };

/// How call-outs are read; to be joined by `|`. 0 is the strict rule.
enum fitwright_reading {
    FITWRIGHT_DECIMAL_COMMA = 1 ///< `12,5` is 12.5; the point stays allowed
};

/// What else a call-out says, joined by `|`.
enum fitwright_note {
    FITWRIGHT_DIAMETER_SIGN = 1,
    FITWRIGHT_THROUGH = 2,
    FITWRIGHT_HAS_DEPTH = 4,
    FITWRIGHT_HOLE_ENVELOPE = 8,  ///< (E), ISO 14405-1, for the hole
    FITWRIGHT_SHAFT_ENVELOPE = 16 ///< the same for the shaft
};

/// What was wrong, where, and what is allowed.
typedef struct fitwright_error {
    uint32_t size;
    uint32_t version;
    int32_t code;             ///< of `fitwright_code`
    uint32_t column;          ///< where in the text, in characters from 1; 0 if it is not about text
    uint32_t byte_column;     ///< the same place in bytes from 1
    uint32_t message_size;    ///< in bytes, without the zero
    uint32_t suggestion_at;   ///< where in the message stands what to write instead, in bytes from 0
    uint32_t suggestion_size; ///< 0 if nothing can be offered without guessing
    char message[240];        ///< terminated
} fitwright_error;

/// Limits of size. Both limits are allowed sizes; a deviation is a limit less the nominal size. Read by a
/// function below, or filled in by the caller: `part` and the three sizes, the lower limit first.
typedef struct fitwright_limits {
    uint32_t size;
    uint32_t version;
    int32_t part;       ///< FITWRIGHT_HOLE, FITWRIGHT_SHAFT or FITWRIGHT_TOOL
    int32_t confidence; ///< in the source; of `fitwright_confidence`. Not looked at when read from
    int64_t nominal_nm;
    int64_t lower_limit_nm;
    int64_t upper_limit_nm;
    char source[136]; ///< the document the limits come from, terminated. Not looked at when read from
} fitwright_limits;

/// The room between a hole and a shaft, hole less shaft; below zero where they interfere.
typedef struct fitwright_clearance {
    uint32_t size;
    uint32_t version;
    int64_t least_nm;
    int64_t mean_nm;
    int64_t greatest_nm;
    int32_t kind; ///< of `fitwright_kind`
    uint32_t reserved;
} fitwright_clearance;

/// What a call-out says beside its limits.
typedef struct fitwright_callout {
    uint32_t size;
    uint32_t version;
    int32_t part;  ///< of `fitwright_part`
    int32_t unit;  ///< of the size, as written; millimetres where none is
    int32_t count; ///< `2x`; 0 if none is given
    int32_t notes; ///< of `fitwright_note`
    int64_t nominal_nm;
    int64_t depth_nm;    ///< with FITWRIGHT_HAS_DEPTH
    char hole_class[8];  ///< "H7"; empty if there is none
    char shaft_class[8]; ///< "g6"
    char inch_fit[8];    ///< "RC4"
} fitwright_callout;

/// A drill as it is sold.
typedef struct fitwright_drill {
    uint32_t size;
    uint32_t version;
    int32_t series;     ///< of `fitwright_series`
    int32_t confidence; ///< in the source
    int64_t diameter_nm;
    char name[32];    ///< "6.8 mm", "13/64 in", "#7", "F"
    char source[136]; ///< of the list of sizes, or of the rule that chose the drill
} fitwright_drill;

/// A GO and a NOT GO gauge: what to make them to, and the size at which GO is worn out.
typedef struct fitwright_gauge {
    uint32_t size;
    uint32_t version;
    int64_t go_lower_nm;
    int64_t go_upper_nm;
    int64_t not_go_lower_nm;
    int64_t not_go_upper_nm;
    int64_t worn_nm;    ///< a GO plug below it, or a GO ring above it, is scrap
    uint32_t take_care; ///< cautions, for `fitwright_write_caution`
    int32_t confidence; ///< in the source
    char source[136];
} fitwright_gauge;

/// A part as measured, by the caller: the reading and its uncertainty (half width, as in 7.968 +/- 0.002).
typedef struct fitwright_measured {
    uint32_t size;
    uint32_t version;
    int64_t reading_nm;
    int64_t uncertainty_nm; ///< expanded, about 95 %; not below zero
} fitwright_measured;

/// The control's convention for the offset of one tool, by the caller.
typedef struct fitwright_offset {
    uint32_t size;
    uint32_t version;
    int32_t across;            ///< of `fitwright_across`
    int32_t sense;             ///< of `fitwright_sense`
    int64_t increment_nm;      ///< the smallest change that the control takes
    int64_t largest_change_nm; ///< the largest one to make before measuring again
} fitwright_offset;

/// The change of an offset, and what it should lead to.
typedef struct fitwright_step {
    uint32_t size;
    uint32_t version;
    int64_t change_nm;   ///< to add to the number in the register, with its sign
    int64_t expected_nm; ///< the part's size after the cut, as uncertain as the trial
    int32_t is_clamped;  ///< 1 if the largest change is not enough: cut, measure and ask again
    uint32_t take_care;  ///< cautions
} fitwright_step;

// Reading call-outs. `length` is in bytes, `how` of `fitwright_reading`.
// Errors: about the text, with its column; a size or class outside ISO 286 or ANSI B4.1.

/// Reads a hole: `12 H7`, or limits without a class. `12 h7` is an error that offers `12 H7`.
FITWRIGHT_API int32_t fitwright_read_hole(const char* text, size_t length, uint32_t how,
                                          fitwright_limits* hole, fitwright_error* error);

/// Reads a shaft: `12 g6`, or limits without a class.
FITWRIGHT_API int32_t fitwright_read_shaft(const char* text, size_t length, uint32_t how,
                                           fitwright_limits* shaft, fitwright_error* error);

/// Reads a fit: `12 H7/g6`, `1/2 in RC4`.
FITWRIGHT_API int32_t fitwright_read_fit(const char* text, size_t length, uint32_t how,
                                         fitwright_limits* hole, fitwright_limits* shaft,
                                         fitwright_error* error);

/// Reads any call-out, `2x 6 H7 THRU` too. Limits of a part that it does not speak of get part 0; of
/// FITWRIGHT_EITHER both are given, as if it were a hole's and as if it were a shaft's.
FITWRIGHT_API int32_t fitwright_read_callout(const char* text, size_t length, uint32_t how,
                                             fitwright_callout* callout, fitwright_limits* hole,
                                             fitwright_limits* shaft, fitwright_error* error);

// Limits.

/// The limits of a tolerance class of ISO 286 at a nominal size: `H7` is a hole's, `g6` a shaft's.
FITWRIGHT_API int32_t fitwright_class_limits(int64_t nominal_nm, const char* tolerance_class, size_t length,
                                             fitwright_limits* limits, fitwright_error* error);

/// Least, mean and greatest clearance of a hole and a shaft, and what kind of fit they are.
FITWRIGHT_API int32_t fitwright_find_clearance(const fitwright_limits* hole, const fitwright_limits* shaft,
                                               fitwright_clearance* clearance, fitwright_error* error);

/// The limits on a coarser grid, rounded inwards: what they let pass, the given limits let pass. A step of
/// 2540 nm is four decimals of an inch.
/// Errors: a step not above 0, or above 10 m; nothing on the grid.
FITWRIGHT_API int32_t fitwright_round_inwards(const fitwright_limits* limits, int64_t step_nm,
                                              fitwright_limits* rounded, fitwright_error* error);

/// The size to aim at: the multiple of `step_nm` nearest the middle of the limits, and within them; of two
/// as near the smaller hole, the larger shaft. A control that moves the radius by 1 um steps by 2000 nm.
/// Errors as of `fitwright_round_inwards`.
FITWRIGHT_API int32_t fitwright_find_target(const fitwright_limits* limits, int64_t step_nm,
                                            int64_t* target_nm, fitwright_error* error);

// Lengths as digits, ASCII, with a point; the length of the text is given back.
// `unit` is of `fitwright_unit`, `decimals` are digits behind the point; -1 writes as many as are needed.

/// To the nearest, ties away from zero: for sizes, and for limits that stand on that grid already. 0 to 9
/// decimals.
FITWRIGHT_API int32_t fitwright_write_nearest(int64_t length_nm, int32_t unit, int32_t decimals, char* buffer,
                                              size_t capacity, fitwright_error* error);

/// The lower limit, rounded up: inwards. 0 to 6 decimals of mm, 3 of um, 0 of nm, 5 of in, 2 of thou.
/// Error: no size of so many decimals lies within the limits.
FITWRIGHT_API int32_t fitwright_write_lower_inwards(const fitwright_limits* limits, int32_t unit,
                                                    int32_t decimals, char* buffer, size_t capacity,
                                                    fitwright_error* error);

/// The upper limit, rounded down: inwards. As `fitwright_write_lower_inwards`.
FITWRIGHT_API int32_t fitwright_write_upper_inwards(const fitwright_limits* limits, int32_t unit,
                                                    int32_t decimals, char* buffer, size_t capacity,
                                                    fitwright_error* error);

// Tools.

/// The limits of the reamer that cuts a hole, by DIN 1420; their part is FITWRIGHT_TOOL, their nominal size
/// the hole's.
/// Error: the hole's tolerance leaves nothing for the reamer's.
FITWRIGHT_API int32_t fitwright_find_reamer(const fitwright_limits* hole, fitwright_limits* reamer,
                                            fitwright_error* error);

/// The drill of a series to use under a reamer of that nominal size: the one that leaves what the rule for
/// stock says, counted to cut 0.05 mm over. `reaming` is of `fitwright_reaming`, `material` of
/// `fitwright_material`; `source` is that of the rule.
/// Errors: a size that the rule does not speak of; no drill of the series leaves such a stock.
FITWRIGHT_API int32_t fitwright_find_drill_under_reamer(int64_t reamer_nm, int32_t series, int32_t reaming,
                                                        int32_t material, fitwright_drill* drill,
                                                        fitwright_error* error);

/// The largest drill of a series that is smaller than the size. The hole it leaves is larger than the drill.
/// Error: the whole series is at least as large.
FITWRIGHT_API int32_t fitwright_find_largest_drill_under(int64_t size_nm, int32_t series,
                                                         fitwright_drill* drill, fitwright_error* error);

// Gauges and readings.

/// The plugs for a hole, ISO/R 1938:1971.
/// Error: a nominal size above 500 mm; a tolerance that is not IT6 to IT16.
FITWRIGHT_API int32_t fitwright_find_plug_gauge(const fitwright_limits* hole, fitwright_gauge* gauge,
                                                fitwright_error* error);

/// The rings for a shaft, ISO/R 1938:1971. Errors as of `fitwright_find_plug_gauge`.
FITWRIGHT_API int32_t fitwright_find_ring_gauge(const fitwright_limits* shaft, fitwright_gauge* gauge,
                                                fitwright_error* error);

/// Whether a reading proves that a part keeps its limits, ISO 14253-1 with the whole uncertainty as guard
/// band. `verdict` is of `fitwright_verdict`.
FITWRIGHT_API int32_t fitwright_judge(const fitwright_limits* limits, const fitwright_measured* part,
                                      int32_t* verdict, fitwright_error* error);

/// The readings that may be accepted: the limits, each moved inwards by the uncertainty (not below zero).
/// Error: nothing is left; this instrument can't prove this tolerance.
FITWRIGHT_API int32_t fitwright_find_acceptance(const fitwright_limits* limits, int64_t uncertainty_nm,
                                                fitwright_limits* readings, fitwright_error* error);

// Offsets from a trial bore or a trial turn. `aim_nm` is a size within the limits: their middle, or what
// `fitwright_find_target` gave.

/// The change of the offset for another cut on the part just measured: towards the aim, never beyond it.
/// Errors: a part already cut beyond its limits; less than an increment to go and not yet good; an aim
/// outside the limits; a largest change below the increment.
FITWRIGHT_API int32_t fitwright_find_offset_to_recut(const fitwright_limits* wanted,
                                                     const fitwright_measured* trial, int64_t aim_nm,
                                                     const fitwright_offset* offset, fitwright_step* step,
                                                     fitwright_error* error);

/// The change of the offset for the next part, from the one just measured: either way, to the allowed size
/// nearest the aim.
/// Errors: increments too coarse to meet the limits; an aim outside them; a largest change below the increment.
FITWRIGHT_API int32_t fitwright_find_offset_for_next_part(const fitwright_limits* wanted,
                                                          const fitwright_measured* last, int64_t aim_nm,
                                                          const fitwright_offset* offset,
                                                          fitwright_step* step, fitwright_error* error);

// Words.

/// Copies the message of an error: one sentence or two.
FITWRIGHT_API int32_t fitwright_write_message(const fitwright_error* error, char* buffer, size_t capacity);

/// Copies what an error says to write instead; empty where nothing can be offered without guessing.
FITWRIGHT_API int32_t fitwright_write_suggestion(const fitwright_error* error, char* buffer, size_t capacity);

/// What to say of the cautions in a `take_care`, a sentence each. No caution is an empty text.
FITWRIGHT_API int32_t fitwright_write_caution(uint32_t take_care, char* buffer, size_t capacity,
                                              fitwright_error* error);

/// "published", "from memory of the document", … for a `confidence`.
FITWRIGHT_API int32_t fitwright_write_confidence(int32_t confidence, char* buffer, size_t capacity,
                                                 fitwright_error* error);

// What the library was built as, for bindings to compare with their own.

/// The library's FITWRIGHT_C_VERSION: at least the header's, or the structs will be refused.
FITWRIGHT_API uint32_t fitwright_c_version(void);

/// The version of fitwright inside, 10000 major + 100 minor + patch: 0.1.0 is 100.
FITWRIGHT_API uint32_t fitwright_library_version(void);

FITWRIGHT_API uint32_t fitwright_sizeof_error(void);
FITWRIGHT_API uint32_t fitwright_sizeof_limits(void);
FITWRIGHT_API uint32_t fitwright_sizeof_clearance(void);
FITWRIGHT_API uint32_t fitwright_sizeof_callout(void);
FITWRIGHT_API uint32_t fitwright_sizeof_drill(void);
FITWRIGHT_API uint32_t fitwright_sizeof_gauge(void);
FITWRIGHT_API uint32_t fitwright_sizeof_measured(void);
FITWRIGHT_API uint32_t fitwright_sizeof_offset(void);
FITWRIGHT_API uint32_t fitwright_sizeof_step(void);

#ifdef __cplusplus
}
#endif

#endif
