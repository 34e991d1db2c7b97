/** Steel of a drawing: what it takes from loops, circuits and vehicles, and what follows an edit. */
import { describe, expect, it } from 'vitest';
import { createAssessor, type Assessor } from '#analysis/assess';
import type { Assessment } from '#analysis/results';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../physics/support/arbitraries';
import { relativeError } from '../physics/support/reference';
import { CAR, channel, circuit, lane, loop, siteOf, square, unit } from './support/sites';

type Json = Readonly<Record<string, unknown>>;

const box = (x: number, y: number, width: number, length: number) => [
  [x - width / 2, y - length / 2],
  [x + width / 2, y - length / 2],
  [x + width / 2, y + length / 2],
  [x - width / 2, y + length / 2]
];
const mat = (over: Json = {}): Json => ({
  id: 's1',
  kind: 'mat',
  depth: 0.15,
  pitch: 0.2,
  barRadius: 0.005,
  outline: box(0, 0, 4, 8),
  ...over
});
const plate = (over: Json = {}): Json => ({
  id: 's1',
  kind: 'plate',
  depth: 0.3,
  outline: box(0, 0, 4, 8),
  ...over
});

const siteWith = (steel: readonly Json[], over: Json = {}): Site =>
  siteOf({
    lanes: [lane('lane1', 0)],
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1), detect: ['car'] })],
    units: [unit('U1')],
    vehicles: [CAR, { ...CAR, id: 'van' }, { ...CAR, id: 'lorry' }],
    steel,
    ...over
  });

const finished = (assessor: Assessor, site: Site): Assessment => {
  while (assessor.prepareNext(site));
  while (assessor.followNext(site));
  return assessor.assess(site, 'prepared');
};

const assessor = createAssessor();
const all = (steel: readonly Json[], over: Json = {}): Assessment =>
  assessor.assess(siteWith(steel, over), 'all');
const bare = all([]);
const responseOf = ({ circuits }: Assessment, vehicle = 'car'): number =>
  circuits[0]!.responses.find((each) => each.vehicle === vehicle)!.worst;

describe('steel under a loop', { timeout: PATIENCE }, () => {
  it.each<[string, Json]>([
    ['a mat', mat()],
    ['a plate', plate()]
  ])('%s takes inductance, Q and response', (_, steel) => {
    const found = all([steel]);
    expect(found.loops[0]!.inductance_H).toBeLessThan(bare.loops[0]!.inductance_H);
    expect(found.loops[0]!.steelInductance_H).toBeCloseTo(
      found.loops[0]!.inductance_H - bare.loops[0]!.inductance_H,
      9
    );
    expect(found.loops[0]!.losses.steel_ohm).toBeGreaterThan(0);
    expect(found.circuits[0]!.q).toBeLessThan(bare.circuits[0]!.q);
    expect(-responseOf(found)).toBeLessThan(-responseOf(bare));
  });

  it('of a loop in no circuit is seen as well', () => {
    const loose = siteWith([mat()], { circuits: [] });
    const found = assessor.assess(loose).loops[0]!;
    expect(relativeError(found.inductance_H, all([mat()]).loops[0]!.inductance_H)).toBeLessThan(1e-3);
  });

  it('far away changes nothing at all', () => {
    const found = all([mat({ outline: box(8, 0, 4, 8) })]);
    expect(found).toEqual(bare);
  });

  it('lies as well under the next loop: where it lies on the plan does not matter', () => {
    const moved = all([mat({ outline: box(30, 5, 4, 8) })], {
      lanes: [lane('lane1', 30)],
      loops: [loop('L1', square(30, 5))]
    });
    const here = all([mat()]);
    expect(relativeError(moved.circuits[0]!.inductance_H, here.circuits[0]!.inductance_H)).toBeLessThan(1e-9);
    expect(relativeError(responseOf(moved), responseOf(here))).toBeLessThan(1e-6);
  });

  it('weakens a placed vehicle as it weakens one that passes', () => {
    const { at, heading } = bare.circuits[0]!.responses.find(({ vehicle }) => vehicle === 'car')!;
    const probes = [{ vehicle: 'car', at, heading }];
    const [without, over] = [[], [mat()]].map(
      (steel) => all(steel, { probes }).probes[0]!.circuits[0]!.deltaLOverL
    );
    expect(relativeError(without!, bare.circuits[0]!.responses[0]!.best)).toBeLessThan(1e-6);
    expect(over!).toBeGreaterThan(without!);
    expect(over!).toBeLessThan(0);
  });
});

describe('two loops of a circuit over one mat', { timeout: PATIENCE }, () => {
  it('lose some of their coupling: in series they have less than twice what one has', () => {
    const loops = [loop('L1', square(-0.95, 0)), loop('L2', square(0.95, 0))];
    const together = circuit('C1', ['L1', 'L2'], { leadIn: { cable: 'pair-14', length: 0 } });
    const found = (steel: readonly Json[]) => {
      const { circuits, loops: own, couplings } = all(steel, { loops, circuits: [together] });
      const sum = own[0]!.inductance_H + own[1]!.inductance_H;
      return { extra: circuits[0]!.magneticInductance_H - sum, alone: couplings[0]!.mutual_H };
    };
    const without = found([]);
    expect(relativeError(without.extra, 2 * without.alone)).toBeLessThan(1e-6);
    const over = found([mat()]);
    expect(Math.abs(over.extra)).toBeLessThan(Math.abs(without.extra));
  });
});

describe('what follows an edit', { timeout: PATIENCE }, () => {
  it('first shows the responses of a moment ago and says so, then those of the drawing', () => {
    const kept = createAssessor();
    const before = finished(kept, siteWith([mat()]));
    expect(before.isFollowed).toBe(false);
    expect(before.circuits[0]!.isFollowing).toBe(false);
    const edited = siteWith([mat()], { loops: [loop('L1', square(0.2, 0))] });
    const first = kept.assess(edited, 'prepared');
    expect(first.isFollowed).toBe(true);
    expect(first.circuits[0]!.isFollowing).toBe(true);
    expect(first.circuits[0]!.responses).toEqual(before.circuits[0]!.responses);
    expect(first.circuits[0]!.steel).toBeNull();
    // what does not need a vehicle is of this drawing at once
    const fresh = createAssessor().assess(edited);
    expect(first.circuits[0]!.inductance_H).toBe(fresh.circuits[0]!.inductance_H);
    const last = finished(kept, edited);
    expect(last.circuits[0]!.responses).toEqual(fresh.circuits[0]!.responses);
    expect(last.circuits[0]!.steel).not.toBeNull();
  });

  it('says what the steel costs, and the depth at which it costs less than the stated share', () => {
    const site = siteWith([mat()], { acceptedSteelCost: 0.2 });
    const { steel, ...readout } = createAssessor().assess(site, 'complete').circuits[0]!;
    expect(steel!.withoutSteel.inductance_H).toBeCloseTo(bare.circuits[0]!.inductance_H, 12);
    expect(steel!.inductanceShare).toBeCloseTo(1 - readout.inductance_H / bare.circuits[0]!.inductance_H, 9);
    expect(steel!.qShare).toBeCloseTo(1 - readout.q / bare.circuits[0]!.q, 9);
    const car = steel!.responses.find(({ vehicle }) => vehicle === 'car')!;
    expect(car.share).toBeCloseTo(1 - responseOf(all([mat()])) / responseOf(bare), 9);
    expect(steel!.statedShare).toBe(0.2);
    const cost = (depth: number): number => 1 - responseOf(all([mat({ depth })])) / responseOf(bare);
    expect(cost(steel!.clearDepth_m! + 0.03)).toBeLessThan(0.2);
    expect(cost(steel!.clearDepth_m! - 0.03)).toBeGreaterThan(0.2);
  });
});
