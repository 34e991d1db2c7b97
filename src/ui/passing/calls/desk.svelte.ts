/**
 * What a person does with simulated traffic: which time they look at, whether it runs, and which part is in sight. One for
 * each bench, so that it is as it was when they come back to the view. What is shown at a time is a function of the
 * simulation and that time; frames of the screen only move the time on.
 */
import { untrack } from 'svelte';
import type { CallsPicture, Trace } from '#analysis/calls/results';
import type { Moment } from '#scenes/frame';
import type { Site } from '#plan/schema';
import type { Bench } from '../../bench';
import { refsOf } from '../../details/subject';
import { Latest } from '../../parts/latest.svelte';
import { createMoments } from './moments';
import { stopsOf, type ListedMistake } from './stops';
import { firstWindow, fitted, following, LONGEST_TRACE, neighbouring, panned, zoomed } from './timeline';
import type { Stretch } from './stretches';

/** Seconds of traffic in a second. */
export const RATES = [0.25, 0.5, 1, 2, 4, 8, 16] as const;

/** A simulation, and the drawing that it is of. */
export interface Simulated {
  readonly site: Site;
  readonly picture: CallsPicture;
  readonly momentAt: (time: number) => Moment;
  /** Times at which something happens, in order. */
  readonly stops: readonly number[];
}

export class CallsDesk {
  readonly #bench: Bench;
  readonly simulation: Latest<'simulate-calls'>;
  readonly traces: Latest<'trace-calls'>;
  #simulated = $state.raw<Simulated | null>(null);
  #window = $state.raw<Stretch>({ from_s: 0, to_s: 60 });
  #time = $state.raw(0);
  #rate = $state.raw(1);
  #isPlaying = $state.raw(false);
  #chosen = $state.raw<ListedMistake | null>(null);
  #isFresh = true;
  /** The document as it was opened: another one begins anew. */
  #opened: Site | null = null;
  #request = 0;
  /** Where the time was when it last began to run. */
  #origin = { at: 0, time: 0 };

  constructor(bench: Bench) {
    this.#bench = bench;
    this.simulation = new Latest<'simulate-calls'>(async (wish) => {
      const site = bench.shown;
      const outcome = await bench.ask('simulate-calls', wish);
      if (outcome.kind === 'answer') this.#take(site, outcome.answer);
      return outcome;
    });
    this.traces = new Latest<'trace-calls'>((wish) => bench.ask('trace-calls', wish));
  }

  get simulated(): Simulated | null {
    return this.#simulated;
  }
  get window(): Stretch {
    return this.#window;
  }
  get time(): number {
    return this.#time;
  }
  get rate(): number {
    return this.#rate;
  }
  get isPlaying(): boolean {
    return this.#isPlaying;
  }
  /** The mistake that is looked at. */
  get chosen(): ListedMistake | null {
    return this.#chosen;
  }
  get duration_s(): number {
    return this.#simulated?.picture.duration_s ?? 0;
  }
  /** Of the part in sight and as much again on either side; empty where it is too long for that. */
  traceOf(circuit: string): Trace | undefined {
    return this.traces.answer?.find((trace) => trace.circuit === circuit);
  }

  /** Asks for the traffic of the drawing as it is. */
  simulate(): void {
    const { site, revision } = this.#bench.state;
    if (revision === 0 && site !== this.#opened) this.#begin(site);
    this.simulation.want({});
  }

  /** Asks for the responses of the part in sight; nothing to ask where too much is. */
  trace(): void {
    const { from_s, to_s } = this.#window;
    const length = to_s - from_s;
    if (!this.#simulated || length > LONGEST_TRACE) return;
    const margin = Math.min(length / 2, (LONGEST_TRACE - length) / 2);
    this.traces.want({
      from_s: Math.max(0, from_s - margin),
      to_s: Math.min(this.duration_s, to_s + margin)
    });
  }

  play(): void {
    if (!this.#simulated || this.#isPlaying) return;
    if (this.#time >= this.duration_s) this.seek(0);
    this.#isPlaying = true;
    this.#origin = { at: performance.now(), time: this.#time };
    this.#show();
    this.#request = requestAnimationFrame(this.#advance);
  }

  pause(): void {
    this.#isPlaying = false;
    cancelAnimationFrame(this.#request);
  }

  setRate(rate: number): void {
    this.#origin = { at: performance.now(), time: this.#time };
    this.#rate = rate;
  }

  /** Goes to a time, and shows it on the plan. */
  seek(time: number): void {
    if (!this.#simulated) return;
    this.#time = Math.min(this.duration_s, Math.max(0, time));
    this.#origin = { at: performance.now(), time: this.#time };
    this.#window = following(this.#window, this.#time, this.duration_s);
    this.#show();
  }

  /** To the next event, or the one before. */
  step(direction: 1 | -1): void {
    this.pause();
    const next = neighbouring(this.#simulated?.stops ?? [], this.#time, direction);
    if (next !== null) this.seek(next);
  }

  zoom(factor: number, about_s = this.#time): void {
    this.#window = zoomed(this.#window, factor, about_s, this.duration_s);
  }

  pan(share: number): void {
    this.#window = panned(this.#window, share, this.duration_s);
  }

  showAll(): void {
    this.#window = { from_s: 0, to_s: Math.max(this.duration_s, 1) };
  }

  /** Goes to the time of a mistake and selects the loops of the circuit that made it. */
  choose(chosen: ListedMistake): void {
    this.pause();
    this.#chosen = chosen;
    // What led to it is worth seeing too.
    this.#window = following(this.#window, chosen.mistake.time_s, this.duration_s, 0.4);
    this.seek(chosen.mistake.time_s);
    this.#bench.editor.select(refsOf(this.#bench.state.site, [chosen.circuit]));
  }

  /** For leaving the view: nothing runs on, what is shown stays. */
  rest(): void {
    this.pause();
    this.simulation.drop();
    this.traces.drop();
    this.#bench.dropQuestion('simulate-calls');
    this.#bench.dropQuestion('trace-calls');
  }

  #advance = (now: number): void => {
    if (!this.#isPlaying) return;
    // Somebody closed it on the plan.
    if (this.#bench.moment === null) {
      this.pause();
      return;
    }
    const time = this.#origin.time + (Math.max(0, now - this.#origin.at) / 1_000) * this.#rate;
    this.#time = Math.min(this.duration_s, time);
    this.#window = following(this.#window, this.#time, this.duration_s);
    this.#show();
    if (this.#time >= this.duration_s) this.pause();
    else this.#request = requestAnimationFrame(this.#advance);
  };

  #begin(site: Site): void {
    this.pause();
    this.#opened = site;
    this.#simulated = null;
    this.#chosen = null;
    this.#time = 0;
    this.#isFresh = true;
  }

  #show(): void {
    if (this.#simulated) this.#bench.showMoment(this.#simulated.momentAt(this.#time));
  }

  #take(site: Site, picture: CallsPicture | null): void {
    this.#chosen = null;
    if (!picture) {
      this.pause();
      this.#simulated = null;
      if (this.#bench.moment) this.#bench.showMoment(null);
      return;
    }
    this.#simulated = { site, picture, momentAt: createMoments(site, picture), stops: stopsOf(picture) };
    this.#window = this.#isFresh ? firstWindow(picture.duration_s) : fitted(this.#window, picture.duration_s);
    this.#isFresh = false;
    this.#time = Math.min(this.#time, picture.duration_s);
    if (this.#bench.moment) this.#show();
  }
}

const desks = new WeakMap<Bench, CallsDesk>();

export function deskOf(bench: Bench): CallsDesk {
  const known = desks.get(bench);
  if (known) return known;
  const desk = untrack(() => new CallsDesk(bench));
  desks.set(bench, desk);
  return desk;
}
