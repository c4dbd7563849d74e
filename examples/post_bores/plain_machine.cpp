#include "read_machine.hpp"

namespace post_bores {

std::string_view plain_machine() {
    return R"toml(# A machine file: how the control is spoken to, and what there is to cut and to measure with. Every
# number that has a unit is written with it. Speeds and feeds are common practice for high-speed steel in
# a light machine: put your tools' own in their place.

name = "plain mill"

[dialect]
units_word = "G21"             # G21 or G71: millimetres; G20 or G70: inches
decimals = 3
always_a_point = true          # X10. and not X10
repeat_modal_words = false     # true: G1, X, Y, Z and F in every block
comments = "parentheses"       # semicolon, none
comment_length = 68            # characters
upper_case = true              # comments in capitals
arc_centres = "IJ"             # from the start of the arc; or R
circles = "full"               # half, quarter; with R half or quarter
cycles = ["G81", "G83", "G85"] # those the control has; the others are written out
percent_signs = true
program_number = "O0001"       # or ""
tool_change = "M6"             # behind the T word
coolant = "M8"                 # or ""

[offsets]
work = "G54"
length = "G43"                 # or ""
length_register = "H1"         # of tool 1; tool 2 has the next
radius_register = "D1"
radius_register_holds = "radius" # or diameter

[heights]
safe = "25 mm"                 # above the highest top, from hole to hole
clearance = "2 mm"             # above each top: from here on nothing moves rapidly
breakthrough = "1 mm"          # out at the far side
reamer_lead = "2 mm"           # the tip of a reamer that is not full size
peck = "4 mm"

[spindle]                      # turns a minute
slowest = 100
fastest = 6000

[drawer]                       # numbered in the order of their use
drills = [{ from = "1 mm", to = "13 mm", by = "0.1 mm" }]
reamers = ["3 H7", "4 H7", "5 H7", "6 H7", "8 H7", "10 H7", "12 H7"] # machine reamers

[spot]
diameter = "3 mm"              # of the mark it leaves
depth = "1 mm"

[[mill]]
diameter = "6 mm"
bores_from = "8 mm"            # the smallest hole it is sent into
bores_to = "12 mm"
reach = "25 mm"
pitch = "0.5 mm"               # a turn, at most
sideways = "1 mm"              # off the radius a pass, at most

[[mill]]
diameter = "8 mm"
bores_from = "10 mm"
bores_to = "50 mm"
reach = "35 mm"
pitch = "0.8 mm"
sideways = "1.5 mm"

[[cutting]]                    # feed: a turn, of the tool's diameter
family = "aluminium"
drill = { speed = "60 m/min", feed = "1.5 %" }
ream = { speed = "15 m/min", feed = "2 %" }
mill = { speed = "80 m/min", feed = "1 %" }

[[cutting]]
family = "copper alloy"
drill = { speed = "40 m/min", feed = "1.5 %" }
ream = { speed = "12 m/min", feed = "2 %" }
mill = { speed = "50 m/min", feed = "1 %" }

[[cutting]]
family = "steel"
drill = { speed = "22 m/min", feed = "1.2 %" }
ream = { speed = "7 m/min", feed = "1.5 %" }
mill = { speed = "25 m/min", feed = "0.8 %" }
)toml";
}

} // namespace post_bores
