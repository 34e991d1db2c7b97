"""Inductance of a loop and of two loops: the sum of Neumann's integral over every pair of wires.

A straight wire with itself: two filaments one wire radius apart. A circle with itself: coaxial circles one wire radius
apart. The internal part (with skin effect) comes per metre of wire. Circles on one axis: Maxwell's elliptic integrals.
"""
import math
from collections import Counter
from scipy.special import ellipe, ellipkm1
from neumann import MU0, length, mutual
from shapes import at_height, sides, slot_length, wire_length
from wire import WIRES, column_proximity, dc_resistance, internal_impedance, resistivity


def coaxial_circles(r1, r2, apart):
    """Maxwell, Treatise, art. 701; m = k^2 the parameter, 1 - m formed without cancellation."""
    total = (r1 + r2) ** 2 + apart ** 2
    m, rest = 4 * r1 * r2 / total, ((r1 - r2) ** 2 + apart ** 2) / total
    k = math.sqrt(m)
    return MU0 * math.sqrt(r1 * r2) * ((2 / k - k) * float(ellipkm1(rest)) - 2 / k * float(ellipe(m)))


def coaxial(a, b):
    return a[0] == b[0] == 'arc' and a[1][:2] == b[1][:2] and a[3:] == b[3:]


def pair(a, b, apart, tol):
    if coaxial(a, b):
        return coaxial_circles(a[2], b[2], apart)
    return mutual(at_height(a, 0.0), at_height(b, apart), tol)


def between(first, second, tol=1e-11):
    """Mutual inductance of two sets of sides. Heights enter by their differences only, so each difference is done once."""
    total = 0.0
    for a, za in first:
        for b, zb in second:
            steps = Counter(round(abs(x - y), 9) for x in za for y in zb)
            total += sum(n * pair(a, b, step, tol) for step, n in steps.items())
    return total


def external(loop, tol=1e-11):
    """Inductance without the field inside the wire."""
    radius, s = WIRES[loop['wire']][0] / 2, sides(loop)
    total = 0.0
    for i, (a, za) in enumerate(s):
        steps = Counter(round(abs(x - y), 9) for x in za for y in za)
        total += sum(n * pair(a, a, step or radius, tol) for step, n in steps.items())
        total += 2 * between([s[i]], s[i + 1:], tol)
    return total


def figures(loop, frequency, temperature_C=20):
    """What the report says of a loop alone (capacitance aside), and its parts."""
    diameter, pitch = WIRES[loop['wire']]
    rho = resistivity(temperature_C)
    r_skin, l_internal = internal_impedance(diameter, frequency, rho)
    metres = wire_length(loop)
    outside = external(loop)
    near = sum(length(p) * column_proximity(diameter, pitch, len(zs), frequency, rho) for p, zs in sides(loop))
    return {'inductance_H': outside + l_internal * metres, 'externalInductance_H': outside,
            'internalInductance_H': l_internal * metres, 'resistanceDc_ohm': dc_resistance(diameter, rho) * metres,
            'resistanceAc_ohm': r_skin * metres + near, 'skinResistance_ohm': r_skin * metres,
            'proximityResistance_ohm': near, 'wireLength_m': metres, 'slotLength_m': slot_length(loop)}
