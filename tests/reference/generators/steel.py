"""steel.json: what a mat of bars in the pavement does to the inductances of loops over it (mat.py)."""
import math
import numpy as np
from inductance import between
from mat import Mat, Solved, bar_impedance, between_bars
from neumann import line, mutual
from shapes import celled, polygon, rectangle, sides
from writing import write

RHO = 1.7e-7
square = rectangle('square', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
aside = rectangle('aside', 3, 'awg14', 0.05, [0.37, -0.22], 1.8, 1.8)
turned = rectangle('turned', 3, 'awg14', 0.05, [0.05, 0.1], 1.8, 1.8, 20)
over_edge = rectangle('over-edge', 4, 'awg14', 0.04, [1.5, 0.03], 1.5, 2.0)
long = rectangle('long', 2, 'awg12', 0.06, [0, 0], 1.8, 5)
quad = celled('quadrupole', 'quad', 2, 'awg14', 0.05, [0, 0], 1.8, 3)
kite = polygon('kite', 3, 'awg16', 0.05, [[-1, -0.8], [1.2, -0.6], [0.8, 1.1], [-0.6, 1.3]])
left = rectangle('left', 3, 'awg14', 0.05, [-1.1, 0], 1.6, 1.6)
right = rectangle('right', 4, 'awg14', 0.05, [1.1, 0.2], 1.6, 1.2)


def mat(width, length, p, radius, depth, **place):
    nx, ny = round(width / p), round(length / p)
    assert abs(nx * p - width) < 1e-9 and abs(ny * p - length) < 1e-9, (width, length, p)
    return Mat(nx, ny, p, radius, depth, **place)


# name, mat, loops, [(frequency, relative permeability)]
ROWS = [
    ('square, mat 0.6 m beyond it', mat(3, 3, 0.15, 0.006, 0.12), [square], [(20e3, 100), (50e3, 100), (100e3, 100)]),
    ('square, mat 1 m beyond it', mat(3.8, 3.8, 0.1, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, mat 1.05 m beyond it', mat(3.9, 3.9, 0.15, 0.006, 0.12), [square], [(50e3, 1), (50e3, 100), (50e3, 300)]),
    ('square, mat 1.5 m beyond it', mat(4.8, 4.8, 0.15, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, mat 1.95 m beyond it', mat(5.7, 5.7, 0.15, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, mat 1 m beyond it, wide', mat(3.8, 3.8, 0.2, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, mat 1.6 m beyond it, wide', mat(5, 5, 0.2, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, mat 2 m beyond it, wide', mat(5.8, 5.8, 0.2, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, mat as wide as it', mat(1.8, 1.8, 0.15, 0.006, 0.12), [square], [(50e3, 100)]),
    ('square, bars just below the slot', mat(3, 3, 0.15, 0.004, 0.08), [square], [(20e3, 100), (100e3, 300)]),
    ('square, deep mat of thick bars', mat(4, 4, 0.2, 0.008, 0.3), [square], [(20e3, 100), (100e3, 1)]),
    ('square beside the middle', mat(3, 3, 0.15, 0.006, 0.1), [aside], [(50e3, 100)]),
    ('square, turned by 20 degrees', mat(3, 3, 0.15, 0.006, 0.1), [turned], [(50e3, 100)]),
    ('square, mat turned by 35 degrees', mat(3, 3.2, 0.2, 0.005, 0.15, centre=(0.1, -0.05), degrees=35), [square], [(50e3, 100)]),
    ('small mat under a turned square', mat(2.4, 2.4, 0.1, 0.005, 0.1), [turned], [(20e3, 1), (100e3, 100)]),
    ('over the edge of a mat', mat(3, 3, 0.15, 0.006, 0.1), [over_edge], [(50e3, 100)]),
    ('long loop', mat(3.8, 7, 0.2, 0.006, 0.15), [long], [(20e3, 100), (50e3, 100)]),
    ('long loop, close mesh', mat(3, 6, 0.15, 0.006, 0.12), [long], [(50e3, 100)]),
    ('quadrupole', mat(3, 4.5, 0.15, 0.006, 0.12), [quad], [(50e3, 100)]),
    ('polygon', mat(3.6, 3.6, 0.15, 0.006, 0.1), [kite], [(50e3, 100)]),
    ('two loops on one mat', mat(5, 3, 0.2, 0.006, 0.12), [left, right], [(20e3, 100), (50e3, 100), (100e3, 300)]),
    ('two loops, close mesh', mat(5.1, 3, 0.15, 0.005, 0.1), [left, right], [(50e3, 100)]),
]


def checks():
    """The pieces against adaptive quadrature and plain incidence matrices, and the limit of a perfect sheet."""
    p, a = 0.15, 0.006
    for ahead, beside in ((0, 1), (1, 1), (3, 2), (1, 0), (4, 0)):
        wanted = mutual(line((0, 0, 0), (p, 0, 0)), line((ahead * p, beside * p, 0), ((ahead + 1) * p, beside * p, 0)))
        assert abs(float(between_bars(ahead, beside, p, a)) / wanted - 1) < 1e-9
    small = Mat(4, 3, p, a, 0.1)
    rows, starts = [], [s.reshape(-1, 2) for s in small.bars()]
    for i in range(4):
        for j in range(3):
            x, y = np.zeros((4, 4)), np.zeros((5, 3))
            x[i, j], x[i, j + 1], y[i + 1, j], y[i, j] = 1, -1, 1, -1
            rows.append(np.concatenate([x.ravel(), y.ravel()]))
    b, full = np.array(rows), np.zeros((16 + 15, 16 + 15))
    for at, s, k in ((0, starts[0], 0), (16, starts[1], 1)):
        d = np.round((s[:, None] - s) / p)
        full[at:at + len(s), at:at + len(s)] = between_bars(d[..., k], d[..., 1 - k], p, a)
    assert np.allclose(b @ full @ b.T, small.inductance(), rtol=1e-12, atol=0)
    assert np.allclose(p * b @ b.T, small.shared_metres(), rtol=1e-12, atol=1e-15)
    wide = Mat(20, 20, p, a, 0.08)
    off = np.abs(wide.flux(square) / wide.flux(square, 8, 16) - 1).max()
    assert off < 1e-6, off
    # without resistance, and with bars as thick as makes the sheet inductance mu0 p/2pi ln(p/2 pi a) nothing: a perfect sheet as p -> 0
    depth, loop = 0.35, rectangle('small', 1, 'awg14', 0.05, [0, 0], 1, 1)
    own = sides(loop)
    image = -between(own, [(piece, [-2 * depth - z for z in heights]) for piece, heights in own])
    coarse, fine = (Solved(Mat(n, n, 3 / n, 3 / n / (2 * math.pi), depth), [loop]).change(50e3, 0)[0, 0].real for n in (30, 60))
    limit = {'side': 3, 'depth': depth, 'pitches': [0.1, 0.05], 'mats_H': [coarse, fine], 'extrapolated_H': 2 * fine - coarse, 'image_H': image}
    # the edges of a sheet of 3 m leave 0.2 %
    assert abs(limit['extrapolated_H'] / image - 1) < 0.003
    return limit


def case(name, solved, loops, frequency, mu_r):
    m = solved.mat
    change = solved.change(frequency, RHO, mu_r)
    z = bar_impedance(m.radius, frequency, RHO, mu_r)
    return {'name': name, 'frequency': frequency, 'change_H': [[[v.real, v.imag] for v in row] for row in change],
            'bar_ohm_per_m': [z.real, z.imag], 'meshes': [m.nx, m.ny],
            'steel': {'id': 'mat', 'kind': 'mat', 'depth': m.depth, 'pitch': m.p, 'barRadius': m.radius, 'outline': m.outline(),
                      'resistivity_ohm_m': RHO, 'relativePermeability': mu_r}, 'loops': loops}


if __name__ == '__main__':
    limit = checks()
    rows = []
    for name, m, loops, at in ROWS:
        solved = Solved(m, loops)
        rows += [case(name, solved, loops, f, mu) for f, mu in at]
        print(name, flush=True)
    write('steel.json', 'steel.py',
          'dense mesh currents of the bars: partial inductances of filaments (Grover ch. 6, Rosa 1908), bars by Bessel functions, '
          "flux by the wires' closed-form vector potential and Gauss-Legendre (mat.py)", 1e-6, rows,
          note='change_H[i][j]: what the mat adds to M of loops i and j, [real, imaginary] in H, as drawn; ohms = -w times the imaginary part; '
               'steel and loops in the form of the site document; the mat is whole meshes of its outline; tolerance of these values: exact for this model '
               'but for rounding and the flux, a truncated or coarser lattice needs its own margin on top; limit: one-turn square of 1 m over mats of 3 m without '
               'resistance and sheet inductance, to first order in the pitch, against its mirror image',
          limit=limit)
