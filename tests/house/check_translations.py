#!/usr/bin/env python3
"""Fails if a text of the window cannot be translated, or if a translation is not complete.

Arguments: the source folder and Qt's lupdate.

1. Every string literal under app/desktop is in QObject::tr or QT_TRANSLATE_NOOP, has the form of a key, a path, a
   pattern or markup, or is an exception below, with its reason.
2. lupdate finds in the sources the same texts as each .ts file has, and the same as this script reads, so that no text
   is lost by how it is written.
3. No translation is unfinished. It has the placeholders of its text, and a key for menus if the text has one.
"""
import html
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path

TOKEN = re.compile(
    r'(?P<skip>//[^\n]*|/\*.*?\*/|\#\s*include[^\n]*)|(?P<raw>R"(?P<mark>[^(\s]*)\(.*?\)(?P=mark)")'
    r'|(?P<text>"(?:[^"\\\n]|\\.)*")|(?P<char>\'(?:[^\'\\\n]|\\.)+\')'
    r"|(?P<name>[A-Za-z_]\w*(?:::[A-Za-z_]\w*)*)|(?P<space>\s+)|(?P<sign>.)",
    re.S,
)

# Files without texts of the window.
FILES = {
    "arguments.cpp": "help and messages of the command line, which are in English like those of tenter-cli",
    "main.cpp": "messages of the command line",
    "compare/measuring_page.cpp": "a page for a browser",
    "compare/page_host.cpp": "HTTP",
    "compare/browser.cpp": "names, arguments and preferences of browsers",
    "recovery/failure_report.cpp": "a report that is sent to developers",
    "help/libraries.cpp": "names and licences of libraries",
    "window/style.cpp": "class names of Qt",
}
# Literals that look like texts, each with the reason why it is none or has no translation.
LITERALS = {
    "Tenter": "the name of the program",
    "Tenter ": "the name of the program, before its version",
    "[*] – Tenter": "the name of the program in the title of the window",
    "Aa": "a sample of letters",
    "HTML": "a name",
    "PDF": "a name",
    "\\u00A0kB": "a unit",
    "\\u00A0MB": "a unit",
    "A first session": "a title in the README",
    "Terms": "a title in the README",
    "README.md": "a file",
    "QComboBoxListView": "a class name",
    "Warning: ": "the start of a sentence of core",
    "An action failed: ": "part of a report that is sent to developers",
    "SOURCE_DATE_EPOCH": "an environment variable",
    "XDG_STATE_HOME": "an environment variable",
    "Enter": "a key",
    "Delete": "a key",
    "Left": "a key",
    "Right": "a key",
    "font-size: clamp(1rem, 0.5rem + 2vw, 2rem)": "an example of CSS",
    "drag of a gap or padding": "a key of undo steps that merge",
    "text in the row": "a key of undo steps that merge",
    "paste size": "a key of undo steps that merge",
    "breakpoint %1": "a key of undo steps that merge",
    "ramp ": "a key of undo steps that merge",
    " upper ": "a key of a handle",
    " lower ": "a key of a handle",
    "all variants": "a key of a handle",
    "ReadAll": "a method on the bus",
    "SettingChanged": "a signal on the bus",
    "HighContrast": "the name of a theme",
    "Inverse": "the end of the name of a theme",
    "no session bus": "the name of a connection",
    "rem": "a unit",
    "px": "a unit",
    '{\\"widths\\": [': "JSON",
}
# Of these calls no argument is a text.
TECHNICAL = {"QRegularExpression", "inherits", "setObjectName", "property", "setProperty", "findChild", "qgetenv",
             "qEnvironmentVariable", "qEnvironmentVariableIsSet"}
# In these, every word is one.
SHOWN = {
    "setText", "setToolTip", "setAccessibleName", "setAccessibleDescription", "setWhatsThis", "showMessage", "message",
    "addAction", "addMenu", "addItem", "addItems", "addRow", "setWindowTitle", "setPlaceholderText", "setPlaceholder",
    "setHeaderLabels", "setTexts", "QLabel", "QPushButton", "QCheckBox", "QRadioButton", "QAction", "drawText", "setName",
    "section", "setting", "fold", "explain", "addFindable", "setTitle",
}
TRANSLATED = {"QObject::tr", "QT_TRANSLATE_NOOP"}


def tokens(source):
    return [
        (match.lastgroup if match.lastgroup != "mark" else "raw", match.group(0), match.start())
        for match in TOKEN.finditer(source)
        if match.lastgroup not in ("skip", "space")
    ]


def decoded(literal):
    """The text of a C++ literal."""
    def one(match):
        sign = match.group(1)
        if sign[0] == "u":
            return chr(int(sign[1:], 16))
        return {"n": "\n", "t": "\t"}.get(sign, sign)

    return re.sub(r"\\(u[0-9A-Fa-f]{4}|.)", one, literal[1:-1], flags=re.S)


def is_technical(literal):
    if re.fullmatch(r"\^.*\$|((Ctrl|Alt|Shift)\+)+[A-Za-z]+", literal):
        return True
    plain = re.sub(r"<[^>]*>|<[^>]*$|&\w+;|%\d|\\[nrtu0-9A-F]+", "", literal)
    if not re.search(r"[A-Za-z]{2}", plain):
        return True
    if re.search(r"\s|…|[.:!?]$", plain):
        return False
    first = re.search(r"[A-Za-z]", plain)
    return plain[first.start()].islower() or first.start() > 0 and plain[first.start() - 1] in "+/"


def calls(source):
    """Yields each literal with its place, the call that it is an argument of, and the call's number."""
    all_tokens = tokens(source)
    stack, number = [], 0
    for i, (kind, value, at) in enumerate(all_tokens):
        if kind == "sign" and value in "([{":
            before = all_tokens[i - 1][1] if i else ""
            number += 1
            # A list in a call belongs to it.
            name = before if value == "(" else (stack[-1][0] if value == "{" and stack and before in "(,{" else "")
            stack.append((name, number))
        elif kind == "sign" and value in ")]}" and stack:
            stack.pop()
        elif kind in ("text", "raw"):
            yield value, at, stack[-1] if stack else ("", 0), kind
        elif kind == "name" and value == "tr" and all_tokens[i + 1][1] == "(":
            yield "tr", at, ("", 0), "tr"


def check_literals(folder, wrong):
    """Returns the texts that the sources mark for translation."""
    marked = set()
    for file in sorted(folder.rglob("*")):
        if file.suffix not in (".cpp", ".h"):
            continue
        name = file.relative_to(folder).as_posix()
        source = file.read_text(encoding="utf-8")
        texts = {}
        for literal, at, (call, number), kind in calls(source):
            place = f"app/desktop/{name}:{source.count(chr(10), 0, at) + 1}"
            last = call.split("::")[-1]
            if kind == "tr":
                wrong.append(f"{place}: write QObject::tr, so that all texts are in one context")
            elif call in TRANSLATED or call == "QCoreApplication::translate":
                texts.setdefault(number, [call, []])[1].append((literal, at))
            elif name in FILES or last in TECHNICAL:
                pass
            elif kind == "raw":
                if name != "document/refusal.cpp":
                    wrong.append(f"{place}: a raw literal; is it a text?")
            elif literal[1:-1] in LITERALS:
                pass
            elif last in SHOWN and re.search(r"[A-Za-z]{2}", re.sub(r"<[^>]*>|</?[a-z]+|%\d|\\u00A0", "", literal)):
                if not re.fullmatch(r'"[a-z]+[A-Za-z/]*"', literal) or last not in ("setting", "addItem", "addFindable"):
                    wrong.append(f"{place}: {literal} is shown, but it is not translated")
            elif not is_technical(literal[1:-1]):
                wrong.append(f"{place}: {literal} is neither translated nor a key")
        for call, parts in texts.values():
            joined, end = "", None
            strings = []
            for literal, at in parts:
                gap = source[end:at] if end is not None else ","
                if gap.strip():
                    strings.append("")
                strings[-1] += decoded(literal)
                end = at + len(literal)
            text = strings[1] if call == "QT_TRANSLATE_NOOP" else strings[0]
            if call != "QCoreApplication::translate":
                marked.add(text)
    return marked


def messages(file):
    """(context, text, comment, has a plural) to its translations; None for an unfinished one."""
    found = {}
    for context in xml.parse(file).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            forms = [form.text or "" for form in translation.findall("numerusform")] or [translation.text or ""]
            plural = message.get("numerus") == "yes"
            key = (context.findtext("name"), message.findtext("source"), message.findtext("comment") or "", plural)
            found[key] = None if translation.get("type") or not all(forms) else forms
    return found


def check_file(file, fresh, wrong):
    own, now = messages(file), messages(fresh)
    for key in now.keys() - own.keys():
        wrong.append(f"{file.name}: “{key[1]}” is missing; build the target update-translations and translate it")
    for key in own.keys() - now.keys():
        wrong.append(f"{file.name}: “{key[1]}” is in no source any more; build the target update-translations")
    for (_, text, _, plural), forms in own.items():
        if forms is None:
            wrong.append(f"{file.name}: “{text}” is not translated")
            continue
        for form in forms:
            if set(re.findall(r"%(?:\d|n)", form)) != set(re.findall(r"%(?:\d|n)", text)):
                wrong.append(f"{file.name}: “{form}” does not have the placeholders of “{text}”")
            has = [bool(re.search(r"&\w", re.sub(r"&&", "", one))) for one in (text, form)]
            if has[0] != has[1]:
                wrong.append(f"{file.name}: “{form}” must have & before a letter exactly if “{text}” has it")
    return {key[1] for key in now}


def main():
    source, lupdate = Path(sys.argv[1]), sys.argv[2]
    wrong = []
    marked = check_literals(source / "app/desktop", wrong)
    translations = source / "resources/translations"
    with tempfile.TemporaryDirectory() as folder:
        for file in translations.glob("tenter_*.ts"):
            shutil.copy(file, folder)
        update = subprocess.run([translations / "update.sh", source.resolve(), lupdate, folder], capture_output=True)
        if update.returncode != 0:
            wrong.append(f"update.sh failed: {update.stderr.decode()}")
        for file in sorted(translations.glob("tenter_*.ts")):
            texts = check_file(file, Path(folder) / file.name, wrong)
            if not file.name.endswith("_en.ts"):
                for text in sorted(marked - texts):
                    wrong.append(f"{file.name}: lupdate does not find “{text}”; has it \\u before a hexadecimal digit?")
    for one in wrong:
        print(one)
    print(f"{len(marked)} texts of the window")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
