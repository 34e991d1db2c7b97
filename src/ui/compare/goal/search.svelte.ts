/** A search for what clears a finding: one number, or all of what it is about in turn. */
import type { FindingRef, Goal } from '#analysis/goal/results';
import type { Finding } from '#analysis/results';
import { experimentOn, withValue } from '#plan/variables/index';
import type { Variable } from '#plan/variables/variable';
import type { Site } from '#plan/schema';
import type { Bench } from '../../bench';
import { effortOf, quickestFirst } from './goal';

export interface Answer {
  readonly variable: Variable;
  readonly goal: Goal;
  /** Findings that the change brings, in words; null where only their number is known. */
  readonly brings: readonly Finding[] | null;
}

type State = 'nothing' | 'searching' | 'there' | 'ended' | { readonly reason: string };

export class Search {
  readonly #bench: Bench;
  #count = 0;
  #state = $state.raw<State>('nothing');
  #answers = $state.raw<readonly Answer[]>([]);
  #share = $state.raw(0);
  #trying = $state.raw<Variable | null>(null);
  /** The drawing and the finding that the answers are of. */
  #site = $state.raw<Site | null>(null);
  #isOfAll = $state.raw(false);

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  get state() {
    return this.#state;
  }
  get answers() {
    return this.#answers;
  }
  get share() {
    return this.#share;
  }
  get trying() {
    return this.#trying;
  }
  get site() {
    return this.#site;
  }
  get isOfAll() {
    return this.#isOfAll;
  }

  async start(finding: FindingRef, variables: readonly Variable[], isOfAll: boolean): Promise<void> {
    const count = ++this.#count;
    // a search that is begun anew leaves nothing behind that the worker would go on with
    this.#drop();
    const site = this.#bench.shown;
    this.#site = site;
    this.#isOfAll = isOfAll;
    this.#answers = [];
    this.#share = 0;
    this.#state = 'searching';
    const asked = quickestFirst(site, variables);
    const efforts = asked.map((variable) => effortOf(site, variable));
    const whole = efforts.reduce((sum, effort) => sum + effort, 0);
    let done = 0;
    for (const [n, variable] of asked.entries()) {
      this.#trying = variable;
      const from = done;
      const show = (share: number) => {
        if (count === this.#count) this.#share = (from + share * efforts[n]!) / whole;
      };
      // of a single number what it brings is put into words afterwards
      const found = isOfAll ? 1 : FOUND;
      const onShare = (share: number) => {
        show(found * share);
      };
      const onTold = (share: number) => {
        show(found + (1 - found) * share);
      };
      const outcome = await this.#bench.ask('seek-goal', { variable, finding }, onShare, { site });
      if (count !== this.#count) return;
      if (outcome.kind !== 'answer') {
        this.#state = outcome.kind === 'failed' ? { reason: outcome.reason } : 'ended';
        return;
      }
      const brings = isOfAll ? null : await this.#told(site, variable, outcome.answer, onTold);
      // somebody may have given it up meanwhile
      if (this.#isOver(count)) return;
      this.#answers = [...this.#answers, { variable, goal: outcome.answer, brings }];
      done += efforts[n]!;
    }
    this.#state = 'there';
  }

  /** Nobody waits for what clears another drawing than one of these. */
  keepTo(...sites: readonly Site[]): void {
    if (this.#site === null || !sites.includes(this.#site)) this.end();
  }

  /** What was found so far stays. */
  end(): void {
    if (this.#state !== 'searching') return;
    this.#count++;
    this.#drop();
    this.#state = 'ended';
  }

  close(): void {
    this.#count++;
    this.#drop();
    this.#answers = [];
    this.#state = 'nothing';
  }

  #isOver(count: number): boolean {
    return count !== this.#count;
  }

  #drop(): void {
    this.#bench.dropQuestion('seek-goal');
    this.#bench.dropQuestion('compare-designs', DESK);
  }

  /** The findings of the changed drawing say themselves what they are. */
  async #told(
    site: Site,
    variable: Variable,
    goal: Goal,
    onShare: (share: number) => void
  ): Promise<readonly Finding[] | null> {
    if (goal.kind !== 'found' || goal.brings.length === 0) return [];
    const changed = withValue(experimentOn(site), variable, goal.to)?.site;
    if (!changed) return null;
    const wish = { designs: [null], pass: null };
    const outcome = await this.#bench.ask('compare-designs', wish, onShare, { site: changed, desk: DESK });
    const [design] = outcome.kind === 'answer' ? outcome.answer : [];
    if (!design) return null;
    // several of one kind about one thing, as of two vehicles that are missed, are told each
    const told = design.findings.filter((finding) =>
      goal.brings.some(
        ({ code, subject, severity }) =>
          code === finding.code && subject === finding.subject && severity === finding.severity
      )
    );
    return told.length === goal.brings.length ? told : null;
  }
}

const DESK = 'goal';
/** The share of the search itself, where what it brings is then put into words. */
const FOUND = 0.7;
