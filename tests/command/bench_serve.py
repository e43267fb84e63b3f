#!/usr/bin/env python3
"""Calls per second of `tenter-cli serve` and of a process for each call, on the same project.

usage: bench_serve.py TENTER_CLI PROJECT [CALLS]
"""
import json
import subprocess
import sys
import time

CALLS = {
    "size": {"text": "clamp(1rem, 0.5rem + 2vw, 2rem)"},
    "stylesheet": {},
    "geometry": {"widths": "320,860,1440"},
    "wraps": {"json": True},
    "check": {"json": True},
    "solve": {},
}


def words(method, params, project):
    options = [f"--{name}" if value is True else f"--{name}={value}" for name, value in params.items() if name != "text"]
    return [method, *options, params.get("text", project)]


def main(program, project, count):
    print(f"{'verb':12}{'a process a call':>18}{'serve':>10}{'factor':>8}")
    for method, params in CALLS.items():
        start = time.perf_counter()
        for _ in range(count):
            subprocess.run([program, *words(method, params, project)], stdout=subprocess.DEVNULL,
                           stderr=subprocess.DEVNULL)
        processes = count / (time.perf_counter() - start)

        own = params if method == "size" else {**params, "project": project}
        server = subprocess.Popen([program, "serve"], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)

        def call(number, server=server, method=method, own=own):
            server.stdin.write(json.dumps({"jsonrpc": "2.0", "id": number, "method": method, "params": own}) + "\n")
            server.stdin.flush()
            answer = json.loads(server.stdout.readline())
            assert answer["id"] == number and "result" in answer, answer

        call(0)
        start = time.perf_counter()
        for number in range(1, count + 1):
            call(number)
        served = count / (time.perf_counter() - start)
        server.stdin.close()
        server.wait()
        print(f"{method:12}{processes:14.1f} / s{served:8.1f} / s{served / processes:7.1f}")


main(sys.argv[1], sys.argv[2], int(sys.argv[3]) if len(sys.argv) > 3 else 40)
