// Runs in the page: the contrast of every text with what it is painted on, by WCAG 2.
//
// HTML: the background colours of the elements around the text, one upon the other.
// SVG: the halo, where the text is stroked before it is filled (paint-order) and the stroke shows for
// 0.75 px at least; else the worst of all that is painted beneath it, looked up by elementsFromPoint along
// its middle and across it. Of a pattern or a gradient every colour in it counts.

const brush = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
const read = new Map();

/** [red, green, blue, alpha] of 0 to 1, of any CSS colour. */
const colour = (css) => {
    if (!read.has(css)) {
        brush.clearRect(0, 0, 1, 1);
        brush.fillStyle = css;
        brush.fillRect(0, 0, 1, 1);
        read.set(
            css,
            [...brush.getImageData(0, 0, 1, 1).data].map((n) => n / 255),
        );
    }
    return read.get(css);
};

const over = ([r, g, b, a], [R, G, B]) => [r * a + R * (1 - a), g * a + G * (1 - a), b * a + B * (1 - a), 1];
const faded = ([r, g, b, a], opacity) => [r, g, b, a * opacity];
const white = [1, 1, 1, 1];

const luminance = ([r, g, b]) => {
    const linear = (c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
    return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
};
const contrast = (one, other) => {
    const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b);
    return (light + 0.05) / (dark + 0.05);
};

const opacityOf = (element) => {
    let all = 1;
    for (let e = element; e; e = e.parentElement) all *= parseFloat(judge.style(e).opacity);
    return all;
};

/** What lies behind the boxes of an HTML element; null if that is a picture. */
const backgroundOf = (element) => {
    const layers = [];
    for (let e = element; e; e = e.parentElement) {
        const s = judge.style(e);
        if (s.backgroundImage !== 'none') return null;
        layers.push(colour(s.backgroundColor));
        if (layers.at(-1)[3] === 1) break;
    }
    return layers.reduceRight((below, layer) => over(layer, below), white);
};

/** All colours of a fill or a stroke: one, or those of a pattern or a gradient. */
const coloursOf = (paint, opacity) => {
    const link = /^url\(["']?#([^"')]+)/.exec(paint);
    if (!link) return paint === 'none' ? [] : [faded(colour(paint), opacity)];
    const all = [];
    for (const e of document.getElementById(link[1])?.querySelectorAll('*') ?? []) {
        const s = judge.style(e);
        if (e.localName === 'stop') all.push(faded(colour(s.stopColor), parseFloat(s.stopOpacity)));
        else all.push(...[s.fill, s.stroke].filter((p) => p !== 'none' && !p.startsWith('url')).map(colour));
    }
    return all;
};

/** What a shape paints at a point: its stroke lies upon its fill. */
const paintedBy = (shape, x, y) => {
    const s = judge.style(shape);
    const own = shape.getScreenCTM && new DOMPoint(x, y).matrixTransform(shape.getScreenCTM().inverse());
    const onStroke = s.stroke !== 'none' && shape.isPointInStroke?.(own);
    return onStroke
        ? coloursOf(s.stroke, parseFloat(s.strokeOpacity) * opacityOf(shape))
        : coloursOf(s.fill, parseFloat(s.fillOpacity) * opacityOf(shape));
};

const pictureOf = (element) => {
    let svg = element;
    while (svg.parentElement instanceof SVGElement) svg = svg.parentElement;
    return svg;
};

/** Every colour that may lie beneath an SVG text at a point; a shape upon the text goes to tell. */
const beneath = (run, base, x, y, tell) => {
    const all = document.elementsFromPoint(x, y);
    const at = all.findIndex((e) => e === run.element || e.contains(run.element));
    const isShape = (e) => e instanceof SVGGeometryElement;
    for (const e of at < 0 ? [] : all.slice(0, at))
        if (isShape(e) && paintedBy(e, x, y).some((c) => c[3] > 0.3)) tell(e);
    const below = all.slice(at + 1).filter(isShape);
    return below.reduceRight(
        (grounds, shape) => {
            const paints = paintedBy(shape, x, y);
            if (paints.length === 0) return grounds;
            const mixed = grounds.flatMap((ground) => paints.map((p) => over(p, ground)));
            return paints.length > 1 ? [...mixed, ...grounds] : mixed; // a pattern has gaps
        },
        [base],
    );
};

/** Where to look: along the middle for upright lines, down two columns, half a step apart, for level ones. */
const pointsOn = ({ left, right, top, bottom }) => {
    const points = [];
    for (let x = left + 1; x < right; x += 5) points.push({ x, y: (top + bottom) / 2 });
    for (let y = top + 1; y < bottom; y += 2) points.push({ x: (2 * left + right) / 3, y });
    for (let y = top + 2; y < bottom; y += 2) points.push({ x: (left + 2 * right) / 3, y });
    return points;
};

const haloOf = (run, style) => {
    const comesFirst = /^stroke/.test(style.paintOrder) && style.stroke !== 'none';
    const scale = run.size / parseFloat(style.fontSize);
    const shows = (parseFloat(style.strokeWidth) * scale) / 2;
    const ink = comesFirst ? colour(style.stroke) : [0, 0, 0, 0];
    return shows >= 0.75 && ink[3] * parseFloat(style.strokeOpacity) > 0.9 ? ink : null;
};

judge.findLowContrast = (least) => {
    const faults = new Map();
    const tell = (element, words) => {
        if (!faults.has(element)) faults.set(element, `${judge.where(element)}: ${words}`);
    };
    const weigh = (run, ink, grounds) => {
        const worst = Math.min(...grounds.map((ground) => contrast(over(ink, ground), ground)));
        if (worst < least - 0.005)
            tell(run.element, `${judge.quoted(run.text)} has a contrast of ${worst.toFixed(2)} to 1`);
    };
    let shown = null;
    for (const run of judge.runs) {
        const style = judge.style(run.element);
        if (!(run.element instanceof SVGElement)) {
            const ground = backgroundOf(run.element);
            if (ground) weigh(run, faded(colour(style.color), opacityOf(run.element)), [ground]);
            else tell(run.element, `${judge.quoted(run.text)} lies on a picture: its contrast can't be told`);
            continue;
        }
        const [ink] = coloursOf(style.fill, parseFloat(style.fillOpacity) * opacityOf(run.element));
        if (!ink) continue;
        const svg = pictureOf(run.element);
        if (svg !== shown) svg.scrollIntoView({ block: 'center', behavior: 'instant' });
        shown = svg;
        const covered = (shape) =>
            tell(run.element, `${judge.quoted(run.text)} is covered by ${judge.where(shape)}`);
        const base = backgroundOf(svg) ?? white;
        const by = { x: scrollX - judge.measuredAt.x, y: scrollY - judge.measuredAt.y };
        const grounds = pointsOn(run).flatMap(({ x, y }) => beneath(run, base, x - by.x, y - by.y, covered));
        const halo = haloOf(run, style);
        weigh(run, ink, halo ? [halo] : grounds);
    }
    return [...faults.values()];
};
