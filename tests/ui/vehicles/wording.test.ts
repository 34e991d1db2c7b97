import { describe, expect, it } from 'vitest';
import type { Assessment } from '#analysis/results';
import { listedVehicle } from '#plan/catalogue/vehicles';
import { demoSite } from '#plan/demo';
import type { Site, VehiclePart } from '#plan/schema';
import { placeVehicle } from '#ui/vehicles/place';
import {
  axisOf,
  metalFields,
  metalOfRing,
  METALS,
  standOf,
  STANDS,
  withFields,
  type Ring
} from '#ui/vehicles/ring-plane';
import {
  gistOf,
  moveText,
  partName,
  partSize,
  recordText,
  removedText,
  responseText
} from '#ui/vehicles/wording';

const METRIC = { displayUnits: 'metric' } as const;
const IMPERIAL = { displayUnits: 'imperial' } as const;
const rim: Ring = {
  kind: 'ring',
  centre: [0, 0, 0.34],
  radius: 0.31,
  conductorRadius: 0.008,
  axis: [1, 0, 0]
};

describe('vehicles in words', () => {
  it('have a length and a width', () => {
    expect(gistOf(METRIC, listedVehicle('lorry')!)).toBe('10.00 × 2.50 m');
    expect(gistOf(IMPERIAL, listedVehicle('car')!)).toBe('14.44 × 5.91 ft');
  });

  it('have parts with names, or a kind and a number', () => {
    const [floor] = listedVehicle('car')!.parts;
    expect(partName(floor!, 0)).toBe('Floor');
    const bare: VehiclePart = { ...floor!, name: ' ' };
    expect(partName(bare, 1)).toBe('Plate 2');
    expect(partName(rim, 2)).toBe('Ring 3');
    expect(partSize(METRIC, floor!)).toBe('4.20 × 1.60 m');
    expect(partSize(METRIC, rim)).toBe('Ø 0.62 m');
  });

  it('say which way their parts moved, and why', () => {
    expect(moveText('metric', 0.0712)).toBe('up 71.2 mm');
    expect(moveText('metric', -0.02)).toBe('down 20.0 mm');
    const record = { circuit: 'Free exit', measured: -0.02, predicted: -0.0335, raised: 0.0712 };
    expect(recordText(METRIC, record)).toBe(
      '✓ Heights calibrated on Free exit: 2.00 % measured, 3.35 % before. Parts up 71.2 mm.'
    );
    expect(responseText(METRIC, -2.4e-4)).toBe('0.024 %');
  });

  it('say what went with them', () => {
    const nothing = { placed: 0, askedFor: 0, lanes: 0, traffic: 0 };
    expect(removedText('Sweeper', nothing)).toBe('Removed Sweeper.');
    expect(removedText('Sweeper', { ...nothing, placed: 2, lanes: 1 })).toBe(
      'Removed Sweeper with what named it: 2 placed on the plan, largest of 1 lane. Undo brings all of it back.'
    );
  });
});

describe('a ring', () => {
  it.each(STANDS)('that stands %s is known by its axis, whatever its length and sense', (stand) => {
    const [x, y, z] = axisOf(stand);
    expect(standOf([x, y, z])).toBe(stand);
    expect(standOf([-7 * x, -7 * y, -7 * z])).toBe(stand);
  });

  it.each(METALS)('of a metal %s is known by its fields', (metal) => {
    const made = withFields({ ...rim, resistivity_ohm_m: 5e-8 }, metalFields(metal));
    expect(metalOfRing(made)).toBe(metal);
    expect('resistivity_ohm_m' in made).toBe(metal !== 'lossless');
  });
});

describe('placing', () => {
  const site: Site = demoSite();
  const [first, second] = site.circuits;
  const response = (vehicle: string, best: number, x: number) => ({
    ...{ vehicle, best, worst: best, at: [x, 1], heading: 45, margin: null, wanted: false },
    ...{ worstAt: [x, 1], worstHeading: 45 }
  });
  const assessment = {
    circuits: [
      { id: first!.id, responses: [response('car', -0.01, 3)] },
      { id: second!.id, responses: [response('car', -0.03, 5), response('van', -0.02, 6)] },
      { id: 'gone', responses: [response('car', -0.5, 9)] }
    ]
  } as unknown as Assessment;

  it('is where the circuit that answers most does so', () => {
    const placed = placeVehicle(site, 'car', assessment, [0, 0]);
    expect(placed.circuit).toBe(second!.id);
    expect(placed.site.probes.at(-1)).toEqual({ vehicle: 'car', at: [5, 1], heading: 45 });
  });

  it('is in the middle of the view where nothing is known of it', () => {
    const placed = placeVehicle(site, 'bus', assessment, [7.123456789, -2]);
    expect(placed.circuit).toBeNull();
    expect(placed.site.probes.at(-1)).toEqual({ vehicle: 'bus', at: [7.1234568, -2], heading: 90 });
    expect(placeVehicle(site, 'sledge', null, [0, 0]).site).toBe(site);
  });
});
