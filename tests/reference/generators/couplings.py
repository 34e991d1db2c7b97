"""couplings.json: what one circuit's current induces at another's terminals, through loops, tails and lead-ins.

Two of the designs beside each other in one document, as one nodal system (designs_network.py): an ampere into the one, the
voltage at the open terminals of the other over j omega. Without conductivity of the pavement: what two circuits lose together
has no part in a coupling.
"""
import copy
import math
from designs_documents import OWN_WIRE, documents
from designs_network import figures_at, transfer_impedance
from wire import WIRES
from writing import write

WIRES[OWN_WIRE['id']] = (OWN_WIRE['conductorDiameter'], OWN_WIRE['insulatedDiameter'])
PLAIN = [site for site in documents() if not site.get('steel') and len(site['circuits']) == 1]
#: Places in PLAIN, how far the second is moved to the right and ahead, and the frequency of both.
PAIRS = [(0, 1, 3.1, 0.4, 50e3), (1, 2, 4.2, -0.7, 31e3), (3, 4, 5.0, 1.1, 44e3), (5, 6, 6.3, 0.0, 27e3), (7, 0, 5.5, 2.0, 66e3),
         (8, 3, 3.4, -1.2, 22e3), (6, 7, 8.0, 3.0, 36e3), (2, 8, 2.9, 0.9, 25e3)]


def moved(shape, dx, dy):
    shape = dict(shape)
    if 'points' in shape:
        shape['points'] = [[x + dx, y + dy] for x, y in shape['points']]
    else:
        shape['centre'] = [shape['centre'][0] + dx, shape['centre'][1] + dy]
    return shape


def beside(first, second, dx, dy, frequency):
    """One document with both, each circuit on a unit of its own."""
    site = copy.deepcopy(first)
    site['pavement'].pop('conductivity_S_m', None)
    other = copy.deepcopy(second)
    for loop in other['loops']:
        loop['id'] = 'N' + loop['id']
        loop['shape'] = moved(loop['shape'], dx, dy)
    for circuit in other['circuits']:
        circuit['id'] = 'N' + circuit['id']
        circuit['channel']['unit'] = 'N' + circuit['channel']['unit']
        for string in circuit['strings']:
            for entry in string:
                entry['loop'] = 'N' + entry['loop']
    for unit in other['units']:
        unit['id'] = 'N' + unit['id']
    for key in ('loops', 'circuits', 'units'):
        site[key] = site[key] + other[key]
    for key in ('wires', 'cables'):
        known = {entry['id'] for entry in site.get(key, [])}
        site[key] = site.get(key, []) + [entry for entry in other.get(key, []) if entry['id'] not in known]
    site['probes'] = []
    for circuit in site['circuits']:
        circuit['channel']['frequency_Hz'] = frequency
    return site


if __name__ == '__main__':
    cases = []
    for i, j, dx, dy, frequency in PAIRS:
        site = beside(PLAIN[i], PLAIN[j], dx, dy, frequency)
        a, b = site['circuits']
        there = transfer_impedance(site, a, b, frequency)
        back = transfer_impedance(site, b, a, frequency)
        assert abs(there - back) < 1e-9 * abs(there)
        mutual = there.imag / (2 * math.pi * frequency)
        la, lb = (figures_at(site, circuit, frequency, None)['inductance_H'] for circuit in (a, b))
        cases.append({'name': f"{PLAIN[i]['name']} | {PLAIN[j]['name']}", 'mutual_H': mutual, 'k': mutual / math.sqrt(la * lb),
                      'quadrature': abs(there.real / there.imag), 'site': site})
        print(cases[-1]['name'], mutual, cases[-1]['k'], cases[-1]['quadrature'], flush=True)
    write('couplings.json', 'couplings.py', 'as designs.json: one nodal system of both circuits, an ampere into the one, the open voltage of the other',
          {'k': 0.01}, cases, note='mutual_H: voltage over j omega, in-phase part; quadrature: the other part over it')
