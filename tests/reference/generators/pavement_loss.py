"""pavement-loss.json: what a conducting ground adds to the resistance of a loop that lies on it, to first order in sigma.

Currents J = -jw sigma A flow in the half space below (A is horizontal, so no charge is needed at its surface):
  R = w^2 sigma int |A|^2 dV per ampere squared.
Two ways, neither by the double integral of |r - r'| round the wire that a program would use:
  volume: int |A|^2 over the half space, A of the circle by elliptic integrals, of polygons by the wires' closed form;
  areas:  int |A|^2 dV = mu0^2/16 pi int int psi psi' / |r - r'| dS dS', psi the turns round a point (from A's plane Fourier
          transform mu0 J exp(-k|z|)/2k, with J = curl psi), the inner integral the closed-form potential of a polygon.
Check: the circle's sigma (w mu0)^2 a^3 / 3.
"""
import math
import numpy as np
from scipy.special import ellipe, ellipkm1
from neumann import MU0
from shapes import celled, circle, plan_sides, polygon, rectangle
from writing import write

X, W = np.polynomial.legendre.leggauss(10)
# of 1/distance beyond the reach, from 0 to 1
TAIL = [np.concatenate(v) for v in zip(*(((a + (b - a) * (X + 1) / 2), (b - a) * W / 2) for a, b in ((0, 0.1), (0.1, 0.3), (0.3, 1))))]


def graded(edges_at, reach, finest):
    """Nodes and weights on (-inf, inf), panels growing away from the given places; 1/t beyond `reach`."""
    edges = {-reach, reach}
    for e in edges_at:
        edges.add(e)
        step = finest
        while step < 2 * reach:
            edges |= {v for v in (e - step, e + step) if -reach < v < reach}
            step *= 2
    # panels no longer than the distance to the nearest of the places, no two edges nearer than the finest
    edges = np.array(sorted(edges))
    edges = edges[np.concatenate([[True], np.diff(edges) > finest / 2])]
    half = np.diff(edges)[:, None] / 2
    x, w = (edges[:-1, None] + half * (X + 1)).ravel(), (half * W).ravel()
    t, v = TAIL
    far, weight = reach / t, reach * v / t ** 2
    return np.concatenate([-far, x, far]), np.concatenate([weight, w, weight])


def depths(finest, reach):
    """Nodes and weights on (0, inf)."""
    edges = np.concatenate([[0], finest * 2.0 ** np.arange(math.ceil(math.log2(reach / finest)) + 1)])
    half = np.diff(edges)[:, None] / 2
    x, w = (edges[:-1, None] + half * (X + 1)).ravel(), (half * W).ravel()
    t, v = TAIL
    return np.concatenate([x, edges[-1] / t]), np.concatenate([w, edges[-1] * v / t ** 2])


def volume_of_circle(a):
    """int |A|^2 dV below a circle of radius a, 1 A."""
    rho, wr = graded([0, a], 8 * a, 1e-4 * a)
    wr, rho = wr[rho > 0], rho[rho > 0]
    z, wz = depths(1e-4 * a, 8 * a)
    r, h = np.meshgrid(rho, z, indexing='ij')
    far = (a + r) ** 2 + h ** 2
    m, rest = 4 * a * r / far, ((a - r) ** 2 + h ** 2) / far
    k = np.sqrt(m)
    field = MU0 / (math.pi * k) * np.sqrt(a / r) * ((1 - m / 2) * ellipkm1(rest) - ellipe(m))
    return 2 * math.pi * (wr * rho) @ field ** 2 @ wz


def volume_of_rectangle(w, l):
    x, wx = graded([-w / 2, w / 2], 4 * max(w, l), 5e-3)
    y, wy = graded([-l / 2, l / 2], 4 * max(w, l), 5e-3)
    z, wz = depths(5e-3, 4 * max(w, l))
    px, py = np.meshgrid(x, y, indexing='ij')
    corners = [(-w / 2, -l / 2), (w / 2, -l / 2), (w / 2, l / 2), (-w / 2, l / 2)]
    total = 0.0
    for depth, weight in zip(z, wz):
        a = [0.0, 0.0]
        for (x0, y0), (x1, y1) in zip(corners, corners[1:] + corners[:1]):
            length = math.hypot(x1 - x0, y1 - y0)
            ux, uy = (x1 - x0) / length, (y1 - y0) / length
            s = (px - x0) * ux + (py - y0) * uy
            d = np.sqrt(((px - x0) * uy - (py - y0) * ux) ** 2 + depth ** 2)
            value = np.arcsinh(s / d) + np.arcsinh((length - s) / d)
            a[0] = a[0] + ux * value
            a[1] = a[1] + uy * value
        total += weight * (wx @ (a[0] ** 2 + a[1] ** 2) @ wy)
    return (MU0 / (4 * math.pi)) ** 2 * total


def potential(corners, points):
    """int dS'/|r - r'| of a counter-clockwise polygon at points (n, 2) of its plane."""
    total = np.zeros(len(points))
    for p, q in zip(corners, np.roll(corners, -1, 0)):
        u = (q - p) / np.linalg.norm(q - p)
        s0, s1 = (points - p) @ u, (points - q) @ u
        inward = (points - p) @ np.array([-u[1], u[0]])
        d = np.maximum(np.abs(inward), 1e-300)
        total += inward * (np.arcsinh(s0 / d) - np.arcsinh(s1 / d))
    return total


def over_triangle(a, b, c, n=40):
    """Points and weights; crowded to the sides by t = 3s^2 - 2s^3."""
    s, v = np.polynomial.legendre.leggauss(n)
    s, v = (s + 1) / 2, v / 2
    t, v = 3 * s ** 2 - 2 * s ** 3, v * 6 * s * (1 - s)
    p, q = (g.ravel() for g in np.meshgrid(t, t, indexing='ij'))
    weight = np.outer(v, v).ravel() * p * abs((b - a)[0] * (c - a)[1] - (b - a)[1] * (c - a)[0])
    return a + p[:, None] * ((1 - q)[:, None] * (b - a) + q[:, None] * (c - a)), weight


def areas(cells, n=40):
    """int int psi psi'/|r - r'| for [(corners counter-clockwise, convex, turns with sign)]."""
    total = 0.0
    for corners, turns in cells:
        middle = corners.mean(0)
        for p, q in zip(corners, np.roll(corners, -1, 0)):
            points, weight = over_triangle(middle, p, q, n)
            total += turns * sum(other * (weight @ potential(shape, points)) for shape, other in cells)
    return MU0 ** 2 / (16 * math.pi) * total


def cells_of(loop):
    shape, n = loop['shape'], loop['turns']
    if shape['kind'] == 'quadrupole':
        w, l = shape['width'] / 2, shape['length'] / 2
        box = lambda x0, x1: np.array([(x0, -l), (x1, -l), (x1, l), (x0, l)])
        return [(box(-w, 0), n), (box(0, w), -n)]
    return [(np.array([side[1][:2] for side, _ in plan_sides(shape)]), n)]


if __name__ == '__main__':
    a = 0.9
    disc = circle('circle', 4, 'awg16', 0.06, [0, 0], 2 * a)
    square = rectangle('square', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
    long = rectangle('long', 2, 'awg12', 0.06, [0, 0], 1.8, 5)
    kite = polygon('kite', 3, 'awg16', 0.05, [[-1, -0.8], [1.2, -0.6], [0.8, 1.1], [-0.6, 1.3]])
    quad = celled('quadrupole', 'quadrupole', 2, 'awg14', 0.05, [0, 0], 1.8, 3)
    by_volume = volume_of_circle(a)
    closed = MU0 ** 2 * a ** 3 / 3
    print('circle', by_volume / closed - 1)
    assert abs(by_volume / closed - 1) < 1e-4
    check = [{'loop': 'circle, one turn', 'volume': by_volume / MU0 ** 2, 'closedForm': closed / MU0 ** 2}]
    for name, w, l in (('square', 1.8, 1.8), ('long', 1.8, 5)):
        box = np.array([(-w / 2, -l / 2), (w / 2, -l / 2), (w / 2, l / 2), (-w / 2, l / 2)])
        v, s = volume_of_rectangle(w, l), areas([(box, 1)])
        print(name, v / s - 1, areas([(box, 1)], 28) / s - 1)
        assert abs(v / s - 1) < 2e-4
        check.append({'loop': name + ', one turn', 'volume': v / MU0 ** 2, 'areas': s / MU0 ** 2})
    rows = []
    for loop, sigma, f in ((disc, 0.05, 50e3), (square, 0.02, 50e3), (square, 0.1, 100e3), (long, 0.05, 20e3), (kite, 0.05, 50e3), (quad, 0.1, 100e3)):
        integral = loop['turns'] ** 2 * closed if loop is disc else areas(cells_of(loop))
        if loop is not disc:
            assert abs(areas(cells_of(loop), 28) / integral - 1) < 1e-5, loop['id']
        rows.append({'name': loop['id'], 'conductivity_S_m': sigma, 'frequency': f, 'resistance_ohm': (2 * math.pi * f) ** 2 * sigma * integral, 'loop': loop})
    write('pavement-loss.json', 'pavement_loss.py',
          'R = w^2 sigma int |A|^2 dV below a loop on the surface: circle sigma (w mu0)^2 a^3/3 per turn squared, polygons by the areas they enclose and '
          'the closed-form potential of a polygon; both against the integral over the volume', 1e-5, rows, digits=9,
          note='first order in the conductivity; all turns at the surface, so N turns give N^2; check: int |A|^2 dV over mu0^2, m^3', check=check)
