"""plates.json: the change of a loop's inductance by perfectly conducting plates and rings over it.

Three resolutions of the spectral solution are kept with every case. Check: a plate much larger than the loop against
the loop's mirror image (the limit from above).
"""
import math
from inductance import between
from shapes import celled, circle, polygon, rectangle, sides
from vehicle import change
from writing import write


def plate(width, length, height, centre=(0, 0)):
    return {'kind': 'plate', 'centre': list(centre), 'width': width, 'length': length, 'height': height}


def ring(centre, radius, conductor, axis):
    return {'kind': 'ring', 'centre': list(centre), 'radius': radius, 'conductorRadius': conductor, 'axis': list(axis)}


def size(part):
    """Terms in x and y: the field's structure is as fine as the height."""
    if part['kind'] == 'ring':
        return None
    h = part['height'] + 0.03
    return [2 * round(5 + 4.5 * side / 2 / h) for side in (part['width'], part['length'])]


square = rectangle('square', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
cut = rectangle('cut', 3, 'awg14', 0.0381, [0.2, 0.1], 1.8288, 1.8288, 15, 0.3048)
long = rectangle('long', 2, 'awg12', 0.06, [0, 3], 1.83, 12)
quad = celled('quadrupole', 'quad', 2, 'awg14', 0.05, [0, 0], 1.8, 6)
diagonal = celled('diagonal', 'diagonal', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
round_loop = circle('round', 4, 'awg16', 0.06, [0, 0], 1.8)
kite = polygon('kite', 3, 'awg16', 0.05, [[-1, -0.8], [1.2, -0.6], [0.8, 1.1], [-0.6, 1.3]])
RIM = ring([0, 0, 0.33], 0.31, 0.008, [1, 0, 0])
wheels = [ring([0, 0.52, 0.33], 0.31, 0.01, [1, 0, 0]), ring([0, -0.52, 0.33], 0.31, 0.01, [1, 0, 0])]
both_sides = [ring([0.95, 1.3, 0.32], 0.22, 0.02, [1, 0, 0]), ring([-0.95, 1.3, 0.32], 0.22, 0.02, [1, 0, 0])]
rows = [
    ('car over the middle', square, [plate(1.6, 4.2, 0.45)], [0, 0], 90),
    ('low car, to one side and ahead', square, [plate(1.6, 4.2, 0.2)], [0.3, 1.0], 90),
    ('small plate over the wire', square, [plate(0.5, 0.5, 0.2)], [0.9, 0.3], 90),
    ('small plate in the middle, turned', square, [plate(0.5, 0.5, 0.5)], [0.1, -0.2], 45),
    ('lorry', square, [plate(2.4, 10, 1.0)], [0, 2], 90),
    ('rear end of a lorry, oblique', square, [plate(2.4, 10, 0.6)], [0.2, -4.5], 100),
    ('car in the next lane', square, [plate(1.6, 4.2, 0.35)], [3.0, 0.5], 90),
    ('car, oblique, corners cut', cut, [plate(1.6, 4.2, 0.3)], [-0.5, -1.2], 60),
    ('car that drives the other way, plate ahead of its centre', cut, [plate(1.5, 2.0, 0.3, [0.2, 1.0])], [0.3, 1.2], 250),
    ('lorry over a long loop', long, [plate(2.4, 10, 0.8)], [0.4, 0], 90),
    ('quadrupole, car a little off the middle slot', quad, [plate(1.6, 4.2, 0.25)], [0.2, 0.5], 90),
    ('quadrupole, lorry, oblique', quad, [plate(2.4, 10, 0.8)], [0.4, 1], 80),
    ('quadrupole, small plate over the middle slot', quad, [plate(0.5, 0.5, 0.3)], [0, 0.7], 30),
    ('diagonal, car', diagonal, [plate(1.6, 4.2, 0.45)], [0.3, -0.2], 90),
    ('diagonal, small plate over one cell', diagonal, [plate(0.5, 0.5, 0.3)], [0.45, -0.45], 30),
    ('round loop, car crosswise', round_loop, [plate(1.6, 4.2, 0.35)], [0, 1.5], 0),
    ('polygon, car', kite, [plate(1.6, 4.2, 0.5)], [0.4, 0.3], 120),
    ('polygon, narrow plate', kite, [plate(0.2, 1.6, 0.3)], [0.2, 0.9], 0),
    ('ring over the wire, along it', square, [RIM], [0.9, 0], 90),
    ('ring over the wire, across it', square, [RIM], [0.9, 0.1], 0),
    ('ring in the middle: nothing to see', square, [RIM], [0, 0.1], 90),
    ('ring over the middle slot of a quadrupole', quad, [RIM], [0.05, 0.4], 90),
    ('ring over the slot of a diagonal', diagonal, [RIM], [0.1, 0.2], 60),
    ('lying ring', round_loop, [ring([0, 0, 0.6], 0.4, 0.01, [0, 0, 1])], [0.2, 0.1], 90),
    ('leaning ring', square, [ring([0, 0, 0.4], 0.3, 0.01, [1, 0, 0.3])], [0.85, -0.3], 75),
    ('bicycle: two rings', quad, wheels, [0.05, 0.3], 90),
    ('bicycle across the wire of a square', square, wheels, [0.7, 0.9], 35),
    ('car with two wheels beside its plate', square, [plate(1.6, 4.2, 0.45), *both_sides], [0.3, -0.4], 90),
    ('car with two wheels, oblique, over a quadrupole', quad, [plate(1.6, 4.2, 0.6), *both_sides], [0.5, 1.0], 70),
    ('underside and a lower engine', square, [plate(1.6, 4.2, 0.5), plate(0.8, 0.9, 0.3, [0, 1.4])], [0.2, -0.8], 90),
]
RINGS_THROUGH = [plate(1.6, 4.2, 0.45), ring([0, 1.1, 0.33], 0.31, 0.008, [1, 0, 0])]
cases = []


def add(name, loop, parts, at, heading, limit, crowds=None):
    sizes = [size(p) for p in parts]
    plates = any(sizes)
    values = change(loop, parts, at, heading, sizes, crowds=crowds) if plates else change(loop, parts, at, heading, sizes, (1.0,))
    settled = abs(values[-1] / values[-2] - 1) if plates else 0.0
    print(name, sizes, values, f'{settled:.1e}', flush=True)
    tiny = 'nothing' in name
    assert settled < limit and values[-1] < 0
    cases.append({'name': name, 'deltaL_H': 0.0 if tiny else values[-1], 'resolutions': [[[round(f * n) for n in s] for s in sizes if s] for f in (0.5, 0.75, 1.0)] if plates else [],
                  'values': [0.0] if tiny else values, **({'absolute': True} if tiny else {}), 'parts': parts, 'at': at, 'heading': heading, 'loop': loop})


for row in rows:
    add(*row, limit=2e-4)
# The ring passes through the plate: its field there is singular, so the integrals crowd in on the two points.
half = math.sqrt(0.31 ** 2 - (0.45 - 0.33) ** 2)
add('a ring that passes through its plate', square, RINGS_THROUGH, [0.9, -1.0], 90, 1e-3,
    [((0.0,), tuple((1.1 + s * half) / 2.1 for s in (-1, 1))), ((), ())])

check = []
small = rectangle('small', 2, 'awg14', 0.05, [0, 0], 0.6, 0.6)
for side, height in [(3, 0.2), (5, 0.2), (5, 0.4)]:
    plates = [plate(side, side, height)]
    value = change(small, plates, [0, 0], 90, [size(plates[0])])[-1]
    mirrored = [(p, [2 * height - z for z in zs]) for p, zs in sides(small)]
    check.append({'side': side, 'height': height, 'plate': value, 'image': -between(sides(small), mirrored)})
    assert 0.99 < value / check[-1]['image'] < 1
print(check)
write('plates.json', 'plates.py',
      'spectral Galerkin in Chebyshev polynomials of the second kind (spectral_plate.py); flux by Biot-Savart with Gauss-Legendre; rings: Neumann integral by adaptive '
      'quadrature and L = mu0 R (ln(8R/a) - 2); all parts of a vehicle in one matrix',
      1e-4, cases, digits=9, check=check,
      note='parts in the frame of the vehicle (y along its heading, heading 90 = along +y), `at` its place; loop as in the site document; values: at the three resolutions '
           '[terms in x, terms in y] of each plate; the tolerance is that of these values (1e-3 for the ring through its plate), a mesh method needs its own margin on top; '
           '`absolute`: zero by symmetry, compare to 1e-12 H; '
           'check: a plate far larger than a small loop against its mirror image')
