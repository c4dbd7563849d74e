// node bore.mjs fitwright_c.wasm: what a hole may measure, the reamer for it and the size to aim at.
import { readFileSync } from "node:fs";

const { exports: fitwright } = (await WebAssembly.instantiate(readFileSync(process.argv[2]))).instance;
fitwright.memory.grow(1); // the memory from __heap_base on is the caller's
const room = new DataView(fitwright.memory.buffer, fitwright.__heap_base.value, 4096);
const [hole, reamer, error, aim, text] = [0, 176, 352, 624, 632]; // places in the room
const at = (place) => room.byteOffset + place;
const prepare = (place, size) => (room.setUint32(place, size, true), room.setUint32(place + 4, 1, true));
prepare(hole, fitwright.fitwright_sizeof_limits());
prepare(reamer, fitwright.fitwright_sizeof_limits());
prepare(error, fitwright.fitwright_sizeof_error());

const millimetres = (place) => (Number(room.getBigInt64(place, true)) / 1e6).toFixed(3);
for (const callout of ["12 H7", "⌀10 D8", "12 h7"]) {
    const { written } = new TextEncoder().encodeInto(callout, new Uint8Array(room.buffer, at(text), 256));
    if (fitwright.fitwright_read_hole(at(text), written, 0, at(hole), at(error)) < 0) {
        const message = new Uint8Array(room.buffer, at(error) + 32, room.getUint32(error + 20, true));
        console.log(`${callout}: column ${room.getUint32(error + 12, true)}: ${new TextDecoder().decode(message)}`);
        continue;
    }
    fitwright.fitwright_find_reamer(at(hole), at(reamer), 0);
    fitwright.fitwright_find_target(at(hole), 2000n, at(aim), 0);
    console.log(callout, ...[hole + 24, hole + 32, reamer + 24, reamer + 32, aim].map(millimetres));
}
