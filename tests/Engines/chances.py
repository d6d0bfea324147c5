"""What happens first, and the lognormal quantiles, by SciPy: adaptive quadrature over start torque and lost preload, a fine
sum over the torque, and ten million plain draws of every set-up that must agree with it within four of their own standard
errors.

Preload F = T0/arm(mu), never past yield in tension and torsion (mu is raised until it just reaches it); now mu >= 0.14 and
T = F*(1 - 0.10*lost)*loosening_arm*G + extra, or T = F*tightening_arm*G + extra on the book torque, T0*G + extra with no thread.
The shank takes s of the clean part, w of the rest, all of the extra, and stands Tp*sqrt(1 - (stress/Rm)^2).

Run: python3 chances.py OUTPUT.csv [DRAWS]
"""

import sys
from functools import cache, cached_property

import numpy
import scipy
from numpy import arctan, cos, exp, log, pi, sqrt, tan
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.special import ndtr
from scipy.stats import lognorm, norm

from rows import Rows

WITHIN = "within 0.05 percentage points"
KINDS = ("ComesLoose", "StaysTight", "ToolGives", "StudTwistsOff", "CornersRound", "SlidesOff", "WheelTurns", "SlidesAsItTurns")
CELLS = 8000

# Torques in N.mm. thread: diameter, pitch, face, hole; stud: yield, tensile, w; corners: median at least and most play, sigma;
# tube: median friction, sigma below and above, friction just needed, q, turn over the turn at which all clamp is gone.
SETUPS = {
    "book-even": dict(book=460e3, growth=(1.4, 0.35), hand=(550e3, 0.25, None), links=[(700e3, 0.08)]),
    "book-weak-link": dict(book=460e3, growth=(1.8, 0.45), hand=(900e3, 0.3, 1100e3), links=[(640e3, 0.08), (883e3, 0.08)]),
    "book-capped": dict(book=300e3, growth=(1.3, 0.3), hand=(500e3, 0.4, 480e3), links=[(1165e3, 0.08)]),
    "book-locknut": dict(book=200e3, growth=(0.9, 0.15), hand=(300e3, 0.2, None), links=[(350e3, 0.08)], extra=60e3),
    "wheel-nut": dict(book=120e3, growth=(1.37, 0.363), hand=(330e3, 0.3, 420e3), links=[(300e3, 0.08)], on_book=True,
                      thread=(12, 1.5, 16.63, 13.5), friction=0.14, stud=(940, 1040, 0.6)),
    "burnt-stud": dict(book=120e3, growth=(1.95, 0.347), hand=(380e3, 0.25, None), links=[(500e3, 0.08)], on_book=True,
                       thread=(12, 1.5, 16.63, 13.5), friction=0.10, stud=(940, 1040, 0.9), extra=15e3),
    "over-tight": dict(book=300e3, growth=(1.35, 0.234), hand=(500e3, 0.3, None), links=[(600e3, 0.08)],
                       thread=(12, 1.5, 16.63, 13.5), friction=0.14, stud=(940, 1040, 0.5)),
    "soft-corners": dict(book=95e3, growth=(1.35, 0.234), hand=(200e3, 0.3, None), links=[(350e3, 0.08)],
                         thread=(12, 1.25, 16.63, 13.5), friction=0.10, stud=(640, 800, 0.5), corners=(170e3, 60e3, 0.246)),
    "held-hub": dict(book=460e3, growth=(1.37, 0.363), hand=(760e3, 0.28, 1050e3), links=[(900e3, 0.08), (1165e3, 0.08)], on_book=True,
                     thread=(24, 1.5, 33.61, 26), friction=0.14, stud=(660, 830, 0.6), hold=(620e3, 0.15)),
    "loose-tube": dict(book=460e3, growth=(1.35, 0.234), hand=(560e3, 0.25, 800e3), links=[(640e3, 0.08)],
                       thread=(24, 1.5, 33.61, 26), friction=0.14, stud=(660, 830, 0.5),
                       tube=(0.2, 0.25, 0.3, 0.13, 0.9, 0.2)),
    "by-sight": dict(book=220e3, sigma=0.3, growth=(1.35, 0.234), hand=(300e3, 0.25, None), links=[(480e3, 0.08)],
                     thread=(14, 1.5, 19.37, 15.5), friction=0.14, stud=(640, 800, 0.5), corners=(600e3, 220e3, 0.246),
                     hold=(420e3, 0.15), tube=(0.25, 0.2, 0.2, 0.16, 0.8, 0.2)),
}


class Thread:
    """A 60 degree thread with its face, at one friction."""

    def __init__(self, diameter, pitch, face, hole):
        triangle = sqrt(3) / 2 * pitch
        self.middle = diameter - 0.75 * triangle
        self.stress = (self.middle + diameter - 17 / 12 * triangle) / 2
        self.area = pi / 4 * self.stress ** 2
        self.lead = arctan(pitch / (pi * self.middle))
        self.seat = (face + hole) / 4

    def tightening(self, friction):
        return self.middle / 2 * tan(arctan(friction / cos(pi / 6)) + self.lead) + self.seat * friction

    def in_thread(self, friction):
        return self.middle / 2 * tan(arctan(friction / cos(pi / 6)) - self.lead)

    def loosening(self, friction):
        return self.in_thread(friction) + self.seat * friction

    def at_yield(self, friction, strength):
        twist = 1.5 * self.middle / self.stress * tan(arctan(friction / cos(pi / 6)) + self.lead)
        return self.area * strength / sqrt(1 + 3 * twist ** 2)

    def believed(self, torque, friction, strength):
        """Friction at which the torque no longer passes yield, at most 1."""
        over = lambda mu: torque / self.tightening(mu) - self.at_yield(mu, strength)
        if over(friction) <= 0:
            return friction
        return 1.0 if over(1.0) >= 0 else brentq(over, friction, 1.0, xtol=1e-12)


class Setup:
    """One set-up, with its chances by quadrature and by drawing."""

    def __init__(self, book, growth, hand, links, sigma=0.0, extra=0.0, on_book=False, thread=None, friction=0.14, stud=None,
                 corners=None, hold=None, tube=None):
        self.book, self.sigma, self.growth, self.hand, self.links, self.extra = book, sigma, growth, hand, links, extra
        self.on_book, self.friction, self.stud, self.corners, self.hold, self.tube = on_book, friction, stud, corners, hold, tube
        self.sizes, self.thread = thread, Thread(*thread) if thread else None
        self.cap = hand[2] or numpy.inf

    def joint(self, torque):
        """Loosening torque, book torque, thread's share and stress of a start torque, nothing lost."""
        if self.thread is None:
            return 0.8 * torque, torque, 0.375, 0.0
        friction = self.friction
        if self.stud:
            most = self.thread.at_yield(1.0, self.stud[0]) * self.thread.tightening(1.0)
            torque = min(torque, most)
            friction = self.thread.believed(torque, friction, self.stud[0])
        now = max(0.14, friction)
        preload = torque / self.thread.tightening(friction)
        return (preload * self.thread.loosening(now), preload * self.thread.tightening(now),
                self.thread.in_thread(now) / self.thread.loosening(now), preload / self.thread.area)

    def twist(self, torque, loosening, share):
        """Torque in the shank."""
        extra = numpy.minimum(torque, self.extra)
        clean = numpy.minimum(torque - extra, loosening)
        return share * clean + self.stud[2] * (torque - extra - clean) + extra

    def plastic(self):
        return pi / 12 * self.thread.stress ** 3 * 0.577 * self.stud[1]

    def least(self, torque):
        """Friction the tube needs at the end of the swing."""
        _, _, _, need, running, turned = self.tube
        return need / (running * (1 - numpy.minimum(1, self.joint(self.book)[0] / torque) * min(1, turned)))

    def below(self, friction):
        """Chance of less friction of tube on bar."""
        median, under, over, *_ = self.tube
        return ndtr(log(friction / median) / numpy.where(friction < median, under, over))

    def given(self, deviate, lost):
        """The chances with start torque and lost preload given."""
        loosening, book, share, stress = self.joint(self.book * exp(self.sigma * deviate))
        left = 1 - 0.10 * lost
        onto = book if self.on_book or self.thread is None else loosening * left
        if self.thread is None and not self.on_book:
            onto = book
        median, sigma, cap = self.hand
        ends = [(median, sigma), *self.links] + ([self.corners[1:]] if self.corners else []) + ([self.hold] if self.hold else [])
        low = log(min([onto * self.growth[0] * exp(-8 * self.growth[1]) + self.extra] + [one * exp(-8 * scatter) for one, scatter in ends]))
        high = min(log(self.cap), log(max(median * exp(8 * sigma), 1)))
        u = numpy.linspace(low, high, CELLS + 1)
        torque = exp(u)
        rest = numpy.maximum(torque - self.extra, 1e-300)
        holds = [ndtr((log(onto * self.growth[0]) - log(rest)) / self.growth[1]), ndtr((log(median) - u) / sigma)]
        kinds = ["ComesLoose", "StaysTight"]
        for strength, scatter in self.links:
            holds.append(ndtr((log(strength) - u) / scatter))
            kinds.append("ToolGives")
        if self.stud:
            stands = self.plastic() * sqrt(1 - (stress * left / self.stud[1]) ** 2)
            holds.append(ndtr((log(stands) - log(self.twist(torque, loosening * left, share))) / 0.08))
            kinds.append("StudTwistsOff")
        if self.corners:
            play, weights = numpy.polynomial.legendre.leggauss(24)
            strengths = self.corners[0] + (self.corners[1] - self.corners[0]) * (play + 1) / 2
            holds.append(sum(weight / 2 * ndtr((log(one) - u) / self.corners[2]) for one, weight in zip(strengths, weights)))
            kinds.append("CornersRound")
        if self.hold:
            holds.append(ndtr((log(self.hold[0]) - u) / self.hold[1]))
            kinds.append("WheelTurns")
        slides = self.below(self.tube[3]) if self.tube else 0.0
        found = dict.fromkeys(KINDS, 0.0)
        middle = [(one[1:] + one[:-1]) / 2 for one in holds]
        for number, (kind, one) in enumerate(zip(kinds, holds)):
            others = numpy.prod([m for k, m in enumerate(middle) if k != number], axis=0)
            parts = (one[:-1] - one[1:]) * others
            found[kind] += (1 - slides) * numpy.sum(parts)
            if kind == "ComesLoose" and self.tube:
                later = self.below(self.least(exp((u[1:] + u[:-1]) / 2)))
                found["SlidesAsItTurns"] = numpy.sum(parts * numpy.maximum(0, later - slides))
        found["StaysTight"] += (1 - slides) * numpy.prod([one[-1] for one in holds])
        found["SlidesOff"] = slides
        return numpy.array([found[kind] for kind in KINDS])

    def chances(self):
        """Averaged over start torque and lost preload; the last as a share of the first."""
        @cache
        def of(lost):
            return self.given(0.0, lost)

        def over_lost():
            if self.thread is None:
                return of(0.0)
            return numpy.array([quad(lambda lost: of(lost)[k], 0, 1, epsabs=1e-7, limit=20)[0] if k in wanted else 0.0
                                for k in range(len(KINDS))])
        wanted = [k for k, value in enumerate(self.given(0.0, 0.5)) if value > 0]
        if not self.sigma:
            found = over_lost()
        else:
            lost, weights = numpy.polynomial.legendre.leggauss(6)
            deviates = numpy.linspace(-5, 5, 161)
            density = exp(-deviates ** 2 / 2)
            found = sum(d * w / 2 * self.given(z, (x + 1) / 2) for z, d in zip(deviates, density)
                        for x, w in zip(lost, weights)) / sum(density)
        found[-1] /= found[0]
        return found

    @cached_property
    def table(self):
        """What a start torque decides, over its deviate."""
        at = numpy.linspace(-6, 6, 4001)
        return at, numpy.array([self.joint(self.book * exp(self.sigma * z)) for z in at]).T

    def draw(self, count, random):
        """Counts of plain draws."""
        lost = random.random(count)
        deviate = random.standard_normal(count)
        if self.sigma:
            at, columns = self.table
            loosening, book, share, stress = (numpy.interp(deviate, at, column) for column in columns)
        else:
            loosening, book, share, stress = self.joint(self.book)
        left = 1 - 0.10 * lost
        onto = book if self.on_book or self.thread is None else loosening * left
        lognormal = lambda median, sigma: median * exp(sigma * random.standard_normal(count))
        nut = onto * lognormal(*self.growth) + self.extra
        ends = [nut, numpy.minimum(self.cap, lognormal(*self.hand[:2]))]
        kinds = [0, 1]
        for link in self.links:
            ends.append(lognormal(*link))
            kinds.append(2)
        if self.stud:
            shank = lognormal(self.plastic(), 0.08) * sqrt(1 - (stress * left / self.stud[1]) ** 2)
            extra, clean = self.extra, loosening * left
            beyond = extra + clean + (shank - extra - share * clean) / self.stud[2]
            within = extra + (shank - extra) / share
            ends.append(numpy.where(shank <= extra, shank, numpy.where(shank - extra <= share * clean, within, beyond)))
            kinds.append(3)
        if self.corners:
            ends.append(lognormal(1, self.corners[2]) * (self.corners[0] + (self.corners[1] - self.corners[0]) * random.random(count)))
            kinds.append(4)
        if self.hold:
            ends.append(lognormal(*self.hold))
            kinds.append(6)
        first = numpy.array(kinds)[numpy.argmin(ends, axis=0)]
        turning = 0.0
        if self.tube:
            z = random.standard_normal(count)
            friction = self.tube[0] * exp(z * numpy.where(z < 0, self.tube[1], self.tube[2]))
            first[friction < self.tube[3]] = 5
            turning = numpy.sum((first == 0) & (friction < self.least(nut)))
        return numpy.array([numpy.sum(first == kind) for kind in range(7)] + [turning], dtype=float)

    def inputs(self):
        """As a row writes it."""
        given = {"book": f"{self.book / 1000:g}Nm", "growthMedian": f"{self.growth[0]}", "growthSigma": f"{self.growth[1]}",
                 "hand": f"{self.hand[0] / 1000:g}Nm", "handSigma": f"{self.hand[1]}"}
        if self.sigma:
            given["bookSigma"] = f"{self.sigma}"
        if self.on_book:
            given["onBook"] = "1"
        if self.hand[2]:
            given["handCap"] = f"{self.hand[2] / 1000:g}Nm"
        for number, (median, sigma) in enumerate(self.links, 1):
            given |= {f"link{number}": f"{median / 1000:g}Nm", f"linkSigma{number}": f"{sigma}"}
        if self.extra:
            given["prevailing"] = f"{self.extra / 1000:g}Nm"
        if self.thread:
            given |= dict(zip(("diameter", "pitch", "face", "hole"), (f"{x}mm" for x in self.sizes)))
            given["friction"] = f"{self.friction}"
        if self.stud:
            given |= {"yield": f"{self.stud[0]}MPa", "tensile": f"{self.stud[1]}MPa", "grownShare": f"{self.stud[2]}"}
        if self.corners:
            given |= {"cornersTight": f"{self.corners[0] / 1000:g}Nm", "cornersLoose": f"{self.corners[1] / 1000:g}Nm",
                      "cornersSigma": f"{self.corners[2]}"}
        if self.hold:
            given |= {"hold": f"{self.hold[0] / 1000:g}Nm", "holdSigma": f"{self.hold[1]}"}
        if self.tube:
            given |= dict(zip(("tube", "tubeBelow", "tubeAbove", "leastTube", "runningShare", "turned"), (f"{x}" for x in self.tube)))
        return given


def chances(rows, draws):
    """Each set-up by quadrature, held against its draws."""
    random = numpy.random.default_rng(20240229)
    for name, given in SETUPS.items():
        setup = Setup(**given)
        found = setup.chances()
        assert abs(sum(found[:-1]) - 1) < 1e-5, "the chances do not sum to 1"
        counts = sum(setup.draw(1_000_000, random) for _ in range(draws // 1_000_000))
        drawn = counts / draws
        drawn[-1] = counts[-1] / counts[0]
        for kind, chance, share in zip(KINDS, found, drawn):
            if chance < 1e-6:
                continue
            cases = counts[0] if kind == "SlidesAsItTurns" else draws
            error = sqrt(max(chance * (1 - chance), 1 / cases) / cases)
            print(f"{name:15} {kind:15} quadrature {chance:.6f}, {draws} draws {share:.6f}, {(share - chance) / error:+.1f} errors", flush=True)
            assert abs(share - chance) < 4 * error + 2e-5, "quadrature and draws disagree"
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
    rows = Rows("The chances of what happens first and the lognormal quantiles, by SciPy", f"SciPy {scipy.__version__}; tests/Engines/chances.py")
    chances(rows, int(draws))
    quantiles(rows)
    rows.write(output)


if __name__ == "__main__":
    main(*sys.argv[1:])
