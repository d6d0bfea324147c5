"""Every spelling of a unit that Leverage reads, worth what GNU units says it is worth.

Run: python3 units.py OUTPUT.csv (needs the program `units`)
"""

import pathlib
import subprocess
import sys

from rows import Rows

PRINTED = {"N mm": "Nmm", "mm": "mm", "N": "N", "kg": "kg", "N / mm^2": "MPa", "radian": "rad", "K": "K", "1": ""}

COARSER = {"st": ("0.0001%", "the unit library's stone is 0.8 in a million below 14 lb; ")}


def gnu(*words):
    """What GNU units answers."""
    return subprocess.run(["units", *words], capture_output=True, text=True, check=True).stdout.strip()


def main(output):
    """One row a spelling."""
    version = gnu("--version").split("\n")[0].removeprefix("GNU Units version ")
    rows = Rows("Every spelling of a unit that is read, in coherent units, by GNU units", f"GNU units {version}")
    listed = pathlib.Path(__file__).with_name("unit-spellings.txt").read_text(encoding="utf-8")
    for line in listed.splitlines():
        if line.startswith("#"):
            continue
        expression, coherent, spellings = line.split(" ; ")
        worth = float(gnu("-t", "--digits", "15", expression, coherent))
        for spelling in spellings.strip("|").split("|"):
            rows.add(f"unit-{spelling}", "PrintedUnit.Coherent", {"value": f"1{spelling}"}, worth,
                     PRINTED[coherent], digits=10, tolerance=COARSER.get(spelling, ("", ""))[0],
                     note=COARSER.get(spelling, ("", ""))[1] + f"units -t '{expression}' '{coherent}'")
    rows.write(output)


main(sys.argv[1])
