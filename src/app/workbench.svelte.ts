/** Everything that the page works on, in one place: each thing that changes is one `$state.raw`, replaced as a whole. */
import { MediaQuery } from 'svelte/reactivity';
import type { DesignResults } from '#analysis/designs/results';
import type { Asked, QuestionKind } from '#analysis/questions';
import type { Place } from '#analysis/takeoff/results';
import type { ExportKind } from '#exchange/files/exported';
import type { Job } from '#exchange/job';
import type { Paper, Sheet } from '#exchange/sheet/page';
import type { Table } from '#exchange/tables/table';
import type { GhostPicture } from '#scenes/designs';
import type { CuttingPicture, FieldOverlay, MapPicture, Moment } from '#scenes/frame';
import { createEditor } from '#editor/create-editor';
import { SNAP_SWITCHES, snapSwitches } from '#editor/snap-settings';
import type { Editor, EditorState, SnapSettings } from '#editor/types';
import { languageOf } from '#i18n/choose';
import { speakLanguage } from '#i18n/load';
import { spokenLanguage, type Language } from '#i18n/message';
import { updateSite } from '#plan/edits/index';
import type { DisplayUnits, Site } from '#plan/schema';
import type { DraftStore } from '#storage/drafts';
import type { FileContent } from '#storage/files';
import type { StoredValue } from '#storage/stored-value';
import type {
  AskOptions,
  Bench,
  Drafts,
  ExportOutcome,
  ExportWishes,
  PictureKind,
  PointedPair,
  Salvage
} from '#ui/bench';
import { frameWork } from '#ui/plan/framing';
import type { SampleName } from '#ui/samples';
import type { LanguageChoice, Settings } from '#ui/settings';
import type { Connect } from '#workers/transport';
import { KeptWork, type KeptWorkParts } from './kept-work.svelte';
import { LiveAssessment } from './live-assessment.svelte';
import { sampleSite } from './samples';
import { ReleaseWatch } from './update.svelte';

export interface Parts extends KeptWorkParts {
  readonly settings: StoredValue<Settings>;
  readonly drafts: DraftStore;
  readonly connect: Connect;
  readonly version: string;
}

export class Workbench implements Bench {
  readonly editor: Editor;
  readonly version: string;
  readonly drafts: Drafts = {
    read: (name) => this.#parts.drafts.read(this.#kept.slot, name),
    keep: (name, draft) => {
      const refusal = this.#parts.drafts.keep(this.#kept.slot, name, draft);
      // a draft of a site that is nowhere would not be found again
      this.#kept.keepSite();
      return refusal === null ? 'kept' : refusal === 'full' ? 'full' : 'refused';
    },
    drop: (name) => {
      this.#parts.drafts.drop(this.#kept.slot, name);
    }
  };

  #state: EditorState;
  #settings: Settings;
  #displayUnits = $state.raw<DisplayUnits>('metric');
  #language = $state.raw<Language>(spokenLanguage());
  #pointed = $state.raw<PointedPair | null>(null);
  #map = $state.raw<MapPicture | null>(null);
  #field = $state.raw<FieldOverlay | null>(null);
  #moment = $state.raw<Moment | null>(null);

  #marked = $state.raw<readonly Place[]>([]);
  #cutting = $state.raw<CuttingPicture | null>(null);
  #ghost = $state.raw<GhostPicture | null>(null);

  readonly #parts: Parts;
  readonly #live: LiveAssessment;
  readonly #kept: KeptWork;
  readonly #release = new ReleaseWatch();
  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)');
  #snap: SnapSettings | null = null;

  constructor(parts: Parts) {
    this.#parts = parts;
    this.version = parts.version;
    this.editor = createEditor(parts.start.site);
    this.#state = $state.raw(this.editor.state);
    this.#settings = $state.raw(parts.settings.get());
    const { snapping, snapTolerance: tolerance } = this.#settings;
    this.editor.setSnap({ ...this.editor.state.snap, ...snapping, tolerance });
    this.#kept = new KeptWork(parts, this.editor, (open) => {
      this.#forget();
      open();
      frameWork(this.editor);
    });
    this.#live = new LiveAssessment(parts.connect);
    this.#follow(this.editor.state);
    this.editor.subscribe((state) => {
      this.#follow(state);
    });
    void this.#release.start();
  }

  /** Each new drawing, a gesture's draft included, is asked about; each new document is kept. */
  #follow(state: EditorState): void {
    if (state.snap !== this.#snap) this.#keepSwitches((this.#snap = state.snap));
    this.#state = state;
    const shown = state.draft ?? state.site;
    if (shown.displayUnits !== this.#displayUnits) this.#displayUnits = shown.displayUnits;
    this.#live.follow(shown);
    this.#kept.follow(state.site);
  }

  #keepSwitches(snap: SnapSettings): void {
    if (!SNAP_SWITCHES.every((name) => snap[name] === this.#settings.snapping[name]))
      this.change({ snapping: snapSwitches((name) => snap[name]) });
  }

  get state() {
    return this.#state;
  }
  get shown() {
    return this.#state.draft ?? this.#state.site;
  }
  get displayUnits() {
    return this.#displayUnits;
  }
  get assessment() {
    return this.#live.newest;
  }
  get isStale() {
    return this.#live.isStale;
  }
  get calculation() {
    return this.#live.calculation;
  }
  get saving() {
    return this.#kept.saving;
  }
  get keeping() {
    return this.#kept;
  }
  get settings() {
    return this.#settings;
  }
  get language() {
    return this.#language;
  }
  get theme() {
    const { theme } = this.#settings;
    return theme === 'system' ? (this.#dark.current ? 'dark' : 'light') : theme;
  }
  get fileName() {
    return this.#kept.file?.name ?? null;
  }
  get changedFile() {
    return this.#kept.files.changedFile;
  }
  get refusedFile() {
    return this.#kept.files.refused;
  }
  get salvage() {
    return this.#kept.salvage;
  }
  get recoveredFrom() {
    return this.#kept.recoveredFrom;
  }
  get hasUpdate() {
    return this.#release.hasUpdate;
  }

  change(settings: Partial<Settings>) {
    this.#settings = { ...this.#settings, ...settings };
    this.#parts.settings.set(this.#settings);
  }

  async setLanguage(choice: LanguageChoice) {
    this.change({ language: choice });
    await this.followLanguage();
  }

  /** Speaks what the settings and the browser ask for; what was drawn and undone stays. */
  async followLanguage() {
    await speakLanguage(languageOf(this.#settings.language, navigator.languages), ['page', 'views']);
    const language = spokenLanguage();
    if (language === this.#language) return;
    document.documentElement.lang = language;
    this.editor.retell();
    this.#language = language;
    // the worker's texts are the old language's
    this.#live.request(this.shown);
  }

  retryCalculation() {
    this.#live.retry();
  }

  ask<K extends QuestionKind>(
    kind: K,
    asked: Asked<K>,
    onShare?: (share: number) => void,
    { site = this.shown, desk }: AskOptions = {}
  ) {
    return this.#live.ask(site, kind, asked, onShare, desk);
  }
  dropQuestion(kind: QuestionKind, desk?: string) {
    this.#live.drop(kind, desk);
  }

  get pointed() {
    return this.#pointed;
  }
  point(pair: PointedPair | null) {
    this.#pointed = pair;
  }
  get map() {
    return this.#map;
  }
  layMap(map: MapPicture | null) {
    this.#map = map;
  }
  get field() {
    return this.#field;
  }
  layField(field: FieldOverlay | null) {
    this.#field = field;
  }
  get moment() {
    return this.#moment;
  }
  showMoment(moment: Moment | null) {
    this.#moment = moment;
  }

  get marked() {
    return this.#marked;
  }
  markPlaces(places: readonly Place[]) {
    this.#marked = places;
  }
  get cutting() {
    return this.#cutting;
  }
  showCutting(cutting: CuttingPicture | null) {
    this.#cutting = cutting;
  }
  get ghost() {
    return this.#ghost;
  }
  layGhost(ghost: GhostPicture | null) {
    this.#ghost = ghost;
  }
  async exportFile(kind: ExportKind, job: Job, wishes: ExportWishes = {}): Promise<ExportOutcome> {
    const { exportFile } = await import('./exports');
    return exportFile(this, kind, job, wishes);
  }
  async composeSheet(job: Job, paper: Paper = 'sheet'): Promise<Sheet> {
    const { composedSheet } = await import('./exports');
    return composedSheet(this, job, paper);
  }
  async checkReadings() {
    const { reckonShown } = await import('./reckon');
    return reckonShown(this, 'check-readings');
  }

  imports() {
    return import('./imports');
  }
  async lessons() {
    return (await import('./lessons')).lessonShelf;
  }
  async savePicture(svg: SVGSVGElement, name: string, kind: PictureKind, site?: string) {
    const { savePicture } = await import('./take-away');
    return savePicture(svg, name, kind, site ?? this.fileName ?? this.shown.name);
  }
  async tableOfDesigns(site: Site, results: readonly DesignResults[]) {
    const { designsTables } = await import('#exchange/tables/designs');
    return designsTables(site, results)[0] ?? null;
  }
  async saveTable(table: Table, name: string, _kind: 'csv', site?: string) {
    const { saveTable } = await import('./take-away');
    return saveTable(table, name, site ?? this.fileName ?? this.shown.name);
  }
  async download(text: string, name: string, mediaType: string) {
    const { handOver } = await import('#storage/hand-over');
    handOver(text, name, mediaType);
  }

  openNew(site: Site) {
    this.#kept.openNew(site);
  }
  async openSample(name: SampleName) {
    const site = await sampleSite(name);
    this.openNew(updateSite(site, { displayUnits: this.shown.displayUnits }));
  }
  openFile() {
    return this.#kept.files.openChosen();
  }
  openDropped(file: FileContent) {
    return this.#kept.files.openDropped(file);
  }
  saveFile(asCopy = false) {
    return this.#kept.files.save(asCopy);
  }
  replaceFile() {
    return this.#kept.files.save(false, true);
  }
  dismissChangedFile() {
    this.#kept.files.dismissChanged();
  }
  downloadSalvage(salvage: Salvage) {
    this.#kept.downloadAside(salvage);
  }
  dismissSalvage() {
    this.#kept.dismissSalvage();
  }
  dismissRecovery() {
    this.#kept.dismissRecovery();
  }
  dismissRefusedFile() {
    this.#kept.files.dismissRefused();
  }

  useUpdate() {
    void this.flush()
      .then(() => this.#release.activate())
      .then(() => {
        location.reload();
      });
  }

  flush() {
    return this.#kept.flush();
  }

  /** What was figured out, or shown on the plan, of the site that was open. */
  #forget() {
    this.#live.forget();
    this.#pointed = null;
    this.#map = null;
    this.#field = null;
    this.#moment = null;
    this.#marked = [];
    this.#cutting = null;
    this.#ghost = null;
  }
}
