"""The packages pass lintian, can be installed and removed, and leave nothing.

Arguments: the source folder, the build folder, cmake.
"""
import re
import shutil
import tempfile
from pathlib import Path

from installation import arguments, expect, finish, run, succeed


def field(package, name):
    return succeed("dpkg-deb", "--field", package, name).strip()


def check_fields(packages):
    names = {field(package, "Package"): package for package in packages}
    expect(set(names) == {"tenter", "tenter-cli", "libtenter-dev"}, f"the packages are {sorted(names)}")
    command = field(names["tenter-cli"], "Depends")
    for library in ("libharfbuzz0b", "libicu", "libvips42"):
        expect(library in command, f"tenter-cli does not depend on {library}: {command}")
    expect("qt6" not in command, f"tenter-cli depends on Qt: {command}")
    expect("libqt6widgets6" in field(names["tenter"], "Depends"), "tenter does not depend on Qt")
    version = field(names["tenter-cli"], "Version")
    expect(f"tenter-cli (= {version})" in field(names["tenter"], "Depends"), "tenter does not need its tenter-cli")
    expect('"heading in at most 2 lines"' in field(names["tenter"], "Description"), "the description is damaged")


def check_removal(packages, folder):
    root = folder / "root"
    (root / "var/lib/dpkg").mkdir(parents=True)
    for name in ("status", "available"):
        (root / "var/lib/dpkg" / name).touch()
    dpkg = ["fakeroot", "dpkg", f"--root={root}", "--force-depends", "--log=/dev/null"]
    succeed(*dpkg, "--install", *packages)
    expect((root / "usr/bin/tenter").is_file() and (root / "usr/bin/tenter-cli").is_file(), "no programs")
    cli = succeed(root / "usr/bin/tenter-cli", "--version")
    expect(cli.startswith("tenter-cli "), f"the packed program prints {cli}")
    succeed(*dpkg, "--purge", "tenter", "libtenter-dev", "tenter-cli")
    left = [path for path in root.rglob("*") if not path.is_dir() and "var/lib/dpkg" not in str(path)]
    expect(not left, f"after removal these files are left: {left}")


def check_archive(archive):
    listed = succeed("tar", "--list", "--verbose", "--numeric-owner", "--full-time", "--file", archive).splitlines()
    expect(len(listed) > 100, "the archive is nearly empty")
    expect(len({" ".join(line.split()[3:5]) for line in listed}) == 1, "the files of the archive differ in time")
    expect(all(re.match(r"\S+ 0/0 ", line) for line in listed), "files of the archive belong to a user")


def main():
    source, build, _, _ = arguments()
    folder = Path(tempfile.mkdtemp(prefix="tenter-packages-"))
    try:
        into = folder / "packages"
        succeed("bash", source / "app/packaging/pack", build, into)
        packages = sorted(into.glob("*.deb"))
        check_fields(packages)
        done = run("lintian", "--no-cfg", "--fail-on", "error,warning", *packages)
        expect(done.returncode == 0, f"lintian: {done.stdout}{done.stderr}")
        check_removal(packages, folder)
        for archive in into.glob("*.tar.gz"):
            check_archive(archive)
        sizes = ", ".join(f"{file.name} {file.stat().st_size}" for file in sorted(into.iterdir())
                          if file.suffix in (".deb", ".gz"))
    finally:
        shutil.rmtree(folder)
    finish(f"the packages are valid and leave nothing: {sizes}")


main()
