"""Levers, tubes, wheels and what follows a release, by SciPy and NumPy: forces as vectors, equilibrium as a linear
system, beams by their differential equation. Nothing here uses a closed formula of Leverage's.

Run: python3 statics.py OUTPUT.csv
"""

import sys

import numpy
import scipy
from numpy import arctan, array, cos, cross, pi, radians, sin, sqrt
from scipy.integrate import quad, solve_bvp, solve_ivp
from scipy.optimize import brentq, linprog

from rows import Rows

G = 9.80665
TUBE = {"modulus": "210GPa", "barDiameter": "18mm", "outside": "26.9mm", "wall": "2.6mm"}


def turning(arm, force):
    """Turning moment of a force, about the way the lever turns."""
    return cross([*arm, 0.0], [*force, 0.0])[2]


def levers(rows):
    """Moments as cross products; the wrench with an adapter as a body in equilibrium."""
    angle = radians(30)
    pull = array([sin(angle), cos(angle)])
    rows.add("cross-product", "Lever.Torque", {"force": "450N", "reach": "1.2m", "angle": "30deg"}, turning([1200, 0], 450 * pull), "Nmm")
    reach = brentq(lambda r: turning([r, 0], 450 * pull) - 460e3, 1, 1e5, rtol=1e-13)
    rows.add("reach-solved", "Lever.NeededReach", {"torque": "460Nm", "force": "450N", "angle": "30deg"}, reach, "mm")
    weight = quad(lambda x: 2.5 / 1000 * G * x, 0, 1000)[0]
    rows.add("weight-along-the-bar", "Lever.WeightTorque", {"mass": "2.5kg", "centre": "500mm"}, weight, "Nmm")
    hang = brentq(lambda x: turning([x, 0], [0, 82 * G]) - 93e3, 1, 1e4, rtol=1e-13)
    rows.add("hang-solved", "HangingWeight.Distance", {"torque": "93Nm", "mass": "82kg"}, hang, "mm")
    for degrees in (0, 45, 90, 120):
        drive = 60 * array([cos(radians(degrees)), sin(radians(degrees))])
        hand = drive + array([450, 0])
        force = brentq(lambda f: turning(hand, [0, f]) - 100e3, 1, 1e4, rtol=1e-13)
        rows.add(f"adapter-{degrees}", "WrenchAdapter.Setting",
                 {"torque": "100Nm", "wrench": "450mm", "adapter": "60mm", "angle": f"{degrees}deg"}, turning(hand - drive, [0, force]), "Nmm")
    tip = cross([0, 0, 60], [0, 500.0, 0])
    rows.add("out-of-plane", "SocketTipping.Moment", {"force": "500N", "standOff": "60mm"}, sqrt(tip @ tip), "Nmm")
    ends = numpy.linalg.solve([[1, -1], [0, 40]], [500, 500 * 60])
    rows.add("couple-over-force", "SocketTipping.Ratio", {"standOff": "60mm", "engagement": "40mm"}, ends[1] / 500,
             note="force of the couple that keeps the socket upright, over the push")


def tubes(rows):
    """The tube as a body on two contacts: equilibrium, and the pull along it that starts it off."""
    for overlap, arm in ((120, 600), (250, 700), (60, 900)):
        given = {"force": "200N", "handToTip": f"{arm}mm", "overlap": f"{overlap}mm"}
        tip, mouth = numpy.linalg.solve([[1, -1], [overlap, 0]], [200, 200 * (arm + overlap)])
        rows.add(f"balance-{overlap}-{arm}-tip", "TubeBearing.TipReaction", given, tip, "N")
        rows.add(f"balance-{overlap}-{arm}-mouth", "TubeBearing.MouthReaction", given, mouth, "N")
        shear = lambda x: 200 if x < arm else 200 - tip
        bending = quad(shear, 0, arm)[0]
        rows.add(f"balance-{overlap}-{arm}-tube", "TubeBearing.TubeMoment", {"force": "200N", "handToTip": f"{arm}mm"}, bending, "Nmm",
                 note="shear added up from the hand")
        on_bar = quad(lambda x: tip, 0, overlap)[0]
        rows.add(f"balance-{overlap}-{arm}-bar", "TubeBearing.BarMomentAtMouth", given, on_bar, "Nmm", note="shear in the bar from its tip")
        for tilt, taper in ((0.0, 0.0), (0.03, 0.0), (0.08, 0.01)):
            limit = slip_tangent(0.15, arm, overlap, tilt + taper)
            hold = {"friction": "0.15", "handToTip": f"{arm}mm", "overlap": f"{overlap}mm"}
            rows.add(f"slip-{overlap}-{arm}-{tilt}", "SlipLimit.Tangent", hold | {"tilt": f"{tilt}rad", "taper": f"{taper}rad"}, limit)
            if tilt == 0:
                rows.add(f"slip-{overlap}-{arm}-snug", "SlipLimit.CloseFitTangent", hold, limit)
            stays = brentq(lambda friction: slip_tangent(friction, arm, overlap, tilt + taper) - 0.9, 0.001, 2, xtol=1e-15)
            rows.add(f"friction-{overlap}-{arm}-{tilt}", "SlipLimit.NeededFriction",
                     {"tangent": "0.9", "handToTip": f"{arm}mm", "overlap": f"{overlap}mm", "lean": f"{tilt + taper}rad"}, stays)
    pull = 450 * array([sin(radians(25)), cos(radians(25))])
    tube = array([cos(0.05), -sin(0.05)])
    for name, way in (("down", 1), ("up", -1)):
        rows.add(f"outward-{name}", "SlipLimit.OutwardPull", {"force": "450N", "pastSquare": "25deg", "tilt": "0.05rad"},
                 (pull * [1, -way]) @ (tube * [1, way]), "N", note="a push down and its mirror image, a pull up")
    below = brentq(lambda b: 0.4 * 1.5 * cos(b + 0.03) - sin(b + 0.03), -1, 1.5, xtol=1e-14)
    rows.add("swing-solved", "SlipLimit.SafeAngle", {"tangent": "1.5", "tilt": "0.03rad", "torqueShare": "0.4"}, below, "rad",
             note="pull along the tube equals what the shrunken jam holds")


def slip_tangent(friction, arm, overlap, lean):
    """Pull along over pull across a tube at which both contacts slide; across pull 1, moments about the tip."""
    tip = array([-friction, 1.0])
    normal, along = array([sin(lean), -cos(lean)]), array([cos(lean), sin(lean)])
    mouth = normal - friction * along
    # Unknown: tip and mouth contact forces, pull along. Rows: along, across, moments about the tip.
    system = [[tip[0], mouth[0], 1], [tip[1], mouth[1], 0], [0, -mouth[1] * overlap, 0]]
    return numpy.linalg.solve(system, [0, 1, arm])[2]


def beams(rows):
    """Deflection at the hand: both beams' differential equations solved at once, tied at mouth and tip."""
    stiff_bar, stiff_tube = 210e3 * pi * 18 ** 4 / 64, 210e3 * pi * (26.9 ** 4 - 21.7 ** 4) / 64
    for reach, arm, overlap in ((1050, 600, 120), (1240, 800, 200), (700, 300, 60)):
        inner = reach - arm - overlap
        rows.add(f"bvp-{reach}-{arm}-{overlap}", "LeverDeflection.AtHand",
                 {"force": "200N", "reach": f"{reach}mm", "handToTip": f"{arm}mm", "overlap": f"{overlap}mm"} | TUBE,
                 hand_deflection(200, inner, overlap, arm, stiff_bar, stiff_tube), "mm",
                 note="bar fixed at the nut, tube borne at mouth and tip, no play; solve_bvp")


def hand_deflection(force, inner, overlap, arm, stiff_bar, stiff_tube):
    """solve_bvp over one unit length for four pieces: bar to the mouth, bar in the tube, tube on the bar, tube free."""
    lengths = array([inner, overlap, overlap, arm])
    stiff = array([stiff_bar, stiff_bar, stiff_tube, stiff_tube])

    def slopes(x, y):  # each piece: deflection, slope, moment, shear; scaled by its length
        y = y.reshape(4, 4, -1)
        change = numpy.stack([y[:, 1], y[:, 2] / stiff[:, None] * 1e5, y[:, 3], 0 * y[:, 3]], axis=1)
        return (change * lengths[:, None, None]).reshape(16, -1)

    def ends(start, end):
        (a, b, c, _), (p, q, r, s) = start.reshape(4, 4), end.reshape(4, 4)
        free = start.reshape(4, 4)[3]
        load = force / 1e5
        return array([
            a[0], a[1], p[0] - b[0], p[1] - b[1], p[2] - b[2],          # fixed at the nut; whole at the mouth
            q[2], c[2], s[2], s[3] + load,                              # no moment at bar tip, tube mouth, hand
            r[0] - free[0], r[1] - free[1], r[2] - free[2],             # tube whole at the tip
            c[0] - b[0], r[0] - q[0],                                   # tube and bar touch at mouth and tip
            (b[3] - p[3]) + c[3],                                       # mouth: what the bar gives the tube
            (free[3] - r[3]) - q[3],                                    # tip: the same
        ])

    nodes = numpy.linspace(0, 1, 11)
    found = solve_bvp(slopes, ends, nodes, numpy.zeros((16, nodes.size)), tol=1e-9)
    assert found.success, found.message
    return abs(found.y[12, -1])


def wheels(rows):
    """What holds a wheel: forces on a body in equilibrium, or the largest torque a linear program allows."""
    most = linprog([-1, 0, 0], A_eq=[[1, -310, 0], [1, 0, -310]], b_eq=[0, 0], bounds=[(0, None), (-2400, 2400), (-2400, 2400)])
    rows.add("one-wheel-largest", "TyreGrip.Torque", {"friction": "0.8", "wheelLoad": "3000N", "wheelRadius": "310mm"}, most.x[0], "Nmm",
             note="largest torque with the ground force within friction")
    most = linprog([-1, 0, 0], A_eq=[[1, -310, 310], [0, 1, 1]], b_eq=[0, 0], bounds=[(0, None), (-2400, 2400), (-2400, 2400)])
    rows.add("two-wheels-largest", "OpenDifferential.Torque", {"friction": "0.8", "wheelLoad": "3000N", "wheelRadius": "310mm"}, most.x[0],
             "Nmm", note="both wheels of the axle within friction, equal and opposite")
    for height in (60, 120):
        corner = brentq(lambda x: sqrt(300 ** 2 - x * x) - (300 - height), 0, 300, xtol=1e-12)
        system = [[1, 0, 0], [0, 1, 0], [corner, 300 - height, 1]]
        hold = numpy.linalg.solve(system, [3000, 0, 0])
        rows.add(f"corner-{height}", "WheelChock.Torque", {"wheelLoad": "3000N", "wheelRadius": "300mm", "height": f"{height}mm"},
                 abs(hold[2]), "Nmm", note="wheel borne by the corner alone: force up, force along, torque")
        angle = arctan(corner / (300 - height))
        normal, rub = array([-sin(angle), cos(angle)]), 0.6 * array([cos(angle), sin(angle)])
        ground, chock = numpy.linalg.solve([[0.6, normal[0] + rub[0]], [1, normal[1] + rub[1]]], [0, 3000])
        rows.add(f"slips-{height}", "WheelChock.SlippingTorque",
                 {"friction": "0.6", "wheelLoad": "3000N", "wheelRadius": "300mm", "height": f"{height}mm"},
                 0.6 * 300 * (ground + chock), "Nmm", note="the wheel slips on ground and chock: forces along and up")
    slowed = solve_ivp(lambda t, v: [-2.44], (0, 1), [10.0]).y[0, -1]
    rows.add("stopping-a-car", "FootBrake.WheelTorque", {"mass": "1250kg", "wheelRadius": "300mm", "axleShare": "0.4"},
             1250 * (10 - slowed) * 300 * 0.4 / 2, "Nmm", note="momentum lost in a second at 2.44 m/s2")
    slope = arctan(0.20)
    down = array([sin(slope), cos(slope)]) * 1500 * G
    rows.add("slope-by-vectors", "ParkingBrake.WheelTorque", {"mass": "1500kg", "wheelRadius": "300mm", "brakedWheels": "2"},
             down[0] * 300 / 2, "Nmm", digits=4, tolerance="0.1%", note="the weight's part along a 20 % slope; the formula keeps 0.196")
    force = numpy.linalg.solve([[1, 0, 1], [0, 1, 0], [400, 0, 0]], [0, 4000, 4000 * 120])[0]
    rows.add("stand-on-its-edge", "SupportStand.TippingForce", {"load": "4000N", "halfBase": "120mm", "height": "400mm"}, abs(force), "N")
    axles = numpy.linalg.solve([[1, 1], [0, 2600]], [0, 630e3])
    rows.add("axles-shift", "LoadShift.Force", {"torque": "630Nm", "wheelbase": "2.6m"}, axles[1], "N")


def releases(rows):
    """Work of a spring, a body pushed for a quarter of a second, arms flung by a spring, the weight of a body."""
    rows.add("spring-work", "Release.Energy", {"force": "450N", "deflection": "58mm"}, quad(lambda x: 450 / 58 * x, 0, 58)[0] / 1000, "J")
    moved = solve_ivp(lambda t, v: [450 * (1 - 0.4) / 82], (0, 0.25), [0.0], rtol=1e-10)
    rows.add("pushed-on", "Release.PushSpeed", {"force": "450N", "torqueShare": "0.4", "mass": "82kg"}, moved.y[0, -1], "m/s")
    rate = 450 / 0.058
    slack = lambda t, y: y[0]
    slack.terminal = True
    flung = solve_ivp(lambda t, y: [-y[1], rate * y[0] / 8.2], (0, 10), [0.058, 0.0], events=slack, rtol=1e-11, atol=1e-13)
    rows.add("arms-flung", "Release.ArmsSpeed", {"energy": "13.05J", "mass": "82kg"}, flung.y[1, -1], "m/s",
             note="two arms of 8.2 kg on the spring until it is slack")
    rows.add("spring-half-unbent", "Release.Freed", {"energy": "13.05J", "torqueShare": "0.4"},
             quad(lambda x: 450 / 58 * x, 0.4 * 58, 58)[0] / 1000, "J")
    rows.add("weight", "HandForce.PushDownCap", {"mass": "75kg"}, solve_ivp(lambda t, v: [G], (0, 1), [0.0]).y[0, -1] * 75, "N",
             note="momentum gained in a second of free fall")
    scaled = solve_ivp(lambda x, y: [0.67 * y[0] / x], (84.6, 70), [350.0], rtol=1e-11, atol=1e-9).y[0, -1]
    rows.add("power-law-grown", "HandForce.Scaled", {"table": "350N", "mass": "70kg", "referenceMass": "84.6kg", "exponent": "0.67"}, scaled, "N",
             note="dF/F = n dm/m, integrated")


def main(output):
    """All of them."""
    rows = Rows("Levers, tubes, wheels and releases from first principles, by SciPy", f"SciPy {scipy.__version__}; tests/Engines/statics.py")
    for part in (levers, tubes, beams, wheels, releases):
        part(rows)
    rows.write(output)


main(sys.argv[1])
