// The jobs whose pages are judged.

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { nastyJob } from './nasty_job.mjs';
import { isAskedFor, settings } from './settings.mjs';

const { project, work } = settings;

/** exit: what job_sheet ends with; 1 is a job with something wrong in it. */
const all = [
    { name: 'candle_doser', job: join(project, 'examples/jobs/candle_doser.toml'), exit: 0 },
    { name: 'errors', job: join(project, 'tests/programs/jobs/errors.toml'), exit: 1 },
    { name: 'escapes', job: join(project, 'tests/programs/jobs/escapes.toml'), exit: 0 },
    // Files of another program: nothing in them is a job, and the page says so.
    { name: 'bench_machine', job: join(project, 'examples/jobs/bench_machine.toml'), exit: 1 },
    { name: 'old_inch_machine', job: join(project, 'examples/jobs/old_inch_machine.toml'), exit: 1 },
    { name: 'nasty', job: join(work, 'nasty.toml'), exit: 0, make: nastyJob },
];

export const jobs = all
    .filter((one) => isAskedFor(one.name))
    .map((one) => ({
        ...one,
        html: join(work, `${one.name}.html`),
        json: join(work, `${one.name}.json`),
    }));

export function writeMadeJobs() {
    for (const one of jobs) if (one.make) writeFileSync(one.job, one.make());
}
