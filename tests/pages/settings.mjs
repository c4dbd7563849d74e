// Where everything is, and what came from the npm registry.
// Every script here is run as: node SCRIPT.mjs SETTINGS.json [NAME OF A PAGE]...

import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

const [, script, file, ...names] = process.argv;
if (!file) {
    console.error(`usage: node ${script} BUILD/tests/pages/settings.json [NAME OF A PAGE]...`);
    process.exit(2);
}

/** job_sheet, project, work, chromium, pdftotext: programs and folders. */
export const settings = JSON.parse(readFileSync(file, 'utf8'));

/** The pages asked for; none are all. */
export const isAskedFor = (name) => names.length === 0 || names.includes(name);

/** A package out of the build tree: nothing is installed beside the sources. Without the registry, no test. */
export const installed = createRequire(join(settings.work, 'package.json'));
const skipped = 77; // as tests/pages/CMakeLists.txt has it
if (!script.endsWith('write_pages.mjs') && !existsSync(join(settings.work, 'node_modules', '.from'))) {
    console.log('skipped: the packages of package-lock.json are not there; pages.setup says why');
    process.exit(skipped);
}
