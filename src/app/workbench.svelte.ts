/** Everything that the page works on, in one place: each thing that changes is one `$state.raw`, replaced as a whole. */
import { MediaQuery } from 'svelte/reactivity';
import type { Asked, QuestionKind } from '#analysis/questions';
import type { Assessment } from '#analysis/results';
import type { MapPicture, Moment } from '#canvas/frame';
import { createEditor } from '#editor/create-editor';
import type { Editor, EditorState } from '#editor/types';
import { languageOf } from '#i18n/choose';
import { speakLanguage } from '#i18n/load';
import { spokenLanguage, t, type Language } from '#i18n/message';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { withoutPictures } from '#plan/underlays';
import { createAutosave, type Autosave } from '#storage/autosave';
import {
  fileNameFor,
  LARGEST_FILE,
  openFile,
  readContent,
  saveFile,
  type FileContent,
  type FileHandle,
  type FileHost,
  type Opened
} from '#storage/files';
import { keptStates, type SetAside, type StateStore } from '#storage/states';
import type { StoredValue } from '#storage/stored-value';
import type { Bench, Calculation, KeptSite, PointedPair, RefusedFile, Salvage, Saving } from '#ui/bench';
import { frameWork } from '#ui/plan/framing';
import type { LanguageChoice, Settings } from '#ui/settings';
import { createAssessmentClient, type AssessmentClient } from '#workers/client';
import type { Connect } from '#workers/transport';
import { ReleaseWatch } from './update.svelte';

export interface Parts {
  readonly site: Site;
  /** When the site had been kept, if it was found in the store; milliseconds since 1970. */
  readonly recoveredFrom: number | null;
  readonly salvage: readonly SetAside[];
  readonly store: StateStore;
  readonly slot: string;
  readonly settings: StoredValue<Settings>;
  readonly files: () => FileHost;
  readonly connect: Connect;
  readonly version: string;
}

/** Seconds. A first answer on a large site on a slow tablet must not count as a dead worker. */
const PATIENCE = 20;

function after(delay: number, callback: () => void): () => void {
  const timer = setTimeout(callback, delay * 1000);
  return () => {
    clearTimeout(timer);
  };
}

const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);

export class Workbench implements Bench {
  readonly editor: Editor;
  readonly version: string;

  #state: EditorState;
  #revision = $state.raw(0);
  #answer = $state.raw<{ readonly revision: number; readonly assessment: Assessment } | null>(null);
  #calculation = $state.raw<Calculation>({ kind: 'working' });
  #saving = $state.raw<Saving>({ kind: 'saved' });
  #settings: Settings;
  #language = $state.raw<Language>(spokenLanguage());
  #handle = $state.raw<FileHandle | null>(null);
  #pointed = $state.raw<PointedPair | null>(null);
  #map = $state.raw<MapPicture | null>(null);
  #moment = $state.raw<Moment | null>(null);
  #refusedFile = $state.raw<RefusedFile | null>(null);
  #salvage: readonly Salvage[];
  #recoveredFrom: number | null;

  readonly #parts: Parts;
  readonly #client: AssessmentClient;
  readonly #autosave: Autosave<Site>;
  readonly #release = new ReleaseWatch();
  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)');
  #asked: Site | null = null;
  /** Of the site that is open. */
  #firstRevision = 0;
  #kept: Site;

  constructor(parts: Parts) {
    this.#parts = parts;
    this.version = parts.version;
    this.editor = createEditor(parts.site);
    this.#state = $state.raw(this.editor.state);
    this.#settings = $state.raw(parts.settings.get());
    this.#salvage = $state.raw(parts.salvage);
    this.#recoveredFrom = $state.raw(parts.recoveredFrom);
    this.#kept = parts.site;
    this.#client = createAssessmentClient({
      connect: parts.connect,
      patience: PATIENCE,
      timer: { after },
      onAnswer: (answer) => {
        if (answer.revision >= this.#firstRevision) this.#answer = answer;
      },
      onState: (calculation) => {
        this.#calculation = calculation;
      }
    });
    this.#autosave = createAutosave<Site>({
      store: parts.store,
      slot: parts.slot,
      describe: (site) => ({ name: site.name, text: writeSite(site) }),
      now: Date.now,
      after,
      onState: (state) => {
        this.#saving =
          state.kind === 'not saved'
            ? { kind: state.kind, why: state.why.kind, detail: state.why.detail }
            : state;
      }
    });
    this.#follow(this.editor.state);
    this.editor.subscribe((state) => {
      this.#follow(state);
    });
    void this.#release.start();
  }

  /** Each new drawing, a gesture's draft included, is a revision that is asked about; each new document is kept. */
  #follow(state: EditorState): void {
    this.#state = state;
    const shown = state.draft ?? state.site;
    if (shown !== this.#asked) {
      this.#asked = shown;
      this.#revision++;
      this.#client.request(withoutPictures(shown), this.#revision);
    }
    if (state.site !== this.#kept) {
      this.#kept = state.site;
      this.#recoveredFrom = null;
      this.#autosave.changed(state.site);
    }
  }

  get state() {
    return this.#state;
  }
  get shown() {
    return this.#state.draft ?? this.#state.site;
  }
  get assessment() {
    return this.#answer?.assessment ?? null;
  }
  get isStale() {
    return this.#answer?.revision !== this.#revision;
  }
  get calculation() {
    return this.#calculation;
  }
  get saving() {
    return this.#saving;
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
    return this.#handle?.name ?? null;
  }
  get refusedFile() {
    return this.#refusedFile;
  }
  get salvage() {
    return this.#salvage;
  }
  get recoveredFrom() {
    return this.#recoveredFrom;
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
    this.#language = language;
    // the worker's texts are the old language's
    this.#revision++;
    this.#client.request(withoutPictures(this.shown), this.#revision);
  }

  retryCalculation() {
    this.#client.retry();
  }

  ask<K extends QuestionKind>(kind: K, asked: Asked<K>, onShare?: (share: number) => void) {
    return this.#client.ask({ kind, site: withoutPictures(this.shown), asked }, onShare);
  }
  dropQuestion(kind: QuestionKind) {
    this.#client.drop(kind);
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
  get moment() {
    return this.#moment;
  }
  showMoment(moment: Moment | null) {
    this.#moment = moment;
  }

  /** What was open before keeps its last state in the store. */
  openNew(site: Site) {
    this.#open(site, null);
  }

  async openFile() {
    try {
      this.#take(await openFile(this.#parts.files()));
    } catch (problem) {
      this.#refuseUnreadable(t('file.chosen'), problem);
    }
  }

  async openDropped(file: FileContent) {
    try {
      this.#take(await readContent(file));
    } catch (problem) {
      this.#refuseUnreadable(file.name, problem);
    }
  }

  async saveFile(asCopy = false) {
    const { site } = this.#state;
    const handle = asCopy ? null : this.#handle;
    const saved = await saveFile(this.#parts.files(), writeSite(site), fileNameFor(site.name), handle);
    if (saved.kind === 'saved') this.#handle = saved.handle;
  }

  async keptSites(): Promise<readonly KeptSite[]> {
    await this.#autosave.flush();
    const states = await keptStates(this.#parts.store);
    return states.map(({ slot, begun, savedAt, name }) => ({ slot, begun, savedAt, name }));
  }

  async openKept({ slot, begun }: KeptSite) {
    const states = await keptStates(this.#parts.store);
    const state = states.find((each) => each.slot === slot && each.begun === begun);
    if (state) this.#take({ kind: 'opened', name: state.name, text: state.text, handle: null });
  }

  downloadSalvage({ key, text }: Salvage) {
    this.#parts.files().download(text, `${key.replace(/[^\w.-]+/g, '-')}.txt`);
  }
  dismissSalvage() {
    this.#salvage = [];
  }
  dismissRecovery() {
    this.#recoveredFrom = null;
  }
  dismissRefusedFile() {
    this.#refusedFile = null;
  }

  useUpdate() {
    void this.flush()
      .then(() => this.#release.activate())
      .then(() => {
        location.reload();
      });
  }

  /** Writes what waits; for the moment when the page goes out of sight. */
  flush() {
    return this.#autosave.flush();
  }

  /** For the moment when the page goes away: what a write may not reach any more. */
  unsaved() {
    return this.#autosave.unsaved();
  }

  #open(site: Site, handle: FileHandle | null) {
    this.#autosave.beginState();
    this.#handle = handle;
    this.#recoveredFrom = null;
    // Another site's figures are not stale, they are wrong, also those that are still on their way.
    this.#answer = null;
    this.#pointed = null;
    this.#map = null;
    this.#moment = null;
    this.#firstRevision = this.#revision + 1;
    this.editor.open(site);
    frameWork(this.editor);
  }

  #take(opened: Opened) {
    if (opened.kind === 'cancelled') return;
    if (opened.kind === 'too large') {
      const problem = {
        path: '',
        found: t('file.tooLarge', { size: megabytes(opened.size) }),
        expected: t('file.atMost', { size: megabytes(LARGEST_FILE) })
      };
      this.#refusedFile = { name: opened.name, problems: [problem] };
      return;
    }
    const reading = readSite(opened.text);
    if (reading.ok) this.#open(reading.site, opened.handle);
    else this.#refusedFile = { name: opened.name, problems: reading.problems };
  }

  #refuseUnreadable(name: string, problem: unknown) {
    const reason = problem instanceof Error ? problem.message : String(problem);
    const found = t('file.unreadable', { reason });
    this.#refusedFile = { name, problems: [{ path: '', found, expected: t('file.readable') }] };
  }
}
