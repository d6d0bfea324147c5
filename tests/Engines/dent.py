"""The dent a bar's end makes in the wall of a tube on it, by CalculiX: solids in contact, wall yielding at 235 MPa,
large deflections. A short arm keeps the tube itself from bending plastic. The dent is the growth of the tube's height
above the bar's tip.

Run: python3 dent.py OUTPUT.csv   (needs the program `ccx`; ten minutes)
"""

import sys

from numpy import array
from numpy.linalg import norm

from rows import Rows
from tube import Case, contact, run

LAW = "*PLASTIC\n235.,0.\n250.,0.02\n260.,0.1"
STEP = "*STEP,NLGEOM,INC=400\n*STATIC\n0.02,1.0,1e-5,0.05"
PRINTS = "*NODE PRINT,NSET=DENT\nU"


def dents(text, tube, case):
    """Growth of the tube's height above the tip at the end of the step: the way from its top to its bottom, however it turns."""
    at_top, at_bottom = (array(tube.points[node]) for node in case.dent_nodes(tube))
    found = []
    for part in text.split("displacements (vx,vy,vz)")[1:]:
        top, bottom = sorted(([float(x) for x in line.split()] for line in part.split("\n\n")[1].splitlines()), key=lambda row: row[0])
        found.append(norm(at_top + top[1:4] - at_bottom - bottom[1:4]) - norm(at_top - at_bottom))
    return array(found)


def main(output):
    """Both tubes."""
    rows = Rows("Dent of a tube's wall by the end of a bar, by CalculiX", "CalculiX 2.20; tests/Engines/dent.py")
    for name, outside, wall, drop in (("33.7x3.2", 33.7, 3.2, 11.0), ("48.3x3.2", 48.3, 3.2, 13.0)):
        case = Case(f"dent-{name}".replace(".", "_"), outside, wall, 120, 60, drop, free=140.0)
        text = run(case.name, case.deck(LAW, STEP, PRINTS), partly=True)
        grown, force = dents(text, case.bodies()[1], case), contact(text, "ATTIP", case)
        share = f"{grown[-1] / outside:.3g}"
        print(f"{name}: {force[-1]:.0f} N at {grown[-1]:.3f} mm, {share} of the diameter")
        rows.add(f"tip-dent-{name}", "TubeDent.Resistance",
                 {"yield": "235MPa", "outside": f"{outside}mm", "wall": f"{wall}mm", "contact": "0mm", "depthShare": share}, force[-1], "N", 4)
    rows.write(output)


main(sys.argv[1])
