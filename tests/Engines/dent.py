"""The dent a bar's end makes in the wall of a tube on it, by CalculiX: solids in contact, wall yielding at 235 MPa,
large deflections. A short arm keeps the tube itself from bending plastic. The dent is the growth of the tube's height
above the bar's tip.

Run: python3 dent.py OUTPUT.csv   (needs the program `ccx`; ten minutes)
"""

import sys

from numpy import array, interp

from rows import Rows
from sleeve import Case, contact, run

LAW = "*PLASTIC\n235.,0.\n250.,0.02\n260.,0.1"
STEP = "*STEP,NLGEOM,INC=400\n*STATIC\n0.02,1.0,1e-5,0.05"
PRINTS = "*NODE PRINT,NSET=DENT\nU"


def dents(text):
    """Growth of the tube's height above the tip, one an increment."""
    found = []
    for part in text.split("displacements (vx,vy,vz)")[1:]:
        top, bottom = sorted((line.split() for line in part.split("\n\n")[1].splitlines()), key=lambda line: int(line[0]))
        found.append(float(top[3]) - float(bottom[3]))
    return array(found)


def main(output):
    """Both tubes."""
    rows = Rows("Dent of a tube's wall by the end of a bar, by CalculiX", "CalculiX 2.20; tests/Engines/dent.py")
    for name, outside, wall, drop in (("33.7x3.2", 33.7, 3.2, 6.0), ("48.3x3.2", 48.3, 3.2, 8.0)):
        case = Case(f"dent-{name}".replace(".", "_"), outside, wall, 120, 60, drop, free=140.0)
        text = run(case.name, case.deck(LAW, STEP, PRINTS))
        grown, force = dents(text), contact(text, "ATTIP", case)
        for share in (0.005, 0.01, 0.02):
            at = interp(share * outside, grown, force)
            print(f"{name}: {force[-1]:.0f} N at {grown[-1]:.3f} mm; {at:.0f} N at {share:.3f} of the diameter")
            rows.add(f"tip-dent-{name}-{share}", "TubeDent.Resistance",
                     {"yield": "235MPa", "outside": f"{outside}mm", "wall": f"{wall}mm", "contact": "0mm", "depthShare": f"{share}"}, at, "N", 4)
    rows.write(output)


main(sys.argv[1])
