/** From a drawing to a circuit into which faults can be put. */
import type { Site } from '#plan/schema';
import { createMeans, type Means } from '../../means';
import { RecentCache } from '../../recent-cache';
import type { Steps } from '../../steps';
import { lengthOf } from '../network/design';
import { stateWith } from '../network/faults';
import { steelNearInSteps } from '../network/steel-near';
import { worthMeasuring } from './askable';
import type { Prepared } from './contract';
import { coreInSteps, type Core } from './core';
import { hypothesesOf } from './hypotheses';
import { spreadOf } from './spread';

interface Shelf {
  readonly cores: RecentCache<string, Core>;
  readonly prepared: RecentCache<string, Prepared>;
}

/** What was prepared with the same means: readings come one at a time, the drawing stays. */
const shelves = new WeakMap<Means, Shelf>();
const MOST_KEPT = 30;

const shelfOf = (means: Means): Shelf => {
  const known = shelves.get(means) ?? {
    cores: new RecentCache(MOST_KEPT),
    prepared: new RecentCache(MOST_KEPT)
  };
  shelves.set(means, known);
  return known;
};

/** Those that the circuit must call, those that stood on it for a reading, and others that are asked for. */
const withOwn = (site: Site, circuit: string, others: readonly string[]): readonly string[] => {
  const wanted = site.circuits.find(({ id }) => id === circuit)?.detect ?? [];
  const stood = site.readings.flatMap((reading) =>
    reading.vehicle !== undefined && (reading.circuit ?? circuit) === circuit ? [reading.vehicle] : []
  );
  return [...new Set([...wanted, ...stood, ...others])].sort();
};

/** What the circuit's figures follow from; of the rest of a document nothing. */
const textOf = (site: Site, circuit: string, vehicles: readonly string[]): string => {
  const { loops, wires, cables, circuits, units, steel, lanes, temperature_C, pavement, tolerances } = site;
  const standing = site.vehicles.filter(({ id }) => vehicles.includes(id));
  return JSON.stringify([
    ...[circuit, vehicles, loops, wires, cables, circuits, units, steel],
    ...[lanes, temperature_C, pavement, tolerances, standing]
  ]);
};

/** The same without what only faults need: for expected readings. Null as below. */
export function* keptCoreInSteps(
  site: Site,
  circuit: string,
  vehicles: readonly string[],
  means: Means
): Steps<Core | null> {
  const { cores } = shelfOf(means);
  const all = withOwn(site, circuit, vehicles);
  const text = textOf(site, circuit, all);
  const known = cores.peek(text);
  // its readings and limits may be others
  if (known) return { ...known, site };
  const core = yield* coreInSteps(site, circuit, all, means);
  return core && cores.get(text, () => core);
}

/**
 * Null for a circuit that is not there or cannot be computed. `vehicles`: whose responses will be asked
 * for, beside those that the circuit must call and those that stood on it for a reading; one that is unknown or passes no
 * loop of the circuit is left out.
 */
export function* prepareInSteps(
  site: Site,
  circuit: string,
  vehicles: readonly string[] = [],
  means: Means = createMeans()
): Steps<Prepared | null> {
  const { prepared } = shelfOf(means);
  const text = textOf(site, circuit, withOwn(site, circuit, vehicles));
  const known = prepared.peek(text);
  if (known) return { ...known, site };
  const core = yield* keptCoreInSteps(site, circuit, vehicles, means);
  if (!core) return null;
  const steel = yield* steelNearInSteps(core.nominal.design, core.standing);
  core.bring(steel);
  const { design, meter } = core.nominal;
  const made: Prepared = {
    site,
    circuit: core.circuit,
    leadInLength_m: lengthOf(design),
    loops: design.loops.map(({ id }) => id),
    operatingFrequency_Hz: core.solved.frequency,
    hypotheses: hypothesesOf(core, steel),
    askable: worthMeasuring(core),
    predict: (faults, asked) => {
      const state = stateWith(design, faults);
      return asked.map((figure) => meter.read(state, figure));
    },
    spread: (faults, asked) => spreadOf(core, faults, asked)
  };
  return prepared.get(text, () => made);
}
