"""beats-spice.json: two coupled oscillators solved in time by ngspice (Berkeley SPICE's descendant; Debian package ngspice).

Two tanks L, C with a resistance in series with L, coupled by SPICE's K element; each is fed by a behavioural source of
I*tanh(v/u). Nothing of the program's own is used: the saturation u and the current I that keep the tank at an amplitude are found
here by quadrature. What comes out: the frequency of every cycle from the rising zero crossings of the voltages.
Run from anywhere: python3 beats_spice.py
"""
import math
import os
import re
import subprocess
import tempfile
import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq
from writing import write

SETTLED = 0.004
BEATS = 8
STEPS_PER_CYCLE = 200


def tank(frequency, q, excess, inductance=1e-4, amplitude=5.0):
    return {'inductance': inductance, 'capacitance': 1 / ((2 * math.pi * frequency) ** 2 * inductance), 'q': q,
            'amplitude': amplitude, 'excess': excess}


def feed(t):
    """Series resistance; current and steepness of the source."""
    resistance = math.sqrt(t['inductance'] / t['capacitance']) / t['q']

    def fundamental(x):
        return quad(lambda phi: math.tanh(x * math.sin(phi)) * math.sin(phi), 0, math.pi, epsabs=1e-13)[0] * 2 / math.pi

    x = brentq(lambda x: t['excess'] * fundamental(x) - x, 0.1, 2 * t['excess'], xtol=1e-13)
    steepness = x / t['amplitude']
    return resistance, t['excess'] * resistance * t['capacitance'] / t['inductance'] / steepness, steepness


def deck(a, b, k, end, step, path):
    lines = ['two coupled oscillators']
    for n, t in ((1, a), (2, b)):
        resistance, current, steepness = feed(t)
        lines += [f"C{n} t{n} 0 {t['capacitance']:.15g} ic={t['amplitude']:.15g}", f"L{n} t{n} m{n} {t['inductance']:.15g} ic=0",
                  f'R{n} m{n} 0 {resistance:.15g}', f'B{n} 0 t{n} I = {current:.15g}*tanh(v(t{n})*{steepness:.15g})']
    return '\n'.join([*lines, f'K1 L1 L2 {k:.15g}', '.options reltol=1e-7 abstol=1e-13 vntol=1e-10',
                      '.control', 'set numdgt=14', 'set wr_vecnames', f'tran {step:.15g} {end:.15g} 0 {step:.15g} uic',
                      f'wrdata {path} v(t1) v(t2)', '.endc', '.end', ''])


def crossings(time, voltage):
    """Rising ones, by the cubic through the four samples round each."""
    found = []
    for n in np.nonzero((voltage[:-1] < 0) & (voltage[1:] >= 0))[0]:
        if n < 1 or n + 3 > len(time):
            continue
        t, v = time[n - 1:n + 3] - time[n], voltage[n - 1:n + 3]
        cubic = np.polyfit(t / t[2], v, 3)
        found.append(time[n] + t[2] * brentq(lambda s: np.polyval(cubic, s), 0, 1))
    return np.array(found)


def swing(values):
    return (max(values) - min(values)) / 2


def measured(found, separation, times):
    """Of the settled part: mean frequency, swing of the cycles, swing of what a measuring time reads, at fifty beginnings a beat."""
    found = found[found > SETTLED]
    count = np.arange(len(found))
    end = SETTLED + BEATS / separation
    windowed = []
    for t in times:
        begins = np.arange(found[0], end - t, 1 / (50 * separation))
        windowed.append(swing((np.interp(begins + t, found, count) - np.interp(begins, found, count)) / t))
    found = found[found < end]
    return {'mean': (len(found) - 1) / (found[-1] - found[0]), 'swing': swing(1 / np.diff(found)), 'windowed': windowed}


def solve(a, b, k, separation, times):
    end = SETTLED + BEATS / separation + 0.0002
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, 'out.txt')
        text = deck(a, b, k, end, 1 / (5e4 * STEPS_PER_CYCLE), path)
        run = subprocess.run(['ngspice', '-b', '/dev/stdin'], input=text, capture_output=True, text=True)
        assert os.path.exists(path), run.stdout + run.stderr
        columns = np.loadtxt(path, skiprows=1)
    return [measured(crossings(columns[:, 0], columns[:, at]), separation, times) for at in (1, 3)]


# Quality and how hard the source is driven; the second is a soft oscillator of high quality.
MAKES = [(8, 4.0), (20, 2.0)]
PAIRS = [(k, separation) for k in (0.005, 0.01, 0.02) for separation in (400, 700, 1200, 2000, 3000)]

if __name__ == '__main__':
    version = re.search(r'ngspice-\S+', subprocess.run(['ngspice', '--version'], capture_output=True, text=True).stdout)[0]
    cases = []
    for q, excess in MAKES:
        for k, separation in PAIRS:
            for ratio in (1, 4) if (k, separation) == (0.01, 2000) else (1,):
                a, b = tank(50e3, q, excess), tank(50e3 + separation, q, excess, 1e-4 * ratio)
                times = [0.7 / separation, 1.5 / separation, 3.4 / separation]
                cases.append({'k': k, 'separation': separation, 'tanks': [a, b], 'times': times,
                              'found': solve(a, b, k, separation, times)})
    write('beats-spice.json', 'beats_spice.py', version + ' (transient analysis, trapezoidal, 200 steps a cycle)',
          {'mean': 5e-4, 'swing': 0.01}, cases, digits=9,
          note='SI. found: of either tank, from settled to settled + beats / separation: mean frequency, half the range of the frequency of '
               'every cycle (swing) and of what measuring times read (windowed, begun fifty times a beat). Both start at full swing, in phase. '
               'The trapezoidal rule slows both by about (2 pi / 200)^2 / 12; of two that are locked the mean frequencies agree.',
          settled=SETTLED, beats=BEATS)
