# python3 bore.py LIBRARY: what a hole may measure, the reamer for it and the size to aim at.
import ctypes as c
import sys
fitwright = c.CDLL(sys.argv[1])

class Struct(c.Structure):
    def __init__(self):
        super().__init__(c.sizeof(self), 1)  # size, version

class Error(Struct):
    _fields_ = [("size", c.c_uint32), ("version", c.c_uint32), ("code", c.c_int32), ("column", c.c_uint32),
                ("more", c.c_uint32 * 4), ("message", c.c_char * 240)]

class Limits(Struct):
    _fields_ = [("size", c.c_uint32), ("version", c.c_uint32), ("part", c.c_int32), ("sure", c.c_int32),
                ("nominal", c.c_int64), ("lower", c.c_int64), ("upper", c.c_int64), ("source", c.c_char * 136)]

error, hole, reamer, aim = Error(), Limits(), Limits(), c.c_int64()
for callout in (b"12 H7", "⌀10 D8".encode(), b"12 h7"):
    if fitwright.fitwright_read_hole(callout, c.c_size_t(len(callout)), 0, c.byref(hole), c.byref(error)):
        print(f"{callout.decode()}: column {error.column}: {error.message.decode()}")
        continue
    fitwright.fitwright_find_reamer(c.byref(hole), c.byref(reamer), None)
    fitwright.fitwright_find_target(c.byref(hole), c.c_int64(2000), c.byref(aim), None)
    sizes = hole.lower, hole.upper, reamer.lower, reamer.upper, aim.value
    print(callout.decode(), *(f"{nm / 1e6:.3f}" for nm in sizes))
