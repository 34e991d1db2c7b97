import { describe, expect, it } from 'vitest';
import type { Drawing, LineDrawing } from '#scenes/drawing';
import type { Moment } from '#scenes/frame';
import { layers } from '#canvas/layers/index';
import { hasChanged } from '#canvas/layers/layer';
import { outputsScene, trafficScene } from '#scenes/traffic';
import { vehiclesScene } from '#scenes/vehicles';
import { LIGHT } from '#scenes/theme';
import { siteWith, square } from '../editor/sites';
import { editorOf, frameOf } from './frames';

const lines = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is LineDrawing => each.kind === 'line');

const SITE = siteWith({ shapes: [square(0, 0), square(4, 0)], probes: [{ vehicle: 'car', at: [6, 0] }] });
const EDITOR = editorOf(SITE);
const VIEW = EDITOR.state.viewport;
const EMPTY: Moment = { vehicles: [], outputs: new Map(), signals: [] };
const moment = (more: Partial<Moment>): Moment => ({ ...EMPTY, ...more });
const names = (before: Moment | null, after: Moment | null) => {
  const outside = { figures: new Map(), severities: new Map(), calls: new Map() };
  const old = frameOf(EDITOR, { ...outside, moment: before });
  const next = frameOf(EDITOR, { ...outside, moment: after });
  return layers
    .filter((layer) => hasChanged(layer.dependsOn(old), layer.dependsOn(next)))
    .map(({ name }) => name);
};
const drawn = (name: string, at: Moment | null) => {
  const frame = frameOf(EDITOR, { moment: at, calls: new Map([['L1', { ratio: 3 }]]) });
  return layers.find((layer) => layer.name === name)!.draw(frame);
};

describe('vehicles of the moment', () => {
  it('look like vehicles that stand there, and are drawn in their place', () => {
    const at = moment({ vehicles: [{ vehicle: 'van', at: [1, 2], heading: 45 }] });
    const standing = vehiclesScene({ ...SITE, probes: at.vehicles }, VIEW, LIGHT);
    expect(standing.length).toBeGreaterThan(1);
    expect(drawn('vehicles', at)).toEqual(standing);
    expect(drawn('vehicles', null)).toEqual(vehiclesScene(SITE, VIEW, LIGHT));
  });

  it('cost a redraw of their own layer only, while the outputs stay the same object', () => {
    const outputs = new Map([['C1', 'on']] as const);
    const first = moment({ vehicles: [{ vehicle: 'car', at: [0, 0], heading: 90 }], outputs });
    const second = moment({ vehicles: [{ vehicle: 'car', at: [0, 1], heading: 90 }], outputs });
    expect(names(first, second)).toEqual(['vehicles']);
    expect(names(first, moment({ outputs: new Map() }))).toEqual(['loops', 'vehicles']);
    expect(names(null, first)).toEqual(['loops', 'vehicles', 'overlay']);
  });
});

describe('a signal at its stop line', () => {
  // across a lane that runs up the plan: left edge to right edge
  const signal = (isGreen: boolean) =>
    trafficScene(moment({ signals: [{ from: [-2, 1], to: [2, 1], isGreen }] }), SITE, VIEW, LIGHT);

  it('lies across the lane', () => {
    for (const isGreen of [true, false])
      expect(lines(signal(isGreen))[0]?.points).toEqual([[400, 350], [600, 350]]); // prettier-ignore
  });

  it('differs in shape, not only in colour', () => {
    const shapes = (drawings: readonly Drawing[]) =>
      drawings.map((each) => `${each.kind} ${each.kind === 'line' ? each.points.length : ''}`);
    const [red, green] = [signal(false), signal(true)];
    expect(shapes(red)).not.toEqual(shapes(green));
    expect(lines(green)[0]?.stroke?.dash).toBeDefined();
    expect(lines(red)[0]?.stroke?.dash).toBeUndefined();
    expect(lines(red)[0]?.stroke?.colour).not.toBe(lines(green)[0]?.stroke?.colour);
  });

  it('points ahead while it is green', () => {
    const [arrow] = lines(signal(true)).filter(({ fill }) => fill === LIGHT.call);
    const [tip, ...feet] = arrow!.points;
    for (const foot of feet) expect(tip![1]).toBeLessThan(foot[1]);
  });

  it('is left out where it is out of sight', () => {
    const far = moment({ signals: [{ from: [500, 500], to: [504, 500], isGreen: true }] });
    expect(trafficScene(far, SITE, VIEW, LIGHT)).toEqual([]);
  });
});

describe('loops as their outputs have them', () => {
  const [first, second] = SITE.circuits.map(({ id }) => id);

  it('have an outline of their own for a call and for a response without one', () => {
    const outputs = new Map([[first!, 'on'], [second!, 'detecting']] as const); // prettier-ignore
    const [on, detecting] = lines(outputsScene(outputs, SITE, VIEW, LIGHT));
    expect(on?.stroke?.dash).toBeUndefined();
    expect(detecting?.stroke?.dash).toBeDefined();
    expect(on?.fill).toBe(LIGHT.callFill);
    expect(detecting?.fill).toBe(LIGHT.responseFill);
  });

  it('have none while nothing is detected', () => {
    expect(outputsScene(new Map([[first!, 'off']]), SITE, VIEW, LIGHT)).toEqual([]);
  });

  it('take the place of what vehicles on the plan would cause', () => {
    const fills = (drawings: readonly Drawing[]) =>
      lines(drawings).filter(({ fill }) => fill === LIGHT.callFill);
    expect(fills(drawn('loops', null))).toHaveLength(1);
    expect(fills(drawn('loops', EMPTY))).toHaveLength(0);
    const texts = (at: Moment | null) =>
      drawn('overlay', at).flatMap((each) =>
        each.kind === 'text' && each.text.includes('call') ? [each] : []
      );
    expect(texts(null)).toHaveLength(1);
    expect(texts(EMPTY)).toHaveLength(0);
  });
});
