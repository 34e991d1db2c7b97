/**
 * What meters should say, of one circuit under one set of conditions after the other: what was asked once is remembered
 * until the drawing changes in something that it depends on, and what was known stays in sight until the new is there.
 */
import type { ExpectedFigure, MeterConditions } from '#analysis/fault-finding/results';
import type { Site } from '#plan/schema';
import type { Bench } from '../../bench';

/** What no expected figure depends on. */
const APART: readonly string[] = [
  'readings',
  'probes',
  'underlays',
  'layers',
  'traffic',
  'estimate',
  'sheet',
  'notes',
  'name',
  'displayUnits',
  'fieldCheck',
  'variants',
  'variant'
];

/** A response is also expected of vehicles that stood on the loops for a reading. */
const vehiclesRead = ({ readings }: Site): string =>
  [...new Set(readings.flatMap(({ vehicle }) => vehicle ?? []))].toSorted().join(' ');

/** The limits that hold are part of an expectation, the record's words are not. */
function isSame(a: Site, b: Site): boolean {
  if (a.fieldCheck?.limits !== b.fieldCheck?.limits) return false;
  if (a.fieldCheck?.insulationLimit_ohm !== b.fieldCheck?.insulationLimit_ohm) return false;
  if (a.readings !== b.readings && vehiclesRead(a) !== vehiclesRead(b)) return false;
  const keys = Object.keys({ ...a, ...b }) as (keyof Site)[];
  return keys.every((key) => APART.includes(key) || a[key] === b[key]);
}

type Figures = readonly ExpectedFigure[];
/** By what was asked, as text. */
type Known = Readonly<Record<string, Figures>>;

export class Expectations {
  readonly #bench: Bench;
  #site: Site;
  /** Raised by every drawing that differs: whoever wants something asks again. */
  #generation = $state.raw(0);
  #fresh = $state.raw<Known>({});
  #old: Known = {};
  #problem = $state.raw<string | null>(null);
  #waiting: readonly string[] = [];
  #isBusy = false;
  #isOver = false;

  constructor(bench: Bench) {
    this.#bench = bench;
    this.#site = bench.state.site;
  }

  /** To be called with every committed drawing. */
  follow(site: Site): void {
    if (site === this.#site) return;
    const same = isSame(site, this.#site);
    this.#site = site;
    if (same) return;
    this.#old = this.#fresh;
    this.#fresh = {};
    this.#waiting = [];
    this.#generation++;
  }

  get generation(): number {
    return this.#generation;
  }

  /** Why nothing can be had; null while all is well. */
  get problem(): string | null {
    return this.#problem;
  }

  #keyOf = (circuit: string, conditions: MeterConditions): string => JSON.stringify({ circuit, conditions });

  /** The newest there is; null before the first answer. */
  of(circuit: string, conditions: MeterConditions = {}): Figures | null {
    const key = this.#keyOf(circuit, conditions);
    return this.#fresh[key] ?? this.#old[key] ?? null;
  }

  /** What is shown is of an earlier drawing, or not there yet. */
  isLate(circuit: string, conditions: MeterConditions = {}): boolean {
    return this.#fresh[this.#keyOf(circuit, conditions)] === undefined;
  }

  /** Asks, unless the answer is there or on its way. The newest wish comes first: it is what somebody looks at. */
  want(circuit: string, conditions: MeterConditions = {}): void {
    const key = this.#keyOf(circuit, conditions);
    if (this.#fresh[key] !== undefined) return;
    this.#waiting = [key, ...this.#waiting.filter((each) => each !== key)];
    if (!this.#isBusy) void this.#run();
  }

  async #run(): Promise<void> {
    this.#isBusy = true;
    for (let key = this.#next(); key !== undefined; key = this.#next()) await this.#answer(key);
    this.#isBusy = false;
  }

  #next(): string | undefined {
    const [first, ...others] = this.#isOver ? [] : this.#waiting;
    this.#waiting = others;
    return first;
  }

  async #answer(key: string): Promise<void> {
    const generation = this.#generation;
    const asked = JSON.parse(key) as { readonly circuit: string; readonly conditions: MeterConditions };
    const outcome = await this.#bench.ask('expect-readings', asked);
    if (this.#isOver || generation !== this.#generation || outcome.kind === 'superseded') return;
    this.#problem = outcome.kind === 'failed' ? outcome.reason : null;
    if (outcome.kind === 'answer') this.#fresh = { ...this.#fresh, [key]: outcome.answer[0]?.figures ?? [] };
  }

  /** Nobody looks any more. */
  end(): void {
    this.#isOver = true;
    this.#bench.dropQuestion('expect-readings');
  }
}
