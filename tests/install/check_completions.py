"""The completions of bash, zsh and fish offer what help lists. Arguments: the source folder, the build folder, cmake."""
import re

from installation import Installation, arguments, expect, finish, run, succeed, verbs

# Completes the last word of "$@" by the function that the file registered.
BASH = """source "$1"; shift
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); COMPREPLY=()
compopt() { :; }
"_${1//-/_}"
printf '%s\\n' "${COMPREPLY[@]}"
"""


def completed_by_bash(prefix, *words, **options):
    file = prefix / "share/bash-completion/completions" / words[0]
    return set(succeed("bash", "-uc", BASH, "bash", file, *words, **options).split())


def completed_by_fish(prefix, *words, **options):
    file = prefix / "share/fish/vendor_completions.d" / f"{words[0]}.fish"
    output = succeed("fish", "--no-config", "-c", f"source '{file}'; complete -C '{' '.join(words)}'", **options)
    return {line.split("\t")[0] for line in output.splitlines()}


def check(prefix, environment, work):
    cli = prefix / "bin/tenter-cli"
    names = set(verbs(cli, environment))
    (work / "row.tenter.json").write_text("{}")
    (work / "notes.txt").write_text("")
    zsh = (prefix / "share/zsh/site-functions/_tenter-cli").read_text()
    for shell in (completed_by_bash, completed_by_fish):
        def offers(*words, shell=shell):
            return shell(prefix, *words, env=environment, cwd=work)
        name = shell.__name__
        expect(names <= offers("tenter-cli", ""), f"{name}: verbs are missing")
        expect({"note", "warning", "error"} <= offers("tenter-cli", "check", "--fail-on", ""), f"{name}: severities")
        expect({"own", "given"} <= offers("tenter-cli", "stylesheet", "--markup", ""), f"{name}: markup")
        expect({"blink", "gecko"} <= offers("tenter-cli", "wraps", "--engine", ""), f"{name}: engines")
        expect({"light", "dark"} <= offers("tenter", "--theme", ""), f"{name}: themes")
        files = offers("tenter-cli", "wraps", "")
        # fish puts other files behind those with the ending.
        others = set() if shell is completed_by_bash else {"notes.txt"}
        expect("row.tenter.json" in files and "notes.txt" not in files - others, f"{name}: projects: {files}")
        for verb in sorted(names):
            text = succeed(cli, verb, "--help", env=environment)
            options = set(re.findall(r"^  (?:-h,)?(--[a-z-]+)", text, re.MULTILINE))
            offered = offers("tenter-cli", verb, "--")
            expect(offered == options, f"{name}: {verb}: {sorted(offered ^ options)}")
            for option in options:
                expect(f"){option}[" in zsh, f"zsh: {verb} has no {option}")
    for verb in names:
        expect(f"{verb}:" in zsh, f"zsh: no {verb}")


def main():
    _, build, cmake, _ = arguments()
    with Installation(build, cmake) as installed:
        share = installed.prefix / "share"
        for words in (["bash", "-n"], ["zsh", "-n"], ["fish", "--no-execute"]):
            for file in sorted(share.glob({"bash": "bash-completion/completions/*", "zsh": "zsh/site-functions/*",
                                           "fish": "fish/vendor_completions.d/*"}[words[0]])):
                done = run(*words, file)
                expect(done.returncode == 0 and done.stderr == "", f"{file.name}: {done.stderr}")
        environment = {**installed.environment, "XDG_CONFIG_HOME": str(installed.home)}
        check(installed.prefix, environment, installed.home)
    finish("bash, zsh and fish complete every verb, option and value")


main()
