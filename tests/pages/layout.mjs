// Judges a page as it is laid out on a phone, on a desk and on paper. A fault is {view, check, words}.

import { readFileSync } from 'node:fs';
import { show, views } from './browser.mjs';
import { findCutOnPaper } from './paper.mjs';
import { installed } from './settings.mjs';

const parts = ['text', 'boxes', 'overlaps', 'contrast', 'structure'];
const inPage = parts.map((name) => readFileSync(new URL(`in_page/${name}.js`, import.meta.url), 'utf8'));
const axe = readFileSync(installed.resolve('axe-core/axe.min.js'), 'utf8');

const leastContrast = 4.5;

/** found: {check: [words]}. */
const asFaults = (view, found) =>
    Object.entries(found).flatMap(([check, all]) => all.map((words) => ({ view, check, words })));

/** What is on the page in this view, all that can be opened being open. */
async function judgeView(page, view) {
    const width = await show(page, view);
    await page.evaluate(() => {
        for (const one of document.querySelectorAll('details')) one.open = true;
    });
    await page.evaluate(`{ ${inPage.join('}\n{')} }`);
    const found = await page.evaluate(
        (width, onPaper, leastText, unit, leastContrast) => {
            judge.runs = judge.findRuns();
            return {
                'cut text': judge.findCutText(onPaper),
                overflow: judge.findOverflow(width),
                overlap: judge.findOverlaps(),
                'small text': judge.findSmallText(leastText, unit),
                contrast: judge.findLowContrast(leastContrast),
            };
        },
        width,
        view.name === 'print',
        view.leastText,
        view.unit,
        leastContrast,
    );
    return asFaults(view.name, found);
}

/** What holds in every view. */
async function judgeMarkup(page, pairs) {
    const found = await page.evaluate(
        (pairs) => ({
            structure: judge.findBadStructure(),
            foreign: judge.findForeign(),
            'missing pair': judge.findMissingPairs(pairs),
        }),
        pairs,
    );
    found.foreign.push(...page.requests.map((url) => `asks for ${url}`));
    return asFaults('all', found);
}

/** All that axe-core counts as faults. It waits for timers, which a page without scripts has not. */
async function judgeByAxe(page) {
    await show(page, views[0]);
    await page.setJavaScriptEnabled(true);
    await page.evaluate(axe);
    const violations = await page.evaluate(async () => {
        const { violations } = await axe.run(document, { resultTypes: ['violations'], elementRef: false });
        return violations.map(({ id, impact, help, nodes }) => {
            const at = nodes.map(({ target }) => target.join(' '));
            const more = at.length > 3 ? ` and ${at.length - 3} more` : '';
            return `${id} (${impact}): ${help}: ${at.slice(0, 3).join(', ')}${more}`;
        });
    });
    return asFaults('phone', { axe: violations });
}

/**
 * pairs: [{id, name}] that the page has to have.
 * only: {view, check} looks no further than it takes to find such faults.
 */
export async function judgePage(page, pairs, only) {
    const isWanted = (view, check) => !only || (only.view === view && (!check || only.check === check));
    const faults = [];
    for (const view of views)
        // paper last, for what is looked at in the PDF
        if (isWanted(view.name) || (view.name === 'print' && isWanted('all')))
            faults.push(...(await judgeView(page, view)));
    if (isWanted('print', 'paper')) faults.push(...asFaults('print', { paper: await findCutOnPaper(page) }));
    if (isWanted('all')) faults.push(...(await judgeMarkup(page, pairs)));
    if (isWanted('phone', 'axe')) faults.push(...(await judgeByAxe(page)));
    return faults;
}

/** Faults in words, of each kind the first few. */
export function inWords(name, faults) {
    const most = 8;
    const kinds = new Map();
    for (const fault of faults) {
        const kind = `${fault.view}, ${fault.check}`;
        kinds.set(kind, [...(kinds.get(kind) ?? []), fault]);
    }
    const lines = [];
    for (const [kind, all] of kinds) {
        for (const { words } of all.slice(0, most)) lines.push(`${name}, ${kind}: ${words}`);
        if (all.length > most) lines.push(`${name}, ${kind}: and ${all.length - most} more`);
    }
    return lines.join('\n');
}
