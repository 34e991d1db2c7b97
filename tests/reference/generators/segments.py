"""segments.json: mutual inductance of straight filaments in space, by adaptive quadrature in two dimensions.

Every value is checked a second way: nested scipy.integrate.quad (or, where filaments touch or nearly meet, nested
mpmath.quad, tanh-sinh) with breakpoints crowded towards the point of nearest approach. No closed form on either side.
"""
import math
import mpmath as mp
import numpy as np
from scipy.integrate import quad
from neumann import MU0, line, neumann
from writing import write


def crowded(centre, smallest):
    """Breakpoints in [0, 1] that close in on `centre` by a factor of 5 each down to `smallest`."""
    points, step = {0.0, 1.0, min(1.0, max(0.0, centre))}, 1.0
    while step > smallest:
        points |= {p for p in (centre - step, centre + step) if 0 < p < 1}
        step /= 5
    return sorted(points)


def nearest(p, u, r):
    """Parameter of the foot of r on p + t u, and its distance."""
    t = float((r - p) @ u / (u @ u))
    return t, float(np.linalg.norm(r - p - t * u))


def nested(a, b, exact):
    p, q = np.array(a[1]), np.array(b[1])
    u, v = np.array(a[2]) - p, np.array(b[2]) - q
    grid = np.linspace(0, 1, 20001)
    gaps = [nearest(q, v, p + s * u) for s in grid]
    gaps = [math.hypot(d, np.linalg.norm(v) * max(0, -t, t - 1)) for t, d in gaps]
    s0, gap = float(grid[int(np.argmin(gaps))]), max(min(gaps), 1e-9)
    outer = crowded(s0, gap / 5 / np.linalg.norm(u))

    def inner(s):
        r = p + float(s) * u
        t0, d = nearest(q, v, r)
        cuts = crowded(min(1.0, max(0.0, t0)), max(d, 1e-9) / np.linalg.norm(v))
        if exact:
            w, vv, qq = [mp.mpf(x) for x in r - q], [mp.mpf(x) for x in v], mp.mpf(1)
            aa, bb, cc = sum(x * x for x in vv), sum(x * y for x, y in zip(vv, w)), sum(x * x for x in w)
            return mp.quad(lambda t: qq / mp.sqrt(cc - 2 * bb * t + aa * t * t), cuts)
        w = r - q
        aa, bb, cc = float(v @ v), float(v @ w), float(w @ w)
        return sum(quad(lambda t: 1 / math.sqrt(cc - 2 * bb * t + aa * t * t), x, y, epsrel=1e-13, epsabs=0)[0]
                   for x, y in zip(cuts[:-1], cuts[1:]))

    if exact:
        total = mp.quad(inner, outer)
    else:
        total = sum(quad(inner, x, y, epsrel=1e-12, epsabs=0)[0] for x, y in zip(outer[:-1], outer[1:]))
    return float(total) * float(u @ v) * MU0 / (4 * math.pi)


def turned(angle, size, start=(0, 0, 0)):
    return line(start, (start[0] + size * math.cos(angle), start[1] + size * math.sin(angle), start[2]))


one = line((0, 0, 0), (1.8, 0, 0))
deg = math.radians
named = [
    ('parallel, equal, 3.8 mm', one, line((0, 0, 0.0038), (1.8, 0, 0.0038))),
    ('parallel, one wire radius', one, line((0, 0.000814, 0), (1.8, 0.000814, 0))),
    ('parallel, 1.8 m, opposite sense', one, line((1.8, 1.8, 0), (0, 1.8, 0))),
    ('parallel, staggered, overlapping', one, line((0.7, 0.05, 0.02), (3.1, 0.05, 0.02))),
    ('parallel, staggered, apart', one, line((2.5, 0.3, 0), (3.1, 0.3, 0))),
    ('parallel, ends level', one, line((1.8, 0.01, 0), (2.6, 0.01, 0))),
    ('collinear, 0.4 m apart', one, line((2.2, 0, 0), (3.0, 0, 0))),
    ('collinear, 1 mm apart', one, line((1.801, 0, 0), (3.0, 0, 0))),
    ('collinear, opposite sense', one, line((5, 0, 0), (4, 0, 0))),
    ('collinear, touching', one, line((1.8, 0, 0), (3.0, 0, 0))),
    *[(f'corner of {a} degrees between the sides', one, turned(math.pi - deg(a), 1.2, (1.8, 0, 0)))
      for a in (30, 45, 135, 170)],
    ('corner of 90 degrees', one, line((1.8, 0, 0), (1.8, 2, 0))),
    ('corner of 179.9 degrees', one, turned(deg(0.1), 1.2, (1.8, 0, 0))),
    ('common start, 60 degrees', one, turned(deg(60), 0.5)),
    ('coplanar, lines meet outside, ends 0.2 m apart', one, turned(deg(50), 1.0, (2.0, 0.1, 0))),
    ('coplanar, one ends on the other', one, turned(deg(70), 1.0, (0.6, 0, 0))),
    ('crossing at a point inside both', one, line((0.5, -0.4, 0), (1.3, 0.9, 0))),
    ('crossing at right angles, M = 0', one, line((0.9, -1, 0.01), (0.9, 1, 0.01))),
    ('perpendicular in space, M = 0', one, line((0.3, 0.2, -1), (0.3, 0.2, 1))),
    ('crossing 3.8 mm above at 20 degrees', one, line((0.2, -0.3, 0.0038), (0.2 + 1.6 * math.cos(deg(20)), -0.3 + 1.6 * math.sin(deg(20)), 0.0038))),
    ('corner of 90 degrees but 3.8 mm above, slanted', one, line((1.8, 0, 0.0038), (1.3, 1.7, 0.0038))),
    ('nearly parallel, 1e-3 rad, 4 mm', one, turned(1e-3, 1.8, (0, 0, 0.004))),
    ('nearly parallel, 1e-5 rad, 4 mm', one, turned(1e-5, 1.8, (0, 0, 0.004))),
    ('nearly parallel, 1e-5 rad, 1 mm, coplanar', one, turned(1e-5, 1.8, (0, 0.001, 0))),
    ('nearly parallel, 1e-7 rad, 4 mm', one, turned(1e-7, 1.8, (0, 0, 0.004))),
    ('nearly parallel, 1e-3 rad, opposite, 1 m', one, line((1.8, 1.0, 0.3), (0, 1.0018, 0.3))),
    ('1 cm against 15 m, 5 mm', line((3, 0.005, 0), (3.008, 0.011, 0)), line((0, 0, 0), (15, 0, 0))),
    ('1 cm against 15 m, 2 m', line((3, 2, 0.5), (3.006, 2.008, 0.5)), line((0, 0, 0), (15, 0, 0))),
    ('0.3 m cut touching a 12 m side at 45 degrees', line((0, 0, 0), (12, 0, 0)), turned(deg(45), 0.3 * math.sqrt(2), (12, 0, 0))),
]
rng = np.random.default_rng(20240131)
for i in range(14):
    size = [2.0, 0.3, 5.0][i % 3]
    ends = rng.uniform(-size, size, (4, 3)) * [1, 1, 0.2]
    named.append((f'random skew {i + 1}', line(*np.round(ends[:2], 4)), line(*np.round(ends[2:], 4))))

cases, worst = [], 0.0
mp.mp.dps = 17
for name, a, b in named:
    m, error = neumann(a, b, 1e-15 if 'touch' in name or 'corner' in name or 'start' in name else 1e-14)
    u, v = np.array(a[2]) - a[1], np.array(b[2]) - b[1]
    zero = abs(u @ v) < 1e-12 * np.linalg.norm(u) * np.linalg.norm(v)
    difference = None
    if not zero and 'point inside' not in name and 'ends on' not in name:
        exact = any(k in name for k in ('touching', 'corner of 30', 'corner of 45', 'corner of 135', 'corner of 170', '179', 'common'))
        difference = abs(nested(a, b, exact) / m - 1)
        worst = max(worst, difference)
        print(f'{name}: {m:.12e} {difference:.1e} {error / abs(m):.1e}', flush=True)
    else:
        print(f'{name}: {m:.12e} {error / max(abs(m), 1e-20):.1e}', flush=True)
    cases.append({'name': name, 'a': a[1:], 'b': b[1:], 'mutual_H': 0.0 if zero else m, 'agreement': difference})
assert worst < 1e-9, worst
write('segments.json', 'segments.py',
      "Neumann's integral (Maxwell, Treatise, art. 521-524) by adaptive 2-D Gauss-Legendre quadrature; checked by nested scipy.integrate.quad or mpmath.quad",
      1e-9, cases,
      note='a and b: [start, end] in metres, current from start to end; agreement: relative difference of the two quadratures, null where only one was run; '
           'where mutual_H is 0 compare absolutely, to 1e-18 H')
