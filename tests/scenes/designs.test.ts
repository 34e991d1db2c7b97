import { describe, expect, it } from 'vitest';
import { designSite } from '#plan/variants';
import { ghostScene, placesOfThing } from '#scenes/designs';
import { LIGHT } from '#scenes/theme';
import { samples } from '../plan/samples';

const { site } = samples.find(({ name }) => name.includes('two-ways'))!;
const first = designSite(site, 'V1')!;
const view = { centre: [0, -5], scale: 40, width: 800, height: 600 } as const;

describe('another design over the plan', () => {
  it('shows a loop by its slot, closed, where the other design has it', () => {
    const [slot] = placesOfThing(first, 'L1');
    if (slot?.kind !== 'line') throw new Error('a rectangle is a line');
    expect(slot.points[0]).toEqual(slot.points.at(-1));
    const ys = slot.points.map(([, y]) => y);
    expect(Math.min(...ys)).toBeCloseTo(-7.2, 9);
    expect(Math.max(...ys)).toBeCloseTo(-1.2, 9);
    expect(placesOfThing(site, 'L1')).toEqual([]);
  });

  it('shows a circuit by its loops, a lane by its middle, a mark where it stands', () => {
    expect(placesOfThing(site, 'C1')).toHaveLength(2);
    expect(placesOfThing(site, 'lane1')).toEqual([{ kind: 'line', points: site.lanes[0]!.centreline }]);
    expect(placesOfThing(site, 'm5')).toEqual([{ kind: 'point', at: [7.5, -3] }]);
  });

  it('is dashed, in a tone that no loop has, and says whose it is', () => {
    const drawn = ghostScene({ name: 'One long rectangle', places: placesOfThing(first, 'L1') }, view, LIGHT);
    const dashed = drawn.filter((each) => each.kind === 'line' && each.stroke?.dash);
    expect(dashed).toHaveLength(1);
    expect(dashed[0]).toMatchObject({ stroke: { colour: LIGHT.mapLine } });
    expect(LIGHT.mapLine).not.toBe(LIGHT.sawCut);
    expect(drawn.at(-1)).toMatchObject({ kind: 'text', text: 'One long rectangle' });
  });

  it('draws nothing where nothing of it is in sight', () => {
    const away = { ...view, centre: [500, 500] } as const;
    expect(ghostScene({ name: 'x', places: placesOfThing(first, 'L1') }, away, LIGHT)).toEqual([]);
  });
});
