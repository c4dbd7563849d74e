# check.py LIBRARY: the C interface from Python, by ctypes.
import ctypes as c
import sys
from ctypes import byref, c_int32, c_int64, c_size_t

library = c.CDLL(sys.argv[1])
failed = 0


def check(is_so, what):
    global failed
    if not is_so:
        failed += 1
        print(f"not so: {what}", file=sys.stderr)


class Struct(c.Structure):
    def __init__(self, **fields):
        super().__init__(size=c.sizeof(self), version=1, **fields)


def struct(name, *fields):
    """u: uint32, i: int32, l: int64, a number: so many characters."""
    kinds = {"u": c.c_uint32, "i": c_int32, "l": c_int64}
    split = [field.split(":") for field in ("size:u", "version:u", *fields)]
    made = [(n, kinds[k] if k in kinds else c.c_char * int(k)) for n, k in split]
    return type(name, (Struct,), {"_fields_": made})


Error = struct("error", "code:i", "column:u", "byte_column:u", "message_size:u", "suggestion_at:u",
               "suggestion_size:u", "message:240")
Limits = struct("limits", "part:i", "confidence:i", "nominal:l", "lower:l", "upper:l", "source:136")
Clearance = struct("clearance", "least:l", "mean:l", "greatest:l", "kind:i", "reserved:u")
Callout = struct("callout", "part:i", "unit:i", "count:i", "notes:i", "nominal:l", "depth:l",
                 "hole_class:8", "shaft_class:8", "inch_fit:8")
Drill = struct("drill", "series:i", "confidence:i", "diameter:l", "name:32", "source:136")
Gauge = struct("gauge", "go_lower:l", "go_upper:l", "not_go_lower:l", "not_go_upper:l", "worn:l",
               "take_care:u", "confidence:i", "source:136")
Measured = struct("measured", "reading:l", "uncertainty:l")
Offset = struct("offset", "across:i", "sense:i", "increment:l", "largest_change:l")
Step = struct("step", "change:l", "expected:l", "is_clamped:i", "take_care:u")

check(library.fitwright_c_version() == 1, "version 1")
for layout in (Error, Limits, Clearance, Callout, Drill, Gauge, Measured, Offset, Step):
    size = getattr(library, "fitwright_sizeof_" + layout.__name__)()
    check(size == c.sizeof(layout), f"size of {layout.__name__}: {size} and {c.sizeof(layout)}")

error = Error()


def call(name, *arguments):
    """Structs by their address, text with its length, a whole number as int64 where the value is a `c_int64`."""
    passed = []
    for a in arguments:
        if isinstance(a, str):
            passed += [a.encode(), c_size_t(len(a.encode()))]
        else:
            passed.append(byref(a) if isinstance(a, c.Structure) else a)
    return getattr(library, "fitwright_" + name)(*passed)


def read(name, text, *made):
    check(call("read_" + name, text, 0, *made, error) == 0, f"{text} is read: {error.message.decode()}")
    return made[0] if len(made) == 1 else made


# ISO 286-2: 25 H7 is 25.000 to 25.021, 12 H7/g6 leaves 6 to 35 um.
hole = read("hole", "25 H7", Limits())
check((hole.lower, hole.upper) == (25_000_000, 25_021_000), "25 H7")
check(hole.source.startswith(b"ISO 286-1:2010") and hole.confidence == 1, "the source of 25 H7")
hole, shaft = read("fit", "12 H7/g6", Limits(), Limits())
room = Clearance()
check(call("find_clearance", hole, shaft, room, error) == 0, "a clearance")
check((room.least, room.greatest, room.kind) == (6_000, 35_000, 1), "12 H7/g6")

# ANSI B4.1: RC4 over 0.40 up to 0.71 in is +1.0/0 and -0.6/-1.3 thou.
bore, pin = read("fit", "1/2 in RC4", Limits(), Limits())
check((bore.upper - bore.nominal, pin.upper - pin.nominal) == (25_400, -15_240), "1/2 in RC4")

# ISO/R 1938: the plug for 14 H7; DIN 1420: the reamer for 10 D8; a trade-school note: the drill under 10 mm.
gauge = Gauge()
check(call("find_plug_gauge", read("hole", "14 H7", Limits()), gauge, error) == 0, "a plug")
check((gauge.go_lower, gauge.go_upper, gauge.worn) == (14_001_000, 14_004_000, 13_998_000), "GO for 14 H7")
check((gauge.not_go_lower, gauge.not_go_upper) == (14_016_500, 14_019_500), "NOT GO for 14 H7")
reamer = Limits()
check(call("find_reamer", read("hole", "10 D8", Limits()), reamer, error) == 0, "a reamer")
check((reamer.lower, reamer.upper, reamer.part) == (10_050_000, 10_058_000, 3), "the reamer for 10 D8")
drill = Drill()
check(call("find_drill_under_reamer", c_int64(10_000_000), 1, 1, 1, drill, error) == 0, "a drill")
check((drill.diameter, drill.name) == (9_700_000, b"9.7 mm"), "the drill under 10 mm")

# Readings and offsets of a bore.
verdict = c_int32()
for reading, expected in ((12_009_000, 1), (12_030_000, 2), (12_017_000, 3)):
    check(call("judge", hole, Measured(reading=reading, uncertainty=4_000), byref(verdict), error) == 0, "judged")
    check(verdict.value == expected, f"the verdict on {reading}")
step = Step()
offset = Offset(across=1, sense=1, increment=1_000, largest_change=50_000)
trial = Measured(reading=11_950_000)
check(call("find_offset_to_recut", hole, trial, c_int64(12_009_000), offset, step, error) == 0, "an offset")
check((step.change, step.expected, step.is_clamped) == (29_000, 12_008_000, 0), "29 um on the radius")

# A call-out with its notes.
callout = read("callout", "2x ⌀6 H7 THRU", Callout(), Limits(), Limits())[0]
check((callout.part, callout.count, callout.notes, callout.hole_class) == (1, 2, 3, b"H7"), "2x 6 H7 THRU")

# Bad call-outs: code and columns; what to write instead.
check(call("read_hole", "⌀12 Q7", 0, hole, error) == -133, "Q is not a letter")
check((error.code, error.column, error.byte_column) == (-133, 5, 7), "where Q stands")
check(call("read_hole", "12 h7", 0, hole, error) == -140, "12 h7 is no hole")
buffer = c.create_string_buffer(16)
check(error.column == 4 and call("write_suggestion", error, buffer, c_size_t(16)) == 5, "an offer")
check(buffer.value == b"12 H7", "12 H7 is offered")
check(hole.upper == 12_018_000, "an error leaves the limits alone")

# Too small a buffer, a null pointer, a wrong size.
check(call("write_nearest", c_int64(12_018_000), 1, 3, None, c_size_t(0), error) == 6, "the length needed")
buffer.raw = b"#" * 16
check(call("write_nearest", c_int64(12_018_000), 1, 3, buffer, c_size_t(4), error) == 6, "the same, cut")
check(buffer.raw[:6] == b"12.\0##", "cut and terminated")
check(call("write_lower_inwards", read("hole", "14 H7", Limits()), 4, 4, buffer, c_size_t(16), error) == 6, "inches")
check(buffer.value == b"0.5512", "14 mm, inwards in inches")
check(call("find_reamer", None, reamer, error) == -1, "a null pointer")
reamer.size -= 1
check(call("find_reamer", hole, reamer, error) == -2, "a wrong size")

print("all holds" if failed == 0 else f"{failed} failed")
sys.exit(failed != 0)
