"""What a nut takes after what it and its like have shown, by SciPy: adaptive quadrature over the part that is common to
the machine, and for every case two million plain draws of machines and nuts that must agree within four of their own
standard errors wherever drawing can (nuts that came are met by weights).

A nut's torque is extra + exp(ln median + common + own); common and own are normal with (1 - within) and within of the
variance. This nut held H: its torque is above H. Like nuts came at B: density there. Like nuts held: chance above.

Run: python3 shown.py OUTPUT.csv [DRAWS]
"""

import sys

import numpy
import scipy
from numpy import exp, log, sqrt
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.stats import norm

from rows import Rows

# Growth of the conditions clean, used, rusted, salted and heat-rusted: sigma = ln(P90/P10)/2.5631.
SIGMA = {"clean": 0.11869, "used": 0.23363, "rusted": 0.36284, "salted": 0.34415, "heat-rusted": 0.34678}
MEDIAN = {"clean": 360e3, "used": 470e3, "rusted": 630e3, "salted": 810e3, "heat-rusted": 897e3}


def cases():
    """Name, numbers; every condition by what was shown."""
    for name, sigma in SIGMA.items():
        median = MEDIAN[name]
        base = dict(median=median, sigma=sigma)
        yield f"{name}-held", dict(base, held=round(1.05 * median))
        yield f"{name}-came", dict(base, came=[round(1.3 * median)])
        yield f"{name}-two-came", dict(base, came=[round(0.8 * median), round(1.1 * median)], extra=20e3)
        yield f"{name}-both", dict(base, held=round(0.9 * median), came=[round(1.2 * median)])
    base = dict(median=630e3, sigma=SIGMA["rusted"])
    yield "alike-held", dict(base, alike=[700e3])
    yield "alike-two-held", dict(base, alike=[500e3, 800e3], within=0.3)
    yield "alike-and-came", dict(base, alike=[500e3], came=[900e3], extra=40e3)
    yield "everything", dict(base, held=550e3, alike=[500e3, 620e3], came=[700e3, 840e3], extra=30e3, within=0.6)
    yield "mixture-came", dict(base, median2=420e3, came=[700e3], held=380e3)
    yield "mixture-alike", dict(base, median2=420e3, alike=[600e3])
    yield "held-far-out", dict(base, held=2500e3)


class Case:
    """One case by quadrature and by drawing."""

    def __init__(self, median, sigma, held=0.0, came=(), alike=(), extra=0.0, within=0.5, median2=None):
        self.parts = [(log(median), sigma)] + ([(log(median2), sigma)] if median2 else [])
        self.held, self.extra, self.within = held, extra, within
        self.came = [log(torque - extra) for torque in came]
        self.alike = [log(torque - extra) for torque in alike]

    def over(self, torque):
        """Joint chance of what was shown and of this nut taking more than a torque."""
        place, total = log(torque - self.extra), 0.0
        for middle, sigma in self.parts:
            own, common = sigma * sqrt(self.within), sigma * sqrt(1 - self.within)

            def weigh(part):
                value = norm.pdf(part, 0, common) * norm.sf(place, middle + part, own)
                for came in self.came:
                    value *= norm.pdf(came, middle + part, own)
                for stood in self.alike:
                    value *= norm.sf(stood, middle + part, own)
                return value

            points = [z * common for z in (-6, -4, -2, -1, 0, 1, 2, 3, 4, 5, 6, 8)]
            total += sum(quad(weigh, a, b, epsabs=0, epsrel=1e-11, limit=200)[0] for a, b in zip(points, points[1:]))
        return total

    def survival(self, torque):
        """Chance of more, given what was shown."""
        if torque <= self.held:
            return 1.0
        return self.over(torque) / self.over(max(self.held, self.extra + 1e-3))

    def quantile(self, share):
        """Torque below which a share comes."""
        return brentq(lambda torque: self.survival(torque) - 1 + share, max(self.held, self.extra + 1e3), 2e7, xtol=1e-4, rtol=1e-13)

    def drawn(self, torque, draws, random):
        """The same chance from draws, and its standard error; None where too few nuts stood so much."""
        which = random.integers(0, len(self.parts), draws)
        middle, sigma = numpy.array(self.parts)[which].T
        machine = middle + sigma * sqrt(1 - self.within) * random.standard_normal(draws)
        own = sigma * sqrt(self.within)
        keep = numpy.ones(draws)
        for came in self.came:
            keep *= norm.pdf(came, machine, own)
        for stood in self.alike:
            keep *= machine + own * random.standard_normal(draws) > stood
        nut = self.extra + exp(machine + own * random.standard_normal(draws))
        keep *= nut > self.held
        if numpy.count_nonzero(keep) < 1000:
            return None
        more = nut > torque
        chance = (keep * more).sum() / keep.sum()
        return chance, sqrt((keep**2 * (more - chance) ** 2).sum()) / keep.sum()


def main(output, draws=2_000_000):
    """Writes the rows; fails where quadrature and draws part."""
    rows = Rows("What a nut takes after what it and its like have shown",
                f"SciPy {scipy.__version__} quadrature over the common part; draws by NumPy agree")
    random = numpy.random.default_rng(20)
    for name, numbers in cases():
        case = Case(**numbers)
        given = {key: f"{numbers[key]:.0f}Nmm" if key not in ("sigma", "within") else numbers[key]
                 for key in numbers if key not in ("came", "alike")}
        for key in ("came", "alike"):
            given |= {f"{key}{i + 1}": f"{torque:.0f}Nmm" for i, torque in enumerate(numbers.get(key, []))}
        middle = case.quantile(0.5)
        for share in (0.1, 0.5, 0.9):
            torque = middle if share == 0.5 else case.quantile(share)
            rows.add(f"shown-{name}-{share * 100:.0f}", "BreakLooseTorque.Quantile", dict(given, share=share), torque, "Nmm", 7, f"{torque * 2e-6:.3g}", "within 2e-6 of the torque")
        check = case.drawn(middle, draws, random)
        if check and abs(check[0] - 0.5) > 4 * check[1]:
            sys.exit(f"{name}: {check[0]:.5f} drawn, standard error {check[1]:.5f}, 0.5 by quadrature")
        torque = 1.2 * middle
        rows.add(f"shown-{name}-more", "BreakLooseTorque.Survival", dict(given, torque=f"{torque:.0f}Nmm"), case.survival(round(torque)), "", 7, "0.000002", "within 2e-6")
    rows.write(output)


main(sys.argv[1], *map(int, sys.argv[2:]))
