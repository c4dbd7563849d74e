// Every job's page in the browser: see README.md for what is looked at.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { open, withBrowser } from './browser.mjs';
import { jobs } from './jobs.mjs';
import { inWords, judgePage } from './layout.mjs';

await withBrowser(async (browser) => {
    for (const { name, html, json } of jobs)
        await test(name, async () => {
            const { pairs } = JSON.parse(readFileSync(json, 'utf8'));
            const page = await open(browser, html);
            const faults = await judgePage(page, pairs);
            await page.close();
            assert.ok(faults.length === 0, `\n${inWords(name, faults)}\n`);
        });
});
