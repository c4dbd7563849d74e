// Runs in the page: does any text lie upon another?

judge.findOverlaps = () => {
    const slack = 1; // CSS pixel, both ways
    const faults = [];
    const sorted = [...judge.seen].sort((a, b) => a.top - b.top);
    let open = [];
    for (const run of sorted) {
        open = open.filter((other) => other.bottom > run.top + slack);
        for (const other of open) {
            const across = Math.min(run.right, other.right) - Math.max(run.left, other.left);
            const down = Math.min(run.bottom, other.bottom) - run.top;
            if (across <= slack || down <= slack) continue;
            const by = `${across.toFixed(1)} x ${down.toFixed(1)} px`;
            const [one, two] = [run, other].map(({ text }) => judge.quoted(text));
            const at = judge.where(other.element);
            faults.push(`${judge.where(run.element)}: ${one} lies upon ${two} of ${at}, ${by}`);
        }
        open.push(run);
    }
    return faults;
};
