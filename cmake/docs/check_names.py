#!/usr/bin/env python3
"""check_names.py PROJECT DOXYGEN WORK

Every public name of the headers says what it is. Doxygen finds those that don't; a member whose name means the same
everywhere may leave that to glossary.txt, and three namespaces explain themselves: a source by its document and
place, a material by its figures, a rule of the literals by its name, which is the compiler's message.
"""
import re
import subprocess
import sys
from fnmatch import fnmatch
from pathlib import Path

project, doxygen, work = Path(sys.argv[1]), sys.argv[2], Path(sys.argv[3])
work.mkdir(parents=True, exist_ok=True)
warnings = work / "names.txt"
warnings.unlink(missing_ok=True)
settings = f"""
INPUT = "{project}/include/fitwright"
FILE_PATTERNS = *.hpp
RECURSIVE = YES
EXCLUDE_SYMBOLS = fitwright::detail fitwright::detail::* detail
EXTRACT_ALL = NO
EXTRACT_STATIC = YES
BUILTIN_STL_SUPPORT = YES
JAVADOC_AUTOBRIEF = YES
GENERATE_LATEX = NO
GENERATE_HTML = NO
GENERATE_XML = YES
XML_PROGRAMLISTING = NO
OUTPUT_DIRECTORY = "{work}"
QUIET = YES
WARN_IF_UNDOCUMENTED = YES
WARN_LOGFILE = "{warnings}"
"""
subprocess.run([doxygen, "-"], input=settings, text=True, check=True)

glossary = {line.split()[0] for line in (project / "cmake/docs/glossary.txt").read_text(encoding="utf-8").splitlines()
            if line and not line.startswith("#")}
explain_themselves = re.compile(r"namespace fitwright::(sources|materials|callout_rule)\b")
asked = re.compile(r"^(?P<place>.*?:\d+): warning: (?:Member (?P<member>operator.*?|[^ (]+)[ (]|Compound (?P<compound>\S+))"
                   r".*is not documented")
missing = []
for line in warnings.read_text(encoding="utf-8").splitlines():
    found = asked.match(line)
    if not found or "::detail" in line or explain_themselves.search(line):
        continue
    member = found["member"]
    of = re.search(r"of (?:class|struct) (?:\w+::)*(\w+)", line)
    is_known_member = of and any(fnmatch(member or "", name) for name in glossary)
    if member and (member.startswith("operator") or is_known_member or (of and of[1] == member)):
        continue
    missing.append(line.replace(str(project) + "/", "").replace("warning: ", ""))
print("\n".join(missing))
names = len(re.findall(r"<memberdef ", "".join(f.read_text(encoding="utf-8") for f in (work / "xml").glob("*fitwright*.xml"))))
print(f"{names} public names looked at, {len(missing)} undocumented")
if names < 500:
    sys.exit("check_names.py: so few names can't be all of them")
sys.exit(1 if missing else 0)
