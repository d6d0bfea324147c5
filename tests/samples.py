#!/usr/bin/env python3
"""Writes what the program prints into the samples of the README files; run from the project's root after a build.

A sample is a console block whose first line is "$ leverage …". A test compares every one with the program.
"""
import pathlib, re, shlex, subprocess

PROGRAM = "src/Leverage.Cli/bin/Release/net10.0/leverage"
FILES = ["README.md", "shared/README.md", "plots/README.md", "tables/README.md", "DEVELOPERS.md"]


def fresh(block):
    first = block[1].split("\n", 1)[0]
    run = subprocess.run([PROGRAM, *shlex.split(first[len("$ leverage "):])], capture_output=True, text=True, check=True)
    return f"```console\n{first}\n{run.stdout}```"


for name in FILES:
    file = pathlib.Path(name)
    text = file.read_text(encoding="utf-8")
    file.write_text(re.sub(r"^```console\n(\$ leverage .*?)^```$", fresh, text, flags=re.S | re.M), encoding="utf-8")
