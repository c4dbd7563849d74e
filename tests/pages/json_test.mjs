// The JSON of every job keeps to examples/job_sheet/sheet.schema.json, and what it says twice it says alike.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { jobs } from './jobs.mjs';
import { installed, settings } from './settings.mjs';

const { default: Ajv } = installed('ajv/dist/2020');

const schemaFile = join(settings.project, 'examples/job_sheet/sheet.schema.json');
const schema = JSON.parse(readFileSync(schemaFile, 'utf8'));
// strictRequired off: what is in a oneOf requires properties of the object around it.
const matches = new Ajv({ strict: true, strictRequired: false, allErrors: true }).compile(schema);

function schemaFaults(sheet) {
    if (matches(sheet)) return [];
    const inWords = ({ instancePath, message, params }) =>
        `${instancePath} ${message} ${JSON.stringify(params)}`;
    return matches.errors.map(inWords);
}

const nanometresPer = { mm: 1_000_000n, um: 1_000n, in: 25_400_000n };

/** "-0.0125" of a unit in nanometres, exactly; undefined if that is no whole number. */
function nanometres(text, unit) {
    const [, sign, whole, decimals = ''] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text) ?? [];
    if (whole === undefined) return undefined;
    const parts = BigInt(whole + decimals) * nanometresPer[unit];
    const scale = 10n ** BigInt(decimals.length);
    return parts % scale === 0n ? Number(parts / scale) * (sign ? -1 : 1) : undefined;
}

/** Lengths whose text is not their number. */
function lengthFaults(value, path = '') {
    if (value === null || typeof value !== 'object') return [];
    const faults = Object.entries(value).flatMap(([key, one]) => lengthFaults(one, `${path}/${key}`));
    for (const unit of Object.keys(nanometresPer))
        if ('nm' in value && unit in value && nanometres(value[unit], unit) !== value.nm)
            faults.push(`${path}: ${value[unit]} ${unit} is not ${value.nm} nm`);
    return faults;
}

const inWords = (faults) => `\n${faults.slice(0, 20).join('\n')}\n${faults.length} in all\n`;

for (const { name, json } of jobs)
    test(name, () => {
        const sheet = JSON.parse(readFileSync(json, 'utf8'));
        const faults = [...schemaFaults(sheet), ...lengthFaults(sheet)];
        assert.ok(faults.length === 0, inWords(faults));
    });

const demo = jobs.find(({ name }) => name === 'candle_doser');

test('faults are found', { skip: !demo }, () => {
    const after = (change) => {
        const sheet = JSON.parse(readFileSync(demo.json, 'utf8'));
        change(sheet);
        return schemaFaults(sheet).join('\n');
    };
    assert.match(
        after((s) => (s.colour = 'red')),
        /^ must NOT have additional properties .*colour/m,
    );
    const pair = (change) => after((s) => change(s.pairs[0]));
    assert.match(
        pair((p) => delete p.verdict),
        /^\/pairs\/0 must have required property 'verdict'/m,
    );
    assert.match(
        pair((p) => (p.verdict = 'fine')),
        /^\/pairs\/0\/verdict must be equal to one of/m,
    );
    assert.match(
        pair((p) => (p.parts[0].nominal.nm = '14')),
        /\/nominal\/nm must be integer/,
    );
    assert.match(
        pair((p) => (p.parts[0].nominal.nm = 0.5)),
        /\/nominal\/nm must be integer/,
    );
    assert.match(
        pair((p) => (p.pressing.cannot_tell = 'why')),
        /\/pressing must match exactly one/,
    );
});

test('lengths that are not alike are found', () => {
    assert.deepEqual(lengthFaults({ a: { nm: 14018000, mm: '14.018' } }), []);
    assert.deepEqual(lengthFaults({ a: { nm: 14018000, mm: '14.019' } }), [
        '/a: 14.019 mm is not 14018000 nm',
    ]);
    assert.deepEqual(lengthFaults({ a: { nm: -500, um: '0.5' } }), ['/a: 0.5 um is not -500 nm']);
    assert.deepEqual(lengthFaults([{ nm: 25400, in: '0.0010' }]), []);
    assert.deepEqual(lengthFaults([{ nm: 25401, in: '0.001' }]), ['/0: 0.001 in is not 25401 nm']);
});
