"""One pull after another on the same nut, drawn plainly with NumPy: a million whole fights of each of fifty sequences.

Every draw has one nut (start torque, lost preload, growth, shank), one strength of the person, one strength of each thing
and one friction of each tube, and goes down the list until the nut comes, something breaks or the list ends. A soak
changes the growth, not which nut it is; what the nut has held before throws away the draws that could not have.

Run: python3 moves.py OUTPUT.csv [DRAWS]
"""

import sys

import numpy
from numpy import exp, log, sqrt

from chances import Setup
from rows import Rows

SEQUENCES = 50
THREADS = {12: (12, 1.5, 16.63, 13.5), 14: (14, 1.5, 19.37, 15.5), 24: (24, 1.5, 33.61, 26)}
TYPICAL = {12: 110, 14: 160, 24: 460}


def sequence(random):
    """One sequence as a row writes it: numbers only, torques in N.m."""
    size = int(random.choice(list(THREADS)))
    book = round(TYPICAL[size] * random.uniform(0.7, 1.4))
    growth = round(random.uniform(1.0, 2.0), 2)
    one = {"book": book, "growthMedian": growth, "growthSigma": round(random.uniform(0.15, 0.45), 2)}
    if random.random() < 0.85:
        one |= dict(zip(("diameter", "pitch", "face", "hole"), THREADS[size])) | {"friction": 0.14}
        if random.random() < 0.7:
            strength = [(640, 800), (940, 1040)][random.integers(2)]
            one |= {"yield": strength[0], "tensile": strength[1], "grownShare": round(random.uniform(0.4, 0.95), 2)}
    if random.random() < 0.6:
        one["onBook"] = 1
    if random.random() < 0.3:
        one["bookSigma"] = round(random.uniform(0.15, 0.35), 2)
    if random.random() < 0.2:
        one["prevailing"] = round(book * 0.15)
    if random.random() < 0.25:
        one["held"] = round(book * growth * random.uniform(0.5, 0.9))
    pulls = int(random.integers(2, 7))
    if random.random() < 0.6:
        share = random.uniform(0.5, 0.8)
        one |= {"soakedFrom": int(random.integers(2, pulls + 1)), "soakedMedian": round(1 + share * (growth - 1), 2),
                "soakedSigma": round(one["growthSigma"] * random.uniform(0.8, 1), 2)}
    one["pulls"] = pulls
    hand = book * growth * random.uniform(0.4, 1)
    for pull in range(1, pulls + 1):
        one |= {f"hand{pull}": round(hand), f"handSigma{pull}": round(random.uniform(0.2, 0.35), 2)}
        if random.random() < 0.3:
            one[f"handCap{pull}"] = round(hand * random.uniform(1.1, 1.6))
        hand *= random.uniform(0.95, 1.5)
    for tool in range(1, int(random.integers(1, 6)) + 1):
        first = int(random.integers(1, pulls + 1))
        one |= {f"tool{tool}": round(book * growth * random.uniform(0.8, 2.2)), f"toolSigma{tool}": [0.08, 0.1, 0.15][random.integers(3)],
                f"toolFrom{tool}": first, f"toolTo{tool}": int(random.integers(first, pulls + 1))}
    if random.random() < 0.4:
        tight = round(book * growth * random.uniform(1.2, 2.5))
        one |= {"cornersTight": tight, "cornersLoose": round(tight * random.uniform(0.2, 0.6)), "cornersSigma": 0.246}
    if random.random() < 0.4:
        first = int(random.integers(1, pulls + 1))
        one |= {"tube": 0.2, "tubeBelow": 0.25, "tubeAbove": 0.3, "leastTube": round(random.uniform(0.1, 0.18), 3),
                "tubeFrom": first, "tubeTo": int(random.integers(first, pulls + 1))}
    return one


def fights(one, count, random):
    """After each pull: draws that have come loose, draws in which something broke, and how many were fought."""
    thread = tuple(one[key] for key in ("diameter", "pitch", "face", "hole")) if "diameter" in one else None
    stud = (one["yield"], one["tensile"], one["grownShare"]) if "yield" in one else None
    setup = Setup(1e3 * one["book"], (one["growthMedian"], one["growthSigma"]), (1, 1, None), [], extra=1e3 * one.get("prevailing", 0),
                  on_book="onBook" in one, thread=thread, stud=stud)
    normal = random.standard_normal
    lost, deviate = random.random(count), normal(count)
    if "bookSigma" in one:
        starts = setup.book * exp(one["bookSigma"] * numpy.linspace(-5, 5, 2001))
        table = numpy.array([setup.joint(start) for start in starts])
        start = log(setup.book) + one["bookSigma"] * normal(count)
        loosening, book, share, stress = (numpy.interp(start, log(starts), column) for column in table.T)
    else:
        loosening, book, share, stress = (numpy.full(count, value) for value in setup.joint(setup.book))
    left = 1 - 0.10 * lost
    onto = book if setup.on_book or thread is None else loosening * left
    takes = onto * one["growthMedian"] * exp(one["growthSigma"] * deviate) + setup.extra
    fought = takes >= 1e3 * one.get("held", 0)
    softer = onto * one.get("soakedMedian", 1) * exp(one.get("soakedSigma", 0) * deviate) + setup.extra
    if stud:
        stands = setup.plastic() * exp(0.08 * normal(count)) * sqrt(1 - numpy.minimum(1, stress * left / stud[1]) ** 2)
        clean, extra = loosening * left, setup.extra
        within, beyond = extra + (stands - extra) / share, extra + clean + (stands - extra - share * clean) / stud[2]
        snaps = numpy.where(stands <= extra, stands, numpy.where(stands - extra <= share * clean, within, beyond))
    corners = None
    if "cornersTight" in one:
        tight, loose = 1e3 * one["cornersTight"], 1e3 * one["cornersLoose"]
        corners = (tight + (loose - tight) * random.random(count)) * exp(one["cornersSigma"] * normal(count))
    tools, number = [], 1
    while f"tool{number}" in one:
        drawn = 1e3 * one[f"tool{number}"] * exp(one[f"toolSigma{number}"] * normal(count))
        tools.append((drawn, one[f"toolFrom{number}"], one[f"toolTo{number}"]))
        number += 1
    slides = numpy.zeros(count, dtype=bool)
    if "tube" in one:
        z = normal(count)
        slides = one["tube"] * exp(z * numpy.where(z < 0, one["tubeBelow"], one["tubeAbove"])) < one["leastTube"]
    day = normal(count)
    still, came, broke, states = fought.copy(), numpy.zeros(count, dtype=bool), numpy.zeros(count, dtype=bool), []
    for pull in range(1, one["pulls"] + 1):
        nut = softer if pull >= one.get("soakedFrom", 99) else takes
        hand = numpy.minimum(1e3 * one[f"hand{pull}"] * exp(one[f"handSigma{pull}"] * day), 1e3 * one.get(f"handCap{pull}", numpy.inf))
        reached = numpy.minimum(nut, hand)
        gone = numpy.zeros(count, dtype=bool)
        if "tube" in one and one["tubeFrom"] <= pull <= one["tubeTo"]:
            gone |= slides
        if stud:
            gone |= snaps <= reached
        if corners is not None:
            gone |= corners <= reached
        for drawn, first, last in tools:
            if first <= pull <= last:
                gone |= drawn <= reached
        broke |= still & gone
        came |= still & ~gone & (nut <= hand)
        still &= ~gone & (nut > hand)
        states.append((numpy.sum(came), numpy.sum(broke)))
    return numpy.array(states, dtype=float), numpy.sum(fought)


UNITS = {"book": "Nm", "prevailing": "Nm", "held": "Nm", "cornersTight": "Nm", "cornersLoose": "Nm",
         "diameter": "mm", "pitch": "mm", "face": "mm", "hole": "mm", "yield": "MPa", "tensile": "MPa"}


def written(name, value):
    """An input with its unit."""
    numbered = name.rstrip("0123456789")
    return f"{value}{UNITS.get(name, 'Nm' if numbered in ('hand', 'handCap', 'tool') and name != numbered else '')}"


def main(output, draws="1000000"):
    """All of them, at the end and half way."""
    rows = Rows("Pull after pull on the same nut, by NumPy", f"NumPy {numpy.__version__}; tests/Engines/moves.py")
    random = numpy.random.default_rng(20250131)
    for number in range(1, SEQUENCES + 1):
        one = sequence(random)
        states, fought = fights(one, int(draws), random)
        for by in sorted({(one["pulls"] + 1) // 2, one["pulls"]}):
            given = {name: written(name, value) for name, value in one.items()} | {"by": str(by)}
            for kind, chance in zip(("ComesLoose", "Breaks"), states[by - 1] / fought):
                rows.add(f"fight-{number}-{by}-{kind.lower()}", f"PullSequence.{kind}", given, chance, tolerance="0.005",
                         note="within 0.5 percentage points")
    rows.write(output)


if __name__ == "__main__":
    main(*sys.argv[1:])
