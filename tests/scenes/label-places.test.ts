import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeLabels, type Want } from '#scenes/label-places';

const SCREEN = { left: 0, bottom: 0, right: 1000, top: 800 };
const want = (x: number, y: number, side: number, width = 120, height = 32): Want => ({
  thing: { left: x - side / 2, right: x + side / 2, bottom: y - side / 2, top: y + side / 2 },
  width,
  height
});

describe('places of labels', () => {
  it('are inside a thing that is large enough and beside it otherwise, with a leader', () => {
    expect(placeLabels([want(500, 400, 200)], SCREEN)).toEqual([{ at: [500, 400], leader: null }]);
    expect(placeLabels([want(500, 400, 40)], SCREEN)).toEqual([{ at: [592, 400], leader: [520, 400] }]);
  });

  it('move a little towards their thing rather than stick out of the screen', () => {
    // Beside it lie two others, so that it goes above, where 4 of its 32 pixels would be cut off.
    const between = [want(380, 60, 40), want(500, 60, 40), want(620, 60, 40)];
    const [, place] = placeLabels([between[0]!, between[1]!, between[2]!], SCREEN);
    expect(place).toEqual({ at: [500, 16], leader: [500, 40] });
  });

  it('keep clear of what already lies on the screen', () => {
    const bar = { left: 520, right: 700, bottom: 380, top: 420 };
    expect(placeLabels([want(500, 400, 40)], SCREEN, [bar])).toEqual([
      { at: [408, 400], leader: [480, 400] }
    ]);
  });

  it('keep clear of a line, which costs as much as it covers', () => {
    const across = { from: [0, 400], to: [1000, 400], width: 6 } as const;
    expect(placeLabels([want(500, 400, 40)], SCREEN, [across])).toEqual([
      { at: [500, 352], leader: [500, 380] }
    ]);
    // one that does not reach the label takes nothing
    const short = { from: [0, 400], to: [500, 400], width: 6 } as const;
    expect(placeLabels([want(500, 400, 40)], SCREEN, [short])[0]!.at).toEqual([592, 400]);
  });

  it('leave the middle of their thing, or its sides, for lines only if they may', () => {
    const across = { from: [0, 400], to: [1000, 400], width: 6 } as const;
    const neighbours = [want(500, 400, 200), want(500, 220, 100), want(500, 580, 100)];
    const [place] = placeLabels(neighbours, SCREEN, [across], { givesWay: true });
    expect(place!.leader).toBeNull();
    expect(Math.abs(place!.at[1] - 400)).toBe(28);
    const [without] = placeLabels(neighbours, SCREEN, [across]);
    expect(without!.leader === null ? without!.at : null).not.toEqual(place!.at);
    const up = { from: [500, 0], to: [500, 800], width: 6 } as const;
    expect(placeLabels([want(500, 400, 40)], SCREEN, [across, up], { givesWay: true })[0]!.leader).toEqual([
      520, 420
    ]);
    expect(placeLabels([want(500, 400, 40)], SCREEN, [across, up])[0]!.leader).not.toEqual([520, 420]);
  });

  it('turn away from the margin and from other things', () => {
    expect(placeLabels([want(970, 400, 40)], SCREEN)[0]?.at[0]).toBeLessThan(970);
    expect(
      placeLabels([want(400, 400, 40), want(480, 400, 40)], SCREEN).map((place) => place?.at[0])
    ).toEqual([308, 572]);
  });

  it('never cover one another by more than a little', () => {
    const wants = fc.array(
      fc.tuple(
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 0, max: 800 }),
        fc.integer({ min: 16, max: 300 })
      ),
      { maxLength: 30 }
    );
    fc.assert(
      fc.property(wants, (list) => {
        const all = list.map(([x, y, side]) => want(x, y, side));
        const places = placeLabels(all, SCREEN).filter((place) => place !== null);
        for (const [index, { at: a }] of places.entries()) {
          const covered = places.slice(0, index).reduce((sum, { at: b }) => {
            const across = Math.max(0, 120 - Math.abs(a[0] - b[0]));
            const up = Math.max(0, 32 - Math.abs(a[1] - b[1]));
            return sum + across * up;
          }, 0);
          expect(covered).toBeLessThanOrEqual(0.12 * 120 * 32 + 1e-6);
        }
        if (all.length > 0) expect(places.length).toBeGreaterThan(0);
      })
    );
  });
});
