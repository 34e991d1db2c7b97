import { describe, expect, it } from 'vitest';
import type { FieldPicture, FieldWish } from '#analysis/field-picture/results';
import { FieldRefiner, type PlaneWish, type Refined } from '#ui/compare/field/refining-field';
import { pictureOf, SECTION } from './pictures';

const CAR = { vehicle: 'car', at: [1, 4], heading: 90 } as const;
const WISH: PlaneWish = { source: { kind: 'loop', id: 'L1' }, plane: SECTION, vehicle: CAR };

type Answer = { kind: 'answer'; answer: FieldPicture | null } | { kind: 'superseded' };

/** Questions stay open until the test answers them. */
function desk() {
  const open: { readonly wish: FieldWish; readonly end: (answer: Answer) => void }[] = [];
  const asked: FieldWish[] = [];
  let state: Refined = { shown: null, reason: null, isBusy: false };
  const refiner = new FieldRefiner(
    {
      ask: (wish) =>
        new Promise((end) => {
          asked.push(wish);
          open.push({ wish, end });
        }),
      drop: () => open.shift()?.end({ kind: 'superseded' })
    },
    (next) => {
      state = next;
    }
  );
  const refining = {
    want: (wish: PlaneWish, drawing: string) => {
      refiner.want(wish, drawing);
    },
    stop: () => {
      refiner.stop();
    },
    get shown() {
      return state.shown;
    },
    get isBusy() {
      return state.isBusy;
    }
  };
  const settle = () => new Promise((done) => setTimeout(done));
  return {
    asked,
    refining,
    settle,
    answer: async (picture: FieldPicture | null = null) => {
      const next = open.shift()!;
      const net = { columns: next.wish.columns, rows: next.wish.rows };
      next.end({ kind: 'answer', answer: picture ?? pictureOf(() => [0, 1e-6, 0], {}, net) });
      await settle();
    }
  };
}

describe('a field in goes', () => {
  it('is coarse, then without the vehicle, then fine', async () => {
    const { asked, refining, answer } = desk();
    refining.want(WISH, 'drawing');
    await answer();
    expect(refining.shown).toMatchObject({ isFine: false, pair: null });
    await answer();
    expect(refining.shown!.pair).not.toBeNull();
    await answer();
    expect(refining.shown!.isFine).toBe(true);
    expect(refining.isBusy).toBe(false);
    expect(asked.map(({ vehicle }) => vehicle?.vehicle ?? null)).toEqual(['car', null, 'car']);
    expect(asked[2]!.columns).toBeGreaterThan(1.8 * asked[0]!.columns);
    expect(asked[1]!.lines).toBe(0);
  });

  it('asks once for the field without a vehicle while only the vehicle moves', async () => {
    const { asked, refining, answer } = desk();
    refining.want(WISH, 'drawing');
    for (let k = 0; k < 3; k++) await answer();
    refining.want({ ...WISH, vehicle: { ...CAR, at: [2, 4] } }, 'drawing');
    await answer();
    expect(refining.shown).toMatchObject({ isFine: false });
    expect(refining.shown!.pair).not.toBeNull();
    await answer();
    expect(asked.filter(({ vehicle }) => vehicle === null)).toHaveLength(1);
    refining.want(WISH, 'another drawing');
    await answer();
    await answer();
    expect(asked.filter(({ vehicle }) => vehicle === null)).toHaveLength(2);
  });

  it('gives up a fine picture for a newer wish, and keeps only the newest that waits', async () => {
    const { asked, refining, answer, settle } = desk();
    const bare = { ...WISH, vehicle: null };
    refining.want(bare, 'first');
    await answer();
    expect(asked).toHaveLength(2);
    refining.want(bare, 'second');
    await settle();
    // the fine one was dropped; the second is being asked while two more come
    refining.want(bare, 'third');
    refining.want({ ...bare, source: { kind: 'circuit', id: 'C1' } }, 'fourth');
    await answer();
    expect(asked.map(({ source }) => source.id)).toEqual(['L1', 'L1', 'L1', 'C1']);
  });

  it('shows nothing where there is nothing, and nothing after it was stopped', async () => {
    const { refining, answer, settle } = desk();
    refining.want(WISH, 'drawing');
    await answer();
    refining.stop();
    await settle();
    expect(refining.shown).toBeNull();
    expect(refining.isBusy).toBe(false);
  });
});
