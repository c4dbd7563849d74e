// Writes what the browser shows, for the eye: WORK/seen/<page>_<view>_<number>.png, from the top, and
// <page>.pdf.

import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { open, show, views, withBrowser } from './browser.mjs';
import { jobs } from './jobs.mjs';
import { settings } from './settings.mjs';

const folder = join(settings.work, 'seen');
const tall = 3000; // pixels of one picture
const most = 8; // pictures of one view
mkdirSync(folder, { recursive: true });
await withBrowser(async (browser) => {
    for (const { name, html } of jobs) {
        const page = await open(browser, html);
        for (const view of views) {
            const width = await show(page, view);
            const height = await page.evaluate(() => document.documentElement.scrollHeight);
            for (let i = 0; i < most && i * tall < height; ++i)
                await page.screenshot({
                    path: join(folder, `${name}_${view.name}_${i + 1}.png`),
                    clip: { x: 0, y: i * tall, width, height: Math.min(tall, height - i * tall) },
                    captureBeyondViewport: true,
                });
        }
        await page.pdf({ path: join(folder, `${name}.pdf`), format: 'A4', preferCSSPageSize: true });
        await page.close();
    }
});
console.log(folder);
