#!/usr/bin/env python3
"""make_pages.py PROJECT OUT [PICTURES]

The hand-made part of the reference: a main page, a page for each header that a user includes, the gallery, the
limits of validity and the sources. All of it is taken from where it stands already: README.md, the comments and
`sources::` constants of the headers, examples/scripts and their output. What cannot be placed is an error, so
that nothing is left out unseen.
"""
import re
import sys
from pathlib import Path

project, out = Path(sys.argv[1]), Path(sys.argv[2])
pictures = Path(sys.argv[3]) if len(sys.argv) > 3 else None
include = project / "include" / "fitwright"
scripts = sorted((project / "examples" / "scripts").glob("*.cpp"))
readme = (project / "README.md").read_text(encoding="utf-8")
faults = []

# Which header's page has which row of the README's table of validity.
VALIDITY = {
    "iso286": ["standard tolerances", "fundamental deviations, all 28 letters", "preferred fits, hole basis",
               "preferred fits, shaft basis; preferred classes"],
    "inch": ["inch fits RC, LC, LT, LN, FN"],
    "general": ["general tolerances, clearance holes, tapping drills"],
    "tool": ["reamers", "the hole a drill leaves", "stock for reaming, boring, lapping"],
    "gauge": ["plug and ring gauges", "may a reading be accepted"],
    "material": ["materials"],
    "thermal": ["growth, fits at temperature"],
    "press": ["press fits"],
    "running": ["lubricants", "oil film", "leakage"],
    "stack": ["chains of sizes, chance"],
    "chance": ["chains of sizes, chance"],
}


def section(title):
    """The text of a section of the README."""
    found = re.search(rf"^## {re.escape(title)}\n(.*?)(?=^## |\Z)", readme, re.M | re.S)
    if not found:
        sys.exit(f"make_pages.py: README.md has no section '{title}'")
    return found.group(1)


def table_rows(text):
    """The cells of a Markdown table, the heads first."""
    lines = [line for line in text.splitlines() if line.startswith("|")]
    cells = [[cell.strip() for cell in re.split(r"(?<!\\)\|", line)[1:-1]] for line in lines]
    return [row for row in cells if not set("".join(row)) <= set("- :")]


def table(rows):
    head, *rest = rows
    lines = ["| " + " | ".join(head) + " |", "| " + " | ".join("---" for _ in head) + " |"]
    return "\n".join(lines + ["| " + " | ".join(row) + " |" for row in rest]) + "\n"


def files_of(header):
    """The header and the files of its room."""
    room = include / header
    return [include / f"{header}.hpp"] + (sorted(room.glob("*.hpp")) if room.is_dir() else [])


def purpose(path):
    """The first comment of a header that stands by itself."""
    for line in path.read_text(encoding="utf-8").splitlines():
        if line.startswith("// ") and not line.startswith("// clang-format"):
            return line[3:]
    return ""


def sources_of(path):
    """What the `sources::` constants of a header say: document, place, how surely."""
    text = path.read_text(encoding="utf-8")
    for name, body in re.findall(r"^inline constexpr source (\w+)\{(.*?)\};", text, re.M | re.S):
        strings, depth, parts = re.findall(r'"((?:[^"\\]|\\.)*)"|(,)', body), 0, [""]
        for word, comma in strings:
            if comma:
                parts.append("")
            else:
                parts[-1] += word
        sure = re.search(r"confidence::(\w+)", body)
        if not sure:
            faults.append(f"{path.name}: {name} does not say how surely")
            continue
        yield parts[0], parts[1] if len(parts) > 1 else "", sure.group(1)


CONFIDENCE = {
    "published": "read in print, or follows exactly from values that were",
    "practice": "common practice, no source",
    "memory": "from memory of the document",
    "uncertain": "uncertain: check before you rely on it",
    "stated": "as stated by the user",
}

headers = sorted(p.stem for p in include.glob("*.hpp"))
pick = table_rows(section("Pick a header"))
valid = table_rows(section("How far it goes, and how surely"))
placed = {what for rows in VALIDITY.values() for what in rows}
faults += [f"README.md: no header's page has '{row[0]}' of the table of validity" for row in valid[1:]
           if row[0] not in placed]
faults += [f"make_pages.py: the README's table of validity has no '{what}'"
           for what in placed - {row[0] for row in valid}]


def calls_in(cell):
    """The function that each call of a cell is of."""
    return set(re.findall(r"`\*?([a-z_][a-z0-9_]*)(?=[({])", cell))


def picks_of(header):
    return [row for row in pick[1:] if f"`{header}.hpp`" in row[1] or f"`{header}/" in row[1]]


def scripts_of(header, names):
    """Scripts that include the header by its name, or call what the README picks it for."""
    for script in scripts:
        text = script.read_text(encoding="utf-8")
        by_name = f"<fitwright/{header}.hpp>" in text and header not in ("fitwright", "io")
        if by_name or any(re.search(rf"\b{name}[({{<]", text) for name in names):
            yield script, text


def page_of(header):
    rows = picks_of(header)
    text = [f"# {header}.hpp {{#header_{header}}}\n"]
    about = purpose(include / f"{header}.hpp")
    text.append((about + "\n\n") if about else "")
    text.append(f"`#include <fitwright/{header}.hpp>`\n\n")
    if rows:
        text.append("## What it is for\n\n" + table([["you want", "call"]] + [[r[0], r[2]] for r in rows]) + "\n")
    inside = [p for p in files_of(header)[1:]]
    if inside:
        text.append("## What it includes\n\n" + ", ".join(f"`{header}/{p.name}`" for p in inside) + "\n\n")
    names = set().union(*(calls_in(r[2]) for r in rows)) if rows else set()
    common = {"fit", "limits", "text", "steel"}
    for script, code in scripts_of(header, names - common):
        printed = script.with_suffix(".out")
        text.append(f"## {script.stem.replace('_', ' ').capitalize()}\n\n```cpp\n{code}```\n\n")
        if printed.exists() and not printed.read_text(encoding="utf-8").startswith("<svg"):
            text.append(f"prints\n\n```\n{printed.read_text(encoding='utf-8')}```\n\n")
    if header in VALIDITY:
        own = [row for row in valid[1:] if row[0] in VALIDITY[header]]
        text.append("## How far it goes, and how surely\n\n" + table([valid[0]] + own) + "\n")
    known = [[d, p, CONFIDENCE[s]] for f in files_of(header) for d, p, s in sources_of(f)]
    if known:
        text.append("## Sources\n\n" + table([["document", "place", "how sure"]] + known) + "\n")
    return "".join(text)


def mainpage():
    links = [[f"\\subpage header_{h} \"{h}.hpp\"", "; ".join(row[0] for row in picks_of(h)[:3]) or
              purpose(include / f"{h}.hpp") or "what the others stand on"] for h in headers]
    rooms = re.search(r"^```text\n(.*?)```", (project / "DEVELOPERS.md").read_text(encoding="utf-8"), re.M | re.S)
    return "".join([
        "# fitwright\n\n", readme.split("\n\n", 2)[1], "\n\n",
        "- \\subpage gallery\n- \\subpage validity\n- \\subpage sources\n- \\subpage glossary\n\n",
        "## Headers\n\n", table([["header", "for"]] + links), "\n",
        "## Rooms\n\n```\n", rooms.group(1) if rooms else "", "```\n\n",
        "## Cautions\n", section("Cautions"), "\n## When it refuses\n", section("When it refuses"),
    ])


CAPTIONS = {
    "slide": "The tolerance intervals of a fit, with the size to aim at and a reading",
    "slide_when_warm": "The same, with the ghosts of a warm state",
    "rod_that_leads": "A measured rod, and the bore for it",
    "press_fit": "An interference fit",
    "far_apart": "A gap cut short",
    "clearance_when_warm": "Clearance against temperature, and state by state",
    "how_often": "How often which clearance comes out",
    "hole_plan": "A hole plan as a ladder of sizes",
    "liner": "Pressure and closing-in over the interference",
}


def gallery():
    text = ["# Gallery {#gallery}\n\nAll kinds of pictures that `picture.hpp` draws; made by "
            "`examples/pictures/gallery.cpp`.\n\n"]
    for svg in sorted(pictures.glob("*.svg")) if pictures else []:
        if svg.stem not in CAPTIONS:
            faults.append(f"make_pages.py: {svg.name} of the gallery has no caption")
            continue
        text.append(f'<div class="fit-picture"><img src="{svg.name}" alt="{CAPTIONS[svg.stem]}">\n'
                    f"{CAPTIONS[svg.stem]}</div>\n")
    return "".join(text)


def validity():
    return "# How far it goes, and how surely {#validity}\n" + section("How far it goes, and how surely")


def sources():
    rows = [["header", "document", "place", "how sure"]]
    for path in sorted(include.rglob("*.hpp")):
        rows += [[f"`{path.relative_to(include)}`", d, p, CONFIDENCE[s]] for d, p, s in sources_of(path)]
    return ("# Sources {#sources}\n\nEvery result says which of these it rests on. Materials name their own: "
            "see `material/materials.hpp`.\n\n" + table(rows))


def glossary():
    lines = (project / "cmake/docs/glossary.txt").read_text(encoding="utf-8").splitlines()
    rows = [line.split(None, 1) for line in lines if line and not line.startswith("#")]
    return "# Names that mean the same everywhere {#glossary}\n\n" + table(
        [["member", "is"]] + [[f"`{name}`", words] for name, words in rows])


on_a_page = {s for h in headers for s, _ in scripts_of(
    h, set().union(set(), *(calls_in(r[2]) for r in picks_of(h))) - {"fit", "limits", "text", "steel"})}
faults += [f"make_pages.py: {s.name} is on no header's page" for s in scripts if s not in on_a_page]

pages = out / "pages"
pages.mkdir(parents=True, exist_ok=True)
written = {"mainpage": mainpage(), "gallery": gallery(), "validity": validity(), "sources": sources(),
           "glossary": glossary()}
written.update({f"header_{h}": page_of(h) for h in headers})
for name, text in written.items():
    (pages / f"{name}.md").write_text(text, encoding="utf-8")
if faults:
    sys.exit("\n".join(faults))
