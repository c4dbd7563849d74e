// Runs job_sheet for every job; the tests judge what it writes.

import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { jobs, writeMadeJobs } from './jobs.mjs';
import { settings } from './settings.mjs';

writeMadeJobs();
for (const { name, job, exit, html, json } of jobs) {
    const run = spawnSync(settings.job_sheet, [job, '--html', html, '--json', json], {
        encoding: 'utf8',
        maxBuffer: 1 << 28,
    });
    assert.equal(run.status, exit, `${name}: job_sheet ended with ${run.status}:\n${run.stderr}`);
}
