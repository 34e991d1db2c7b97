import { describe, expect, it } from 'vitest';
import { diagnoseInSteps } from '#analysis/fault-finding/diagnose';
import { finish } from '#analysis/steps';
import type { Quantity, Reading } from '#plan/schema';
import { fault } from './support/prepared';
import {
  AT_CABINET,
  AT_UNIT,
  diagnosed,
  EVERYWHERE,
  firstOf,
  probabilityOf,
  readingsUnder,
  site
} from './support/readings';

const short = fault('short in lead-in', null, { distance_m: 31, resistance_ohm: 0.02 });

describe('a diagnosis', () => {
  it('claims nothing where the readings fit', () => {
    const answer = diagnosed(readingsUnder([], EVERYWHERE));
    expect(answer.fits).toBe(true);
    expect(firstOf(answer)).toBe('nothing wrong');
    expect(answer.causes[0]!.probability).toBeGreaterThan(0.9);
    expect(answer.distances).toEqual([]);
  });

  it.each([
    ['shorted turns', fault('shorted turns', 'L2', { shortedTurns: 1, resistance_ohm: 0.05 })],
    ['wrong turns', fault('wrong turns', 'L1', { turns: 2 })],
    ['wrong wire', fault('wrong wire', 'awg18')],
    ['open', fault('open')],
    ['resistive splice', fault('resistive splice', null, { resistance_ohm: 4 })],
    ['short at splice', fault('short at splice', null, { resistance_ohm: 0.02 })],
    ['short in lead-in', short],
    ['reversed loop', fault('reversed loop', 'L2')],
    ['missing loop', fault('missing loop', 'L1')],
    ['parallel for series', fault('parallel for series')],
    ['wet splice', fault('wet splice', null, { leakage_ohm: 800 })],
    ['cut insulation', fault('cut insulation', 'L1', { leakage_ohm: 4e5 })],
    ['other loop', fault('other loop', 'C2')],
    ['longer lead-in', fault('longer lead-in', null, { extraLength_m: 70 })],
    ['wrong setting', fault('wrong setting', null, { setting: 4 })],
    ['wrong meter frequency', fault('wrong meter frequency', null, { frequency_Hz: 1000 })]
  ] as const)('finds %s', (kind, wrong) => {
    const answer = diagnosed(readingsUnder([wrong], EVERYWHERE));
    expect(firstOf(answer)).toBe(kind);
    expect(answer.fits).toBe(false);
    // what it says that each figure would be is what was read
    answer.figures.forEach(({ value, meterDeviation, quantity }, k) => {
      const predicted = answer.causes[0]!.predicted[k];
      if (value === null || typeof predicted !== 'number' || quantity.startsWith('insulation')) return;
      expect(Math.abs(predicted - value)).toBeLessThan(4 * meterDeviation + 0.06 * Math.abs(value));
    });
  });

  it('names the loop where one was measured alone, and the number of turns', () => {
    const answer = diagnosed(readingsUnder([fault('wrong turns', 'L1', { turns: 2 })], EVERYWHERE));
    const [wrong] = answer.causes[0]!.faults;
    expect(wrong!.subject).toBe('L1');
    expect(wrong!.estimates).toEqual([{ name: 'turns', value: 2, low: 2, high: 2 }]);
  });

  it('does not name a loop where the readings cannot tell which, but says among which', () => {
    const answer = diagnosed(readingsUnder([fault('reversed loop', 'L2')], EVERYWHERE));
    const [first] = answer.causes;
    expect(first!.faults[0]!.subject).toBeNull();
    const [note] = first!.evidence;
    expect(note!.told.key).toBe('evidence.which-one');
    expect(note!.figure).toBeNull();
  });

  it('says that an open one may be the lead-in, and that it is where the loops were found whole', () => {
    const open = readingsUnder([fault('open')], [{ testPoint: 'cabinet', quantities: ['resistanceDc_ohm'] }]);
    const [undecided] = diagnosed(open).causes;
    expect(undecided!.evidence[0]!.told.key).toBe('evidence.which-one-or-lead-in');
    const whole = readingsUnder([], [{ testPoint: 'pull-box', quantities: ['resistanceDc_ohm'] }]);
    const [decided] = diagnosed([...open, ...whole]).causes;
    expect(decided!.faults).toMatchObject([{ kind: 'open', subject: null }]);
    expect(decided!.evidence[0]!.told.key).toBe('evidence.in-lead-in');
  });

  it('has the true distance within its nineteen in twenty, and from both figures', () => {
    const answer = diagnosed(readingsUnder([short], EVERYWHERE));
    const estimate = answer.causes[0]!.faults[0]!.estimates.find(({ name }) => name === 'distance_m')!;
    expect(estimate.low).toBeLessThan(31);
    expect(estimate.high).toBeGreaterThan(31);
    expect(estimate.high - estimate.low).toBeLessThan(8);
    expect(answer.distances.map(({ from }) => from)).toEqual(['resistance', 'inductance']);
    // said once, of the figure that knows it better
    expect(answer.distances.map(({ told }) => told.key)).toEqual(['distance.resistance', 'distance.agree']);
    for (const { low, high, total_m } of answer.distances) {
      expect(low).toBeLessThan(31);
      expect(high).toBeGreaterThan(31);
      expect(total_m).toBe(80);
    }
  });

  it('finds half of the way where half of the lead-in’s resistance is read', () => {
    const half = fault('short in lead-in', null, { distance_m: 40, resistance_ohm: 1e-6 });
    const [byResistance] = diagnosed(readingsUnder([half], [AT_CABINET])).distances;
    expect(byResistance!.distance_m).toBeCloseTo(40, 1);
  });

  it('finds two faults at once where no single one explains the readings', () => {
    const answer = diagnosed(
      readingsUnder(
        [
          fault('shorted turns', 'L2', { shortedTurns: 1, resistance_ohm: 0.05 }),
          fault('cut insulation', 'L1', { leakage_ohm: 3e5 })
        ],
        EVERYWHERE
      )
    );
    expect(firstOf(answer)).toBe('cut insulation + shorted turns');
    expect(answer.causes[0]!.faults.map(({ subject }) => subject)).toEqual(['L1', 'L2']);
  });

  it('takes a figure with a mistaken prefix for a slip, not for a fault', () => {
    const readings = readingsUnder([], EVERYWHERE).map((reading): Reading =>
      reading.testPoint === 'cabinet' ? { ...reading, inductance_H: reading.inductance_H! * 1e3 } : reading
    );
    const answer = diagnosed(readings);
    expect(answer.fits).toBe(true);
    const doubtful = answer.figures.find(({ verdict }) => verdict === 'in doubt')!;
    expect(doubtful.doubt!.key).toBe('doubt.meant');
    // it is to be read again
    const read = diagnosed(readingsUnder([], [AT_CABINET])).next;
    expect(
      read.some(({ testPoint, quantity }) => testPoint === 'cabinet' && quantity === 'inductance_H')
    ).toBe(false);
  });

  it.each([0, 1e4, 6e4, 2e6])('takes insulation of %d Ω for bad, not for mistyped', (insulation_ohm) => {
    const readings = readingsUnder([], EVERYWHERE).map((reading): Reading =>
      reading.testPoint === 'cabinet' ? { ...reading, insulation_ohm } : reading
    );
    const answer = diagnosed(readings);
    expect(answer.fits).toBe(false);
    expect(probabilityOf(answer, 'cut insulation') + probabilityOf(answer, 'wet splice')).toBeGreaterThan(
      0.8
    );
  });

  it('does not say that readings fit where one contradicts another, or where there are none to weigh', () => {
    const once = readingsUnder([], [AT_CABINET]);
    const twice = once.map((each) => ({ ...each, resistanceDc_ohm: 20 * each.resistanceDc_ohm! }));
    expect(diagnosed([...once, ...twice]).fits).toBe(false);
    expect(diagnosed([{ circuit: 'C1', testPoint: 'loop', loop: 'gone', inductance_H: 8e-5 }]).fits).toBe(
      false
    );
    expect(diagnosed([{ circuit: 'C1', testPoint: 'cabinet' }]).fits).toBe(false);
  });

  it('does not say that readings fit where a meter showed nothing, even if that is most likely a slip', () => {
    const [once] = readingsUnder([], [AT_CABINET]);
    const { q, ...rest } = once!;
    expect(q).toBeGreaterThan(1);
    const answer = diagnosed([{ ...rest, overRange: ['q'] }]);
    expect(firstOf(answer)).toBe('nothing wrong');
    expect(answer.fits).toBe(false);
  });

  it('gives probabilities that add up to one with what is left out', () => {
    const answer = diagnosed(readingsUnder([fault('missing loop', 'L1')], [AT_CABINET]));
    const sum = answer.causes.reduce((all, { probability }) => all + probability, 0);
    expect(sum).toBeLessThanOrEqual(1 + 1e-9);
    expect(sum).toBeGreaterThan(0.97);
    const order = answer.causes.map(({ probability }) => probability);
    expect(order).toEqual([...order].sort((a, b) => b - a));
  });

  it('says of a leak that the figure would be about what its estimate says', () => {
    const answer = diagnosed(
      readingsUnder([fault('cut insulation', 'L1', { leakage_ohm: 4e5 })], EVERYWHERE)
    );
    const estimate = answer.causes[0]!.faults[0]!.estimates.find(({ name }) => name === 'leakage_ohm')!;
    const at = answer.figures.findIndex(
      ({ quantity, testPoint }) => quantity === 'insulation_ohm' && testPoint === 'cabinet'
    );
    const predicted = answer.causes[0]!.predicted[at] as number;
    expect(Math.abs(Math.log(predicted / estimate.value))).toBeLessThan(Math.log(1.5));
  });

  it('takes a resistance of a kilo-ohm for a bad splice, however short of open that is', () => {
    const answer = diagnosed([
      { circuit: 'C1', testPoint: 'cabinet', resistanceDc_ohm: 1_200, overRange: [] }
    ]);
    expect(firstOf(answer)).toBe('resistive splice');
    const nothing = answer.causes.find(({ faults }) => faults[0]!.kind === 'nothing wrong')!;
    // it could only be a slip, which is read again
    expect(nothing.remedy.key).toBe('remedy.slip');
    expect(diagnosed(readingsUnder([], EVERYWHERE)).causes[0]!.remedy.key).toBe('remedy.nothing wrong');
  });

  it('says of insulation that it would be sound, and of an open that it would be over range', () => {
    const under = (wrong: ReturnType<typeof fault>, quantity: Quantity) => {
      const answer = diagnosed(readingsUnder([wrong], [AT_CABINET]));
      const at = answer.figures.findIndex((each) => each.quantity === quantity);
      return answer.causes[0]!.predicted[at];
    };
    expect(under(fault('resistive splice', null, { resistance_ohm: 4 }), 'insulation_ohm')).toBe('sound');
    expect(under(fault('open'), 'resistanceDc_ohm')).toBe('over range');
  });

  it('does not hang on the order of the readings', () => {
    const readings = readingsUnder([fault('resistive splice', null, { resistance_ohm: 0.6 })], EVERYWHERE);
    const [one, other] = [diagnosed(readings), diagnosed([...readings].reverse())];
    for (const { faults, probability } of one.causes)
      expect(probabilityOf(other, faults.map(({ kind }) => kind).join(' + '))).toBeCloseTo(
        probabilityOf(one, faults.map(({ kind }) => kind).join(' + ')),
        probability > 0.01 ? 3 : 2
      );
  });

  it('is surer of a figure that was read twice', () => {
    const wrong = fault('resistive splice', null, { resistance_ohm: 0.4 });
    const once = readingsUnder([wrong], [AT_CABINET]);
    const widthOf = (readings: readonly Reading[]): number => {
      const cause = diagnosed(readings).causes.find(({ faults }) => faults[0]!.kind === 'resistive splice')!;
      const { low, high } = cause.faults[0]!.estimates[0]!;
      return high - low;
    };
    expect(widthOf([...once, ...once])).toBeLessThan(widthOf(once));
  });

  it('neither hangs nor gets surer of what is read again and again', () => {
    const once = readingsUnder([], [AT_CABINET]);
    const answer = diagnosed(Array.from({ length: 100 }, () => once).flat());
    expect(answer.fits).toBe(true);
    expect(firstOf(answer)).toBe('nothing wrong');
    expect(answer.assumptions.map(({ key }) => key)).toContain('assumed.repeats');
    // of a log without end the newest sixty
    expect(answer.figures.at(0)!.reading).toBe(40);
    expect(answer.figures.at(-1)!.reading).toBe(99);
  });

  it('holds later readings against those of commissioning day', () => {
    // within what the drawing leaves open, yet more than two meters can differ by
    const drifted = fault('resistive splice', null, { resistance_ohm: 0.35 });
    const conditions = { temperature_C: 20 };
    const later = readingsUnder([drifted], [AT_CABINET], { at: '2032-06-01', ...conditions });
    const alone = diagnosed(later);
    const day = readingsUnder([], [AT_CABINET, AT_UNIT], {
      ...{ at: '2031-05-04', isCommissioning: true },
      ...conditions
    });
    const held = diagnosed([...day, ...day, ...later]);
    expect(probabilityOf(held, 'resistive splice')).toBeGreaterThan(probabilityOf(alone, 'resistive splice'));
    expect(held.assumptions.map(({ key }) => key)).toContain('assumed.baseline');
    const wrongDay = day.map((each) => ({ ...each, resistanceDc_ohm: 40 }));
    expect(diagnosed([...wrongDay, ...later]).assumptions.map(({ key }) => key)).toContain(
      'assumed.baseline-refused'
    );
  });

  it('has no answer without readings, or for a circuit that is not there', () => {
    expect(finish(diagnoseInSteps(site, { circuit: 'C1' }))).toBeNull();
    const readings = readingsUnder([], [AT_CABINET]);
    expect(finish(diagnoseInSteps({ ...site, readings }, { circuit: 'C9', readings: [0] }))).toBeNull();
  });

  it('leaves out what the model cannot be asked, and says so', () => {
    const readings = readingsUnder([], EVERYWHERE);
    const answer = diagnosed([...readings, { circuit: 'C1', testPoint: 'loop', loop: 'L3', q: 20 }]);
    expect(answer.figures).toHaveLength(diagnosed(readings).figures.length + 1);
    const told = answer.assumptions.find(({ key }) => key === 'assumed.left-out')!;
    expect(told.values['count']).toEqual({ value: 1, kind: 'count' });
  });
});
