/** One job by chance: a site, what is wrong with its first circuit, how it was really built, and what the meters said. */
import { tolerancesOf } from '#plan/catalogue/tolerances';
import type { Circuit, Reading, Site } from '#plan/schema';
import { AS_DRAWN, buildCircuit, chanceSlips, type Slips } from './as-drawn';
import type { BuiltCircuit } from './built';
import { drawSite, type DesignWish } from './design';
import { distanceOf, LEAST_DISTANCE, oneDeviation } from './detectable';
import { MAKERS, SINGLES } from './faults';
import type { Planted, Single } from './planted';
import { figuresAt, readingsOf, USUAL_METER_FREQUENCY, type Figure, type Scene } from './measure';
import { createRandom, type Random } from './random';

export interface Sample {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly planted: Planted;
  /** As ideal meters would show them on the circuit as it was really built. */
  readonly figures: readonly Figure[];
  readonly full: readonly Reading[];
  readonly cabinet: readonly Reading[];
  /** Draws that no reading could have shown, before this one. */
  readonly refused: number;
}

/** What a fault needs to be there at all. */
const WISHES: Partial<Record<Single, DesignWish>> = {
  'shorted turns': {},
  'short in lead-in': { leastLeadIn: 30 },
  'reversed loop': { wiring: 'several', gap: [0.1, 0.5] },
  'missing loop': { wiring: 'several' },
  'parallel for series': { wiring: 'string' },
  'series for parallel': { wiring: 'side by side' },
  'other loop': { hasNeighbour: true }
};

/** Of these every draw shows: over range, a leak, a lead-in where loops should be, another capacitor, another frequency. */
const ALWAYS_SEEN: readonly Single[] = [
  'nothing wrong',
  'open',
  'short at splice',
  'short in lead-in',
  'wet splice',
  'cut insulation',
  'wrong setting',
  'wrong meter frequency'
];

/** Each wire of a sound circuit to ground, so that all of them side by side stay above 100 MΩ; common practice, no source. */
const soundLeaks = (random: Random, site: Site): ((of: string) => number) => {
  const wires = [...site.loops.map(({ id }) => id), 'lead-in'];
  const leaks = new Map(wires.map((id) => [id, random.byRatio(1e8 * wires.length, 2e10)]));
  return (of) => leaks.get(of)!;
};

const stage = (
  site: Site,
  circuit: Circuit,
  planted: Planted | null,
  slips: Slips,
  leaks: (of: string) => number,
  between: number,
  lift: number
): Scene => {
  const sound = buildCircuit(site, circuit, slips, leaks);
  const others = (id: string): BuiltCircuit =>
    buildCircuit(
      site,
      site.circuits.find((each) => each.id === id)!,
      slips,
      leaks
    );
  const faulty = planted ? planted.change(sound, others) : sound;
  return {
    loops: planted?.isBehindLoops ? sound : faulty,
    ...{ box: faulty, cabinet: faulty, between },
    meterFrequency: planted?.meterFrequency ?? USUAL_METER_FREQUENCY,
    omits: planted?.omits ?? [],
    subject: planted?.subject ?? null,
    unitRange: site.units[0]!.inductanceRange_H,
    vehicle: planted?.kind === 'steel near' ? null : { site, id: 'car', lift }
  };
};

const distance = (site: Site, circuit: Circuit, planted: Planted): number => {
  const leaks = () => 1e10;
  const figures = (from: Planted | null, slips: Slips): Figure[] =>
    figuresAt(stage(site, circuit, from, slips, leaks, 1e10, 0), 'full', true);
  const one = oneDeviation(site);
  const shifts: Slips[] = [
    { ...AS_DRAWN, dimensions: () => one.dimensions },
    { ...AS_DRAWN, pitch: one.pitch },
    { ...AS_DRAWN, leadIn: one.leadIn },
    { ...AS_DRAWN, temperature: one.temperature },
    { ...AS_DRAWN, permittivity: one.permittivity }
  ];
  return distanceOf(
    site,
    figures(null, AS_DRAWN),
    figures(planted, AS_DRAWN),
    shifts.map((slips) => figures(null, slips))
  );
};

const MOST_DRAWS = 60;

/** A site and a fault on it that readings can show. */
const drawFault = (kind: Single, random: Random) => {
  for (let refused = 0; refused < MOST_DRAWS; refused++) {
    const site = drawSite(random, WISHES[kind]);
    const circuit = site.circuits[0]!;
    const made = MAKERS[kind](random, site, circuit, false);
    if (!made) continue;
    const planted: Planted = { kind, ...made };
    if (ALWAYS_SEEN.includes(kind) || distance(site, circuit, planted) >= LEAST_DISTANCE)
      return { site, circuit, planted, refused };
  }
  throw new Error(`no design shows ${kind}`);
};

/** Of a sound circuit exactly as drawn; the meter's frequency in hertz. */
export const soundFigures = (
  site: Site,
  circuit: Circuit,
  meterFrequency = USUAL_METER_FREQUENCY
): Figure[] => {
  const scene = stage(site, circuit, null, AS_DRAWN, () => 1e10, 1e10, 0);
  return figuresAt({ ...scene, meterFrequency }, 'full');
};

const PERFECT = 1e15;

/** A fault on a circuit exactly as drawn and perfectly insulated, read without error. */
export const exactFault = (kind: Single, seed: number) => {
  const { site, circuit, planted } = drawFault(kind, createRandom(seed));
  const scene = stage(site, circuit, planted, AS_DRAWN, () => PERFECT, PERFECT, 0);
  const at = (meterFrequency: number): Figure[] => figuresAt({ ...scene, meterFrequency }, 'full', true);
  return { site, circuit, planted, figures: figuresAt(scene, 'full'), at };
};

/** Without what needs the lead-in taken off at the pull box, or a vehicle on the loops. */
const fromTheCabinet = (reading: Reading): Reading => {
  const left: readonly string[] = ['insulationBetween_ohm', 'deltaLOverL', 'vehicle', 'overRange'];
  const over = (reading.overRange ?? []).filter((each) => !left.includes(each));
  const kept = Object.entries(reading).filter(([name]) => !left.includes(name));
  return Object.fromEntries(over.length > 0 ? [...kept, ['overRange', over]] : kept);
};

/** The same for the same kind and seed. `isExact`: built as drawn. */
export const drawSample = (kind: Single, seed: number, isExact = false): Sample => {
  const random = createRandom(1_000 * seed + SINGLES.indexOf(kind));
  return readBy(random, drawFault(kind, random), isExact);
};

/** What a circuit cannot have without several loops, a string of them, strings side by side, a neighbour. */
const isPossible = (kind: Single, { circuits }: Site, { strings }: Circuit): boolean => {
  if (kind === 'reversed loop' || kind === 'missing loop') return strings.flat().length > 1;
  if (kind === 'parallel for series') return strings.length === 1 && strings[0]!.length > 1;
  if (kind === 'series for parallel') return strings.length > 1;
  return kind !== 'other loop' || circuits.length > 1;
};

/** Sound and faulty circuits as they come: as often as `weights` say, of any severity, whether or not readings can show it. */
export const drawAsTheyCome = (seed: number, weights: (kind: Single) => number): Sample => {
  const random = createRandom(1_000 * seed + SINGLES.length);
  const site = drawSite(random);
  const circuit = site.circuits[0]!;
  const kinds = SINGLES.filter((kind) => isPossible(kind, site, circuit));
  let left = random.share() * kinds.reduce((sum, kind) => sum + weights(kind), 0);
  const kind = kinds.find((each) => (left -= weights(each)) < 0) ?? 'nothing wrong';
  const planted: Planted = { kind, ...MAKERS[kind](random, site, circuit, true)! };
  return readBy(random, { site, circuit, planted, refused: 0 }, false);
};

const readBy = (
  random: Random,
  { site, circuit, planted, refused }: ReturnType<typeof drawFault>,
  isExact: boolean
): Sample => {
  const slips = isExact ? AS_DRAWN : chanceSlips(site, random.normal);
  const leaks = soundLeaks(random, site);
  const lift = isExact ? 0 : (tolerancesOf(site).vehicleHeight_m / 1.96) * random.normal();
  const scene = stage(site, circuit, planted, slips, leaks, random.byRatio(2e8, 2e10), lift);
  const figures = figuresAt(scene, 'full');
  const insulationTop = random.pick([2e9, 1e10]);
  const meters = { normal: isExact ? () => 0 : random.normal, insulationTop };
  const full = readingsOf(site, circuit.id, figures, meters);
  return {
    ...{ site, circuit, planted, figures, refused, full },
    cabinet: full
      .filter(({ testPoint }) => testPoint === 'cabinet' || testPoint === 'unit')
      .map(fromTheCabinet)
  };
};
