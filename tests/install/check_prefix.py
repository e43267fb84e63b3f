"""An installation works after it was moved, in an empty environment, and can be removed.

Arguments: the source folder, the build folder, cmake, a program that prints the samples of the start page.
"""
import shlex
import shutil
import signal
import subprocess
import time

from installation import Installation, arguments, expect, finish, section, verbs

TYPE = "application/x.tenter+json"


def prepare(installed):
    """A folder with the files that the examples of help name; only installed files are used."""
    samples = installed.prefix / "share/tenter/sample-projects"
    folder = installed.folder / "work"
    shutil.copytree(samples / "pictures", folder / "pictures")
    shutil.copy(samples / "shore-walks.tenter.json", folder / "row.tenter.json")
    shutil.copy(samples / "visits.csv", folder / "visits.csv")
    (folder / "page.html").write_text(
        "<!doctype html><html lang=en><body><ul><li><h3>High water</h3><p>Twice a day, a little later each time.</p>"
        "</li><li><h3>Low water</h3><p>When the steps are green and dry.</p></li></ul></body></html>")
    (folder / "requests.jsonl").write_text(
        '{"jsonrpc": "2.0", "id": 1, "method": "wraps", "params": {"project": "row.tenter.json"}}\n')
    (folder / "theme.css").write_text("html { font-size: 62.5% } li { float: left }")
    cli = installed.program("tenter-cli")
    for words in (["adopt", "row.tenter.json", "page.html", "--out", "imported.tenter.json"],
                  ["solve", "row.tenter.json", "body.size=-17", "--out", "changed.tenter.json"],
                  ["stylesheet", "row.tenter.json", "--out", "row.css"],
                  ["folder", "row.tenter.json", "--into", "site"]):
        done = installed.run(cli, *words, cwd=folder)
        expect(done.returncode == 0, f"{words}: {done.stderr}")
    return folder


def check_verbs(installed):
    folder = prepare(installed)
    cli = installed.program("tenter-cli")
    for verb in verbs(cli, installed.environment):
        examples = section(installed.run(cli, verb, "--help").stdout, "Examples")
        expect(examples, f"{verb} has no example")
        for example in examples:
            done = installed.run(cli, *shlex.split(example)[1:], cwd=folder, input="")
            expect(done.returncode in (0, 1), f"{example}: {done.returncode} {done.stderr}")


def check_window(installed, lister):
    sample = installed.prefix / "share/tenter/sample-projects/shore-walks.tenter.json"
    picture = installed.home / "row.png"
    done = installed.run(installed.program("tenter"), "--picture", picture, sample)
    expect(done.returncode == 0 and done.stderr == "", f"tenter --picture: {done.stderr}")
    expect(picture.is_file() and picture.stat().st_size > 10000, "the picture of the row is missing or empty")

    window = subprocess.Popen([installed.program("tenter"), sample], env=installed.environment, text=True,
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    time.sleep(2)
    expect(window.poll() is None, "the window closed by itself")
    window.send_signal(signal.SIGTERM)
    output, _ = window.communicate(timeout=20)
    # Qt says so of its offscreen platform.
    output = output.replace("This plugin does not support propagateSizeHints()\n", "")
    expect(output == "", f"the window printed: {output}")

    beside = installed.program("list-samples")
    shutil.copy(lister, beside)
    listed = installed.run(beside).stdout.split("\n")[:-1]
    beside.unlink()
    wanted = sorted(str(each) for each in (installed.prefix / "share/tenter/sample-projects").glob("*.tenter.json"))
    expect(len(wanted) >= 5 and listed == wanted, f"the start page offers {listed} instead of {wanted}")


def check_no_place_of_the_build(installed, source, build):
    for file in installed.files:
        content = (installed.prefix / file).read_bytes()
        for place in (source, build, installed.folder / "first"):
            expect(str(place).encode() not in content, f"{file} names {place}")


def check_type(installed):
    """The type of project files is found by name and by content, and opens with the window."""
    data = installed.prefix / "share"
    shared = installed.folder / "data"
    for part in ("mime/packages", "applications", "icons"):
        shutil.copytree(data / part, shared / part)
    succeed_in = installed.run("update-mime-database", shared / "mime")
    expect(succeed_in.returncode == 0, f"update-mime-database: {succeed_in.stderr}")
    indexed = installed.run("update-desktop-database", shared / "applications")
    expect(indexed.returncode == 0, f"update-desktop-database: {indexed.stderr}")
    environment = {**installed.environment, "XDG_DATA_DIRS": f"{shared}:/usr/share"}
    sample = data / "tenter/sample-projects/shore-walks.tenter.json"
    without_ending = installed.home / "row"
    shutil.copy(sample, without_ending)
    other = installed.home / "other.json"
    other.write_text('{"format": "other"}')
    for file, type_of_file in ((sample, TYPE), (without_ending, TYPE), (other, "application/json")):
        info = subprocess.run(["gio", "info", "-a", "standard::content-type", file], env=environment,
                              capture_output=True, text=True)
        expect(info.stdout.split()[-1:] == [type_of_file], f"the type of {file.name} is {info.stdout!r}")
    opens = subprocess.run(["xdg-mime", "query", "default", TYPE], env=environment, capture_output=True, text=True)
    expect(opens.stdout.strip() == "org.tenter.Tenter.desktop", f"{TYPE} opens with {opens.stdout!r}")


def main():
    source, build, cmake, (lister,) = arguments()
    with Installation(build, cmake) as installed:
        check_no_place_of_the_build(installed, source, build)
        check_verbs(installed)
        check_window(installed, lister)
        check_type(installed)
        left = installed.remove()
        expect(not left, f"after removal these files are left: {left}")
    finish("it works in another place, in an empty environment, and leaves nothing")


main()
