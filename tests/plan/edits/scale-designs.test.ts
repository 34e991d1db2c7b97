/** A picture scaled with what is drawn on it: the designs that are kept were drawn on it too. */
import { expect, test } from 'vitest';
import {
  addUnderlay,
  designsOn,
  keepVariant,
  newUnderlay,
  removeThings,
  scaleUnderlay,
  switchTo,
  updateLoop
} from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Shape, Site } from '#plan/schema';
import { underlayOutline } from '#plan/underlays';
import { isKept, variantOf } from '#plan/variants';
import { openEditor } from '../../editor/hand';
import { siteWith, square } from '../../editor/sites';

const SPAN = { from: [0, 0], to: [640, 0], distance_m: 48 } as const;

/**
 * A picture 32 m wide, which shall be 48 m, with two loops on it and one beside it; as drawn in V1, with another length of the
 * second loop in V2, which is in hand.
 */
function twoDesigns(): Site {
  const base = siteWith({ shapes: [square(0, 0), square(3, 0), square(60, 60)] });
  const picture = { mediaType: 'image/png', data: 'iVBORw0KGgo=', width: 640, height: 480 } as const;
  const under = addUnderlay(
    base,
    newUnderlay(base, { name: 'Photo', picture, at: [0, 0], metresPerPixel: 0.05 })
  );
  const first = keepVariant(under, 'Square');
  const shape: Shape = { ...first.loops[1]!.shape, kind: 'rectangle', length: 4 } as Shape;
  return keepVariant(updateLoop(first, 'L2', { shape }), 'Long');
}

const pictureOf = (site: Site): string => site.underlays[0]!.id;
const scaled = (site: Site): Site => scaleUnderlay(site, pictureOf(site), SPAN, true);
const sidesOf = (shapes: Site['loops']) =>
  shapes.map(({ shape }) => ('length' in shape ? [shape.width, shape.length] : []));
const keptSides = (site: Site, id: string) => sidesOf(variantOf(site, id)!.design.loops);

test('the kept designs are scaled with the picture, and the one in hand is still the one that was kept', () => {
  const site = twoDesigns();
  expect(designsOn(site, underlayOutline(site.underlays[0]!))).toBe(2);
  const next = scaled(site);
  expect(keptSides(next, 'V1')).toEqual([[3, 3], [3, 3], [2, 2]]); // prettier-ignore
  expect(keptSides(next, 'V2')).toEqual([[3, 3], [3, 6], [2, 2]]); // prettier-ignore
  expect(isKept(next)).toBe(true);
  // what was drawn first and scaled then is what was scaled first and drawn then
  const switched = switchTo(next, 'V1', 'Now');
  expect(sidesOf(switched.loops)).toEqual(sidesOf(scaled(switchTo(site, 'V1', 'Now')).loops));
  expect(readSite(writeSite(next)).ok).toBe(true);
});

test('it is one step, and undo brings every design back to the byte', () => {
  const { editor } = openEditor(twoDesigns());
  const before = writeSite(editor.state.site);
  editor.commit({ label: 'Scale', site: scaled(editor.state.site), selection: [] });
  expect(writeSite(editor.state.site)).not.toBe(before);
  editor.undo();
  expect(writeSite(editor.state.site)).toBe(before);
});

test('a picture scaled alone moves no design, and one with nothing of it on the picture stays the same object', () => {
  const site = twoDesigns();
  expect(scaleUnderlay(site, pictureOf(site), SPAN).variants).toBe(site.variants);
  const bare = keepVariant(
    removeThings(site, [
      { kind: 'loop', id: 'L1' },
      { kind: 'loop', id: 'L2' }
    ]),
    'Bare'
  );
  const next = scaled(bare);
  expect(designsOn(bare, underlayOutline(bare.underlays[0]!))).toBe(2);
  expect(next.loops).toBe(bare.loops);
  expect(variantOf(next, 'V3')).toBe(variantOf(bare, 'V3'));
  expect(keptSides(next, 'V2')).toEqual([[3, 3], [3, 6], [2, 2]]); // prettier-ignore
});

test('fields that nobody knows stay in a scaled design', () => {
  const site = twoDesigns();
  const [first, ...others] = site.variants!;
  const later = { ...first!, design: { ...first!.design, later: 'x' } };
  const next = scaled({ ...site, variants: [later, ...others] });
  expect(variantOf(next, 'V1')!.design).toMatchObject({ later: 'x' });
});

test('all or nothing: a kept design that would leave its bounds refuses the whole', () => {
  const site = twoDesigns();
  const [first, ...others] = site.variants!;
  const asWideAs = (width: number): Site => {
    const loops = first!.design.loops.map((loop, index) =>
      index === 0 ? { ...loop, shape: { ...loop.shape, width } as Shape } : loop
    );
    return { ...site, variants: [{ ...first!, design: { ...first!.design, loops } }, ...others] };
  };
  // a side is 500 m at most
  const tooWide = asWideAs(400);
  expect(scaled(tooWide)).toBe(tooWide);
  expect(keptSides(scaled(asWideAs(300)), 'V1')[0]).toEqual([450, 3]);
});
