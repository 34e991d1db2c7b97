import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptySite, readSite, writeSite } from '#plan/read';
import {
  addUnderlay,
  extractThings,
  insertCopies,
  moveThings,
  newUnderlay,
  removeThings,
  replacePicture,
  rotateThings,
  scaleUnderlay,
  turnUnderlay,
  updateUnderlay
} from '#plan/edits/index';
import { bearing, distance } from '#plan/geometry/points';
import type { Picture, Point, Site, Underlay } from '#plan/schema';
import {
  missingLike,
  picturesUnder,
  pixelOnPlan,
  pixelUnder,
  withPicturesOf,
  withoutPictures
} from '#plan/underlays';
import { siteWith, square } from '../editor/sites';

const picture: Picture = { mediaType: 'image/png', data: 'iVBORw0KGgo=', width: 640, height: 480 };

function siteOver(base: Site, patch: Partial<Underlay> = {}): { site: Site; id: string } {
  const underlay = newUnderlay(base, { name: 'Photo', picture, at: [2, -3], metresPerPixel: 0.05 });
  return { site: addUnderlay(base, { ...underlay, ...patch }), id: underlay.id };
}

const only = (site: Site): Underlay => site.underlays[0]!;

const pixel = fc.tuple(
  fc.double({ min: 0, max: 640, noNaN: true }),
  fc.double({ min: 0, max: 480, noNaN: true })
);
const lying = fc.record({
  at: fc.tuple(
    fc.double({ min: -200, max: 200, noNaN: true }),
    fc.double({ min: -200, max: 200, noNaN: true })
  ),
  rotation: fc.double({ min: -180, max: 180, noNaN: true }),
  metresPerPixel: fc.double({ min: 0.001, max: 1, noNaN: true })
});
const span = fc
  .record({ from: pixel, to: pixel, distance_m: fc.double({ min: 0.5, max: 100, noNaN: true }) })
  .filter(({ from, to }) => distance(from, to) > 5);

/** Written by hand: two loops, a lane, a pull box and a vehicle, all on the picture. */
const drawn = () =>
  siteWith({
    shapes: [square(0, 0), { kind: 'circle', centre: [4, -5], diameter: 1.8 }],
    lanes: [{ id: 'lane1', centreline: [[0, -60], [0, 60]], width: 3.5 }], // prettier-ignore
    marks: [{ id: 'm1', kind: 'pull-box', points: [[3, 1]] }],
    probes: [{ vehicle: 'car', at: [0, -6] }]
  });

describe('a picture on the plan', () => {
  it('lies with its middle where it says, upper left and lower right as it stands upright', () => {
    const { site } = siteOver(emptySite());
    expect(pixelOnPlan(only(site), [320, 240])).toEqual([2, -3]);
    // 320 and 240 pixels of 5 cm: 16 m to the left and 12 m up.
    expect(pixelOnPlan(only(site), [0, 0])).toEqual([-14, 9]);
    expect(pixelOnPlan(only(site), [640, 480])).toEqual([18, -15]);
  });

  it('tells a pixel from a point and a point from a pixel', () => {
    fc.assert(
      fc.property(lying, pixel, (place, at) => {
        const { site } = siteOver(emptySite(), place);
        const back = pixelUnder(only(site), pixelOnPlan(only(site), at));
        expect(distance(back, at)).toBeLessThan(1e-6);
      })
    );
  });
});

describe('scaling by two points', () => {
  it('keeps the first point where it is and gives the two their distance', () => {
    fc.assert(
      fc.property(lying, span, (place, { from, to, distance_m }) => {
        const { site, id } = siteOver(emptySite(), place);
        const next = scaleUnderlay(site, id, { from, to, distance_m });
        const before = pixelOnPlan(only(site), from);
        const after = pixelOnPlan(only(next), from);
        expect(distance(after, before)).toBeLessThan(1e-6);
        const measured = distance(after, pixelOnPlan(only(next), to));
        expect(Math.abs(measured / distance_m - 1)).toBeLessThan(1e-6);
        expect(only(next).rotation).toBe(only(site).rotation);
      })
    );
  });

  it('moves nothing that is drawn unless it is asked to', () => {
    const base = drawn();
    const { site, id } = siteOver(base);
    const next = scaleUnderlay(site, id, { from: [0, 0], to: [640, 0], distance_m: 20 });
    expect(next.loops).toBe(site.loops);
    expect(next.lanes).toBe(site.lanes);
    expect(next.marks).toBe(site.marks);
    expect(next.probes).toBe(site.probes);
  });

  it('carries what is drawn on it when asked: everything stays on the same pixel', () => {
    const { site, id } = siteOver(drawn());
    // 640 pixels are 32 m now and shall be 48 m: half as much again.
    const next = scaleUnderlay(site, id, { from: [0, 0], to: [640, 0], distance_m: 48 }, true);
    const places = (each: Site): Point[] => [
      ...each.loops.map(({ shape }) => (shape.kind === 'polygon' ? shape.points[0]! : shape.centre)),
      ...each.lanes.flatMap(({ centreline }) => [...centreline]),
      ...each.marks.flatMap(({ points }) => [...points]),
      ...each.probes.map(({ at }) => at)
    ];
    const before = places(site).map((point) => pixelUnder(only(site), point));
    places(next).forEach((point, index) => {
      expect(distance(pixelUnder(only(next), point), before[index]!)).toBeLessThan(1e-4);
    });
    expect(next.loops[0]!.shape).toMatchObject({ width: 3, length: 3 });
    expect(next.loops[1]!.shape).toMatchObject({ diameter: 2.7 });
    expect(next.lanes[0]!.width).toBeCloseTo(5.25, 9);
  });

  it('leaves alone what lies beside the picture', () => {
    const base = siteWith({ shapes: [square(0, 0), square(60, 60)] });
    const { site, id } = siteOver(base);
    const next = scaleUnderlay(site, id, { from: [0, 0], to: [640, 0], distance_m: 48 }, true);
    expect(next.loops[0]).not.toBe(site.loops[0]);
    expect(next.loops[1]).toBe(site.loops[1]);
  });

  it('is refused whole when something on it would leave its bounds, or the points are one', () => {
    const { site, id } = siteOver(drawn());
    // A hundred times as large: the lane would be 350 m wide, and the widest is 50 m.
    expect(scaleUnderlay(site, id, { from: [0, 0], to: [64, 0], distance_m: 320 }, true)).toBe(site);
    expect(scaleUnderlay(site, id, { from: [0, 0], to: [64, 0], distance_m: 320 })).not.toBe(site);
    expect(scaleUnderlay(site, id, { from: [5, 5], to: [5, 5], distance_m: 3 })).toBe(site);
  });
});

describe('turning by two points', () => {
  it('makes their way run in the direction, with the first one where it is', () => {
    fc.assert(
      fc.property(lying, span, fc.constantFrom(0, 90, -35), (place, { from, to }, degrees) => {
        const { site, id } = siteOver(emptySite(), place);
        const [a, b] = [pixelOnPlan(only(site), from), pixelOnPlan(only(site), to)];
        const next = only(turnUnderlay(site, id, a, b, degrees));
        expect(distance(pixelOnPlan(next, from), a)).toBeLessThan(1e-5);
        const off = ((bearing(a, pixelOnPlan(next, to)) - degrees + 540) % 360) - 180;
        expect(Math.abs(off)).toBeLessThan(1e-3);
      })
    );
  });
});

describe('another picture in its place', () => {
  it('keeps the scale when it is the same view in a finer resolution', () => {
    const { site, id } = siteOver(emptySite());
    const scaled = scaleUnderlay(site, id, { from: [0, 0], to: [640, 0], distance_m: 20 });
    const finer = only(replacePicture(scaled, id, { ...picture, width: 1280, height: 960 }));
    expect(pixelOnPlan(finer, [1280, 960])).toEqual(pixelOnPlan(only(scaled), [640, 480]));
    expect(finer.scaledBy).toEqual({ from: [0, 0], to: [1280, 0], distance_m: 20 });
  });

  it('is not to scale any more when it is another view', () => {
    const { site, id } = siteOver(emptySite());
    const scaled = scaleUnderlay(site, id, { from: [0, 0], to: [640, 0], distance_m: 20 });
    const other = only(replacePicture(scaled, id, { ...picture, width: 900, height: 900 }));
    expect(other.scaledBy).toBeUndefined();
    expect(other.metresPerPixel * 900).toBeCloseTo(20, 9);
  });
});

describe('pictures among other things', () => {
  const ref = (id: string) => [{ kind: 'underlay', id } as const];

  it('are moved, turned, copied and removed like them, with one copy of the bytes', () => {
    const { site, id } = siteOver(drawn());
    expect(only(moveThings(site, ref(id), [1, 2])).at).toEqual([3, -1]);
    expect(only(rotateThings(site, ref(id), 90, [2, -3]))).toMatchObject({ at: [2, -3], rotation: 90 });
    const { site: twice, things } = insertCopies(site, extractThings(site, ref(id)), [5, 0]);
    expect(twice.underlays.map(({ at }) => at)).toEqual([[2, -3], [7, -3]]); // prettier-ignore
    expect(twice.underlays[1]!.picture).toBe(twice.underlays[0]!.picture);
    expect(removeThings(twice, things).underlays).toEqual(site.underlays);
    expect(removeThings(site, ref(id)).loops).toBe(site.loops);
  });

  it('are four at most', () => {
    let { site } = siteOver(emptySite());
    for (let more = 0; more < 5; more++) site = siteOver(site).site;
    expect(site.underlays).toHaveLength(4);
  });

  it('keep their bytes object through every change of their fields', () => {
    const { site, id } = siteOver(emptySite());
    const next = updateUnderlay(site, id, { opacity: 0.3, rotation: 12 });
    expect(only(next).picture).toBe(only(site).picture);
    expect(updateUnderlay(site, id, { opacity: 7 })).toBe(site);
  });

  it('are not sent to the calculation', () => {
    const { site } = siteOver(drawn());
    expect(withoutPictures(site).underlays).toEqual([]);
    expect(withoutPictures(site).loops).toBe(site.loops);
  });
});

describe('the bytes of a picture in a file', () => {
  it('are written and read back as they are', () => {
    const { site } = siteOver(drawn());
    const text = writeSite(site);
    expect((JSON.parse(text) as { underlays: { picture: Picture }[] }).underlays[0]!.picture).toEqual(
      picture
    );
    expect(readSite(text)).toEqual({ ok: true, site });
  });

  // U+0000 stands where a picture's bytes were taken out while a document is written: a name that is one must not be taken for it
  it('are written once each, whatever a name looks like', () => {
    const { site } = siteOver(emptySite());
    const odd = {
      ...site,
      name: '\u0000',
      underlays: [only(site), { ...only(site), id: 'p2', name: '\u0000' }]
    };
    expect(readSite(writeSite(odd))).toEqual({ ok: true, site: odd });
  });

  it('are refused with their place when they are not base64', () => {
    const { site } = siteOver(emptySite());
    const text = writeSite(site).replace('iVBORw0KGgo=', '<svg onload=x>');
    const reading = readSite(text);
    expect(reading.ok).toBe(false);
    const [problem] = reading.ok ? [] : reading.problems;
    expect(problem?.path).toBe('underlays[0].picture.data');
    expect(problem?.expected).toContain('base64');
  });

  it('are taken over from the file when they are missing here, and never the other way', () => {
    const { site, id } = siteOver(drawn());
    const without = updateUnderlay(site, id, { picture: null, opacity: 0.3 });
    const filled = withPicturesOf(without, site);
    expect(only(filled)).toMatchObject({ picture, opacity: 0.3 });
    expect(withPicturesOf(site, without)).toBe(site);
    expect(withPicturesOf(without, emptySite())).toBe(without);
    expect(missingLike(filled, without)).toEqual(without);
    expect(missingLike(filled, filled)).toBe(filled);
  });
});

describe('pictures under the plan', () => {
  it('are told from lines, missing ones counted', () => {
    const lines = { width: 4, height: 3, paths: [[[0, 0], [4, 3]]] } as unknown as Underlay['lines']; // prettier-ignore
    const { site } = siteOver(emptySite());
    const [first] = site.underlays as [Underlay];
    const traced = { ...first, id: 'traced', picture: null, lines };
    const missing = { ...first, id: 'missing', picture: null };
    expect(picturesUnder({ underlays: [first, traced, missing] })).toBe(2);
    expect(picturesUnder({ underlays: [traced] })).toBe(0);
  });
});
