"""Holds what an engine gave just now against the committed rows: same formula, inputs and numbers.

Run: python3 compare.py OUTPUT.csv
"""

import csv
import pathlib
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMITTED = [*(ROOT / "shared" / "checks").glob("*.csv"), ROOT / "tests" / "Leverage.Core.Tests" / "Outcomes" / "drawn-set-ups.csv"]
TOLD = ("tolerance", "source", "status", "note")


def rows(path):
    """Rows of a file by id."""
    lines = (line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#"))
    return {row["id"]: row for row in csv.DictReader(lines) if "id" in row}


def main(output):
    """Tells every row that is not as committed."""
    committed = {}
    for path in COMMITTED:
        committed |= rows(path)
    given = rows(pathlib.Path(output))
    other = [name for name, row in given.items()
             if name not in committed or any(row[part] != committed[name].get(part) for part in row if part not in TOLD)]
    for name in other:
        print(f"DIFFERS  {name}: {given[name]['expected']} now, {committed.get(name, {}).get('expected', 'no row')} committed")
    print(f"{len(given) - len(other)} of {len(given)} rows as committed")
    return len(other) > 0


sys.exit(main(sys.argv[1]))
