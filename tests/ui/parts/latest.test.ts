import { describe, expect, it } from 'vitest';
import type { BeatSimulation, SimulationWish } from '#analysis/beat-simulation/simulation';
import type { Outcome } from '#ui/bench';
import { Latest } from '#ui/parts/latest.svelte.ts';

const wish = (extraDistance_m: number): SimulationWish => ({
  circuits: null,
  extraDistance_m,
  separation_Hz: null,
  measuringTime_s: null
});
const answerTo = (asked: SimulationWish): Outcome<'simulate-beat'> => ({
  kind: 'answer',
  answer: { wish: asked } as BeatSimulation
});

/** Answers when it is told to. */
const held = () => {
  const asked: SimulationWish[] = [];
  let settle: (outcome: Outcome<'simulate-beat'>) => void = () => {};
  const latest = new Latest<'simulate-beat'>((each) => {
    asked.push(each);
    return new Promise((resolve) => {
      settle = resolve;
    });
  });
  const give = async (outcome: Outcome<'simulate-beat'>): Promise<void> => {
    settle(outcome);
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { asked, latest, give };
};

describe('simulations one after the other', () => {
  it('are asked for one at a time, and of those that wait only the newest', async () => {
    const { asked, latest, give } = held();
    for (const distance of [1, 2, 3, 4]) latest.want(wish(distance));
    expect(asked.map((each) => each.extraDistance_m)).toEqual([1]);
    await give(answerTo(wish(1)));
    expect(asked.map((each) => each.extraDistance_m)).toEqual([1, 4]);
    await give(answerTo(wish(4)));
    expect(asked).toHaveLength(2);
    latest.want(wish(5));
    expect(asked).toHaveLength(3);
  });

  it('show the last one until the next is there', async () => {
    const { latest, give } = held();
    expect([latest.answer, latest.state]).toEqual([null, 'asking']);
    latest.want(wish(1));
    await give(answerTo(wish(1)));
    latest.want(wish(2));
    expect(latest.isBusy).toBe(true);
    expect(latest.answer?.wish.extraDistance_m).toBe(1);
    await give({ kind: 'superseded' });
    expect([latest.answer?.wish.extraDistance_m, latest.state]).toEqual([1, 'there']);
    expect(latest.isBusy).toBe(false);
  });

  it('say what went wrong, and recover from it', async () => {
    const { latest, give } = held();
    latest.want(wish(1));
    await give({ kind: 'failed', reason: 'it broke' });
    expect(latest.state).toEqual({ reason: 'it broke' });
    latest.want(wish(2));
    await give({ kind: 'answer', answer: null });
    expect([latest.answer, latest.state]).toEqual([null, 'none']);
    latest.want(wish(3));
    await give(answerTo(wish(3)));
    expect(latest.state).toBe('there');
  });

  it('end when nobody looks any more', async () => {
    const { asked, latest, give } = held();
    latest.want(wish(1));
    latest.want(wish(2));
    latest.drop();
    await give(answerTo(wish(1)));
    expect(asked).toHaveLength(1);
  });
});
