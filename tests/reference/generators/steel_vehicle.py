"""steel-vehicle.json: what a vehicle's plate does to a loop that lies over a mat of bars, both solved in one matrix.

The plate is the spectral one (spectral_plate.py), the mat the dense lattice (mat.py). Their coupling is the moment of a
mesh's vertical flux density on the plate, from the closed-form field of its four bars. Two resolutions of the plate.
"""
import math
import numpy as np
from mat import Mat, Solved, bar_impedance
from neumann import MU0
from shapes import rectangle, sides
from vehicle import Plate, bz_of_wires, frame
from writing import write

RHO = 1.7e-7


def bz_of_meshes(mat, points):
    """T/A at points (n, 3) of a unit current round each mesh: (n, meshes)."""
    c, s = math.cos(math.radians(mat.degrees)), math.sin(math.radians(mat.degrees))
    own = (points[:, :2] - mat.centre) @ np.array([[c, -s], [s, c]])
    up = (points[:, 2] + mat.depth)[:, None]
    result = []
    for starts, axis in zip(mat.bars(), (0, 1)):
        flat = starts.reshape(-1, 2)
        ahead = own[:, None, axis] - flat[None, :, axis]
        side = own[:, None, 1 - axis] - flat[None, :, 1 - axis]
        # left of a bar along x lies +y, left of one along y lies -x
        left = side if axis == 0 else -side
        square = side ** 2 + up ** 2
        rest = mat.p - ahead
        field = left / square * (ahead / np.sqrt(ahead ** 2 + square) + rest / np.sqrt(rest ** 2 + square))
        result.append(field.reshape(len(points), *starts.shape[:2]))
    x, y = result
    round_mesh = x[:, :, :-1] - x[:, :, 1:] + y[:, 1:, :] - y[:, :-1, :]
    return MU0 / (4 * math.pi) * round_mesh.reshape(len(points), -1)


def size(part):
    """Terms in x and y: the field's structure is as fine as the height over the wires."""
    return [2 * round(5 + 4.5 * side / 2 / (part['height'] + 0.03)) for side in (part['width'], part['length'])]


def joint(mat, loop, part, at, heading, frequency, mu_r, fraction=1.0):
    """(change by the vehicle without the mat, by the mat alone, by the vehicle with the mat there), H."""
    solved = Solved(mat, [loop])
    phi_mat = solved.fluxes[:, 0]
    place, _ = frame(at, heading)
    plate = Plate(part, place, [max(2, round(fraction * n)) for n in size(part)])
    phi_plate = plate.moments(bz_of_wires(loop, plate.points, 0.6 * (part['height'] + 0.04)))
    where, blocks = plate.index(plate.nx, plate.ny)
    order = np.concatenate(where)
    n, m = len(order), len(phi_mat)
    matrix = np.zeros((n + m, n + m), complex)
    start = 0
    for block in blocks:
        matrix[start:start + len(block), start:start + len(block)] = block
        start += len(block)
    field = bz_of_meshes(mat, plate.points)
    half = np.einsum('ax,xym->aym', plate.px, field.reshape(*plate.shape, m))
    cross = np.einsum('by,aym->abm', plate.py, half)[order[:, 0], order[:, 1]]
    matrix[:n, n:], matrix[n:, :n] = cross, cross.T
    ratio = bar_impedance(mat.radius, frequency, RHO, mu_r) / (2j * math.pi * frequency)
    matrix[n:, n:] = solved.matrix + ratio * solved.metres
    phi = np.concatenate([phi_plate[order[:, 0], order[:, 1]], phi_mat]).astype(complex)
    both = -phi @ np.linalg.solve(matrix, phi)
    steel = -phi[n:] @ np.linalg.solve(matrix[n:, n:], phi[n:])
    alone = -phi[:n].real @ np.linalg.solve(matrix[:n, :n].real, phi[:n].real)
    return alone, steel, both - steel


def mat(width, length, p, radius, depth, **where):
    return Mat(round(width / p), round(length / p), p, radius, depth, **where)


def plate(width, length, height):
    return {'kind': 'plate', 'centre': [0, 0], 'width': width, 'length': length, 'height': height}


square = rectangle('square', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
long = rectangle('long', 2, 'awg12', 0.06, [0, 0], 1.8, 5)
CAR, SMALL = plate(1.6, 4.2, 0.45), plate(0.45, 0.9, 0.27)
MAT3, MAT8 = mat(3, 3, 0.15, 0.006, 0.12), mat(4, 8, 0.2, 0.006, 0.12)
CLOSE8 = mat(4.05, 8.1, 0.15, 0.006, 0.1)
ROWS = [
    ('car centred, mat shorter than it', MAT3, square, CAR, [0, 0], 90, 50e3, 100),
    ('car centred', MAT8, square, CAR, [0, 0], 90, 50e3, 100),
    ('car centred, slow field', MAT8, square, CAR, [0, 0], 90, 20e3, 100),
    ('car centred, fast field', MAT8, square, CAR, [0, 0], 90, 100e3, 300),
    ('car centred, close mesh', CLOSE8, square, CAR, [0, 0], 90, 50e3, 100),
    ('car to one side and ahead', MAT8, square, CAR, [0.5, 0.8], 90, 50e3, 100),
    ('car oblique', MAT8, square, CAR, [-0.3, 0.4], 60, 50e3, 100),
    ('car arriving', MAT8, square, CAR, [0, -2.4], 90, 50e3, 100),
    ('car ahead, half off a short mat', MAT3, square, CAR, [0.1, 1.5], 90, 50e3, 100),
    ('car to one side, half off the mat', MAT3, square, CAR, [1.5, 0], 90, 50e3, 100),
    ('mat under one half of car and loop', mat(4, 8, 0.2, 0.006, 0.12, centre=(2, 0)), square, CAR, [0, 0], 90, 50e3, 100),
    ('car over a long loop', MAT8, long, CAR, [0.2, 0.5], 90, 50e3, 100),
    ('low car', MAT8, square, plate(1.6, 4.2, 0.25), [0, 0], 90, 50e3, 100),
    ('small plate in the middle', MAT3, square, SMALL, [0, 0], 90, 50e3, 100),
    ('small plate over the wire', MAT3, square, SMALL, [0.9, 0.1], 90, 50e3, 100),
    ('small plate over the wire, wide mat', MAT8, square, SMALL, [0.9, 0.1], 90, 50e3, 100),
    ('small plate over the wire, half off the mat', mat(3, 3, 0.15, 0.006, 0.12, centre=(-0.6, 0)), square, SMALL, [0.9, 0.1], 90, 50e3, 100),
]

if __name__ == '__main__':
    cases = []
    for name, m, loop, part, at, heading, f, mu in ROWS:
        coarse = joint(m, loop, part, at, heading, f, mu, 0.75)[2]
        alone, steel, found = joint(m, loop, part, at, heading, f, mu)
        off = abs(found / coarse - 1)
        assert off < 5e-4, (name, off)
        print(f'{name}: {found / alone:.4f} of the change without a mat, steps {off:.1e}', flush=True)
        cases.append({
            'name': name, 'frequency': f, 'vehicleOverMat_H': [found.real, found.imag], 'vehicleAlone_H': alone,
            'matAlone_H': [steel.real, steel.imag], 'step': float(f'{off:.1e}'), 'at': at, 'heading': heading, 'parts': [part], 'meshes': [m.nx, m.ny],
            'steel': {'id': 'mat', 'kind': 'mat', 'depth': m.depth, 'pitch': m.p, 'barRadius': m.radius, 'outline': m.outline(),
                      'resistivity_ohm_m': RHO, 'relativePermeability': mu}, 'loop': loop})
    write('steel-vehicle.json', 'steel_vehicle.py',
          'one dense matrix of a spectral Galerkin plate (spectral_plate.py) and the mesh currents of the bars (mat.py), coupled by the closed-form field of the bars',
          5e-4, cases, digits=9,
          note='vehicleOverMat_H: L with vehicle and mat less L with the mat alone, [real, imaginary] in H, ohms = -w times the imaginary part; vehicleAlone_H: the same without any mat; '
               'matAlone_H: what the mat adds; step: relative change from three quarters of the terms to all')
