/** Wheel path by wheel path: which passes are looked at, and what each of them says. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { createBodyStore } from '#analysis/electrical/bodies';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import type { PassReadout } from '#analysis/passing/results';
import { createSurveyor } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { CAR, channel, circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const vehicles = [CAR, ...QUICK_VEHICLES.filter(({ id }) => id !== 'car')];
const draw = (over: Json = {}): Site =>
  siteOf({
    lanes: [lane('a', 0), lane('b', 3.5)],
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'])],
    units: [unit('U1')],
    vehicles,
    ...over
  });
const passesOf = (site: Site): readonly PassReadout[] => createAssessor().assess(site, 'complete').passes!;
const over = (passes: readonly PassReadout[], vehicle: string) =>
  passes.filter((pass) => pass.isServed && pass.vehicle === vehicle);

describe('passes over a circuit', { timeout: PATIENCE }, () => {
  const site = draw({ circuits: [circuit('C1', ['L1'], { detect: ['car', 'bicycle'] })] });
  const passes = passesOf(site);
  const responseAt = ({ vehicle }: PassReadout, [x, y]: readonly [number, number], heading: number) =>
    -vehicleEffect(
      createSurveyor().survey(site).circuits.get('C1')!.solved,
      createBodyStore().get(vehicleOf(vehicle, site)!),
      { x, y, heading }
    );

  it('put a vehicle as wide as a lane in its middle and at both edges, a two-wheeler on five paths', () => {
    // 3.5 m of lane less 1.6 m of car leaves 0.95 m to either side
    expect(over(passes, 'car').map(({ offset_m }) => offset_m)).toEqual([-0.95, 0, 0.95]);
    expect(over(passes, 'bicycle')).toHaveLength(5);
  });

  it('say the strongest response, where it is, and its share of the threshold', () => {
    for (const pass of passes.filter(({ response }) => response > 1e-4)) {
      expect(responseAt(pass, pass.at, pass.heading) / pass.response).toBeCloseTo(1, 2);
      expect(pass.margin).toBeCloseTo(pass.response / 0.001, 9);
    }
  });

  it('begin their zone where the response reaches the threshold and end it at the release', () => {
    const [, middle] = over(passes, 'car');
    const { from, to, length_m } = middle!.zone!;
    // within two hundredths: straight lines between places 5 cm apart
    expect(Math.abs(responseAt(middle!, from, 90) / 0.001 - 1)).toBeLessThan(0.02);
    expect(Math.abs(responseAt(middle!, to, 90) / 0.0006 - 1)).toBeLessThan(0.02);
    expect(from[1]).toBeLessThan(0);
    expect(to[1] - from[1]).toBeCloseTo(length_m, 9);
    // loop and car lie symmetrically: the release lies beyond where it would trip backwards
    expect(to[1]).toBeGreaterThan(-from[1]);
  });

  it('answer alike left and right of a symmetric loop', () => {
    const [left, , right] = over(passes, 'car');
    expect(left!.response).toBeCloseTo(right!.response, 9);
  });

  it('look at the next lane in its middle and at its near edge, which is nearer', () => {
    const beside = passes.filter(({ isServed, vehicle }) => !isServed && vehicle === 'car');
    expect(beside.map(({ lane: id, offset_m }) => [id, offset_m])).toEqual([
      ['b', 0],
      ['b', -0.95]
    ]);
    expect(beside[1]!.response).toBeGreaterThan(2 * beside[0]!.response);
    expect(beside.every(({ wanted }) => !wanted)).toBe(true);
  });

  it('count a vehicle twice that is lost between two loops of one circuit', () => {
    const two = draw({
      loops: [loop('L1', square(0, -3)), loop('L2', square(0, 3))],
      circuits: [
        circuit('C1', ['L1', 'L2'], {
          detect: ['bicycle'],
          channel: channel('U1', 1, { tripThreshold: 0.0001 })
        })
      ]
    });
    const [, edge] = over(passesOf(two), 'bicycle');
    expect(edge!.detections).toBe(2);
    expect(edge!.gaps).toHaveLength(1);
    const [gap] = edge!.gaps;
    expect(gap!.at[1]).toBeCloseTo(0, 0);
    expect(gap!.response).toBeLessThan(0.00006);
    // 6 m from loop to loop, less a loop's half and a bicycle's wheels on either side
    expect(gap!.length_m).toBeGreaterThan(1.5);
    expect(gap!.length_m).toBeLessThan(4.2);
  });

  it('try a long vehicle with a high middle where the lane does not say what is the largest', () => {
    const tried = (site: Site): readonly string[] => [
      ...new Set(passesOf(site).filter(({ isServed }) => isServed).map(({ vehicle }) => vehicle)) // prettier-ignore
    ];
    expect(tried(draw())).toEqual(['car', 'lorry', 'lorry-articulated']);
    expect(tried(draw({ lanes: [lane('a', 0, { largestVehicle: 'van' })] }))).toEqual(['car', 'van']);
  });

  it('drive along +y where no lane serves', () => {
    const [pass] = passesOf(draw({ lanes: [] }));
    expect(pass).toMatchObject({ lane: null, isServed: true, offset_m: 0, heading: 90 });
  });

  it('follow a bent lane', () => {
    const bent = draw({
      lanes: [lane('a', 0, { centreline: [[-20, 0], [0, 0], [0, 20]] })], // prettier-ignore
      loops: [loop('L1', square(-8, 0))]
    });
    const middle = over(passesOf(bent), 'car').find(({ offset_m }) => offset_m === 0)!;
    const straight = over(passesOf(draw()), 'car').find(({ offset_m }) => offset_m === 0)!;
    expect(middle.heading).toBeCloseTo(0, 9);
    expect(middle.response).toBeCloseTo(straight.response, 3);
  });
});

describe('findings about passes', { timeout: PATIENCE }, () => {
  const find = (site: Site, code: string) =>
    createAssessor()
      .assess(site, 'complete')
      .findings.filter((finding) => finding.code === code);
  const at = (tripThreshold: number, fields: Json = {}): Site =>
    draw({
      circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1, { tripThreshold }) })],
      ...fields
    });
  const [edge, middle] = over(passesOf(draw()), 'car');
  const near = passesOf(draw()).filter(({ isServed, vehicle }) => !isServed && vehicle === 'car');

  it('name a car that is missed at the edge of its lane only', () => {
    const between = (edge!.response + middle!.response) / 2;
    const [finding] = find(at(between), 'missed-at-edge');
    expect(finding).toMatchObject({ severity: 'caution', subject: 'C1', selects: ['L1'] });
    expect(finding!.message).toContain('0.95 m');
    expect(find(at(0.9 * edge!.response), 'missed-at-edge')).toEqual([]);
    // missed in the middle too: that is another finding
    expect(find(at(1.2 * middle!.response), 'missed-at-edge')).toEqual([]);
  });

  it('name a next lane that calls from its near edge only', () => {
    const between = (near[0]!.response + near[1]!.response) / 2;
    const [finding] = find(at(between), 'next-lane-edge');
    expect(finding).toMatchObject({ severity: 'caution', subject: 'C1' });
    expect(find(at(1.1 * near[1]!.response), 'next-lane-edge')).toEqual([]);
    expect(find(at(0.9 * near[0]!.response), 'next-lane-edge')).toEqual([]);
  });

  it('name a vehicle that counts twice: a problem where it is asked for, a caution else', () => {
    const jointed = {
      id: 'jointed',
      name: 'Jointed',
      parts: [-5, 5].map((y) => ({ kind: 'plate', centre: [0, y], width: 1.6, length: 2, height: 0.45 }))
    };
    const site = (detect: readonly string[]) =>
      draw({
        vehicles: [...vehicles, jointed],
        lanes: [lane('a', 0, { largestVehicle: 'jointed' })],
        circuits: [circuit('C1', ['L1'], { detect })]
      });
    expect(find(site(['jointed']), 'counted-twice')).toMatchObject([{ severity: 'problem', subject: 'C1' }]);
    expect(find(site(['car']), 'counted-twice')).toMatchObject([{ severity: 'caution' }]);
    expect(find(draw(), 'counted-twice')).toEqual([]);
  });
});
