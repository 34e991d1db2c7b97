"""A mat of bars under loops: a grid of shorted square meshes, one unknown current each, solved densely.

Bars are straight filaments of one pitch from crossing to crossing, bonded there, both directions in one plane. Partial
inductances: parallel filaments by their closed form (Grover, Inductance Calculations, ch. 6), a bar with itself
(mu0 l/2pi)(asinh(l/a) - sqrt(1 + (a/l)^2) + a/l) (Rosa 1908). Series impedance per metre z = (k rho/2 pi a) J0(ka)/J1(ka),
k^2 = -jw mu/rho. With B the incidence of bars in meshes: Z = B (z p + jw L) B^T, and a loop i that drives the fluxes
Phi_i (per ampere) round the meshes changes M_ij by -Phi_i^T (Z/jw)^-1 Phi_j: real part henries, -w times the imaginary
part ohms. The flux is the line integral of the wires' closed-form vector potential by Gauss-Legendre.
"""
import math
import numpy as np
from scipy.special import jve
from neumann import MU0
from shapes import at_height, sides

TURN = np.array([[0.0, -1.0], [1.0, 0.0]])


def bar_impedance(radius, frequency, rho, mu_r):
    """ohm/m, complex."""
    omega = 2 * math.pi * frequency
    k = np.sqrt(-1j * omega * MU0 * mu_r / rho)
    # jve is scaled by exp(-|Im|), which cancels
    return complex(k * rho / (2 * math.pi * radius) * jve(0, k * radius) / jve(1, k * radius))


def between_bars(ahead, beside, p, radius):
    """H, of two parallel filaments p long, `ahead` and `beside` pitches apart (arrays)."""
    s, d = np.abs(np.asarray(ahead, float)) * p, np.abs(np.asarray(beside, float)) * p

    def f(x):
        x = np.abs(x)
        with np.errstate(divide='ignore', invalid='ignore'):
            apart = x * np.arcsinh(x / d) - np.sqrt(x * x + d * d)
            # in one line: x ln x - x, of which the terms linear in x drop out of the second difference
            line = np.where(x > 0, x * np.log(np.where(x > 0, x, 1)), 0.0) - x
        return np.where(d > 0, apart, line)

    value = MU0 / (4 * math.pi) * (f(s + p) - 2 * f(s) + f(s - p))
    own = MU0 * p / (2 * math.pi) * (math.asinh(p / radius) - math.sqrt(1 + (radius / p) ** 2) + radius / p)
    return np.where((s == 0) & (d == 0), own, value)


class Mat:
    """nx x ny meshes of pitch p, `centre` its middle, turned by `degrees`; bars at z = -depth."""

    def __init__(self, nx, ny, p, radius, depth, centre=(0.0, 0.0), degrees=0.0):
        self.nx, self.ny, self.p, self.radius, self.depth = nx, ny, p, radius, depth
        self.centre, self.degrees = centre, degrees

    def place(self, flat):
        c, s = math.cos(math.radians(self.degrees)), math.sin(math.radians(self.degrees))
        return np.asarray(flat) @ np.array([[c, s], [-s, c]]) + self.centre

    def outline(self):
        w, l = self.nx * self.p / 2, self.ny * self.p / 2
        return self.place([(-w, -l), (w, -l), (w, l), (-w, l)]).tolist()

    def bars(self):
        """Start points (own frame) and directions: along x from (i, j) to (i+1, j), then along y from (i, j) to (i, j+1)."""
        p, w, l = self.p, self.nx * self.p / 2, self.ny * self.p / 2
        i, j = np.meshgrid(np.arange(self.nx), np.arange(self.ny + 1), indexing='ij')
        k, m = np.meshgrid(np.arange(self.nx + 1), np.arange(self.ny), indexing='ij')
        along_x = np.stack([i * p - w, j * p - l], -1)
        along_y = np.stack([k * p - w, m * p - l], -1)
        return along_x, along_y

    def round_meshes(self, x, y):
        """Counter-clockwise sums round every mesh of values along the bars, (nx, ny)."""
        return x[:, :-1] - x[:, 1:] + y[1:, :] - y[:-1, :]

    def inductance(self):
        """(n, n) H; meshes in the order i * ny + j."""
        most = max(self.nx, self.ny)
        a, b = np.meshgrid(np.arange(most), np.arange(most + 1), indexing='ij')
        bars = between_bars(a, b, self.p, self.radius)
        two_sides = np.empty((most, most))
        for d in range(most):
            two_sides[:, d] = 2 * bars[:, d] - bars[:, d + 1] - bars[:, abs(d - 1)]
        table = two_sides[:self.nx, :self.ny] + two_sides.T[:self.nx, :self.ny]
        i, j = (v.ravel() for v in np.meshgrid(np.arange(self.nx), np.arange(self.ny), indexing='ij'))
        return table[np.abs(i[:, None] - i), np.abs(j[:, None] - j)]

    def shared_metres(self):
        """B p B^T: metres of bar round a mesh on the diagonal, less those shared with a neighbour beside it."""
        n = self.nx * self.ny
        g = np.zeros((n, n))
        index = np.arange(n).reshape(self.nx, self.ny)
        g[index, index] = 4 * self.p
        for one, other in ((index[1:], index[:-1]), (index[:, 1:], index[:, :-1])):
            g[one, other] = g[other, one] = -self.p
        return g

    def flux(self, loop, panels=4, order=12):
        """Wb/A round every mesh."""
        x, w = np.polynomial.legendre.leggauss(order)
        t = ((np.arange(panels)[:, None] + (x + 1) / 2) / panels).ravel() * self.p
        w = np.tile(w / (2 * panels), panels) * self.p
        along = []
        for starts, axis in zip(self.bars(), ([1.0, 0.0], [0.0, 1.0])):
            direction = self.place(axis) - np.asarray(self.centre)
            points = self.place(starts)[..., None, :] + t[:, None] * direction
            along.append(potential(loop, points, -self.depth, direction) @ w)
        return self.round_meshes(*along).ravel()


def potential(loop, points, z, direction):
    """A . direction, T m/A, at points (..., 2) of height z."""
    total = np.zeros(points.shape[:-1])
    for piece, heights in sides(loop):
        if piece[0] != 'line':
            raise ValueError('polygons only')
        for height in heights:
            _, p, q = at_height(piece, height)
            length = math.dist(p, q)
            u = (np.array(q[:2]) - p[:2]) / length
            if abs(u @ direction) < 1e-15:
                continue
            r = points - p[:2]
            s = r @ u
            d = np.sqrt((r @ (TURN @ u)) ** 2 + (z - height) ** 2)
            total += u @ direction * (np.arcsinh(s / d) + np.arcsinh((length - s) / d))
    return MU0 / (4 * math.pi) * total


class Solved:
    """The changes of the inductances of `loops` by a mat, at any frequency and metal."""

    def __init__(self, mat, loops):
        self.mat = mat
        self.matrix, self.metres = mat.inductance(), mat.shared_metres()
        self.fluxes = np.array([mat.flux(loop) for loop in loops]).T

    def currents(self, frequency, rho, mu_r):
        z = 0 if rho == 0 else bar_impedance(self.mat.radius, frequency, rho, mu_r)
        ratio = z / (2j * math.pi * frequency)
        return -np.linalg.solve(self.matrix + ratio * self.metres, self.fluxes.astype(complex))

    def change(self, frequency, rho=1.7e-7, mu_r=100):
        """(loops, loops) complex henries."""
        return self.fluxes.T @ self.currents(frequency, rho, mu_r)
