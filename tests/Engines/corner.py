"""Corners of a hexagon rounding off, as a plane slice of elastic, perfectly plastic steel in a rigid socket, ring or open jaw: the largest
torque while the driver turns 16 degrees past touch, as m = T/(h·s²·Re). CalculiX (implicit) and a solver of our own (explicit, plastic.py)
from the same mesh, held against each other degree by degree; then a finer mesh, other friction, twice the size and other yields.

Run: python3 corner.py OUTPUT.csv   (needs the program `ccx`; about half an hour of a free core)
"""

import sys

from numpy import convolve, interp, ones

import implicit
import plastic
from hexagon import Slice
from rows import Rows

EXPLICIT, IMPLICIT = "explicit solver, NumPy; tests/Engines/corner.py", "CalculiX 2.20; tests/Engines/corner.py"
FORMULA = {"six": "SixPoints", "jaw": "RigidJaw", "twelve": "TwelvePoints"}
CONTACTS = {"six": 6, "jaw": 2, "twelve": 6}
RE, ACROSS = 640.0, 24.0

# Driver, play, wear, whether CalculiX runs it too: not where the bore shears, for past that its bricks only lock.
CASES = [("six", 0.02, 0, False), ("six", 0.02, 0.1, True), ("six", 0.05, 0.05, True), ("six", 0.05, 0, False), ("six", 0.02, 0.05, False),
         ("six", 0.01, 0.1, False), ("jaw", 0.005, 0, False), ("jaw", 0.02, 0, True), ("jaw", 0.05, 0, True), ("jaw", 0.02, 0.05, False),
         ("jaw", 0.02, 0.1, True), ("jaw", 0.05, 0.05, False), ("twelve", 0.02, 0, False), ("twelve", 0.05, 0, False),
         ("twelve", 0.02, 0.05, False)]


def explicit(kind, play, wear, yield_mpa=RE, friction=0.15, fine=1):
    """Curve of our own solver, averaged over one degree."""
    turns, torques = plastic.curve(Slice(CONTACTS[kind], wear, fine), CONTACTS[kind], play, wear, yield_mpa, friction,
                                   40000 * fine, faces="star" if kind == "twelve" else "plane")
    wide = max(1, round(1 / (turns[1] - turns[0])))
    return convolve(turns, ones(wide) / wide, "valid"), convolve(torques, ones(wide) / wide, "valid")


def solved(kind, play, wear, across=ACROSS):
    """Curve of CalculiX."""
    return implicit.curve(Slice(CONTACTS[kind], wear), CONTACTS[kind], play, wear, RE, across, swing=16.0)


def closed(kind, play, wear):
    """Tolerance of the closed formula, and why it is as wide."""
    if kind == "six" and wear < 0.1 and not (play == 0.05 and wear == 0.05):
        return "10%", "the nut shears round its bore, 0.349 exact: the solids, one piece thick there, stand over it"
    if wear or kind == "twelve":
        return "16%", "stated error of the formula for worn corners and for twelve points"
    return "12%", "stated error of the formula for sharp corners: it lies between the two solvers; CalculiX's largest is 13 % over the other's"


def main(output):
    """All of them."""
    rows = Rows("Corners of a hexagon rounding off as plane solids: the largest m = T/(h·s²·Re)", EXPLICIT)
    limits = {}
    for kind, play, wear, both in CASES:
        name, given = f"{kind}-{play:g}-{wear:g}".replace("0.", ""), {"play": f"{play:g}", "wear": f"{wear:g}"}
        formula, (tolerance, why) = f"CornerHold.{FORMULA[kind]}", closed(kind, play, wear)
        turns, torques = explicit(kind, play, wear)
        limits[name] = torques.max()
        print(f"{name}: explicit {torques.max():.4f} at {turns[torques.argmax()]:.1f} degrees, seen to {turns[-1]:.1f}", flush=True)
        rows.source = EXPLICIT
        rows.add(f"corner-{name}-explicit", formula, given, torques.max(), "", 3, tolerance, why)
        if both:
            turned, held = solved(kind, play, wear)
            rows.source = IMPLICIT
            rows.add(f"corner-{name}-implicit", formula, given, held.max(), "", 3, tolerance, why)
            print(f"{name}: CalculiX {held.max():.4f} at {turned[held.argmax()]:.1f}, solved to {turned[-1]:.1f}; explicit over CalculiX: " + ", ".join(
                f"{at} deg {interp(at, turns, torques) / interp(at, turned, held):.3f}" for at in (1, 2, 4, 8, 12, 15) if at <= min(turns[-1], turned[-1])), flush=True)
    scaling(rows, limits)
    rows.write(output)


def scaling(rows, limits):
    """Other sizes and yields against T = m·h·s²·Re, and what mesh and friction do."""
    rows.source = EXPLICIT
    for yield_mpa in (330.0, 1280.0):
        _, torques = explicit("jaw", 0.02, 0, yield_mpa)
        rows.add(f"corner-yield-{yield_mpa:g}", "CornerHold.Torque",
                 {"coefficient": f"{limits['jaw-02-0']:.3f}", "engagedHeight": "1mm", "acrossFlats": f"{ACROSS:g}mm", "yield": f"{yield_mpa:g}MPa"},
                 torques.max() * ACROSS ** 2 * yield_mpa, "Nmm", 3, "6%", "m as at 640 MPa; what is left is the elastic part")
    rows.source = IMPLICIT
    _, held = solved("six", 0.02, 0.1)
    _, twice = solved("six", 0.02, 0.1, 2 * ACROSS)
    rows.add("corner-size-48", "CornerHold.Torque", {"coefficient": f"{held.max():.3f}", "engagedHeight": "1mm", "acrossFlats": "48mm", "yield": "640MPa"},
             twice.max() * 48 ** 2 * RE, "Nmm", 4, "1%", "m as at 24 mm")
    base = limits["six-02-0.1".replace("0.", "")]
    _, fine = explicit("six", 0.02, 0.1, fine=2)
    print(f"six-02-1: pieces half as wide {fine.max() / base - 1:+.1%}")
    for friction in (0.05, 0.2):
        _, torques = explicit("jaw", 0.02, 0, friction=friction)
        print(f"jaw-02-0: friction {friction} {torques.max() / limits['jaw-02-0'] - 1:+.1%}", flush=True)


if __name__ == "__main__":
    main(sys.argv[1])
