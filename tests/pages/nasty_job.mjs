// A job that nobody wrote for looks: what a page has to bear.

const words = [
    'Zylinderkopfhaubenbefestigungsschraubenunterlegscheibenaussendurchmesser',
    '<script>alert(1)</script>',
    '&amp; "quoted" & \'quoted\' <b>not bold</b>',
    'wrench \u{1F527}\u{1F468}\u200D\u{1F527} and \u{1F525}',
    '\u05E6\u05D9\u05E8 \u05D1\u05EA\u05D5\u05DA \u05EA\u05D5\u05EA\u05D1 14 H7',
    '\u0639\u0645\u0648\u062F \u0627\u0644\u0643\u0627\u0645\u0627\u062A \u0641\u064A',
    '\u30AB\u30E0\u8EF8\u3068\u8EF8\u53D7\u306E\u306F\u3081\u3042\u3044',
    '</style></title></article>--><!-- ]]>',
    'W'.repeat(120),
    'a_very_long_part_number/with-slashes/and-hyphens_0123456789_0123456789_0123456789',
    ' spaces   and\ttabs  ',
    'i',
];
const word = (i) => words[i % words.length];

const fits = [
    '14 H7/s6',
    '25 H7/g6',
    '1/4 in RC4',
    '3 F7/m6',
    '1 1/2 in FN2',
    '2500 H8/f7',
    '500 H7/p6',
    '10 H7/k6',
];
const wants = [
    'stays put',
    'slides',
    'turns',
    'no shake',
    'centred',
    'never seizes',
    'comes off',
    'never rubs',
];
const materials = ['steel C45', 'EN AW-6082 T6', 'brass CuZn39Pb3', 'stainless 304'];

const quoted = (text) => JSON.stringify(text); // a TOML string, but for characters above U+FFFF: as they are

/** pairs and groups: how many. */
export function nastyJob({ pairs = 60, groups = 80, states = 8 } = {}) {
    const lines = [
        '[job]',
        `title = ${quoted(words.slice(0, 5).join(' '))}`,
        `about = ${quoted(words.join('. '))}`,
        'sizes_at = "20 degC"',
        `cautions = [${words.map(quoted).join(', ')}]`,
        '[groups]',
    ];
    for (let g = 0; g < groups; ++g) lines.push(`g${g} = ${quoted(`group ${g} ${word(g)}`)}`);
    for (let s = 0; s < states; ++s) {
        lines.push('[[state]]', `id = ${quoted(`state ${s} ${word(s)}`)}`, `note = ${quoted(word(s + 3))}`);
        const at = (g) => `g${g} = "${5 + ((s * 7 + g * 3) % 80)} degC"`;
        lines.push(`temperatures = { ${Array.from({ length: groups }, (_, g) => at(g)).join(', ')} }`);
    }
    for (let p = 0; p < 2 * pairs; ++p) {
        lines.push('[[part]]', `id = "part ${p}"`, `name = ${quoted(`${p} ${word(p)}`)}`);
        lines.push(`material = ${quoted(materials[p % materials.length])}`, `group = "g${p % groups}"`);
    }
    for (let p = 0; p < pairs; ++p) {
        lines.push('[[pair]]', `id = ${quoted(`${p} ${p % 7 === 0 ? word(p) : ''}`.trim())}`);
        lines.push(`name = ${quoted(word(p))}`, `behaviour = ${quoted(word(p + 1))}`);
        lines.push(`hole = { part = "part ${2 * p}", outside = "4000 mm" }`);
        lines.push(`shaft = { part = "part ${2 * p + 1}" }`, 'land = "28 mm"');
        lines.push(`callout = "${fits[p % fits.length]}"`);
        lines.push(`wants = ["${wants[p % wants.length]}"]`, `instead = ["${fits[(p + 1) % 2]}"]`);
        lines.push(`cautions = [${quoted(word(p + 5))}]`);
    }
    return lines.join('\n') + '\n';
}
