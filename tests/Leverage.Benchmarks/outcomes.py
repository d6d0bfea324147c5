#!/usr/bin/env python3
"""The outcome split as a vectorised NumPy Monte Carlo of 1,000,000 samples: the baseline of outcomes.sh.

The same model as Leverage.Outcomes, every scattered input drawn: friction at assembly (lognormal), preload lost since
(even, 0 to 10 %), growth (lognormal), hand force (lognormal, capped at body weight), each link (lognormal, 8 %).
The set-up is that of OutcomeBenchmark.cs.
"""
import sys
import time

import numpy as np

N = 1_000_000
Z90 = 1.2815515655446004


def loosening_share(mu, d=24.0, p=1.5, dw=33.61, dh=26.0):
    d2 = d - 0.75 * np.sqrt(3) / 2 * p
    phi = np.arctan(p / (np.pi * d2))
    rho = np.arctan(mu / np.cos(np.pi / 6))
    face = mu * (dw + dh) / 4
    return (d2 / 2 * np.tan(rho - phi) + face) / (d2 / 2 * np.tan(rho + phi) + face)


def links(reach, c=250.0, bar=600.0):
    a = reach - bar
    big, wall, yld = 33.7, 3.2, 235.0
    zp = (big**3 - (big - 2 * wall) ** 3) / 6
    dent = yld * wall**2 / 4 * np.sqrt(big / wall) * 22 * 0.01 ** (1.925 / 3.5)
    root = 24 - 17 / 12 * np.sqrt(3) / 2 * 1.5
    return [
        1.25 * 1165e3,
        1.25 * 1412e3,
        900 * np.pi / 32 * 22**3,
        yld * zp / a * reach,
        dent * c / (a + c) * reach,
        0.7 * dent * c / a * reach,
        np.pi / 12 * root**3 * 0.577 * 830,
    ]


def split(condition, rng):
    reach = 600.0 + 1000 - 250 - 95
    if condition == "rusted":
        sigma = np.log(2.18 / 0.86) / (2 * Z90)
        nut = 460e3 * 1.37 * np.exp(sigma * rng.standard_normal(N))
    else:
        sigma = np.log(1.82 / 1.00) / (2 * Z90)
        mu = 0.14 * np.exp(np.log(1.4) / Z90 * rng.standard_normal(N))
        kept = 1 - 0.10 * rng.random(N)
        nut = 460e3 * loosening_share(mu) * kept * 1.35 * np.exp(sigma * rng.standard_normal(N))
    force = 500 * 82 / 84.6 * np.exp(np.log(790 / 310) / 3.2897072539029457 * rng.standard_normal(N))
    hand = np.minimum(force, 82 * 9.80665) * reach
    weakest = np.full(N, np.inf)
    for limit in links(reach):
        weakest = np.minimum(weakest, limit * np.exp(0.08 * rng.standard_normal(N)))
    first = np.minimum(np.minimum(nut, hand), weakest)
    return np.mean(first == nut), np.mean(first == hand), np.mean(first == weakest)


for state in ("rusted", "used"):
    generator = np.random.default_rng(1)
    times = []
    for _ in range(5):
        start = time.perf_counter()
        undone, stuck, gives = split(state, generator)
        times.append(time.perf_counter() - start)
    print(f"{state} undone_percent {100 * undone:.3f} numpy_ms {1e3 * sorted(times)[2]:.1f}")
sys.exit(0)
