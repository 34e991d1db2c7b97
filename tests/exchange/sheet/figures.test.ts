import { describe, expect, it } from 'vitest';
import type { Block } from '#exchange/sheet/layout/block';
import { sections } from '#exchange/sheet/parts/section';
import { wiring } from '#exchange/sheet/parts/wiring';
import type { Circuit, Site } from '#plan/schema';
import type { CircleDrawing, Drawing, LineDrawing, TextDrawing } from '#scenes/drawing';
import { extentOf, overlap, textExtent } from './extent';
import { bigSite, sample } from './sites';

const WIDTH = 182;
const HEIGHT = 220;

/** One piece after another, as if the column had no end. */
function drawn(block: Block): Drawing[] {
  let top = 0;
  return block(WIDTH, HEIGHT).pieces.flatMap((piece) => {
    expect(piece.height).toBeLessThanOrEqual(HEIGHT);
    const drawings = piece.draw(0, top);
    top += piece.height;
    return drawings;
  });
}

const texts = (drawings: readonly Drawing[]): TextDrawing[] =>
  drawings.filter((drawing): drawing is TextDrawing => drawing.kind === 'text');
const circles = (drawings: readonly Drawing[]): CircleDrawing[] =>
  drawings.filter((drawing): drawing is CircleDrawing => drawing.kind === 'circle');
const lines = (drawings: readonly Drawing[]): LineDrawing[] =>
  drawings.filter((drawing): drawing is LineDrawing => drawing.kind === 'line');

const withSlots = (depth: number, width: number, turns = 3): Site => {
  const site = bigSite(1);
  return {
    ...site,
    steel: [],
    loops: site.loops.map((loop) => ({ ...loop, turns, slot: { depth, width, relativePermittivity: 4 } }))
  };
};

/** How many millimetres in the road one on paper is. */
function statedRatio(drawings: readonly Drawing[]): number {
  const found = texts(drawings).flatMap(({ text }) => /Scale (\d+):(\d+)$/.exec(text) ?? []);
  return Number(found[2]) / Number(found[1]);
}

describe('a slot in section', () => {
  it.each([
    [0.05, 0.008],
    [0.03, 0.005],
    [0.15, 0.02],
    [0.6, 0.03]
  ])('of %f m by %f m has the scale that is written beside it', (depth, width) => {
    const drawings = drawn(sections(withSlots(depth, width)));
    const ratio = statedRatio(drawings);
    const walls = lines(drawings).find(({ points, fill }) => points.length === 4 && !fill)!;
    const { left, right, top, bottom } = extentOf(walls);
    expect((right - left) * ratio).toBeCloseTo(width * 1000, 6);
    expect((bottom - top) * ratio).toBeCloseTo(depth * 1000, 6);
  });

  it('shows every wire, one on the other from the bottom', () => {
    const drawings = drawn(sections(withSlots(0.05, 0.008, 4)));
    const ratio = statedRatio(drawings);
    const wires = circles(drawings).filter(({ stroke }) => stroke !== undefined);
    expect(wires).toHaveLength(4);
    // 14 AWG in the catalogue: 3.8 mm over its insulation
    for (const { radius } of wires) expect(2 * radius * ratio).toBeCloseTo(3.8, 6);
  });

  it('is drawn once for loops with the same slot', () => {
    const site = bigSite(2);
    const same = { ...site, loops: site.loops.map((loop) => ({ ...loop, shape: site.loops[0]!.shape })) };
    const names = texts(drawn(sections(same))).filter(({ text }) => text.includes('Loop 1'));
    expect(names.map(({ text }) => text)).toEqual(['Loop 1, Loop 2']);
  });

  it('has its steel at its depth, in every sample, and no text on another', () => {
    const site = sample('loading-bay-on-steel.kerfline.json');
    const drawings = drawn(sections(site));
    const ratio = statedRatio(drawings);
    const surface = lines(drawings).find(
      ({ stroke, points }) => stroke?.width === 0.5 && points.length === 2
    )!;
    const solid = circles(drawings).filter(({ stroke }) => stroke === undefined);
    const bar = solid.reduce((thickest, each) => (each.radius > thickest.radius ? each : thickest));
    const deepest = bar.at[1];
    expect((deepest - surface.points[0]![1]) * ratio).toBeCloseTo(site.steel[0]!.depth * 1000, 6);
    const written = texts(drawings);
    for (const [k, one] of written.entries())
      for (const other of written.slice(k + 1))
        expect(overlap(textExtent(one), textExtent(other)), `${one.text} / ${other.text}`).toBe(false);
  });
});

describe('the wiring of a circuit', () => {
  const wired = (strings: Circuit['strings']): Site => {
    const site = bigSite(24);
    return { ...site, circuits: [{ ...site.circuits[0]!, name: 'Approach', strings }] };
  };
  const entry = (k: number, reversed = false) => ({ loop: `L${k}`, reversed });

  it('names unit and channel, cable, turns and tail', () => {
    const written = texts(drawn(wiring(wired([[entry(1), entry(2, true)]])))).map(({ text }) => text);
    for (const text of ['Approach', 'Loop 1', 'Loop 2', '3 turns', 'tail 4.00 m', '31.00 m', 'reversed'])
      expect(written).toContain(text);
    expect(written.some((text) => /, channel 1$/.test(text))).toBe(true);
  });

  it('dots the end where each winding starts', () => {
    const drawings = drawn(wiring(wired([[entry(1), entry(2, true)]])));
    const dots = circles(drawings).filter(({ radius }) => radius === 0.6);
    const names = texts(drawings).filter(({ text }) => /^Loop \d$/.test(text));
    expect(dots).toHaveLength(2);
    // of the reversed one below its name, of the other above
    expect(dots[0]!.at[1]).toBeLessThan(names[0]!.at[1] + 3);
    expect(dots[1]!.at[1]).toBeGreaterThan(names[1]!.at[1] + 3);
  });

  it('is told in words where its diagram would be larger than a page', () => {
    const long = drawn(wiring(wired([Array.from({ length: 24 }, (_, k) => entry(k + 1, k === 3))])));
    const wide = drawn(wiring(wired(Array.from({ length: 24 }, (_, k) => [entry(k + 1)]))));
    for (const drawings of [long, wide]) {
      const text = texts(drawings).map(({ text: each }) => each).join(' '); // prettier-ignore
      for (let k = 1; k <= 24; k++) expect(text).toContain(`Loop ${k}`);
      for (const drawing of drawings) expect(extentOf(drawing).right).toBeLessThanOrEqual(WIDTH + 1e-6);
    }
    expect(texts(long).map(({ text }) => text).join(' ')).toContain('Loop 4 (reversed)'); // prettier-ignore
  });
});
