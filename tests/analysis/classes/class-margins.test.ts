import { describe, expect, it } from 'vitest';
import { classMarginsOf } from '#analysis/classes/class-margins';
import { createBodyStore } from '#analysis/electrical/bodies';
import type { ClassMargin } from '#analysis/results';
import { createSurveyor } from '#analysis/survey';
import { testPlates } from '#plan/catalogue/test-plates';
import { vehicleOf, vehiclesOf } from '#plan/catalogue/vehicles';
import { vehicleEntries } from '#plan/catalogue/entries';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, lane, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const bodies = createBodyStore();
const FOOT = 0.3048;
/** As the classes' own: 6 × 6 ft, corners cut 12 in, 3 turns of 14 AWG, 100 ft of lead-in. */
const standard = (turns = 3, length = 6 * FOOT, id = 'L1', y = 0): Json =>
  loop(
    id,
    { kind: 'rectangle', centre: [0, y], width: 6 * FOOT, length, cornerCut: 12 * 0.0254 },
    { turns, slot: { depth: 1.5 * 0.0254, width: 0.25 * 0.0254 } }
  );

const margins = (over: Json = {}, channelOver: Json | null = {}): readonly ClassMargin[] => {
  const site = siteOf({
    loops: [standard()],
    circuits: [
      circuit('C1', ['L1'], {
        leadIn: { cable: 'pair-14', length: 100 * FOOT },
        channel: channelOver && channel('U1', 1, channelOver)
      })
    ],
    units: [unit('U1')],
    lanes: [lane('a', 0)],
    ...over
  });
  const surveyed = createSurveyor().survey(site).circuits.get('C1')!;
  return classMarginsOf(surveyed.circuit, surveyed.solved, surveyed.loops, site, {
    bodyOf: (vehicle) => bodies.get(vehicle),
    remember: (_, make) => make()
  });
};

describe('class margins', { timeout: PATIENCE }, () => {
  it.each(testPlates.map(({ id, onStandardLoop }) => [id, -onStandardLoop] as const))(
    'of the standard loop are the class figure over the threshold: %s',
    (id, figure) => {
      for (const tripThreshold of [figure, figure / 2]) {
        const found = margins({}, { tripThreshold }).find(({ vehicle }) => vehicle === id)!;
        expect(found.onStandardLoop).toBe(-figure);
        expect(found.best).toBe(found.worst);
        expect(relativeError(found.margin!, figure / tripThreshold)).toBeLessThan(2e-3);
      }
    }
  );

  it('are unknown without a channel, and so is nothing else', () => {
    for (const { margin, worst } of margins({}, null)) {
      expect(margin).toBeNull();
      expect(worst).toBeLessThan(0);
    }
  });

  it('shrink behind a longer lead-in and over a longer loop', () => {
    const long = margins({
      circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 1000 * FOOT } })]
    });
    const wide = margins({ loops: [standard(3, 40 * FOOT)] });
    margins().forEach(({ worst }, k) => {
      expect(long[k]!.worst).toBeGreaterThan(worst);
      expect(wide[k]!.worst).toBeGreaterThan(worst);
    });
  });

  it('tell the best lane from the worst where loops of two lanes share a circuit', () => {
    const two = margins({
      loops: [standard(), loop('L2', square(3.5, 0, 1.2), { turns: 2 })],
      circuits: [circuit('C1', ['L1', 'L2'])],
      lanes: [lane('a', 0), lane('b', 3.5)]
    });
    for (const { best, worst } of two) expect(best).toBeLessThan(worst);
  });
});

describe('test plates as vehicles', () => {
  it('are found by their ids, never usual, and give way to a vehicle of the site', () => {
    for (const plate of testPlates) {
      expect(vehicleOf(plate.id, { vehicles: [] })).toBe(plate);
      expect(plate.usual).toBe(false);
    }
    const own = { id: testPlates[0]!.id, name: 'Ours', parts: testPlates[1]!.parts };
    expect(vehicleOf(own.id, { vehicles: [own] })?.name).toBe('Ours');
    expect(vehiclesOf({ vehicles: [own] }).filter(({ id }) => id === own.id)).toHaveLength(1);
  });

  it('fit the schema of vehicles and say what is from memory, assumed and solved for', () => {
    expect(vehicleEntries.safeParse(testPlates).success).toBe(true);
    for (const { source } of testPlates) expect(source).toMatch(/from memory.*assumption.*solved for/s);
  });

  it('may be asked for, placed and named as a largest vehicle in a file', () => {
    const { id } = testPlates[0]!;
    const site = siteOf({
      loops: [standard()],
      circuits: [circuit('C1', ['L1'], { detect: [id] })],
      units: [unit('U1')],
      lanes: [lane('a', 0, { largestVehicle: id })],
      probes: [{ vehicle: id, at: [0, 0] }]
    });
    expect(site.probes[0]!.vehicle).toBe(id);
  });
});
