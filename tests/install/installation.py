"""An installation in a temporary folder, for the tests of this folder."""
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

sys.dont_write_bytecode = True

failures = []


def expect(condition, says):
    """Notes a failure; the test goes on, so that one run reports all of them."""
    if not condition:
        failures.append(says)
        print(f"FAILED: {says}")


def finish(says):
    if failures:
        sys.exit(f"{len(failures)} failures")
    print(says)


def run(*words, **options):
    options = {"capture_output": True, "text": True, "timeout": 120, **options}
    return subprocess.run([str(word) for word in words], **options)


def succeed(*words, **options):
    """The standard output of a command that must succeed."""
    done = run(*words, **options)
    if done.returncode != 0:
        sys.exit(f"{' '.join(map(str, words))}: exit code {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


class Installation:
    """`cmake --install` into a folder that is then moved: nothing may depend on where it was installed."""

    def __init__(self, build, cmake):
        self.folder = Path(tempfile.mkdtemp(prefix="tenter-install-"))
        first = self.folder / "first"
        succeed(cmake, "--install", build, "--prefix", first)
        manifest = (Path(build) / "install_manifest.txt").read_text(encoding="utf-8").split("\n")
        self.files = [Path(line).relative_to(first) for line in manifest if line]
        self.prefix = self.folder / "a moved place"
        first.rename(self.prefix)
        self.home = self.folder / "home"
        runtime = self.folder / "runtime"
        self.home.mkdir()
        runtime.mkdir(mode=0o700)
        # Nothing of the user's environment.
        self.environment = {"PATH": "/usr/bin:/bin", "HOME": str(self.home), "XDG_RUNTIME_DIR": str(runtime),
                            "QT_QPA_PLATFORM": "offscreen"}

    def __enter__(self):
        return self

    def __exit__(self, *_):
        shutil.rmtree(self.folder)

    def program(self, name):
        return self.prefix / "bin" / name

    def run(self, *words, **options):
        return run(*words, env=self.environment, **{"cwd": self.home, **options})

    def remove(self):
        """Removes the installed files. Returns what is left besides empty folders."""
        for file in self.files:
            (self.prefix / file).unlink()
        return [path for path in self.prefix.rglob("*") if not path.is_dir()]


def arguments():
    """The source folder, the build folder, cmake, and the arguments after them."""
    return Path(sys.argv[1]), Path(sys.argv[2]), sys.argv[3], sys.argv[4:]


def manual_pages(prefix):
    return sorted((prefix / "share/man/man1").glob("*.1"))


def section(help_text, title):
    """The lines of a section of help, without their indent of two spaces."""
    lines = help_text.split("\n")
    if f"{title}:" not in lines:
        return []
    found = lines[lines.index(f"{title}:") + 1 :]
    return [line[2:] for line in (found[: found.index("")] if "" in found else found)]


def verbs(cli, environment):
    text = succeed(cli, "--help", env=environment)
    return [line.split()[0] for line in section(text, "Verbs") if not line.startswith(" ")]
