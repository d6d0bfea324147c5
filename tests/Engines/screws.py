"""Screws, sections and heat from first principles with SciPy: forces as vectors, areas and moments by integration.

Nothing here uses a closed formula of Leverage's: a screw is a body on a helical flank whose normal and friction are
vectors, a plastic torque is the volume of a sand heap, a joint is two springs.

Run: python3 screws.py OUTPUT.csv
"""

import sys

import numpy
import scipy
from numpy import arctan, cos, cross, pi, sin, sqrt, tan
from scipy.integrate import dblquad, quad
from scipy.optimize import brentq

from rows import Rows

FLANK = "exact normal of the helical flank; the formula's mu/cos(beta) leaves out the lead: within 0.1 %"
M12 = {"diameter": "12mm", "pitch": "1.75mm", "face": "16.63mm", "hole": "13.5mm"}
M24 = {"diameter": "24mm", "pitch": "1.5mm", "face": "33.61mm", "hole": "26mm"}
ACME = {"pitchDiameter": "22.5mm", "lead": "5mm", "halfAngle": "14.5deg", "bearingDiameter": "32mm"}


def mm(text):
    """A number without its unit."""
    return float(text.rstrip("madeg"))


def pitch_diameter(thread):
    """Middle of the basic profile: the sharp 60 degree triangle cut at 1/8 on top, its flank met at half the pitch."""
    if "pitchDiameter" in thread:
        return mm(thread["pitchDiameter"])
    height = mm(thread["pitch"]) / 2 / tan(pi / 6)
    return mm(thread["diameter"]) + 2 * height / 8 - height


def flank_forces(thread, friction, sense):
    """Tangential over axial force of a sliding flank: normal and friction as vectors; sense +1 raises the load, -1 lowers it."""
    lead = arctan(mm(thread.get("lead", thread.get("pitch"))) / (pi * pitch_diameter(thread)))
    half = numpy.radians(float(thread.get("halfAngle", "30deg").rstrip("deg")))
    along = numpy.array([cos(lead), 0, sin(lead)])
    outward = numpy.array([0, cos(half), -sin(half)])
    normal = cross(outward, along)
    normal *= numpy.sign(normal[2]) / sqrt(normal @ normal)
    contact = normal - sense * friction * along
    return -contact[0] / contact[2]


def torque(thread, friction, sense, preload=1.0):
    """Torque that turns a loaded screw, N mm: flank at the pitch line, face at its mean diameter."""
    bearing = mm(thread["bearingDiameter"]) if "bearingDiameter" in thread else (mm(thread["face"]) + mm(thread["hole"])) / 2
    return preload * (sense * flank_forces(thread, friction, sense) * pitch_diameter(thread) / 2 + friction * bearing / 2)


def screws(rows):
    """Torque up, torque down, their ratio, and the preload a torque buys."""
    for name, thread in (("m12", M12), ("m24x1.5", M24), ("acme", ACME)):
        for friction in (0.08, 0.14, 0.25):
            given = thread | {"friction": f"{friction}"}
            tag = f"{name}-{friction}"
            up, down = torque(thread, friction, 1), torque(thread, friction, -1)
            note = {"tolerance": "0.1%", "note": FLANK}
            rows.add(f"{tag}-vector-up", "JointTorque.Tightening", {"preload": "40kN"} | given, 40000 * up, "Nmm", **note)
            rows.add(f"{tag}-vector-down", "JointTorque.Loosening", {"preload": "40kN"} | given, 40000 * down, "Nmm", **note)
            rows.add(f"{tag}-vector-share", "JointTorque.LooseningShare", given, down / up, "", **note)
            force = brentq(lambda f: torque(thread, friction, 1, f) - 90e3, 1, 1e6, rtol=1e-12)
            rows.add(f"{tag}-vector-preload", "JointTorque.Preload", {"torque": "90Nm"} | given, force, "N", **note)
    work = quad(lambda turn: 1.75 / (2 * pi) * 40e3, 0, 2 * pi)[0]
    rows.add("work-of-one-turn", "JointTorque.PitchPart", {"preload": "40kN", "lead": "1.75mm"}, work / (2 * pi), "Nmm",
             note="torque over a full turn does the work F times lead")
    up = torque(ACME, 0.14, 1, 40e3)
    rows.add("acme-work-share", "JointTorque.Efficiency", {"preload": "40kN", "lead": "5mm", "torque": f"{up:.4f}Nmm"},
             40e3 * 5 / (quad(lambda turn: up, 0, 2 * pi)[0]), note="useful work over work put in, one turn")
    k = torque(M12, 0.14, 1) / 12
    rows.add("m12-vector-k", "NutFactor.FromTorque", {"torque": f"{40e3 * 12 * k:.4f}Nmm", "preload": "40kN", "diameter": "12mm"}, k)


def faces(rows):
    """The face torque of an evenly pressed ring, against the mean diameter's."""
    for face, hole in ((16.63, 13.5), (33.61, 26.0), (22.49, 17.5)):
        moment = quad(lambda r: 2 * pi * r * r, hole / 2, face / 2)[0]
        area = quad(lambda r: 2 * pi * r, hole / 2, face / 2)[0]
        note = "evenly pressed ring: its friction diameter is up to 0.6 % above the mean"
        rows.add(f"ring-{face}", "BearingFace.MeanDiameter", {"face": f"{face}mm", "hole": f"{hole}mm"}, 2 * moment / area, "mm",
                 tolerance="0.6%", note=note)
        rows.add(f"ring-{face}-torque", "JointTorque.FacePart",
                 {"preload": "40kN", "faceFriction": "0.14", "face": f"{face}mm", "hole": f"{hole}mm"},
                 0.14 * 40e3 * moment / area, "Nmm", tolerance="0.6%", note=note)


def yields(rows):
    """Preload at which tension and torsion together reach a share of yield: von Mises, solved."""
    for name, thread in (("m12", M12), ("m24x1.5", M24)):
        root = mm(thread["diameter"]) - 2 * 17 / 24 * mm(thread["pitch"]) / 2 / tan(pi / 6)
        stress_diameter = (pitch_diameter(thread) + root) / 2
        area = quad(lambda r: 2 * pi * r, 0, stress_diameter / 2)[0]
        plastic = quad(lambda r: 2 * pi * r * r, 0, stress_diameter / 2)[0]
        elastic = quad(lambda r: 2 * pi * r ** 3 / (stress_diameter / 2), 0, stress_diameter / 2)[0]
        for factor, polar in ((1.5, plastic), (2, elastic)):
            given = thread | {"friction": "0.12", "torsionFactor": f"{factor}", "yieldShare": "0.9", "yield": "940MPa"}
            arm = flank_forces(thread, 0.12, 1) * pitch_diameter(thread) / 2
            mises = lambda force, arm=arm, polar=polar: sqrt((force / area) ** 2 + 3 * (force * arm / polar) ** 2)
            force = brentq(lambda f: mises(f) - 0.9 * 940, 1, 1e6, rtol=1e-12)
            rows.add(f"{name}-mises-{factor}", "AssemblyPreload.AtYieldShare", given, force, "N", tolerance="0.1%", note=FLANK)
            given = thread | {"friction": "0.12", "torsionFactor": f"{factor}", "preload": "40kN", "yield": "940MPa"}
            rows.add(f"{name}-share-{factor}", "AssemblyPreload.YieldShare", given, mises(40e3) / 940, tolerance="0.1%", note=FLANK)
        rows.add(f"{name}-profile-stress-diameter", "ThreadGeometry.StressDiameter",
                 {"diameter": thread["diameter"], "pitch": thread["pitch"]}, stress_diameter, "mm", digits=5, tolerance="0.01mm".rstrip("m"),
                 note="drawn from the 60 degree triangle; the constant 0.9382 is printed to four figures")


def strips(rows):
    """Shear area of engaged threads: width of the tooth drawn on its flanks, where the other thread's crest cuts it."""
    pitch, sharp = 1.5, 1.5 / 2 / tan(pi / 6)
    for name, formula, at, middle in (("internal", "Internal", 9.732, 9.206), ("external", "External", 8.676, 8.862)):
        # A tooth is half a pitch wide at the pitch line and a whole pitch where its sharp triangle ends.
        width = numpy.interp(abs(at - middle) / 2, [0, sharp / 2], [pitch / 2, pitch])
        given = ({"externalMajor": f"{at}mm", "internalPitchDiameter": f"{middle}mm"} if formula == "Internal"
                 else {"internalMinor": f"{at}mm", "externalPitchDiameter": f"{middle}mm"})
        area = quad(lambda angle: at / 2 * width, 0, 2 * pi * 12 / pitch)[0]
        rows.add(f"m10-drawn-{name}", f"ThreadStrip.{formula}ShearArea", {"engagement": "12mm", "pitch": "1.5mm"} | given, area, "mm2",
                 note="width of the tooth where the other thread's crest shears it, times the way along the helix")
    given = {"boltForce": "60kN", "shearStrength": "150MPa", "shearAreaPerMm": "20.4"}
    rows.add("strip-solved", "ThreadStrip.EngagementToBreak", given, brentq(lambda l: 150 * 20.4 * l - 60e3, 0.1, 100), "mm")


def heaps(rows):
    """Plastic torque as twice the volume of a sand heap, whose height is the way to the nearest edge; plastic bending."""
    half = 12.7 / 2
    quarter = dblquad(lambda y, x: min(half - abs(x), half - abs(y)), 0, half, 0, half)[0]
    rows.add("square-sand-heap", "DriveSquare.PlasticTorque", {"side": "12.7mm", "shearYield": "600MPa"}, 2 * 4 * quarter * 600, "Nmm")
    apothem = 5.0
    wedge = dblquad(lambda y, x: apothem - x, 0, apothem, lambda x: 0, lambda x: x * tan(pi / 6))[0]
    rows.add("hexagon-sand-heap", "HexagonKey.PlasticTorque", {"acrossFlats": "10mm", "shear": "800MPa"}, 2 * 12 * wedge * 800, "Nmm")
    rows.add("round-sand-heap", "RoundBar.PlasticTorque", {"diameter": "18mm", "shear": "480MPa"},
             2 * quad(lambda r: 2 * pi * r * (9 - r), 0, 9)[0] * 480, "Nmm")
    half_moment = lambda r: dblquad(lambda y, x: y, -r, r, 0, lambda x: sqrt(max(0.0, r * r - x * x)))[0]
    rows.add("round-plastic", "RoundBar.PlasticModulus", {"diameter": "18mm"}, 2 * half_moment(9.0), "mm3")
    rows.add("tube-plastic", "TubeSection.PlasticModulus", {"outside": "33.7mm", "wall": "3.2mm"},
             2 * (half_moment(16.85) - half_moment(13.65)), "mm3")
    second = lambda r: 4 * quad(lambda x: (r * r - x * x) ** 1.5 / 3, 0, r)[0]
    rows.add("tube-elastic", "TubeSection.ElasticModulus", {"outside": "33.7mm", "wall": "3.2mm"},
             (second(16.85) - second(13.65)) / 16.85, "mm3")
    rows.add("round-elastic", "RoundBar.ElasticModulus", {"diameter": "18mm"}, second(9.0) / 9, "mm3")
    rows.add("tube-drawn-area", "TubeSection.Area", {"outside": "33.7mm", "wall": "3.2mm"},
             quad(lambda r: 2 * pi * r, 13.65, 16.85)[0], "mm2")
    shear = 2 * quad(lambda r: 2 * pi * r, 0, 3)[0] * 600
    rows.add("pin-two-planes", "HingePin.Torque", {"diameter": "6mm", "planesApart": "11mm", "shear": "600MPa"}, shear * 11 / 2, "Nmm",
             note="the force of each plane at half the distance from the middle")


def heat(rows):
    """A bolted joint as two springs, one of them warmer: forces balance, lengths agree."""
    modulus, growth, area, grip = 207e3, 11.7e-6, 84.3, 40.0
    bolt = modulus * area / grip
    for ratio in (1.1, 1.2, 1.5):
        clamped = bolt / (ratio - 1)
        # Unknown: bolt force, joint length. Bolt: F = kb (x - free length); clamped: F = kc (free length - x).
        change = lambda by: numpy.linalg.solve([[1, -bolt], [1, clamped]], [-bolt * growth * by * grip, 0])[0]
        by = brentq(lambda k: 300 * area + change(k), 0, 2000, rtol=1e-12)
        rows.add(f"springs-release-{ratio}", "HeatedJoint.ReleaseTemperature", {"stress": "300MPa", "complianceRatio": f"{ratio}"}, by, "K",
                 digits=4, note="bolt warmer until the springs part; E 207 GPa")
        rise = numpy.linalg.solve([[1, -bolt], [1, clamped]], [0, clamped * growth * 100 * grip])[0] / area
        rows.add(f"springs-rise-{ratio}", "HeatedJoint.PreloadRise", {"difference": "100K", "complianceRatio": f"{ratio}"}, rise, "MPa",
                 digits=4, note="clamped part warmer")


def main(output):
    """All of them."""
    rows = Rows("Screws, sections and heated joints from first principles, by SciPy", f"SciPy {scipy.__version__}; tests/Engines/screws.py")
    for part in (screws, faces, yields, strips, heaps, heat):
        part(rows)
    rows.write(output)


main(sys.argv[1])
