"""A program of somebody else builds with the installed library, by CMake and by pkg-config, and gives the figures of
tenter-cli. Arguments: the source folder, the build folder, cmake.
"""
import json
import shlex

from installation import Installation, arguments, expect, finish, succeed


def main():
    source, build, cmake, _ = arguments()
    program = source / "tests/install/library"
    with Installation(build, cmake) as installed:
        sample = installed.prefix / "share/tenter/sample-projects/shore-walks.tenter.json"
        cli = installed.program("tenter-cli")
        version = succeed(cli, "--version").split()[1]
        layout = json.loads(succeed(cli, "geometry", sample, "--widths", "800"))["layouts"][0]
        found = json.loads(installed.run(cli, "check", sample, "--json").stdout)
        wanted = f"{layout['row']['height']:.2f} {len(found)}\n"

        built = installed.folder / "built"
        succeed(cmake, "-S", program, "-B", built, f"-DCMAKE_PREFIX_PATH={installed.prefix}", f"-DWANTED={version}")
        succeed(cmake, "--build", built)
        expect(succeed(built / "uses-tenter", sample) == wanted, f"by CMake, the program does not print {wanted}")

        (pc,) = installed.prefix.rglob("tenter.pc")
        environment = {**installed.environment, "PKG_CONFIG_PATH": str(pc.parent)}
        flags = shlex.split(succeed("pkg-config", "--cflags", "--libs", "tenter", env=environment))
        other = installed.folder / "by-pkg-config"
        succeed("c++", "-std=c++20", program / "uses_tenter.cpp", "-o", other, *flags)
        expect(succeed(other, sample) == wanted, f"by pkg-config, the program does not print {wanted}")
        stated = succeed("pkg-config", "--modversion", "tenter", env=environment).strip()
        expect(stated == version, f"tenter.pc has version {stated}, tenter-cli {version}")
    finish("programs build with the installed library")


main()
