import { describe, expect, it } from 'vitest';
import { createHands, LONG_PRESS, TREMBLE, type Contact } from '#canvas/input/hands';
import { pannedBy, screenToPlan, zoomedAbout } from '#editor/viewport';
import type { Point } from '#plan/schema';

/** Hands over a surface that writes down what they do; a clock that is turned by hand. */
function surface({ penDraws = true, space = false } = {}) {
  const done: string[] = [];
  let timers: { readonly at: number; readonly callback: () => void }[] = [];
  let now = 0;
  let view = { centre: [0, 0] as Point, scale: 40, width: 800, height: 600 };
  const hands = createHands(
    {
      send: (type, { at }) => done.push(`${type} ${at.join(',')}`),
      pan: (dx, dy) => {
        view = { ...view, ...pannedBy(view, dx, dy) };
        done.push(`pan ${dx},${dy}`);
      },
      zoom: (factor, about) => {
        view = { ...view, ...zoomedAbout(view, factor, about) };
        done.push('zoom');
      },
      panning: (active) => done.push(active ? 'holds the view' : 'lets the view go'),
      menu: (at) => done.push(`menu ${at.join(',')}`),
      after(delay, callback) {
        const timer = { at: now + delay, callback };
        timers.push(timer);
        return () => {
          timers = timers.filter((each) => each !== timer);
        };
      }
    },
    { isSpaceHeld: () => space, penDraws: () => penDraws }
  );
  return {
    hands,
    /** What was done since it was last asked. */
    done: () => done.splice(0),
    pass: (milliseconds: number) => {
      now += milliseconds;
      const due = timers.filter(({ at }) => at <= now);
      timers = timers.filter(({ at }) => at > now);
      for (const { callback } of due) callback();
    },
    planAt: (place: Point) => screenToPlan(view, place)
  };
}

const finger = (id: number, ...at: [number, number]): Contact => ({ id, kind: 'touch', at });
const pen = (...at: [number, number]): Contact => ({ id: 90, kind: 'pen', at });
const mouse = (...at: [number, number]): Contact => ({ id: 1, kind: 'mouse', at });

describe('a mouse', () => {
  it('points, draws, and moves the view with its middle button', () => {
    const { hands, done } = surface();
    hands.move(mouse(5, 5));
    hands.down(mouse(6, 6));
    hands.move(mouse(9, 6));
    hands.up(mouse(9, 6));
    expect(done()).toEqual(['move 5,5', 'down 6,6', 'move 9,6', 'up 9,6']);
    hands.down(mouse(9, 6), true);
    hands.move(mouse(19, 16));
    hands.up(mouse(19, 16));
    expect(done()).toEqual(['holds the view', 'pan 10,10', 'lets the view go']);
  });

  it('moves the view while the space bar is held', () => {
    const { hands, done } = surface({ space: true });
    hands.down(mouse(0, 0));
    hands.move(mouse(3, 4));
    hands.up(mouse(3, 4));
    expect(done()).toEqual(['holds the view', 'pan 3,4', 'lets the view go']);
  });
});

describe('a finger', () => {
  it('taps', () => {
    const { hands, done } = surface();
    hands.down(finger(7, 50, 60));
    hands.move(finger(7, 50 + TREMBLE, 60));
    hands.up(finger(7, 52, 60));
    expect(done()).toEqual(['down 50,60', 'up 52,60']);
  });

  it('drags from where it came down, not from where it was known to drag', () => {
    const { hands, done } = surface();
    hands.down(finger(7, 50, 60));
    hands.move(finger(7, 80, 60));
    hands.up(finger(7, 90, 60));
    expect(done()).toEqual(['down 50,60', 'move 80,60', 'up 90,60']);
  });

  it('that rests asks for the menu, and then does nothing more', () => {
    const { hands, done, pass } = surface();
    hands.down(finger(7, 50, 60));
    pass(LONG_PRESS - 1);
    expect(done()).toEqual([]);
    pass(1);
    hands.move(finger(7, 150, 60));
    hands.up(finger(7, 150, 60));
    expect(done()).toEqual(['menu 50,60']);
  });

  it('that drags never asks for the menu', () => {
    const { hands, done, pass } = surface();
    hands.down(finger(7, 50, 60));
    hands.move(finger(7, 80, 60));
    pass(2 * LONG_PRESS);
    expect(done()).not.toContain('menu 50,60');
  });

  it('that the browser takes away drops what it drew, and a tap that was not one does nothing', () => {
    const { hands, done } = surface();
    hands.down(finger(7, 50, 60));
    hands.move(finger(7, 80, 60));
    hands.cancel(finger(7, 80, 60));
    expect(done()).toEqual(['down 50,60', 'move 80,60', 'cancel 80,60']);
    hands.down(finger(8, 50, 60));
    hands.cancel(finger(8, 50, 60));
    expect(done()).toEqual([]);
  });
});

describe('two fingers', () => {
  it('move and zoom the view without a tool ever hearing of them', () => {
    const { hands, done, planAt } = surface();
    const [a, b] = [planAt([300, 300]), planAt([400, 300])];
    hands.down(finger(7, 300, 300));
    hands.down(finger(8, 400, 300));
    hands.move(finger(8, 600, 300));
    hands.move(finger(7, 200, 300));
    expect(done().filter((each) => !/^(pan|zoom)/.test(each))).toEqual([]);
    for (const [place, point] of [
      [[200, 300], a],
      [[600, 300], b]
    ] as const)
      // prettier-ignore
      for (const k of [0, 1] as const) expect(planAt(place)[k]).toBeCloseTo(point[k], 9);
  });

  it('drop what the first one had begun to draw', () => {
    const { hands, done } = surface();
    hands.down(finger(7, 300, 300));
    hands.move(finger(7, 340, 300));
    hands.down(finger(8, 400, 300));
    expect(done()).toEqual(['down 300,300', 'move 340,300', 'cancel 340,300']);
  });

  it('leave one that rests: it neither draws nor asks for the menu', () => {
    const { hands, done, pass } = surface();
    hands.down(finger(7, 300, 300));
    hands.down(finger(8, 400, 300));
    hands.up(finger(8, 400, 300));
    done();
    hands.move(finger(7, 100, 300));
    pass(LONG_PRESS);
    hands.up(finger(7, 100, 300));
    expect(done()).toEqual([]);
    hands.down(finger(9, 10, 10));
    hands.up(finger(9, 10, 10));
    expect(done()).toEqual(['down 10,10', 'up 10,10']);
  });
});

describe('a pen', () => {
  it('draws at once, and from then on a finger only moves the view', () => {
    const { hands, done } = surface();
    hands.down(pen(10, 10));
    hands.move(pen(11, 10));
    hands.up(pen(11, 10));
    expect(done()).toEqual(['down 10,10', 'move 11,10', 'up 11,10']);
    hands.down(finger(7, 300, 300));
    hands.move(finger(7, 340, 300));
    hands.up(finger(7, 340, 300));
    expect(done()).toEqual(['holds the view', 'pan 40,0', 'lets the view go']);
  });

  it('leaves the fingers their drawing if that is wished', () => {
    const { hands, done } = surface({ penDraws: false });
    hands.down(pen(10, 10));
    hands.up(pen(10, 10));
    hands.down(finger(7, 300, 300));
    hands.move(finger(7, 340, 300));
    expect(done().slice(2)).toEqual(['down 300,300', 'move 340,300']);
  });

  it('is not disturbed by the palm beside it, before or after it came down', () => {
    const { hands, done, pass } = surface();
    hands.down(finger(7, 500, 500));
    hands.down(pen(10, 10));
    hands.down(finger(8, 520, 500));
    hands.move(finger(7, 560, 540));
    hands.move(pen(40, 10));
    hands.move(finger(8, 560, 540));
    pass(2 * LONG_PRESS);
    hands.up(pen(40, 10));
    hands.up(finger(7, 560, 540));
    hands.up(finger(8, 560, 540));
    expect(done()).toEqual(['down 10,10', 'move 40,10', 'up 40,10']);
  });

  it('takes over from a palm that had begun to draw', () => {
    const { hands, done } = surface();
    hands.down(finger(7, 500, 500));
    hands.move(finger(7, 540, 500));
    hands.down(pen(10, 10));
    hands.up(finger(7, 540, 500));
    hands.up(pen(10, 10));
    expect(done()).toEqual(['down 500,500', 'move 540,500', 'cancel 540,500', 'down 10,10', 'up 10,10']);
  });
});
