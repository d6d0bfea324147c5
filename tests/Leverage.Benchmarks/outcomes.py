#!/usr/bin/env python3
"""The chances as a vectorised NumPy Monte Carlo of 1,000,000 samples: the baseline of outcomes.sh.

Set-ups and draws are those of ../Engines/chances.py, the same rows OutcomeBenchmark.cs reads; every scattered input is drawn.
"""
import pathlib
import sys
import time

import numpy

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parents[1] / "Engines"))
from chances import SETUPS, Setup  # noqa: E402

SAMPLES = 1_000_000

for name in ("held-hub", "loose-tube", "by-sight"):
    setup, random, times = Setup(**SETUPS[name]), numpy.random.default_rng(1), []
    for _ in range(5):
        start = time.process_time()
        counts = setup.draw(SAMPLES, random)
        times.append(time.process_time() - start)
    print(name, f"{1e3 * sorted(times)[2]:.1f}", *(f"{one / SAMPLES:.6f}" for one in counts[:7]))
