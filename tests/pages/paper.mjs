// The page printed: every word of the PDF stands on the paper, and none is lost.

import { spawnSync } from 'node:child_process';
import { settings } from './settings.mjs';

const mm = 72 / 25.4; // points
const inMm = (points) => (points / mm).toFixed(1);
const a4 = { width: 210 * mm, height: 297 * mm };
const unprintable = 5 * mm; // what a printer leaves white at the edges

const number = (attributes, name) => Number(new RegExp(`${name}="(-?[\\d.]+)"`).exec(attributes)[1]);

/** [{width, height, words: [{left, right, top, bottom, text}]}] in points, from the top left. */
function pagesOf(pdf) {
    const run = spawnSync(settings.pdftotext, ['-bbox', '-', '-'], {
        input: pdf,
        encoding: 'utf8',
        maxBuffer: 1 << 28,
    });
    if (run.status !== 0) throw new Error(`pdftotext: ${run.stderr}`);
    const pages = [];
    for (const [, tag, attributes, text] of run.stdout.matchAll(/<(page|word) ([^>]*)>([^<]*)/g)) {
        if (tag === 'page')
            pages.push({
                width: number(attributes, 'width'),
                height: number(attributes, 'height'),
                words: [],
            });
        else
            pages.at(-1).words.push({
                left: number(attributes, 'xMin'),
                right: number(attributes, 'xMax'),
                top: number(attributes, 'yMin'),
                bottom: number(attributes, 'yMax'),
                text,
            });
    }
    return pages;
}

const entities = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const plain = (xml) => xml.replace(/&(\w+);/g, (whole, name) => entities[name] ?? whole);

/** How many of each character of ASCII; others a PDF may write in more ways than one. */
function counted(text) {
    const counts = new Map();
    for (const c of text.replace(/[^!-~]/g, '')) counts.set(c, (counts.get(c) ?? 0) + 1);
    return counts;
}

/** Characters that the paper lacks. More of one are no fault: the head of a table stands on each page. */
function findLost(texts, pages) {
    const printed = counted(pages.flatMap(({ words }) => words.map(({ text }) => plain(text))).join(''));
    const lost = [];
    for (const [c, wanted] of counted(texts.join(''))) {
        const there = printed.get(c) ?? 0;
        if (there < wanted) lost.push(`${wanted - there} of ${wanted} times ${c}`);
    }
    return lost.length === 0 ? [] : [`all pages: text of the page is not on the paper: ${lost.join(', ')}`];
}

/** Expects the page as it was last shown on paper, judge.seen found. */
export async function findCutOnPaper(page) {
    const texts = await page.evaluate(() => {
        const halos = document.createElement('style');
        halos.textContent = 'svg text { stroke: none !important }'; // a PDF has the letters of a halo twice
        document.head.append(halos);
        return [...new Set(judge.seen.map((run) => run.node))].map((node) => node.data);
    });
    const pdf = await page.pdf({
        format: 'A4',
        preferCSSPageSize: true,
        printBackground: false,
        timeout: 120_000,
    });
    const pages = pagesOf(Buffer.from(pdf));
    const faults = findLost(texts, pages);
    for (const [i, { width, height, words }] of pages.entries()) {
        const on = `page ${i + 1} of ${pages.length}`;
        if (Math.abs(width - a4.width) > 2 || Math.abs(height - a4.height) > 2)
            faults.push(`${on}: is ${inMm(width)} x ${inMm(height)} mm, not A4`);
        if (words.length === 0) faults.push(`${on}: is empty`);
        for (const { left, right, top, bottom, text } of words)
            if (Math.min(left, top, width - right, height - bottom) < unprintable)
                faults.push(
                    `${on}: "${plain(text)}" stands at ${inMm(left)} to ${inMm(right)} mm across, ` +
                        `${inMm(top)} to ${inMm(bottom)} mm down`,
                );
    }
    return faults;
}
