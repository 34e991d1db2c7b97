import { describe, expect, it } from 'vitest';
import type { Drawing } from '#scenes/drawing';
import { layers } from '#canvas/layers/index';
import { paint, type Context } from '#canvas/paint';
import type { PictureState } from '#scenes/pictures';
import { spanScene, underlayLabelsScene, underlaysScene, versionFor } from '#scenes/underlays';
import { LIGHT } from '#scenes/theme';
import { addUnderlay, newUnderlay } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import type { Picture, Site, Underlay } from '#plan/schema';
import { handOf } from '../editor/hand';
import { siteWith } from '../editor/sites';
import { editorOf, frameOf } from './frames';

const picture: Picture = { mediaType: 'image/png', data: 'iVBORw0KGgo=', width: 400, height: 200 };
const scaledBy = { from: [0, 0], to: [400, 0], distance_m: 8 } as const;

function siteOver(patch: Partial<Underlay> = {}, base: Site = emptySite()): Site {
  const made = newUnderlay(base, { name: 'Photo', picture, at: [1, 0], metresPerPixel: 0.02 });
  return addUnderlay(base, { ...made, scaledBy, ...patch });
}

const bitmap = (width: number) => ({ width, height: width / 2 }) as ImageBitmap;
const ready: PictureState = { kind: 'ready', versions: [bitmap(400), bitmap(200), bitmap(100)] };

const framed = (site: Site, state?: PictureState) =>
  frameOf(editorOf(site), { pictures: new Map(state ? [[picture, state]] : []) });
const drawn = (site: Site, state?: PictureState): readonly Drawing[] => underlaysScene(framed(site, state));
const texts = (site: Site, state?: PictureState) =>
  underlayLabelsScene(framed(site, state)).flatMap((drawing) =>
    drawing.kind === 'text' ? [drawing.text] : []
  );

describe('pictures under the plan', () => {
  it('are drawn to scale about their middle, at 50 pixels a metre', () => {
    // One metre to the right of the middle of 1000 × 800 pixels; 400 × 200 pixels of 2 cm are 8 m × 4 m.
    expect(drawn(siteOver({ rotation: 30, opacity: 0.4 }), ready)).toEqual([
      {
        kind: 'image',
        image: bitmap(400),
        at: [550, 400],
        width: 400,
        height: 200,
        rotation: 30,
        opacity: 0.4
      }
    ]);
  });

  it('are not drawn when they are hidden, by themselves or with their layer, or out of sight', () => {
    expect(drawn(siteOver({ hidden: true }), ready)).toEqual([]);
    expect(drawn({ ...siteOver(), layers: { underlay: { hidden: true } } }, ready)).toEqual([]);
    expect(drawn(siteOver({ at: [500, 0] }), ready)).toEqual([]);
  });

  it('say that they are not to scale, are missing or broken, by name', () => {
    expect(texts(siteOver({ scaledBy: undefined }), ready)).toEqual(['Not to scale']);
    expect(texts(siteOver({ picture: null }))).toEqual(['Picture missing: Photo']);
    expect(texts(siteOver(), { kind: 'broken' })).toEqual(['Cannot be shown: Photo']);
    expect(texts(siteOver(), { kind: 'waiting' })).toEqual([]);
  });

  it('take the coarsest version that has a pixel for each one of the screen', () => {
    const versions = [800, 400, 200].map((width) => ({ width }));
    const chosen = [900, 800, 500, 400, 210, 200, 20].map((pixels) => versionFor(versions, pixels)?.width);
    expect(chosen).toEqual([800, 800, 800, 400, 400, 200, 200]);
  });

  it('are seen through the lanes that are traced over them', () => {
    const lanes = siteWith({ lanes: [{ id: 'lane1', centreline: [[0, -9], [0, 9]], width: 3.5 }] }); // prettier-ignore
    const fills = (site: Site) =>
      layers
        .find(({ name }) => name === 'ground')!
        .draw(frameOf(editorOf(site)))
        .flatMap((drawing) => (drawing.kind === 'line' && drawing.fill !== undefined ? [drawing.fill] : []));
    expect(fills(lanes)).toContain(LIGHT.asphalt);
    expect(fills(siteOver({}, lanes))).toContain(LIGHT.asphaltOnPicture);
    expect(fills(siteOver({}, lanes))).not.toContain(LIGHT.asphalt);
    expect(fills(siteOver({ hidden: true }, lanes))).toContain(LIGHT.asphalt);
  });

  it('lie on a canvas of their own that an edit of the drawing leaves alone', () => {
    const editor = editorOf(siteOver());
    const layer = layers[0]!;
    expect(layer.name).toBe('underlay');
    const pictures = new Map();
    const before = layer.dependsOn(frameOf(editor, { pictures }));
    editor.run('insert-rectangle');
    expect(layer.dependsOn(frameOf(editor, { pictures }))).toEqual(before);
  });

  it('show the two points that they are scaled by while that is being done', () => {
    const editor = editorOf(siteOver());
    editor.run('tool-calibrate');
    const hand = handOf(editor);
    hand.click([-1, 0]);
    hand.click([1, 1]);
    const ends = spanScene(frameOf(editor)).flatMap((drawing) =>
      drawing.kind === 'circle' ? [drawing.at] : []
    );
    expect(ends).toEqual([[450, 400], [550, 350]]); // prettier-ignore
    editor.setTool('select');
    expect(spanScene(frameOf(editor))).toEqual([]);
  });

  it('are painted turned about their middle, and leave the brush as it was', () => {
    const calls: string[] = [];
    const context = new Proxy(
      {},
      {
        get:
          (_, name: string) =>
          (...values: unknown[]) => {
            const numbers = values.filter((value) => typeof value === 'number');
            calls.push(`${name}(${numbers.map((value) => Number(value.toFixed(4))).join(' ')})`);
          },
        set: (_, name: string, value) => calls.push(`${name}=${String(value)}`) > 0
      }
    );
    const image = bitmap(400);
    paint(context as unknown as Context, [
      { kind: 'image', image, at: [10, 20], width: 40, height: 20, rotation: 90, opacity: 0.5 }
    ]);
    expect(calls.slice(2)).toEqual([
      'save()',
      'globalAlpha=0.5',
      'translate(10 20)',
      'rotate(-1.5708)',
      'drawImage(-20 -10 40 20)',
      'restore()'
    ]);
  });
});
