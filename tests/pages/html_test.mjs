// Every job's page is valid HTML, by html-validate's standard and its advice.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { jobs } from './jobs.mjs';
import { installed } from './settings.mjs';

const { HtmlValidate } = installed('html-validate');

const validator = new HtmlValidate({
    root: true,
    extends: ['html-validate:recommended'],
    rules: {
        'long-title': 'off', // advice for search engines; a job is called what it is called
    },
});

const inWords = ({ results }) =>
    results.flatMap(({ messages }) =>
        messages.map(({ line, column, ruleId, message }) => `${line}:${column}: ${message} (${ruleId})`),
    );

for (const { name, html } of jobs)
    test(name, async () => {
        const words = inWords(await validator.validateFile(html));
        const first = words.slice(0, 20).join('\n');
        assert.ok(words.length === 0, `\n${html}:\n${first}\n${words.length} in all\n`);
    });

test('faults are found', async () => {
    const head = '<!DOCTYPE html>\n<html lang="en"><head><title>x</title></head>';
    const found = async (body) => {
        const html = `${head}<body>${body}</body></html>\n`;
        return inWords(await validator.validateString(html)).join('\n');
    };
    assert.equal(await found('<p>sound</p>'), '');
    assert.match(await found('<p>never closed'), /no-implicit-close/);
    assert.match(await found('<p id="a">one</p><p id="a">two</p>'), /no-dup-id/);
    assert.match(await found('<ul><p>no item</p></ul>'), /element-permitted-content/);
    assert.match(await found('<p>a & b < c</p>'), /no-raw-characters/);
});
