// Runs in the page: is it marked up for who listens to it, complete in itself, and free of what a job's names
// might have smuggled in?

judge.findBadStructure = () => {
    const faults = [];
    const all = (selector) => [...document.querySelectorAll(selector)];
    const count = (selector, wanted) => {
        const n = all(selector).length;
        if (n !== wanted) faults.push(`${selector}: there are ${n}, not ${wanted}`);
    };
    count('html[lang]', 1);
    count('head > title', 1);
    count('main', 1);
    count('h1', 1);
    if (!document.title.trim()) faults.push('title: is empty');

    let level = 0;
    for (const heading of all('h1, h2, h3, h4, h5, h6')) {
        const next = Number(heading.localName[1]);
        if (next > level + 1) faults.push(`${judge.where(heading)}: jumps from h${level} to h${next}`);
        if (!heading.textContent.trim()) faults.push(`${judge.where(heading)}: is empty`);
        level = next;
    }

    for (const table of all('table')) {
        if (!table.caption?.textContent.trim()) faults.push(`${judge.where(table)}: has no caption`);
        if (!table.querySelector('th')) faults.push(`${judge.where(table)}: has no header cells`);
    }
    for (const th of all('th'))
        if (!/^(row|col)(group)?$/.test(th.getAttribute('scope') ?? ''))
            faults.push(`${judge.where(th)}: ${judge.quoted(th.textContent)} has no scope`);

    const ids = all('[id]').map((e) => e.id);
    const twice = ids.filter((one, i) => ids.indexOf(one) !== i);
    for (const id of new Set(twice)) faults.push(`#${id}: is there more than once`);
    for (const a of all('a[href]')) {
        const target = a.getAttribute('href');
        if (!target.startsWith('#')) faults.push(`${judge.where(a)}: leads out of the page, to ${target}`);
        else if (!document.getElementById(decodeURIComponent(target.slice(1))))
            faults.push(`${judge.where(a)}: leads to ${target}, which isn't there`);
    }

    for (const svg of all('svg')) {
        const isNamed =
            svg.getAttribute('aria-label')?.trim() ||
            svg.hasAttribute('aria-labelledby') ||
            svg.querySelector(':scope > title');
        if (svg.parentElement.closest('svg') || svg.getAttribute('aria-hidden') === 'true') continue;
        if (svg.getAttribute('role') !== 'img' || !isNamed)
            faults.push(`${judge.where(svg)}: a picture without role="img" and a name`);
    }
    return faults;
};

judge.findForeign = () => {
    const faults = [];
    const fileInStyle = /@import|url\((?!["']?#)/i;
    const never =
        'script, img, iframe, object, embed, link, base, audio, video, foreignObject, meta[http-equiv]';
    for (const e of document.querySelectorAll(never))
        faults.push(`${judge.where(e)}: a ${e.localName} has no place here`);
    for (const e of document.querySelectorAll('*'))
        for (const { name, value } of e.attributes) {
            if (/^on/i.test(name)) faults.push(`${judge.where(e)}: has a handler ${name}`);
            const isLink = /^(src|srcset|data|action|poster|xlink:href|href)$/i.test(name);
            if (isLink && !value.startsWith('#') && e.localName !== 'a')
                faults.push(`${judge.where(e)}: ${name} refers to ${value}`);
            if (name === 'style' && fileInStyle.test(value))
                faults.push(`${judge.where(e)}: its style refers to a file`);
        }
    for (const style of document.querySelectorAll('style'))
        if (fileInStyle.test(style.textContent)) faults.push('style: refers to a file');
    return faults;
};

/** pairs: [{id, name}] of the JSON. Each has a heading of its own with both in it, in the job's order. */
judge.findMissingPairs = (pairs) => {
    const control = /[\u0000-\u0008\u000B-\u001F\u007F]/g; // shown as a mark
    const plain = (text) => text.replace(control, '\uFFFD').replace(/\s+/g, ' ').trim();
    const headings = [...document.querySelectorAll('h1, h2, h3, h4')].map((h) => plain(h.textContent));
    const faults = [];
    let from = 0;
    for (const { id, name } of pairs) {
        const isIts = (h) => h.includes(plain(id)) && h.includes(plain(name));
        const at = headings.findIndex((h, i) => i >= from && isIts(h));
        if (at < 0)
            faults.push(`pair ${judge.quoted(id)}, ${judge.quoted(name)}: no heading after the pair before`);
        else from = at + 1;
    }
    return faults;
};
