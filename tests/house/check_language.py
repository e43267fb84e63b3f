#!/usr/bin/env python3
"""Finds words and forms that the project does not use, in texts that people read.

Texts are: string literals of core and app; `///` comments of core and app; every comment of their headers; the
prose of README.md, DEVELOPERS.md and the metainfo file; descriptions in the project schema. Code in backticks, CSS
and markup inside strings, and identifiers are not checked.

Argument: the source folder. Prints one line for each place, with the reason, and exits with 1 if there is one.
"""
import re
import sys
from pathlib import Path
from typing import NamedTuple


class Rule(NamedTuple):
    pattern: str  # regular expression; upper and lower case are the same unless it says (?-i:…)
    reason: str
    wrong: str  # an example that the pattern matches
    right: str  # the same in the project's words; no pattern matches it


RULES = [
    Rule(r"\b(is|are|was|were|be|been|being) told\b", "say who shows or reports it",
         "Which wishes limit a size is told on standard error.", "Standard error lists the wishes that limit a size."),
    Rule(r"\btelling widths?\b|\bwidths that tell\b", "write key widths", "thumbnails at telling widths",
         "thumbnails at key widths"),
    Rule(r"\btell(s|ing)?\b|\btold\b", "write show, report, list or say which",
         "The check tells them once.", "The check reports each of them once."),
    Rule(r"\bmend(s|ed|ing)?\b", "write fix", "A shorter heading mends it.", "A shorter heading fixes it."),
    Rule(r"\b(break|breaks|broken|breaking|wrap|wraps|wrapped|differ|differs|is|are|be)( it| them| this| there| the line)? otherwise\b",
         "write differently", "Another browser may wrap it otherwise.", "Another browser may wrap it differently."),
    Rule(r"(?-i:\bWhose\b)", "write Which, with a noun", "Whose rules for line breaks", "Which line-breaking rules"),
    Rule(r"\b(may|can|could|to) be had\b", "write available, or say who can get it",
         "The font is not to be had here.", "The font is not available here."),
    Rule(r"\bat (its|their) (smallest|shortest|lowest|largest|widest|narrowest|tightest|longest|least|worst)\b",
         "write shortest, smallest, lowest or worst", "The title at its shortest has 12 characters.",
         "The shortest title has 12 characters."),
    Rule(r"\bas little as\b", "write at least, or smallest", "It needs as little as 4 px.", "It needs at least 4 px."),
    Rule(r"\bof like (length|height|size|width)s?\b", "write similar", "copy of like length", "text of similar length"),
    Rule(r"\bkeep(s|ing)? company\b|\bkept company\b", "write with, or next to",
         "The wish keeps company with another.", "The wish applies together with another."),
    Rule(r"\b(take|takes|taken|taking|took) over\b", "write apply, or import", "Take over the sizes", "Apply the sizes"),
    Rule(r"\btake a page[’']s\b", "write Import row from page", "Take a page’s row…", "Import row from page…"),
    Rule(r"\bfamil(y|ies) of browsers\b|\b(Chromium|Firefox)[’']s family\b", "name the browser: Chromium or Firefox",
         "lines as in Chromium’s family", "lines as in Chromium"),
    Rule(r"\bweigh(s|ed|ing)?\b", "write weight", "Weigh findings by visits", "Weight findings by visits"),
    Rule(r"\blevel(s|led|ling)? (the )?parts\b|\b(start|starts|stand|stands|starting|standing) (in|out of) line\b",
         "write align", "Levelling the parts fixes it.", "Aligning the parts fixes it."),
    Rule(r"\bwhat is proposed\b", "write the proposal", "Close what is proposed", "Close the proposal"),
    Rule(r"\blet(s|ting)? go\b", "write discard, or release", "Let go of the sizes", "Discard the sizes"),
    Rule(r"\bwhat \w+( \w+)? comes to\b", "write the noun: value, size or result",
         "Print what the row comes to", "Print the sizes of the row"),
    Rule(r"\banew\b", "write again", "The list is read anew.", "The list is read again."),
    Rule(r"\bamiss\b", "write wrong, or error", "something is amiss", "something is wrong"),
    Rule(r"\b(a|by a) hair\b", "write slightly, or the figure", "a hair more than the column",
         "slightly more than the column"),
    Rule(r"\b(bring|brings|bringing|brought)\b(?! up to date)", "write import, move or cause", "Bring a row from a page",
         "Import a row from a page"),
    Rule(r"(?<![\d.,])\d{1,3}[ \u00a0\u2009\u202f]\d{3}(\.\d+)?[ \u00a0\u202f]?px\b|\d\u202f\d",
         "px have no thousands separator", "1 320 px", "1320 px"),
    Rule(r"(?<![\w.,)\]%-])-\d+(\.\d+)?[ \u00a0]?px\b", "write the minus sign U+2212", "a margin of -12 px",
         "a margin of −12 px"),
]
COMPILED = [(re.compile(rule.pattern, re.IGNORECASE), rule) for rule in RULES]

# Old labels of the window, refused as a whole string, and the label that is decided.
OLD_LABELS = {
    "Level parts": "Align parts", "Keep lines": "Minimum lines", "Stands at": "Alignment", "Under the pointer": "Hover",
    "Ground": "Background", "Corners": "Corner radius", "Right by": "Offset x", "Down by": "Offset y",
    "Edge to edge": "Full-bleed picture", "Its share": "Picture width", "Leads to": "Link address",
    "Read out as": "Accessible name", "Over the row": "Overlays", "Along the widths": "Lanes and plots",
    "Scale of the widths": "Axis scale", "As a reader zooms in": "Browser zoom", "Open an audience": "Import audience",
}

# Words that people type to find a setting, former labels among them: strings without a capital letter are not checked.
SEARCH_WORDS = "app/desktop/window/setting_search.cpp"

TOKEN = re.compile(
    r"""(?P<line>//[^\n]*)
      | (?P<block>/\*.*?\*/)
      | (?P<raw>(?:u8|[uUL])?R"(?P<delimiter>[^\s()\\]{0,16})\((?P<body>.*?)\)(?P=delimiter)")
      | (?P<text>(?:u8|[uUL])?"(?P<content>(?:[^"\\\n]|\\.)*)")
      | (?P<character>(?:u8|[uUL])?'(?:[^'\\\n]|\\.)+')
      | (?P<include>^[ \t]*\#[ \t]*include[^\n]*)
      | (?P<number>\b\d[\w'.]*)
      | (?P<space>\s+)
      | (?P<other>\w+|.)""", re.VERBOSE | re.DOTALL | re.MULTILINE)
ESCAPE = re.compile(r"((?:\\x[0-9A-Fa-f]{2})+)|\\u([0-9A-Fa-f]{4})|\\U([0-9A-Fa-f]{8})|\\(.)", re.DOTALL)


def unescaped(content):
    def one(match):
        octets, short, long, plain = match.groups()
        if octets:
            return bytes.fromhex(octets.replace("\\x", "")).decode("utf-8", "replace")
        if short or long:
            return chr(int(short or long, 16))
        return {"n": "\n", "t": "\t", "0": "\0"}.get(plain, plain)
    return ESCAPE.sub(one, content)


class Text:
    """A text put together from pieces, which remembers the line of each."""

    def __init__(self, kind):
        self.kind = kind
        self.value = ""
        self.starts = []  # (offset in value, line)

    def add(self, piece, line):
        self.starts.append((len(self.value), line))
        self.value += piece

    def line_at(self, offset):
        return max((start for start in self.starts if start[0] <= offset), default=(0, 1))[1]


def cpp_texts(source, is_header):
    """Comments and string literals. Literals next to each other, or joined by `+`, are one text, and so are
    comments on consecutive lines."""
    texts = []
    comment = literal = None
    comment_line = -1
    line = 1
    for match in TOKEN.finditer(source):
        kind = match.lastgroup if match.lastgroup not in ("content", "body", "delimiter") else None
        for name in ("line", "block", "raw", "text"):
            if match.group(name) is not None:
                kind = name
        piece = match.group(0)
        if kind in ("line", "block"):
            documents = piece.startswith("///")
            body = re.sub(r"^(//[/!]?<?|/\*+)|\*/$", "", piece).strip()
            if documents or is_header:
                if comment is None or comment_line + 1 < line or kind == "block":
                    comment = Text("comment")
                    texts.append(comment)
                comment.add(body + " ", line)
                comment_line = line
        elif kind == "text":
            if literal is None:
                literal = Text("string")
                texts.append(literal)
            literal.add(unescaped(match.group("content")), line)
        elif kind == "raw":
            literal = Text("string")
            texts.append(literal)
            for number, part in enumerate(match.group("body").split("\n")):
                literal.add(part + "\n", line + number)
            literal = None
        elif kind == "character":
            text = Text("string")
            text.add(unescaped(piece.strip("uUL8'")), line)
            texts.append(text)
            literal = None
        elif kind != "space" and piece not in ("+", ")"):
            literal = None
            comment = comment if comment_line == line else None
        line += piece.count("\n")
    return texts


def prose_texts(source):
    """Paragraphs of Markdown, without code blocks."""
    texts = []
    text = None
    fenced = False
    for number, row in enumerate(source.split("\n"), 1):
        if row.startswith("```"):
            fenced = not fenced
        if fenced or row.startswith(("    ", "\t", "```")) or not row.strip() or row.startswith(("|", "#", "-")):
            text = None
        if fenced or row.startswith(("    ", "\t", "```")) or not row.strip():
            continue
        if text is None:
            text = Text("prose")
            texts.append(text)
        text.add(row + " ", number)
    return texts


def schema_texts(source):
    texts = []
    for number, row in enumerate(source.split("\n"), 1):
        match = re.match(r'\s*"description": "(.*?)",?$', row)
        if match:
            text = Text("prose")
            text.add(unescaped(match.group(1)), number)
            texts.append(text)
    return texts


def is_code(text):
    """True for CSS, markup, scripts and single words inside a string."""
    return bool(re.search(r"[{}]|::|</\w|^\s*<\w+|\w\(\)|=>|;\n", text)) or not re.search(r"\w[,:;]? +\w", text)


def readable(text):
    """The text as people read it: no code in backticks, no tags."""
    def blank(match):
        return "`" + "_" * (len(match.group(0)) - 2) + "`"
    value = re.sub(r"`[^`]*`", blank, text.value)
    return re.sub(r"</?\w[^<>]*>", lambda match: " " * len(match.group(0)), value)


def faults_in(text, in_window):
    if text.kind == "string":
        label = text.value.replace("&", "").rstrip("…:. \n")
        if in_window and label in OLD_LABELS:
            yield 0, text.value.strip(), f"the label is {OLD_LABELS[label]}"
        if is_code(text.value):
            return
    value = readable(text)
    reported = []
    for pattern, rule in COMPILED:
        for match in pattern.finditer(value):
            if any(match.start() < end and start < match.end() for start, end in reported):
                continue
            reported.append(match.span())
            around = value[max(0, match.start() - 30):match.end() + 30].replace("\n", " ").strip()
            yield match.start(), around, f"{rule.reason} (“{rule.wrong}” → “{rule.right}”)"


def check_table():
    for pattern, rule in COMPILED:
        if not pattern.search(rule.wrong):
            sys.exit(f"the rule {rule.pattern} does not match its own example: {rule.wrong}")
        for other, _ in COMPILED:
            if other.search(rule.right):
                sys.exit(f"the rule {other.pattern} refuses what another rule recommends: {rule.right}")


def main(folder):
    check_table()
    root = Path(folder)
    files = 0
    faults = 0
    paths = [path for top in ("core", "app") for path in (root / top).rglob("*.*")]
    paths += [root / "README.md", root / "DEVELOPERS.md", *(root / "resources").glob("*.*")]
    for path in sorted(path for path in paths if path.is_file()):
        name = path.relative_to(root).as_posix()
        if name.endswith((".cpp", ".h")):
            texts = cpp_texts(path.read_text(encoding="utf-8"), name.endswith(".h"))
        elif name in ("README.md", "DEVELOPERS.md") or re.match(r"resources/[^/]*\.xml$", name):
            texts = prose_texts(path.read_text(encoding="utf-8"))
        elif name == "resources/project.schema.json":
            texts = schema_texts(path.read_text(encoding="utf-8"))
        else:
            continue
        files += 1
        if name == SEARCH_WORDS:
            texts = [text for text in texts if text.kind != "string" or text.value != text.value.lower()]
        for text in texts:
            for offset, around, reason in faults_in(text, name.startswith("app/desktop/")):
                print(f"{name}:{text.line_at(offset)}: “{around}”: {reason}")
                faults += 1
    if files == 0:
        sys.exit("no files found")
    if faults:
        sys.exit(f"{faults} places to rewrite")
    print(f"{files} files use the project's words")


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit("usage: check_language.py SOURCE-FOLDER")
    main(sys.argv[1])
