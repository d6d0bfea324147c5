"""Check rows as another engine gives them: collected, then written as a file of shared/checks."""

import csv
import io
import pathlib

COLUMNS = ["id", "formula", "inputs", "expected", "unit", "tolerance", "source", "status", "note"]


class Rows:
    """The rows of one file; `source` names the engine."""

    def __init__(self, title, source, more=()):
        self.title, self.source, self.more, self.rows = title, source, list(more), []

    def add(self, name, formula, inputs, value, unit="", digits=6, tolerance="", note="", more=()):
        """One row: inputs as {name: "12mm"}; `value` is kept to so many significant digits; `more` are cells of further columns."""
        text = "; ".join(f"{key}={given}" for key, given in inputs.items())
        self.rows.append([name, formula, text, figures(value, digits), unit, tolerance, self.source, "engine", note, *more])

    def write(self, path):
        """Writes the file."""
        text = io.StringIO()
        text.write(f"# {self.title}\n")
        writer = csv.writer(text, lineterminator="\n")
        writer.writerow(COLUMNS + self.more)
        writer.writerows(self.rows)
        pathlib.Path(path).write_text(text.getvalue(), encoding="utf-8")
        print(f"{path}: {len(self.rows)} rows")


def figures(value, digits):
    """A number with so many significant digits, its trailing zeros kept, no exponent."""
    decimals = max(0, digits - len(f"{abs(value):.15g}".split(".")[0].lstrip("-0")))
    if 0 < abs(value) < 0.1:
        decimals += len(f"{abs(value):.15f}".split(".")[1]) - len(f"{abs(value):.15f}".split(".")[1].lstrip("0"))
    return f"{value:.{decimals}f}"
