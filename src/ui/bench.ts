/** What the page works on. The composition root makes it; every member that can change is reactive. */
import { createContext } from 'svelte';
import type { DesignResults } from '#analysis/designs/results';
import type { CheckedCircuit } from '#analysis/fault-finding/checked';
import type { AnswerTo, Asked, QuestionKind } from '#analysis/questions';
import type { Assessment, BeatVerdict } from '#analysis/results';
import type { Place } from '#analysis/takeoff/results';
import type { ExportKind } from '#exchange/files/exported';
import type * as Imports from '#exchange/imports/index';
import type { Job } from '#exchange/job';
import type { Paper, Sheet } from '#exchange/sheet/page';
import type { Table } from '#exchange/tables/table';
import type { GhostPicture } from '#scenes/designs';
import type { CuttingPicture, FieldOverlay, MapPicture, Moment } from '#scenes/frame';
import type { Editor, EditorState } from '#editor/types';
import type { Language } from '#i18n/message';
import type { DisplayUnits, Site } from '#plan/schema';
import type { Keeping } from './keeping';
import type { LessonShelf } from './lessons/shelf';
import type { SampleName } from './samples';
import type { LanguageChoice, Settings } from './settings';

export type Calculation =
  | { readonly kind: 'idle' }
  | { readonly kind: 'working' }
  | { readonly kind: 'failed'; readonly reason: string };

export type Outcome<K extends QuestionKind> =
  | { readonly kind: 'answer'; readonly answer: AnswerTo<K> }
  | { readonly kind: 'superseded' }
  | { readonly kind: 'failed'; readonly reason: string };

export interface AskOptions {
  /** In place of the site shown: that of a lesson. */
  readonly site?: Site;
  /** Who asks, where the same kind may be asked from several places at a time: each has a newest question of its own. */
  readonly desk?: string;
}

export type ExportOutcome =
  | { readonly kind: 'made'; readonly name: string }
  | { readonly kind: 'ended' }
  | { readonly kind: 'unfit'; readonly message: string }
  | { readonly kind: 'failed'; readonly reason: string };

/** Drawn by lines, or by pixels. */
export type PictureKind = 'svg' | 'png';

/** What a person wants of a file beside its kind. */
export interface ExportWishes {
  /** CSV with a mark by which spreadsheets know UTF-8. */
  readonly forSpreadsheet?: boolean;
  /** Pixels of a picture per inch of paper. */
  readonly dotsPerInch?: number;
}

/** Two circuits that a person looks at together, shown on the plan. */
export interface PointedPair {
  readonly a: string;
  readonly b: string;
  readonly verdict: BeatVerdict;
}

export type Saving =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  | {
      readonly kind: 'not saved';
      readonly why: 'full' | 'forbidden' | 'failed' | 'silent' | 'taken' | 'newer';
      readonly detail: string;
    };

/**
 * What is being filled in and is not in the document yet: it outlives the tab, with the open site. Each screen has a name for
 * its own.
 */
export interface Drafts {
  /** Undefined where there is none. */
  read(name: string): unknown;
  /** Whether it is kept; if not, the storage is full or may not be used, and it lives for this visit only. */
  keep(name: string, draft: unknown): 'kept' | 'full' | 'refused';
  drop(name: string): void;
}

/** A problem of a file, where it stands in the file, and what would have been right. */
interface FileProblem {
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** A file that was refused whole. */
export interface RefusedFile {
  readonly name: string;
  readonly problems: readonly FileProblem[];
  /** Of a newer version, but understood so far that it can be looked at. */
  readonly isNewer?: boolean;
}

/** Autosaved data that could not be read and was moved aside. */
export interface Salvage {
  readonly key: string;
  readonly text: string;
  readonly reason: string;
}

export interface Bench {
  readonly editor: Editor;
  readonly state: EditorState;
  /** The site as it is to be shown: with the gesture in hand. */
  readonly shown: Site;
  /** Of the site shown; every figure reads it, and none is written anew unless it changes. */
  readonly displayUnits: DisplayUnits;
  /** The newest answer there is; `isStale` while it is not of the site shown. */
  readonly assessment: Assessment | null;
  readonly isStale: boolean;
  readonly calculation: Calculation;
  readonly saving: Saving;
  readonly keeping: Keeping;
  readonly drafts: Drafts;
  readonly settings: Settings;
  /** What the page speaks; it is mounted anew for another. */
  readonly language: Language;
  readonly theme: 'light' | 'dark';
  /** Name of the file that Save writes to, if there is one. */
  readonly fileName: string | null;
  /** Name of the file that Save did not write to, because it was changed from elsewhere. */
  readonly changedFile: string | null;
  readonly refusedFile: RefusedFile | null;
  readonly salvage: readonly Salvage[];
  /** When the site that was recovered at the start had been kept, milliseconds since 1970. */
  readonly recoveredFrom: number | null;
  /** A new release of the program waits to be used. */
  readonly hasUpdate: boolean;
  /** Name of the release that runs. */
  readonly version: string;

  change(settings: Partial<Settings>): void;
  /** Rejects, and keeps the language, when its messages cannot be had. */
  setLanguage(choice: LanguageChoice): Promise<void>;
  retryCalculation(): void;
  /**
   * About the site shown; of each kind only the newest question of each desk is answered. `onShare` hears how much is done,
   * 0 to 1.
   */
  ask<K extends QuestionKind>(
    kind: K,
    asked: Asked<K>,
    onShare?: (share: number) => void,
    options?: AskOptions
  ): Promise<Outcome<K>>;
  /** Ends the open question of a kind and desk, as superseded. */
  dropQuestion(kind: QuestionKind, desk?: string): void;
  /** The pair that the plan highlights. */
  readonly pointed: PointedPair | null;
  point(pair: PointedPair | null): void;
  /** The response map that lies under the plan. */
  readonly map: MapPicture | null;
  layMap(map: MapPicture | null): void;
  /** Section and currents that the plan shows. */
  readonly field: FieldOverlay | null;
  layField(field: FieldOverlay | null): void;
  /** The moment of simulated traffic that the plan shows. */
  readonly moment: Moment | null;
  showMoment(moment: Moment | null): void;
  /** Places that the plan highlights: those of a quantity or a cut that is looked at. */
  readonly marked: readonly Place[];
  markPlaces(places: readonly Place[]): void;
  /** The order of cuts and the baseline that the plan shows. */
  readonly cutting: CuttingPicture | null;
  showCutting(cutting: CuttingPicture | null): void;
  /** Another design that is laid over the plan. */
  readonly ghost: GhostPicture | null;
  layGhost(ghost: GhostPicture | null): void;
  /** Makes a file of the site and hands it to the person; waits for figures that are still on their way. */
  exportFile(kind: ExportKind, job: Job, wishes?: ExportWishes): Promise<ExportOutcome>;
  /** The pages that `sheet-pdf` would have, or those of another paper, for a look at them and for printing. */
  composeSheet(job: Job, paper?: Paper): Promise<Sheet>;
  /**
   * Every reading of the site shown held against what is expected of it; null where another site is shown by the time it is
   * answered. Rejects where the figures cannot be had.
   */
  checkReadings(): Promise<readonly CheckedCircuit[] | null>;
  /** What reads drawings and tables, loaded when first asked for; rejects when it cannot be. */
  imports(): Promise<typeof Imports>;
  /** The lessons that come with the program; rejects when they cannot be loaded. */
  lessons(): Promise<LessonShelf>;
  /**
   * A picture of a view to the browser's downloads, light and with every look written into it; what is marked
   * `data-screen-only` stays behind. `name`: what it shows, also in the file's name, which begins
   * with `site` or, without it, as other files of this site do. Never rejects.
   */
  savePicture(svg: SVGSVGElement, name: string, kind: PictureKind, site?: string): Promise<ExportOutcome>;
  /** Designs side by side as one table: every result with its value in each; null for none. Rejects when it cannot be loaded. */
  tableOfDesigns(site: Site, results: readonly DesignResults[]): Promise<Table | null>;
  /** A table likewise; never rejects. */
  saveTable(table: Table, name: string, kind: 'csv', site?: string): Promise<ExportOutcome>;
  /** Gives a text to the browser's downloads. */
  download(text: string, name: string, mediaType: string): Promise<void>;
  /** Opens a site that comes from no file. */
  openNew(site: Site): void;
  /** Opens one of the finished sites as a new one, in the units shown now; rejects when it cannot be loaded. */
  openSample(name: SampleName): Promise<void>;
  openFile(): Promise<void>;
  openDropped(file: File): Promise<void>;
  /** To the file that is open, or to a new one if there is none or a copy is wanted. */
  saveFile(asCopy?: boolean): Promise<void>;
  /** Writes over what somebody else has put into the file. */
  replaceFile(): Promise<void>;
  dismissChangedFile(): void;
  downloadSalvage(salvage: Salvage): void;
  dismissSalvage(): void;
  dismissRecovery(): void;
  dismissRefusedFile(): void;
  useUpdate(): void;
}

export const [useBench, provideBench] = createContext<Bench>();
