"""designs.json: whole sites and what a meter at the unit's terminals would read, with and without a vehicle.

Documents from designs_documents.py; terminals by designs_network.py; vehicles and mats by designs_vehicle.py.
"""
import time
from designs_documents import OWN_WIRE, documents
from designs_network import dc_resistance_of, figures_at, loops_of, mutual_inductance, operating_frequency
from designs_vehicle import Steel, mat_of, parts_of, vehicle_change
from wire import WIRES
from writing import write

WIRES[OWN_WIRE['id']] = (OWN_WIRE['conductorDiameter'], OWN_WIRE['insulatedDiameter'])
STEP = 1e-3


def terminals(site):
    """Frequency and figures of every circuit, and what is needed to put a vehicle over it."""
    found = []
    for circuit in site['circuits']:
        loops = loops_of(site, circuit)
        steel = Steel(mat_of(site['steel'][0]), loops) if site.get('steel') else None
        adds = steel.change if steel else None
        frequency = operating_frequency(site, circuit, adds)
        found.append((circuit, loops, steel, adds, frequency, figures_at(site, circuit, frequency, adds)))
    return found


def effect(site, row, probe, fraction=1.0):
    circuit, loops, steel, adds, frequency, rest = row
    change = vehicle_change(loops, parts_of(site, probe['vehicle']), probe['at'], probe['heading'], steel, frequency, fraction)
    return figures_at(site, circuit, frequency, adds, change)['inductance_H'] / rest['inductance_H'] - 1


def case(site):
    rows = terminals(site)
    probes = []
    for probe in site['probes']:
        effects = [effect(site, row, probe) for row in rows]
        coarse = [effect(site, row, probe, 0.75) for row in rows]
        # of a response that nearly cancels, the part of a hundred-thousandth does not count
        steps = [abs(a - b) / max(abs(a), 1e-4) for a, b in zip(effects, coarse)]
        assert max(steps) < STEP, (site['name'], probe, effects, coarse)
        probes.append({'deltaLOverL': effects, 'step': float(f'{max(steps):.1e}')})
    by_id = {loop['id']: loop for loop in site['loops']}
    ids = list(by_id)
    return {'name': site['name'],
            'circuits': [{'id': circuit['id'], 'frequency_Hz': f, **rest, 'resistanceDc_ohm': dc_resistance_of(site, circuit)}
                         for circuit, _, _, _, f, rest in rows],
            'mutuals_H': [mutual_inductance(by_id[a], by_id[b]) for i, a in enumerate(ids) for b in ids[i + 1:]],
            'probes': probes, 'site': site}


if __name__ == '__main__':
    cases = []
    for site in documents():
        start = time.time()
        cases.append(case(site))
        print(site['name'], round(time.time() - start), 's', [(round(c['frequency_Hz']), c['q']) for c in cases[-1]['circuits']],
              [p['deltaLOverL'] for p in cases[-1]['probes']], flush=True)
    write('designs.json', 'designs.py',
          "Neumann's integral and Maxwell's circles (inductance.py), Bessel wires (wire.py), lines by matrix exponentials in one nodal system, spectral plates, "
          'rings and the dense mesh currents of mats (designs_network.py, designs_vehicle.py); capacitance by the formulas of coaxial layers and of the two-wire line',
          {'inductance_H': 0.01, 'resistance_ohm': 0.05, 'q': 0.06, 'deltaLOverL': 0.02}, cases,
          note='site: the document; circuits: at the terminals, at the given frequency or where the setting settles; mutuals_H: of every two loops as drawn, in the order 12, 13, ... 23, ...; '
               'probes: by probe of the document, one figure a circuit; step: relative change of a response from three quarters of the terms of a plate to all')
