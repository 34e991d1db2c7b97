"""round-wire.json: skin effect of one wire, proximity loss of a column, and a check of the transverse-field formula.

The check solves the m = 1 diffusion problem A = f(r) sin(theta) by finite differences, with no Bessel function in it:
  inside f'' + f'/r - f/r^2 = j w mu0 sigma f, outside f = -mu0 H r + c/r (joined with f and f' continuous at r = a),
and takes the loss from Joule's law, P = (w^2 sigma / 2) * pi * integral |f|^2 r dr; Richardson on two grids.
"""
import math
import numpy as np
from scipy.linalg import solve_banded
from wire import MU0, RHO20, WIRES, column_proximity, dc_resistance, internal_impedance, skin_depth, transverse_loss
from writing import write


def loss_by_differences(a, omega, sigma, field, n):
    """W/m, second order in 1/n. Nodes r_i = i h, i = 0 … n, f(0) = 0."""
    h = a / n
    i = np.arange(1, n + 1)
    r = i * h
    low, high = 1 / h ** 2 - 1 / (2 * r * h), 1 / h ** 2 + 1 / (2 * r * h)
    main = -2 / h ** 2 - 1 / r ** 2 - 1j * omega * MU0 * sigma
    rhs = np.zeros(n, complex)
    # At r = a:  f' + f/a = -2 mu0 H  (from the outside solution); the ghost node f_{n+1} is removed with it.
    main = main.astype(complex)
    low[-1] += high[-1]
    main[-1] -= high[-1] * 2 * h / a
    rhs[-1] = high[-1] * 2 * h * 2 * MU0 * field
    bands = np.zeros((3, n), complex)
    bands[0, 1:], bands[1], bands[2, :-1] = high[:-1], main, low[1:]
    f = np.concatenate([[0], solve_banded((1, 1), bands, rhs)])
    g = np.abs(f) ** 2 * np.arange(n + 1) * h
    simpson = h / 3 * (g[0] + g[-1] + 4 * g[1:-1:2].sum() + 2 * g[2:-1:2].sum())
    return omega ** 2 * sigma / 2 * math.pi * simpson


cases, check = [], []
for name in ['awg12', 'awg14', 'awg16', 'awg18']:
    d = WIRES[name][0]
    for f in [10e3, 20e3, 50e3, 100e3, 200e3]:
        r, l = internal_impedance(d, f)
        cases.append({'kind': 'skin', 'wire': name, 'diameter': d, 'frequency': f, 'resistivity': RHO20,
                      'resistanceDcPerMetre': dc_resistance(d), 'resistanceRatio': r / dc_resistance(d),
                      'internalInductanceRatio': l / (MU0 / (8 * math.pi)), 'internalInductancePerMetre': l})
for name in ['awg12', 'awg14', 'awg16', 'awg18']:
    d, pitch = WIRES[name]
    for f in [20e3, 50e3, 100e3]:
        for n in [2, 3, 4, 5, 8]:
            p = column_proximity(d, pitch, n, f)
            cases.append({'kind': 'proximity', 'wire': name, 'diameter': d, 'pitch': pitch, 'count': n, 'frequency': f,
                          'resistivity': RHO20, 'resistancePerMetreOfSlot': p,
                          'overDcResistance': p / (n * dc_resistance(d))})
d = WIRES['awg14'][0]
for ratio in [0.3, 1, 2, 3, 5, 10]:
    f = RHO20 * ratio ** 2 / (math.pi * MU0 * (d / 2) ** 2)
    assert abs(d / 2 / skin_depth(f) - ratio) < 1e-9
    exact = transverse_loss(d, f, 1.0)
    coarse, fine = (loss_by_differences(d / 2, 2 * math.pi * f, 1 / RHO20, 1.0, n) for n in (2000, 4000))
    value = fine + (fine - coarse) / 3
    check.append({'aOverDelta': ratio, 'bessel': exact, 'differences': value, 'relative': abs(value / exact - 1)})
    assert check[-1]['relative'] < 1e-6
write('round-wire.json', 'round_wire.py',
      'exact round-wire Bessel solution (Smythe, Static and Dynamic Electricity, ch. 10; Ramo, Whinnery, Van Duzer, ch. 4), mpmath.besselj; '
      'proximity: exact loss in the transverse field of the other wires as line currents, summed over the wires',
      1e-9, cases, check=check,
      note='SI; proximity: one vertical column, the same current in every wire, per metre of slot and per ampere squared (R = 2P for a peak of 1 A), '
           'beyond the skin effect; check: loss W/m in a field of 1 A/m peak against finite differences')
