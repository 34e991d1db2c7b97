import { describe, expect, it } from 'vitest';
import { SOUND_INSULATION } from '#analysis/fault-finding/forward/contract';
import { externalInductance } from '#physics/inductance/loop';
import { partOf } from '#physics/inductance/turns';
import { dcResistancePerMetre, internalImpedance } from '#physics/wire/round-wire';
import { wireOf } from '#plan/catalogue/wires';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';
import { relativeError } from '../../physics/support/reference';
import { windingOf } from '#analysis/electrical/winding-of';
import { fault, figure, number, preparedOf, read } from './support/prepared';

const tuned = (number: number, frequencySetting: number) => ({
  channel: channel('U1', number, { frequency_Hz: null, frequencySetting })
});
const site = siteOf({
  loops: [
    loop('L1', square(0, 0), { tail: { length: 4 } }),
    loop('L2', square(0, 2.2), { turns: 4, tail: { length: 6 } }),
    loop('L3', square(6, 0), { turns: 5 })
  ],
  circuits: [
    circuit('C1', ['L1', 'L2'], { leadIn: { cable: 'pair-14', length: 80 }, ...tuned(1, 2) }),
    circuit('C2', ['L3'], tuned(2, 1))
  ],
  units: [unit('U1')],
  vehicles: QUICK_VEHICLES
});
const prepared = preparedOf(site, 'C1', ['car']);
const CONTACT = 1e-6;
const dc = figure('cabinet', 'resistanceDc_ohm');
const l = figure('cabinet', 'inductance_H');
const q = figure('cabinet', 'q');
const perMetre = 2 * dcResistancePerMetre(wireOf('awg14', site)!.conductorDiameter / 2, 20);

describe('a short in the lead-in', () => {
  const at = (distance: number, resistance = CONTACT) =>
    fault('short in lead-in', null, { distance_m: distance, resistance_ohm: resistance });

  it('half of a lead-in’s loop resistance points to half its length', () => {
    const whole = number(prepared, [at(80)], dc);
    expect(whole).toBeCloseTo(80 * perMetre, 4);
    expect(number(prepared, [at(40)], dc) / whole).toBeCloseTo(0.5, 4);
    expect(number(prepared, [at(40)], l) / number(prepared, [at(80)], l)).toBeCloseTo(0.5, 2);
  });

  it('adds the contact, beside which the loops hardly count', () => {
    const bare = number(prepared, [at(20)], dc);
    const behind = number(prepared, [], dc) - 20 * perMetre;
    const contact = 0.5;
    expect(number(prepared, [at(20, contact)], dc)).toBeCloseTo(
      bare + (contact * behind) / (contact + behind),
      5
    );
  });

  it('at its far end is one at the splice, which the pull box does not see', () => {
    const splice = fault('short at splice', null, { resistance_ohm: CONTACT });
    for (const asked of [dc, l, q, figure('unit', 'frequency_Hz')])
      expect(
        relativeError(number(prepared, [at(80)], asked), number(prepared, [splice], asked))
      ).toBeLessThan(1e-5);
    const box = figure('pull-box', 'inductance_H');
    expect(read(prepared, [splice], box)).toBe(read(prepared, [], box));
  });

  it('is what an insulation tester reads between the wires; elsewhere these are sound', () => {
    const between = figure('cabinet', 'insulationBetween_ohm');
    expect(number(prepared, [at(40, 2)], between)).toBeCloseTo(2 + 40 * perMetre, 9);
    expect(read(prepared, [], between)).toBe('sound');
    expect(SOUND_INSULATION.low).toBeLessThan(SOUND_INSULATION.high);
  });
});

describe('another number of turns', () => {
  const wire = wireOf('awg14', site)!;
  /** Ends of the tail at a frequency at which nothing has capacitance to speak of. */
  const low = { loop: 'L2', meterFrequency_Hz: 1_000 };

  it.each([1, 2, 3, 5, 6, 7])('of %i has the inductance of a loop drawn with so many', (turns) => {
    const drawn = siteOf({
      ...site,
      loops: site.loops.map((each) => (each.id === 'L2' ? { ...each, turns } : each))
    });
    const wanted = preparedOf(drawn);
    for (const quantity of ['inductance_H', 'resistanceDc_ohm', 'q'] as const) {
      const wrong = fault('wrong turns', 'L2', { turns });
      const loopAlone = figure('loop', quantity, low);
      const circuitThere = figure('cabinet', quantity);
      for (const asked of [loopAlone, circuitThere])
        expect(relativeError(number(prepared, [wrong], asked), number(wanted, [], asked))).toBeLessThan(1e-4);
    }
  });

  it('one less gives ((N−1)/N)² of L within what the turns couple less than perfectly', () => {
    const winding = windingOf(site.loops[1]!, {
      conductor: wire.conductorDiameter,
      insulated: wire.insulatedDiameter
    });
    const whole = externalInductance(winding);
    const one = externalInductance(partOf(winding, 0, 1));
    // of turns that all couple by k: L(N) ∝ N·(1 + (N−1)·k)
    const k = (whole / one / 4 - 1) / 3;
    const ratio = externalInductance(partOf(winding, 0, 3)) / whole;
    expect(ratio).toBeGreaterThan((3 / 4) ** 2);
    expect(ratio / (3 / 4) ** 2 - 1).toBeLessThan(1 - k);
    const fewer = fault('wrong turns', 'L2', { turns: 3 });
    const tail = number(prepared, [], figure('loop', 'inductance_H', low)) - whole;
    const read3 = number(prepared, [fewer], figure('loop', 'inductance_H', low));
    const internal = internalImpedance(wire.conductorDiameter / 2, 1_000, 20).inductance * winding.wireLength;
    expect(relativeError(read3 - (tail - internal / 4), ratio * whole)).toBeLessThan(1e-4);
  });
});

describe('how loops are joined', () => {
  const low = { meterFrequency_Hz: 1_000 };
  const box = figure('pull-box', 'inductance_H', low);
  const alone = (id: string): number =>
    number(prepared, [], figure('loop', 'inductance_H', { loop: id, ...low }));

  it('a reversed loop of a series pair gives L1 + L2 − 2M, and the other way round the same', () => {
    const sum = alone('L1') + alone('L2');
    const forward = number(prepared, [], box);
    const reversed = number(prepared, [fault('reversed loop', 'L1')], box);
    expect(Math.abs(forward - sum)).toBeGreaterThan(1e-3 * sum);
    expect(relativeError(forward + reversed, 2 * sum)).toBeLessThan(1e-6);
    expect(number(prepared, [fault('reversed loop', 'L2')], box)).toBeCloseTo(reversed, 12);
    expect(number(prepared, [fault('reversed loop', 'L1'), fault('reversed loop', 'L2')], box)).toBeCloseTo(
      forward,
      12
    );
  });

  it('reversed or missing a loop by itself reads as designed', () => {
    for (const kind of ['reversed loop', 'missing loop'] as const) {
      const asked = figure('loop', 'inductance_H', { loop: 'L1', ...low });
      expect(read(prepared, [fault(kind, 'L1')], asked)).toBe(read(prepared, [], asked));
    }
  });

  it('without one of them the other is left; the missing one of a parallel pair leaves the other too', () => {
    expect(number(prepared, [fault('missing loop', 'L1')], box)).toBeCloseTo(alone('L2'), 12);
    const inParallel = fault('parallel for series');
    expect(number(prepared, [inParallel, fault('missing loop', 'L1')], box)).toBeCloseTo(alone('L2'), 12);
  });

  it('series wired in parallel is (L1·L2 − M²)/(L1 + L2 − 2M), and back again what it was', () => {
    const [a, b] = [alone('L1'), alone('L2')];
    const m = (number(prepared, [], box) - a - b) / 2;
    const wanted = (a * b - m * m) / (a + b - 2 * m);
    // at 1 kHz resistance divides the current as much as inductance does
    const high = number(
      prepared,
      [fault('parallel for series')],
      figure('pull-box', 'inductance_H', { meterFrequency_Hz: 50_000 })
    );
    expect(relativeError(high, wanted)).toBeLessThan(0.01);
    expect(number(prepared, [fault('parallel for series'), fault('series for parallel')], box)).toBeCloseTo(
      number(prepared, [], box),
      15
    );
  });

  it('shows nothing where it is open, and the other loop of a pair in parallel where only one is', () => {
    const open = fault('open', 'L1');
    for (const asked of [
      dc,
      l,
      q,
      figure('unit', 'frequency_Hz'),
      figure('unit', 'deltaLOverL', { vehicle: 'car' })
    ])
      expect(read(prepared, [open], asked)).toBe('over range');
    expect(read(prepared, [open], figure('loop', 'resistanceDc_ohm', { loop: 'L1' }))).toBe('over range');
    expect(number(prepared, [open, fault('parallel for series')], box)).toBeCloseTo(alone('L2'), 12);
    const leadIn = fault('open');
    expect(read(prepared, [leadIn], box)).toBe(read(prepared, [], box));
    expect([dc, l, q].map((asked) => read(prepared, [leadIn], asked))).toEqual(Array(3).fill('over range'));
  });
});

describe('splices and leaks', () => {
  it('a contact in the splice adds to both resistances and leaves the inductance', () => {
    const splice = fault('resistive splice', null, { resistance_ohm: 3 });
    expect(number(prepared, [splice], dc)).toBeCloseTo(number(prepared, [], dc) + 3, 12);
    // where the cable's capacitance has nothing to say
    const low = { meterFrequency_Hz: 1_000 };
    const series = (faults: Parameters<typeof number>[1]): number =>
      (2 * Math.PI * 1_000 * number(prepared, faults, { ...l, ...low })) /
      number(prepared, faults, { ...q, ...low });
    expect(series([splice]) - series([])).toBeCloseTo(3, 3);
    expect(relativeError(number(prepared, [splice], l), number(prepared, [], l))).toBeLessThan(0.01);
  });

  it('one between loops is seen at the pull box, one to the lead-in is not', () => {
    const asked = figure('pull-box', 'resistanceDc_ohm');
    const values = { resistance_ohm: 2 };
    expect(number(prepared, [fault('resistive splice', 'L1', values)], asked)).toBeCloseTo(
      number(prepared, [], asked) + 2,
      12
    );
    expect(read(prepared, [fault('resistive splice', null, values)], asked)).toBe(read(prepared, [], asked));
  });

  it('a wet splice takes Q and insulation, and hardly any inductance', () => {
    const wet = fault('wet splice', null, { leakage_ohm: 2_000 });
    expect(number(prepared, [wet], q)).toBeLessThan(0.9 * number(prepared, [], q));
    expect(relativeError(number(prepared, [wet], l), number(prepared, [], l))).toBeLessThan(0.01);
    expect(read(prepared, [wet], figure('cabinet', 'insulation_ohm'))).toBe(2_000);
    expect(read(prepared, [wet], figure('cabinet', 'insulationBetween_ohm'))).toBeNull();
    expect(read(prepared, [wet], figure('loop', 'insulation_ohm', { loop: 'L1' }))).toBe('sound');
  });

  it('cut insulation takes nothing but insulation, from where it is to the cabinet', () => {
    const cut = fault('cut insulation', 'L1', { leakage_ohm: 5e4 });
    for (const asked of [dc, l, q]) expect(read(prepared, [cut], asked)).toBe(read(prepared, [], asked));
    const insulation = (testPoint: 'pull-box' | 'cabinet') => figure(testPoint, 'insulation_ohm');
    expect(read(prepared, [cut], insulation('pull-box'))).toBeCloseTo(5e4, 6);
    expect(read(prepared, [cut], insulation('cabinet'))).toBeCloseTo(5e4, 6);
    expect(read(prepared, [cut], figure('loop', 'insulation_ohm', { loop: 'L2' }))).toBe('sound');
    const both = [cut, fault('cut insulation', null, { leakage_ohm: 5e4 })];
    expect(read(prepared, both, insulation('cabinet'))).toBeCloseTo(2.5e4, 6);
    expect(read(prepared, both, insulation('pull-box'))).toBeCloseTo(5e4, 6);
  });
});

describe('what else hangs on the terminals', () => {
  it('a longer lead-in is one that was drawn longer', () => {
    const drawn = siteOf({
      ...site,
      circuits: site.circuits.map((each) =>
        each.id === 'C1' ? { ...each, leadIn: { ...each.leadIn, length: 125 } } : each
      )
    });
    const wanted = preparedOf(drawn);
    const longer = fault('longer lead-in', null, { extraLength_m: 45 });
    for (const asked of [dc, l, q, figure('unit', 'frequency_Hz')])
      expect(relativeError(number(prepared, [longer], asked), number(wanted, [], asked))).toBeLessThan(1e-7);
  });

  it('another circuit’s loop answers with its own figures through this lead-in, and no vehicle here moves it', () => {
    const swapped = siteOf({
      ...site,
      circuits: site.circuits.map((each) => {
        const strings = each.id === 'C1' ? site.circuits[1]!.strings : site.circuits[0]!.strings;
        return { ...each, strings };
      })
    });
    const wanted = preparedOf(swapped);
    const other = fault('other loop', 'C2');
    for (const asked of [dc, l, q, figure('unit', 'frequency_Hz')])
      expect(relativeError(number(prepared, [other], asked), number(wanted, [], asked))).toBeLessThan(1e-7);
    expect(read(prepared, [other], figure('unit', 'deltaLOverL', { vehicle: 'car' }))).toBe(0);
  });

  it('another wire is a loop drawn with it', () => {
    const drawn = siteOf({ ...site, loops: site.loops.map((each) => ({ ...each, wire: 'awg18' })) });
    const wanted = preparedOf(drawn);
    for (const asked of [dc, l, q, figure('loop', 'q', { loop: 'L2' })])
      expect(
        relativeError(number(prepared, [fault('wrong wire', 'awg18')], asked), number(wanted, [], asked))
      ).toBeLessThan(1e-4);
  });

  it('another setting is that setting’s frequency, another meter frequency that of a meter that says so', () => {
    const asked = figure('unit', 'frequency_Hz');
    expect(read(prepared, [fault('wrong setting', null, { setting: 3 })], asked)).toBe(
      read(prepared, [], { ...asked, setting: 3 })
    );
    const meter = fault('wrong meter frequency', null, { frequency_Hz: 10_000 });
    for (const each of [l, q])
      expect(read(prepared, [meter], each)).toBe(read(prepared, [], { ...each, meterFrequency_Hz: 10_000 }));
    expect(read(prepared, [meter], asked)).toBe(read(prepared, [], asked));
  });

  it('steel takes inductance and Q, the more the nearer; far away it takes nothing', () => {
    const at = (depth: number, asked = figure('pull-box', 'inductance_H')) =>
      number(prepared, [fault('steel near', null, { depth_m: depth })], asked);
    const sound = number(prepared, [], figure('pull-box', 'inductance_H'));
    const depths = prepared.hypotheses.find(({ kind }) => kind === 'steel near')!.unknowns[0]!.values;
    const left = depths.map((depth) => at(depth));
    left.forEach((value, k) => expect(value).toBeGreaterThan(left[k - 1] ?? 0));
    expect(left[0]!).toBeLessThan(0.85 * sound);
    expect(left.at(-1)!).toBeLessThan(sound);
    expect(left.at(-1)!).toBeGreaterThan(0.95 * sound);
    const middle = Math.sqrt(depths[2]! * depths[3]!);
    expect(at(middle)).toBeGreaterThan(left[2]!);
    expect(at(middle)).toBeLessThan(left[3]!);
    const qBox = figure('pull-box', 'q');
    expect(at(depths[0]!, qBox)).toBeLessThan(number(prepared, [], qBox));
  });
});

describe('a known vehicle', () => {
  const asked = figure('unit', 'deltaLOverL', { vehicle: 'car' });
  const sound = number(prepared, [], asked);

  it('lowers the inductance, by less behind a longer lead-in', () => {
    expect(sound).toBeLessThan(-1e-4);
    const longer = number(prepared, [fault('longer lead-in', null, { extraLength_m: 200 })], asked);
    expect(longer).toBeLessThan(0);
    expect(longer).toBeGreaterThan(0.95 * sound);
  });

  it('is driven to where the fault leaves most: over the loop that is left it answers as over that loop alone', () => {
    for (const [gone, left] of [
      ['L1', 'L2'],
      ['L2', 'L1']
    ] as const) {
      const drawn = siteOf({
        ...site,
        circuits: site.circuits.map((each) =>
          each.id === 'C1' ? { ...each, strings: [[{ loop: left, reversed: false }]] } : each
        )
      });
      const wanted = number(preparedOf(drawn, 'C1', ['car']), [], asked);
      expect(relativeError(number(prepared, [fault('missing loop', gone)], asked), wanted)).toBeLessThan(
        0.01
      );
    }
    expect(read(prepared, [], { ...asked, vehicle: 'lorry' })).toBeNull();
  });
});
