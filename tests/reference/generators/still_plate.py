"""A rectangle of metal that resists: the spectral plate with a basis whose currents stay finite at the rim.

psi = sum c_mn u_m(x/a) u_n(y/b), u_m(t) = (1 - t^2) P'_{m+1}(t), with the transform (NIST DLMF 18.17(v), Gegenbauer, lambda 3/2)
hat(u_m)(q) = pi 2^-1/2 (-i)^m (m+1)(m+2)/Gamma(3/2) q^-3/2 J_{m+3/2}(q) and u_m' = -(m+1)(m+2) P_{m+1}.
Inductance as in spectral_plate.py; resistance Zs int K . K' = Zs int grad psi . grad psi', E = Zs K for the current of both faces
together. Zs = (1+j) rho/delta, the metal thick against its skin depth. (1 - t^2) resolves a strip of 1/n^2 at the rim, where
the perfect conductor's current grows as 1/sqrt(distance) and that of a real one stops growing at |Zs|/(w mu0).
"""
import math
import numpy as np
from scipy.special import eval_legendre, gamma, jv
from neumann import MU0
from spectral_plate import SPAN, STEP
from vehicle import bz_of_wires


def basis(n, t):
    """u_m(t), (n, len(t))."""
    m = np.arange(n)[:, None]
    # (1 - t^2) P'_k = k (k+1)/(2k+1) (P_{k-1} - P_{k+1})
    k = m + 1
    return k * (k + 1) / (2 * k + 1) * (eval_legendre(k - 1, t) - eval_legendre(k + 1, t))


def integrals(n):
    """int u_m u_m' dt and int u_m' u_m'' dt over (-1, 1)."""
    t, w = np.polynomial.legendre.leggauss(n + 3)
    u = basis(n, t)
    k = np.arange(n) + 1.0
    return (u * w) @ u.T, np.diag((k * (k + 1)) ** 2 * 2 / (2 * k + 1))


class HeatMatrices:
    """2 int_0^inf (1 - exp(-q^2 tau)) hat(u_m) hat(u_m')* dq, equal parity only."""

    def __init__(self, n):
        self.limit = max(400.0, 1.0 * n * n)
        panels = int(self.limit / 2.5) + 1
        x, w = np.polynomial.legendre.leggauss(8)
        edges = np.linspace(0, self.limit, panels + 1)
        half = (edges[1] - edges[0]) / 2
        self.q = (edges[:-1, None] + half * (x + 1)).ravel()
        self.w = np.tile(w * half, panels)
        m = np.arange(n)
        sign = np.where(m // 2 % 2 == 0, 1.0, -1.0)
        self.c = math.pi / math.sqrt(2) * (m + 1) * (m + 2) / gamma(1.5)
        self.f = (sign * self.c)[:, None] * np.array([jv(k + 1.5, self.q) for k in m]) * self.q ** -1.5
        s, v = np.polynomial.legendre.leggauss(40)
        self.s, self.v = (s + 1) / 2, v / 2

    def at(self, tau):
        weights = -2 * np.expm1(-self.q ** 2 * tau) * self.w
        # beyond the limit J J' is replaced by its mean, 1/(pi q) up to sign
        tail = 2 / math.pi / self.limit ** 3 * (-np.expm1(-self.limit ** 2 * tau / self.s ** 2) * self.s ** 2 * self.v).sum()
        h = np.zeros((len(self.c),) * 2)
        for p in (0, 1):
            f, c = self.f[p::2], self.c[p::2]
            h[p::2, p::2] = (f * weights) @ f.T + np.outer(c, c) * tail
        return h


def rule(n, crowd):
    """Gauss-Legendre panels on (-1, 1) that close in on the given values and on the ends by factors of 3."""
    edges = set(np.linspace(-1, 1, max(2, n // 8) + 1))
    for t in (*crowd, -1.0, 1.0):
        edges |= {t} if -1 < t < 1 else set()
        step = 0.5
        while step > 1e-3:
            edges |= {e for e in (t - step, t + step) if -1 < e < 1}
            step /= 3
    edges = np.array(sorted(edges))
    x, w = np.polynomial.legendre.leggauss(8)
    half = np.diff(edges)[:, None] / 2
    return (edges[:-1, None] + half * (x + 1)).ravel(), (half * w).ravel()


class StillPlate:
    """width x length at `centre`, height z, with nx x ny terms."""

    def __init__(self, width, length, centre, z, nx, ny):
        self.a, self.b, self.centre, self.z, self.nx, self.ny = width / 2, length / 2, centre, z, nx, ny
        hx, hy = HeatMatrices(nx), HeatMatrices(ny)
        self.t = self.a * self.b * np.exp(np.arange(-SPAN, SPAN + STEP / 2, STEP))
        self.hx = [hx.at(t / self.a ** 2) for t in self.t]
        self.hy = [hy.at(t / self.b ** 2) for t in self.t]
        self.x, self.y = integrals(nx), integrals(ny)

    def block(self, p, q, nx, ny):
        """(inductance in H, int grad psi . grad psi') of the terms of one parity, (nx/2 ny/2) square."""
        sx, sy = slice(p, nx, 2), slice(q, ny, 2)
        (ox, dx), (oy, dy) = ([v[s, s] for v in pair] for pair, s in ((self.x, sx), (self.y, sy)))
        total = 0
        for t, hx, hy in zip(self.t, self.hx, self.hy):
            hx, hy = hx[sx, sx], hy[sy, sy]
            total = total + t ** -0.5 * (np.kron(hx, 2 * math.pi * oy) + np.kron(2 * math.pi * ox - hx, hy))
        inductance = MU0 / (16 * math.pi ** 2.5) * self.a * self.b * STEP * total
        return inductance, self.b / self.a * np.kron(dx, oy) + self.a / self.b * np.kron(ox, dy)

    def moments(self, loop, crowd, panel):
        """int psi_mn Bz, (nx, ny), of a loop's field; `crowd`: plan coordinates where wires run, for x and for y."""
        tx, wx = rule(2 * self.nx + 30, [(v - self.centre[0]) / self.a for v in crowd[0]])
        ty, wy = rule(2 * self.ny + 30, [(v - self.centre[1]) / self.b for v in crowd[1]])
        x, y = np.meshgrid(self.centre[0] + self.a * tx, self.centre[1] + self.b * ty, indexing='ij')
        points = np.column_stack([x.ravel(), y.ravel(), np.full(x.size, self.z)])
        field = bz_of_wires(loop, points, panel).reshape(x.shape)
        return (basis(self.nx, tx) * wx * self.a) @ field @ (basis(self.ny, ty) * wy * self.b).T


def change(plate, moments, surface_impedances, fractions=(0.5, 0.75, 1.0)):
    """[Delta L per surface impedance over jw (complex, H)] at growing numbers of terms."""
    answers = []
    for f in fractions:
        nx, ny = max(2, round(f * plate.nx)), max(2, round(f * plate.ny))
        totals = [0j] * len(surface_impedances)
        for p in (0, 1):
            for q in (0, 1):
                inductance, resistance = plate.block(p, q, nx, ny)
                phi = moments[p:nx:2, q:ny:2].ravel()
                scale = 1 / np.sqrt(np.diag(inductance))
                phi, inductance, resistance = phi * scale, inductance * scale * scale[:, None], resistance * scale * scale[:, None]
                for k, ratio in enumerate(surface_impedances):
                    totals[k] -= complex(phi @ np.linalg.solve(inductance + ratio * resistance, phi.astype(complex)))
        answers.append(totals)
    return answers
