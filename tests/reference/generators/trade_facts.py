"""trade-facts.json: published figures of the field and figures computed from cited closed forms, turned into SI.

Nothing is computed here but the change of units and, for 14 AWG, the diameter by the printed gauge formula. A printed
figure carries a tolerance of one unit in its last digit (some were rounded twice), unless the row says why it needs more.
Marks: S = read in the source or a restatement that names it, C = computed from a cited closed form, M = from memory of the source.
"""
from decimal import Decimal
from writing import write

FT, IN = Decimal('0.3048'), Decimal('0.0254')
UH, NH, PERCENT = Decimal('1e-6'), Decimal('1e-9'), Decimal('0.01')
SIX = float(6 * FT)
AWG14 = 0.127e-3 * 92 ** ((36 - 14) / 39)


def printed(text, unit=Decimal(1)):
    d = Decimal(text)
    one = Decimal(1).scaleb(d.as_tuple().exponent)
    return {'value': float(d * unit), 'tolerance': float(f'{float(one / abs(d)):.3g}')}


def between(low, high, unit=Decimal(1)):
    return {k: float(Decimal(v) * unit) for k, v in (('min', low), ('max', high)) if v is not None}


def si(text, unit):
    return float(Decimal(text) * unit)


facts = []


def fact(name, text, inputs, quantity, expected, source, mark):
    facts.append({'id': name, 'fact': text, 'inputs': inputs, 'expected': {'quantity': quantity, **expected}, 'source': source, 'mark': mark})


TS1 = 'NEMA TS 1'
FIGURE = 'test-loop figure notes, NEMA TS 1'
SQUARE = {'width': SIX, 'length': SIX}
fact('test-loop-inductance', 'standard test loop: 3 turns, 14 AWG, slot 1-1/2 +- 1/4 in deep, 1/4 in wide',
     {'turns': 3, 'wire': 'awg14', 'slotDepth': si('1.5', IN), 'slotDepthTolerance': si('0.25', IN), 'slotWidth': si('0.25', IN), **SQUARE,
      'cornerCut': si('12', IN)}, 'inductance_H', between('60', '80', UH), FIGURE + "; the standard's name, the size and the cut [M]", 'S')
fact('test-loop-size', 'the standard test loop is 6 x 6 ft, corners cut 12 in', {}, 'size_m',
     {'width': SIX, 'length': SIX, 'cornerCut': si('12', IN)}, FIGURE, 'M')
fact('lead-in-pair-inductance', 'lead-in pair, 14 AWG, twisted and shielded: 20 to 24 uH per 100 ft', {'wire': 'awg14'}, 'inductancePerMetre_H',
     between('20', '24', UH / (100 * FT)), FIGURE, 'S')
for d, l in zip(['0.110', '0.130', '0.150', '0.180'], ['16.6', '19.1', '21.0', '23.4']):
    fact(f'twisted-pair-{d}', f'twisted pair, D = {d} in, 14 AWG, 20 kHz: {l} uH per 100 ft',
         {'wireDiameter': AWG14, 'spacing': si(d, IN), 'frequency': 20000.0}, 'inductancePerMetre_H', printed(l, UH / (100 * FT)), 'two-wire line formula', 'C')
for name, percent, drop in [('small motorcycle', '0.13', '0.12'), ('large motorcycle', '0.32', '0.3'), ('automobile', '3.2', '3.0')]:
    fact('class-' + name.replace(' ', '-'), f'{name} on the 6 x 6 ft loop with 100 ft of lead-in: {percent} % or {drop} uH',
         {**SQUARE, 'turns': 3, 'leadInLength': si('100', FT)}, 'deltaLOverL and deltaL_H',
         {'deltaLOverL': float(Decimal(percent) * PERCENT), 'deltaL_H': float(Decimal(drop) * UH)}, TS1 + ' section 15', 'M')
fact('unit-inductance-range', 'circuit inductance a unit must accept: 50 to 700 uH', {}, 'inductance_H', between('50', '700', UH), 'NEMA TS 1/TS 2', 'M')
fact('unit-q', 'Q a unit must accept: 5 or more', {}, 'q', between('5', None), 'NEMA TS 1/TS 2', 'M')
for name, loops, lead in [('one-short', [[6, 6, 3]], '100'), ('one-long', [[6, 6, 3]], '1000'), ('four', [[6, 6, None]] * 4, '250'), ('long', [[6, 50, 2]], '250')]:
    fact('test-configuration-' + name, 'a test configuration' + (', series-parallel' if len(loops) == 4 else ''),
         {'loops': [{'width': float(w * FT), 'length': float(l * FT), **({'turns': n} if n else {})} for w, l, n in loops], 'leadInLength': si(lead, FT)},
         'configuration', {}, TS1, 'M')
fact('rule-of-thumb', 'L in uH is about (P/4)(N^2 + N), P in ft; 6 x 6 ft, 3 turns: 72', {**SQUARE, 'turns': 3}, 'inductance_H',
     printed('72', UH), 'FHWA-IP-90-002 ch. 2', 'M')
fact('rule-of-thumb-spread', 'the rule is within +15/-16 % of the physics for 6 x 6 to 6 x 50 ft', {'width': SIX, 'lengthFrom': SIX, 'lengthTo': si('50', FT)},
     'ruleOverPhysics', between('0.84', '1.15'), 'FHWA-IP-90-002 ch. 2', 'M')
for n, d, r in zip([12, 14, 16, 18], ['2.053', '1.628', '1.291', '1.024'], ['1.93', '3.07', '4.89', '7.77']):
    fact(f'awg{n}-diameter', f'{n} AWG: {d} mm (0.127 mm x 92^((36-n)/39))', {'wire': f'awg{n}', 'gauge': n}, 'diameter_m',
         printed(d, Decimal('0.001')), 'ASTM B258', 'S')
    fact(f'awg{n}-resistance-75', f'copper at 75 C, solid, {n} AWG: {r} ohm per 1000 ft', {'wire': f'awg{n}', 'temperature_C': 75}, 'resistancePerMetre_ohm',
         {**printed(r, 1 / (1000 * FT)), 'tolerance': 0.003, 'why': 'the table starts from rounded areas'}, 'NEC ch. 9 table 8', 'S')
for x, r, l in zip([1, 2, 3, 4, 5, 10], ['1.0052', '1.0782', '1.3181', '1.6779', '2.0427', '3.7986'],
                   ['0.9974', '0.9611', '0.8452', '0.6863', '0.5560', '0.2816']):
    fact(f'skin-resistance-{x}', f'Rac/Rdc at a sqrt(w mu sigma) = {x}', {'aRootOmegaMuSigma': x}, 'resistanceRatio', printed(r),
         'round-wire table, NBS Circular 74', 'C')
    fact(f'skin-inductance-{x}', f'internal L over its DC value at a sqrt(w mu sigma) = {x}', {'aRootOmegaMuSigma': x}, 'internalInductanceRatio', printed(l),
         'round-wire table, NBS Circular 74', 'C')
for f, r in zip([20e3, 50e3, 100e3], ['1.1666', '1.6384', '2.2216']):
    fact(f'awg14-skin-{f / 1e3:.0f}kHz', f'14 AWG at {f / 1e3:.0f} kHz, 20 C: Rac/Rdc', {'wireDiameter': AWG14, 'frequency': f, 'temperature_C': 20},
         'resistanceRatio', printed(r), 'Bessel form', 'C')
ROSA, GROVER = 'Rosa 1908', 'Rosa & Grover 1912 formula'
for a, b, z, m in [(0.25, 0.20, 0.10, '248.7874'), (0.25, 0.25, 0.01, '1036.6648')]:
    fact(f'coaxial-circles-{z}', 'coaxial circles', {'radius1': a, 'radius2': b, 'apart': z}, 'mutual_H', printed(m, NH), GROVER, 'C')
fact('circle-dc', 'circle of radius 25 cm, wire radius 0.05 cm, DC', {'radius': 0.25, 'wireRadius': 0.0005, 'frequency': 0}, 'inductance_H',
     {**printed('2055.87', NH), 'tolerance': 1e-5, 'why': 'the closed forms for a circle with itself differ in terms of (wire radius / radius)^2'}, GROVER, 'C')
RECT = {'width': 1.0, 'length': 2.0, 'wireRadius': 0.001, 'frequency': 0}
fact('rectangle-dc-without', 'rectangle 200 x 100 cm, wire radius 0.1 cm, DC, without the 2 rho term', RECT, 'inductance_H',
     {**printed('8017.1', NH), 'tolerance': 1.2e-4, 'why': 'a sum over filaments contains the 2 rho term'}, ROSA, 'C')
fact('rectangle-dc-with', 'rectangle 200 x 100 cm, wire radius 0.1 cm, DC, with the 2 rho term', RECT, 'inductance_H', printed('8017.9', NH), ROSA, 'C')
for a, l in [(0.001, '5107.8'), (0.0005, '5661.9')]:
    fact(f'square-dc-{a}', 'square 100 cm, DC', {'width': 1.0, 'length': 1.0, 'wireRadius': a, 'frequency': 0}, 'inductance_H', printed(l, NH), ROSA, 'C')
for l, v in [('6', '10.525'), ('20', '24.246'), ('40', '43.701')]:
    fact(f'one-turn-6x{l}', f'one turn 14 AWG, DC, 6 x {l} ft', {'width': SIX, 'length': si(l, FT), 'turns': 1, 'wireDiameter': AWG14, 'frequency': 0},
         'inductance_H', printed(v, UH), ROSA, 'C')
TURNS = {'wireDiameter': AWG14, 'pitch': si('0.150', IN), 'frequency': 20000.0}
for l, row in [('6', [(1, '10.5'), (2, '36.8'), (3, '76.9'), (4, '129.6'), (5, '194.0')]), ('20', [(1, '24.2'), (2, '85.5'), (3, '179.5')]), ('50', [(2, '188.9')])]:
    for n, v in row:
        fact(f'turns-6x{l}-{n}', f'turns at 0.150 in pitch, 14 AWG, 20 kHz: 6 x {l} ft, N = {n}', {'width': SIX, 'length': si(l, FT), 'turns': n, **TURNS},
             'inductance_H', printed(v, UH), 'filament sums', 'C')
for n, v in [(1, '8.43'), (2, '29.6'), (3, '62.0'), (4, '104.7')]:
    fact(f'circle-turns-{n}', f'circle 6 ft across, turns at 0.150 in pitch, 14 AWG, 20 kHz, N = {n}', {'diameter': SIX, 'turns': n, **TURNS},
         'inductance_H', printed(v, UH), 'filament sums', 'C')
for gap, m in zip(['1', '3', '6', '12'], ['-0.2581', '-0.08043', '-0.02802', '-0.00738']):
    fact(f'side-by-side-{gap}ft', f'two 6 x 6 ft one-turn squares side by side, gap {gap} ft', {**SQUARE, 'gap': si(gap, FT)}, 'mutual_H', printed(m, UH),
         'Neumann', 'C')
for up, m in zip(['6', '12', '24', '48'], ['2.6246', '1.7310', '0.95382', '0.38581']):
    fact(f'one-above-other-{up}in', f'two 6 x 6 ft one-turn squares one above the other, {up} in', {**SQUARE, 'apart': si(up, IN)}, 'mutual_H',
         printed(m, UH), 'Neumann', 'C')
for up, v in zip(['8', '12', '18', '24', '36'], ['16.3', '11.2', '6.9', '4.5', '2.2']):
    fact(f'sheet-{up}in', f'perfect sheet {up} in over a 3-turn 6 x 6 ft loop: the fall of L of the loop alone; a real vehicle stays below',
         {**SQUARE, 'turns': 3, 'height': si(up, IN)}, 'deltaLOverL', {k: -x if k == 'value' else x for k, x in printed(v, PERCENT).items()}, 'images', 'C')
fact('car-on-100uH', 'a car over a square loop of about 100 uH: about 5 uH, order of magnitude', {'inductance': si('100', UH)}, 'deltaL_H',
     {'value': -si('5', UH), 'orderOfMagnitude': True}, 'Univ. of Texas at Austin draft, Datta et al. 2004', 'S')
fact('quadrupole-answers-less', 'quadrupoles answer less to most vehicles than rectangles of like size', {}, 'comparison',
     {'less': 'quadrupole', 'than': 'rectangle'}, 'Day et al., TRB 2009, paper 09-0018', 'S')
KIDARSA = 'Kidarsa et al., TRR 1978, 2006'
fact('round-and-octagon-alike', 'round and eight-sided loops answer nearly alike to bicycles', {}, 'comparison', {'alike': ['circle', 'octagon']}, KIDARSA, 'S')
fact('dead-spot-in-the-middle', 'round and eight-sided loops have a dead spot in the middle for bicycles', {}, 'comparison',
     {'less': 'middle', 'than': 'edge'}, KIDARSA, 'S')
fact('deep-loop-answers-less', 'a loop 30 cm deep answers far less', {'depth': 0.3}, 'comparison', {'less': 'depth of 30 cm', 'than': 'usual depth'}, KIDARSA, 'S')
WSDOT, FP96 = "a city's revision of WSDOT 8-20.3(14)D", 'FP-96 section 636'
fact('acceptance-resistance', 'acceptance: circuit resistance at most 5 ohm', {}, 'resistance_ohm', between(None, '5'), WSDOT, 'S')
fact('acceptance-q', 'acceptance: Q at least 5 at 50 kHz', {'frequency': 50000.0}, 'q', between('5', None), WSDOT, 'S')
fact('acceptance-loop', 'acceptance: loop of 60 to 100 uH, slot 0.31 x 1.75 in', {'slotWidth': si('0.31', IN), 'slotDepth': si('1.75', IN)}, 'inductance_H',
     between('60', '100', UH), FP96, 'S')
fact('clear-of-steel', 'test loop: clear of conductive material by 3 ft or more', {}, 'distance_m', between('3', None, FT), FIGURE, 'S')
fact('clear-of-covers', 'loop: clear of utility covers by 1 to 2 ft', {}, 'distance_m', between('1', '2', FT), 'City of Everett provisions', 'S')
fact('insulation-california', 'insulation of a new loop at least 100 Mohm', {}, 'insulation_ohm', between('100', None, Decimal('1e6')), 'California section 86', 'M')
fact('twist-fhwa', 'twist of the tail: 5 per ft', {}, 'twistsPerMetre', printed('5', 1 / FT), 'FHWA', 'M')
fact('operating-band', 'operating band of units: 10 to 200 kHz at the widest', {}, 'frequency_Hz', between('10', '200', Decimal(1000)), 'FHWA ch. 2', 'M')
fact('pulse-output', 'pulse output of 125 ms, +- 25 ms', {}, 'duration_s', between('0.100', '0.150'), 'NEMA', 'M')
write('trade-facts.json', 'trade_facts.py', 'see each row', 'in each row: relative, one unit in the last printed digit unless the row says why', facts,
      note='SI; expected: value and tolerance, or min and max, or a comparison; mark: S read in the source, C computed from a cited closed form, M from memory of the source')
