"""A vehicle of plates and rings over loops: the change of a loop's inductance, all parts in one matrix.

Own frame: y along the heading, x to the right of it; heading in degrees, 90 = along +y. Perfect conductors.
"""
import math
import numpy as np
from scipy.special import ellipe, ellipkm1
from neumann import MU0, length, mutual, ring, trace
from shapes import at_height, sides
from spectral_plate import PlateMatrix, rule

X16, W16 = np.polynomial.legendre.leggauss(8)


def bz_of_wires(loop, points, panel):
    """Vertical flux density (T/A) of a loop at points (n, 3) by Biot-Savart, Gauss-Legendre on panels of the given length."""
    total = np.zeros(len(points))
    for piece, heights in sides(loop):
        n = math.ceil(length(piece) / panel)
        s = ((np.arange(n)[:, None] + (X16 + 1) / 2) / n).ravel()
        w = np.tile(W16 / (2 * n), n)
        for z in heights:
            r, d = trace(at_height(piece, z), s)
            for i in range(0, len(points), 2000):
                x, y, h = (points[i:i + 2000, k, None] - r[None, :, k] for k in range(3))
                total[i:i + 2000] += ((d[:, 0] * y - d[:, 1] * x) * w / (x * x + y * y + h * h) ** 1.5).sum(1)
    return MU0 / (4 * math.pi) * total


def bz_of_ring(piece, points):
    """The same of a ring, by elliptic integrals (W. R. Smythe, Static and Dynamic Electricity, 7.10)."""
    c, radius, n = np.array(piece[1]), piece[2], np.cross(piece[5], piece[6])
    d = points - c
    z = d @ n
    out = d - z[:, None] * n
    rho = np.maximum(np.linalg.norm(out, axis=1), 1e-12)
    far, near = (radius + rho) ** 2 + z * z, (radius - rho) ** 2 + z * z
    k, e = ellipkm1(near / far), ellipe(1 - near / far)
    along = (k + (radius ** 2 - rho ** 2 - z * z) / near * e) / np.sqrt(far)
    outward = z / rho * (-k + (radius ** 2 + rho ** 2 + z * z) / near * e) / np.sqrt(far)
    return MU0 / (2 * math.pi) * (along * n[2] + outward * out[:, 2] / rho)


class Plate:
    def __init__(self, part, place, size, crowd=((), ())):
        self.a, self.b, self.nx, self.ny = part['width'] / 2, part['length'] / 2, *size
        self.matrix = PlateMatrix(self.a, self.b, *size)
        tx, wx = rule(2 * size[0] + 30, crowd[0])
        ty, wy = rule(2 * size[1] + 30, crowd[1])
        x, y = np.meshgrid(self.a * np.cos(tx), self.b * np.cos(ty), indexing='ij')
        flat = np.stack([x.ravel() + part['centre'][0], y.ravel() + part['centre'][1]], 1)
        self.points = np.column_stack([place(flat), np.full(len(flat), part['height'])])
        self.shape = x.shape
        self.px = np.sin(np.outer(np.arange(1, size[0] + 1), tx)) * np.sin(tx) * wx * self.a
        self.py = np.sin(np.outer(np.arange(1, size[1] + 1), ty)) * np.sin(ty) * wy * self.b

    def moments(self, field):
        """int psi_mn * field, as (nx, ny), for values of the field at self.points."""
        return self.px @ field.reshape(self.shape) @ self.py.T

    def index(self, nx, ny):
        """Positions (m, n) in block order, and the block matrices."""
        parities = [(p, q) for p in (0, 1) for q in (0, 1)]
        where = [np.array([(m, n) for m in range(p, nx, 2) for n in range(q, ny, 2)]) for p, q in parities]
        return where, [self.matrix.block(p, q, nx, ny) for p, q in parities]


def frame(vehicle_at, heading):
    turn = math.radians(heading - 90)
    c, s = math.cos(turn), math.sin(turn)
    rotation = np.array([[c, -s], [s, c]])
    return (lambda flat: np.asarray(flat) @ rotation.T + vehicle_at), rotation


def placed_ring(part, place, rotation):
    return ring((*place([part['centre'][:2]])[0], part['centre'][2]), part['radius'], (*(rotation @ part['axis'][:2]), part['axis'][2]))


def ring_inductance(part):
    return MU0 * part['radius'] * (math.log(8 * part['radius'] / part['conductorRadius']) - 2)


def flux_through_ring(loop, piece):
    return sum(mutual(at_height(p, z), piece, 1e-9) for p, heights in sides(loop) for z in heights)


def dipole_kernel(first, second):
    """Bz at `second` of unit vertical moments at `first`, (n1, n2)."""
    d = second[None, :, :] - first[:, None, :]
    r2 = (d * d).sum(-1)
    return MU0 / (4 * math.pi) * (3 * d[..., 2] ** 2 - r2) / r2 ** 2.5


def change(loop, parts, at, heading, sizes, fractions=(0.5, 0.75, 1.0), crowds=None):
    """Delta L of the loop at growing resolution. sizes: (nx, ny) for every part that is a plate, None for a ring."""
    place, rotation = frame(at, heading)
    plates = [Plate(p, place, s, c) for p, s, c in zip(parts, sizes, crowds or [((), ())] * len(parts)) if s]
    rings = [(p, placed_ring(p, place, rotation)) for p in parts if p['kind'] == 'ring']
    lowest = min([p.points[0, 2] for p in plates], default=1) - max(z for _, zs in sides(loop) for z in zs)
    phi = [p.moments(bz_of_wires(loop, p.points, 0.6 * lowest)) for p in plates]
    ring_phi = np.array([flux_through_ring(loop, r) for _, r in rings])
    ring_matrix = np.array([[ring_inductance(p) if i == j else mutual(r, o, 1e-9) for j, (_, o) in enumerate(rings)]
                            for i, (p, r) in enumerate(rings)]).reshape(len(rings), len(rings))
    to_ring = [[p.moments(bz_of_ring(r, p.points)) for _, r in rings] for p in plates]
    cross = {}
    for i in range(len(plates)):
        for j in range(i + 1, len(plates)):
            p, q = plates[i], plates[j]
            kernel = dipole_kernel(p.points, q.points)
            half = np.array([q.moments(row) for row in kernel]).reshape(len(kernel), -1)
            cross[i, j] = np.array([p.moments(col) for col in half.T]).reshape(-1, p.nx, p.ny).transpose(1, 2, 0).reshape(p.nx, p.ny, q.nx, q.ny)
    answers = []
    for f in fractions:
        blocks = [p.index(max(2, round(f * p.nx)), max(2, round(f * p.ny))) for p in plates]
        if len(plates) == 1 and not rings:
            where, matrices = blocks[0]
            answers.append(-sum(float(phi[0][w[:, 0], w[:, 1]] @ np.linalg.solve(m, phi[0][w[:, 0], w[:, 1]]))
                                for w, m in zip(where, matrices)))
            continue
        where = [np.concatenate(w) for w, _ in blocks]
        starts = np.concatenate([[0], np.cumsum([len(w) for w in where])]).astype(int)
        size = starts[-1] + len(rings)
        a, b = np.zeros((size, size)), np.zeros(size)
        for i, w in enumerate(where):
            at0 = starts[i]
            for m in blocks[i][1]:
                a[at0:at0 + len(m), at0:at0 + len(m)] = m
                at0 += len(m)
            b[starts[i]:starts[i + 1]] = phi[i][w[:, 0], w[:, 1]]
            for k in range(len(rings)):
                column = to_ring[i][k][w[:, 0], w[:, 1]]
                a[starts[i]:starts[i + 1], starts[-1] + k] = a[starts[-1] + k, starts[i]:starts[i + 1]] = column
        for (i, j), c in cross.items():
            wi, wj = where[i], where[j]
            part = c[wi[:, 0], wi[:, 1]][:, wj[:, 0], wj[:, 1]]
            a[starts[i]:starts[i + 1], starts[j]:starts[j + 1]] = part
            a[starts[j]:starts[j + 1], starts[i]:starts[i + 1]] = part.T
        a[starts[-1]:, starts[-1]:], b[starts[-1]:] = ring_matrix, ring_phi
        assert np.linalg.eigvalsh(a)[0] > 0
        answers.append(-float(b @ np.linalg.solve(a, b)))
    return answers
