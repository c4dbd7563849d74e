#ifndef POST_BORES_MACHINE_HPP
#define POST_BORES_MACHINE_HPP

#include <fitwright/gauge.hpp>
#include <fitwright/material_family.hpp>
#include <fitwright/tool/drawer.hpp>

#include <optional>
#include <string>
#include <vector>

// One machine: how its control is spoken to, and what it has to cut and to
// measure with.

namespace post_bores {

using fitwright::length;

enum class comment_style { parentheses, semicolon, none };
enum class register_holds { radius, diameter };

/// The words of the control.
struct dialect {
    std::string units_word;
    bool inches = false;
    int decimals = 3;
    bool always_a_point = true;      ///< X10. and not X10, which some controls take for ten increments
    bool repeat_modal_words = false; ///< writes G1, X, Y, Z and F in every block
    comment_style comments = comment_style::parentheses;
    std::size_t comment_length = 60; ///< of the characters inside
    bool upper_case = false;         ///< comments in capitals
    bool arcs_by_radius = false;     ///< R instead of I and J
    int arcs_a_turn = 1;             ///< 1, 2 or 4
    std::vector<std::string> cycles; ///< of G81, G83, G85
    bool percent_signs = false;
    std::string program_number; ///< "O0006", or none
    std::string tool_change;    ///< behind the T word
    std::string coolant;        ///< or none

    [[nodiscard]] bool has_cycle(std::string_view word) const;
    /// The unit of the program.
    [[nodiscard]] fitwright::written_unit unit() const;
    /// The finest step that can be written; on a diameter that is twice as much,
    /// since a radius is what is written.
    [[nodiscard]] length increment() const;
    /// The nearest size that can be written.
    [[nodiscard]] length on_grid(length l) const;
    /// The digits of a length, and of a feed a minute, as the control wants them.
    [[nodiscard]] std::string number(length l) const;
    [[nodiscard]] std::string feed(double mm_a_minute) const;
};

/// "D" and 11: the register of tool 1; tool 2 has the next.
struct first_register {
    std::string letter;
    int number = 1;

    [[nodiscard]] std::string of(int tool) const { return letter + std::to_string(number + tool - 1); }
};

struct offsets {
    std::string work;               ///< "G54"
    std::string length;             ///< "G43", or none
    first_register length_register; ///< "H1"
    first_register radius_register; ///< "D1"
    register_holds holds = register_holds::radius;
};

struct heights {
    length safe;         ///< above the highest top: for moves from hole to hole
    length clearance;    ///< above a hole's top: from here on nothing moves rapidly
    length breakthrough; ///< how far a tool's full diameter goes out at the far side
    length reamer_lead;  ///< how much of a reamer's tip is not full size
    length peck;         ///< drills deeper than three times their diameter go by this much
};

/// A spotting drill, on each hole before it is drilled.
struct spot {
    length diameter; ///< of the mark it leaves
    length depth;
};

struct mill {
    fitwright::drawer_tool as_bores; ///< a boring head, to the library: the bores
                                     ///< it makes, by its step
    length diameter;
    length reach;    ///< how deep it can go
    length pitch;    ///< at most so deep a turn
    length sideways; ///< at most so much off the radius a pass
};

struct probe {
    std::string word; ///< "G31", "G38.2"
    double feed = 0;  ///< mm a minute
    length ball;
    length depth;         ///< below the top, at most half the hole's depth
    length overtravel;    ///< beyond the wall
    std::string trip_x;   ///< where the control keeps the place of the touch: "#5061"
    int first_result = 0; ///< the first of two variables for the touches: 101 is #101
};

/// How fast to cut a kind of stuff: metres a minute, and a feed a turn as a
/// share of the tool's diameter.
struct cutting {
    struct rate {
        double speed = 0;
        double feed = 0;
    };
    fitwright::material_family family = fitwright::material_family::other;
    rate drill;
    rate ream;
    rate mill;
};

struct gauging {
    std::string name;
    length from;
    length to;
    length reads;       ///< the step of its readings
    length uncertainty; ///< expanded
};

struct machine {
    std::string name;
    post_bores::dialect dialect;
    post_bores::offsets offsets;
    post_bores::heights heights;
    int slowest = 0; ///< turns a minute
    int fastest = 0;
    std::vector<fitwright::drawer_tool> drawer; ///< drills and reamers
    post_bores::spot spot;
    std::vector<mill> mills;
    std::optional<post_bores::probe> probe;
    std::vector<post_bores::cutting> cutting;
    std::vector<gauging> instruments;
};

} // namespace post_bores

#endif
