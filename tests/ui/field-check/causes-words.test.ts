import { beforeAll, describe, expect, test } from 'vitest';
import type { Estimate, Fault, RankedCause } from '#analysis/fault-finding/results';
import { loadMessages } from '#i18n/load';
import {
  causeEstimates,
  causeName,
  lengthAbout,
  probabilityText,
  sides,
  strengthText
} from '#ui/field-check/causes/words';
import type { UnitSystem } from '#units/kind';
import { circuit, loop, siteOf, square, unit } from '../../analysis/support/sites';

beforeAll(async () => {
  await loadMessages('en', ['views', 'analysis']);
});

const site = siteOf({
  loops: [loop('L1', square(0, 0), { name: 'Left' })],
  units: [unit('U1')],
  circuits: [circuit('C1', ['L1'], { name: 'Gate' })]
});

describe('a probability is told as coarsely as it is known', () => {
  test.each([
    [0.9996, 'over 99 %'],
    [0.97, 'about 97 %'],
    [0.68, 'about 70 %'],
    [0.52, 'about 50 %'],
    [0.13, 'about 15 %'],
    [0.031, 'about 3 %'],
    [0.004, 'under 1 %']
  ])('%f', (probability, text) => {
    expect(probabilityText(probability)).toBe(text);
  });
});

const distance: Estimate = { name: 'distance_m', value: 31.3, low: 28.2, high: 34.1 };

const cause = (...faults: Fault[]): RankedCause => ({
  faults,
  probability: 1,
  evidence: [],
  predicted: [],
  remedy: { key: 'remedy.open', values: {} }
});
const fault = (kind: Fault['kind'], subject: string | null = null, estimates: Estimate[] = []): Fault => ({
  kind,
  subject,
  estimates
});

const estimateText = (estimate: Estimate, system: UnitSystem): string =>
  causeEstimates(cause(fault('short in lead-in', null, [estimate])), system).join('; ');

describe('an estimate', () => {
  test('has no more digits than its interval leaves', () => {
    expect(estimateText(distance, 'metric')).toBe('about 31 m from the cabinet (28 – 34 m)');
  });
  test('in feet: 31.3 m are 102.7 ft', () => {
    expect(estimateText(distance, 'imperial')).toBe('about 103 ft from the cabinet (93 – 112 ft)');
  });
  test('that starts at the cabinet does not start at a billionth of a metre', () => {
    expect(lengthAbout(9e-12, 18, 'metric')).toBe('0 m');
  });
  test('of turns counts them', () => {
    expect(estimateText({ name: 'shortedTurns', value: 1, low: 1, high: 1 }, 'metric')).toBe(
      '1 turn shorted'
    );
    expect(estimateText({ name: 'shortedTurns', value: 2, low: 1, high: 3 }, 'metric')).toBe(
      'about 2 turns shorted (1 – 3)'
    );
  });
  test('of a depth is in centimetres', () => {
    expect(estimateText({ name: 'depth_m', value: 0.1164, low: 0.0775, high: 0.182 }, 'metric')).toBe(
      // as it is reckoned: from the road down, not from the wires
      'about 12 cm below the road (7.8 – 18 cm)'
    );
  });
  test('of a contact is in ohms, as a meter shows it', () => {
    expect(estimateText({ name: 'resistance_ohm', value: 0.047, low: 0.012, high: 0.179 }, 'metric')).toBe(
      'with about 0.05 Ω of contact resistance (0.01 – 0.2 Ω)'
    );
  });
});

describe('a cause in words', () => {
  test('tells each of its unknowns in a line, a bridge of water as what it is', () => {
    const leak: Estimate = { name: 'leakage_ohm', value: 40e3, low: 20e3, high: 90e3 };
    const bridge: Estimate = { name: 'resistance_ohm', value: 600, low: 500, high: 900 };
    expect(causeEstimates(cause(fault('wet splice', null, [leak, bridge])), 'metric')).toEqual([
      expect.stringMatching(/^leaking through about/),
      expect.stringMatching(/^with about .* across the conductors/)
    ]);
  });
  test('names the loop that it is about', () => {
    expect(causeName(site, cause(fault('reversed loop', 'L1')))).toBe('A loop reversed: Left');
  });
  test('tells two at once', () => {
    const text = causeName(site, cause(fault('wet splice'), fault('missing loop', 'L1')));
    expect(text).toBe('Water in a splice, and at the same time a loop left out: Left');
  });
  test('nothing wrong is an ordinary one', () => {
    expect(causeName(site, cause(fault('nothing wrong')))).toBe(
      'Nothing wrong: within what this design allows'
    );
  });
});

test('evidence stands on its side, the strongest first, and what says nothing is left out', () => {
  const told = { key: 'x', values: {} };
  const at = (weight: number, figure: number | null = 0) => ({ weight, figure, told });
  const { pro, contra } = sides([at(1), at(-2), at(4), at(0.01), at(0, null)]);
  expect(pro.map(({ weight }) => weight)).toEqual([4, 1, 0]);
  expect(contra.map(({ weight }) => weight)).toEqual([-2]);
  expect([4, -1.5, 0.3].map(strengthText)).toEqual(['strongly', 'clearly', 'slightly']);
});
