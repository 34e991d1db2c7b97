"""loop-pairs.json: mutual inductance of two loops, counter-clockwise positive, by Neumann's integral over all wires."""
from inductance import between
from shapes import celled, circle, polygon, rectangle, sides
from writing import write

base = rectangle('a', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8)
clockwise = [[2.4, -0.5], [2.1, 1.2], [3.6, 1.5], [3.9, -0.8]]
pairs = [
    ('gap 0.1 m', base, rectangle('b', 3, 'awg14', 0.05, [1.9, 0], 1.8, 1.8)),
    ('gap 0.1 m, deeper, other wire and turns', base, rectangle('b', 4, 'awg18', 0.075, [1.9, 0.3], 1.8, 2.4)),
    ('gap 0.3 m, one behind the other', base, rectangle('b', 2, 'awg12', 0.06, [0, 2.1], 1.8, 1.8)),
    ('gap 1 m, turned 30 degrees', base, rectangle('b', 3, 'awg14', 0.05, [3.1, 0.4], 1.8, 1.8, 30)),
    ('gap 4 m', base, rectangle('b', 3, 'awg14', 0.05, [5.8, 0], 1.8, 1.8)),
    ('long against square', base, rectangle('b', 2, 'awg14', 0.05, [3.5, 0], 1.8, 12)),
    ('overlapping, same depth', base, rectangle('b', 3, 'awg14', 0.05, [1.2, 0.9], 1.8, 1.8)),
    ('overlapping, other depth, turned', base, rectangle('b', 2, 'awg16', 0.08, [0.9, 0.5], 1.6, 2.0, 25, 0.2)),
    ('overlapping, same depth, wires that cross at an angle', base, rectangle('b', 3, 'awg14', 0.05, [0.9, 0.5], 1.6, 2.0, 25)),
    ('nested, rectangle in rectangle', base, rectangle('b', 4, 'awg16', 0.05, [0.1, -0.1], 0.8, 1.0, 10)),
    ('nested, circle in rectangle', base, circle('b', 3, 'awg14', 0.04, [-0.2, 0.1], 0.9)),
    ('nested circles off centre', circle('a', 2, 'awg14', 0.05, [0, 0], 2.4), circle('b', 3, 'awg16', 0.06, [0.3, 0.2], 1.0)),
    ('circles side by side, gap 0.2 m', circle('a', 3, 'awg14', 0.05, [0, 0], 1.8), circle('b', 3, 'awg14', 0.05, [2.0, 0], 1.8)),
    ('circle against quadrupole', circle('a', 3, 'awg14', 0.05, [0, 0], 1.8),
     celled('quadrupole', 'b', 2, 'awg14', 0.05, [2.3, 1.0], 1.8, 6)),
    ('rectangle against quadrupole, symmetric: M = 0', base, celled('quadrupole', 'b', 2, 'awg14', 0.05, [0, 4.5], 1.8, 6)),
    ('rectangle beside quadrupole', base, celled('quadrupole', 'b', 2, 'awg14', 0.05, [2.6, 4.0], 1.8, 6, 8)),
    ('quadrupole around a small rectangle in one cell', celled('quadrupole', 'a', 2, 'awg16', 0.06, [0, 0], 2.4, 3.0),
     rectangle('b', 3, 'awg18', 0.03, [-0.55, 0.2], 0.5, 0.9)),
    ('diagonal against rectangle', celled('diagonal', 'a', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8),
     rectangle('b', 3, 'awg14', 0.05, [2.4, 0.2], 1.8, 1.8)),
    ('diagonal against diagonal', celled('diagonal', 'a', 3, 'awg14', 0.05, [0, 0], 1.8, 1.8),
     celled('diagonal', 'b', 4, 'awg16', 0.06, [2.5, 0.5], 1.8, 1.8, 90)),
    ('two quadrupoles one behind the other', celled('quadrupole', 'a', 2, 'awg14', 0.05, [0, 0], 1.8, 4),
     celled('quadrupole', 'b', 2, 'awg14', 0.05, [0.2, 4.5], 1.8, 4)),
    ('rectangle against a polygon drawn clockwise', base, polygon('b', 3, 'awg14', 0.05, clockwise)),
    ('the same polygon counter-clockwise', base, polygon('b', 3, 'awg14', 0.05, clockwise[::-1])),
]
cases, spread = [], 0.0
for name, a, b in pairs:
    zero = name.endswith('M = 0')
    m = between(sides(a), sides(b))
    if not zero:
        spread = max(spread, abs(between(sides(b), sides(a), 1e-9) / m - 1))
    assert not zero or abs(m) < 1e-18, m
    cases.append({'name': name, 'mutual_H': 0.0 if zero else m, 'a': a, 'b': b})
    print(name, m)
print('largest change on exchange and between tolerances 1e-9 and 1e-11:', spread)
assert spread < 1e-7
write('loop-pairs.json', 'loop_pairs.py', "Neumann's integral over every pair of wires by adaptive quadrature, no closed form except coaxial circles",
      1e-6, cases,
      note='a and b: loops as in the site document; signed as wound; a polygon is wound in the order of its points, so the clockwise one has the other sign; '
           'where M = 0 compare absolutely, to 1e-15 H', change_with_quadrature=spread)
