"""The chances of two hundred set-ups drawn at random, each by SciPy's quadrature and by 300,000 plain draws that must
agree with it within five of their own standard errors. What can end a pull is drawn near what the nut takes, so that every end counts.

Run: python3 drawn.py OUTPUT.csv [DRAWS]
"""

import sys

import numpy
import scipy
from numpy import sqrt

from chances import KINDS, Setup
from rows import Rows, figures

SETUPS = 200
THREADS = {8: (8, 1.25, 11.63, 9), 10: (10, 1.5, 14.63, 11), 12: (12, 1.5, 16.63, 13.5), 14: (14, 1.5, 19.37, 15.5),
           16: (16, 2, 22.49, 17.5), 20: (20, 2.5, 28.19, 22), 24: (24, 1.5, 33.61, 26)}


def drawn(random):
    """One set-up: torques in whole N.m, shares to three figures, as a row can hold them exactly."""
    def between(low, high, digits=3):
        return round(float(low * (high / low) ** random.random()), digits)

    def torque(low, high):
        return 1e3 * max(1, round(between(low, high)))

    size = int(random.choice(list(THREADS)))
    book = torque(0.02 * size ** 3, 0.08 * size ** 3)
    growth = (between(0.95, 2), between(0.12, 0.45))
    typical = book / 1e3 * growth[0]
    one = {"book": book, "growth": growth, "on_book": bool(random.random() < 0.5)}
    hand = torque(0.6 * typical, 2.2 * typical)
    one["hand"] = (hand, between(0.15, 0.4), torque(hand / 1e3, 1.6 * hand / 1e3) if random.random() < 0.5 else None)
    one["links"] = [(torque(0.8 * typical, 3 * typical), [0.08, 0.1, 0.15][random.integers(3)]) for _ in range(random.integers(4))]
    if random.random() < 0.3:
        one["sigma"] = between(0.1, 0.4)
    if random.random() < 0.3:
        one["extra"] = torque(0.05 * typical, 0.3 * typical)
    if random.random() < 0.85:
        one |= {"thread": THREADS[size], "friction": between(0.08, 0.2)}
        if random.random() < 0.7:
            one["stud"] = [(640, 800), (940, 1040)][random.integers(2)] + (between(0.4, 1),)
    if random.random() < 0.5:
        tight = torque(typical, 4 * typical)
        one["corners"] = (tight, 1e3 * max(1, round(tight / 1e3 * random.uniform(0.1, 0.7))), 0.246)
    if random.random() < 0.5:
        one["hold"] = (torque(0.8 * typical, 3 * typical), 0.15)
    if random.random() < 0.5:
        one["tube"] = (0.2, between(0.15, 0.35), between(0.15, 0.35), between(0.1, 0.18), between(0.5, 0.9), between(0.1, 1))
    return one


def main(output, draws="300000"):
    """All of them."""
    random = numpy.random.default_rng(20261130)
    rows = Rows("The chances of two hundred drawn set-ups, by SciPy", f"SciPy {scipy.__version__}; tests/Engines/drawn.py", KINDS[1:])
    scores, number = [], 0
    while number < SETUPS:
        setup = Setup(**drawn(random))
        if setup.thread and setup.stud and setup.thread.at_yield(1.0, setup.stud[0]) * setup.thread.tightening(1.0) < setup.book:
            continue
        number += 1
        found = setup.chances()
        assert abs(sum(found[:-1]) - 1) < 1e-5, "the chances do not sum to 1"
        counts = setup.draw(int(draws), random)
        for kind, chance, count in zip(KINDS, found, counts):
            cases = counts[0] if kind == "SlidesAsItTurns" else int(draws)
            if chance * cases > 50 and (1 - chance) * cases > 50:
                scores.append((count / cases - chance) / sqrt(chance * (1 - chance) / cases))
                assert abs(scores[-1]) < 5, f"set-up {number}, {kind}: quadrature {chance:.6f}, drawn {count / cases:.6f}"
        rows.add(f"drawn-{number}", "CompetingRisks.ComesLoose", setup.inputs(), found[0], more=[figures(one, 6) for one in found[1:]])
    print(f"{len(scores)} scores of {draws} draws, worst {max(map(abs, scores)):.2f}, mean square {numpy.mean(numpy.square(scores)):.3f}", flush=True)
    rows.write(output)


if __name__ == "__main__":
    main(*sys.argv[1:])
