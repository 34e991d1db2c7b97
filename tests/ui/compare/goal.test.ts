import { afterEach, describe, expect, it } from 'vitest';
import { speakLanguage } from '#i18n/load';
import type { SweepPicture } from '#analysis/sweep/results';
import { addSteel, newSteel } from '#plan/edits/steel';
import type { Site } from '#plan/schema';
import { gridsOf } from '#plan/variables/grid';
import { INCH } from '#units/constants';
import { parseQuantity } from '#units/parse';
import { effortOf, numbersFor, numbersOf, quickestFirst } from '../../../src/ui/compare/goal/goal';
import { foundText, withinText } from '../../../src/ui/compare/goal/words';
import { doubtText } from '../../../src/ui/compare/sweep/chart-words';
import { doubtsByRow } from '../../../src/ui/compare/sweep/curves';
import { sweepTable } from '../../../src/ui/compare/sweep/table';
import { figureName, figureText } from '../../../src/ui/compare/words/figure';
import { unbroken } from '../../../src/ui/compare/words/unbroken';
import {
  changedBy,
  exactText,
  spokenText,
  valueText,
  variableName
} from '../../../src/ui/compare/words/variable';
import { changeOf } from '../../../src/ui/details/commit';
import { bigSite } from '../../support/big-site';

const site = bigSite(2);
const turns = { kind: 'turns', subject: 'L1' } as const;

it('numbers that take little are tried first, each of them once', () => {
  const numbers = numbersOf(site);
  const ordered = quickestFirst(site, numbers);
  const efforts = ordered.map((variable) => effortOf(site, variable));
  expect([...efforts].sort((a, b) => a - b)).toEqual(efforts);
  expect(new Set(ordered)).toEqual(new Set(numbers));
  const at = (kind: string) => ordered.findIndex((variable) => variable.kind === kind);
  // nothing is driven over the loops again, though there are hundreds of thresholds
  expect(at('tripThreshold')).toBeLessThan(at('turns'));
  expect(at('turns')).toBeLessThan(at('leadInLength'));
});

it('of steel that takes too much its depth is tried as well, and of a low threshold it is not', () => {
  const outline = [
    [-5, -5],
    [5, -5],
    [5, 5],
    [-5, 5]
  ] as const;
  const paved = addSteel(site, newSteel(site, outline));
  const finding = { severity: 'caution', subject: 'C1', selects: ['L1'], message: '', advice: '' } as const;
  const kindsFor = (code: string) =>
    numbersFor(paved, numbersOf(paved), { ...finding, code }).map(({ kind }) => kind);
  expect(kindsFor('steel-near')).toContain('steelDepth');
  expect(kindsFor('undetected')).not.toContain('steelDepth');
});

describe('in words', () => {
  afterEach(() => speakLanguage('en', ['page', 'views']));

  it.each([
    ['en', 1, '1\u00a0turn'],
    ['en', 3, '3\u00a0turns'],
    ['de', 1, '1\u00a0Windung'],
    ['de', 3, '3\u00a0Windungen']
  ] as const)('turns are called so: %s %d', async (language, count, wanted) => {
    await speakLanguage(language, ['page', 'views']);
    expect(spokenText(turns, count, valueText(site, turns, count))).toBe(wanted);
  });

  it('a number and its unit are not parted', () => {
    const width = { kind: 'width', subject: 'L1' } as const;
    const metric = { ...site, displayUnits: 'metric' } as const;
    expect(valueText(metric, width, 1.8)).toBe('1.80\u00a0m');
    expect(spokenText(width, 1.8, valueText(metric, width, 1.8))).toBe('1.80\u00a0m');
    const figure = { kind: 'response', subject: 'C1', vehicle: 'car' } as const;
    expect(figureText(metric, figure, 0.49)).toBe('49.0\u00a0%');
    expect(unbroken('It takes 49 % of 85.2 µH in 3 of 4 minutes, 12 metres on.')).toBe(
      'It takes 49\u00a0% of 85.2\u00a0µH in 3 of 4 minutes, 12 metres on.'
    );
  });
});

describe('doubtful points', () => {
  const doubts = doubtsByRow([
    { row: 0, at: 1 },
    { row: 1, at: 1 },
    { row: 1, at: 2 }
  ]);

  it('are told by curve where only some are', () => {
    expect([0, 1, 2].map((at) => doubtText(doubts, ['three', 'four'], at))).toEqual(['', 'yes', 'four']);
    expect([0, 1].map((at) => doubtText(doubts, [''], at))).toEqual(['', 'yes']);
  });

  it('are told in the file, with plain spaces', () => {
    const width = { kind: 'width', subject: 'L1' } as const;
    const picture: SweepPicture = {
      x: { variable: turns, values: [2, 3] },
      family: { variable: width, values: [1, 2] },
      ...{ designs: null, present: { x: 3, family: 1 } },
      figures: [{ figure: { kind: 'q', subject: 'C1' }, values: [[1, 2], [3, 4]], present: 2, limits: [] }], // prettier-ignore
      doubtful: [{ row: 1, at: 0 }]
    };
    const { columns, rows } = sweepTable({ ...site, displayUnits: 'metric' }, picture, '');
    expect(columns.map(({ head }) => head).join()).not.toContain('\u00a0');
    expect(rows.map((row) => row.at(-1))).toEqual(['2.00 m', null]);
  });
});

describe('names', () => {
  afterEach(() => speakLanguage('en', ['page', 'views']));
  const named: Site = {
    ...site,
    loops: site.loops.map((loop, k) => ({
      ...loop,
      id: k === 0 ? 'C1' : loop.id,
      name: ['Entry', 'Exit'][k]!
    })),
    circuits: site.circuits.map((circuit) => ({ ...circuit, name: `Circuit ${circuit.id}` })),
    steel: [{ id: 'C1', kind: 'mat', depth: 0.1, pitch: 0.2, barRadius: 0.005, outline: [[0, 0], [1, 0], [1, 1]] }] // prettier-ignore
  };
  const gap = { kind: 'gap', subject: 'C1', other: 'L2' } as const;

  it('are those of what the number or the result is of, where a loop, a circuit and steel have one id', () => {
    expect(variableName(named, { kind: 'turns', subject: 'C1' })).toBe('Turns of Entry');
    expect(variableName(named, { kind: 'leadInLength', subject: 'C1' })).toBe('Lead-in length of Circuit C1');
    expect(variableName(named, { kind: 'steelDepth', subject: 'C1' })).not.toContain('Entry');
    expect(figureName(named, { kind: 'cover', subject: 'C1' })).toBe('Entry: Cover over the wires');
    expect(figureName(named, { kind: 'q', subject: 'C1' })).toBe('Circuit C1: Q');
  });

  it.each([
    ['en', 'Gap between Entry and Exit', 'Change gap of Entry and Exit'],
    ['de', 'Abstand zwischen Entry und Exit', 'Entry und Exit: Abstand ändern']
  ] as const)('of a gap have both loops: %s', async (language, wanted, step) => {
    await speakLanguage(language, ['page', 'views']);
    expect(variableName(named, gap)).toBe(wanted);
    expect(changeOf(changedBy(named, gap))()).toBe(step);
  });
});

it('how exact a temperature is, is a difference and no temperature', () => {
  const found = { kind: 'found', from: 20, to: 12.5, within: 0.5, brings: [], clears: [], tried: 9 } as const;
  const within = (displayUnits: Site['displayUnits'], kind: 'temperature' | 'width'): string =>
    withinText({ ...site, displayUnits }, { kind, subject: kind === 'width' ? 'L1' : null }, found);
  expect(within('metric', 'temperature')).toBe('To within 0.5\u00a0°C.');
  // nine fifths of it
  expect(within('imperial', 'temperature')).toBe('To within 0.9\u00a0°F.');
  expect(within('metric', 'width')).toBe('To within 0.50\u00a0m.');
});

describe('what is found', () => {
  afterEach(() => speakLanguage('en', ['page', 'views']));
  const cases = [
    ['metric', 'tripThreshold', 'ratio', 0.05678, '5.678 %'],
    ['metric', 'measuringTime', 'time', 0.01235, '12.35 ms'],
    ['metric', 'width', 'length', 1.835, '1.835 m'],
    ['imperial', 'width', 'length', 74.625 * 0.0254, `6'-2 5/8"`],
    // so near to an eighth of an inch that a length is shown as one
    ['imperial', 'width', 'length', 36.126 * 0.0254, '36.126 in'],
    ['imperial', 'slotDepth', 'smallLength', 1.46 * 0.0254, '1.46 in'],
    ['imperial', 'slotWidth', 'smallLength', 0.1565 * 0.0254, '0.1565 in'],
    ['imperial', 'temperature', 'temperature', 12.5, '54.5 °F']
  ] as const;

  it.each(['en', 'de'] as const)('is told to the last digit that is applied: %s', async (language) => {
    await speakLanguage(language, ['page', 'views']);
    for (const [displayUnits, kind, quantity, to, text] of cases) {
      const variable = { kind, subject: kind === 'temperature' ? null : 'L1' };
      const found = { kind: 'found', from: to / 2, to, within: 0, brings: [], clears: [], tried: 9 } as const;
      const told = foundText({ ...site, displayUnits }, variable, found).replaceAll('\u00a0', ' ');
      const said = language === 'de' ? text.replace('.', ',') : text;
      expect(told).toContain(`: ${said} `);
      const read = parseQuantity(said, quantity, displayUnits);
      expect(read.ok && read.value).toBeCloseTo(to, 12);
    }
  });

  it('is a round value, of which feet and inches show all', () => {
    const width = { kind: 'width', subject: 'L1' } as const;
    const shown = { ...site, displayUnits: 'imperial' } as const;
    const steps = gridsOf(width, 'imperial', 0.2 * INCH);
    expect(steps.map(({ step }) => step / INCH)).toEqual([1 / 8, 1 / 16, 0.005]);
    for (const grid of steps)
      for (let place = 1; place < 2500; place += 7) {
        const value = grid.valueAt(place);
        expect(grid.placeOf(value)).toBeCloseTo(place, 6);
        expect(exactText(shown, width, value)).toBe(valueText(shown, width, value));
      }
  });
});
