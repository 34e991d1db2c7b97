import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COUNTS } from '#plan/bounds';
import { catalogueVehicles, listedVehicle, vehicleOf } from '#plan/catalogue/vehicles';
import * as edits from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Site, Vehicle, VehiclePart } from '#plan/schema';
import { fullSite } from './site';

const car = listedVehicle('car')!;
const lorry = listedVehicle('lorry')!;

/** A site whose own vehicle is placed, asked for, a lane's largest, and drives in its traffic. */
const busySite = (): Site => {
  const site = fullSite();
  const stream = {
    ...{ lane: 'lane1', flow_per_h: 200, speed_m_s: 10, speedSpread: 0.1, leastHeadway_s: 1.8 },
    ...{ wander_m: 0, signal: null }
  };
  const arrival = { lane: 'lane1', at_s: 1, speed_m_s: 8, offset_m: 0, stop: null };
  return {
    ...site,
    circuits: site.circuits.map((circuit, at) => ({
      ...circuit,
      detect: at === 0 ? ['own', 'car'] : ['car']
    })),
    traffic: {
      ...{ seed: 1, duration_s: 60 },
      streams: [
        { ...stream, mix: [{ vehicle: 'own', share: 1 }] },
        {
          ...stream,
          mix: [
            { vehicle: 'own', share: 1 },
            { vehicle: 'car', share: 2 }
          ]
        }
      ],
      arrivals: [
        { ...arrival, vehicle: 'own' },
        { ...arrival, vehicle: 'van' }
      ]
    }
  };
};

const ownOf = (site: Site, id = 'own'): Vehicle => site.vehicles.find((vehicle) => vehicle.id === id)!;
const heights = ({ parts }: Pick<Vehicle, 'parts'>): number[] =>
  parts.map((part) => (part.kind === 'plate' ? part.height : part.centre[2]));

describe('own vehicles', () => {
  it('begin as a plate, or with the parts and the outline of another', () => {
    const site = edits.addVehicle(fullSite(), edits.newVehicle(fullSite(), 'Ours'));
    expect(site.vehicles[1]).toMatchObject({ id: 'v2', name: 'Ours', parts: [{ kind: 'plate' }] });
    const copied = edits.addVehicle(site, edits.copyOfVehicle(site, lorry, 'Ours, long'));
    expect(vehicleOf('v3', copied)).toMatchObject({
      parts: lorry.parts,
      bodyLength: lorry.bodyLength,
      bodyWidth: lorry.bodyWidth
    });
    expect(readSite(writeSite(copied)).ok).toBe(true);
  });

  it('are named and outlined, and lose the outline again', () => {
    const stated = edits.updateVehicle(fullSite(), 'own', { name: 'Sweeper', body: { width: 2, length: 5 } });
    expect(vehicleOf('own', stated)).toMatchObject({ name: 'Sweeper', bodyWidth: 2, bodyLength: 5 });
    const free = edits.updateVehicle(stated, 'own', { body: undefined });
    expect(vehicleOf('own', free)).toMatchObject({ bodyWidth: 1.5, bodyLength: 4 });
    expect(ownOf(free)).not.toHaveProperty('body');
  });

  it('go with whatever named them, and nothing else does', () => {
    const site = busySite();
    expect(edits.usesOfVehicle(site, 'own')).toEqual({ placed: 1, askedFor: 1, lanes: 1, traffic: 3 });
    const next = edits.removeVehicle(site, 'own');
    expect(edits.usesOfVehicle(next, 'own')).toEqual({ placed: 0, askedFor: 0, lanes: 0, traffic: 0 });
    expect(next).toMatchObject({
      vehicles: [],
      probes: [{ vehicle: 'car' }],
      traffic: { streams: [{ mix: [{ vehicle: 'car' }] }], arrivals: [{ vehicle: 'van' }] }
    });
    expect(next.circuits.map(({ detect }) => detect)).toEqual([['car'], ['car']]);
    expect(next.circuits[1]).toBe(site.circuits[1]);
    expect(next.lanes[0]).not.toHaveProperty('largestVehicle');
    expect(next.loops).toBe(site.loops);
    expect(readSite(writeSite(next)).ok).toBe(true);
  });

  it('give the place back to the vehicle of the catalogue, which is then named as before', () => {
    const site = { ...busySite(), vehicles: [{ ...ownOf(busySite()), id: 'car' }, ownOf(busySite())] };
    const next = edits.removeVehicle(site, 'car');
    expect(next.probes).toBe(site.probes);
    expect(next.circuits).toBe(site.circuits);
    expect(vehicleOf('car', next)).toBe(car);
  });

  it.each<[string, (site: Site) => Site]>([
    ['a second of the same id', (site) => edits.addVehicle(site, ownOf(site))],
    ['one without parts', (site) => edits.addVehicle(site, { id: 'v9', name: '', parts: [] })],
    ['removing one that is not there', (site) => edits.removeVehicle(site, 'car')],
    [
      'an outline out of bounds',
      (site) => edits.updateVehicle(site, 'own', { body: { width: 0, length: 4 } })
    ],
    ['the name that it has', (site) => edits.updateVehicle(site, 'own', { name: '' })],
    ['a part of the catalogue', (site) => edits.removePart(site, 'lorry', 0)],
    ['the last part removed', (site) => edits.removePart(site, 'own', 0)],
    ['a part that is not there', (site) => edits.duplicatePart(site, 'own', 3)],
    ['a change of nothing', (site) => edits.changePart(site, 'own', 0, (part) => part)],
    ['a ring thicker than wide', (site) => edits.addPart(site, 'own', { ...edits.NEW_PARTS.ring, conductorRadius: 0.4, radius: 0.3 } as VehiclePart)], // prettier-ignore
    ['a ring without a direction', (site) => edits.addPart(site, 'own', { ...edits.NEW_PARTS.ring, axis: [0, 0, 0] } as VehiclePart)], // prettier-ignore
    ['a gap out of bounds', (site) => edits.coupleVehicle(site, 'own', car, 99)],
    ['a gap that is no number', (site) => edits.coupleVehicle(site, 'own', car, Number.NaN)],
    ['no calibration to forget', (site) => edits.forgetHeight(site, 'own')],
    ['a vehicle lifted out of bounds', (site) => edits.calibrateHeight(site, 'own', { circuit: '', measured: -0.01, predicted: -0.02, raised: 9.9 })] // prettier-ignore
  ])('leave the same object: %s', (_, change) => {
    const site = fullSite();
    expect(change(site)).toBe(site);
  });
});

describe('the parts of an own vehicle', () => {
  it('are added, copied half a metre further back, changed and removed', () => {
    const added = edits.addPart(fullSite(), 'own', { ...edits.NEW_PARTS.plate, name: 'Axle' });
    const twice = edits.duplicatePart(added, 'own', 1);
    expect(ownOf(twice).parts.map(({ centre }) => centre[1])).toEqual([0, 0, -0.5]);
    expect(ownOf(twice).parts.map(({ name }) => name)).toEqual([undefined, 'Axle', 'Axle']);
    const higher = edits.changePart(twice, 'own', 2, (part) => ({ ...part, height: 0.5 }) as VehiclePart);
    expect(heights(ownOf(higher))).toEqual([0.5, 0.4, 0.5]);
    expect(ownOf(higher).parts[1]).toBe(ownOf(twice).parts[1]);
    expect(ownOf(edits.removePart(higher, 'own', 1)).parts).toEqual([
      ownOf(higher).parts[0],
      ownOf(higher).parts[2]
    ]);
  });

  it('end a calibration when they change, and not when they are only named', () => {
    const record = { circuit: 'C1', measured: -0.02, predicted: -0.03, raised: 0.05 };
    const site = edits.calibrateHeight(fullSite(), 'own', record);
    const named = edits.changePart(site, 'own', 0, (part) => ({ ...part, name: 'Floor' }));
    expect(ownOf(named).calibration).toEqual(record);
    const longer = edits.changePart(site, 'own', 0, (part) => ({ ...part, length: 4.1 }) as VehiclePart);
    expect(ownOf(longer)).not.toHaveProperty('calibration');
    expect(ownOf(edits.duplicatePart(site, 'own', 0))).not.toHaveProperty('calibration');
  });

  it('are as many as a document holds, and no more', () => {
    let site = fullSite();
    for (let k = 0; k < COUNTS.parts + 3; k++) site = edits.addPart(site, 'own', edits.NEW_PARTS.plate);
    expect(ownOf(site).parts).toHaveLength(COUNTS.parts);
  });
});

describe('coupling', () => {
  it('puts the other behind at the gap, and the middle of both into the middle', () => {
    // own: 4 m long by its part; the car: 4.4 m. Together 4 + 0.6 + 4.4 = 9 m.
    const site = edits.coupleVehicle(fullSite(), 'own', car, 0.6);
    const vehicle = vehicleOf('own', site)!;
    expect(vehicle).toMatchObject({ bodyLength: 9, bodyWidth: 1.8 });
    // front one from 4.5 to 0.5, gap to −0.1, the other to −4.5
    expect(vehicle.parts.map(({ centre }) => centre[1])).toEqual([2.5, -2.3]);
  });

  it('lets a semitrailer reach over its tractor', () => {
    const { body, front, behind } = edits.trainOf(
      { bodyWidth: 2.5, bodyLength: 6 },
      { bodyWidth: 2.55, bodyLength: 13.6 },
      -3.1
    );
    expect(body).toEqual({ width: 2.55, length: 16.5 });
    // the tractor's front at the front, the trailer's rear end at the rear
    expect(front + 3).toBeCloseTo(8.25, 9);
    expect(behind - 6.8).toBeCloseTo(-8.25, 9);
  });

  it('of the catalogue’s tractor and semitrailer is its articulated lorry', () => {
    const [tractor, trailer, whole] = ['tractor', 'semitrailer', 'lorry-articulated'].map((id) =>
      listedVehicle(id)!
    );
    const begun = edits.addVehicle(fullSite(), edits.copyOfVehicle(fullSite(), tractor!, 'Train'));
    const id = begun.vehicles.at(-1)!.id;
    const train = vehicleOf(id, edits.coupleVehicle(begun, id, trailer!, -3.3))!;
    expect([train.bodyLength, train.bodyWidth]).toEqual([whole!.bodyLength, whole!.bodyWidth]);
    const placed = (parts: readonly VehiclePart[]) =>
      parts.map(({ name, centre }) => [name, centre[1].toFixed(3)]);
    expect(placed(train.parts)).toEqual(placed(whole!.parts));
  });

  it('tells parts of the same name apart', () => {
    const begun = edits.addVehicle(fullSite(), edits.copyOfVehicle(fullSite(), car, 'With a trailer'));
    const id = begun.vehicles.at(-1)!.id;
    const { parts } = ownOf(edits.coupleVehicle(begun, id, car, 1), id);
    expect(parts.map(({ name }) => name)).toEqual(['Floor', 'Trailer: Floor']);
  });

  it('is no longer than the longer of the two where one reaches all over the other', () => {
    const { body, front, behind } = edits.trainOf(
      { bodyWidth: 2, bodyLength: 10 },
      { bodyWidth: 1, bodyLength: 3 },
      -8
    );
    expect(body).toEqual({ width: 2, length: 10 });
    // its front is 8 m ahead of the first one’s rear, so from 3 m to 0 m ahead of that one’s middle
    expect([front, behind]).toEqual([0, 1.5]);
  });

  it('refuses more parts than a vehicle may have', () => {
    let site = edits.addVehicle(fullSite(), edits.copyOfVehicle(fullSite(), lorry, 'Road train'));
    const id = site.vehicles.at(-1)!.id;
    for (let k = 0; k < 4; k++) site = edits.coupleVehicle(site, id, lorry, 1);
    expect(ownOf(site, id).parts).toHaveLength(20);
    const withParts = (count: number) => ({
      ...lorry,
      parts: Array.from({ length: count }, () => lorry.parts[0]!)
    });
    expect(edits.coupleVehicle(site, id, withParts(5), -9)).toBe(site);
    expect(ownOf(edits.coupleVehicle(site, id, withParts(4), -9), id).parts).toHaveLength(24);
  });
});

describe('the calibrated height', () => {
  const record = { circuit: 'C1', measured: -0.02, predicted: -0.03, raised: 0.0712345 };

  it.each(catalogueVehicles.map(({ id }) => [id] as const))('comes and goes without a trace: %s', (id) => {
    const site = fullSite();
    const listed = listedVehicle(id)!;
    const lifted = edits.calibrateHeight(site, id, record);
    const vehicle = vehicleOf(id, lifted)!;
    heights(vehicle).forEach((height, k) =>
      expect(height).toBeCloseTo(heights(listed)[k]! + record.raised, 9)
    );
    expect(vehicle).toMatchObject({
      bodyLength: listed.bodyLength,
      bodyWidth: listed.bodyWidth,
      paths: listed.paths,
      calibration: record
    });
    expect(readSite(writeSite(lifted)).ok).toBe(true);
    expect(edits.forgetHeight(lifted, id)).toEqual(site);
  });

  it('of an own vehicle goes back to what it was, a second calibration counting from there too', () => {
    const site = fullSite();
    const once = edits.calibrateHeight(site, 'own', record);
    const twice = edits.calibrateHeight(once, 'own', { ...record, raised: -0.05 });
    expect(heights(ownOf(twice))).toEqual([0.45]);
    expect(edits.forgetHeight(twice, 'own')).toEqual(site);
  });

  it('leaves a vehicle that was given another name since', () => {
    const named = edits.updateVehicle(edits.calibrateHeight(fullSite(), 'car', record), 'car', {
      name: 'Our car'
    });
    const next = edits.forgetHeight(named, 'car');
    expect(ownOf(next, 'car')).toMatchObject({ name: 'Our car', parts: car.parts });
    expect(ownOf(next, 'car')).not.toHaveProperty('calibration');
  });
});

describe('whatever is done to vehicles', () => {
  const wild = fc.oneof(
    { weight: 12, arbitrary: fc.integer({ min: -300, max: 900 }).map((number) => number / 97) },
    { weight: 1, arbitrary: fc.constantFrom(0, -0, 1e-9, 1e6, -1e6, Number.NaN, Infinity, -Infinity) }
  );
  const part: fc.Arbitrary<VehiclePart> = fc.oneof(
    fc.record({
      kind: fc.constant('plate' as const),
      centre: fc.tuple(wild, wild),
      width: wild,
      length: wild,
      height: wild
    }),
    fc.record({
      kind: fc.constant('ring' as const),
      centre: fc.tuple(wild, wild, wild),
      radius: wild,
      conductorRadius: wild.map((value) => value / 30),
      axis: fc.tuple(wild, wild, wild),
      resistivity_ohm_m: fc.constantFrom(undefined, 1.7e-7, -1)
    }).map(({ resistivity_ohm_m, ...rest }) => (resistivity_ohm_m === undefined ? rest : { ...rest, resistivity_ohm_m })) // prettier-ignore
  );
  const id = fc.constantFrom('own', 'own', 'v2', 'v3', 'car', 'bicycle', 'none', '');
  const index = fc.integer({ min: -1, max: 4 });
  type Edit = (site: Site) => Site;
  const listed = fc.constantFrom(...catalogueVehicles);
  const edit: fc.Arbitrary<Edit> = fc.oneof(
    listed.map(
      (from): Edit =>
        (site) =>
          edits.addVehicle(site, edits.copyOfVehicle(site, from, from.name))
    ),
    fc.constant<Edit>((site) => edits.addVehicle(site, edits.newVehicle(site, 'New'))),
    id.map(
      (vehicle): Edit =>
        (site) =>
          edits.removeVehicle(site, vehicle)
    ),
    fc.tuple(id, wild, wild).map(
      ([vehicle, width, length]): Edit =>
        (site) =>
          edits.updateVehicle(site, vehicle, { body: { width, length } })
    ),
    fc.tuple(id, index, part).map(
      ([vehicle, at, next]): Edit =>
        (site) =>
          edits.changePart(site, vehicle, at, () => next)
    ),
    fc.tuple(id, part).map(
      ([vehicle, next]): Edit =>
        (site) =>
          edits.addPart(site, vehicle, next)
    ),
    fc.tuple(id, index).map(
      ([vehicle, at]): Edit =>
        (site) =>
          edits.duplicatePart(site, vehicle, at)
    ),
    fc.tuple(id, index).map(
      ([vehicle, at]): Edit =>
        (site) =>
          edits.removePart(site, vehicle, at)
    ),
    fc.tuple(id, listed, wild).map(
      ([vehicle, behind, gap]): Edit =>
        (site) =>
          edits.coupleVehicle(site, vehicle, behind, gap)
    ),
    fc.tuple(id, wild).map(
      ([vehicle, raised]): Edit =>
        (site) =>
          edits.calibrateHeight(site, vehicle, {
            circuit: 'C1',
            measured: -0.02,
            predicted: -0.03,
            raised: raised / 9
          })
    ),
    id.map(
      (vehicle): Edit =>
        (site) =>
          edits.forgetHeight(site, vehicle)
    ),
    fc.tuple(id, wild, wild).map(
      ([vehicle, x, y]): Edit =>
        (site) =>
          edits.addProbe(site, { vehicle, at: [x, y], heading: 0 })
    )
  );

  it('the document reads back as a file does', () => {
    let changes = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 5, maxLength: 25 }), (list) => {
        let site = busySite();
        for (const change of list) {
          const next = change(site);
          if (next !== site) changes += 1;
          site = next;
        }
        const reading = readSite(writeSite(site));
        if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
        expect(reading.site).toEqual(site);
      }),
      { seed: 271_828, numRuns: 100 }
    );
    expect(changes).toBeGreaterThan(300);
  });
});
