"""Plane-strain solids of elastic, perfectly plastic steel pressed by a rigid driver, stepped through in time until they have slipped by.

Four-sided pieces with four points each and their change of volume averaged; stresses turn with the material (Jaumann rate); J2 flow by radial
return; masses scaled so that every piece allows the same step; damping against the force out of balance, so that steady flow is not
braked. The driver's faces push by a penalty, with Coulomb friction.
"""

from numpy import abs as size
from numpy import arange, array, bincount, cos, cross, einsum, maximum, minimum, pi, sign, sin, sqrt, where, zeros
from scipy.sparse import csr_matrix

from hexagon import free_swing

YOUNG, POISSON = 210e3, 0.3
CORNERS = array([[-1, -1], [1, -1], [1, 1], [-1, 1]])
GAUSS = CORNERS / sqrt(3)
FACES = {"plane": [[-pi / 6]], "star": [[-pi / 6, pi / 6], [-pi / 3, 0, pi / 3]]}


class Solid:
    """One slice under load; `points` move with it. Unit of length is the width across flats, of stress MPa."""

    def __init__(self, mesh, yield_mpa):
        self.mesh, self.yield_mpa = mesh, yield_mpa
        self.points = mesh.points.copy()
        self.velocity = zeros(self.points.shape)
        self.stress = zeros((4, len(mesh.pieces) * 4))
        points, pieces = arange(len(mesh.pieces) * 4), mesh.pieces.repeat(4, axis=0)
        freedom = stack_freedoms(pieces)
        self.columns = freedom.ravel()
        self.starts = arange(0, len(points) * 8 + 1, 8)
        self.shape = (len(points), 2 * len(self.points))
        self.refresh()
        self.mass = self.masses()

    def refresh(self):
        """Strain of each point from the motion of the nodes, for where they stand now."""
        corner = self.points[self.mesh.pieces]
        slope = array([[CORNERS[:, 0] * (1 + g[1] * CORNERS[:, 1]), CORNERS[:, 1] * (1 + g[0] * CORNERS[:, 0])] for g in GAUSS]) / 4
        jacobian = einsum("gin,mnj->mgij", slope, corner)
        area = jacobian[..., 0, 0] * jacobian[..., 1, 1] - jacobian[..., 0, 1] * jacobian[..., 1, 0]
        inverse = array([[jacobian[..., 1, 1], -jacobian[..., 0, 1]], [-jacobian[..., 1, 0], jacobian[..., 0, 0]]]) / area
        gradient = einsum("ijmg,gjn->mgni", inverse, slope)
        mean = einsum("mgni,mg->mni", gradient, area) / area.sum(axis=1)[:, None, None]
        gap = (mean[:, None] - gradient) / 2
        volume = zeros(gap.shape[:2] + (8,))
        volume[..., 0::2], volume[..., 1::2] = gap[..., 0], gap[..., 1]
        rows = [volume.copy(), volume.copy(), zeros(volume.shape), zeros(volume.shape)]
        rows[0][..., 0::2] += gradient[..., 0]
        rows[1][..., 1::2] += gradient[..., 1]
        rows[2][..., 0::2], rows[2][..., 1::2] = gradient[..., 1], gradient[..., 0]
        rows[3][..., 0::2], rows[3][..., 1::2] = -gradient[..., 1] / 2, gradient[..., 0] / 2
        self.strain = [csr_matrix((row.ravel(), self.columns, self.starts), shape=self.shape) for row in rows]
        self.back = [row.T for row in self.strain[:3]]
        self.area = maximum(area, 1e-12).ravel()
        self.thin = sqrt(1 / (gradient ** 2).sum(axis=(2, 3)).max(axis=1))

    def masses(self):
        """Mass of every node for which a step of 1 is allowed with room to spare."""
        modulus = YOUNG * (1 - POISSON) / (1 + POISSON) / (1 - 2 * POISSON)
        piece = modulus * self.area.reshape(-1, 4).sum(axis=1) / self.thin ** 2 * 1.6
        return bincount(self.mesh.pieces.ravel(), (piece / 4).repeat(4), len(self.points))[:, None]

    def flow(self):
        """Stress after the step just made."""
        moved = self.velocity.ravel()
        xx, yy, xy, spin = (row @ moved for row in self.strain)
        lame, shear = YOUNG * POISSON / (1 + POISSON) / (1 - 2 * POISSON), YOUNG / 2 / (1 + POISSON)
        sxx, syy, sxy, szz = self.stress
        turned = 2 * spin * sxy
        swell = lame * (xx + yy)
        sxy = sxy + spin * (sxx - syy) + shear * xy
        sxx, syy, szz = sxx - turned + swell + 2 * shear * xx, syy + turned + swell + 2 * shear * yy, szz + swell
        mean = (sxx + syy + szz) / 3
        sxx, syy, szz = sxx - mean, syy - mean, szz - mean
        mises = sqrt(1.5 * (sxx * sxx + syy * syy + szz * szz) + 3 * sxy * sxy)
        keep = minimum(1, self.yield_mpa / maximum(mises, 1e-9))
        self.stress = array([sxx * keep + mean, syy * keep + mean, sxy * keep, szz * keep + mean])

    def inner(self):
        """Force of the stresses on the nodes."""
        return -sum(back @ (self.stress[i] * self.area) for i, back in enumerate(self.back)).reshape(-1, 2)


def stack_freedoms(pieces):
    """Numbers of the eight motions of each point's piece."""
    freedom = zeros((len(pieces), 8), int)
    freedom[:, 0::2], freedom[:, 1::2] = 2 * pieces, 2 * pieces + 1
    return freedom


def push(points, motion, stiff, half, turn, rate, friction, faces):
    """Force of the driver on points of the rim: `half` its opening, turned by `turn`, turning by `rate` each step."""
    deep = None
    for angle in faces:
        normals = array([[cos(a + turn), sin(a + turn)] for a in angle])
        over = points @ normals.T - half
        best = over.argmax(axis=1)
        mine, normal = over.max(axis=1), normals[best]
        if deep is None:
            deep, toward = mine, normal
        else:
            toward = where((mine < deep)[:, None], normal, toward)
            deep = minimum(mine, deep)
    force = stiff * maximum(deep, 0)
    tangent = toward[:, ::-1] * array([-1, 1])
    slide = ((motion - rate * points[:, ::-1] * array([-1, 1])) * tangent).sum(axis=1)
    rubbing = friction * force * slide / (size(slide) + 0.02 * rate)
    return -force[:, None] * toward - rubbing[:, None] * tangent


def curve(mesh, contacts, play, wear, yield_mpa, friction=0.15, steps=40000, swing=16.0, faces="plane"):
    """Turn past touch (degrees) and m = T/(h·s²·Re), until it has slipped by, its bore has sheared off or `swing` is reached."""
    solid = Solid(mesh, yield_mpa)
    begin, rate, half = free_swing(play, wear), swing * pi / 180 / steps, (1 + play) / 2
    rotation = array([[cos(mesh.turn), sin(mesh.turn)], [-sin(mesh.turn), cos(mesh.turn)]])
    mass = solid.mass.copy()
    mass[mesh.first] += solid.mass[mesh.second]
    stiff = 0.15 * mass[mesh.rim, 0]
    turns, torques, sum_, best = [], [], 0.0, 0.0
    whole = solid.thin.copy()
    for step in range(1, steps + 1):
        force = solid.inner()
        outer = push(solid.points[mesh.rim], solid.velocity[mesh.rim], stiff, half, begin + rate * step, rate, friction, FACES[faces])
        force[mesh.rim] += outer
        sum_ += cross(solid.points[mesh.rim], outer).sum()
        force[mesh.first] += force[mesh.second] @ rotation.T
        force -= 0.8 * size(force) * sign(solid.velocity)
        solid.velocity += force / mass
        solid.velocity[mesh.bore] = 0
        solid.velocity[mesh.second] = solid.velocity[mesh.first] @ rotation
        solid.points += solid.velocity
        solid.flow()
        if step % 25 == 0:
            solid.refresh()
            if (solid.thin < 0.5 * whole)[:len(mesh.rim) - 1].any():
                break
        if step % 200 == 0:
            turns.append((rate * step) * 180 / pi)
            torques.append(sum_ / 200 * contacts / yield_mpa)
            sum_, lately = 0.0, sum(torques[-12:]) / 12
            best = max(best, lately)
            if lately < 0.85 * best:
                break
    return array(turns), array(torques)
