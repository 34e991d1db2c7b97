"""circles.json: circular filaments: on one axis by elliptic integrals, side by side and against polygons by quadrature.

Circles in parallel planes are done twice: by adaptive quadrature and by the trapezoidal rule in both angles, which for
periodic smooth integrands converges exponentially. Circle against polygon likewise: adaptive against trapezoidal round
the circle with scipy.integrate.quad along each side.
"""
import math
import mpmath as mp
import numpy as np
from scipy.integrate import quad
from neumann import MU0, arc, line, neumann
from writing import write


def coaxial_circles(r1, r2, apart):
    """40 digits inside: the two terms cancel nearly when the circles are far apart."""
    with mp.workdps(40):
        r1, r2, apart = mp.mpf(r1), mp.mpf(r2), mp.mpf(apart)
        m = 4 * r1 * r2 / ((r1 + r2) ** 2 + apart ** 2)
        k = mp.sqrt(m)
        return float(4e-7 * mp.pi * mp.sqrt(r1 * r2) * ((2 / k - k) * mp.ellipk(m) - 2 / k * mp.ellipe(m)))


def two_circles_trapezoidal(r1, r2, offset, apart, n):
    t = 2 * math.pi * np.arange(n) / n
    a, b = t[:, None], t[None, :]
    x, y = r1 * np.cos(a) - offset - r2 * np.cos(b), r1 * np.sin(a) - r2 * np.sin(b)
    return MU0 / (4 * math.pi) * r1 * r2 * (np.cos(a - b) / np.sqrt(x * x + y * y + apart ** 2)).sum() * (2 * math.pi / n) ** 2


def circle_side(radius, p, q, n):
    """Trapezoidal round the circle (centre at the origin, z = 0), adaptive Gauss-Kronrod along the side p to q."""
    t = 2 * math.pi * np.arange(n) / n
    ring, tangent = radius * np.stack([np.cos(t), np.sin(t), 0 * t], 1), radius * np.stack([-np.sin(t), np.cos(t), 0 * t], 1)
    p, u = np.array(p), np.array(q) - np.array(p)
    f = lambda s: ((tangent @ u) / np.linalg.norm(p + s * u - ring, axis=1)).sum() * 2 * math.pi / n
    return MU0 / (4 * math.pi) * quad(f, 0, 1, epsrel=1e-12, epsabs=0, limit=400)[0]


cases, worst = [], 0.0
for r1, r2, apart in [(0.25, 0.20, 0.10), (0.25, 0.25, 0.01), (0.9, 0.9, 0.0038), (0.9, 0.9, 0.000814), (0.9, 0.9, 1.2), (0.9, 0.3, 0.0),
                      (0.31, 0.9144, 0.4), (1.5, 0.05, 2.0), (0.9, 0.8999, 0.0), (0.1, 0.1, 10.0)]:
    m = coaxial_circles(r1, r2, apart)
    # With a small gap only the adaptive rule converges in reasonable time.
    other = neumann(arc((0, 0, 0), r1), arc((0, 0, apart), r2), 1e-12)[0]
    worst = max(worst, abs(other / m - 1))
    cases.append({'kind': 'coaxial', 'radius1': r1, 'radius2': r2, 'apart': apart, 'mutual_H': m, 'agreement': abs(other / m - 1)})
for r1, r2, offset, apart in [(0.9, 0.9, 2.0, 0.0), (0.9, 0.9, 2.0, 0.05), (0.9, 0.5, 0.1, 0.01), (0.9, 0.3, 0.4, 0.0), (0.9, 0.31, 0.9, 0.35),
                              (0.9, 0.9, 0.9, 0.2), (0.9, 0.6, 5.0, 0.3), (0.35, 1.2, 1.6, 0.03)]:
    m, _ = neumann(arc((0, 0, 0), r1), arc((offset, 0, apart), r2), 1e-13)
    other = two_circles_trapezoidal(r1, r2, offset, apart, 4000)
    worst = max(worst, abs(other / m - 1))
    cases.append({'kind': 'parallel planes', 'radius1': r1, 'radius2': r2, 'offset': offset, 'apart': apart, 'mutual_H': m,
                  'agreement': abs(other / m - 1)})
square = [(-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)]
move = lambda points, x, y: [(px + x, py + y) for px, py in points]
triangle = [(0, 0), (2, 0.2), (0.7, 1.8)]
for name, radius, height, points in [
        ('square around a circle', 0.6, 0.0, square), ('square inside a circle', 1.5, 0.01, square),
        ('square beside a circle', 0.9, 0.0, move(square, 2.0, 0.3)), ('square across a circle, 2 cm above', 0.9, 0.02, move(square, 0.8, 0.2)),
        ('square round a circle of the same width, 5 cm above', 0.9, 0.05, square), ('small circle far from a square', 0.2, 0.4, move(square, 4, -3)),
        ('triangle 0.35 m above', 0.31, 0.35, move(triangle, -0.8, -0.6)), ('triangle beside', 0.9, -0.05, move(triangle, 1.1, 0.1))]:
    corners = [(*p, height) for p in points]
    edges = list(zip(corners, corners[1:] + corners[:1]))
    m = sum(neumann(arc((0, 0, 0), radius), line(p, q), 1e-13)[0] for p, q in edges)
    other = sum(circle_side(radius, p, q, 4000) for p, q in edges)
    worst = max(worst, abs(other / m - 1))
    cases.append({'kind': 'circle and polygon', 'name': name, 'radius': radius, 'polygon': corners, 'mutual_H': m, 'agreement': abs(other / m - 1)})
for c in cases:
    print(c['kind'], c['mutual_H'], c['agreement'])
assert worst < 1e-9
write('circles.json', 'circles.py',
      'coaxial: Maxwell, Treatise, art. 701, with mpmath.ellipk and ellipe, 40 digits; the others: Neumann integral by adaptive quadrature, checked by the trapezoidal rule',
      1e-7, cases,
      note='metres; every circle counter-clockwise; the first circle (or the circle beside a polygon) has its centre at the origin, z = 0, the second at (offset, 0, apart); '
           'polygon: corners [x, y, z] in order; agreement: relative difference of the two methods; the values are good to 1e-9, but the textbook form in doubles loses 8 digits at 10 m')
