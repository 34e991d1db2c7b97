import { describe, expect, it } from 'vitest';
import type { PassCurve, PassPicture, Profile } from '#analysis/passing/results';
import { strongestOf, zonesOf } from '#analysis/passing/zones';
import type { Site } from '#plan/schema';
import {
  byCircuit,
  curvePath,
  extentOf,
  nearestCurve,
  rangeOf,
  textBeside,
  roundPlaces
} from '#ui/passing/along/plot';
import { askedFor, MOST_SHOWN, vehiclesListed, vehiclesShown } from '#ui/passing/along/vehicles';
import { lineAt, placeText, summaryOf, zoneText } from '#ui/passing/along/words';
import { vehicleName } from '#ui/names';
import { keepWhileSame } from '#ui/passing/same-passes';
import { offsetLimit, wayShown, waysOf } from '#ui/passing/ways';
import { siteWith, square } from '../../editor/sites';

const THRESHOLD = 0.001;

/** A triangle: nothing at its ends, `most` in its middle. */
function curveOf(circuit: string, vehicle: string, from: number, most: number): PassCurve {
  const values = Float64Array.from({ length: 41 }, (_, k) => most * (1 - Math.abs(k - 20) / 20));
  const profile: Profile = { circuit, vehicle, from, step: 0.1, values };
  return {
    profile,
    threshold: THRESHOLD,
    release: 0.6 * THRESHOLD,
    zones: zonesOf(profile, THRESHOLD, 0.6 * THRESHOLD),
    strongest: strongestOf(profile)
  };
}

const picture: PassPicture = {
  way: { kind: 'lane', id: 'lane1' },
  length_m: 20,
  offset_m: 0,
  loops: [
    { id: 'L1', circuit: 'C1', from_m: 1, to_m: 3 },
    { id: 'L2', circuit: 'C2', from_m: 11, to_m: 13 }
  ],
  curves: [
    curveOf('C1', 'car', 0, THRESHOLD / 2),
    curveOf('C2', 'car', 10, 2 * THRESHOLD),
    curveOf('C2', 'bicycle', 10, THRESHOLD / 4)
  ]
};

describe('curves of a pass', () => {
  it('are grouped by circuit with its loops, those that detect anything first', () => {
    expect(byCircuit(picture, null).map(({ circuit, loops }) => [circuit, loops[0]?.id])).toEqual([
      ['C2', 'L2'],
      ['C1', 'L1']
    ]);
    expect(byCircuit(picture, 'C1')).toHaveLength(1);
    expect(byCircuit(picture, 'gone')).toEqual([]);
  });

  it('share one stretch of the way', () => {
    const [from, to] = extentOf(picture.curves);
    expect([from, to]).toEqual([0, expect.closeTo(14, 9)]);
    expect(extentOf([])).toEqual([0, 1]);
  });

  it('leave threshold and release in sight on either scale', () => {
    for (const kind of ['logarithmic', 'linear'] as const) {
      const [low, high] = rangeOf([curveOf('C1', 'bicycle', 0, THRESHOLD / 50)], kind);
      expect(low).toBeLessThan(0.6 * THRESHOLD);
      expect(high).toBeGreaterThan(THRESHOLD);
    }
    expect(rangeOf([], 'logarithmic')[0]).toBeGreaterThan(0);
  });

  it('run along the lower end where they are below the scale', () => {
    const path = curvePath(
      picture.curves[0]!,
      (x) => 10 * x,
      (value) => 1e6 * value,
      THRESHOLD / 4
    );
    expect(path.startsWith('M0.0 250.0L1.0 250.0')).toBe(true);
    expect(path).toContain('L20.0 500.0');
    expect(path.split('L')).toHaveLength(41);
  });

  it('are told apart by the height of the pointer', () => {
    const [, car, bicycle] = picture.curves;
    const y = (value: number) => 100 - 1e4 * value;
    const at = (height: number) => nearestCurve([car!, bicycle!], 12, height, y, 0)?.profile.vehicle;
    expect(at(80)).toBe('car');
    expect(at(97)).toBe('bicycle');
    expect(nearestCurve([], 12, 0, y, 0)).toBeNull();
  });

  it('have ticks at round feet as well', () => {
    const feet = roundPlaces([1, 2], 0.3048, 4).map((place) => place / 0.3048);
    expect(feet).toEqual([4, 5, 6].map((foot) => expect.closeTo(foot, 9) as number));
    expect(roundPlaces([1, 2], 1, 4)).toEqual([1, 1.2, 1.4, 1.6, 1.8, 2]);
  });

  it('carry the text of a zone where there is room for it', () => {
    expect(textBeside(50, 100, 80, 0, 300)).toBe('after');
    expect(textBeside(150, 280, 80, 0, 300)).toBe('before');
    expect(textBeside(20, 290, 80, 0, 300)).toBe('inside');
    expect(textBeside(20, 60, 280, 0, 300)).toBe('none');
  });
});

describe('what is said of a pass', () => {
  const site = siteWith({ shapes: [square(0, 0), square(0, 9)] });

  it('is the zone with its ends, to the centimetre or the inch', () => {
    // up through the threshold half way up the slope, down to the release at 0.3 of it
    expect(zoneText(site, picture.curves[1]!.zones[0]!)).toBe('2.40 m, from 11.00 m to 13.40 m');
    expect(placeText(siteWith({ units: 'imperial' }), 3.05)).toBe('10\'-0"');
  });

  it('is every curve under the pointer, with its share of the threshold', () => {
    const bicycle = vehicleName(site, 'bicycle');
    expect(lineAt(site, picture.curves.slice(1), 12)).toBe(
      `At 12.00 m: Car 0.200 % (×2.0), ${bicycle} 0.025 % (×0.25)`
    );
  });

  it('is for those who listen one sentence a circuit', () => {
    const [seen, missed] = byCircuit(picture, null);
    expect(summaryOf(site, seen!, 'car')).toBe('C2: Car is detected over 2.40 m, from 11.00 m to 13.40 m.');
    expect(summaryOf(site, missed!, 'car')).toBe('C1: Car is not detected.');
  });
});

describe('vehicles that are driven', () => {
  const asking = (...detect: string[]): Pick<Site, 'circuits' | 'vehicles'> => {
    const site = siteWith({ shapes: [square(0, 0), square(0, 9)] });
    return { ...site, circuits: site.circuits.map((circuit) => ({ ...circuit, detect })) };
  };

  it('are those asked for until somebody chooses', () => {
    expect(askedFor(asking('bicycle', 'car', 'bicycle'))).toEqual(['bicycle', 'car']);
    expect(vehiclesShown(asking('bicycle'), null)).toEqual(['bicycle']);
    expect(vehiclesShown(asking('bicycle'), ['lorry'])).toEqual(['lorry']);
    expect(vehiclesListed(asking('bicycle'), ['lorry'])).toEqual(['bicycle', 'lorry']);
  });

  it('are a car where none is asked for, never one that is gone, and never a crowd', () => {
    expect(askedFor(asking())).toEqual(['car']);
    expect(vehiclesShown(asking(), ['gone', 'car'])).toEqual(['car']);
    expect(vehiclesShown(asking(), Array<string>(9).fill('car'))).toHaveLength(MOST_SHOWN);
  });
});

describe('ways', () => {
  const site = siteWith({
    lanes: [
      { id: 'a', name: 'First', centreline: [[0, -9], [0, 9]], width: 3 }, // prettier-ignore
      { id: 'b', centreline: [[4, -9], [4, 9]], width: 4 } // prettier-ignore
    ],
    paths: [{ id: 'a', name: 'Turn', points: [[0, 0], [9, 9]] }], // prettier-ignore
    shapes: [square(4, 0), square(0, 0)]
  });
  const shown = (looked: Partial<Parameters<typeof wayShown>[1]>) =>
    wayShown(site, { chosen: null, selection: [], ...looked })?.key;

  it('are lanes and paths, told apart even by the same id', () => {
    expect(waysOf(site).map(({ key, name }) => [key, name])).toEqual([
      ['lane a', 'First'],
      ['lane b', 'b'],
      ['path a', 'Turn']
    ]);
  });

  it('follow what is chosen, selected, watched, and else the first loop', () => {
    expect(shown({})).toBe('lane b');
    expect(shown({ watched: [0.5, 7] })).toBe('lane a');
    expect(shown({ watched: [0.5, 7], selection: [{ kind: 'loop', id: 'L1' }] })).toBe('lane b');
    expect(shown({ selection: [{ kind: 'path', id: 'a' }] })).toBe('path a');
    expect(shown({ chosen: { kind: 'lane', id: 'a' }, selection: [{ kind: 'path', id: 'a' }] })).toBe(
      'lane a'
    );
    expect(shown({ chosen: { kind: 'lane', id: 'gone' } })).toBe('lane b');
    expect(wayShown(siteWith({}), { chosen: null, selection: [] })).toBeNull();
  });

  it('are looked at as far as the lane is wide', () => {
    expect(offsetLimit(site, { kind: 'lane', id: 'b' })).toBe(2);
    expect(offsetLimit(site, { kind: 'path', id: 'a' })).toBeGreaterThan(0);
  });
});

describe('what a pass depends on', () => {
  it('is not where vehicles stand, nor what the site is called', () => {
    const site = siteWith({ shapes: [square(0, 0)] });
    const keep = keepWhileSame();
    const first = keep(site);
    expect(keep({ ...site, probes: [{ vehicle: 'car', at: [1, 1], heading: 90 }], name: 'x' })).toBe(first);
    const deeper = { ...site, loops: site.loops.map((loop) => ({ ...loop, turns: 4 })) };
    expect(keep(deeper)).toBe(deeper);
    expect(keep({ ...deeper, paths: [] })).not.toBe(deeper);
  });
});
