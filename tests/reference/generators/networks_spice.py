"""networks-spice.json: whole circuits solved by ngspice (Berkeley SPICE's descendant; Debian package ngspice).

The command-line report writes the netlist of every circuit below at every frequency; ngspice solves it. So the values of
coils, capacitors and lines are the program's own (other files of this folder check those), and what is checked is how they
are put together: coupling, strings, senses of winding, tails and lead-in as lossy lines (SPICE's O element).
Run from anywhere, with the dependencies of package.json installed: python3 networks_spice.py
"""
import json
import os
import re
import subprocess
import tempfile
from writing import HERE, write

ROOT = os.path.join(HERE, '..', '..', '..')
FREQUENCIES = [20e3, 35e3, 50e3, 75e3, 100e3]


def square(x, y=0.0, side=1.8):
    return {'kind': 'rectangle', 'centre': [x, y], 'width': side, 'length': side}


def loop(name, shape, turns=3, wire='awg14', tail=4.0, **more):
    return {'id': name, 'turns': turns, 'wire': wire, 'slot': {'depth': 0.05, 'width': 0.008}, 'tail': {'length': tail}, 'shape': shape, **more}


def row(count, gap=0.9, **more):
    return [loop(f'L{k + 1}', square(k * (1.8 + gap)), **more) for k in range(count)]


def site(loops, strings, lead_in=None, **more):
    """`strings` of ids; a minus in front of one reverses it."""
    wired = [[{'loop': name.lstrip('-'), 'reversed': name.startswith('-')} for name in string.split()] for string in strings]
    return {'format': 'kerfline-site', 'version': 1, 'loops': loops, **more,
            'circuits': [{'id': 'C1', 'strings': wired, 'leadIn': lead_in or {'cable': 'pair-14', 'length': 60}}]}


OWN = [{'id': 'own', 'resistancePerMetre_ohm': 0.05, 'inductancePerMetre_H': 6e-7, 'capacitancePerMetre_F': 1.2e-10},
       {'id': 'dry', 'resistancePerMetre_ohm': 0.03, 'inductancePerMetre_H': 7e-7, 'capacitancePerMetre_F': 0},
       {'id': 'ideal', 'resistancePerMetre_ohm': 1e-6, 'inductancePerMetre_H': 6.5e-7, 'capacitancePerMetre_F': 7e-11}]
MIXED = [loop('L1', square(0), 3, 'awg12', 2.0), loop('L2', {'kind': 'rectangle', 'centre': [2.6, 0.3], 'width': 1.5, 'length': 3.2}, 2, 'mm2-1.5', 15.0),
         loop('L3', {'kind': 'circle', 'centre': [5.2, 0], 'diameter': 1.8}, 4, 'awg18', 40.0)]
MAT = {'id': 'm', 'kind': 'mat', 'depth': 0.12, 'pitch': 0.2, 'barRadius': 0.006, 'outline': [[-1.6, -1.6], [4.4, -1.6], [4.4, 1.6], [-1.6, 1.6]]}
SITES = {
    'one loop': site(row(1), ['L1']),
    'two in series': site(row(2), ['L1 L2']),
    'three in series, the middle one reversed': site(row(3, 0.3), ['L1 -L2 L3']),
    'four in series': site(row(4), ['L1 L2 L3 L4'], {'cable': 'pair-14', 'length': 250}),
    'two in parallel': site(row(2, 0.3), ['L1', 'L2']),
    'two in parallel, one reversed': site(row(2, 0.3), ['L1', '-L2']),
    'two strings of two': site(row(4, 0.6), ['L1 L2', 'L3 L4'], {'cable': 'pair-14', 'length': 76.2}),
    'two strings of two, every other one reversed': site(row(4, 0.1), ['L1 -L2', 'L3 -L4']),
    'strings of three and of one': site(row(4), ['L1 L2 L3', 'L4']),
    'two cables in a row': site(row(1), ['L1'], {'cable': 'own', 'length': 120, 'further': [{'cable': 'pair-18', 'length': 200}]}, cables=OWN),
    'overlapping loops in series': site([loop('L1', square(0)), loop('L2', square(0.15, 0.1))], ['L1 L2']),
    'overlapping loops in parallel, one reversed': site([loop('L1', square(0)), loop('L2', square(0.3, 0.2), 4)], ['L1', '-L2']),
    'far apart': site(row(2, 10.0), ['L1 L2']),
    'different wires and tails in parallel': site(MIXED, ['L1', 'L2', 'L3']),
    'different wires and tails, two strings': site(MIXED, ['L1 -L3', 'L2'], {'cable': 'pair-12', 'length': 30}),
    'on a pavement that conducts': site(row(2), ['L1 -L2'], pavement={'material': 'concrete', 'relativePermittivity': 9, 'conductivity_S_m': 0.05}),
    'on a mat of bars': site(row(2), ['L1', 'L2'], steel=[MAT]),
    'on a mat of bars, one reversed': site(row(2, 0.2), ['L1 -L2'], steel=[MAT]),
    'cables without capacitance and nearly without resistance': site(row(2, tail=0), ['L1 L2'], {'cable': 'dry', 'length': 80, 'further': [{'cable': 'ideal', 'length': 40}]}, cables=OWN),
    'no lead-in, no tail, a resistance added': site([loop('L1', square(0), 5, tail=0, addedResistance_ohm=0.7)], ['L1'], {'cable': 'pair-14', 'length': 0}),
    'a long lead-in': site(row(1), ['L1'], {'cable': 'pair-18', 'length': 800}),
}

UNIT = {'id': 'U1', 'channels': 1, 'scansInTurn': True, 'measuringTime_s': 0.005, 'settings_F': [1e-7], 'inductanceRange_H': [2e-5, 2e-3]}


def netlists(documents):
    """One command for all; the netlists stand one after the other."""
    with tempfile.TemporaryDirectory() as folder:
        files = []
        for k, document in enumerate(documents):
            files.append(os.path.join(folder, f'{k:03d}.json'))
            with open(files[-1], 'w', encoding='utf8') as f:
                json.dump(document, f)
        run = subprocess.run(['npx', 'tsx', 'src/cli/report.ts', *files, '--format', 'netlist'], cwd=ROOT, capture_output=True, text=True)
    assert run.returncode == 0, run.stderr
    decks = re.findall(r'.*?^\.end\n', run.stdout, re.S | re.M)
    assert len(decks) == len(documents)
    return [deck.lstrip('\n') for deck in decks]


def solve(netlist):
    """V at `in`, complex, at full precision."""
    control = '.control\nset numdgt=12\nrun\nprint real(v(in)) imag(v(in))\n.endc\n.end\n'
    deck = re.sub(r'^\.print.*\n', '', netlist, flags=re.M).replace('.end\n', control)
    run = subprocess.run(['ngspice', '-b', '/dev/stdin'], input=deck, capture_output=True, text=True)
    values = [float(v) for v in re.findall(r'^(?:real|imag)\(v\(in\)\) = (\S+)', run.stdout, re.M)]
    assert len(values) == 2, run.stdout + run.stderr
    return values


if __name__ == '__main__':
    version = re.search(r'ngspice-\S+', subprocess.run(['ngspice', '--version'], capture_output=True, text=True).stdout)[0]
    documents, named = [], []
    for name, document in SITES.items():
        for f in FREQUENCIES:
            # a channel is how a site says its frequency
            channel = {'unit': 'U1', 'number': 1, 'frequency_Hz': f, 'tripThreshold': 0.001}
            circuit = {**document['circuits'][0], 'channel': channel}
            documents.append({**document, 'circuits': [circuit], 'units': [UNIT]})
            named.append((name, f))
    cases = [{'name': name, 'frequency': f, 'impedance': solve(netlist), 'netlist': netlist.split('\n')}
             for (name, f), netlist in zip(named, netlists(documents))]
    write('networks-spice.json', 'networks_spice.py', version + ' (alternating-current analysis, lossy line LTRA) of the netlists that the program writes', 1e-6, cases,
          note='impedance: [real, imaginary] in ohms at the terminals; netlist: as solved, line by line; sites: the drawings, circuit C1 each, the frequency is that of the case; the netlists have ten digits, and the program agreed to 4e-10 of |impedance| and of its real part when this was made',
          sites=SITES)
