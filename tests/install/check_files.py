"""Desktop entry, metainfo, MIME type, manual pages and versions of an installation are valid and agree.

Arguments: the source folder, the build folder, cmake.
"""
import re
import xml.etree.ElementTree as ElementTree

from installation import Installation, arguments, expect, finish, manual_pages, run, succeed, verbs


def check_validators(prefix):
    desktop = prefix / "share/applications/org.tenter.Tenter.desktop"
    checks = [
        ("desktop-file-validate", "--warn-kde", desktop),
        ("appstreamcli", "validate", "--no-net", prefix / "share/metainfo/org.tenter.Tenter.metainfo.xml"),
        ("xmllint", "--noout", prefix / "share/mime/packages/org.tenter.Tenter.xml"),
    ]
    for check in checks:
        done = run(*check)
        expect(done.returncode == 0, f"{check[0]}: {done.stdout}{done.stderr}")
    expect(run("desktop-file-validate", desktop).stdout == "", "desktop-file-validate has a hint")


def check_manual(prefix, environment):
    pages = manual_pages(prefix)
    names = {page.name for page in pages}
    wanted = {"tenter.1", "tenter-cli.1"} | {f"tenter-cli-{verb}.1" for verb in
                                             verbs(prefix / "bin/tenter-cli", environment)}
    expect(names == wanted, f"manual pages are missing or too many: {sorted(names ^ wanted)}")
    for page in pages:
        for line in run("mandoc", "-Tlint", "-Wstyle", page).stdout.splitlines():
            # It looks only in the folders of the system.
            other = re.search(r"referenced manual not found: Xr ([a-z-]+) 1", line)
            expect(other is not None and f"{other[1]}.1" in names, line)


def check_manual_has_every_option(prefix, environment):
    for verb in verbs(prefix / "bin/tenter-cli", environment):
        help_text = succeed(prefix / "bin/tenter-cli", verb, "--help", env=environment)
        page = succeed("mandoc", "-Tascii", "-Owidth=500", prefix / f"share/man/man1/tenter-cli-{verb}.1")
        page = re.sub(r".\x08", "", page)
        for option in re.findall(r"^  (?:-h,)?(--[a-z-]+)", help_text, re.MULTILINE):
            expect(re.search(rf"{option}\b", page), f"tenter-cli-{verb}.1 has no {option}")
        # The words of help and page are the same; only their breaks differ.
        plain = " ".join(page.split())
        expect(" ".join(help_text.split("\n")[0].split()) in plain, f"tenter-cli-{verb}.1 has another summary")


def check_versions(source, prefix, environment):
    version = re.search(r"project\(tenter VERSION ([0-9.]+)", (source / "CMakeLists.txt").read_text())[1]
    metainfo = ElementTree.parse(prefix / "share/metainfo/org.tenter.Tenter.metainfo.xml").getroot()
    release = metainfo.find("releases/release")
    newest = re.search(r"^## (.*)$", (source / "resources/CHANGELOG.md").read_text(), re.MULTILINE)[1]
    stated = f"{release.get('version')} ({release.get('date')})"
    expect(newest == stated, f"the newest change is of {newest}, the newest release of the metainfo {stated}")
    in_git = run("git", "-C", source, "rev-parse", "HEAD").returncode == 0
    for name in ("tenter", "tenter-cli"):
        text = succeed(prefix / "bin" / name, "--version", env=environment)
        stated = re.match(rf"{name} {re.escape(version)}\nCommit: (\w+)(-modified)?\n", text)
        expect(stated, f"{name} --version prints {text}")
        # The present commit, or the earlier one of the last build.
        known = in_git and stated and run("git", "-C", source, "merge-base", "--is-ancestor", stated[1], "HEAD")
        expect(known.returncode == 0 if known else stated and stated[1] == "unknown", f"{name}: no commit {stated}")
        for library in ("HarfBuzz", "ICU", "Cairo", "GLPK", "libvips"):
            expect(re.search(rf"^  {library} [0-9.]+$", text, re.MULTILINE), f"{name} --version lacks {library}")
    expect("\n  Qt 6." in succeed(prefix / "bin/tenter", "--version", env=environment), "there is no version of Qt")


def main():
    source, build, cmake, _ = arguments()
    with Installation(build, cmake) as installed:
        check_validators(installed.prefix)
        check_manual(installed.prefix, installed.environment)
        check_manual_has_every_option(installed.prefix, installed.environment)
        check_versions(source, installed.prefix, installed.environment)
    finish(f"{len(installed.files)} files are valid and agree")


main()
