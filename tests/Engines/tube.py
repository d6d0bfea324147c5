"""A tube slipped over a bar as two solid bodies in contact, by CalculiX: reactions at tip and mouth, bending beyond the
tip, deflection at the hand. Elastic, without friction, half of it for symmetry; the hand is moved and pushes back.

Run: python3 tube.py OUTPUT.csv   (needs the program `ccx`; two minutes a case)
"""

import pathlib
import subprocess
import sys
import tempfile

from numpy import arctan, array, cos, einsum, linspace, pi, sin

from bricks import Ring, corner, numbers, spaced
from rows import Rows

BAR, FREE, YOUNG, HOLE, PIECES = 18.0, 450.0, 210e3, 1.5, 24


class Case:
    """One tube, overlap and arm; the hand is moved by `drop`, square to the tube. The bar stands `free` out of the nut."""

    def __init__(self, name, outside, wall, overlap, arm, drop=30.0, free=FREE):
        self.name, self.outside, self.wall, self.overlap, self.arm, self.drop, self.free = name, outside, wall, overlap, arm, drop, free
        self.bore = outside - 2 * wall
        self.tilt = arctan((self.bore - BAR) / overlap)
        self.mouth = free - overlap
        self.along, self.up = array([cos(self.tilt), 0, -sin(self.tilt)]), array([sin(self.tilt), 0, cos(self.tilt)])

    def bodies(self):
        """Bar along the axis; tube turned by its play so that it touches at mouth and tip."""
        angles = linspace(0, pi, PIECES + 1)
        bar = Ring("BAR", 1, spaced(0, (self.mouth - 8, 12), (self.mouth + 12, 12), (self.free - 12, 8), (self.free, 8)),
                   [HOLE, 5, corner(BAR / 2, PIECES)], angles, lambda x, up, side: (x, side, up))

        def place(x, up, side):
            along = x - self.mouth
            return (self.mouth + along * cos(self.tilt) + up * sin(self.tilt), side,
                    (self.bore - BAR) / 2 - along * sin(self.tilt) + up * cos(self.tilt))

        stations = spaced(self.mouth, (self.mouth + 12, 8), (self.free - 12, 8), (self.free + 12, 16), (self.free + self.arm, 22))
        radii = [corner(r, PIECES) for r in (self.bore / 2, self.bore / 2 + self.wall / 2, self.outside / 2)]
        return bar, Ring("TUBE", 100001, stations, radii, angles, place)

    def deck(self, tube_law="", step="*STEP,INC=100\n*STATIC\n0.02,1.0,1e-4,0.2", prints=""):
        """The whole input."""
        bar, tube = self.bodies()
        middle = self.free - self.overlap / 2
        far = [brick for brick, (i, _, _) in tube.place_of.items() if i == len(tube.stations) - 12]
        touch = "*CONTACT PAIR,INTERACTION=TOUCH,TYPE=SURFACE TO SURFACE\n"
        return "\n".join([
            bar.text("C3D8I"), tube.text("C3D8I"),
            "*NSET,NSET=NUT\n" + numbers(bar.ids[0].ravel()),
            "*NSET,NSET=CUT\n" + numbers([*bar.symmetry(), *tube.symmetry()]),
            "*NSET,NSET=HAND\n" + numbers(tube.ids[-1, :, PIECES // 2]),
            "*NSET,NSET=DENT\n" + numbers(self.dent_nodes(tube)),
            "*ELSET,ELSET=FAR\n" + numbers(far),
            "*SURFACE,NAME=ATMOUTH,TYPE=ELEMENT\n" + "\n".join(tube.side(True, lambda x: x < middle)),
            "*SURFACE,NAME=ATTIP,TYPE=ELEMENT\n" + "\n".join(tube.side(True, lambda x: middle < x < self.free + 12)),
            "*SURFACE,NAME=ONBAR,TYPE=ELEMENT\n" + "\n".join(bar.side(False)),
            f"*MATERIAL,NAME=BARSTEEL\n*ELASTIC\n{YOUNG},0.3\n*MATERIAL,NAME=TUBESTEEL\n*ELASTIC\n{YOUNG},0.3\n{tube_law}".rstrip(),
            "*SOLID SECTION,ELSET=BAR,MATERIAL=BARSTEEL\n*SOLID SECTION,ELSET=TUBE,MATERIAL=TUBESTEEL",
            "*SURFACE INTERACTION,NAME=TOUCH\n*SURFACE BEHAVIOR,PRESSURE-OVERCLOSURE=LINEAR\n1e5",
            f"{touch}ATMOUTH,ONBAR\n{touch}ATTIP,ONBAR",
            "*BOUNDARY\nNUT,1,3\nCUT,2,2",
            step,
            f"*BOUNDARY\nHAND,1,1,{-self.drop * self.up[0]}\nHAND,3,3,{-self.drop * self.up[2]}",
            prints or "*NODE PRINT,NSET=HAND,TOTALS=ONLY,FREQUENCY=100\nRF",
            "*CONTACT PRINT,SLAVE=ATTIP,MASTER=ONBAR\nCF",
            "*CONTACT PRINT,SLAVE=ATMOUTH,MASTER=ONBAR\nCF",
            "*EL PRINT,ELSET=FAR,FREQUENCY=100\nS,COORD",
            "*END STEP\n",
        ])

    def dent_nodes(self, tube):
        """Outer skin above the bar's tip, top and bottom."""
        station = min(range(len(tube.stations)), key=lambda i: abs(tube.stations[i] - self.free))
        return [tube.ids[station, -1, 0], tube.ids[station, -1, -1]]


def run(name, deck, partly=False):
    """Runs CalculiX and gives back its printed results; `partly` takes those of the increments it solved before it gave up."""
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / name
        path.with_suffix(".inp").write_text(deck)
        done = subprocess.run(["ccx", "-i", name], cwd=folder, capture_output=True, text=True)
        if "Job finished" not in done.stdout:
            if partly and "too many cutbacks" in done.stdout:
                print(f"{name}: CalculiX gave up before the end of the step; what it solved before is taken")
                return path.with_suffix(".dat").read_text()
            raise SystemExit(f"ccx stopped on {name}: {done.stdout[-2000:]}")
        return path.with_suffix(".dat").read_text()


def contact(text, surface, case):
    """Forces of a contact square to the tube, one an increment: whole body, so twice the half."""
    parts = text.split(f"statistics for slave set {surface}")[1:]
    return array([2 * array(numbers_below(part, "moment about the origin (mx,my,mz)")[:3]) @ case.up for part in parts])


def numbers_below(text, heading):
    """The first line of numbers below a heading."""
    return [float(x) for x in text.split(heading)[1].split("\n\n")[1].split()]


def section_moment(text, case):
    """Moment at the far station and its way to the hand: axial stress over height above the tube's axis, a straight line fitted."""
    block = lambda heading: array([[float(x) for x in line.split()[2:]]
                                   for line in text.split(heading)[-1].split("\n\n")[1].splitlines()])
    stress, points = block("stresses (elem"), block("global coordinates (elem")
    tensor = stress[:, [0, 3, 4, 3, 1, 5, 4, 5, 2]].reshape(-1, 3, 3)
    axial = einsum("i,nij,j->n", case.along, tensor, case.along)
    height = (points - array([case.mouth, 0, (case.bore - BAR) / 2])) @ case.up
    slope = axial @ height / (height @ height)
    gone = (points[:, 0].mean() - case.mouth) / cos(case.tilt)
    return slope * pi / 64 * (case.outside ** 4 - case.bore ** 4), case.arm + case.overlap - gone


CASES = [Case("snug-120", 26.9, 2.6, 120, 600), Case("wide-250", 33.7, 3.2, 250, 700),
         Case("loose-120", 48.3, 3.2, 120, 600), Case("short-60", 26.9, 2.6, 60, 300, 12.0)]


def results(rows, case):
    """Runs a case and adds its rows."""
    text = run(case.name, case.deck())
    force = -2 * array(numbers_below(text, "for set HAND")) @ case.up
    tip, mouth = contact(text, "ATTIP", case)[-1], -contact(text, "ATMOUTH", case)[-1]
    moment, distance = section_moment(text, case)
    given = {"force": f"{force:.3f}N", "handToTip": f"{case.arm}mm", "overlap": f"{case.overlap}mm"}
    lever = (case.arm + case.overlap) / case.overlap
    beam = given | {"reach": f"{case.free + case.arm:g}mm", "modulus": "210GPa", "barDiameter": "18mm",
                    "outside": f"{case.outside}mm", "wall": f"{case.wall}mm"}
    print(f"{case.name}: {force:.2f} N, reactions over the two-point form: tip {tip / force / lever:.4f}, "
          f"mouth {mouth / force / (lever - 1):.4f}; far moment over force times way {moment / force / distance:.5f}")
    near, why = ("1.5%", "sharp edges, elastic: contact spreads a little about the edges") if case.tilt < 0.1 else (
        "6%", "a loose tube leans on the bar, so the mouth's force leans too and its lever is longer: the two-point form is on the safe side")
    rows.add(f"{case.name}-solid-tip", "TubeBearing.TipReaction", given, tip, "N", 5, near, why)
    rows.add(f"{case.name}-solid-mouth", "TubeBearing.MouthReaction", given, mouth, "N", 5, near, why)
    rows.add(f"{case.name}-solid-moment", "TubeBearing.TubeMoment", {"force": f"{force:.3f}N", "handToTip": f"{distance:.3f}mm"},
             moment, "Nmm", 6, "0.5%", "moment in the tube at that way from the hand, from the stresses of a ring of bricks")
    rows.add(f"{case.name}-solid-deflection", "LeverDeflection.AtHand", beam, case.drop, "mm", 4, "4%",
             "walls that give and shear are in the solid, not in the beams")


def main(output):
    """All of them."""
    rows = Rows("A tube slipped over a bar as solid bodies in contact, by CalculiX", "CalculiX 2.20; tests/Engines/tube.py")
    for case in CASES:
        results(rows, case)
    rows.write(output)


if __name__ == "__main__":
    main(sys.argv[1])
