import { describe, expect, it } from 'vitest';
import { planApproach, USUAL_APPROACH } from '#analysis/approach/advance';
import { addAdvanceLoops } from '#plan/edits/index';
import { emptySite } from '#plan/empty';
import type { Site } from '#plan/schema';
import { stopLineOf } from '#plan/stop-line';
import { isPlaced, laneShown, loopsBefore } from '#ui/passing/approach/layout';
import { passageTexts, publishedTexts, summaryOf } from '#ui/passing/approach/words';

const site: Site = {
  ...emptySite('Approach'),
  lanes: [
    { id: 'short', name: 'Short', width: 3.5, centreline: [[8, -200], [8, 0]] }, // prettier-ignore
    { id: 'marked', name: 'Marked', width: 3.5, centreline: [[0, -150], [0, 5]] } // prettier-ignore
  ],
  marks: [{ id: 'm1', kind: 'stop-line', points: [[-1.8, 0], [1.8, 0]] }] // prettier-ignore
};
const plan = planApproach({ ...USUAL_APPROACH, speed: 20, slowSpeed: 16 });
const lane = site.lanes[1]!;

describe('the lane that is set out', () => {
  it('is chosen, selected, or one with a stop line across it', () => {
    expect(laneShown(site, 'short', [])?.id).toBe('short');
    expect(laneShown(site, 'gone', [{ kind: 'lane', id: 'short' }])?.id).toBe('short');
    expect(laneShown(site, null, [])?.id).toBe('marked');
    expect(laneShown({ ...site, marks: [] }, null, [])?.id).toBe('short');
    expect(laneShown({ ...site, lanes: [] }, null, [])).toBeNull();
  });

  it('knows its loops by how far before the line they begin and end', () => {
    const placed = addAdvanceLoops(site, 'marked', [90]);
    const line = stopLineOf(placed, lane);
    expect(loopsBefore(placed, lane, line)).toEqual([
      { id: 'L1', from_m: expect.closeTo(90, 9) as number, to_m: expect.closeTo(88.2, 9) as number }
    ]);
    expect(loopsBefore(placed, site.lanes[0]!, stopLineOf(placed, site.lanes[0]!))).toEqual([]);
  });

  it('has the plan on it once it is placed', () => {
    const line = stopLineOf(site, lane);
    expect(isPlaced(plan, loopsBefore(site, lane, line))).toBe(false);
    const placed = addAdvanceLoops(site, 'marked', plan.distances_m);
    expect(isPlaced(plan, loopsBefore(placed, lane, line))).toBe(true);
    expect(isPlaced({ ...plan, distances_m: [] }, [])).toBe(false);
  });
});

describe('what is said of it', () => {
  it('names the zone and every loop, in the units of the site', () => {
    expect(summaryOf({ displayUnits: 'metric' }, plan)).toMatch(
      /110\.0\u00a0m to 50\.0\u00a0m before the line\. 4 loops/
    );
    expect(summaryOf({ displayUnits: 'imperial' }, plan)).toMatch(/360\.9\u00a0ft to 164\.0\u00a0ft/);
  });

  it('puts the printed figures beside equal ones of our own: the sources that the table names [S]', () => {
    for (const displayUnits of ['metric', 'imperial'] as const) {
      const rows = publishedTexts({ displayUnits });
      expect(rows.map(({ zone }) => zone).filter(([printed]) => printed.text !== '–')).toHaveLength(2);
      for (const [printed, ours] of rows.flatMap(({ zone, yellow, sight }) => [zone, yellow, sight]))
        if (printed.text !== '–') expect(ours).toEqual(printed);
      for (const { published, ours } of passageTexts({ displayUnits })) expect(ours).toBe(published);
    }
    const printed = { text: '285–125\u00a0ft', also: '87–38\u00a0m' };
    expect(publishedTexts({ displayUnits: 'metric' })[2]).toMatchObject({
      speed: { text: '35\u00a0mph', also: '56.3 km/h' },
      zone: [printed, printed]
    });
    expect(publishedTexts({ displayUnits: 'imperial' })[2]?.zone[0]).toEqual({ ...printed, also: null });
  });
});
