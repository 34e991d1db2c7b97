"""steel-plates.json: what a plate that lies still over, under or beside a loop does to its inductance (still_plate.py)."""
import math
import numpy as np
from neumann import MU0
from shapes import rectangle, sides
from still_plate import StillPlate, change
from vehicle import change as perfect_change
from writing import write

RHO = 1.7e-7


def surface_ratio(frequency, rho, mu_r):
    """Zs/jw, Zs = (1+j) rho/delta."""
    omega = 2 * math.pi * frequency
    delta = math.sqrt(2 * rho / (omega * MU0 * mu_r))
    return (1 + 1j) * rho / delta / (1j * omega)


square = rectangle('square', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
# name, width, length, centre, depth, terms: structure as fine as the distance between wires and plate
ROWS = [
    ('deck below', 4, 4, (0, 0), 0.35, (40, 40)),
    ('near deck below, to one side', 3, 4, (0.3, 0.2), 0.2, (48, 60)),
    ('cover inside the loop', 0.6, 0.6, (0.2, 0.1), 0.02, (36, 36)),
    ('rail beside the loop', 0.15, 6, (1.25, 0), 0.03, (20, 60)),
    ('small plate under the wire', 0.8, 0.5, (0.9, 0.3), 0.25, (36, 30)),
    ('roof above', 3, 5, (0.5, 0.3), -0.6, (28, 40)),
]
AT = [(20e3, 100), (50e3, 100), (100e3, 1)]

if __name__ == '__main__':
    cases = []
    for name, width, length, centre, depth, terms in ROWS:
        plate = StillPlate(width, length, centre, -depth, *terms)
        wires = [z for _, zs in sides(square) for z in zs]
        apart = min(abs(z + depth) for z in wires)
        moments = plate.moments(square, ([-0.9, 0.9], [-0.9, 0.9]), 0.6 * max(apart, 0.03))
        ratios = [surface_ratio(f, RHO, mu) for f, mu in AT]
        steps = np.array(change(plate, moments, [*ratios, 0]))
        off = abs(steps[-1] / steps[-2] - 1)
        assert off[:-1].max() < 5e-4, (name, off)
        if name == 'roof above':
            part = {'kind': 'plate', 'centre': [0, 0], 'width': width, 'length': length, 'height': -depth}
            by_roots = perfect_change(square, [part], list(centre), 90, [(24, 40)])[-1]
            check = {'name': name, 'perfect_H': steps[-1][-1].real, 'squareRootBasis_H': by_roots}
            assert abs(check['perfect_H'] / by_roots - 1) < 1e-3, check
        print(name, flush=True)
        for k, (f, mu) in enumerate(AT):
            cases.append({'name': name, 'frequency': f, 'change_H': [steps[-1][k].real, steps[-1][k].imag], 'perfect_H': steps[-1][-1].real,
                          'step': float(f'{off[k]:.1e}'),
                          'steel': {'id': 'plate', 'kind': 'plate', 'depth': depth,
                                    'outline': [[centre[0] + sx * width / 2, centre[1] + sy * length / 2] for sx, sy in ((-1, -1), (1, -1), (1, 1), (-1, 1))],
                                    'resistivity_ohm_m': RHO, 'relativePermeability': mu}, 'loop': square})
    write('steel-plates.json', 'steel_plates.py',
          'spectral Galerkin in (1 - t^2) P_n(t), surface impedance (1+j) rho/delta for the current of both faces together (still_plate.py); flux by Biot-Savart with Gauss-Legendre',
          1e-3, cases, digits=9,
          note='change_H: what the plate adds to L of the loop, [real, imaginary] in H, ohms = -w times the imaginary part; perfect_H: the same without resistance; step: relative change from three quarters '
               'of the terms to all; check: the perfect plate against the basis of spectral_plate.py', check=check)
