"""Holds what an engine gave just now against the rows of shared/checks: same formula, inputs and number.

Run: python3 compare.py OUTPUT.csv
"""

import csv
import pathlib
import sys

CHECKS = pathlib.Path(__file__).resolve().parents[2] / "shared" / "checks"


def rows(path):
    """Rows of a file by id."""
    lines = (line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#"))
    return {row["id"]: row for row in csv.DictReader(lines)}


def main(output):
    """Tells every row that is not as committed."""
    committed = {}
    for path in CHECKS.glob("*.csv"):
        committed |= rows(path)
    given = rows(pathlib.Path(output))
    other = [name for name, row in given.items()
             if name not in committed or any(row[part] != committed[name][part] for part in ("formula", "inputs", "expected", "unit"))]
    for name in other:
        print(f"DIFFERS  {name}: {given[name]['expected']} now, {committed.get(name, {}).get('expected', 'no row')} committed")
    print(f"{len(given) - len(other)} of {len(given)} rows as committed")
    return len(other) > 0


sys.exit(main(sys.argv[1]))
