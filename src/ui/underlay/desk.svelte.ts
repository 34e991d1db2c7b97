/** Pictures on their way under the plan, and what is to be said about those that are there. */
import { createContext } from 'svelte';
import type { Pictures } from '#scenes/pictures';
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { COUNTS } from '#plan/bounds';
import { addUnderlay, newUnderlay, replacePicture } from '#plan/edits/index';
import type { Picture, Site, Underlay } from '#plan/schema';
import { isMissing } from '#plan/underlays';
import type { Bench } from '../bench';
import { withWords } from '../parts/with-words';
import { ACCEPTED } from './file-kind';
import type { Intake } from './intake';
import type { Pages } from './pages';

export type Task =
  | { readonly kind: 'reading'; readonly name: string }
  | { readonly kind: 'refused'; readonly text: string }
  | { readonly kind: 'pages'; readonly name: string; readonly pages: Pages };

/** Share of the view that a picture fills until it is scaled. */
const FILLED = 0.8;

export class UnderlayDesk {
  task = $state.raw<Task | null>(null);
  /** What was done to the picture that came in last. */
  notice = $state.raw('');
  /** How a picture was scaled, and the drawing of which that is the last change. */
  result = $state.raw<{ readonly text: string; readonly revision: number } | null>(null);
  #pictures = $state.raw<Pictures | null>(null);
  /** Pictures about which nothing more is to be said, each with its site: every site has a "picture-1". */
  #dismissed = $state.raw<readonly string[]>([]);
  readonly #bench: Bench;
  /** The picture whose place the next one takes. */
  #replaced: string | null = null;
  #field: HTMLInputElement | null = null;

  constructor(bench: Bench) {
    this.#bench = bench;
  }

  /** The plan tells which pictures it could show. */
  heard(pictures: Pictures): void {
    this.#pictures = pictures;
  }

  #warnedOf(isConcerned: (underlay: Underlay) => boolean): readonly Underlay[] {
    return this.#bench.state.site.underlays.filter(
      (underlay) => isConcerned(underlay) && !this.#dismissed.includes(this.#known(underlay))
    );
  }

  get missing(): readonly Underlay[] {
    return this.#warnedOf(isMissing);
  }

  get broken(): readonly Underlay[] {
    return this.#warnedOf(
      ({ picture }) => picture !== null && this.#pictures?.get(picture)?.kind === 'broken'
    );
  }

  dismiss(underlays: readonly Underlay[]): void {
    this.#dismissed = [...this.#dismissed, ...underlays.map((each) => this.#known(each))];
  }

  #known({ id }: Underlay): string {
    return JSON.stringify([this.#bench.keeping.slot, id]);
  }

  /** Lets the person choose a file; with `replaced`, for the place of that picture. */
  choose(replaced: string | null = null): void {
    this.#field?.remove();
    const field = document.createElement('input');
    field.type = 'file';
    field.accept = ACCEPTED;
    field.hidden = true;
    field.onchange = () => {
      const file = field.files?.[0];
      if (file) void this.bring(file, replaced);
    };
    // Off the page it is swept up as garbage while the person still looks for the file.
    document.body.append(field);
    this.#field = field;
    field.click();
  }

  async bring(file: File, replaced: string | null = null): Promise<void> {
    if (this.#bench.state.isReadOnly) return;
    this.#replaced = replaced;
    this.notice = '';
    this.drop();
    this.task = { kind: 'reading', name: file.name };
    await this.receive(this.#takeIn(file));
  }

  /** Dropped if another file, Escape or another site, which has not asked for the picture, comes in between. */
  async receive(coming: Promise<Intake>): Promise<void> {
    const { task } = this;
    const { slot } = this.#bench.keeping;
    const intake = await coming;
    if (this.task === task && this.#bench.keeping.slot === slot) {
      this.#take(intake);
      return;
    }
    if (intake.kind === 'pages') intake.pages.close();
    if (this.task === task) this.drop();
  }

  /** Never rejects. */
  async #takeIn(file: File): Promise<Intake> {
    try {
      const { takeIn } = await withWords(() => import('./intake'))();
      return await takeIn(file);
    } catch {
      return { kind: 'refused', name: file.name, reason: t('view.missing') };
    }
  }

  #take(intake: Intake): void {
    this.drop();
    if (intake.kind === 'refused') {
      this.task = { kind: 'refused', text: t('underlay.refused', { ...intake }) };
    } else if (intake.kind === 'pages') this.task = intake;
    else {
      this.notice = intake.notice;
      this.#put(intake.name, intake.picture);
    }
  }

  drop(): void {
    if (this.task?.kind === 'pages') this.task.pages.close();
    this.task = null;
  }

  /** As large as the view has room for, and at once asked for two points and their distance. */
  #put(name: string, picture: Picture): void {
    const { editor } = this.#bench;
    const { site, viewport } = editor.state;
    const replaced = site.underlays.find(({ id }) => id === this.#replaced);
    if (replaced) {
      const next = replacePicture(site, replaced.id, picture);
      editor.commit({ label: saying('underlay.step.replace'), site: next });
      editor.select([{ kind: 'underlay', id: replaced.id }]);
      return;
    }
    const room = FILLED * Math.min(viewport.width / picture.width, viewport.height / picture.height);
    const metresPerPixel = room / viewport.scale;
    const underlay = newUnderlay(site, { name, picture, at: viewport.centre, metresPerPixel });
    const next: Site = addUnderlay(site, underlay);
    if (next === site) {
      const reason = t('underlay.full', { count: COUNTS.underlays });
      this.task = { kind: 'refused', text: t('underlay.refused', { name, reason }) };
      return;
    }
    const selection = [{ kind: 'underlay', id: underlay.id }] as const;
    editor.commit({ label: saying('underlay.step.insert'), site: next, selection });
    editor.setTool('calibrate');
  }
}

export const [useUnderlays, provideUnderlays] = createContext<UnderlayDesk>();
