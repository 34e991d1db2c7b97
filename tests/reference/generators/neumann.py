"""Neumann's double integral M = mu0/4pi * int int (dr . dr') / |r - r'| by adaptive quadrature, no closed form inside.

A piece is a straight segment ('line', p, q), an arc ('arc', centre, radius, from, to) in a horizontal plane, angles in
radians, or one in the plane of two given unit vectors ('arc', centre, radius, from, to, u, v); run in the given sense.
Both parameters run over [0, 1]. A box of the (s, t) square is accepted when its
10 x 10 Gauss-Legendre value and that of its four quarters differ by less than `tol` of the integral of
|dr||dr'|/|r-r'|.
Touching ends (an integrable 1/r) are refined towards the common point until that point's box itself weighs less than `tol`.
"""
import math
import numpy as np

MU0 = 4e-7 * math.pi
NODES, WEIGHTS = np.polynomial.legendre.leggauss(10)
NODES, WEIGHTS = (NODES + 1) / 2, WEIGHTS / 2
W2 = WEIGHTS[:, None] * WEIGHTS[None, :]


def line(p, q):
    return ('line', tuple(float(v) for v in p), tuple(float(v) for v in q))


def arc(centre, radius, start=0.0, end=2 * math.pi):
    return ('arc', tuple(float(v) for v in centre), float(radius), float(start), float(end))


def ring(centre, radius, axis):
    """A whole circle, right-handed about `axis`."""
    n = np.array(axis, float) / np.linalg.norm(axis)
    u = np.cross(n, [0, 0, 1] if abs(n[2]) < 0.9 else [1, 0, 0])
    u /= np.linalg.norm(u)
    return (*arc(centre, radius), tuple(u), tuple(np.cross(n, u)))


def length(piece):
    if piece[0] == 'line':
        return math.dist(piece[1], piece[2])
    return piece[2] * abs(piece[4] - piece[3])


def trace(piece, s):
    """Points and derivatives d r / d s, each of the shape of s with one more axis."""
    if piece[0] == 'line':
        p, q = np.array(piece[1]), np.array(piece[2])
        return p + (q - p) * s[..., None], np.broadcast_to(q - p, s.shape + (3,))
    _, c, radius, start, end = piece[:5]
    u, v = (np.array(e) for e in piece[5:] or ((1.0, 0, 0), (0, 1.0, 0)))
    phi = (start + (end - start) * s)[..., None]
    return (np.array(c) + radius * (np.cos(phi) * u + np.sin(phi) * v),
            radius * (end - start) * (np.cos(phi) * v - np.sin(phi) * u))


def boxes_value(a, b, box):
    """Signed and unsigned integrals over boxes (n, 4) of s0, s1, t0, t1."""
    s0, s1, t0, t1 = box.T
    s = s0[:, None] + (s1 - s0)[:, None] * NODES
    t = t0[:, None] + (t1 - t0)[:, None] * NODES
    (ra, da), (rb, db) = trace(a, s), trace(b, t)
    gap = ra[:, :, None, :] - rb[:, None, :, :]
    kernel = W2 / np.sqrt((gap * gap).sum(-1))
    dots = np.einsum('nik,njk->nij', da, db)
    area = (s1 - s0) * (t1 - t0)
    return (kernel * dots).sum((1, 2)) * area, kernel.sum((1, 2)) * area * length(a) * length(b)


def chunked(a, b, box, size=20000):
    parts = [boxes_value(a, b, box[i:i + size]) for i in range(0, len(box), size)]
    return np.concatenate([p[0] for p in parts]), np.concatenate([p[1] for p in parts])


def neumann(a, b, tol=1e-12):
    """(M in henries, estimated absolute error in henries)."""
    la, lb = length(a), length(b)
    na = min(64, max(1, round(la / lb))) * (4 if a[0] == 'arc' else 1)
    nb = min(64, max(1, round(lb / la))) * (4 if b[0] == 'arc' else 1)
    s, t = np.meshgrid(np.arange(na) / na, np.arange(nb) / nb, indexing='ij')
    box = np.stack([s.ravel(), s.ravel() + 1 / na, t.ravel(), t.ravel() + 1 / nb], 1)
    value, weight = chunked(a, b, box)
    scale, total, error = weight.sum(), 0.0, 0.0
    for _ in range(60):
        s0, s1, t0, t1 = box.T
        sm, tm = (s0 + s1) / 2, (t0 + t1) / 2
        quarters = np.concatenate([np.stack(c, 1) for c in
                                   ((s0, sm, t0, tm), (sm, s1, t0, tm), (s0, sm, tm, t1), (sm, s1, tm, t1))])
        v, w = chunked(a, b, quarters)
        n = len(box)
        sums, weights = v.reshape(4, n).sum(0), w.reshape(4, n).sum(0)
        off = np.maximum(np.abs(sums - value), np.abs(weights - weight) if a[0] == b[0] == 'line' else 0)
        # The four quarters of a smooth box are better than the box by 2^-20; a touching corner's by 1/2 only.
        done = off <= tol * scale
        total += sums[done].sum()
        error += off[done].max(initial=0.0)
        keep = np.tile(~done, 4)
        if not keep.any():
            break
        box, value, weight = quarters[keep], v[keep], w[keep]
    else:
        raise ArithmeticError('no convergence')
    return float(MU0 / (4 * math.pi) * total), float(MU0 / (4 * math.pi) * error)


def parallel(a, b):
    """Two parallel lines by one integral over the offset u = s - t: the kernel times the length of overlap at u.

    Exact reduction of the double integral; composite Gauss-Legendre on panels that grow away from u = 0.
    """
    p, q = np.array(a[1]), np.array(a[2])
    e = (q - p) / length(a)
    x0, x1 = sorted(float((np.array(v) - p) @ e) for v in b[1:3])
    sign = 1.0 if (np.array(b[2]) - np.array(b[1])) @ e > 0 else -1.0
    apart = np.array(b[1]) - p
    d = float(np.linalg.norm(apart - (apart @ e) * e))
    la = length(a)
    # Ends that touch but for rounding are taken as touching.
    knots = {0.0 if abs(v) < 1e-12 * la else v for v in (x0 - la, x0, x1 - la, x1)}
    low, high = min(knots), max(knots)
    if d < 1e-12 * la and low < 0 < high:
        raise ValueError('overlapping on one line')
    knots |= {0.0} if low < 0 < high else set()
    step = max(d, 1e-15 * (abs(low) + abs(high))) / 2
    reach = max(-low, high)
    while step < reach:
        knots |= {v for v in (step, -step) if low < v < high}
        step *= 1.6
    knots = sorted(knots)
    x, w = np.polynomial.legendre.leggauss(16)
    total = 0.0
    for u0, u1 in zip(knots[:-1], knots[1:]):
        u = u0 + (u1 - u0) * (x + 1) / 2
        overlap = np.clip(np.minimum(la, x1 - u) - np.maximum(0.0, x0 - u), 0, None)
        total += (w * overlap / np.sqrt(u * u + d * d)).sum() * (u1 - u0) / 2
    return float(sign * MU0 / (4 * math.pi) * total)


def mutual(a, b, tol=1e-12):
    """M of two pieces, H."""
    if a[0] == b[0] == 'line':
        u = (np.array(a[2]) - a[1]) / length(a)
        v = (np.array(b[2]) - b[1]) / length(b)
        if abs(u @ v) < 1e-15:
            return 0.0
        if np.linalg.norm(np.cross(u, v)) < 1e-14:
            return parallel(a, b)
    return neumann(a, b, tol)[0]
