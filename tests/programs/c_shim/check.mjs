// node check.mjs FILE.wasm: the C interface from Node, as WebAssembly.
import { readFileSync } from "node:fs";

const module = new WebAssembly.Module(readFileSync(process.argv[2]));
const { exports: library } = new WebAssembly.Instance(module, {});
let failed = 0;
const check = (isSo, what) => {
    if (!isSo) ++failed, console.error(`not so: ${what}`);
};

// What is exported: the interface and the memory, nothing else; nothing is imported.
check(WebAssembly.Module.imports(module).length === 0, "nothing is imported");
for (const { name } of WebAssembly.Module.exports(module))
    check(/^(fitwright_.*|memory|__heap_base)$/.test(name), `'${name}' is exported`);

// The memory from __heap_base on is the caller's. Places are handed out one behind the other.
const page = library.memory.grow(1) * 65536;
const memory = new DataView(library.memory.buffer);
check(page >= library.__heap_base.value, "a page of our own");
let next = page;
const place = (size) => (next += 8 * Math.ceil(size / 8)) - 8 * Math.ceil(size / 8);

// A struct by its fields, "name:kind"; u: uint32, i: int32, l: int64, a number: so many characters.
const struct = (name, ...fields) => {
    const widths = { u: 4, i: 4, l: 8 };
    const size = library[`fitwright_sizeof_${name}`]();
    const at = place(size);
    const made = { at };
    let behind = at;
    for (const field of ["size:u", "version:u", ...fields]) {
        const [key, kind] = field.split(":");
        const where = behind;
        behind += widths[kind] ?? Number(kind);
        Object.defineProperty(made, key, {
            get: () =>
                kind === "u" ? memory.getUint32(where, true)
                : kind === "i" ? memory.getInt32(where, true)
                : kind === "l" ? memory.getBigInt64(where, true)
                : textAt(where),
            set: (value) =>
                kind === "l" ? memory.setBigInt64(where, value, true) : memory.setUint32(where, value, true),
        });
    }
    check(behind - at === size, `size of ${name}: ${size} and ${behind - at}`);
    Object.assign(made, { size, version: 1 });
    return made;
};
const bytes = (from, to) => new Uint8Array(memory.buffer, from, to - from);
function textAt(where) {
    let end = where;
    while (memory.getUint8(end) !== 0) ++end;
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes(where, end));
}

const limits = () => struct("limits", "part:i", "confidence:i", "nominal:l", "lower:l", "upper:l", "source:136");
const error = struct("error", "code:i", "column:u", "byte_column:u", "message_size:u", "suggestion_at:u",
                     "suggestion_size:u", "message:240");
const [hole, shaft, reamer] = [limits(), limits(), limits()];
const clearance = struct("clearance", "least:l", "mean:l", "greatest:l", "kind:i", "reserved:u");
const callout = struct("callout", "part:i", "unit:i", "count:i", "notes:i", "nominal:l", "depth:l",
                       "hole_class:8", "shaft_class:8", "inch_fit:8");
const drill = struct("drill", "series:i", "confidence:i", "diameter:l", "name:32", "source:136");
const gauge = struct("gauge", "go_lower:l", "go_upper:l", "not_go_lower:l", "not_go_upper:l", "worn:l",
                     "take_care:u", "confidence:i", "source:136");
const part = struct("measured", "reading:l", "uncertainty:l");
const offset = struct("offset", "across:i", "sense:i", "increment:l", "largest_change:l");
const step = struct("step", "change:l", "expected:l", "is_clamped:i", "take_care:u");
const [number, buffer, input] = [place(8), place(256), place(256)];

// Structs by where they are, text with its length.
const call = (name, ...given) =>
    library[`fitwright_${name}`](...given.flatMap((a) => {
        if (typeof a !== "string") return [a?.at ?? a];
        const { written } = new TextEncoder().encodeInto(a, bytes(input, input + 256));
        return [input, written];
    }));
const good = (name, ...given) => check(call(name, ...given) >= 0, `${name} ${given[0]}: ${error.message}`);
const same = (got, wanted, what) => check(String(got) === String(wanted), `${what}: ${got}, not ${wanted}`);

same(library.fitwright_c_version(), 1, "version");

// ISO 286-2: 25 H7 is 25.000 to 25.021, 12 H7/g6 leaves 6 to 35 um.
good("read_hole", "25 H7", 0, hole, error);
same([hole.lower, hole.upper], [25_000_000, 25_021_000], "25 H7");
check(hole.source.startsWith("ISO 286-1:2010") && hole.confidence === 1, "the source of 25 H7");
good("read_fit", "12 H7/g6", 0, hole, shaft, error);
good("find_clearance", hole, shaft, clearance, error);
same([clearance.least, clearance.greatest, clearance.kind], [6_000, 35_000, 1], "12 H7/g6");

// ANSI B4.1: RC4 over 0.40 up to 0.71 in is +1.0/0 and -0.6/-1.3 thou.
good("read_fit", "1/2 in RC4", 0, hole, shaft, error);
same([hole.upper - hole.nominal, shaft.upper - shaft.nominal], [25_400, -15_240], "1/2 in RC4");

// ISO/R 1938: the plug for 14 H7; DIN 1420: the reamer for 10 D8; a trade-school note: the drill under 10 mm.
good("read_hole", "14 H7", 0, hole, error);
good("find_plug_gauge", hole, gauge, error);
same([gauge.go_lower, gauge.go_upper, gauge.worn], [14_001_000, 14_004_000, 13_998_000], "GO for 14 H7");
same([gauge.not_go_lower, gauge.not_go_upper], [14_016_500, 14_019_500], "NOT GO for 14 H7");
good("write_lower_inwards", hole, 4, 4, buffer, 256, error);
same(textAt(buffer), "0.5512", "14 mm, inwards in inches");
good("read_hole", "10 D8", 0, hole, error);
good("find_reamer", hole, reamer, error);
same([reamer.lower, reamer.upper, reamer.part], [10_050_000, 10_058_000, 3], "the reamer for 10 D8");
good("find_drill_under_reamer", 10_000_000n, 1, 1, 1, drill, error);
same([drill.diameter, drill.name], [9_700_000, "9.7 mm"], "the drill under 10 mm");

// Readings and offsets of a bore.
good("read_hole", "12 H7", 0, hole, error);
part.uncertainty = 4_000n;
for (const [reading, verdict] of [[12_009_000n, 1], [12_030_000n, 2], [12_017_000n, 3]]) {
    part.reading = reading;
    good("judge", hole, part, number, error);
    same(memory.getInt32(number, true), verdict, `the verdict on ${reading}`);
}
part.reading = 11_950_000n;
Object.assign(offset, { across: 1, sense: 1, increment: 1_000n, largest_change: 50_000n });
good("find_offset_to_recut", hole, part, 12_009_000n, offset, step, error);
same([step.change, step.expected, step.is_clamped], [29_000, 12_008_000, 0], "29 um on the radius");

// A call-out with its notes.
good("read_callout", "2x ⌀6 H7 THRU", 0, callout, reamer, shaft, error);
same([callout.part, callout.count, callout.notes, callout.hole_class], [1, 2, 3, "H7"], "2x 6 H7 THRU");

// Bad call-outs: code and columns; what to write instead.
same(call("read_hole", "⌀12 Q7", 0, hole, error), -133, "Q is not a letter");
same([error.code, error.column, error.byte_column], [-133, 5, 7], "where Q stands");
same(call("read_hole", "12 h7", 0, hole, error), -140, "12 h7 is no hole");
same(error.column, 4, "where h7 stands");
same(call("write_suggestion", error, buffer, 256), 5, "an offer");
same(textAt(buffer), "12 H7", "the offer");
same(hole.upper, 12_018_000, "an error leaves the limits alone");

// Too small a buffer, a null pointer, a wrong size.
same(call("write_nearest", 12_018_000n, 1, 3, 0, 0, error), 6, "the length needed");
bytes(buffer, buffer + 8).fill(0x23);
same(call("write_nearest", 12_018_000n, 1, 3, buffer, 4, error), 6, "the same, cut");
same(bytes(buffer, buffer + 5), [0x31, 0x32, 0x2e, 0, 0x23], "cut and terminated");
same(call("find_reamer", 0, reamer, error), -1, "a null pointer");
reamer.size -= 1;
same(call("find_reamer", hole, reamer, error), -2, "a wrong size");

console.log(failed === 0 ? "all holds" : `${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
