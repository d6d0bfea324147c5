"""The three chances and the lognormal quantiles, by SciPy: nested adaptive quadrature over the scattered inputs, and ten
million plain draws of every set-up that must agree with it within four of their own standard errors.

T = book * share(friction) * (1 - 0.10 * lost) * G + extra, or T = book * G + extra where no thread is given; the hand's
torque is lognormal, cut at its cap; each link's strength is lognormal. Comes undone: T is the least of all; stays
stuck: the hand is.

Run: python3 chances.py OUTPUT.csv [DRAWS]
"""

import sys

import numpy
import scipy
from numpy import arctan, cos, exp, log, pi, sqrt, tan
from scipy.integrate import nquad
from scipy.special import ndtr
from scipy.stats import lognorm, norm

from rows import Rows

WITHIN = "within 0.05 percentage points"

# book, growth median and sigma, hand median, sigma and cap, links (median, sigma), extra; then thread and friction.
SETUPS = {
    "book-even": dict(book=460e3, growth=(1.4, 0.35), hand=(550e3, 0.25, None), links=[(700e3, 0.08)]),
    "book-weak-link": dict(book=460e3, growth=(1.8, 0.45), hand=(900e3, 0.3, 1100e3), links=[(640e3, 0.08), (883e3, 0.08)]),
    "book-capped": dict(book=300e3, growth=(1.3, 0.3), hand=(500e3, 0.4, 480e3), links=[(1165e3, 0.08)]),
    "book-locknut": dict(book=200e3, growth=(0.9, 0.15), hand=(300e3, 0.2, None), links=[(350e3, 0.08)], extra=60e3),
    "m24-used": dict(book=460e3, growth=(1.1, 0.2), hand=(430e3, 0.25, 600e3), links=[(640e3, 0.08), (1165e3, 0.08)],
                     thread=(24, 1.5, 33.61, 26), friction=(0.10, 0.14, 0.196)),
    "m12-oiled": dict(book=95e3, growth=(1.0, 0.1), hand=(80e3, 0.2, None), links=[(150e3, 0.08)],
                      thread=(12, 1.25, 16.63, 13.5), friction=(0.08, 0.10, 0.13)),
    "m20-rusted": dict(book=400e3, growth=(1.9, 0.4), hand=(700e3, 0.3, 800e3), links=[(640e3, 0.08), (750e3, 0.08), (900e3, 0.08)],
                       thread=(20, 2.5, 28.19, 22), friction=(0.10, 0.14, 0.196), extra=20e3),
}


def loosening_share(friction, thread):
    """Torque down over torque up of a 60 degree thread."""
    diameter, pitch, face, hole = thread
    middle = diameter - 0.75 * sqrt(3) / 2 * pitch
    lead, rub = arctan(pitch / (pi * middle)), arctan(friction / cos(pi / 6))
    seat = friction * (face + hole) / 4
    return (middle / 2 * tan(rub - lead) + seat) / (middle / 2 * tan(rub + lead) + seat)


class Setup:
    """One set-up, with its chances by quadrature and by drawing."""

    def __init__(self, book, growth, hand, links, extra=0.0, thread=None, friction=None):
        self.book, self.growth, self.hand, self.links, self.extra = book, growth, hand, links, extra
        self.thread, self.friction = thread, friction
        self.cap = hand[2] or numpy.inf

    def scale(self, deviate=0.0, lost=0.0):
        """What G multiplies."""
        if self.thread is None:
            return self.book
        low, likely, high = self.friction
        friction = likely * exp(deviate * log(high / low) / (2 * norm.ppf(0.9)))
        return self.book * loosening_share(friction, self.thread) * (1 - 0.10 * lost)

    def links_hold(self, torque):
        """Chance that no link has given at a torque."""
        product = 1.0
        for median, sigma in self.links:
            product = product * ndtr((log(median) - log(torque)) / sigma)
        return product

    def over_inputs(self, inside, span):
        """A chance, averaged over friction and lost preload where a thread is given."""
        options = {"epsabs": 2e-6, "epsrel": 1e-6, "limit": 100}
        if self.thread is None:
            return nquad(lambda x: inside(x, 0.0, 0.0), [span], opts=options)[0]
        weigh = lambda x, z, lost: norm_density(z) * inside(x, z, lost)
        return nquad(weigh, [span, (-6, 6), (0, 1)], opts=options)[0]

    def undone(self):
        """The nut is the weakest."""
        median, sigma, _ = self.hand

        def inside(g, z, lost):
            torque = self.scale(z, lost) * self.growth[0] * exp(self.growth[1] * g) + self.extra
            reached = ndtr((log(median) - log(torque)) / sigma) if torque < self.cap else 0.0
            return norm_density(g) * reached * self.links_hold(torque)

        return self.over_inputs(inside, (-8, 8))

    def stuck(self):
        """The hand is the weakest."""
        median, sigma, _ = self.hand
        top = min(8.0, (log(self.cap) - log(median)) / sigma) if self.hand[2] else 8.0

        def holds(torque, z, lost):
            rest = torque - self.extra
            return 1.0 if rest <= 0 else ndtr((log(self.scale(z, lost) * self.growth[0]) - log(rest)) / self.growth[1])

        def inside(h, z, lost):
            torque = median * exp(sigma * h)
            return norm_density(h) * holds(torque, z, lost) * self.links_hold(torque)

        below = self.over_inputs(inside, (-8, top))
        if not self.hand[2]:
            return below
        options = {"epsabs": 1e-7}
        nut = (holds(self.cap, 0, 0) if self.thread is None else
               nquad(lambda z, lost: norm_density(z) * holds(self.cap, z, lost), [(-6, 6), (0, 1)], opts=options)[0])
        return below + ndtr(-top) * nut * self.links_hold(self.cap)

    def draw(self, count, random):
        """Shares of plain draws."""
        lost = random.random(count)
        deviate = random.standard_normal(count)
        torque = self.scale(deviate, lost) * self.growth[0] * exp(self.growth[1] * random.standard_normal(count)) + self.extra
        hand = numpy.minimum(self.cap, self.hand[0] * exp(self.hand[1] * random.standard_normal(count)))
        link = numpy.full(count, numpy.inf)
        for median, sigma in self.links:
            link = numpy.minimum(link, median * exp(sigma * random.standard_normal(count)))
        return numpy.mean((torque <= hand) & (torque <= link)), numpy.mean((hand < torque) & (hand <= link))

    def inputs(self):
        """As a row writes it."""
        given = {"book": f"{self.book / 1000:g}Nm", "growthMedian": f"{self.growth[0]}", "growthSigma": f"{self.growth[1]}",
                 "hand": f"{self.hand[0] / 1000:g}Nm", "handSigma": f"{self.hand[1]}"}
        if self.hand[2]:
            given["handCap"] = f"{self.hand[2] / 1000:g}Nm"
        for number, (median, sigma) in enumerate(self.links, 1):
            given |= {f"link{number}": f"{median / 1000:g}Nm", f"linkSigma{number}": f"{sigma}"}
        if self.extra:
            given["prevailing"] = f"{self.extra / 1000:g}Nm"
        if self.thread:
            given |= dict(zip(("diameter", "pitch", "face", "hole"), (f"{x}mm" for x in self.thread)))
            given |= dict(zip(("frictionLow", "friction", "frictionHigh"), (f"{x}" for x in self.friction)))
        return given


def norm_density(z):
    """Standard normal density."""
    return exp(-z * z / 2) / sqrt(2 * pi)


def chances(rows, draws):
    """Each set-up by quadrature, held against its draws."""
    random = numpy.random.default_rng(20240229)
    for name, given in SETUPS.items():
        setup = Setup(**given)
        found = (setup.undone(), setup.stuck())
        parts = [setup.draw(1_000_000, random) for _ in range(draws // 1_000_000)]
        for kind, chance, drawn in zip(("ComesLoose", "StaysTight"), found, numpy.mean(parts, axis=0)):
            error = sqrt(chance * (1 - chance) / draws)
            print(f"{name:15} {kind:7} quadrature {chance:.6f}, {draws} draws {drawn:.6f}, {(drawn - chance) / error:+.1f} errors")
            assert abs(drawn - chance) < 4 * error + 2e-5, "quadrature and draws disagree"
            rows.add(f"{name}-{kind.lower()}", f"CompetingRisks.{kind}", setup.inputs(), chance, tolerance="0.0005", note=WITHIN)


def quantiles(rows):
    """Quantiles and sigmas of the lognormal."""
    for median, sigma in ((630, 0.36), (1.4, 0.08), (350, 1.2)):
        for share in (0.001, 0.05, 0.1, 0.5, 0.9, 0.95, 0.999):
            rows.add(f"quantile-{median}-{sigma}-{share}", "LogNormalSpread.Quantile",
                     {"median": f"{median}", "sigma": f"{sigma}", "share": f"{share}"}, lognorm.ppf(share, sigma, scale=median), digits=9)
    for low, high in ((0.5, 2.0), (395, 1000)):
        rows.add(f"sigma-p10-p90-{high}", "LogNormalSpread.SigmaFromP10P90", {"p10": f"{low}", "p90": f"{high}"},
                 log(high / low) / (norm.ppf(0.9) - norm.ppf(0.1)), digits=9)
        rows.add(f"sigma-p5-p95-{high}", "LogNormalSpread.SigmaFromP5P95", {"p5": f"{low}", "p95": f"{high}"},
                 log(high / low) / (norm.ppf(0.95) - norm.ppf(0.05)), digits=9)


def main(output, draws="10000000"):
    """All of them."""
    rows = Rows("The three chances and the lognormal quantiles, by SciPy", f"SciPy {scipy.__version__}; tests/Engines/chances.py")
    chances(rows, int(draws))
    quantiles(rows)
    rows.write(output)


main(*sys.argv[1:])
