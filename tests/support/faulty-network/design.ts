/** Sites by chance: one circuit that is looked at, others beside it, drawn as designers draw them. */
import { usualUnit, builtInUnits, unitLike } from '#plan/catalogue/units';
import { builtInWires } from '#plan/catalogue/wires';
import { emptySite } from '#plan/empty';
import type { Circuit, Lane, Loop, Point, Shape, Site } from '#plan/schema';
import { AS_DRAWN, buildCircuit } from './as-drawn';
import { alternating } from './figures';
import { buildRoad } from './network';
import type { Random } from './random';

export interface DesignWish {
  /** How its loops are joined; left to chance where it does not say. */
  readonly wiring?: 'string' | 'side by side' | 'several';
  /** Gaps between neighbouring loops, metres. */
  readonly gap?: readonly [number, number];
  readonly leastLeadIn?: number;
  readonly leastTurns?: number;
  /** A circuit beside it. */
  readonly hasNeighbour?: boolean;
}

const CORNERS = 14;

const shapeAt = (random: Random, centre: Point, width: number, length: number): Shape => {
  const kind = random.pick([
    'rectangle',
    'rectangle',
    'rectangle',
    'quadrupole',
    'diagonal',
    'round'
  ] as const);
  if (kind === 'round') {
    const radius = Math.min(width, length) / 2;
    const points = Array.from({ length: CORNERS }, (_, k): Point => {
      const angle = (2 * Math.PI * k) / CORNERS;
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    });
    return { kind: 'polygon', points };
  }
  const box = { centre, width, length, rotation: 0 };
  if (kind === 'rectangle') return { kind, ...box, cornerCut: random.pick([0, 0, 0.15, 0.3]) };
  return { kind, ...box };
};

/** All loops of one circuit alike but for their turns now and then, as they mostly are. */
const loopsOf = (
  random: Random,
  prefix: string,
  x: number,
  count: number,
  { gap = [0.4, 3], leastTurns = 2 }: DesignWish
): Loop[] => {
  const width = random.between(1, 2.4);
  const length = random.chance(0.2) ? random.between(3, 8) : random.between(1.2, 2.6);
  const wire = random.pick(builtInWires).id;
  const turns = random.whole(leastTurns, 6);
  const depth = random.between(0.06, 0.1);
  const sample = shapeAt(random, [0, 0], width, length);
  const reach = sample.kind === 'polygon' ? Math.min(width, length) : length;
  const apart = reach + random.between(gap[0], gap[1]);
  return Array.from({ length: count }, (_, k): Loop => {
    const dy = -2 - k * apart;
    const shape: Shape =
      sample.kind === 'polygon'
        ? { ...sample, points: sample.points.map(([u, v]): Point => [u + x, v + dy]) }
        : { ...sample, centre: [x, dy] };
    return {
      id: `${prefix}${k + 1}`,
      name: '',
      turns: random.chance(0.1) ? random.whole(leastTurns, 6) : turns,
      wire,
      slot: { depth, width: 0.008, relativePermittivity: 4 },
      tail: { length: random.between(2, 20) },
      shape
    };
  });
};

const stringsOf = (
  random: Random,
  loops: readonly Loop[],
  wiring: DesignWish['wiring']
): Circuit['strings'] => {
  const all = loops.map(({ id }) => ({ loop: id, reversed: false }));
  if (wiring === 'side by side' || (wiring === undefined && random.chance(0.25)))
    return all.map((each) => [each]);
  return [all.map((each, k) => ({ ...each, reversed: k % 2 === 1 && random.chance(0.3) }))];
};

/** Tolerances that the site states: about the usual ones, a little better or worse. */
const tolerances = (random: Random): NonNullable<Site['tolerances']> => ({
  dimensions_m: random.pick([0.01, 0.02, 0.03]),
  depth_m: random.pick([0.005, 0.01]),
  wirePitch_m: random.pick([0.0002, 0.0004]),
  leadInLength_m: random.pick([1, 2, 3]),
  temperature_C: random.pick([5, 10, 15]),
  relativePermittivity: random.pick([1, 2, 3])
});

const laneAt = (k: number): Lane => ({
  id: `lane${k + 1}`,
  name: '',
  centreline: [
    [4 * k, -60],
    [4 * k, 5]
  ],
  width: 3.5
});

const drawAny = (random: Random, wish: DesignWish = {}): Site => {
  const unit = {
    ...unitLike(random.chance(0.5) ? usualUnit : random.pick(builtInUnits), { id: 'U1', name: '' }),
    channels: 4
  };
  const count = wish.wiring === undefined ? random.pick([1, 1, 2, 2, 3, 4]) : random.pick([2, 2, 3, 4]);
  const others = random.pick(wish.hasNeighbour ? [1, 1, 2] : [0, 1, 1, 2]);
  const groups = [
    loopsOf(random, 'A', 0, count, wish),
    ...Array.from({ length: others }, (_, k) =>
      loopsOf(random, 'BC'[k]!, 4 * (k + 1), random.pick([1, 1, 2]), {})
    )
  ];
  const cable = random.pick(['pair-12', 'pair-14', 'pair-14', 'pair-16', 'pair-18']);
  const length = Math.round(random.byRatio(wish.leastLeadIn ?? 10, 250));
  const circuits = groups.map((loops, k): Circuit => ({
    id: `C${k + 1}`,
    name: '',
    strings: stringsOf(random, loops, k === 0 ? wish.wiring : undefined),
    leadIn: { cable, length },
    channel: {
      ...{ unit: 'U1', number: k + 1, frequency_Hz: null, tripThreshold: 0.001, releaseRatio: 0.6 },
      frequencySetting: random.whole(1, unit.settings_F.length),
      output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
    },
    detect: ['car']
  }));
  return {
    ...emptySite(),
    temperature_C: Math.round(random.between(0, 30)),
    pavement: { material: 'asphalt', relativePermittivity: Math.round(random.between(4, 8)) },
    lanes: groups.map((_, k) => laneAt(k)),
    loops: groups.flat(),
    circuits,
    units: [unit],
    tolerances: tolerances(random)
  };
};

/** H: what units accept (NEMA TS 1 and TS 2, from memory of the source). */
const LEAST = 50e-6;
const MOST = 700e-6;
/** By how much capacitance may raise the inductance between 20 and 50 kHz: nobody designs up to the resonance. */
const MOST_RAISED = 1.25;

const isUsual = (site: Site): boolean =>
  site.circuits.every((circuit) => {
    const road = buildRoad(buildCircuit(site, circuit, AS_DRAWN, () => 1e9));
    const [low, high] = [20e3, 50e3].map(
      (frequency) => alternating(road, { at: 'cabinet' }, frequency).inductance
    );
    return low! >= LEAST && low! <= MOST && high! > 0 && high! <= MOST_RAISED * low!;
  });

/** As designers draw them: every circuit within what units accept, and far from its own resonance. */
export const drawSite = (random: Random, wish: DesignWish = {}): Site => {
  for (;;) {
    const site = drawAny(random, wish);
    if (isUsual(site)) return site;
  }
};
