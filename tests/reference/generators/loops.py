"""loops.json: whole loops in the form of the site document, each alone: inductance, resistance, lengths."""
from inductance import external, figures
from shapes import celled, circle, polygon, rectangle
from writing import write

HEXAGON = [[1.1, 0.0], [0.55, 0.95], [-0.55, 0.95], [-1.1, 0.0], [-0.55, -0.95], [0.55, -0.95]]
ARROW = [[0, 0], [2.0, 0.0], [2.0, 1.5], [1.2, 0.6], [0.0, 1.4]]
loops = [
    (rectangle('one turn', 1, 'awg12', 0.03, [0, 0], 1.8288, 1.8288), 20e3, 20),
    (rectangle('long two-turn', 2, 'awg14', 0.04, [0.4, -2.2], 1.83, 15.24, 12), 35e3, 20),
    (rectangle('narrow', 5, 'awg16', 0.06, [0, 0], 0.6, 1.5), 80e3, 20),
    (rectangle('six turns, fine wire', 6, 'awg18', 0.05, [0, 0], 0.9, 0.9, 45), 100e3, 20),
    (rectangle('corners cut', 3, 'awg14', 0.0381, [0, 0], 1.8288, 1.8288, 0, 0.3048), 50e3, 20),
    (rectangle('corners cut, turned, thick wire', 4, 'awg12', 0.08, [3, 1], 2.4, 3.6, -30, 0.15), 25e3, 20),
    (celled('quadrupole', 'narrow quadrupole', 1, 'awg14', 0.05, [0, 0], 1.2, 4.0), 50e3, 20),
    (celled('quadrupole', 'quadrupole, three turns, turned', 3, 'awg16', 0.07, [1, 2], 1.83, 9.0, 15), 40e3, 20),
    (celled('quadrupole', 'short, wide quadrupole', 4, 'awg18', 0.06, [0, 0], 2.4, 1.6, 90), 70e3, 20),
    (celled('diagonal', 'diagonal, two turns, oblong', 2, 'awg14', 0.05, [0, 0], 1.5, 2.1), 50e3, 20),
    (celled('diagonal', 'diagonal, four turns, turned', 4, 'awg16', 0.08, [2, -1], 2.0, 2.0, 30), 60e3, 20),
    (circle('circle, four turns', 4, 'awg14', 0.05, [0, 0], 1.8288), 50e3, 20),
    (circle('small circle, six turns', 6, 'awg18', 0.04, [5, 5], 0.7), 90e3, 20),
    (circle('large circle, one turn', 1, 'awg12', 0.1, [0, 0], 3.0), 20e3, 20),
    (polygon('triangle', 3, 'awg14', 0.05, [[0, 0], [2.2, 0.1], [0.9, 1.9]]), 50e3, 20),
    (polygon('hexagon', 2, 'awg12', 0.045, HEXAGON), 45e3, 20),
    (polygon('hexagon wound clockwise', 2, 'awg12', 0.045, HEXAGON[::-1]), 45e3, 20),
    (polygon('polygon with a re-entrant corner', 3, 'awg16', 0.05, ARROW), 55e3, 20),
    (rectangle('warm road', 3, 'awg14', 0.05, [0, 0], 2.0, 2.5), 50e3, 60),
]
cases, spread = [], 0.0
for loop, frequency, temperature in loops:
    row = figures(loop, frequency, temperature)
    spread = max(spread, abs(external(loop, 1e-9) / row['externalInductance_H'] - 1))
    cases.append({'frequency_Hz': frequency, 'temperature_C': temperature, **row, 'loop': loop})
print('largest change between quadrature tolerances 1e-9 and 1e-11:', spread)
assert spread < 1e-8
write('loops.json', 'loops.py',
      "Neumann's integral over every pair of wires by adaptive quadrature; coaxial circles by scipy.special.ellipk and ellipe (Maxwell, art. 701); "
      'internal part and skin effect by the exact Bessel solution; proximity by the exact transverse-field loss',
      1e-7, cases,
      note='loop: as in the site document; a straight wire with itself = filaments one wire radius apart; steps of the wire between slots left out; '
           'slotLength counts the shared slot once; resistanceAc = skin + proximity', change_with_quadrature=spread)
