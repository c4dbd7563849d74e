// A browser without a window, and pages in it that run no script of their own and reach nothing but
// themselves.

import { pathToFileURL } from 'node:url';
import { installed, settings } from './settings.mjs';

const puppeteer = installed('puppeteer-core');

/** Widths in CSS pixels. On paper the page is as wide as A4 less the margins that it asks for. */
export const views = [
    { name: 'phone', width: 360, height: 800, isMobile: true, leastText: 9, unit: 'px' },
    { name: 'desktop', width: 1366, height: 900, isMobile: false, leastText: 9, unit: 'px' },
    { name: 'print', width: 0, height: 1000, isMobile: false, leastText: 6, unit: 'pt' },
];

/** Calls use(browser) and closes it, whatever happens. */
export async function withBrowser(use) {
    const browser = await puppeteer.launch({
        executablePath: settings.chromium,
        args: ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--font-render-hinting=none'],
        pipe: true,
    });
    try {
        return await use(browser);
    } finally {
        await browser.close();
    }
}

/** The page in a file; page.requests lists what it asked for beside itself. */
export async function open(browser, file) {
    const page = await browser.newPage();
    const itself = pathToFileURL(file).href;
    page.requests = [];
    await page.setJavaScriptEnabled(false);
    await page.setRequestInterception(true);
    page.on('request', (request) => {
        const url = request.url();
        if (url === itself) return request.continue();
        page.requests.push(url);
        return request.abort();
    });
    await page.goto(itself, { timeout: 120_000 });
    return page;
}

const inch = 96;
const perUnit = { mm: inch / 25.4, cm: inch / 2.54, in: inch, pt: inch / 72, px: 1 };
const inPixels = (css) => parseFloat(css) * (perUnit[css.replace(/[\d.\s]/g, '')] ?? 1);

/** What A4 leaves between the margins of the page's @page rule, in whole CSS pixels. */
async function paperWidth(page) {
    const margins = await page.evaluate(() => {
        const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]);
        const rule = rules.findLast((r) => r instanceof CSSPageRule);
        return rule ? [rule.style.marginLeft, rule.style.marginRight] : ['', ''];
    });
    const [left, right] = margins.map((m) => inPixels(m || '0.4in'));
    return Math.floor(210 * perUnit.mm - left - right);
}

/** Lays the page out anew; returns its width. */
export async function show(page, view) {
    const isPaper = view.name === 'print';
    await page.emulateMediaType(isPaper ? 'print' : 'screen');
    const width = isPaper ? await paperWidth(page) : view.width;
    const { height, isMobile } = view;
    await page.setViewport({ width, height, isMobile, hasTouch: isMobile, deviceScaleFactor: 1 });
    return width;
}
