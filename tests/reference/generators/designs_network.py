"""Terminal figures of a circuit of a site document, from the generators' own modules and one nodal system.

Every line (tail, cable of the lead-in) is a two-port from the matrix exponential of its telegrapher's equations,
d/dx (V, I) = -[[0, R' + jwL'], [jwC', 0]] (V, I), stamped into the nodal admittances beside the loops' impedance matrix.
A unit's channel settles at the root of f = (1 - 1/8Q^2) / 2 pi sqrt(L C), found by bracketing.
"""
import math
import json
import numpy as np
from scipy.linalg import expm
from scipy.optimize import brentq
from inductance import between, external
from neumann import MU0
from pavement_loss import areas
from shapes import plan_sides, sides, wire_length
from neumann import length
from wire import WIRES, column_proximity, dc_resistance, internal_impedance, resistivity

EPS0 = 8.8541878128e-12
POLYETHYLENE = 2.3
# conductor, spacing of the axes, capacitance per metre: a twisted pair of the catalogue
PAIRS = {f'pair-{n}': (*WIRES[f'awg{n}'], 80e-12) for n in (12, 14, 16, 18)}


def frozen(make):
    """Kept by the text of its arguments: documents are dictionaries."""
    known = {}

    def keep(*given):
        text = json.dumps(given)
        if text not in known:
            known[text] = make(*given)
        return known[text]
    return keep


own_inductance = frozen(lambda loop: external(loop, 1e-9))
mutual_inductance = frozen(lambda a, b: between(sides(a), sides(b), 1e-8))


def pair_line(diameter, spacing, eps, frequency, temperature):
    """R', L', C' of go and return: two-wire line (Ramo, Whinnery, Van Duzer, ch. 5) with the skin effect of both wires."""
    r, l = internal_impedance(diameter, frequency, resistivity(temperature))
    shape = math.acosh(spacing / diameter)
    return 2 * r, MU0 / math.pi * shape + 2 * l, math.pi * EPS0 * eps / shape


def wire_permittivity(site, name):
    return next((w.get('insulationPermittivity', 2.3) for w in site.get('wires', []) if w['id'] == name), 2.3)


def cable_line(site, name, frequency):
    temperature = site['temperature_C']
    if name in PAIRS:
        diameter, spacing, c = PAIRS[name]
        return (*pair_line(diameter, spacing, POLYETHYLENE, frequency, temperature)[:2], c)
    own = next(c for c in site['cables'] if c['id'] == name)
    computed = [0.0, 0.0, 0.0]
    if 'conductorDiameter' in own:
        computed = pair_line(own['conductorDiameter'], own['spacing'], own.get('relativePermittivity', POLYETHYLENE), frequency, temperature)
    keys = ('resistancePerMetre_ohm', 'inductancePerMetre_H', 'capacitancePerMetre_F')
    return tuple(own.get(k, v) for k, v in zip(keys, computed))


def cable_dc(site, name):
    rho = resistivity(site['temperature_C'])
    if name in PAIRS:
        return 2 * dc_resistance(PAIRS[name][0], rho)
    own = next(c for c in site['cables'] if c['id'] == name)
    return own.get('resistancePerMetre_ohm', 2 * dc_resistance(own['conductorDiameter'], rho) if 'conductorDiameter' in own else 0.0)


def shunt_admittance(site, loop, frequency):
    """Turn to turn, and to the ground through insulation, fill and a pavement of complex permittivity; a third of the latter counts."""
    d, insulated = WIRES[loop['wire']]
    eps, slot, n, metres = wire_permittivity(site, loop['wire']), loop['slot'], loop['turns'], wire_length(loop)
    omega = 2 * math.pi * frequency
    turns = math.pi * EPS0 * eps / math.acosh(insulated / d) * (metres / n) * (n - 1) / n ** 2
    pavement = site['pavement']['relativePermittivity'] - 1j * site['pavement'].get('conductivity_S_m', 0) / (omega * EPS0)
    wall = max(slot['width'] / 2, insulated / 2)
    layers = math.log(insulated / d) / eps + math.log(2 * wall / insulated) / slot['relativePermittivity'] + math.log(slot['depth'] / wall) / pavement
    ground = 2 * math.pi * EPS0 / layers * metres / 3
    return 1j * omega * (turns + ground)


def cells_of(loop):
    """[(corners counter-clockwise, signed turns)] of convex cells."""
    shape, n = loop['shape'], loop['turns']
    if shape['kind'] == 'circle':
        k = 96
        # a polygon of the circle's area
        r = shape['diameter'] / 2 * math.sqrt(math.pi / (k / 2 * math.sin(2 * math.pi / k)))
        t = 2 * math.pi * np.arange(k) / k
        return [(np.array(shape['centre']) + r * np.stack([np.cos(t), np.sin(t)], 1), n)]
    pieces = plan_sides(shape)
    ring = lambda ps: np.array([p[1][:2] for p in ps])
    if not any(shared for _, shared in pieces):
        corners = ring([p for p, _ in pieces])
        x, y = corners.T
        ccw = (x * np.roll(y, -1) - y * np.roll(x, -1)).sum() > 0
        return [(corners if ccw else corners[::-1], n if ccw else -n)]
    (shared, _), outer = pieces[0], [p for p, s in pieces[1:]]
    half = len(outer) // 2
    first, second = ring([shared, *outer[:half]]), ring([shared, *outer[half:]])
    return [(first, n), (second[::-1], -n)]


@frozen
def ground_integral(loop, other):
    """int A . A' dV below the road, per ampere in each."""
    a, b = cells_of(loop), cells_of(other)
    if loop == other:
        return areas(a, 24)
    return (areas(a + b, 24) - areas(a, 24) - areas(b, 24)) / 2


def loop_impedances(site, loops, frequency, steel):
    """(n, n) ohms, of the bare loops; `steel(frequency)`: what steel adds, H."""
    omega, rho = 2 * math.pi * frequency, resistivity(site['temperature_C'])
    sigma = site['pavement'].get('conductivity_S_m', 0)
    z = 1j * omega * (np.zeros((len(loops),) * 2) if steel is None else steel(frequency))
    for i, loop in enumerate(loops):
        d, pitch = WIRES[loop['wire']]
        r, l = internal_impedance(d, frequency, rho)
        near = sum(length(p) * column_proximity(d, pitch, len(zs), frequency, rho) for p, zs in sides(loop))
        z[i, i] += r * wire_length(loop) + near + loop.get('addedResistance_ohm', 0) + 1j * omega * (own_inductance(loop) + l * wire_length(loop))
        for j in range(i):
            m = mutual_inductance(loops[j], loop)
            z[i, j] += 1j * omega * m
            z[j, i] += 1j * omega * m
        if sigma:
            for j in range(i + 1):
                lost = omega ** 2 * sigma * ground_integral(loops[j], loop)
                z[i, j] += lost
                z[j, i] += lost if i != j else 0
    return z


class Nodes:
    """Nodal analysis; node -1 is the reference. Loops are branches with their currents as unknowns."""

    def __init__(self):
        self.count, self.stamps, self.branches = 0, [], []

    def node(self):
        self.count += 1
        return self.count - 1

    def admittance(self, a, b, y):
        self.stamps += [(a, a, y), (b, b, y), (a, b, -y), (b, a, -y)]

    def line(self, near, low, constants, metres, omega):
        """A line over the common return `low`; the node at its far end."""
        if metres == 0:
            return near
        r, l, c = constants
        step = expm(np.array([[0, r + 1j * omega * l], [1j * omega * c, 0]]) * metres)
        a, b, d = step[0, 0], step[0, 1], step[1, 1]
        far = self.node()
        # a pi of three admittances
        self.admittance(near, far, 1 / b)
        self.admittance(near, low, (d - 1) / b)
        self.admittance(far, low, (a - 1) / b)
        return far

    def voltages(self, at, z):
        """Of every node, with one ampere into `at`."""
        n, m = self.count, len(self.branches)
        full, drive = np.zeros((n + m, n + m), complex), np.zeros(n + m, complex)
        for i, j, y in self.stamps:
            if i >= 0 and j >= 0:
                full[i, j] += y
        for k, (a, b) in enumerate(self.branches):
            for node, sign in ((a, 1), (b, -1)):
                if node >= 0:
                    full[node, n + k] += sign
                    full[n + k, node] += sign
        full[n:, n:] = -z
        drive[at] = 1
        return np.linalg.solve(full, drive)


def entries_of(circuit):
    return [entry for string in circuit['strings'] for entry in string]


def loops_of(site, circuit):
    by_id = {loop['id']: loop for loop in site['loops']}
    return [by_id[entry['loop']] for entry in entries_of(circuit)]


def wired(net, site, circuit, frequency):
    """Puts the circuit's lines and loops into the net, the loops' branches in the order of the strings; its terminal."""
    omega, loops = 2 * math.pi * frequency, loops_of(site, circuit)
    head = place = net.node()
    lead = circuit['leadIn']
    for piece in reversed([lead, *lead.get('further', [])]):
        place = net.line(place, -1, cable_line(site, piece['cable'], frequency), piece['length'], omega)
    k = 0
    for string in circuit['strings']:
        top = place
        for at, entry in enumerate(string):
            loop, bottom = loops[k], -1 if at == len(string) - 1 else net.node()
            d, insulated = WIRES[loop['wire']]
            tail = pair_line(d, insulated, wire_permittivity(site, loop['wire']), frequency, site['temperature_C'])
            end = net.line(top, bottom, tail, loop['tail']['length'], omega)
            net.branches.append((bottom, end) if entry.get('reversed') else (end, bottom))
            net.admittance(end, bottom, shunt_admittance(site, loop, frequency))
            top, k = bottom, k + 1
    return head


def terminal_impedance(site, circuit, frequency, z):
    """z: of the bare loops, in the order of the strings."""
    net = Nodes()
    head = wired(net, site, circuit, frequency)
    return net.voltages(head, z)[head]


def transfer_impedance(site, a, b, frequency):
    """Volts at the open terminals of `b`, per ampere into those of `a`."""
    net = Nodes()
    heads = [wired(net, site, circuit, frequency) for circuit in (a, b)]
    z = loop_impedances(site, loops_of(site, a) + loops_of(site, b), frequency, None)
    return net.voltages(heads[0], z)[heads[1]]


def figures_at(site, circuit, frequency, steel, change=0):
    """`change`: what a vehicle adds to the loops' inductances, H."""
    omega = 2 * math.pi * frequency
    z = loop_impedances(site, loops_of(site, circuit), frequency, steel) + 1j * omega * change
    terminal = terminal_impedance(site, circuit, frequency, z)
    return {'inductance_H': terminal.imag / omega, 'resistance_ohm': terminal.real, 'q': terminal.imag / terminal.real}


def operating_frequency(site, circuit, steel):
    channel = circuit['channel']
    if channel['frequency_Hz'] is not None:
        return channel['frequency_Hz']
    unit = next(u for u in site['units'] if u['id'] == channel['unit'])
    farads = unit['settings_F'][channel['frequencySetting'] - 1]

    def off(f):
        now = figures_at(site, circuit, f, steel)
        return (1 - 1 / (8 * now['q'] ** 2)) / (2 * math.pi * math.sqrt(now['inductance_H'] * farads)) - f
    # from below: past its resonance a circuit has no inductance to take the root of
    high = 5e3
    while off(high) > 0:
        high *= 1.1
    return brentq(off, high / 1.1, high, xtol=1e-4)


def dc_resistance_of(site, circuit):
    rho, loops = resistivity(site['temperature_C']), iter(loops_of(site, circuit))
    conductance = 0.0
    for string in circuit['strings']:
        string_ohms = 0.0
        for _ in string:
            loop = next(loops)
            metres = wire_length(loop) + 2 * loop['tail']['length']
            string_ohms += dc_resistance(WIRES[loop['wire']][0], rho) * metres + loop.get('addedResistance_ohm', 0)
        conductance += 1 / string_ohms
    lead = circuit['leadIn']
    return 1 / conductance + sum(cable_dc(site, p['cable']) * p['length'] for p in [lead, *lead.get('further', [])])
