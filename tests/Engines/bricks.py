"""Half of a round hollow body in eight-node bricks, cut along its plane of symmetry, as CalculiX reads it."""

import numpy


class Ring:
    """Nodes and bricks of one body: stations along its axis, radii through its wall, angles from top (0) to bottom (pi)."""

    def __init__(self, name, first, stations, radii, angles, place):
        """`place` moves the body's own (along, up, sideways) to where it stands."""
        self.name, self.stations, self.radii, self.angles = name, stations, radii, angles
        count = (len(stations), len(radii), len(angles))
        self.ids = first + numpy.arange(numpy.prod(count)).reshape(count)
        self.points = {}
        for i, x in enumerate(stations):
            for j, radius in enumerate(radii):
                for k, angle in enumerate(angles):
                    self.points[self.ids[i, j, k]] = place(x, radius * numpy.cos(angle), radius * numpy.sin(angle))
        self.bricks = {}
        self.place_of = {}
        number = first
        for i in range(count[0] - 1):
            for j in range(count[1] - 1):
                for k in range(count[2] - 1):
                    ring = [self.ids[i, j, k], self.ids[i + 1, j, k], self.ids[i + 1, j + 1, k], self.ids[i, j + 1, k]]
                    self.bricks[number] = [*(ring + self.ids[0, 0, 1] - self.ids[0, 0, 0]), *ring]
                    self.place_of[number] = (i, j, k)
                    number += 1

    def symmetry(self):
        """Nodes on the plane of symmetry."""
        return [*self.ids[:, :, 0].ravel(), *self.ids[:, :, -1].ravel()]

    def side(self, inner, wanted=lambda x: True):
        """Brick faces of the inner or outer skin: brick number and face."""
        layer, face = (0, "S3") if inner else (len(self.radii) - 2, "S5")
        return [f"{brick},{face}" for brick, (i, j, _) in self.place_of.items()
                if j == layer and wanted((self.stations[i] + self.stations[i + 1]) / 2)]

    def text(self, kind):
        """Nodes, bricks and their set."""
        lines = ["*NODE"]
        lines += [f"{node},{x:.9g},{y:.9g},{z:.9g}" for node, (x, y, z) in self.points.items()]
        lines.append(f"*ELEMENT,TYPE={kind},ELSET={self.name}")
        lines += [",".join(map(str, [brick, *corners])) for brick, corners in self.bricks.items()]
        return "\n".join(lines)


def numbers(ids):
    """A list of numbers, sixteen a line."""
    ids = sorted(set(map(int, ids)))
    return "\n".join(",".join(map(str, ids[i:i + 16])) for i in range(0, len(ids), 16))


def spaced(*parts):
    """Stations through (position, pieces) one after the other."""
    stations = [parts[0]]
    for end, pieces in parts[1:]:
        stations += list(numpy.linspace(stations[-1], end, pieces + 1)[1:])
    return stations


def corner(radius, pieces):
    """Radius of the corners that gives a polygon, so many pieces in half its round, the second moment of the circle."""
    step = numpy.pi / pieces
    return radius * (6 * numpy.pi / (2 * pieces * numpy.sin(step) * (2 + numpy.cos(step)))) ** 0.25
