/** Which circuits make a pair, and a whole drawing measured. */
import { describe, expect, it } from 'vitest';
import { createMeans } from '#analysis/means';
import { measureSpeed } from '#analysis/speed-pair/measure';
import { measureInSteps } from '#analysis/speed-pair/measure-in-steps';
import { loopPairs } from '#analysis/speed-pair/pairs';
import type { PairDirection, PairPicture } from '#analysis/speed-pair/results';
import { finish } from '#analysis/steps';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import {
  CAR,
  channel,
  circuit,
  lane,
  loop,
  QUICK_VEHICLES,
  rowSite,
  siteOf,
  square,
  unit
} from '../support/sites';

/** Two equal loops, 4 m from edge to edge, on a unit that measures 2 ms a channel in turn. */
const pair = (over: Readonly<Record<string, unknown>> = {}): Site =>
  rowSite(
    [
      [0, -2],
      [0, 2]
    ],
    {
      // prettier-ignore
      lanes: [lane('a', 0)],
      units: [unit('U1', { measuringTime_s: 0.002 })],
      vehicles: [CAR, { ...QUICK_VEHICLES[0], id: 'small' }],
      ...over
    }
  );
const asked = (site: Site, vehicles: readonly string[] = ['car'], first = 'C1', second = 'C2') =>
  finish(measureInSteps(site, { first, second, vehicles }, createMeans()));
const measured = ({ spacingTolerance_m }: PairPicture, direction: PairDirection, speed = 15) =>
  direction.passes.map((pass) => measureSpeed(direction, spacingTolerance_m, pass, speed));

describe('pairs of a drawing', () => {
  it('are circuits that follow one another in a lane, the nearest first', () => {
    const places = [[0, 0], [0, 4], [0, 12], [6, 0]] as const; // prettier-ignore
    const site = rowSite(places, { lanes: [lane('a', 0), lane('b', 6)] });
    expect(loopPairs(site)).toEqual([
      { lane: 'a', first: 'C1', second: 'C2', spacing_m: 4 },
      { lane: 'a', first: 'C2', second: 'C3', spacing_m: 8 }
    ]);
  });

  it('need a lane, a channel each, and not too far a way from one to the other', () => {
    expect(loopPairs(pair({ lanes: [] }))).toEqual([]);
    const off = pair();
    const [one, other] = off.circuits;
    expect(loopPairs({ ...off, circuits: [one!, { ...other!, channel: null }] })).toEqual([]);
    expect(loopPairs(rowSite([[0, -18], [0, 18]], { lanes: [lane('a', 0)] }))).toEqual([]); // prettier-ignore
    // side by side, where both trip at once
    const together = rowSite([[-0.8, 0], [0.8, 0.2]], { lanes: [lane('a', 0)] }); // prettier-ignore
    expect(loopPairs(together)).toEqual([]);
    expect(asked(together, [])).toBeNull();
    // half a metre beside the lane’s edge
    expect(loopPairs(pair({ lanes: [lane('a', 2.25)] }))).toEqual([]);
  });

  it('of several loops each are told by the first loop and the last', () => {
    const site = siteOf({
      lanes: [lane('a', 0)],
      loops: [-6, -3, 3, 6].map((y, k) => loop(`L${k + 1}`, square(0, y))),
      circuits: [circuit('C1', ['L1', 'L2']), circuit('C2', ['L3', 'L4'], { channel: channel('U1', 2) })],
      units: [unit('U1')],
      vehicles: QUICK_VEHICLES
    });
    expect(loopPairs(site)).toEqual([
      { lane: 'a', first: 'C1', second: 'C2', spacing_m: expect.closeTo(9, 9) as number }
    ]);
    const picture = asked(site, [])!;
    expect(picture.forward.sides.map(({ from_m, to_m }) => to_m - from_m)).toEqual([
      expect.closeTo(4.8, 9),
      expect.closeTo(4.8, 9)
    ]);
  });
});

describe('a drawing with a pair', { timeout: PATIENCE }, () => {
  it('measures equal loops exactly, both ways', () => {
    const picture = asked(pair(), ['car', 'small'])!;
    expect(picture.forward.spacing_m).toBeCloseTo(4, 9);
    expect(picture.forward.sides.map(({ circuit: id }) => id)).toEqual(['C1', 'C2']);
    expect(picture.backward.sides.map(({ circuit: id }) => id)).toEqual(['C2', 'C1']);
    for (const direction of [picture.forward, picture.backward]) {
      expect(direction.passes).toHaveLength(2);
      expect(direction.spacing_m).toBeCloseTo(4, 9);
      for (const { from_m, to_m } of direction.sides) expect(to_m - from_m).toBeCloseTo(1.8, 9);
      for (const found of measured(picture, direction)) {
        // what is left is where the places that are computed lie against the loops
        expect(Math.abs(found!.errors.trips)).toBeLessThan(1e-3);
        // two channels in turn, 2 ms each
        expect(found!.errors.time.worst).toBeCloseTo(0.004 / (found!.between_s - 0.004), 9);
        expect(found!.errors.spacing).toBeCloseTo(0.02 / found!.tripDistance_m, 9);
      }
    }
  });

  it('measures too fast one way and too slow the other where one loop is the more sensitive', () => {
    const site = pair();
    const [one, other] = site.circuits;
    const uneven: Site = {
      ...site,
      circuits: [one!, { ...other!, channel: { ...other!.channel!, tripThreshold: 0.004 } }]
    };
    const picture = asked(uneven)!;
    const [there] = measured(picture, picture.forward);
    const [back] = measured(picture, picture.backward);
    // forwards the second trips late, so that the way is longer and the speed is told too low
    expect(there!.errors.trips).toBeLessThan(-0.01);
    expect(back!.errors.trips).toBeGreaterThan(0.01);
    expect(there!.tripDistance_m - 4).toBeCloseTo(4 - back!.tripDistance_m, 3);
    expect(there!.errors.thresholds).toBeCloseTo(there!.errors.trips, 2);
  });

  it('has no answer for circuits that do not follow one another, and none of a vehicle that is not there', () => {
    expect(asked(pair(), ['car'], 'C2', 'C1')).toBeNull();
    expect(asked(pair(), ['car'], 'C1', 'none')).toBeNull();
    expect(asked(pair({ lanes: [] }))).toBeNull();
    expect(asked(pair(), ['none'])!.forward.passes).toEqual([]);
  });

  it('keeps the order of the lane where it bends, and stays off what lies beside it', () => {
    const bent = pair({ lanes: [{ id: 'a', centreline: [[0, -20], [0, 0], [0.5, 20]], width: 3.5 }] }); // prettier-ignore
    expect(asked(bent)!.forward.spacing_m).toBeCloseTo(4, 1);
    expect(loopPairs(pair({ lanes: [lane('a', 4)] }))).toEqual([]);
  });
});
