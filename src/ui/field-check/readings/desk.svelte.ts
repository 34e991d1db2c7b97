/**
 * The form for readings in hand. Every key that is typed goes to where a draft outlives the tab; "keep" hands the reading to
 * the document as one step that can be undone.
 */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { addReading, updateReading, withoutReading } from '#plan/edits/readings';
import type { Circuit, Reading } from '#plan/schema';
import { circuitOfReading } from '#analysis/fault-finding/visits';
import type { Bench } from '../../bench';
import { circuitName, nameOf } from '../../names';
import { commitEdit } from '../../wiring/edit';
import { chosen } from '../parts/chosen.svelte';
import type { WantedReading } from '../wanted.svelte';
import { buildReading, formOf, readingSoFar, type Built, type FieldName } from './build';
import { wallClock } from './clock';
import {
  emptyForm,
  formFrom,
  hasFigures,
  NO_ENTRY,
  withoutYesterday,
  type Conditions,
  type Editing,
  type Entry,
  type FormState
} from './form';

const NAME = 'readings';
/** Milliseconds between two looks at the clock. */
const TICK = 10_000;

/** What is ticked on the form: in hand today. */
export const instrumentsInHand = ({ drafts }: Pick<Bench, 'drafts'>): readonly string[] =>
  formFrom(drafts.read(NAME), '').conditions.instruments;

export type Kept =
  | { readonly kind: 'kept' }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'refused'; readonly fields: readonly FieldName[] }
  | { readonly kind: 'not taken' };

export class ReadingDesk {
  readonly #bench: Bench;
  #slot: string;
  #form: FormState;
  #storage = $state.raw<'kept' | 'full' | 'refused'>('kept');
  #now = $state.raw(wallClock(Date.now()));

  constructor(bench: Bench) {
    this.#bench = bench;
    this.#slot = bench.keeping.slot;
    this.#form = $state.raw(this.#stored());
    if (chosen.circuit === null) chosen.circuit = this.#form.circuit;
  }

  #stored(): FormState {
    const found = this.#bench.drafts.read(NAME);
    const by = this.#bench.settings.initials;
    return found === undefined ? emptyForm(by) : withoutYesterday(formFrom(found, by), this.#now);
  }

  /** Another site has forms of its own. */
  follow(slot: string): void {
    if (slot === this.#slot) return;
    this.#slot = slot;
    this.#form = this.#stored();
  }

  /** At the clock: a form that stays open past midnight is one of the new day. */
  #look(): void {
    const now = wallClock(Date.now());
    const isNewDay = now.slice(0, 10) !== this.#now.slice(0, 10);
    this.#now = now;
    if (isNewDay) this.#form = withoutYesterday(this.#form, now);
  }

  /** Keeps the clock going; returns how to stop it. */
  run(): () => void {
    const timer = setInterval(() => {
      this.#look();
    }, TICK);
    return () => {
      clearInterval(timer);
    };
  }

  /** On the wall's clock. */
  get now(): string {
    return this.#now;
  }
  /** Whether a draft would be found again. */
  get storage(): 'kept' | 'full' | 'refused' {
    return this.#storage;
  }

  /** Where the reading that is being changed stands now; undefined where it is gone. */
  #placeOf({ place, was }: Editing): number | undefined {
    const { readings } = this.#bench.shown;
    const isIt = (reading: Reading | undefined) => reading !== undefined && JSON.stringify(reading) === was;
    if (isIt(readings[place])) return place;
    const found = readings.findIndex(isIt);
    return found < 0 ? undefined : found;
  }

  /** The kept reading that is being changed, if it is one of this circuit. */
  editing(circuit: string): Editing | null {
    const { editing } = this.#form;
    return editing?.circuit === circuit ? editing : null;
  }

  entry(circuit: string): Entry {
    return this.editing(circuit)?.entry ?? this.#form.entries[circuit] ?? NO_ENTRY;
  }
  conditions(circuit: string): Conditions {
    return this.editing(circuit)?.conditions ?? this.#form.conditions;
  }

  #original(circuit: string): Reading | undefined {
    const editing = this.editing(circuit);
    const place = editing ? this.#placeOf(editing) : undefined;
    return place === undefined ? undefined : this.#bench.shown.readings[place];
  }

  #options(circuit: string) {
    const original = this.#original(circuit);
    return original ? { now: this.#now, original } : { now: this.#now };
  }

  /** What would be kept, for a look at it. */
  soFar(circuit: Circuit): Reading {
    const { shown } = this.#bench;
    const { id } = circuit;
    return readingSoFar(shown, circuit, this.entry(id), this.conditions(id), this.#options(id));
  }

  #put(form: FormState): void {
    this.#form = { ...form, touched: this.#now };
    this.#storage = this.#bench.drafts.keep(NAME, this.#form);
  }

  change(circuit: string, patch: Partial<Entry>): void {
    const editing = this.editing(circuit);
    const entry = { ...this.entry(circuit), ...patch };
    this.#put(
      editing
        ? { ...this.#form, circuit, editing: { ...editing, entry } }
        : { ...this.#form, circuit, entries: { ...this.#form.entries, [circuit]: entry } }
    );
  }

  changeConditions(circuit: string, patch: Partial<Conditions>): void {
    const editing = this.editing(circuit);
    const conditions = { ...this.conditions(circuit), ...patch };
    this.#put(
      editing
        ? { ...this.#form, circuit, editing: { ...editing, conditions } }
        : { ...this.#form, circuit, conditions }
    );
  }

  /** Whether the reading in the form differs from the kept one; one that is gone does. */
  #isHalfChanged(circuit: string): boolean {
    const editing = this.editing(circuit);
    if (editing === null) return false;
    const original = this.#original(circuit);
    if (!original) return true;
    const { entry, conditions } = formOf(this.#bench.shown, original);
    return JSON.stringify([editing.entry, editing.conditions]) !== JSON.stringify([entry, conditions]);
  }

  #sayHalfChanged(circuit: string): void {
    this.#bench.editor.say(t('field.halfChanged', { circuit: circuitName(this.#bench.shown, circuit) }));
  }

  /** What another screen asks to be measured. Behind a change that is half made it waits, which is said: false then. */
  take({ circuit, testPoint, loop }: WantedReading): boolean {
    const waits = this.#isHalfChanged(circuit);
    if (waits) this.#sayHalfChanged(circuit);
    const entry = this.#form.entries[circuit] ?? NO_ENTRY;
    this.#put({
      ...this.#form,
      circuit,
      editing: this.editing(circuit) && !waits ? null : this.#form.editing,
      entries: { ...this.#form.entries, [circuit]: { ...entry, testPoint, loop } }
    });
    return !waits;
  }

  #commit(circuit: Circuit, reading: Reading): boolean {
    const editing = this.editing(circuit.id);
    const place = editing ? this.#placeOf(editing) : undefined;
    const name = nameOf(circuit);
    const before = this.#bench.state.site;
    if (place === undefined)
      commitEdit(this.#bench, saying('field.step.add', { circuit: name }), (site) =>
        addReading(site, reading)
      );
    else {
      const was = this.#bench.state.site.readings[place];
      const gone = Object.keys(was ?? {}).filter((key) => !(key in reading));
      const patch = { ...Object.fromEntries(gone.map((key) => [key, undefined])), ...reading };
      if (JSON.stringify(was) === JSON.stringify(reading)) return true;
      commitEdit(this.#bench, saying('field.step.change', { circuit: name }), (site) =>
        updateReading(site, place, patch)
      );
    }
    // an editor that may only look says so itself
    return this.#bench.state.site !== before;
  }

  keep(circuit: Circuit): Kept {
    const { id } = circuit;
    this.#look();
    const conditions = this.conditions(id);
    const built: Built = buildReading(
      this.#bench.state.site,
      circuit,
      this.entry(id),
      conditions,
      this.#options(id)
    );
    if (built.kind !== 'reading') return built;
    if (!this.#commit(circuit, built.reading)) return { kind: 'not taken' };
    if (conditions.by.trim() !== '') this.#bench.change({ initials: conditions.by.trim() });
    this.clear(id);
    return { kind: 'kept' };
  }

  /** Lets go of what was typed; the conditions of a visit stay for its next reading of that day. */
  clear(circuit: string): void {
    if (this.editing(circuit)) {
      this.#put({ ...this.#form, editing: null });
      return;
    }
    const { testPoint, loop, units } = this.entry(circuit);
    const entries = { ...this.#form.entries, [circuit]: { ...NO_ENTRY, testPoint, loop, units } };
    this.#put(withoutYesterday({ ...this.#form, circuit, entries }, this.#now));
  }

  /**
   * Puts a kept reading into the form of its circuit, or of the one in hand where it has none that is there; what was typed
   * for a new one waits. One that is half changed is shown in its place.
   */
  edit(place: number, inHand: string): void {
    const { shown } = this.#bench;
    const reading = shown.readings[place];
    if (!reading) return;
    const { editing: before } = this.#form;
    if (before && this.#isHalfChanged(before.circuit)) {
      if (this.#placeOf(before) !== place) this.#sayHalfChanged(before.circuit);
      this.#put({ ...this.#form, circuit: before.circuit });
      return;
    }
    const own = circuitOfReading(shown, reading);
    const circuit = own !== undefined && shown.circuits.some(({ id }) => id === own) ? own : inHand;
    const editing = { place, was: JSON.stringify(reading), circuit, ...formOf(shown, reading) };
    this.#put({ ...this.#form, circuit, editing });
  }

  /** False where nothing may be changed. */
  remove(place: number): boolean {
    const { shown } = this.#bench;
    const reading = shown.readings[place];
    if (!reading) return false;
    const { editing } = this.#form;
    const isInHand = editing !== null && this.#placeOf(editing) === place;
    const id = circuitOfReading(shown, reading);
    const circuit = id === undefined ? t('field.noCircuit') : circuitName(shown, id);
    const before = this.#bench.state.site;
    commitEdit(this.#bench, saying('field.step.remove', { circuit }), (site) => withoutReading(site, place));
    const isGone = this.#bench.state.site !== before;
    if (isGone && isInHand) this.#put({ ...this.#form, editing: null });
    return isGone;
  }

  /** Something is typed for this circuit that is not kept yet. */
  hasTyped(circuit: string): boolean {
    return hasFigures(this.entry(circuit));
  }
}
