"""What a vehicle over a circuit's loops adds to their inductance matrix, with or without a mat below: one dense system."""
import json
import math
import os
from functools import lru_cache
import numpy as np
import vehicle as vehicles
from mat import Mat, Solved, bar_impedance
from steel_vehicle import bz_of_meshes, size
from vehicle import Plate, bz_of_wires, flux_through_ring, frame, placed_ring, ring_inductance
from neumann import mutual

RHO, MU_R = 1.7e-7, 100
CATALOGUE = os.path.join(os.path.dirname(os.path.abspath(__file__)), '..', '..', '..', 'src', 'plan', 'catalogue')


class Kept(vehicles.PlateMatrix):
    @lru_cache(maxsize=64)
    def block(self, p, q, nx, ny):
        return super().block(p, q, nx, ny)


# a plate's matrix hangs on its sides alone
vehicles.PlateMatrix = lru_cache(maxsize=16)(Kept)


def parts_of(site, name):
    for entry in site.get('vehicles', []):
        if entry['id'] == name:
            return entry['parts']
    for file in ('vehicles.json', 'test-plates.json'):
        with open(os.path.join(CATALOGUE, file), encoding='utf8') as text:
            for entry in json.load(text):
                if entry['id'] == name:
                    return entry['parts']
    raise KeyError(name)


def mat_of(steel):
    """The mat of an outline that is a rectangle of whole meshes, drawn as Mat.outline draws it."""
    corners = np.array(steel['outline'])
    p = steel['pitch']
    nx, ny = (round(float(np.linalg.norm(corners[k + 1] - corners[k])) / p) for k in (0, 1))
    turn = math.degrees(math.atan2(*(corners[1] - corners[0])[::-1]))
    return Mat(nx, ny, p, steel['barRadius'], steel['depth'], tuple(corners.mean(0)), turn)


class Steel:
    """The mat under the loops of a circuit."""

    def __init__(self, mat, loops):
        self.mat, self.solved = mat, Solved(mat, loops)

    def change(self, frequency):
        return self.solved.change(frequency, RHO, MU_R)


def plate_change(loops, part, at, heading, steel, frequency, fraction=1.0):
    place, _ = frame(at, heading)
    plate = Plate(part, place, tuple(max(2, round(fraction * n)) for n in size(part)))
    where, blocks = plate.index(plate.nx, plate.ny)
    order = np.concatenate(where)
    moments = [plate.moments(bz_of_wires(loop, plate.points, 0.6 * (part['height'] + 0.04))) for loop in loops]
    phi = np.array([m[order[:, 0], order[:, 1]] for m in moments]).T
    n = len(order)
    own = np.zeros((n, n))
    start = 0
    for block in blocks:
        own[start:start + len(block), start:start + len(block)] = block
        start += len(block)
    if steel is None:
        return -phi.T @ np.linalg.solve(own, phi)
    mat, solved = steel.mat, steel.solved
    field = bz_of_meshes(mat, plate.points)
    half = np.einsum('ax,xym->aym', plate.px, field.reshape(*plate.shape, field.shape[1]))
    cross = np.einsum('by,aym->abm', plate.py, half)[order[:, 0], order[:, 1]]
    ratio = bar_impedance(mat.radius, frequency, RHO, MU_R) / (2j * math.pi * frequency)
    bars = solved.matrix + ratio * solved.metres
    full = np.block([[own.astype(complex), cross], [cross.T, bars]])
    both = np.concatenate([phi, solved.fluxes]).astype(complex)
    return -both.T @ np.linalg.solve(full, both) - steel.change(frequency)


def ring_change(loops, parts, at, heading):
    place, rotation = frame(at, heading)
    rings = [placed_ring(p, place, rotation) for p in parts]
    own = np.array([[ring_inductance(p) if i == j else mutual(r, o, 1e-9) for j, o in enumerate(rings)] for i, (p, r) in enumerate(zip(parts, rings))])
    phi = np.array([[flux_through_ring(loop, r) for loop in loops] for r in rings])
    return -phi.T @ np.linalg.solve(own, phi)


def vehicle_change(loops, parts, at, heading, steel, frequency, fraction=1.0):
    """(loops, loops) H."""
    if all(p['kind'] == 'ring' for p in parts):
        assert steel is None
        return ring_change(loops, parts, at, heading)
    assert len(parts) == 1
    return plate_change(loops, parts[0], at, heading, steel, frequency, fraction)
