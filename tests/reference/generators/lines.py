"""lines.json: what stands at the far end of cables, by nodal analysis of lumped ladders: no line equation inside.

Every cable is a ladder of n pi sections (series R'+jwL', shunt jwC' halved to both ends). A ladder's error falls with
1/n^2, then 1/n^4: three ladders are combined (Romberg), and the last correction is the estimated error. More sections
than some hundred do harm: the rounding of the nodal equations grows with n^2.
A network is one sparse system: node voltages and the currents of the loops, which are coupled by jwM.
"""
import math
import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve
from writing import write


class Network:
    """Modified nodal analysis; node -1 is the reference."""

    def __init__(self):
        self.nodes, self.rows, self.branches = 0, [], []

    def node(self):
        self.nodes += 1
        return self.nodes - 1

    def admittance(self, a, b, y):
        for i, j, v in ((a, a, y), (b, b, y), (a, b, -y), (b, a, -y)):
            if i >= 0 and j >= 0:
                self.rows.append((i, j, v))

    def cable(self, near, low, cable, omega, n):
        """Ladder from `near` over the return wire `low`; returns the node at the far end."""
        h = cable['length'] / n
        if h == 0:
            return near
        series = h * (cable['resistancePerMetre'] + 1j * omega * cable['inductancePerMetre'])
        shunt = 1j * omega * cable['capacitancePerMetre'] * h
        for _ in range(n):
            far = self.node()
            self.admittance(near, far, 1 / series)
            self.admittance(near, low, shunt / 2)
            self.admittance(far, low, shunt / 2)
            near = far
        return near

    def impedance(self, at, z):
        """Input impedance at node `at`; z: impedance matrix of self.branches, each (from, to)."""
        rows, m = list(self.rows), self.nodes
        for k, (a, b) in enumerate(self.branches):
            for node, sign in ((a, 1), (b, -1)):
                if node >= 0:
                    rows += [(node, m + k, sign), (m + k, node, sign)]
            rows += [(m + k, m + l, -z[k, l]) for l in range(len(self.branches))]
        size = m + len(self.branches)
        i, j, v = zip(*rows)
        drive = np.zeros(size, complex)
        drive[at] = 1
        return spsolve(coo_matrix((v, (i, j)), shape=(size, size)).tocsc(), drive)[at]


def terminal(case, n):
    omega, net = 2 * math.pi * case['frequency'], Network()
    head = net.node()
    box = net.cable(head, -1, case['leadIn'], omega, n)
    place = {}
    for string in case['strings']:
        top = box
        for k, item in enumerate(string):
            bottom = -1 if k == len(string) - 1 else net.node()
            loop = case['loops'][item['loop']]
            end = net.cable(top, bottom, loop['tail'], omega, n // 8)
            place[item['loop']] = len(net.branches)
            net.branches.append((bottom, end) if item['reversed'] else (end, bottom))
            if loop['capacitance']:
                net.admittance(end, bottom, 1j * omega * loop['capacitance'])
            top = bottom
    z = np.zeros((len(net.branches),) * 2, complex)
    for i, loop in enumerate(case['loops']):
        z[place[i], place[i]] = loop['resistance'] + 1j * omega * loop['inductance']
    for i, j, m in case['mutuals']:
        z[place[i], place[j]] = z[place[j], place[i]] = 1j * omega * m
    return net.impedance(head, z)


def solved(case):
    a, b, c = (terminal(case, n) for n in (80, 160, 320))
    first, second = b + (b - a) / 3, c + (c - b) / 3
    z = second + (second - first) / 15
    error = abs(z - second) / abs(z)
    assert error < 1e-8, (case['name'], error)
    omega = 2 * math.pi * case['frequency']
    return {**case, 'impedance': [z.real, z.imag], 'resistance_ohm': z.real, 'inductance_H': z.imag / omega, 'q': z.imag / z.real,
            'estimatedError': error}


def cable(r, l, c, length):
    return {'resistancePerMetre': r, 'inductancePerMetre': l, 'capacitancePerMetre': c, 'length': length}


def loop(r, l, tail, c=0):
    return {'resistance': r, 'inductance': l, 'capacitance': c, 'tail': tail}


def item(k, flipped=False):
    return {'loop': k, 'reversed': flipped}


NONE = cable(0.0, 0.0, 0.0, 0)
PAIR, TWIST = (0.03, 6.7e-7, 8e-11), (0.035, 7.2e-7, 5e-11)
cases = []
for length in [1, 10, 30.5, 100, 250, 500]:
    for f in [20e3, 50e3, 100e3]:
        cases.append({'name': f'one loop over {length} m', 'frequency': f, 'loops': [loop(0.3, 7.5e-5, NONE)], 'mutuals': [],
                      'strings': [[item(0)]], 'leadIn': cable(*PAIR, length)})
cases.append({'name': 'short at the end of 300 m', 'frequency': 50e3, 'loops': [loop(1e-3, 0.0, NONE)], 'mutuals': [], 'strings': [[item(0)]],
              'leadIn': cable(*PAIR, 300)})
cases.append({'name': 'nearly open at the end of 300 m', 'frequency': 50e3, 'loops': [loop(1e7, 0.0, NONE)], 'mutuals': [], 'strings': [[item(0)]],
              'leadIn': cable(*PAIR, 300)})
cases.append({'name': 'lossless quarter-wave region', 'frequency': 150e3, 'loops': [loop(0.5, 2e-4, NONE)], 'mutuals': [], 'strings': [[item(0)]],
              'leadIn': cable(0.0, 6.7e-7, 8e-11, 200)})
cases.append({'name': 'one loop with its own capacitance, tail and lead-in', 'frequency': 90e3,
              'loops': [loop(0.9, 4e-4, cable(*TWIST, 12), 6e-10)], 'mutuals': [], 'strings': [[item(0)]], 'leadIn': cable(*PAIR, 75)})
two = [loop(0.31, 7.53e-5, cable(*TWIST, 4)), loop(0.42, 1.187e-4, cable(*TWIST, 9))]
four = two + [loop(0.27, 6.07e-5, cable(*TWIST, 2.5)), loop(0.39, 7.38e-5, cable(*TWIST, 14))]
links = [[0, 1, -2.6e-6], [0, 2, -1.3e-7], [1, 2, -8.0e-7], [2, 3, 5.2e-7], [0, 3, -4.0e-8], [1, 3, 3.1e-7]]
for f in [20e3, 50e3, 100e3]:
    for name, loops, mutuals, strings in [
            ('two in series', two, links[:1], [[item(0), item(1)]]),
            ('two in series, the second reversed', two, links[:1], [[item(0), item(1, True)]]),
            ('two in parallel', two, links[:1], [[item(0)], [item(1)]]),
            ('two in parallel, the first reversed', two, links[:1], [[item(0, True)], [item(1)]]),
            ('series-parallel of four', four, links, [[item(0), item(1)], [item(2), item(3)]]),
            ('series-parallel of four, two reversed', four, links, [[item(0), item(2, True)], [item(3), item(1, True)]]),
            ('three in series beside one', four, links, [[item(3), item(0, True), item(2)], [item(1)]])]:
        cases.append({'name': name, 'frequency': f, 'loops': loops, 'mutuals': mutuals, 'strings': strings, 'leadIn': cable(*PAIR, 76.2)})
same = [loop(0.3, 7.5e-5, NONE) for _ in range(4)]
cases.append({'name': 'four equal loops in series, no coupling, no cable', 'frequency': 50e3, 'loops': same, 'mutuals': [],
              'strings': [[item(0), item(1), item(2), item(3)]], 'leadIn': NONE})
cases.append({'name': 'four equal loops in parallel, no coupling, no cable', 'frequency': 50e3, 'loops': same, 'mutuals': [],
              'strings': [[item(0)], [item(1)], [item(2)], [item(3)]], 'leadIn': NONE})
rows = [solved(c) for c in cases]
print(max(r['estimatedError'] for r in rows))
write('lines.json', 'lines.py',
      'modified nodal analysis (numpy and scipy.sparse) of ladders of 80, 160, 320 pi sections with Romberg extrapolation; '
      'the limit is the transmission-line equation (Ramo, Whinnery, Van Duzer, ch. 5)',
      1e-7, rows,
      note="SI, per metre of cable, go and return together; mutuals: [i, j, M] of loops wound as drawn; a loop's capacitance lies across its own terminals; "
           'every loop with its tail, strings in parallel at the far end of the lead-in; tolerance relative to |impedance|, a part that is much smaller is good to that absolutely')
