/** What the page works on. The composition root makes it; every member that can change is reactive. */
import { createContext } from 'svelte';
import type { AnswerTo, Asked, QuestionKind } from '#analysis/questions';
import type { Assessment, BeatVerdict } from '#analysis/results';
import type { MapPicture, Moment } from '#canvas/frame';
import type { Editor, EditorState } from '#editor/types';
import type { Language } from '#i18n/message';
import type { Site } from '#plan/schema';
import type { Keeping } from './keeping';
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
      readonly why: 'full' | 'forbidden' | 'failed' | 'taken' | 'newer';
      readonly detail: string;
    };

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
  /** The newest answer there is; `isStale` while it is not of the site shown. */
  readonly assessment: Assessment | null;
  readonly isStale: boolean;
  readonly calculation: Calculation;
  readonly saving: Saving;
  readonly keeping: Keeping;
  readonly settings: Settings;
  /** What the page speaks; it is mounted anew for another. */
  readonly language: Language;
  readonly theme: 'light' | 'dark';
  /** Name of the file that Save writes to, if there is one. */
  readonly fileName: string | null;
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
  /** About the site shown; of each kind only the newest question is answered. `onShare` hears how much is done, 0 to 1. */
  ask<K extends QuestionKind>(
    kind: K,
    asked: Asked<K>,
    onShare?: (share: number) => void
  ): Promise<Outcome<K>>;
  /** Ends the open question of a kind, as superseded. */
  dropQuestion(kind: QuestionKind): void;
  /** The pair that the plan highlights. */
  readonly pointed: PointedPair | null;
  point(pair: PointedPair | null): void;
  /** The response map that lies under the plan. */
  readonly map: MapPicture | null;
  layMap(map: MapPicture | null): void;
  /** The moment of simulated traffic that the plan shows. */
  readonly moment: Moment | null;
  showMoment(moment: Moment | null): void;
  /** Opens a site that comes from no file. */
  openNew(site: Site): void;
  /** Opens one of the finished sites as a new one, in the units shown now; rejects when it cannot be loaded. */
  openSample(name: SampleName): Promise<void>;
  openFile(): Promise<void>;
  openDropped(file: File): Promise<void>;
  /** To the file that is open, or to a new one if there is none or a copy is wanted. */
  saveFile(asCopy?: boolean): Promise<void>;
  downloadSalvage(salvage: Salvage): void;
  dismissSalvage(): void;
  dismissRecovery(): void;
  dismissRefusedFile(): void;
  useUpdate(): void;
}

export const [useBench, provideBench] = createContext<Bench>();
