// Runs in the page, from outside: what text is painted, and where.

globalThis.judge = {};

/** A short way to say which element: from the nearest id downwards. */
judge.where = (element) => {
    const steps = [];
    for (let e = element; e && e !== document.body; e = e.parentElement) {
        if (e.id) {
            steps.unshift(`#${e.id}`);
            break;
        }
        const kind = e.getAttribute('class')?.trim().split(/\s+/).join('.');
        steps.unshift(e.localName + (kind ? `.${kind}` : ''));
    }
    return steps.slice(-4).join(' ') || 'body';
};

judge.quoted = (text) => {
    const one = text.replace(/\s+/g, ' ').trim();
    return `"${one.length > 50 ? `${one.slice(0, 47)}...` : one}"`;
};

const styles = new Map();
judge.style = (element) => {
    if (!styles.has(element)) styles.set(element, getComputedStyle(element));
    return styles.get(element);
};

const boxes = new Map();
judge.box = (element) => {
    if (!boxes.has(element)) boxes.set(element, element.getBoundingClientRect());
    return boxes.get(element);
};

/** A box that is there for screen readers alone: so small that nothing of it is seen. */
judge.isUnseen = (element) => {
    const { width, height } = judge.box(element);
    return judge.style(element).overflowX !== 'visible' && (width <= 2 || height <= 2);
};

const pen = document.createElement('canvas').getContext('2d');

/** What share of a line's height lies above and below the ink of its letters. */
const shareFree = (text, style) => {
    pen.font = `${style.fontStyle} ${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const m = pen.measureText(text);
    const line = m.fontBoundingBoxAscent + m.fontBoundingBoxDescent;
    return {
        above: Math.max(0, (m.fontBoundingBoxAscent - m.actualBoundingBoxAscent) / line),
        below: Math.max(0, (m.fontBoundingBoxDescent - m.actualBoundingBoxDescent) / line),
    };
};

/** Letters in CSS pixels, after what an SVG or a transformation does to them. */
const sizeOnScreen = (element, style) => {
    const matrix = element.getScreenCTM?.();
    const scale = matrix ? Math.sqrt(Math.abs(matrix.a * matrix.d - matrix.b * matrix.c)) : 1;
    return parseFloat(style.fontSize) * scale;
};

/** Every line of text that is painted: {node, element, text, size, left, top, right, bottom} of its ink. */
judge.findRuns = () => {
    scrollTo({ left: 0, top: 0, behavior: 'instant' });
    judge.measuredAt = { x: scrollX, y: scrollY };
    const runs = [];
    const range = document.createRange();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
        const node = walker.currentNode;
        const element = node.parentElement;
        if (!/\S/.test(node.data)) continue;
        if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
        const style = judge.style(element);
        const free = shareFree(node.data, style);
        const size = sizeOnScreen(element, style);
        range.selectNodeContents(node);
        for (const r of range.getClientRects()) {
            if (r.width < 0.5 || r.height < 0.5) continue;
            const isUpright = r.height < 1.8 * size; // of turned text the whole box counts
            runs.push({
                node,
                element,
                text: node.data,
                size,
                left: r.left,
                right: r.right,
                top: r.top + (isUpright ? free.above * r.height : 0),
                bottom: r.bottom - (isUpright ? free.below * r.height : 0),
            });
        }
    }
    return runs;
};
