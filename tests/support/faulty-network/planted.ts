/** What a fault is here: a change of the built circuit, and which readings it leaves. */
import type { CauseKind, Estimate } from '#analysis/fault-finding/results';
import type { Circuit, Loop, Site } from '#plan/schema';
import type { BuiltCircuit, BuiltLoop } from './built';
import type { Random } from './random';

export type Omission = 'pull-box' | 'insulation between' | 'loop of the subject';

export interface Planted {
  readonly kind: Single;
  /** Loop, wire or circuit that it is about. */
  readonly subject: string | null;
  /** In words, for whoever looks at one that was missed. */
  readonly severity: string;
  /** `others`: circuits of the site, built like this one. */
  readonly change: (healthy: BuiltCircuit, others: (id: string) => BuiltCircuit) => BuiltCircuit;
  /** Loops by themselves read as drawn: the fault is not in them. */
  readonly isBehindLoops?: boolean;
  /** What a diagnosis would have to find out, SI, by the names of its estimates. */
  readonly values: Readonly<Partial<Record<Estimate['name'], number>>>;
  /** Of bridged turns the first, counted from the bottom of the slot. */
  readonly variant?: number;
  /** Readings that would need the fault undone, or have no meaning with it. */
  readonly omits: readonly Omission[];
  /** At which the meter really measures, Hz. */
  readonly meterFrequency?: number;
}

export type Single = Exclude<CauseKind, 'something else'>;
/** `isAny`: of any severity that there is; else of one that readings can show. */
export type Maker = (
  random: Random,
  site: Site,
  circuit: Circuit,
  isAny: boolean
) => Omit<Planted, 'kind'> | null;

export const withLoop = (
  circuit: BuiltCircuit,
  id: string,
  change: (loop: BuiltLoop) => BuiltLoop
): BuiltCircuit => ({
  ...circuit,
  loops: circuit.loops.map((loop) => (loop.id === id ? change(loop) : loop))
});

export const loopBy = (random: Random, site: Site, circuit: Circuit): Loop => {
  const id = random.pick(circuit.strings.flat()).loop;
  return site.loops.find((loop) => loop.id === id)!;
};

/** Loops before the splice read as they should; what lies behind it cannot be read without undoing the splice. */
export const AT_SPLICE: readonly Omission[] = ['pull-box', 'insulation between'];

/** Copper on copper, Ω. */
export const contact = (random: Random): number => random.byRatio(0.01, 0.2);

export const ohms = (value: number): string => `${value.toPrecision(3)} Ω`;
