/** How the page keeps the site that is open, and the ones that are not. The composition root makes it. */
import type { SetAsideData, Sites } from './sites';

/**
 * `own`: this tab may write. `elsewhere`: another tab has the site. `taken`: another tab has taken it from this one.
 * `newer`: a file of a newer version that is only looked at.
 */
export type Tenure = 'own' | 'elsewhere' | 'taken' | 'newer';

/** The file that the site was saved to or opened from. */
export interface SiteFile {
  readonly name: string;
  /** There are changes that the file does not have. */
  readonly isBehind: boolean;
}

export type LinkNotice = 'opened' | 'opened without pictures' | 'cut' | 'damaged' | 'newer';

export type MadeLink =
  | { readonly kind: 'link'; readonly address: string; readonly pictures: number }
  /** Characters. */
  | { readonly kind: 'too long'; readonly length: number; readonly most: number };

export interface Keeping {
  /** Where the open site is kept: another one whenever another site is opened. */
  readonly slot: string;
  readonly tenure: Tenure;
  readonly file: SiteFile | null;
  /** A day of work is in no file yet. */
  readonly isReminderDue: boolean;
  /** Another tab has the site that this one would have gone on with. */
  readonly elsewhere: { readonly slot: string; readonly name: string } | null;
  /**
   * The site that this page would have opened on could not be read: it is waited for, or it is there now but something else
   * has been begun here.
   */
  readonly late:
    | { readonly kind: 'awaited' }
    | { readonly kind: 'there'; readonly slot: string; readonly name: string }
    | null;
  /** The site was taken from this tab before its last changes were written. */
  readonly isOnlyHere: boolean;
  readonly linkNotice: LinkNotice | null;
  readonly canInstall: boolean;

  dismissReminder(): void;
  dismissElsewhere(): void;
  dismissLate(): void;
  dismissLinkNotice(): void;
  takeOver(): Promise<void>;
  workOnCopy(): void;
  /** Opens a site that is kept; read-only if another tab has it. */
  open(slot: string): Promise<void>;
  /** The refused file of a newer version, as far as it is understood. */
  openNewer(): void;
  install(): Promise<void>;
  /** Loaded when first asked for. */
  sites(): Promise<Sites>;
  makeLink(): Promise<MadeLink>;
  downloadAside(aside: SetAsideData): void;
}
