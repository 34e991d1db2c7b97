/** A drawing on its way under the plan: what it says, what a person makes of it, and what comes of that. */
import type * as Imports from '#exchange/imports/index';
import type { Drawing } from '#exchange/imports/dxf/drawing';
import type { DrawingUnit } from '#exchange/imports/dxf/units';
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { BOUNDS, COUNTS } from '#plan/bounds';
import { addUnderlay, newLines } from '#plan/edits/index';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { Bench } from '../bench';

export type UnitChoice = DrawingUnit | 'file';
export type Place = 'file' | 'view';

export type Step =
  | { readonly kind: 'reading'; readonly share: number }
  | { readonly kind: 'refused'; readonly reason: string }
  | { readonly kind: 'read'; readonly drawing: Drawing; readonly tools: typeof Imports };

/** Metres between a drawing and the plan beyond which nobody means one to lie beside the other. */
const NEAR = 2_000;

export class LinesWork {
  step = $state.raw<Step>({ kind: 'reading', share: 0 });
  unit = $state.raw<UnitChoice | null>(null);
  /** Places of those that are chosen. */
  layers = $state.raw<readonly number[]>([]);
  #place = $state.raw<Place | null>(null);
  readonly name: string;
  readonly #bench: Bench;
  readonly #ending = new AbortController();

  constructor(bench: Bench, file: File) {
    this.#bench = bench;
    this.name = file.name;
    void this.#read(file);
  }

  cancel(): void {
    this.#ending.abort();
  }

  async #read(file: File): Promise<void> {
    const { signal } = this.#ending;
    const onShare = (share: number) => {
      if (!signal.aborted) this.step = { kind: 'reading', share };
    };
    try {
      const tools = await this.#bench.imports();
      const reading = await tools.openDxf(file, { signal, onShare });
      if (signal.aborted) return;
      if (!reading.ok) this.#refuse(t(`imports.why.${reading.why}`));
      else this.#begin(reading.drawing, tools);
    } catch (problem) {
      const detail = problem instanceof Error ? problem.message : String(problem);
      if (!signal.aborted) this.#refuse(t('imports.why.unreadable', { detail }));
    }
  }

  #refuse(reason: string): void {
    this.step = { kind: 'refused', reason };
  }

  #begin(drawing: Drawing, tools: typeof Imports): void {
    const { metresPerUnit, layers } = drawing;
    if (metresPerUnit !== null) this.unit = tools.unitOf(metresPerUnit) ?? 'file';
    const seen = layers.flatMap(({ isHidden }, index) => (isHidden ? [] : [index]));
    this.layers = seen.length > 0 ? seen : [...layers.keys()];
    this.step = { kind: 'read', drawing, tools };
  }

  choose(layer: number, isChosen: boolean): void {
    const others = this.layers.filter((each) => each !== layer);
    this.layers = isChosen ? [...others, layer] : others;
  }

  readonly paths = $derived.by(() =>
    this.step.kind === 'read' ? this.step.tools.onLayers(this.step.drawing, this.layers) : []
  );
  readonly extent = $derived.by(() =>
    this.step.kind === 'read' ? this.step.tools.extentOf(this.paths) : null
  );

  metresOf(choice: UnitChoice | null): number | null {
    if (this.step.kind !== 'read' || choice === null) return null;
    return choice === 'file' ? this.step.drawing.metresPerUnit : this.step.tools.DRAWING_UNITS[choice];
  }

  /** Metres across and up in a unit. */
  sizeIn(choice: UnitChoice): readonly [number, number] {
    const metres = this.metresOf(choice) ?? 0;
    const { extent } = this;
    return extent ? [(extent.right - extent.left) * metres, (extent.top - extent.bottom) * metres] : [0, 0];
  }

  readonly fitting = $derived.by(() => {
    const metres = this.metresOf(this.unit);
    return this.step.kind === 'read' && metres !== null ? this.step.tools.linesOf(this.paths, metres) : null;
  });

  /** Metres from what the plan shows to where the drawing lies by its own coordinates. */
  get away(): number {
    const middle = this.fitting?.kind === 'fits' ? this.fitting.middle : ([0, 0] as const);
    return Math.min(distance(middle, [0, 0]), distance(middle, this.#bench.state.viewport.centre));
  }

  get canStay(): boolean {
    if (this.fitting?.kind !== 'fits') return false;
    const { lines, metresPerUnit, middle } = this.fitting;
    const half = (Math.max(lines.width, lines.height) * metresPerUnit) / 2;
    return middle.every((value) => Math.abs(value) + half <= BOUNDS.coordinate.max);
  }

  /** Beside the plan a drawing means its own places. */
  get isFar(): boolean {
    if (this.fitting?.kind !== 'fits') return false;
    const { lines, metresPerUnit } = this.fitting;
    return this.away - Math.hypot(lines.width, lines.height) * metresPerUnit > NEAR;
  }

  get place(): Place {
    if (!this.canStay) return 'view';
    return this.#place ?? (this.isFar ? 'view' : 'file');
  }
  set place(place: Place) {
    this.#place = place;
  }

  get isFull(): boolean {
    return this.#bench.state.site.underlays.length >= COUNTS.underlays;
  }

  /** Under the plan as one step; false when the site has no room for it. */
  lay(said: string): boolean {
    const { editor } = this.#bench;
    const { fitting } = this;
    if (fitting?.kind !== 'fits') return false;
    const { site, viewport } = editor.state;
    const at: Point = this.place === 'file' ? fitting.middle : viewport.centre;
    const name = this.name.replace(/\.[^.]+$/, '') || this.name;
    const underlay = newLines(site, { name, lines: fitting.lines, at, metresPerUnit: fitting.metresPerUnit });
    const next = addUnderlay(site, underlay);
    if (next === site) return false;
    const selection = [{ kind: 'underlay', id: underlay.id }] as const;
    editor.commit({ label: saying('imports.step.lines'), site: next, selection });
    editor.fit('selection');
    editor.say(said);
    return true;
  }
}
