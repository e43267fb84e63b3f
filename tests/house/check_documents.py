#!/usr/bin/env python3
"""Compares README.md and DEVELOPERS.md with the program.

- Commands after `$` run in a copy of the source folder and print every line that is shown below them; `…` stands for
  lines left out, and line breaks do not count.
- The table of commands has exactly the verbs of `tenter-cli --help`.
- Labels of the window, such as *View › Overlays*, are texts of app/desktop.
- Files, folders and pictures exist; names such as `EditScope::setSetting` are in core or app.

Arguments: the source folder, tenter-cli. Prints one line for each fault, and exits with 1 if there is one.
"""
import re
import subprocess
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True  # no folder of compiled files in the source
from check_language import cpp_texts  # noqa: E402

TOP = ("app", "core", "resources", "sample-projects", "tests")


def words(text):
    return " ".join(text.split())


def commands(document):
    """(line, command, lines shown) of each command."""
    found = []
    for number, line in enumerate(document.split("\n"), 1):
        if line.startswith("    $ "):
            found.append((number, line[6:], []))
        elif found and line.startswith("    ") and found[-1][0] + len(found[-1][2]) + 1 == number:
            found[-1][2].append(line)
    return found


def run_faults(name, document, root, program):
    with tempfile.TemporaryDirectory() as folder:
        here = Path(folder)
        for top in TOP:
            (here / top).symlink_to(root / top)
        (here / "build/bin").mkdir(parents=True)
        (here / "build/bin/tenter-cli").symlink_to(program)
        for number, command, shown in commands(document):
            done = subprocess.run(["bash", "-c", command], cwd=here, capture_output=True, text=True, timeout=120)
            if done.returncode != 0:
                yield f"{name}:{number}: exit code {done.returncode}: {words(done.stderr)[:200]}"
                continue
            output = words(done.stdout) + " " + words(done.stderr)
            for offset, line in enumerate(shown, 1):
                if line.strip() != "…" and words(line) not in output:
                    yield f"{name}:{number + offset}: the command does not print this: {line.strip()}"


def verb_faults(name, document, program):
    listed = re.findall(r"^\| `([a-z]+)[ `]", document, re.MULTILINE)
    helped = subprocess.run([program, "--help"], capture_output=True, text=True, check=True).stdout
    block = helped.split("Verbs:\n", 1)[1].split("\n\n", 1)[0]
    verbs = re.findall(r"^  ([a-z]+) ", block, re.MULTILINE)
    for verb in sorted(set(verbs) ^ set(listed)):
        yield f"{name}: the verb {verb} is {'not in the table' if verb in verbs else 'not in the program'}"


def label_faults(name, document, labels):
    for match in re.finditer(r"\*([^*\n]*(?:\n[^*\n]*)?)\*", document.replace("**", "")):
        number = document.replace("**", "").count("\n", 0, match.start()) + 1
        text = words(match.group(1))
        if "›" not in text and not re.match(r"[A-Z]", text):
            continue
        for label in (part.strip() for part in text.split("›")):
            if label and label not in labels:
                yield f"{name}:{number}: the window has no “{label}”"


def file_faults(name, document, root, source):
    for number, line in enumerate(document.split("\n"), 1):
        for path in re.findall(r"!\[[^\]]*\]\(([^)]*)\)", line):
            if not (root / path).is_file():
                yield f"{name}:{number}: there is no picture {path}"
        code = re.findall(r"`([^`]*)`", line) if not line.startswith("    ") else [line]
        for word in " ".join(code).split():
            path = word.strip("'\",.;:()")
            if re.match(rf"({'|'.join(TOP)})/[\w./-]+$", path) and not (root / path).exists():
                yield f"{name}:{number}: there is no {path}"
        for piece in code:
            for symbol in re.findall(r"\b[A-Za-z]+(?:::[A-Za-z]+)+", piece):
                if not re.search(rf"\b{symbol.split('::')[-1]}\b", source):
                    yield f"{name}:{number}: there is no {symbol}"


def main(folder, program):
    root = Path(folder).resolve()
    program = str(Path(program).resolve())
    labels = set()
    source = []
    for top in ("app", "core"):
        for path in sorted((root / top).rglob("*.*")):
            if path.suffix not in (".cpp", ".h"):
                continue
            text = path.read_text(encoding="utf-8")
            source.append(text)
            if "desktop" in path.parts:
                for literal in (each.value for each in cpp_texts(text, False) if each.kind == "string"):
                    for part in (literal, literal.split(" (")[0]):
                        labels.add(words(part.replace("&", "")))
    source = "\n".join(source)
    faults = []
    for name in ("README.md", "DEVELOPERS.md"):
        document = (root / name).read_text(encoding="utf-8")
        faults += file_faults(name, document, root, source)
        faults += label_faults(name, document, labels)
        faults += run_faults(name, document, root, program)
        if name == "README.md":
            faults += verb_faults(name, document, program)
    for fault in faults:
        print(fault)
    if faults:
        sys.exit(f"{len(faults)} statements differ from the program")
    print("README.md and DEVELOPERS.md agree with the program")


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit("usage: check_documents.py SOURCE-FOLDER TENTER-CLI")
    main(sys.argv[1], sys.argv[2])
