#!/usr/bin/env python3
"""Checks that sentences of core can be translated, and that the German catalogue has all of them.

In the folders and files of CONVERTED every sentence is the first argument of `wording::say`, `wording::noted` or
`wording::sayCount` (there the first two), as a string literal: `lupdate` finds no other. In all of core, those texts
are those of resources/translations/core_de.ts, no more and no fewer.

Arguments: the source folder, and Qt's lupdate, whose answer is compared with the catalogue, too; without it, only what
this script reads. Prints one line for each place, with the reason, and exits with 1 if there is one.
"""
import html
import re
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from check_language import TOKEN, unescaped

CONVERTED = ("core/checks/", "core/remedy/", "core/solve/", "core/sheet/", "core/project/titles.cpp",
             "core/units/quantities.cpp", "core/pictures/uploads.cpp", "core/emit/findings.cpp",
             "core/emit/key_figures.cpp", "core/start/new_row.cpp", "core/start/pieces.cpp",
             "core/start/pasted_text.cpp", "core/start/page_cards.cpp", "core/start/page_gaps.cpp",
             "core/start/page_piece.cpp", "core/start/page_project.cpp", "core/start/page_row.cpp",
             "core/start/page_text.cpp", "core/markup/adopt.cpp", "core/markup/page_boxes.cpp",
             "core/markup/page_flex.cpp", "core/markup/page_table.cpp", "core/markup/theme_page.cpp",
             "core/intake/size_reading.cpp")

# Files and literals of those folders that stay as they are, with the reason.
EXCEPTIONS = {
    "core/checks/audience.cpp": "messages about the lines of a file",
    "core/solve/notation.cpp": "messages about arguments of the command line",
    "core/solve/notation_reader.cpp": "messages about arguments of the command line",
    "core/solve/notation_reader.h": "messages about arguments of the command line",
    "core/sheet/style.cpp": "CSS",
}
# The notation of a wish is part of the command line: its help and its messages.
KEY_OF_WISH = re.compile(r"constexpr WishKey \w+\{.*?\};\n", re.DOTALL)
# Messages about wrong input have a place and a fix; they stay English.
MESSAGES = {"core/intake/size_reading.cpp": re.compile(r"(?:wrong|problems_\.push_back)\(\s*\{.*?\}\);", re.DOTALL)}
# What is read, not shown: roles in pasted text, a rule of ICU, names of variants; and CSS and HTML.
LITERALS = re.compile(r"alt(?:ernative)? text|button (?:text|label)|Latin-ASCII; Lower| columns?| class=|position: |span ")
# Names of standards, which are the same in every language.
STANDARD = re.compile(r"(?:WCAG|CSS|Media Queries|UAX) [\w .,§#&;()-]*")
# Tags and keys of PDF, families of fonts, and attributes of HTML.
SHEET = re.compile(r"Lbl|LBody|Table|Column|Row|Document|Figure|Tenter|Lato|Noto Sans|DejaVu Sans|/Alt |\"[^\"]*|"
                   r"\n   /Root | 0 R\n   /(?:Info|Prev) | [a-z-]+=\".*")
# Texts that `say` takes from a table, each of which `noted` lists.
FROM_TABLE = {"checks::caution", "text.description", "meaning", "what", "advice", "advice_", "subject_",
              "known->second", "known->shorten", "phrase"}

CATALOGUE = "resources/translations/core_de.ts"


def is_prose(text, name):
    if name.startswith("core/sheet/") and SHEET.fullmatch(text):
        return False
    if "<" in text or STANDARD.fullmatch(text) or LITERALS.fullmatch(text):
        return False
    words = re.search(r"[A-Za-z]{2,}[,;:.]? +[A-Za-z“]", text)
    fragment = re.search(r"^[,;:]? +[a-z]{2,}|[a-z]{2,}[,;:]? +$|^[A-Z][a-z]+\.?$", text)
    return bool(words or fragment)


class Reader:
    """The string literals of a source file: those that are texts for people, and those that are not."""

    def __init__(self, source):
        self.said = []  # (line, list of texts)
        self.bare = []  # (line, text)
        self.odd = []  # (line, first argument that is no literal)
        tokens = []
        line = 1
        for match in TOKEN.finditer(source):
            kind = match.lastgroup if match.lastgroup not in ("delimiter", "body", "content") else None
            kind = kind or ("raw" if match.group("raw") else "text")
            if kind not in ("space", "line", "block", "include"):
                tokens.append((kind, match.group(0), line))
            line += match.group(0).count("\n")
        self.tokens = tokens
        self.read()

    def read(self):
        calls = []  # for each open bracket: [name of the call or "", number of the argument]
        at = 0
        while at < len(self.tokens):
            kind, piece, line = self.tokens[at]
            if kind == "text":
                end = at
                text = ""
                while end < len(self.tokens) and self.tokens[end][0] == "text":
                    text += unescaped(re.match(r'\w*"(.*)"$', self.tokens[end][1], re.DOTALL).group(1))
                    end += 1
                name, argument = calls[-1] if calls else ("", 0)
                # A part of a sum, or of a choice, is not what lupdate reads.
                alone = self.tokens[at - 1][1] in ("(", ",") and self.tokens[end][1] in (",", ")")
                if alone and ((name in ("say", "noted") and argument == 0) or (name == "sayCount" and argument < 2)):
                    if argument == 0:
                        self.said.append((line, [text]))
                    else:
                        self.said[-1][1].append(text)
                else:
                    self.bare.append((line, text))
                at = end
                continue
            if piece in ("(", "{", "["):
                isCall = piece == "(" and at > 3 and [token[1] for token in self.tokens[at - 4:at - 1]] == ["wording", ":", ":"]
                name = self.tokens[at - 1][1] if isCall else ""
                calls.append([name, 0])
                if name in ("say", "noted", "sayCount") and self.tokens[at + 1][0] != "text":
                    first = "".join(token[1] for token in self.tokens[at + 1:at + 8])
                    self.odd.append((line, re.split(r"[,)]", first)[0]))
            elif piece in (")", "}", "]"):
                if calls:
                    calls.pop()
            elif piece == "," and calls:
                calls[-1][1] += 1
            at += 1


def catalogue_of(path):
    """By text, the text of other counts or None."""
    texts = {}
    for message in re.findall(r"<message.*?</message>", path.read_text(encoding="utf-8"), re.DOTALL):
        source = html.unescape(re.search(r"<source>(.*?)</source>", message, re.DOTALL).group(1))
        comment = re.search(r"<comment>(.*?)</comment>", message, re.DOTALL)
        texts[source] = html.unescape(comment.group(1)) if comment else None
    return texts


def updated(root, lupdate):
    """The catalogue as lupdate writes it from the sources."""
    with tempfile.TemporaryDirectory() as there:
        copy = Path(shutil.copy(root / CATALOGUE, there))
        subprocess.run(["bash", root / "resources/translations/update_core.sh", root, lupdate, there], check=True)
        return copy.read_text(encoding="utf-8")


def main(folder, lupdate=None):
    root = Path(folder)
    faults = []
    texts = {}
    sources = [path for path in sorted((root / "core").rglob("*.*")) if path.suffix in (".cpp", ".h")]
    for path in sources:
        name = path.relative_to(root).as_posix()
        if name.startswith("core/wording/"):
            continue
        source = path.read_text(encoding="utf-8")
        for pattern in (KEY_OF_WISH, MESSAGES.get(name)):
            if pattern and name.startswith(CONVERTED):
                source = pattern.sub(lambda match: "\n" * match.group(0).count("\n"), source)
        reader = Reader(source)
        for line, said in reader.said:
            other = said[1] if len(said) > 1 else None
            if texts.setdefault(said[0], other) != other:
                faults.append(f"{name}:{line}: “{said[0]}” has other forms elsewhere")
        for line, first in reader.odd:
            if first not in FROM_TABLE:
                faults.append(f"{name}:{line}: {first} is no string literal, so lupdate does not find the text")
        if name.startswith(CONVERTED) and name not in EXCEPTIONS:
            faults += [f"{name}:{line}: “{text}” is not in wording::say" for line, text in reader.bare if is_prose(text, name)]
    catalogue = catalogue_of(root / CATALOGUE)
    for text in sorted(texts.keys() - catalogue.keys()):
        faults.append(f"{CATALOGUE}: “{text}” is missing")
    for text in sorted(catalogue.keys() - texts.keys()):
        faults.append(f"{CATALOGUE}: “{text}” is in no source file")
    for text in sorted(texts.keys() & catalogue.keys()):
        if texts[text] != catalogue[text]:
            faults.append(f"{CATALOGUE}: “{text}” has the other form “{catalogue[text]}”, not “{texts[text]}”")
    if lupdate and updated(root, lupdate) != (root / CATALOGUE).read_text(encoding="utf-8"):
        faults.append(f"{CATALOGUE}: lupdate changes it; run resources/translations/update_core.sh")
    for fault in faults:
        print(fault)
    if not texts:
        sys.exit("no texts found")
    if faults:
        sys.exit(f"{len(faults)} places to change")
    print(f"{len(texts)} texts can be translated")


if __name__ == "__main__":
    if len(sys.argv) not in (2, 3):
        sys.exit("usage: check_wording.py SOURCE-FOLDER [LUPDATE]")
    main(*sys.argv[1:])
