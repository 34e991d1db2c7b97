/** What a lesson's plan shows is what its figures are of. */
import { afterEach, describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { speakLanguage } from '#i18n/load';
import { sweepTable } from '#ui/compare/sweep/table';
import { readableText } from '#ui/compare/words/variable';
import { curvesOf, experimentAt, nearestTo } from '#ui/lessons/live';
import { vehiclePlaced } from '#ui/lessons/vehicle-place';
import { computed, shelf } from '../../analysis/lessons/shelf';

describe('the plan of a lesson', () => {
  it.each(shelf)('has a drawing for every value of every curve: $file', ({ lesson, site }) => {
    const { values } = lesson.experiment.x;
    const names = curvesOf(lesson, site);
    const drawn = names.map((_, curve) => values.map((_, at) => experimentAt(lesson, site, curve, at)));
    expect(drawn.flat().filter((each) => each === null)).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has a standing vehicle where the computed one stands: a placed one there has the same response', () => {
    const lorry = shelf.find(
      ({ lesson }) =>
        lesson.experiment.figures.some(({ path }) => path === 'standing') &&
        lesson.experiment.x.variable.kind === 'along'
    )!;
    const { lesson, site } = lorry;
    const { picture } = computed(lorry);
    const { values } = lesson.experiment.x;
    const figure = lesson.experiment.figures.findIndex(({ path }) => path === 'standing');
    const assessor = createAssessor();
    for (const wanted of [-4, 0, 3]) {
      const at = nearestTo(values, wanted);
      const placed = vehiclePlaced(lesson, experimentAt(lesson, site, 0, at)!);
      const [circuit] = assessor.assess(placed, 'all').probes[0]!.circuits;
      const swept = picture.figures[figure]!.values[0]![at]!;
      expect(-circuit!.deltaLOverL / swept).toBeCloseTo(1, 6);
    }
  });
});

describe('the marker', () => {
  it('stands on the nearest value, in the middle where nothing is known', () => {
    expect(nearestTo([1, 2, 4, 8], 5)).toBe(2);
    expect(nearestTo([8, 4, 2, 1], 7)).toBe(0);
    expect(nearestTo([1, 2, 3], null)).toBe(1);
  });
});

describe('a value of a lesson', () => {
  const gap = { kind: 'gap', subject: 'A', other: 'B' } as const;
  const said = (metres: number, displayUnits: 'metric' | 'imperial') =>
    readableText({ ...shelf[0]!.site, displayUnits }, gap, metres).replaceAll('\u00a0', ' ');

  it('is read in feet or inches with the round metric length beside it, or as it stands in metres', () => {
    // by the definition of the foot 0.8 m = 2.6247 ft, 0.2 m = 7.8740 in, −9.5 m = −31.168 ft
    expect(said(0.8, 'imperial')).toBe('2.62 ft (0.80 m)');
    expect(said(0.2, 'imperial')).toBe('7.87 in (0.20 m)');
    expect(said(-9.5, 'imperial')).toBe('−31.2 ft (−9.50 m)');
    expect(said(0, 'imperial')).toBe('0 ft (0.00 m)');
    expect(said(0.8, 'metric')).toBe('0.80 m');
  });
});

describe('the numbers of a lesson to take away', () => {
  afterEach(() => speakLanguage('en', ['page', 'views']));

  it.each(['en', 'de'] as const)('call its curves as it calls them itself: %s', async (language) => {
    await speakLanguage(language, ['page', 'views']);
    const one = shelf.find(({ lesson }) => lesson.experiment.designs !== null)!;
    const { lesson, site } = one;
    const names = curvesOf(lesson, site);
    const { columns } = sweepTable(site, computed(one).picture, '', names);
    const heads = columns.slice(1, 1 + names.length).map(({ head }) => head);
    for (const [n, head] of heads.entries()) expect(head.endsWith(`, ${names[n]!}`)).toBe(true);
  });
});
