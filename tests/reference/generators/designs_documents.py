"""Eighteen sites of every kind that the model knows, drawn at random from fixed seeds within what is sensible.

The wiring, the shapes and what lies around are listed, so that every kind occurs; every size, place, depth, length,
permittivity and temperature is drawn. Plans are invented.
"""
import math
import random

OWN_WIRE = {'id': 'own-wire', 'conductorDiameter': 0.0014, 'insulatedDiameter': 0.0031, 'insulationPermittivity': 3.1}
OWN_CABLES = [
    {'id': 'stated', 'resistancePerMetre_ohm': 0.021, 'inductancePerMetre_H': 7.4e-7, 'capacitancePerMetre_F': 9.5e-11},
    {'id': 'drawn', 'conductorDiameter': 0.0015, 'spacing': 0.0041, 'relativePermittivity': 3.5},
    {'id': 'plain', 'conductorDiameter': 0.0013, 'spacing': 0.0035},
    {'id': 'half-stated', 'conductorDiameter': 0.0012, 'spacing': 0.003, 'capacitancePerMetre_F': 1.1e-10},
]
OWN_VEHICLES = [
    {'id': 'trolley', 'parts': [{'kind': 'plate', 'centre': [0.1, -0.2], 'width': 0.9, 'length': 1.6, 'height': 0.35}]},
    {'id': 'hoops', 'parts': [
        {'kind': 'ring', 'centre': [0.15, 0.5, 0.4], 'radius': 0.3, 'conductorRadius': 0.01, 'axis': [1, 0.3, 0]},
        {'kind': 'ring', 'centre': [-0.1, -0.6, 0.5], 'radius': 0.4, 'conductorRadius': 0.012, 'axis': [0.2, 0, 1]}]},
]
CLASSES = ['class-motorcycle-small', 'class-motorcycle-large', 'class-automobile']
WIRES = ['awg12', 'awg14', 'awg16', 'awg18', 'mm2-1.5', 'mm2-2.5', 'own-wire']
SETTINGS = [2.2e-7, 1.5e-7, 1.0e-7, 6.8e-8]

# name, shapes, how far the middles lie apart (in their length), strings of (loop, reversed), options
PLANS = [
    ('one rectangle', 'r', 1, [[(0, 0)]], dict(given=1, cables=1)),
    ('two with cut corners, turned, in series', 'cc', 1.25, [[(0, 0), (1, 0)]], dict(cables=2)),
    ('quadrupole of own wire on a pavement that conducts', 'q', 1, [[(0, 0)]], dict(given=1, wet=1, wire='own-wire', cables=1)),
    ('diagonal and rectangle, the second reversed', 'dr', 1.3, [[(0, 0), (1, 1)]], dict(cables=1)),
    ('two circles that overlap, in parallel', 'oo', 0.6, [[(0, 0)], [(1, 0)]], dict(cables=3)),
    ('polygon and circle, the first reversed, own cable', 'po', 1.4, [[(0, 1), (1, 0)]], dict(given=1, own=['stated'], added=1)),
    ('four close rectangles in series-parallel', 'rrrr', 1.12, [[(0, 0), (1, 0)], [(2, 0), (3, 0)]], dict(cables=2, wet=1)),
    ('four shapes in series-parallel, two reversed', 'qdop', 1.5, [[(0, 0), (2, 1)], [(3, 1), (1, 0)]], dict(given=1, own=['drawn', 'half-stated'])),
    ('six turns far away on three cables', 'r', 1, [[(0, 0)]], dict(cables=3, far=1, turns=6, eps=22, temperature=50)),
    ('rectangle over a mat', 'r', 1, [[(0, 0)]], dict(given=1, mat=1, cables=1)),
    ('two in series over one mat', 'rc', 1.3, [[(0, 0), (1, 0)]], dict(mat=1, cables=2)),
    ('rectangle at the edge of a turned mat', 'r', 1, [[(0, 0)]], dict(mat='edge', cables=1)),
    ('quadrupole beside a rectangle in parallel over a mat', 'qr', 1.4, [[(0, 0)], [(1, 0)]], dict(given=1, mat=1, own=['drawn'])),
    ('two circuits side by side', 'rd', 1.2, [[(0, 0)]], dict(cables=1, second=[[(1, 0)]])),
    ('three that overlap, in parallel, one reversed', 'rcp', 0.55, [[(0, 0)], [(1, 1)], [(2, 0)]], dict(given=1, cables=1, added=1)),
    ('one long turn in the cold', 'l', 1, [[(0, 0)]], dict(turns=1, own=['half-stated', 'stated'], temperature=-20, no_tail=1)),
    ('wide rectangle over a close mat', 'w', 1, [[(0, 0)]], dict(given=90e3, mat='close', own=['plain'])),
    ('six turns on a damp pavement', 'r', 1, [[(0, 0)]], dict(given=90e3, wet=2e-4, turns=6, cables=1)),
]


def shape_of(kind, draw, centre, turn):
    w, l = draw(1.2, 2.2), draw(1.5, 2.6)
    box = {'centre': centre, 'width': w, 'length': l, 'rotation': turn}
    if kind == 'r':
        return {'kind': 'rectangle', **box, 'cornerCut': 0}
    if kind == 'c':
        return {'kind': 'rectangle', **box, 'cornerCut': draw(0.15, 0.45)}
    if kind == 'l':
        return {'kind': 'rectangle', 'centre': centre, 'width': draw(1.5, 2), 'length': draw(9, 13), 'rotation': turn, 'cornerCut': 0}
    if kind == 'w':
        return {'kind': 'rectangle', 'centre': centre, 'width': draw(2.5, 2.7), 'length': draw(2.5, 2.7), 'rotation': turn, 'cornerCut': 0}
    if kind == 'q':
        return {'kind': 'quadrupole', **box}
    if kind == 'd':
        return {'kind': 'diagonal', **box}
    if kind == 'o':
        return {'kind': 'circle', 'centre': centre, 'diameter': draw(1.4, 2.2)}
    # round an ellipse, so that it is convex
    n = 5
    angles = [2 * math.pi * (k + draw(-0.25, 0.25)) / n for k in range(n)]
    points = [[round(centre[0] + w / 1.8 * math.cos(a), 4), round(centre[1] + l / 2.2 * math.sin(a), 4)] for a in angles]
    return {'kind': 'polygon', 'points': points}


def site_of(number, name, kinds, apart, strings, given=0, cables=0, own=(), wet=0, wire=None, added=0, far=0, turns=0, eps=None, temperature=None,
            mat=None, second=None, no_tail=0):
    random_of = random.Random(7000 + number)
    draw = lambda low, high, digits=3: round(random_of.uniform(low, high), digits)
    turn = draw(-40, 40, 1) if mat is None else 0.0
    loops = []
    for k, kind in enumerate(kinds):
        y = k * apart * 2.1
        centre = [draw(-0.15, 0.15), round(y + draw(-0.05, 0.05), 3)]
        own_turn = round(turn + draw(-15, 15, 1), 1) if mat is None else (0.0 if k == 0 else draw(-10, 10, 1))
        loops.append({
            'id': f'L{k + 1}', 'turns': turns or random_of.randint(2, 3 if kind == 'q' else 5), 'wire': wire or random_of.choice(WIRES),
            # different depths: slots that cross are cut one under the other
            'slot': {'depth': round(draw(0.045, 0.06) + 0.012 * k, 4), 'width': draw(0.006, 0.01), 'relativePermittivity': draw(2.5, 6, 1)},
            'tail': {'length': 0 if no_tail else draw(1, 12, 1)}, 'shape': shape_of(kind, draw, centre, own_turn)})
        if added:
            loops[-1]['addedResistance_ohm'] = draw(0.05, 0.6)
    names = list(own) + random_of.choices(['pair-12', 'pair-14', 'pair-16', 'pair-18'], k=cables)
    lengths = [draw(80, 160, 1) if far else draw(8, 70, 1) for _ in names]
    rows = [{'cable': c, 'length': m} for c, m in zip(names, lengths)]
    lead = {**rows[0], **({'further': rows[1:]} if rows[1:] else {})}

    def circuit(ident, of, channel):
        return {'id': ident, 'strings': [[{'loop': f'L{k + 1}', 'reversed': bool(r)} for k, r in string] for string in of], 'leadIn': lead, 'detect': [],
                'channel': {'unit': 'U1', 'number': channel, 'frequencySetting': random_of.randint(1, 4),
                            'frequency_Hz': (draw(22e3, 95e3, 0) if given == 1 else given) if given else None, 'tripThreshold': 0.001}}
    site = {
        'format': 'kerfline-site', 'version': 1, 'name': name, 'temperature_C': temperature if temperature is not None else draw(-20, 50, 1),
        'pavement': {'material': 'asphalt', 'relativePermittivity': eps or draw(2.5, 14, 1), **({'conductivity_S_m': draw(0.005, 0.02, 4) if wet == 1 else wet} if wet else {})},
        'loops': loops, 'wires': [OWN_WIRE], 'cables': OWN_CABLES, 'vehicles': OWN_VEHICLES,
        'units': [{'id': 'U1', 'channels': 4, 'scansInTurn': True, 'measuringTime_s': 0.005, 'settings_F': SETTINGS, 'inductanceRange_H': [2e-5, 2e-3]}],
        'circuits': [circuit('C1', strings, 1)] + ([circuit('C2', second, 2)] if second else []),
    }
    if mat:
        p = 0.1 if mat == 'close' else random_of.choice([0.15, 0.2])
        nx, ny = (40, 42) if mat == 'close' else (round(4.6 / p), round((4.8 + 2.8 * (len(kinds) - 1)) / p))
        middle = [0.7, -0.6] if mat == 'edge' else [0.03, 1.4 * (len(kinds) - 1)]
        angle = math.radians(17) if mat == 'edge' else 0.0
        c, s = math.cos(angle), math.sin(angle)
        corners = [(x * nx * p / 2, y * ny * p / 2) for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
        site['steel'] = [{'id': 's1', 'kind': 'mat', 'depth': round(max(l['slot']['depth'] for l in loops) + draw(0.06, 0.12), 3), 'pitch': p,
                          'barRadius': draw(0.004, 0.007, 4), 'outline': [[round(middle[0] + c * x - s * y, 12), round(middle[1] + s * x + c * y, 12)] for x, y in corners]}]
    # a mat of so many meshes and a vehicle are too many unknowns: its terminals alone
    site['probes'] = [] if mat == 'close' else probes_of(number, site, draw, bool(mat))
    return site


def probes_of(number, site, draw, over_steel):
    """A car or van, a test plate and, without steel, one of the site's own, where they answer well and where they do not."""
    last = 2.1 * (len(site['loops']) - 1)
    wide = ['car', 'van'][number % 2]
    rows = [{'vehicle': wide, 'at': [draw(-0.4, 0.4), draw(0, last + 0.1)], 'heading': draw(60, 120, 1)},
            {'vehicle': CLASSES[number % 3], 'at': [draw(0.3, 0.8), draw(0.1, 0.7)], 'heading': draw(0, 180, 1)}]
    if not over_steel:
        rows.append({'vehicle': ['trolley', 'hoops', 'bicycle'][number % 3], 'at': [draw(0.2, 0.9), draw(-0.4, last + 0.3)], 'heading': draw(0, 360, 1)})
    return rows


def documents():
    return [site_of(k, name, kinds, apart, strings, **options) for k, (name, kinds, apart, strings, options) in enumerate(PLANS)]
