"""The slice of hexagon.py as CalculiX sees it: one layer of bricks held in its plane, and a rigid plate for the driver's face.

The plate turns by steps of half a degree and only the end of each is read: within a step the contact is not yet settled.
"""

import pathlib
import subprocess
import tempfile

from numpy import arange, array, concatenate, cos, pi, radians, sin, vstack

from bricks import numbers
from hexagon import free_swing

EACH = 0.5


def deck(mesh, play, wear, yield_mpa, across, friction, swing):
    """The whole input; millimetres, one high, `across` over the flats; the plate turns from touch by `swing` degrees."""
    count, plane = len(mesh.points), mesh.points * across
    solid = arange(1, 2 * count + 1).reshape(2, count)
    nodes = vstack([concatenate([plane, [[z]] * count], axis=1) for z in (0, 1)])
    angle = free_swing(play, wear) - pi / 6 - 1e-4
    normal, along = array([cos(angle), sin(angle)]), array([-sin(angle), cos(angle)])
    plate = array([[*((0.5 + play / 2 + out) * across * normal + way * across * along), z]
                   for z in (-0.5, 1.5) for way, out in ((0.0, 0), (0.0, 0.2), (0.7, 0.2), (0.7, 0))])
    face = {frozenset((a, b)): piece for piece, (_, a, b, _) in enumerate(mesh.pieces, 1)}
    rim = [f"{face[frozenset(pair)]},S4" for pair in zip(mesh.rim[:-1], mesh.rim[1:])]
    lines = ["*NODE", *(f"{i},{x:.9g},{y:.9g},{z:.9g}" for i, (x, y, z) in enumerate(vstack([nodes, plate, [[0, 0, 0]] * 2]), 1))]
    lines.append("*ELEMENT,TYPE=C3D8,ELSET=NUT")
    lines += [",".join(map(str, [piece, *solid[0][list(ids)], *solid[1][list(ids)]])) for piece, ids in enumerate(mesh.pieces, 1)]
    first = 2 * count + 1
    lines += ["*ELEMENT,TYPE=C3D8,ELSET=PLATE", ",".join(map(str, [len(mesh.pieces) + 1, *range(first, first + 8)]))]
    lines += ["*NSET,NSET=BORE", numbers(solid[:, mesh.bore].ravel()), "*NSET,NSET=ALL", numbers(solid.ravel())]
    lines += ["*NSET,NSET=PLATE", numbers(range(first, first + 8))]
    c, s = cos(mesh.turn), sin(mesh.turn)
    for layer in solid:
        for a, b in zip(layer[mesh.first[1:]], layer[mesh.second[1:]]):
            lines += [f"*EQUATION\n3\n{b},1,1,{a},1,{-c:.15g},{a},2,{s:.15g}", f"*EQUATION\n3\n{b},2,1,{a},1,{-s:.15g},{a},2,{-c:.15g}"]
    return "\n".join([
        *lines,
        "*SURFACE,NAME=RIM,TYPE=ELEMENT\n" + "\n".join(rim), f"*SURFACE,NAME=FACE,TYPE=ELEMENT\n{len(mesh.pieces) + 1},S6",
        f"*RIGID BODY,NSET=PLATE,REF NODE={first + 8},ROT NODE={first + 9}",
        f"*MATERIAL,NAME=STEEL\n*ELASTIC\n210e3,0.3\n*PLASTIC\n{yield_mpa},0\n*SOLID SECTION,ELSET=NUT,MATERIAL=STEEL",
        "*MATERIAL,NAME=HARD\n*ELASTIC\n210e3,0.3\n*SOLID SECTION,ELSET=PLATE,MATERIAL=HARD",
        f"*SURFACE INTERACTION,NAME=TOUCH\n*SURFACE BEHAVIOR,PRESSURE-OVERCLOSURE=LINEAR\n{5e6 / across}\n*FRICTION\n{friction},{5e6 / across}",
        "*CONTACT PAIR,INTERACTION=TOUCH,TYPE=SURFACE TO SURFACE\nRIM,FACE",
        f"*BOUNDARY\nBORE,1,2\nALL,3,3\n{first + 8},1,3\n{first + 9},1,2",
        *(f"*STEP,NLGEOM,INC=200\n*STATIC\n0.25,1,1e-4,0.5\n*BOUNDARY\n{first + 9},3,3,{radians(EACH * (one + 1)):.9g}\n"
          "*NODE PRINT,NSET=BORE,FREQUENCY=1000\nRF\n*END STEP" for one in range(round(swing / EACH)))]) + "\n"


def curve(mesh, contacts, play, wear, yield_mpa, across=24.0, friction=0.15, swing=4.0):
    """Turn past touch (degrees) and m of every step CalculiX solved before it ended or gave up."""
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "corner"
        path.with_suffix(".inp").write_text(deck(mesh, play, wear, yield_mpa, across, friction, swing))
        done = subprocess.run(["ccx", "-i", "corner"], cwd=folder, capture_output=True, text=True)
        if "Job finished" not in done.stdout and "too many cutbacks" not in done.stdout:
            raise SystemExit(f"ccx stopped: {done.stdout[-2000:]}")
        blocks = path.with_suffix(".dat").read_text().split("forces (fx,fy,fz) for set BORE and time")[1:]
    where = dict(zip(range(1, 2 * len(mesh.points) + 1), vstack([mesh.points] * 2) * across))
    turns, torques = [], []
    for block in blocks:
        lines = block.strip().splitlines()
        turns.append(float(lines[0]) * EACH)
        forces = [line.split() for line in lines[1:] if line.strip()]
        moment = sum(where[int(f[0])][0] * float(f[2]) - where[int(f[0])][1] * float(f[1]) for f in forces)
        torques.append(-moment * contacts / across ** 2 / yield_mpa)
    return array(turns), array(torques)
