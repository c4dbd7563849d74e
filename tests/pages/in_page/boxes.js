// Runs in the page: is any text cut, or does it stick out of the box that it stands in?

const slack = 1; // CSS pixel

/** Inside its borders: where an element cuts what is too large. */
const paddingBox = (element) => {
    const b = judge.box(element);
    const s = judge.style(element);
    return {
        left: b.left + parseFloat(s.borderLeftWidth),
        right: b.right - parseFloat(s.borderRightWidth),
        top: b.top + parseFloat(s.borderTopWidth),
        bottom: b.bottom - parseFloat(s.borderBottomWidth),
    };
};

const round = Math.round;
const extent = (r) => `${round(r.left)} to ${round(r.right)} px, ${round(r.top)} to ${round(r.bottom)} down`;

const inside = (r, b) => ({
    across: r.left >= b.left - slack && r.right <= b.right + slack,
    down: r.top >= b.top - slack && r.bottom <= b.bottom + slack,
});

const intersection = (r, b) => ({
    ...r,
    left: Math.max(r.left, b.left),
    right: Math.min(r.right, b.right),
    top: Math.max(r.top, b.top),
    bottom: Math.min(r.bottom, b.bottom),
});

const isInline = (element) => /^(inline|contents|ruby.*)$/.test(judge.style(element).display);
const isDrawing = (element) => element instanceof SVGElement;
const isPicture = (element) => element instanceof SVGSVGElement && !element.ownerSVGElement;

const isSeen = (element) => {
    const s = judge.style(element);
    const hasBorder = ['Top', 'Right', 'Bottom', 'Left'].some(
        (edge) => s[`border${edge}Style`] !== 'none' && parseFloat(s[`border${edge}Width`]) > 0,
    );
    const hasColour = !/^(transparent|rgba\(.*, 0\))$/.test(s.backgroundColor);
    return hasBorder || hasColour || s.backgroundImage !== 'none';
};

/**
 * A box that scrolls sideways has to be reached without a mouse, and to say what it is. A group is
 * better than a region: among a hundred regions no landmark is found.
 */
const canBeScrolledByKeys = (element) =>
    element.tabIndex >= 0 &&
    /^(group|region)$/.test(element.getAttribute('role')) &&
    (element.hasAttribute('aria-label') || element.hasAttribute('aria-labelledby'));

/**
 * Follows a run outwards through the boxes around it.
 * Returns the part of it that is seen, or null; every fault goes to tell(element, words).
 */
const followOutwards = (run, onPaper, tell) => {
    let seen = run;
    let isFirstBlock = true;
    for (let e = run.element; e && e !== document.body; e = e.parentElement) {
        if (isDrawing(e) && !isPicture(e)) continue;
        if (!isPicture(e) && isInline(e)) continue;
        if (judge.isUnseen(e)) return null;
        const style = judge.style(e);
        const box = paddingBox(e);
        const { across, down } = inside(seen, box);
        const scrolls = /auto|scroll/.test(style.overflowX);
        const cuts = isPicture(e) || /hidden|clip/.test(style.overflowX + style.overflowY);
        if (scrolls) {
            if (!across && onPaper)
                tell(e, `cut on paper, where nothing scrolls: text ${extent(seen)}, box ${extent(box)}`);
            else if (!across && !canBeScrolledByKeys(e))
                tell(e, 'scrolls sideways, but has no tabindex="0", role="group" and label');
            seen = intersection(seen, box);
        } else if (cuts && !(across && down)) {
            tell(e, `cuts ${judge.quoted(run.text)}: text ${extent(seen)}, box ${extent(box)}`);
            seen = intersection(seen, box);
        } else if ((isFirstBlock && !across) || (isSeen(e) && !(across && down))) {
            tell(e, `${judge.quoted(run.text)} sticks out of it: text ${extent(seen)}, box ${extent(box)}`);
        }
        if (seen.right - seen.left < slack || seen.bottom - seen.top < slack) return null;
        isFirstBlock = false;
    }
    const width = document.documentElement.clientWidth;
    if (seen.left < -slack || seen.right > width + slack)
        tell(
            run.element,
            `${judge.quoted(run.text)} leaves the page: text ${extent(seen)}, page 0 to ${width}`,
        );
    return seen;
};

/** Sets judge.seen: the runs as far as they are seen. */
judge.findCutText = (onPaper) => {
    const faults = new Map(); // one fault for each element
    const tell = (element, words) => {
        if (!faults.has(element)) faults.set(element, `${judge.where(element)}: ${words}`);
    };
    judge.seen = judge.runs.map((run) => followOutwards(run, onPaper, tell)).filter((run) => run);

    // Text that is shortened with an ellipsis, or after some lines, is cut too.
    for (const e of document.body.querySelectorAll('*')) {
        if (isDrawing(e) || !/hidden|clip/.test(judge.style(e).overflow) || judge.isUnseen(e)) continue;
        if (e.scrollWidth > e.clientWidth + slack || e.scrollHeight > e.clientHeight + slack)
            tell(e, `cuts ${e.scrollWidth} x ${e.scrollHeight} px to ${e.clientWidth} x ${e.clientHeight}`);
    }
    return [...faults.values()];
};

/** Anything, text or not, that is wider than the page. */
judge.findOverflow = (width) => {
    const root = document.documentElement;
    if (root.clientWidth !== width)
        return [`html: laid out ${root.clientWidth} px wide on ${width}: is there no meta viewport?`];
    const faults = [];
    if (root.scrollWidth > width) faults.push(`html: scrolls sideways, ${root.scrollWidth} px on ${width}`);
    const look = (parent) => {
        for (const e of parent.children) {
            const b = judge.box(e);
            const isPainted = b.width > 0 && b.height > 0 && !judge.isUnseen(e);
            if (isPainted && (b.right > width + slack || b.left < -slack))
                faults.push(`${judge.where(e)}: ${extent(b)}, page 0 to ${width}`);
            else if (judge.style(e).overflowX === 'visible' && !isDrawing(e)) look(e);
        }
    };
    look(document.body);
    return faults;
};

judge.findSmallText = (least, unit) => {
    const inUnit = unit === 'pt' ? 0.75 : 1;
    const faults = new Map();
    for (const run of judge.seen)
        if (run.size * inUnit < least - 0.01 && !faults.has(run.element))
            faults.set(
                run.element,
                `${judge.where(run.element)}: ${judge.quoted(run.text)} is ` +
                    `${(run.size * inUnit).toFixed(1)} ${unit}, less than ${least}`,
            );
    return [...faults.values()];
};
