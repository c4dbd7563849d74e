// The judge judged: sound.html has no fault; a page with one change has the fault that comes of it.

import assert from 'node:assert/strict';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { open, withBrowser } from './browser.mjs';
import { inWords, judgePage } from './layout.mjs';
import { settings } from './settings.mjs';

const pairs = [
    { id: 'A', name: 'pin in block' },
    { id: 'B', name: 'lever <on> stub' },
];
const sound = readFileSync(new URL('sound.html', import.meta.url), 'utf8');

/** finds: "view, check: " and a piece of the fault's words. */
// prettier-ignore
const broken = [
    ['a box wider than the telephone', 'article {', 'article { min-width: 400px;', 'phone, overflow: html: scrolls sideways'],
    ['a picture wider than the desk', 'max-width: 300px', 'width: 1500px', 'desktop, overflow: '],
    ['no width of the telephone', '<meta name="viewport" content="width=device-width, initial-scale=1">', '', 'phone, overflow: html: laid out 980 px'],
    ['a word that does not break', 'overflow-wrap: anywhere', 'white-space: nowrap', 'phone, cut text: #long: "a sentence'],
    ['a line that is cut', 'h2>A', 'h2 style="width: 60px; white-space: nowrap; overflow: hidden">A', 'desktop, cut text: #first h2: cuts'],
    ['a line that is shortened', 'h2>A', 'h2 style="width: 60px; white-space: nowrap; overflow: hidden; text-overflow: ellipsis">A', 'print, cut text: #first h2: cuts'],
    ['a box too low for its text', '<p>what', '<p style="height: 6px; overflow: hidden">what', 'phone, cut text: #first p: cuts'],
    ['a frame too low for its text', '<p>what', '<p style="height: 6px; border: 1px solid">what', 'phone, cut text: #first p: "what it must do" sticks out'],
    ['text left of the page', '<p>what', '<p style="margin-left: -40px">what', 'desktop, cut text: #first'],
    ['a table that no key can scroll', ' tabindex="0" role="group" aria-label="Steps"', '', 'phone, cut text: #first div.wide.steps: scrolls sideways'],
    ['a table that is cut on paper', '.wide { overflow: visible; } .steps { display: none; }', '.wide { width: 200px; }', 'print, cut text: #first div.wide.steps: cut on paper'],
    ['a text upon another', '<h3>Sizes', '<h3 style="margin: -30px 0 0">Sizes', 'phone, overlap: #first'],
    ['a label upon another', 'x="120" y="70">', 'x="60" y="44">', 'print, overlap: #first svg text.halo: "14.000" lies upon "14.018"'],
    ['a label outside the picture', 'x="120" y="70">', 'x="170" y="70">', 'desktop, cut text: #first svg: cuts "14.000"'],
    ['a shape upon a label', '</svg>', '<rect x="10" y="20" width="80" height="40" fill="#fff"/></svg>', 'phone, contrast: #first svg text: "14.018" is covered by'],
    ['small letters', '<p>what', '<p style="font-size: 8px">what', 'phone, small text: #first p: "what it must do" is 8.0 px'],
    ['small letters in a picture', 'max-width: 300px', 'max-width: 90px', 'desktop, small text: #first svg text: "14.018" is 7.2 px'],
    ['small letters on paper', '.steps { display: none; }', '.steps { display: none; } p { font-size: 5pt; }', 'print, small text: #first p: "what it must do" is 5.0 pt'],
    ['grey letters', 'color: #222', 'color: #888', 'phone, contrast: #first h2: "A pin in block" has a contrast of 3.54'],
    ['grey letters, to axe', 'color: #222', 'color: #888', 'phone, axe: color-contrast'],
    ['faint letters', '<p>what', '<p style="opacity: .5">what', 'desktop, contrast: #first p'],
    ['a light badge', '#1d6332', '#aaddaa', 'phone, contrast: #first p span.badge: "good" has a contrast of'],
    ['letters on a picture', '<p>what', '<p style="background: linear-gradient(#fff, #eee)">what', "phone, contrast: #first p: \"what it must do\" lies on a picture"],
    ['a label on a dark shape', '#cfe2f3', '#345', 'print, contrast: #first svg text: "14.018" has a contrast of'],
    ['a label on a hatched shape', 'class="halo" ', '', 'phone, contrast: #first svg text: "14.000" has a contrast of'],
    ['a halo too thin', 'stroke-width: 3px', 'stroke-width: .5px', 'phone, contrast: #first svg text.halo: "14.000" has a contrast of'],
    ['a line through a label', '<text x="20"', '<line x1="0" y1="35" x2="200" y2="35" stroke="#222" stroke-width="2"/><text x="20"', 'desktop, contrast: #first svg text: "14.018"'],
    ['a pair without a heading', '<h2>B lever &lt;on&gt; stub</h2>', '', 'all, missing pair: pair "B"'],
    ['a name that is cut short', 'lever &lt;on&gt; stub', 'lever', 'all, missing pair: pair "B"'],
    ['pairs out of order', 'h2>A pin in block', 'h2>B lever &lt;on&gt; stub', 'all, missing pair: pair "A"'],
    ['a name that is markup', 'lever &lt;on&gt; stub', 'lever <on> stub', 'all, missing pair: pair "B"'],
    ['a jump in the headings', 'h3>Sizes</h3', 'h4>Sizes</h4', 'all, structure: #first h4: jumps from h2 to h4'],
    ['two first headings', '<h2>B', '<h1>once more</h1><h2>B', 'all, structure: h1: there are 2, not 1'],
    ['no header cells', /<(\/?)th( scope="...")?>/g, '<$1td>', 'all, structure: #first div.wide.steps table: has no header cells'],
    ['a header cell of nothing', '<th scope="row">', '<th>', 'all, structure: table tbody tr th: "1" has no scope'],
    ['no caption', '<caption>Steps</caption>', '', 'all, structure: #first div.wide.steps table: has no caption'],
    ['no language', ' lang="en"', '', 'all, structure: html[lang]: there are 0'],
    ['no title', '<title>A page without a fault</title>', '', 'all, structure: head > title: there are 0'],
    ['no main part', /<\/?main>/g, '', 'all, structure: main: there are 0'],
    ['a link to nowhere', '#first"', '#last"', 'all, structure: main nav a: leads to #last'],
    ['a link out', 'href="#first"', 'href="https://example.org/"', 'all, structure: main nav a: leads out of the page'],
    ['an id twice', '<article>', '<article id="first">', 'all, structure: #first: is there more than once'],
    ['a picture without words', 'aria-label="Intervals of size"', '', 'all, structure: #first svg: a picture without'],
    ['a script', '</main>', '</main><script>document.title = "run"</script>', 'all, foreign: script: a script has no place here'],
    ['a handler', '<p>what', '<p onclick="alert(1)">what', 'all, foreign: #first p: has a handler onclick'],
    ['a picture from a file', '</main>', '</main><img src="other.png" alt="">', 'all, foreign: asks for file:'],
    ['a style from a file', 'body {', 'body { background-image: url(other.png);', 'all, foreign: style: refers to a file'],
    ['a page of another size', 'size: A4', 'size: A5', 'print, paper: page 1 of'],
    ['no margin on paper', 'margin: 12mm', 'margin: 0', 'print, paper: page 1 of 1: "Two" stands at'],
    ['a text left off the paper', '<p>what', '<p style="position: absolute; left: -999px">what', 'print, paper: all pages: text of the page is not'],
];

/** The page with one change in it; a change that does nothing would prove nothing. */
function changed(from, to) {
    const page = sound.replace(from, to);
    assert.notEqual(page, sound, `sound.html has no ${from}`);
    return page;
}

await withBrowser(async (browser) => {
    const judge = async (html, only) => {
        const file = join(settings.work, 'broken.html');
        writeFileSync(file, html);
        const page = await open(browser, file);
        const faults = await judgePage(page, pairs, only);
        await page.close();
        return inWords('page', faults);
    };
    await test('a sound page', async () => assert.equal(await judge(sound), ''));
    for (const [name, from, to, finds] of broken)
        await test(name, async () => {
            const [, view, check] = /^(\w+), ([\w ]+):/.exec(finds);
            const found = await judge(changed(from, to), { view, check });
            assert.ok(found.includes(`page, ${finds}`), `no "${finds}" in:\n${found}\n`);
        });
});
