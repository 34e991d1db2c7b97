"""A thin, perfectly conducting rectangle by a spectral method: no mesh, no real-space singular integral.

Stream function psi = sum c_mn u_m(x/a) u_n(y/b), u_m(t) = sqrt(1-t^2) U_m(t): zero on the rim, with the right root there.
Energy form in Fourier space, with hat(u_m)(q) = pi (-i)^m (m+1) J_{m+1}(q)/q:
  A = (mu0/8 pi^2) int |k| psi psi'* d^2k,   |k| = (1/2 sqrt(pi)) int_0^inf (1 - exp(-k^2 t)) t^(-3/2) dt,
which splits into products of one-dimensional matrices for every t. The t integral is the trapezoidal rule in ln t.
(Chebyshev basis: NIST DLMF 18.17(v), 10.22; the form: W. McLean, Strongly Elliptic Systems, ch. 9, hypersingular operator.)
"""
import math
import numpy as np
from scipy.special import exp1, jv
from neumann import MU0

STEP, SPAN = 0.4, 33.0


def unit_overlap(n):
    """2 pi int u_m u_m' dt, exact by Gauss-Legendre."""
    t, w = np.polynomial.legendre.leggauss(n + 2)
    u = np.sin(np.outer(np.arange(1, n + 1), np.arccos(t)))
    return 2 * math.pi * (u * w) @ u.T


class HeatMatrices:
    """H(tau)_mm' = 2 int_0^inf (1 - exp(-q^2 tau)) hat(u_m) hat(u_m')* dq, same parity only (else zero)."""

    def __init__(self, n):
        self.limit = max(400.0, 1.0 * n * n)
        panels = int(self.limit / 2.5) + 1
        x, w = np.polynomial.legendre.leggauss(8)
        edges = np.linspace(0, self.limit, panels + 1)
        half = (edges[1] - edges[0]) / 2
        self.q = (edges[:-1, None] + half * (x + 1)).ravel()
        self.w = np.tile(w * half, panels)
        order = np.arange(1, n + 1)
        # (-i)^m against i^m': the sign of every other member of a parity flips.
        sign = np.where(np.arange(n) // 2 % 2 == 0, 1.0, -1.0)
        self.f = math.pi * (sign * order)[:, None] * np.array([jv(m, self.q) for m in order]) / self.q
        self.order = order

    def at(self, tau):
        weights = -2 * np.expm1(-self.q ** 2 * tau) * self.w
        x = self.limit ** 2 * tau
        # Beyond the limit J J' is replaced by its mean, 1/(pi q) up to sign.
        tail = -math.expm1(-x) / self.limit ** 2 + tau * (float(exp1(x)) if x < 700 else 0.0)
        h = np.zeros((len(self.order),) * 2)
        for p in (0, 1):
            f, m = self.f[p::2], self.order[p::2]
            h[p::2, p::2] = (f * weights) @ f.T + math.pi * np.outer(m, m) * tail
        return h


class PlateMatrix:
    """A for half sides a, b; blocks (p, q) of parity in x and y: block(p, q, nx, ny) is (nx/2 ny/2) square."""

    def __init__(self, a, b, nx, ny):
        self.a, self.b = a, b
        hx = HeatMatrices(nx)
        hy = hx if nx == ny else HeatMatrices(ny)
        self.s = np.arange(-SPAN, SPAN + STEP / 2, STEP)
        self.t = a * b * np.exp(self.s)
        self.hx = [hx.at(t / a ** 2) for t in self.t]
        self.hy = [hy.at(t / b ** 2) for t in self.t]
        self.gx, self.gy = unit_overlap(nx), unit_overlap(ny)

    def block(self, p, q, nx, ny):
        sx, sy = slice(p, nx, 2), slice(q, ny, 2)
        gx, gy = self.gx[sx, sx], self.gy[sy, sy]
        # G G - (G-Hx)(G-Hy) = Hx G + (G - Hx) Hy
        total = 0
        for t, hx, hy in zip(self.t, self.hx, self.hy):
            hx, hy = hx[sx, sx], hy[sy, sy]
            total = total + t ** -0.5 * (np.kron(hx, gy) + np.kron(gx - hx, hy))
        return MU0 / (16 * math.pi ** 2.5) * self.a * self.b * STEP * total


def rule(n, crowd=()):
    """theta nodes and weights on (0, pi) for int u_m(t) f(t) dt = sum w sin(theta) sin((m+1) theta) f(cos theta).

    Without `crowd` the trapezoidal rule (Gauss-Chebyshev of the second kind); with it, Gauss-Legendre panels that close
    in on the given values of t by factors of 3.
    """
    if not crowd:
        theta = math.pi * np.arange(1, n + 1) / (n + 1)
        return theta, np.full(n, math.pi / (n + 1))
    edges = set(np.linspace(0, math.pi, max(2, n // 8) + 1))
    for t in crowd:
        c, step = math.acos(t), 0.5
        edges.add(c)
        while step > 1e-7:
            edges |= {e for e in (c - step, c + step) if 0 < e < math.pi}
            step /= 3
    edges = np.array(sorted(edges))
    x, w = np.polynomial.legendre.leggauss(8)
    half = np.diff(edges)[:, None] / 2
    return (edges[:-1, None] + half * (x + 1)).ravel(), (half * w).ravel()
