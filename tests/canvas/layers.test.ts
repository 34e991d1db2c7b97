import { describe, expect, it } from 'vitest';
import type { Frame } from '#scenes/frame';
import { layers } from '#canvas/layers/index';
import { hasChanged } from '#canvas/layers/layer';
import type { Editor } from '#editor/types';
import { handOf } from '../editor/hand';
import { manyLoops, siteWith, square } from '../editor/sites';
import { editorOf, frameOf } from '../scenes/frames';

/** As the canvas holds what comes from outside: the same objects until they are replaced. */
const OUTSIDE = { figures: new Map(), severities: new Map(), calls: new Map(), pictures: new Map() };

/** Names of the layers that would be drawn again after the deed. */
function redrawn(editor: Editor, deed: () => void, outside: Partial<Frame> = {}): string[] {
  const before = layers.map((layer) => layer.dependsOn(frameOf(editor, OUTSIDE)));
  deed();
  const after = frameOf(editor, { ...OUTSIDE, ...outside });
  return layers
    .filter((layer, index) => hasChanged(before[index]!, layer.dependsOn(after)))
    .map(({ name }) => name);
}

const nothing = () => undefined;

describe('layers', () => {
  it('are five at most: the canvas library warns of more', () => {
    expect(layers.length).toBeLessThanOrEqual(5);
  });

  it('are drawn again only where something changed', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0)], probes: [{ vehicle: 'car', at: [6, 0] }] }));
    const hand = handOf(editor);
    expect(redrawn(editor, () => hand.hover([0, 0]))).toEqual(['overlay']);
    expect(redrawn(editor, () => hand.click([0, 0]))).toEqual(['overlay']);
    expect(redrawn(editor, () => hand.hold([0, 0], [1, 1]))).toEqual(['loops', 'overlay']);
    editor.cancel();
    expect(redrawn(editor, () => hand.hold([6, 0], [7, 1]))).toEqual(['vehicles', 'overlay']);
    editor.cancel();
    expect(redrawn(editor, () => editor.pan(5, 5))).toEqual(['ground', 'loops', 'vehicles', 'overlay']);
    expect(redrawn(editor, nothing, { calls: new Map([['L1', { ratio: 1 }]]) })).toEqual([
      'loops',
      'overlay'
    ]);
    expect(redrawn(editor, nothing, { figures: new Map([['L1', '70 µH']]) })).toEqual(['overlay']);
    const pointed = { a: 'C1', b: 'C2', verdict: 'watch' } as const;
    expect(redrawn(editor, nothing, { pointed })).toEqual(['overlay']);
    const map = { contours: [], isPreliminary: false };
    expect(redrawn(editor, nothing, { map })).toEqual(['ground', 'overlay']);
    expect(redrawn(editor, nothing)).toEqual([]);
  });

  it('draw finite numbers only, at any zoom', () => {
    for (const scale of [0.01, 1, 50, 5_000]) {
      const frame = frameOf(editorOf(manyLoops(), scale), { calls: new Map([['L1', { ratio: 3 }]]) });
      for (const layer of layers)
        for (const drawing of layer.draw(frame)) {
          const points =
            drawing.kind === 'line'
              ? drawing.points
              : drawing.kind === 'rings'
                ? drawing.rings.flat()
                : [drawing.at];
          expect(points.flat().every(Number.isFinite)).toBe(true);
        }
    }
  });
});
