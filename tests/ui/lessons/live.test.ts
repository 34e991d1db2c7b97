/** What a lesson's plan shows is what its figures are of. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
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
    readableText({ ...shelf[0]!.site, displayUnits }, gap, metres);

  it('is read in sixteenths of an inch, or as it stands in metres', () => {
    // 0.8 m = 31.496 in by the definition of the inch: 2 ft 7 1/2 in is nearest
    expect(said(0.8, 'imperial')).toBe('2\'-7 1/2"');
    expect(said(0.8, 'metric').replace('\u00a0', ' ')).toBe('0.80 m');
    expect(said(1.5, 'imperial')).toBe('4\'-11 1/16"');
  });
});
