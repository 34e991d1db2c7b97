import { describe, expect, it } from 'vitest';
import { leadIn, leadOut } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import type { Drawing, LineDrawing } from '#scenes/drawing';
import { loopsScene } from '#scenes/loops';
import { LIGHT } from '#scenes/theme';
import { siteWith, square } from '../editor/sites';

/** 50 pixels a metre, the plan's origin at (500, 400). */
const view = { centre: [0, 0], scale: 50, width: 1000, height: 800 } as const;

const site = siteWith({
  shapes: [square(0, 0), square(-4, 0)],
  marks: [
    { id: 'm1', kind: 'pull-box', points: [[6, 1]] },
    { id: 'm2', kind: 'cabinet', points: [[6, 5]] }
  ]
});

const waysIn = (drawn: Site): LineDrawing[] =>
  loopsScene(drawn, new Map(), view, LIGHT).filter(
    (drawing: Drawing): drawing is LineDrawing =>
      drawing.kind === 'line' && drawing.stroke?.colour === LIGHT.tail
  );

describe('ways on the plan', () => {
  it('run through their points', () => {
    const led = leadOut(site, 'L1');
    const loops = led.loops.map((loop) =>
      loop.tail.route
        ? { ...loop, tail: { ...loop.tail, route: { ...loop.tail.route, via: [[3, 3]] as const } } }
        : loop
    );
    const [first] = waysIn({ ...led, loops });
    expect(first?.points).toEqual([[550, 350], [650, 250], [800, 350]]); // prettier-ignore
  });

  it('show a lead-in that is drawn, once for circuits that share it, and none that is typed', () => {
    expect(waysIn(site)).toHaveLength(2);
    const one = leadIn(site, 'C1');
    expect(waysIn(one)).toHaveLength(3);
    expect(waysIn(one)[0]?.points).toEqual([[800, 350], [800, 150]]); // prettier-ignore
    expect(waysIn(leadIn(one, 'C2'))).toHaveLength(3);
  });
});
