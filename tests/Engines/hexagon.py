"""A plane slice of a hexagon in four-sided pieces: a sixth of it about one corner, or the half that one jaw presses on.

Lengths in units of the width across flats. The bore is round; the corners are rounded off by `wear`, the share of the width across
corners that is gone. Angles from the corner pressed on, which lies at 0.
"""

from numpy import arange, arccos, arctan2, array, concatenate, cos, pi, sin, sqrt, stack, vstack

BORE = 0.31


class Slice:
    """Points (n, 2), pieces (m, 4), and the sets of points: bore, rim and the two faces of the cut, the second the first turned by `turn`."""

    def __init__(self, contacts, wear, fine=1):
        radius = corner_radius(wear)
        corners = [(0.0, 20 * fine)] if contacts == 6 else [(-pi / 3, 7 * fine), (0.0, 20 * fine), (pi / 3, 7 * fine)]
        rim = [half_edge(radius, pieces, middle, side) for middle, pieces in corners for side in (-1, 1)]
        rim = vstack([*(part[:-1] for part in rim[:-1]), rim[-1]])
        angle = angles(rim)
        bore = BORE * stack([cos(angle), sin(angle)], axis=1)
        depth = concatenate([(1 - graded(5 * fine, 6.0)[::-1]) * 0.3, 0.3 + 0.7 * graded(12 * fine, 4.0)[1:]])
        self.points = concatenate([bore + (rim - bore) * share for share in depth])
        across, layers = len(rim), len(depth)
        ids = arange(across * layers).reshape(layers, across)
        self.pieces = stack([ids[:-1, :-1], ids[1:, :-1], ids[1:, 1:], ids[:-1, 1:]], axis=2).reshape(-1, 4)
        self.bore, self.rim, self.first, self.second = ids[0], ids[-1], ids[:, 0], ids[:, -1]
        self.turn = pi / 3 if contacts == 6 else pi


def corner_radius(wear):
    """Radius of the rounded corner."""
    return wear / sqrt(3) / (2 / sqrt(3) - 1)


def free_swing(play, wear):
    """How far a driver turns before it touches a corner, rad."""
    radius = corner_radius(wear)
    return pi / 6 - arccos(min(1.0, ((1 + play) / 2 - radius) / (1 / sqrt(3) - 2 * radius / sqrt(3))))


def angles(points):
    """Angle of each point about the middle."""
    return arctan2(points[:, 1], points[:, 0])


def graded(pieces, ratio):
    """Shares from 0 to 1 whose steps shrink towards 1, the first `ratio` times the last."""
    steps = ratio ** (-arange(pieces) / (pieces - 1))
    return concatenate([[0], steps.cumsum() / steps.sum()])


def half_edge(radius, pieces, middle, side):
    """Rim from the middle of a flat to the corner at `middle` (side -1), or from that corner on to the next flat's middle (side 1)."""
    straight = (0.5 - radius) / sqrt(3)
    arc = radius * pi / 6
    way = graded(pieces, 8.0) * (straight + arc)
    tangent = array([0.5 * sqrt(3), -0.5])
    start = tangent * 0.5
    along = array([0.5, 0.5 * sqrt(3)])
    centre = array([(1 - 2 * radius) / sqrt(3), 0.0])
    points = []
    for one in way:
        turned = (one - straight) / radius - pi / 6 if one > straight else None
        points.append(start + along * one if turned is None else centre + radius * array([cos(turned), sin(turned)]))
    points = array(points)
    if side == 1:
        points = points[::-1] * array([1, -1])
    return points @ array([[cos(middle), sin(middle)], [-sin(middle), cos(middle)]])
